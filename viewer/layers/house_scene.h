// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkNew.h>
#include <vtkRenderPass.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <optional>
#include <vector>

#include "document/job_document.h"
#include "layers/callouts.h"
#include "layers/ground_layer.h"
#include "layers/marker_layer.h"
#include "layers/orbit_camera.h"
#include "layers/way_layer.h"

namespace seamward::viewer {

/// The picture of a survey and its ways in: ground, gaps, ways and the words that belong to them.
class HouseScene {
public:
    HouseScene();

    /// Takes the open job up. False when no gap of it has a position: then there is nothing to show.
    bool show_job(const JobDocument& document);
    /// Shows the document's ways and the one chosen.
    void show_ways(const JobDocument& document);
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
    /// Meters; only when there are places.
    [[nodiscard]] double reach() const { return frame_ ? frame_->reach : 1; }
    [[nodiscard]] double grid_step() const { return ground_.grid_step(); }
    [[nodiscard]] const std::vector<Callout>& callouts() const { return callouts_; }
    /// The chosen way's line; empty when none is chosen.
    [[nodiscard]] const WayLine& chosen_line() const { return line_; }
    /// The chosen way's line and gaps, which words should not cover.
    [[nodiscard]] const std::vector<Visible>& keep_clear() const { return keep_clear_; }
    /// Other gaps, which faint words should not cover.
    [[nodiscard]] const std::vector<Visible>& other_gaps() const { return other_gaps_; }

private:
    void forget_words();
    void show_gaps(const Survey& survey, const RankedPath* chosen);
    void tell(const Survey& survey, const RankedPath& chosen);
    void tell_rooms(const Survey& survey, const RankedPath* chosen);

    vtkNew<vtkRenderer> renderer_;
    vtkSmartPointer<vtkRenderPass> fine_;  ///< what the renderer does in between when it is fine
    bool is_fine_ = false;
    GroundLayer ground_;
    WayLayer ways_;
    MarkerLayer gaps_, way_gaps_, smallest_;
    std::optional<PictureFrame> frame_;
    std::vector<Callout> callouts_;
    WayLine line_;
    std::vector<Visible> keep_clear_, other_gaps_;
};

}  // namespace seamward::viewer
