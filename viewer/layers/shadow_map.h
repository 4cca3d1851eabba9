// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "adapt/picture_frame.h"
#include "base/vector.h"
#include "layers/section.h"

namespace seamward::viewer {

/// A map of level ground, seen from above: how much of it lies in the soft shadow of solids.
class ShadowMap {
public:
    /// `casting`: triangles that share no corners, as ColoredTriangles makes them. The map reaches `reach` meters around `house`;
    /// `level` is the height of the ground, `sun` points toward the sun. What lies on the side of `cut` that is taken away throws
    /// no shadow. O(triangles + cells of the map).
    ShadowMap(std::span<vtkPolyData* const> casting, const Box& house, double reach, double level, Vector sun,
              const std::optional<CutPlane>& cut = {});

    /// 0: in the sun, 1: in the middle of a shadow. Beyond the map: as on its border.
    [[nodiscard]] float at(const Point& on_ground) const;

    /// West and south corner of the map, and meters from one cell to the next.
    [[nodiscard]] const Point& low() const { return low_; }
    [[nodiscard]] double cell() const { return cell_; }
    [[nodiscard]] int width() const { return width_; }
    [[nodiscard]] int height() const { return height_; }
    /// Row by row from the south, each from the west.
    [[nodiscard]] const std::vector<float>& shade() const { return shade_; }

private:
    void blur(int count, int lines, std::size_t step, std::size_t line_step);

    Point low_;
    double cell_ = 1;
    int width_ = 0, height_ = 0;
    std::vector<float> shade_;
};

}  // namespace seamward::viewer
