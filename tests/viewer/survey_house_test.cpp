// SPDX-License-Identifier: GPL-3.0-or-later
// Changes of a survey whose house is described in a file of its own.
#include <set>

#include "survey_fixture.h"

namespace seamward::viewer::test {
namespace {

class SurveyOfAHouse : public SurveyFixture {
protected:
    void SetUp() override {
        house = on_disk(scenarios + "../models/wall-corner.yaml");
        job = on_disk(scenarios + "wall-corner.yaml");
        house_file = write("models/wall-corner.yaml", house);
        open(write("jobs/job.yaml", job));
    }
    /// Until the solids of what was done are there.
    template <class Act>
    void act_and_build(Act some) {
        QSignalSpy built(&document, &JobDocument::solids_ready);
        act(some);
        ASSERT_TRUE(!built.isEmpty() || built.wait(20'000));
    }
    /// How wide the opening really is between the solids, as their survey has it.
    [[nodiscard]] double built_width(const std::string& id) const {
        for (const Gap& one : document.solids()->survey.gaps) {
            if (one.id == id) return clear_width(one.shape);
        }
        throw std::runtime_error("no gap " + id);
    }
    [[nodiscard]] std::size_t triangles_of(const std::string& id) const {
        const auto& gaps = document.solids()->survey.gaps;
        const auto at = std::ranges::find(gaps, id, &Gap::id);
        std::size_t count = 0;
        for (const Part& part : document.solids()->parts)
            count += static_cast<std::size_t>(
                std::ranges::count(part.bounds, GapIndex{static_cast<std::uint32_t>(at - gaps.begin())}));
        return count;
    }
    /// A gap of a feature of the house.
    [[nodiscard]] const Gap& some_gap() const {
        const Job& now = *document.filed();
        for (std::size_t i = 0; i < now.gaps_of_house; ++i) {
            if (!now.house.places[i].feature.empty() && std::holds_alternative<Ring>(now.survey.gaps[i].shape))
                return now.survey.gaps[i];
        }
        throw std::runtime_error("no ring");
    }

    std::string house, job;
    QString house_file;
};

TEST_F(SurveyOfAHouse, BuildsTheSolidsAnewForAnotherWidth) {
    if (!document.solids()) {
        QSignalSpy built(&document, &JobDocument::solids_ready);
        ASSERT_TRUE(built.wait(20'000));
    }
    const std::string id = some_gap().id;
    const double before = clear_width(some_gap().shape);
    const auto old = document.solids();
    QSignalSpy built(&document, &JobDocument::solids_ready);
    act([&] { survey.change(width(id, "ring", "1.3 mm")); });
    EXPECT_TRUE(document.solids() != nullptr);  // those from before, until the others are there
    ASSERT_TRUE(!built.isEmpty() || built.wait(20'000));
    EXPECT_NE(document.solids(), old);
    EXPECT_FALSE(document.is_building());
    EXPECT_NEAR(built_width(id), 0.0013, 1e-12);
    EXPECT_GT(triangles_of(id), 0U);
    act_and_build([&] { survey.undo(); });
    EXPECT_NEAR(built_width(id), before, 1e-12);
    // A note changes no solid.
    ChangeGap note{.id = id};
    note.note = "behind the tub";
    act([&] { survey.change(note); });
    EXPECT_FALSE(document.is_building());
}

TEST_F(SurveyOfAHouse, HasNoSolidsOfTheJobBeforeWhenAnotherIsOpened) {
    if (!document.solids()) {
        QSignalSpy built(&document, &JobDocument::solids_ready);
        ASSERT_TRUE(built.wait(20'000));
    }
    bool any = true;
    QObject::connect(&document, &JobDocument::opened, &document, [&] { any = document.solids() || document.prepared(); });
    open_small();
    EXPECT_FALSE(any);
    EXPECT_FALSE(document.solids());
}

TEST_F(SurveyOfAHouse, TakesSeveralChangesBackAsOne) {
    const std::string feature = document.filed()->house.places[index(some_gap().id).value].feature, id = some_gap().id;
    const std::vector<Edit> edits{ChangeFeature{.id = feature, .name = "the new one"}, width(id, "ring", "1.3 mm")};
    act([&] { EXPECT_TRUE(survey.change(edits)); });
    EXPECT_NEAR(clear_width(gap(id).shape), 0.0013, 1e-12);
    EXPECT_NE(document.newer().begin()->second.find("the new one"), std::string::npos);
    // What one of them gets wrong, none of them does.
    const std::string job_now = survey.text();
    EXPECT_FALSE(survey.change({ChangeFeature{.id = feature, .name = "newer"}, width(id, "ring", "3")}));
    EXPECT_EQ(survey.text(), job_now);
    act([&] { survey.undo(); });
    EXPECT_FALSE(survey.can_undo());
    EXPECT_EQ(survey.text(), job);
    EXPECT_EQ(document.newer().begin()->second, house);
    act([&] { survey.redo(); });
    EXPECT_EQ(survey.save(), SurveyDocument::Saved::done);
    EXPECT_NE(on_disk(house_file).find("the new one"), std::string::npos);
}

TEST_F(SurveyOfAHouse, LeavesTheHouseOfTheJobAsItWasWhenSavedElsewhere) {
    const std::string feature = document.filed()->house.places[index(some_gap().id).value].feature;
    act([&] { survey.change(ChangeFeature{.id = feature, .name = "the new one"}); });
    QDir().mkpath(folder.filePath("mine"));
    const QString path = folder.filePath("mine/copy.yaml");
    act([&] { EXPECT_EQ(survey.save_as(path), SurveyDocument::Saved::done); });
    EXPECT_FALSE(survey.is_modified());
    EXPECT_EQ(on_disk(house_file), house);
    EXPECT_EQ(on_disk(folder.filePath("jobs/job.yaml")), job);
    EXPECT_NE(on_disk(folder.filePath("mine/wall-corner.yaml")).find("the new one"), std::string::npos);
    EXPECT_NE(on_disk(path).find("house: wall-corner.yaml"), std::string::npos);
    // Once more, where that name is taken.
    act([&] { survey.change(ChangeFeature{.id = feature, .name = "newest"}); });
    act([&] { EXPECT_EQ(survey.save_as(folder.filePath("mine/third.yaml")), SurveyDocument::Saved::done); });
    EXPECT_NE(on_disk(folder.filePath("mine/third-house.yaml")).find("newest"), std::string::npos);
    EXPECT_EQ(on_disk(folder.filePath("mine/wall-corner.yaml")).find("newest"), std::string::npos);
    open(folder.filePath("mine/third.yaml"));
    EXPECT_FALSE(survey.is_modified());
}

}  // namespace
}  // namespace seamward::viewer::test
