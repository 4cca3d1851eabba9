// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_list.h"

#include <QApplication>
#include <QCursor>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTimer>
#include <algorithm>

#include "document/closings_text.h"
#include "document/translations.h"
#include "panels/closing_detail.h"
#include "panels/closing_row.h"

namespace seamward::viewer {

namespace {

bool is_closing(const QListWidgetItem* row) {
    return row != nullptr && row->data(ClosingRow::kind).toInt() == ClosingRow::closing;
}

}  // namespace

ClosingsList::ClosingsList(ClosingsDocument& closings, QWidget* top, QWidget* parent)
    : QListWidget(parent), closings_(closings), top_(new QListWidgetItem(this)), top_widget_(top) {
    setObjectName("closings");
    setItemDelegate(new ClosingRow(this));
    setResizeMode(QListView::Adjust);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalScrollBar()->setSingleStep(24);
    setFrameShape(QFrame::NoFrame);
    top_->setFlags(Qt::NoItemFlags);
    top_->setData(ClosingRow::kind, ClosingRow::hosts_widget);
    setItemWidget(top_, top);
    top->installEventFilter(this);
    connect(&closings_, &ClosingsDocument::planned, this, &ClosingsList::fill);
    connect(&closings_, &ClosingsDocument::state_changed, this, &ClosingsList::refresh);
    connect(&closings_, &ClosingsDocument::outlook_found, this, &ClosingsList::refresh);
    connect(&closings_, &ClosingsDocument::refused, this, [this](const Refusal& refusal, GapIndex gap) {
        if (detail_ != nullptr && detail_->gap() == gap) detail_->refuse(refusal);
    });
    connect(this, &QListWidget::currentItemChanged, this, &ClosingsList::follow_current);
    connect(qApp, &QApplication::focusChanged, this, [this](const QWidget* /*before*/, const QWidget* now) {
        // What the Tab key reaches is brought into sight.
        if (now == nullptr) return;
        if (top_widget_->isAncestorOf(now)) scrollToItem(top_);
        if (detail_ != nullptr && detail_->isAncestorOf(now)) scrollToItem(detail_row_);
    });
    retranslate();
}

void ClosingsList::retranslate() {
    setAccessibleName(tr("Gaps to close"));
    setToolTip(
        tr("Tick what is to be closed, with a click or the space bar. Click a row, or press Enter, to see what it takes."));
    fill();
}

void ClosingsList::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) QTimer::singleShot(0, this, &ClosingsList::fit_widgets);
    QListWidget::changeEvent(event);
}

void ClosingsList::fill() {
    const QSignalBlocker quiet(this);
    const QListWidgetItem* current = currentItem();
    const int chosen = current == nullptr ? ClosingRow::no_gap : current->data(ClosingRow::gap).toInt();
    close_detail();
    while (count() > 1) delete takeItem(count() - 1);
    handled_ = nullptr;
    departures_.clear();
    leaving_ = air_ = checks_ = materials_ = nullptr;
    if (closings_.has_plan()) {
        fill_notes_above();
        fill_offers(true);
        fill_offers(false);
        fill_notes_below();
        refresh();
    } else if (!closings_.fault().isEmpty()) {
        add_heading(tr("No plan could be made"));
        add_notes({{closings_.fault(), {}, {}}});
    }
    QListWidgetItem* again = chosen == ClosingRow::no_gap ? nullptr : row_of({static_cast<std::uint32_t>(chosen)});
    setCurrentItem(again);
    if (again == nullptr) detail_wanted_ = false;
    if (detail_wanted_) open_detail();
    fit_widgets();
}

const OfferedClosing* ClosingsList::offer_in(const QListWidgetItem& row) const {
    return is_closing(&row) ? &closings_.plan().offers[row.data(ClosingRow::offer).toUInt()] : nullptr;
}

void ClosingsList::refresh() {
    if (!closings_.has_plan()) return;
    const Held held = hold(itemAt(viewport()->mapFromGlobal(QCursor::pos())));
    for (int i = 0; i < count(); ++i) refresh_row(*item(i));
    refresh_notes();
    refresh_folds();
    let_go(held);
}

ClosingsList::Held ClosingsList::hold(QListWidgetItem* under_mouse) const {
    QListWidgetItem* row = viewport()->underMouse() && under_mouse != nullptr ? under_mouse : currentItem();
    if (row == nullptr || row->isHidden()) return {};
    const QRect at = visualItemRect(row);
    return viewport()->rect().intersects(at) ? Held{row, at.top()} : Held{};
}

void ClosingsList::let_go(const Held& held) {
    if (held.row == nullptr || held.row->isHidden()) return;
    doItemsLayout();
    verticalScrollBar()->setValue(verticalScrollBar()->value() + visualItemRect(held.row).top() - held.top);
}

void ClosingsList::refresh_row(QListWidgetItem& row) {
    const OfferedClosing* offer = offer_in(row);
    if (offer == nullptr) return;
    const Option& option = closings_.chosen(*offer);
    const bool by_hand = closings_.chosen_by_hand(*offer);
    const auto count = static_cast<int>(offer->cautions(closings_.choice(*offer)).size());
    const bool waits = std::ranges::any_of(closings_.outlook().departures, [&](const Departure& departure) {
        return std::ranges::find(departure.last, offer->gap) != departure.last.end();
    });
    const QString treatment = treatment_words(option.treatment);
    const QString number = QString::number(offer->number);
    row.setCheckState(closings_.is_ticked(*offer) ? Qt::Checked : Qt::Unchecked);
    row.setData(ClosingRow::below, by_hand ? tr("%1, chosen by hand").arg(treatment) : treatment);
    row.setData(ClosingRow::price, money_words(option.cost));
    row.setData(ClosingRow::cautions, count == 0 ? QString() : count == 1 ? tr("one caution") : tr("%1 cautions").arg(count));
    row.setData(ClosingRow::waits, offer->waits || waits ? tr("waits until an animal has left") : QString());
    const QStringList parts{tr("%1: %2").arg(number, row.data(ClosingRow::title).toString()),
                            row.data(ClosingRow::below).toString(), row.data(ClosingRow::price).toString(),
                            row.data(ClosingRow::cautions).toString(), row.data(ClosingRow::waits).toString()};
    row.setText(QStringList(parts.filter(QRegExp("."))).join(", "));
}

void ClosingsList::refresh_folds() {
    bool shown = true;
    for (int i = 1; i < count(); ++i) {
        QListWidgetItem& row = *item(i);
        const int kind = row.data(ClosingRow::kind).toInt();
        if (kind == ClosingRow::heading) shown = true;
        if (kind == ClosingRow::fold) {
            shown = folds_[row.data(ClosingRow::number).toString()];
            row.setData(ClosingRow::open, shown);
            row.setToolTip(shown ? tr("Open; a click or Enter folds it") : tr("Folded; a click or Enter opens it"));
        } else if (kind != ClosingRow::heading) {
            // What is ticked stays in sight, and what was just unticked there: it is under the mouse.
            row.setHidden(!shown && row.checkState() != Qt::Checked && &row != handled_);
        }
    }
    if (air_ == nullptr) return;
    const bool air = !air_->data(ClosingRow::title).toString().isEmpty();
    if (!air) air_->setHidden(true);
    checks_->setHidden(checks_->data(ClosingRow::offer).toInt() == 0 && !air);
}

QListWidgetItem* ClosingsList::row_of(GapIndex gap) const {
    for (int i = 0; i < count(); ++i) {
        if (is_closing(item(i)) && item(i)->data(ClosingRow::gap).toInt() == ClosingRow::gap_value(gap)) return item(i);
    }
    return nullptr;
}

void ClosingsList::show_gap(GapIndex gap) {
    QListWidgetItem* row = row_of(gap);
    if (row == nullptr) return;
    if (row->isHidden()) folds_["others"] = true;
    refresh_folds();
    setCurrentItem(row);
    detail_wanted_ = true;
    open_detail();
}

void ClosingsList::act_on(QListWidgetItem& row) {
    if (row.data(ClosingRow::kind).toInt() == ClosingRow::fold) {
        bool& open = folds_[row.data(ClosingRow::number).toString()];
        open = !open;
        handled_ = nullptr;
        return refresh_folds();
    }
    if (!is_closing(&row)) return;
    const bool shown = detail_ != nullptr && detail_->gap() == offer_in(row)->gap;
    detail_wanted_ = !shown;
    if (shown) return close_detail();
    open_detail();
}

void ClosingsList::tick(QListWidgetItem& row) {
    handled_ = &row;
    if (const OfferedClosing* offer = offer_in(row)) closings_.tick(offer->gap, !closings_.is_ticked(*offer));
}

void ClosingsList::follow_current() {
    const QListWidgetItem* row = currentItem();
    const int gap = row == nullptr ? ClosingRow::no_gap : row->data(ClosingRow::gap).toInt();
    if (gap != ClosingRow::no_gap) emit gap_chosen({static_cast<std::uint32_t>(gap)});
    // Rows must not move under the mouse or the key that is just being handled.
    if (detail_wanted_) QTimer::singleShot(0, this, &ClosingsList::open_detail);
}

void ClosingsList::open_detail() {
    QListWidgetItem* row = currentItem();
    if (!detail_wanted_ || !is_closing(row)) return;
    if (detail_ != nullptr && detail_->gap() == offer_in(*row)->gap) return;
    const QSignalBlocker quiet(this);
    const Held held = hold(row);
    close_detail();
    detail_ = new ClosingDetail(closings_);
    detail_row_ = new QListWidgetItem;
    detail_row_->setFlags(Qt::NoItemFlags);
    detail_row_->setData(ClosingRow::kind, ClosingRow::hosts_widget);
    insertItem(this->row(row) + 1, detail_row_);
    detail_->show(offer_in(*row)->gap);
    setItemWidget(detail_row_, detail_);
    connect(detail_, &ClosingDetail::size_changed, this, &ClosingsList::fit_widgets);
    fit_widgets();
    let_go(held);
    scrollToItem(detail_row_);
    scrollToItem(row);
}

void ClosingsList::close_detail() {
    if (detail_row_ == nullptr) return;
    const QSignalBlocker quiet(this);
    delete takeItem(row(detail_row_));
    detail_row_ = nullptr;
    detail_ = nullptr;
}

void ClosingsList::fit_widgets() {
    const int width = viewport()->width();
    const int top = top_widget_->hasHeightForWidth() ? top_widget_->heightForWidth(width) : top_widget_->sizeHint().height();
    top_->setSizeHint({width, top});
    if (detail_row_ != nullptr) detail_row_->setSizeHint({width, detail_->heightForWidth(width)});
}

bool ClosingsList::eventFilter(QObject* watched, QEvent* event) {
    // Its words take more or fewer lines.
    if (watched == top_widget_ && event->type() == QEvent::LayoutRequest) fit_widgets();
    return QListWidget::eventFilter(watched, event);
}

void ClosingsList::resizeEvent(QResizeEvent* event) {
    QListWidget::resizeEvent(event);
    fit_widgets();
}

QListWidgetItem* ClosingsList::tick_at(QPoint place) const {
    QListWidgetItem* row = itemAt(place);
    return is_closing(row) && ClosingRow::tick_target(visualItemRect(row)).contains(place) ? row : nullptr;
}

void ClosingsList::mousePressEvent(QMouseEvent* event) {
    pressed_tick_ = event->button() == Qt::LeftButton ? tick_at(event->pos()) : nullptr;
    if (pressed_tick_ == nullptr) return QListWidget::mousePressEvent(event);
}

void ClosingsList::mouseReleaseEvent(QMouseEvent* event) {
    if (pressed_tick_ != nullptr) {
        if (tick_at(event->pos()) == pressed_tick_) tick(*pressed_tick_);
        pressed_tick_ = nullptr;
        return;
    }
    QListWidget::mouseReleaseEvent(event);
    QListWidgetItem* row = itemAt(event->pos());
    if (event->button() == Qt::LeftButton && row != nullptr && row == currentItem()) act_on(*row);
}

void ClosingsList::mouseDoubleClickEvent(QMouseEvent* event) { mousePressEvent(event); }

void ClosingsList::keyPressEvent(QKeyEvent* event) {
    QListWidgetItem* row = currentItem();
    if (row != nullptr && event->key() == Qt::Key_Space && is_closing(row)) return tick(*row);
    const bool acts = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
    if (row != nullptr && acts) return act_on(*row);
    QListWidget::keyPressEvent(event);
}

}  // namespace seamward::viewer
