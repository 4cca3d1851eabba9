// SPDX-License-Identifier: GPL-3.0-or-later
// How lines of the list of features are read: where widths come from, and what is proposed for words that are none.
#include "house/read_feature.h"

#include <gtest/gtest.h>

#include "base/file_io.h"
#include "catalog/shipped.h"
#include "tests/support/cottage.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

std::vector<Evidence::How> how(const std::string& line) {
    const FeatureDescription feature = parse_house_yaml(cottage + "  - " + line + "\n", "house.yaml").features.back();
    std::vector<Evidence::How> all;
    for (const auto& gap : feature.gaps) all.push_back(gap.evidence.how);
    return all;
}

void expect_fault(const std::string& marked, std::string_view what, std::string_view mend) {
    const MarkedText text(cottage + "  - " + marked + "\n");
    EXPECT_TRUE(only_fault(faults_of([&] { (void)parse_house_yaml(text.text, "house.yaml"); }), text.places.at(0), what, mend))
        << marked;
}

/// A hose bibb has three gaps: outside, sheathing, inside.
TEST(ReadFeature, WidthsOfTheCatalogAreAssumedAndThoseOfTheFileModeled) {
    using enum Evidence::How;
    using Ways = std::vector<Evidence::How>;
    const auto bibb = [](const std::string& keys) { return how("{id: f, type: hose-bibb" + keys + "}"); };
    EXPECT_EQ(bibb(""), (Ways{assumed, assumed, assumed}));
    EXPECT_EQ(bibb(", around: 22 mm"), (Ways{assumed, assumed, assumed}));
    EXPECT_EQ(bibb(", gap: 1/8 in"), (Ways{modeled, modeled, modeled}));
    EXPECT_EQ(bibb(", outside: 1/8 in"), (Ways{modeled, assumed, assumed}));
    EXPECT_EQ(bibb(", outside: {gap: 1/8 in}, inside: {name: x}"), (Ways{modeled, assumed, assumed}));
    EXPECT_EQ(bibb(", outside: {gap: 1/8 in, evidence: {how: measured}}"), (Ways{measured, assumed, assumed}));
    EXPECT_EQ(bibb(", evidence: {how: measured}, outside: 1/8 in"), (Ways{measured, measured, measured}));
    EXPECT_EQ(bibb(", evidence: {how: assumed}, outside: 1/8 in, inside: {gap: 2 mm}"), (Ways{assumed, assumed, assumed}));
    EXPECT_EQ(bibb(", gap: 1/8 in, outside: {evidence: {how: assumed}}"), (Ways{assumed, modeled, modeled}));
}

/// What one feature states does not reach into the next.
TEST(ReadFeature, EvidenceEndsWithItsFeature) {
    const auto features = parse_house_yaml(cottage +
                                               "  - {id: f, type: outlet, evidence: {how: measured}}\n"
                                               "  - {id: g, type: hose-bibb, outside: 1/8 in}\n",
                                           "house.yaml")
                              .features;
    EXPECT_EQ(features[features.size() - 2].gaps[0].evidence.how, Evidence::How::measured);
    EXPECT_EQ(features.back().gaps[0].evidence.how, Evidence::How::modeled);
}

TEST(ReadFeature, EverydayWordsForTypes) {
    for (const auto& [word, type] : std::vector<std::pair<std::string, std::string>>{{"dryer-vent", "dryer-outlet"},
                                                                                     {"can-light", "recessed-light"},
                                                                                     {"attic-access", "attic-hatch"},
                                                                                     {"exhaust-fan", "bath-fan"},
                                                                                     {"hose-bib", "hose-bibb"},
                                                                                     {"ac-line", "line-set"},
                                                                                     {"spigot", "hose-bibb"},
                                                                                     {"wire-hole", "top-plate-hole"},
                                                                                     {"water-heater-flue", "flue-collar"}}) {
        EXPECT_EQ(shipped_features().find(word), nullptr) << word;
        EXPECT_NE(shipped_features().find(type), nullptr) << type;
        expect_fault("{id: f, type: ^" + word + "}", "unknown type of feature \"" + word + '"', "did you mean " + type + '?');
    }
    expect_fault("{id: f, type: ^zebra}", "unknown type of feature \"zebra\"", "docs/catalog.md lists the types");
}

TEST(ReadFeature, UnknownKeysNameThoseOfTheGaps) {
    expect_fault("{id: f, type: dryer-outlet, ^zzz: 1 mm}", "unknown key \"zzz\" in feature",
                 "a clear width is gap; the keys of its gaps are outside, hood, sheathing, inside, collar");
    expect_fault("{id: f, type: door-sweep, ^width: 1 mm}", "unknown key \"width\" in feature",
                 "the key of its one gap is through");
    expect_fault("{id: f, type: hose-bibb, ^outsid: 1 mm}", "unknown key \"outsid\" in feature", "did you mean outside?");
}

TEST(ReadFeature, RegistersOverASlabSayThatTheyGoOnTheFloor) {
    expect_fault("^{id: f, type: supply-register, at: [2 m, 2 m]}",
                 "a supply-register is on the floor where on is left out, and there is no air under a slab", "write on: ceiling");
    EXPECT_NO_THROW((void)parse_house_yaml(cottage + "  - {id: f, type: supply-register, on: ceiling, at: [2 m, 2 m]}\n", "h"));
}

TEST(ReadFeature, PartitionsThatWereMisspelledAreToldOnce) {
    const MarkedText text(cottage_with("partitions:", "^partitons:"));
    EXPECT_TRUE(only_fault(faults_of([&] { (void)parse_house_yaml(text.text, "house.yaml"); }), text.places.at(0),
                           "unknown key \"partitons\" in house", "did you mean partitions?"));
}

TEST(ReadFeature, NumbersWithoutAUnitGetOneThatMakesSense) {
    for (const auto& [number, unit] :
         std::vector<std::pair<std::string, std::string>>{{"18", "in"}, {"600", "mm"}, {"0.5", "m"}}) {
        const MarkedText text(cottage_with("pitch: 4/12", "pitch: 4/12, overhang: ^" + number));
        EXPECT_TRUE(only_fault(faults_of([&] { (void)parse_house_yaml(text.text, "house.yaml"); }), text.places.at(0),
                               "overhang: a length needs a unit", "write " + number + ' ' + unit));
    }
}

/// docs/catalog.md lists the keys of all types that make several gaps.
TEST(ReadFeature, ThePageListsTheKeysOfSingleGaps) {
    const std::string page = read_file(SEAMWARD_SOURCE_FOLDER "/docs/catalog.md", "catalog.md", 1 << 24);
    for (const Feature& feature : shipped_features().rows) {
        if (feature.gaps.size() < 2) continue;
        std::string row = "\n| `" + feature.id + "` | ";
        for (const FeatureGap& gap : feature.gaps) row += (row.back() == ' ' ? "`" : ", `") + gap.id + '`';
        EXPECT_NE(page.find(row + " |"), std::string::npos) << row;
    }
}

}  // namespace
}  // namespace seamward::test
