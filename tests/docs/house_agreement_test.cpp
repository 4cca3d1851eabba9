// SPDX-License-Identifier: GPL-3.0-or-later
// docs/house.schema.json and the program on every key of every mapping of a house file: the key left out, empty, and with
// values of every type. Both must say the same of each.
#include "tests/docs/schema_agreement.h"

namespace seamward::test {
namespace {

const Judges house_judges{house_verdict, program_accepts_house};

/// What a house file needs; each part can be tried by itself.
const std::string version = "seamward-house: 1, ";
const std::string solid = "{of: drywall, thick: 13 mm}", air = "{air: true, thick: 89 mm}";
const std::string layers = "[" + solid + ", " + air + ", " + solid + "]";
const std::string assemblies = "assemblies: [{id: a, layers: " + layers + "}], ";
const std::string outline = "outline: [[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]], ";
const std::string stories = "stories: [{height: 2.5 m}, {height: 2.5 m}, {height: 2.5 m}, {height: 2.5 m}, {height: 2.5 m}], ";
const std::string rooms = "rooms: [{id: kitchen, at: [2 m, 3 m]}], ";
const std::string roof = "roof: {pitch: 4/12}";
const std::string house = "{" + version + assemblies + outline + stories + rooms + roof;

const std::vector<Mapping>& mappings() {
    static const std::vector<Mapping> all{
        {"@",
         {{"seamward-house", "1"},
          {"name", "x"},
          {"outdoors", "yard"},
          {"assemblies", "[{id: a, layers: " + layers + "}]"},
          {"outline", "[[0 m, 0 m], [8 m, 0 m], [8 m, 6 m], [0 m, 6 m]]"},
          {"walls", "[s, e, n, w]", true},
          {"wall_assembly", "a", true},
          {"foundation", "{kind: slab}"},
          {"stories", "[{height: 2.5 m}]"},
          {"partitions", "[]"},
          {"rooms", "[{id: kitchen, at: [2 m, 3 m]}]"},
          {"openings", "[]"},
          {"stud_bays", "[]"},
          {"bulkheads", "[]"},
          {"roof", "{pitch: 4/12}"},
          {"yard", "{margin: 2 m}"},
          {"paving", "[]"},
          {"block_walls", "[]"},
          {"features", "[]"}}},
        {"{" + version + outline + stories + rooms + roof + ", assemblies: [@]}", {{"id", "a"}, {"layers", layers, true}}},
        {"{" + version + outline + stories + rooms + roof + ", assemblies: [{id: a, layers: [" + solid + ", " + air + ", @]}]}",
         {{"of", "drywall"}, {"air", ""}, {"thick", "13 mm", true}}},
        {"{" + version + outline + stories + rooms + roof + ", assemblies: [{id: a, layers: [" + solid + ", @, " + solid + "]}]}",
         {{"air", "true", true}, {"of", ""}, {"thick", "89 mm", true}}},
        {house + ", foundation: @}",
         {{"kind", "slab"}, {"above_grade", "6 in", true}, {"height", "0.1 m", true}, {"space", "air"}}},
        {"{" + version + assemblies + outline + rooms + roof + ", stories: [@]}",
         {{"height", "2.5 m", true}, {"floor", "0.3 m", true}, {"void", "air"}, {"voids", "[]"}, {"cavities", "[]"}}},
        {"{" + version + assemblies + outline + rooms + roof + ", stories: [{height: 2.5 m, voids: [@]}]}",
         {{"id", "v"}, {"name", "x"}, {"at", "[2 m, 3 m]"}}},
        {house + ", partitions: [@]}",
         {{"id", "p"},
          {"name", "x"},
          {"from", "[4 m, 0 m]"},
          {"to", "[4 m, 6 m]"},
          {"assembly", "a", true},
          {"story", "1", true},
          {"to_story", "1", true},
          {"from_below", "false"},
          {"cavity", "{id: air, name: x}"}}},
        {"{" + version + assemblies + outline + stories + roof + ", rooms: [@]}",
         {{"id", "kitchen"},
          {"name", "x"},
          {"kind", "living"},
          {"source", "true"},
          {"at", "[2 m, 3 m]"},
          {"story", "1", true},
          {"to_story", "1", true}}},
        {house + ", openings: [@]}",
         {{"id", "o"},
          {"name", "x"},
          {"kind", "window"},
          {"in", "wall-1", true},
          {"story", "1", true},
          {"along", "2 m"},
          {"width", "1 m", true},
          {"height", "1 m", true},
          {"sill", "1 m"},
          {"frame", "air"}}},
        {house + ", stud_bays: [@]}", {{"on", "wall-1", true}, {"spacing", "16 in", true}}},
        {house + ", bulkheads: [@]}",
         {{"id", "b"},
          {"name", "x"},
          {"story", "1", true},
          {"from", "[1 m, 1 m]", true},
          {"to", "[2 m, 2 m]", true},
          {"drop", "0.3 m", true}}},
        {"{" + version + assemblies + outline + stories + rooms + "roof: @}",
         {{"shape", "hip"},
          {"pitch", "4/12", true},
          {"overhang", "0.4 m", true},
          {"rake", "0.2 m", true},
          {"gables", "[wall-1]", true},
          {"parapet", "0.4 m"},
          {"of", "tile"},
          {"attic", "attic"},
          {"eave", "{id: eave}"}}},
        {"{" + version + assemblies + outline + stories + rooms + "roof: {pitch: 4/12, attic: @}}",
         {{"id", "attic"}, {"name", "x"}, {"source", "true"}}},
        {"{" + version + assemblies + outline + stories + rooms + "roof: @}",
         {{"shape", "gable"}, {"pitch", "18 deg", true}, {"gables", "[wall-1]", true}}},
        {"{" + version + assemblies + outline + stories + rooms + "roof: @}",
         {{"shape", "shed"}, {"pitch", "0.5/1", true}, {"low", "wall-1", true}}},
        {"{" + version + assemblies + outline + stories + rooms + "roof: @}", {{"shape", "flat"}}},
        {house + ", yard: @}", {{"margin", "3 m", true}}},
        {house + ", paving: [@]}", {{"id", "p"}, {"name", "x"}, {"corners", "[[0 m, 8 m], [2 m, 8 m], [2 m, 9 m]]"}}},
        {house + ", block_walls: [@]}",
         {{"id", "b"}, {"name", "x"}, {"points", "[[9 m, 0 m], [9 m, 6 m]]"}, {"height", "1.5 m", true}}},
        {house + ", features: [@]}",
         {{"id", "f"},
          {"type", "hose-bibb", true},
          {"name", "x"},
          {"on", "[wall-1]"},
          {"along", "2 m"},
          {"up", "-0.1 m"},
          {"at", "[1 m, -1 m]"},
          {"side", "kitchen"},
          {"story", "1", true},
          {"space", "air"},
          {"source", "false"},
          {"count", "2", true},
          {"spacing", "0.2 m"},
          {"note", "x"},
          {"gap", "2 mm"},
          {"around", "22 mm"},
          {"length", "1 m"},
          {"size", "[1 m, 1 m]", true},
          {"evidence", "{how: assumed}"},
          {"closing", "{cost: $8}"},
          {"outside", "1 mm"},
          {"inside", "none"},
          {"sheathing", "{}"}}},
        {house + ", features: [@]}", {{"id", "f"}, {"type", "hose-bibb"}}},
        {house + ", features: [{id: f, type: hose-bibb, outside: @}]}",
         {{"id", "g"},
          {"name", "x"},
          {"gap", "1 mm"},
          {"around", "22 mm"},
          {"length", "1 m"},
          {"size", "[1 m, 1 m]", true},
          {"evidence", "{how: measured}"},
          {"closing", "{never: why}"},
          {"note", "x"}}},
        {house + ", features: [{id: f, type: hose-bibb, evidence: @}]}", {{"how", "assumed"}, {"plus_minus", "1 mm"}}},
        {house + ", features: [{id: f, type: hose-bibb, outside: {closing: @}}]}", {{"cost", "$8"}, {"never", ""}}},
        {house + ", outdoors: @}", {{"id", "yard"}, {"name", "x"}}}};
    return all;
}

/// Items of lists.
const std::vector<Item>& items() {
    static const std::vector<Item> all{
        {"{" + version + assemblies + stories + rooms + roof + ", outline: [[0 m, 0 m], [8 m, 0 m], @]}"},
        {"{" + version + assemblies + stories + rooms + roof + ", outline: [[0 m, 0 m], [8 m, 0 m], [8 m, @]]}", true},
        {house + ", walls: [s, e, n, @]}"},
        {house + ", partitions: [@]}"},
        {"{" + version + assemblies + outline + rooms + roof + ", stories: [@]}"},
        {"{" + version + assemblies + outline + rooms + roof + ", stories: [{height: 3 m, cavities: [@]}]}"},
        {"{" + version + assemblies + outline + rooms + roof + ", stories: [{height: 3 m, cavities: [[@]]}]}"},
        {"{" + version + assemblies + outline + stories + roof + ", rooms: [@]}"},
        {house + ", openings: [@]}"},
        {house + ", stud_bays: [{spacing: 0.4 m, on: [@]}]}", true},
        {house + ", bulkheads: [@]}"},
        {house + ", paving: [@]}"},
        {house + ", block_walls: [@]}"},
        {house + ", features: [@]}"},
        {house + ", features: [{id: f, type: hose-bibb, on: [wall-1, @]}]}"},
        {house + ", features: [{id: f, type: hose-bibb, size: [1 m, @]}]}", true}};
    return all;
}

/// Those of any type, and what only a house file has.
std::vector<std::string> values() {
    std::vector<std::string> all = values_of_every_type();
    for (const char* more : {"none",
                             "[1 m, 2 m]",
                             "[1 m, 2]",
                             "[1 m, 2 m, 3 m]",
                             "[-1 m, 2 m]",
                             "hose-bibb",
                             "4/12",
                             "4/0",
                             "18 deg",
                             "18deg",
                             "1/3 deg",
                             "slab",
                             "shed",
                             "garage-door",
                             "crawl-door",
                             "sliding-door",
                             "window",
                             "crawl-space",
                             "basement",
                             "gable",
                             "flat",
                             "attached",
                             "living",
                             "outdoors",
                             "[[a]]",
                             "[[1 m, 2 m], [2 m, 3 m]]",
                             "[{id: x, name: y}]",
                             "{gap: 1 mm}",
                             "{gap: 1}",
                             "60",
                             "61",
                             "10000",
                             "10001"})
        all.emplace_back(more);
    return all;
}

TEST(HouseAgreement, TheFilesThatTheOthersChangeAreGood) {
    for (const Mapping& mapping : mappings()) house_judges.expect_good(Judges::text_of(mapping, "", ""));
}

TEST(HouseAgreement, EveryKeyLeftOutEmptyAndOfEveryType) {
    for (const Mapping& mapping : mappings()) house_judges.try_keys(mapping, values());
}

TEST(HouseAgreement, EveryItemOfAListEmptyAndOfEveryType) {
    for (const Item& item : items()) {
        for (const std::string& value : values()) house_judges.expect_agreement(put(item.file, value), item.program_decides);
    }
}

TEST(HouseAgreement, EveryKeyThatIsNone) {
    for (const Mapping& mapping : mappings()) house_judges.try_wrong_key(mapping);
}

}  // namespace
}  // namespace seamward::test
