// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/read_gap.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

/// Reads one gap between the spaces yard (0), wall (1) and kitchen (2).
struct Read {
    explicit Read(std::string_view yaml) : marked(yaml), document(parse_yaml(marked.text, "f.yaml")) {
        for (const char* id : {"yard", "wall", "kitchen"}) spaces.add(id);
        gap = read_gap(document.root(), spaces, diagnostics);
    }

    MarkedText marked;
    Document document;
    IdIndex spaces{3};
    Diagnostics diagnostics{"f.yaml"};
    Gap gap;
};

Gap good(std::string_view yaml) {
    Read read(yaml);
    EXPECT_TRUE(read.diagnostics.empty()) << yaml << listing(faults_in(read.diagnostics));
    return read.gap;
}

TEST(ReadGap, ReadsTheWayThrough) {
    const Document document =
        parse_yaml("{id: g, between: [yard, wall], hole: {diameter: 5 mm}, through: [[1 m, -2 m, 3 in], [1 m, 0 m, 3 in]]}", "f");
    IdIndex spaces{2};
    for (const char* id : {"yard", "wall"}) spaces.add(id);
    Diagnostics diagnostics{"f"};
    std::vector<Point> through;
    (void)read_gap(document.root(), spaces, diagnostics, &through);
    EXPECT_TRUE(diagnostics.empty());
    ASSERT_EQ(through.size(), 2U);
    EXPECT_EQ(through[0].y, -2);
    EXPECT_EQ(through[1].z, 0.0762);
}

struct Fault {
    const char* marked;
    const char* what;
    const char* mend;
};

/// Each text has one fault, at its caret.
void expect_faults(std::initializer_list<Fault> table) {
    for (const Fault& row : table) {
        Read read(row.marked);
        EXPECT_TRUE(only_fault(faults_in(read.diagnostics), read.marked.places.at(0), row.what, row.mend)) << row.marked;
    }
}

TEST(ReadGap, ReadsEveryKey) {
    const Gap gap = good(R"(
id: screed-north
name: "joint under the screed"
between: [yard, wall]
slot: {width: 1.2 mm, length: 9 m}
count: 3
duty: drain
at: [4.5 m, -9 m, 2 in]
depth: 22 mm
substrates: [stucco, concrete]
evidence: {how: measured, plus_minus: 0.2 mm}
closing: {cost: $8.50}
note: "for people"
)");
    EXPECT_EQ(gap.id, "screed-north");
    EXPECT_EQ(gap.name, "joint under the screed");
    EXPECT_EQ(gap.between[0].value, 0U);
    EXPECT_EQ(gap.between[1].value, 1U);
    EXPECT_EQ(std::get<Slot>(gap.shape).width, 0.0012);
    EXPECT_EQ(std::get<Slot>(gap.shape).length, 9);
    EXPECT_EQ(gap.count, 3U);
    EXPECT_EQ(gap.duty, Duty::drain);
    ASSERT_TRUE(gap.at);
    EXPECT_EQ(gap.at->x, 4.5);
    EXPECT_EQ(gap.at->y, -9);
    EXPECT_EQ(gap.at->z, 0.0508);
    EXPECT_EQ(gap.depth, 0.022);
    EXPECT_EQ(gap.substrates, (std::vector<std::string>{"stucco", "concrete"}));
    EXPECT_EQ(gap.evidence.how, Evidence::How::measured);
    EXPECT_EQ(gap.evidence.plus_minus, 0.0002);
    EXPECT_EQ(gap.closing.cost, Money{850});
    EXPECT_EQ(gap.closing.never, "");
}

TEST(ReadGap, LeavesOptionalKeysAtTheirDefaults) {
    const Gap gap = good("{id: g, between: [yard, wall], hole: {diameter: 5 mm}}");
    EXPECT_EQ(gap.count, 1U);
    EXPECT_EQ(gap.duty, Duty::none);
    EXPECT_FALSE(gap.at);
    EXPECT_FALSE(gap.depth);
    EXPECT_TRUE(gap.substrates.empty());
    EXPECT_EQ(gap.evidence.how, Evidence::How::unstated);
    EXPECT_EQ(gap.evidence.plus_minus, 0);
    EXPECT_FALSE(gap.closing.cost);
    EXPECT_EQ(gap.closing.never, "");
    EXPECT_EQ(gap.label(), "g");
}

TEST(ReadGap, ReadsEveryShape) {
    EXPECT_EQ(std::get<Hole>(good("{id: g, between: [yard, wall], hole: {diameter: 5 mm}}").shape).diameter, 0.005);
    const auto ring = std::get<Ring>(good("{id: g, between: [yard, wall], ring: {width: 2.5 mm, around: 22 mm}}").shape);
    EXPECT_EQ(ring.width, 0.0025);
    EXPECT_EQ(ring.around, 0.022);
    const auto mesh = std::get<Mesh>(good("{id: g, between: [yard, wall], mesh: {opening: 5.7 mm, area: 100 cm2}}").shape);
    EXPECT_EQ(mesh.opening, 0.0057);
    EXPECT_EQ(mesh.area, 0.01);
    EXPECT_FALSE(std::get<Mesh>(good("{id: g, between: [yard, wall], mesh: {opening: 5.7 mm}}").shape).area);
    EXPECT_EQ(std::get<Slot>(good("{id: g, between: [yard, wall], slot: {width: 0 mm, length: 9 m}}").shape).width, 0);
}

TEST(ReadGap, ReadsEveryDuty) {
    const std::pair<const char*, Duty> table[] = {
        {"drain", Duty::drain},     {"weep", Duty::weep},         {"vent", Duty::vent},
        {"exhaust", Duty::exhaust}, {"flood", Duty::flood},       {"combustion-air", Duty::combustion_air},
        {"relief", Duty::relief},   {"movement", Duty::movement}, {"operable", Duty::operable}};
    for (const auto& [word, duty] : table) {
        EXPECT_EQ(good("{id: g, between: [yard, wall], hole: {diameter: 5 mm}, duty: " + std::string(word) + "}").duty, duty)
            << word;
    }
}

TEST(ReadGap, ReadsEveryEvidence) {
    const auto how = [](const char* word) {
        return good("{id: g, between: [yard, wall], hole: {diameter: 5 mm}, evidence: {how: " + std::string(word) + "}}")
            .evidence.how;
    };
    EXPECT_EQ(how("measured"), Evidence::How::measured);
    EXPECT_EQ(how("modeled"), Evidence::How::modeled);
    EXPECT_EQ(how("assumed"), Evidence::How::assumed);
}

TEST(ReadGap, ReadsAReasonNeverToClose) {
    const Gap gap = good("{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: {never: \"it drains the wall\"}}");
    EXPECT_EQ(gap.closing.never, "it drains the wall");
    EXPECT_FALSE(gap.closing.cost);
}

TEST(ReadGapFault, UnknownKeys) {
    expect_faults(
        {{"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, ^dutty: drain}", "unknown key \"dutty\" in gap",
          "did you mean duty?"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm, ^depth: 1 mm}}", "unknown key \"depth\" in hole", "diameter"},
         {"{id: g, between: [yard, wall], slot: {width: 1 mm, length: 1 m, ^lenght: 1 m}}", "unknown key \"lenght\" in slot",
          "did you mean length?"},
         {"{id: g, between: [yard, wall], ring: {width: 1 mm, around: 1 m, ^arround: 1 m}}", "unknown key \"arround\" in ring",
          "did you mean around?"},
         {"{id: g, between: [yard, wall], mesh: {opening: 1 mm, ^count: 4}}", "unknown key \"count\" in mesh", "opening, area"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, evidence: {^plusminus: 1 mm}}",
          "unknown key \"plusminus\" in evidence", "did you mean plus_minus?"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: {cost: $1, ^costs: $2}}",
          "unknown key \"costs\" in closing", "did you mean cost?"}});
}

TEST(ReadGapFault, MissingKeys) {
    expect_faults({{"^{between: [yard, wall], hole: {diameter: 5 mm}}", "gap has no id", "add id"},
                   {"^{id: g, hole: {diameter: 5 mm}}", "gap has no between", "between: [SPACE, SPACE]"},
                   {"^{id: g, between: [yard, wall]}", "gap has no shape", "slot: {width: ..., length: ...}"},
                   {"{id: g, between: [yard, wall], slot: ^{width: 1 mm}}", "slot has no length", "add length"},
                   {"{id: g, between: [yard, wall], slot: ^{length: 1 mm}}", "slot has no width", "add width"},
                   {"{id: g, between: [yard, wall], hole: ^{}}", "hole has no diameter", "add diameter"},
                   {"{id: g, between: [yard, wall], ring: ^{width: 1 mm}}", "ring has no around", "add around"},
                   {"{id: g, between: [yard, wall], ring: ^{around: 1 mm}}", "ring has no width", "add width"},
                   {"{id: g, between: [yard, wall], mesh: ^{area: 100 cm2}}", "mesh has no opening", "add opening"}});
}

TEST(ReadGapFault, NotExactlyTwoEnds) {
    expect_faults({{"{id: g, between: ^[yard], hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"},
                   {"{id: g, between: ^[], hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"},
                   {"{id: g, between: ^[yard, wall, kitchen], hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"},
                   {"{id: g, between: ^yard, hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"},
                   {"{id: g, between: ^{yard: wall}, hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"},
                   {"{id: g, between: ^~, hole: {diameter: 5 mm}}", "exactly two", "between: [SPACE, SPACE]"}});
}

TEST(ReadGapFault, UnknownEnds) {
    expect_faults(
        {{"{id: g, between: [yard, ^wal], hole: {diameter: 5 mm}}", "unknown space \"wal\"", "did you mean wall?"},
         {"{id: g, between: [^attic, wall], hole: {diameter: 5 mm}}", "unknown space \"attic\"", "kitchen, wall, yard"}});
}

TEST(ReadGapFault, FromASpaceToItself) {
    expect_faults({{"{id: g, between: ^[wall, wall], hole: {diameter: 5 mm}}", "from a space to itself", "two sides"}});
}

TEST(ReadGapFault, MoreThanOneShape) {
    expect_faults({{"{id: g, between: [yard, wall], slot: {width: 1 mm, length: 1 m}, hole: ^{diameter: 5 mm}}",
                    "exactly one shape", "keep one"},
                   {"{id: g, between: [yard, wall], ring: {width: 1 mm, around: 1 m}, mesh: ^{opening: 5 mm}}",
                    "exactly one shape", "keep one"}});
    Read three(
        "{id: g, between: [yard, wall], hole: {diameter: 5 mm}, ring: ^{width: 1 mm, around: 1 m}, mesh: ^{opening: 5 mm}}");
    const auto faults = faults_in(three.diagnostics);
    EXPECT_EQ(faults.size(), 2U);
    for (const Place place : three.marked.places) EXPECT_TRUE(has_fault(faults, place, "exactly one shape", "keep one"));
}

TEST(ReadGapFault, CountsThatAreNotWholeNumbersFromOne) {
    for (const char* count : {"0", "-1", "1.5", "2.0", "1e3", "two", "''", "nan", "+3", "1/2", "3 pieces"}) {
        const std::string text = "{id: g, between: [yard, wall], hole: {diameter: 5 mm}, count: ^" + std::string(count) + "}";
        expect_faults({{text.c_str(), "count: ", "12"}});
    }
}

TEST(ReadGapFault, UnknownWords) {
    expect_faults({{"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, duty: ^drian}", "unknown duty \"drian\"",
                    "did you mean drain?"},
                   {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, duty: ^combustion_air}", "unknown duty",
                    "did you mean combustion-air?"},
                   {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, evidence: {how: ^guessed}}",
                    "unknown how \"guessed\"", "measured, modeled, assumed"}});
}

TEST(ReadGapFault, PointsThatAreNone) {
    expect_faults(
        {{"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, at: ^[1 m, 2 m]}", "three coordinates", "[4.5 m, 9 m, 0.05 m]"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, at: ^1 m}", "three coordinates", "[4.5 m, 9 m, 0.05 m]"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, at: [1 m, ^2, 3 m]}", "bare number", "2 m"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, at: [1 m, 2 m, ^inf m]}", "not a finite number", ""},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, at: [^[1 m], 2 m, 3 m]}", "coordinate", "4.5 m"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, through: ^[[1 m, 2 m, 3 m]]}", "two points or more", "[[4.5 m"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, through: ^straight}", "two points or more", "[[4.5 m"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, through: [[1 m, 2 m, 3 m], ^[1 m, 2 m]]}", "three coordinates",
          "[4.5 m, 9 m, 0.05 m]"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, through: [[1 m, 2 m, ^3], [1 m, 2 m, 3 m]]}",
          "through: a length", "3 m"}});
}

TEST(ReadGapFault, ClosingIsACostOrAReason) {
    expect_faults(
        {{"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: ^{cost: $8, never: \"no\"}}", "both", "{cost: $8.00}"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: ^{}}", "neither", "{never: \"why\"}"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: {never: ^''}}", "never is empty", "something"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: ^~}", "neither", "{never: \"why\"}"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: ^$8.00}", "must be a mapping", "cost"}});
}

TEST(ReadGapFault, WhatIsNoMappingOrList) {
    expect_faults(
        {{"^[a]", "gap must be a mapping", "id"},
         {"^text", "gap must be a mapping", "id"},
         {"{id: g, between: [yard, wall], hole: ^5 mm}", "hole must be a mapping", "diameter"},
         {"{id: g, between: [yard, wall], hole: ^~}", "hole has no diameter", "diameter"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, evidence: ^measured}", "evidence must be a mapping", "how"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, substrates: ^stucco}", "substrates must be a list", "[a, b]"},
         {"{id: g, between: [yard, wall], hole: {diameter: 5 mm}, substrates: [stucco, ^[x]]}", "substrate holds a list", ""}});
}

}  // namespace
}  // namespace seamward::test
