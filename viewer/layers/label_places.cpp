// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/label_places.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace seamward::viewer {

namespace {

constexpr int directions = 32;
constexpr int rings = 14;
constexpr double ring_step = 13;  ///< pixels
constexpr double spare = 5;       ///< pixels between two labels

double overlap(const QRectF& a, const QRectF& b) {
    const QRectF both = a & b;
    return both.isValid() ? both.width() * both.height() : 0;
}

/// Pixels of the line from the anchor to the label's middle that run through a rectangle, about.
double hidden(const QPointF& from, const QPointF& to, const QRectF& rect) {
    constexpr int samples = 16;
    int inside = 0;
    for (int i = 0; i < samples; ++i) inside += rect.contains(from + (to - from) * (static_cast<double>(i) / samples)) ? 1 : 0;
    return inside * std::hypot(to.x() - from.x(), to.y() - from.y()) / samples;
}

QRectF square_around(const KeptClear& disc) {
    return {disc.at.x() - disc.radius, disc.at.y() - disc.radius, 2 * disc.radius, 2 * disc.radius};
}

bool touches(const QRectF& rect, const KeptClear& kept) {
    return kept.radius > 0 ? rect.intersects(square_around(kept)) : rect.contains(kept.at);
}

class Placer {
public:
    Placer(std::span<const KeptClear> keep_clear, const QRectF& area) : keep_clear_(keep_clear), area_(area) {}

    QRectF place(const LabelWish& wish) {
        QRectF best(wish.anchor, wish.size);
        double least = std::numeric_limits<double>::max();
        for (int ring = 0; ring < rings && !wish.pinned; ++ring) {
            for (int i = 0; i < directions; ++i) {
                // Straight up first: of two places equally good the earlier one is taken.
                const double angle = std::numbers::pi * (0.5 + (i % 2 == 0 ? 1 : -1) * ((i + 1) / 2) * 2.0 / directions);
                const QPointF direction(std::cos(angle), -std::sin(angle));
                const QRectF rect = candidate(wish, direction, wish.away + ring * ring_step);
                const double cost = cost_of(wish, rect) + ring * ring_step;
                if (cost >= least) continue;
                least = cost;
                best = rect;
            }
        }
        placed_.push_back({best, wish.anchor});
        return best;
    }

private:
    struct Placed {
        QRectF rect;
        QPointF anchor;
    };

    QRectF candidate(const LabelWish& wish, const QPointF& direction, double away) const {
        const double half = std::abs(direction.x()) * wish.size.width() / 2 + std::abs(direction.y()) * wish.size.height() / 2;
        QRectF rect(QPointF(), wish.size);
        rect.moveCenter(wish.anchor + direction * (away + half));
        rect.moveLeft(std::clamp(rect.left(), area_.left(), std::max(area_.left(), area_.right() - rect.width())));
        rect.moveTop(std::clamp(rect.top(), area_.top(), std::max(area_.top(), area_.bottom() - rect.height())));
        return rect;
    }

    double cost_of(const LabelWish& wish, const QRectF& rect) const {
        double cost = 0;
        const QRectF room = rect.adjusted(-spare, -spare, spare, spare);
        if (room.contains(wish.anchor)) cost += 5000;
        for (const Placed& other : placed_) {
            cost += 40 * overlap(room, other.rect) + 4 * hidden(wish.anchor, rect.center(), other.rect);
            cost += 8 * hidden(other.anchor, other.rect.center(), room);
        }
        for (const KeptClear& kept : keep_clear_) {
            // A label beside its own gap may touch that gap's symbol.
            const bool own = kept.radius > 0 && (kept.at - wish.anchor).manhattanLength() < 1;
            if (!own && touches(room, kept)) cost += kept.radius > 0 ? 150 + 6 * overlap(room, square_around(kept)) : 14;
        }
        return cost;
    }

    std::span<const KeptClear> keep_clear_;
    QRectF area_;
    std::vector<Placed> placed_;
};

}  // namespace

std::vector<QRectF> place_labels(std::span<const LabelWish> wishes, std::span<const KeptClear> keep_clear, const QRectF& area) {
    Placer placer(keep_clear, area);
    std::vector<QRectF> places;
    for (const LabelWish& wish : wishes) places.push_back(placer.place(wish));
    return places;
}

std::optional<QRectF> free_place(const LabelWish& wish, std::span<const QRectF> taken, std::span<const KeptClear> keep_clear,
                                 const QRectF& area) {
    for (int ring = 0; ring < 4; ++ring) {
        for (int i = 0; i < (ring == 0 ? 1 : directions); ++i) {
            const double angle = std::numbers::pi * 2 * i / directions;
            QRectF rect(QPointF(), wish.size);
            rect.moveCenter(wish.anchor + ring * ring_step * QPointF(std::cos(angle), std::sin(angle)));
            const QRectF room = rect.adjusted(-2, -2, 2, 2);
            const bool in_the_way =
                std::any_of(taken.begin(), taken.end(), [&](const QRectF& other) { return room.intersects(other); }) ||
                std::any_of(keep_clear.begin(), keep_clear.end(), [&](const KeptClear& kept) { return touches(room, kept); });
            if (area.contains(rect) && !in_the_way) return rect;
        }
    }
    return std::nullopt;
}

}  // namespace seamward::viewer
