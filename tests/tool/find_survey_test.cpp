// SPDX-License-Identifier: GPL-3.0-or-later
// A survey laid over what was found in a real model: measured joints enter the ways in, the plan and the picture. What was
// measured is invented.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <set>

#include "base/document.h"
#include "job_file/job.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

constexpr const char* duplex = SEAMWARD_SOURCE_FOLDER "/tests/models/Duplex_A_20110907.ifc";

/// The text of a job file, changed as somebody at the house would.
class SurveyedJob {
public:
    explicit SurveyedJob(std::string text) : text_(std::move(text)) {}

    /// Writes a width into the first line of a joint between two spaces that names both words and is shut; the joint's id.
    std::string measure(const std::string& one, const std::string& other, const std::string& between, const std::string& width) {
        for (std::size_t begin = 0; begin < text_.size();) {
            const std::size_t end = std::min(text_.find('\n', begin), text_.size());
            std::string line = text_.substr(begin, end - begin);
            if (line.starts_with("  - {id: joint-") && has(line, one) && has(line, other) &&
                has(line, "between: [" + between + "]") && replace(line, "width: 0 mm", "width: " + width)) {
                EXPECT_TRUE(replace(line, "how: modeled", "how: measured, plus_minus: 0.2 mm")) << line;
                text_.replace(begin, end - begin, line);
                const std::size_t id = line.find("joint-");
                return line.substr(id, line.find(',') - id);
            }
            begin = end + 1;
        }
        ADD_FAILURE() << "no joint between " << one << " and " << other << ", " << between;
        return "";
    }

    void add(const std::string& line) { text_ += line + '\n'; }
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    static bool has(const std::string& line, const std::string& what) { return line.find(what) != std::string::npos; }
    static bool replace(std::string& line, const std::string& what, const std::string& by) {
        const std::size_t at = line.find(what);
        if (at != std::string::npos) line.replace(at, what.size(), by);
        return at != std::string::npos;
    }

    std::string text_;
};

std::set<std::string> texts_of(Node items, const char* key) {
    std::set<std::string> texts;
    for (std::size_t i = 0; i < items.size(); ++i) texts.emplace(value_of(item_of(items, i), key).text());
    return texts;
}

class FindSurvey : public testing::Test {
protected:
    [[nodiscard]] Ran run(const std::string& arguments) const {
        return run_shell("cd " + shell_word(folder_.path().string()) + " && " SEAMWARD_PROGRAM " " + arguments);
    }
    /// The answer of a command that must do.
    [[nodiscard]] Document answer(const std::string& arguments) const {
        const Ran ran = run(arguments);
        EXPECT_EQ(ran.exit_code, 0) << arguments << ran.err;
        return parse_json(ran.out, arguments);
    }
    [[nodiscard]] std::string read(const std::string& name) const { return read_file(folder_.path() / name, name, 1 << 24); }
    [[nodiscard]] const ScratchFolder& folder() const { return folder_; }

private:
    ScratchFolder folder_;
};

TEST_F(FindSurvey, MeasuredJointsOfTheDuplexAreWaysInUntilTheyAreClosed) {
    const Ran found = run(std::string("find ") + shell_word(duplex) + " -o job.yaml");
    ASSERT_EQ(found.exit_code, 0) << found.err;
    EXPECT_EQ(value_of(answer("trace job.yaml --json").root(), "paths").size(), 0U) << "the model is drawn tight";

    SurveyedJob job(read("job.yaml"));
    const std::string threshold = job.measure("M_Single-Flush:1250mm", "Foundation", "outdoors, room-1", "6 mm"),
                      frame = job.measure("M_Single-Flush:1250mm", "Exterior", "outdoors, room-1", "1.5 mm"),
                      window = job.measure("M_Fixed:4835mm", "Exterior", "outdoors, room-2", "0.4 mm"),
                      sill = job.measure("Foundation", "Exterior - Brick", "outdoors, room-2", "1.2 mm"),
                      skylight = job.measure("M_Skylight", "Basic Roof", "outdoors, room-2", "2.5 mm"),
                      party_wall = job.measure("Party Wall", "Finish Floor", "room-4, space-1", "0.8 mm");  // above a ceiling
    job.add("pests: [bark-scorpion, bark-scorpion-young]");
    folder().write("survey.yaml", job.text());

    const Document traced = answer("trace survey.yaml --json");
    const Node paths = value_of(traced.root(), "paths");
    EXPECT_EQ(texts_of(paths, "pinch_gap"), (std::set{threshold, frame, window, sill, skylight})) << party_wall;
    const Node best = item_of(paths, 0);
    EXPECT_EQ(document_text(value_of(best, "gaps")), "['" + threshold + "']");
    EXPECT_EQ(value_of(best, "from").text(), "outdoors");
    EXPECT_EQ(value_of(best, "pinch_mm").text(), "6.0");

    const Document planned = answer("plan survey.yaml --json");
    EXPECT_EQ(value_of(planned.root(), "feasible").text(), "true");
    const Node steps = value_of(planned.root(), "steps");
    EXPECT_EQ(texts_of(steps, "gap"), (std::set{threshold, frame, sill, skylight}));  // a young scorpion needs more than 0.6 mm
    std::string closed;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const Node step = item_of(steps, i);
        closed += (closed.empty() ? "" : ", ") + ("{gap: " + std::string(value_of(step, "gap").text()) +
                                                  ", with: " + std::string(value_of(step, "treatment").text()) + "}");
    }
    job.add("closed: [" + closed + "]");
    folder().write("done.yaml", job.text());
    const Document after = answer("trace done.yaml --pest bark-scorpion-young --json");
    EXPECT_EQ(value_of(after.root(), "paths").size(), 0U) << closed;
}

/// The other joints of the model are no closed gaps: nobody closed them.
TEST_F(FindSurvey, MeasuredJointsAreDrawn) {
    ASSERT_EQ(run(std::string("find ") + shell_word(duplex) + " -o job.yaml").exit_code, 0);
    SurveyedJob job(read("job.yaml"));
    (void)job.measure("M_Fixed:4835mm", "Exterior", "outdoors, room-2", "0.6 mm");
    folder().write("survey.yaml", job.text());
    const Job read_back = read_job(folder().path() / "survey.yaml", RunContext());
    ASSERT_EQ(read_back.house.places.size(), read_back.survey.gaps.size());
    for (const GapPlace& place : read_back.house.places) EXPECT_GE(place.through.size(), 2U) << place.gap.value;
    const Ran drawn = run("picture survey.yaml -o window.png --size 800x600");
    const bool draws_none = drawn.err.find("without pictures") != std::string::npos;
    EXPECT_TRUE(drawn.exit_code == 0 || draws_none) << drawn.err;
    EXPECT_EQ(std::filesystem::exists(folder().path() / "window.png"), !draws_none);
}

/// A bead of sealant would glue the door shut.
TEST_F(FindSurvey, AGapWithinADoorGetsAGasket) {
    const std::string tall = SEAMWARD_SOURCE_FOLDER "/tests/models/bimwhale_TallBuilding.ifc";
    ASSERT_EQ(run("find " + shell_word(tall) + " -o job.yaml").exit_code, 0);
    EXPECT_EQ(run("find " + shell_word(tall) + " -o job.yaml").exit_code, 0) << "nobody has surveyed it";
    const Job job = read_job(folder().path() / "job.yaml", RunContext());
    ASSERT_FALSE(job.survey.gaps.empty());
    EXPECT_EQ(job.survey.gaps[0].duty, Duty::operable);
    EXPECT_EQ(job.survey.gaps[1].duty, Duty::none) << "a joint";
    const Document planned = answer("plan job.yaml --against bark-scorpion-young --json");
    const Node steps = value_of(planned.root(), "steps");
    ASSERT_EQ(steps.size(), 1U);
    EXPECT_EQ(value_of(item_of(steps, 0), "treatment").text(), "gasket");
}

}  // namespace
}  // namespace seamward::test
