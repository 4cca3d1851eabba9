// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <span>

#include "house/framing.h"
#include "house/layout.h"
#include "house/shell.h"

namespace seamward {

namespace {

constexpr double block = 0.19, shell = 0.035, cap = 0.04;  ///< meters; a common hollow block
constexpr double paving_thickness = 0.05;
constexpr double sharpest_turn = 150;  ///< degrees; beyond, the cut at a corner reaches farther than any run

class BlockWallBuilder {
public:
    BlockWallBuilder(Layout& layout, const BlockWallDescription& described) : layout_(layout), described_(described) {
        named_ = {described.id, described.name};
    }

    void build() {
        if (!fits()) return;
        cells_ = layout_.add_space(named_, SpaceKind::harborage, described_.place);
        const std::size_t runs = described_.points.size() - 1;
        const std::size_t first = layout_.block_runs.size();
        for (std::size_t i = 0; i < runs; ++i) add_run(i, runs);
        check_clear_of_house(first);
        set_middle({layout_.block_runs.begin() + static_cast<std::ptrdiff_t>(first), layout_.block_runs.end()});
    }

private:
    [[nodiscard]] double half_turn(std::size_t corner) const {
        if (corner == 0 || corner + 1 == described_.points.size()) return 0;
        const Point2 a = described_.points[corner] - described_.points[corner - 1],
                     b = described_.points[corner + 1] - described_.points[corner];
        return std::tan(std::atan2(cross(a, b), dot(a, b)) / 2);
    }

    [[nodiscard]] double length_of(std::size_t run) const {
        const Point2 line = described_.points[run + 1] - described_.points[run];
        return std::sqrt(dot(line, line));
    }

    /// Where runs meet, their ends are cut at half the angle: no run may be shorter than its cuts.
    [[nodiscard]] bool fits() {
        const double sharpest = std::tan(sharpest_turn / 2 * std::acos(-1.0) / 180);
        const auto report = [&](const std::string& what, const std::string& mend) {
            layout_.faults.add(described_.place, "block wall " + described_.id + ": " + what, mend);
            return false;
        };
        for (std::size_t i = 1; i + 1 < described_.points.size(); ++i) {
            if (std::abs(half_turn(i)) > sharpest)
                return report("it doubles back at its point " + std::to_string(i + 1), "make two block walls of it");
        }
        for (std::size_t i = 0; i + 1 < described_.points.size(); ++i) {
            const double cut = (std::abs(half_turn(i)) + std::abs(half_turn(i + 1))) * block / 2;
            if (cut + block > length_of(i))
                return report("run " + std::to_string(i + 1) + " is " + in_meters(length_of(i)) +
                                  " long, too short for the sharp turns at its ends",
                              "make it longer than " + in_meters(cut + block) + ", or the turns flatter");
        }
        return true;
    }

    void check_clear_of_house(std::size_t first) {
        const Loop house =
            offset_outline(layout_.described.outline, std::vector<double>(layout_.edges(), layout_.walls.front().outside()));
        for (std::size_t i = first; i < layout_.block_runs.size(); ++i) {
            const BlockRun& run = layout_.block_runs[i];
            const auto at = [&](double u, double n) {
                const Point p = run.frame.at(u, 0, n);
                return Point2{p.x, p.y};
            };
            const Loop plan{at(0, -block / 2), at(run.length, -block / 2), at(run.length, block / 2), at(0, block / 2)};
            constexpr double corner = block * block;  // of an end that is not square to the house's wall
            if (shared_area(plan, house) <= corner) continue;
            layout_.faults.add(described_.place,
                               "run " + std::to_string(run.number) + " of block wall " + described_.id + " runs into the house",
                               "end it at an outside wall");
        }
    }

    /// How far from `at` in direction `along` the cladding of a wall of the house stands.
    [[nodiscard]] std::optional<std::pair<double, std::size_t>> house_beyond(Point2 at, Point2 along) const {
        for (std::size_t i = 0; i < layout_.edges(); ++i) {
            const WallLayout& wall = layout_.walls[i];
            const Point2 origin{wall.frame.origin.x, wall.frame.origin.y}, u{wall.frame.u.x, wall.frame.u.y},
                n{wall.frame.n.x, wall.frame.n.y};
            if (dot(along, n) > -0.999) continue;
            const double t = dot(at - origin, n) - wall.outside();
            const double where = dot(at - origin, u);
            if (std::abs(t) < 0.3 && where > block && where < wall.length - block) return std::pair{t, i};
        }
        return std::nullopt;
    }

    void add_run(std::size_t i, std::size_t runs) {
        Point2 from = described_.points[i], to = described_.points[i + 1];
        const Point2 line = to - from;
        const Point2 along = line * (1 / std::sqrt(dot(line, line)));
        BlockRun run;
        run.id = described_.id;
        run.number = i + 1;
        run.height = described_.height;
        run.cells = cells_;
        const auto start = i == 0 ? house_beyond(from, along * -1) : std::nullopt;
        const auto end = i + 1 == runs ? house_beyond(to, along) : std::nullopt;
        if (start) from = from - along * (start->first - shell);
        if (end) to = to + along * (end->first - shell);
        const Point2 whole = to - from;
        run.length = std::sqrt(dot(whole, whole));
        const Vector u{along.x, along.y, 0};
        run.frame = {{from.x, from.y, layout_.ground}, u, {0, 0, 1}, {u.y, -u.x, 0}};
        const Slant slant{0, -half_turn(i), run.length, half_turn(i + 1)};
        const std::string id = described_.id + "/" + std::to_string(i + 1),
                          name = described_.name.empty() ? described_.id : described_.name;
        const auto add_face = [&](const char* side, double back, double front) {
            Prism prism;
            prism.frame = run.frame;
            prism.outline = rectangle({0, 0}, {run.length, run.height});
            prism.heights = {{back}, {front}};
            prism.slant = slant;
            Skin skin{.name = name, .frame = run.frame, .back = back, .front = front, .extent = prism.outline};
            skin.panels.push_back(layout_.add_panel(id + side, "blocks of " + name, "block", Layer::yard, std::move(prism)));
            return skin;
        };
        run.right = add_face("/right", block / 2 - shell, block / 2);
        run.left = add_face("/left", -block / 2, -block / 2 + shell);
        Prism top;
        top.frame = plan_frame(run.frame);
        const auto corner = [&](double n, bool right) {
            return Point2{right ? run.length + slant.right_slant * n : slant.left_slant * n, -n};
        };
        // At the house the cap goes on over the piece that ends the cells there.
        const auto reach = [&](Point2 p, bool right) {
            return Point2{p.x + (right ? (end ? shell : 0) : (start ? -shell : 0)), p.y};
        };
        top.outline = {reach(corner(block / 2, false), false), reach(corner(block / 2, true), true),
                       reach(corner(-block / 2, true), true), reach(corner(-block / 2, false), false)};
        top.heights = {{run.height}, {run.height + cap}};
        run.top = {.name = name, .frame = top.frame, .back = run.height, .front = run.height + cap, .extent = top.outline};
        run.top.panels.push_back(layout_.add_panel(id + "/top", "top course of " + name, "block", Layer::yard, std::move(top)));
        if (i == 0) end_cells(run, id, false, start);
        if (i + 1 == runs) end_cells(run, id, true, end);

        layout_.block_runs.push_back(std::move(run));
    }

    /// A level band along all runs, clear of the blocks.
    void set_middle(std::span<const BlockRun> runs) {
        constexpr double clear = 0.01, half = block / 2 - shell - clear;
        Loop band, left;
        for (std::size_t i = 0; i < runs.size(); ++i) {
            const auto put = [&](bool at_end, double turn) {
                const bool open = at_end ? i + 1 < runs.size() : i > 0;
                const double in = open ? 0 : shell + clear, u = at_end ? runs[i].length - in : in;
                const Point right_side = runs[i].frame.at(u + turn * half, 0, half),
                            left_side = runs[i].frame.at(u - turn * half, 0, -half);
                band.push_back({right_side.x, right_side.y});
                left.push_back({left_side.x, left_side.y});
            };
            if (i == 0) put(false, 0);
            put(true, half_turn(i + 1));
        }
        band.insert(band.end(), left.rbegin(), left.rend());
        layout_.set_middle(cells_, level_frame(layout_.ground + runs.front().height / 2), {std::move(band), {}});
    }

    /// The piece that ends the cells: against the house's cladding, or free.
    void end_cells(BlockRun& run, const std::string& id, bool right, const std::optional<std::pair<double, std::size_t>>& house) {
        const double u = right ? run.length : 0;
        if (!house) {
            Prism prism;
            prism.frame = run.frame;
            prism.outline = rectangle({right ? u - shell : 0, 0}, {right ? u : shell, run.height});
            prism.heights = {{-block / 2 + shell}, {block / 2 - shell}};
            layout_.add_panel(id + (right ? "/end" : "/start"), "end block", "block", Layer::yard, std::move(prism));
            return;
        }
        const WallLayout& wall = layout_.walls[house->second];
        const Point at = run.frame.at(u, 0, 0);
        const Vector off = at - wall.frame.origin;
        const double where = dot(off, wall.frame.u), low = layout_.ground - wall.frame.origin.z;
        Prism prism;
        prism.frame = wall.frame;
        prism.outline = rectangle({where - block / 2, low}, {where + block / 2, low + run.height});
        prism.heights = {{wall.outside()}, {wall.outside() + shell}};
        Skin skin = wall.skins.front();
        skin.front = wall.outside() + shell;
        skin.extent = prism.outline;
        skin.panels.push_back(layout_.add_panel(id + (right ? "/end" : "/start"), "end block at " + wall.name, "block",
                                                Layer::yard, std::move(prism)));
        (right ? run.end : run.start) = std::move(skin);
        (right ? run.end_wall : run.start_wall) = house->second;
    }

    Layout& layout_;
    const BlockWallDescription& described_;
    NamedSpace named_;
    SpaceIndex cells_;
};

}  // namespace

void lay_out_yard(Layout& layout) {
    const HouseDescription& described = layout.described;
    Point2 least{1e9, 1e9}, most{-1e9, -1e9};
    const auto take = [&](Point2 p) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    };
    std::for_each(described.outline.begin(), described.outline.end(), take);
    for (const BlockWallDescription& wall : described.block_walls) std::for_each(wall.points.begin(), wall.points.end(), take);
    for (const PavingDescription& paving : described.paving) std::for_each(paving.corners.begin(), paving.corners.end(), take);
    const Point2 margin{described.yard_margin, described.yard_margin};

    Prism earth;
    earth.frame = level_frame(0);
    earth.outline = rectangle(least - margin, most + margin);
    // What carries a cladding on an air gap stands farther out than the framing.
    const WallLayout& outer = layout.walls.front();
    const Loop foot =
        offset_outline(described.outline, std::vector<double>(layout.edges(), outer.cavities.size() > 1 ? outer.outside() : 0));
    earth.cuts = {foot};
    earth.gap_of_cut.resize(1);
    earth.heights = {{layout.ground - framing::footing_depth}, {layout.ground}};
    layout.add_panel("yard/ground", "ground", "earth", Layer::ground, std::move(earth));
    for (std::size_t i = 0; i < described.paving.size(); ++i) {
        const PavingDescription& paving = described.paving[i];
        Prism prism;
        prism.frame = level_frame(0);
        prism.outline = paving.corners;
        prism.cuts = {foot};
        for (std::size_t k = 0; k < i; ++k) prism.cuts.push_back(described.paving[k].corners);
        prism.gap_of_cut.resize(prism.cuts.size());
        prism.heights = {{layout.ground}, {layout.ground + paving_thickness}};
        layout.add_panel("paving/" + paving.id, paving.name.empty() ? paving.id : paving.name, "concrete", Layer::yard,
                         std::move(prism));
    }
    for (const BlockWallDescription& wall : described.block_walls) BlockWallBuilder(layout, wall).build();
    layout.faults.throw_if_any();  // features on a wall that was not built would be told too
}

}  // namespace seamward
