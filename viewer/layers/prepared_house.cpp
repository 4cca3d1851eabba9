// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/prepared_house.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkIdTypeArray.h>
#include <vtkNew.h>
#include <vtkPoints.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <numbers>
#include <utility>

#include "layers/colored_triangles.h"
#include "layers/house_edges.h"
#include "layers/material_color.h"
#include "layers/rows.h"

namespace seamward::viewer {

namespace {

constexpr int ways_round = 16;  ///< directions in which walls are told apart

/// What pieces have in common that are drawn as one.
struct Key {
    Coat coat;
    HousePiece::Before before;
    int way = 0;  ///< of a wall: which of the directions round

    friend auto operator<=>(const Key&, const Key&) = default;
};

Key key_of(const HousePiece& piece, Coat coat) {
    if (piece.before != HousePiece::Before::one_side) return {coat, piece.before};
    const double turn = std::atan2(piece.outward.y, piece.outward.x) / (2 * std::numbers::pi) * ways_round;
    return {coat, piece.before, (static_cast<int>(std::lround(turn)) + ways_round) % ways_round};
}

/// A piece and where its triangles stand among those of its set.
struct Member {
    const HousePiece* piece = nullptr;
    std::size_t first = 0;
    EdgeLines edges{};
};

/// The triangles of one set, each at its place, so that they can be put down by several threads at once.
class Faces {
public:
    Faces(std::size_t triangles, bool colored) : colored_(colored) {
        for (vtkFloatArray* array : {corners_.Get(), normals_.Get()}) {
            array->SetNumberOfComponents(3);
            array->SetNumberOfTuples(static_cast<vtkIdType>(3 * triangles));
        }
        colors_->SetNumberOfComponents(3);
        if (colored_) colors_->SetNumberOfTuples(static_cast<vtkIdType>(3 * triangles));
        corner_ = corners_->GetPointer(0);
        normal_ = normals_->GetPointer(0);
        color_ = colors_->GetPointer(0);
    }

    void put(std::size_t at, const std::array<Point, 3>& corners, const std::array<unsigned char, 3>& color) const {
        const Vector across = cross(corners[1] - corners[0], corners[2] - corners[0]);
        const double doubled = length(across);
        const Vector normal = doubled > 0 ? across * (1 / doubled) : Vector{0, 0, 1};
        for (std::size_t i = 0; i < 3; ++i) {
            const std::size_t to = 9 * at + 3 * i;
            const Point& p = corners.at(i);
            std::ranges::copy(std::array{static_cast<float>(p.x), static_cast<float>(p.y), static_cast<float>(p.z)},
                              corner_ + to);
            std::ranges::copy(
                std::array{static_cast<float>(normal.x), static_cast<float>(normal.y), static_cast<float>(normal.z)},
                normal_ + to);
            if (colored_) std::ranges::copy(color, color_ + to);
        }
    }
    [[nodiscard]] vtkSmartPointer<vtkPolyData> data() const {
        return triangles_data(corners_, normals_, colored_ ? colors_.Get() : nullptr);
    }

private:
    vtkNew<vtkFloatArray> corners_, normals_;
    vtkNew<vtkUnsignedCharArray> colors_;
    float *corner_ = nullptr, *normal_ = nullptr;
    unsigned char* color_ = nullptr;
    bool colored_;
};

/// The color of all pieces, where it is the same.
std::optional<QColor> only_color(std::span<const Member> members, const House& house) {
    std::optional<QColor> only;
    for (const Member& member : members) {
        const Part& part = house.parts[member.piece->part];
        const QColor color = material_color(part.material, part.layer);
        if (only && *only != color) return std::nullopt;
        only = color;
    }
    return only;
}

/// Puts the pieces of one set into data sets, and tells whose the triangles are.
PreparedHouse::Set prepared_set(const Key& key, std::vector<Member>& members, const House& house, const HouseFrame& frame,
                                std::uint32_t number, std::vector<PreparedHouse::Owner>& owners) {
    std::size_t triangles = 0;
    for (Member& member : members) {
        member.first = triangles;
        triangles += member.piece->triangles.size();
    }
    const std::optional<QColor> only = only_color(members, house);
    const Faces faces(triangles, !only);
    const std::size_t first_owner = owners.size();
    owners.resize(first_owner + triangles);
    for_rows(static_cast<int>(members.size()), [&](int row) {
        Member& member = members[static_cast<std::size_t>(row)];
        const Part& part = house.parts[member.piece->part];
        const std::vector<Point>& points = part.mesh.points;
        const QColor paint = material_color(part.material, part.layer);
        const std::array color{static_cast<unsigned char>(paint.red()), static_cast<unsigned char>(paint.green()),
                               static_cast<unsigned char>(paint.blue())};
        std::size_t at = member.first;
        for (const std::uint32_t i : member.piece->triangles) {
            const auto& [a, b, c] = part.mesh.triangles[i];
            faces.put(at, {frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])}, color);
            owners[first_owner + at++] = {number, member.piece->part, i};
        }
        member.edges.add(part.mesh, member.piece->triangles, frame, part.layer == Layer::foundation);
    });
    EdgeLines edges;
    for (const Member& member : members) edges.append(member.edges);
    PreparedHouse::Set set{key.coat, key.before, {}, faces.data(), edges.data(), only};
    const double turn = key.way * 2 * std::numbers::pi / ways_round;
    set.outward = {std::cos(turn), std::sin(turn), 0};
    return set;
}

/// The house's frame moved so that its ground lies at z = 0.
HouseFrame grounded_frame(const House& house) {
    HouseFrame frame = house_frame(house);
    for (Box* box : {&frame.house, &frame.all}) {
        box->low.z -= frame.ground;
        box->high.z -= frame.ground;
    }
    frame.origin.z += frame.ground;
    frame.ground = 0;
    return frame;
}

std::shared_ptr<PreparedHouse> prepare_solids(const House& house, const HouseFrame& frame, const RunContext& context) {
    auto prepared = std::make_shared<PreparedHouse>();
    prepared->frame = frame;
    const std::vector<HousePiece> pieces = house_pieces(house);
    std::map<Key, std::vector<Member>> sorted;
    for (const HousePiece& piece : pieces) {
        const Layer layer = house.parts[piece.part].layer;
        if (layer != Layer::ground) sorted[key_of(piece, coat_of(layer))].push_back({&piece});
    }
    for (auto& [key, members] : sorted) {
        context.check();
        const auto number = static_cast<std::uint32_t>(prepared->sets.size());
        prepared->sets.push_back(prepared_set(key, members, house, frame, number, prepared->owners));
        members.clear();
    }
    return prepared;
}

}  // namespace

std::shared_ptr<const PreparedHouse> prepare_house(const House& house, const HouseFrame& frame, const RunContext& context) {
    return prepare_solids(house, frame, context);
}

std::shared_ptr<const PreparedHouse> prepare_house(const House& house, const RunContext& context) {
    const auto prepared = prepare_solids(house, grounded_frame(house), context);
    std::vector<vtkPolyData*> casting;
    for (const PreparedHouse::Set& set : prepared->sets) casting.push_back(set.faces);
    prepared->ground = prepare_ground(house, prepared->frame, casting);
    return prepared;
}

vtkSmartPointer<vtkPolyData> searched_triangles(const House& house, const PreparedHouse& prepared) {
    std::vector<std::uint32_t> first_point;
    std::uint32_t count = 0;
    for (const Part& part : house.parts) {
        first_point.push_back(count);
        count += static_cast<std::uint32_t>(part.mesh.points.size());
    }
    vtkNew<vtkPoints> points;
    points->SetDataTypeToDouble();
    points->SetNumberOfPoints(count);
    vtkIdType at = 0;
    for (const Part& part : house.parts) {
        for (const Point& point : part.mesh.points) {
            const Point placed = prepared.frame.to_scene(point);
            points->SetPoint(at++, placed.x, placed.y, placed.z);
        }
    }
    vtkNew<vtkIdTypeArray> ids;
    ids->SetNumberOfValues(static_cast<vtkIdType>(3 * prepared.owners.size()));
    vtkIdType* to = ids->GetPointer(0);
    for (const PreparedHouse::Owner& owner : prepared.owners) {
        for (const std::uint32_t corner : house.parts[owner.part].mesh.triangles[owner.triangle])
            *to++ = first_point[owner.part] + corner;
    }
    vtkNew<vtkCellArray> cells;
    cells->SetData(3, ids);
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetPolys(cells);
    return data;
}

}  // namespace seamward::viewer
