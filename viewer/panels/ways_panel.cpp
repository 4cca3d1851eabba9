// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/ways_panel.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>

#include "document/model_words.h"
#include "document/translations.h"
#include "document/way_text.h"
#include "panels/choice_box.h"
#include "panels/way_row.h"

namespace seamward::viewer {

namespace {

constexpr int most_of_sketch = 120;   ///< pixels, so that the steps stay in view in a window of 720
constexpr int lines_for_sketch = 25;  ///< of letters in the panel's height; lower, there is no room for a sketch

QLabel* label(QWidget* parent) {
    auto* made = new QLabel(parent);
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(true);
    return made;
}

}  // namespace

WaysPanel::WaysPanel(JobDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      title_(label(this)),
      animals_name_(label(this)),
      rooms_name_(label(this)),
      count_(label(this)),
      remarks_(label(this)),
      animals_(new ChoiceBox(this)),
      rooms_(new ChoiceBox(this)),
      ways_(new QListWidget(this)),
      none_(label(this)),
      sketch_(new FitSketch(this)),
      steps_(new QTextBrowser(this)) {
    setObjectName("ways_panel");
    animals_->setObjectName("animals");
    rooms_->setObjectName("rooms");
    ways_->setObjectName("ways");
    ways_->setItemDelegate(new WayRow(ways_));
    ways_->setResizeMode(QListView::Adjust);
    ways_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    ways_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    ways_->setFrameShape(QFrame::NoFrame);
    none_->setObjectName("none");
    none_->setMargin(18);
    none_->setAlignment(Qt::AlignTop);
    none_->hide();
    steps_->setObjectName("steps");
    steps_->setFrameShape(QFrame::NoFrame);
    steps_->document()->setDocumentMargin(16);
    steps_->setOpenLinks(false);

    auto* halves = new QSplitter(Qt::Vertical, this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(ways_);
    halves->addWidget(make_foot());
    halves->setStretchFactor(0, 1);
    halves->setStretchFactor(1, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(make_head());
    column->addWidget(none_, 1);
    column->addWidget(halves, 1);

    connect(animals_, qOverload<int>(&QComboBox::currentIndexChanged), this,
            [this](int row) { document_.choose_animal(row - 1); });
    connect(rooms_, qOverload<int>(&QComboBox::currentIndexChanged), this, [this](int row) { document_.choose_room(row - 1); });
    connect(ways_, &QListWidget::currentRowChanged, this, [this](int row) { document_.choose_way(row); });
    connect(&document_, &JobDocument::opened, this, &WaysPanel::fill_choices);
    connect(&document_, &JobDocument::ways_found, this, &WaysPanel::fill_ways);
    connect(&document_, &JobDocument::way_chosen, this, &WaysPanel::show_chosen);
    retranslate();
}

void WaysPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange) place_sketch();
}

void WaysPanel::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    place_sketch();
}

void WaysPanel::place_sketch() {
    const bool low = height() < lines_for_sketch * fontMetrics().height();
    sketch_->setVisible(document_.chosen() != nullptr && !low);
    // Without a way nothing stands below, and the list has all the room.
    steps_->parentWidget()->setVisible(document_.chosen() != nullptr);
    // Large letters leave little room: the list has the larger part of it, and the remarks stand under the steps anyway.
    ways_->setMinimumHeight(low && document_.chosen() != nullptr ? height() * 2 / 5 : 0);
    if (!document_.ways().paths.empty()) remarks_->setVisible(!low && !document_.remarks().isEmpty());
}

void WaysPanel::retranslate() {
    ways_->setAccessibleName(tr("Ways in"));
    steps_->setAccessibleName(tr("The way in, gap by gap"));
    animals_name_->setText(tr("&Animal"));
    animals_->setAccessibleName(tr("Animal"));
    animals_->setToolTip(tr("Show only the ways in that this animal gets through"));
    rooms_name_->setText(tr("&Room"));
    rooms_->setAccessibleName(tr("Room"));
    rooms_->setToolTip(tr("Show only the ways into this room"));
    if (!document_.has_job()) return;
    fill_choices();
    fill_ways();
    show_chosen(document_.way());
}

QWidget* WaysPanel::make_head() {
    auto* head = new QWidget(this);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.45);
    large.setBold(true);
    title_->setFont(large);
    title_->setObjectName("title");
    count_->setObjectName("count");
    remarks_->setObjectName("remarks");
    auto* choices = new QGridLayout;
    choices->setHorizontalSpacing(10);
    choices->setColumnStretch(1, 1);
    const auto choice = [&](QLabel* name, QComboBox* box) {
        name->setParent(head);
        name->setBuddy(box);
        name->setWordWrap(false);
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);  // long names do not widen the window
        const int row = choices->rowCount();
        choices->addWidget(name, row, 0);
        choices->addWidget(box, row, 1);
    };
    choice(animals_name_, animals_);
    choice(rooms_name_, rooms_);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(18, 14, 18, 12);
    column->setSpacing(8);
    column->addWidget(title_);
    column->addLayout(choices);
    column->addWidget(count_);
    column->addWidget(remarks_);
    return head;
}

QWidget* WaysPanel::make_foot() {
    auto* foot = new QWidget(this);
    sketch_->setMaximumHeight(most_of_sketch);
    sketch_->hide();
    auto* inset = new QHBoxLayout;
    inset->setContentsMargins(8, 4, 8, 0);
    inset->addWidget(sketch_);
    auto* column = new QVBoxLayout(foot);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(inset);
    column->addWidget(steps_, 1);
    return foot;
}

void WaysPanel::fill_choices() {
    const QSignalBlocker quiet_animals(animals_);
    const QSignalBlocker quiet_rooms(rooms_);
    title_->setText(document_.title());
    animals_->clear();
    animals_->addItem(tr("All animals"));
    for (const Pest& pest : document_.job().pests) animals_->addItem(animal_text(pest));
    rooms_->clear();
    rooms_->addItem(tr("All rooms"));
    for (const SpaceIndex room : document_.rooms()) rooms_->addItem(spoken_name(document_.job().survey[room]));
    animals_->setCurrentIndex(document_.animal() + 1);
    rooms_->setCurrentIndex(document_.room() + 1);
    for (QComboBox* box : {animals_, rooms_}) {
        for (int i = 0; i < box->count(); ++i) box->setItemData(i, box->itemText(i), Qt::ToolTipRole);
    }
}

void WaysPanel::fill_ways() {
    const QSignalBlocker quiet_animals(animals_);
    const QSignalBlocker quiet_rooms(rooms_);
    const QSignalBlocker quiet(ways_);
    animals_->setCurrentIndex(document_.animal() + 1);
    rooms_->setCurrentIndex(document_.room() + 1);
    const Survey& survey = document_.job().survey;
    const std::vector<RankedPath>& paths = document_.ways().paths;
    ways_->clear();
    for (std::size_t i = 0; i < paths.size(); ++i) {
        auto* row = new QListWidgetItem(row_text(survey, paths[i], static_cast<int>(i)), ways_);
        row->setData(WayRow::room, room_text(survey, paths[i]));
        row->setData(WayRow::width, gap_width_text(survey[paths[i].pinch_gap]));
        row->setData(WayRow::gap, smallest_gap_place_text(survey, paths[i]));
        row->setData(WayRow::stays, stays_open_text(survey[paths[i].pinch_gap]));
    }
    const bool any = !paths.empty();
    count_->setText(count_text());
    count_->setVisible(any);
    none_->setText(none_text());
    none_->setVisible(!any);
    ways_->parentWidget()->setVisible(any);
    show_remarks();
}

void WaysPanel::show_remarks() {
    // Beside a list they stand under the steps, where there is room for them.
    const QStringList& all = document_.remarks();
    if (!document_.ways().paths.empty()) {
        remarks_->setText(tr("%n remark(s) on this survey, under the steps", nullptr, all.size()));
    } else {
        remarks_->setText(tr("To check: %1.").arg(all.join(".\n")));
    }
    remarks_->setVisible(!all.isEmpty());
    place_sketch();
}

QString WaysPanel::animal_asked() const {
    const int row = document_.animal();
    return row == JobDocument::all_animals ? QString() : animal_text(document_.job().pests[static_cast<std::size_t>(row)]);
}

QString WaysPanel::room_asked() const {
    const int row = document_.room();
    if (row == JobDocument::all_rooms) return {};
    return spoken_name(document_.job().survey[document_.rooms()[static_cast<std::size_t>(row)]]);
}

QString WaysPanel::none_text() const {
    const QString model = model_words(document_.job());
    return model.isEmpty() ? none_found_text() : none_found_text() + "\n\n" + model;
}

QString WaysPanel::none_found_text() const {
    const QString animal = animal_asked();
    const QString room = room_asked();
    if (animal.isEmpty() && room.isEmpty()) return tr("No way in, as far as this survey goes.");
    if (room.isEmpty()) return tr("No way in for %1, as far as this survey goes.").arg(animal);
    if (animal.isEmpty()) return tr("No way into %1, as far as this survey goes.").arg(room);
    return tr("No way in for %1 into %2, as far as this survey goes.").arg(animal, room);
}

QString WaysPanel::count_text() const {
    const auto count = static_cast<int>(document_.ways().paths.size());
    const QString animal = animal_asked();
    const QString room = room_asked();
    if (count == static_cast<int>(JobDocument::ways_wanted)) {
        if (animal.isEmpty() && room.isEmpty()) return tr("The %n widest way(s) in, by smallest gap", nullptr, count);
        if (room.isEmpty()) return tr("The %n widest way(s) in for %1, by smallest gap", nullptr, count).arg(animal);
        if (animal.isEmpty()) return tr("The %n widest way(s) into %1, by smallest gap", nullptr, count).arg(room);
        return tr("The %n widest way(s) in for %1 into %2, by smallest gap", nullptr, count).arg(animal, room);
    }
    if (animal.isEmpty() && room.isEmpty()) return tr("%n way(s) in, by smallest gap", nullptr, count);
    if (room.isEmpty()) return tr("%n way(s) in for %1, by smallest gap", nullptr, count).arg(animal);
    if (animal.isEmpty()) return tr("%n way(s) into %1, by smallest gap", nullptr, count).arg(room);
    return tr("%n way(s) in for %1 into %2, by smallest gap", nullptr, count).arg(animal, room);
}

void WaysPanel::show_chosen(int way) {
    const RankedPath* chosen = document_.chosen();
    if (ways_->currentRow() != way) {
        const QSignalBlocker quiet(ways_);
        ways_->setCurrentRow(way);
    }
    if (chosen != nullptr) sketch_->show_gap(document_, chosen->pinch_gap);
    place_sketch();
    steps_->setHtml(chosen == nullptr ? QString()
                                      : steps_html(document_.job(), *chosen, way) + remarks_html(document_.remarks()));
}

}  // namespace seamward::viewer
