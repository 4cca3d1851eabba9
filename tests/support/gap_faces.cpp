// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/gap_faces.h"

#include <algorithm>
#include <array>
#include <map>
#include <numeric>
#include <span>
#include <utility>

#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

/// Faces that hang together by their corners, each such sheet as a part of its own.
std::vector<ModelPart> sheets_of(const TriangleMesh& faces) {
    std::map<std::array<double, 3>, std::uint32_t> numbers;
    std::vector<std::uint32_t> parent;
    const auto first = [&](std::uint32_t i) {
        while (parent[i] != i) i = parent[i] = parent[parent[i]];
        return i;
    };
    const auto number = [&](std::uint32_t corner) {
        const Point& p = faces.points[corner];
        const auto [entry, fresh] = numbers.try_emplace({p.x, p.y, p.z}, static_cast<std::uint32_t>(parent.size()));
        if (fresh) parent.push_back(entry->second);
        return entry->second;
    };
    for (const auto& [a, b, c] : faces.triangles) {
        parent[first(number(b))] = first(number(a));
        parent[first(number(c))] = first(number(a));
    }
    std::map<std::uint32_t, ModelPart> sheets;
    for (const auto& triangle : faces.triangles) {
        TriangleMesh& sheet = sheets[first(number(triangle[0]))].mesh;
        const auto next = static_cast<std::uint32_t>(sheet.points.size());
        for (const std::uint32_t corner : triangle) sheet.points.push_back(faces.points[corner]);
        sheet.triangles.push_back({next, next + 1, next + 2});
    }
    std::vector<ModelPart> list;
    for (auto& [unused, sheet] : sheets) list.push_back(std::move(sheet));
    return list;
}

}  // namespace

std::vector<ModelPart> faces_by_gap(const std::vector<Part>& parts, std::size_t gaps) {
    std::vector<ModelPart> faces(gaps);
    for (const Part& part : parts) {
        for (std::size_t i = 0; i < part.bounds.size(); ++i) {
            if (!part.bounds[i].valid()) continue;
            TriangleMesh& mesh = faces.at(part.bounds[i].value).mesh;
            const auto first = static_cast<std::uint32_t>(mesh.points.size());
            for (const std::uint32_t corner : part.mesh.triangles[i]) mesh.points.push_back(part.mesh.points[corner]);
            mesh.triangles.push_back({first, first + 1, first + 2});
        }
    }
    return faces;
}

std::size_t openings_between(const TriangleMesh& faces, double reach) {
    const std::vector<ModelPart> sheets = sheets_of(faces);
    std::vector<TriangleDistance> distances;
    for (const ModelPart& sheet : sheets) distances.emplace_back(std::span(&sheet, 1));
    std::vector<std::size_t> parent(sheets.size());
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto first = [&](std::size_t i) {
        while (parent[i] != i) i = parent[i];
        return i;
    };
    std::size_t openings = sheets.size();
    for (std::size_t i = 0; i < sheets.size(); ++i) {
        for (std::size_t j = 0; j < sheets.size(); ++j) {
            const std::size_t one = first(i), other = first(j);
            if (one == other) continue;
            const auto near = [&](const Point& p) { return distances[j].to(p, 2 * reach) <= reach; };
            if (std::ranges::none_of(sheets[i].mesh.points, near)) continue;
            parent[other] = one;
            --openings;
        }
    }
    return openings;
}

}  // namespace seamward::test
