// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "paths/trace.h"
#include "tests/support/brute_force.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

std::vector<std::string> spaces_of_paths(const Survey& survey, std::size_t top) {
    std::vector<std::string> texts;
    for (const RankedPath& ranked : trace(survey, {.top = top}, RunContext()).paths) {
        std::string text;
        for (const SpaceIndex space : ranked.path.spaces) text += (text.empty() ? "" : "-") + survey[space].id;
        texts.push_back(text);
    }
    return texts;
}

/// The network by which Yen's algorithm is usually shown (C to H; edges as in the gonum test file
/// graph/path/yen_ksp_test.go), its weights taken as clear widths and its edges both ways: the widest paths have 2.
/// The order of those that tie there follows by hand from their sorted widths:
/// C-E-G-H 2 2 3, C-D-F-G-H 2 2 3 4, C-D-F-E-G-H 2 2 3 3 4, C-E-F-G-H 2 2 2 2.
TEST(PublishedPaths, YensNetworkAsWidths) {
    SurveyBuilder net;
    net.outdoors("C").cavity("D").cavity("E").cavity("F").cavity("G").living("H");
    net.slot("cd", "C", "D", 3).slot("ce", "C", "E", 2).slot("df", "D", "F", 4).slot("ed", "E", "D", 1).slot("ef", "E", "F", 2);
    net.slot("eg", "E", "G", 3).slot("fg", "F", "G", 2).slot("fh", "F", "H", 1).slot("gh", "G", "H", 2);
    EXPECT_EQ(spaces_of_paths(net.survey(), 4), (std::vector<std::string>{"C-E-G-H", "C-D-F-G-H", "C-D-F-E-G-H", "C-E-F-G-H"}));
    EXPECT_NEAR(trace(net.survey(), {}, RunContext()).paths.at(0).pinch, 0.002, 1e-15);
    EXPECT_NEAR(trace(net.survey(), {}, RunContext()).paths.at(4).pinch, 0.001, 1e-15);
}

/// NetworkX documentation of shortest_simple_paths: on a cycle of 7 nodes with unit weights, 0 to 3 goes by 0-1-2-3, then
/// by 0-6-5-4-3, and there is no third.
TEST(PublishedPaths, CycleOfSevenWithUnitWidths) {
    SurveyBuilder net;
    net.outdoors("0").cavity("1").cavity("2").living("3").cavity("4").cavity("5").cavity("6");
    for (int i = 0; i < 7; ++i) net.slot("e" + std::to_string(i), std::to_string(i), std::to_string((i + 1) % 7), 1);
    EXPECT_EQ(spaces_of_paths(net.survey(), 10), (std::vector<std::string>{"0-1-2-3", "0-6-5-4-3"}));
}

/// Widest paths of the flow network of Cormen et al. taken both ways: the best is s-v1-v3-t with 12.
TEST(PublishedPaths, TextbookNetwork) {
    const SurveyBuilder net = textbook_network();
    EXPECT_EQ(spaces_of_paths(net.survey(), 1), (std::vector<std::string>{"s-v1-v3-t"}));
}

}  // namespace
}  // namespace seamward::test
