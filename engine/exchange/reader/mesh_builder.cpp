// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/mesh_builder.h"

#include <array>
#include <bit>
#include <cmath>
#include <numeric>
#include <utility>

#include "exchange/reader/refusal.h"

namespace seamward {

namespace {

constexpr std::uint32_t none = UINT32_MAX;

std::uint32_t root_of(std::vector<std::uint32_t>& above, std::uint32_t at) {
    while (above[at] != at) at = above[at] = above[above[at]];
    return at;
}

}  // namespace

std::size_t MeshBuilder::Hash::operator()(const Point& p) const {
    std::uint64_t hash = 0;
    for (const double at : {p.x, p.y, p.z}) {
        hash = (hash ^ std::bit_cast<std::uint64_t>(at)) * 0x9E3779B97F4A7C15U;
        hash ^= hash >> 29U;
    }
    return hash;
}

void MeshBuilder::add(const Point& a, const Point& b, const Point& c) {
    std::array<std::uint32_t, 3> corners{};
    for (std::size_t i = 0; i < 3; ++i) corners.at(i) = index_of(i == 0 ? a : i == 1 ? b : c);
    if (corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0]) {
        ++tally_.collapsed;
        return;
    }
    if (++tally_.kept > tally_.most)
        throw Refusal("has more than " + std::to_string(tally_.most) + " triangles",
                      "leave out what is no part of the house, furniture and plants above all");
    mesh_.triangles.push_back(corners);
}

std::uint32_t MeshBuilder::index_of(const Point& point) {
    // A negative zero is the same place as a zero.
    const Point at{point.x + 0.0, point.y + 0.0, point.z + 0.0};
    if (!std::isfinite(at.x) || !std::isfinite(at.y) || !std::isfinite(at.z))
        throw Refusal("has coordinates that are no numbers", "export it again");
    const auto [entry, fresh] = known_.try_emplace(at, static_cast<std::uint32_t>(mesh_.points.size()));
    if (fresh) mesh_.points.push_back(at);
    return entry->second;
}

TriangleMesh MeshBuilder::take() {
    known_ = {};
    // Points of triangles that were left out go with them.
    std::vector<std::uint32_t> place(mesh_.points.size(), none);
    TriangleMesh used;
    for (auto& corners : mesh_.triangles) {
        for (std::uint32_t& corner : corners) {
            if (place[corner] == none) {
                place[corner] = static_cast<std::uint32_t>(used.points.size());
                used.points.push_back(mesh_.points[corner]);
            }
            corner = place[corner];
        }
    }
    used.triangles = std::move(mesh_.triangles);
    mesh_ = {};
    return used;
}

std::vector<TriangleMesh> pieces_of(TriangleMesh mesh, std::size_t most) {
    std::vector<std::uint32_t> above(mesh.points.size());
    std::iota(above.begin(), above.end(), 0U);
    for (const auto& [a, b, c] : mesh.triangles) {
        above[root_of(above, b)] = root_of(above, a);
        above[root_of(above, c)] = root_of(above, a);
    }
    std::vector<std::uint32_t> piece_of(mesh.points.size(), none);  // by root
    std::vector<std::uint32_t> place(mesh.points.size(), none);
    std::vector<TriangleMesh> pieces;
    for (auto corners : mesh.triangles) {
        std::uint32_t& piece = piece_of[root_of(above, corners[0])];
        if (piece == none) {
            piece = static_cast<std::uint32_t>(pieces.size());
            if (pieces.size() == most) {
                pieces.clear();
                break;
            }
            pieces.emplace_back();
        }
        TriangleMesh& into = pieces[piece];
        for (std::uint32_t& corner : corners) {
            if (place[corner] == none) {
                place[corner] = static_cast<std::uint32_t>(into.points.size());
                into.points.push_back(mesh.points[corner]);
            }
            corner = place[corner];
        }
        into.triangles.push_back(corners);
    }
    if (pieces.size() > 1) return pieces;
    pieces.clear();
    pieces.push_back(std::move(mesh));
    return pieces;
}

}  // namespace seamward
