// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>

#include "adapt/picture_frame.h"
#include "base/vector.h"

namespace seamward::viewer {

/// A point of a picture: units of its width and height, from its upper left corner.
struct PicturePoint {
    double x = 0, y = 0;
};

/// An eye that looks at a point from above the ground, always upright. Scene coordinates, meters and radians.
struct OrbitCamera {
    static constexpr double usual_angle = 0.52;

    Point focus;
    double distance = 10;
    double azimuth = -1.05;           ///< of the eye as seen from the focus, from x toward y: from the south, a little east
    double elevation = 0.62;          ///< of the eye above the horizon
    double view_angle = usual_angle;  ///< from the lower to the upper edge of the picture

    /// Where the eye is.
    [[nodiscard]] Point eye() const;
    /// Where a picture of that size shows a point; nothing when it lies behind the eye.
    [[nodiscard]] std::optional<PicturePoint> shown_at(const Point& at, double width, double height) const;
    /// The direction of sight through a point of a picture of that size; of unit length.
    [[nodiscard]] Vector sight(PicturePoint through, double width, double height) const;
    /// Pixels that a length at a point has across the line of sight, in a picture of that height; 0 behind the eye.
    [[nodiscard]] double shown_length(const Point& at, double meters, double height) const;
    void turn(double by_azimuth, double by_elevation);
    /// Moves the picture by shares of its height: `right` and `up` are where its content goes.
    void shift(double right, double up);
    /// Comes closer by that factor (2: half the distance).
    void approach(double factor, double reach);
};

/// Between two eyes, `share` of the way from one to the other, going round the shorter way and coming closer evenly.
[[nodiscard]] OrbitCamera between(const OrbitCamera& from, const OrbitCamera& to, double share);

/// The same direction of view, with the whole box inside the middle `fill` (0 to 1) of a picture that is `aspect`
/// times as wide as high, and in its center.
[[nodiscard]] OrbitCamera fitted(OrbitCamera camera, const Box& box, double aspect, double fill);

}  // namespace seamward::viewer
