// SPDX-License-Identifier: GPL-3.0-or-later
// Jobs on a described house: its spaces and gaps, and what the job says anew of them.
#include <gtest/gtest.h>

#include <sstream>

#include "job_file/job.h"
#include "tests/support/cottage.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/gap_ruler.h"
#include "tests/support/marked_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

const std::string head = "seamward: 1\nhouse: house.yaml\n";

/// A job beside `house.yaml`, as it is read from the disk.
class HouseJob : public testing::Test {
protected:
    Job read(const std::string& rest, Make make = Make::survey) const {
        return read_job(folder_.write("job.yaml", head + rest), RunContext(), make);
    }

    std::vector<Diagnostic> faults(const std::string& text) const {
        const std::string path = folder_.write("job.yaml", text).string();
        std::vector<Diagnostic> found = faults_of([&] { (void)read_job(path, RunContext()); });
        const std::string folder = folder_.path().string() + "/";
        for (Diagnostic& fault : found) {
            for (std::string* part : {&fault.file, &fault.what}) {
                const std::size_t at = part->find(folder);
                if (at != std::string::npos) part->erase(at, folder.size());
            }
        }
        return found;
    }

    /// A job with one fault, at its caret, after the two lines that name the house.
    void expect_fault(const std::string& marked_text, std::string_view what, std::string_view mend) const {
        const MarkedText marked(head + marked_text);
        EXPECT_TRUE(only_fault(faults(marked.text), marked.places.at(0), what, mend)) << marked_text;
    }

    /// The house as it stands without any job.
    static House built(Make make = Make::survey) {
        return build_house(parse_house_yaml(cottage, "house.yaml"), {}, make, RunContext());
    }

    static std::size_t position(const Survey& survey, const std::string& id) {
        for (std::size_t i = 0; i < survey.gaps.size(); ++i) {
            if (survey.gaps[i].id == id) return i;
        }
        throw std::out_of_range("no gap " + id);
    }
    static const Gap& gap(const Survey& survey, const std::string& id) { return survey.gaps[position(survey, id)]; }

    const ScratchFolder& folder() const { return folder_; }

private:
    void SetUp() override { folder_.write("house.yaml", cottage); }
    ScratchFolder folder_;
};

std::string told(const Shape& shape) {
    std::ostringstream text;
    text.precision(17);
    text << shape_word(shape) << ' ' << clear_width(shape);
    if (const auto* slot = std::get_if<Slot>(&shape)) text << " long " << slot->length;
    if (const auto* ring = std::get_if<Ring>(&shape)) text << " around " << ring->around;
    if (const auto* mesh = std::get_if<Mesh>(&shape)) text << " area " << mesh->area.value_or(-1);
    return text.str();
}

/// Every field of a gap but its place.
std::string told(const Gap& gap) {
    std::ostringstream text;
    text.precision(17);
    text << gap.id << ", " << gap.name << ", " << gap.between[0].value << '-' << gap.between[1].value << ", " << told(gap.shape)
         << ", covered " << (gap.covered ? told(gap.covered->shape) : "no") << ", count " << gap.count << ", duty "
         << duty_words(gap.duty) << ", depth " << gap.depth.value_or(-1) << ", of";
    for (const std::string& substrate : gap.substrates) text << ' ' << substrate;
    text << ", evidence " << static_cast<int>(gap.evidence.how) << ' ' << gap.evidence.plus_minus << ", cost "
         << (gap.closing.cost ? gap.closing.cost->cents : -1) << ", never " << gap.closing.never;
    return text.str();
}

void expect_same(const Survey& a, const Survey& b) {
    ASSERT_EQ(a.spaces.size(), b.spaces.size());
    ASSERT_EQ(a.gaps.size(), b.gaps.size());
    for (std::size_t i = 0; i < a.spaces.size(); ++i) EXPECT_EQ(a.spaces[i].id, b.spaces[i].id);
    for (std::size_t i = 0; i < a.gaps.size(); ++i) {
        EXPECT_EQ(told(a.gaps[i]), told(b.gaps[i]));
        ASSERT_EQ(a.gaps[i].at.has_value(), b.gaps[i].at.has_value()) << a.gaps[i].id;
        EXPECT_EQ(a.gaps[i].at ? distance(*a.gaps[i].at, *b.gaps[i].at) : 0, 0) << a.gaps[i].id;
    }
}

TEST_F(HouseJob, SpacesAndGapsOfTheHouseComeFirst) {
    const Job job = read(
        "spaces: [{id: duct, kind: cavity}]\n"
        "gaps: [{id: own, between: [duct, kitchen], hole: {diameter: 1 mm}}]\n");
    Survey house = built().survey;
    ASSERT_GE(house.gaps.size(), 5U);
    ASSERT_EQ(job.survey.spaces.size(), house.spaces.size() + 1);
    ASSERT_EQ(job.survey.gaps.size(), house.gaps.size() + 1);
    EXPECT_EQ(job.survey.spaces.back().id, "duct");
    EXPECT_EQ(job.survey.gaps.back().id, "own");
    EXPECT_EQ(job.survey[job.survey.gaps.back().between[1]].id, "kitchen");
    house.spaces.push_back(job.survey.spaces.back());
    house.gaps.push_back(job.survey.gaps.back());
    expect_same(job.survey, house);
}

TEST_F(HouseJob, IsCalledAsTheHouseUnlessItHasAName) {
    EXPECT_EQ(read("").name, "Cottage");
    EXPECT_EQ(read("job: {name: Second visit}\n").name, "Second visit");
}

TEST_F(HouseJob, IdsOfTheHouseAreTaken) {
    expect_fault("spaces: [^{id: kitchen, kind: living}]\n", "space id \"kitchen\" stands twice, first in the house",
                 "give each its own");
    expect_fault("gaps: [^{id: bibb, between: [yard, kitchen], hole: {diameter: 1 mm}}]\n",
                 "gap id \"bibb\" stands twice, first in the house", "give each its own");
}

TEST_F(HouseJob, AMeasurementChangesWhatItSaysAndNothingElse) {
    const Survey house = built().survey;
    const Job job = read(
        "gaps:\n"
        "  - {id: sweep, slot: {width: 2 mm}}\n"
        "  - {id: bibb, ring: {width: 5 mm}, evidence: {how: measured, plus_minus: 0.3 mm}}\n"
        "  - {id: screed-drain-holes, hole: {diameter: 4 mm}}\n"
        "  - {id: vents, mesh: {opening: 3 mm}}\n"
        "  - {id: hatch, evidence: {how: measured}, note: by hand}\n"
        "  - {id: screed-joint, duty: relief}\n"
        "  - {id: sink, closing: {cost: $12.50}}\n"
        "  - {id: screed-stucco-line, closing: {never: it drains}}\n");
    ASSERT_EQ(job.survey.gaps.size(), house.gaps.size());
    std::vector<Gap> expected = house.gaps;
    const auto change = [&](const std::string& id) -> Gap& { return expected[position(house, id)]; };
    std::get<Slot>(change("sweep").shape).width = 0.002;
    std::get<Ring>(change("bibb").shape).width = 0.005;
    change("bibb").evidence = {Evidence::How::measured, 0.0003};
    // A starting value of the catalog was assumed; what is typed in its place no longer is.
    change("screed-drain-holes").shape = Hole{0.004};
    change("screed-drain-holes").evidence.how = Evidence::How::unstated;
    std::get<Mesh>(change("vents").shape).opening = 0.003;
    change("vents").evidence.how = Evidence::How::unstated;
    change("hatch").evidence = {Evidence::How::measured, 0};
    change("screed-joint").duty = Duty::relief;
    change("sink").closing = {Money{1250}, ""};
    change("screed-stucco-line").closing = {std::nullopt, "it drains"};
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const Gap &found = job.survey.gaps[i], &due = expected[i];
        EXPECT_EQ(told(found), told(due));
        // The middle of an opening moves with its width.
        ASSERT_TRUE(found.at && due.at) << due.id;
        EXPECT_LT(distance(*found.at, *due.at), 0.01) << due.id;
    }
}

/// An entry that says nothing but an id is no fault, and no change.
TEST_F(HouseJob, AMeasurementMaySayNothing) { expect_same(read("gaps: [{id: bibb}]\n").survey, built().survey); }

TEST_F(HouseJob, FaultsOfMeasurements) {
    expect_fault("gaps: [{id: ^bib, ring: {width: 1 mm}}]\n", "unknown gap of the house \"bib\"", "did you mean bibb?");
    expect_fault("gaps: [^{id: bibb, slot: {width: 1 mm}}]\n", "gap \"bibb\" is a ring, not a slot", "measure it as what it is");
    expect_fault("gaps: [{id: bibb, ring: ^{width: 1 mm}, hole: {diameter: 1 mm}}]\n", "a gap has exactly one shape", "keep one");
    expect_fault("gaps: [{id: bibb}, ^{id: bibb, duty: drain}]\n", "gap \"bibb\" of the house is measured twice", "keep one");
    expect_fault("gaps: [^{duty: drain}]\n", "new measurement of a gap of the house has no id", "add id");
    expect_fault("gaps: [{id: bibb, ring: {width: 1 mm, ^around: 22 mm}}]\n", "unknown key \"around\" in ring", "known: width");
    expect_fault("gaps: [{id: bibb, ^count: 2}]\n", "unknown key \"count\" in new measurement of a gap of the house", "");
    expect_fault("gaps: [{id: bibb, ring: {width: ^1}}]\n", "width: a length needs a unit", "write 1 mm");
    expect_fault("gaps: [{id: bibb, duty: ^drains}]\n", "unknown duty \"drains\"", "did you mean drain?");
    expect_fault("gaps: [{id: bibb, evidence: {how: ^guessed}}]\n", "unknown how \"guessed\"", "assumed");
    expect_fault("gaps: [{id: bibb, closing: ^{}}]\n", "closing holds either a cost or the reason why never", "write {cost");
    expect_fault("gaps: [^bibb]\n", "gap must be a mapping, not text", "");
}

TEST_F(HouseJob, AllFaultsOfMeasurementsAtOnce) {
    const MarkedText marked(head + "gaps:\n  - {id: ^bib, duty: ^x}\n  - {id: sweep, slot: {width: ^1}}\n  - {^idd: sink}\n");
    const auto found = faults(marked.text);
    ASSERT_EQ(found.size(), 4U) << listing(found);
    for (std::size_t i = 0; i < found.size(); ++i) {
        EXPECT_EQ(found[i].place.line, marked.places[i].line) << listing(found);
        EXPECT_EQ(found[i].place.column, marked.places[i].column) << listing(found);
    }
}

TEST_F(HouseJob, WithoutAHouseEveryGapNeedsItsSpaces) {
    for (const char* start : {"seamward: 1\n", "seamward: 1\nhouse: ~\n", "seamward: 1\nhouse: ''\n"}) {
        const auto found = faults(std::string(start) + "gaps: [{id: bibb, ring: {width: 1 mm, around: 22 mm}}]\n");
        ASSERT_EQ(found.size(), 1U) << listing(found);
        EXPECT_NE(found.front().what.find("gap has no between"), std::string::npos) << listing(found);
    }
}

TEST_F(HouseJob, GapsOfTheHouseCanBeClosed) {
    const Job job =
        read("gaps: [{id: sweep, slot: {width: 7 mm}}]\nclosed: [{gap: bibb, with: bead}, {gap: sweep, with: sweep}]\n");
    ASSERT_EQ(job.closed.size(), 2U);
    EXPECT_EQ(job.closed[0].gap.value, position(job.survey, "bibb"));
    EXPECT_TRUE(is_shut(gap(job.survey, "bibb").shape));
    EXPECT_TRUE(is_shut(gap(job.survey, "sweep").shape));
    EXPECT_EQ(clear_width(job.closed[1].before), 0.007) << "as it was measured";
    expect_fault("closed: [{gap: ^bib}]\n", "unknown gap \"bib\"", "did you mean bibb?");
}

/// The survey is the same whether solids are made or not, and the solids are as wide as was measured.
TEST_F(HouseJob, SolidsHaveTheMeasuredWidths) {
    const std::string rest =
        "spaces: [{id: duct, kind: cavity}]\n"
        "gaps:\n"
        "  - {id: \" sweep \", slot: {width: 2 mm}}\n"
        "  - {id: bibb, ring: {width: 5 mm}}\n"
        "  - {id: screed-joint, slot: {width: 3/32 in}}\n"
        "  - {id: own, between: [duct, kitchen], hole: {diameter: 1 mm}}\n"
        "closed: [{gap: hatch}]\n";
    const Job survey = read(rest), solids = read(rest, Make::solids);
    EXPECT_TRUE(survey.house.parts.empty());
    ASSERT_FALSE(solids.house.parts.empty());
    expect_same(survey.survey, solids.survey);
    expect_same(solids.house.survey, solids.survey);
    ASSERT_EQ(solids.house.places.size(), solids.survey.gaps.size());
    ASSERT_EQ(solids.house.middles.size(), solids.survey.spaces.size());
    const GapRuler ruler(solids.house.parts);
    for (const char* id : {"sweep", "bibb", "screed-joint", "sink"}) {
        const auto index = static_cast<std::uint32_t>(position(solids.survey, id));
        EXPECT_NEAR(ruler.width_of({index}).smallest, clear_width(solids.survey.gaps[index].shape), 2e-6) << id;
        EXPECT_GE(solids.house.places[index].through.size(), 2U) << id;
        EXPECT_EQ(solids.house.places[index].gap.value, index) << id;
    }
    EXPECT_EQ(clear_width(gap(solids.survey, "sweep").shape), 0.002);
    EXPECT_EQ(clear_width(gap(solids.survey, "screed-joint").shape), 0.00238125);
    EXPECT_TRUE(solids.house.places.back().through.empty()) << "added by hand";
}

/// Widths that do not fit are the house's faults, told with the job's name.
TEST_F(HouseJob, AMeasuredWidthHasToFit) {
    const auto found = faults(head + "gaps: [{id: screed-drain-holes, hole: {diameter: 80 mm}}]\n");
    ASSERT_EQ(found.size(), 1U) << listing(found);
    EXPECT_EQ(found.front().file, "house.yaml");
    EXPECT_EQ(found.front().place.line, 18U);
    EXPECT_NE(found.front().what.find("no room behind the stucco"), std::string::npos) << listing(found);
    EXPECT_NE(found.front().what.find("(in the house of job.yaml)"), std::string::npos) << listing(found);
}

TEST_F(HouseJob, FilesThatAreNoHouse) {
    const MarkedText missing("seamward: ^2\nhouse: ^huose.yaml\ngaps: [{id: bibb, ring: {width: 1 mm}}]\n");
    const auto found = faults(missing.text);
    ASSERT_EQ(found.size(), 2U) << listing(found);
    EXPECT_TRUE(has_fault(found, missing.places[0], "unknown format version", "seamward: 1"));
    EXPECT_TRUE(has_fault(found, missing.places[1], "no such file: huose.yaml", "from the folder of the job file"));
    folder().write("house.glb", "glTF");
    const MarkedText solid("seamward: 1\nhouse: ^house.glb\n");
    EXPECT_TRUE(only_fault(faults(solid.text), solid.places[0], "not 3D files: ", "run seamward find"));
    std::filesystem::create_directory(folder().path() / "folder.yaml");
    const auto folder_found = faults("seamward: 1\nhouse: folder.yaml\n");
    ASSERT_EQ(folder_found.size(), 1U) << listing(folder_found);
    EXPECT_EQ(folder_found.front().file, "folder.yaml");
    const MarkedText list("seamward: 1\nhouse: ^[house.yaml]\n");
    EXPECT_TRUE(only_fault(faults(list.text), list.places[0], "house holds a list where text is due", "write one value"));
}

/// Faults of the house are told with both names; the job is read once the house has none.
TEST_F(HouseJob, FaultsOfTheHouse) {
    const MarkedText house(cottage_with("height: 2.5 m", "height: ^2.5"));
    folder().write("house.yaml", house.text);
    const auto found = faults(head + "gaps: [{id: unknown}]\n");
    ASSERT_EQ(found.size(), 1U) << listing(found);
    EXPECT_EQ(found.front().file, "house.yaml");
    EXPECT_TRUE(has_fault(found, house.places[0], "height: a length needs a unit", "write 2.5 m"));
    EXPECT_NE(found.front().what.find("(in the house of job.yaml)"), std::string::npos) << listing(found);
}

TEST_F(HouseJob, TheHouseIsFoundFromTheFolderOfTheJob) {
    folder().write("models/other.yaml", cottage);
    const auto path = folder().write("visits/first.json", R"({"seamward": 1, "house": "../models/other.yaml",
        "gaps": [{"id": "bibb", "ring": {"width": "1 mm"}}]})");
    EXPECT_EQ(clear_width(gap(read_job(path, RunContext()).survey, "bibb").shape), 0.001);
}

}  // namespace
}  // namespace seamward::test
