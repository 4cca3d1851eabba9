// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/ride_bar.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <cmath>

namespace seamward::viewer {

namespace {

constexpr double ticks = 20;  ///< of the slider, in a second

}  // namespace

RideBar::RideBar(QWidget* parent)
    : QWidget(parent),
      going_(new QToolButton(this)),
      film_(new QToolButton(this)),
      leave_(new QToolButton(this)),
      time_(new QSlider(Qt::Horizontal, this)),
      words_(new QLabel(this)) {
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
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(12, 8, 12, 8);
    auto* row = new QHBoxLayout;
    for (QWidget* widget : std::initializer_list<QWidget*>{going_, time_, film_, leave_})
        row->addWidget(widget, widget == time_ ? 1 : 0);
    column->addWidget(words_);
    column->addLayout(row);
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
}

void RideBar::retranslate() {
    going_->setText(goes_ ? tr("Stop here") : tr("Go on"));
    going_->setToolTip(tr("Key: space bar"));
    film_->setText(tr("Save as a film..."));
    leave_->setText(tr("Back to the house"));
    leave_->setToolTip(tr("Key: Escape"));
    time_->setAccessibleName(tr("Where the ride is"));
}

}  // namespace seamward::viewer
