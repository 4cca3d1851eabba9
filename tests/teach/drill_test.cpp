// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/drill.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

constexpr const char* job_text =
    "seamward: 1\n"
    "spaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}, {id: den, kind: living}]\n"
    "gaps:\n"
    "  - {id: joint, between: [yard, wall], slot: {width: 3 mm, length: 2 m}, at: [1 m, 0 m, 0 m], substrates: [wood]}\n"
    "  - {id: weep, between: [yard, wall], hole: {diameter: 5 mm}, duty: weep, at: [2 m, 0 m, 0 m]}\n"
    "  - {id: shut, between: [wall, den], slot: {width: 0 mm, length: 1 m}, at: [1 m, 1 m, 0 m]}\n"
    "pests: [bark-scorpion]\n";

const std::string head =
    "seamward-drill: 1\nid: small\ntitle: {en: A, es: B}\ndifficulty: easy\njob: job.yaml\nstory: {en: A, es: B}\n";

/// A drill file beside that job.
struct Written {
    explicit Written(const std::string& drill) {
        folder.write("job.yaml", job_text);
        path = folder.write("drill.yaml", drill);
    }
    [[nodiscard]] std::vector<Diagnostic> faults() const {
        return faults_of([&] { (void)read_drill(path, RunContext()); });
    }
    ScratchFolder folder;
    std::filesystem::path path;
};

TEST(Drill, IsReadWithWhatItLeavesOut) {
    const Written written(head);
    const DrillRound round = read_drill(written.path, RunContext());
    EXPECT_EQ(round.drill.id, "small");
    EXPECT_EQ(round.drill.title.in(Language::spanish), "B");
    ASSERT_EQ(round.drill.animals.size(), 1U);
    EXPECT_EQ(round.drill.pass_mark, 0.7);
    EXPECT_EQ(round.drill.widths.share, 0.25);
    ASSERT_EQ(round.places.size(), 3U);
    EXPECT_EQ(round.job.survey[*round.places.back().gap].id, "shut") << "outdoors comes first";
}

TEST(Drill, KeepsToItsScope) {
    const Written spaces(head + "scope: {spaces: [den]}\n");
    EXPECT_FALSE(spaces.faults().empty()) << "nothing is due there";
    const Written some(head + "scope: {spaces: [yard], not: [joint]}\n");
    const DrillRound round = read_drill(some.path, RunContext());
    ASSERT_EQ(round.places.size(), 1U);
    EXPECT_EQ(round.job.survey[*round.places[0].gap].id, "weep");
}

TEST(Drill, TakesItsOwnFigures) {
    const Written written(
        head + "pass: 90 %\nwidths: {share: 10 %, least: 0.2 mm, why: {en: A, es: B}}\nanimals: [house-mouse, bark-scorpion]\n");
    const DrillRound round = read_drill(written.path, RunContext());
    EXPECT_EQ(round.drill.pass_mark, 0.9);
    EXPECT_EQ(round.drill.widths.share, 0.1);
    EXPECT_EQ(round.drill.widths.least, 0.0002);
    EXPECT_EQ(round.drill.animals.size(), 2U);
}

TEST(Drill, NamesEachFaultWithItsPlace) {
    EXPECT_TRUE(only_fault(Written("id: x\n").faults(), {1, 1}, "no seamward-drill", "seamward-drill: 1") ||
                has_fault(Written("id: x\n").faults(), {1, 1}, "no seamward-drill", "seamward-drill: 1"));
    EXPECT_TRUE(has_fault(Written("seamward-drill: 2\njob: job.yaml\n").faults(), {1, 17}, "unknown format version \"2\"",
                          "seamward-drill: 1"));
    EXPECT_TRUE(
        has_fault(Written("seamward-drill: 1\njob: jbo.yaml\n").faults(), {2, 6}, "no such file", "folder of the drill file"));
    const std::vector<std::tuple<std::string, Place, std::string, std::string>> cases{
        {"scop: {}\n", {7, 1}, "unknown key \"scop\"", "did you mean scope?"},
        {"animals: [bark-scorpoin]\n", {7, 11}, "unknown animal \"bark-scorpoin\"", "did you mean bark-scorpion?"},
        {"scope: {gaps: [jont]}\n", {7, 16}, "unknown gap \"jont\"", "did you mean joint?"},
        {"scope: {spaces: [denn]}\n", {7, 18}, "unknown space \"denn\"", "did you mean den?"},
        {"decoys: [{gap: joint}]\n", {7, 10}, "lets Bark scorpion through and may be closed", "take it out of the decoys"},
        {"decoys: [{name: {en: A, es: B}}]\n", {7, 10}, "decoy has no at", "add at"},
        {"decoys: [{gap: weep, at: [1 m, 1 m, 1 m]}]\n", {7, 26}, "is where that is", "remove at or gap"},
        {"decoys: [{name: A, at: [1 m, 1 m, 1 m]}]\n", {7, 17}, "one language only", "es: "},
        {"decoys: [{name: {en: A, es: B}, at: [1, 1 m, 1 m]}]\n", {7, 38}, "bare number", "1"},
        {"names: [{gap: shut, name: {en: A, es: B}}]\nscope: {gaps: [joint]}\n",
         {7, 15},
         "is no place of this drill",
         "add it to scope"},
        {"pass: 120 %\n", {7, 7}, "more than all points", "100 %"},
        {"widths: {share: 10 %}\n", {7, 9}, "widths has no least", "add least"},
        {"seen: {room: den, animal: bark-scorpion}\n", {7, 7}, "no open way leads that animal", "another room"},
        {"animals: [bat]\nscope: {gaps: [joint]}\n", {1, 1}, "nothing is open to an animal", "widen its scope"},
    };
    for (const auto& [text, place, what, mend] : cases)
        EXPECT_TRUE(has_fault(Written(head + text).faults(), place, what, mend)) << text;
}

/// A sighting is asked about only where the entry is a place of the drill.
TEST(Drill, RefusesASightingWhoseEntryIsNoPlaceOfIt) {
    std::string open = job_text;
    open.replace(open.find("width: 0 mm"), 11, "width: 4 mm");
    open.replace(open.find("hole: {diameter: 5 mm}"), 22, "hole: {diameter: 0.1 mm}");
    const std::string seen = head + "seen: {room: den, animal: bark-scorpion}\n";
    for (const auto& [scope, refused] :
         {std::pair("", false), std::pair("scope: {gaps: [joint]}\n", false), std::pair("scope: {gaps: [weep, shut]}\n", true)}) {
        Written written(seen + scope);
        written.folder.write("job.yaml", open);
        const std::vector<Diagnostic> faults = written.faults();
        EXPECT_EQ(!faults.empty(), refused) << scope << listing(faults);
        if (!refused) continue;
        EXPECT_TRUE(only_fault(faults, {7, 7}, "gap \"joint\", which is no place of this drill", "add joint to scope"))
            << listing(faults);
    }
}

TEST(DrillFiles, AreKnownByTheirFirstKey) {
    for (const char* text :
         {"seamward-drill: 1\nid: a\n", "# a comment\n\n---\nseamward-drill : 1\n", "\xef\xbb\xbfseamward-drill: 1",
          "{seamward-drill: 1}", "{\n  \"seamward-drill\": 1, \"id\": \"a\"}", "# end\r\n'seamward-drill': 1"})
        EXPECT_TRUE(begins_as_drill(text)) << text;
    for (const char* text :
         {"", "#", "seamward: 1\n", "seamward-house: 1\n", "seamward-drill", "seamward-drills: 1", "\"seamward-drill: 1",
          "# seamward-drill: 1\nseamward: 1\n", "seamward-answers: 1\ndrill: seamward-drill\n"})
        EXPECT_FALSE(begins_as_drill(text)) << text;
    const ScratchFolder folder;
    for (const char* name : {"house.yaml", "job.yml", "b.json", "a.yaml", "drill.txt"})
        folder.write(name, name[0] == 'h' || name[0] == 'j' ? "seamward: 1\n" : "{\"seamward-drill\": 1}\n");
    const auto files = drill_files(folder.path());
    ASSERT_TRUE(files && files->size() == 2);
    EXPECT_EQ((*files)[0].filename(), "a.yaml");
    EXPECT_EQ((*files)[1].filename(), "b.json");
    EXPECT_FALSE(drill_files(folder.path() / "none"));
    EXPECT_EQ(drill_files(source_folder / "scenarios/drills")->size(), drill_names().size());
    EXPECT_TRUE(drill_files(source_folder / "scenarios/drills/jobs")->empty());
}

/// A fault of the job is told with its own place, and which drill asked.
TEST(Drill, NamesFaultsOfItsJob) {
    Written written(head);
    written.folder.write("job.yaml", "seamward: 1\ngaps: [{id: a}]\n");
    const std::vector<Diagnostic> faults = written.faults();
    ASSERT_FALSE(faults.empty());
    EXPECT_TRUE(faults[0].file.ends_with("job.yaml"));
    EXPECT_EQ(faults[0].place.line, 2U);
    EXPECT_NE(faults[0].what.find("drill.yaml"), std::string::npos);
}

TEST(Drill, HidesWhatIsToBeFound) {
    for (const std::string& name : drill_names()) {
        const Job hidden = job_to_inspect(shipped_drill(name));
        EXPECT_TRUE(hidden.survey.gaps.empty() && hidden.house.survey.gaps.empty() && hidden.house.places.empty());
        EXPECT_TRUE(hidden.closed.empty() && hidden.occupied.empty() && hidden.sightings.empty());
        EXPECT_FALSE(hidden.survey.spaces.empty());
        EXPECT_EQ(hidden.house.middles.size(), hidden.survey.spaces.size());
    }
}

TEST(Drill, ShipsSixFromEasyToHard) {
    Difficulty before = Difficulty::easy;
    for (const std::string& name : drill_names()) {
        const DrillRound& round = shipped_drill(name);
        EXPECT_GE(round.drill.difficulty, before) << name;
        before = round.drill.difficulty;
        EXPECT_FALSE(round.drill.decoys.empty()) << name;
        for (const Decoy& decoy : round.drill.decoys) EXPECT_FALSE(decoy.looks.empty()) << name;
    }
    EXPECT_EQ(before, Difficulty::hard);
}

}  // namespace
}  // namespace seamward::test
