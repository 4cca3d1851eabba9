// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/progress.h"

#include <gtest/gtest.h>
#include <sys/wait.h>
#include <unistd.h>

#include <fstream>

#include "base/file_io.h"
#include "teach/briefing.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

Attempt attempt(const std::string& trainee, const std::string& drill, int points, std::vector<std::string> missed = {},
                std::vector<std::string> harms = {}) {
    Attempt one{trainee, drill, std::nullopt, points, 80, harms.empty() && points >= 56, std::move(harms), std::move(missed), 0};
    return one;
}

TEST(Progress, IsAddedToAndReadBack) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "class.jsonl";
    EXPECT_EQ(add_attempt(attempt("Lucia Ferrand", "corner", 40, {"bibb"}), path, "class.jsonl"), 1U);
    EXPECT_EQ(add_attempt(attempt("Owen \"O\" Castellan, Jr.\\", "corner", 70, {}, {"weep"}), path, "class.jsonl"), 1U);
    EXPECT_EQ(add_attempt(attempt("Lucia Ferrand", "corner", 80), path, "class.jsonl"), 2U);
    const std::vector<Attempt> back = read_progress(path, "class.jsonl");
    ASSERT_EQ(back.size(), 3U);
    EXPECT_EQ(back[1].trainee, "Owen \"O\" Castellan, Jr.\\");
    EXPECT_EQ(back[1].harms, (std::vector<std::string>{"weep"}));
    EXPECT_EQ(back[0].missed, (std::vector<std::string>{"bibb"}));
    EXPECT_TRUE(back[2].passed && !back[1].passed);
    const std::string text = read_file(path, "class.jsonl", 1 << 20);
    EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 3) << text;
    EXPECT_EQ(written_progress(back), text);
}

TEST(Progress, RefusesAFaultyFileAndLeavesItAsItIs) {
    const ScratchFolder folder;
    const std::string good = written_progress(std::vector{attempt("Lucia Ferrand", "corner", 40)});
    const std::vector<std::tuple<std::string, std::uint32_t, std::string, std::string>> cases{
        {good + "{\"seamward-progress\": 1, \"trai\n", 2, "JSON syntax", ""},
        {good + good.substr(0, good.size() - 1), 2, "cut off", "take the line out"},
        {good + "\n" + good, 2, "the line is empty", "take it out"},
        {good +
             "{\"seamward-progress\": 2, \"trainee\": \"A\", \"drill\": \"b\", \"points\": 1, \"most\": 2, \"passed\": true}\n",
         2, "unknown format version", "seamward-progress: 1"},
        {"{\"seamward-progress\": 1, \"trainee\": \"A\", \"drill\": \"b\", \"points\": 3, \"most\": 2, \"passed\": true}\n", 1,
         "more points than there are", "take it out"},
        {"{\"seamward-progress\": 1, \"trainee\": \"A\", \"drill\": \"b\", \"points\": -3, \"most\": 2, \"passed\": true}\n", 1,
         "no whole number", "take it out"},
        {"[1]\n", 1, "must be a mapping", ""},
    };
    for (const auto& [text, line, what, mend] : cases) {
        const std::filesystem::path path = folder.write("class.jsonl", text);
        const std::vector<Diagnostic> faults =
            faults_of([&] { (void)add_attempt(attempt("Owen Castellan", "corner", 10), path, "class.jsonl"); });
        ASSERT_FALSE(faults.empty()) << text;
        EXPECT_EQ(faults[0].file, "class.jsonl");
        EXPECT_EQ(faults[0].place.line, line) << listing(faults);
        EXPECT_NE(faults[0].what.find(what), std::string::npos) << listing(faults);
        EXPECT_NE(faults[0].mend.find(mend), std::string::npos) << listing(faults);
        EXPECT_EQ(read_file(path, "class.jsonl", 1 << 20), text) << "the file was changed";
    }
}

/// Whole classes hand in at once: each process reads what the others have written.
TEST(Progress, LosesNothingWhenManyAddAtOnce) {
    constexpr int trainees = 8, rounds = 6;
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "class.jsonl";
    std::vector<pid_t> children;
    for (int i = 0; i < trainees; ++i) {
        const pid_t child = fork();
        ASSERT_GE(child, 0);
        if (child > 0) {
            children.push_back(child);
            continue;
        }
        int failed = 0;
        for (int round = 0; round < rounds; ++round) {
            try {
                const std::string name = "Trainee " + std::to_string(i);
                failed += add_attempt(attempt(name, "corner", round), path, "class.jsonl") == std::size_t(round) + 1 ? 0 : 1;
            } catch (const std::exception&) {
                ++failed;
            }
        }
        _exit(failed);
    }
    for (const pid_t child : children) {
        int status = -1;
        ASSERT_EQ(waitpid(child, &status, 0), child);
        EXPECT_EQ(status, 0);
    }
    EXPECT_EQ(read_progress(path, "class.jsonl").size(), std::size_t{trainees * rounds});
}

TEST(Progress, SaysWhenNobodyCanBeKeptOut) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "none" / "class.jsonl";
    const std::vector<Diagnostic> faults =
        faults_of([&] { (void)add_attempt(attempt("Owen Castellan", "corner", 10), path, "none/class.jsonl"); });
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_EQ(faults[0].file, "none/class.jsonl");
    EXPECT_NE(faults[0].what.find("No such file"), std::string::npos) << listing(faults);
    EXPECT_NE(faults[0].mend.find("class.jsonl.lock"), std::string::npos) << listing(faults);
}

TEST(Progress, TakesAnEmptyFile) {
    const ScratchFolder folder;
    EXPECT_TRUE(read_progress(folder.write("class.jsonl", ""), "class.jsonl").empty());
}

TEST(Progress, TellsOfARound) {
    const DrillRound& round = shipped_drill("1-corner");
    Answers answers = perfect_answers(round, "Lucia Ferrand");
    answers.findings.erase(answers.findings.begin());
    answers.findings.back().treatment = "foam";
    const DrillResult result = score(round, answers);
    const Attempt told = attempt_of(round, answers, result);
    EXPECT_EQ(told.drill, "corner");
    EXPECT_EQ(told.points, result.points);
    EXPECT_EQ(told.missed, (std::vector<std::string>{"screed-drain-holes"}));
    EXPECT_EQ(told.harms.size(), result.harms.size());
}

TEST(Progress, KeepsWhatDrillsAndGapsAreCalled) {
    const DrillRound& round = shipped_drill("1-corner");
    Answers answers = perfect_answers(round, "Lucia Ferrand");
    answers.findings.erase(answers.findings.begin());
    const Attempt told = attempt_of(round, answers, score(round, answers));
    EXPECT_EQ(told.title.english, round.drill.title.english);
    ASSERT_EQ(told.names.count("screed-drain-holes"), 1U);
    EXPECT_EQ(told.names.at("screed-drain-holes").english,
              place_name(round, place_of(round, "screed-drain-holes"), Translator(Language::english)));
    const std::string text = written_progress(std::vector{told});
    const std::vector<Attempt> back = parse_progress(text, "class.jsonl");
    ASSERT_EQ(back.size(), 1U);
    EXPECT_EQ(back[0].title.spanish, round.drill.title.spanish);
    EXPECT_EQ(back[0].names.at("screed-drain-holes").spanish, told.names.at("screed-drain-holes").spanish);
    EXPECT_EQ(written_progress(back), text);
}

/// Summed by hand. Of attempts that earlier versions wrote no names are known.
TEST(ClassSummary, IsATableOfTraineesAndDrills) {
    const std::vector<Attempt> attempts{
        attempt("Lucia Ferrand", "corner", 40, {"bibb", "light"}), attempt("Lucia Ferrand", "corner", 80),
        attempt("=cmd()", "corner", 60, {"light"}, {"weep", "drain"}), attempt("Lucia Ferrand", "eave", 20, {"soffit"})};
    EXPECT_EQ(
        class_summary(attempts, Translator(Language::english)),
        "Trainee,Drill,Trainees,Attempts,Passed,\"Best, %\",\"Last, %\",\"Mean, %\",Rounds with harm,Harms,False "
        "alarms,Missed most often,Harmed most often,\"Drill, id\",\"Missed most often, ids\",\"Harmed most often, ids\"\r\n"
        "'=cmd(),corner,1,1,0,75,75,75,1,2,0,light (1),drain (1); weep (1),corner,light (1),drain (1); weep (1)\r\n"
        "Lucia Ferrand,corner,1,2,1,100,100,75,0,0,0,bibb (1); light (1),,corner,bibb (1); light (1),\r\n"
        "Lucia Ferrand,eave,1,1,0,25,25,25,0,0,0,soffit (1),,eave,soffit (1),\r\n"
        "The whole class,corner,2,3,1,100,75,75,1,2,0,light (2),drain (1); weep (1),corner,light (2),drain (1); weep (1)\r\n"
        "The whole class,eave,1,1,0,25,25,25,0,0,0,soffit (1),,eave,soffit (1),\r\n");
    const Translator spanish(Language::spanish);
    EXPECT_NE(class_summary(attempts, spanish).find("Toda la clase"), std::string::npos);
    EXPECT_TRUE(spanish.missing().empty());
}

TEST(ClassSummary, SaysNamesWithIdsWhereTwoAreCalledTheSame) {
    std::vector<Attempt> attempts{attempt("Lucia Ferrand", "corner", 40, {"bibb", "light-1", "light-2"}),
                                  attempt("Owen Castellan", "corner", 40, {"bibb", "light-1", "light-2"})};
    attempts[1].title = {"The corner", "La esquina"};
    attempts[1].names = {{"bibb", {"hose bibb", "llave de manguera"}},
                         {"light-1", {"outdoor light", "lámpara exterior"}},
                         {"light-2", {"outdoor light", "lámpara exterior"}}};
    const std::string english = class_summary(attempts, Translator(Language::english));
    EXPECT_NE(english.find("Lucia Ferrand,The corner,"), std::string::npos) << english;
    EXPECT_NE(english.find(",hose bibb (1); outdoor light (light-1) (1); outdoor light (light-2) (1),,corner,"
                           "bibb (1); light-1 (1); light-2 (1),"),
              std::string::npos)
        << english;
    const std::string spanish = class_summary(attempts, Translator(Language::spanish));
    EXPECT_NE(spanish.find("Toda la clase,La esquina,"), std::string::npos) << spanish;
    EXPECT_NE(spanish.find("llave de manguera (2); "), std::string::npos) << spanish;
}

}  // namespace
}  // namespace seamward::test
