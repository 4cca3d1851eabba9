// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/duty_rules.h"

#include <gtest/gtest.h>

#include <set>

#include "catalog/shipped.h"
#include "materials/options.h"
#include "tests/materials/duty_gaps.h"

namespace seamward::test {
namespace {

/// At least one gap for each row.
const std::vector<Asked> one_for_each_row{
    {"screed-holes", Duty::drain, "weep-screed", {"stucco", "metal"}, hole},
    {"stucco-line", Duty::weep, "weep-screed", {"stucco", "metal"}},
    {"screed-joint", Duty::none, "weep-screed", {"stucco", "metal"}},
    {"screed-other", Duty::none, "weep-screed", {"stucco", "metal"}, hole},
    {"stucco-drains", Duty::drain, "", {"stucco"}, hole},
    {"stucco-drains", Duty::weep, "", {"casing-bead"}},
    {"stucco-foot-any", Duty::none, "", {"stucco", "metal", "concrete"}},
    {"stucco-foot-line", Duty::none, "", {"metal", "Stucco"}},
    {"stucco-foot-joint", Duty::none, "", {"stucco", "concrete"}, long_slot, "yard", "wall", 0.05},
    {"stucco-foot-unknown", Duty::none, "", {"stucco"}, long_slot, "wall", "yard", 0.59},
    {"brick-weeps", Duty::weep, "brick-weep", {"brick"}},
    {"brick-weeps", Duty::weep, "brick-weep-hole", {"brick"}, hole},
    {"brick-weeps-typed", Duty::weep, "", {"brick"}},
    {"frame-weeps", Duty::weep, "window-weep"},
    {"frame-weeps", Duty::weep, "slider-weep"},
    {"siding-laps", Duty::weep, "siding-laps", {"wood"}},
    {"laps", Duty::none, "", {"tile"}, long_slot, "yard", "attic", 3},
    {"laps", Duty::none, "", {"siding", "siding"}},
    {"flashings", Duty::none, "", {"brick", "flashing"}},
    {"flashings", Duty::none, "", {"nail-flange", "vinyl"}},
    {"meter-can", Duty::weep, "meter-can", {"metal"}, hole},
    {"meter-can", Duty::none, "meter-can", {"metal"}, Ring{0.003, 0.048}},
    {"panel-knockout", Duty::none, "panel-knockout", {"metal"}, hole, "wall", "kitchen"},
    {"service-wall", Duty::none, "service-conduit", {"stucco", "metal"}, Ring{0.005, 0.06}},
    {"electrical-boxes", Duty::none, "outlet", {"drywall"}, Slot{0.0015, 0.08}, "wall", "kitchen"},
    {"plumbing-vent", Duty::vent, "vent-pipe-boot", {"pvc"}, hole},
    {"plumbing-vent-typed", Duty::vent, "", {"pvc"}, hole},
    {"combustion-air", Duty::combustion_air, "", {}, Mesh{0.00635, 0.028}, "yard", "kitchen"},
    {"combustion-air", Duty::combustion_air, "combustion-air-opening", {}, Mesh{0.00635, 0.028}},
    {"flood-openings", Duty::flood, "flood-opening"},
    {"dryer-outlet", Duty::exhaust, "dryer-outlet"},
    {"dryer-duct-joint", Duty::none, "duct-joint", {"metal"}, Ring{0.009, 0.102}, "wall", "dryer-duct"},
    {"dryer-collar", Duty::none, "dryer-outlet", {"metal"}, Ring{0.003, 0.102}, "dryer-duct", "kitchen"},
    {"dryer-collar", Duty::none, "dryer-floor-duct", {"metal"}, Ring{0.003, 0.102}, "kitchen", "dryer-duct"},
    {"dryer-collar-typed", Duty::none, "", {}, Ring{0.003, 0.102}, "dryer-duct", "kitchen"},
    {"duct-joint", Duty::none, "duct-joint", {"metal"}, Ring{0.003, 0.102}, "wall", "bath-duct"},
    {"dryer-cap", Duty::exhaust, "exhaust-cap", {"metal"}, Slot{0.004, 0.09}, "yard", "dryer-duct"},
    {"dryer-cap", Duty::exhaust, "exhaust-cap", {"metal"}, Slot{0.004, 0.09}, "yard", "bath-laundry-duct"},
    {"fan-cap", Duty::exhaust, "exhaust-cap", {"metal"}, Slot{0.004, 0.09}, "yard", "bath-duct"},
    {"chimney-cap", Duty::exhaust, "chimney-cap", {}, Mesh{0.0127, 0.13}},
    {"exhaust", Duty::exhaust, "exhaust-cap"},
    {"attic-vents", Duty::vent, "soffit-vent", {"metal"}, Mesh{0.0057, 0.024}, "yard", "attic"},
    {"crawl-vents", Duty::vent, "crawl-vent", {"metal"}, Mesh{0.0057, 0.0129}},
    {"vents", Duty::vent},
    {"relief", Duty::relief, "", {"copper"}, hole},
    {"floor-drain", Duty::drain, "floor-drain-grate", {"metal"}, Slot{0.005, 0.05}, "wall", "kitchen"},
    {"drains", Duty::drain, "", {"pvc"}, hole},
    {"weeps", Duty::weep, "", {"vinyl"}},
    {"crawl-door-corner", Duty::operable, "crawl-door-corner", {"wood"}},
    {"fireplace-damper", Duty::operable, "fireplace-damper"},
    {"access", Duty::operable, "attic-hatch", {"wood"}, Slot{0.005, 2.5}, "attic", "kitchen"},
    {"access", Duty::operable, "crawl-door", {"wood"}},
    {"access-typed", Duty::operable, "", {}, Slot{0.005, 2.5}, "attic", "kitchen"},
    {"operable", Duty::operable, "door-sweep", {}, Slot{0.005, 0.9}, "garage", "kitchen"},
    {"movement-attached", Duty::movement, "", {}, long_slot, "garage", "kitchen"},
    {"movement", Duty::movement, "control-joint", {"stucco"}},
    {"flues", Duty::none, "flue-collar", {"drywall", "metal"}, Ring{0.006, 0.127}, "attic", "kitchen"},
    {"flues-typed", Duty::none, "", {"wood", "chimney"}, long_slot, "attic", "kitchen"},
    {"chimney-flashing", Duty::none, "chimney-joint", {"brick"}, long_slot, "yard", "attic"},
    {"party-wall-boxes", Duty::none, "outlet", {"vinyl"}, Slot{0.0015, 0.08}, "party-wall", "kitchen"},
    {"party-wall-boxes", Duty::none, "recessed-light", {"metal"}, Ring{0.003, 0.152}, "common-attic", "kitchen"},
    {"rated-boxes", Duty::none, "outlet", {"type-x"}, Slot{0.0015, 0.08}, "wall", "kitchen"},
    {"porch-boxes", Duty::none, "exterior-light", {"wood"}, Slot{0.0015, 0.08}, "back-porch", "kitchen"},
    {"attached-boxes", Duty::none, "switch", {"drywall"}, Slot{0.0015, 0.08}, "garage", "kitchen"},
    {"attached-attic-boxes", Duty::none, "ceiling-light", {"drywall"}, Ring{0.004, 0.102}, "garage", "attic"},
    {"shared-attic", Duty::none, "stack-cutout", {"drywall"}, Slot{0.009, 0.3}, "wall", "common-attic"},
    {"shared-attic", Duty::none, "", {"drywall"}, hole, "kitchen", "common-attic"},
    {"garage-register", Duty::none, "supply-register", {"metal"}, Slot{0.003, 0.9}, "garage", "attic"},
    {"party-wall", Duty::none, "tub-edge", {"drywall"}, long_slot, "party-wall", "kitchen"},
    {"rated", Duty::none, "", {"drywall", "party-wall"}, long_slot, "wall", "kitchen"},
    {"joist-pocket", Duty::none, "joist-pocket", {"wood"}, Slot{0.006, 0.2}, "wall", "attic"},
    {"garage", Duty::none, "partition-pipe", {"drywall"}, Ring{0.006, 0.027}, "kitchen", "garage"},
    {"attached-attic", Duty::none, "ceiling-hole", {"drywall"}, hole, "garage", "attic"},
    {"porch", Duty::none, "", {"wood"}, long_slot, "back-porch", "kitchen"},
    {"attached", Duty::none, "", {"drywall"}, long_slot, "corridor", "kitchen"},
    {"recessed-light", Duty::none, "recessed-light", {"drywall", "metal"}, Ring{0.003, 0.152}, "attic", "kitchen"},
};

TEST(DutyRules, EveryRowHolds) {
    std::set<std::string> held;
    for (const Asked& asked : one_for_each_row) {
        EXPECT_EQ(ruling(asked).row, asked.row) << asked.row << ' ' << asked.feature;
        held.insert(ruling(asked).row);
    }
    for (const DutyRow& row : shipped_duties().rows) EXPECT_TRUE(held.contains(row.id)) << "no test gap for " << row.id;
}

TEST(DutyRules, TellWhyAndAfterWhat) {
    for (const Asked& asked : one_for_each_row) {
        const DutyRuling said = ruling(asked);
        if (std::string(asked.row) == "porch") {
            EXPECT_FALSE(said.restricted());
            continue;
        }
        EXPECT_TRUE(said.restricted()) << asked.row;
        EXPECT_FALSE(said.source.empty()) << asked.row;
        EXPECT_EQ(said.may_close, shipped_duties().find(asked.row)->full) << asked.row;
    }
    EXPECT_EQ(ruling({"", Duty::weep, "weep-screed"}).source.english(),
              "International Residential Code R703.7.2.1, weep screeds, International Code Council (second hand)");
    EXPECT_EQ(ruling({"", Duty::operable}).source.english(), "Common practice, no published source");
    EXPECT_EQ(ruling({"", Duty::movement}).source.english(),
              "ASTM C1193, use of joint sealants, ASTM International (from memory)");
    EXPECT_EQ(ruling({"", Duty::flood}).source.english(),
              "Technical Bulletin 1, with 44 CFR 60.3(c)(5): \"permit the automatic entry and exit of floodwaters\", Federal "
              "Emergency Management Agency, 2008");
}

/// Whatever else is there: a joint of stucco is restricted only where it may be one of the three lines at its foot.
TEST(DutyRules, LeaveOtherGapsInStuccoFree) {
    const std::vector<Asked> free{
        {"", Duty::none, "", {"stucco"}, hole},                                     // a hole
        {"", Duty::none, "", {"stucco", "copper"}, Ring{0.003, 0.022}},             // round a pipe
        {"", Duty::none, "", {"stucco", "metal"}, Slot{0.003, 0.38}},               // round a box
        {"", Duty::none, "", {"stucco"}, Slot{0.001, 0.999}},                       // too short
        {"", Duty::none, "", {"stucco"}, long_slot, "yard", "wall", 0.6},           // too high
        {"", Duty::none, "", {"stucco", "metal"}, long_slot, "yard", "wall", 2.4},  // over a window
        {"", Duty::none, "", {"stucco"}, long_slot, "wall", "kitchen"},             // inside
        {"", Duty::none, "", {"stucco"}, long_slot, "yard", "kitchen"},             // no wall cavity
        {"", Duty::none, "", {"stucco", "wood"}, long_slot},                        // at a frame
        {"", Duty::none, "stucco-top", {"stucco", "wood"}, long_slot},              // known
        {"", Duty::none, "hose-bibb", {"stucco", "copper"}, Ring{0.003, 0.022}, "yard", "wall", 0.4},
    };
    for (const Asked& asked : free) {
        const DutyRuling said = ruling(asked);
        EXPECT_FALSE(said.restricted()) << said.row;
        EXPECT_TRUE(said.allows("foam", 0));
    }
}

TEST(DutyRules, TellTheThreeLinesAtTheFootOfStuccoApart) {
    const DutyRuling unknown = ruling({"", Duty::none, "", {"stucco"}});
    EXPECT_FALSE(unknown.may_close);
    EXPECT_NE(unknown.instead.english().find("what its sides are made of"), std::string::npos);
    const DutyRuling line = ruling({"", Duty::none, "", {"stucco", "metal"}});
    EXPECT_FALSE(line.allows("bead", 0));
    EXPECT_FALSE(line.allows("mesh", 0.002));
    const DutyRuling joint = ruling({"", Duty::none, "", {"stucco", "concrete"}});
    EXPECT_TRUE(joint.allows("bead", 0));
    EXPECT_TRUE(joint.allows(stated_closing, 0));
    EXPECT_FALSE(joint.allows("foam", 0)) << "it would run over the holes";
    EXPECT_NE(joint.why.english().find("behind the drain line"), std::string::npos);
    // A mesh that was put over it does not make it another gap.
    SurveyBuilder survey = house();
    Gap covered = gap_of({"", Duty::none, "", {"stucco"}}, survey);
    covered.covered = Covered{covered.shape, 0};
    covered.shape = Mesh{0.002, {}};
    EXPECT_EQ(ruling_on(covered, survey.survey()).row, "stucco-foot-unknown");
}

TEST(DutyRules, LimitTheMeshesOverVents) {
    const DutyRuling attic = ruling({"", Duty::vent, "gable-vent"});
    EXPECT_TRUE(attic.keeps_area);
    EXPECT_TRUE(attic.allows("mesh", 0.0015875));
    EXPECT_TRUE(attic.allows("mesh", 0.00635));
    EXPECT_FALSE(attic.allows("mesh", 0.00158));
    EXPECT_FALSE(attic.allows("mesh", 0.0064));
    EXPECT_FALSE(attic.allows("plate", 0));
    EXPECT_FALSE(attic.allows(stated_closing, 0));
    EXPECT_FALSE(attic.allows("mesh", 0)) << "a mesh without an opening is a plate";
    const DutyRuling crawl = ruling({"", Duty::vent, "crawl-vent"});
    EXPECT_TRUE(crawl.allows("mesh", 0.001));
    EXPECT_FALSE(crawl.allows("mesh", 0.0065));
    const DutyRuling burner = ruling({"", Duty::combustion_air});
    EXPECT_TRUE(burner.allows("mesh", 0.00635));
    EXPECT_FALSE(burner.allows("mesh", 0.0057));
    EXPECT_FALSE(ruling({"", Duty::exhaust, "dryer-outlet"}).allows("mesh", 0.00635));
    const DutyRuling fan = ruling({"", Duty::exhaust, "exhaust-cap", {}, long_slot, "yard", "bath-duct"});
    EXPECT_TRUE(fan.allows("mesh-1-4", 0.00546));
    EXPECT_TRUE(fan.allows("mesh", 0.0127));
    EXPECT_FALSE(fan.allows("mesh", 0.00246));
    EXPECT_FALSE(fan.allows("mesh", 0.013));
    EXPECT_FALSE(ruling({"", Duty::exhaust, "exhaust-cap", {}, long_slot, "yard", "dryer-duct"}).allows("mesh", 0.00635));
    EXPECT_FALSE(ruling({"", Duty::flood}).allows("mesh", 0.00635));
    EXPECT_TRUE(ruling({"", Duty::weep, "brick-weep"}).allows("mesh-insert", 0.0025));
    EXPECT_FALSE(ruling({"", Duty::weep, "brick-weep"}).allows("mortar", 0));
}

TEST(DutyRules, KeepFoamFromFireAndHeat) {
    for (const char* treatment : {"foam", "bead", "metal-wool", "plate"}) {
        EXPECT_FALSE(ruling({"", Duty::none, "", {}, long_slot, "garage", "kitchen"}).allows(treatment, 0)) << treatment;
        EXPECT_FALSE(ruling({"", Duty::none, "", {}, hole, "attic", "garage"}).allows(treatment, 0)) << treatment;
        EXPECT_FALSE(ruling({"", Duty::none, "flue-collar"}).allows(treatment, 0)) << treatment;
    }
    EXPECT_TRUE(ruling({"", Duty::none, "", {}, long_slot, "garage", "kitchen"}).allows("mortar", 0));
    EXPECT_TRUE(ruling({"", Duty::none, "flue-collar"}).allows("high-temperature-sealant", 0));
    EXPECT_FALSE(ruling({"", Duty::none, "recessed-light"}).allows("foam", 0));
    EXPECT_TRUE(ruling({"", Duty::operable, "", {}, long_slot, "garage", "kitchen"}).allows("sweep", 0)) << "a door";
    EXPECT_FALSE(ruling({"", Duty::none, "outlet", {}, long_slot, "garage", "wall"}).allows("metal-wool", 0));
    EXPECT_FALSE(ruling({"", Duty::none, "", {}, hole, "garage", "wall"}).restricted());
}

TEST(DutyRules, LetDoorsOpenAndJointsMove) {
    EXPECT_FALSE(ruling({"", Duty::operable}).allows("bead", 0));
    EXPECT_FALSE(ruling({"", Duty::operable}).allows("foam", 0));
    EXPECT_TRUE(ruling({"", Duty::operable}).allows("weatherstrip", 0));
    EXPECT_FALSE(ruling({"", Duty::movement}).allows("mortar", 0));
    EXPECT_TRUE(ruling({"", Duty::movement}).allows("backer-and-bead", 0));
}

/// A word is a whole one, in the id or the name, in any letters.
TEST(DutyRules, ReadWordsOfSpaces) {
    SurveyBuilder survey = house();
    survey.space("a", SpaceKind::attached).space("b", SpaceKind::attached).space("sunroom-2", SpaceKind::attached);
    Survey named = survey.survey();
    named.spaces[survey["a"].value].name = "Garage, west";
    named.spaces[survey["b"].value].name = "garages";
    const auto row = [&](const char* from) {
        return ruling_on(gap_of({"", Duty::none, "", {}, hole, from, "kitchen"}, survey), named).row;
    };
    EXPECT_EQ(row("a"), "garage");
    EXPECT_EQ(row("b"), "attached");
    EXPECT_EQ(row("sunroom-2"), "porch");
}

TEST(DutyRules, WhatTheSurveyForbidsComesFirst) {
    SurveyBuilder survey = named_house();
    for (const Asked& asked : one_for_each_row) {
        Gap gap = gap_of(asked, survey);
        gap.closing.never = "the owner said so";
        const DutyRuling said = ruling_on(gap, survey.survey());
        EXPECT_EQ(said.why.english(), "the owner said so");
        EXPECT_EQ(said.source.english(), "the survey");
        EXPECT_FALSE(said.may_close);
        for (const Treatment& treatment : shipped_treatments().rows)
            EXPECT_FALSE(said.allows(treatment.id, treatment.leaves == Treatment::Leaves::mesh ? 0.005 : 0)) << treatment.id;
        EXPECT_FALSE(said.allows(stated_closing, 0));
    }
}

TEST(DutyRules, WhatAReferenceForbidsLeavesTheMeshesOfItsRow) {
    SurveyBuilder survey = house();
    Gap weep = gap_of({"", Duty::weep, "brick-weep", {"brick"}}, survey);
    weep.closing.never = "drains the wall; an open mesh insert at most";
    weep.closing.never_source = "brick-weeps";
    const DutyRuling said = ruling_on(weep, survey.survey());
    EXPECT_FALSE(said.may_close);
    EXPECT_TRUE(said.allows("mesh-insert", 0.0025));
    EXPECT_FALSE(said.allows("mesh", 0.0025));
    EXPECT_EQ(said.why.english(), weep.closing.never);
    EXPECT_NE(said.source.english().find("R703.7.6"), std::string::npos);
    EXPECT_NE(said.source.english().find("2003 (second hand)"), std::string::npos);

    // What no row restricts is closed by nothing then, and meshed where the reference lets it be.
    Gap other = gap_of({"", Duty::none, "", {"wood"}}, survey);
    other.closing.never = "says a table";
    other.closing.never_source = "common-practice";
    EXPECT_FALSE(ruling_on(other, survey.survey()).allows("mesh", 0.005));
    other.closing.mesh_allowed = true;
    EXPECT_TRUE(ruling_on(other, survey.survey()).allows("mesh", 0.005));
    EXPECT_FALSE(ruling_on(other, survey.survey()).allows("bead", 0));
    // A row of full closings leaves none.
    Gap door = gap_of({"", Duty::operable}, survey);
    door.closing = other.closing;
    for (const Treatment& treatment : shipped_treatments().rows)
        EXPECT_FALSE(ruling_on(door, survey.survey()).allows(treatment.id, treatment.opening)) << treatment.id;
}

TEST(DutyRules, APriceOverridesNoDuty) {
    SurveyBuilder survey = named_house();
    for (const Asked& asked : one_for_each_row) {
        Gap gap = gap_of(asked, survey);
        gap.closing.cost = Money{800};
        const DutyRuling said = ruling_on(gap, survey.survey());
        EXPECT_EQ(said.row, asked.row);
        EXPECT_EQ(said.allows(stated_closing, 0), said.may_close) << asked.row;
    }
}

/// The features' own usual treatments are allowed, but for these.
TEST(DutyRules, AgreeWithTheTableOfFeatures) {
    // Cut metal alone does not do at flues; knockouts are an electrician's; the flat mesh is no trap seal.
    const std::set<std::string> stricter{"flue-collar", "flue-shaft-top", "chimney-framing", "panel-knockout"};
    SurveyBuilder survey = house();
    for (const Feature& feature : shipped_features().rows) {
        for (const FeatureGap& row : feature.gaps) {
            Gap gap = gap_of({"", row.duty, feature.id.c_str(), {row.insert}, long_slot, "yard", "wall"}, survey);
            const DutyRuling said = ruling_on(gap, survey.survey());
            EXPECT_TRUE(row.never.text.empty() || !said.may_close) << feature.id << ' ' << row.id;
            if (row.usual.empty()) continue;
            const double opening = row.usual == "mesh" ? 0.0057 : 0;
            EXPECT_EQ(said.allows(row.usual, opening), !stricter.contains(feature.id)) << feature.id << ' ' << row.usual;
        }
    }
}

}  // namespace
}  // namespace seamward::test
