// SPDX-License-Identifier: GPL-3.0-or-later
// `seamward trace --json` on jobs worked out by hand; what they mean stands in their heads.
#include <gtest/gtest.h>

#include "base/document.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

/// The answer to `seamward trace JOB ARGUMENTS --json`, which must be exit code 0.
Document answer(const std::string& job, const std::string& arguments = "") {
    const std::string path = std::string(SEAMWARD_SOURCE_FOLDER) + "/tests/tool/jobs/" + job + ".yaml";
    const Ran ran = run_shell(shell_word(SEAMWARD_PROGRAM) + " trace " + shell_word(path) + " --json " + arguments);
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    return parse_json(ran.out, "answer");
}

/// The gaps of each path, best first: `a1 b1 | a2 b1`.
std::string ways(const Document& document) {
    std::string text;
    value_of(document.root(), "paths").for_each_item([&](Node path) {
        text += text.empty() ? "" : " |";
        value_of(path, "gaps").for_each_item([&](Node gap) { text += (text.empty() ? "" : " ") + std::string(gap.text()); });
    });
    return text;
}

Node path(const Document& document, std::size_t rank) { return item_of(value_of(document.root(), "paths"), rank - 1); }

/// The field names of docs/commands.md, "The JSON answer", and no others.
TEST(TraceAnswer, HasTheFieldsOfThePage) {
    const Document document = answer("example");
    EXPECT_EQ(document_text(path(document, 1)),
              "{'rank': 1, 'from': 'yard', 'to': 'kitchen', 'pinch_mm': 2.5, 'pinch_gap': 'sink-pipe', 'gaps': ['louver', "
              "'sink-pipe'], "
              "'spaces': ['yard', 'north-wall', 'kitchen'], 'open_to': ['bark-scorpion']}");
    EXPECT_EQ(document_text(path(document, 3)),
              "{'rank': 3, 'from': 'yard', 'to': 'kitchen', 'pinch_mm': 1.2, 'pinch_gap': 'screed-north', 'gaps': "
              "['screed-north', 'sink-pipe'], "
              "'spaces': ['yard', 'north-wall', 'kitchen'], 'open_to': []}");
    EXPECT_EQ(ways(document), "louver sink-pipe | screed-holes sink-pipe | screed-north sink-pipe");
}

TEST(TraceAnswer, IsEmptyWhereThereIsNoWayIn) {
    for (const char* job : {"empty", "shut"}) {
        const Document document = answer(job);
        EXPECT_TRUE(value_of(document.root(), "paths").is_sequence()) << job;
        EXPECT_EQ(value_of(document.root(), "paths").size(), 0U) << job;
    }
}

TEST(TraceAnswer, GoesByPinchThenTheNextWidthsThenFewerGapsThenLengthThenIds) {
    EXPECT_EQ(ways(answer("ties")), "x1 | f1 f2 | e1 e2 | d1 d2 | y1 y2 | z1 z2 | g1 g2 g3 | h1 h2");
}

TEST(TraceAnswer, GoesThroughEveryOneOfParallelGaps) {
    const Document document = answer("parallel");
    EXPECT_EQ(ways(document), "a1 b1 | a1 b2 | a2 b1 | a2 b2");
    EXPECT_EQ(document_text(value_of(path(document, 4), "pinch_mm")), "2.0");
    EXPECT_EQ(value_of(path(document, 4), "pinch_gap").text(), "a2");
}

TEST(TraceAnswer, NamesTheFirstPinchFromTheStart) {
    const Document document = answer("equal-pinch");
    EXPECT_EQ(ways(document), "z-first m-middle a-last");
    EXPECT_EQ(value_of(path(document, 1), "pinch_gap").text(), "m-middle");
    EXPECT_EQ(value_of(path(document, 1), "pinch_mm").text(), "1.5875");
}

TEST(TraceAnswer, GivesTenPathsUnlessToldOtherwise) {
    const std::string demo = "../../../scenarios/demo";
    EXPECT_EQ(value_of(answer(demo).root(), "paths").size(), 10U);
    EXPECT_EQ(value_of(answer(demo, "--top 1").root(), "paths").size(), 1U);
    EXPECT_EQ(value_of(answer(demo, "--top 37").root(), "paths").size(), 37U);
    EXPECT_EQ(value_of(answer("parallel", "--top 1000000000").root(), "paths").size(), 4U);
}

TEST(TraceAnswer, ShorterListsAreTheBeginningOfLongerOnes) {
    const std::string demo = "../../../scenarios/demo";
    const std::string all = ways(answer(demo, "--top 60"));
    for (const char* top : {"1", "2", "7", "30"})
        EXPECT_TRUE(all.starts_with(ways(answer(demo, "--top " + std::string(top))) + " |")) << top;
}

TEST(TraceAnswer, IsTheSameEveryTime) {
    const std::string demo = "../../../scenarios/demo";
    EXPECT_EQ(document_text(answer(demo, "--top 100").root()), document_text(answer(demo, "--top 100").root()));
}

TEST(TraceAnswer, KeepsThePathsWhoseEveryGapLetsAPestThrough) {
    EXPECT_EQ(ways(answer("two-pests", "--pest bark-scorpion")), "slot-in slot-on");
    EXPECT_EQ(ways(answer("two-pests", "--pest house-mouse")), "hole-in");
    EXPECT_EQ(ways(answer("two-pests", "--pest own-beetle")), "hole-in | slot-in hole-on | slot-in slot-on");
    EXPECT_EQ(ways(answer("two-pests", "--pest norway-rat")), "");
}

/// Several: any of them, but one animal must get through the whole path.
TEST(TraceAnswer, KeepsThePathsOfAnyOfSeveralPests) {
    EXPECT_EQ(ways(answer("two-pests", "--pest bark-scorpion --pest house-mouse")), "hole-in | slot-in slot-on");
    EXPECT_EQ(ways(answer("two-pests", "--pest house-mouse --pest bark-scorpion --pest house-mouse")),
              "hole-in | slot-in slot-on");
    EXPECT_EQ(ways(answer("two-pests", "--pest house-mouse --pest own-beetle")), "hole-in | slot-in hole-on | slot-in slot-on");
}

TEST(TraceAnswer, ListsThePestsOfTheJobThatPass) {
    const Document document = answer("two-pests");
    EXPECT_EQ(document_text(value_of(path(document, 1), "open_to")), "['house-mouse', 'own-beetle']");
    EXPECT_EQ(document_text(value_of(path(document, 2), "open_to")), "['own-beetle']");
    EXPECT_EQ(document_text(value_of(path(document, 3), "open_to")), "['bark-scorpion', 'own-beetle']");
    EXPECT_EQ(document_text(value_of(path(answer("two-pests", "--pest house-mouse"), 1), "open_to")),
              "['house-mouse', 'own-beetle']");
}

/// Sized at the stated width, with "maybe" where only plus_minus lets the animal through.
TEST(TraceAnswer, SaysMaybeWhereOnlyTheUncertaintyLetsAPestThrough) {
    const Document document = answer("maybe", "--pest house-mouse");
    EXPECT_EQ(ways(document), "door | vent");
    EXPECT_FALSE(value_of(path(document, 1), "maybe").present());
    EXPECT_EQ(value_of(path(document, 2), "maybe").text(), "true");
    EXPECT_EQ(value_of(path(document, 2), "pinch_mm").text(), "5.8");
    EXPECT_EQ(value_of(path(document, 2), "open_to").size(), 0U);
}

TEST(TraceAnswer, SaysNoMaybeWithoutPestsAskedForNorWhereOneOfThemSurelyPasses) {
    const Document all = answer("maybe");
    EXPECT_EQ(ways(all), "door | vent | pipe");
    for (std::size_t rank = 1; rank <= 3; ++rank) EXPECT_FALSE(value_of(path(all, rank), "maybe").present()) << rank;
    const Document two = answer("maybe", "--pest house-mouse --pest german-cockroach");
    EXPECT_EQ(ways(two), "door | vent | pipe");
    for (std::size_t rank = 1; rank <= 3; ++rank) EXPECT_FALSE(value_of(path(two, rank), "maybe").present()) << rank;
}

TEST(TraceAnswer, LeadsThroughNoRoomAndNoOtherStart) {
    EXPECT_EQ(ways(answer("inside")), "garage-door house-door");
    EXPECT_EQ(ways(answer("inside", "--to bedroom")), "");
    EXPECT_EQ(ways(answer("inside", "--to kitchen")), "garage-door house-door");
}

TEST(TraceAnswer, EndsAtAnySpaceAskedFor) {
    EXPECT_EQ(ways(answer("inside", "--to wall")), "screed");
    EXPECT_EQ(ways(answer("inside", "--to garage")), "garage-door");
    EXPECT_EQ(ways(answer("inside", "--to garage --to wall")), "garage-door | screed");
    EXPECT_EQ(ways(answer("inside", "--to wall --to wall")), "screed");
}

/// From one outdoors space to the other, which is where it ends; never back to where it began.
TEST(TraceAnswer, MayEndAtAnotherStart) {
    const Document document = answer("inside", "--to street");
    EXPECT_EQ(ways(document), "gate");
    EXPECT_EQ(value_of(path(document, 1), "from").text(), "yard");
    EXPECT_EQ(ways(answer("one", "--to yard")), "");
}

TEST(TraceAnswer, StartsAtSourcesToo) {
    const Document document = answer("sources");
    EXPECT_EQ(ways(document), "grate | cut-out valve");
    EXPECT_EQ(value_of(path(document, 1), "from").text(), "drain");
    EXPECT_EQ(value_of(path(document, 2), "from").text(), "neighbor");
}

TEST(TraceAnswer, TakesClosedGapsAsTheirTreatmentLeftThem) {
    const Document document = answer("closed");
    EXPECT_EQ(ways(document), "coarse | meshed");
    EXPECT_EQ(value_of(path(document, 1), "pinch_mm").text(), "8.0");
    EXPECT_EQ(value_of(path(document, 2), "pinch_mm").text(), "1.3");
    EXPECT_EQ(ways(answer("closed", "--pest house-mouse")), "coarse");
}

}  // namespace
}  // namespace seamward::test
