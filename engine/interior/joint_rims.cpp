// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/joint_rims.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <optional>

namespace seamward {

namespace {

constexpr double step = 10e-3;          // meters between looks along a rim
constexpr double exact = 0.1e-3;        // meters: how well the end of a run is found
constexpr double slack = 1.001;         // for rounding
constexpr double off_the_rim = 0.1e-3;  // meters from a rim to where air is looked for: ten times what counts as flat

/// What a rim comes out in at a point of it, and in which direction.
struct Outside {
    std::optional<std::size_t> space;
    Vector out;
};

/// The runs of a straight rim; `outside_at` tells what it comes out in.
template <class OutsideAt>
void look_along(const Point& from, const Point& to, const OutsideAt& outside_at, std::vector<RimRun>& runs) {
    const double whole = distance(from, to);
    if (whole <= 0) return;
    const Vector along = (to - from) * (1 / whole);
    const double inset = std::min(exact / 2, whole / 4);  // at a corner, what is around it counts
    const auto looks = static_cast<std::size_t>(std::max(2.0, std::ceil(whole / step)));
    const auto place = [&](std::size_t i) {
        return inset + (whole - 2 * inset) * static_cast<double>(i) / static_cast<double>(looks);
    };
    double begin = 0;
    Outside here = outside_at(from + along * inset);
    const auto end_run = [&](double end) {
        if (here.space) runs.push_back({from + along * begin, from + along * end, *here.space, here.out});
        begin = end;
    };
    for (std::size_t i = 1; i <= looks; ++i) {
        const Outside next = outside_at(from + along * place(i));
        if (next.space == here.space) continue;
        double low = place(i - 1), high = place(i);
        while (high - low > exact) {
            const double middle = (low + high) / 2;
            (outside_at(from + along * middle).space == here.space ? low : high) = middle;
        }
        end_run((low + high) / 2);
        here = next;
    }
    end_run(whole);
}

/// The directions in which air may be beside the edge of a flat contact, above its plane and below it in turn: in the plane
/// itself a solid begins.
std::array<Vector, 6> looks_out(const Vector& outward, const Vector& normal) {
    std::array<Vector, 6> looks;
    std::size_t i = 0;
    for (const double degrees : {45, 20, 70}) {
        const double angle = degrees * std::numbers::pi / 180;
        looks.at(i++) = outward * std::cos(angle) + normal * std::sin(angle);
        looks.at(i++) = outward * std::cos(angle) + normal * -std::sin(angle);
    }
    return looks;
}

}  // namespace

std::vector<RimRun> rim_runs(const Contact& contact, const RimAir& air, const std::vector<std::size_t>& space_of) {
    std::vector<RimRun> runs;
    std::uint32_t side = 0;  // of the cuts of space, holds the rim that is looked along
    const auto look = [&](const Point& at, const Vector& toward, double off) -> Outside {
        const auto body = air.body_at(at + toward * off, toward, side);
        return body ? Outside{space_of[static_cast<std::size_t>(*body)], toward} : Outside{};
    };
    const std::size_t corners = contact.corners.size();
    if (!contact.is_flush()) {
        const double off = off_the_rim / contact.reach;
        side = air.side_around(contact.corners[0], contact.corners[1], off * slack);
        const auto outside_at = [&](const Point& at) { return look(at, contact.normal, off); };
        look_along(contact.corners[0], contact.corners[1], outside_at, runs);
        return runs;
    }
    for (std::size_t i = 0; i < corners; ++i) {
        const Point &from = contact.corners[i], &to = contact.corners[(i + 1) % corners];
        const Vector edge = to - from;
        if (length(edge) <= 0) continue;
        const Vector outward = cross(edge, contact.normal) * (1 / length(edge));
        const std::array<Vector, 6> looks = looks_out(outward, contact.normal);
        side = air.side_around(from, to, off_the_rim * slack);
        const auto outside_at = [&](const Point& at) {
            for (std::size_t k = 0; k < looks.size(); k += 2) {
                const Outside up = look(at, looks.at(k), off_the_rim), down = look(at, looks.at(k + 1), off_the_rim);
                if (up.space && up.space == down.space) return Outside{up.space, outward};
                if (up.space || down.space) return up.space ? up : down;
            }
            return Outside{};
        };
        look_along(from, to, outside_at, runs);
    }
    return runs;
}

}  // namespace seamward
