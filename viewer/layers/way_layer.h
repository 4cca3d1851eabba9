// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkGlyph3DMapper.h>
#include <vtkNew.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <optional>
#include <span>
#include <vector>

#include "adapt/way_line.h"
#include "layers/section.h"

namespace seamward::viewer {

/// Radius of the ball around the smallest gap, as a share of the picture's reach.
inline constexpr double halo_share = 0.026;

/// Ways in as lines: the chosen one a thick tube with arrowheads, its shadow on the ground and a thin post under each
/// of its gaps; the others thin and dashed. Nothing is drawn past gaps without a position.
class WayLayer {
public:
    explicit WayLayer(vtkRenderer& renderer);

    /// `chosen` may be null. `smallest`: where its smallest gap is, if that is known.
    void show(const WayLine* chosen, std::optional<Point> smallest, std::span<const std::vector<Point>> others,
              const PictureFrame& frame);

    void recolor();
    /// Takes away what of the other ways lies on the normal's side of a plane of the scene.
    void cut_others(const std::optional<CutPlane>& plane);
    void set_shown(bool shown);
    /// How many times as thick as they are otherwise.
    void set_scale(double scale);

private:
    void draw();
    void show_chosen(const WayLine& chosen);
    void show_others();

    std::optional<WayLine> chosen_;
    std::optional<Point> smallest_at_;
    std::vector<std::vector<Point>> other_lines_;
    double reach_ = 1;  ///< of the picture, meters
    double scale_ = 1;
    bool shown_ = true;

    vtkNew<vtkGlyph3DMapper> arrow_mapper_;
    vtkSmartPointer<vtkActor> tube_, arrows_, shadow_, posts_, halo_, others_;
};

}  // namespace seamward::viewer
