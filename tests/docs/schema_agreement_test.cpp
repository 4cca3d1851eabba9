// SPDX-License-Identifier: GPL-3.0-or-later
// docs/job.schema.json and the program on every key of every mapping of a job file: the key left out, empty, and with
// values of every type. Both must say the same of each.
#include <gtest/gtest.h>

#include <vector>

#include "tests/docs/schema_judge.h"

namespace seamward::test {
namespace {

/// Two spaces and a gap to name, then what is tried at `@`.
const std::string spaces = "seamward: 1, spaces: [{id: yard, kind: outdoors}, {id: den, kind: living}], ";
const std::string gap_with = "{" + spaces + "gaps: [{id: g, between: [yard, den], ";
const std::string closed_with = gap_with + "hole: {diameter: 5 mm}}], ";

struct Key {
    std::string name;
    std::string good;        ///< a value that stands there while other keys are tried; empty: none
    bool names_one = false;  ///< it names a space or a gap of the file, which a schema cannot look up
};

/// A mapping of the job file: the whole file with `@` in its place, and its keys.
struct Mapping {
    std::string file;
    std::vector<Key> keys;
};

const std::vector<Mapping>& mappings() {
    static const std::vector<Mapping> all{
        {"@",
         {{"seamward", "1"},
          {"job", "{name: x}"},
          {"house", ""},
          {"spaces", "[{id: yard, kind: outdoors}]"},
          {"gaps", "[]"},
          {"pests", "[bat]"},
          {"closed", "[]"}}},
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
          {"depth", "2 mm"},
          {"substrates", "[stucco]"},
          {"evidence", "{how: measured}"},
          {"closing", "{cost: $8}"},
          {"note", "x"}}},
        {gap_with + "slot: @}]}", {{"width", "1 mm"}, {"length", "1 m"}}},
        {gap_with + "hole: @}]}", {{"diameter", "1 mm"}}},
        {gap_with + "ring: @}]}", {{"width", "1 mm"}, {"around", "1 mm"}}},
        {gap_with + "mesh: @}]}", {{"opening", "1 mm"}, {"area", "1 cm2"}}},
        {gap_with + "hole: {diameter: 5 mm}, evidence: @}]}", {{"how", "assumed"}, {"plus_minus", "1 mm"}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", "$8"}, {"never", ""}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", ""}, {"never", "x"}}},
        {gap_with + "hole: {diameter: 5 mm}, closing: @}]}", {{"cost", ""}, {"never", ""}}},
        {"{seamward: 1, pests: [@]}", {{"id", "vole"}, {"name", "x"}, {"slit", "1 mm"}, {"hole", "2 mm"}, {"margin", "10 %"}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", "bead"}, {"opening", ""}, {"note", "x"}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", ""}, {"opening", ""}, {"note", ""}}},
        {closed_with + "closed: [@]}", {{"gap", "g", true}, {"with", "mesh"}, {"opening", "1 mm"}, {"note", "x"}}}};
    return all;
}

/// Items of lists: the whole file with `@` in the item's place.
struct Item {
    std::string file;
    bool names_one = false;
};

const std::vector<Item>& items() {
    static const std::vector<Item> all{{"{seamward: 1, spaces: [@]}"},
                                       {"{" + spaces + "gaps: [@]}"},
                                       {"{" + spaces + "gaps: [{id: g, between: [yard, @], hole: {diameter: 1 mm}}]}", true},
                                       {gap_with + "hole: {diameter: 1 mm}, at: [1 m, @, 2 m]}]}"},
                                       {gap_with + "hole: {diameter: 1 mm}, substrates: [wood, @]}]}"},
                                       {"{seamward: 1, pests: [@]}"},
                                       {closed_with + "closed: [@]}"}};
    return all;
}

/// Empty, and of every type; then texts and quantities of every sort.
const std::vector<std::string>& values() {
    static const std::vector<std::string> all{
        "~",        "''",       "'  '",      "word",       "5",           "-5",      "0",          "1.5",      "true",
        "false",    "'true'",   "'1'",       "'5'",        "[]",          "[~]",     "[5]",        "[a, b]",   "{}",
        "{zzz: 1}", "{id: ~}",  "1 mm",      "-1 mm",      "0 mm",        "1/16 in", "12 ft 6 in", "1 cm2",    "5 %",
        "$5",       "'$1,250'", "\"a\\nb\"", "\"a\\tb\"",  "\" a \"",     "drain",   "cavity",     "measured", "bat",
        "mesh",     "bead",     "attic",     "1000000001", "'1000000001'"};
    return all;
}

std::string put(const std::string& file, const std::string& what) {
    std::string text = file;
    return text.replace(text.find('@'), 1, what);
}

/// The mapping with one key changed: left out when `value` is empty.
std::string mapping_text(const Mapping& mapping, const std::string& changed, const std::string& value) {
    std::string text;
    for (const Key& key : mapping.keys) {
        const std::string& stands = key.name == changed ? value : key.good;
        if (!stands.empty()) text += (text.empty() ? "" : ", ") + key.name + ": " + stands;
    }
    return put(mapping.file, '{' + text + '}');
}

void expect_agreement(const std::string& file, bool names_one) {
    const std::string said = verdict(file);
    const bool accepted = program_accepts(file);
    if (names_one && !accepted) return;  // an unknown id is for the program alone to find
    EXPECT_EQ(said.empty(), accepted) << file << "\nschema: " << (said.empty() ? "accepts" : said);
}

TEST(SchemaAgreement, TheFilesThatTheOthersChangeAreGood) {
    for (const Mapping& mapping : mappings()) {
        const std::string file = mapping_text(mapping, "", "");
        if (file.find("closing: {}") != std::string::npos) continue;
        EXPECT_TRUE(program_accepts(file)) << file;
        EXPECT_EQ(verdict(file), "") << file;
    }
}

TEST(SchemaAgreement, EveryKeyLeftOutEmptyAndOfEveryType) {
    for (const Mapping& mapping : mappings()) {
        for (const Key& key : mapping.keys) {
            expect_agreement(mapping_text(mapping, key.name, ""), key.names_one);
            for (const std::string& value : values()) expect_agreement(mapping_text(mapping, key.name, value), key.names_one);
        }
        for (const std::string& value : values()) expect_agreement(put(mapping.file, value), false);
    }
}

TEST(SchemaAgreement, EveryItemOfAListEmptyAndOfEveryType) {
    for (const Item& item : items()) {
        for (const std::string& value : values()) expect_agreement(put(item.file, value), item.names_one);
    }
}

TEST(SchemaAgreement, EveryKeyThatIsNone) {
    for (const Mapping& mapping : mappings()) {
        std::string file = mapping_text(mapping, "", "");
        const std::string key = mapping.keys.front().name + ": " + mapping.keys.front().good;
        if (mapping.keys.front().good.empty()) continue;
        file.insert(file.rfind(key), "zzz: 1, ");
        EXPECT_FALSE(program_accepts(file)) << file;
        EXPECT_NE(verdict(file), "") << file;
    }
}

}  // namespace
}  // namespace seamward::test
