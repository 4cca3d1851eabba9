// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/briefing.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <optional>
#include <set>

#include "base/quantity.h"
#include "teach/key.h"
#include "tests/support/page_reader.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

/// Words that say that a place is open, or that it is not.
constexpr std::array telling{"open ",     "gap ", "missing", "torn",   "cracked open", "rotted", "slipped",
                             "no longer", "worn", "loose",   "sealed", "tight",        "shut ",  "stuck"};

TEST(Briefing, DoesNotTellWhichPlacesAreOpen) {
    for (const std::string& name : drill_names()) {
        const DrillRound& round = shipped_drill(name);
        const Briefing brief = briefing(round, Translator(Language::english));
        for (const BriefedPlace& place : brief.places) {
            for (const char* word : telling) EXPECT_EQ(place.name.find(word), std::string::npos) << name << ": " << place.name;
            EXPECT_EQ(place.name.find("mm"), std::string::npos) << place.name;
        }
    }
}

/// The list would be the same if other places were open: it comes from names and places alone.
TEST(Briefing, IsTheSameWhateverIsOpen) {
    for (const std::string& name : drill_names()) {
        DrillRound other = shipped_drill(name);
        for (Gap& gap : other.job.survey.gaps) gap.shape = widened(gap.shape, 0.001);
        const Translator say(Language::english);
        const Briefing brief = briefing(shipped_drill(name), say), changed = briefing(other, say);
        ASSERT_EQ(brief.places.size(), changed.places.size());
        for (std::size_t i = 0; i < brief.places.size(); ++i) {
            EXPECT_EQ(brief.places[i].name, changed.places[i].name);
            EXPECT_EQ(brief.places[i].height, changed.places[i].height);
        }
        EXPECT_EQ(brief.rules, changed.rules);
    }
}

TEST(Briefing, CallsNoTwoPlacesTheSame) {
    for (const std::string& name : drill_names()) {
        const Briefing brief = briefing(shipped_drill(name), Translator(Language::english));
        std::set<std::string> seen;
        for (const BriefedPlace& place : brief.places) EXPECT_TRUE(seen.insert(place.name + place.height).second) << place.name;
    }
}

TEST(Briefing, SaysHowHighAPlaceLies) {
    const DrillRound& round = shipped_drill("1-corner");
    const Briefing brief = briefing(round, Translator(Language::english));
    // 0.4 m over the floor, which lies 6 in over the ground; the ring's middle is its upper edge.
    EXPECT_EQ(brief.places[place_of(round, "bibb-outside")].height, "1 ft 10 in (0.55 m) above the ground");
}

TEST(CloseLook, TellsWhatHandsCanTell) {
    const DrillRound& round = shipped_drill("1-corner");
    const Translator say(Language::english);
    const std::vector<std::string> joint = close_look(round, place_of(round, "screed-joint"), say);
    std::string all;
    for (const std::string& note : joint) all += note + '\n';
    EXPECT_NE(all.find("between a card and a dime"), std::string::npos) << all;
    EXPECT_EQ(all.find("1.2"), std::string::npos) << all;
    const std::vector<std::string> decoy = close_look(round, 5, say);
    ASSERT_FALSE(round.places[5].gap);
    EXPECT_EQ(decoy, (std::vector<std::string>{"Nothing goes in, not even paper."}));
}

/// What is wider than every gauge is told by a tape, so that it can be answered on paper, and what it reads counts as right.
TEST(CloseLook, TellsWhatATapeReadsBeyondTheGauges) {
    const DrillRound& round = shipped_drill("5-whole-house");
    const std::vector<PlaceKey> key = drill_key(round);
    const std::string lead = "A tape reads: ";
    std::size_t read = 0;
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        std::optional<std::string> told;
        for (const std::string& note : close_look(round, i, Translator(Language::english))) {
            if (note.starts_with(lead)) told = note.substr(lead.size(), note.find(" (") - lead.size());
        }
        EXPECT_EQ(told.has_value(), read_on_tape(key[i].width)) << i;
        if (!told) continue;
        ++read;
        const Parsed<double> width = parse_length(*told);
        ASSERT_TRUE(width) << *told;
        EXPECT_LE(std::abs(*width - key[i].width), width_slack(key[i], {0, 0, {}})) << *told;
    }
    EXPECT_GT(read, 0U);
}

TEST(CloseLook, TellsLengthsAsATapeIsRead) {
    const DrillRound& round = shipped_drill("5-whole-house");
    std::string all;
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        for (const std::string& note : close_look(round, i, Translator(Language::english))) all += note + '\n';
    }
    EXPECT_NE(all.find("It is 44 ft 3 1/2 in (13.50 m) long."), std::string::npos) << all;
    EXPECT_NE(all.find("It is 5 1/2 in (140 mm) long."), std::string::npos) << all;
}

TEST(Briefing, SaysThatATapeIsRead) {
    const Briefing brief = briefing(shipped_drill("1-corner"), Translator(Language::english));
    EXPECT_NE(
        std::find(brief.rules.begin(), brief.rules.end(),
                  "What is wider than a 1/2 in drill shank is read on a tape; there a width that is off by 1/16 in (1.59 mm) "
                  "counts too."),
        brief.rules.end());
}

TEST(BriefingSheet, IsAPageWithARowForEachPlace) {
    for (const Language language : {Language::english, Language::spanish}) {
        const DrillRound& round = shipped_drill("2-eave");
        const PageElement page = read_page(briefing_sheet(round, Translator(language)));
        EXPECT_EQ(page.named("tr").size(), round.places.size() + 1);
        EXPECT_TRUE(page.named("script").empty());
    }
}

}  // namespace
}  // namespace seamward::test
