// SPDX-License-Identifier: GPL-3.0-or-later
#include <QProcess>
#include <csignal>
#include <random>

#include "survey_fixture.h"

namespace seamward::viewer::test {
namespace {

class SurveyEditing : public SurveyFixture {};

TEST_F(SurveyEditing, ChangesUndoesRedoesAndSaves) {
    open_small();
    QSignalSpy modified(&survey, &SurveyDocument::modified_changed);
    EXPECT_FALSE(survey.can_undo());
    EXPECT_EQ(survey.undo_text(), "Undo");
    act([&] { EXPECT_TRUE(survey.change(width("bib", "ring", "3/8\""))); });
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.009525, 1e-12);
    EXPECT_TRUE(survey.is_modified());
    EXPECT_EQ(survey.undo_text(), "Undo: width of “hose bibb, north wall”");
    EXPECT_EQ(on_disk(document.path()), small_job);
    std::string wanted = small_job;
    wanted.replace(wanted.find("2.5 mm"), 6, "3/8\"");
    EXPECT_EQ(survey.text(), wanted);

    act([&] { survey.undo(); });
    EXPECT_EQ(survey.text(), small_job);
    EXPECT_FALSE(survey.is_modified());
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.0025, 1e-12);
    EXPECT_EQ(survey.redo_text(), "Redo: width of “hose bibb, north wall”");
    act([&] { survey.redo(); });
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
    EXPECT_EQ(on_disk(document.path()), wanted);
    EXPECT_FALSE(survey.is_modified());
    EXPECT_EQ(modified.size(), 4);

    JobDocument again;
    QSignalSpy opened(&again, &JobDocument::opened);
    again.open(document.path());
    ASSERT_TRUE(opened.wait(20'000));
    EXPECT_NEAR(clear_width(again.filed()->survey.gaps[1].shape), 0.009525, 1e-12);
}

TEST_F(SurveyEditing, LeavesEverythingAsItWasWhenAnEditIsBad) {
    open_small();
    QSignalSpy failed(&survey, &SurveyDocument::edit_failed);
    EXPECT_FALSE(survey.change(width("bib", "ring", "3")));
    ASSERT_EQ(failed.size(), 1);
    EXPECT_TRUE(failed[0][0].toString().contains("unit"));
    EXPECT_FALSE(survey.can_undo());
    // Only reading the job tells that there is no such space.
    ChangeGap sides{.id = "bib"};
    sides.between = {"wall", "attic"};
    EXPECT_TRUE(survey.change(sides));
    ASSERT_TRUE(failed.wait(20'000));
    EXPECT_TRUE(failed[1][0].toString().contains("attic"));
    EXPECT_EQ(survey.text(), small_job);
    EXPECT_FALSE(survey.can_undo());
    EXPECT_FALSE(survey.is_modified());
    act([&] { EXPECT_TRUE(survey.change(width("bib", "ring", "3 mm"))); });
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.003, 1e-12);
}

TEST_F(SurveyEditing, TellsWhenAnotherProgramWroteTheFile) {
    open_small();
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    QSignalSpy elsewhere(&survey, &SurveyDocument::file_changed_elsewhere);
    write("job.yaml", small_job + "# by another\n");
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::changed_elsewhere);
    EXPECT_EQ(elsewhere.size(), 1);
    EXPECT_EQ(on_disk(document.path()), small_job + "# by another\n");
    EXPECT_TRUE(survey.is_modified());
    EXPECT_EQ(survey.save(SurveyDocument::Overwrite::yes), SurveyDocument::Saved::done);
    EXPECT_EQ(on_disk(document.path()), survey.text());
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
}

TEST_F(SurveyEditing, SaysWhyItCannotBeSaved) {
    open_small();
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    QSignalSpy failed(&survey, &SurveyDocument::save_failed);
    EXPECT_EQ(survey.save_as(folder.filePath("nowhere/job.yaml")), SurveyDocument::Saved::failed);
    EXPECT_EQ(survey.save_as(folder.filePath("job.json")), SurveyDocument::Saved::failed);
    EXPECT_EQ(failed.size(), 2);
    EXPECT_TRUE(survey.is_modified());
    EXPECT_EQ(on_disk(document.path()), small_job);
}

TEST_F(SurveyEditing, FindsTheHouseFromTheFolderItIsSavedIn) {
    open(scenarios + "two-story.yaml");
    QDir().mkpath(folder.filePath("a/b"));
    const QString path = folder.filePath("a/b/copy.yaml");
    act([&] { EXPECT_EQ(survey.save_as(path), SurveyDocument::Saved::done); });
    EXPECT_EQ(document.path(), path);
    EXPECT_FALSE(survey.is_modified());
    JobDocument again;
    QSignalSpy opened(&again, &JobDocument::opened);
    again.open(path);
    ASSERT_TRUE(opened.wait(20'000));
    EXPECT_EQ(again.filed()->survey.gaps.size(), document.filed()->survey.gaps.size());
}

TEST_F(SurveyEditing, SharesItsHistoryWithOtherChanges) {
    open_small();
    int made = 0;
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    survey.push({"something else", [&] { ++made; }, [&] { --made; }});
    EXPECT_EQ(made, 1);
    EXPECT_EQ(survey.undo_text(), "Undo: something else");
    survey.undo();
    EXPECT_EQ(made, 0);
    act([&] { survey.undo(); });
    EXPECT_EQ(survey.text(), small_job);
    act([&] { survey.redo(); });
    survey.redo();
    EXPECT_EQ(made, 1);
    EXPECT_FALSE(survey.can_redo());
}

TEST_F(SurveyEditing, AddsFeaturesToTheFileOfTheHouse) {
    const std::string house = on_disk(scenarios + "../models/wall-corner.yaml"), job = on_disk(scenarios + "wall-corner.yaml");
    const QString house_file = write("models/wall-corner.yaml", house);
    open(write("jobs/job.yaml", job));
    const std::size_t gaps = document.filed()->survey.gaps.size();
    AddFeature feature{.name = "second tub spout",
                       .type = "tub-spout",
                       .on = "wet-partition",
                       .along = "0.5 m",
                       .side = "bath",
                       .gap = "1/16 in"};
    act([&] { EXPECT_TRUE(survey.change(feature)); });
    EXPECT_EQ(document.filed()->survey.gaps.size(), gaps + 1);
    EXPECT_EQ(survey.text(), job);
    EXPECT_EQ(on_disk(house_file), house);
    EXPECT_TRUE(survey.is_modified());
    act([&] { survey.undo(); });
    EXPECT_EQ(document.filed()->survey.gaps.size(), gaps);
    EXPECT_FALSE(survey.is_modified());
    act([&] { survey.redo(); });
    // What does not fit the house is taken back.
    QSignalSpy failed(&survey, &SurveyDocument::edit_failed);
    feature.along = "90 m";
    EXPECT_TRUE(survey.change(feature));
    ASSERT_TRUE(failed.wait(20'000));
    act([&] { survey.change(width("second-tub-spout", "ring", "1 mm")); });
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
    EXPECT_NE(on_disk(house_file).find("id: second-tub-spout, "), std::string::npos);
    open(document.path());
    EXPECT_EQ(document.filed()->survey.gaps.size(), gaps + 1);
}

TEST_F(SurveyEditing, TakesHundredsOfChangesBack) {
    open(scenarios + "demo.yaml");
    const std::string before = survey.text();
    std::mt19937 random(3);
    const std::vector<Gap> gaps = document.filed()->survey.gaps;
    for (int i = 0; i < 300; ++i) {
        const Gap& one = gaps[random() % gaps.size()];
        ChangeGap edit{.id = one.id};
        if (i % 3 == 0)
            edit.shape = ShapeText{seamward::shape_word(one.shape), "0." + std::to_string(1 + random() % 9) + " mm", {}};
        if (i % 3 == 1) edit.note = "note " + std::to_string(random());
        if (i % 3 == 2) edit.how = Evidence::How::assumed;
        if (i % 3 == 2) edit.plus_minus = std::to_string(1 + random() % 9) + "/64 in";
        ASSERT_TRUE(survey.change(edit)) << i;
    }
    EXPECT_NE(survey.text(), before);
    EXPECT_NE(survey.text().find("# Entries without `between`"), std::string::npos);
    act([&] {
        while (survey.can_undo()) survey.undo();
    });
    EXPECT_EQ(survey.text(), before);
    EXPECT_FALSE(survey.is_modified());
    QTRY_VERIFY_WITH_TIMEOUT(!document.is_busy(), 20'000);
}

TEST_F(SurveyEditing, ForgetsTheOldestChangesWhenTheyTakeTooMuchRoom) {
    open_small();
    survey.limit_history(120'000);
    for (int i = 0; i < 40; ++i) {
        ChangeGap edit{.id = "bib"};
        edit.note = std::string(2000, static_cast<char>('a' + i % 26));
        act([&] { ASSERT_TRUE(survey.change(edit)); });
    }
    int undone = 0;
    act([&] {
        for (; survey.can_undo(); ++undone) survey.undo();
    });
    EXPECT_GT(undone, 20);
    EXPECT_LT(undone, 40);
    EXPECT_EQ(gap("bib").note.size(), 2000U);
}

class Drafts : public SurveyFixture {
protected:
    /// Keeps a text as a window does that ends at once.
    static void leave_behind(const QString& path, const std::string& text) {
        DraftStore store;
        store.keep({path, text, ""}, std::nullopt);
        QTRY_COMPARE_WITH_TIMEOUT(QDir(DraftStore::usual_folder()).entryList({"*.draft"}, QDir::Files).size(), 1, 5000);
        store.let_go();
    }
};

TEST_F(Drafts, AreThereWhileWorkIsUnsavedAndGoWithIt) {
    open_small();
    const auto drafts = [] { return QDir(DraftStore::usual_folder()).entryList({"*.draft"}, QDir::Files).size(); };
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    QTRY_COMPARE_WITH_TIMEOUT(drafts(), 1, 5000);
    EXPECT_TRUE(DraftStore::left_behind().empty());  // its window is here
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
    QTRY_COMPARE_WITH_TIMEOUT(drafts(), 0, 5000);
    {
        SurveyDocument other(document);
        act([&] { other.change(width("bib", "ring", "4 mm")); });
        QTRY_COMPARE_WITH_TIMEOUT(drafts(), 1, 5000);
    }
    EXPECT_EQ(drafts(), 0);
}

TEST_F(Drafts, OutliveAKilledProgram) {
    const QString path = write("job.yaml", small_job);
    QProcess child;
    child.setProcessChannelMode(QProcess::ForwardedErrorChannel);
    child.start(SEAMWARD_DRAFT_CHILD, {path});
    ASSERT_TRUE(child.waitForReadyRead(30'000));
    EXPECT_EQ(child.readAllStandardOutput().trimmed(), "kept");
    EXPECT_TRUE(DraftStore::left_behind().empty());
    ::kill(static_cast<pid_t>(child.processId()), SIGKILL);
    ASSERT_TRUE(child.waitForFinished(30'000));
    EXPECT_EQ(child.exitStatus(), QProcess::CrashExit);

    const std::vector<Draft> left = DraftStore::left_behind();
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].job.path, path);
    EXPECT_EQ(on_disk(path), small_job);
    QSignalSpy found(&document, &JobDocument::ways_found);
    ASSERT_TRUE(survey.recover(left[0]));
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(document.path(), path);
    EXPECT_TRUE(survey.is_modified());
    EXPECT_NEAR(clear_width(gap("bib").shape), 0.0071, 1e-12);
    EXPECT_EQ(gap("bib").note, "killed é");
    // Another window finds nothing, and cannot take it.
    EXPECT_TRUE(DraftStore::left_behind().empty());
    DraftStore other;
    EXPECT_FALSE(other.adopt(left[0].id));
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
    EXPECT_EQ(on_disk(path), survey.text());
    QTRY_VERIFY_WITH_TIMEOUT(QDir(DraftStore::usual_folder()).entryList({"*.draft"}, QDir::Files).isEmpty(), 5000);
}

TEST_F(Drafts, StayWhenTheyCannotBeOpened) {
    const QString drafts = DraftStore::usual_folder();
    {
        DraftStore store;
        store.keep({folder.filePath("job.yaml"), "seamward: 1\nhouse: nowhere.yaml\n", ""}, std::nullopt);
        QTRY_COMPARE_WITH_TIMEOUT(QDir(drafts).entryList({"*.draft"}, QDir::Files).size(), 1, 5000);
        store.let_go();
    }
    const std::vector<Draft> left = DraftStore::left_behind();
    ASSERT_EQ(left.size(), 1U);
    QSignalSpy failed(&document, &JobDocument::open_failed);
    EXPECT_TRUE(survey.recover(left[0]));
    ASSERT_TRUE(failed.wait(20'000));
    EXPECT_EQ(DraftStore::left_behind().size(), 1U);
    open_small();
    EXPECT_FALSE(survey.is_modified());
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    QTRY_COMPARE_WITH_TIMEOUT(QDir(drafts).entryList({"*.draft"}, QDir::Files).size(), 2, 5000);
}

/// What is being written of one job when another is taken up does not come back.
TEST_F(Drafts, OfTheJobBeforeGoWhenAnotherIsTakenUp) {
    const QString drafts = folder.filePath("drafts");
    const auto names = [&] { return QDir(drafts).entryList({"*.draft"}, QDir::Files); };
    {
        DraftStore store(drafts);
        store.keep({"/x/left.yaml", "left", ""}, std::nullopt);
        QTRY_COMPARE_WITH_TIMEOUT(names().size(), 1, 5000);
        ASSERT_TRUE(QFile::copy(drafts + '/' + names().front(), drafts + "/left.draft"));
    }
    const std::vector<Draft> left = DraftStore::left_behind(drafts);
    ASSERT_EQ(left.size(), 1U);
    const std::string large(20'000'000, 'x');
    for (int turn = 0; turn < 5; ++turn) {
        DraftStore store(drafts);
        store.keep({"/x/open.yaml", large, ""}, std::nullopt);
        QTest::qWait(turn * 5);
        ASSERT_TRUE(store.adopt(left[0].id));
        EXPECT_EQ(names(), QStringList{"left.draft"}) << turn;
        QTest::qWait(100);
        EXPECT_EQ(names(), QStringList{"left.draft"}) << turn;
        store.let_go();
    }
}

/// Nor does the job that still is open go into the draft that was taken up.
TEST_F(Drafts, KeepTheirTextWhileTheyAreOpened) {
    const QString path = write("left.yaml", small_job);
    leave_behind(path, small_job + "# left\n");
    const std::vector<Draft> left = DraftStore::left_behind();
    ASSERT_EQ(left.size(), 1U);
    open_small();
    act([&] { survey.change(width("bib", "ring", "3 mm")); });
    QSignalSpy found(&document, &JobDocument::ways_found);
    ASSERT_TRUE(survey.recover(left[0]));
    QFile draft(DraftStore::usual_folder() + '/' + left[0].id + ".draft");
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(document.path(), path);
    for (int turn = 0; turn < 10; ++turn) {
        QTest::qWait(100);
        ASSERT_TRUE(draft.open(QIODevice::ReadOnly));
        EXPECT_TRUE(draft.readAll().contains("# left"));
        draft.close();
    }
}

/// A draft that is on its way when its window closes, or another job is opened first, is offered again.
TEST_F(Drafts, StayWhenTheyAreNotOpenedAfterAll) {
    const QString path = write("left.yaml", small_job);
    leave_behind(path, small_job + "# left\n");
    const std::vector<Draft> left = DraftStore::left_behind();
    ASSERT_EQ(left.size(), 1U);
    {
        JobDocument closing;
        SurveyDocument window(closing);
        ASSERT_TRUE(window.recover(left[0]));
        EXPECT_TRUE(DraftStore::left_behind().empty());
    }
    ASSERT_EQ(DraftStore::left_behind().size(), 1U);
    ASSERT_TRUE(survey.recover(left[0]));
    open_small();  // overtakes it
    EXPECT_EQ(document.path(), folder.filePath("job.yaml"));
    EXPECT_FALSE(survey.is_modified());
    ASSERT_EQ(DraftStore::left_behind().size(), 1U);
    EXPECT_EQ(DraftStore::left_behind()[0].job.text, small_job + "# left\n");
    // It is read anew when it is taken up.
    {
        DraftStore other;
        ASSERT_TRUE(other.adopt(left[0].id));
        other.keep({path, small_job + "# newer\n", ""}, std::nullopt);
        QTRY_COMPARE_WITH_TIMEOUT(DraftStore::left_behind().size(), 0U, 5000);
        QTest::qWait(200);
        other.let_go();
    }
    QSignalSpy found(&document, &JobDocument::ways_found);
    ASSERT_TRUE(survey.recover(left[0]));
    ASSERT_TRUE(found.wait(20'000));
    EXPECT_EQ(survey.text(), small_job + "# newer\n");
}

TEST_F(Drafts, ThatAreNotWantedGo) {
    const QString drafts = folder.filePath("drafts");
    Draft draft;
    {
        DraftStore store(drafts);
        store.keep({"/x/job.yaml", "a\nb", "print"}, EditedFile{"/x/house.yaml", "c\n", ""});
        QTRY_COMPARE_WITH_TIMEOUT(QDir(drafts).entryList({"*.draft"}, QDir::Files).size(), 1, 5000);
        const QString name = QDir(drafts).entryList({"*.draft"}, QDir::Files).front();
        ASSERT_TRUE(QFile::copy(drafts + '/' + name, drafts + "/left.draft"));
    }
    const std::vector<Draft> left = DraftStore::left_behind(drafts);
    ASSERT_EQ(left.size(), 1U);
    EXPECT_EQ(left[0].job.text, "a\nb");
    EXPECT_EQ(left[0].job.disk_print, "print");
    ASSERT_TRUE(left[0].house);
    EXPECT_EQ(left[0].house->text, "c\n");
    DraftStore::discard(left[0], drafts);
    EXPECT_TRUE(DraftStore::left_behind(drafts).empty());
}

}  // namespace
}  // namespace seamward::viewer::test
