// SPDX-License-Identifier: GPL-3.0-or-later
// Changes of job files that are written in many manners.
#include <gtest/gtest.h>

#include <memory>
#include <random>

#include "base/quantity.h"
#include "edit_checks.h"
#include "styled_job.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

/// A random change of a gap, made on the job as it is made in the text.
struct Drawn {
    Edit edit;
    Job wanted;
};

Drawn draw(std::mt19937& random, const Job& job) {
    Drawn drawn{RemoveGap{}, job};
    std::vector<Gap>& gaps = drawn.wanted.survey.gaps;
    const unsigned what = gaps.empty() ? 0 : static_cast<unsigned>(random() % 9);
    if (what == 0) {
        AddGap add{.name = "gap-" + std::to_string(random() % 1000 + 100), .between = {"wall", "kitchen"}};
        add.shape = {"ring", "2.5 mm", "22 mm"};
        add.at = Point{1, -2.5, 0};
        drawn.edit = add;
        Gap gap;
        gap.id = apply("gaps: []", "x.yaml", add).id;
        gap.between = {SpaceIndex{1}, SpaceIndex{2}};
        gap.shape = Ring{0.0025, 0.022};
        gap.at = add.at;
        gaps.push_back(gap);
        return drawn;
    }
    const std::size_t i = random() % gaps.size();
    Gap& gap = gaps[i];
    ChangeGap edit{.id = gap.id};
    if (what == 1) edit.shape = ShapeText{shape_word(gap.shape), "0.9 mm", std::nullopt};
    if (what == 1) gap.shape = widened(gap.shape, *parse_length("0.9 mm") - clear_width(gap.shape));
    if (what == 2) edit.name = gap.name = random() % 2 == 0 ? "" : "it's \xE2\x84\x96 #1: \"x\"";
    if (what == 3) edit.note = gap.note = random() % 2 == 0 ? "" : "two\nlines, {x}";
    if (what == 4) edit.photo = gap.photo = random() % 2 == 0 ? "" : "photos/a b.jpg";
    if (what == 5) edit.how = gap.evidence.how = static_cast<Evidence::How>(random() % 4);
    if (what == 6) edit.at = gap.at = Point{0.5, 1, -0.25};
    if (what == 7) {
        edit.shape = ShapeText{"slot", "0.5 mm", "3 ft"};
        gap.shape = Slot{*parse_length("0.5 mm"), *parse_length("3 ft")};
    }
    drawn.edit = edit;
    if (what == 8) {
        drawn.edit = RemoveGap{gap.id};
        gaps.erase(gaps.begin() + static_cast<std::ptrdiff_t>(i));
    }
    return drawn;
}

/// Sizes differ in their last bits where one was worked out from another.
void expect_same(const Job& job, const Job& wanted, const std::string& text) {
    ASSERT_EQ(job.survey.gaps.size(), wanted.survey.gaps.size()) << text;
    Job near = wanted;
    for (std::size_t i = 0; i < job.survey.gaps.size(); ++i) {
        Gap& gap = near.survey.gaps[i];
        if (std::abs(clear_width(gap.shape) - clear_width(job.survey.gaps[i].shape)) < 1e-12)
            gap.shape = gap.shape.index() == job.survey.gaps[i].shape.index() ? job.survey.gaps[i].shape : gap.shape;
    }
    ASSERT_EQ(told(job), told(near)) << text;
}

TEST(JobEdits, AreExactInFilesOfEveryStyle) {
    std::mt19937 random(7);
    for (int round = 0; round < 400; ++round) {
        FileStyle style;
        style.newline = round % 3 == 0 ? "\r\n" : "\n";
        style.ends_with_newline = round % 4 != 0;
        style.json = round % 5 == 0;
        const fs::path path = style.json ? "job.json" : "job.yaml";
        std::string text = styled_job(random, static_cast<int>(random() % 6), style);
        const std::string first = text;
        std::vector<TextChange> made;
        for (int step = 0; step < 8; ++step) {
            const Drawn drawn = draw(random, job_of(text, path));
            SCOPED_TRACE(text);
            const Edited after = apply(text, path, drawn.edit);
            check_change(text, after);
            expect_same(job_of(after.text, path), drawn.wanted, text + "\n=====>\n" + after.text);
            if (HasFatalFailure()) return;
            EXPECT_EQ(after.text.find("\r\n") != std::string::npos, text.find("\r\n") != std::string::npos);
            made.push_back(after.change);
            text = after.text;
        }
        for (auto change = made.rbegin(); change != made.rend(); ++change) text = changed(text, change->inverse());
        ASSERT_EQ(text, first);
    }
}

TEST(JobEdits, LeaveAllOtherEntriesAsTheyAre) {
    std::mt19937 random(11);
    for (int round = 0; round < 200; ++round) {
        const std::string text = styled_job(random, 5, {.newline = round % 2 == 0 ? "\n" : "\r\n"});
        ChangeGap edit =
            width_of("gap-2", shape_word(gap_of(*std::make_unique<Job>(job_of(text, "job.yaml")), "gap-2").shape), "0.9 mm");
        edit.photo = "a.jpg";
        const Edited after = apply(text, "job.yaml", edit);
        const std::size_t begin = text.find("gap-2"), end = text.find("gap-3");
        EXPECT_GE(after.change.at, begin);
        EXPECT_LE(after.change.at + after.change.removed.size(), end);
        EXPECT_EQ(comments(text), comments(after.text));
    }
}

}  // namespace
}  // namespace seamward::test
