// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include <QCloseEvent>
#include <QFileInfo>
#include <QGuiApplication>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QScreen>
#include <QSplitter>
#include <QStatusBar>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "panels/ways_panel.h"
#include "window/fault_box.h"

namespace seamward::viewer {

namespace {

/// How much larger letters are than usual.
double larger(const QFont& font) { return font.pointSizeF() / 10; }

}  // namespace

MainWindow::MainWindow(Preferences& preferences, RecentJobs& recent)
    : preferences_(preferences),
      recent_(recent),
      document_(new JobDocument(this)),
      closings_(new ClosingsDocument(*document_, this)),
      survey_(new SurveyDocument(*document_, this)),
      report_(new ReportDocument(*document_, *closings_, this)),
      pages_(new QStackedWidget(this)),
      sides_(new QStackedWidget(this)),
      start_(new StartPage(recent, shipped_examples())),
      hint_(new QLabel(this)) {
    setMinimumSize(800, 500);
    const QSize room = QGuiApplication::primaryScreen()->availableSize() - QSize(0, 40);  // a title takes its part
    resize(QSize(1280, 800).boundedTo(room));
    work_ = make_work_page();
    pages_->addWidget(start_);
    pages_->addWidget(work_);
    setCentralWidget(pages_);
    hint_->setObjectName("hint");
    hint_->setContentsMargins(0, 0, 10, 0);
    hint_->hide();
    statusBar()->addPermanentWidget(hint_);
    statusBar()->setSizeGripEnabled(false);
    hints_ = new FirstHints(preferences, &picture_->canvas());
    make_menus();
    connect_documents();
    connect_panels();
    connect_start();
    ticks_rest_.setSingleShot(true);
    ticks_rest_.setInterval(350);
    connect(&ticks_rest_, &QTimer::timeout, this, &MainWindow::remember_ticks);
    show_left_behind();
    show_page(Page::ways);
    retranslate();
    update_actions();
}

QWidget* MainWindow::make_page_buttons() {
    auto* strip = new QWidget;
    strip->setObjectName("pages");
    auto* row = new QHBoxLayout(strip);
    row->setContentsMargins(14, 10, 14, 0);
    row->setSpacing(6);
    constexpr std::array names{"page_ways", "page_closings", "page_survey"};
    for (std::size_t i = 0; i < page_buttons_.size(); ++i) {
        page_buttons_.at(i) = new QToolButton(strip);
        page_buttons_.at(i)->setObjectName(names.at(i));
        page_buttons_.at(i)->setCheckable(true);
        page_buttons_.at(i)->setAutoExclusive(true);
        page_buttons_.at(i)->setFocusPolicy(Qt::TabFocus);
        page_buttons_.at(i)->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        row->addWidget(page_buttons_.at(i), 1);
        connect(page_buttons_.at(i), &QToolButton::clicked, this, [this, i] { show_page(static_cast<Page>(i)); });
    }
    return strip;
}

QWidget* MainWindow::make_work_page() {
    auto* halves = new QSplitter(Qt::Horizontal);
    halves->setChildrenCollapsible(false);
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    closings_panel_ = new ClosingsPanel(*closings_);
    survey_panel_ = new SurveyPanel(*document_, *survey_);
    sides_->addWidget(new WaysPanel(*document_));
    sides_->addWidget(closings_panel_);
    sides_->addWidget(survey_panel_);
    column->addWidget(make_page_buttons());
    column->addWidget(sides_, 1);
    column->addStrut(320);
    picture_ = new PicturePane(*document_, *closings_);
    halves->addWidget(left);
    halves->addWidget(picture_);
    halves->setStretchFactor(0, 0);
    halves->setStretchFactor(1, 1);
    halves_ = halves;
    connect(halves, &QSplitter::splitterMoved, this, [this](int at) { left_ = at / larger(font()); });
    fit_left();
    return halves;
}

void MainWindow::show_page(Page page) {
    sides_->setCurrentIndex(static_cast<int>(page));
    page_buttons_.at(static_cast<std::size_t>(page))->setChecked(true);
    picture_->set_story(static_cast<PictureCanvas::Story>(page));
    if (page != Page::survey && picture_->canvas().tool() == PictureCanvas::Tool::place)
        picture_->canvas().set_tool(PictureCanvas::Tool::look);
}

void MainWindow::connect_documents() {
    connect(pages_, &QStackedWidget::currentChanged, this, &MainWindow::update_title);
    connect(document_, &JobDocument::opened, this, [this] {
        if (drill_ != nullptr) drill_->document().close();  // who had answers there was asked before
        pages_->setCurrentWidget(work_);
        recent_.add(document_->path(), document_->job());
        ticks_.clear();
        update_title();
        update_actions();
        hint_->setVisible(picture_->canvas().scene().has_places());
    });
    connect(document_, &JobDocument::changed, this, &MainWindow::update_title);
    connect(document_, &JobDocument::solids_ready, this, [this] {
        hint_->show();
        update_actions();
        hints_->start();
    });
    connect(document_, &JobDocument::way_chosen, this, &MainWindow::update_actions);
    connect(document_, &JobDocument::busy_changed, this, [this](const QString& doing) { statusBar()->showMessage(doing); });
    const auto show_open_fault = [this](const OpenFault& fault) {
        statusBar()->showMessage(fault.text.section('\n', 0, 0));
        show_fault(*this, fault);
    };
    connect(document_, &JobDocument::open_failed, this, show_open_fault);
    connect(document_, &JobDocument::solids_failed, this, show_open_fault);
    connect(survey_, &SurveyDocument::modified_changed, this, &MainWindow::update_title);
    connect(survey_, &SurveyDocument::history_changed, this, &MainWindow::update_actions);
    connect(survey_, &SurveyDocument::edit_failed, this, [this](const QString& why) { statusBar()->showMessage(why, 20'000); });
    connect(survey_, &SurveyDocument::save_failed, this, [this](const QString& why) { tell_fault(why); });
    connect(survey_, &SurveyDocument::draft_failed, this, [this](const QString& why) { statusBar()->showMessage(why); });
    connect(survey_, &SurveyDocument::saved, this, [this](const QString& path) {
        recent_.add(path, document_->job());
        statusBar()->showMessage(tr("Saved %1").arg(path), 6'000);
        update_title();
    });
    connect(report_, &ReportDocument::busy_changed, this, [this](const QString& doing) { statusBar()->showMessage(doing); });
    connect(report_, &ReportDocument::written, this, &MainWindow::tell_report);
    connect(report_, &ReportDocument::failed, this, [this](const OpenFault& fault) { tell_fault(fault.text); });
    connect(closings_, &ClosingsDocument::planned, this, [this] {
        // What was ticked while the plan was made is a change; what only went with its gap is none.
        if (ticks_rest_.isActive()) remember_ticks();
        ticks_rest_.stop();
        ticks_ = closings_->remembered();
    });
    connect(closings_, &ClosingsDocument::state_changed, this, [this] {
        if (!taking_back_ && closings_->remembered() != ticks_) ticks_rest_.start();  // none, where the plan was made anew
    });
}

void MainWindow::connect_panels() {
    connect(closings_panel_, &ClosingsPanel::gap_chosen, this, [this](GapIndex gap) { picture_->show_gap(gap); });
    connect(survey_panel_, &SurveyPanel::gap_chosen, this, [this](GapIndex gap) {
        if (picture_->facts().isVisible()) return picture_->show_gap(gap);  // the card tells of the same gap
        picture_->canvas().mark(gap);
    });
    connect(&picture_->canvas(), &PictureCanvas::tool_changed, this, [this] {
        if (picture_->canvas().tool() == PictureCanvas::Tool::measure)
            statusBar()->showMessage(tr("Click two points of the house. Press Escape to end measuring."), 15'000);
    });
    connect(survey_panel_, &SurveyPanel::wants_point, this, [this](bool wanted) {
        const bool waits = picture_->canvas().tool() == PictureCanvas::Tool::place;
        if (wanted != waits) picture_->canvas().set_tool(wanted ? PictureCanvas::Tool::place : PictureCanvas::Tool::look);
        const QString ask = tr("Click the place on the house");
        if (wanted) statusBar()->showMessage(ask, 20'000);
        if (!wanted && statusBar()->currentMessage() == ask) statusBar()->clearMessage();
    });
    connect(&picture_->canvas(), &PictureCanvas::tool_changed, this, [this] {
        if (picture_->canvas().tool() != PictureCanvas::Tool::place) survey_panel_->stop_waiting();
    });
    connect(&picture_->canvas(), &PictureCanvas::placed, survey_panel_, &SurveyPanel::take_point);
    connect(picture_, &PicturePane::gap_chosen, this, [this](GapIndex gap) {
        closings_panel_->show_gap(gap);
        if (sides_->currentWidget() == survey_panel_) survey_panel_->choose_gap(gap);
    });
    connect(&picture_->facts(), &FactsCard::survey_wanted, this, [this](GapIndex gap) {
        show_page(Page::survey);
        survey_panel_->choose_gap(gap);
    });
    connect(&picture_->facts(), &FactsCard::gap_wanted, this, [this](const Point& at, const QString& part) {
        show_page(Page::survey);
        survey_panel_->begin_gap_at(at, part);
    });
    connect(&picture_->facts(), &FactsCard::feature_wanted, this, [this](const Point& at, const QString& part) {
        show_page(Page::survey);
        survey_panel_->begin_feature_at(at, part.toStdString());
    });
    connect(picture_, &PicturePane::film_wanted, this, [this] {
        picture_->canvas().set_ride_going(false);
        save_somewhere(tr("Save the ride as a film"), tr("Films (*.ogv)"), QStringLiteral("ogv"), &MainWindow::save_film);
    });
}

void MainWindow::connect_start() {
    connect(start_, &StartPage::job_wanted, this, &MainWindow::open);
    connect(start_, &StartPage::open_wanted, this, &MainWindow::ask_for_job);
    connect(start_, &StartPage::new_house_wanted, this, &MainWindow::ask_for_new_house);
    connect(start_, &StartPage::model_wanted, this, [this] { ask_for_model({}); });
    connect(start_, &StartPage::recover_wanted, this, [this](int which) {
        if (document_->is_opening_another() || !may_leave()) return;
        if (survey_->recover(left_behind_.at(static_cast<std::size_t>(which)))) return;
        tell_fault(tr("Another window has opened that work."));
        show_left_behind();
    });
    connect(start_, &StartPage::discard_wanted, this, [this](int which) {
        DraftStore::discard(left_behind_.at(static_cast<std::size_t>(which)));
        show_left_behind();
    });
}

void MainWindow::show_left_behind() {
    left_behind_ = DraftStore::left_behind();
    QStringList lines;
    for (const Draft& draft : left_behind_)
        lines << tr("%1 (%2), changed %3", "job, its file, day and time")
                     .arg(draft.job_name(), QFileInfo(draft.job.path).fileName(),
                          QLocale().toString(draft.written.toLocalTime(), QLocale::ShortFormat));
    start_->set_left_behind(lines);
}

void MainWindow::remember_ticks() {
    if (!closings_->has_plan()) return;
    const std::vector<ClosingState> now = closings_->remembered();
    if (now == ticks_) return;
    const auto set = [this](const std::vector<ClosingState>& state) {
        if (state == closings_->remembered()) return;  // as when it is remembered: whoever ticked may be on another page by now
        taking_back_ = true;
        closings_->set_state(state);
        taking_back_ = false;
        ticks_ = closings_->remembered();
        show_page(Page::closings);
    };
    survey_->push({tr("ticks of closings"), [set, now] { set(now); }, [set, before = ticks_] { set(before); }});
    ticks_ = now;
}

void MainWindow::update_title() {
    if (drill_ != nullptr && pages_->currentWidget() == drill_ && drill_->document().has_drill()) {
        setWindowTitle(tr("%1[*] - Seamward").arg(drill_->document().title()));
        setWindowModified(false);
        return update_actions();
    }
    setWindowTitle(document_->has_job() ? tr("%1[*] - Seamward").arg(document_->title()) : tr("Seamward"));
    setWindowModified(document_->has_job() && survey_->is_modified());
    update_actions();
}

void MainWindow::update_actions() {
    // A drill stands before the job; what is done to the job is done where it shows.
    const bool drill = drill_ != nullptr && drill_->document().has_drill();
    first_page_->setEnabled(drill || document_->has_job());
    const bool job = document_->has_job() && !(drill && pages_->currentWidget() == drill_);
    for (QAction* action : with_job_) action->setEnabled(job);
    for (QAction* action : with_house_) action->setEnabled(job && picture_->canvas().scene().has_house());
    for (QToolButton* button : page_buttons_) button->setEnabled(job);
    undo_->setEnabled(job && survey_->can_undo());
    redo_->setEnabled(job && survey_->can_redo());
    undo_->setText(survey_->undo_text());
    redo_->setText(survey_->redo_text());
    save_->setEnabled(job && survey_->is_modified());
}

bool MainWindow::tell_fault(const QString& what) {
    QMessageBox box(QMessageBox::Warning, tr("Seamward"), what, QMessageBox::Ok, this);
    box.setObjectName("fault");
    box.exec();
    return false;
}

bool MainWindow::may_leave() {
    if (drill_ != nullptr && !drill_->may_leave()) return false;
    if (!document_->has_job()) return true;
    survey_panel_->commit();
    if (!survey_->is_modified()) return true;
    QMessageBox box(QMessageBox::Question, tr("Seamward"),
                    tr("The survey of %1 has changes that are not saved.").arg(document_->title()),
                    QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
    box.setObjectName("unsaved");
    switch (box.exec()) {
        case QMessageBox::Save: return save();
        case QMessageBox::Discard: return true;
        default: return false;
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (may_leave()) {
        QMainWindow::closeEvent(event);
    } else {
        event->ignore();
    }
}

void MainWindow::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::FontChange) fit_left();
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QMainWindow::resizeEvent(event);
    fit_left();
}

/// Larger letters need more room, but the picture keeps the larger part.
void MainWindow::fit_left() {
    if (halves_ == nullptr) return;
    const int left = std::min(static_cast<int>(std::lround(left_ * larger(font()))), width() * 9 / 20);
    halves_->setSizes({left, width() - left});
    if (drill_ != nullptr) drill_->set_left(left, width());
}

}  // namespace seamward::viewer
