// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/mesh_builder.h"

#include <algorithm>
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

std::size_t hash_of(const Point& p) {
    std::uint64_t hash = 0;
    for (const double at : {p.x, p.y, p.z}) {
        hash = (hash ^ std::bit_cast<std::uint64_t>(at)) * 0x9E3779B97F4A7C15U;
        hash ^= hash >> 29U;
    }
    return hash;
}

}  // namespace

void MeshBuilder::add(const std::array<std::uint32_t, 3>& corners) {
    if (corners[0] == corners[1] || corners[1] == corners[2] || corners[2] == corners[0]) {
        ++tally_.collapsed;
        any_left_out_ = true;
        return;
    }
    if (++tally_.kept > tally_.most)
        throw ReadRefusal("has more than " + std::to_string(tally_.most) + " triangles",
                          "leave out what is no part of the house, furniture and plants above all");
    mesh_.triangles.push_back(corners);
}

std::uint32_t MeshBuilder::index_of(const Point& point) {
    // A negative zero is the same place as a zero.
    const Point at{point.x + 0.0, point.y + 0.0, point.z + 0.0};
    if (!std::isfinite(at.x) || !std::isfinite(at.y) || !std::isfinite(at.z))
        throw ReadRefusal("has coordinates that are no numbers", "export it again");
    if (2 * mesh_.points.size() >= slots_.size()) make_room();
    std::uint32_t& slot = slot_of(at);
    if (slot == none) {
        slot = static_cast<std::uint32_t>(mesh_.points.size());
        mesh_.points.push_back(at);
    }
    return slot;
}

/// Where the number of a point stands, or would.
std::uint32_t& MeshBuilder::slot_of(const Point& at) {
    const std::size_t mask = slots_.size() - 1;
    for (std::size_t i = hash_of(at) & mask;; i = (i + 1) & mask) {
        std::uint32_t& slot = slots_[i];
        if (slot == none) return slot;
        const Point& there = mesh_.points[slot];
        if (there.x == at.x && there.y == at.y && there.z == at.z) return slot;
    }
}

void MeshBuilder::make_room() {
    slots_.assign(std::max<std::size_t>(16, 2 * slots_.size()), none);
    for (std::uint32_t i = 0; i < mesh_.points.size(); ++i) slot_of(mesh_.points[i]) = i;
}

TriangleMesh MeshBuilder::take() {
    slots_ = {};
    if (!any_left_out_) return std::move(mesh_);
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
