// SPDX-License-Identifier: GPL-3.0-or-later
// The table of features that the program ships.
#include "catalog/features.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <sstream>

#include "catalog/shipped.h"

namespace seamward::test {
namespace {

const std::vector<Feature>& features() { return shipped_features().rows; }

const CatalogSource* source_of(const std::string& id) {
    const auto& sources = shipped_features().sources;
    const auto found = std::find_if(sources.begin(), sources.end(), [&](const CatalogSource& s) { return s.id == id; });
    return found == sources.end() ? nullptr : &*found;
}

const Feature& feature(const char* id) {
    const Feature* found = shipped_features().find(id);
    if (found == nullptr) throw std::out_of_range(std::string("no feature ") + id);
    return *found;
}

const FeatureGap& gap(const char* id, const char* of_feature) {
    for (const FeatureGap& gap : feature(of_feature).gaps) {
        if (gap.id == id) return gap;
    }
    throw std::out_of_range(std::string(of_feature) + " has no gap " + id);
}

template <class Visit>
void for_each_gap(Visit&& visit) {
    for (const Feature& feature : features()) {
        for (const FeatureGap& gap : feature.gaps) visit(gap, feature.id + '/' + gap.id);
    }
}

bool is_an_id(const std::string& id) {
    return !id.empty() &&
           std::all_of(id.begin(), id.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

bool holds(const std::string& text, const char* part) { return text.find(part) != std::string::npos; }

TEST(ShippedFeatures, AreManyAndOfEveryHost) {
    EXPECT_GE(features().size(), 60U);
    std::set<Host> hosts;
    for (const Feature& feature : features()) hosts.insert(feature.hosts.begin(), feature.hosts.end());
    EXPECT_EQ(hosts.size(), static_cast<std::size_t>(Host::duct) + 1);
    EXPECT_EQ(&shipped_features(), &shipped_features());
}

/// House files name these.
constexpr const char* lasting_ids =
    "hose-bibb line-set cable-entry fiber-entry exterior-light exterior-outlet doorbell service-conduit "
    "meter-can gas-riser relief-pipe dryer-outlet combustion-air-opening brick-weep control-joint "
    "window-weep window-perimeter window-sash slider-weep slider-track door-sweep door-weatherstrip "
    "door-corner garage-door-bottom garage-door-side garage-door-corner crawl-door crawl-vent "
    "flood-opening water-main condensate-line sill-plate-joint rim-joist-opening weep-screed stucco-top "
    "soffit-joint fascia-joint fascia-corner soffit-vent rafter-blocking-hole roof-vent ridge-vent "
    "gable-vent vent-pipe-boot exhaust-cap roof-to-wall-joint attic-hatch attic-stair supply-register "
    "return-grille recessed-light ceiling-light bath-fan smoke-alarm top-plate-hole top-plate-wire "
    "bottom-plate-hole tub-trap sink-stubs sink-drain toilet-stub shower-arm tub-spout outlet switch "
    "baseboard-joint laundry-box panel-knockout floor-drain-grate gas-stub range-hood-duct flue-collar "
    "chase-top access-panel block-joint block-cell-top block-meets-house irrigation-sleeve joist-pocket "
    "sheathing-joint chimney-joint eave-baffle";

TEST(ShippedFeatures, KeepTheirIds) {
    std::istringstream ids(lasting_ids);
    for (std::string id; ids >> id;) EXPECT_NE(shipped_features().find(id), nullptr) << id;
}

TEST(ShippedFeatures, AreWellFormed) {
    for (const Feature& feature : features()) {
        EXPECT_TRUE(is_an_id(feature.id)) << feature.id;
        EXPECT_FALSE(feature.hosts.empty()) << feature.id;
        EXPECT_FALSE(feature.gaps.empty()) << feature.id;
        EXPECT_LE(feature.up, 3) << feature.id;
        EXPECT_LE(feature.reach, 0.5) << feature.id;
        std::set<std::string> names;
        for (const FeatureGap& gap : feature.gaps) names.insert(gap.name);
        EXPECT_EQ(names.size(), feature.gaps.size()) << feature.id << ": gaps of one feature need names of their own";
    }
    for_each_gap([](const FeatureGap& gap, const std::string& called) {
        EXPECT_TRUE(is_an_id(gap.id)) << called;
        EXPECT_EQ(gap.form == FeatureGap::Form::plain, gap.shape != ShapeKind::slot) << called;
        EXPECT_EQ(gap.around > 0, gap.shape == ShapeKind::ring) << called;
        EXPECT_TRUE(gap.count > 0 || gap.spacing > 0) << called;
    });
}

TEST(ShippedFeatures, NameSourcesThatAreThere) {
    std::set<std::string> used;
    for (const Feature& feature : features()) {
        EXPECT_FALSE(feature.sources.empty()) << feature.id;
        used.insert(feature.sources.begin(), feature.sources.end());
        if (!feature.caution.text.empty()) used.insert(feature.caution.source);
    }
    for_each_gap([&](const FeatureGap& gap, const std::string& called) {
        EXPECT_EQ(gap.never.text.empty(), gap.never.source.empty()) << called;
        if (!gap.never.source.empty()) used.insert(gap.never.source);
    });
    for (const std::string& id : used) EXPECT_NE(source_of(id), nullptr) << id;
    for (const CatalogSource& source : shipped_features().sources)
        EXPECT_TRUE(used.contains(source.id)) << source.id << " is of no use";
}

/// A row that rests on a document says which of its figures does.
TEST(ShippedFeatures, SayWhatADocumentGives) {
    for (const Feature& feature : features()) {
        for (const std::string& id : feature.sources) {
            if (id == "common-practice" || id == "pipe-sizes") continue;
            EXPECT_TRUE(holds(feature.note, id.c_str())) << feature.id << ": " << id;
        }
    }
    for (const CatalogSource& source : shipped_features().sources) {
        EXPECT_TRUE(source.publisher != "not named" || source.seen == CatalogSource::Seen::secondary) << source.id;
    }
    EXPECT_EQ(source_of("common-practice")->seen, CatalogSource::Seen::memory);
    EXPECT_EQ(source_of("pipe-sizes")->seen, CatalogSource::Seen::memory);
}

/// A ring stands round something, and a box in a slot is something: the substrate is known.
TEST(ShippedFeatures, NameSubstratesOfTheSurveys) {
    const std::set<std::string> words{"block", "brick", "concrete", "copper", "drywall", "foam",
                                      "metal", "pvc",   "stucco",   "tile",   "vinyl",   "wood"};
    for_each_gap([&](const FeatureGap& gap, const std::string& called) {
        EXPECT_TRUE(gap.insert.empty() || words.contains(gap.insert)) << called << ": " << gap.insert;
        const bool boxed = gap.form == FeatureGap::Form::around || gap.form == FeatureGap::Form::beside;
        if (gap.shape == ShapeKind::ring || boxed) {
            EXPECT_FALSE(gap.insert.empty()) << called;
        }
    });
}

TEST(ShippedFeatures, StartFromSizesThatOccur) {
    for_each_gap([](const FeatureGap& gap, const std::string& called) {
        EXPECT_GE(gap.width, 0.0003) << called;
        EXPECT_LE(gap.width, gap.shape == ShapeKind::hole ? 0.35 : 0.05) << called;
        EXPECT_LE(gap.around, 0.16) << called;
        EXPECT_LE(gap.length, 5) << called;
        for (const double side : gap.size) EXPECT_LE(side, 1.5) << called;
        if (gap.form == FeatureGap::Form::cut) {
            EXPECT_GT(gap.length, gap.width) << called;
        }
        if (gap.spacing > 0 && gap.form != FeatureGap::Form::line) {
            EXPECT_GT(gap.spacing, gap.width) << called;
        }
    });
}

TEST(ShippedFeatures, UseTreatmentsThatAreThereAndThatFit) {
    for_each_gap([](const FeatureGap& gap, const std::string& called) {
        if (gap.usual.empty()) return;
        const Treatment* usual = shipped_treatments().find(gap.usual);
        ASSERT_NE(usual, nullptr) << called << ": " << gap.usual;
        EXPECT_TRUE(gap.never.text.empty()) << called;
        if (usual->id == "ring") {
            EXPECT_EQ(gap.shape, ShapeKind::ring) << called;
        }
        if (usual->id == "sweep" || usual->id == "weatherstrip") {
            EXPECT_EQ(gap.duty, Duty::operable) << called;
        }
        if (gap.duty == Duty::movement) {
            EXPECT_EQ(usual->id, "backer-and-bead") << called;
        }
        if (gap.duty == Duty::operable) {
            EXPECT_TRUE(usual->id != "bead" && usual->id != "mortar" && usual->id != "foam") << called;
        }
    });
}

TEST(ShippedFeatures, NeverDefeatADuty) {
    int never = 0, screened = 0;
    for_each_gap([&](const FeatureGap& gap, const std::string& called) {
        never += gap.never.text.empty() ? 0 : 1;
        if (!serves_as_opening(gap.duty)) return;
        const bool mesh = gap.usual == "mesh";
        screened += mesh ? 1 : 0;
        EXPECT_TRUE(!gap.never.text.empty() || mesh) << called;
        // Only air that keeps coming through a mesh is screened: water and smoke are not.
        if (mesh) {
            EXPECT_EQ(gap.duty, Duty::vent) << called;
        }
    });
    EXPECT_GE(never, 15);
    EXPECT_GE(screened, 6);
}

TEST(ShippedFeatures, KeepTheThreeLinesOfAWeepScreedApart) {
    const FeatureGap& joint = gap("joint", "weep-screed");
    const FeatureGap& holes = gap("drain-holes", "weep-screed");
    const FeatureGap& line = gap("stucco-line", "weep-screed");
    EXPECT_EQ(feature("weep-screed").gaps.size(), 3U);
    EXPECT_TRUE(joint.never.text.empty());
    EXPECT_FALSE(joint.usual.empty());
    EXPECT_EQ(joint.duty, Duty::none);
    EXPECT_EQ(holes.duty, Duty::drain);
    EXPECT_EQ(line.duty, Duty::weep);
    for (const FeatureGap* open : {&holes, &line}) {
        EXPECT_FALSE(open->never.text.empty());
        EXPECT_EQ(open->never.source, "weep-screed");
    }
    EXPECT_LT(joint.rise, holes.rise);
    EXPECT_LT(holes.rise, line.rise);
}

TEST(ShippedFeatures, MakeFourGapsAndADuctOfADryerOutlet) {
    EXPECT_EQ(feature("dryer-outlet").air, "dryer duct");
    EXPECT_EQ(feature("dryer-floor-duct").air, "dryer duct");
    EXPECT_EQ(gap("outside", "dryer-outlet").shape, ShapeKind::ring);
    EXPECT_EQ(gap("inside", "dryer-outlet").shape, ShapeKind::ring);
    EXPECT_EQ(gap("hood", "dryer-outlet").at, FeatureGap::At::outer);
    EXPECT_EQ(gap("hood", "dryer-outlet").duty, Duty::exhaust);
    EXPECT_EQ(gap("hood", "dryer-outlet").never.source, "dryer-outlets");
    EXPECT_EQ(gap("collar", "dryer-outlet").at, FeatureGap::At::inner);
    EXPECT_TRUE(gap("collar", "dryer-outlet").usual.empty());
    EXPECT_EQ(feature("bath-fan").air, feature("exhaust-cap").air);
    EXPECT_EQ(feature("fireplace-damper").air, feature("chimney-cap").air);
    EXPECT_EQ(feature("floor-drain-grate").air, feature("vent-pipe-boot").air);
}

/// Electricity, gas, fumes and fire.
TEST(ShippedFeatures, WarnWhereWorkCanHurt) {
    for (const char* id : {"service-conduit", "meter-can", "panel-frame", "panel-knockout"})
        EXPECT_TRUE(holds(feature(id).caution.text, "electrician")) << id;
    for (const char* id : {"outlet", "switch", "exterior-outlet", "ceiling-light"})
        EXPECT_TRUE(holds(feature(id).caution.text, "power off")) << id;
    for (const char* id : {"gas-riser", "gas-stub", "gas-line-floor"})
        EXPECT_TRUE(holds(feature(id).caution.text, "gas line")) << id;
    for (const char* id : {"flue-collar", "flue-shaft-top", "chimney-framing"}) {
        EXPECT_TRUE(holds(feature(id).caution.text, "never foam")) << id;
        for (const FeatureGap& gap : feature(id).gaps) EXPECT_EQ(gap.usual, "plate") << id;
    }
    for (const char* id : {"combustion-air-opening", "relief-pipe", "dryer-outlet"})
        EXPECT_NE(feature(id).caution.source, "common-practice") << id;
    for (const char* id : {"relief-pipe", "condensate-line", "secondary-drain"})
        EXPECT_TRUE(holds(feature(id).caution.text, "mouth is never plugged")) << id;
}

/// As the documents of the table give them.
TEST(ShippedFeatures, HaveTheSizesOfTheirSources) {
    EXPECT_EQ(gap("outside", "brick-weep-hole").width, 0.0047625);
    EXPECT_LE(gap("outside", "brick-weep-hole").spacing, 0.8382);
    EXPECT_LE(gap("outside", "brick-weep").spacing, 0.8382);
    EXPECT_EQ(gap("through", "combustion-air-opening").width, 0.00635);
    EXPECT_EQ(gap("blocking", "eave-baffle").width, 0.0254);
    EXPECT_EQ(gap("outer", "chimney-cap").width, 0.0127);
    for (const char* id : {"crawl-vent", "roof-vent", "gable-vent"}) EXPECT_LE(gap("through", id).width, 0.00635) << id;
    EXPECT_LE(gap("soffit", "soffit-vent").width, 0.00635);
}

}  // namespace
}  // namespace seamward::test
