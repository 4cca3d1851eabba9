// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/tables.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

constexpr std::string_view head = R"(edition: 2026-01-02
sources:
  - {id: book, title: "A book", publisher: "A press", year: 1994, seen: read}
  - {id: memory, title: "From memory", publisher: none, year: 0, seen: memory}
)";

constexpr std::string_view mouse = R"(  - id: mouse
    name: Mouse
    scientific: Mus musculus
    slit: {size: 6 mm, source: book, basis: advice}
    hole: {size: 1/4 in, source: memory, basis: claim}
    margin: 12.5 %
    climbs: true
    flies: false
    gnaws: true
    confidence: medium
    note: "a note"
)";

std::string pests_with(std::string_view rows) { return "catalog: pests\n" + std::string(head) + "pests:\n" + std::string(rows); }
std::string gauges_with(std::string_view rows) {
    return "catalog: gauges\n" + std::string(head) + "gauges:\n" + std::string(rows);
}

std::string replaced(std::string_view text, std::string_view from, std::string_view to) {
    std::string changed(text);
    const std::size_t at = changed.find(from);
    if (at == std::string::npos) throw std::out_of_range("not there: " + std::string(from));
    return changed.replace(at, from.size(), to);
}

/// Changes one thing in a table that is right; the caret in the new text is where a fault must stand.
void expect_pest_fault(std::string_view from, std::string_view to, std::string_view what, std::string_view mend) {
    const MarkedText marked(replaced(pests_with(mouse), from, to));
    const auto faults = faults_of([&] { (void)read_pests(marked.text, "pests.yaml"); });
    EXPECT_TRUE(has_fault(faults, marked.places.at(0), what, mend)) << to;
}

TEST(ReadPests, ReadsEveryKey) {
    const Table<Pest> table = read_pests(pests_with(mouse), "pests.yaml");
    EXPECT_EQ(table.edition, "2026-01-02");
    ASSERT_EQ(table.sources.size(), 2U);
    EXPECT_EQ(table.sources[0].id, "book");
    EXPECT_EQ(table.sources[0].title, "A book");
    EXPECT_EQ(table.sources[0].publisher, "A press");
    EXPECT_EQ(table.sources[0].year, 1994);
    EXPECT_EQ(table.sources[0].seen, CatalogSource::Seen::read);
    EXPECT_EQ(table.sources[1].seen, CatalogSource::Seen::memory);
    ASSERT_EQ(table.rows.size(), 1U);
    const Pest& pest = table.rows[0];
    EXPECT_EQ(pest.id, "mouse");
    EXPECT_EQ(pest.name, "Mouse");
    EXPECT_EQ(pest.scientific, "Mus musculus");
    EXPECT_EQ(pest.size.slit, 0.006);
    EXPECT_EQ(pest.size.hole, 0.00635);
    EXPECT_EQ(pest.slit_source, "book");
    EXPECT_EQ(pest.hole_source, "memory");
    EXPECT_EQ(pest.slit_basis, Basis::advice);
    EXPECT_EQ(pest.hole_basis, Basis::claim);
    EXPECT_EQ(pest.margin, 0.125);
    EXPECT_TRUE(pest.climbs);
    EXPECT_FALSE(pest.flies);
    EXPECT_TRUE(pest.gnaws);
    EXPECT_EQ(pest.confidence, Confidence::medium);
    EXPECT_EQ(pest.note, "a note");
}

TEST(Table, FindsRowsById) {
    const Table<Pest> table = read_pests(pests_with(mouse), "pests.yaml");
    EXPECT_EQ(table.find("mouse"), &table.rows[0]);
    EXPECT_EQ(table.find("rat"), nullptr);
    EXPECT_EQ(table.ids(), std::vector<std::string_view>{"mouse"});
}

TEST(PestTableFault, UnknownWords) {
    expect_pest_fault("    gnaws:", "    ^gnawz:", "unknown key \"gnawz\" in pest", "did you mean gnaws?");
    expect_pest_fault("size: 6 mm", "^sizes: 6 mm", "unknown key \"sizes\" in slit", "did you mean size?");
    expect_pest_fault("basis: advice", "basis: ^advise", "unknown basis \"advise\"", "did you mean advice?");
    expect_pest_fault("confidence: medium", "confidence: ^middling", "unknown confidence \"middling\"", "medium");
    expect_pest_fault("source: book", "source: ^bok", "unknown source \"bok\"", "did you mean book?");
    expect_pest_fault("source: memory", "source: ^hearsay", "unknown source \"hearsay\"", "book, memory");
    expect_pest_fault("seen: read", "seen: ^seen", "unknown seen \"seen\"", "read, secondary, memory");
}

TEST(PestTableFault, MissingKeys) {
    expect_pest_fault("  - id: mouse\n    name: Mouse", "  - ^name: Mouse", "pest has no id", "add id");
    for (const char* key : {"name", "scientific", "slit", "hole", "margin", "climbs", "flies", "gnaws", "confidence"}) {
        std::string text = pests_with(mouse);
        const std::size_t line = text.find("\n    " + std::string(key) + ':');
        text.erase(line, text.find('\n', line + 1) - line);
        const auto faults = faults_of([&] { (void)read_pests(text, "p"); });
        EXPECT_TRUE(has_fault(faults, {7, 5}, "pest has no " + std::string(key), "add " + std::string(key))) << key;
    }
}

TEST(PestTableFault, Values) {
    expect_pest_fault("size: 6 mm", "size: ^6", "bare number", "6 mm");
    expect_pest_fault("size: 6 mm", "size: ^6 furlongs", "unknown unit", "mm");
    expect_pest_fault("margin: 12.5 %", "margin: ^12.5", "needs a unit", "12.5 %");
    expect_pest_fault("climbs: true", "climbs: ^yes", "neither true nor false", "true or false");
}

TEST(PestTableFault, SlitLargerThanTheHole) {
    expect_pest_fault("  - id: mouse\n    name: Mouse\n    scientific: Mus musculus\n    slit: {size: 6 mm",
                      "  - ^id: mouse\n    name: Mouse\n    scientific: Mus musculus\n    slit: {size: 7 mm",
                      "slit of mouse is larger than its hole", "");
}

TEST(PestTableFault, RepeatedIds) {
    const MarkedText marked(pests_with(std::string(mouse) + replaced(mouse, "- id", "- ^id")));
    EXPECT_TRUE(only_fault(faults_of([&] { (void)read_pests(marked.text, "p"); }), marked.places.at(0), "mouse stands twice",
                           "keep one"));
}

/// Which of two documents a number came from must not be left open.
TEST(PestTableFault, RepeatedSourceIds) {
    const auto faults = faults_of([&] {
        (void)read_pests(replaced(replaced(pests_with(mouse), "id: memory", "id: book"), "source: memory", "source: book"), "p");
    });
    EXPECT_NE(listing(faults).find("p:5:"), std::string::npos) << listing(faults);
}

TEST(PestTableFault, YearsThatAreNone) {
    const auto faults = faults_of([&] { (void)read_pests(replaced(pests_with(mouse), "year: 1994", "year: long ago"), "p"); });
    EXPECT_NE(listing(faults).find("p:4:"), std::string::npos) << listing(faults);
}

TEST(PestTableFault, AllOfThemAtOnce) {
    std::string text = replaced(pests_with(mouse), "size: 6 mm", "size: 6");
    text = replaced(text, "gnaws: true", "gnaws: maybe");
    text = replaced(text, "confidence: medium", "confidence: some");
    const auto faults = faults_of([&] { (void)read_pests(text, "p"); });
    EXPECT_GE(faults.size(), 3U);
    for (const char* place : {"p:10:", "p:15:", "p:16:"})
        EXPECT_NE(listing(faults).find(place), std::string::npos) << listing(faults);
}

TEST(PestTableFault, AnotherTable) {
    EXPECT_FALSE(faults_of([&] { (void)read_pests(gauges_with(""), "p"); }).empty());
    EXPECT_FALSE(faults_of([&] { (void)read_pests("", "p"); }).empty());
    EXPECT_FALSE(faults_of([&] { (void)read_pests("- a\n", "p"); }).empty());
}

TEST(ReadGauges, ReadsEveryKey) {
    const Table<Gauge> table =
        read_gauges(gauges_with(R"(  - {id: card, name: "a card", thickness: 0.76 mm, source: book, confidence: high}
  - {id: two, name: "two cards", thickness: 1.52 mm, computed: "2 x 0.76 mm", source: memory, confidence: low, note: "n"}
)"),
                    "gauges.yaml");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[1].id, "two");
    EXPECT_EQ(table.rows[1].name, "two cards");
    EXPECT_EQ(table.rows[1].thickness, 0.00152);
    EXPECT_EQ(table.rows[1].source, "memory");
    EXPECT_EQ(table.rows[1].confidence, Confidence::low);
    EXPECT_EQ(table.rows[1].computed, "2 x 0.76 mm");
    EXPECT_EQ(table.rows[1].note, "n");
}

TEST(GaugeTableFault, RowsOutOfOrder) {
    for (const char* second : {"0.76 mm", "0.75 mm", "0 mm"}) {
        const MarkedText marked(gauges_with(
            "  - {id: a, name: a, thickness: 0.76 mm, source: book, confidence: high}\n  - ^{id: b, name: b, thickness: " +
            std::string(second) + ", source: book, confidence: high}\n"));
        EXPECT_TRUE(
            only_fault(faults_of([&] { (void)read_gauges(marked.text, "g"); }), marked.places.at(0), "b is not thicker", "sort"));
    }
}

constexpr std::string_view bead = R"(  - id: bead
    name: "a bead"
    leaves: nothing
    gnawed: true
    source: book
    movement: 25 %
    fits: {shapes: [slot, ring], sides: [inside], widths: {from: 1 mm, to: 6 mm}, around: 50 mm, depth: 12 mm, only_on: [brick],
           not_on: [wood], duties: [none, operable], features: [outlet], not_at: [switch]}
    takes: [{material: sealant, as: bead}, {material: wool, as: fill, depth: 25 mm},
            {material: screw, as: along, overlap: 1 in, step: 1 in, every: 6 in}]
    work: {setup: 3 min, piece: 1 min, meter: 1 h 30 min}
    access: {ladder: 8 min, attic: 12 min}
    steps: ["clean it", "close it"]
    conditions: "dry"
    drying: {rain: 4 h, paint: 24 h}
    shelf_life: "a year"
    finish: "smooth"
    colors: "white"
    tools: [gun]
    protection: [gloves, glasses]
    cautions: [{text: "sticky", source: book}]
    owner: true
    sources: [book, memory]
)";
constexpr std::string_view screen = R"(  - id: mesh-16
    name: "a screen"
    leaves: mesh
    opening: 1.31 mm
    gnawed: true
    source: book
    unstated: 300 mm
    fits: {shapes: [mesh], sides: [outside], widths: {from: 0 mm, to: 100 mm}}
    takes: []
    work: {setup: 1 min}
    steps: ["cover it"]
    owner: false
    sources: [book]
)";

std::string treatments_with(std::string_view rows) {
    return "catalog: treatments\n" + std::string(head) + "treatments:\n" + std::string(rows);
}

TEST(ReadTreatments, ReadsEveryKey) {
    const Table<Treatment> table = read_treatments(treatments_with(bead), "t");
    ASSERT_EQ(table.rows.size(), 1U);
    const Treatment& row = table.rows[0];
    EXPECT_EQ(row.id, "bead");
    EXPECT_EQ(row.name, "a bead");
    EXPECT_EQ(row.leaves, Treatment::Leaves::nothing);
    EXPECT_TRUE(row.gnawed);
    EXPECT_EQ(row.source, "book");
    EXPECT_EQ(row.movement, 0.25);
    EXPECT_EQ(row.fits.shapes, (std::array<bool, 4>{true, false, true, false}));
    EXPECT_EQ(row.fits.sides, (std::array<bool, 3>{false, true, false}));
    EXPECT_EQ(row.fits.from, 0.001);
    EXPECT_EQ(row.fits.to, 0.006);
    EXPECT_EQ(row.fits.around, 0.05);
    EXPECT_EQ(row.fits.depth, 0.012);
    EXPECT_EQ(row.fits.only_on, std::vector<std::string>{"brick"});
    EXPECT_EQ(row.fits.not_on, std::vector<std::string>{"wood"});
    EXPECT_EQ(row.fits.duties, (std::vector<Duty>{Duty::none, Duty::operable}));
    EXPECT_EQ(row.fits.features, std::vector<std::string>{"outlet"});
    EXPECT_EQ(row.fits.not_at, std::vector<std::string>{"switch"});
    ASSERT_EQ(row.takes.size(), 3U);
    EXPECT_EQ(row.takes[1].material, "wool");
    EXPECT_EQ(row.takes[1].as, Take::As::fill);
    EXPECT_EQ(row.takes[1].depth, 0.025);
    EXPECT_EQ(row.takes[2].every, 0.1524);
    EXPECT_EQ(row.takes[2].overlap, 0.0254);
}

TEST(ReadTreatments, ReadsTheWork) {
    const Table<Treatment> table = read_treatments(treatments_with(bead), "t");
    const Treatment& row = table.rows.at(0);
    EXPECT_EQ(row.work.setup, 3);
    EXPECT_EQ(row.work.meter, 90);
    EXPECT_EQ(row.access.ladder, 8);
    EXPECT_EQ(row.access.attic, 12);
    EXPECT_EQ(row.rain, 240);
    EXPECT_EQ(row.paint, 1440);
    EXPECT_EQ(row.steps, (std::vector<std::string>{"clean it", "close it"}));
    EXPECT_EQ(row.tools, std::vector<std::string>{"gun"});
    EXPECT_EQ(row.protection.size(), 2U);
    EXPECT_EQ(row.cautions.at(0).text, "sticky");
    EXPECT_EQ(row.conditions + row.shelf_life + row.finish + row.colors, "drya yearsmoothwhite");
    EXPECT_TRUE(row.owner);
    EXPECT_EQ(row.sources.size(), 2U);
}

TEST(ReadTreatments, ReadsWhatMeshesLeave) {
    const Treatment row = read_treatments(treatments_with(screen), "t").rows.at(0);
    EXPECT_EQ(row.leaves, Treatment::Leaves::mesh);
    EXPECT_EQ(row.opening, 0.00131);
    EXPECT_EQ(row.unstated, 0.3);
}

/// Changes one thing in a table that is right; the caret in the new text is where the only fault must stand.
void expect_treatment_fault(std::string_view row, std::string_view from, std::string_view to, std::string_view what,
                            std::string_view mend) {
    const MarkedText marked(replaced(treatments_with(row), from, to));
    const auto faults = faults_of([&] { (void)read_treatments(marked.text, "t"); });
    EXPECT_TRUE(only_fault(faults, marked.places.at(0), what, mend)) << to;
}

TEST(TreatmentTableFault, UnknownWords) {
    expect_treatment_fault(screen, "leaves: mesh", "leaves: ^holes", "unknown leaves \"holes\"", "nothing, mesh");
    expect_treatment_fault(bead, "[slot, ring]", "[^slit, ring]", "unknown shape \"slit\"", "did you mean slot?");
    expect_treatment_fault(bead, "[inside]", "[^indoors]", "unknown side \"indoors\"", "outside, inside, attic");
    expect_treatment_fault(bead, "operable]", "^moving]", "unknown duty \"moving\"", "");
    expect_treatment_fault(bead, "as: bead", "as: ^beed", "unknown as \"beed\"", "did you mean bead?");
    expect_treatment_fault(bead, "    tools:", "    ^tolls:", "unknown key \"tolls\"", "did you mean tools?");
    expect_treatment_fault(bead, "\"sticky\", source: book", "\"sticky\", source: ^bok", "unknown source", "did you mean book?");
}

TEST(TreatmentTableFault, SizesAndTimes) {
    expect_treatment_fault(bead, "setup: 3 min", "setup: ^3", "setup", "min");
    expect_treatment_fault(bead, "{from: 1 mm, to: 6 mm}", "^{from: 7 mm, to: 6 mm}", "end before they begin", "smaller");
    expect_treatment_fault(bead, "fill, depth: 25 mm", "fill, depth: ^0 mm", "depth must be more than 0", "");
    expect_treatment_fault(bead, "as: bead}", "as: bead, depth: ^1 mm}", "says nothing of as: bead", "remove");
    expect_treatment_fault(bead, "{material: wool, as: fill, depth: 25 mm}", "^{material: wool, as: fill}", "has no depth",
                           "add");
    expect_treatment_fault(bead, "    movement:", "    opening: ^1 mm\n    movement:", "only a mesh leaves an opening", "mesh");
}

TEST(TreatmentTableFault, MeshesOfUnknownArea) {
    const std::string text = replaced(treatments_with(screen), "    unstated: 300 mm\n", "");
    const auto faults = faults_of([&] { (void)read_treatments(text, "t"); });
    ASSERT_EQ(faults.size(), 1U) << listing(faults);
    EXPECT_NE(faults[0].mend.find("unstated"), std::string::npos);
}

TEST(TreatmentTableFault, MissingKeys) {
    for (const char* key : {"leaves", "gnawed", "fits", "takes", "work", "steps", "owner", "sources"}) {
        const std::string text = replaced(treatments_with(screen), "    " + std::string(key) + ":", "    #");
        EXPECT_FALSE(faults_of([&] { (void)read_treatments(text, "t"); }).empty()) << key;
    }
}

}  // namespace
}  // namespace seamward::test
