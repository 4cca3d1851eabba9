// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/picture_pane.h"

#include <QEvent>
#include <QShortcut>
#include <QVBoxLayout>

namespace seamward::viewer {

PicturePane::PicturePane(JobDocument& document, ClosingsDocument& closings, QWidget* parent)
    : QWidget(parent),
      document_(document),
      pages_(new QStackedWidget(this)),
      words_(new QLabel),
      canvas_(new PictureCanvas(document, closings)),
      tools_(new ViewTools(this)),
      ride_bar_(new RideBar(this)),
      facts_(new FactsCard(document, canvas_)),
      key_(new KeyPanel(this)) {
    words_->setObjectName("no_places");
    words_->setAlignment(Qt::AlignCenter);
    words_->setWordWrap(true);
    words_->setMargin(40);
    pages_->addWidget(canvas_);
    pages_->addWidget(words_);
    ride_bar_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(pages_, 1);
    column->addWidget(ride_bar_);
    column->addWidget(tools_);
    column->addWidget(key_);
    connect(&document, &JobDocument::opened, this, [this] {
        fresh_ = true;
        take_up();
    });
    connect(&document, &JobDocument::solids_ready, this, [this] {
        take_up();
        fresh_ = false;
    });
    connect(&document, &JobDocument::changed, this, [this] { facts_->hide(); });
    connect(&document, &JobDocument::way_chosen, this, [this] {
        canvas_->show_ways();
        canvas_->show_chosen_way();
        tools_->set_can_ride(canvas_->can_ride());
    });
    for (const auto signal : {&ClosingsDocument::planned, &ClosingsDocument::state_changed})
        connect(&closings, signal, canvas_, &PictureCanvas::show_closings);
    connect_tools();
    connect_ride();
    make_keys();
    retranslate();
}

void PicturePane::take_up() {
    const bool any = canvas_->show_job(!fresh_);
    pages_->setCurrentWidget(any ? static_cast<QWidget*>(canvas_) : words_);
    const HouseScene& scene = canvas_->scene();
    key_->set_house(scene.has_house());
    key_->setVisible(any && (!scene.has_house() || tools_->shows_key()));
    key_->set_grid_step(scene.grid_step());
    tools_->setVisible(scene.has_house());
    std::array<bool, coat_count> present{};
    for (std::size_t i = 0; i < coat_count; ++i) present.at(i) = scene.house().has(static_cast<Coat>(i));
    tools_->set_present(present);
    tools_->set_cut(canvas_->cut());
    canvas_->show_ways();
    if (fresh_) {
        facts_->hide();
        canvas_->show_chosen_way();
    }
    tools_->set_can_ride(canvas_->can_ride());
}

void PicturePane::connect_tools() {
    connect(tools_, &ViewTools::shown_changed, canvas_, &PictureCanvas::set_shown);
    connect(tools_, &ViewTools::open_changed, canvas_, &PictureCanvas::set_open);
    connect(tools_, &ViewTools::side_wanted, canvas_, &PictureCanvas::show_side);
    connect(tools_, &ViewTools::cut_changed, this, [this] { canvas_->set_cut(tools_->cut()); });
    connect(tools_, &ViewTools::measuring_changed, this,
            [this](bool measuring) { canvas_->set_tool(measuring ? PictureCanvas::Tool::measure : PictureCanvas::Tool::look); });
    connect(tools_, &ViewTools::key_wanted, key_, &QWidget::setVisible);
    connect(tools_, &ViewTools::ride_wanted, canvas_, &PictureCanvas::start_ride);
    connect(canvas_, &PictureCanvas::tool_changed, this,
            [this] { tools_->set_measuring(canvas_->tool() == PictureCanvas::Tool::measure); });
    connect(canvas_, &PictureCanvas::open_changed, tools_, &ViewTools::set_open);
    connect(canvas_, &PictureCanvas::picked, this, &PicturePane::show_picked);
    connect(facts_, &FactsCard::closed, this, [this] { canvas_->mark(std::nullopt); });
}

void PicturePane::connect_ride() {
    connect(canvas_, &PictureCanvas::ride_moved, this, [this](double seconds, bool going) {
        if (ride_bar_->isHidden()) {
            ride_bar_->set_duration(canvas_->ride_duration());
            ride_bar_->show();
            tools_->hide();
            facts_->hide();
            canvas_->setFocus();
        }
        ride_bar_->show_time(seconds);
        ride_bar_->show_going(going);
        ride_bar_->show_speed(canvas_->ride_speed(), canvas_->ride_speed() > PictureCanvas::slowest_ride,
                              canvas_->ride_speed() < PictureCanvas::fastest_ride);
        ride_bar_->set_words(canvas_->ride_words());
    });
    connect(canvas_, &PictureCanvas::ride_ended, this, [this] {
        ride_bar_->hide();
        tools_->setVisible(canvas_->scene().has_house());
    });
    connect(ride_bar_, &RideBar::going_wanted, canvas_, &PictureCanvas::set_ride_going);
    connect(ride_bar_, &RideBar::time_wanted, canvas_, &PictureCanvas::ride_to);
    connect(ride_bar_, &RideBar::speed_wanted, canvas_, &PictureCanvas::change_ride_speed);
    connect(ride_bar_, &RideBar::leave_wanted, canvas_, &PictureCanvas::end_ride);
    connect(ride_bar_, &RideBar::film_wanted, this, &PicturePane::film_wanted);
}

void PicturePane::make_keys() {
    const auto key = [this](const QKeySequence& keys, auto&& function) {
        auto* shortcut = new QShortcut(keys, this);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);  // letters typed elsewhere are letters
        connect(shortcut, &QShortcut::activated, this, function);
    };
    constexpr std::array sides{Qt::Key_S, Qt::Key_E, Qt::Key_N, Qt::Key_W, Qt::Key_T};
    for (std::size_t i = 0; i < sides.size(); ++i) key(sides.at(i), [this, i] { canvas_->show_side(static_cast<Side>(i)); });
    for (int i = 0; i < static_cast<int>(coat_count); ++i) {
        key(Qt::Key_1 + i, [this, i] {
            if (canvas_->scene().house().has(static_cast<Coat>(i))) tools_->step(static_cast<Coat>(i));
        });
    }
    key(Qt::Key_I, [this] {
        if (canvas_->is_riding()) return;  // whoever rides is inside
        const bool open = !canvas_->scene().house().is_open();
        tools_->set_open(open);
        canvas_->set_open(open);
    });
    key(Qt::Key_M, [this] {
        if (canvas_->is_riding() || !canvas_->scene().has_house()) return;
        canvas_->set_tool(canvas_->tool() == PictureCanvas::Tool::measure ? PictureCanvas::Tool::look
                                                                          : PictureCanvas::Tool::measure);
    });
    key(Qt::Key_R, [this] { canvas_->start_ride(); });
}

void PicturePane::show_picked(const Picked& what) {
    if (canvas_->story() == PictureCanvas::Story::drill) return;  // it is for the trainee to find out
    if (what.gap) {
        show_gap(*what.gap);
        emit gap_chosen(*what.gap);
    } else if (what.part && what.at) {
        canvas_->mark(std::nullopt);
        facts_->show_part(*what.part, *what.at);
    } else {
        canvas_->mark(std::nullopt);
        facts_->hide();
    }
}

void PicturePane::show_gap(GapIndex gap) {
    canvas_->mark(gap);
    facts_->show_gap(gap);
}

void PicturePane::set_story(PictureCanvas::Story story) {
    canvas_->set_story(story);
    retranslate();
}

void PicturePane::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

void PicturePane::retranslate() {
    if (canvas_->story() == PictureCanvas::Story::drill)
        return words_->setText(tr("There is no picture of this house. Take the places from the list."));
    words_->setText(
        tr("No gap of this job has a position, so there is nothing to draw.\n\n"
           "The ways in are in the list. To see them here, give gaps a position in the job file:\n"
           "at: [4.5 m, 9 m, 0.05 m]"));
}

}  // namespace seamward::viewer
