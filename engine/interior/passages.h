// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <span>
#include <vector>

#include "interior/air.h"
#include "interior/clearance.h"

namespace seamward {

/// From one stand to another through a cell that both are on the border of, or one in the middle of.
struct Passage {
    /// How much is known of the ball that gets through.
    enum class Known : std::uint8_t {
        ends,      ///< what fits at both ends
        straight,  ///< that it does not get through in a straight line; it may by stepping aside
        led,       ///< a ball was led through
    };
    std::uint32_t from = 0, to = 0;  ///< stands
    double clearance = 0;            ///< meters; of the ball that was led through, or, before that, of one that may be
    Known known = Known::ends;
    Point tightest;  ///< where, once a ball was led

    [[nodiscard]] std::uint32_t across(std::uint32_t stand) const { return stand == from ? to : from; }
    [[nodiscard]] bool led() const { return known == Known::led; }
};

/// The air as a graph: a stand in each portal where a ball of `least` meters radius fits (first, numbered like the portals) and
/// in the middle of each cell (after them), and passages between the stands of a cell. Balls are led through only where somebody
/// asks, since most passages never matter.
class Passages {
public:
    Passages(const Air& air, const Clearance& clearance, double least, const RunContext& run);

    [[nodiscard]] std::size_t size() const { return stands_.size(); }
    [[nodiscard]] const Stand& operator[](std::uint32_t stand) const { return stands_[stand]; }
    [[nodiscard]] std::uint32_t middle_of(std::uint32_t cell) const { return portals_ + cell; }
    [[nodiscard]] bool is_portal(std::uint32_t stand) const { return stand < portals_; }
    /// What stands for the air of a cell: cubic meters for its middle, nothing for portals.
    [[nodiscard]] double volume_of(std::uint32_t stand) const;

    [[nodiscard]] std::size_t count() const { return passages_.size(); }
    [[nodiscard]] const Passage& passage(std::uint32_t i) const { return passages_[i]; }
    [[nodiscard]] std::span<const std::uint32_t> of(std::uint32_t stand) const {
        return {list_.data() + first_[stand], first_[stand + 1] - first_[stand]};
    }
    /// Learns a little more of the ball that gets through: tries the straight line first, and, when called again, steps aside.
    /// Until that is done, the clearance is a little below what may fit, so that others come first. Different passages may be led
    /// by several threads at a time.
    const Passage& lead(std::uint32_t i);
    /// The same until all is known: the passage's clearance is the radius of a ball that was led through.
    const Passage& led(std::uint32_t i);

    /// One more passage, through which a ball of that radius was led over `corners`; `of` knows it after `list_by_stand`.
    std::uint32_t add(std::uint32_t from, std::uint32_t to, double clearance, std::vector<Point> corners);
    void list_by_stand();
    [[nodiscard]] bool was_added(std::uint32_t i) const { return i >= straight_; }
    [[nodiscard]] std::size_t added() const { return corners_.size(); }  ///< of all passages so many are the last ones
    /// Between the ends of a passage, from `from` to `to`; none for those that were not added.
    [[nodiscard]] std::span<const Point> corners_of(std::uint32_t i) const {
        return was_added(i) ? corners_[i - straight_] : std::span<const Point>();
    }
    /// Leads a ball through a passage as `Clearance::way` does, from a point at the stand `start` to one at the other end.
    [[nodiscard]] ClearWay way(std::uint32_t i, std::uint32_t start, const Point& from, const Point& to,
                               const Clearance::Lead& lead) const;

    [[nodiscard]] const Air& air() const { return air_; }
    [[nodiscard]] const Clearance& clearance() const { return clearance_; }
    [[nodiscard]] double least() const { return least_; }

private:
    void place_stands();
    void join_stands();

    const Air& air_;
    const Clearance& clearance_;
    double least_;
    std::uint32_t portals_ = 0;
    std::vector<Stand> stands_;
    std::vector<Passage> passages_;
    std::size_t straight_ = 0;  ///< passages; all others were added and have
    std::vector<std::vector<Point>> corners_;
    std::vector<std::uint32_t> first_, list_;  ///< passages by stand
};

}  // namespace seamward
