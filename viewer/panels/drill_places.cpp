// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_places.h"

#include <QEvent>
#include <QKeyEvent>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>
#include <algorithm>

#include "document/units_text.h"
#include "panels/drill_row.h"
#include "panels/flow_layout.h"

namespace seamward::viewer {

DrillPlaces::DrillPlaces(DrillDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      count_(new QLabel(this)),
      list_(new QListWidget(this)),
      scroll_(new QScrollArea(this)),
      form_(new DrillAnswerForm(document)),
      next_(new QPushButton(this)),
      hand_in_(new QPushButton(this)) {
    setObjectName("drill_places");
    count_->setObjectName("count");
    count_->setWordWrap(true);
    count_->setContentsMargins(16, 10, 16, 8);
    list_->setObjectName("drill_list");
    list_->setItemDelegate(new DrillRow(list_));
    list_->setResizeMode(QListView::Adjust);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setFrameShape(QFrame::NoFrame);
    list_->installEventFilter(this);
    scroll_->setWidgetResizable(true);
    scroll_->setFrameShape(QFrame::NoFrame);
    scroll_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll_->setFocusPolicy(Qt::NoFocus);
    scroll_->setWidget(form_);
    next_->setObjectName("drill_next");
    hand_in_->setObjectName("drill_hand_in");
    auto* halves = new QSplitter(Qt::Vertical, this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(list_);
    halves->addWidget(scroll_);
    halves->setStretchFactor(0, 9);
    halves->setStretchFactor(1, 11);
    auto* buttons = new FlowLayout(nullptr, 8, 6);
    buttons->setContentsMargins(16, 8, 16, 12);
    buttons->addWidget(next_);
    buttons->addWidget(hand_in_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(count_);
    column->addWidget(halves, 1);
    column->addLayout(buttons);

    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) { document_.choose(row); });
    connect(next_, &QPushButton::clicked, this, [this] {
        const int next = document_.next_open_question();
        if (next == DrillDocument::no_place) return hand_in_->setFocus();
        document_.choose(next);
        form_->begin();
    });
    connect(hand_in_, &QPushButton::clicked, this, &DrillPlaces::hand_in_wanted);
    connect(form_, &DrillAnswerForm::to_be_seen, this, [this](QWidget* field) { scroll_->ensureWidgetVisible(field, 0, 24); });
    connect(&document_, &DrillDocument::opened, this, &DrillPlaces::fill);
    connect(&document_, &DrillDocument::answers_changed, this, &DrillPlaces::tell_answers);
    connect(&document_, &DrillDocument::place_chosen, this, &DrillPlaces::show_chosen);
    retranslate();
}

QString DrillPlaces::notes_of(std::size_t place) const {
    const BriefedPlace& told = document_.told().places.at(place);
    QStringList lines;
    if (!told.height.empty()) lines << QString::fromStdString(told.height);
    const PlaceAnswer* said = document_.answer(place);
    if (said == nullptr || !said->open) return lines.join('\n');
    QStringList parts;
    parts << (said->width ? length_words(*said->width) : tr("width not said"));
    const auto name = [&](SpaceIndex space) { return QString::fromStdString(document_.told().spaces.at(space.value).second); };
    parts << (said->between ? tr("%1 and %2", "two spaces").arg(name((*said->between)[0]), name((*said->between)[1]))
                            : tr("spaces not said"));
    const auto& treatments = document_.told().treatments;
    const auto with = std::ranges::find(treatments, said->treatment, [](const auto& one) { return one.first; });
    parts << (with == treatments.end() ? tr("treatment not said") : QString::fromStdString(with->second));
    if (said->wait) parts << tr("once the animal has left");
    lines << parts.join("; ");
    return lines.join('\n');
}

void DrillPlaces::fill() {
    if (!document_.has_drill()) return;
    const QSignalBlocker quiet(list_);
    const int chosen = document_.chosen();
    list_->clear();
    for (std::size_t i = 0; i < document_.place_count(); ++i) new QListWidgetItem(list_);
    tell_answers();
    list_->setCurrentRow(chosen);
    if (chosen == DrillDocument::no_place) list_->scrollToTop();
}

void DrillPlaces::tell_answers() {
    if (!document_.has_drill() || list_->count() != static_cast<int>(document_.place_count())) return;
    for (int i = 0; i < list_->count(); ++i) {
        const auto place = static_cast<std::size_t>(i);
        const PlaceSign sign = document_.sign_of(place);
        QString title = QString::fromStdString(document_.told().places.at(place).name);
        title = tr("%1. %2", "number and name of a place").arg(i + 1).arg(title);
        QString verdict = document_.is_handed_in() ? QString() : sign_words(sign);
        if (document_.entry() == place) verdict += (verdict.isEmpty() ? "" : ", ") + tr("entry");
        DrillRow::fill(*list_->item(i), i, title, verdict, notes_of(place), sign);
    }
    list_->doItemsLayout();
    count_->setText(tr("Said so far: %1 of %2 places").arg(document_.answered()).arg(document_.place_count()));
}

void DrillPlaces::show_chosen(int place) {
    if (list_->currentRow() == place) return;
    const QSignalBlocker quiet(list_);
    list_->setCurrentRow(place);
}

void DrillPlaces::retranslate() {
    list_->setAccessibleName(tr("Places to look at"));
    next_->setText(tr("&Next place"));
    next_->setToolTip(tr("To the next place that nothing is said of"));
    hand_in_->setText(tr("Han&d in..."));
    hand_in_->setToolTip(tr("What you found is judged then"));
    tell_answers();
}

bool DrillPlaces::eventFilter(QObject* watched, QEvent* event) {
    if (watched == list_ && event->type() == QEvent::KeyPress) {
        const int key = static_cast<QKeyEvent*>(event)->key();
        if ((key == Qt::Key_Return || key == Qt::Key_Enter) && document_.chosen() != DrillDocument::no_place) {
            form_->begin();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void DrillPlaces::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
