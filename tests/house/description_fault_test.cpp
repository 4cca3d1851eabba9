// SPDX-License-Identifier: GPL-3.0-or-later
// Every fault that shows in the text of a house file, with its place and how to mend it. What does not fit together when the
// house is built is for other tests.
#include <gtest/gtest.h>

#include "house/description.h"
#include "tests/support/cottage.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

std::vector<Diagnostic> faults(const std::string& text) {
    return faults_of([&] { (void)parse_house_yaml(text, "house.yaml"); });
}

/// The cottage with `marked` in place of `part` has one fault, at the caret.
void expect_fault(const std::string& part, const std::string& marked, std::string_view what, std::string_view mend) {
    const MarkedText text(cottage_with(part, marked));
    EXPECT_TRUE(only_fault(faults(text.text), text.places.at(0), what, mend)) << marked;
}

/// The cottage with something more at its end.
void expect_fault_after(const std::string& marked, std::string_view what, std::string_view mend) {
    const MarkedText text(cottage + marked);
    EXPECT_TRUE(only_fault(faults(text.text), text.places.at(0), what, mend)) << marked;
}

/// The same with one more feature.
void expect_feature_fault(const std::string& marked, std::string_view what, std::string_view mend) {
    expect_fault_after("  - " + marked + "\n", what, mend);
}

TEST(DescriptionFault, VersionAndKeysOfTheFile) {
    expect_fault("house: 1", "house: ^2", "unknown format version \"2\"", "this program reads seamward-house: 1");
    expect_fault("house: 1", "house: ^'1'", "unknown format version", "this program reads seamward-house: 1");
    expect_fault("name: ", "^nmae: ", "unknown key \"nmae\" in house", "did you mean name?");
    expect_fault("seamward-house: 1\nname", "^name", "house has no seamward-house", "add seamward-house: ...");
    for (const char* text : {"- a\n", "text\n", "5\n"}) {
        const auto found = faults(text);
        ASSERT_EQ(found.size(), 1U) << listing(found);
        EXPECT_TRUE(has_fault(found, {1, 1}, "house must be a mapping", "write keys and values"));
    }
    const auto found = faults("");
    ASSERT_EQ(found.size(), 6U) << listing(found);
    for (const char* key : {"seamward-house", "assemblies", "outline", "stories", "rooms", "roof"})
        EXPECT_TRUE(has_fault(found, {1, 1}, "house has no " + std::string(key), "add " + std::string(key))) << key;
}

TEST(DescriptionFault, Assemblies) {
    const std::string air = "{air: true, thick: 89 mm}, {of: drywall, thick: 13 mm}]\n  - id: partition";
    expect_fault("{of: stucco, thick: 22 mm}", "^{thick: 22 mm}", "a layer is either of something or air", "write {of: stucco");
    expect_fault("{of: stucco, thick: 22 mm}", "^{of: stucco, air: true, thick: 22 mm}, {of: wood, thick: 11 mm}",
                 "a layer is either of something or air", "");
    expect_fault("{of: stucco, thick: 22 mm}", "^{of: stucco}", "layer has no thick", "add thick: ...");
    expect_fault("thick: 22 mm", "thick: ^22", "thick: a length needs a unit", "write 22 mm");
    expect_fault("of: stucco", "of: ^~", "of holds nothing where text is due", "write a value after the colon");
    expect_fault("{of: stucco, thick: 22 mm}", "^{of: stucco, thick: 0.5 mm}", "a layer is between 1 mm and 1 m thick", "");
    expect_fault("{of: stucco, thick: 22 mm}", "^{of: stucco, thick: 1.1 m}", "a layer is between 1 mm and 1 m thick", "");
    expect_fault(air, "{air: true, thick: 50 mm}, ^" + air, "two layers of air follow each other", "make one of them");
    const char* order = "list its layers from outside in: stucco, sheathing, air, drywall";
    const char* what = "a wall has solid layers outside and inside, and air between two of them";
    expect_fault("  - id: partition\n    layers: [{of: drywall, thick: 13 mm}, {air: true, thick: 89 mm}, ",
                 "  - ^id: partition\n    layers: [{of: drywall, thick: 13 mm}, ", what, order);
    expect_fault("  - id: partition\n    layers: [{of: drywall, thick: 13 mm}, ", "  - ^id: partition\n    layers: [", what,
                 order);
    expect_fault("  - id: partition\n    layers: [", "  - ^id: partition\n    layers: [] #", what, order);
    expect_fault("  - id: partition\n    layers: [", "  - ^id: partition\n    #", "assembly has no layers", "add layers: ...");
    expect_fault("  - id: partition", "  - ^id: stucco-wall", "assembly id \"stucco-wall\" stands twice", "give each its own");
    expect_fault("walls: [", "wall_assembly: ^stuco-wall\nwalls: [", "unknown assembly \"stuco-wall\"",
                 "did you mean stucco-wall?");
    const std::size_t first = cottage.find("assemblies:"), next = cottage.find("outline:");
    const MarkedText text(cottage_with(cottage.substr(first, next - first), "assemblies: ^[]\n"));
    EXPECT_TRUE(only_fault(faults(text.text), text.places[0], "assemblies is empty", "describe the layers of the walls"));
}

TEST(DescriptionFault, OutlineAndWalls) {
    const std::string outline = "outline: [[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]]";
    expect_fault(outline, "outline: ^[[0 m, 0 m], [0 m, 6 m], [8 m, 6 m], [8 m, 0 m]]", "the outline runs clockwise",
                 "list the corners counterclockwise");
    expect_fault(outline, "outline: ^[[0 m, 0 m], [8 m, 6 m], [8 m, 0 m], [0 m, 6 m]]", "the outline crosses or touches itself",
                 "in order round the house");
    expect_fault(outline, "outline: ^[[0 m, 0 m], [8 m, 0 m], [8 m, 5.7 m], [8 m, 6 m]]",
                 "wall 3 of the outline is shorter than 0.5 m", "leave such jogs out");
    expect_fault(outline, "outline: ^[[0 m, 0 m], [8 m, 0 m]]", "outline needs 3 points or more", "");
    expect_fault("[8 m, 0 m], [8", "^[8 m], [8", "a corner is a point of two lengths", "write [4.5 m, 2 m]");
    expect_fault("[8 m, 0 m], [8", "[^8, 0 m], [8", "a corner: a length needs a unit", "write 8 m");
    expect_fault("[8 m, 0 m], [8", "[8 m, ^[]], [8", "a corner: a coordinate is a length", "write for example 4.5 m");
    expect_fault("[8 m, 6 m]", "[^1001 m, 6 m]", "a corner: more than 1000 m from the origin", "put the origin near the house");
    expect_fault("[south-wall, east-wall, north-wall, west-wall]", "^[south-wall, east-wall, north-wall]",
                 "there are 3 names for 4 walls", "name the walls from the first corner on");
    expect_fault("north-wall, west-wall]\nstories", "north-wall, ^north-wall]\nstories", "wall id \"north-wall\" stands twice",
                 "give each its own");
    std::string many = "outline: ^[";
    for (int i = 0; i < 2001; ++i)
        many += (i > 0 ? ", [" : "[") + std::to_string(i * 0.4) + " m, " + std::to_string(i * i * 0.0001) + " m]";
    const MarkedText text(cottage_with(outline, many + "]"));
    EXPECT_TRUE(has_fault(faults(text.text), text.places[0], "more than 2000 corners", ""));
}

TEST(DescriptionFault, Foundation) {
    expect_fault("stories: ", "foundation: {kind: ^slabs}\nstories: ", "unknown kind \"slabs\"", "did you mean slab?");
    expect_fault("stories: ", "foundation: ^{above_grade: 20 mm}\nstories: ", "above_grade is between 30 mm and 3 m", "");
    expect_fault("stories: ", "foundation: ^{height: 5 m}\nstories: ", "height is between 20 mm and 4 m", "");
    expect_fault("stories: ", "foundation: {^depth: 5 m}\nstories: ", "unknown key \"depth\" in foundation", "height");
    expect_fault("stories: ", "foundation: {space: ^~}\nstories: ", "space has no id", "add id: ...");
}

TEST(DescriptionFault, Stories) {
    expect_fault("{height: 2.5 m}", "^{}", "story has no height", "add height: ...");
    expect_fault("{height: 2.5 m}", "^{height: 1.7 m}", "the height of a story is between 1.8 m and 12 m", "");
    expect_fault("{height: 2.5 m}", "{height: 2.5 m}, ^{height: 2 m, floor: 2 m}", "a floor is between 0.1 m and 1.5 m thick",
                 "");
    expect_fault("[{height: 2.5 m}]", "^[]", "a house has 1 to 60 stories", "");
    std::string many = "{height: 2.5 m}";
    for (int i = 0; i < 60; ++i) many += ", {height: 2.5 m}";
    expect_fault("[{height: 2.5 m}]", "^[" + many + "]", "a house has 1 to 60 stories", "");
    expect_fault("{height: 2.5 m}", "{height: 2.5 m, cavities: [^~]}", "space has no id", "add id: ...");
    expect_fault("{height: 2.5 m}", "{height: 2.5 m, cavities: [[^'']]}", "space is empty", "write something");
    expect_fault("at: [2 m, 3 m]}", "at: [2 m, 3 m], story: ^2}", "there is no story 2", "the house has 1");
}

TEST(DescriptionFault, Partitions) {
    expect_fault("{id: middle-wall, from: [5 m, 0 m], ", "^{id: middle-wall, ", "partition has no from", "add from: ...");
    expect_fault("from: [5 m, 0 m]", "from: ^5 m", "from is a point of two lengths", "write [4.5 m, 2 m]");
    expect_fault("to: [5 m, 6 m]}", "to: [5 m, 6 m], assembly: ^stuco}", "unknown assembly \"stuco\"", "stucco-wall");
    expect_fault("to: [5 m, 6 m]}", "to: [5 m, 6 m], cavity: ^{name: x}}", "space has no id", "add id: ...");
    expect_fault("to: [5 m, 6 m]}", "to: [5 m, 6 m]}, ^{id: middle-wall, from: [6 m, 0 m], to: [6 m, 6 m]}",
                 "partition id \"middle-wall\" stands twice", "give each its own");
    expect_fault("to: [5 m, 6 m]}", "to: [5 m, 6 m]}, ^{id: east-wall, from: [6 m, 0 m], to: [6 m, 6 m]}",
                 "partition id \"east-wall\" stands twice (wall and partition)", "give each its own");
}

TEST(DescriptionFault, Rooms) {
    expect_fault("{id: bedroom, at: [7 m, 3 m]}", "^{id: bedroom}", "room has no at", "add at: ...");
    expect_fault("{id: bedroom, at", "{id: bedroom, kind: ^attic, at", "unknown kind \"attic\"", "");
    expect_fault("{id: bedroom, at", "^{id: bedroom, kind: outdoors, at", "a room is living, attached or a cavity",
                 "leave kind out for a room that is lived in");
    expect_fault("{id: bedroom, at", "{id: bedroom, source: ^1, at", "source: \"1\" is neither true nor false",
                 "write true or false");
    expect_fault("rooms: [{id: kitchen, at: [2 m, 3 m]}, {id: bedroom, at: [7 m, 3 m]}]", "rooms: ^~", "rooms is empty",
                 "name every room, with a point inside of it");
}

TEST(DescriptionFault, Openings) {
    expect_fault("{id: front-door, in: south-wall, along: 2 m, ", "^{id: front-door, in: south-wall, ", "opening has no along",
                 "add along");
    expect_fault("in: south-wall", "in: ^suoth-wall", "unknown wall \"suoth-wall\"", "did you mean south-wall?");
    expect_fault("{id: front-door, in", "{id: front-door, kind: ^gate, in", "unknown kind \"gate\"", "door");
    expect_fault("{id: front-door, in: south-wall, along: 2 m, width: 0.91 m",
                 "^{id: front-door, in: south-wall, along: 2 m, width: 0.1 m", "an opening is at least 0.2 m wide and high", "");
    expect_fault("{id: bedroom-door", "^{id: front-door", "opening id \"front-door\" stands twice", "give each its own");
    expect_fault("height: 2.03 m}\n  - {id: bedroom", "height: 2.03 m, frame: ^[]}\n  - {id: bedroom", "space must be a mapping",
                 "");
}

TEST(DescriptionFault, StudBaysAndBulkheads) {
    const std::string bay = "entry of stud_bays";
    expect_fault_after("stud_bays: [^{on: north-wall}]\n", bay + " has no spacing", "add spacing");
    expect_fault_after("stud_bays: [{on: [north-wall, ^sout-wall], spacing: 16 in}]\n", "unknown wall \"sout-wall\"",
                       "did you mean south-wall?");
    expect_fault_after("stud_bays: [^{on: north-wall, spacing: 10 cm}]\n", "studs stand between 0.15 m and 2 m apart", "");
    expect_fault_after("bulkheads: [^{id: box, from: [1 m, 1 m], to: [2 m, 2 m]}]\n", "bulkhead has no drop", "add drop");
    expect_fault_after("bulkheads: [^{id: box, from: [1 m, 1 m], to: [1.1 m, 2 m], drop: 0.3 m}]\n",
                       "a bulkhead is at least 0.15 m wide", "two corners of its plan");
    expect_fault_after("bulkheads: [^{id: box, from: [1 m, 1 m], to: [2 m, 2 m], drop: 2 m}]\n",
                       "drop is between 0.1 m and 1.5 m", "");
    expect_fault_after("bulkheads: [^{id: front-door, from: [1 m, 1 m], to: [2 m, 2 m], drop: 0.3 m}]\n",
                       "bulkhead id \"front-door\" stands twice (opening and bulkhead)", "");
}

TEST(DescriptionFault, Roof) {
    const std::string roof = "roof: {shape: hip, pitch: 4/12}";
    expect_fault(roof, "roof: ^{shape: hip}", "roof has no pitch", "add pitch: ...");
    expect_fault(roof, "roof: {shape: ^hipped, pitch: 4/12}", "unknown shape \"hipped\"", "hip");
    for (const char* pitch : {"0.3", "4/0", "4/-12", "1/51", "3.1/1", "1 deg", "72 deg", "90 deg", "198 deg", "-162 deg",
                              "18 degrees", "nan deg", "inf/1", "4/12/1", "-4/12"})
        expect_fault(roof, "roof: {pitch: ^" + std::string(pitch) + "}", "pitch is no slope between 1/50 and 3/1",
                     "write pitch: 4/12");
    expect_fault(roof, "roof: ^{pitch: 4/12, overhang: 40 mm}", "overhang is between 50 mm and 3 m", "");
    expect_fault(roof, "roof: ^{pitch: 4/12, rake: 3.1 m}", "rake is between 0 and 3 m", "");
    expect_fault(roof, "roof: ^{pitch: 4/12, shape: gable}", "roof has no gables", "add gables: ...");
    expect_fault(roof, "roof: {pitch: 4/12, shape: gable, gables: ^[]}", "gables is empty", "or write shape: hip");
    expect_fault(roof, "roof: {pitch: 4/12, shape: gable, gables: [^est-wall]}", "unknown wall \"est-wall\"", "east-wall");
    expect_fault(roof, "roof: ^{pitch: 4/12, shape: shed}", "roof has no low", "add low: ...");
    expect_fault(roof, "roof: {pitch: 4/12, shape: shed, low: ^est-wall}", "unknown wall \"est-wall\"", "east-wall");
    expect_fault(roof, "roof: ^steep", "roof must be a mapping", "");
}

TEST(DescriptionFault, YardPavingAndBlockWalls) {
    expect_fault_after("yard: ^{margin: 0.4 m}\n", "margin is between 0.5 m and 1000 m", "");
    expect_fault_after("paving: [{id: walk, corners: ^[[0 m, 0 m], [1 m, 0 m]]}]\n", "corners needs 3 points or more", "");
    expect_fault_after("paving: [^{id: walk, corners: [[0 m, 0 m], [1 m, 1 m], [1 m, 0 m], [0 m, 1 m]]}]\n",
                       "the paving's outline crosses itself", "list its corners in order");
    const std::string walk = "{id: walk, corners: [[0 m, 7 m], [1 m, 7 m], [1 m, 8 m]]}";
    expect_fault_after("paving: [" + walk + ", ^" + walk + "]\n", "paving id \"walk\" stands twice", "give each its own");
    expect_fault_after("block_walls: [^{id: b, points: [[9 m, 0 m], [9 m, 6 m]]}]\n", "block wall has no height", "add height");
    expect_fault_after("block_walls: [{id: b, points: ^[[9 m, 0 m]], height: 1 m}]\n", "points needs 2 points or more", "");
    expect_fault_after("block_walls: [^{id: b, points: [[9 m, 0 m], [9 m, 6 m]], height: 7 m}]\n",
                       "a block wall is between 0.3 m and 6 m high", "");
    expect_fault_after("block_walls: [^{id: b, points: [[9 m, 0 m], [9 m, 0.5 m]], height: 1 m}]\n",
                       "a run of the block wall is shorter than 0.6 m", "leave it out");
    expect_fault_after("block_walls: [^{id: east-wall, points: [[9 m, 0 m], [9 m, 6 m]], height: 1 m}]\n",
                       "block wall id \"east-wall\" stands twice (wall and block wall)", "give each its own");
}

TEST(DescriptionFault, Features) {
    expect_feature_fault("^{id: f}", "feature has no type", "add type: ...");
    expect_feature_fault("^{type: hose-bibb}", "feature has no id", "add id: ...");
    expect_feature_fault("{id: f, type: ^hose-bib, outside: 1 mm}", "unknown type of feature \"hose-bib\"",
                         "did you mean hose-bibb?");
    expect_feature_fault("{id: f, type: hose-bibb, ^joint: 1 mm}", "unknown key \"joint\" in feature",
                         "outside, sheathing, inside");
    expect_feature_fault("^{id: bibb, type: hose-bibb}", "feature id \"bibb\" stands twice", "give each its own");
    expect_feature_fault("{id: f, type: hose-bibb, on: ^~}", "on holds nothing where text is due", "");
    expect_feature_fault("{id: f, type: hose-bibb, on: [east-wall, ^[]]}", "on holds a list where text is due", "");
    expect_feature_fault("{id: f, type: hose-bibb, along: ^-1 m}", "along: \"-1 m\" is negative", "");
    expect_feature_fault("{id: f, type: hose-bibb, up: ^3}", "up: a length needs a unit", "write 3 m");
    expect_feature_fault("{id: f, type: attic-hatch, at: ^[1 m]}", "at is a point of two lengths", "write [4.5 m, 2 m]");
    expect_feature_fault("{id: f, type: hose-bibb, story: ^2}", "there is no story 2", "the house has 1");
    expect_feature_fault("{id: f, type: dryer-outlet, space: ^{name: x}}", "space has no id", "add id: ...");
    expect_feature_fault("{id: f, type: hose-bibb, count: ^10001}", "a feature makes at most 10000 alike", "");
    expect_feature_fault("{id: f, type: hose-bibb, count: ^0}", "count: ", "");
    expect_feature_fault("{id: f, type: outlet, size: ^[1 m, 0 m]}", "a size is more than 0", "");
    expect_feature_fault("{id: f, type: hose-bibb, gap: ^1}", "gap: a length needs a unit", "write 1 mm");
    expect_feature_fault("{id: f, type: hose-bibb, outside: ^1}", "outside: a length needs a unit",
                         "or none when there is no such opening");
    expect_feature_fault("{id: f, type: hose-bibb, outside: ^[]}", "outside must be a mapping, not a list", "");
    expect_feature_fault("{id: f, type: hose-bibb, outside: {^width: 1 mm}}", "unknown key \"width\" in outside", "gap");
    expect_feature_fault("{id: f, type: hose-bibb, closing: ^{}}", "closing holds either a cost or the reason why never", "");
    expect_feature_fault("{id: f, type: hose-bibb, evidence: {how: ^seen}}", "unknown how \"seen\"", "measured");
}

/// More keys than any feature has, all of them known: reported as such, and read no further.
TEST(DescriptionFault, AFeatureWithTooManyKeys) {
    const std::string keys =
        "name: x, on: west-wall, along: 1 m, up: 1 m, at: [1 m, 1 m], side: x, story: 1, space: x, count: 1, spacing: 1 m, "
        "source: true, note: x, gap: 1 mm, around: 1 mm, length: 1 m, size: [1 m, 1 m], evidence: {}, closing: {cost: $1}, "
        "outside: 1 mm, hood: 1 mm, sheathing: 1 mm, inside: 1 mm, collar: 1 mm, a: 1, b: 2, c: 3, d: 4";
    expect_feature_fault("^{id: f, type: dryer-outlet, " + keys + "}", "a feature has more than 28 keys",
                         "make several features");
}

/// Faults of all parts of a file are found at once, in the order of the file.
TEST(DescriptionFault, AllAtOnce) {
    std::string text = cottage;
    const auto change = [&](const std::string& part, const std::string& marked) {
        text.replace(text.find(part), part.size(), marked);
    };
    change("thick: 22 mm", "thick: ^22");
    change("[8 m, 6 m]", "^[8 m]");
    change("height: 2.5 m", "^hieght: 2.5 m");
    change("pitch: 4/12", "pitch: ^steep");
    change("to: [5 m, 6 m]", "to: ^5 m");
    change("at: [2 m, 3 m]", "at: [^2, 3 m]");
    change("in: south-wall", "in: ^suoth-wall");
    change("type: weep-screed", "type: ^weep-scred");
    change("on: front-door, gap: 4 mm", "on: front-door, gap: ^4");
    const MarkedText marked(text);
    const auto found = faults(marked.text);
    ASSERT_EQ(found.size(), marked.places.size()) << listing(found);
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_EQ(found[i].place.line, marked.places[i].line) << listing(found);
        EXPECT_EQ(found[i].place.column, marked.places[i].column) << listing(found);
        EXPECT_EQ(found[i].file, "house.yaml");
    }
}

}  // namespace
}  // namespace seamward::test
