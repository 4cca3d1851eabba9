// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/soft_light.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "base/plane.h"
#include "layers/rows.h"
#include "layers/shadow_map.h"

namespace seamward::viewer {

namespace {

constexpr double sky_strength = 0.85;
constexpr int sky_samples = 14;
constexpr double shadow_dark = 0.30;
constexpr double whole_share = 0.24;  ///< of the reach around a house: there all is shown whole

std::size_t index(int x, int y, int width) {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
}

/// Depths of the picture's pixels, rows from above: of the nearest sample in each.
std::vector<float> nearest_depths(std::span<const DrawnLayer* const> layers, const Sight& sight, int fine) {
    const int width = sight.width();
    const int height = sight.height();
    std::vector<float> depths(index(0, height, width), 1);
    for (const DrawnLayer* layer : layers) {
        if (layer->empty()) continue;
        for_rows(height, [&](int y) {
            for (int x = 0; x < width; ++x) {
                float& nearest = depths[index(x, y, width)];
                for (int j = 0; j < fine; ++j) {
                    const std::size_t first = index(x * fine, (height - 1 - y) * fine + j, width * fine);
                    for (int i = 0; i < fine; ++i)
                        nearest = std::min(nearest, layer->depth()[first + static_cast<std::size_t>(i)]);
                }
            }
        });
    }
    return depths;
}

/// Where a point takes its samples, in shares of the reach: a spiral of five turns.
using Spiral = std::array<Point2, sky_samples>;

Spiral spiral(double turn) {
    Spiral all;
    for (int i = 0; i < sky_samples; ++i) {
        const double share = (i + 0.5) / sky_samples;
        const double angle = turn + share * 2 * std::numbers::pi * 5;
        all.at(static_cast<std::size_t>(i)) = {std::cos(angle) * share, std::sin(angle) * share};
    }
    return all;
}

class Sky {
    /// A point of the scene in half the memory.
    struct Spot {
        float x, y, z;
    };

public:
    Sky(const std::vector<float>& depths, double reach, const Sight& sight) : depths_(depths), sight_(sight), reach_(reach) {
        for (std::size_t i = 0; i < spirals_.size(); ++i)
            spirals_.at(i) = spiral(static_cast<double>(i) * 2 * std::numbers::pi / 16);
        places_.resize(depths.size());
        for_rows(sight.height(), [&](int y) {
            for (int x = 0; x < sight.width(); ++x) {
                const std::size_t i = index(x, y, sight.width());
                if (depths[i] < 1) places_[i] = spot(sight.at(x, y, static_cast<double>(depths[i])));
            }
        });
    }

    [[nodiscard]] float light(int x, int y) const {
        const std::size_t here = index(x, y, sight_.width());
        if (depths_[here] >= 1) return 1;
        const Point at = place(here);
        const Vector normal = normal_at(x, y);
        const double away = sight_.away(static_cast<double>(depths_[here]));
        const double reach = std::clamp(reach_ / sight_.pixel(away), 3.0, 160.0);
        // Turned from pixel to pixel, in a pattern of four by four that the smoothing below takes away.
        double taken = 0;
        for (const Point2& share : spirals_[static_cast<std::size_t>((x & 3) * 4 + (y & 3))]) {
            const int to_x = static_cast<int>(x + 0.5 + share.x * reach);
            const int to_y = static_cast<int>(y + 0.5 + share.y * reach);
            if (to_x < 0 || to_y < 0 || to_x >= sight_.width() || to_y >= sight_.height()) continue;
            const std::size_t there = index(to_x, to_y, sight_.width());
            if (depths_[there] >= 1) continue;
            const Vector off = place(there) - at;
            const double squared = dot(off, off);
            if (squared > reach_ * reach_) continue;
            taken +=
                std::max(0.0, dot(off, normal) - reach_ * 0.01 - 0.0006 * away) / (squared + reach_ * reach_ * 0.013) * reach_;
        }
        return static_cast<float>(std::max(0.0, 1 - sky_strength * taken / sky_samples));
    }

private:
    [[nodiscard]] static Spot spot(const Point& at) {
        return {static_cast<float>(at.x), static_cast<float>(at.y), static_cast<float>(at.z)};
    }
    [[nodiscard]] Point place(std::size_t pixel) const {
        const Spot& at = places_[pixel];
        return {static_cast<double>(at.x), static_cast<double>(at.y), static_cast<double>(at.z)};
    }

    /// From the neighbors that lie on the same face, as far as can be told.
    [[nodiscard]] Vector normal_at(int x, int y) const {
        const Vector across = slope(x, y, 1, 0);
        const Vector down = slope(x, y, 0, 1);
        const Vector normal = cross(down, across);
        const double size = length(normal);
        return size > 0 ? normal * (1 / size) : sight_.forward() * -1;
    }

    [[nodiscard]] Vector slope(int x, int y, int by_x, int by_y) const {
        const std::size_t here = index(x, y, sight_.width());
        const int width = sight_.width();
        const bool has_next = x + by_x < width && y + by_y < sight_.height();
        const bool has_last = x >= by_x && y >= by_y;
        const float next = has_next ? std::abs(depths_[index(x + by_x, y + by_y, width)] - depths_[here]) : 2;
        const float last = has_last ? std::abs(depths_[index(x - by_x, y - by_y, width)] - depths_[here]) : 2;
        if (next <= last) return has_next ? place(index(x + by_x, y + by_y, width)) - place(here) : Vector{};
        return place(here) - place(index(x - by_x, y - by_y, width));
    }

    const std::vector<float>& depths_;
    const Sight& sight_;
    double reach_;
    std::array<Spiral, 16> spirals_;
    std::vector<Spot> places_;
};

/// The mean of four by four pixels that lie at about the same depth.
std::vector<float> smoothed(const std::vector<float>& light, const std::vector<float>& depths, double reach, const Sight& sight) {
    std::vector<float> smooth(light.size(), 1);
    const int width = sight.width();
    for_rows(sight.height(), [&](int y) {
        for (int x = 0; x < width; ++x) {
            const std::size_t here = index(x, y, width);
            if (depths[here] >= 1) continue;
            const double away = sight.away(static_cast<double>(depths[here]));
            float sum = 0;
            float count = 0;
            for (int j = std::max(0, y - 2); j < std::min(sight.height(), y + 2); ++j) {
                for (int i = std::max(0, x - 2); i < std::min(width, x + 2); ++i) {
                    const std::size_t there = index(i, j, width);
                    if (depths[there] >= 1 || std::abs(sight.away(static_cast<double>(depths[there])) - away) > reach / 4)
                        continue;
                    sum += light[there];
                    count += 1;
                }
            }
            if (count > 0) smooth[here] = sum / count;
        }
    });
    return smooth;
}

/// Toward the sun: over the viewer's left shoulder, so that the shadow falls to the right behind the house.
Vector sun_of(const Sight& sight) {
    const Vector ahead = sight.forward();
    const Vector right = cross(ahead, {0, 0, 1});
    return right * (-1.0 / length(right)) * 0.62 + Vector{-ahead.x, -ahead.y, 0} * (0.25 / std::hypot(ahead.x, ahead.y)) +
           Vector{0, 0, 1};
}

/// What a function says of the places that a layer shows; 1 where it shows none.
template <class Function>
std::vector<float> over_places(const DrawnLayer& layer, const Sight& sight, int fine, const Function& function) {
    const std::array<const DrawnLayer*, 1> only{&layer};
    const std::vector<float> depths = nearest_depths(only, sight, fine);
    std::vector<float> values(depths.size(), 1);
    for_rows(sight.height(), [&](int y) {
        for (int x = 0; x < sight.width(); ++x) {
            const std::size_t here = index(x, y, sight.width());
            if (depths[here] < 1) values[here] = function(sight.at(x + 0.5, y + 0.5, static_cast<double>(depths[here])));
        }
    });
    return values;
}

}  // namespace

std::vector<float> sky_light(std::span<const DrawnLayer* const> layers, double reach, const Sight& sight, int fine) {
    const std::vector<float> depths = nearest_depths(layers, sight, fine);
    const Sky sky(depths, reach, sight);
    std::vector<float> light(depths.size(), 1);
    for_rows(sight.height(), [&](int y) {
        for (int x = 0; x < sight.width(); ++x) light[index(x, y, sight.width())] = sky.light(x, y);
    });
    return smoothed(light, depths, reach, sight);
}

std::vector<float> ground_light(const DrawnLayer& ground, std::span<vtkPolyData* const> casting, const Box& house, double reach,
                                double level, const Sight& sight, int fine) {
    if (ground.empty()) return {};
    const ShadowMap shadow(casting, house, reach, level, sun_of(sight));
    return over_places(ground, sight, fine, [&](const Point& at) { return static_cast<float>(1 - shadow_dark * shadow.at(at)); });
}

std::vector<float> nearness(const DrawnLayer& layer, const Box& house, double reach, const Sight& sight, int fine) {
    if (layer.empty()) return {};
    return over_places(layer, sight, fine, [&](const Point& at) {
        const double off_x = std::max({house.low.x - at.x, at.x - house.high.x, 0.0});
        const double off_y = std::max({house.low.y - at.y, at.y - house.high.y, 0.0});
        const double share = std::clamp((std::hypot(off_x, off_y) / reach - whole_share) / (1 - whole_share), 0.0, 1.0);
        return static_cast<float>(1 - share * share * (3 - 2 * share));
    });
}

}  // namespace seamward::viewer
