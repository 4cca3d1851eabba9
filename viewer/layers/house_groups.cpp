// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_groups.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <limits>
#include <map>
#include <numeric>
#include <set>

#include "house/facing.h"
#include "layers/material_color.h"
#include "layers/palette.h"
#include "layers/rows.h"

namespace seamward::viewer {

namespace {

constexpr double most = std::numeric_limits<double>::max();
constexpr Box nothing{{most, most, most}, {-most, -most, -most}};
constexpr double ground_floor = 0.4;  ///< meters over z = 0: what lies level up to there is a floor that one looks at
constexpr double knee = 0.5;          ///< meters: what is lower, in the yard, hides nothing

void include(Box& box, const Point& at) {
    box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y), std::min(box.low.z, at.z)};
    box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y), std::max(box.high.z, at.z)};
}

/// At least a meter each way, around the middle.
Box not_flat(Box box) {
    if (box.low.x > box.high.x) box = {{0, 0, 0}, {0, 0, 0}};
    const auto widen = [](double& low, double& high) {
        const double lacking = std::max(0.0, (1.0 - (high - low)) / 2);
        low -= lacking;
        high += lacking;
    };
    widen(box.low.x, box.high.x);
    widen(box.low.y, box.high.y);
    widen(box.low.z, box.high.z);
    return box;
}

/// One closed shell of a part.
struct Shell {
    std::vector<std::uint32_t> triangles;  ///< positions in the part's mesh
    Box box = nothing;                     ///< house
    Vector across;                         ///< unit: what most of its area faces, or the opposite
};

/// The shells of a part: triangles that are joined by points.
std::vector<Shell> shells_of(const TriangleMesh& mesh) {
    std::vector<std::uint32_t> root(mesh.points.size());
    std::iota(root.begin(), root.end(), 0U);
    const auto find = [&](std::uint32_t i) {
        while (root[i] != i) i = root[i] = root[root[i]];
        return i;
    };
    for (const auto& triangle : mesh.triangles) {
        root[find(triangle[1])] = find(triangle[0]);
        root[find(triangle[2])] = find(triangle[0]);
    }
    constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();
    std::vector<std::uint32_t> shell_at(mesh.points.size(), none);
    std::vector<Shell> shells;
    for (std::uint32_t i = 0; i < mesh.triangles.size(); ++i) {
        std::uint32_t& shell = shell_at[find(mesh.triangles[i][0])];
        if (shell == none) {
            shell = static_cast<std::uint32_t>(shells.size());
            shells.emplace_back();
        }
        shells[shell].triangles.push_back(i);
        for (const std::uint32_t corner : mesh.triangles[i]) include(shells[shell].box, mesh.points[corner]);
    }
    return shells;
}

/// The borders of those faces of a solid that slope and look up: around the faces counterclockwise seen from above, around holes
/// clockwise.
std::vector<std::vector<Point>> borders_of_slope(const TriangleMesh& mesh) {
    constexpr double level = 0.9995;
    std::map<std::uint32_t, std::uint32_t> next;
    std::set<std::pair<std::uint32_t, std::uint32_t>> edges;
    for (const auto& [a, b, c] : mesh.triangles) {
        const Vector across = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
        if (!(across.z > 0.05 * length(across)) || across.z > level * length(across)) continue;
        edges.insert({{a, b}, {b, c}, {c, a}});
    }
    for (const auto& [from, to] : edges) {
        if (!edges.contains({to, from})) next[from] = to;
    }
    std::vector<std::vector<Point>> borders;
    while (!next.empty()) {
        std::vector<Point> border;
        for (auto at = next.begin(); at != next.end();) {
            border.push_back(mesh.points[at->first]);
            const std::uint32_t to = at->second;
            next.erase(at);
            at = next.find(to);
        }
        borders.push_back(std::move(border));
    }
    return borders;
}

Point middle_of(const Box& box) {
    return {(box.low.x + box.high.x) / 2, (box.low.y + box.high.y) / 2, (box.low.z + box.high.z) / 2};
}

HousePiece::Before before_of(const Part& part, const Shell& shell) {
    const bool level = std::abs(shell.across.z) > 0.5;
    switch (part.layer) {
        case Layer::ground:
        case Layer::foundation:
        case Layer::fixture: return HousePiece::Before::nothing;
        case Layer::yard:
            if (shell.box.high.z - shell.box.low.z < knee) return HousePiece::Before::nothing;
            break;
        case Layer::roof:
        case Layer::eaves: return HousePiece::Before::above;
        case Layer::framing:
        case Layer::cladding:
        case Layer::opening:
        case Layer::interior: break;
    }
    if (!level) return HousePiece::Before::one_side;
    return middle_of(shell.box).z > ground_floor ? HousePiece::Before::above : HousePiece::Before::nothing;
}

bool is_before_rooms(const HousePiece& piece, Vector to_eye) {
    if (piece.before == HousePiece::Before::above) return true;
    return piece.before == HousePiece::Before::one_side && dot(piece.outward, to_eye) > 0.1;
}

Group group_of(const Part& part, const HousePiece& piece, Vector to_eye) {
    switch (part.layer) {
        case Layer::ground: return Group::ground;
        case Layer::foundation:
        case Layer::fixture: return Group::solid;
        case Layer::yard:
            if (piece.before == HousePiece::Before::nothing) return Group::ground;
            return is_before_rooms(piece, to_eye) ? Group::cladding : Group::solid;
        case Layer::framing: return piece.before == HousePiece::Before::nothing ? Group::solid : Group::framing;
        case Layer::roof:
        case Layer::eaves: return Group::roof;
        case Layer::cladding: return is_before_rooms(piece, to_eye) ? Group::cladding : Group::solid;
        case Layer::opening: return is_before_rooms(piece, to_eye) ? Group::opening : Group::solid;
        case Layer::interior: break;
    }
    return is_before_rooms(piece, to_eye) ? Group::interior : Group::solid;
}

}  // namespace

HouseFrame house_frame(const House& house) {
    Box body = nothing;
    Box all = nothing;
    double ground = -most;
    for (const Part& part : house.parts) {
        const bool outside = part.layer == Layer::ground || part.layer == Layer::yard;
        for (const Point& at : part.mesh.points) {
            include(all, at);
            if (!outside) include(body, at);
            if (part.layer == Layer::ground) ground = std::max(ground, at.z);
        }
    }
    if (body.low.x > body.high.x) body = all;
    body = not_flat(body);
    include(all, body.low);
    include(all, body.high);
    HouseFrame frame;
    frame.origin = {(body.low.x + body.high.x) / 2, (body.low.y + body.high.y) / 2, 0};
    frame.house = {frame.to_scene(body.low), frame.to_scene(body.high)};
    frame.all = {frame.to_scene(all.low), frame.to_scene(all.high)};
    frame.ground = ground > -most ? ground : frame.all.low.z;  // the scene keeps heights
    return frame;
}

std::vector<HousePiece> house_pieces(const House& house) {
    const Facings facings(house);
    std::vector<std::vector<HousePiece>> of_parts(house.parts.size());
    for_rows(static_cast<int>(house.parts.size()), [&](int row) {
        const auto i = static_cast<std::uint32_t>(row);
        const Part& part = house.parts[i];
        for (Shell& shell : shells_of(part.mesh)) {
            shell.across = main_axis(part.mesh, shell.triangles);
            HousePiece piece{i, {}, shell.box, before_of(part, shell), {}};
            if (piece.before == HousePiece::Before::one_side) piece.outward = facings.outward(middle_of(shell.box), shell.across);
            piece.triangles = std::move(shell.triangles);
            of_parts[i].push_back(std::move(piece));
        }
    });
    std::vector<HousePiece> pieces;
    for (std::vector<HousePiece>& of_part : of_parts) std::ranges::move(of_part, std::back_inserter(pieces));
    return pieces;
}

HouseGroups house_groups(const House& house, const HouseFrame& frame, Vector to_eye) {
    std::array<ColoredTriangles, group_count> groups;
    for (const HousePiece& piece : house_pieces(house)) {
        const Part& part = house.parts[piece.part];
        const QColor color = material_color(part.material, part.layer);
        ColoredTriangles& group = groups.at(static_cast<std::size_t>(group_of(part, piece, to_eye)));
        for (const std::uint32_t i : piece.triangles) {
            const auto& [a, b, c] = part.mesh.triangles[i];
            const std::vector<Point>& points = part.mesh.points;
            group.add({frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])}, color);
        }
    }
    HouseGroups data;
    for (std::size_t i = 0; i < group_count; ++i) data.at(i) = groups.at(i).data();
    return data;
}

std::vector<std::vector<Point>> roof_lines(const House& house, const HouseFrame& frame) {
    std::vector<std::vector<Point>> lines;
    std::set<std::array<std::int64_t, 6>> known;  // planes meet in the same line
    const auto is_new = [&](const Point& from, const Point& to) {
        const auto key = [](const Point& a, const Point& b) {
            constexpr double fine = 500;  // to the meter
            std::array<std::int64_t, 6> all{};
            std::ranges::transform(std::array{a.x, a.y, a.z, b.x, b.y, b.z}, all.begin(),
                                   [](double value) { return std::llround(value * fine); });
            return all;
        };
        return known.insert(std::min(key(from, to), key(to, from))).second;
    };
    for (const Part& part : house.parts) {
        if (part.layer != Layer::roof) continue;
        for (const std::vector<Point>& border : borders_of_slope(part.mesh)) {
            double turned = 0;
            for (std::size_t i = 0; i < border.size(); ++i) {
                const Point& next = border[i + 1 < border.size() ? i + 1 : 0];
                turned += border[i].x * next.y - border[i].y * next.x;
            }
            if (!(turned > 0)) continue;  // around a hole
            for (std::size_t i = 0; i < border.size(); ++i) {
                const Point& from = border[i];
                const Point& to = border[i + 1 < border.size() ? i + 1 : 0];
                if (is_new(from, to)) lines.push_back({frame.to_scene(from), frame.to_scene(to)});
            }
        }
    }
    return lines;
}

void add_gap_faces(ColoredTriangles& all, const House& house, const HouseFrame& frame, GapIndex gap, Vector lit_from) {
    for (const Part& part : house.parts) {
        for (std::size_t i = 0; i < std::min(part.bounds.size(), part.mesh.triangles.size()); ++i) {
            if (part.bounds[i] != gap) continue;
            const auto& [a, b, c] = part.mesh.triangles[i];
            const std::vector<Point>& points = part.mesh.points;
            const std::array<Point, 3> corners{frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])};
            all.add(corners, palette::smallest);
            all.add({corners[0], corners[2], corners[1]}, palette::smallest, lit_from);
        }
    }
}

}  // namespace seamward::viewer
