// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/ways_panel.h"

#include <QHBoxLayout>
#include <QSignalBlocker>
#include <QSplitter>
#include <QVBoxLayout>

#include "document/way_text.h"
#include "panels/way_row.h"

namespace seamward::viewer {

namespace {

QLabel* label(const QString& text, QWidget* parent) {
    auto* made = new QLabel(text, parent);
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(true);
    return made;
}

}  // namespace

WaysPanel::WaysPanel(JobDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      title_(label({}, this)),
      count_(label({}, this)),
      animals_(new QComboBox(this)),
      ways_(new QListWidget(this)),
      none_(label({}, this)),
      steps_(new QTextBrowser(this)) {
    setObjectName("ways_panel");
    animals_->setObjectName("animals");
    ways_->setObjectName("ways");
    ways_->setAccessibleName(tr("Ways in"));
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
    steps_->setAccessibleName(tr("The way in, gap by gap"));
    steps_->setFrameShape(QFrame::NoFrame);
    steps_->document()->setDocumentMargin(16);
    steps_->setOpenLinks(false);

    auto* halves = new QSplitter(Qt::Vertical, this);
    halves->setChildrenCollapsible(false);
    halves->addWidget(ways_);
    halves->addWidget(steps_);
    halves->setStretchFactor(0, 11);
    halves->setStretchFactor(1, 9);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(make_head());
    column->addWidget(none_, 1);
    column->addWidget(halves, 1);

    connect(animals_, qOverload<int>(&QComboBox::currentIndexChanged), this,
            [this](int row) { document_.choose_animal(row - 1); });
    connect(ways_, &QListWidget::currentRowChanged, this, [this](int row) { document_.choose_way(row); });
    connect(&document_, &JobDocument::opened, this, &WaysPanel::fill_animals);
    connect(&document_, &JobDocument::ways_found, this, &WaysPanel::fill_ways);
    connect(&document_, &JobDocument::way_chosen, this, &WaysPanel::show_chosen);
}

QWidget* WaysPanel::make_head() {
    auto* head = new QWidget(this);
    QFont large = font();
    large.setPointSizeF(large.pointSizeF() * 1.45);
    large.setBold(true);
    title_->setFont(large);
    title_->setObjectName("title");
    count_->setObjectName("count");
    auto* animal = label(tr("&Animal"), head);
    animal->setBuddy(animals_);
    animal->setWordWrap(false);
    animals_->setAccessibleName(tr("Animal"));
    auto* choice = new QHBoxLayout;
    choice->setSpacing(10);
    choice->addWidget(animal);
    choice->addWidget(animals_, 1);
    auto* column = new QVBoxLayout(head);
    column->setContentsMargins(18, 14, 18, 12);
    column->setSpacing(8);
    column->addWidget(title_);
    column->addLayout(choice);
    column->addWidget(count_);
    return head;
}

void WaysPanel::fill_animals() {
    const QSignalBlocker quiet(animals_);
    title_->setText(document_.title());
    animals_->clear();
    animals_->addItem(tr("All animals"));
    for (const Pest& pest : document_.job().pests) animals_->addItem(QString::fromStdString(pest.name));
    animals_->setCurrentIndex(document_.animal() + 1);
}

void WaysPanel::fill_ways() {
    const QSignalBlocker quiet(ways_);
    const Survey& survey = document_.job().survey;
    const std::vector<RankedPath>& paths = document_.ways().paths;
    ways_->clear();
    for (std::size_t i = 0; i < paths.size(); ++i) {
        auto* row = new QListWidgetItem(row_text(survey, paths[i], static_cast<int>(i)), ways_);
        row->setData(WayRow::room, room_text(survey, paths[i]));
        row->setData(WayRow::width, width_words(paths[i].pinch));
        row->setData(WayRow::gap, smallest_gap_place_text(survey, paths[i]));
    }
    const bool any = !paths.empty();
    count_->setText(count_text());
    count_->setVisible(any);
    none_->setText(document_.animal() == JobDocument::all_animals
                       ? tr("No way in was found.")
                       : tr("No way in for this animal: %1.").arg(animals_->currentText()));
    none_->setVisible(!any);
    ways_->parentWidget()->setVisible(any);
}

QString WaysPanel::count_text() const {
    const auto count = static_cast<int>(document_.ways().paths.size());
    const bool all = document_.animal() == JobDocument::all_animals;
    const QString whom = all ? QString() : tr(" for %1").arg(animals_->currentText());
    if (count == 1) return tr("One way in%1").arg(whom);
    if (count == static_cast<int>(JobDocument::ways_wanted))
        return tr("The %1 widest ways in%2, by smallest gap").arg(count).arg(whom);
    return tr("%1 ways in%2, by smallest gap").arg(count).arg(whom);
}

void WaysPanel::show_chosen(int way) {
    const RankedPath* chosen = document_.chosen();
    if (ways_->currentRow() != way) {
        const QSignalBlocker quiet(ways_);
        ways_->setCurrentRow(way);
    }
    steps_->setHtml(chosen == nullptr ? QString() : steps_html(document_.job(), *chosen, way));
}

}  // namespace seamward::viewer
