// SPDX-License-Identifier: GPL-3.0-or-later
// What is written is read back the same, whatever names there are.
#include "job_file/write_job.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

#include "job_file/found_survey.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {
namespace {

Job read_back(const std::string& text) {
    Job job;
    const auto faults = faults_of([&] { job = parse_job(text, "job.yaml"); });
    EXPECT_TRUE(faults.empty()) << text << listing(faults);
    return job;
}

void expect_same(const Gap& read, const Gap& written) {
    EXPECT_EQ(read.id, written.id);
    EXPECT_EQ(read.name, written.name);
    EXPECT_EQ(read.between, written.between);
    EXPECT_EQ(read.shape.index(), written.shape.index()) << written.id;
    EXPECT_EQ(clear_width(read.shape), clear_width(written.shape)) << written.id;
    EXPECT_EQ(read.count, written.count);
    EXPECT_EQ(read.depth, written.depth);
    EXPECT_EQ(read.evidence.how, written.evidence.how);
    EXPECT_EQ(read.evidence.plus_minus, written.evidence.plus_minus);
    ASSERT_EQ(read.at.has_value(), written.at.has_value());
    if (!read.at) return;
    EXPECT_EQ(read.at->x, written.at->x);
    EXPECT_EQ(read.at->y, written.at->y);
    EXPECT_EQ(read.at->z, written.at->z);
}

/// Sizes over many powers of ten, to whole nanometers.
class Sizes {
public:
    double next() { return to_nanometers(std::pow(10.0, power_(random_))); }

private:
    std::mt19937 random_{7};
    std::uniform_real_distribution<double> power_{-8, 4.9};
};

TEST(WriteJob, IsReadBackToTheLastBit) {
    SurveyBuilder builder;
    builder.outdoors("outdoors").cavity("space-1").space("den", SpaceKind::living, true);
    Sizes sizes;
    for (int i = 0; i < 400; ++i) {
        builder.slot("gap-" + std::to_string(i), "outdoors", i % 2 == 0 ? "space-1" : "den", 1);
        Gap& gap = builder.last();
        const double width = sizes.next();
        const std::array<Shape, 4> shapes{Slot{width, sizes.next()}, Hole{width}, Ring{width, sizes.next()}, Mesh{width, 0.01}};
        gap.shape = shapes.at(static_cast<std::size_t>(i) % 4);
        gap.evidence = {Evidence::How::modeled, i % 3 == 0 ? 0 : sizes.next()};
        if (i % 5 != 0) gap.at = Point{sizes.next(), -sizes.next(), sizes.next()};
        if (i % 7 != 0) gap.depth = sizes.next();
        gap.count = i % 11 == 0 ? 3 : 1;
    }
    Job job;
    job.survey = builder.survey();
    const Job read = read_back(job_text(job, {"A head of", "two lines."}));
    ASSERT_EQ(read.survey.spaces.size(), 3U);
    EXPECT_EQ(read.survey.spaces[2].kind, SpaceKind::living);
    EXPECT_TRUE(read.survey.spaces[2].source);
    ASSERT_EQ(read.survey.gaps.size(), job.survey.gaps.size());
    for (std::size_t i = 0; i < read.survey.gaps.size(); ++i) expect_same(read.survey.gaps[i], job.survey.gaps[i]);
    const Slot &slot = std::get<Slot>(read.survey.gaps[0].shape), &meant = std::get<Slot>(job.survey.gaps[0].shape);
    EXPECT_EQ(slot.length, meant.length);
    EXPECT_NEAR(*std::get<Mesh>(read.survey.gaps[3].shape).area, 0.01, 1e-12);
}

TEST(WriteJob, NamesOfAnySort) {
    const std::vector<std::string> names{"null",
                                         "True",
                                         "no",
                                         "~",
                                         "- a",
                                         "a: b",
                                         "a #b",
                                         "#",
                                         "{a: [b]}",
                                         "it's",
                                         "\"quoted\"",
                                         "back\\slash\\",
                                         "\\n",
                                         "&anchor",
                                         "*alias",
                                         "!!str x",
                                         "%TAG",
                                         "---",
                                         "...",
                                         "1.5",
                                         "0x10",
                                         "@",
                                         "`",
                                         "| x",
                                         "> x",
                                         "?",
                                         "a,b",
                                         "Straße 北 \xF0\x9F\x8F\xA0",
                                         "line\xE2\x80\xA8separator\xE2\x80\xA9",
                                         "\xEF\xBB\xBFmark",
                                         "none\xEF\xBF\xBE\xEF\xBF\xBF",
                                         "right\xE2\x80\xAEleft"};
    Job job;
    job.name = "a: \"job\"";
    SurveyBuilder builder;
    builder.outdoors("outdoors");
    for (const std::string& name : names) {
        builder.living(name).slot(name, "outdoors", name, 1);
        builder.last().name = name;
    }
    job.survey = builder.survey();
    const Job read = read_back(job_text(job, {}));
    EXPECT_EQ(read.name, job.name);
    ASSERT_EQ(read.survey.gaps.size(), names.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(read.survey.spaces[i + 1].id, names[i]);
        EXPECT_EQ(read.survey.gaps[i].name, names[i]);
    }
}

TEST(WriteJob, AShutGapTakesOneLine) {
    SurveyBuilder builder;
    builder.outdoors("yard").living("den").slot("joint-1", "yard", "den", 0);
    builder.last().name = "joint, \"sill\" {a: b}";
    builder.last().at = Point{1, 2, 0.5};
    builder.last().depth = 0.1;
    builder.last().evidence = {Evidence::How::modeled, 0};
    Job job;
    job.survey = builder.survey();
    job.house.places = {{{0}, {{1, 1.995, 0.5}, {1, 2, 0.5}, {1, 2.1, -0.5}}}};
    const std::string text = job_text(job, {});
    EXPECT_EQ(text.substr(text.find("gaps:")).find('\n', 6), text.size() - text.find("gaps:") - 1) << text;
    const Job read = read_back(text);
    ASSERT_EQ(read.survey.gaps.size(), 1U);
    expect_same(read.survey.gaps[0], job.survey.gaps[0]);
    ASSERT_EQ(read.house.places.size(), 1U);
    ASSERT_EQ(read.house.places[0].through.size(), 3U);
    EXPECT_EQ(read.house.places[0].through[0].y, 1.995);
    EXPECT_EQ(read.house.places[0].through[2].z, -0.5);
}

TEST(WriteJob, NothingIsAJobToo) { EXPECT_TRUE(read_back(job_text({}, {})).survey.gaps.empty()); }

TEST(WriteJob, TellsTheModel) {
    const ScratchFolder folder;
    folder.write("it's a \"model\".GLB", "glTF");
    Job job;
    job.model = ModelReference{"it's a \"model\".GLB", {}, ModelUnit::in, UpAxis::y};
    const auto file = folder.write("job.yaml", job_text(job, {}));
    const Job read = read_job(file, RunContext());
    ASSERT_TRUE(read.model.has_value());
    EXPECT_EQ(read.model->file, job.model->file);
    EXPECT_EQ(read.model->path, folder.path() / job.model->file);
    EXPECT_EQ(read.model->unit, ModelUnit::in);
    EXPECT_EQ(read.model->up, UpAxis::y);
    job.model->unit.reset();
    job.model->up.reset();
    folder.write("job.yaml", job_text(job, {}));
    EXPECT_FALSE(read_job(file, RunContext()).model->unit.has_value());
    EXPECT_FALSE(read_job(file, RunContext()).model->up.has_value());
}

}  // namespace
}  // namespace seamward::test
