// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_head.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>
#include <algorithm>

#include "document/closings_text.h"
#include "document/translations.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int sign_size = 18;

StandSign::Sign sign_of(const AnimalOutlook& animal) {
    if (!animal.way) return StandSign::shut_out;
    return animal.way->maybe ? StandSign::perhaps : StandSign::gets_in;
}

}  // namespace

StandSign::StandSign(QWidget* parent) : QWidget(parent) { setFixedSize(sign_size, sign_size); }

void StandSign::show(Sign sign) {
    sign_ = sign;
    update();
}

void StandSign::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF round(2, 2, sign_size - 4, sign_size - 4);
    const QPointF middle = round.center();
    if (sign_ == unknown) return;
    if (sign_ == shut_out) {
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette::shut_sign);
        painter.drawEllipse(round);
        painter.setPen(QPen(palette::paper_high, 2, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(QPolygonF{{middle + QPointF(-3.4, 0.3), middle + QPointF(-0.8, 2.9), middle + QPointF(3.6, -2.6)}});
        return;
    }
    painter.setPen(QPen(sign_ == perhaps ? palette::warn_sign : palette::open_sign, 2.2));
    painter.setBrush(Qt::NoBrush);
    if (sign_ == perhaps) {
        painter.drawEllipse(round);
        QFont strong = font();
        strong.setBold(true);
        strong.setPixelSize(11);
        painter.setFont(strong);
        painter.setPen(palette::ink);
        painter.drawText(round, Qt::AlignCenter, QStringLiteral("?"));
        return;
    }
    painter.drawArc(round, 235 * 16, 250 * 16);  // open at the left, where the arrow comes in
    painter.setPen(QPen(palette::ink, 1.8, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawLine(QPointF(0.9, middle.y()), QPointF(middle.x() + 2, middle.y()));
    painter.drawPolyline(QPolygonF{{middle + QPointF(-1.2, -3.2), middle + QPointF(2.2, 0), middle + QPointF(-1.2, 3.2)}});
}

ClosingsHead::ClosingsHead(ClosingsDocument& closings, QWidget* parent)
    : QWidget(parent),
      closings_(closings),
      price_(make_label("ticked_price")),
      ticked_(make_label("ticked_words")),
      first_(new QBoxLayout(QBoxLayout::LeftToRight)),
      whole_(make_label("whole_plan")),
      prices_(make_label("whose_prices")),
      animals_(new QGridLayout),
      message_(make_label("closings_message")) {
    setObjectName("closings_head");
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 2.0);
    large.setBold(true);
    price_->setFont(large);
    price_->setWordWrap(false);
    ticked_->setWordWrap(false);
    for (QLabel* soft : {ticked_, whole_, prices_}) soft->setForegroundRole(QPalette::PlaceholderText);
    message_->hide();
    animals_->setHorizontalSpacing(8);
    animals_->setVerticalSpacing(3);
    animals_->setColumnStretch(2, 1);

    first_->addWidget(price_);
    first_->addWidget(ticked_, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 12, 18, 10);
    column->setSpacing(6);
    column->addLayout(first_);
    column->addWidget(whole_);
    column->addWidget(prices_);
    column->addLayout(animals_);
    column->addWidget(message_);

    connect(&closings_, &ClosingsDocument::planned, this, &ClosingsHead::retranslate);
    connect(&closings_, &ClosingsDocument::state_changed, this, [this] {
        say({});
        refresh_sums();
    });
    connect(&closings_, &ClosingsDocument::outlook_found, this, &ClosingsHead::refresh_animals);
    connect(&closings_, &ClosingsDocument::budget_spent, this,
            [this](Money budget, const BudgetResult& result) { say(budget_words(closings_, budget, result)); });
    connect(&closings_, &ClosingsDocument::refused, this, [this](const Refusal& refusal, GapIndex gap) {
        say(tr("Not closed with %1, %2: %3 (%4)")
                .arg(treatment_words(refusal.treatment), QString::fromStdString(closings_.plan().survey()[gap].label()),
                     catalog_text(refusal.why), QString::fromStdString(refusal.source)));
    });
    retranslate();
}

QLabel* ClosingsHead::make_label(const char* name) {
    auto* label = new QLabel(this);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

void ClosingsHead::retranslate() {
    price_->setAccessibleName(tr("Price of what is ticked"));
    prices_->setText(tr("Prices and times are made-up examples, not an offer."));
    say({});
    refresh_sums();
    refresh_animals();
}

void ClosingsHead::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) arrange();
}

void ClosingsHead::refresh_sums() {
    const ClosingsSum ticked = closings_.ticked();
    const bool planned = closings_.has_plan() && closings_.plan().plan.feasible && !closings_.against().empty();
    price_->setText(money_words(ticked.cost));
    const QString gaps = tr("%n gaps ticked", nullptr, static_cast<int>(ticked.gaps));
    ticked_->setText(ticked.minutes > 0 ? tr("%1\nabout %2").arg(gaps, time_words(ticked.minutes).replace(' ', QChar::Nbsp))
                                        : gaps);
    const ClosingsSum whole = closings_.has_plan() ? closings_.whole_plan() : ClosingsSum();
    const auto all = static_cast<int>(whole.gaps);
    whole_->setText(!planned || all == 0 ? tr("Prices are before call-out, overhead, tax and whole packs.")
                    : whole.minutes > 0
                        ? tr("Whole plan: %n gaps, %1, about %2, before call-out, overhead, tax and whole packs.", nullptr, all)
                              .arg(money_words(whole.cost), time_words(whole.minutes).replace(' ', QChar::Nbsp))
                        : tr("Whole plan: %n gaps, %1, before call-out, overhead, tax and whole packs.", nullptr, all)
                              .arg(money_words(whole.cost)));
    arrange();
}

void ClosingsHead::refresh_animals() {
    const std::vector<AnimalOutlook>& animals = closings_.outlook().animals;
    if (animals.empty() && closings_.has_plan() && !closings_.against().empty()) return;  // they are being looked for
    while (lines_.size() < animals.size()) {
        const int row = static_cast<int>(lines_.size());
        const Line line{new StandSign(this), make_label(""), make_label("")};
        animals_->addWidget(line.sign, 2 * row, 0, Qt::AlignTop);
        lines_.push_back(line);
    }
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const Line& line = lines_[i];
        const bool used = i < animals.size();
        for (QWidget* one : std::initializer_list<QWidget*>{line.sign, line.name, line.words}) one->setVisible(used);
        if (!used) continue;
        const QString name = catalog_text(animals[i].pest.name);
        const QString way = outlook_way_words(closings_.plan(), animals[i]);
        line.sign->show(sign_of(animals[i]));
        line.name->setText(name);
        const QString stand = outlook_words(animals[i]);
        line.words->setText(animals[i].planned_against ? stand : tr("%1, not planned against").arg(stand));
        line.words->setObjectName(QString("outlook_%1").arg(i));
        for (QWidget* one : std::initializer_list<QWidget*>{line.sign, line.name, line.words}) one->setToolTip(way);
        line.words->setAccessibleDescription(way);
    }
    arrange();
}

void ClosingsHead::arrange() {
    const QMargins margins = layout()->contentsMargins();
    const int inside = width() - margins.left() - margins.right();
    const bool one_line = price_->sizeHint().width() + ticked_->sizeHint().width() + first_->spacing() <= inside;
    first_->setDirection(one_line ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    ticked_->setAlignment(one_line ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    int names = 0;
    int words = 0;
    for (const Line& line : lines_) {
        names = std::max(names, line.name->fontMetrics().horizontalAdvance(line.name->text()));
        words = std::max(words, line.words->fontMetrics().horizontalAdvance(line.words->text()));
    }
    // Side by side where there is room, else one under the other.
    const int room = inside - sign_size - 2 * animals_->horizontalSpacing() - 4;
    const bool beside = names + words <= room;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
        const Line& line = lines_[i];
        const int row = 2 * static_cast<int>(i);
        animals_->addWidget(line.name, row, 1, 1, beside ? 1 : 2);
        animals_->addWidget(line.words, beside ? row : row + 1, beside ? 2 : 1, 1, beside ? 1 : 2);
        line.words->setAlignment(beside ? Qt::AlignRight | Qt::AlignTop : Qt::AlignLeft | Qt::AlignTop);
        line.name->setWordWrap(!beside);
        line.words->setWordWrap(!beside);
    }
    layout()->invalidate();  // how high it is for its width is another now
    updateGeometry();
}

void ClosingsHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void ClosingsHead::say(const QString& text) {
    message_->setText(text);
    message_->setVisible(!text.isEmpty());
}

}  // namespace seamward::viewer
