// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/surroundings.h"

#include <algorithm>
#include <numeric>
#include <unordered_set>

namespace seamward {

namespace {

constexpr double narrower = 0.6;  // of the radius: a passage of less is no way for the ball
constexpr double wider = 1.5;     // of the radius: a stand of so much is out of the opening
constexpr std::size_t most_stands = 4000;

/// The box around a section, a little larger, and its plane.
struct Gate {
    Point low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300}, at;
    Vector normal;

    Gate(const Section& section, double more) {
        for (const ConvexPolygon& piece : section.pieces) {
            if (const Vector area = doubled_area(piece); dot(area, area) > dot(normal, normal)) normal = area;
            for (const Point& p : piece) {
                low = {std::min(low.x, p.x - more), std::min(low.y, p.y - more), std::min(low.z, p.z - more)};
                high = {std::max(high.x, p.x + more), std::max(high.y, p.y + more), std::max(high.z, p.z + more)};
            }
        }
        at = section.pieces[0][0];
    }

    /// Whether the straight line goes through. What stands within a section is not in the way here.
    [[nodiscard]] bool is_crossed(const Point& a, const Point& b) const {
        const double before = dot(normal, a - at), after = dot(normal, b - at);
        if ((before < 0) == (after < 0)) return false;
        const Point cut = a + (b - a) * (before / (before - after));
        return cut.x >= low.x && cut.x <= high.x && cut.y >= low.y && cut.y <= high.y && cut.z >= low.z && cut.z <= high.z;
    }

    [[nodiscard]] bool is_crossed(const Passages& passages, std::uint32_t i) const {
        Point from = passages[passages.passage(i).from].at;
        for (const Point& to : passages.corners_of(i)) {
            if (is_crossed(from, to)) return true;
            from = to;
        }
        return is_crossed(from, passages[passages.passage(i).to].at);
    }
};

}  // namespace

Surroundings::Surroundings(const Passages& passages, const Bodies& bodies, const Openings& openings, std::size_t which,
                           double radius)
    : passages_(passages), openings_(openings), which_(which), radius_(radius) {
    const Opening& opening = openings.list[which];
    for (const std::uint32_t i : opening.passages) {
        add(passages.passage(i).from, bodies, opening);
        add(passages.passage(i).to, bodies, opening);
    }
    for (std::size_t k = 0; k < stands_.size() && stands_.size() < most_stands; ++k) {
        if (stands_[k].out) continue;
        for (const std::uint32_t i : passages.of(stands_[k].stand)) {
            const std::uint32_t to = passages.passage(i).across(stands_[k].stand);
            const std::int32_t body = bodies.of[to];
            if (body != opening.first && body != opening.second) continue;
            if (passages.is_portal(to) && openings.at_portal[to] != Openings::none && openings.at_portal[to] != which) continue;
            if (passages.passage(i).clearance >= narrower * radius && !openings.may_go_elsewhere(passages, i, which))
                add(to, bodies, opening);
        }
    }
}

void Surroundings::add(std::uint32_t stand, const Bodies& bodies, const Opening& opening) {
    const double clearance = passages_[stand].clearance;
    if (clearance < narrower * radius_ || !local_.emplace(stand, stands_.size()).second) return;
    const std::int32_t body = bodies.of[stand];
    const bool out = clearance >= std::min(wider * radius_, passages_.clearance().cap() * 0.98);
    stands_.push_back({stand, !out ? -1 : body == opening.first ? 0 : body == opening.second ? 1 : -1, out});
}

bool Surroundings::shut_by(const Section& section) const {
    const Gate gate(section, radius_);
    std::vector<std::size_t> parent(stands_.size());
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto find = [&](std::size_t x) {
        while (parent[x] != x) x = parent[x] = parent[parent[x]];
        return x;
    };
    for (std::size_t k = 0; k < stands_.size(); ++k) {
        for (const std::uint32_t i : passages_.of(stands_[k].stand)) {
            const Passage& p = passages_.passage(i);
            const auto to = local_.find(p.across(stands_[k].stand));
            if (to == local_.end() || to->second <= k || p.clearance < narrower * radius_) continue;
            if (!gate.is_crossed(passages_, i) && !openings_.may_go_elsewhere(passages_, i, which_))
                parent[find(k)] = find(to->second);
        }
    }
    std::unordered_set<std::size_t> first;
    for (std::size_t k = 0; k < stands_.size(); ++k) {
        if (stands_[k].side == 0) first.insert(find(k));
    }
    for (std::size_t k = 0; k < stands_.size(); ++k) {
        if (stands_[k].side == 1 && first.contains(find(k))) return false;
    }
    return true;
}

}  // namespace seamward
