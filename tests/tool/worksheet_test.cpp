// SPDX-License-Identifier: GPL-3.0-or-later
// The sheet that the crew carries, of jobs that ship and of small ones.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>
#include <sstream>

#include "base/file_io.h"
#include "tool/worksheet_command.h"

namespace seamward::test {
namespace {

const std::filesystem::path source_folder = SEAMWARD_SOURCE_FOLDER;

struct Sheet {
    std::string job_text, shown_as;
    Job job;
    PlanSettings settings;
    Plan plan;
    std::string text;
};

std::string printed(const Sheet& sheet, std::size_t columns) {
    std::ostringstream out, err;
    print_worksheet(sheet.job, "a job", sheet.settings, sheet.plan, Console{out, err, columns});
    return out.str();
}

Sheet sheet_of(const std::string& job_text, const std::string& shown_as = "job.yaml", std::size_t columns = 100) {
    Sheet sheet{job_text, shown_as, parse_job(job_text, shown_as), {}, {}, {}};
    sheet.settings.against = sheet.job.pests;
    sheet.settings.date = *parse_date("2026-06-15").value;
    sheet.plan = make_plan(sheet.job, sheet.settings, RunContext());
    EXPECT_TRUE(sheet.plan.feasible) << shown_as;
    sheet.text = printed(sheet, columns);
    return sheet;
}

/// Jobs that ship, among them some with animals in the house, with meshes, and with closings of before.
const std::vector<Sheet>& sheets() {
    static const std::vector<Sheet> all = [] {
        std::vector<Sheet> made;
        for (const char* name : {"scenarios/demo.yaml", "scenarios/brick-crawl.yaml", "scenarios/two-story.yaml",
                                 "scenarios/townhouse.yaml", "scenarios/wall-corner.yaml", "tests/tool/jobs/occupied.yaml",
                                 "tests/tool/jobs/plan.yaml", "tests/tool/jobs/not-completed.yaml"}) {
            const std::string path = (source_folder / name).string();
            made.push_back(sheet_of(read_file(path, path, 1 << 20), path));
        }
        return made;
    }();
    return all;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) lines.push_back(line);
    return lines;
}

/// The text in one line, as if it had never been broken.
std::string unbroken(const std::string& text) {
    std::string all;
    std::istringstream in(text);
    for (std::string word; in >> word;) all += (all.empty() ? "" : " ") + word;
    return all;
}

std::size_t times(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) ++count;
    return count;
}

/// The lines for the job file, the days filled in.
std::vector<std::string> entries_of(const std::string& sheet) {
    std::vector<std::string> entries;
    for (std::string line : lines_of(sheet)) {
        if (line != "closed:" && line != "checks:" && !line.starts_with("  - {")) continue;
        for (std::size_t at = line.find("date: ________"); at != std::string::npos; at = line.find("date: ________"))
            line.replace(at, 14, "date: 2026-06-20");
        entries.push_back(line);
    }
    return entries;
}

/// The job file with the entries of a sheet, each below its key where the file has that already.
std::string with_entries(const std::string& job_text, const std::vector<std::string>& entries) {
    std::vector<std::string> file = lines_of(job_text);
    auto at = file.end();
    for (const std::string& entry : entries) {
        if (!entry.starts_with(' ')) {
            at = std::find(file.begin(), file.end(), entry);
            if (at != file.end()) {
                ++at;
                continue;
            }
        }
        at = file.insert(at, entry) + 1;
    }
    std::string all;
    for (const std::string& line : file) all += line + '\n';
    return all;
}

TEST(Worksheet, HasABoxForEachStep) {
    for (const Sheet& sheet : sheets()) {
        const std::string text = unbroken(sheet.text);
        ASSERT_FALSE(sheet.plan.steps.empty()) << sheet.shown_as;
        for (std::size_t i = 0; i < sheet.plan.steps.size(); ++i) {
            const std::string stop = ' ' + std::to_string(i + 1) + " [ ] " + sheet.job.survey[sheet.plan.steps[i].gap].label();
            EXPECT_EQ(times(text, stop), 1U) << sheet.shown_as << stop;
        }
        EXPECT_EQ(times(text, "Size: "), sheet.plan.steps.size()) << sheet.shown_as;
        EXPECT_EQ(times(text, "done on ________ with ______________ by ________"),
                  sheet.plan.steps.size() + sheet.plan.wrong_closings.size())
            << sheet.shown_as;
    }
}

TEST(Worksheet, TellsEachCautionInFullOnce) {
    for (const Sheet& sheet : sheets()) {
        const std::string text = unbroken(sheet.text);
        std::set<std::string> cautions;
        for (const PlanStep& step : sheet.plan.steps) {
            for (const Message& caution : step.cautions()) cautions.insert(caution.english());
        }
        for (const std::string& caution : cautions)
            EXPECT_EQ(times(text, "Caution: " + caution), 1U) << sheet.shown_as << '\n' << caution;
    }
}

TEST(Worksheet, TellsAllThatIsToBeDone) {
    for (const Sheet& sheet : sheets()) {
        const std::string text = unbroken(sheet.text);
        for (const PlanStep& step : sheet.plan.steps) {
            if (step.option.treatment == stated_closing) continue;
            for (const Message& line : step.option.steps)
                EXPECT_GE(times(text, "- " + line.english()), 1U) << sheet.shown_as << '\n' << line.english();
        }
    }
}

TEST(Worksheet, HasNoPrices) {
    for (const Sheet& sheet : sheets()) EXPECT_EQ(sheet.text.find('$'), std::string::npos) << sheet.shown_as;
}

TEST(Worksheet, KeepsToItsWidthButForLinesToCopy) {
    for (const Sheet& sheet : sheets()) {
        for (const std::size_t columns : {60U, 80U, 100U, 160U}) {
            for (const std::string& line : lines_of(printed(sheet, columns))) {
                if (line.starts_with("  - {gap: ")) continue;
                EXPECT_LE(letters(line), columns) << sheet.shown_as << '\n' << line;
            }
        }
    }
}

TEST(Worksheet, NamesEachGapThatMustStayOpen) {
    for (const Sheet& sheet : sheets()) {
        const std::size_t begin = sheet.text.find("Must stay open");
        const std::string part = begin == std::string::npos ? "" : unbroken(sheet.text.substr(begin));
        for (const RefusedGap& refused : sheet.plan.refused) {
            if (!refused.refusal.treatment.empty()) continue;
            const std::string& label = sheet.job.survey[refused.gap].label();
            EXPECT_NE(part.find(label.substr(0, label.rfind(", "))), std::string::npos) << sheet.shown_as << label;
            const std::string why = refused.refusal.why.english();
            EXPECT_NE(part.find(why), std::string::npos) << sheet.shown_as << why;
        }
    }
}

/// Copied into the job file, the lines close every gap, and then there is nothing left to do.
TEST(Worksheet, HasLinesThatCloseEveryGap) {
    for (const Sheet& sheet : sheets()) {
        if (sheet.shown_as.ends_with("not-completed.yaml")) continue;  // has its entries already: the test below
        const std::string text = with_entries(sheet.job_text, entries_of(sheet.text));
        const Job done = parse_job(text, sheet.shown_as);
        for (const PlanStep& step : sheet.plan.steps) {
            const auto entry = std::find_if(done.closed.begin(), done.closed.end(),
                                            [&](const ClosedGap& closed) { return closed.gap == step.gap; });
            ASSERT_NE(entry, done.closed.end()) << sheet.shown_as;
            EXPECT_EQ(entry->with, step.option.treatment == stated_closing ? "" : step.option.treatment);
            EXPECT_EQ(entry->date, parse_date("2026-06-20").value);
            EXPECT_EQ(is_shut(done.survey[step.gap].shape), step.option.opening == 0) << done.survey[step.gap].id;
        }
        const Plan again = make_plan(done, sheet.settings, RunContext());
        EXPECT_TRUE(again.feasible) << sheet.shown_as;
        EXPECT_TRUE(again.steps.empty()) << sheet.shown_as << ": " << done.survey[again.steps.front().gap].id;
    }
}

const std::string two_spaces = "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n";

/// A day that was forgotten is a fault, not a closing.
TEST(Worksheet, HasLinesThatAreNotReadWithoutADay) {
    const std::string job = two_spaces + "gaps: [{id: g, between: [yard, kitchen], hole: {diameter: 9 mm}}]\n";
    const Sheet sheet = sheet_of(job + "pests: [house-mouse]\n");
    const std::size_t begin = sheet.text.find("closed:\n");
    ASSERT_NE(begin, std::string::npos) << sheet.text;
    EXPECT_THROW((void)parse_job(job + sheet.text.substr(begin), "job.yaml"), BadInput);
}

/// A gap has one entry under `closed`; what did not hold is mended there.
TEST(Worksheet, ChangesTheEntryOfAGapThatHasOne) {
    const Sheet sheet =
        sheet_of(two_spaces +
                 "gaps:\n  - {id: g, between: [yard, kitchen], hole: {diameter: 9 mm}}\n"
                 "  - {id: h, between: [yard, kitchen], hole: {diameter: 40 mm}}\npests: [house-mouse]\n"
                 "closed:\n  - {gap: g, with: bead, date: 2026-01-02, callback: {date: 2026-02-03, cause: gnawed}}\n"
                 "  - {gap: h, with: mesh, opening: 12 mm, date: 2026-01-02}\n");
    ASSERT_EQ(sheet.plan.steps.size(), 2U);
    EXPECT_TRUE(entries_of(sheet.text).empty()) << sheet.text;
    const std::string text = unbroken(sheet.text);
    EXPECT_NE(text.find("g is under closed: already. Write there with: "), std::string::npos) << text;
    EXPECT_NE(text.find("in its callback mended: ________"), std::string::npos) << text;
    EXPECT_NE(text.find("take out opening: where it has one"), std::string::npos) << text;
}

TEST(Worksheet, PutsOddIdsInQuotes) {
    const std::string path = (source_folder / "tests/tool/jobs/names.yaml").string();
    const Sheet sheet = sheet_of(read_file(path, path, 1 << 20) + "pests: [bark-scorpion-young]\n", path);
    ASSERT_EQ(sheet.plan.steps.size(), 3U);
    EXPECT_NE(sheet.text.find("gap: \"3/8\\\" hole\""), std::string::npos) << sheet.text;
    const Job done = parse_job(with_entries(sheet.job_text, entries_of(sheet.text)), path);
    EXPECT_EQ(done.closed.size(), 3U);
}

TEST(Worksheet, TellsGapsOfOneNameApart) {
    const Sheet sheet =
        sheet_of(two_spaces +
                 "gaps:\n  - {id: g, name: pipe, between: [yard, kitchen], hole: {diameter: 9 mm}, at: [1 m, 2 m, 0.3 m]}\n"
                 "  - {id: h, name: pipe, between: [yard, kitchen], hole: {diameter: 9 mm}}\n"
                 "  - {id: i, name: hatch, between: [yard, kitchen], hole: {diameter: 9 mm}, at: [1 m, 2 m, 0.3 m]}\n"
                 "pests: [house-mouse]\n");
    EXPECT_NE(sheet.text.find("[ ] pipe (g)\n          at 1.00 m, 2.00 m, 0.30 m (3 ft 3 in, 6 ft 7 in, 1 ft)\n"),
              std::string::npos)
        << sheet.text;
    EXPECT_NE(sheet.text.find("[ ] pipe (h)\n          Size: "), std::string::npos) << sheet.text;
    EXPECT_NE(sheet.text.find("[ ] hatch\n          Size: "), std::string::npos) << sheet.text;
}

TEST(Worksheet, ShowsWhatTheSurveyRemarks) {
    const Sheet sheet =
        sheet_of("job: {notes: \"first line\\nsecond\\tline\"}\n" + two_spaces +
                 "gaps:\n  - {id: g, between: [yard, kitchen], hole: {diameter: 9 mm}, note: \"behind the downspout\"}\n"
                 "pests: [house-mouse]\nsite: {note: \"park in the street\"}\n");
    EXPECT_NE(sheet.text.find("\nNotes: first line\n       second line\nSite: park in the street\n"), std::string::npos)
        << sheet.text;
    EXPECT_NE(sheet.text.find("\n          Note: behind the downspout\n"), std::string::npos) << sheet.text;
    EXPECT_NE(sheet.text.find("not measured: measure first"), std::string::npos) << sheet.text;
}

/// What waits for an animal comes after everything else, below how the animal leaves.
TEST(Worksheet, HasLaterStopsBelowTheAnimal) {
    const Sheet& sheet = sheets()[5];
    const auto at = [&](const std::string& part) {
        EXPECT_NE(sheet.text.find(part), std::string::npos) << part << '\n' << sheet.text;
        return sheet.text.find(part);
    };
    EXPECT_LT(at("[ ] eave"), at("\nAnimals that live in the house\n"));
    EXPECT_LT(at("\nAnimals that live in the house\n"), at("Here: ridge."));
    EXPECT_LT(at("[ ] device set up on ________"), at("\nOn a later visit, when the animals are gone\n"));
    EXPECT_LT(at("\nOn a later visit, when the animals are gone\n"), at("[ ] ridge\n"));
    EXPECT_LT(at("not before 2026-10-01"), at("[ ] low"));
    EXPECT_NE(unbroken(sheet.text).find("for Bat in attic: left: ________"), std::string::npos);
}

TEST(Worksheet, SaysWhatIsToBeOpenedAgain) {
    const std::string path = (source_folder / "tests/tool/jobs/wrongly-closed.yaml").string();
    const Sheet sheet = sheet_of(read_file(path, path, 1 << 20), path);
    ASSERT_FALSE(sheet.plan.wrong_closings.empty());
    const std::string text = unbroken(sheet.text);
    EXPECT_NE(text.find("Open again first [ ] "), std::string::npos) << text;
    for (const WrongClosing& wrong : sheet.plan.wrong_closings)
        EXPECT_NE(text.find("take out the entry of " + sheet.job.survey[wrong.gap].id + ','), std::string::npos) << text;
}

}  // namespace
}  // namespace seamward::test
