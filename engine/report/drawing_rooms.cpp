// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_rooms.h"

#include <algorithm>
#include <cmath>
#include <limits>

#include "report/drawing_openings.h"
#include "report/drawing_svg.h"

namespace seamward {

namespace {

constexpr double line_height = 4.4;   ///< mm
constexpr double from_wall = 0.6;     ///< mm between a name and the walls
constexpr double place_step = 1.2;    ///< mm between places that are tried
constexpr double leader_cost = 6;     ///< a leader behind a name, against
constexpr double mark_cost = 40;      ///< a mark or a sign under it,
constexpr double line_cost = 4;       ///< a further line,
constexpr double middle_gain = 0.15;  ///< and a millimeter nearer to the middle of the room

PaperBox box_at(Point2 at, double width, std::size_t lines) {
    const Point2 half{width / 2, static_cast<double>(lines) * line_height / 2};
    return {at - half, at + half};
}

bool overlap(const PaperBox& a, const PaperBox& b) {
    return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

bool touches(const PaperBox& box, Point2 a, Point2 b) {
    const auto within = [&](Point2 p) { return p.x > box.low.x && p.x < box.high.x && p.y > box.low.y && p.y < box.high.y; };
    if (within(a) || within(b)) return true;
    const Point2 other{box.high.x, box.low.y}, fourth{box.low.x, box.high.y};
    return segments_meet(a, b, box.low, other) || segments_meet(a, b, other, box.high) || segments_meet(a, b, box.high, fourth) ||
           segments_meet(a, b, fourth, box.low);
}

/// Whether a box lies in a room, with a little air.
bool fits(const Figure& room, const PaperBox& box) {
    const PaperBox wide{box.low - Point2{from_wall, from_wall}, box.high + Point2{from_wall, from_wall}};
    if (!is_within(room, (wide.low + wide.high) * 0.5)) return false;
    const auto crossed = [&](const Loop& loop) {
        for (std::size_t i = 0, j = loop.size() - 1; i < loop.size(); j = i++) {
            if (touches(wide, loop[j], loop[i])) return true;
        }
        return false;
    };
    if (crossed(room.outline)) return false;
    return std::none_of(room.holes.begin(), room.holes.end(), crossed);
}

/// The ways to break a name into one, two and three lines of about the same length.
std::vector<std::vector<std::string>> ways_to_break(const std::string& name) {
    std::vector<std::vector<std::string>> ways{{name}};
    for (const double share : {0.65, 0.5, 0.36}) {
        std::vector<std::string> lines = broken_text(name, text_width(name) * share);
        if (lines.size() <= 3 && lines.size() > ways.back().size()) ways.push_back(std::move(lines));
    }
    return ways;
}

struct Found {
    RoomName name;
    double cost = std::numeric_limits<double>::infinity();
};

void try_places(const Figure& room, const std::vector<std::string>& lines, const NameObstacles& obstacles, Found& best) {
    double width = 0;
    for (const std::string& line : lines) width = std::max(width, text_width(line));
    Point2 low = room.outline.front(), high = low;
    for (const Point2 p : room.outline) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    const double more_lines = line_cost * static_cast<double>(lines.size() - 1);
    const Point2 half{width / 2 + from_wall, static_cast<double>(lines.size()) * line_height / 2 + from_wall};
    const Point2 room_middle = (low + high) * 0.5;
    for (double y = low.y + half.y; y <= high.y - half.y; y += place_step) {
        for (double x = low.x + half.x; x <= high.x - half.x; x += place_step) {
            const PaperBox box = box_at({x, y}, width, lines.size());
            if (!fits(room, box)) continue;
            double cost = more_lines + middle_gain * std::hypot(x - room_middle.x, y - room_middle.y);
            for (const PaperBox& other : obstacles.boxes) cost += overlap(box, other) ? mark_cost : 0;
            if (cost >= best.cost) continue;
            for (const Balloon& balloon : *obstacles.balloons) {
                const PaperBox mark{balloon.site - Point2{1.2, 1.2}, balloon.site + Point2{1.2, 1.2}};
                if (overlap(box, mark))
                    cost += mark_cost;
                else if (touches(box, balloon.site, balloon.at))
                    cost += leader_cost;
            }
            if (cost < best.cost) best = {{lines, {x, y}, box, false}, cost};
        }
    }
}

}  // namespace

std::vector<RoomName> place_room_names(const std::vector<PaperRoom>& rooms, const NameObstacles& obstacles) {
    std::vector<RoomName> names;
    for (const PaperRoom& room : rooms) {
        Found best;
        for (const std::vector<std::string>& lines : ways_to_break(room.name)) try_places(room.figure, lines, obstacles, best);
        if (best.cost >= mark_cost) {  // none, or over a sign
            best = {};
            try_places(room.figure, {room.key}, obstacles, best);
            best.name.keyed = true;
        }
        if (best.name.lines.empty()) {  // a closet smaller than a letter
            const Point2 at = (room.figure.outline.front() + room.figure.outline[room.figure.outline.size() / 2]) * 0.5;
            best.name = {{room.key}, at, box_at(at, text_width(room.key), 1), true};
        }
        names.push_back(std::move(best.name));
    }
    return names;
}

}  // namespace seamward
