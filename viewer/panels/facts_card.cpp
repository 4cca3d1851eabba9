// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/facts_card.h"

#include <QDir>
#include <QEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QImageReader>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "document/gap_facts.h"
#include "document/translations.h"
#include "document/way_text.h"
#include "layers/palette.h"
#include "panels/flow_layout.h"

namespace seamward::viewer {

namespace {

constexpr int margin = 12;      ///< pixels from the picture's corner
constexpr int most_wide = 360;  ///< of the card, at a usual size of letters
constexpr QSize photo_size(320, 200);

QString line(const QString& what, const QString& text) {
    return "<tr><td style='padding-right: 10px'>" + what.toHtmlEscaped() + "</td><td><b>" + text.toHtmlEscaped() +
           "</b></td></tr>";
}

}  // namespace

FactsCard::FactsCard(JobDocument& document, QWidget* over)
    : QFrame(over),
      document_(document),
      title_(new QLabel(this)),
      words_(new QLabel(this)),
      photo_(new QLabel(this)),
      body_(new QScrollArea(this)),
      sketch_(new FitSketch(this)),
      act_(new QPushButton(this)),
      add_feature_(new QPushButton(this)),
      close_(new QToolButton(this)) {
    setObjectName("facts_card");
    title_->setObjectName("facts_title");
    words_->setObjectName("facts_words");
    act_->setObjectName("facts_act");
    add_feature_->setObjectName("facts_feature");
    close_->setObjectName("facts_close");
    title_->setTextFormat(Qt::PlainText);
    title_->setWordWrap(true);
    words_->setTextFormat(Qt::RichText);
    words_->setWordWrap(true);
    words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    QFont bold = title_->font();
    bold.setBold(true);
    title_->setFont(bold);
    close_->setAutoRaise(true);
    auto* head = new QHBoxLayout;
    head->addWidget(title_, 1);
    head->addWidget(close_, 0, Qt::AlignTop);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(14, 10, 10, 12);
    column->setSpacing(6);
    column->addLayout(head);
    auto* inside = new QWidget;
    auto* facts = new QVBoxLayout(inside);
    facts->setContentsMargins(0, 0, 0, 0);
    facts->setSpacing(6);
    for (QWidget* fact : {static_cast<QWidget*>(words_), static_cast<QWidget*>(sketch_), static_cast<QWidget*>(photo_)})
        facts->addWidget(fact);
    facts->addStretch(1);
    body_->setObjectName("facts_body");
    body_->setWidget(inside);
    body_->setWidgetResizable(true);
    body_->setFrameShape(QFrame::NoFrame);
    body_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    body_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
    body_->viewport()->setAutoFillBackground(false);
    inside->setAutoFillBackground(false);
    column->addWidget(body_, 1);
    auto* acts = new FlowLayout(nullptr, 8, 6);
    acts->addWidget(act_);
    acts->addWidget(add_feature_);
    column->addLayout(acts);
    connect(close_, &QToolButton::clicked, this, [this] {
        hide();
        emit closed();
    });
    connect(act_, &QPushButton::clicked, this, [this] {
        if (gap_) return emit survey_wanted(*gap_);
        const auto solids = document_.solids();
        if (part_ && solids) emit gap_wanted(at_, QString::fromStdString(solids->parts[*part_].name));
    });
    connect(add_feature_, &QPushButton::clicked, this, [this] {
        const auto solids = document_.solids();
        if (part_ && solids) emit feature_wanted(at_, QString::fromStdString(solids->parts[*part_].id));
    });
    // For another animal.
    connect(&document_, &JobDocument::ways_found, this, [this] {
        if (isVisible() && gap_) fill();
    });
    // Newer solids: their parts have other numbers.
    connect(&document_, &JobDocument::solids_ready, this, [this] {
        if (part_) hide();
    });
    over->installEventFilter(this);
    hide();
    retranslate();
}

void FactsCard::show_gap(GapIndex gap) {
    gap_ = gap;
    part_.reset();
    fill();
}

void FactsCard::show_part(std::uint32_t part, const Point& at) {
    gap_.reset();
    part_ = part;
    at_ = at;
    fill();
}

void FactsCard::fill() {
    const bool gap_there = gap_ && gap_->value < document_.job().survey.gaps.size();
    const bool part_there = part_ && document_.solids() && *part_ < document_.solids()->parts.size();
    if (!gap_there && !part_there) return hide();
    const bool described = !document_.filed()->model;  // a part of a model is somebody else's drawing
    add_feature_->setVisible(!gap_there && described && document_.solids()->parts[*part_].layer != Layer::ground);
    photo_->hide();
    if (gap_there) {
        const Gap& gap = document_.job().survey[*gap_];
        title_->setText(spoken_name(gap));
        words_->setText(gap_html());
        sketch_->show_gap(document_, *gap_);
        show_photo(gap.photo);
        act_->setText(tr("Change in the survey"));
    } else {
        title_->setText(QString::fromStdString(document_.solids()->parts[*part_].name));
        words_->setText(part_html());
        act_->setText(tr("Add a gap here"));
    }
    show();
    raise();
    place();
}

QString FactsCard::gap_html() const {
    const Job& job = *document_.filed();  // as it was found: what is ticked is closed on trial only
    const Gap& gap = job.survey[*gap_];
    QString text = "<table cellspacing='0' cellpadding='1'>";
    const auto is_this = [this](const TreatedGap& treated) { return treated.gap == *gap_; };
    if (std::ranges::any_of(document_.on_trial(), is_this)) text += line(tr("now"), tr("ticked, as if closed"));
    text += line(tr("size"), gap_width_text(gap));
    text += line(tr("shape"), shape_words(gap.shape));
    if (gap.count > 1) text += line(tr("alike"), QString::number(gap.count));
    text += line(tr("between"), sides_words(job.survey, gap));
    text += line(tr("known"), known_words(gap_facts(job, *gap_)));
    text += line(tr("in the hand"), hand_text(clear_width(gap.shape)));
    text += "</table>";
    const QString stays = stays_open_text(gap);
    if (!stays.isEmpty()) text += "<p><b>" + stays.toHtmlEscaped() + "</b></p>";
    if (!gap.note.empty()) text += "<p>" + QString::fromStdString(gap.note).toHtmlEscaped() + "</p>";
    return text;
}

QString FactsCard::part_html() const {
    const Part& part = document_.solids()->parts[*part_];
    QString text = "<table cellspacing='0' cellpadding='1'>";
    if (!part.material.empty()) text += line(tr("made of"), catalog_text(part.material));
    text += line(tr("belongs to"), std::array{tr("the ground"), tr("the yard"), tr("the foundation"), tr("the framing"),
                                              tr("the outside walls"), tr("the roof"), tr("the eaves"), tr("doors and windows"),
                                              tr("the inside walls"), tr("pipes and fixtures")}
                                       .at(static_cast<std::size_t>(part.layer)));
    return text + "</table>";
}

void FactsCard::show_photo(const std::string& file) {
    if (file.empty()) return;
    const QString path = QFileInfo(document_.path()).dir().filePath(QString::fromStdString(file));
    QImageReader reader(path);
    const QSize size = reader.size();
    if (size.isValid()) reader.setScaledSize(size.scaled(photo_size, Qt::KeepAspectRatio));
    const QImage image = reader.read();
    photo_->setVisible(true);
    if (image.isNull()) {
        photo_->setText(tr("The photo %1 cannot be shown.").arg(QString::fromStdString(file)));
    } else {
        photo_->setPixmap(QPixmap::fromImage(image));
        photo_->setAccessibleName(tr("Photo of this gap"));
    }
}

void FactsCard::place() {
    const int larger = most_wide * std::max(100, fontMetrics().height() * 100 / 17) / 100;
    const int wide =
        std::min(larger, std::max(std::min(most_wide, parentWidget()->width() - 2 * margin), parentWidget()->width() * 2 / 3));
    setFixedWidth(wide);
    const int most = parentWidget()->height() / 2 - margin;
    const QMargins edges = layout()->contentsMargins();
    const int across = wide - edges.left() - edges.right();
    QLayout* facts = body_->widget()->layout();
    // The card without what scrolls, which asks for no height of its own.
    const int rest = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(wide) : layout()->sizeHint().height();
    const int sketch = sketch_->sizeHint().height() + facts->spacing();
    int needed = rest + facts->totalHeightForWidth(across);
    if (sketch_->isHidden()) needed += sketch;
    const bool sketched = gap_.has_value() && needed <= parentWidget()->height() - 2 * margin;  // words first
    if (!sketched) needed -= sketch;
    sketch_->setVisible(sketched);
    // In a low picture the least is what says and does something: the head, two lines, the buttons.
    const int tall = std::min(needed, std::max(most, rest + 2 * fontMetrics().lineSpacing()));
    setGeometry(margin, std::max(0, parentWidget()->height() - tall - margin), wide, tall);
}

bool FactsCard::event(QEvent* event) {
    const bool done = QFrame::event(event);
    if (event->type() == QEvent::LayoutRequest && isVisible()) place();
    return done;
}

bool FactsCard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Resize && isVisible()) place();
    return QFrame::eventFilter(watched, event);
}

void FactsCard::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) return close_->click();
    QFrame::keyPressEvent(event);
}

void FactsCard::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette::outline, 1));
    painter.setBrush(palette::card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8, 8);
}

void FactsCard::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) {
        retranslate();
        if (isVisible()) fill();
    }
    QFrame::changeEvent(event);
}

void FactsCard::retranslate() {
    close_->setText(QStringLiteral("\u00d7"));
    add_feature_->setText(tr("Add a feature here"));
    close_->setToolTip(tr("Close"));
    close_->setAccessibleName(tr("Close"));
}

}  // namespace seamward::viewer
