// SPDX-License-Identifier: GPL-3.0-or-later
// What the reader of the table of features reads, and what it refuses.
#include <gtest/gtest.h>

#include "catalog/features.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

constexpr std::string_view head = R"(catalog: features
edition: 2026-01-02
sources:
  - {id: book, title: "A book", publisher: "A press", year: 1994, seen: read}
  - {id: practice, title: "Common practice", publisher: none, year: 0, seen: memory}
features:
)";

constexpr std::string_view outlet = R"(  - id: duct
    name: "dryer outlet"
    hosts: [wall, partition]
    air: "dryer duct"
    up: 0.5 m
    reach: 90 mm
    gaps:
      - {at: inside, shape: ring, width: 4 mm, around: 105 mm, insert: metal, usual: bead}
      - id: hood
        name: "hood's flap"
        at: outer
        shape: slot
        form: beside
        size: [100 mm, 80 mm]
        width: 1/4 in
        duty: exhaust
        never: {reason: "lint burns", source: book}
    sources: [book, practice]
    caution: {text: "no screws", source: practice}
    note: "a note"
)";

Table<Treatment> treatments() {
    Table<Treatment> table;
    table.rows = {{"bead", "bead", Treatment::Leaves::nothing, true, "book"},
                  {"mesh", "mesh", Treatment::Leaves::mesh, false, "book"}};
    return table;
}

Table<Feature> read(std::string_view rows) {
    return read_features(std::string(head) + std::string(rows), "f.yaml", treatments());
}

/// A feature on a wall with one gap, given as the inside of a flow mapping.
std::string one_gap(std::string_view gap, std::string_view host = "wall") {
    return "  - {id: a, name: a, hosts: [" + std::string(host) + "], sources: [book], gaps: [{" + std::string(gap) + "}]}\n";
}

FeatureGap gap_of(std::string_view gap, std::string_view host = "wall") { return read(one_gap(gap, host)).rows.at(0).gaps.at(0); }

/// The caret in the rows is where the only fault must stand.
void expect_fault(std::string_view marked_rows, std::string_view what, std::string_view mend) {
    const MarkedText marked(std::string(head) + std::string(marked_rows));
    const auto faults = faults_of([&] { (void)read_features(marked.text, "f.yaml", treatments()); });
    EXPECT_TRUE(only_fault(faults, marked.places.at(0), what, mend)) << marked_rows;
}

void expect_gap_fault(std::string_view gap, std::string_view what, std::string_view mend, std::string_view host = "wall") {
    expect_fault(one_gap(gap, host), what, mend);
}

std::string replaced(std::string_view text, std::string_view from, std::string_view to) {
    std::string changed(text);
    const std::size_t at = changed.find(from);
    if (at == std::string::npos) throw std::out_of_range("not there: " + std::string(from));
    return changed.replace(at, from.size(), to);
}

TEST(ReadFeatures, ReadsEveryKey) {
    const Table<Feature> table = read(outlet);
    ASSERT_EQ(table.rows.size(), 1U);
    const Feature& feature = table.rows[0];
    EXPECT_EQ(feature.id, "duct");
    EXPECT_EQ(feature.name, "dryer outlet");
    EXPECT_EQ(feature.hosts, (std::vector<Host>{Host::wall, Host::partition}));
    EXPECT_EQ(feature.air, "dryer duct");
    EXPECT_EQ(feature.up, 0.5);
    EXPECT_EQ(feature.reach, 0.09);
    EXPECT_EQ(feature.sources, (std::vector<std::string>{"book", "practice"}));
    EXPECT_EQ(feature.caution.text, "no screws");
    EXPECT_EQ(feature.caution.source, "practice");
    EXPECT_EQ(feature.note, "a note");
    ASSERT_EQ(feature.gaps.size(), 2U);
    const FeatureGap& ring = feature.gaps[0];
    EXPECT_EQ(ring.id, "inside");
    EXPECT_EQ(ring.name, "dryer outlet");
    EXPECT_EQ(ring.at, FeatureGap::At::inside);
    EXPECT_EQ(ring.shape, ShapeKind::ring);
    EXPECT_EQ(ring.form, FeatureGap::Form::plain);
    EXPECT_EQ(ring.width, 0.004);
    EXPECT_EQ(ring.around, 0.105);
    EXPECT_EQ(ring.insert, "metal");
    EXPECT_EQ(ring.usual, "bead");
    EXPECT_EQ(ring.count, 1U);
    const FeatureGap& hood = feature.gaps[1];
    EXPECT_EQ(hood.id, "hood");
    EXPECT_EQ(hood.name, "hood's flap");
    EXPECT_EQ(hood.form, FeatureGap::Form::beside);
    EXPECT_EQ(hood.size, (std::array<double, 2>{0.1, 0.08}));
    EXPECT_EQ(hood.width, 0.00635);
    EXPECT_EQ(hood.duty, Duty::exhaust);
    EXPECT_EQ(hood.never.text, "lint burns");
    EXPECT_EQ(hood.never.source, "book");
}

TEST(ReadFeatures, ReadsEveryForm) {
    EXPECT_EQ(gap_of("at: outside, shape: slot, form: around, size: [1 m, 2 m], width: 1 mm").form, FeatureGap::Form::around);
    const FeatureGap line = gap_of("at: outside, shape: slot, form: line, width: 1 mm, upright: true, spacing: 200 mm");
    EXPECT_EQ(line.form, FeatureGap::Form::line);
    EXPECT_TRUE(line.upright);
    EXPECT_EQ(line.count, 1U);  // rows of a joint are one gap
    EXPECT_EQ(line.spacing, 0.2);
    const FeatureGap cut =
        gap_of("at: outside, shape: slot, form: cut, width: 1 mm, length: 60 mm, spacing: 800 mm, rise: 10 mm");
    EXPECT_EQ(cut.count, 0U);
    EXPECT_EQ(cut.length, 0.06);
    EXPECT_EQ(cut.rise, 0.01);
    const FeatureGap edge = gap_of("at: outside, shape: slot, form: edge, width: 1 mm, edges: [left, top]");
    EXPECT_EQ(edge.edges, (std::vector<Edge>{Edge::left, Edge::top}));
    EXPECT_EQ(edge.count, 1U);
    const FeatureGap corner = gap_of(
        "at: through, shape: slot, form: corner, width: 1 mm, length: 60 mm, edges: [left, right], duty: operable", "opening");
    EXPECT_EQ(corner.count, 2U);
    EXPECT_EQ(corner.duty, Duty::operable);
    EXPECT_EQ(gap_of("at: outside, shape: hole, diameter: 5 mm, count: 3, spacing: 1 m").count, 3U);
    const FeatureGap mesh = gap_of("at: through, shape: mesh, opening: 5.7 mm, size: [20 cm, 10 cm], duty: vent, usual: mesh");
    EXPECT_EQ(mesh.shape, ShapeKind::mesh);
    EXPECT_EQ(mesh.width, 0.0057);
    EXPECT_EQ(gap_of("at: outer, shape: hole, diameter: 5 mm", "opening").at, FeatureGap::At::outer);  // frames are hollow
}

TEST(ReadFeatures, SpeaksTheWordsOfTheFile) {
    EXPECT_EQ(host_word(Host::wall), "wall");
    EXPECT_EQ(host_word(Host::block_wall), "block-wall");
    EXPECT_EQ(host_word(Host::duct), "duct");
    EXPECT_EQ(place_word(FeatureGap::At::outside), "outside");
    EXPECT_EQ(place_word(FeatureGap::At::soffit_wall), "soffit-wall");
    EXPECT_EQ(place_word(FeatureGap::At::side), "side");
    EXPECT_EQ(form_word(FeatureGap::Form::corner), "corner");
    for (int host = 0; host <= static_cast<int>(Host::duct); ++host) EXPECT_FALSE(places_of(static_cast<Host>(host)).empty());
}

TEST(FeatureTableFault, RowsAndTheirKeys) {
    expect_fault(replaced(outlet, "    reach:", "    ^reech:"), "unknown key \"reech\" in feature", "did you mean reach?");
    expect_fault(replaced(outlet, "hosts: [wall", "hosts: [^wal"), "unknown host \"wal\"", "did you mean wall?");
    expect_fault(replaced(outlet, "hosts: [wall, partition]", "hosts: ^[]"), "hosts is empty", "[wall]");
    expect_fault(replaced(outlet, "sources: [book, practice]", "sources: [book, ^bok]"), "unknown source \"bok\"", "book");
    expect_fault(replaced(outlet, "sources: [book, practice]", "sources: ^[]"), "sources is empty", "name a source");
    expect_fault(replaced(outlet, "up: 0.5 m", "up: ^0.5"), "bare number", "0.5");
    expect_fault(replaced(outlet, "reach: 90 mm", "reach: ^0 mm"), "reach must be more than 0", "");
    expect_fault(replaced(outlet, "text: \"no screws\", source: practice", "text: \"no screws\", source: ^hearsay"),
                 "unknown source \"hearsay\"", "practice");
    expect_fault(replaced(outlet, "{text: \"no screws\", source: practice}", "^{text: \"no screws\"}"), "caution has no source",
                 "add");
    expect_fault(replaced("  - {id: a, name: a, hosts: [wall], sources: [book], gaps: []}\n", "[]", "^[]"), "at least one gap",
                 "at:");
    expect_fault("  - ^{id: a, name: a, hosts: [wall], sources: [book]}\n", "feature has no gaps", "add gaps");
    expect_fault("  - ^{name: a, hosts: [wall], sources: [book], gaps: [{at: inside, shape: hole, diameter: 1 mm}]}\n",
                 "feature has no id", "add id");
    expect_fault(std::string(outlet) + replaced(outlet, "- id", "- ^id"), "duct stands twice", "keep one");
}

TEST(FeatureTableFault, Places) {
    expect_gap_fault("at: ^inslde, shape: hole, diameter: 5 mm", "unknown at \"inslde\"", "did you mean inside?");
    expect_gap_fault("at: ^blocking, shape: hole, diameter: 5 mm", "a wall has no blocking", "outside, sheathing, inside");
    expect_gap_fault("at: ^outside, shape: hole, diameter: 5 mm", "a partition has no outside", "places of a partition",
                     "partition");
    expect_gap_fault("at: ^outer, shape: hole, diameter: 5 mm", "does not enclose", "add air");
    expect_gap_fault("at: ^back, shape: hole, diameter: 5 mm", "does not enclose", "add air");
    expect_fault("  - {id: a, name: a, hosts: [wall], sources: [book], gaps: [^{shape: hole, diameter: 5 mm}]}\n",
                 "gap has no at", "add at");
    expect_fault(
        "  - {id: a, name: a, hosts: [wall], sources: [book], gaps: [{at: inside, shape: hole, diameter: 5 mm}, ^{at: inside, "
        "shape: hole, diameter: 6 mm}]}\n",
        "gap inside of this feature stands twice", "id");
}

TEST(FeatureTableFault, ShapesAndForms) {
    expect_gap_fault("at: inside, shape: ^whole, diameter: 5 mm", "unknown shape \"whole\"", "hole");
    expect_gap_fault("at: inside, shape: ring, width: 5 mm, around: 2 cm, form: ^around", "only a slot has a form", "remove");
    expect_gap_fault("at: inside, shape: slot, form: ^plain, width: 5 mm", "unknown form \"plain\"", "line");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, width: ^5 mm", "width says nothing of a hole", "remove");
    expect_gap_fault("at: inside, shape: ring, width: 5 mm, around: 2 cm, size: ^[1 m, 1 m]", "size says nothing of a ring",
                     "remove");
    expect_gap_fault("at: inside, shape: slot, form: edge, width: 5 mm, edges: [top], count: ^2",
                     "count says nothing of a slot with form edge", "remove");
    expect_gap_fault("at: inside, shape: slot, form: line, width: 5 mm, count: ^2", "count says nothing of a slot with form line",
                     "remove");
    expect_gap_fault("at: inside, shape: slot, form: cut, width: 5 mm, length: 1 m, size: ^[1 m, 1 m]", "size says nothing",
                     "remove");
    expect_fault("  - {id: a, name: a, hosts: [wall], sources: [book], gaps: [^{at: inside, shape: slot, width: 5 mm}]}\n",
                 "slot has no form", "around, beside");
    for (const auto& [gap, key] : std::initializer_list<std::pair<const char*, const char*>>{
             {"shape: slot, form: around, width: 1 mm", "size"},
             {"shape: slot, form: beside, size: [1 m, 1 m]", "width"},
             {"shape: slot, form: cut, width: 1 mm", "length"},
             {"shape: slot, form: edge, width: 1 mm", "edges"},
             {"shape: slot, form: corner, edges: [left], width: 1 mm", "length"},
             {"shape: hole", "diameter"},
             {"shape: ring, width: 1 mm", "around"},
             {"shape: mesh, size: [1 m, 1 m]", "opening"}})
        expect_fault("  - {id: a, name: a, hosts: [wall], sources: [book], gaps: [^{at: inside, " + std::string(gap) + "}]}\n",
                     "gap has no " + std::string(key), "add " + std::string(key));
}

TEST(FeatureTableFault, Sizes) {
    expect_gap_fault("at: inside, shape: hole, diameter: ^5", "bare number", "5 mm");
    expect_gap_fault("at: inside, shape: hole, diameter: ^0 mm", "diameter must be more than 0", "");
    expect_gap_fault("at: inside, shape: ring, width: 1 mm, around: ^0 mm", "around must be more than 0", "");
    expect_gap_fault("at: inside, shape: hole, diameter: 1 mm, spacing: ^0 mm", "spacing must be more than 0", "");
    expect_gap_fault("at: inside, shape: hole, diameter: 1 mm, count: ^0", "count", "1");
    expect_gap_fault("at: inside, shape: slot, form: around, width: 1 mm, size: ^1 m", "size holds two lengths",
                     "[80 mm, 115 mm]");
    expect_gap_fault("at: inside, shape: slot, form: around, width: 1 mm, size: ^[1 m]", "size holds two lengths",
                     "[80 mm, 115 mm]");
    expect_gap_fault("at: inside, shape: slot, form: around, width: 1 mm, size: [1 m, ^0 m]", "size must be more than 0", "");
    expect_gap_fault("at: inside, shape: slot, form: around, width: 1 mm, size: [1 m, ^2]", "bare number", "2 mm");
    expect_gap_fault("at: inside, shape: slot, form: around, width: 1 mm, size: [1 m, ^[2 m]]", "a side is a length", "80 mm");
    expect_gap_fault("at: inside, shape: slot, form: edge, width: 1 mm, edges: [^botom]", "unknown edge \"botom\"", "bottom");
    expect_gap_fault("at: inside, shape: slot, form: edge, width: 1 mm, edges: [top, ^top]", "edge top stands twice", "keep one");
    expect_gap_fault("at: inside, shape: slot, form: edge, width: 1 mm, edges: ^[]", "edges is empty", "[bottom]");
    expect_gap_fault("at: inside, shape: slot, form: corner, width: 1 mm, length: 1 cm, edges: [^top]", "unknown edge \"top\"",
                     "left, right");
}

TEST(FeatureTableFault, ClosingsThatDefeatADuty) {
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, usual: ^beed", "unknown treatment \"beed\"", "did you mean bead?");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, duty: ^drain", "closing defeats the duty of this gap: drain",
                     "never");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, duty: ^vent, usual: bead", "closing defeats", "usual: mesh");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, duty: ^combustion air", "unknown duty", "combustion-air");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, usual: ^bead, never: {reason: x, source: book}", "never closed",
                     "keep");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, never: ^{reason: x}", "never has no source", "add source");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, never: ^{source: book}", "never has no reason", "add reason");
    expect_gap_fault("at: inside, shape: hole, diameter: 5 mm, never: {reason: x, source: ^bok}", "unknown source \"bok\"",
                     "book");
    EXPECT_NO_THROW((void)gap_of("at: inside, shape: hole, diameter: 5 mm, duty: drain, never: {reason: x, source: book}"));
    EXPECT_NO_THROW((void)gap_of("at: inside, shape: hole, diameter: 5 mm, duty: movement"));
}

/// A faulty row stops the build with its place, and all faults come together.
TEST(FeatureTableFault, AllOfThemAtOnceWithTheirPlaces) {
    std::string rows = replaced(outlet, "width: 4 mm", "width: 4");
    rows = replaced(rows, "duty: exhaust", "duty: exhausting");
    rows = replaced(rows, "sources: [book, practice]", "sources: [magazine]");
    try {
        (void)read(rows);
        FAIL() << "nothing was refused";
    } catch (const BadInput& bad) {
        for (const char* place : {"f.yaml:14:42: error: ", "f.yaml:22:15: error: ", "f.yaml:24:15: error: "})
            EXPECT_NE(std::string(bad.what()).find(place), std::string::npos) << place << " in\n" << bad.what();
    }
}

TEST(FeatureTableFault, WhatIsNoTableOrNoRow) {
    for (const char* rows :
         {"  - text\n", "  - [a]\n", "  -\n", "  - {id: a, name: a, hosts: wall, sources: [book], gaps: [a]}\n"})
        EXPECT_FALSE(faults_of([&] { (void)read(rows); }).empty()) << rows;
    for (const char* text : {"", "- a\n", "catalog: pests\n"})
        EXPECT_FALSE(faults_of([&] { (void)read_features(text, "f", treatments()); }).empty()) << text;
}

}  // namespace
}  // namespace seamward::test
