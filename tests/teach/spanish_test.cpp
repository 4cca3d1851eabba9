// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing that a trainee reads in Spanish is English but the names that a house file gives.
#include <gtest/gtest.h>

#include <algorithm>
#include <cctype>
#include <set>

#include "teach/briefing.h"
#include "teach/feedback.h"
#include "teach/lesson.h"
#include "teach/make_drill.h"
#include "tests/support/scratch_folder.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

using Lines = std::vector<std::string>;

std::size_t words_of(const std::string& text) {
    std::size_t words = 0;
    bool within = false;
    for (const unsigned char letter : text + ' ') {
        const bool is_letter = std::isalpha(letter) != 0 || letter >= 0x80;
        if (within && !is_letter) ++words;
        within = is_letter;
    }
    return words;
}

void add(Lines& lines, const Lines& more) { lines.insert(lines.end(), more.begin(), more.end()); }

/// All that the program says of a drill and of some answers to it, in one order.
Lines all_said(const DrillRound& round, const std::vector<Answers>& answers, const Translator& say) {
    const Briefing brief = briefing(round, say);
    Lines lines{brief.title, brief.story, brief.question};
    add(lines, brief.animals);
    add(lines, brief.lives);
    add(lines, brief.rules);
    for (const BriefedPlace& place : brief.places) add(lines, {place.name, place.height});
    for (const auto& [id, name] : brief.treatments) lines.push_back(name);
    for (std::size_t i = 0; i < round.places.size(); ++i) add(lines, close_look(round, i, say));
    for (const Answers& one : answers) {
        const DrillFeedback told = feedback(round, one, score(round, one), say, RunContext());
        lines.push_back(told.headline);
        for (const HarmFeedback& harm : told.harms) {
            lines.push_back(harm.what);
            add(lines, harm.notes);
        }
        for (const PlaceFeedback& place : told.places) {
            add(lines, {place.title, place.verdict});
            add(lines, place.notes);
        }
        add(lines, told.other);
    }
    return lines;
}

/// Nothing, everything, and everything wrong.
std::vector<Answers> many_answers(const DrillRound& round) {
    const Answers perfect = perfect_answers(round, "Ines Aguirre");
    Answers nothing = perfect, sealed = perfect, wrong = perfect, called = perfect, poor = perfect;
    nothing.findings.clear();
    nothing.entry.reset();
    for (PlaceAnswer& answer : sealed.findings) answer.treatment = "foam";
    for (PlaceAnswer& answer : wrong.findings) {
        answer.width = 0.1;
        answer.between = std::array{SpaceIndex{0}, SpaceIndex{1}};
        answer.treatment = leave_open;
    }
    if (wrong.entry) wrong.entry = FoundAt{0, std::nullopt, std::nullopt};
    for (PlaceAnswer& answer : poor.findings) answer = {answer.where, true, std::nullopt, std::nullopt, "", 0, false};
    called.findings.clear();
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        called.findings.emplace_back();
        called.findings.back().where.place = i;
        called.findings.back().open = drill_key(round)[i].due() ? false : true;
        called.findings.back().width = 0.02;
    }
    Answers tight = called;
    for (PlaceAnswer& answer : tight.findings) answer.open = false;
    Answers beside = perfect;
    beside.findings.push_back(beside.findings.front());
    beside.findings.back().where = {std::nullopt, std::nullopt, round.places[*beside.findings.front().where.place].at};
    PlaceAnswer nowhere;
    nowhere.open = true;
    nowhere.where.at = Point{900, 900, 900};
    beside.findings.push_back(nowhere);
    for (std::uint32_t i = 0; i < round.job.survey.gaps.size(); ++i) {
        if (match(round, {std::nullopt, GapIndex{i}, std::nullopt}).place) continue;
        nowhere.where = {std::nullopt, GapIndex{i}, std::nullopt};
        beside.findings.push_back(nowhere);
        break;
    }
    return {perfect, nothing, sealed, wrong, called, tight, poor, beside};
}

/// Names that house and job files give and no table has.
void add_own_names(const Message& name, std::set<std::string>& given) {
    if (name.parts.empty() && !spanish_texts().contains(name.pattern)) given.insert(name.pattern);
    for (const Message& part : name.parts) add_own_names(part, given);
}

void expect_spanish(const DrillRound& round) {
    const std::vector<Answers> answers = many_answers(round);
    const Translator english(Language::english), spanish(Language::spanish);
    const Lines in_english = all_said(round, answers, english), in_spanish = all_said(round, answers, spanish);
    (void)blank_answers(round, spanish);
    (void)briefing_sheet(round, spanish);
    for (const std::string& text : spanish.missing()) ADD_FAILURE() << "no row in engine/catalog/spanish.yaml: " << text;
    ASSERT_EQ(in_english.size(), in_spanish.size());
    std::set<std::string> given;
    for (const Gap& gap : round.job.survey.gaps) add_own_names(gap.called(), given);
    for (std::size_t i = 0; i < in_english.size(); ++i) {
        if (in_english[i] != in_spanish[i] || words_of(in_english[i]) < 6) continue;
        const bool named = std::any_of(given.begin(), given.end(),
                                       [&](const std::string& name) { return in_english[i].find(name) != std::string::npos; });
        EXPECT_TRUE(named) << "the same in both languages: " << in_english[i];
    }
}

TEST(SpanishDrills, HaveNoEnglish) {
    for (const std::string& name : drill_names()) expect_spanish(shipped_drill(name));
}

TEST(SpanishDrills, HaveNoEnglishInRandomOnes) {
    for (std::uint64_t seed = 1; seed <= 6; ++seed) {
        const ScratchFolder folder;
        const char* house = seed % 2 == 0 ? "quillfeather" : "thimblewick";
        const MadeDrill made = make_drill(source_folder / "models" / (std::string(house) + ".yaml"), seed,
                                          static_cast<Difficulty>(seed % 3), RunContext());
        folder.write("house.yaml", made.house);
        folder.write("job.yaml", made.job);
        expect_spanish(read_drill(folder.write("drill.yaml", made.drill), RunContext()));
    }
}

}  // namespace
}  // namespace seamward::test
