// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/closings_list.h"

#include <QApplication>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QTimer>
#include <algorithm>

#include "document/closings_text.h"
#include "panels/closing_detail.h"
#include "panels/closing_row.h"

namespace seamward::viewer {

namespace {

constexpr int no_gap = -1;

int gap_value(std::optional<GapIndex> gap) { return gap ? static_cast<int>(gap->value) : no_gap; }

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

QListWidgetItem* ClosingsList::add(int kind, const QString& title, const QString& below) {
    auto* row = new QListWidgetItem(this);
    row->setText(below.isEmpty() ? title : tr("%1: %2").arg(title, below));
    row->setData(ClosingRow::kind, kind);
    row->setData(ClosingRow::title, title);
    row->setData(ClosingRow::below, below);
    row->setData(ClosingRow::gap, no_gap);
    return row;
}

void ClosingsList::add_heading(const QString& text) { add(ClosingRow::heading, text)->setFlags(Qt::NoItemFlags); }

QListWidgetItem* ClosingsList::add_fold(const QString& name, const QString& text, bool open) {
    folds_.emplace(name, open);
    QListWidgetItem* row = add(ClosingRow::fold, text);
    row->setData(ClosingRow::number, name);
    return row;
}

void ClosingsList::add_notes(const std::vector<ClosingNote>& notes) {
    for (const ClosingNote& note : notes) {
        QListWidgetItem* row = add(ClosingRow::note, note.text, note.reason);
        row->setData(ClosingRow::gap, gap_value(note.gap));
    }
}

void ClosingsList::fill() {
    const QSignalBlocker quiet(this);
    const QListWidgetItem* current = currentItem();
    const int chosen = current == nullptr ? no_gap : current->data(ClosingRow::gap).toInt();
    close_detail();
    while (count() > 1) delete takeItem(count() - 1);
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
    QListWidgetItem* again = chosen == no_gap ? nullptr : row_of({static_cast<std::uint32_t>(chosen)});
    setCurrentItem(again);
    if (again == nullptr) detail_wanted_ = false;
    if (detail_wanted_) open_detail();
    fit_widgets();
}

void ClosingsList::fill_notes_above() {
    const ClosingsPlan& plan = closings_.plan();
    const std::vector<ClosingNote> lack = lack_notes(plan);
    if (!lack.empty()) add_heading(tr("There is nothing to plan"));
    add_notes(lack);
    const std::vector<ClosingNote> no_plan = no_plan_notes(plan);
    if (!no_plan.empty()) add_heading(tr("No plan: there is a way in that must not or cannot be closed"));
    add_notes(no_plan);
    if (lack.empty() && plan.plan.feasible && plan.plan.steps.empty()) {
        add_heading(tr("Nothing needs closing"));
        add_notes({{tr("None of these animals has a way in, as far as this survey goes."), {}, {}}});
    }
    const std::vector<ClosingNote> wrong = wrong_notes(plan);
    if (!wrong.empty()) add_heading(tr("Wrong closings to open again"));
    add_notes(wrong);
    const std::vector<ClosingNote> departures = departure_notes(plan, plan.plan.departures);
    if (!departures.empty()) add_heading(tr("Animals that live in the house"));
    for (const ClosingNote& departure : departures) {
        departures_.push_back(add(ClosingRow::note, departure.text));
        departures_.back()->setData(ClosingRow::gap, gap_value(departure.gap));
    }
    if (!departures.empty()) {
        add_fold("leaving", tr("How they leave the house, and what to mind"), false);
        leaving_ = add(ClosingRow::note, {});
    }
    const std::vector<ClosingNote> before = before_notes(plan);
    if (!before.empty()) add_fold("before", tr("Before the work (%n)", nullptr, static_cast<int>(before.size())), false);
    add_notes(before);
}

void ClosingsList::fill_offers(bool planned) {
    const ClosingsPlan& plan = closings_.plan();
    const auto count = std::ranges::count(plan.offers, planned, &OfferedClosing::planned);
    if (count == 0) return;
    if (!planned) {
        const bool needless = plan.plan.feasible && !plan.settings.against.empty();
        add_fold("others",
                 needless ? tr("Not needed for these animals (%n)", nullptr, static_cast<int>(count))
                          : tr("Can be closed (%n)", nullptr, static_cast<int>(count)),
                 !needless);
    }
    QString stand;
    for (const OfferedClosing& offer : plan.offers) {
        if (offer.planned != planned) continue;
        if (planned && stand_words(plan, offer) != stand) add_heading(stand_words(plan, offer));
        stand = stand_words(plan, offer);
        add_offer(offer);
    }
}

void ClosingsList::add_offer(const OfferedClosing& offer) {
    QListWidgetItem* row = add(ClosingRow::closing, QString::fromStdString(closings_.plan().survey()[offer.gap].label()));
    row->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsUserCheckable);
    row->setData(ClosingRow::offer, offer.number - 1);
    row->setData(ClosingRow::gap, gap_value(offer.gap));
    row->setData(ClosingRow::number, QString::number(offer.number));
}

void ClosingsList::fill_notes_below() {
    const ClosingsPlan& plan = closings_.plan();
    const std::vector<ClosingNote> open = stays_open_notes(plan);
    if (!open.empty()) add_heading(tr("What stays open, and why"));
    add_notes(open);
    const std::vector<ClosingNote> check = check_notes(plan);
    checks_ = add_fold("check", tr("To check"), false);
    checks_->setData(ClosingRow::offer, static_cast<int>(check.size()));
    air_ = add(ClosingRow::note, {});
    add_notes(check);
    add_fold("materials", tr("To bring for what is ticked"), false);
    materials_ = add(ClosingRow::note, {});
    const std::vector<ClosingNote> proof = proof_notes(plan);
    if (!proof.empty()) add_fold("proof", tr("Why nothing cheaper will do"), false);
    add_notes(proof);
}

const OfferedClosing* ClosingsList::offer_in(const QListWidgetItem& row) const {
    return is_closing(&row) ? &closings_.plan().offers[row.data(ClosingRow::offer).toUInt()] : nullptr;
}

void ClosingsList::refresh() {
    if (!closings_.has_plan()) return;
    for (int i = 0; i < count(); ++i) refresh_row(*item(i));
    refresh_notes();
    refresh_folds();
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

void ClosingsList::refresh_notes() {
    const auto set = [](QListWidgetItem& row, const QString& title, const QString& below) {
        row.setData(ClosingRow::title, title);
        row.setData(ClosingRow::below, below);
        row.setText(below.isEmpty() ? title : tr("%1: %2").arg(title, below));
    };
    // As long as nothing is ticked, what holds of the whole plan is told.
    const bool any = closings_.ticked().gaps > 0;
    const std::vector<ClosingNote> departures =
        departure_notes(closings_.plan(), any ? closings_.outlook().departures : closings_.plan().plan.departures);
    for (std::size_t i = 0; i < std::min(departures.size(), departures_.size()); ++i)
        set(*departures_[i], departures[i].text, {});
    QStringList leaving;
    for (const ClosingNote& departure : departures) leaving << departure.reason;
    leaving.removeAll(QString());
    if (leaving_ != nullptr)
        set(*leaving_, leaving.isEmpty() ? tr("None of them has to leave for these closings.") : leaving.join("\n\n"), {});
    QStringList air;
    for (const std::string& doubt : closings_.outlook().air_doubts) air << tr("Air: %1").arg(QString::fromStdString(doubt));
    if (air_ != nullptr) set(*air_, air.join('\n'), {});
    QStringList packs;
    for (const ClosingNote& note : material_notes(closings_)) packs << note.text;
    if (materials_ != nullptr) set(*materials_, packs.isEmpty() ? tr("Nothing is ticked that takes any.") : packs.join('\n'), {});
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
            // What is ticked stays in sight.
            row.setHidden(!shown && row.checkState() != Qt::Checked);
        }
    }
    if (air_ == nullptr) return;
    const bool air = !air_->data(ClosingRow::title).toString().isEmpty();
    if (!air) air_->setHidden(true);
    checks_->setHidden(checks_->data(ClosingRow::offer).toInt() == 0 && !air);
}

QListWidgetItem* ClosingsList::row_of(GapIndex gap) const {
    for (int i = 0; i < count(); ++i) {
        if (is_closing(item(i)) && item(i)->data(ClosingRow::gap).toInt() == gap_value(gap)) return item(i);
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
        return refresh_folds();
    }
    if (!is_closing(&row)) return;
    const bool shown = detail_ != nullptr && detail_->gap() == offer_in(row)->gap;
    detail_wanted_ = !shown;
    if (shown) return close_detail();
    open_detail();
}

void ClosingsList::tick(QListWidgetItem& row) {
    if (const OfferedClosing* offer = offer_in(row)) closings_.tick(offer->gap, !closings_.is_ticked(*offer));
}

void ClosingsList::follow_current() {
    const QListWidgetItem* row = currentItem();
    const int gap = row == nullptr ? no_gap : row->data(ClosingRow::gap).toInt();
    if (gap != no_gap) emit gap_chosen({static_cast<std::uint32_t>(gap)});
    // Rows must not move under the mouse or the key that is just being handled.
    if (detail_wanted_) QTimer::singleShot(0, this, &ClosingsList::open_detail);
}

void ClosingsList::open_detail() {
    QListWidgetItem* row = currentItem();
    if (!detail_wanted_ || !is_closing(row)) return;
    if (detail_ != nullptr && detail_->gap() == offer_in(*row)->gap) return;
    const QSignalBlocker quiet(this);
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
