// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/answers.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

const std::string head = "seamward-answers: 1\ndrill: corner\ntrainee: Lucia Ferrand\nfindings:\n";

std::vector<Diagnostic> faults_in_answers(const std::string& text) {
    return faults_of([&] { (void)parse_answers(text, "answers.yaml", shipped_drill("1-corner")); });
}

TEST(Answers, AreReadInEveryForm) {
    const Answers answers =
        parse_answers(head +
                          "  - {place: 1, state: open, width: 3/16 in, between: [yard, screed-wall], treatment: leave-open}\n"
                          "  - {gap: light, width: 3 mm}\n"
                          "  - {at: [2.3 m, 0 m, 1.1 m], state: tight}\n"
                          "  - {place: 4, state: open, treatment: mesh, opening: 1/8 in, wait: true}\n",
                      "answers.yaml", shipped_drill("1-corner"));
    ASSERT_EQ(answers.findings.size(), 4U);
    EXPECT_EQ(answers.trainee, "Lucia Ferrand");
    EXPECT_EQ(answers.findings[0].where.place, 0U);
    EXPECT_DOUBLE_EQ(*answers.findings[0].width, 3.0 / 16 * 0.0254);
    EXPECT_FALSE(answers.findings[0].closes());
    EXPECT_TRUE(answers.findings[1].open) << "whoever tells a width says that it is open";
    EXPECT_FALSE(answers.findings[2].open);
    EXPECT_DOUBLE_EQ(answers.findings[3].left(), 0.0254 / 8);
    EXPECT_TRUE(answers.findings[3].wait);
}

/// JSON is the same.
TEST(Answers, AreReadAsJson) {
    const Answers answers = parse_answers(
        R"({"seamward-answers": 1, "drill": "corner", "trainee": "Owen Castellan", "date": "2026-09-14", "findings": [{"place": 2, "state": "tight"}]})",
        "answers.json", shipped_drill("1-corner"));
    ASSERT_EQ(answers.findings.size(), 1U);
    EXPECT_EQ(date_text(*answers.date), "2026-09-14");
}

TEST(Answers, LeaveOutWhatWasNotFilledIn) {
    const DrillRound& round = shipped_drill("6-sighting");
    for (const Language language : {Language::english, Language::spanish}) {
        std::string blank = blank_answers(round, Translator(language));
        const std::string nobody = "trainee: \"\"";
        EXPECT_TRUE(has_fault(faults_of([&] { (void)parse_answers(blank, "blank.yaml", round); }),
                              faults_of([&] { (void)parse_answers(blank, "blank.yaml", round); }).front().place, "trainee", ""));
        blank.replace(blank.find(nobody), nobody.size(), "trainee: Ines Aguirre");
        const Answers answers = parse_answers(blank, "blank.yaml", round);
        EXPECT_TRUE(answers.findings.empty());
        EXPECT_FALSE(answers.entry.has_value() && answers.entry->place.has_value());
        EXPECT_EQ(score(round, answers).points, 0);
    }
}

/// What is written is read back, to the last bit of a width.
TEST(Answers, AreWrittenAndReadBack) {
    for (const std::string& name : drill_names()) {
        const DrillRound& round = shipped_drill(name);
        Answers answers = perfect_answers(round, "Marisol \"Mari\" Quade\\");
        answers.findings.front().where = {std::nullopt, std::nullopt, Point{0.1 + 0.2, -1.0 / 3, 1e-3}};
        const Answers back = parse_answers(written_answers(answers, round), "back.yaml", round);
        EXPECT_EQ(back.trainee, answers.trainee);
        ASSERT_EQ(back.findings.size(), answers.findings.size());
        EXPECT_EQ(back.findings.front().where.at->x, 0.1 + 0.2);
        EXPECT_EQ(back.findings.front().where.at->y, -1.0 / 3);
        for (std::size_t i = 0; i < back.findings.size(); ++i) {
            EXPECT_EQ(back.findings[i].width, answers.findings[i].width) << i;
            EXPECT_EQ(back.findings[i].between, answers.findings[i].between);
            EXPECT_EQ(back.findings[i].treatment, answers.findings[i].treatment);
            EXPECT_EQ(back.findings[i].wait, answers.findings[i].wait);
        }
    }
}

TEST(Answers, NameEachFaultWithItsPlace) {
    const std::vector<std::tuple<std::string, Place, std::string, std::string>> cases{
        {"  - {place: 11, state: open}\n", {5, 13}, "there is no place 11", "places 1 to 10"},
        {"  - {place: 1, state: opne}\n", {5, 23}, "unknown state \"opne\"", "did you mean open?"},
        {"  - {state: open}\n", {5, 5}, "nobody can tell where", "place: 3"},
        {"  - {place: 1, gap: light, state: open}\n", {5, 5}, "more than once where", "one of"},
        {"  - {place: 1, width: 3}\n", {5, 23}, "width", "3 mm"},
        {"  - {gap: lihgt, state: open}\n", {5, 11}, "unknown gap \"lihgt\"", "did you mean light?"},
        {"  - {place: 1, between: [yard], state: open}\n", {5, 25}, "exactly two spaces", "[SPACE, SPACE]"},
        {"  - {place: 1, between: [yard, kichen], state: open}\n", {5, 32}, "unknown space \"kichen\"", "kitchen"},
        {"  - {place: 1, treatment: beed}\n", {5, 27}, "unknown treatment \"beed\"", "did you mean bead?"},
        {"  - {place: 1, treatment: mesh}\n", {5, 27}, "how fine its mesh is", "opening: 1/4 in"},
        {"  - {place: 1, treatment: bead, opening: 1 mm}\n", {5, 42}, "says nothing", "remove"},
        {"  - {place: 1, state: tight, treatment: bead}\n", {5, 41}, "tight needs no treatment", "state: open"},
        {"  - {place: 1, state: open}\n  - {gap: screed-drain-holes, state: tight}\n",
         {6, 5},
         "place 1 is told of twice",
         "keep one"},
        {"  - {place: 1, width: 1 mm, colour: red}\n", {5, 29}, "unknown key \"colour\"", ""},
    };
    for (const auto& [text, place, what, mend] : cases)
        EXPECT_TRUE(has_fault(faults_in_answers(head + text), place, what, mend)) << text;
    EXPECT_TRUE(has_fault(faults_in_answers("seamward-answers: 1\ndrill: eave\ntrainee: A\n"), {2, 8},
                          "answers to the drill \"eave\"", "this one is corner"));
    EXPECT_TRUE(has_fault(faults_in_answers("seamward-answers: 1\ndrill: corner\ntrainee: A\nentry: {place: 1}\n"), {4, 8},
                          "does not ask by which entry", "remove entry"));
    EXPECT_FALSE(faults_in_answers("").empty());
    EXPECT_FALSE(faults_in_answers("[1, 2]").empty());
}

/// Many findings at once take no long time, and too many are refused.
TEST(Answers, AreBounded) {
    std::string text = head;
    for (int i = 0; i < 10'001; ++i) text += "  - {at: [1 m, 1 m, 1 m], state: tight}\n";
    EXPECT_TRUE(only_fault(faults_in_answers(text), {5, 3}, "more than 10000 findings", "once"));
}

}  // namespace
}  // namespace seamward::test
