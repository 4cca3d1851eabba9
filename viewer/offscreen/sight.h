// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/vector.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer {

/// An eye and the picture that it sees: from points of the scene to pixels and depths, and back. Depths are those of the graphics
/// card: 0 at the near plane, 1 at the far plane, and, across a flat face, linear over the picture.
class Sight {
public:
    /// Sees all of `all`, as far as it lies before the eye. What is nearer than that share of the way to the focus is cut away.
    Sight(const OrbitCamera& camera, int width, int height, const Box& all, double cut_away = 0.04);

    [[nodiscard]] const OrbitCamera& camera() const { return camera_; }
    [[nodiscard]] int width() const { return width_; }
    [[nodiscard]] int height() const { return height_; }
    [[nodiscard]] double near_plane() const { return near_; }
    [[nodiscard]] double far_plane() const { return far_; }

    /// Meters from the plane of the eye.
    [[nodiscard]] double away(const Point& at) const { return dot(at - eye_, forward_); }
    [[nodiscard]] double away(double depth) const { return near_ * far_ / (far_ - depth * (far_ - near_)); }
    [[nodiscard]] double depth(const Point& at) const { return far_ * (1 - near_ / away(at)) / (far_ - near_); }
    /// What a pixel shows at a depth.
    [[nodiscard]] Point at(double x, double y, double depth) const;
    /// The size of a pixel at that distance from the eye, meters.
    [[nodiscard]] double pixel(double away) const { return away * pixel_at_one_; }
    [[nodiscard]] Vector forward() const { return forward_; }

private:
    OrbitCamera camera_;
    int width_, height_;
    double near_, far_;
    Point eye_;
    Vector forward_, right_, up_;
    double pixel_at_one_;
};

}  // namespace seamward::viewer
