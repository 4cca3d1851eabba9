// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/grid_peer.h"

#include <openvdb/openvdb.h>
#include <openvdb/tools/LevelSetUtil.h>
#include <openvdb/tools/MeshToVolume.h>
#include <openvdb/tools/ValueTransformer.h>

#include <stdexcept>
#include <vector>

namespace seamward::test {

namespace {

using openvdb::FloatGrid;
using Bodies = std::vector<openvdb::BoolGrid::Ptr>;

constexpr float held_back = 0.6F;  // voxels
// Voxels on each side of a triangle: with less, the layer of air along walls would not hang together; with more, OpenVDB has to
// widen the band, which takes much longer.
constexpr float band = 2;
constexpr int farthest = 1 << 20;  // voxels

openvdb::Vec3s vec(const Point& p) { return {static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z)}; }

/// The first of several bodies that is met on the way down or up.
std::size_t first_body(const Bodies& bodies, openvdb::Coord at, int step) {
    for (int i = 0; i < farthest; ++i, at.z() += step) {
        for (std::size_t k = 0; k < bodies.size(); ++k) {
            if (bodies[k]->tree().isValueOn(at)) return k;
        }
    }
    throw std::runtime_error("no surface below the point");
}

}  // namespace

GridAnswer ask_grid(std::span<const ModelPart> parts, const Point& at, double voxel) {
    std::vector<openvdb::Vec3s> points;
    std::vector<openvdb::Vec3I> triangles;
    for (const ModelPart& part : parts) {
        const auto first = static_cast<openvdb::Index32>(points.size());
        for (const Point& p : part.mesh.points) points.push_back(vec(p));
        for (const auto& [a, b, c] : part.mesh.triangles) triangles.emplace_back(first + a, first + b, first + c);
    }
    const openvdb::math::Transform::Ptr transform = openvdb::math::Transform::createLinearTransform(voxel);
    const FloatGrid::Ptr distances =
        openvdb::tools::meshToUnsignedDistanceField<FloatGrid>(*transform, points, triangles, {}, band);
    GridAnswer answer{.voxels = distances->activeVoxelCount(), .bytes = static_cast<double>(distances->memUsage())};
    const float shut = static_cast<float>(voxel) * held_back;
    openvdb::tools::foreach (distances->beginValueOn(), [shut](const FloatGrid::ValueOnIter& it) {
        if (*it <= shut) it.setValueOff();
    });
    Bodies bodies;
    openvdb::tools::extractActiveVoxelSegmentMasks(*distances, bodies);
    const openvdb::Coord inside = transform->worldToIndexNodeCentered({at.x, at.y, at.z});
    openvdb::Coord below = inside;
    below.z() = distances->evalActiveVoxelBoundingBox().min().z();
    answer.joined = first_body(bodies, inside, -1) == first_body(bodies, below, 1);
    return answer;
}

}  // namespace seamward::test
