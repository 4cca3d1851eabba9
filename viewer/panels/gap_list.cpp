// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/gap_list.h"

#include <QAction>
#include <QEvent>
#include <QHBoxLayout>
#include <QScrollBar>
#include <QSignalBlocker>
#include <QVBoxLayout>
#include <algorithm>
#include <tuple>

#include "document/gap_facts.h"
#include "document/model_words.h"
#include "document/translations.h"
#include "document/way_text.h"
#include "panels/gap_list_row.h"

namespace seamward::viewer {

namespace {

enum Order { by_width, by_place };

/// All words of the search stand somewhere in what a row says.
bool matches(const QString& text, const QString& search) {
    const QStringList words = search.split(' ', Qt::SkipEmptyParts);
    return std::ranges::all_of(words, [&](const QString& word) { return text.contains(word, Qt::CaseInsensitive); });
}

GapListRow::Sign sign_of(const GapFacts& facts) {
    if (facts.closed != nullptr && facts.closed->holds()) return GapListRow::closed;
    if (facts.measured()) return GapListRow::measured;
    return facts.gap.evidence.how == Evidence::How::modeled ? GapListRow::drawn : GapListRow::unmeasured;
}

}  // namespace

GapList::GapList(JobDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      title_(new QLabel(this)),
      count_(new QLabel(this)),
      search_(new QLineEdit(this)),
      add_(new QPushButton(this)),
      order_(new QComboBox(this)),
      unmeasured_(new QCheckBox(this)),
      indoors_(new QCheckBox(this)),
      rows_(new QListWidget(this)) {
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.45);
    large.setBold(true);
    title_->setFont(large);
    count_->setObjectName("gap_count");
    count_->setWordWrap(true);
    search_->setObjectName("search_gaps");
    search_->setClearButtonEnabled(true);
    add_->setObjectName("new_gap");
    order_->setObjectName("order_gaps");
    order_->addItems({{}, {}});
    unmeasured_->setObjectName("unmeasured");
    indoors_->setObjectName("indoors");
    rows_->setObjectName("gaps");
    rows_->setItemDelegate(new GapListRow(rows_));
    rows_->setResizeMode(QListView::Adjust);
    rows_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    rows_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    rows_->setFrameShape(QFrame::NoFrame);

    lay_out();

    connect(add_, &QPushButton::clicked, this, &GapList::add_wanted);
    connect(search_, &QLineEdit::textChanged, this, &GapList::fill);
    connect(order_, qOverload<int>(&QComboBox::currentIndexChanged), this, &GapList::fill);
    connect(unmeasured_, &QCheckBox::toggled, this, &GapList::fill);
    connect(indoors_, &QCheckBox::toggled, this, &GapList::fill);
    connect(rows_, &QListWidget::itemActivated, this, &GapList::entered);
    connect(rows_, &QListWidget::currentItemChanged, this, [this](QListWidgetItem* row) {
        if (row == nullptr) return;
        const GapIndex gap{row->data(GapListRow::gap).toUInt()};
        chosen_ = document_.filed()->survey[gap].id;
        emit gap_chosen(gap);
    });
    retranslate();
}

void GapList::lay_out() {
    auto* first = new QHBoxLayout;
    first->addWidget(title_, 1);
    first->addWidget(add_);
    auto* tools = new QHBoxLayout;
    tools->setSpacing(10);
    tools->addWidget(search_, 1);
    tools->addWidget(order_);
    auto* head = new QVBoxLayout;
    head->setContentsMargins(18, 14, 18, 10);
    head->setSpacing(8);
    head->addLayout(first);
    head->addWidget(count_);
    head->addLayout(tools);
    head->addWidget(unmeasured_);
    head->addWidget(indoors_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(head);
    column->addWidget(rows_, 1);
}

std::vector<GapIndex> GapList::wanted() const {
    const Job& job = *document_.filed();
    std::vector<GapIndex> all;
    std::vector<double> widths(job.survey.gaps.size());
    const bool folded = !indoors_->isChecked() && search_->text().trimmed().isEmpty();
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        if (folded && only_indoors_[i]) continue;
        const GapFacts facts = gap_facts(job, {i});
        widths[i] = facts.width();
        const QString text = spoken_name(facts.gap) + ' ' + QString::fromStdString(facts.gap.label() + ' ' + facts.gap.id) + ' ' +
                             sides_words(job.survey, facts.gap);
        if (matches(text, search_->text()) && !(unmeasured_->isChecked() && facts.measured())) all.push_back({i});
    }
    if (order_->currentIndex() == by_width) {
        std::ranges::stable_sort(all, [&](GapIndex a, GapIndex b) { return widths[a.value] > widths[b.value]; });
        return all;
    }
    const auto key = [&](GapIndex gap) {
        const Gap& one = job.survey[gap];
        return std::tuple(one.between[0].value, one.between[1].value, gap.value);
    };
    std::ranges::sort(all, {}, key);
    return all;
}

void GapList::refresh() {
    const int at = rows_->verticalScrollBar() == nullptr ? 0 : rows_->verticalScrollBar()->value();
    fill();
    rows_->verticalScrollBar()->setValue(at);
    if (QListWidgetItem* row = row_of(chosen_)) rows_->scrollToItem(row);
}

void GapList::fill() {
    const QSignalBlocker quiet(rows_);
    rows_->clear();
    if (!document_.has_job()) return;
    const Job& job = *document_.filed();
    only_indoors_ = only_indoors(job);
    const auto indoors = static_cast<int>(std::ranges::count(only_indoors_, true));
    indoors_->setVisible(indoors > 0);
    indoors_->setText(tr("Also %n gap(s) between two places indoors", nullptr, indoors));
    indoors_->setToolTip(tr("They lie on no way in, whatever is open: inside of cabinets, or between two rooms"));
    const std::vector<GapIndex> gaps = wanted();
    for (const GapIndex gap : gaps) add_row(gap);
    int unmeasured = 0;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) unmeasured += gap_facts(job, {i}).measured() ? 0 : 1;
    const int all = static_cast<int>(job.survey.gaps.size());
    count_->setText(tr("%1, %2", "how many gaps, how many of them are not measured")
                        .arg(tr("%n gap(s)", nullptr, all),
                             unmeasured == 0 ? tr("all measured") : tr("%n not measured", nullptr, unmeasured)));
    unmeasured_->setEnabled(unmeasured > 0 || unmeasured_->isChecked());
    if (QListWidgetItem* row = row_of(chosen_)) rows_->setCurrentItem(row);
}

void GapList::add_row(GapIndex gap) {
    const Job& job = *document_.filed();
    const GapFacts facts = gap_facts(job, gap);
    const QString name = spoken_name(facts.gap), width = width_words(facts.width()), known = known_words(facts);
    auto* row = new QListWidgetItem(tr("%1: %2, %3", "name, width, how known").arg(name, width, known), rows_);
    row->setData(GapListRow::gap, gap.value);
    row->setData(GapListRow::name, name);
    row->setData(GapListRow::width, width);
    row->setData(GapListRow::sides, sides_words(job.survey, facts.gap));
    row->setData(GapListRow::known, known);
    row->setData(GapListRow::sign, sign_of(facts));
}

QListWidgetItem* GapList::row_of(const std::string& id) const {
    const Job& job = *document_.filed();
    for (int i = 0; i < rows_->count(); ++i) {
        const std::uint32_t gap = rows_->item(i)->data(GapListRow::gap).toUInt();
        if (gap < job.survey.gaps.size() && job.survey.gaps[gap].id == id) return rows_->item(i);
    }
    return nullptr;
}

void GapList::choose(const std::string& id) {
    chosen_ = id;
    const QSignalBlocker quiet(rows_);
    if (id.empty()) {
        rows_->setCurrentItem(nullptr);
        rows_->clearSelection();
        return;
    }
    if (row_of(id) == nullptr) {
        search_->clear();
        unmeasured_->setChecked(false);
    }
    if (row_of(id) == nullptr) indoors_->setChecked(true);
    QListWidgetItem* row = row_of(id);
    if (row == nullptr) return;
    rows_->setCurrentItem(row);
    rows_->scrollToItem(row);
}

void GapList::reveal() {
    if (QListWidgetItem* row = rows_->currentItem()) rows_->scrollToItem(row);
}

bool GapList::event(QEvent* event) {
    const bool done = QWidget::event(event);
    // Words that wrap need their height, whatever stands under the list.
    if (event->type() == QEvent::LayoutRequest || event->type() == QEvent::Resize || event->type() == QEvent::FontChange) {
        rows_->setMinimumHeight(std::max(120, 5 * fontMetrics().lineSpacing()));
        setMinimumHeight(std::max(0, layout()->minimumHeightForWidth(width())));
    }
    return done;
}

void GapList::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // Once the rows are laid out anew.
    QMetaObject::invokeMethod(this, &GapList::reveal, Qt::QueuedConnection);
}

void GapList::retranslate() {
    title_->setText(tr("Gaps"));
    add_->setText(tr("Add a &gap..."));
    add_->setToolTip(tr("Or click with the right button in the picture where the gap is."));
    search_->setPlaceholderText(tr("Find a gap"));
    search_->setAccessibleName(tr("Find a gap by words of its name or its rooms"));
    search_->setToolTip(search_->accessibleName());
    order_->setAccessibleName(tr("Order of the list"));
    {
        const QSignalBlocker quiet(order_);
        order_->setItemText(by_width, tr("Widest first"));
        order_->setItemText(by_place, tr("By place"));
    }
    unmeasured_->setText(tr("Unmeas&ured only"));
    rows_->setAccessibleName(tr("Gaps of the survey"));
    fill();
}

void GapList::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
