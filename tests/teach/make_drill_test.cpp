// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/make_drill.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

MadeDrill made_on(const char* house, std::uint64_t seed, Difficulty difficulty) {
    return make_drill(source_folder / "models" / (std::string(house) + ".yaml"), seed, difficulty, RunContext());
}

DrillRound written(const MadeDrill& made, const ScratchFolder& folder) {
    folder.write("house.yaml", made.house);
    folder.write("job.yaml", made.job);
    return read_drill(folder.write("drill.yaml", made.drill), RunContext());
}

/// 200 drills: each can be read and answered with all points, and loses exactly what is left out.
TEST(MadeDrills, CanBeAnsweredWithAllPoints) {
    constexpr std::array<std::pair<const char*, Difficulty>, 4> houses{{{"wall-corner", Difficulty::easy},
                                                                        {"larkspur", Difficulty::medium},
                                                                        {"bramblequoin", Difficulty::medium},
                                                                        {"quillfeather", Difficulty::hard}}};
    std::set<std::string> jobs;
    std::size_t occupied = 0, waits = 0;
    for (std::uint64_t seed = 1; seed <= 50; ++seed) {
        for (const auto& [house, difficulty] : houses) {
            const ScratchFolder folder;
            const MadeDrill made = made_on(house, seed, difficulty);
            jobs.insert(made.job);
            const DrillRound round = written(made, folder);
            const Answers perfect = perfect_answers(round, "Ines Aguirre");
            const DrillResult result = score(round, perfect);
            ASSERT_TRUE(result.passed) << house << ' ' << seed;
            ASSERT_EQ(result.points, result.most) << house << ' ' << seed;
            Answers less = perfect;
            const std::size_t left_out = seed % less.findings.size();
            less.findings.erase(less.findings.begin() + static_cast<std::ptrdiff_t>(left_out));
            EXPECT_EQ(score(round, less).points, result.points - result.places[*perfect.findings[left_out].where.place].most);
            for (const DrillPlace& place : round.places) {
                if (!place.decoy) continue;
                Answers fooled = perfect;
                fooled.findings.emplace_back();
                fooled.findings.back().where.gap = place.gap;
                fooled.findings.back().open = true;
                EXPECT_EQ(score(round, fooled).points, result.points - 3);
            }
            occupied += round.job.occupied.empty() ? 0 : 1;
            for (const PlaceAnswer& answer : perfect.findings) waits += answer.wait ? 1 : 0;
        }
    }
    EXPECT_GT(jobs.size(), 190U) << "seeds give drills of their own";
    EXPECT_GT(occupied, 40U);
    EXPECT_GT(waits, 0U);
}

TEST(MadeDrills, AreTheSameForTheSameSeed) {
    for (const Difficulty difficulty : {Difficulty::easy, Difficulty::hard}) {
        const MadeDrill one = made_on("quillfeather", 12, difficulty), other = made_on("quillfeather", 12, difficulty);
        EXPECT_EQ(one.drill, other.drill);
        EXPECT_EQ(one.job, other.job);
        EXPECT_EQ(one.house, other.house);
        EXPECT_NE(one.job, made_on("quillfeather", 13, difficulty).job);
    }
}

/// Files of others stay as they are; those that it wrote itself it may write again.
TEST(MadeDrills, TakeThePlaceOfNoOtherFile) {
    const MadeDrill made = made_on("wall-corner", 3, Difficulty::easy);
    for (const std::string& text : {made.drill, made.job, made.house}) EXPECT_TRUE(is_made_by_us(text)) << text.substr(0, 80);
    const ScratchFolder folder;
    EXPECT_NO_THROW(refuse_files_of_others(folder.path() / "none"));
    (void)written(made, folder);
    EXPECT_NO_THROW(refuse_files_of_others(folder.path()));
    // Made again of the house that it copied: the same files.
    const MadeDrill again = make_drill(folder.path() / "house.yaml", 3, Difficulty::easy, RunContext());
    EXPECT_EQ(again.house, made.house);
    EXPECT_EQ(again.job, made.job);
    folder.write("house.yaml", "seamward-house: 1\n");
    folder.write("drill.yaml", "");
    const std::vector<Diagnostic> faults = faults_of([&] { refuse_files_of_others(folder.path()); });
    ASSERT_EQ(faults.size(), 2U) << listing(faults);
    EXPECT_TRUE(faults[0].file.ends_with("house.yaml") && faults[1].file.ends_with("drill.yaml")) << listing(faults);
    EXPECT_NE(faults[0].what.find("is there already"), std::string::npos);
    EXPECT_NE(faults[0].mend.find("another folder"), std::string::npos);
}

TEST(MadeDrills, PlantMoreTheHarderTheyAre) {
    std::size_t before = 0;
    for (const Difficulty difficulty : {Difficulty::easy, Difficulty::medium, Difficulty::hard}) {
        const ScratchFolder folder;
        const std::size_t places = written(made_on("quillfeather", 5, difficulty), folder).places.size();
        EXPECT_GT(places, before);
        before = places;
    }
}

TEST(MadeDrills, AreRefusedOnAHouseWithoutGaps) {
    const ScratchFolder folder;
    const std::filesystem::path house =
        folder.write("bare.yaml",
                     "seamward-house: 1\nname: Bare\noutline: [[0 m, 0 m], [4 m, 0 m], [4 m, 4 m], [0 m, 4 m]]\n"
                     "wall_assembly: w\nassemblies: [{id: w, layers: [{of: wood, thick: 20 mm}, {air: true, thick: 89 mm}, {of: "
                     "drywall, thick: 13 mm}]}]\n"
                     "foundation: {kind: slab}\nstories: [{height: 2.4 m}]\nroof: {shape: flat, of: membrane}\nrooms: [{id: den, "
                     "at: [2 m, 2 m]}]\n");
    const std::vector<Diagnostic> faults = faults_of([&] { (void)make_drill(house, 1, Difficulty::easy, RunContext()); });
    ASSERT_EQ(faults.size(), 1U);
    EXPECT_NE(faults[0].what.find("too few gaps"), std::string::npos) << to_text(faults[0]);
}

}  // namespace
}  // namespace seamward::test
