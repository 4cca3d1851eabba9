// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_head.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>
#include <algorithm>

#include "catalog/duties.h"
#include "document/closings_text.h"
#include "document/translations.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int sign_size = 18;
constexpr int least_message_lines = 3;

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
      about_(new QWidget(this)),
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
    message_->setAlignment(Qt::AlignLeft | Qt::AlignTop);
    QSizePolicy keeps = about_->sizePolicy();
    keeps.setRetainSizeWhenHidden(true);
    keeps.setHeightForWidth(true);
    about_->setSizePolicy(keeps);
    auto* lines = new QVBoxLayout(about_);
    lines->setContentsMargins(0, 0, 0, 0);
    lines->setSpacing(6);
    lines->addWidget(whole_);
    lines->addWidget(prices_);
    lines->addStretch(1);
    animals_->setHorizontalSpacing(8);
    animals_->setVerticalSpacing(3);
    animals_->setColumnStretch(2, 1);

    first_->addWidget(price_);
    first_->addWidget(ticked_, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(18, 12, 18, 10);
    column->setSpacing(6);
    column->addLayout(first_);
    column->addWidget(about_);
    column->addLayout(animals_);

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
                .arg(treatment_words(refusal.treatment), spoken_name(closings_.plan().survey()[gap]), spoken_text(refusal.why),
                     spoken_text(starred(refusal.source))));
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

QString ClosingsHead::stand_words_of(const AnimalOutlook& animal, const QString& stand) const {
    return animal.planned_against ? stand : tr("%1, not planned against").arg(stand);
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
        line.words->setObjectName(QString("outlook_%1").arg(i));
        for (QWidget* one : std::initializer_list<QWidget*>{line.sign, line.name}) one->setToolTip(way);
        line.words->setAccessibleDescription(way);
    }
    arrange();
}

void ClosingsHead::arrange() {
    const QMargins margins = layout()->contentsMargins();
    const int inside = width() - margins.left() - margins.right();
    arrange_sums(inside);
    arrange_animals(inside);
    layout()->invalidate();  // how high it is for its width is another now
    updateGeometry();
    place_message();
}

void ClosingsHead::arrange_sums(int inside) {
    // As long as the price and the words can become.
    const ClosingsSum most = closings_.has_plan() ? closings_.most() : ClosingsSum();
    const QString gaps = tr("%n gaps ticked", nullptr, static_cast<int>(most.gaps));
    const QString time = tr("%1\nabout %2").arg(gaps, time_words(most.minutes).replace(' ', QChar::Nbsp));
    const int price = price_->fontMetrics().horizontalAdvance(money_words(most.cost));
    const QSize words = ticked_->fontMetrics().size(0, time);
    const bool one_line = price + words.width() + first_->spacing() + 4 <= inside;
    first_->setDirection(one_line ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    ticked_->setAlignment(one_line ? Qt::AlignRight | Qt::AlignVCenter : Qt::AlignLeft | Qt::AlignVCenter);
    ticked_->setMinimumHeight(words.height());
    about_->setMinimumHeight(least_message_lines * message_->fontMetrics().lineSpacing());
}

void ClosingsHead::arrange_animals(int inside) {
    const int room = inside - sign_size - 2 * animals_->horizontalSpacing() - 4;
    const std::vector<AnimalOutlook>& animals = closings_.outlook().animals;
    const std::size_t count = std::min(lines_.size(), animals.size());
    int names = 0, words = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const QString longest = stand_words_of(animals[i], longest_outlook_words(false));
        names = std::max(names, fontMetrics().horizontalAdvance(lines_[i].name->text()));
        words = std::max(words, fontMetrics().horizontalAdvance(longest));
    }
    const bool beside = names + words <= room;
    for (std::size_t i = 0; i < count; ++i) {
        const Line& line = lines_[i];
        const QString stand = stand_words_of(animals[i], outlook_words(animals[i]));
        // Beside a name there is not always room for "perhaps" and millimeters, too: these are in the tool tip then.
        const bool shorter = beside && fontMetrics().horizontalAdvance(stand) > room - names;
        line.words->setText(shorter ? stand.section(QChar(QChar::Nbsp) + QStringLiteral("("), 0, 0) : stand);
        const QString way = outlook_way_words(closings_.plan(), animals[i]);
        line.words->setToolTip(shorter ? tr("%1\n%2").arg(stand, way) : way);
        const int row = 2 * static_cast<int>(i);
        animals_->addWidget(line.name, row, 1, 1, beside ? 1 : 2);
        animals_->addWidget(line.words, beside ? row : row + 1, beside ? 2 : 1, 1, beside ? 1 : 2);
        line.words->setAlignment(beside ? Qt::AlignRight | Qt::AlignTop : Qt::AlignLeft | Qt::AlignTop);
        line.name->setWordWrap(!beside);
        line.words->setWordWrap(!beside);
        const QRect lines(0, 0, beside ? QWIDGETSIZE_MAX : std::max(1, room), QWIDGETSIZE_MAX);
        const QString longest = stand_words_of(animals[i], longest_outlook_words(true));
        line.words->setMinimumHeight(fontMetrics().boundingRect(lines, Qt::TextWordWrap, longest).height());
    }
}

void ClosingsHead::place_message() {
    about_->setVisible(said_.isEmpty());
    message_->setVisible(!said_.isEmpty());
    if (said_.isEmpty()) return;
    const QRect room = about_->geometry();
    const QRect lines(0, 0, std::max(1, room.width()), QWIDGETSIZE_MAX);
    const auto fits = [&](const QString& text) {
        return message_->fontMetrics().boundingRect(lines, Qt::TextWordWrap, text).height() <= room.height();
    };
    QString shown = said_;
    for (int last = shown.size(); last > 0 && !fits(shown);) {
        last = said_.lastIndexOf(' ', last - 1);
        shown = said_.left(std::max(0, last)) + QChar(0x2026);
    }
    // Nothing is set that is set already: it would ask for this again.
    if (message_->geometry() != room) message_->setGeometry(room);
    if (message_->text() != shown) message_->setText(shown);
    message_->setToolTip(shown == said_ ? QString() : said_);
    message_->setAccessibleName(said_);
}

bool ClosingsHead::event(QEvent* event) {
    const bool done = QWidget::event(event);
    if (event->type() == QEvent::LayoutRequest) place_message();
    return done;
}

void ClosingsHead::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrange();
}

void ClosingsHead::say(const QString& text) {
    said_ = text;
    place_message();
}

}  // namespace seamward::viewer
