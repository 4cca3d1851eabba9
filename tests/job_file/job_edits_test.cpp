// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/job_edits.h"

#include <gtest/gtest.h>

#include <algorithm>

#include "edit_checks.h"
#include "styled_job.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

const fs::path scenarios = fs::path(SEAMWARD_SOURCE_FOLDER) / "scenarios";

std::string fault_of(const std::string& text, const Edit& edit, const fs::path& path = "job.yaml") {
    try {
        (void)apply(text, path, edit);
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

TEST(JobEdits, KeepCommentsAndSpacingOfOneLine) {
    const std::string before = "gaps:\n  - {id: a,  hole: {diameter: 5 mm} }   # by hand\nseamward: 1\n";
    const Edited after = apply(before, "job.yaml", width_of("a", "hole", "3/8\""));
    EXPECT_EQ(after.text, "gaps:\n  - {id: a,  hole: {diameter: 3/8\"} }   # by hand\nseamward: 1\n");
    ChangeGap more{.id = "a"};
    more.how = Evidence::How::measured;
    more.plus_minus = "0.2 mm";
    more.note = "behind the \"stove\"";
    EXPECT_EQ(apply(after.text, "job.yaml", more).text,
              "gaps:\n  - {id: a,  hole: {diameter: 3/8\"}, evidence: {how: measured, plus_minus: 0.2 mm}, "
              "note: \"behind the \\\"stove\\\"\" }   # by hand\nseamward: 1\n");
}

TEST(JobEdits, WriteIntoListsThatAreEmptyOrMissing) {
    AddGap gap{.name = "Weep hole", .between = {"yard", "den"}, .shape = {"hole", "5 mm", std::nullopt}};
    const std::string entry = "  - {id: weep-hole, name: \"Weep hole\", between: [yard, den], hole: {diameter: 5 mm}}";
    EXPECT_EQ(apply("seamward: 1\n", "job.yaml", gap).text, "seamward: 1\ngaps:\n" + entry + "\n");
    EXPECT_EQ(apply("seamward: 1", "job.yaml", gap).text, "seamward: 1\ngaps:\n" + entry);
    EXPECT_EQ(apply("seamward: 1\r\ngaps: [] # none\r\n", "job.yaml", gap).text,
              "seamward: 1\r\ngaps: # none\r\n" + entry + "\r\n");
    EXPECT_EQ(apply("gaps:   # none\nseamward: 1\n", "job.yaml", gap).text, "gaps:   # none\n" + entry + "\nseamward: 1\n");
    EXPECT_EQ(apply("gaps: ~\nseamward: 1\n", "job.yaml", gap).text, "gaps: [" + entry.substr(4) + "]\nseamward: 1\n");
    EXPECT_EQ(apply("{seamward: 1, gaps: []}", "job.yaml", gap).text, "{seamward: 1, gaps: [" + entry.substr(4) + "]}");
    EXPECT_EQ(apply("{\"seamward\": 1}", "job.json", AddSpace{.name = "den"}).text,
              R"({"seamward": 1, "spaces": [{"id": "den", "kind": "cavity"}]})");
}

TEST(JobEdits, GiveNewThingsIdsOfTheirOwn) {
    const std::string job = "seamward: 1\ngaps:\n  - {id: weep-hole, hole: {diameter: 5 mm}}\n";
    AddGap gap{
        .name = "Weep hole!", .between = {"yard", "den"}, .shape = {"hole", "5 mm", std::nullopt}, .taken = {"weep-hole-2"}};
    EXPECT_EQ(apply(job, "job.yaml", gap).id, "weep-hole-3");
    gap.name = "\xD0\xB4\xD1\x8B\xD1\x80\xD0\xB0";
    EXPECT_EQ(apply(job, "job.yaml", gap).id, "gap");
}

TEST(JobEdits, TakeEntriesOut) {
    const std::string job =
        "seamward: 1\ngaps:\n  # first\n  - id: a   # one\n    hole: {diameter: 5 mm}\n  - {id: b}\nclosed: [{gap: b}, {gap: "
        "a}]\n";
    EXPECT_EQ(apply(job, "job.yaml", RemoveGap{"a"}).text, "seamward: 1\ngaps:\n  # first\n  - {id: b}\nclosed: [{gap: b}]\n");
    const std::string one = apply(job, "job.yaml", RemoveGap{"b"}).text;
    EXPECT_EQ(apply(one, "job.yaml", RemoveGap{"a"}).text, "seamward: 1\ngaps: []\n  # first\nclosed: []\n");
    EXPECT_EQ(apply(job, "job.yaml", OpenGap{"b"}).text.substr(job.find("closed")), "closed: [{gap: a}]\n");
    EXPECT_EQ(apply("gaps: [{id: a}, # one\n  {id: b} # two\n  ]", "job.yaml", RemoveGap{"b"}).text, "gaps: [{id: a} # one\n  ]");
}

TEST(JobEdits, SayWhyTheyCannotBeMade) {
    const std::string shared = "seamward: 1\ngaps:\n  - {id: a, hole: &h {diameter: 5 mm}}\n  - {id: b, hole: *h}\n";
    EXPECT_NE(fault_of(shared, width_of("b", "hole", "1 mm")).find("alias"), std::string::npos);
    EXPECT_NE(fault_of(shared, width_of("a", "hole", "1 mm")).find("anchors"), std::string::npos);
    EXPECT_NE(fault_of(shared, width_of("c", "hole", "1 mm")).find("there is no gap \"c\""), std::string::npos);
    EXPECT_NE(fault_of(shared, width_of("a", "hole", "1")).find("unit"), std::string::npos);
    EXPECT_NE(fault_of("seamward: 1\nhouse: h.yaml\n", RemoveGap{"bibb"}).find("belongs to the described house"),
              std::string::npos);
    ChangeGap name{.id = "bibb"};
    name.name = "x";
    EXPECT_NE(fault_of("seamward: 1\nhouse: h.yaml\n", name).find("belongs to the described house"), std::string::npos);
    EXPECT_NE(fault_of("gaps: [{id: a}]\noccupied: [{way: a}]", RemoveGap{"a"}).find("occupied"), std::string::npos);
    EXPECT_NE(fault_of("gaps: [", RemoveGap{"a"}).find("YAML"), std::string::npos);
}

TEST(JobEdits, FindHouseModelAndPhotosFromAnotherFolder) {
    const std::string job = "house: ../models/a.yaml # here\ngaps: [{id: a, photo: 'p/a.jpg'}, {id: b, photo: /x/b.jpg}]\n";
    const Edited moved = apply(job, "/w/jobs/job.yaml", MoveJob{"/w/jobs", "/w/jobs/old"});
    EXPECT_EQ(moved.text, "house: ../../models/a.yaml # here\ngaps: [{id: a, photo: '../p/a.jpg'}, {id: b, photo: /x/b.jpg}]\n");
}

TEST(JobEdits, AddFeaturesToTheFileOfTheHouse) {
    const fs::path path = scenarios / "wall-corner.yaml";
    const std::string job = text_of(path);
    const fs::path house = house_of(job, path);
    const std::string before = text_of(house);
    AddFeature spout{.name = "second tub spout", .type = "tub-spout", .on = "wet-partition", .along = "0.5 m", .side = "bath"};
    const Edited after = apply(before, house, spout);
    check_change(before, after);
    EXPECT_NE(after.text.find("\n  - {id: second-tub-spout, type: tub-spout, name: \"second tub spout\", on: wet-partition, "
                              "along: 0.5 m, side: bath}\n"),
              std::string::npos);
    const FileTexts newer{{fs::weakly_canonical(house), after.text}};
    const Job now = parse_job(job, path, RunContext(), Make::survey, newer);
    EXPECT_EQ(now.survey.gaps.size(), job_of(job, path).survey.gaps.size() + 1);
    EXPECT_NE(fault_of(job, spout).find("describes no house"), std::string::npos);
    spout.along = "0.5";
    EXPECT_NE(fault_of(before, spout).find("along"), std::string::npos);
}

TEST(JobEdits, GoRoundAnchorsThatTheyDoNotTouch) {
    const std::string job =
        "seamward: 1\nspaces: [{id: a, kind: outdoors}, {id: b, kind: living}]\ngaps:\n"
        "  - &g {id: x, between: &ends [a, b], hole: {diameter: 5 mm}, evidence: &e {how: assumed}}\n"
        "  - {id: y, between: *ends, hole: {diameter: 6 mm}, evidence: *e}\n";
    EXPECT_EQ(clear_width(job_of(apply(job, "job.yaml", width_of("x", "hole", "1 mm")).text, "job.yaml").survey.gaps[0].shape),
              0.001);
    EXPECT_EQ(clear_width(job_of(apply(job, "job.yaml", width_of("y", "hole", "2 mm")).text, "job.yaml").survey.gaps[1].shape),
              0.002);
    EXPECT_EQ(job_of(apply(job, "job.yaml", RemoveGap{"y"}).text, "job.yaml").survey.gaps.size(), 1U);
    EXPECT_NE(fault_of(job, RemoveGap{"x"}), "");
    ChangeGap how{.id = "x"};
    how.how = Evidence::How::measured;
    EXPECT_NE(fault_of(job, how).find("anchors"), std::string::npos);
}

class Scenarios : public testing::TestWithParam<std::string> {};

TEST_P(Scenarios, ChangeInOneEntryAndNowhereElse) {
    const fs::path path = scenarios / GetParam();
    const std::string before = text_of(path);
    const Job job = job_of(before, path);
    const std::size_t step = std::max<std::size_t>(1, job.survey.gaps.size() / 6);
    for (std::size_t i = 0; i < job.survey.gaps.size(); i += step) {
        Gap gap = job.survey.gaps[i];
        ChangeGap edit{.id = gap.id};
        edit.how = Evidence::How::measured;
        edit.plus_minus = "0.3 mm";
        edit.note = "a \"note\": \xC3\xA9 #really";
        const Edited after = apply(before, path, edit);
        check_change(before, after);
        EXPECT_EQ(comments(before), comments(after.text).substr(0, comments(before).size())) << gap.id;
        Job wanted = job;
        gap_of(wanted, gap.id).evidence = {Evidence::How::measured, 0.0003};
        gap_of(wanted, gap.id).note = *edit.note;
        EXPECT_EQ(told(job_of(after.text, path)), told(wanted)) << gap.id;
    }
}

TEST_P(Scenarios, ListGapsAsClosed) {
    const fs::path path = scenarios / GetParam();
    const std::string before = text_of(path);
    const Job job = job_of(before, path);
    const auto open = std::ranges::find_if(job.survey.gaps, [](const Gap& gap) { return !is_shut(gap.shape) && !gap.covered; });
    ASSERT_NE(open, job.survey.gaps.end());
    const Edited after = apply(before, path, CloseGap{open->id, "", "", ""});
    EXPECT_TRUE(is_shut(gap_of(*std::make_unique<Job>(job_of(after.text, path)), open->id).shape));
    EXPECT_EQ(told(job_of(apply(after.text, path, OpenGap{open->id}).text, path)), told(job));
}

INSTANTIATE_TEST_SUITE_P(All, Scenarios,
                         testing::Values("demo.yaml", "townhouse.yaml", "brick-crawl.yaml", "two-story.yaml", "wall-corner.yaml",
                                         "apartments.yaml"),
                         [](const testing::TestParamInfo<std::string>& one) {
                             std::string name = one.param.substr(0, one.param.find('.'));
                             std::erase(name, '-');
                             return name;
                         });

}  // namespace
}  // namespace seamward::test
