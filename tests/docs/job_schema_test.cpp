// SPDX-License-Identifier: GPL-3.0-or-later
// docs/job.schema.json against the files that ship and against the program: RapidJSON's validator is the judge.
#include <gtest/gtest.h>
#include <rapidjson/document.h>
#include <rapidjson/pointer.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

#include <filesystem>
#include <set>

#include "base/document.h"
#include "base/file_io.h"
#include "catalog/shipped.h"
#include "job_file/job.h"

namespace seamward::test {
namespace {

const std::filesystem::path top = SEAMWARD_SOURCE_FOLDER;

std::string content(const std::filesystem::path& path) { return read_file(path, path.string(), 1 << 24); }

rapidjson::Document schema_text() {
    rapidjson::Document schema;
    schema.Parse(content(top / "docs" / "job.schema.json").c_str());
    return schema;
}

/// A YAML tree as an editor's validator sees it: numbers and truth values are no strings.
rapidjson::Value as_json(Node node, rapidjson::Document::AllocatorType& memory) {
    rapidjson::Value value;
    if (node.is_sequence()) {
        value.SetArray();
        node.for_each_item([&](Node item) { value.PushBack(as_json(item, memory), memory); });
    } else if (node.is_mapping()) {
        value.SetObject();
        node.for_each_pair([&](Node key, Node item) {
            value.AddMember(rapidjson::Value(std::string(key.text()).c_str(), memory), as_json(item, memory), memory);
        });
    } else if (node.kind() == Document::Kind::plain && (node.text() == "true" || node.text() == "false")) {
        value.SetBool(node.text() == "true");
    } else if (node.is_scalar()) {
        const std::string text(node.text());
        char* end = nullptr;
        const double number = std::strtod(text.c_str(), &end);
        const bool is_number = node.kind() == Document::Kind::plain && !text.empty() && *end == '\0';
        if (is_number && number == static_cast<int>(number))
            value.SetInt(static_cast<int>(number));
        else if (is_number)
            value.SetDouble(number);
        else
            value.SetString(text.c_str(), memory);
    }
    return value;
}

/// Empty when the schema accepts the YAML text, else the keyword and the place that reject it.
std::string verdict(const std::string& yaml) {
    const rapidjson::Document schema_json = schema_text();
    const rapidjson::SchemaDocument schema(schema_json);
    rapidjson::SchemaValidator validator(schema);
    rapidjson::Document memory;
    const Document document = parse_yaml(yaml, "job.yaml");
    if (as_json(document.root(), memory.GetAllocator()).Accept(validator)) return "";
    rapidjson::StringBuffer place;
    validator.GetInvalidDocumentPointer().StringifyUriFragment(place);
    return std::string(validator.GetInvalidSchemaKeyword()) + " at " + place.GetString();
}

bool program_accepts(const std::string& yaml) {
    try {
        (void)parse_job_yaml(yaml, "job.yaml");
        return true;
    } catch (const BadInput&) {
        return false;
    }
}

TEST(JobSchema, AcceptsEveryShippedScenario) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(top / "scenarios")) {
        if (entry.path().extension() != ".yaml") continue;
        EXPECT_EQ(verdict(content(entry.path())), "") << entry.path();
        ++count;
    }
    EXPECT_GE(count, 3U);
}

std::string job_with(const std::string& gap) {
    return "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: den, kind: living}]\ngaps:\n  - {id: g, between: [yard, "
           "den], " +
           gap + "}\n";
}

TEST(JobSchema, AcceptsWhatTheProgramAccepts) {
    for (const char* gap :
         {"slot: {width: 0.9 mm, length: 9 m}", "slot: {width: 1/16 in, length: 12 ft 6 in}", "hole: {diameter: '3/8\"'}",
          "hole: {diameter: 1 1/2 in}, count: 30", "ring: {width: 2.5 mm, around: 22 mm}, closing: {cost: $8.00}",
          "mesh: {opening: 5.7 mm, area: 100 cm2}, duty: vent", "hole: {diameter: 0 mm}",
          "slot: {width: .5 mm, length: 1e3 mm}, at: [-4.5 m, 9 m, 0.05 m], depth: 22 mm, substrates: [stucco, concrete]",
          "hole: {diameter: 5 mm}, closing: {never: says why}, evidence: {how: measured, plus_minus: 0.2 mm}"}) {
        EXPECT_EQ(verdict(job_with(gap)), "") << gap;
        EXPECT_TRUE(program_accepts(job_with(gap))) << gap;
    }
}

TEST(JobSchema, RejectsWhatTheProgramRejects) {
    for (const char* gap :
         {"slot: {width: 0.9, length: 9 m}", "slot: {width: 0.9 mm}", "slot: {widht: 0.9 mm, length: 9 m}",
          "slot: {width: -1 mm, length: 9 m}", "slot: {width: 1 furlong, length: 9 m}", "slot: {width: .nan, length: 9 m}",
          "hole: {diameter: 5 mm}, slot: {width: 1 mm, length: 1 m}", "count: 2", "hole: {diameter: 5 mm}, count: 0",
          "hole: {diameter: 5 mm}, count: 1.5", "hole: {diameter: 5 mm}, duty: drains", "hole: {diameter: 5 mm}, colour: red",
          "hole: {diameter: 5 mm}, closing: {cost: 8}", "hole: {diameter: 5 mm}, closing: {cost: $8, never: no}",
          "hole: {diameter: 5 mm}, at: [1 m, 2 m]", "hole: {diameter: 5 mm}, evidence: {how: guessed}"}) {
        EXPECT_NE(verdict(job_with(gap)), "") << gap;
        EXPECT_FALSE(program_accepts(job_with(gap))) << gap;
    }
    EXPECT_NE(verdict("spaces: []"), "");
    EXPECT_NE(verdict("seamward: 2"), "");
    EXPECT_NE(verdict("seamward: 1\npests: [house-mose]"), "");
    EXPECT_NE(verdict("seamward: 1\nspaces: [{id: yard, kind: outdoor}]"), "");
}

/// The words that the schema allows at a place.
std::set<std::string> words_at(const rapidjson::Document& schema, const char* pointer) {
    std::set<std::string> words;
    const rapidjson::Value* list = rapidjson::Pointer(pointer).Get(schema);
    if (list == nullptr) return words;
    for (const auto& word : list->GetArray()) words.insert(word.GetString());
    return words;
}

template <class Row>
std::set<std::string> ids_of(const Table<Row>& table) {
    std::set<std::string> ids;
    for (const Row& row : table.rows) ids.insert(row.id);
    return ids;
}

TEST(JobSchema, KnowsTheIdsOfTheCatalog) {
    const rapidjson::Document schema = schema_text();
    EXPECT_EQ(words_at(schema, "/definitions/catalog_pest/enum"), ids_of(shipped_pests()));
    std::set<std::string> treatments = words_at(schema, "/definitions/closed_full/properties/with/enum");
    treatments.merge(words_at(schema, "/definitions/closed_mesh/properties/with/enum"));
    EXPECT_EQ(treatments, ids_of(shipped_treatments()));
}

}  // namespace
}  // namespace seamward::test
