// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward::test {
namespace {

/// A job of one gap from yard to den, with what is written for its shape and its closing.
Job job_of(const std::string& gap, const std::string& closed, const std::string& pest) {
    return parse_job(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\ngaps:\n  - {id: g, between: [yard, den], " +
            gap + "}\npests: [" + pest + "]\n" + closed,
        "job.yaml");
}

struct Openness {
    bool path = false;
    double pinch = 0;
    bool sure = false;
    bool perhaps = false;
};

Openness openness(const Job& job) {
    const Trace all = trace(job.survey, {}, RunContext());
    if (all.paths.empty()) return {};
    const EntryPath& path = all.paths[0].path;
    return {true, all.paths[0].pinch, !open_to(job.survey, path, job.pests).empty(),
            !perhaps_open_to(job.survey, path, job.pests).empty()};
}

/// Whatever is put over a gap, mesh or not: it never opens a way, widens one, or lets an animal through that it kept out.
TEST(Closing, NeverOpensAnything) {
    std::mt19937_64 dice(17);
    const auto mm = [&](unsigned most) { return std::to_string(dice() % most) + " mm"; };
    for (int round = 0; round < 4000; ++round) {
        const std::vector<std::string> shapes{"slot: {width: " + mm(12) + ", length: " + mm(20) + '}',
                                              "hole: {diameter: " + mm(12) + '}',
                                              "ring: {width: " + mm(8) + ", around: " + mm(9) + '}',
                                              "mesh: {opening: " + mm(12) + ", area: " + std::to_string(dice() % 3) + " cm2}"};
        const std::string gap = shapes[dice() % shapes.size()] + ", evidence: {plus_minus: " + mm(3) + '}';
        const std::string closed =
            dice() % 4 == 0 ? "closed: [{gap: g, with: bead}]" : "closed: [{gap: g, with: mesh, opening: " + mm(12) + "}]";
        const std::string pest =
            "{id: p, slit: " + std::to_string(1 + dice() % 6) + " mm, hole: " + std::to_string(1 + dice() % 10) + " mm}";
        const Openness before = openness(job_of(gap, "", pest));
        const Openness after = openness(job_of(gap, closed, pest));
        ASSERT_LE(after.path, before.path) << gap << ' ' << closed;
        ASSERT_LE(after.pinch, before.pinch) << gap << ' ' << closed;
        ASSERT_LE(after.sure, before.sure) << gap << ' ' << closed << ' ' << pest;
        ASSERT_LE(after.perhaps, before.perhaps) << gap << ' ' << closed << ' ' << pest;
    }
}

TEST(Closing, AMeshStopsWhatItsOpeningStops) {
    const std::string mouse = "{id: mouse, slit: 6 mm, hole: 6 mm}";
    EXPECT_TRUE(openness(job_of("slot: {width: 20 mm, length: 1 m}", "", mouse)).sure);
    EXPECT_FALSE(
        openness(job_of("slot: {width: 20 mm, length: 1 m}", "closed: [{gap: g, with: mesh, opening: 5.7 mm}]", mouse)).sure);
    EXPECT_TRUE(
        openness(job_of("slot: {width: 20 mm, length: 1 m}", "closed: [{gap: g, with: mesh, opening: 6 mm}]", mouse)).sure);
}

}  // namespace
}  // namespace seamward::test
