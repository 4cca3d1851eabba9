// SPDX-License-Identifier: GPL-3.0-or-later
// The table of provisions and that of measures: that what ships is whole, and that faults of other tables are told with their
// places.
#include <gtest/gtest.h>

#include <set>

#include "catalog/shipped.h"
#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

TEST(Provisions, AreFortyOrMoreAndSayWhereTheyStand) {
    EXPECT_GE(shipped_provisions().rows.size(), 40U);
    std::set<std::string> ids, sources;
    for (const auto& source : shipped_provisions().sources) sources.insert(source.id);
    for (const Provision& row : shipped_provisions().rows) {
        EXPECT_TRUE(ids.insert(row.id).second) << row.id;
        EXPECT_TRUE(sources.contains(row.source)) << row.id;
        for (const std::string& text : {row.name, row.text, row.group, row.document, row.edition, row.section, row.mend})
            EXPECT_FALSE(text.empty()) << row.id;
        EXPECT_TRUE(row.at_least || row.at_most) << row.id;
        EXPECT_TRUE(row.text.ends_with('.')) << row.id << ": a whole sentence";
        EXPECT_FALSE(row.mend.ends_with('.')) << row.id << ": part of one";
        EXPECT_LE(row.at_least.value_or(0), row.at_most.value_or(row.at_least.value_or(0))) << row.id;
    }
}

/// Of each source that was not read something says so: from memory, or as another gives it.
TEST(Provisions, UseEverySource) {
    std::set<std::string> used;
    for (const Provision& row : shipped_provisions().rows) used.insert(row.source);
    for (const auto& source : shipped_provisions().sources) EXPECT_TRUE(used.contains(source.id)) << source.id;
}

/// What is only remembered is never called sure.
TEST(Provisions, FromMemoryAloneAreNotOfHighConfidence) {
    for (const Provision& row : shipped_provisions().rows) {
        const CatalogSource* source = nullptr;
        for (const CatalogSource& one : shipped_provisions().sources) source = one.id == row.source ? &one : source;
        ASSERT_NE(source, nullptr);
        EXPECT_FALSE(source->seen == CatalogSource::Seen::memory && row.confidence == Confidence::high) << row.id;
    }
}

/// The answers of a survey to measures that a provision asks only beside its own.
const std::set<std::string> beside{"open-area", "vents-balanced"};

TEST(Measures, AreEachUsed) {
    std::set<std::string> used = beside;
    for (const Provision& row : shipped_provisions().rows) used.insert(row.measure);
    for (const Measure& row : shipped_measures().rows) {
        EXPECT_TRUE(used.contains(row.id)) << row.id << " measures nothing";
        EXPECT_TRUE(row.ask.ends_with('?')) << row.id;
        EXPECT_TRUE(row.of != Measure::Of::space || row.stated == Measure::Stated::no) << row.id;
        EXPECT_TRUE(row.stated != Measure::Stated::place || row.of == Measure::Of::house) << row.id;
    }
}

TEST(Provisions, GiveLimitsInTheUnitOfTheirMeasure) {
    for (const Provision& row : shipped_provisions().rows)
        EXPECT_EQ(row.unit, shipped_measures().find(row.measure)->unit) << row.id;
}

// A table with one row, faults and all.

std::string table(const std::string& keys) {
    return "catalog: provisions\nedition: 2026-01-01\nsources:\n  - {id: own, title: Own, publisher: own, year: 0, seen: "
           "memory}\nprovisions:\n" +
           keys;
}

std::string row(const std::string& what, const std::string& id = "own-rule") {
    return "  - id: " + id + "\n    name: n\n    text: t.\n    group: g\n    document: d\n    edition: e\n    section: s\n" +
           "    confidence: low\n    mend: m\n    source: own\n    " + what + "\n";
}

Table<Provision> read(const std::string& text) {
    return read_provisions(text, "own.yaml", shipped_measures(), shipped_features(), shipped_free_areas());
}

std::vector<Diagnostic> faults(const std::string& text) {
    return faults_of([&] { (void)read(text); });
}

/// The keys of a row are on its line 16; columns count from there.
std::vector<Diagnostic> faults_of_row(const std::string& keys) {
    std::string text, line;
    for (const char c : keys + ";") {
        if (c != ';') {
            line += c;
            continue;
        }
        text += (text.empty() ? "" : "\n    ") + line;
        line.clear();
    }
    return faults(table(row(text)));
}

TEST(ProvisionFaults, ATableOfOnesOwnIsRead) {
    const Table<Provision> own =
        read(table(row("gaps: {duties: [operable]}\n    measure: clear-width\n    limit: {at_most: 1/4 in}")));
    ASSERT_EQ(own.rows.size(), 1U);
    EXPECT_DOUBLE_EQ(*own.rows[0].at_most, 0.00635);
    EXPECT_FALSE(own.rows[0].at_least);
}

struct Fault {
    const char* keys;
    std::size_t line, column;  ///< of the first
    const char *what, *mend;
};

class ProvisionFaultsOfRows : public testing::TestWithParam<Fault> {};

TEST_P(ProvisionFaultsOfRows, AreToldWithPlaceAndMending) {
    const Fault& fault = GetParam();
    const std::vector<Diagnostic> found = faults_of_row(fault.keys);
    ASSERT_FALSE(found.empty()) << fault.keys;
    EXPECT_NE(to_text(found.front()).find(fault.what), std::string::npos) << listing(found);
    EXPECT_NE(found.front().mend.find(fault.mend), std::string::npos) << listing(found);
    EXPECT_EQ(found.front().place.line, fault.line) << listing(found);
    EXPECT_EQ(found.front().place.column, fault.column) << listing(found);
    EXPECT_EQ(found.size(), 1U) << listing(found);
}

// Lines 6 to 15 have the keys that every row has; what follows begins on line 16.
constexpr std::array<Fault, 26> all_faults{{
    {"gaps: {duties: [operable]};measure: clear-widht;limit: {at_most: 1 in}", 17, 14, "unknown measure \"clear-widht\"",
     "clear-width"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_most: 1}", 18, 22, "at_most", "1 in"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_most: 1 in2}", 18, 22, "at_most", ""},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_most: 10 %}", 18, 22, "at_most", ""},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_least: -1 in}", 18, 23, "at_least", ""},
    {"gaps: {duties: [operable]};measure: clear-width", 6, 5, "limit", "limit"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {}", 18, 12, "this limits nothing", "at_least, at_most"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_least: 0 mm}", 18, 23, "limits nothing", "at_most"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {at_least: 2 in, at_most: 1 in}", 18, 38, "less than at_least",
     "change"},
    {"gaps: {duties: [operable]};measure: clear-width;limit: {is: true}", 18, 17, "only an answer", "at_least or at_most"},
    {"gaps: {duties: [operable]};measure: stays-open;limit: {is: maybe}", 18, 17, "is", "true"},
    {"gaps: {duties: [operable]};measure: stays-open;limit: {is: true, at_most: 1 in}", 18, 32, "yes or no", "is: true"},
    {"gaps: {features: [door-swep]};measure: clear-width;limit: {at_most: 1 in}", 16, 23, "unknown feature \"door-swep\"",
     "door-sweep"},
    {"gaps: {duties: [operabel]};measure: clear-width;limit: {at_most: 1 in}", 16, 21, "unknown duty \"operabel\"", "operable"},
    {"gaps: {shapes: [sloot]};measure: clear-width;limit: {at_most: 1 in}", 16, 21, "unknown shape \"sloot\"", "slot"},
    {"gaps: {};measure: clear-width;limit: {at_most: 1 in}", 16, 11, "fits every gap", "say which gaps"},
    {"measure: clear-width;limit: {at_most: 1 in}", 6, 5, "gaps is missing", "features"},
    {"gaps: {duties: [vent]};measure: airtightness;limit: {at_most: 5 per hour}", 6, 5, "looks at no gap", "remove gaps"},
    {"measure: airtightness;limit: {at_most: 5}", 17, 22, "air changes", "4.2 per hour"},
    {"applies: {has: [atic]};measure: airtightness;limit: {at_most: 5 per hour}", 16, 20, "unknown word \"atic\"", "attic"},
    {"applies: {foundation: [slabs]};measure: airtightness;limit: {at_most: 5 per hour}", 16, 27, "unknown word \"slabs\"",
     "slab"},
    {"gaps: {duties: [flood]};measure: flood-openings;limit: {at_least: 1.5}", 18, 23, "whole number", "2"},
    {"gaps: {duties: [vent]};measure: vent-area;limit: {at_least: 100 %}", 6, 5, "area_rule", ""},
    {"gaps: {duties: [vent]};measure: vent-area;limit: {at_least: 100 %};area_rule: atic", 19, 16, "unknown area rule \"atic\"",
     "attic"},
    {"gaps: {duties: [vent]};measure: vent-area;limit: {at_least: 100 %};area_rule: combustion-two", 19, 16,
     "says nothing of what", ""},
    {"gaps: {duties: [vent]};measure: clear-width;limit: {at_least: 1 in};area_rule: attic", 19, 16, "no area that is due",
     "remove"},
}};

INSTANTIATE_TEST_SUITE_P(Rows, ProvisionFaultsOfRows, testing::ValuesIn(all_faults));

TEST(ProvisionFaults, OfALowerRule) {
    const std::string vents = "gaps: {duties: [vent]};measure: vent-area;limit: {at_least: 100 %};area_rule: attic;";
    EXPECT_NE(listing(faults_of_row(vents + "lower_rule: attic-balanced")).find("stand together"), std::string::npos);
    EXPECT_NE(listing(faults_of_row(vents + "lower_rule: attic-balanced;lower_if: airtightness")).find("no answer"),
              std::string::npos);
    EXPECT_TRUE(faults_of_row(vents + "lower_rule: attic-balanced;lower_if: vents-balanced").empty());
}

TEST(ProvisionFaults, AreToldAllAtOnce) {
    const std::string good = "measure: airtightness\n    limit: {at_most: 5 per hour}";
    const std::vector<Diagnostic> found =
        faults(table(row(good) + row(good) + row("measure: airtihgtness\n    limit: {at_most: 5 per hour}", "x") +
                     "  - {id: y, colour: red}\n"));
    EXPECT_GE(found.size(), 4U) << listing(found);
    const std::string text = listing(found);
    for (const char* part : {"own-rule", "twice", "airtihgtness", "colour", "name"})
        EXPECT_NE(text.find(part), std::string::npos) << text;
}

TEST(ProvisionFaults, OfSourcesAndConfidence) {
    const std::string text = table(row("measure: airtightness\n    limit: {at_most: 5 per hour}"));
    const auto with = [&](const std::string& old, const std::string& other) {
        std::string changed = text;
        changed.replace(changed.find(old), old.size(), other);
        return listing(faults(changed));
    };
    EXPECT_NE(with("    source: own", "    source: owm").find("owm"), std::string::npos);
    EXPECT_NE(with("confidence: low", "confidence: sure").find("sure"), std::string::npos);
}

TEST(MeasureFaults, AreTold) {
    const auto faults_in_row = [](const std::string& keys) {
        return listing(faults_of([&] {
            (void)read_measures("catalog: measures\nedition: 2026-01-01\nsources: []\nmeasures:\n  - {" + keys + "}\n",
                                "own.yaml");
        }));
    };
    EXPECT_EQ(faults_in_row("id: a, name: a, unit: length, of: gap, stated: gap, ask: \"a?\""), "(no faults)");
    EXPECT_NE(faults_in_row("id: a, name: a, unit: lenght, of: gap, stated: gap, ask: \"a?\"").find("lenght"), std::string::npos);
    EXPECT_NE(faults_in_row("id: a, name: a, unit: length, of: roof, stated: gap, ask: \"a?\"").find("roof"), std::string::npos);
    EXPECT_NE(faults_in_row("id: a, name: a, unit: length, of: gap, stated: gap").find("ask"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
