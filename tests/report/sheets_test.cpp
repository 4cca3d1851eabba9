// SPDX-License-Identifier: GPL-3.0-or-later
// Pages that are carried about: the survey sheet and the builder's list.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

TEST(SurveySheet, HasARowOfBoxesForEveryGap) {
    for (const std::string& name : scenarios()) {
        SCOPED_TRACE(name);
        const Job job = scenario(name);
        const MadePage made(job, settings_for(job, Audience::survey));
        std::set<std::size_t> closed, seen;
        for (const ClosedGap& one : job.closed) {
            if (one.holds()) closed.insert(one.gap.value);
        }
        for (const PageElement* row : made.page.named("tr")) {
            if (row->attribute("data-gap").empty()) continue;
            const std::size_t gap = std::stoul(row->attribute("data-gap"));
            EXPECT_TRUE(seen.insert(gap).second) << gap;
            std::set<std::string> fields;
            for (const PageElement& cell : row->children) fields.insert(cell.attribute("data-field"));
            EXPECT_EQ(fields.contains("width"), !closed.contains(gap)) << gap;
            EXPECT_TRUE(fields.contains("photo") && fields.contains("note")) << gap;
            EXPECT_TRUE(row->text().starts_with(job.survey.gaps[gap].label())) << row->text();
        }
        EXPECT_EQ(seen.size(), job.survey.gaps.size());
    }
}

TEST(SurveySheet, AsksForASecondReadingWhereASizeDecides) {
    const Job job = scenario("demo");
    const MadePage made(job, settings_for(job, Audience::survey));
    std::set<std::size_t> asked, deciding;
    for (const PageElement* row : made.page.named("tr")) {
        for (const PageElement& cell : row->children) {
            if (cell.attribute("data-field") == "second") asked.insert(std::stoul(row->attribute("data-gap")));
        }
    }
    for (const RankedPath& path : trace(job.survey, {}, RunContext()).paths) deciding.insert(path.pinch_gap.value);
    EXPECT_TRUE(std::includes(asked.begin(), asked.end(), deciding.begin(), deciding.end()));
    EXPECT_LT(asked.size(), job.survey.gaps.size() / 2);
}

TEST(SurveySheet, IsForPaperWhereThereIsNoFileToHandBack) {
    const Job job = scenario("wall-corner");
    MadePage made(job, settings_for(job, Audience::survey));
    EXPECT_EQ(made.page.with_id("hand-back"), nullptr);
    EXPECT_EQ(made.html.find("<script"), std::string::npos);
    EXPECT_NE(made.page.with_id("new-lines"), nullptr);
    made.facts.job_file = {"wall", "{\"seamward\": 1}"};
    EXPECT_NE(report_page(made.facts).find("id=\"hand-back\" hidden"), std::string::npos);
    made.facts.settings.printed = true;
    EXPECT_EQ(report_page(made.facts).find("<script"), std::string::npos);
}

TEST(BuilderPage, ListsEveryOpenGapOnceUnderItsDetail) {
    for (const std::string& name : scenarios()) {
        SCOPED_TRACE(name);
        const Job job = scenario(name);
        const MadePage made(job, settings_for(job, Audience::builder));
        std::multiset<std::string> wanted, found;
        for (const Gap& gap : job.survey.gaps) {
            if (!is_shut(gap.shape))
                wanted.insert(gap.count > 1 ? gap.label() + ", " + std::to_string(gap.count) + " pieces" : gap.label());
        }
        std::set<std::string> titles;
        for (const PageElement* article : made.page.named("article")) {
            EXPECT_TRUE(titles.insert(article->named("h3").front()->text()).second);
            for (const PageElement* body : article->named("tbody")) {
                for (const PageElement& row : body->children) found.insert(row.children.front().text());
            }
        }
        EXPECT_EQ(found, wanted);
    }
}

TEST(BuilderPage, NamesTheClosingAtItsGap) {
    const Job job = scenario("demo");
    const MadePage made(job, settings_for(job, Audience::builder));
    std::set<std::pair<std::string, std::string>> done;  // several gaps may be called the same
    for (const PageElement* article : made.page.named("article")) {
        for (const PageElement* body : article->named("tbody")) {
            for (const PageElement& row : body->children) {
                const std::string closing = row.children.back().text();
                done.insert({row.children.front().text(), closing.substr(0, closing.find(':'))});
            }
        }
    }
    ASSERT_FALSE(made.facts.plan.steps.empty());
    for (std::size_t i = 0; i < made.facts.plan.steps.size(); ++i) {
        const Gap& gap = job.survey[made.facts.plan.steps[i].gap];
        const std::string label = gap.count > 1 ? gap.label() + ", " + std::to_string(gap.count) + " pieces" : gap.label();
        EXPECT_TRUE(done.contains({label, std::to_string(i + 1)})) << label;
        EXPECT_NE(made.page.with_id("closing-" + std::to_string(i + 1)), nullptr);
    }
}

}  // namespace
}  // namespace seamward::test
