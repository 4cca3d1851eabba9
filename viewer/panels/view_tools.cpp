// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/view_tools.h"

#include <QCoreApplication>
#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QSignalBlocker>

#include "layers/palette.h"
#include "panels/flow_layout.h"

namespace seamward::viewer {

namespace {

constexpr int cut_steps = 1000;

/// A sheet as it is seen: filled, hatched, or only its outline.
QIcon sheet_sign(Shown shown) {
    QIcon icon;
    for (const int scale : {1, 2}) {
        QPixmap pixels(18 * scale, 18 * scale);
        pixels.setDevicePixelRatio(scale);
        pixels.fill(Qt::transparent);
        QPainter painter(&pixels);
        painter.setRenderHint(QPainter::Antialiasing);
        const QPolygonF sheet({{2.5, 6}, {11, 2.5}, {15.5, 11.5}, {7, 15.5}});
        QPen pen(palette::ink, 1.2);
        if (shown == Shown::hidden) pen.setStyle(Qt::DotLine);
        painter.setPen(pen);
        if (shown == Shown::whole) painter.setBrush(palette::outline);
        if (shown == Shown::faint) painter.setBrush(QBrush(palette::outline, Qt::Dense6Pattern));
        painter.drawPolygon(sheet);
        painter.end();
        icon.addPixmap(pixels);
    }
    return icon;
}

}  // namespace

ViewTools::ViewTools(QWidget* parent)
    : QWidget(parent),
      open_(button("open_house")),
      measure_(button("measure")),
      ride_(button("ride")),
      key_(button("show_key")),
      sides_label_(new QLabel(this)),
      cut_label_(new QLabel(this)),
      cut_from_(new QComboBox(this)),
      cut_depth_(new QSlider(Qt::Horizontal, this)) {
    setObjectName("view_tools");
    shown_.fill(Shown::whole);
    auto* row = new FlowLayout(this, 4, 4);
    row->setContentsMargins(10, 6, 10, 6);
    open_->setCheckable(true);
    open_->setChecked(true);
    measure_->setCheckable(true);
    row->addWidget(open_);
    constexpr std::array names{"coat_roof", "coat_walls", "coat_framing", "coat_linings", "coat_fixtures", "coat_ground"};
    for (std::size_t i = 0; i < coat_count; ++i) {
        coats_.at(i) = button(names.at(i));
        coats_.at(i)->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
        row->addWidget(coats_.at(i));
        connect(coats_.at(i), &QToolButton::clicked, this, [this, i] { step(static_cast<Coat>(i)); });
    }
    auto* round = new QWidget(this);
    auto* round_row = new QHBoxLayout(round);
    round_row->setContentsMargins(8, 0, 8, 0);
    round_row->setSpacing(3);
    round_row->addWidget(sides_label_);
    constexpr std::array side_names{"side_south", "side_east", "side_north", "side_west", "side_above"};
    for (std::size_t i = 0; i < side_count; ++i) {
        sides_.at(i) = button(side_names.at(i));
        round_row->addWidget(sides_.at(i));
        connect(sides_.at(i), &QToolButton::clicked, this, [this, i] { emit side_wanted(static_cast<Side>(i)); });
    }
    row->addWidget(round);
    cut_from_->setObjectName("cut_from");
    cut_depth_->setObjectName("cut_depth");
    cut_label_->setBuddy(cut_from_);
    for (std::size_t i = 0; i <= side_count; ++i) cut_from_->addItem(QString());
    cut_depth_->setRange(0, cut_steps);
    cut_depth_->setPageStep(cut_steps / 20);
    cut_depth_->setSingleStep(cut_steps / 200);
    cut_depth_->setValue(cut_steps / 3);
    cut_depth_->setFixedWidth(130);
    cut_depth_->setEnabled(false);
    auto* cut = new QWidget(this);
    auto* cut_row = new QHBoxLayout(cut);
    cut_row->setContentsMargins(8, 0, 8, 0);
    for (QWidget* widget : std::initializer_list<QWidget*>{cut_label_, cut_from_, cut_depth_}) cut_row->addWidget(widget);
    row->addWidget(cut);
    row->addWidget(measure_);
    row->addWidget(ride_);
    row->addWidget(key_);
    key_->setCheckable(true);
    connect(key_, &QToolButton::toggled, this, &ViewTools::key_wanted);

    connect(open_, &QToolButton::toggled, this, &ViewTools::open_changed);
    connect(measure_, &QToolButton::toggled, this, &ViewTools::measuring_changed);
    connect(ride_, &QToolButton::clicked, this, &ViewTools::ride_wanted);
    connect(cut_from_, qOverload<int>(&QComboBox::currentIndexChanged), this, [this](int index) {
        cut_depth_->setEnabled(index > 0);
        open_->setEnabled(index <= 0);  // a cut shows the inside by itself
        emit cut_changed();
    });
    connect(cut_depth_, &QSlider::valueChanged, this, &ViewTools::cut_changed);
    retranslate();
}

QToolButton* ViewTools::button(const char* name) {
    auto* made = new QToolButton(this);
    made->setObjectName(name);
    made->setFocusPolicy(Qt::TabFocus);
    return made;
}

void ViewTools::set_present(const std::array<bool, coat_count>& present) {
    for (std::size_t i = 0; i < coat_count; ++i) coats_.at(i)->setEnabled(present.at(i));
}

void ViewTools::step(Coat coat) {
    const Shown next = shown(coat) == Shown::whole ? Shown::faint : shown(coat) == Shown::faint ? Shown::hidden : Shown::whole;
    set_shown(coat, next);
    emit shown_changed(coat, next);
}

void ViewTools::set_shown(Coat coat, Shown shown) {
    shown_.at(static_cast<std::size_t>(coat)) = shown;
    show_coat(coat);
}

void ViewTools::set_open(bool open) {
    const QSignalBlocker quiet(open_);
    open_->setChecked(open);
}

void ViewTools::set_cut(const std::optional<Cut>& cut) {
    const QSignalBlocker quiet_from(cut_from_);
    const QSignalBlocker quiet_depth(cut_depth_);
    cut_from_->setCurrentIndex(cut ? static_cast<int>(cut->from) + 1 : 0);
    cut_depth_->setEnabled(cut.has_value());
    open_->setEnabled(!cut.has_value());
    if (cut) cut_depth_->setValue(static_cast<int>(cut->depth * cut_steps));
}

std::optional<Cut> ViewTools::cut() const {
    const int index = cut_from_->currentIndex();
    if (index <= 0) return std::nullopt;
    return Cut{static_cast<Side>(index - 1), static_cast<double>(cut_depth_->value()) / cut_steps};
}

void ViewTools::set_measuring(bool measuring) {
    const QSignalBlocker quiet(measure_);
    measure_->setChecked(measuring);
}

void ViewTools::set_can_ride(bool can) { ride_->setEnabled(can); }

void ViewTools::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::PaletteChange) retranslate();
    QWidget::changeEvent(event);
}

void ViewTools::show_coat(Coat coat) {
    const auto i = static_cast<std::size_t>(coat);
    const std::array names{tr("Roof"), tr("Outside walls"), tr("Framing"), tr("Inside walls"), tr("Pipes"), tr("Ground")};
    const std::array states{tr("%1: shown. Press for faint."), tr("%1: faint. Press to hide."), tr("%1: hidden. Press to show.")};
    const QString state = states.at(static_cast<std::size_t>(shown(coat))).arg(names.at(i));
    coats_.at(i)->setText(names.at(i));
    coats_.at(i)->setIcon(sheet_sign(shown(coat)));
    coats_.at(i)->setToolTip(tr("%1 Key: %2").arg(state).arg(i + 1));
    coats_.at(i)->setAccessibleName(state);
}

void ViewTools::retranslate() {
    open_->setText(tr("See inside"));
    open_->setToolTip(tr("Walls and roof that stand between you and the rooms fade as you go round. Key: I"));
    for (std::size_t i = 0; i < coat_count; ++i) show_coat(static_cast<Coat>(i));
    sides_label_->setText(tr("From"));
    const std::array letters{tr("S"), tr("E"), tr("N"), tr("W"), tr("Top")};
    const std::array sides{tr("From the south. Key: S"), tr("From the east. Key: E"), tr("From the north. Key: N"),
                           tr("From the west. Key: W"), tr("From above. Key: T")};
    for (std::size_t i = 0; i < side_count; ++i) {
        sides_.at(i)->setText(letters.at(i));
        sides_.at(i)->setToolTip(sides.at(i));
        sides_.at(i)->setAccessibleName(sides.at(i));
    }
    cut_label_->setText(tr("&Cut"));
    const std::array cuts{tr("no cut"),         tr("from the south"), tr("from the east"),
                          tr("from the north"), tr("from the west"),  tr("from above")};
    for (std::size_t i = 0; i < cuts.size(); ++i) cut_from_->setItemText(static_cast<int>(i), cuts.at(i));
    cut_from_->setAccessibleName(tr("Cut through the house"));
    cut_from_->setToolTip(tr("Takes away what lies before a plane"));
    cut_depth_->setAccessibleName(tr("How far the cut goes into the house"));
    cut_depth_->setToolTip(cut_depth_->accessibleName());
    measure_->setText(tr("Measure"));
    measure_->setToolTip(tr("Click two points of the house to measure between them. Key: M"));
    key_->setText(tr("Signs"));
    key_->setToolTip(tr("Shows what the signs in the picture mean"));
    ride_->setText(tr("Ride along"));
    ride_->setToolTip(tr("Follow the chosen way as the animal does. Key: R"));
}

}  // namespace seamward::viewer
