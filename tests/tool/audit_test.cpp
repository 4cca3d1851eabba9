// SPDX-License-Identifier: GPL-3.0-or-later
// `audit` of real models and of surveys over them: the parts that it names are those of the file, a drawing passes nothing that
// it draws tight, and measured joints become findings.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "base/document.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

constexpr const char* duplex = SEAMWARD_SOURCE_FOLDER "/tests/models/Duplex_A_20110907.ifc";
constexpr const char* building = SEAMWARD_SOURCE_FOLDER "/tests/models/PCERT_Building-Architecture.ifc";

class AuditOfModels : public testing::Test {
protected:
    [[nodiscard]] Ran run(const std::string& arguments) const {
        return run_shell("cd " + shell_word(folder.path().string()) + " && " SEAMWARD_PROGRAM " " + arguments);
    }
    [[nodiscard]] Document answer(const std::string& arguments) const {
        const Ran ran = run(arguments);
        EXPECT_EQ(ran.exit_code, 0) << arguments << ran.err;
        return parse_json(ran.out, arguments);
    }
    [[nodiscard]] std::string read(const std::string& name) const { return read_file(folder.path() / name, name, 1 << 24); }

    ScratchFolder folder;
};

std::set<std::string> texts(Node list) {
    std::set<std::string> all;
    if (!list.present()) return all;
    list.for_each_item([&](Node item) { all.emplace(item.text()); });
    return all;
}

/// The GlobalIds of all things checked, and of all findings.
std::set<std::string> global_ids(const Document& answer) {
    std::set<std::string> all;
    value_of(answer.root(), "rules").for_each_item([&](Node rule) {
        value_of(rule, "checked").for_each_item([&](Node one) { all.merge(texts(value_of(one, "global_ids"))); });
    });
    value_of(answer.root(), "findings").for_each_item([&](Node one) { all.merge(texts(value_of(one, "global_ids"))); });
    return all;
}

void expect_in_file(const std::set<std::string>& ids, const char* file) {
    const std::string text = read_file(file, file, 1 << 26);
    for (const std::string& id : ids) {
        EXPECT_EQ(id.size(), 22U);
        EXPECT_NE(text.find("'" + id + "'"), std::string::npos) << id << " is not in " << file;
    }
}

std::string result_of(const Document& answer, const std::string& rule) {
    std::string result = "(none)";
    value_of(answer.root(), "rules").for_each_item([&](Node one) {
        if (value_of(one, "id").text() == rule) result = value_of(one, "result").text();
    });
    return result;
}

/// Whether every rule that has been passed rests on something that was measured, and none on a joint that is drawn tight.
void expect_no_tight_pass(const Document& answer) {
    value_of(answer.root(), "rules").for_each_item([&](Node rule) {
        value_of(rule, "checked").for_each_item([&](Node one) {
            if (value_of(one, "result").text() != "pass" || value_of(rule, "unit").text() != "mm") return;
            EXPECT_GT(std::stod(std::string(value_of(one, "measured").text())), 0) << value_of(rule, "id").text();
        });
    });
}

TEST_F(AuditOfModels, NamesThePartsOfTheDuplexByTheirGlobalIds) {
    const Document answer = this->answer(std::string("audit ") + shell_word(duplex) + " --json");
    const std::set<std::string> ids = global_ids(answer);
    EXPECT_GT(ids.size(), 20U);
    expect_in_file(ids, duplex);
    expect_no_tight_pass(answer);
    for (const char* rule : {"window-jambs", "door-clearance"}) EXPECT_EQ(result_of(answer, rule), "unknown") << rule;
    value_of(answer.root(), "rules").for_each_item([&](Node rule) {
        EXPECT_NE(value_of(rule, "result").text(), "pass") << value_of(rule, "id").text() << ": it is drawn tight";
    });
}

/// Its file has no shape for the roof, so all of its air is outdoors: there is nothing to measure, and nothing passes.
TEST_F(AuditOfModels, OfABuildingWithoutARoofIsUnknown) {
    const Document answer = this->answer(std::string("audit ") + shell_word(building) + " --json --bcf building.bcf");
    expect_in_file(global_ids(answer), building);
    std::size_t unknown = 0;
    value_of(answer.root(), "rules").for_each_item([&](Node rule) {
        const std::string result(value_of(rule, "result").text());
        EXPECT_TRUE(result == "unknown" || result == "not-applicable") << value_of(rule, "id").text();
        unknown += result == "unknown" ? 1 : 0;
    });
    EXPECT_GT(unknown, 70U);
    EXPECT_EQ(value_of(answer.root(), "findings").size(), 0U);
    EXPECT_TRUE(std::filesystem::exists(folder.path() / "building.bcf")) << "a file without topics";
}

/// Writes a width into the first line of a joint between parts that name both words; the joint's id.
std::string measure(std::string& text, const std::string& one, const std::string& other, const std::string& width) {
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find('\n', begin), text.size());
        std::string line = text.substr(begin, end - begin);
        const std::size_t tight = line.find("width: 0 mm"), how = line.find("how: modeled");
        if (line.starts_with("  - {id: joint-") && line.find(one) != std::string::npos && line.find(other) != std::string::npos &&
            line.find("outdoors") != std::string::npos && tight != std::string::npos && how != std::string::npos) {
            line.replace(how, 12, "how: measured, plus_minus: 0.2 mm");
            line.replace(tight, 11, "width: " + width);
            text.replace(begin, end - begin, line);
            const std::size_t id = line.find("joint-");
            return line.substr(id, line.find(',') - id);
        }
        begin = end + 1;
    }
    ADD_FAILURE() << "no joint between " << one << " and " << other;
    return "";
}

TEST_F(AuditOfModels, FindsWhatASurveyOverTheDuplexMeasured) {
    ASSERT_EQ(run(std::string("find ") + shell_word(duplex) + " -o job.yaml").exit_code, 0);
    std::string text = read("job.yaml");
    const std::string threshold = measure(text, "M_Single-Flush:1250mm", "Foundation", "12 mm");
    const std::string roof = measure(text, "Basic Roof", "Exterior - Brick", "1.2 mm");
    const std::string window = measure(text, "M_Fixed:4835mm", "Exterior", "0.4 mm");
    text += "pests: [bark-scorpion]\n";
    folder.write("survey.yaml", text);
    const Document answer = this->answer("audit survey.yaml --json --bcf survey.bcf");
    for (const char* rule : {"door-clearance", "window-jambs", "door-rule-of-thumb"})
        EXPECT_EQ(result_of(answer, rule), "fail") << rule;
    std::set<std::string> gaps;
    std::size_t with_parts = 0;
    value_of(answer.root(), "findings").for_each_item([&](Node one) {
        gaps.emplace(value_of(one, "gap").text());
        const Node global_ids = value_of(one, "global_ids");
        with_parts += global_ids.present() && global_ids.size() > 0 ? 1 : 0;
    });
    for (const std::string& gap : {threshold, window}) EXPECT_TRUE(gaps.contains(gap)) << gap;
    EXPECT_EQ(result_of(answer, "sill-joint"), "unknown") << roof << " is a roof on its wall";
    EXPECT_EQ(with_parts, value_of(answer.root(), "findings").size()) << "a finding without parts";
    expect_in_file(global_ids(answer), duplex);
    const Ran listing = run_shell("cd " + shell_word(folder.path().string()) + " && unzip -p survey.bcf '*.bcfv'");
    EXPECT_EQ(listing.exit_code, 0) << "unzip";
    std::size_t selected = 0;
    for (const std::string& id : global_ids(answer)) selected += listing.out.find("\"" + id + "\"") != std::string::npos ? 1 : 0;
    EXPECT_GT(selected, 3U) << "the topics select their parts";
}

TEST_F(AuditOfModels, WritesNothingWhenSomethingIsWrong) {
    folder.write("rules.yaml", "catalog: provisions\nedition: 2026-01-01\nsources: []\nprovisions: [{id: x}]\n");
    const std::string demo = shell_word(SEAMWARD_SOURCE_FOLDER "/scenarios/demo.yaml");
    for (const std::string wrong : {" --rules rules.yaml", " --compare none.yaml", " --rules none.yaml"}) {
        const Ran ran = run("audit " + demo + wrong + " --bcf out.bcf --json");
        EXPECT_EQ(ran.exit_code, 1) << wrong;
        const Document document = parse_json(ran.out, "errors");
        EXPECT_GT(value_of(document.root(), "errors").size(), 0U) << ran.out;
        EXPECT_FALSE(std::filesystem::exists(folder.path() / "out.bcf")) << wrong;
    }
    EXPECT_EQ(run("audit " + demo + " --bcf nowhere/out.bcf").exit_code, 1);
    EXPECT_EQ(run("audit " + demo + " --bcf out.zip").exit_code, 2);
    EXPECT_EQ(run("audit " + demo + " --room x=1,2,3 --bcf out.bcf").exit_code, 2) << "that is of models";
    EXPECT_FALSE(std::filesystem::exists(folder.path() / "out.bcf"));
}

}  // namespace
}  // namespace seamward::test
