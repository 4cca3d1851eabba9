// SPDX-License-Identifier: GPL-3.0-or-later
// docs/drills.md, docs/drill.schema.json and docs/answers.schema.json against the program and the drills that ship.
#include <gtest/gtest.h>

#include <filesystem>

#include "catalog/shipped.h"
#include "teach/answers.h"
#include "tests/docs/page.h"
#include "tests/docs/schema_agreement.h"
#include "tests/docs/schema_judge.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

const std::filesystem::path drills = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios/drills";

TEST(DrillSchema, AcceptsEveryShippedDrillAndExample) {
    std::size_t count = 0;
    for (const char* folder : {"", "examples"}) {
        for (const auto& entry : std::filesystem::directory_iterator(drills / folder)) {
            if (entry.path().extension() != ".yaml") continue;
            const std::string text = read_file(entry.path(), entry.path().string(), 1 << 20);
            EXPECT_EQ(std::string(folder).empty() ? drill_verdict(text) : answers_verdict(text), "") << entry.path();
            ++count;
        }
    }
    EXPECT_EQ(count, 18U);
}

TEST(DrillSchema, AcceptsTheJobsOfTheDrills) {
    for (const auto& entry : std::filesystem::directory_iterator(drills / "jobs"))
        EXPECT_EQ(verdict(read_file(entry.path(), entry.path().string(), 1 << 20)), "") << entry.path();
}

bool accepts_drill(const std::string& yaml) {
    const ScratchFolder folder;
    folder.write("job.yaml",
                 "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\ngaps:\n"
                 "  - {id: g, between: [yard, den], slot: {width: 5 mm, length: 1 m}}\n"
                 "  - {id: tight, between: [yard, den], slot: {width: 0 mm, length: 1 m}}\n"
                 "pests: [bark-scorpion]\n");
    try {
        (void)read_drill(folder.write("drill.yaml", yaml), RunContext());
        return true;
    } catch (const BadInput&) {
        return false;
    }
}

bool accepts_answers(const std::string& yaml) {
    static const DrillRound round = read_drill(drills / "6-sighting.yaml", RunContext());
    try {
        (void)parse_answers(yaml, "answers.yaml", round);
        return true;
    } catch (const BadInput&) {
        return false;
    }
}

/// Both say the same of every key left out, empty, and with values of every type.
TEST(DrillSchema, AgreesWithTheProgram) {
    const Judges judges{drill_verdict, accepts_drill};
    const std::string head =
        "seamward-drill: 1, id: d, title: {en: a, es: b}, story: {en: a, es: b}, difficulty: easy, job: job.yaml, ";
    const std::string both = "{en: a, es: b}";
    const std::vector<Mapping> mappings{
        {"@",
         {{"seamward-drill", "1"},
          {"id", "d"},
          {"title", both},
          {"story", both},
          {"difficulty", "hard"},
          {"job", "job.yaml", true},
          {"pass", "", true},
          {"animals", "", true}}},
        {"{" + head + "scope: @}", {{"gaps", "[g]", true}, {"spaces", "", true}, {"not", "", true}}},
        {"{" + head + "decoys: [@]}", {{"gap", "tight", true}, {"looks", both}, {"name", ""}}},
        {"{" + head + "decoys: [@]}", {{"name", both}, {"at", "[1 m, 1 m, 1 m]"}}},
        {"{" + head + "names: [@]}", {{"gap", "g", true}, {"name", both}}},
        {"{" + head + "widths: @}", {{"share", "10 %"}, {"least", "1 mm"}, {"why", both}}},
        {"{" + head + "seen: @}", {{"room", "den", true}, {"animal", "bark-scorpion", true}}}};
    for (const Mapping& mapping : mappings) {
        judges.expect_good(Judges::text_of(mapping, "", ""));
        judges.try_wrong_key(mapping);
        for (const Key& key : mapping.keys) {
            if (key.program_decides) continue;
            for (const std::string& value : values_of_every_type())
                judges.expect_agreement(Judges::text_of(mapping, key.name, value), false);
        }
    }
}

TEST(AnswersSchema, AgreesWithTheProgram) {
    const Judges judges{answers_verdict, accepts_answers};
    const std::string head = "seamward-answers: 1, drill: sighting, trainee: a, ";
    const std::vector<Mapping> mappings{
        {"@", {{"seamward-answers", "1"}, {"drill", "sighting", true}, {"trainee", "a"}, {"date", "", true}}},
        {"{" + head + "entry: @}", {{"place", "1", true}}},
        {"{" + head + "findings: [@]}",
         {{"place", "1", true},
          {"state", "open"},
          {"width", "1 mm"},
          {"between", "[yard, east-wall]", true},
          {"treatment", "bead", true},
          {"wait", "true"}}}};
    for (const Mapping& mapping : mappings) {
        judges.expect_good(Judges::text_of(mapping, "", ""));
        judges.try_wrong_key(mapping);
        for (const Key& key : mapping.keys) {
            if (key.program_decides) continue;
            for (const std::string& value : values_of_every_type())
                judges.expect_agreement(Judges::text_of(mapping, key.name, value), false);
        }
    }
}

/// The figures of the page are those of the table.
TEST(DrillsPage, HasTheFiguresOfTheTable) {
    const auto rows = table_below(page("docs/drills.md"), "## Points");
    EXPECT_EQ(rows.size(), shipped_drill_scores().rows.size());
    for (const DrillScore& row : shipped_drill_scores().rows) {
        ASSERT_TRUE(rows.contains(row.id)) << row.id;
        const std::string& figure = rows.at(row.id).front();
        const double said = std::strtod(figure.c_str(), nullptr);
        const bool percent = figure.find('%') != std::string::npos, millimeters = figure.find("mm") != std::string::npos;
        EXPECT_NEAR(percent ? said / 100 : millimeters ? said / 1000 : said, row.value, 1e-12) << row.id;
    }
}

/// What the page shows of a drill is read; its commands do what they say.
TEST(DrillsPage, ShowsFilesAndCommandsThatWork) {
    const std::string text = page("docs/drills.md");
    std::size_t at = 0;
    const std::string commands = block_after(text, "## A round", at);
    const ScratchFolder folder;
    for (const char* name : {"scenarios", "models"})
        std::filesystem::create_directory_symlink(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / name, folder.path() / name);
    std::size_t count = 0;
    for (std::size_t begin = 0; begin < commands.size(); begin = commands.find('\n', begin) + 1, ++count) {
        const std::string command = commands.substr(begin, commands.find('\n', begin) - begin);
        ASSERT_TRUE(command.starts_with("seamward drill ")) << command;
        const Ran ran = run_shell("cd " + shell_word(folder.path().string()) + " && " + shell_word(SEAMWARD_PROGRAM) +
                                  command.substr(std::string("seamward").size()));
        EXPECT_EQ(ran.exit_code, 0) << command << '\n' << ran.err;
    }
    EXPECT_GE(count, 8U);
    EXPECT_EQ(answers_verdict(block_after(text, "## The answers file", at)), "");
    EXPECT_EQ(drill_verdict(block_after(text, "## The drill file", at)), "");
}

}  // namespace
}  // namespace seamward::test
