// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkNew.h>
#include <vtkRenderPass.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <optional>
#include <vector>

#include "document/closings_document.h"
#include "document/job_document.h"
#include "layers/callouts.h"
#include "layers/ground_layer.h"
#include "layers/house_ground.h"
#include "layers/house_layer.h"
#include "layers/marker_layer.h"
#include "layers/orbit_camera.h"
#include "layers/picture_marks.h"
#include "layers/way_layer.h"

namespace seamward::viewer {

/// The picture of a survey and its ways in: ground, gaps, ways and the words that belong to them.
class HouseScene {
public:
    /// So many, and finding what is hidden takes too long for each picture of a turn.
    static constexpr std::size_t many_triangles = 300'000;

    HouseScene();

    /// Takes the open job up, with its solids where they are there. False when there is nothing to show: no solids,
    /// and no gap has a position.
    bool show_job(const JobDocument& document);
    /// Shows the document's ways and the one chosen.
    void show_ways(const JobDocument& document);
    /// Shows or hides layers of the house; see HouseLayer.
    void set_shown(Coat coat, Shown shown);
    void set_open(bool open) { house_.set_open(open); }
    /// Cuts the house by a plane of the scene, or mends it.
    void cut(const std::optional<CutPlane>& plane);
    [[nodiscard]] const HouseLayer& house() const { return house_; }
    /// Whether solids are shown.
    [[nodiscard]] bool has_house() const { return !house_.empty(); }
    /// The solid that a picture of that size shows at a point.
    [[nodiscard]] std::optional<SolidHit> solid_at(PicturePoint at, const OrbitCamera& camera, double width, double height) const;
    /// Whether a solid stands between an eye and a point of the scene. O(log triangles).
    [[nodiscard]] bool is_hidden(const Point& at, const OrbitCamera& camera) const;
    /// The corner of a hit face near that point of the picture, or the hit itself.
    [[nodiscard]] Point snapped(const SolidHit& hit, PicturePoint at, const OrbitCamera& camera, double width,
                                double height) const;
    /// The plane that takes a share of the house away from one side: 0 to 3 from the south, the east, the north, the west, 4 from
    /// above.
    [[nodiscard]] CutPlane plane_of(int side, double depth) const;
    /// An eye that goes round to where most of the chosen way is seen; nothing when from here about as much is.
    [[nodiscard]] std::optional<OrbitCamera> better_view(const OrbitCamera& camera);
    /// An eye that looks at points of the scene, or, without any, at the chosen way, from where most of them is seen, near the
    /// direction of the eye now.
    [[nodiscard]] OrbitCamera view_of(std::span<const Point> points, const OrbitCamera& camera, double aspect);
    /// Takes the colors of the palette, which may have changed.
    void recolor();
    /// Looks from there. Call it before each rendering that follows a change of the eye.
    void look(const OrbitCamera& camera);
    /// Fine: every pixel from several samples, for a picture at rest; otherwise fast, while it moves.
    void set_fine(bool fine);
    /// The same direction of view with the whole house in a picture `aspect` times as wide as high.
    [[nodiscard]] OrbitCamera whole_house(const OrbitCamera& camera, double aspect) const;

    /// The gap whose symbol is shown nearest to a point of a picture of that size, within some pixels; or none.
    [[nodiscard]] std::optional<GapIndex> gap_near(const Survey& survey, PicturePoint at, const OrbitCamera& camera, double width,
                                                   double height) const;

    [[nodiscard]] vtkRenderer* renderer() const { return renderer_.Get(); }
    [[nodiscard]] bool has_places() const { return frame_.has_value(); }
    /// From the frame of the job to the scene's; only when there are places.
    [[nodiscard]] const PictureFrame& frame() const { return *frame_; }
    /// Meters; only when there are places.
    [[nodiscard]] double reach() const { return frame_ ? frame_->reach : 1; }
    [[nodiscard]] double grid_step() const { return ground_.grid_step(); }
    [[nodiscard]] const std::vector<Callout>& callouts() const { return callouts_; }
    /// The chosen way's line; empty when none is chosen.
    [[nodiscard]] const WayLine& chosen_line() const { return line_; }
    /// Its parts that something hides from where one looked last. Scene.
    [[nodiscard]] const std::vector<std::vector<Point>>& hidden_parts() const { return hidden_; }
    /// Closings that are marked in the picture, with their numbers in the list.
    void mark_closings(const Survey& survey, std::span<const NumberedGap> closings);
    [[nodiscard]] const std::vector<ClosingMark>& closings() const { return closings_; }
    /// Looks as an animal does on its way: everything is whole, no line and no symbol stands in the way.
    void set_riding(bool riding);
    /// The chosen way's line and gaps, which words should not cover.
    [[nodiscard]] const std::vector<Visible>& keep_clear() const { return keep_clear_; }
    /// Other gaps, which faint words should not cover.
    [[nodiscard]] const std::vector<Visible>& other_gaps() const { return other_gaps_; }

private:
    void forget_words();
    /// Of what is drawn; shown once the picture is at rest.
    void cast_shadow();
    void show_gaps(const Survey& survey, const RankedPath* chosen);
    void tell(const Survey& survey, const RankedPath& chosen);
    void tell_rooms(const Survey& survey, const RankedPath* chosen);
    void find_hidden(const Point& eye);
    [[nodiscard]] WayLine line_of(const JobDocument& document, std::size_t way) const;
    [[nodiscard]] std::vector<std::vector<Point>> other_lines(const JobDocument& document) const;

    vtkNew<vtkRenderer> renderer_;
    vtkSmartPointer<vtkRenderPass> quick_, fine_;  ///< what the renderer does while the picture moves, and at rest
    bool is_fine_ = false;
    GroundLayer ground_;
    HouseGround yard_;
    HouseLayer house_;
    HouseFrame house_frame_;
    std::shared_ptr<const House> solids_;
    double whole_distance_ = 0;  ///< of the eye that sees the whole house, meters; 0: not known
    WayLayer ways_;
    MarkerLayer gaps_, way_gaps_, smallest_;
    std::optional<PictureFrame> frame_;
    std::vector<Callout> callouts_;
    WayLine line_;
    std::vector<std::vector<Point>> hidden_;
    std::vector<ClosingMark> closings_;
    std::optional<CutPlane> cut_;
    bool riding_ = false;
    std::vector<Visible> keep_clear_, other_gaps_;
};

}  // namespace seamward::viewer
