// SPDX-License-Identifier: GPL-3.0-or-later
// `seamward find` as a whole: what it answers, what it writes, what it leaves alone. Single faults: command_cases.cmake.
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <filesystem>

#include "base/document.h"
#include "job_file/job.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

/// Boxes as an OBJ file in meters, z up.
class BoxFile {
public:
    void add(const std::string& name, const Point& low, const Point& high) {
        text_ += "o " + name + '\n';
        for (int i = 0; i < 8; ++i) {
            const double x = (i & 1) != 0 ? high.x : low.x, y = (i & 2) != 0 ? high.y : low.y, z = (i & 4) != 0 ? high.z : low.z;
            text_ += "v " + std::to_string(x) + ' ' + std::to_string(y) + ' ' + std::to_string(z) + '\n';
        }
        for (const auto& face : {"1 3 4 2", "5 6 8 7", "1 2 6 5", "3 7 8 4", "1 5 7 3", "2 4 8 6"}) {
            text_ += 'f';
            for (const char* c = face; *c != '\0'; ++c) text_ += *c == ' ' ? "" : ' ' + std::to_string(first_ + (*c - '1'));
            text_ += '\n';
        }
        first_ += 8;
    }
    [[nodiscard]] const std::string& text() const { return text_; }

private:
    std::string text_;
    int first_ = 1;
};

/// A room of 3 m by 3 m by 2.5 m; its south wall stands 4 mm above the floor.
std::string room(const std::string& floor = "floor", const std::string& wall = "south") {
    BoxFile file;
    file.add(floor, {-0.1, -0.1, -0.1}, {3.1, 3.1, 0});
    file.add("ceiling", {-0.1, -0.1, 2.5}, {3.1, 3.1, 2.6});
    file.add(wall, {0, -0.1, 0.004}, {3, 0, 2.5});
    file.add("north", {0, 3, 0}, {3, 3.1, 2.5});
    file.add("west", {-0.1, -0.1, 0}, {0, 3.1, 2.5});
    file.add("east", {3, -0.1, 0}, {3.1, 3.1, 2.5});
    return file.text();
}

class Find : public testing::Test {
protected:
    Find() { folder_.write("room.obj", room()); }

    [[nodiscard]] Ran run(const std::string& arguments) const {
        return run_shell("cd " + shell_word(folder_.path().string()) + " && " SEAMWARD_PROGRAM " " + arguments);
    }
    [[nodiscard]] fs::path path(const std::string& name) const { return folder_.path() / name; }
    [[nodiscard]] const ScratchFolder& folder() const { return folder_; }

private:
    ScratchFolder folder_;
};

const std::string in_room = "find room.obj --unit m --up z ";

double number(Node node) { return std::strtod(std::string(node.text()).c_str(), nullptr); }

TEST_F(Find, AnswersInJson) {
    const Ran ran = run(in_room + "--room den=1.5,1.5,1 --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const Document answer = parse_json(ran.out, "answer");
    const Node spaces = value_of(answer.root(), "spaces"), gaps = value_of(answer.root(), "gaps");
    ASSERT_EQ(spaces.size(), 2U) << ran.out;
    EXPECT_EQ(value_of(item_of(spaces, 0), "id").text(), "outdoors");
    EXPECT_TRUE(value_of(item_of(spaces, 0), "volume_m3").is_null());
    EXPECT_EQ(value_of(item_of(spaces, 1), "id").text(), "den");
    EXPECT_EQ(value_of(item_of(spaces, 1), "kind").text(), "living");
    EXPECT_NEAR(number(value_of(item_of(spaces, 1), "volume_m3")), 22.5, 0.5);
    ASSERT_EQ(gaps.size(), 1U) << ran.out;
    const Node gap = item_of(gaps, 0);
    EXPECT_EQ(document_text(value_of(gap, "between")), "['outdoors', 'den']");
    EXPECT_EQ(value_of(gap, "shape").text(), "slot");
    EXPECT_NEAR(number(value_of(gap, "width_mm")), 4, 0.05);
    const Node bounds = value_of(gap, "width_bounds_mm");
    EXPECT_EQ(item_of(bounds, 0).text(), value_of(gap, "width_mm").text());
    EXPECT_GE(number(item_of(bounds, 1)), number(item_of(bounds, 0)));
    EXPECT_NEAR(number(value_of(gap, "length_m")), 3, 0.05);
    EXPECT_GE(value_of(gap, "through").size(), 2U);
    EXPECT_EQ(value_of(gap, "at").size(), 3U);
    const std::string parts = document_text(value_of(gap, "parts"));
    EXPECT_TRUE(parts == "['floor', 'south']" || parts == "['south', 'floor']") << parts;
    const Node joints = value_of(answer.root(), "joints");
    ASSERT_EQ(joints.size(), 11U) << ran.out;  // twelve edges of the room, one of which is the gap
    for (std::size_t i = 0; i < joints.size(); ++i) {
        const Node joint = item_of(joints, i);
        EXPECT_EQ(value_of(joint, "id").text(), "joint-" + std::to_string(i + 1));
        EXPECT_EQ(document_text(value_of(joint, "between")), "['outdoors', 'den']");
        EXPECT_GE(number(value_of(joint, "length_m")), 2.49);
        EXPECT_NEAR(number(value_of(joint, "depth_mm")), 100, 5);
        EXPECT_EQ(value_of(joint, "at").size(), 3U);
        EXPECT_EQ(value_of(joint, "parts").size(), 2U);
        EXPECT_GE(value_of(joint, "along").size(), 2U);
    }
    EXPECT_EQ(value_of(item_of(value_of(answer.root(), "paths"), 0), "pinch_mm").text(), value_of(gap, "width_mm").text());
    ASSERT_EQ(value_of(answer.root(), "parts").size(), 6U);
    const Node part = item_of(value_of(answer.root(), "parts"), 0);
    EXPECT_EQ(value_of(part, "id").text(), "floor");
    EXPECT_EQ(value_of(part, "closed").text(), "true");
    EXPECT_TRUE(value_of(part, "class").is_null());
    for (const char* list : {"lost", "notes"}) EXPECT_TRUE(value_of(answer.root(), list).is_sequence()) << list;
}

TEST_F(Find, AnswersForPeople) {
    const Ran ran = run(in_room + "--smallest '1/64 in'");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    for (const char* said :
         {"room\n6 parts, 2 spaces, 1 gap, 11 joints.", "room-1", "joint-1 ", "Joints where parts touch", "living, ", " ft3 (",
          "gap-1", "5/32 in", " mm", "outdoors | room-1", "floor", "south", "Ways in", "between "})
        EXPECT_NE(ran.out.find(said), std::string::npos) << said << '\n' << ran.out;
}

TEST_F(Find, NarrowerThanTheSmallestIsShut) {
    const Ran ran = run(in_room + "--smallest '4.5 mm' --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_EQ(value_of(parse_json(ran.out, "answer").root(), "gaps").size(), 0U) << ran.out;
}

/// The job file says what the answer says, and traces the same.
TEST_F(Find, WritesAJobThatTracesTheSame) {
    fs::create_directory(path("jobs"));
    const Ran ran = run(in_room + "--room 'the \"den\": #1:living=1.5,1.5,1' -o jobs/job.yaml --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const Job job = read_job(path("jobs/job.yaml"), RunContext());
    EXPECT_EQ(job.name, "room");
    ASSERT_TRUE(job.model.has_value());
    EXPECT_EQ(job.model->file, "../room.obj");
    EXPECT_EQ(job.model->unit, ModelUnit::m);
    EXPECT_EQ(job.model->up, UpAxis::z);
    ASSERT_EQ(job.survey.gaps.size(), 12U);
    EXPECT_EQ(job.survey.gaps[0].evidence.how, Evidence::How::modeled);
    EXPECT_EQ(job.survey.spaces[1].id, "the \"den\": #1");
    const Ran traced = run("trace jobs/job.yaml --json");
    ASSERT_EQ(traced.exit_code, 0) << traced.err;
    const Document found = parse_json(ran.out, "find"), read = parse_json(traced.out, "trace");
    EXPECT_EQ(document_text(value_of(found.root(), "paths")), document_text(value_of(read.root(), "paths")));
    EXPECT_EQ(value_of(found.root(), "paths").size(), 1U);
}

/// A joint is shut as drawn. What was measured there takes the place of the 0 in its line, and is a gap like any other.
TEST_F(Find, JointsTakeWhatWasMeasured) {
    ASSERT_EQ(run(in_room + "--smallest '5 mm' --room den=1.5,1.5,1 -o job.yaml").exit_code, 0);
    std::string text = read_file(path("job.yaml"), "", 1 << 20);
    EXPECT_EQ(value_of(parse_json(run("trace job.yaml --json").out, "trace").root(), "paths").size(), 0U);
    const std::size_t line = text.find("  - {id: joint-3, "), width = text.find("width: 0 mm", line),
                      how = text.find("modeled}", line);
    ASSERT_TRUE(line < width && width < how && how < text.find('\n', line)) << text;
    text.replace(how, 8, "measured, plus_minus: 0.2 mm}").replace(width, 11, "width: 1.2 mm");
    folder().write("job.yaml", text);
    const Ran traced = run("trace job.yaml --json");
    const Node paths = value_of(parse_json(traced.out, "trace").root(), "paths");
    ASSERT_EQ(paths.size(), 1U) << traced.out << traced.err;
    EXPECT_EQ(value_of(item_of(paths, 0), "pinch_gap").text(), "joint-3");
    const Ran table = run("trace job.yaml");
    EXPECT_NE(table.out.find("1 gap and 10 joints drawn shut"), std::string::npos) << table.out;
    EXPECT_NE(table.out.find("10 joints of the model count as tight"), std::string::npos) << table.out;
    const Ran planned = run("plan job.yaml --against bark-scorpion-young --json");
    ASSERT_EQ(planned.exit_code, 0) << planned.err;
    const Document plan = parse_json(planned.out, "plan");
    ASSERT_EQ(value_of(plan.root(), "steps").size(), 1U) << planned.out;
    EXPECT_EQ(value_of(item_of(value_of(plan.root(), "steps"), 0), "gap").text(), "joint-3");
}

/// Whatever folders and files are links, the job file finds its model.
TEST_F(Find, LinksLeadToTheModel) {
    fs::create_directories(path("far/away/jobs"));
    fs::create_directory_symlink("far/away/jobs", path("jobs"));
    folder().write("hash", room());
    fs::create_symlink("hash", path("link.obj"));
    const Ran ran = run("find link.obj --unit m --up z -o jobs/job.yaml");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    for (const char* job : {"jobs/job.yaml", "far/away/jobs/job.yaml"}) {
        const Ran traced = run(std::string("trace ") + job);
        EXPECT_EQ(traced.exit_code, 0) << job << traced.err;
    }
}

/// The same with many gaps, from one of our own exports.
TEST_F(Find, ClosesTheLoopOnAnExportedHouse) {
    const Ran exported = run("export " + shell_word(SEAMWARD_SOURCE_FOLDER "/scenarios/wall-corner.yaml") + " -o mock-up.glb");
    ASSERT_EQ(exported.exit_code, 0) << exported.err;
    const Ran ran = run("find mock-up.glb --room kitchen=1,1.5,1.2 --room bath=3,1.5,1.2 -o job.yaml --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const Document found = parse_json(ran.out, "find");
    EXPECT_GE(value_of(found.root(), "spaces").size(), 5U);
    EXPECT_GE(value_of(found.root(), "gaps").size(), 20U);
    EXPECT_EQ(value_of(found.root(), "paths").size(), 10U);
    const Ran traced = run("trace job.yaml --json");
    ASSERT_EQ(traced.exit_code, 0) << traced.err;
    const Document read = parse_json(traced.out, "trace");
    EXPECT_EQ(document_text(value_of(found.root(), "paths")), document_text(value_of(read.root(), "paths")));
}

TEST_F(Find, EveryNameNeedsASpaceOfItsOwn) {
    const Ran ran = run(in_room + "--room den=1.5,1.5,1 --room nook=1,1,1 -o job.yaml");
    EXPECT_EQ(ran.exit_code, 1) << ran.out;
    EXPECT_NE(ran.err.find("in the same air as another room"), std::string::npos) << ran.err;
    EXPECT_EQ(run(in_room + "--room den=90,90,900 -o job.yaml").exit_code, 1);
    EXPECT_FALSE(fs::exists(path("job.yaml")));
}

/// The model of the job is drawn; it is no house to be exported or cut open.
TEST_F(Find, ItsJobCanBeDrawn) {
    ASSERT_EQ(run(in_room + "-o job.yaml").exit_code, 0);
    const Ran drawn = run("picture job.yaml -o room.png --size 640x480");
    const bool draws_none = drawn.err.find("without pictures") != std::string::npos;
    EXPECT_TRUE(drawn.exit_code == 0 || draws_none) << drawn.err;
    EXPECT_EQ(fs::exists(path("room.png")), !draws_none);
    const Ran close = run("picture job.yaml -o gap.png --gap gap-1");
    EXPECT_EQ(close.exit_code, 2) << close.err;
    const Ran exported = run("export job.yaml -o room.glb");
    EXPECT_EQ(exported.exit_code, 1);
    EXPECT_NE(exported.err.find("room.obj"), std::string::npos) << exported.err;
    EXPECT_FALSE(fs::exists(path("gap.png")) || fs::exists(path("room.glb")));
    folder().write("room.obj", "v 0 0 zero\n");
    EXPECT_EQ(run("picture job.yaml -o broken.png").exit_code, draws_none ? 2 : 1);
}

TEST_F(Find, NamesOfPartsDoNoHarm) {
    folder().write("room.obj", room("a\": [b], {c}: #d 'e' \\n \xE2\x80\xA8 \x01\x1b[31m - \xFF &x *y", "%TAG ? | > é 北"));
    const Ran ran = run(in_room + "-o job.yaml --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const Document found = parse_json(ran.out, "find");
    const Job job = read_job(path("job.yaml"), RunContext());
    ASSERT_EQ(job.survey.gaps.size(), 12U);
    EXPECT_EQ(job.survey.gaps[0].name, value_of(item_of(value_of(found.root(), "gaps"), 0), "name").text());
    const Ran table = run(in_room);
    EXPECT_EQ(table.exit_code, 0);
    EXPECT_EQ(table.out.find('\x1b'), std::string::npos);
}

TEST_F(Find, LeavesNothingWhereItFails) {
    const std::string before = read_file(path("room.obj"), "", 1 << 20);
    fs::create_symlink("room.obj", path("link.yaml"));
    EXPECT_EQ(run(in_room + "-o room.obj").exit_code, 2);
    const Ran itself = run(in_room + "-o link.yaml");
    EXPECT_EQ(itself.exit_code, 2);
    EXPECT_NE(itself.err.find("is the model itself"), std::string::npos) << itself.err;
    fs::remove(path("link.yaml"));
    const Ran in_a_wall = run(in_room + "--room den=1.5,-0.05,1 -o job.yaml --json");
    EXPECT_EQ(in_a_wall.exit_code, 1);
    EXPECT_NE(in_a_wall.err.find("--room den"), std::string::npos) << in_a_wall.err;
    EXPECT_TRUE(value_of(parse_json(in_a_wall.out, "answer").root(), "errors").present());
    folder().write("broken.obj", "v 0 0 zero\n");
    EXPECT_EQ(run("find broken.obj -o job.yaml").exit_code, 1);
    EXPECT_EQ(read_file(path("room.obj"), "", 1 << 20), before);
    EXPECT_FALSE(fs::exists(path("job.yaml")));
}

/// A job file that was there stays as it was when the new one cannot be made.
TEST_F(Find, ReplacesAJobFileWholeOrNotAtAll) {
    folder().write("job.yaml", "old");
    EXPECT_EQ(run(in_room + "--room den=90,90,900 --room hut=1.5,-0.05,1 -o job.yaml").exit_code, 1);
    EXPECT_EQ(read_file(path("job.yaml"), "", 1 << 20), "old");
    EXPECT_EQ(run(in_room + "-o job.yaml").exit_code, 0);
    EXPECT_NE(read_file(path("job.yaml"), "", 1 << 20).find("seamward: 1"), std::string::npos);
}

/// Stopped while it works: ended by the signal, nothing written.
/// What somebody typed into a job file is nowhere else.
TEST_F(Find, DoesNotWriteOverASurvey) {
    ASSERT_EQ(run(in_room + "-o job.yaml").exit_code, 0);
    ASSERT_EQ(run(in_room + "--smallest '1 mm' -o job.yaml").exit_code, 0) << "its own answer may go";
    const std::string found = read_file(path("job.yaml"), "", 1 << 20);
    std::string measured = found;
    const std::size_t how = measured.rfind("how: modeled");
    ASSERT_NE(how, std::string::npos);
    measured.replace(how, 12, "how: measured, plus_minus: 0.2 mm");
    std::string slip = measured;
    slip.replace(slip.find("seamward: 1"), 11, "seamward: one");
    for (const std::string& surveyed : {measured, found + "pests: [house-mouse]\n", slip}) {
        folder().write("job.yaml", surveyed);
        const Ran ran = run(in_room + "-o job.yaml");
        EXPECT_EQ(ran.exit_code, 1) << ran.out;
        EXPECT_NE(ran.err.find("has a survey in it"), std::string::npos) << ran.err;
        EXPECT_EQ(read_file(path("job.yaml"), "", 1 << 20), surveyed);
    }
}

/// A slab under the open sky is no tight house.
TEST_F(Find, SaysThatThereIsNoRoom) {
    BoxFile file;
    file.add("slab", {0, 0, 0}, {3, 4, 0.1});
    folder().write("slab.obj", file.text());
    const Ran ran = run("find slab.obj --unit m --up z -o job.yaml");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    std::string line = ran.out;
    std::replace(line.begin(), line.end(), '\n', ' ');
    for (const char* said : {"The model is 3.00 x 4.00 x 0.10 m", "No air is shut off from the open air", "--unit", "--room"})
        EXPECT_NE(line.find(said), std::string::npos) << said << '\n' << ran.out;
    const Ran planned = run("plan job.yaml --against house-mouse");
    EXPECT_EQ(planned.exit_code, 0) << planned.err;
    EXPECT_EQ(planned.out.find("nothing to do"), std::string::npos) << planned.out;
    EXPECT_NE(planned.out.find("no living space"), std::string::npos) << planned.out;
}

/// Ways in begin in a porch behind screens as well.
TEST_F(Find, AirOfTheOpenMayBeNamed) {
    const Ran ran = run(in_room + "--room porch:outdoors=1.5,1.5,1 --json");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const Node spaces = value_of(parse_json(ran.out, "find").root(), "spaces");
    ASSERT_EQ(spaces.size(), 2U);
    EXPECT_EQ(value_of(item_of(spaces, 1), "id").text(), "porch");
    EXPECT_EQ(value_of(item_of(spaces, 1), "kind").text(), "outdoors");
    EXPECT_EQ(run(in_room + "--room yard:outdoors=-5,1.5,1").exit_code, 0) << "it is outdoors anyway";
}

TEST_F(Find, StopsWhenInterrupted) {
    const Ran exported = run("export " + shell_word(SEAMWARD_SOURCE_FOLDER "/scenarios/apartments.yaml") + " -o house.glb");
    ASSERT_EQ(exported.exit_code, 0) << exported.err;
    // Once it tells what it does, it is in the middle of it.
    const std::string said = shell_word(path("said").string());
    const Ran ran = run("find house.glb -o job.yaml 2>" + said + " & find=$!; until [ -s " + said +
                        " ] || ! kill -0 $find; do sleep 0.02; done; kill -TERM $find; wait $find; code=$?; cat " + said +
                        " >&2; exit $code");
    EXPECT_EQ(ran.exit_code, 128 + SIGTERM) << ran.out << ran.err;
    EXPECT_NE(ran.err.find("stopped; nothing was written"), std::string::npos) << ran.err;
    EXPECT_FALSE(fs::exists(path("job.yaml")));
}

}  // namespace
}  // namespace seamward::test
