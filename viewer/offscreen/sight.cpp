// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/sight.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace seamward::viewer {

Sight::Sight(const OrbitCamera& camera, int width, int height, const Box& all, double cut_away)
    : camera_(camera), width_(width), height_(height), eye_(camera.eye()) {
    const Vector ahead = camera.focus - eye_;
    forward_ = ahead * (1 / length(ahead));
    const Vector across = cross(forward_, {0, 0, 1});
    right_ = across * (1 / length(across));
    up_ = cross(right_, forward_);
    pixel_at_one_ = 2 * std::tan(camera.view_angle / 2) / height;
    double nearest = std::numeric_limits<double>::max();
    double farthest = 0;
    for (const double x : {all.low.x, all.high.x}) {
        for (const double y : {all.low.y, all.high.y}) {
            for (const double z : {all.low.z, all.high.z}) {
                nearest = std::min(nearest, away(Point{x, y, z}));
                farthest = std::max(farthest, away(Point{x, y, z}));
            }
        }
    }
    far_ = std::max(farthest, length(ahead)) * 1.02 + 0.1;
    near_ = std::max(nearest * 0.98 - 0.1, length(ahead) * cut_away);
}

Point Sight::at(double x, double y, double depth) const {
    const double off = away(depth);
    const double to_right = (x - width_ / 2.0) * pixel_at_one_;
    const double to_top = (height_ / 2.0 - y) * pixel_at_one_;
    return eye_ + (forward_ + right_ * to_right + up_ * to_top) * off;
}

}  // namespace seamward::viewer
