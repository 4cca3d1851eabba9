// SPDX-License-Identifier: GPL-3.0-or-later
// Each shipped drill in the window: it tells nothing of what is to be found, judges answers, shows what was missed, and speaks
// two languages.
#include <cmath>

#include "base/measure_text.h"
#include "document/translations.h"
#include "document/way_text.h"
#include "teach/key.h"
#include "tests/viewer/drill_fixture.h"

namespace seamward::viewer::test {
namespace {

class EachDrill : public DrillFixture, public testing::WithParamInterface<std::string> {
protected:
    void SetUp() override { open_drill(file_of(GetParam())); }
    const DrillRound& truth = shipped_drill(GetParam());
};

/// The ways to write the width of a gap.
QStringList written(double width) {
    return {width_words(width), QString::fromStdString(width_message(width).english()),
            QString::fromStdString(Translator(Language::spanish)(width_message(width)))};
}

TEST_P(EachDrill, TellsNothingOfWhatIsToBeFound) {
    const Survey& survey = truth.job.survey;
    for (const auto language : {Preferences::Language::english, Preferences::Language::spanish}) {
        preferences.set_language(language);
        QApplication::processEvents();
        // Sizes of animals and the tolerance are told, and may be the width of a gap by chance.
        const QString task = part<QTextBrowser>("drill_story").toPlainText();
        for (int place = -1; place < static_cast<int>(truth.places.size()); ++place) {
            drill().choose(place);
            QApplication::processEvents();
            const QString words = all_words();
            for (const Gap& gap : survey.gaps) {
                if (is_shut(gap.shape)) continue;
                for (const QString& width : written(clear_width(gap.shape))) {
                    EXPECT_TRUE(!words.contains(width) || task.contains(width))
                        << gap.id << ": " << width.toStdString() << ", place " << place;
                }
                // An id of two words or more is nowhere a word by chance.
                const QString id = QString::fromStdString(gap.id);
                EXPECT_TRUE(!id.contains('-') || !words.contains(id)) << gap.id << ", place " << place;
            }
        }
    }
    // Neither does the picture.
    JobDocument& shown = drill().shown();
    EXPECT_TRUE(shown.job().survey.gaps.empty());
    EXPECT_TRUE(shown.ways().paths.empty());
    for (const Callout& callout : house().scene().callouts()) EXPECT_EQ(callout.kind, Callout::Kind::room);
    EXPECT_TRUE(house().scene().closings().empty());
    ASSERT_TRUE(shown.solids());
    for (const Part& part : shown.solids()->parts) {
        for (const GapIndex bounded : part.bounds) EXPECT_FALSE(bounded.valid()) << part.id;
    }
    for (const PlaceMark& mark : house().places()) EXPECT_EQ(mark.sign, PlaceSign::nothing);
}

/// A click on the solids of any gap, and a hand that rests there, open no card and no tip.
TEST_P(EachDrill, TellsNothingWherePointedAt) {
    house().show_whole_house();
    for (const DrillPlace& place : truth.places) {
        if (!place.at) continue;
        const auto shown =
            house().camera().shown_at(house().scene().frame().to_scene(*place.at), house().width(), house().height());
        if (!shown) continue;
        const QPoint at(static_cast<int>(std::lround(shown->x)), static_cast<int>(std::lround(shown->y)));
        if (!house().rect().contains(at)) continue;
        QTest::mouseClick(&house(), Qt::LeftButton, Qt::NoModifier, at);
        QApplication::processEvents();
        EXPECT_FALSE(page().picture().facts().isVisible());
        QHelpEvent help(QEvent::ToolTip, at, house().mapToGlobal(at));
        QApplication::sendEvent(&house(), &help);
        EXPECT_TRUE(QToolTip::text().isEmpty());
        house().show_whole_house();
    }
}

TEST_P(EachDrill, PassesPerfectAnswers) {
    say(perfect_answers(truth, "Ines Aguirre"));
    hand_in();
    EXPECT_TRUE(drill().result().passed);
    EXPECT_EQ(drill().result().points, drill().result().most);
    EXPECT_EQ(page().part(), DrillPage::Part::judged);
    for (std::size_t i = 0; i < truth.places.size(); ++i) {
        const bool due = drill().result().places[i].most > 0;
        EXPECT_EQ(drill().sign_of(i), due ? PlaceSign::right : PlaceSign::nothing) << i;
    }
}

TEST_P(EachDrill, ShowsTheWayThatWasMissed) {
    hand_in();
    EXPECT_FALSE(drill().result().passed);
    auto& list = part<QListWidget>("drill_results");
    std::size_t ways = 0;
    for (const PlaceFeedback& told : drill().feedback().places) {
        QListWidgetItem* row = row_of(list, told.place);
        ASSERT_NE(row, nullptr);
        list.setCurrentItem(row);
        QApplication::processEvents();
        EXPECT_EQ(drill().chosen(), static_cast<int>(told.place));
        JobDocument& shown = drill().shown();
        ASSERT_EQ(shown.chosen() != nullptr, told.way.has_value()) << told.title;
        if (!told.way) continue;
        ++ways;
        EXPECT_EQ(shown.chosen()->path, told.way->path);
        EXPECT_FALSE(house().scene().chosen_line().stops.empty()) << told.title;
        // The place that was missed is a stop of it, and in sight.
        const GapIndex missed = *truth.places[told.place].gap;
        EXPECT_NE(std::ranges::find(shown.chosen()->path.gaps, missed), shown.chosen()->path.gaps.end());
        for (const WayStop& stop : house().scene().chosen_line().stops) {
            const auto at = house().camera().shown_at(stop.at, house().width(), house().height());
            ASSERT_TRUE(at) << told.title;
            EXPECT_TRUE(house().rect().contains(static_cast<int>(at->x), static_cast<int>(at->y))) << told.title;
        }
        const auto mark = std::ranges::find(house().places(), static_cast<int>(told.place) + 1, &PlaceMark::number);
        ASSERT_NE(mark, house().places().end());
        EXPECT_EQ(mark->sign, PlaceSign::missed);
    }
    EXPECT_GT(ways, 0U);
}

TEST_P(EachDrill, SavesAnswersThatAreRead) {
    const Answers perfect = perfect_answers(truth, "Ines Aguirre");
    say(perfect);
    drill().set_trainee("Ines Aguirre", {});
    hand_in();
    const QString path = folder.filePath("answers.yaml");
    EXPECT_EQ(drill().save_answers(path), "");
    const Answers read = parse_answers(content(path).toStdString(), "answers.yaml", truth);
    EXPECT_EQ(read.trainee, "Ines Aguirre");
    ASSERT_EQ(read.findings.size(), perfect.findings.size());
    EXPECT_EQ(score(truth, read).points, drill().result().points);
    EXPECT_EQ(score(truth, read).most, drill().result().points);
}

/// What was said, chosen and judged is the same in the other language, in its words.
TEST_P(EachDrill, SpeaksSpanishInTheMiddle) {
    Answers half = perfect_answers(truth, "Ines Aguirre");
    half.findings.resize((half.findings.size() + 1) / 2);
    say(half);
    drill().choose(1);
    preferences.set_language(Preferences::Language::spanish);
    QApplication::processEvents();
    EXPECT_EQ(drill().answered(), half.findings.size());
    EXPECT_EQ(drill().chosen(), 1);
    const Translator say(Language::spanish);
    EXPECT_TRUE(
        part<QTextBrowser>("drill_story").toPlainText().contains(QString::fromStdString(truth.drill.story.spanish).left(30)));
    EXPECT_EQ(part<QListWidget>("drill_list").item(1)->data(DrillRow::title).toString(),
              "2. " + QString::fromStdString(briefing(truth, say).places[1].name));
    hand_in();
    EXPECT_EQ(part<QLabel>("drill_headline").text(), QString::fromStdString(drill().feedback().headline));
    const QString spanish = all_words();
    preferences.set_language(Preferences::Language::english);
    QApplication::processEvents();
    EXPECT_NE(all_words(), spanish);
    EXPECT_TRUE(part<QLabel>("drill_headline").text().contains("points"));
}

INSTANTIATE_TEST_SUITE_P(Shipped, EachDrill, testing::ValuesIn(drill_names()), [](const auto& one) {
    return QString::fromStdString(one.param).replace('-', '_').prepend("drill_").toStdString();
});

}  // namespace
}  // namespace seamward::viewer::test
