// SPDX-License-Identifier: GPL-3.0-or-later
// Two thousand things that somebody may do to the window, in an order that makes no sense.
#include <unistd.h>

#include <QComboBox>
#include <QListWidget>
#include <QMouseEvent>
#include <QPushButton>
#include <QWheelEvent>
#include <cmath>
#include <csignal>
#include <cstdio>
#include <cstring>
#include <random>
#include <span>

#include "panels/closings_list.h"
#include "panels/price_curve.h"
#include "paths/trace.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

constexpr int actions = 2'000;

/// The same in every run, unless somebody wants another.
unsigned chosen_seed() {
    const QByteArray other = qgetenv("SEAMWARD_TEST_SEED");
    return other.isEmpty() ? 20'261 : other.toUInt();
}

const unsigned seed = chosen_seed();

std::array<char, 160> last_action{};

extern "C" void tell_last_action(int signal) {
    (void)!write(STDERR_FILENO, last_action.data(), std::strlen(last_action.data()));
    std::signal(signal, SIG_DFL);
    (void)std::raise(signal);
}

class RandomActions : public WholeWindowFixture {
protected:
    struct Action {
        const char* name;
        int weight;
        std::function<void()> act;
    };

    int any(int below) { return static_cast<int>(random() % static_cast<unsigned>(std::max(1, below))); }
    QPoint any_place() { return {any(canvas().width()), any(canvas().height())}; }
    void drag(Qt::MouseButton button) {
        const QPoint from = any_place();
        QTest::mousePress(&canvas(), button, Qt::NoModifier, from);
        QPoint to = from;
        for (int i = 0; i < 3; ++i) {
            to += QPoint(any(81) - 40, any(81) - 40);
            QMouseEvent move(QEvent::MouseMove, to, button, button, Qt::NoModifier);
            QApplication::sendEvent(&canvas(), &move);
        }
        QTest::mouseRelease(&canvas(), button, Qt::NoModifier, to);
    }
    void wheel() {
        const QPointF at = any_place();
        QWheelEvent turn(at, canvas().mapToGlobal(at.toPoint()), {}, {0, any(2) == 0 ? 120 : -240}, Qt::NoButton, Qt::NoModifier,
                         Qt::NoScrollPhase, false);
        QApplication::sendEvent(&canvas(), &turn);
    }
    void step(QComboBox& box) {
        constexpr std::array keys{Qt::Key_Home, Qt::Key_End, Qt::Key_Down, Qt::Key_Up};
        QTest::keyClick(&box, keys.at(static_cast<std::size_t>(any(4))));
    }
    void click_one_of(std::span<const char* const> names) {
        auto& button = part<QAbstractButton>(names[static_cast<std::size_t>(any(static_cast<int>(names.size())))]);
        if (button.isVisible() && button.isEnabled()) button.click();
    }
    void tick() {
        window->show_page(MainWindow::Page::closings);
        auto* list = window->findChild<ClosingsList*>();
        list->setCurrentRow(any(list->count()));
        QTest::keyClick(list, Qt::Key_Space);
    }
    void drag_prices() {
        window->show_page(MainWindow::Page::closings);
        auto* curve = window->findChild<PriceCurve*>();
        const auto place = [&] { return QPoint(any(curve->width()), curve->height() / 2); };
        const QPoint from = place();
        QTest::mousePress(curve, Qt::LeftButton, Qt::NoModifier, from);
        QPoint to = from;
        for (int i = 0; i < 3; ++i) {
            to = place();
            QMouseEvent move(QEvent::MouseMove, to, Qt::LeftButton, Qt::LeftButton, Qt::NoModifier);
            QApplication::sendEvent(curve, &move);
        }
        QTest::mouseRelease(curve, Qt::LeftButton, Qt::NoModifier, to);
    }
    SurveyPanel& panel() { return *window->findChild<SurveyPanel*>(); }
    void choose_gap() {
        window->show_page(MainWindow::Page::survey);
        panel().choose_gap({static_cast<std::uint32_t>(any(static_cast<int>(window->document().job().survey.gaps.size())))});
    }
    void type_width() {
        constexpr std::array texts{"3 mm", "1/8 in", "0 mm",   "abc",    "-2 mm",  "3",    "1e9 mm",
                                   "",     "7.5mm",  "1/0 in", "3/16\"", "2 mm 3", "12 mm"};
        choose_gap();
        QLineEdit& line = panel().form().fields().width->line();
        line.setFocus();
        line.selectAll();
        QTest::keyClicks(&line, texts.at(static_cast<std::size_t>(any(static_cast<int>(texts.size())))));
        if (any(3) > 0) QTest::keyClick(&line, Qt::Key_Return);
    }
    void edit_words() {
        choose_gap();
        GapFields& fields = panel().form().fields();
        if (any(2) == 0) {
            fields.note->setFocus();
            QTest::keyClicks(fields.note, "seen: \"x\" #1");
        } else {
            fields.close->click();
        }
    }
    void add_gap() {
        const Point at{any(18) * 1.0, any(12) * 1.0, 0.3};
        window->show_page(MainWindow::Page::survey);
        panel().begin_gap_at(at, "wall");
        GapFields& fields = panel().form().fields();
        fields.width->type("2 mm");
        fields.second->type("1 m");
        (any(4) == 0 ? fields.cancel : fields.add)->click();
    }
    void ride() {
        if (!canvas().is_riding()) canvas().start_ride();
        canvas().ride_to(canvas().ride_duration() * any(1000) / 999);
    }
    void undo_or_redo(QKeySequence::StandardKey keys) {
        for (QAction* one : window->findChildren<QAction*>()) {
            if (one->shortcut() == QKeySequence(keys) && one->isEnabled()) return one->trigger();
        }
    }
    void press_key() {
        constexpr std::array keys{Qt::Key_Home, Qt::Key_Escape, Qt::Key_S,     Qt::Key_T,     Qt::Key_I,
                                  Qt::Key_M,    Qt::Key_R,      Qt::Key_1,     Qt::Key_2,     Qt::Key_Left,
                                  Qt::Key_Up,   Qt::Key_Plus,   Qt::Key_Minus, Qt::Key_Space, Qt::Key_Down};
        canvas().setFocus();
        QTest::keyClick(&canvas(), keys.at(static_cast<std::size_t>(any(static_cast<int>(keys.size())))));
    }
    std::vector<Action> known_actions() {
        static constexpr std::array coats{"coat_roof",     "coat_walls",  "coat_framing", "coat_linings",
                                          "coat_fixtures", "coat_ground", "open_house"};
        static constexpr std::array sides{"side_south", "side_east", "side_north", "side_west", "side_above"};
        static constexpr std::array pages{"page_ways", "page_closings", "page_survey"};
        static constexpr std::array facts{"facts_act", "facts_close"};
        static constexpr std::array riding{"ride_going", "ride_leave", "ride"};
        return {
            {"choose a way", 10, [this] { part<QListWidget>("ways").setCurrentRow(any(part<QListWidget>("ways").count())); }},
            {"choose an animal", 4, [this] { step(part<QComboBox>("animals")); }},
            {"choose a room", 4, [this] { step(part<QComboBox>("rooms")); }},
            {"tick", 8, [this] { tick(); }},
            {"drag along the prices", 4, [this] { drag_prices(); }},
            {"measure", 3, [this] { part<QAbstractButton>("measure").click(); }},
            {"wait for a place", 2, [this] { panel().form().fields().move->click(); }},
            {"a coat", 6, [this] { click_one_of(coats); }},
            {"a side", 4, [this] { click_one_of(sides); }},
            {"cut", 3, [this] { part<QComboBox>("cut_from").setCurrentIndex(any(6)); }},
            {"cut deeper", 3, [this] { part<QSlider>("cut_depth").setValue(any(1001)); }},
            {"turn", 8, [this] { drag(Qt::LeftButton); }},
            {"move", 6, [this] { drag(Qt::RightButton); }},
            {"come closer", 6, [this] { wheel(); }},
            {"click", 12, [this] { QTest::mouseClick(&canvas(), Qt::LeftButton, Qt::NoModifier, any_place()); }},
            {"what is known", 3, [this] { click_one_of(facts); }},
            {"type a width", 8, [this] { type_width(); }},
            {"edit words", 3, [this] { edit_words(); }},
            {"add a gap", 3, [this] { add_gap(); }},
            {"remove a gap", 2, [this] { panel().remove_chosen(); }},
            {"undo", 7, [this] { undo_or_redo(QKeySequence::Undo); }},
            {"redo", 5, [this] { undo_or_redo(QKeySequence::Redo); }},
            {"ride", 5, [this] { ride(); }},
            {"steer the ride", 4, [this] { click_one_of(riding); }},
            {"a page", 5, [this] { click_one_of(pages); }},
            {"a key", 8, [this] { press_key(); }},
            {"another language", 1,
             [this] { preferences.set_language(any(2) == 0 ? Preferences::Language::english : Preferences::Language::spanish); }},
            {"other letters", 1,
             [this] { preferences.set_text_size(Preferences::text_sizes.at(static_cast<std::size_t>(any(4)))); }},
            {"other colors", 1, [this] { preferences.set_high_contrast(any(2) == 0); }},
            {"another size", 2, [this] { window->resize(800 + any(300), 500 + any(200)); }},
        };
    }
    /// The ways are those that the engine gives for the survey with all that is ticked.
    void expect_ways() {
        JobDocument& document = window->document();
        const ClosingsDocument& closings = window->closings();
        Survey survey = document.filed()->survey;
        for (const OfferedClosing& offer : closings.plan().offers) {
            if (closings.is_ticked(offer)) close_gap(survey.gaps[offer.gap.value], closings.chosen(offer).opening);
        }
        TraceSettings settings{.top = JobDocument::ways_wanted};
        if (document.animal() >= 0) settings.pests = {document.job().pests[static_cast<std::size_t>(document.animal())]};
        if (document.room() >= 0) settings.to = {document.rooms()[static_cast<std::size_t>(document.room())]};
        const Trace expected = trace(survey, settings, RunContext());
        ASSERT_EQ(document.ways().paths.size(), expected.paths.size());
        for (std::size_t i = 0; i < expected.paths.size(); ++i) ASSERT_EQ(document.ways().paths[i].path, expected.paths[i].path);
    }
    void expect_sound_window() {
        const Point eye = canvas().camera().eye();
        ASSERT_TRUE(std::isfinite(eye.x) && std::isfinite(eye.y) && std::isfinite(eye.z));
        ASSERT_GT(canvas().camera().distance, 0);
        if (!canvas().is_riding()) {
            ASSERT_GT(eye.z, 0) << "under the ground";
            ASSERT_EQ(part<QAbstractButton>("open_house").isChecked(), canvas().scene().house().is_open());
        }
        ASSERT_EQ(QApplication::activeModalWidget(), nullptr);
        ASSERT_EQ(QApplication::activePopupWidget(), nullptr);
        ASSERT_EQ(part<QWidget>("ride_bar").isVisible(), canvas().is_riding());
        const PictureCanvas::Tool tool = canvas().tool();
        ASSERT_EQ(part<QAbstractButton>("measure").isChecked(), tool == PictureCanvas::Tool::measure);
        ASSERT_EQ(panel().form().fields().move->isChecked(), tool == PictureCanvas::Tool::place);
        ASSERT_EQ(window->picture().tools().cut(), canvas().cut());
    }

    std::mt19937 random{seed};
};

TEST_F(RandomActions, LeaveTheWindowSound) {
    open(own_demo());
    window->resize(800, 500);
    const std::string original = window->survey().text();
    const std::vector<Action> known = known_actions();
    std::vector<const Action*> by_weight;
    for (const Action& one : known) by_weight.insert(by_weight.end(), static_cast<std::size_t>(one.weight), &one);
    std::signal(SIGSEGV, tell_last_action);
    std::signal(SIGABRT, tell_last_action);
    int rides = 0, edited = 0, ticked = 0;
    for (int i = 0; i < actions; ++i) {
        const Action& action = *by_weight[static_cast<std::size_t>(any(static_cast<int>(by_weight.size())))];
        std::snprintf(last_action.data(), last_action.size(), "seed %u, action %d: %s\n", seed, i, action.name);
        SCOPED_TRACE(last_action.data());
        action.act();
        if (canvas().is_riding()) ++rides;
        if (window->survey().is_modified()) ++edited;
        if (!window->closings().state().empty()) ++ticked;
        QApplication::processEvents();
        expect_sound_window();
        if (i % 50 == 49 && !HasFailure()) {
            ASSERT_TRUE(wait_idle());
            expect_ways();
            expect_marks();
        }
        if (HasFailure()) return;
    }
    SCOPED_TRACE("taking all back");
    // All that was tried was really done now and then.
    for (const int times : {rides, edited, ticked}) EXPECT_GT(times, actions / 20);
    canvas().end_ride();
    panel().commit();
    for (int i = 0; i < 3 * actions && (window->survey().can_undo() || !idle()); ++i) {
        undo_or_redo(QKeySequence::Undo);
        const bool idle_now = i % 20 != 0 || wait_idle();
        ASSERT_TRUE(idle_now);
    }
    ASSERT_TRUE(wait_idle());
    EXPECT_EQ(window->survey().text(), original);
    EXPECT_FALSE(window->survey().is_modified());
    for (const ClosingState& one : window->closings().state()) EXPECT_FALSE(one.ticked) << one.gap;
    expect_ways();
    expect_marks();
    std::signal(SIGSEGV, SIG_DFL);
    std::signal(SIGABRT, SIG_DFL);
}

}  // namespace
}  // namespace seamward::viewer::test
