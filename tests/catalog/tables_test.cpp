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

TEST(ReadTreatments, ReadsWhatTheyLeave) {
    const std::string text =
        "catalog: treatments\n" + std::string(head) +
        "treatments:\n  - {id: bead, name: bead, leaves: nothing, gnawed: true, source: book}\n  - {id: mesh, name: mesh, "
        "leaves: mesh, gnawed: false, source: book}\n";
    const Table<Treatment> table = read_treatments(text, "t");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0].leaves, Treatment::Leaves::nothing);
    EXPECT_EQ(table.rows[1].leaves, Treatment::Leaves::mesh);
    const MarkedText marked(replaced(text, "leaves: mesh", "leaves: ^holes"));
    EXPECT_TRUE(only_fault(faults_of([&] { (void)read_treatments(marked.text, "t"); }), marked.places.at(0),
                           "unknown leaves \"holes\"", "nothing, mesh"));
}

}  // namespace
}  // namespace seamward::test
