// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/drill_page.h"

#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>
#include <QVBoxLayout>

#include "layers/prepared_house.h"
#include "panels/trainee_dialog.h"

namespace seamward::viewer {

DrillPage::DrillPage(QWidget* parent)
    : QWidget(parent),
      no_closings_(no_job_),
      sides_(new QStackedWidget),
      task_(new DrillTask(document_)),
      places_(new DrillPlaces(document_)),
      judged_(new DrillJudged(document_)),
      picture_(new PicturePane(document_.shown(), no_closings_)),
      halves_(new QSplitter(Qt::Horizontal, this)) {
    setObjectName("drill_page");
    document_.prepare_solids_with([](const House& house, const RunContext& context) { return prepare_house(house, context); });
    picture_->set_story(PictureCanvas::Story::drill);
    if (auto* film = picture_->findChild<QWidget*>("ride_film")) film->hide();  // of a drill no ride is saved
    halves_->setChildrenCollapsible(false);
    halves_->addWidget(make_left());
    halves_->addWidget(picture_);
    halves_->setStretchFactor(0, 0);
    halves_->setStretchFactor(1, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(halves_);
    connect_document();
    connect_panels();
    show_part(Part::task);
    retranslate();
}

QWidget* DrillPage::make_left() {
    auto* strip = new QWidget;
    strip->setObjectName("pages");
    auto* row = new QHBoxLayout(strip);
    row->setContentsMargins(14, 10, 14, 0);
    row->setSpacing(6);
    constexpr std::array names{"drill_part_task", "drill_part_places", "drill_part_judged"};
    for (std::size_t i = 0; i < part_buttons_.size(); ++i) {
        auto* button = new QToolButton(strip);
        button->setObjectName(names.at(i));
        button->setCheckable(true);
        button->setAutoExclusive(true);
        button->setFocusPolicy(Qt::TabFocus);
        button->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
        row->addWidget(button, 1);
        connect(button, &QToolButton::clicked, this, [this, i] { show_part(static_cast<Part>(i)); });
        part_buttons_.at(i) = button;
    }
    auto* left = new QWidget;
    auto* column = new QVBoxLayout(left);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    for (QWidget* side : {static_cast<QWidget*>(task_), static_cast<QWidget*>(places_), static_cast<QWidget*>(judged_)})
        sides_->addWidget(side);
    column->addWidget(strip);
    column->addWidget(sides_, 1);
    column->addStrut(320);
    return left;
}

void DrillPage::connect_document() {
    connect(&document_, &DrillDocument::opened, this, [this] {
        mark_places();
        show_part(Part::task);
        picture_->canvas().show_whole_house();
    });
    connect(&document_, &DrillDocument::answers_changed, this, &DrillPage::mark_places);
    connect(&document_, &DrillDocument::place_chosen, this, [this](int place) {
        mark_places();
        fly_to(place);
    });
    connect(&document_, &DrillDocument::handed_in, this, [this] {
        mark_places();
        show_part(Part::judged);
        picture_->canvas().show_whole_house();
        judged_->focus_list();
    });
}

void DrillPage::connect_panels() {
    connect(task_, &DrillTask::begin_wanted, this, [this] {
        show_part(document_.is_handed_in() ? Part::judged : Part::places);
        if (!document_.is_handed_in()) places_->focus_list();
    });
    connect(task_, &DrillTask::trainee_wanted, this, &DrillPage::ask_for_trainee);
    connect(task_, &DrillTask::leave_wanted, this, &DrillPage::leave);
    connect(places_, &DrillPlaces::hand_in_wanted, this, &DrillPage::hand_in);
    connect(judged_, &DrillJudged::again_wanted, &document_, &DrillDocument::begin_again);
    connect(judged_, &DrillJudged::save_wanted, this, &DrillPage::save_answers);
    connect(judged_, &DrillJudged::keep_wanted, this, &DrillPage::keep);
    connect(judged_, &DrillJudged::leave_wanted, this, &DrillPage::leave);
    connect(&picture_->canvas(), &PictureCanvas::picked, this, &DrillPage::take_pick);
}

void DrillPage::show_part(Part part) {
    const bool handed_in = document_.has_drill() && document_.is_handed_in();
    if (part == Part::places && handed_in) part = Part::judged;
    if (part == Part::judged && !handed_in) part = Part::places;
    part_buttons_.at(static_cast<std::size_t>(Part::places))->setEnabled(!handed_in);
    part_buttons_.at(static_cast<std::size_t>(Part::judged))->setEnabled(handed_in);
    sides_->setCurrentIndex(static_cast<int>(part));
    part_buttons_.at(static_cast<std::size_t>(part))->setChecked(true);
}

void DrillPage::set_left(int pixels, int whole) { halves_->setSizes({pixels, whole - pixels}); }

void DrillPage::take_pick(const Picked& what) {
    if (!document_.has_drill()) return;
    std::optional<std::size_t> place = picture_->canvas().place_at(what.pixel);
    if (place) place = static_cast<std::size_t>(picture_->canvas().places().at(*place).number - 1);
    if (!place && what.at) place = document_.place_near(*what.at);
    if (!place) {
        if (what.at)
            emit told(tr("No place of this drill is within reach of there. Click closer to one, or take it from the list."));
        return;
    }
    emit told({});
    show_part(document_.is_handed_in() ? Part::judged : Part::places);
    document_.choose(static_cast<int>(*place));
    if (document_.is_handed_in()) return judged_->focus_list();
    places_->form().begin();
}

void DrillPage::fly_to(int place) {
    if (place == DrillDocument::no_place) return;
    PictureCanvas& canvas = picture_->canvas();
    if (document_.is_handed_in() && document_.shown().chosen() != nullptr && !canvas.scene().chosen_line().stops.empty())
        return canvas.show_around({});
    const auto& at = document_.round().places.at(static_cast<std::size_t>(place)).at;
    if (at) canvas.show_around({*at});
}

void DrillPage::mark_places() {
    std::vector<PlaceMark> marks;
    for (std::size_t i = 0; document_.has_drill() && i < document_.place_count(); ++i) {
        const auto& at = document_.round().places[i].at;
        const bool chosen = document_.chosen() == static_cast<int>(i);
        const PlaceSign sign = document_.sign_of(i);
        if (!at || (sign == PlaceSign::nothing && !chosen)) continue;
        PlaceMark mark{*at, static_cast<int>(i + 1), sign, {}};
        if (chosen) {
            mark.name = tr("%1. %2", "number and name of a place")
                            .arg(mark.number)
                            .arg(QString::fromStdString(document_.told().places.at(i).name));
            if (sign != PlaceSign::nothing) mark.name = tr("%1: %2", "place, verdict").arg(mark.name, sign_words(sign));
        }
        marks.push_back(mark);
    }
    picture_->canvas().set_places(std::move(marks));
}

void DrillPage::hand_in() {
    show_part(Part::places);
    if (!places_->form().commit()) return;
    const std::size_t left = document_.place_count() - document_.answered();
    const QString missing = left == 0 ? QString() : tr("Nothing is said of %n place(s).", nullptr, static_cast<int>(left)) + ' ';
    QMessageBox box(QMessageBox::Question, tr("Seamward"),
                    missing + tr("Once it is handed in, what you found is judged and cannot be changed."), QMessageBox::NoButton,
                    this);
    box.setObjectName("hand_in_question");
    QPushButton* yes = box.addButton(tr("&Hand in"), QMessageBox::AcceptRole);
    yes->setObjectName("hand_in_now");
    box.addButton(tr("&Look further"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() != yes) return;
    document_.hand_in();
    if (!document_.trainee().isEmpty() && !document_.progress_file().isEmpty()) keep();
}

void DrillPage::ask_for_trainee() {
    TraineeDialog dialog(document_.trainee(), document_.progress_file(), this);
    if (dialog.exec() == QDialog::Accepted) document_.set_trainee(dialog.name(), dialog.file());
}

void DrillPage::keep() {
    if (document_.trainee().isEmpty() || document_.progress_file().isEmpty()) ask_for_trainee();
    const QString fault = document_.keep_progress();
    if (!fault.isEmpty()) tell_fault(fault);
}

void DrillPage::save_answers() {
    if (document_.trainee().isEmpty()) ask_for_trainee();
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString name = QString::fromStdString(document_.round().drill.id) + ".yaml";
    QString path =
        QFileDialog::getSaveFileName(this, tr("Save the answers"), QDir(folder).filePath(name), tr("Answers (*.yaml)"));
    if (path.isEmpty()) return;
    if (QFileInfo(path).suffix().isEmpty()) path += ".yaml";
    const QString fault = document_.save_answers(path);
    if (!fault.isEmpty()) return tell_fault(fault);
    emit told(tr("Saved %1").arg(path));
}

void DrillPage::tell_fault(const QString& what) {
    QMessageBox box(QMessageBox::Warning, tr("Seamward"), what, QMessageBox::Ok, this);
    box.setObjectName("fault");
    box.exec();
}

bool DrillPage::may_leave() {
    if (!document_.is_unfinished()) return true;
    QMessageBox box(QMessageBox::Question, tr("Seamward"),
                    tr("What you found in this drill was not handed in. It is gone once you leave."), QMessageBox::NoButton,
                    this);
    box.setObjectName("drill_unfinished");
    QPushButton* yes = box.addButton(tr("&Leave the drill"), QMessageBox::DestructiveRole);
    yes->setObjectName("leave_now");
    box.addButton(tr("&Stay"), QMessageBox::RejectRole);
    box.exec();
    return box.clickedButton() == yes;
}

void DrillPage::leave() {
    if (!may_leave()) return;
    document_.close();
    emit left();
}

void DrillPage::retranslate() {
    const std::array names{tr("Task"), tr("Places"), tr("Result")};
    for (std::size_t i = 0; i < names.size(); ++i) part_buttons_.at(i)->setText(names.at(i));
    mark_places();
}

void DrillPage::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
