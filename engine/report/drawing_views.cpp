// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_views.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

#include "geometry/level_section.h"
#include "report/drawing_openings.h"

namespace seamward {

namespace {

constexpr double deepest_cavity = 0.2;      ///< meters: air between a wall's layers; chases are wider and stay white
constexpr double seen_below_floor = 1.0;    ///< meters under a floor to which a plan looks down
constexpr double story_clearance = 2.0;     ///< meters between floors of a model at least
constexpr double floor_share = 0.3;         ///< of the largest level face: so much makes a floor of a model
constexpr double knee_height = 0.3;         ///< meters over a floor,
constexpr double upright_share = 0.85;      ///< of the width there that walls keep up to the height of the cut
constexpr double least_height_step = 0.25;  ///< meters between heights that an elevation tells

/// Keeps numbers for materials.
class Looks {
public:
    std::uint32_t of(const std::string& material) {
        return numbers_.try_emplace(material, static_cast<std::uint32_t>(numbers_.size())).first->second;
    }

private:
    std::map<std::string, std::uint32_t> numbers_;
};

bool in_yard(const Part& part) { return part.layer == Layer::ground || part.layer == Layer::yard; }

/// Floors of described rooms.
std::vector<double> floors_of_rooms(const House& house) {
    std::vector<double> floors;
    for (std::size_t i = 0; i < std::min(house.middles.size(), house.survey.spaces.size()); ++i) {
        const SpaceKind kind = house.survey.spaces[i].kind;
        if (kind != SpaceKind::living && kind != SpaceKind::attached) continue;
        if (house.middles[i].figure.outline.empty() || house.middles[i].frame.n.z < 0.5) continue;
        floors.push_back(house.middles[i].frame.origin.z - room_over_floor);
    }
    std::sort(floors.begin(), floors.end());
    const auto same = [](double a, double b) { return b - a < story_clearance / 2; };
    floors.erase(std::unique(floors.begin(), floors.end(), same), floors.end());
    return floors;
}

void measure(const std::vector<Loop>& loops, std::array<Point2, 2>& box) {
    for (const Loop& loop : loops) {
        for (const Point2 p : loop) {
            box[0] = {std::min(box[0].x, p.x), std::min(box[0].y, p.y)};
            box[1] = {std::max(box[1].x, p.x), std::max(box[1].y, p.y)};
        }
    }
}

/// What a level plane cuts of a model: its area, and the box round it.
struct ModelCut {
    double area = 0;
    std::array<Point2, 2> box{Point2{1e9, 1e9}, Point2{-1e9, -1e9}};

    [[nodiscard]] Point2 size() const { return box[1] - box[0]; }
};

ModelCut cut_of_model(const House& house, double z) {
    ModelCut cut;
    for (const Part& part : house.parts) {
        if (in_yard(part)) continue;
        const std::vector<Loop> loops = level_section(part.mesh, z);
        double area = 0;
        for (const Loop& loop : loops) area += doubled_area(loop) / 2;
        cut.area += std::abs(area);  // of a part turned inside out, too
        measure(loops, cut.box);
    }
    return cut;
}

/// Level faces of a model that are large and have walls over them.
std::vector<double> floors_of_model(const House& house) {
    constexpr double fine = 20;  // heights to the meter that are told apart
    std::map<std::int64_t, double> area_at;
    for (const Part& part : house.parts) {
        if (in_yard(part)) continue;
        for (const auto& [a, b, c] : part.mesh.triangles) {
            const Point& p = part.mesh.points[a];
            const Vector n = cross(part.mesh.points[b] - p, part.mesh.points[c] - p);
            if (std::abs(n.z) > 0.999 * length(n)) area_at[std::llround(p.z * fine)] += std::abs(n.z) / 2;
        }
    }
    double largest = 0;
    for (const auto& [height, area] : area_at) largest = std::max(largest, area);
    std::vector<double> floors;
    for (const auto& [height, area] : area_at) {
        if (area < floor_share * largest) continue;
        const double floor = static_cast<double>(height) / fine;
        const bool of_same_slab = !floors.empty() && floor - floors.back() < story_clearance / 2;
        if (of_same_slab) floors.pop_back();
        if (floors.empty() || floor - floors.back() >= story_clearance) floors.push_back(floor);
    }
    std::vector<ModelCut> walls;
    double most = 0;
    for (const double floor : floors) {
        walls.push_back(cut_of_model(house, floor + plan_cut_height));
        most = std::max(most, walls.back().area);
    }
    for (std::size_t i = floors.size(); i-- > 0;) {
        // Under a roof the section shrinks from the knee to the chest: that is no story.
        const Point2 high = walls[i].size(), low = cut_of_model(house, floors[i] + knee_height).size();
        const bool upright = high.x >= upright_share * low.x && high.y >= upright_share * low.y;
        if (!(walls[i].area > floor_share * most) || !upright) floors.erase(floors.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return floors;
}

void include(DrawnView& view, Point2 p) {
    view.low = {std::min(view.low.x, p.x), std::min(view.low.y, p.y)};
    view.high = {std::max(view.high.x, p.x), std::max(view.high.y, p.y)};
}

void find_extent(DrawnView& view) {
    view.low = {1e9, 1e9};
    view.high = {-1e9, -1e9};
    for (const ViewLine& line : view.lines) {
        include(view, line.from);
        include(view, line.to);
    }
    for (const std::vector<Loop>* loops : {&view.cut, &view.fine_cut}) {
        for (const Loop& loop : *loops) {
            for (const Point2 p : loop) include(view, p);
        }
    }
    if (view.low.x > view.high.x) view.low = view.high = {0, 0};
}

/// The parts of a line that reach over a height.
void cut_below(std::vector<ViewLine>& lines, double height) {
    std::erase_if(lines, [&](const ViewLine& line) { return line.from.y <= height && line.to.y <= height; });
    for (ViewLine& line : lines) {
        for (auto [end, other] : {std::pair(&line.from, line.to), std::pair(&line.to, line.from)}) {
            if (end->y >= height) continue;
            const double share = (height - end->y) / (other.y - end->y);
            *end = *end + (other - *end) * share;
        }
    }
}

Message level_name(const DrawnHouse& house, std::size_t story) {
    if (house.floors.size() < 2) return "floor";
    return message("floor {}", {as_it_stands(story + 1)});
}

Frame plan_frame(double floor) { return {{0, 0, floor}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}; }

Frame elevation_frame(std::size_t side) {
    constexpr Vector up{0, 0, 1};
    switch (side) {
        case 0: return {{}, {-1, 0, 0}, up, {0, 1, 0}};
        case 1: return {{}, {0, 1, 0}, up, {1, 0, 0}};
        case 2: return {{}, {1, 0, 0}, up, {0, -1, 0}};
        default: return {{}, {0, -1, 0}, up, {-1, 0, 0}};
    }
}

}  // namespace

DrawnHouse drawn_house(const House& house, bool described) {
    DrawnHouse drawn{house, described, {}, 0, {1e9, 1e9, 1e9}, {-1e9, -1e9, -1e9}};
    double ground = -1e9;
    for (const Part& part : house.parts) {
        for (const Point& p : part.mesh.points) {
            if (part.layer == Layer::ground && described) ground = std::max(ground, p.z);
            if (in_yard(part)) continue;
            drawn.low = {std::min(drawn.low.x, p.x), std::min(drawn.low.y, p.y), std::min(drawn.low.z, p.z)};
            drawn.high = {std::max(drawn.high.x, p.x), std::max(drawn.high.y, p.y), std::max(drawn.high.z, p.z)};
        }
    }
    drawn.floors = described ? floors_of_rooms(house) : floors_of_model(house);
    const bool has_foundation =
        std::any_of(house.parts.begin(), house.parts.end(), [](const Part& part) { return part.layer == Layer::foundation; });
    if (ground == -1e9) ground = has_foundation && !drawn.floors.empty() ? drawn.floors.front() : drawn.low.z;
    drawn.ground = ground;
    return drawn;
}

Elevation make_elevation(const DrawnHouse& house, std::size_t side, double finest) {
    static constexpr std::array ids{"north", "east", "south", "west"};
    static constexpr std::array titles{"North elevation", "East elevation", "South elevation", "West elevation"};
    Elevation made;
    DrawnView& view = made.view;
    view.kind = DrawnView::Kind::elevation;
    view.id = ids.at(side);
    view.title = titles.at(side);
    view.frame = elevation_frame(side);
    view.ground = house.ground;
    std::vector<ViewedSolid> solids;
    Looks looks;
    for (const Part& part : house.house.parts) {
        if (in_yard(part) || (house.described && part.layer == Layer::interior)) continue;
        solids.push_back({&part.mesh, looks.of(part.material), house.described});
    }
    made.sight = std::make_unique<LineView>(solids, view.frame, ViewSettings{finest});
    view.lines = made.sight->lines();
    cut_below(view.lines, house.ground);
    find_extent(view);
    view.low.y = std::min(view.low.y, house.ground);
    const auto add_level = [&](double height, Message name) {
        for (const LevelMark& level : view.levels) {
            if (std::abs(level.height - height) < least_height_step) return;
        }
        view.levels.push_back({height, std::move(name)});
    };
    for (std::size_t i = 0; i < house.floors.size(); ++i) add_level(house.floors[i], level_name(house, i));
    add_level(view.high.y, "top");
    add_level(house.ground, "ground");
    return made;
}

DrawnView make_plan_view(const DrawnHouse& house, std::size_t story, double finest) {
    DrawnView view;
    const double floor = house.floors[story], cut = floor + plan_cut_height;
    view.kind = DrawnView::Kind::plan;
    view.story = story;
    view.north_assumed = !house.described;
    view.id = "plan-" + std::to_string(story + 1);
    view.title = house.floors.size() < 2 ? Message("Floor plan") : message("Floor plan of story {}", {as_it_stands(story + 1)});
    view.frame = plan_frame(floor);
    view.walls = {Point2{1e9, 1e9}, Point2{-1e9, -1e9}};
    std::vector<TriangleMesh> left;
    left.reserve(house.house.parts.size());
    std::vector<ViewedSolid> solids;
    Looks looks;
    for (const Part& part : house.house.parts) {
        if (in_yard(part)) continue;
        const bool opens = part.layer == Layer::opening && house.described;
        // The leaf of a door is drawn as it opens.
        if (!opens || !is_leaf_with_sign(house, part, floor)) {
            std::vector<Loop> loops = level_section(part.mesh, cut);
            if (part.layer != Layer::opening && part.layer != Layer::fixture) measure(loops, view.walls);
            std::move(loops.begin(), loops.end(), std::back_inserter(part.layer == Layer::opening ? view.fine_cut : view.cut));
        }
        if (opens && part.material != "glass") continue;
        left.push_back(below_level(part.mesh, cut));
        TriangleMesh& mesh = left.back();
        const bool deep =
            std::all_of(mesh.points.begin(), mesh.points.end(), [&](const Point& p) { return p.z < floor - seen_below_floor; });
        if (deep) continue;
        solids.push_back({&mesh, looks.of(part.material), house.described});
    }
    const LineView sight(solids, view.frame, ViewSettings{finest, plan_cut_height - 1e-6});
    view.lines = sight.lines();
    if (house.described) {
        for (Loop& filled : filled_cavities(view.cut, deepest_cavity)) view.cut.push_back(std::move(filled));
        view.rooms = rooms_of_story(house, floor);
        view.openings = openings_of_story(house, floor, view.rooms);
    }
    find_extent(view);
    return view;
}

DrawnView make_site_view(const DrawnHouse& house, double finest) {
    DrawnView view;
    view.kind = DrawnView::Kind::site;
    view.id = "site";
    view.title = "Site plan";
    view.frame = plan_frame(0);
    std::vector<ViewedSolid> solids;
    Looks looks;
    for (const Part& part : house.house.parts) {
        if (part.layer == Layer::ground || part.layer == Layer::fixture || part.layer == Layer::interior) continue;
        solids.push_back({&part.mesh, looks.of(part.material), house.described});
    }
    view.lines = LineView(solids, view.frame, ViewSettings{finest}).lines();
    find_extent(view);
    return view;
}

}  // namespace seamward
