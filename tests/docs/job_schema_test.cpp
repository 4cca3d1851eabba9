// SPDX-License-Identifier: GPL-3.0-or-later
// docs/job.schema.json against the files that ship and against the program: RapidJSON's validator is the judge.
#include <gtest/gtest.h>
#include <rapidjson/document.h>
#include <rapidjson/pointer.h>

#include <filesystem>
#include <set>

#include "catalog/shipped.h"
#include "tests/docs/page.h"
#include "tests/docs/schema_judge.h"

namespace seamward::test {
namespace {

const std::filesystem::path top = SEAMWARD_SOURCE_FOLDER;

TEST(JobSchema, AcceptsEveryShippedScenario) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(top / "scenarios")) {
        if (entry.path().extension() != ".yaml") continue;
        EXPECT_EQ(verdict(page("scenarios/" + entry.path().filename().string())), "") << entry.path();
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

rapidjson::Document schema_text() {
    rapidjson::Document schema;
    schema.Parse(page("docs/job.schema.json").c_str());
    return schema;
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
    std::set<std::string> treatments = words_at(schema, "/definitions/closed_full/properties/with/anyOf/0/enum");
    treatments.merge(words_at(schema, "/definitions/closed_mesh/properties/with/enum"));
    treatments.merge(words_at(schema, "/definitions/closed_mesh_of_the_table/properties/with/enum"));
    EXPECT_EQ(treatments, ids_of(shipped_treatments()));
    const std::vector<std::string_view> full = full_closings();
    EXPECT_EQ(words_at(schema, "/definitions/closing/properties/with/enum"), std::set<std::string>(full.begin(), full.end()));
}

/// What a job can say of a gap of its house stands in the page's table.
TEST(JobSchema, KnowsTheKeysOfNewMeasurements) {
    const rapidjson::Document schema = schema_text();
    std::set<std::string> listed, keys;
    for (const auto& [key, cells] :
         table_below(page("docs/job-file.md"), "| key of a new measurement | meaning | when left out | example |"))
        listed.insert(key);
    for (const auto& key : rapidjson::Pointer("/definitions/gap_of_house/properties").Get(schema)->GetObject())
        keys.insert(key.name.GetString());
    EXPECT_EQ(listed, keys);
}

/// Kinds of spaces are explained in the words of the page.
TEST(JobSchema, ExplainsKindsAsThePageDoes) {
    const rapidjson::Document schema = schema_text();
    const std::string kind = "/definitions/space/properties/kind";
    const rapidjson::Value* said = rapidjson::Pointer((kind + "/description").c_str()).Get(schema);
    ASSERT_NE(said, nullptr);
    const auto kinds = table_below(page("docs/job-file.md"), "| kind | for | in entry paths |");
    std::set<std::string> words;
    for (const auto& [word, cells] : kinds) {
        words.insert(word);
        EXPECT_NE(std::string(said->GetString()).find(word + ": " + cells.front() + '.'), std::string::npos) << word;
    }
    EXPECT_EQ(words, words_at(schema, (kind + "/enum").c_str()));
}

}  // namespace
}  // namespace seamward::test
