// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <vector>

#include "adapt/way_line.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// A ride along a way in, at the height of the animal: slow before and in gaps, faster through rooms. A little inside the room
/// that it leads to it stops and turns to where most of the room is seen.
class Ride {
public:
    static constexpr double longest = 75;  ///< seconds
    static constexpr double view_angle = 1.15;

    /// Whether nothing solid stands between two points of the scene.
    using Free = std::function<bool(const Point&, const Point&)>;

    /// `way` in the scene. Its corners are rounded as far as the air is free. O(length).
    explicit Ride(const WayLine& way, const Free& free = {});

    /// False where nothing of the way is known.
    [[nodiscard]] bool possible() const { return seconds_.size() > 1; }
    /// Seconds from end to end.
    [[nodiscard]] double duration() const { return seconds_.empty() ? 0 : seconds_.back() + turning_; }
    /// Whether the ride has come to where the eye stays and looks round.
    [[nodiscard]] bool arrived(double seconds) const { return run_at(seconds) >= stays_at_; }
    /// The eye at that time. Only when the ride is possible.
    [[nodiscard]] OrbitCamera eye(double seconds) const;
    /// Stops of the way that are behind the eye at that time: as many gaps were passed.
    [[nodiscard]] std::size_t passed(double seconds) const;
    /// The stop that the eye is in, or comes to next within a little; nothing in the open.
    [[nodiscard]] std::optional<std::size_t> near(double seconds) const;
    /// When the eye is in a stop of the way.
    [[nodiscard]] double time_of(std::size_t stop) const;

private:
    [[nodiscard]] double run_at(double seconds) const;
    [[nodiscard]] Point at(double run) const;
    /// Where one looks while going, of unit length.
    [[nodiscard]] Vector ahead(double run) const;
    void look_round(const Free& free);

    std::vector<Point> line_;      ///< scene, with rounded corners
    std::vector<double> runs_;     ///< meters from the beginning to each point of the line
    std::vector<double> stops_;    ///< meters from the beginning to each stop
    std::vector<double> seconds_;  ///< at even steps of the run
    double step_ = 0.01;
    double stays_at_ = 0;  ///< meters: the eye goes no further, so that there is something ahead to look at
    double turning_ = 0;   ///< seconds in which it turns at the end
    Vector room_;          ///< where it looks then, of unit length
};

}  // namespace seamward::viewer
