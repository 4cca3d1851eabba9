// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/ride_bar.h"

#include <QEvent>
#include <QSignalBlocker>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr double ticks = 20;       ///< of the slider, in a second
constexpr int least_slider = 160;  ///< pixels

}  // namespace

RideBar::RideBar(QWidget* parent)
    : QWidget(parent),
      going_(new QToolButton(this)),
      film_(new QToolButton(this)),
      leave_(new QToolButton(this)),
      time_(new QSlider(Qt::Horizontal, this)),
      words_(new QLabel(this)),
      column_(new QVBoxLayout(this)),
      row_(new QHBoxLayout) {
    setObjectName("ride_bar");
    going_->setObjectName("ride_going");
    film_->setObjectName("ride_film");
    leave_->setObjectName("ride_leave");
    time_->setObjectName("ride_time");
    words_->setObjectName("ride_words");
    words_->setWordWrap(true);
    words_->setTextFormat(Qt::PlainText);
    time_->setPageStep(static_cast<int>(2 * ticks));
    time_->setSingleStep(static_cast<int>(ticks / 2));
    column_->setContentsMargins(12, 8, 12, 8);
    for (QWidget* widget : std::initializer_list<QWidget*>{going_, time_, film_, leave_})
        row_->addWidget(widget, widget == time_ ? 1 : 0);
    column_->addWidget(words_);
    column_->addLayout(row_);
    connect(going_, &QToolButton::clicked, this, [this] { emit going_wanted(!goes_); });
    connect(film_, &QToolButton::clicked, this, &RideBar::film_wanted);
    connect(leave_, &QToolButton::clicked, this, &RideBar::leave_wanted);
    connect(time_, &QSlider::valueChanged, this, [this](int value) { emit time_wanted(value / ticks); });
    retranslate();
}

void RideBar::set_duration(double seconds) {
    const QSignalBlocker quiet(time_);
    time_->setRange(0, static_cast<int>(std::ceil(seconds * ticks)));
}

void RideBar::show_time(double seconds) {
    const QSignalBlocker quiet(time_);
    time_->setValue(static_cast<int>(std::lround(seconds * ticks)));
}

void RideBar::show_going(bool going) {
    goes_ = going;
    retranslate();
}

void RideBar::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) arrange();
}

void RideBar::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

/// Where the buttons leave the slider too little of the line, it has one of its own.
void RideBar::arrange() {
    const QMargins margins = column_->contentsMargins();
    int room = width() - margins.left() - margins.right();
    for (const QWidget* button : {going_, film_, leave_}) room -= button->sizeHint().width() + row_->spacing();
    const bool beside = room >= least_slider;
    if (beside == (row_->indexOf(time_) >= 0)) return;
    if (beside) {
        column_->removeWidget(time_);
        row_->insertWidget(1, time_, 1);
    } else {
        row_->removeWidget(time_);
        column_->insertWidget(1, time_);
    }
}

void RideBar::retranslate() {
    going_->setText(goes_ ? tr("Stop here") : tr("Go on"));
    going_->setToolTip(tr("Key: space bar"));
    film_->setText(tr("Save as a film..."));
    leave_->setText(tr("Back to the house"));
    leave_->setToolTip(tr("Key: Escape"));
    time_->setAccessibleName(tr("Where the ride is"));
    arrange();
}

}  // namespace seamward::viewer
