// SPDX-License-Identifier: GPL-3.0-or-later
// docs/job.schema.json and the program on every key of every mapping of a job file: the key left out, empty, and with
// values of every type. Both must say the same of each.
#include "tests/docs/schema_agreement.h"

#include <gtest/gtest.h>

#include <vector>

#include "tests/support/cottage.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

const Judges job_judges{verdict, program_accepts};

/// Two spaces and a gap to name, then what is tried at `@`.
const std::string spaces = "seamward: 1, spaces: [{id: yard, kind: outdoors}, {id: den, kind: living}], ";
const std::string gap_with = "{" + spaces + "gaps: [{id: g, between: [yard, den], ";
const std::string closed_with = gap_with + "hole: {diameter: 5 mm}}], ";

const std::vector<Mapping>& mappings() {
    static const std::vector<Mapping> all{
        {"@",
         {{"seamward", "1"},
          {"job", "{name: x}"},
          {"house", "", true},
          {"model", ""},
          {"spaces", "[{id: yard, kind: outdoors}]"},
          {"gaps", "[]"},
          {"pests", "[bat]"},
          {"closed", "[]"},
          {"occupied", "[]"},
          {"sightings", "[]"},
          {"checks", "[]"},
          {"site", "{}"},
          {"construction", "{}"},
          {"appliances", "[]"},
          {"details", "[]"}}},
        {"{seamward: 1, job: @}", {{"name", "x"}, {"address", "x"}, {"surveyed", "x"}, {"surveyor", "x"}, {"notes", "x"}}},
        {"{seamward: 1, spaces: [@]}", {{"id", "yard"}, {"kind", "cavity"}, {"source", "true"}, {"name", "x"}, {"note", "x"}}},
        {"{" + spaces + "gaps: [@]}",
         {{"id", "g"},
          {"name", "x"},
          {"between", "[yard, den]", true},
          {"hole", "{diameter: 5 mm}"},
          {"slot", ""},
          {"ring", ""},
          {"mesh", ""},
          {"count", "2"},
          {"duty", "drain"},
          {"at", "[1 m, 2 m, -3 m]"},
          {"through", "[[1 m, 2 m, -3 m], [1 m, 3 m, 0 m]]"},
          {"depth", "2 mm"},
          {"joint_spacing", "6 m"},
          {"type", "door-sweep", true},
          {"substrates", "[stucco]"},
          {"evidence", "{how: measured}"},
          {"closing", "{cost: $8}"},
          {"note", "x"},
          {"photo", "x.jpg"}}},
        {gap_with + "slot: @}]}", {{"width", "1 mm"}, {"length", "1 m"}}},
        {gap_with + "hole: @}]}", {{"diameter", "1 mm"}}},
        {gap_with + "ring: @}]}", {{"width", "1 mm"}, {"around", "1 mm"}}},
        {gap_with + "mesh: @}]}", {{"opening", "1 mm"}, {"area", "1 cm2"}}},
        {gap_with + "hole: {diameter: 5 mm}, evidence: @}]}", {{"how", "assumed"}, {"plus_minus", "1 mm"}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", "$8"}, {"with", "mortar"}, {"never", ""}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", ""}, {"with", ""}, {"never", "x"}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", ""}, {"never", ""}}},
        {"{seamward: 1, pests: [@]}", {{"id", "vole"}, {"name", "x"}, {"slit", "1 mm"}, {"hole", "2 mm"}, {"margin", "10 %"}}},
        {closed_with + "closed: [@]}",
         {{"gap", "g", true}, {"with", "bead"}, {"opening", ""}, {"date", "2026-06-15"}, {"callback", ""}, {"note", "x"}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", ""}, {"opening", ""}, {"note", ""}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", "mesh"}, {"opening", "1 mm"}, {"date", ""}, {"note", "x"}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", "mesh-1-8"}, {"opening", ""}, {"date", ""}, {"note", "x"}}},
        {closed_with + "closed: [{gap: g, callback: @}]}", {{"date", "2026-06-15"}, {"cause", "x"}, {"mended", ""}}},
        {closed_with + "occupied: [@]}",
         {{"space", "den", true},
          {"animal", "bat", true},
          {"seen", "x", true},
          {"way", "g", true},
          {"left", "2026-06-15"},
          {"note", "x"}}},
        {closed_with + "sightings: [@]}",
         {{"room", "den", true}, {"pest", "bat", true}, {"date", "2026-06-15"}, {"count", "2"}, {"note", "x"}}},
        {closed_with + "checks: [@]}", {{"check", "co-alarms"}, {"date", "2026-06-15"}, {"by", "x"}, {"note", "x"}}},
        {closed_with + "site: @}",
         {{"state", "AZ"},
          {"built", "1984"},
          {"roof", "tile"},
          {"occupants", "owner"},
          {"association", "true"},
          {"gates", "x"},
          {"pets", "x"},
          {"note", "x"}}},
        {closed_with + "construction: @}",
         {{"cladding", "[stucco]"}, {"foundation", "slab"}, {"has", "[garage]"}, {"without", "[flood-zone]"}}},
        {closed_with + "appliances: [@]}", {{"in", "den", true}, {"burns", "12 kW"}, {"note", "x"}}},
        {closed_with + "details: [@]}",
         {{"what", "smallest-side", true},
          {"gap", "g", true},
          {"at", "x"},
          {"is", "3 in"},
          {"plus_minus", "1 mm"},
          {"note", "x"}}},
        {closed_with + "details: [@]}",
         {{"what", "screed-flange", true}, {"at", "x"}, {"is", "3 in"}, {"plus_minus", "1 mm"}, {"note", "x"}}},
        {closed_with + "details: [@]}", {{"what", "rated-opening-area", true}, {"is", "3 in2"}, {"plus_minus", "1 cm2"}}},
        {closed_with + "details: [@]}", {{"what", "chimney-cap-area", true}, {"is", "400 %"}, {"plus_minus", "5 %"}}},
        {closed_with + "details: [@]}", {{"what", "draft-tested", true}, {"is", "true"}}},
        {closed_with + "details: [@]}", {{"what", "airtightness", true}, {"is", "4.2 per hour"}, {"plus_minus", "1 per hour"}}}};
    return all;
}

/// Items of lists.
const std::vector<Item>& items() {
    static const std::vector<Item> all{{"{seamward: 1, spaces: [@]}"},
                                       {"{" + spaces + "gaps: [@]}"},
                                       {"{" + spaces + "gaps: [{id: g, between: [yard, @], hole: {diameter: 1 mm}}]}", true},
                                       {gap_with + "hole: {diameter: 1 mm}, at: [1 m, @, 2 m]}]}"},
                                       {gap_with + "hole: {diameter: 1 mm}, substrates: [wood, @]}]}"},
                                       {"{seamward: 1, pests: [@]}"},
                                       {closed_with + "closed: [@]}"},
                                       {closed_with + "occupied: [@]}"},
                                       {closed_with + "sightings: [@]}"},
                                       {closed_with + "checks: [@]}"},
                                       {closed_with + "construction: {has: [@]}}"},
                                       {closed_with + "construction: {cladding: [@]}}"},
                                       {closed_with + "appliances: [@]}"},
                                       {closed_with + "details: [@]}"}};
    return all;
}

TEST(SchemaAgreement, TheFilesThatTheOthersChangeAreGood) {
    for (const Mapping& mapping : mappings()) {
        const std::string file = Judges::text_of(mapping, "", "");
        if (file.find("closing: {}") == std::string::npos) job_judges.expect_good(file);
    }
}

TEST(SchemaAgreement, EveryKeyLeftOutEmptyAndOfEveryType) {
    for (const Mapping& mapping : mappings()) job_judges.try_keys(mapping, values_of_every_type());
}

TEST(SchemaAgreement, EveryItemOfAListEmptyAndOfEveryType) {
    for (const Item& item : items()) {
        for (const std::string& value : values_of_every_type())
            job_judges.expect_agreement(put(item.file, value), item.program_decides);
    }
}

TEST(SchemaAgreement, EveryKeyThatIsNone) {
    for (const Mapping& mapping : mappings()) job_judges.try_wrong_key(mapping);
}

/// The file has to be there and to be a model.
TEST(SchemaAgreement, JobsOnAModel) {
    const ScratchFolder folder;
    const std::string model = folder.write("model.glb", "glTF").string();
    const Mapping mapping{"{seamward: 1, model: @}", {{"file", "'" + model + "'", true}, {"unit", "mm"}, {"up", "z"}}};
    job_judges.expect_good(Judges::text_of(mapping, "", ""));
    job_judges.try_keys(mapping, values_of_every_type());
    job_judges.try_wrong_key(mapping);
    const std::string house = folder.write("house.yaml", cottage).string();
    const std::string both = "{seamward: 1, model: {file: '" + model + "'}, house: '" + house + "'}";
    EXPECT_NE(verdict(both), "");
    EXPECT_FALSE(program_accepts(both));
}

/// With a described house, entries without `between` are measurements of its gaps; ids and shapes are looked up in the house.
TEST(SchemaAgreement, JobsWithAHouse) {
    const ScratchFolder folder;
    const std::string house = folder.write("house.yaml", cottage).string();
    const std::string job = "{seamward: 1, house: '" + house + "', ";
    const std::vector<Mapping> mappings{{job + "gaps: [@]}",
                                         {{"id", "bibb", true},
                                          {"ring", "{width: 3 mm}"},
                                          {"slot", ""},
                                          {"hole", ""},
                                          {"mesh", ""},
                                          {"duty", "none"},
                                          {"evidence", "{how: measured}"},
                                          {"closing", "{cost: $8}"},
                                          {"note", "x"},
                                          {"photo", "x.jpg"}}},
                                        {job + "gaps: [{id: bibb, ring: @}]}", {{"width", "1 mm", true}}},
                                        {job + "gaps: [{id: sweep, slot: @}]}", {{"width", "1 mm", true}}},
                                        {job + "gaps: [{id: screed-drain-holes, hole: @}]}", {{"diameter", "1 mm", true}}},
                                        {job + "gaps: [{id: vents, mesh: @}]}", {{"opening", "1 mm", true}}},
                                        {job + "gaps: [{id: bibb, evidence: @}]}", {{"how", "assumed"}, {"plus_minus", "1 mm"}}},
                                        {job + "closed: [@]}", {{"gap", "bibb", true}, {"with", "bead"}, {"note", "x"}}}};
    for (const Mapping& mapping : mappings) {
        job_judges.expect_good(Judges::text_of(mapping, "", ""));
        job_judges.try_keys(mapping, values_of_every_type());
        job_judges.try_wrong_key(mapping);
    }
    for (const char* gaps :
         {"{id: sweep, slot: {width: 1 mm, length: 9 m}}", "{id: bibb, ring: {width: 1 mm}, hole: {diameter: 1 mm}}",
          "{id: bibb, at: [1 m, 1 m, 1 m]}", "{id: bibb, count: 2}", "{id: bibb, name: x}", "{id: bibb, depth: 1 mm}"}) {
        EXPECT_NE(verdict(job + "gaps: [" + gaps + "]}"), "") << gaps;
        EXPECT_FALSE(program_accepts(job + "gaps: [" + gaps + "]}")) << gaps;
    }
    // Without a house, or with its key left empty, a gap needs its spaces.
    for (const char* house_key : {"", "house: ~, ", "house: '', "}) {
        const std::string file = std::string("{seamward: 1, ") + house_key + "gaps: [{id: bibb, ring: {width: 3 mm}}]}";
        EXPECT_NE(verdict(file), "") << file;
        EXPECT_FALSE(program_accepts(file)) << file;
    }
    job_judges.expect_good(job +
                           "spaces: [{id: duct, kind: cavity}], gaps: [{id: bibb}, {id: g, between: [duct, kitchen], "
                           "hole: {diameter: 1 mm}}]}");
}

}  // namespace
}  // namespace seamward::test
