// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <memory>
#include <string>
#include <vector>

#include "base/message.h"
#include "geometry/hidden_lines.h"
#include "house/house.h"

namespace seamward {

constexpr double plan_cut_height = 1.2;   ///< meters over the floor, 4 ft: drafting practice, no published source
constexpr double room_over_floor = 0.12;  ///< meters: where the middle of a described room lies

/// A room of a floor plan.
struct PlanRoom {
    Message name;
    Figure figure;  ///< x east, y north
};

/// How an opening is drawn in a plan.
struct PlanOpening {
    enum class Kind : std::uint8_t { hinged, overhead };
    Kind kind = Kind::hinged;
    Point2 hinge, far;  ///< ends of the leaf as it is shut; `hinge` is where it turns
    Point2 into;        ///< unit: to where it opens
    double height = 0;  ///< meters
};

/// A height that an elevation tells.
struct LevelMark {
    double height = 0;  ///< meters over the ground floor
    Message name;
};

/// One drawing in meters: x and y on the paper, y up.
struct DrawnView {
    enum class Kind : std::uint8_t { site, plan, elevation };
    Kind kind = Kind::plan;
    std::string id;
    Message title;
    std::size_t story = 0;       ///< of a plan
    bool north_assumed = false;  ///< nobody said where north is: y of the solids is taken for it
    Frame frame;
    std::vector<ViewLine> lines;
    std::vector<Loop> cut;       ///< solids that the plane of a plan cuts, cavities of walls filled
    std::vector<Loop> fine_cut;  ///< windows and their glass
    std::vector<PlanOpening> openings;
    std::vector<PlanRoom> rooms;
    std::vector<LevelMark> levels;
    double ground = 0;              ///< of an elevation
    std::array<Point2, 2> walls{};  ///< corners of the box round what a plan cuts of walls
    Point2 low, high;               ///< around all of it

    [[nodiscard]] Point2 on_paper(const Point& p) const {
        const Vector off = p - frame.origin;
        return {dot(off, frame.u), dot(off, frame.v)};
    }
};

/// A house to draw, and what of it is where.
struct DrawnHouse {
    const House& house;
    bool described = true;       ///< else its solids come from a model
    std::vector<double> floors;  ///< heights of the stories' floors, rising
    double ground = 0;           ///< height of the yard
    Point low, high;             ///< around the house without its yard
};

[[nodiscard]] DrawnHouse drawn_house(const House& house, bool described);

/// The four elevations and what sees them: `finest` in meters as in ViewSettings.
struct Elevation {
    DrawnView view;
    std::unique_ptr<LineView> sight;
};
/// 0 north, 1 east, 2 south, 3 west.
[[nodiscard]] Elevation make_elevation(const DrawnHouse& house, std::size_t side, double finest);
[[nodiscard]] DrawnView make_plan_view(const DrawnHouse& house, std::size_t story, double finest);
/// The house as a block, and what stands in its yard.
[[nodiscard]] DrawnView make_site_view(const DrawnHouse& house, double finest);

}  // namespace seamward
