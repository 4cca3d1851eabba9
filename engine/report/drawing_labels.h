// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/plane.h"

namespace seamward {

/// A mark of a gap, with the balloon that says which one it is. Millimeters of the paper, y down.
struct Balloon {
    std::string text;
    bool stays_open = false;  ///< on purpose: drawn with another shape
    std::size_t of = 0;       ///< which of the caller's things it is
    Point2 site;              ///< where the gap is
    Point2 at;                ///< middle of the balloon
    double size = 6.6;        ///< across, mm; the same for all of a drawing

    /// Where the leader from the site ends: at the balloon's border.
    [[nodiscard]] Point2 leader_end() const;
};

/// A rectangle of the paper, mm.
struct PaperBox {
    Point2 low, high;

    [[nodiscard]] double width() const { return high.x - low.x; }
    [[nodiscard]] double height() const { return high.y - low.y; }
};

/// Where balloons may stand.
struct LabelRoom {
    bool right = true;   ///< whether the right side is free
    double margin = 12;  ///< mm beside the drawing that they may take
};

/// Places balloons around a drawing, none over another, no leader across another or through a balloon. Balloons stand in a row
/// along each side that may be used; which takes which place is the assignment of least total length of straight leaders, in
/// which no two cross (Bekos, Kaufmann, Symvonis and Wolff, Boundary labeling, 2007; by the triangle inequality, two that cross
/// would be shorter with their ends exchanged). Sites that lie on each other are moved apart by the size of a mark. Where there
/// are more balloons than places, or a leader would run too flat along its row, rows stand farther away, those beside the drawing
/// no farther than the margin. The result is the middle line of the rows. O(n^3).
[[nodiscard]] PaperBox place_balloons(std::vector<Balloon>& balloons, const PaperBox& drawing, const LabelRoom& room);

/// How many pairs of leaders cross, balloons overlap, or leaders run through another balloon.
[[nodiscard]] std::size_t label_conflicts(const std::vector<Balloon>& balloons);

/// Where in a row of costs each thing is put so that the sum is least: `costs[thing][place]`, no more things than places
/// (Kuhn 1955, Munkres 1957, with shortest augmenting paths).
[[nodiscard]] std::vector<std::size_t> least_assignment(const std::vector<std::vector<double>>& costs);

/// Whether two segments share a point.
[[nodiscard]] bool segments_meet(Point2 a, Point2 b, Point2 c, Point2 d);
[[nodiscard]] double distance_to_segment(Point2 p, Point2 a, Point2 b);

}  // namespace seamward
