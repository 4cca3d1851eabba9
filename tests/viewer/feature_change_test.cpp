// SPDX-License-Identifier: GPL-3.0-or-later
// Features of the described house are changed, moved and removed.
#include "feature_fixture.h"
#include "house/read_description.h"

namespace seamward::viewer::test {
namespace {

class FeatureChanges : public Features {
protected:
    void SetUp() override {
        Features::SetUp();
        job_before = window->survey().text();
    }
    /// Opens the form of what makes that gap, as a user does.
    void begin(const std::string& id) {
        panel().choose_gap(gap(id));
        auto& button = part<QPushButton>("gap_feature");
        ASSERT_TRUE(button.isVisible());
        QTest::mouseClick(&button, Qt::LeftButton);
        ASSERT_TRUE(form().isVisible());
    }
    void push(const char* name) {
        QSignalSpy read(&window->document(), &JobDocument::ways_found);
        QTest::mouseClick(&part<QPushButton>(name), Qt::LeftButton);
        ASSERT_TRUE(!read.isEmpty() || read.wait(soon)) << form().findChild<FaultLabel*>()->text().toStdString();
        ASSERT_TRUE(wait_idle());
        ASSERT_TRUE(form().isHidden()) << form().findChild<FaultLabel*>()->text().toStdString();
    }
    void undo() {
        window->survey().undo();
        ASSERT_TRUE(wait_idle());
    }
    /// The line of the house file that has this feature.
    [[nodiscard]] std::string line_of(const std::string& id) {
        const std::string house = house_now();
        const std::size_t at = house.find("{id: " + id + ",");
        return at == std::string::npos ? "" : house.substr(at, house.find('\n', at) - at);
    }
    [[nodiscard]] bool has_gap(const std::string& id) {
        return std::ranges::find(window->document().filed()->survey.gaps, id, &Gap::id) !=
               window->document().filed()->survey.gaps.end();
    }
    [[nodiscard]] std::size_t lines_that_differ() {
        const std::string before = house_before.toStdString(), now = house_now();
        const auto lines = [](const std::string& text) { return QString::fromStdString(text).split('\n'); };
        const QStringList old = lines(before), fresh = lines(now);
        EXPECT_EQ(old.size(), fresh.size());
        std::size_t count = 0;
        for (int i = 0; i < std::min(old.size(), fresh.size()); ++i) count += old[i] == fresh[i] ? 0 : 1;
        return count;
    }
    void expect_as_before() {
        EXPECT_EQ(house_now(), house_before.toStdString());
        EXPECT_EQ(window->survey().text(), job_before);
        EXPECT_FALSE(window->survey().is_modified());
    }

    std::string job_before;
};

TEST_F(FeatureChanges, TypeAnotherPlaceAndAWidth) {
    const std::string before = line_of("hose-bibb-north");
    const double x = gap_of("hose-bibb-north").at->x;
    begin("hose-bibb-north");
    EXPECT_FALSE(part<QListWidget>("feature_types").isVisible());
    const double along = *part<SizeField>("feature_along").size();
    type("feature_along", QString::number(along + 0.3, 'f', 2) + " m");
    QLineEdit& width = form().findChildren<SizeField*>("feature_width").at(0)->line();
    width.selectAll();
    QTest::keyClicks(&width, "3/16 in");
    push("feature_add");
    EXPECT_NEAR(std::abs(gap_of("hose-bibb-north").at->x - x), 0.3, 0.011);
    EXPECT_NEAR(clear_width(gap_of("hose-bibb-north").shape), 0.0047625, 1e-9);
    EXPECT_EQ(gap_of("hose-bibb-north").evidence.how, Evidence::How::measured);
    EXPECT_NEAR(gap_of("hose-bibb-north").evidence.plus_minus, 0.0002, 1e-9);
    EXPECT_EQ(lines_that_differ(), 1U);
    EXPECT_NE(line_of("hose-bibb-north"), before);
    // The picture has it where it is now.
    const auto& solids = *window->document().solids();
    const auto at = std::ranges::find(solids.survey.gaps, "hose-bibb-north", &Gap::id);
    EXPECT_NEAR(at->at->x, gap_of("hose-bibb-north").at->x, 1e-9);
    undo();
    expect_as_before();
    window->survey().redo();
    ASSERT_TRUE(wait_idle());
    ASSERT_EQ(window->survey().save(), SurveyDocument::Saved::done);
    EXPECT_EQ(content(house_path()).toStdString(), house_now());
    EXPECT_EQ(content(window->document().path()).toStdString(), window->survey().text());
}

TEST_F(FeatureChanges, MoveByAClickToAnotherWall) {
    begin("hose-bibb-north");
    part<QPushButton>("feature_show").click();
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::place);
    panel().take_point({4, 10, 2.74}, "kitchen/ceiling");
    EXPECT_TRUE(form().findChild<FaultLabel*>()->text().contains("cannot stand there"));
    panel().take_point({18.022, 9, 0.5}, "east-wall/stucco");
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);
    EXPECT_TRUE(part<QLabel>("feature_place").text().startsWith("East wall"));
    push("feature_add");
    EXPECT_GT(gap_of("hose-bibb-north").at->x, 17.9);
    EXPECT_NE(line_of("hose-bibb-north").find("on: east-wall"), std::string::npos) << line_of("hose-bibb-north");
    EXPECT_EQ(lines_that_differ(), 1U);
    undo();
    expect_as_before();
}

TEST_F(FeatureChanges, ANameAlone) {
    begin("recessed-lights-kitchen");
    auto& name = part<QLineEdit>("feature_name");
    name.setFocus();
    name.selectAll();
    QTest::keyClicks(&name, "lights over the sink");
    push("feature_add");
    EXPECT_EQ(lines_that_differ(), 1U);
    EXPECT_NE(line_of("recessed-lights-kitchen").find("name: \"lights over the sink\""), std::string::npos);
    undo();
    expect_as_before();
}

TEST_F(FeatureChanges, RemoveWithWhatTheJobSaysOfItsGaps) {
    ASSERT_NE(job_before.find("{id: hose-bibb-kitchen,"), std::string::npos);
    begin("hose-bibb-north");
    push("feature_remove");
    EXPECT_FALSE(has_gap("hose-bibb-north"));
    EXPECT_FALSE(has_gap("hose-bibb-kitchen"));
    EXPECT_EQ(line_of("hose-bibb-north"), "");
    EXPECT_EQ(window->survey().text().find("hose-bibb-north"), std::string::npos);
    EXPECT_EQ(window->survey().text().find("hose-bibb-kitchen"), std::string::npos);
    undo();
    expect_as_before();
    EXPECT_TRUE(has_gap("hose-bibb-kitchen"));
}

TEST_F(FeatureChanges, SayWhyWhatIsInUseStays) {
    const QString path = folder.filePath("scenarios/used.yaml");
    QByteArray job = content(folder.filePath("scenarios/demo.yaml"));
    ASSERT_FALSE(job.contains("occupied:"));
    job += "\noccupied: [{space: attic, animal: house-mouse, seen: droppings, way: hose-bibb-kitchen}]\n";
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(job);
    file.close();
    open(path);
    begin("hose-bibb-north");
    QTest::mouseClick(&part<QPushButton>("feature_remove"), Qt::LeftButton);
    EXPECT_TRUE(form().isVisible());
    EXPECT_TRUE(form().findChild<FaultLabel*>()->text().contains("lives here"))
        << form().findChild<FaultLabel*>()->text().toStdString();
    EXPECT_EQ(house_now(), house_before.toStdString());
    EXPECT_FALSE(window->survey().can_undo());
}

TEST_F(FeatureChanges, SayWhereThePlaceOfARowIsChanged) {
    begin("soffit-vents");
    EXPECT_TRUE(part<QLabel>("feature_place").text().contains("quillfeather.yaml"));
    EXPECT_FALSE(part<QPushButton>("feature_show").isVisible());
    EXPECT_FALSE(part<SizeField>("feature_along").isVisible());
    EXPECT_TRUE(part<QPushButton>("feature_remove").isVisible());
    QTest::keyClick(&form(), Qt::Key_Escape);
    EXPECT_TRUE(form().isHidden());
    EXPECT_FALSE(window->survey().can_undo());
}

/// Every feature of the demo opens, and applied without a change it changes nothing.
TEST_F(FeatureChanges, NothingWhereNothingWasTyped) {
    std::set<std::string> seen;
    int placed = 0;
    const auto job = window->document().filed();
    for (std::uint32_t i = 0; i < job->gaps_of_house; ++i) {
        const std::string& feature = job->house.places[i].feature;
        if (feature.empty() || !seen.insert(feature).second) continue;
        ASSERT_TRUE(form().begin_change(feature)) << feature;
        placed += part<QPushButton>("feature_show").isHidden() ? 0 : 1;
        part<QPushButton>("feature_add").click();
        EXPECT_FALSE(window->survey().can_undo()) << feature;
    }
    EXPECT_EQ(seen.size(), parse_house_yaml(house_before.toStdString(), "house").features.size());
    EXPECT_GT(placed, static_cast<int>(seen.size()) * 3 / 4) << placed << " of " << seen.size();
}

}  // namespace
}  // namespace seamward::viewer::test
