// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/model_search.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QStackedWidget>
#include <QTest>
#include <QTextBrowser>

#include "document/model_words.h"
#include "exchange/gltf.h"
#include "job_file/found_survey.h"
#include "job_file/job.h"
#include "job_file/write_job.h"
#include "panels/model_form.h"
#include "tests/support/scratch_folder.h"

namespace seamward::viewer::test {
namespace {

constexpr int patience = 120'000;

class ModelJobs : public testing::Test {
protected:
    [[nodiscard]] QString file(const char* name) const { return QString::fromStdString((folder.path() / name).string()); }
    /// The solids of a scenario's house as a GLB.
    [[nodiscard]] QString exported(const char* scenario) const {
        const Job job = read_job(std::string(SEAMWARD_SOURCE_FOLDER "/scenarios/") + scenario, RunContext(), Make::solids);
        return QString::fromStdString(folder.write("house.glb", gltf_binary(job.house.parts, job.survey, "house")).string());
    }
    [[nodiscard]] int files() const {
        return static_cast<int>(std::distance(std::filesystem::directory_iterator(folder.path()), {}));
    }
    template <class Widget>
    Widget& part(const char* name) {
        auto* found = form.findChild<Widget*>(name);
        if (found == nullptr) throw std::runtime_error(name);
        return *found;
    }
    [[nodiscard]] QString fault_of(const char* field) {
        auto* label = part<QWidget>(field).parentWidget()->findChild<FaultLabel*>();
        return label->isHidden() ? QString() : label->text();
    }

    seamward::test::ScratchFolder folder;
    ModelForm form;
};

TEST_F(ModelJobs, FindsWhatTheEngineFinds) {
    ModelSearch search;
    ModelRequest request;
    request.model = exported("wall-corner.yaml");
    request.job = file("corner.yaml");
    QSignalSpy stages(&search, &ModelSearch::stage_began);
    QSignalSpy found(&search, &ModelSearch::found);
    search.start(request);
    EXPECT_TRUE(search.is_running());
    ASSERT_TRUE(found.wait(patience));
    EXPECT_FALSE(search.is_running());
    EXPECT_GE(stages.count(), 4);
    const Model model = read_model(request.model.toStdString(), "house.glb", {}, RunContext());
    const Found direct = find_gaps(model, {}, RunContext());
    Job expected;
    expected.survey = found_survey(direct);
    expected.house.places = found_places(direct);
    Job written;
    const Job job = read_job(request.job.toStdString(), RunContext());
    written.survey = job.survey;
    written.house.places = job.house.places;
    EXPECT_EQ(job_text(written, {}), job_text(expected, {}));
    const auto finding = found[0][0].value<ModelFinding>();
    EXPECT_EQ(static_cast<std::size_t>(finding.gaps), direct.gaps.size());
    EXPECT_EQ(static_cast<std::size_t>(finding.spaces), direct.spaces.size());
    EXPECT_FALSE(finding.notes.join(' ').contains("--"));
    ASSERT_TRUE(job.model.has_value());
    EXPECT_EQ(job.model->file, "house.glb");
}

TEST(ModelWords, TellWhatWasLookedAt) {
    Job job;
    job.survey.spaces = {{.id = "outdoors", .kind = SpaceKind::outdoors},
                         {.id = "wall", .kind = SpaceKind::cavity},
                         {.id = "kitchen", .kind = SpaceKind::living},
                         {.id = "cabinet", .kind = SpaceKind::cavity}};
    const auto add = [&](std::uint32_t a, std::uint32_t b, double width) {
        Gap gap;
        gap.id = "gap-" + std::to_string(job.survey.gaps.size());
        gap.between = {SpaceIndex{a}, SpaceIndex{b}};
        gap.shape = Slot{width, 1};
        gap.evidence.how = Evidence::How::modeled;
        job.survey.gaps.push_back(gap);
    };
    add(0, 1, 0);
    add(1, 2, 2e-3);
    add(2, 3, 3e-3);
    EXPECT_TRUE(model_words(job).isEmpty());
    EXPECT_EQ(std::ranges::count(only_indoors(job), true), 0);
    job.model = ModelReference{"house.ifc", "/house.ifc", {}, {}};
    const QString words = model_words(job);
    EXPECT_TRUE(words.contains("2 gap")) << words.toStdString();
    EXPECT_TRUE(words.contains("1 joint")) << words.toStdString();
    EXPECT_EQ(only_indoors(job),
              (std::vector<bool>{false, false, true}));  // the wall's gap would be a way if the joint were open
    job.survey.gaps[0].evidence.how = Evidence::How::measured;
    EXPECT_EQ(shut_joints(job.survey), 0);
    job.survey.spaces[2].kind = SpaceKind::cavity;
    EXPECT_EQ(std::ranges::count(only_indoors(job), true), 0);  // no room, no way in that could tell
}

TEST_F(ModelJobs, LeavesNothingBehindWhenCalledOff) {
    ModelSearch search;
    const ModelRequest request{exported("demo.yaml"), file("called-off.yaml"), {}, {}};
    QSignalSpy found(&search, &ModelSearch::found);
    QSignalSpy off(&search, &ModelSearch::cancelled);
    QSignalSpy stages(&search, &ModelSearch::stage_began);
    search.start(request);
    ASSERT_TRUE(QTest::qWaitFor([&] { return stages.count() >= 2; }, patience));  // the file is read, the search is on
    search.cancel();
    ASSERT_TRUE(off.wait(patience));
    EXPECT_EQ(found.count(), 0);
    EXPECT_FALSE(search.is_running());
    EXPECT_EQ(files(), 1);
    {
        ModelSearch gone;  // ends while it works
        gone.start(request);
    }
    EXPECT_EQ(files(), 1);
}

TEST_F(ModelJobs, TellsOfAFileThatIsNoModel) {
    folder.write("bad.glb", "this is no model");
    ModelSearch search;
    QSignalSpy failed(&search, &ModelSearch::failed);
    search.start({file("bad.glb"), file("bad.yaml"), {}, {}});
    ASSERT_TRUE(failed.wait(patience));
    EXPECT_TRUE(failed[0][0].value<OpenFault>().in_input);
    EXPECT_FALSE(failed[0][0].value<OpenFault>().text.isEmpty());
    EXPECT_EQ(files(), 1);
}

TEST_F(ModelJobs, JobFilesDoNotReplaceOthers) {
    folder.write("there.yaml", "mine");
    EXPECT_TRUE(fault_of_job_name(file("new.yaml"), file("a.glb")).isEmpty());
    for (const QString& name :
         {QString(), file("new.txt"), file("no-folder/new.yaml"), file("there.yaml"), file("a.yaml") + "/b.yaml"})
        EXPECT_FALSE(fault_of_job_name(name, file("a.glb")).isEmpty()) << name.toStdString();
    EXPECT_TRUE(fault_of_job_name(file("there.yaml"), file("./there.yaml")).contains("model itself"));
}

TEST_F(ModelJobs, TheFormLeadsToTheJob) {
    form.show();
    form.set_model(exported("wall-corner.yaml"));
    EXPECT_EQ(part<QLineEdit>("job").text(), file("house.yaml"));
    QSignalSpy wanted(&form, &ModelForm::job_wanted);
    QTest::mouseClick(&part<QPushButton>("find"), Qt::LeftButton);
    EXPECT_TRUE(part<QPushButton>("cancel").isVisible());
    auto& open = part<QPushButton>("open");
    ASSERT_TRUE(QTest::qWaitFor([&] { return open.isVisible(); }, patience));
    EXPECT_EQ(wanted.count(), 0);  // what was lost is shown first
    EXPECT_TRUE(part<QTextBrowser>("lost").toPlainText().contains("house.yaml"));
    QTest::keyClick(&open, Qt::Key_Space);
    ASSERT_EQ(wanted.count(), 1);
    EXPECT_EQ(wanted[0][0].toString(), file("house.yaml"));
    EXPECT_NO_THROW((void)read_job(file("house.yaml").toStdString(), RunContext()));
}

TEST_F(ModelJobs, TheFormSaysWhatIsWrongWithTheAnswers) {
    form.show();
    form.find();
    EXPECT_NE(fault_of("model"), "");
    EXPECT_NE(fault_of("job"), "");
    form.set_model(file("house.docx"));
    form.find();
    EXPECT_TRUE(fault_of("model").contains(".ifc"));
    form.set_model(file("house.glb"));
    part<QPlainTextEdit>("rooms").setPlainText("kitchen, 1 m, 2 m, 1 m\nbath, 1, 2, 3");
    form.find();
    EXPECT_TRUE(fault_of("rooms").contains("Line 2"));
    EXPECT_TRUE(part<QPushButton>("find").isVisible());
    part<QPlainTextEdit>("rooms").setPlainText("");
    form.find();  // the file is not there
    auto& fault = part<FaultLabel>("form_fault");
    ASSERT_TRUE(QTest::qWaitFor([&] { return fault.isVisible(); }, patience));
    EXPECT_TRUE(fault.text().contains("house.glb"));
    EXPECT_EQ(files(), 0);
}

TEST_F(ModelJobs, EscapeCallsTheSearchOff) {
    form.show();
    form.set_model(exported("demo.yaml"));
    form.find();
    QTest::keyClick(&form, Qt::Key_Escape);
    EXPECT_TRUE(form.isVisible());
    auto& fault = part<FaultLabel>("form_fault");
    ASSERT_TRUE(QTest::qWaitFor([&] { return fault.isVisible(); }, patience));
    EXPECT_EQ(files(), 1);
    QTest::keyClick(&form, Qt::Key_Escape);
    EXPECT_FALSE(form.isVisible());
}

}  // namespace
}  // namespace seamward::viewer::test
