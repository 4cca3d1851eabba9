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
      slower_(new QToolButton(this)),
      faster_(new QToolButton(this)),
      film_(new QToolButton(this)),
      leave_(new QToolButton(this)),
      speed_(new QLabel(this)),
      time_(new QSlider(Qt::Horizontal, this)),
      words_(new QLabel(this)),
      column_(new QVBoxLayout(this)),
      row_(new QHBoxLayout),
      second_row_(new QHBoxLayout) {
    setObjectName("ride_bar");
    going_->setObjectName("ride_going");
    slower_->setObjectName("ride_slower");
    faster_->setObjectName("ride_faster");
    speed_->setObjectName("ride_speed");
    film_->setObjectName("ride_film");
    leave_->setObjectName("ride_leave");
    time_->setObjectName("ride_time");
    words_->setObjectName("ride_words");
    words_->setWordWrap(true);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Maximum);  // the picture has the rest
    words_->setTextFormat(Qt::PlainText);
    time_->setPageStep(static_cast<int>(2 * ticks));
    time_->setSingleStep(static_cast<int>(ticks / 2));
    column_->setContentsMargins(12, 8, 12, 8);
    column_->addWidget(words_);
    column_->addLayout(row_);
    column_->addLayout(second_row_);
    connect(slower_, &QToolButton::clicked, this, [this] { emit speed_wanted(false); });
    connect(faster_, &QToolButton::clicked, this, [this] { emit speed_wanted(true); });
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

void RideBar::show_speed(double speed, bool can_slow, bool can_hasten) {
    slower_->setEnabled(can_slow);
    faster_->setEnabled(can_hasten);
    if (speed == times_) return;
    times_ = speed;
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

/// Where the buttons leave the slider too little of the line, it has one of its own; and where they need more than one, another.
void RideBar::arrange() {
    const QMargins margins = column_->contentsMargins();
    const int room = width() - margins.left() - margins.right();
    int need = film_->sizeHint().width() + leave_->sizeHint().width() + row_->spacing();
    for (const QWidget* one : steering()) need += one->sizeHint().width() + row_->spacing();
    const Lines lines = need + row_->spacing() + least_slider <= room ? Lines::one
                        : need <= room                                ? Lines::slider_apart
                                                                      : Lines::three;
    if (lines == lines_) return;
    lines_ = lines;
    for (QHBoxLayout* row : {row_, second_row_}) {
        while (const QLayoutItem* item = row->takeAt(0)) delete item;
    }
    column_->removeWidget(time_);
    for (QWidget* one : steering()) row_->addWidget(one);
    if (lines == Lines::one)
        row_->addWidget(time_, 1);
    else
        column_->insertWidget(1, time_);
    QHBoxLayout* rest = lines == Lines::three ? second_row_ : row_;
    if (lines == Lines::three) row_->addStretch(1);
    rest->addWidget(film_);
    rest->addWidget(leave_);
    if (lines == Lines::three) rest->addStretch(1);
}

void RideBar::retranslate() {
    going_->setText(goes_ ? tr("Stop here") : tr("Go on"));
    going_->setToolTip(tr("Key: space bar"));
    slower_->setText(tr("Slower"));
    slower_->setToolTip(tr("Key: -"));
    faster_->setText(tr("Faster"));
    faster_->setToolTip(tr("Key: +"));
    speed_->setText(tr("%1 x", "times the usual speed").arg(times_));
    speed_->setAccessibleName(tr("Speed"));
    film_->setToolTip(tr("At the speed shown here"));
    film_->setText(tr("Save as a film..."));
    leave_->setText(tr("Back to the house"));
    leave_->setToolTip(tr("Key: Escape"));
    time_->setAccessibleName(tr("Where the ride is"));
    arrange();
}

}  // namespace seamward::viewer
