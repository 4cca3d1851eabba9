// SPDX-License-Identifier: GPL-3.0-or-later
// docs/house-file.md and docs/house.schema.json against the program, the catalog and the houses that ship.
#include <gtest/gtest.h>
#include <rapidjson/document.h>
#include <rapidjson/pointer.h>

#include <filesystem>
#include <map>
#include <set>

#include "catalog/shipped.h"
#include "house/description.h"
#include "job_file/job.h"
#include "tests/docs/page.h"
#include "tests/docs/schema_judge.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

/// A job on a house, in files of the names that messages give, traced.
Ran trace_house(const std::string& name, const std::string& house) {
    const ScratchFolder folder;
    folder.write(name, house);
    folder.write("visit.yaml", "seamward: 1\nhouse: " + name + "\n");
    return run_shell("cd " + shell_word(folder.path().string()) + " && " + shell_word(SEAMWARD_PROGRAM) + " trace visit.yaml");
}

/// The example at the head of the page has ways into both of its rooms and no gap that leads nowhere.
TEST(HouseFilePage, ShowsAHouseThatIsBuilt) {
    const std::string text = page("docs/house-file.md");
    std::size_t at = 0;
    const std::string house = block_after(text, "# The house file", at);
    EXPECT_EQ(house_verdict(house), "");
    const Ran ran = trace_house("house.yaml", house);
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(ran.out.substr(0, ran.out.find('\n')), "Larkspur Court 4");
    EXPECT_EQ(ran.out.find("Check:"), std::string::npos) << ran.out;
    EXPECT_EQ(ran.out.find("no way in"), std::string::npos) << ran.out;
}

TEST(HouseFilePage, ShowsTheErrors) {
    const std::string text = page("docs/house-file.md");
    std::size_t at = text.find("## Errors");
    const std::string house = block_after(text, "`wrong.yaml`", at);
    const std::string errors = block_after(text, "gives", at);
    const Ran ran = trace_house("wrong.yaml", house);
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_EQ(ran.out, "");
    EXPECT_EQ(ran.err, errors);
}

rapidjson::Document schema_text() {
    rapidjson::Document schema;
    schema.Parse(page("docs/house.schema.json").c_str());
    return schema;
}

const rapidjson::Value& at(const rapidjson::Document& schema, const std::string& pointer) {
    const rapidjson::Value* found = rapidjson::Pointer(pointer.c_str()).Get(schema);
    if (found == nullptr) throw std::out_of_range("the schema has no " + pointer);
    return *found;
}

/// The keys that the schema allows at a place.
std::set<std::string> keys_at(const rapidjson::Document& schema, const std::string& pointer) {
    std::set<std::string> keys;
    for (const auto& property : at(schema, pointer + "/properties").GetObject()) keys.insert(property.name.GetString());
    return keys;
}

std::set<std::string> keys_below(const std::string& text, const std::string& heading) {
    std::set<std::string> keys;
    for (const auto& [key, cells] : table_below(text, heading)) keys.insert(key);
    return keys;
}

/// All keys that single gaps have in any type; `side` of a duct is no key, because features have a `side` of their own.
std::set<std::string> gap_keys_of_the_catalog() {
    std::set<std::string> keys;
    for (const Feature& feature : shipped_features().rows) {
        for (const FeatureGap& gap : feature.gaps) keys.insert(gap.id);
    }
    keys.erase("side");
    return keys;
}

/// The page's tables list the keys of the schema, no more and no fewer.
TEST(HouseFilePage, ListsTheKeysOfTheSchema) {
    const std::string text = page("docs/house-file.md");
    const rapidjson::Document schema = schema_text();
    EXPECT_EQ(keys_below(text, "## Top level"), keys_at(schema, ""));
    EXPECT_EQ(keys_below(text, "| key of a layer | meaning | default | example |"),
              keys_at(schema, "/definitions/layer/anyOf/0"));
    EXPECT_EQ(keys_below(text, "| key of paving | meaning | default | example |"), keys_at(schema, "/definitions/paving"));
    EXPECT_EQ(keys_below(text, "| key of a block wall | meaning | default | example |"),
              keys_at(schema, "/definitions/block_wall"));
    EXPECT_EQ(keys_below(text, "| key of a single gap | meaning | default | example |"),
              keys_at(schema, "/definitions/feature_gap/anyOf/2"));
    for (const auto& [heading, definition] : std::map<std::string, std::string>{{"assemblies", "assembly"},
                                                                                {"stories", "story"},
                                                                                {"partitions", "partition"},
                                                                                {"rooms", "room"},
                                                                                {"openings", "opening"},
                                                                                {"stud_bays", "stud_bays"},
                                                                                {"bulkheads", "bulkhead"},
                                                                                {"foundation", "foundation"},
                                                                                {"roof", "roof"}})
        EXPECT_EQ(keys_below(text, "## `" + heading + '`'), keys_at(schema, "/definitions/" + definition)) << heading;
    std::set<std::string> features = keys_below(text, "## `features`");
    features.merge(gap_keys_of_the_catalog());
    EXPECT_EQ(features, keys_at(schema, "/definitions/feature"));
}

/// Types are an enumeration, so that an editor completes them and marks one that is misspelled.
TEST(HouseSchema, KnowsTheTypesOfTheCatalog) {
    const rapidjson::Document schema = schema_text();
    std::set<std::string> listed, types;
    for (const auto& word : at(schema, "/definitions/feature/properties/type/enum").GetArray()) listed.insert(word.GetString());
    for (const Feature& feature : shipped_features().rows) types.insert(feature.id);
    EXPECT_EQ(listed, types);
}

/// A house and a job say what both can say in the same words.
TEST(HouseSchema, SharesDefinitionsWithThatOfJobs) {
    const rapidjson::Document schema = schema_text();
    rapidjson::Document job;
    job.Parse(page("docs/job.schema.json").c_str());
    for (const char* name : {"text", "text_or_nothing", "lines_or_nothing", "length", "coordinate", "money", "closing"}) {
        const std::string pointer = std::string("/definitions/") + name;
        EXPECT_TRUE(at(schema, pointer) == at(job, pointer)) << name;
    }
}

TEST(HouseSchema, AcceptsEveryShippedHouse) {
    std::size_t count = 0;
    for (const auto& entry : std::filesystem::directory_iterator(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "models")) {
        if (entry.path().extension() != ".yaml") continue;
        const std::string text = page("models/" + entry.path().filename().string());
        EXPECT_EQ(house_verdict(text), "") << entry.path();
        EXPECT_NO_THROW((void)parse_house_yaml(text, entry.path().string()));
        ++count;
    }
    EXPECT_GE(count, 1U);
}

}  // namespace
}  // namespace seamward::test
