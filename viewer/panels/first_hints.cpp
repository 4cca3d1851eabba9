// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/first_hints.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>

#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr int margin = 18;   ///< pixels from the card to the edge
constexpr int letters = 38;  ///< in a line of a hint, about

}  // namespace

FirstHints::FirstHints(Preferences& preferences, QWidget* over)
    : QFrame(over),
      preferences_(preferences),
      title_(new QLabel(this)),
      words_(new QLabel(this)),
      count_(new QLabel(this)),
      all_(new QPushButton(this)),
      got_it_(new QPushButton(this)) {
    setObjectName("first_hints");
    words_->setObjectName("hint_words");
    all_->setObjectName("no_hints");
    got_it_->setObjectName("got_it");
    setFocusPolicy(Qt::StrongFocus);
    QFont bold = font();
    bold.setBold(true);
    title_->setFont(bold);
    for (QLabel* label : {title_, words_}) label->setWordWrap(true);
    all_->setFlat(true);
    auto* below = new QHBoxLayout;
    below->setSpacing(8);
    below->addWidget(count_);
    below->addStretch(1);
    below->addWidget(all_);
    below->addWidget(got_it_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 16, 14);
    column->setSpacing(10);
    column->addWidget(title_);
    column->addWidget(words_);
    column->addLayout(below);
    connect(got_it_, &QPushButton::clicked, this, &FirstHints::next);
    connect(all_, &QPushButton::clicked, this, [this] {
        hint_ = hints - 1;
        next();
    });
    connect(&preferences_, &Preferences::changed, this, [this] {
        if (!preferences_.hints_seen() && started_ && !isVisible()) start();
    });
    over->installEventFilter(this);
    for (QWidget* button : {all_, got_it_}) button->installEventFilter(this);
    hide();
}

void FirstHints::start() {
    started_ = true;
    if (preferences_.hints_seen()) return;
    show_hint(0);
    show();
    raise();
    got_it_->setFocus(Qt::OtherFocusReason);
}

void FirstHints::next() {
    if (hint_ + 1 < hints) return show_hint(hint_ + 1);
    hide();
    parentWidget()->setFocus(Qt::OtherFocusReason);
    preferences_.set_hints_seen(true);
}

void FirstHints::show_hint(int hint) {
    hint_ = std::clamp(hint, 0, hints - 1);
    retranslate();
}

void FirstHints::retranslate() {
    all_->setText(tr("&No more hints"));
    got_it_->setText(tr("&Got it"));
    count_->setText(tr("%1 of %2", "hints").arg(hint_ + 1).arg(hints));
    switch (hint_) {
        case 0:
            title_->setText(tr("Turn the house"));
            words_->setText(
                tr("Drag in the picture to turn it, turn the wheel to come closer. The Home key shows the whole house again."));
            break;
        case 1:
            title_->setText(tr("Choose a way in"));
            words_->setText(
                tr("Click a row of the list, or go up and down with the arrow keys: the picture shows that way, gap by gap."));
            break;
        default:
            title_->setText(tr("Try a closing"));
            words_->setText(
                tr("Tick a gap under Closings: the ways through it go, and you see what is still open and what it costs."));
    }
    setAccessibleName(title_->text());
    setAccessibleDescription(words_->text());
    place();
}

void FirstHints::place() {
    const QRect over = parentWidget()->rect();
    const int wanted = fontMetrics().averageCharWidth() * letters + 40;
    const int least = layout()->minimumSize().width();
    const int width = std::min(std::max(wanted, least), std::max(over.width() - 2 * margin, 0));
    const int height = layout()->hasHeightForWidth() ? layout()->totalHeightForWidth(width) : layout()->sizeHint().height();
    setGeometry(margin, margin, width, height);  // the card of facts has the lower corner
}

bool FirstHints::eventFilter(QObject* watched, QEvent* event) {
    if (watched == parentWidget() && event->type() == QEvent::Resize) place();
    if (watched != parentWidget() && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Escape) {
            keyPressEvent(static_cast<QKeyEvent*>(event));
            return true;
        }
    }
    return QFrame::eventFilter(watched, event);
}

void FirstHints::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::LanguageChange || event->type() == QEvent::FontChange) retranslate();
}

void FirstHints::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
        case Qt::Key_Escape:
        case Qt::Key_Return:
        case Qt::Key_Enter: return next();
        case Qt::Key_Right:
        case Qt::Key_Down: return show_hint(hint_ + 1);
        case Qt::Key_Left:
        case Qt::Key_Up: return show_hint(hint_ - 1);
        default: QFrame::keyPressEvent(event);
    }
}

void FirstHints::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette::way, 1.5));
    painter.setBrush(palette::card);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1, 1, -1, -1), 9, 9);
}

}  // namespace seamward::viewer
