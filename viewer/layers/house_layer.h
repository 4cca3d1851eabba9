// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>
#include <vtkStaticCellLocator.h>

#include <array>
#include <cstdint>
#include <future>
#include <memory>
#include <optional>
#include <span>
#include <vector>

#include "document/newest_task.h"
#include "layers/orbit_camera.h"
#include "layers/prepared_house.h"
#include "layers/section.h"

namespace seamward::viewer {

/// How a coat looks.
enum class Shown : std::uint8_t { whole, faint, hidden };

/// What is seen through one point of the picture.
struct SolidHit {
    Point at;                     ///< scene
    Vector outward;               ///< of the face, toward the eye, of unit length
    std::array<Point, 3> face{};  ///< scene
    std::uint32_t part = 0;
    GapIndex gap;  ///< that the face bounds, or invalid
};

/// The solids of a house or a model, some hundred of actors at most whatever its size: what belongs to one coat and faces one way
/// is drawn as one. Walls, roofs and ceilings that stand between the eye and the rooms can fade as the eye goes round.
class HouseLayer {
public:
    explicit HouseLayer(vtkRenderer& renderer);
    ~HouseLayer();
    HouseLayer(const HouseLayer&) = delete;
    HouseLayer& operator=(const HouseLayer&) = delete;

    /// Null: nothing. `loose`: solids of others, whose faces may look the wrong way. O(1) beyond what the graphics card does.
    void show(std::shared_ptr<const House> house, std::shared_ptr<const PreparedHouse> prepared, bool loose);
    void set_shown(Coat coat, Shown shown);
    [[nodiscard]] Shown shown(Coat coat) const { return shown_.at(static_cast<std::size_t>(coat)); }
    /// Whether there is anything of it.
    [[nodiscard]] bool has(Coat coat) const { return present_.at(static_cast<std::size_t>(coat)); }
    /// Whether what stands between the eye and the rooms fades.
    void set_open(bool open) { open_ = open; }
    [[nodiscard]] bool is_open() const { return open_; }
    /// Takes away what lies on the normal's side of a plane of the scene and draws the cut; nothing: no cut. O(triangles); where
    /// that takes long while the picture moves, the faces of the cut are shown once it is at rest.
    void cut(const std::optional<CutPlane>& plane);
    /// Fades what has to for an eye there. Call it before each rendering that follows a change.
    void look(const OrbitCamera& camera);
    /// Fewer lines while the picture moves, where there are very many; at rest all that is still to be shown.
    void set_fine(bool fine);

    /// The faces of what is not hidden, as ColoredTriangles makes them.
    [[nodiscard]] std::vector<vtkSmartPointer<vtkPolyData>> shown_faces() const;
    [[nodiscard]] std::size_t set_count() const { return sets_.size(); }
    [[nodiscard]] bool empty() const { return sets_.empty(); }
    [[nodiscard]] std::size_t triangle_count() const { return prepared_ ? prepared_->owners.size() : 0; }
    /// The first solid along a line that is not hidden, faint or cut away; one that is cut is met where it is cut. About O(cube
    /// root of triangles); right after show() it may have to wait until a thread has sorted the triangles.
    [[nodiscard]] std::optional<SolidHit> first_solid(const Point& from, const Point& to) const;
    /// Whether a line meets no solid, shown or not, without the ground. Costs as first_solid().
    [[nodiscard]] bool is_free(const Point& from, const Point& to) const;

private:
    /// What is drawn as one.
    struct Set {
        Coat coat = Coat::walls;
        HousePiece::Before before = HousePiece::Before::nothing;
        Vector outward;
        vtkSmartPointer<vtkActor> faces, edges;
        double opacity = 1;  ///< as drawn now
    };
    /// A search for triangles along lines.
    struct Search {
        vtkSmartPointer<vtkPolyData> triangles;
        vtkSmartPointer<vtkStaticCellLocator> locator;
    };

    /// Where solids are cut.
    struct CutData {
        vtkSmartPointer<vtkPolyData> faces, edges;
    };

    void clear();
    void show_cut_faces();
    [[nodiscard]] static CutData cut_data(const House& house, const HouseFrame& frame, const CutPlane& plane,
                                          const RunContext& context);
    [[nodiscard]] std::array<Point, 3> corners_of(vtkIdType cell) const;
    [[nodiscard]] GapIndex gap_of(const PreparedHouse::Owner& owner) const;
    [[nodiscard]] vtkSmartPointer<vtkIdList> cells_along(const Point& from, const Point& to) const;

    vtkRenderer& renderer_;
    std::shared_ptr<const House> house_;
    std::shared_ptr<const PreparedHouse> prepared_;
    std::vector<Set> sets_;
    std::shared_future<Search> search_;     ///< is being made on a thread
    std::shared_future<CutData> cut_data_;  ///< likewise; not valid: none is to be shown
    std::array<Shown, coat_count> shown_;
    std::array<bool, coat_count> present_{};
    std::optional<CutPlane> cut_;
    vtkSmartPointer<vtkActor> cut_faces_, cut_edges_;
    bool open_ = true;
    bool loose_ = false;
    bool fine_ = true;
    NewestTask search_task_, cut_task_;  ///< last, so that their threads end before the rest goes
};

}  // namespace seamward::viewer
