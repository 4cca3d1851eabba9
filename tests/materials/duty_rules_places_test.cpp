// SPDX-License-Identifier: GPL-3.0-or-later
// The ruling goes by where a gap is: panels and doors, boxes, dryers' ducts, shared attics, garages.
#include <gtest/gtest.h>

#include "materials/duty_rules.h"
#include "tests/materials/duty_gaps.h"

namespace seamward::test {
namespace {

/// A panel is no way out in a fire: it goes on opening for whoever looks after what is behind it.
TEST(DutyRules, TellPanelsFromWaysOut) {
    for (const char* feature : {"access-panel", "attic-hatch", "attic-stair", "crawl-door"}) {
        const DutyRuling said = ruling({"", Duty::operable, feature, {"wood"}, Slot{0.005, 2}, "attic", "kitchen"});
        EXPECT_EQ(said.why.english().find("fire"), std::string::npos) << feature;
        EXPECT_NE(said.why.english().find("looks after what is behind it"), std::string::npos) << feature;
        EXPECT_NE(said.source.english().find("R807.1"), std::string::npos) << feature;
        EXPECT_TRUE(said.allows("weatherstrip", 0) && said.allows("metal-weatherstrip", 0)) << feature;
        EXPECT_FALSE(said.allows("bead", 0)) << feature;
    }
    for (const char* feature : {"", "door-sweep", "window-sash", "slider-track"}) {
        const DutyRuling said = ruling({"", Duty::operable, feature, {}, Slot{0.005, 0.9}, "yard", "kitchen"});
        EXPECT_NE(said.why.english().find("way out in a fire"), std::string::npos) << feature;
    }
    // A window over a hollow frame leads into one, and is no panel.
    EXPECT_EQ(ruling({"", Duty::operable, "window-sash-inner", {}, Slot{0.002, 0.9}, "wall", "kitchen"}).row, "operable");
}

TEST(DutyRules, PutNoMetalIntoBoxesWhateverTheWallHoldsBack) {
    const std::vector<Asked> places{
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "wall", "kitchen"},
        {"", Duty::none, "", {"fire-rated"}, Slot{0.0015, 0.08}, "wall", "kitchen"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "party-wall", "kitchen"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "common-attic", "kitchen"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "garage", "kitchen"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "garage", "attic"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "back-porch", "kitchen"},
        {"", Duty::none, "", {}, Slot{0.0015, 0.08}, "corridor", "kitchen"},
    };
    for (const char* feature :
         {"outlet", "switch", "exterior-outlet", "exterior-light", "ceiling-light", "smoke-alarm", "recessed-light"}) {
        for (Asked place : places) {
            place.feature = feature;
            const DutyRuling said = ruling(place);
            EXPECT_TRUE(said.allows("fire-sealant", 0)) << said.row << ' ' << feature;
            for (const char* treatment : {"metal-wool", "metal-wool-and-bead", "metal-wool-and-fire-sealant", "plate", "foam"})
                EXPECT_FALSE(said.allows(treatment, 0)) << said.row << ' ' << feature << ' ' << treatment;
        }
    }
}

TEST(DutyRules, LetNothingReachIntoADryersDuct) {
    for (const char* feature : {"dryer-outlet", "dryer-floor-duct", "duct-joint", ""}) {
        const DutyRuling said = ruling({"", Duty::none, feature, {}, Ring{0.003, 0.102}, "dryer-duct", "kitchen"});
        for (const char* treatment : {"metal-wool", "metal-wool-and-bead", "metal-wool-and-fire-sealant", "foam", "plate"})
            EXPECT_FALSE(said.allows(treatment, 0)) << feature << ' ' << treatment;
        EXPECT_NE((said.why.english() + said.instead.english()).find("tape"), std::string::npos) << feature;
    }
    EXPECT_TRUE(ruling({"", Duty::none, "dryer-outlet", {}, Ring{0.003, 0.102}, "dryer-duct", "kitchen"}).allows("bead", 0));
    // Round the duct, in the wall that it goes through, nothing reaches into it.
    EXPECT_FALSE(ruling({"", Duty::none, "dryer-outlet", {"stucco"}, Ring{0.004, 0.105}, "yard", "wall"}).restricted());
    EXPECT_FALSE(ruling({"", Duty::none, "dryer-outlet", {"drywall"}, Ring{0.004, 0.105}, "wall", "kitchen"}).restricted());
}

/// What leads into an attic that neighbors share holds back fire as a party wall does; into one's own it is free.
TEST(DutyRules, AskForFireStopsUnderASharedAttic) {
    for (const char* from : {"wall", "kitchen"}) {
        const DutyRuling shared = ruling({"", Duty::none, "", {}, hole, from, "common-attic"});
        for (const char* treatment : {"bead", "backer-and-bead", "foam", "metal-wool", "plate"})
            EXPECT_FALSE(shared.allows(treatment, 0)) << treatment;
        for (const char* treatment : {"fire-sealant", "metal-wool-and-fire-sealant", "mortar"})
            EXPECT_TRUE(shared.allows(treatment, 0)) << treatment;
        EXPECT_FALSE(ruling({"", Duty::none, "", {}, hole, from, "attic"}).restricted());
    }
    EXPECT_FALSE(ruling({"", Duty::none, "fascia-joint", {}, long_slot, "yard", "common-attic"}).restricted())
        << "the roof's edge";
    EXPECT_TRUE(ruling({"", Duty::vent, "gable-vent", {}, Mesh{0.0057, 0.02}, "yard", "common-attic"}).allows("mesh", 0.005));
}

/// To seal round it leaves the duct open; what an audit asks for is what a plan may do.
TEST(DutyRules, CoverARegisterThatOpensIntoAGarage) {
    for (const char* feature : {"supply-register", "return-boot", "return-grille"}) {
        const DutyRuling said = ruling({"", Duty::none, feature, {"metal"}, Slot{0.003, 0.9}, "garage", "attic"});
        EXPECT_TRUE(said.allows("plate", 0)) << feature;
        EXPECT_FALSE(said.allows("bead", 0) || said.allows("fire-sealant", 0)) << feature;
    }
    EXPECT_FALSE(ruling({"", Duty::none, "supply-register", {"metal"}, Slot{0.003, 0.9}, "kitchen", "attic"}).restricted());
}

}  // namespace
}  // namespace seamward::test
