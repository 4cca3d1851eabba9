// SPDX-License-Identifier: GPL-3.0-or-later
// What a uniform grid says of air: a peer for the benchmark. Needs OpenVDB; in a library of its own, seamward_grid_support.
#pragma once

#include <cstddef>
#include <span>

#include "exchange/model.h"

namespace seamward::test {

struct GridAnswer {
    bool joined = false;     ///< the point's air hangs together with the open air
    std::size_t voxels = 0;  ///< that the grid of distances stores
    double bytes = 0;        ///< of that grid alone
};

/// Distances to the triangles of all parts, in a narrow band of voxels `voxel` meters wide
/// (openvdb::tools::meshToUnsignedDistanceField). Air is where the middle of a voxel is more than 0.6 voxels away from all
/// triangles (with half of one, surfaces would no longer surely hold it back), and hangs together through faces of voxels
/// (openvdb::tools::extractActiveVoxelSegmentMasks); the layer of it along the walls stands for all of a room. So the grid surely
/// sees slots wider than 2.2 voxels, wherever it lies. There must be a surface below the point.
[[nodiscard]] GridAnswer ask_grid(std::span<const ModelPart> parts, const Point& at, double voxel);

/// Meters: the widest voxel that surely sees a slot of a width, with a tenth to spare.
[[nodiscard]] constexpr double voxel_for(double slot) { return slot / 2.42; }

}  // namespace seamward::test
