// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_gaps.h"

#include <algorithm>
#include <cmath>

namespace seamward {

namespace {

constexpr double before_gap = 0.06;  ///< meters of something before a gap through which it still counts as seen: a screen, a flap
constexpr double apart = 0.3;        ///< meters from the house: farther off, a gap belongs to the yard
constexpr double facing = 0.25;      ///< cosine to the line of sight from which on a gap faces an elevation
constexpr double floor_below = 0.05;  ///< meters by which a gap of a story may lie under its floor

/// The way through a gap, its outer end first; one point where only the place is known.
std::vector<Point> way_from_outside(const House& house, GapIndex gap) {
    const Gap& of = house.survey[gap];
    std::vector<Point> way;
    if (gap.value < house.places.size()) way = house.places[gap.value].through;
    if (way.empty() && of.at) way = {*of.at};
    if (house.survey[of.between[0]].kind != SpaceKind::outdoors) std::reverse(way.begin(), way.end());
    return way;
}

bool meets(const House& house, const Gap& gap, SpaceKind kind) {
    return std::any_of(gap.between.begin(), gap.between.end(),
                       [&](SpaceIndex space) { return house.survey[space].kind == kind; });
}

bool off_house(const DrawnHouse& house, const Point& p) {
    return p.x < house.low.x - apart || p.x > house.high.x + apart || p.y < house.low.y - apart || p.y > house.high.y + apart;
}

std::size_t story_of(const DrawnHouse& house, const Gap& gap, double height) {
    const auto at_floor = [&](double z) {
        std::size_t story = 0;
        for (std::size_t i = 1; i < house.floors.size(); ++i) {
            if (z >= house.floors[i] - floor_below) story = i;
        }
        return story;
    };
    // A room tells its story; of two rooms the upper one, from which a gap in the floor is reached.
    std::optional<std::size_t> of_room;
    for (const SpaceIndex space : gap.between) {
        const SpaceKind kind = house.house.survey[space].kind;
        if (kind != SpaceKind::living && kind != SpaceKind::attached) continue;
        if (space.value >= house.house.middles.size()) continue;
        const MiddleSurface& middle = house.house.middles[space.value];
        if (middle.figure.outline.empty() || middle.frame.n.z < 0.5) continue;
        of_room = std::max(of_room.value_or(0), at_floor(middle.frame.origin.z));
    }
    // Of a room open through two stories, the plan is the one at the gap's own height.
    return std::max(of_room.value_or(0), at_floor(height));
}

/// From a point to the edge of the house, the way an elevation looks.
double depth(const DrawnHouse& house, const Point& p, std::size_t side) {
    switch (side) {
        case 0: return house.high.y - p.y;
        case 1: return house.high.x - p.x;
        case 2: return p.y - house.low.y;
        default: return p.x - house.low.x;
    }
}

}  // namespace

std::optional<GapView> view_of(const DrawnHouse& house, const std::array<Elevation, 4>& elevations, GapIndex index) {
    const Gap& gap = house.house.survey[index];
    const std::vector<Point> way = way_from_outside(house.house, index);
    if (way.empty()) return std::nullopt;
    const Point& outer = way.front();
    const Point middle = gap.at.value_or(way[way.size() / 2]);
    const bool outdoors = meets(house.house, gap, SpaceKind::outdoors);
    const bool has_solids = way.size() > 1 && house.described;
    if (outdoors && has_solids && (off_house(house, middle) || meets(house.house, gap, SpaceKind::harborage)))
        return GapView{DrawnView::Kind::site, 0, middle};
    if (outdoors) {
        Vector out = outer - way.back();
        const double run = length(out);
        if (run > 0) out = out * (1 / run);
        std::optional<std::size_t> best;
        double best_turn = -1, best_depth = 0;
        for (std::size_t side = 0; side < elevations.size(); ++side) {
            if (outer.z < house.ground || !elevations.at(side).sight->sees(outer, before_gap)) continue;
            const double turn = dot(out, elevations.at(side).view.frame.n), far = depth(house, outer, side);
            const bool faces = turn > facing;
            const bool better = !best || (faces ? turn > std::max(best_turn, facing) : best_turn <= facing && far < best_depth);
            if (!better) continue;
            best = side;
            best_turn = turn;
            best_depth = far;
        }
        if (best) return GapView{DrawnView::Kind::elevation, *best, outer};
    }
    if (house.floors.empty()) return std::nullopt;
    return GapView{DrawnView::Kind::plan, story_of(house, gap, middle.z), middle};
}

}  // namespace seamward
