// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_layer.h"

#include <vtkCellArray.h>
#include <vtkIdList.h>
#include <vtkMapper.h>
#include <vtkNew.h>
#include <vtkPlane.h>
#include <vtkPoints.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numbers>
#include <numeric>

#include "adapt/polydata.h"
#include "layers/house_edges.h"
#include "layers/material_color.h"
#include "layers/palette.h"
#include "layers/scene_actor.h"

namespace seamward::viewer {

namespace {

constexpr double faint = 0.10;        ///< opacity of what one looks through
constexpr double edges_share = 0.55;  ///< opacity of edges
constexpr double faint_edges = 0.16;
constexpr int ways_round = 16;               ///< directions in which walls are told apart
constexpr std::size_t many_edges = 400'000;  ///< lines that a plain machine still draws while the picture moves

Coat coat_of(Layer layer) {
    switch (layer) {
        case Layer::ground:
        case Layer::yard:
        case Layer::foundation: return Coat::ground;
        case Layer::framing: return Coat::framing;
        case Layer::cladding:
        case Layer::opening: return Coat::walls;
        case Layer::roof:
        case Layer::eaves: return Coat::roof;
        case Layer::interior: return Coat::linings;
        case Layer::fixture: break;
    }
    return Coat::fixtures;
}

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

vtkSmartPointer<vtkActor> faces_actor(bool loose) {
    auto actor = solid_actor(Qt::white);
    actor->GetProperty()->SetAmbient(0.68);
    actor->GetProperty()->SetDiffuse(1);
    actor->GetProperty()->SetSpecular(0);
    actor->GetProperty()->SetBackfaceCulling(loose ? 0 : 1);
    actor->GetMapper()->SetResolveCoincidentTopologyToPolygonOffset();  // edges stand before their faces
    return actor;
}

/// Every corner of triangles and their normals in one data set.
vtkSmartPointer<vtkPolyData> joined(std::span<const std::array<Point, 3>> triangles) {
    vtkNew<vtkPoints> points;
    points->SetDataTypeToDouble();  // what is measured
    vtkNew<vtkCellArray> cells;
    for (const std::array<Point, 3>& corners : triangles) {
        cells->InsertNextCell(3);
        for (const Point& at : corners) cells->InsertCellPoint(points->InsertNextPoint(at.x, at.y, at.z));
    }
    auto data = vtkSmartPointer<vtkPolyData>::New();
    data->SetPoints(points);
    data->SetPolys(cells);
    return data;
}

/// The share of a step after which it goes through a triangle. Right on an edge that two of them share it meets both.
std::optional<double> met(const std::array<Point, 3>& corners, const Point& from, Vector way) {
    constexpr double edge = 1e-9;
    const Vector first = corners[1] - corners[0];
    const Vector second = corners[2] - corners[0];
    const Vector across = cross(way, second);
    const double size = dot(first, across);
    if (size == 0) return std::nullopt;
    const Vector off = from - corners[0];
    const double u = dot(off, across) / size;
    const Vector turned = cross(off, first);
    const double v = dot(way, turned) / size;
    const double share = dot(second, turned) / size;
    if (!(u >= -edge && v >= -edge && u + v <= 1 + edge && share > 0 && share <= 1)) return std::nullopt;
    return share;
}

double eased(double share) {
    share = std::clamp(share, 0.0, 1.0);
    return share * share * (3 - 2 * share);
}

}  // namespace

HouseLayer::HouseLayer(vtkRenderer& renderer)
    : renderer_(renderer), cut_faces_(faces_actor(true)), cut_edges_(drawn_actor(palette::ink, 1.6)) {
    shown_.fill(Shown::whole);
    cut_faces_->GetProperty()->LightingOff();
    for (const auto& actor : {cut_faces_, cut_edges_}) {
        actor->VisibilityOff();
        renderer_.AddActor(actor);
    }
}

HouseLayer::~HouseLayer() = default;

void HouseLayer::clear() {
    for (const Set& set : sets_) {
        renderer_.RemoveActor(set.faces);
        renderer_.RemoveActor(set.edges);
    }
    sets_.clear();
    owners_.clear();
    all_ = nullptr;
    locator_ = nullptr;
    present_.fill(false);
    cut_.reset();
    cut_faces_->VisibilityOff();
    cut_edges_->VisibilityOff();
}

void HouseLayer::show(std::shared_ptr<const House> house, const HouseFrame& frame, bool loose) {
    clear();
    house_ = std::move(house);
    frame_ = frame;
    loose_ = loose;
    if (house_) add_sets(*house_, frame, loose);
}

void HouseLayer::add_sets(const House& house, const HouseFrame& frame, bool loose) {
    std::map<Key, std::vector<const HousePiece*>> sorted;
    const std::vector<HousePiece> pieces = house_pieces(house, frame);
    for (const HousePiece& piece : pieces) {
        const Layer layer = house.parts[piece.part].layer;
        if (layer != Layer::ground) sorted[key_of(piece, coat_of(layer))].push_back(&piece);
    }
    std::vector<std::array<Point, 3>> all;
    for (const auto& [key, members] : sorted) {
        Set set{key.coat, key.before, {}, faces_actor(loose), drawn_actor(palette::ink, 1), 1};
        const double turn = key.way * 2 * std::numbers::pi / ways_round;
        set.outward = {std::cos(turn), std::sin(turn), 0};
        ColoredTriangles faces;
        EdgeLines edges;
        for (const HousePiece* piece : members) {
            const Part& part = house.parts[piece->part];
            const QColor color = material_color(part.material, part.layer);
            for (const std::uint32_t i : piece->triangles) {
                const auto& [a, b, c] = part.mesh.triangles[i];
                const std::vector<Point>& points = part.mesh.points;
                all.push_back({frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])});
                faces.add(all.back(), color);
                const GapIndex gap = i < part.bounds.size() ? part.bounds[i] : GapIndex();
                owners_.push_back({static_cast<std::uint32_t>(sets_.size()), piece->part, gap});
            }
            edges.add(part.mesh, piece->triangles, frame, part.layer == Layer::foundation);
        }
        set_data(*set.faces, faces.data());
        set.faces->GetMapper()->ScalarVisibilityOn();
        set_data(*set.edges, edges.data());
        renderer_.AddActor(set.faces);
        renderer_.AddActor(set.edges);
        present_.at(static_cast<std::size_t>(key.coat)) = true;
        sets_.push_back(std::move(set));
    }
    all_ = joined(all);
}

void HouseLayer::set_shown(Coat coat, Shown shown) { shown_.at(static_cast<std::size_t>(coat)) = shown; }

void HouseLayer::look(const OrbitCamera& camera) {
    const Point eye = camera.eye();
    const Vector back = eye - camera.focus;
    const Vector to_eye = back * (1 / std::max(1e-9, length(back)));
    for (Set& set : sets_) {
        const Shown how = shown(set.coat);
        double share = 1;  // of being whole
        const bool open = open_ && !cut_;  // a cut shows the inside by itself
        if (open && set.before == HousePiece::Before::above) share = eased((0.16 - to_eye.z) / 0.12);
        if (open && set.before == HousePiece::Before::one_side) share = eased((0.12 - dot(set.outward, to_eye)) / 0.24);
        if (how == Shown::faint) share = 0;
        set.opacity = how == Shown::hidden ? 0 : std::lerp(faint, 1.0, share);
        set.faces->SetVisibility(set.opacity > 0);
        set.faces->GetProperty()->SetOpacity(set.opacity);
        const bool any_edges = set.opacity > 0 && (fine_ || owners_.size() < many_edges);
        set.edges->SetVisibility(any_edges);
        set.edges->GetProperty()->SetOpacity(std::lerp(faint_edges, edges_share, share));
    }
}

void HouseLayer::set_fine(bool fine) { fine_ = fine; }

void HouseLayer::cut(const std::optional<CutPlane>& plane) {
    cut_ = plane;
    vtkNew<vtkPlane> keep;
    if (plane) {
        keep->SetOrigin(plane->at.x, plane->at.y, plane->at.z);
        keep->SetNormal(-plane->normal.x, -plane->normal.y, -plane->normal.z);
    }
    for (const Set& set : sets_) {
        for (const auto& actor : {set.faces, set.edges}) {
            actor->GetMapper()->RemoveAllClippingPlanes();
            if (plane) actor->GetMapper()->AddClippingPlane(keep);
        }
    }
    cut_faces_->SetVisibility(plane.has_value());
    cut_edges_->SetVisibility(plane.has_value());
    if (plane && house_) show_cut_faces(*plane);
}

void HouseLayer::show_cut_faces(const CutPlane& plane) {
    CutPlane in_house = plane;
    in_house.at = plane.at + (frame_.origin - Point{});
    ColoredTriangles faces;
    std::vector<std::vector<Point>> outlines;
    for (const CutFace& face : section(house_->parts, in_house).faces) {
        if (face.layer == Layer::ground) continue;
        const QColor color = material_color(face.material, face.layer).darker(118);
        for (const auto& [a, b, c] : face.mesh.triangles) {
            const std::vector<Point>& points = face.mesh.points;
            faces.add({frame_.to_scene(points[a]), frame_.to_scene(points[b]), frame_.to_scene(points[c])}, color);
        }
        for (const auto& [from, to] : face.outline) outlines.push_back({frame_.to_scene(from), frame_.to_scene(to)});
    }
    set_data(*cut_faces_, faces.data());
    set_data(*cut_edges_, lines_data(outlines));
}

vtkSmartPointer<vtkIdList> HouseLayer::cells_along(const Point& from, const Point& to) const {
    if (!locator_) {
        locator_ = vtkSmartPointer<vtkStaticCellLocator>::New();
        locator_->SetDataSet(all_);
        locator_->BuildLocator();
    }
    const std::array<double, 3> a{from.x, from.y, from.z}, b{to.x, to.y, to.z};
    auto cells = vtkSmartPointer<vtkIdList>::New();
    locator_->FindCellsAlongLine(a.data(), b.data(), 0, cells);
    return cells;
}

bool HouseLayer::is_free(const Point& from, const Point& to) const {
    if (owners_.empty()) return true;
    const auto cells = cells_along(from, to);
    for (vtkIdType i = 0; i < cells->GetNumberOfIds(); ++i) {
        if (met(corners_of(cells->GetId(i)), from, to - from)) return false;
    }
    return true;
}

std::optional<SolidHit> HouseLayer::first_solid(const Point& from, const Point& to) const {
    if (owners_.empty()) return std::nullopt;
    const Vector way = to - from;
    const auto cells = cells_along(from, to);
    double nearest = 2;  // share of the way
    vtkIdType hit = -1;
    for (vtkIdType i = 0; i < cells->GetNumberOfIds(); ++i) {
        const vtkIdType cell = cells->GetId(i);
        if (sets_[owners_[static_cast<std::size_t>(cell)].set].opacity <= 0.5) continue;
        const auto share = met(corners_of(cell), from, way);
        if (!share || *share >= nearest || (cut_ && cut_->over(from + way * *share) > 0)) continue;
        nearest = *share;
        hit = cell;
    }
    if (hit < 0) return std::nullopt;
    const Owner& owner = owners_[static_cast<std::size_t>(hit)];
    const std::array<Point, 3> face = corners_of(hit);
    Vector across = cross(face[1] - face[0], face[2] - face[0]);
    across = across * (1 / std::max(1e-30, length(across)));
    const bool leaves = dot(across, way) > 0;
    // Whoever leaves a solid behind a cut has come into it where it is cut.
    if (leaves && cut_ && !loose_ && cut_->over(from) > 0) {
        const Point at = from + way * (cut_->over(from) / -dot(way, cut_->normal));
        return SolidHit{at, cut_->normal, {at, at, at}, owner.part, GapIndex()};
    }
    return SolidHit{from + way * nearest, leaves ? across * -1 : across, face, owner.part, owner.gap};
}

std::array<Point, 3> HouseLayer::corners_of(vtkIdType cell) const {
    std::array<Point, 3> corners;
    for (vtkIdType i = 0; i < 3; ++i) {
        std::array<double, 3> at{};
        all_->GetPoint(cell * 3 + i, at.data());
        corners.at(static_cast<std::size_t>(i)) = {at[0], at[1], at[2]};
    }
    return corners;
}

std::vector<vtkPolyData*> HouseLayer::casting() const {
    std::vector<vtkPolyData*> all;
    for (const Set& set : sets_) all.push_back(static_cast<vtkPolyDataMapper*>(set.faces->GetMapper())->GetInput());
    return all;
}

}  // namespace seamward::viewer
