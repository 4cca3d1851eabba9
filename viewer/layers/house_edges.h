// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <cstdint>
#include <span>
#include <vector>

#include "base/solid.h"
#include "layers/house_groups.h"

namespace seamward::viewer {

/// The sharp edges of solids on their way to a data set.
class EdgeLines {
public:
    /// The edges between those triangles of a mesh that meet at more than 25 degrees, and the edges that only one of them has;
    /// none of the seams between triangles of a round face. O(triangles). `only_over_ground`: without edges that lie in the
    /// ground, which is drawn too thinly to hide them where it ends.
    void add(const TriangleMesh& mesh, std::span<const std::uint32_t> triangles, const HouseFrame& frame, bool only_over_ground);
    /// Adds all of others.
    void append(const EdgeLines& others);
    [[nodiscard]] vtkSmartPointer<vtkPolyData> data() const;

private:
    std::vector<float> corners_;
};

}  // namespace seamward::viewer
