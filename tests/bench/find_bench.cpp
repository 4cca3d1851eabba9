// SPDX-License-Identifier: GPL-3.0-or-later
// A slot of 0.9 mm through a wall, found from the triangles of a room, against what can say of the same triangles whether the
// room is open: a uniform grid of OpenVDB, and CGAL's alpha wrapping. Both peers answer yes or no for one width; ours is the list
// of spaces and gaps with their widths. All sides have the triangles in memory and use all processors, but for CGAL, which uses
// one.
//
// A grid of all of the room that sees 0.9 mm does not fit into most machines. It is run where the slot, and with it the voxel, is
// wider; what it would take for 0.9 mm is extrapolated, and the line says so. For CGAL the wall around the slot is cut out, as
// narrow as it can be.
#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <functional>
#include <vector>

#include "interior/find.h"
#include "tests/bench/bench.h"
#include "tests/support/grid_peer.h"
#include "tests/support/scene_room.h"
#include "tests/support/wrap_peer.h"

namespace seamward::bench {

namespace {

using test::mm;
using test::Scene;

constexpr double narrow = 0.9 * mm;
constexpr double off_at_most = 0.05 * mm;
constexpr double long_run = 10;     // seconds: what takes longer is run once
constexpr double wrap_share = 0.9;  // of the slot's width: the ball that CGAL leads, see find_wrap_test.cpp

/// A room with a slot through its south wall, which is 0.1 m thick, and where the slot is.
struct SlotRoom {
    test::RoomSize room;  ///< `wall` is the thickness of the other five sides
    double length = 0;    ///< of the slot
    Point2 from;          ///< its lower left corner
};

constexpr double slot_deep = 0.1;
const SlotRoom whole_room{test::full_room, 0.3, {1.7, 1.213}};
/// As little of the wall as has the slot in it, and behind it a pocket that a ball of `widest` stands in.
const SlotRoom crop{{28 * mm, 27 * mm, 27 * mm, 2 * mm}, 12 * mm, {8 * mm, 13.1 * mm}};

Scene slot_scene(const SlotRoom& of, double width, bool shut) {
    Scene scene = test::room_without_south(shut ? "shut" : "open", of.room);
    const double x1 = of.from.x + of.length, z1 = of.from.y + width;
    test::add_parts(scene, "south",
                    test::extruded(test::south_frame, test::rectangle(0, 0, of.room.x, of.room.z),
                                   {test::rectangle(of.from.x, of.from.y, x1, z1)}, 0, slot_deep));
    if (shut) {  // flush all around
        test::add_part(scene, "plug", test::block({of.from.x, -0.6 * slot_deep, of.from.y}, {x1, -0.5 * slot_deep, z1}));
    }
    return scene;
}

Point inside_of(const Scene& scene) { return scene.spaces[1].inside; }

/// What our side is timed on.
struct Question {
    Model model;
    FindSettings settings;

    explicit Question(const Scene& scene) {
        model.parts = scene.parts;
        settings.rooms = {{"room", SpaceKind::living, inside_of(scene)}};
    }
    [[nodiscard]] Found ask() const { return find_gaps(model, settings, RunContext()); }
};

/// Compares answers about a slot, open and shut, with ours.
void require_same(const SlotRoom& of, double width, const std::string& peer, const std::function<bool(const Scene&)>& is_joined) {
    const Scene open = slot_scene(of, width, false), shut = slot_scene(of, width, true);
    const Found found = Question(open).ask();
    require(found.gaps.size() == 1 && std::abs(found.gaps[0].width - width) < off_at_most, "the slot that was drawn");
    require(Question(shut).ask().gaps.empty(), "the slot that was shut");
    require(is_joined(open), "find against " + peer + ", open");
    require(!is_joined(shut), "find against " + peer + ", shut");
}

double seconds_of(const std::function<void()>& run) {
    const auto begin = std::chrono::steady_clock::now();
    run();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
}

double seconds_of_ours(const SlotRoom& of, double width) {
    const Question question(slot_scene(of, width, false));
    return median_seconds([&] { (void)question.ask(); });
}

template <class... Values>
std::string text(const char* format, Values... values) {
    char line[300];
    std::snprintf(line, sizeof line, format, values...);
    return line;
}

#ifdef SEAMWARD_OPENVDB

/// One size at which the grid was run.
struct GridRun {
    double voxel = 0;
    double seconds = 0;
    double bytes = 0;
    bool once = false;
};

GridRun run_grid(double width) {
    GridRun run{.voxel = test::voxel_for(width)};
    require_same(whole_room, width, "a grid", [&](const Scene& scene) {
        test::GridAnswer answer;
        run.seconds = seconds_of([&] { answer = test::ask_grid(scene.parts, inside_of(scene), run.voxel); });
        run.bytes = answer.bytes;
        return answer.joined;
    });
    const Scene open = slot_scene(whole_room, width, false);
    const auto again = [&] { (void)test::ask_grid(open.parts, inside_of(open), run.voxel); };
    run.once = run.seconds > long_run;
    if (!run.once) run.seconds = median_seconds(again);
    return run;
}

/// The power of 1 / voxel that a figure grows with: least squares over the logarithms.
double growth(const std::vector<GridRun>& runs, double GridRun::*figure) {
    double x = 0, y = 0, xx = 0, xy = 0;
    for (const GridRun& run : runs) {
        const double a = -std::log(run.voxel), b = std::log(run.*figure);
        x += a, y += b, xx += a * a, xy += a * b;
    }
    const auto n = static_cast<double>(runs.size());
    return (n * xy - x * y) / (n * xx - x * x);
}

std::vector<Row> against_grid() {
    constexpr double widths[] = {20 * mm, 10 * mm, 5 * mm};
    std::vector<GridRun> runs;
    std::vector<Row> rows;
    std::string measured;
    for (const double width : widths) {
        runs.push_back(run_grid(width));
        const GridRun& run = runs.back();
        rows.push_back(
            {text("find a %g mm slot, OpenVDB grid", width / mm), seconds_of_ours(whole_room, width), run.seconds,
             text("voxels of %.2f mm, %.2f GB%s", run.voxel / mm, run.bytes / 1e9, run.once ? "; peer run once" : "")});
    }
    const double finer = runs.back().voxel / test::voxel_for(narrow);
    const double time = growth(runs, &GridRun::seconds), memory = growth(runs, &GridRun::bytes);
    rows.push_back(
        {"find a 0.9 mm slot, OpenVDB, extrapolated", seconds_of_ours(whole_room, narrow),
         runs.back().seconds * std::pow(finer, time),
         text("peer not run: from the lines above, time grows with voxel^-%.2f; distances at %.2f mm alone would take %.0f GB",
              time, test::voxel_for(narrow) / mm, runs.back().bytes * std::pow(finer, memory) / 1e9)});
    return rows;
}

#else

std::vector<Row> against_grid() {
    std::printf("find against a grid is left out: OpenVDB was not there when this was built (Debian package libopenvdb-dev)\n");
    return {};
}

#endif

Row against_wrap() {
    std::size_t triangles = 0;
    double seconds = 0;
    require_same(crop, narrow, "a wrap", [&](const Scene& scene) {
        test::WrapAnswer answer;
        const double taken = seconds_of([&] { answer = test::ask_wrap(scene.parts, inside_of(scene), wrap_share * narrow); });
        if (answer.joined) seconds = taken, triangles = answer.triangles;
        return answer.joined;
    });
    const Scene open = slot_scene(crop, narrow, false);
    const bool once = seconds > long_run;
    if (!once) seconds = median_seconds([&] { (void)test::ask_wrap(open.parts, inside_of(open), wrap_share * narrow); });
    return {"find a 0.9 mm slot in a crop, alpha_wrap_3", seconds_of_ours(crop, narrow), seconds,
            text("crop of 32 x 129 x 31 mm; alpha 0.405 mm, wrap of %zu triangles%s", triangles, once ? "; peer run once" : "")};
}

}  // namespace

std::vector<Row> bench_find() {
    std::vector<Row> rows = against_grid();
    rows.push_back(against_wrap());
    return rows;
}

}  // namespace seamward::bench
