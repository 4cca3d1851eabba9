// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_layer.h"

#include <sys/resource.h>
#include <vtkIdList.h>
#include <vtkMapper.h>
#include <vtkNew.h>
#include <vtkPlane.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>
#include <vtkShaderProperty.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <utility>

#include "adapt/polydata.h"
#include "layers/material_color.h"
#include "layers/palette.h"
#include "layers/rows.h"
#include "layers/scene_actor.h"

namespace seamward::viewer {

namespace {

constexpr double faint = 0.10;        ///< opacity of what one looks through
constexpr double edges_share = 0.55;  ///< opacity of edges
constexpr double faint_edges = 0.16;
constexpr std::size_t many_edges = 400'000;   ///< triangles whose edges a plain machine still draws while the picture moves
constexpr int behind = 10;                    ///< niceness of what can wait until the picture is drawn
constexpr std::size_t many_to_cut = 150'000;  ///< triangles that are cut in about 30 ms

vtkSmartPointer<vtkActor> faces_actor(bool loose) {
    auto actor = solid_actor(Qt::white);
    actor->GetProperty()->SetAmbient(0.68);
    actor->GetProperty()->SetDiffuse(1);
    actor->GetProperty()->SetSpecular(0);
    // VTK works highlights out for each light and pixel and takes them times nothing then: up to a third of the time of a frame
    // that the processor draws. Without the line that sums them up they are left out; where another VTK has another line, nothing
    // changes.
    actor->GetShaderProperty()->AddFragmentShaderReplacement("specular = specular * specularColor;", false,
                                                             "specular = vec3(0.0);", true);
    actor->GetProperty()->SetBackfaceCulling(loose ? 0 : 1);
    actor->GetMapper()->SetResolveCoincidentTopologyToPolygonOffset();  // edges stand before their faces
    return actor;
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

/// As RunContext::check(), where nothing may be thrown.
bool called_off(const RunContext& context) {
    try {
        context.check();
    } catch (const Cancelled&) {
        return true;
    }
    return false;
}

/// Where parts are cut, in their order, without the ground: those that the plane misses cost little.
std::vector<CutFace> faces_of_cut(std::span<const Part> parts, const CutPlane& plane, const RunContext& context) {
    std::vector<std::vector<CutFace>> of_parts(parts.size());
    for_rows(static_cast<int>(parts.size()), [&](int row) {
        const auto i = static_cast<std::size_t>(row);
        const std::vector<Point>& points = parts[i].mesh.points;
        const auto is_over = [&](const Point& at) { return plane.over(at) > 0; };
        if (parts[i].layer == Layer::ground || points.empty()) return;
        const bool first = is_over(points.front());
        if (std::ranges::all_of(points, [&](const Point& at) { return is_over(at) == first; })) return;
        if (!called_off(context)) of_parts[i] = section(parts.subspan(i, 1), plane).faces;
    });
    context.check();
    std::vector<CutFace> faces;
    for (std::vector<CutFace>& of_part : of_parts) std::ranges::move(of_part, std::back_inserter(faces));
    return faces;
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
    prepared_ = nullptr;
    search_ = {};
    cut_data_ = {};
    present_.fill(false);
    cut_.reset();
    cut_faces_->VisibilityOff();
    cut_edges_->VisibilityOff();
}

void HouseLayer::show(std::shared_ptr<const House> house, std::shared_ptr<const PreparedHouse> prepared, bool loose) {
    clear();
    house_ = std::move(house);
    loose_ = loose;
    if (!house_) return;
    prepared_ = std::move(prepared);
    for (const PreparedHouse::Set& of : prepared_->sets) {
        Set set{of.coat, of.before, of.outward, faces_actor(loose), drawn_actor(palette::ink, 1), 1};
        set_data(*set.faces, of.faces);
        if (of.color)
            set_color(*set.faces, *of.color);
        else
            set.faces->GetMapper()->ScalarVisibilityOn();
        set_data(*set.edges, of.edges);
        renderer_.AddActor(set.faces);
        renderer_.AddActor(set.edges);
        present_.at(static_cast<std::size_t>(set.coat)) = true;
        sets_.push_back(std::move(set));
    }
    search_ = answer_of<Search>(search_task_, [house = house_, prepared = prepared_](const RunContext& /*context*/) {
        (void)setpriority(PRIO_PROCESS, 0, behind);  // of this thread
        Search search{searched_triangles(*house, *prepared), vtkSmartPointer<vtkStaticCellLocator>::New()};
        search.locator->SetDataSet(search.triangles);
        search.locator->BuildLocator();
        return search;
    });
}

void HouseLayer::set_shown(Coat coat, Shown shown) { shown_.at(static_cast<std::size_t>(coat)) = shown; }

std::vector<vtkSmartPointer<vtkPolyData>> HouseLayer::shown_faces() const {
    std::vector<vtkSmartPointer<vtkPolyData>> faces;
    for (std::size_t i = 0; i < sets_.size(); ++i) {
        if (shown(sets_[i].coat) != Shown::hidden) faces.push_back(prepared_->sets[i].faces);
    }
    return faces;
}

void HouseLayer::look(const OrbitCamera& camera) {
    const Point eye = camera.eye();
    const Vector back = eye - camera.focus;
    const Vector to_eye = back * (1 / std::max(1e-9, length(back)));
    for (Set& set : sets_) {
        const Shown how = shown(set.coat);
        double share = 1;                  // of being whole
        const bool open = open_ && !cut_;  // a cut shows the inside by itself
        if (open && set.before == HousePiece::Before::above) share = eased((0.16 - to_eye.z) / 0.12);
        if (open && set.before == HousePiece::Before::one_side) share = eased((0.12 - dot(set.outward, to_eye)) / 0.24);
        if (how == Shown::faint) share = 0;
        set.opacity = how == Shown::hidden ? 0 : std::lerp(faint, 1.0, share);
        set.faces->SetVisibility(set.opacity > 0);
        set.faces->GetProperty()->SetOpacity(set.opacity);
        const bool any_edges = set.opacity > 0 && (fine_ || triangle_count() < many_edges);
        set.edges->SetVisibility(any_edges);
        set.edges->GetProperty()->SetOpacity(std::lerp(faint_edges, edges_share, share));
    }
}

void HouseLayer::set_fine(bool fine) {
    fine_ = fine;
    if (fine_ && cut_data_.valid()) show_cut_faces();
}

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
    cut_faces_->VisibilityOff();
    cut_edges_->VisibilityOff();
    cut_data_ = {};
    if (!plane || !house_) return;
    cut_data_ = answer_of<CutData>(cut_task_, [house = house_, prepared = prepared_, at = *plane](const RunContext& context) {
        return cut_data(*house, prepared->frame, at, context);
    });
    if (fine_ || triangle_count() < many_to_cut) show_cut_faces();
}

HouseLayer::CutData HouseLayer::cut_data(const House& house, const HouseFrame& frame, const CutPlane& plane,
                                         const RunContext& context) {
    CutPlane in_house = plane;
    in_house.at = plane.at + (frame.origin - Point{});
    ColoredTriangles faces;
    std::vector<std::vector<Point>> outlines;
    for (const CutFace& face : faces_of_cut(house.parts, in_house, context)) {
        const QColor color = material_color(face.material, face.layer).darker(118);
        for (const auto& [a, b, c] : face.mesh.triangles) {
            const std::vector<Point>& points = face.mesh.points;
            faces.add({frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])}, color);
        }
        for (const auto& [from, to] : face.outline) outlines.push_back({frame.to_scene(from), frame.to_scene(to)});
    }
    return {faces.data(), lines_data(outlines)};
}

void HouseLayer::show_cut_faces() {
    const CutData& data = cut_data_.get();
    set_data(*cut_faces_, data.faces);
    set_data(*cut_edges_, data.edges);
    cut_data_ = {};
    cut_faces_->VisibilityOn();
    cut_edges_->VisibilityOn();
}

vtkSmartPointer<vtkIdList> HouseLayer::cells_along(const Point& from, const Point& to) const {
    const std::array<double, 3> a{from.x, from.y, from.z}, b{to.x, to.y, to.z};
    auto cells = vtkSmartPointer<vtkIdList>::New();
    search_.get().locator->FindCellsAlongLine(a.data(), b.data(), 0, cells);
    return cells;
}

bool HouseLayer::is_free(const Point& from, const Point& to) const {
    if (triangle_count() == 0) return true;
    const auto cells = cells_along(from, to);
    for (vtkIdType i = 0; i < cells->GetNumberOfIds(); ++i) {
        if (met(corners_of(cells->GetId(i)), from, to - from)) return false;
    }
    return true;
}

std::optional<SolidHit> HouseLayer::first_solid(const Point& from, const Point& to) const {
    if (triangle_count() == 0) return std::nullopt;
    const Vector way = to - from;
    const auto cells = cells_along(from, to);
    double nearest = 2;  // share of the way
    vtkIdType hit = -1;
    for (vtkIdType i = 0; i < cells->GetNumberOfIds(); ++i) {
        const vtkIdType cell = cells->GetId(i);
        if (sets_[prepared_->owners[static_cast<std::size_t>(cell)].set].opacity <= 0.5) continue;
        const auto share = met(corners_of(cell), from, way);
        if (!share || *share >= nearest || (cut_ && cut_->over(from + way * *share) > 0)) continue;
        nearest = *share;
        hit = cell;
    }
    if (hit < 0) return std::nullopt;
    const PreparedHouse::Owner& owner = prepared_->owners[static_cast<std::size_t>(hit)];
    const std::array<Point, 3> face = corners_of(hit);
    Vector across = cross(face[1] - face[0], face[2] - face[0]);
    across = across * (1 / std::max(1e-30, length(across)));
    const bool leaves = dot(across, way) > 0;
    // Whoever leaves a solid behind a cut has come into it where it is cut.
    if (leaves && cut_ && !loose_ && cut_->over(from) > 0) {
        const Point at = from + way * (cut_->over(from) / -dot(way, cut_->normal));
        return SolidHit{at, cut_->normal, {at, at, at}, owner.part, GapIndex()};
    }
    return SolidHit{from + way * nearest, leaves ? across * -1 : across, face, owner.part, gap_of(owner)};
}

std::array<Point, 3> HouseLayer::corners_of(vtkIdType cell) const {
    const PreparedHouse::Owner& owner = prepared_->owners[static_cast<std::size_t>(cell)];
    const TriangleMesh& mesh = house_->parts[owner.part].mesh;
    const auto& [a, b, c] = mesh.triangles[owner.triangle];
    const HouseFrame& frame = prepared_->frame;
    return {frame.to_scene(mesh.points[a]), frame.to_scene(mesh.points[b]), frame.to_scene(mesh.points[c])};
}

GapIndex HouseLayer::gap_of(const PreparedHouse::Owner& owner) const {
    const std::vector<GapIndex>& bounds = house_->parts[owner.part].bounds;
    return owner.triangle < bounds.size() ? bounds[owner.triangle] : GapIndex();
}

}  // namespace seamward::viewer
