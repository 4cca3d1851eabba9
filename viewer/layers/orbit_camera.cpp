// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/orbit_camera.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace seamward::viewer {

namespace {

/// Directions of the picture in the scene: right, up, and toward the eye.
struct Axes {
    Point right, up, back;
};

Axes axes(const OrbitCamera& camera) {
    const double ca = std::cos(camera.azimuth), sa = std::sin(camera.azimuth);
    const double ce = std::cos(camera.elevation), se = std::sin(camera.elevation);
    return {{-sa, ca, 0}, {-ca * se, -sa * se, ce}, {ca * ce, sa * ce, se}};
}

double dot(const Point& a, const Point& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

Point moved(const Point& from, const Point& along, double by) {
    return {from.x + along.x * by, from.y + along.y * by, from.z + along.z * by};
}

std::array<Point, 8> corners(const Box& box) {
    std::array<Point, 8> all;
    for (std::size_t i = 0; i < all.size(); ++i) {
        all[i] = {i & 1U ? box.high.x : box.low.x, i & 2U ? box.high.y : box.low.y, i & 4U ? box.high.z : box.low.z};
    }
    return all;
}

/// The smallest distance at which lower and higher bounds of `across` (the slope of a sight line, at most `slope` each
/// way) can hold for all corners, and the shift of the focus that centers them.
struct Span {
    double distance = 0, shift = 0;
};

Span span(const std::array<Point, 8>& corners, const Point& across, const Point& back, double slope) {
    double low = std::numeric_limits<double>::max();
    double high = std::numeric_limits<double>::lowest();
    for (const Point& corner : corners) {
        // |dot(across, corner) - shift| <= slope * (distance - dot(back, corner))
        low = std::min(low, dot(across, corner) - slope * dot(back, corner));
        high = std::max(high, dot(across, corner) + slope * dot(back, corner));
    }
    return {(high - low) / (2 * slope), (high + low) / 2};
}

}  // namespace

Point OrbitCamera::eye() const { return moved(focus, axes(*this).back, distance); }

double OrbitCamera::shown_length(const Point& at, double meters, double height) const {
    const double depth = distance - dot(moved(at, focus, -1), axes(*this).back);
    return depth < distance * 1e-3 ? 0 : meters * height / 2 / std::tan(view_angle / 2) / depth;
}

Vector OrbitCamera::sight(PicturePoint through, double width, double height) const {
    const Axes to = axes(*this);
    const double slope = 2 * std::tan(view_angle / 2) / height;
    const double right = (through.x - width / 2) * slope;
    const double up = (height / 2 - through.y) * slope;
    const Vector way = (to.right - Point{}) * right + (to.up - Point{}) * up - (to.back - Point{});
    return way * (1 / length(way));
}

std::optional<PicturePoint> OrbitCamera::shown_at(const Point& at, double width, double height) const {
    const Axes to = axes(*this);
    const Point off = moved(at, focus, -1);
    const double scale = shown_length(at, 1, height);
    if (scale == 0) return std::nullopt;
    return PicturePoint{width / 2 + dot(off, to.right) * scale, height / 2 - dot(off, to.up) * scale};
}

void OrbitCamera::turn(double by_azimuth, double by_elevation) {
    azimuth = std::remainder(azimuth + by_azimuth, 2 * std::numbers::pi);
    elevation = std::clamp(elevation + by_elevation, 0.05, 1.55);
}

void OrbitCamera::shift(double right, double up) {
    const Axes to = axes(*this);
    const double height = 2 * distance * std::tan(view_angle / 2);
    focus = moved(moved(focus, to.right, -right * height), to.up, -up * height);
}

void OrbitCamera::approach(double factor, double reach) { distance = std::clamp(distance / factor, reach * 0.02, reach * 20); }

OrbitCamera between(const OrbitCamera& from, const OrbitCamera& to, double share) {
    OrbitCamera camera = from;
    camera.focus = from.focus + (to.focus - from.focus) * share;
    camera.distance = from.distance * std::pow(to.distance / from.distance, share);
    camera.azimuth = from.azimuth + std::remainder(to.azimuth - from.azimuth, 2 * std::numbers::pi) * share;
    camera.elevation = std::lerp(from.elevation, to.elevation, share);
    camera.view_angle = std::lerp(from.view_angle, to.view_angle, share);
    return camera;
}

OrbitCamera fitted(OrbitCamera camera, const Box& box, double aspect, double fill) {
    const Axes to = axes(camera);
    const std::array<Point, 8> all = corners(box);
    const double slope = std::tan(camera.view_angle / 2) * fill;
    const Span across = span(all, to.right, to.back, slope * aspect);
    const Span upward = span(all, to.up, to.back, slope);
    // The focus lies in the plane through the scene's origin that faces the eye.
    camera.focus = moved(moved({}, to.right, across.shift), to.up, upward.shift);
    camera.distance = std::max(across.distance, upward.distance);
    return camera;
}

}  // namespace seamward::viewer
