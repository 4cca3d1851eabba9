// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/drill_judged.h"

#include <QEvent>
#include <QFileInfo>
#include <QSignalBlocker>
#include <QVBoxLayout>

#include "panels/drill_row.h"
#include "panels/flow_layout.h"

namespace seamward::viewer {

namespace {

QStringList lines_of(const std::vector<std::string>& notes) {
    QStringList lines;
    for (const std::string& note : notes) lines << QString::fromStdString(note);
    return lines;
}

}  // namespace

DrillJudged::DrillJudged(DrillDocument& document, QWidget* parent)
    : QWidget(parent),
      document_(document),
      headline_(new QLabel(this)),
      kept_(new QLabel(this)),
      list_(new QListWidget(this)),
      again_(new QPushButton(this)),
      save_(new QPushButton(this)),
      keep_(new QPushButton(this)),
      leave_(new QPushButton(this)) {
    setObjectName("drill_judged");
    headline_->setObjectName("drill_headline");
    headline_->setTextFormat(Qt::PlainText);
    headline_->setWordWrap(true);
    headline_->setContentsMargins(16, 12, 16, 10);
    QFont large = headline_->font();
    large.setBold(true);
    large.setPointSizeF(large.pointSizeF() * 1.25);
    headline_->setFont(large);
    kept_->setObjectName("drill_kept");
    kept_->setTextFormat(Qt::PlainText);
    kept_->setWordWrap(true);
    list_->setObjectName("drill_results");
    list_->setItemDelegate(new DrillRow(list_));
    list_->setResizeMode(QListView::Adjust);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    list_->setFrameShape(QFrame::NoFrame);
    again_->setObjectName("drill_again");
    save_->setObjectName("drill_save");
    keep_->setObjectName("drill_keep");
    leave_->setObjectName("drill_leave_result");
    auto* buttons = new FlowLayout(nullptr, 8, 6);
    for (QPushButton* button : {again_, save_, keep_, leave_}) buttons->addWidget(button);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(16, 8, 16, 12);
    foot->setSpacing(8);
    foot->addWidget(kept_);
    foot->addLayout(buttons);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(headline_);
    column->addWidget(list_, 1);
    column->addLayout(foot);
    connect(list_, &QListWidget::currentItemChanged, this, [this](const QListWidgetItem* row) {
        if (row != nullptr) document_.choose(row->data(DrillRow::place).toInt());
    });
    connect(again_, &QPushButton::clicked, this, &DrillJudged::again_wanted);
    connect(save_, &QPushButton::clicked, this, &DrillJudged::save_wanted);
    connect(keep_, &QPushButton::clicked, this, &DrillJudged::keep_wanted);
    connect(leave_, &QPushButton::clicked, this, &DrillJudged::leave_wanted);
    connect(&document_, &DrillDocument::handed_in, this, &DrillJudged::fill);
    connect(&document_, &DrillDocument::trainee_changed, this, &DrillJudged::tell_kept);
    connect(&document_, &DrillDocument::place_chosen, this, &DrillJudged::show_chosen);
    retranslate();
}

void DrillJudged::add_heading(const QString& text) {
    auto* row = new QListWidgetItem(list_);
    DrillRow::fill(*row, DrillDocument::no_place, text, {}, {}, PlaceSign::nothing);
    row->setData(DrillRow::heading, true);
    row->setFlags(Qt::ItemIsEnabled);
}

void DrillJudged::add(int place, const QString& title, const QString& verdict, const QStringList& notes, PlaceSign sign) {
    auto* row = new QListWidgetItem(list_);
    DrillRow::fill(*row, place, title, verdict, notes.join('\n'), sign);
}

void DrillJudged::fill() {
    if (!document_.has_drill() || !document_.is_handed_in()) return;
    const QSignalBlocker quiet(list_);
    const int row_before = list_->currentRow();
    const int chosen = document_.chosen();
    list_->clear();
    const DrillFeedback& told = document_.feedback();
    const DrillResult& result = document_.result();
    headline_->setText(QString::fromStdString(told.headline));
    if (!told.harms.empty()) add_heading(tr("This does harm"));
    for (std::size_t i = 0; i < told.harms.size(); ++i) {
        const auto place = result.matched.at(result.harms.at(i).finding).place;
        add(place ? static_cast<int>(*place) : DrillDocument::no_place, QString::fromStdString(told.harms[i].what), {},
            lines_of(told.harms[i].notes), PlaceSign::harm);
    }
    add_heading(tr("Place by place"));
    for (const PlaceFeedback& one : told.places) {
        const QString title = tr("%1. %2", "number and name of a place")
                                  .arg(one.place + 1)
                                  .arg(QString::fromStdString(document_.told().places.at(one.place).name));
        add(static_cast<int>(one.place), title, QString::fromStdString(one.verdict), lines_of(one.notes),
            document_.sign_of(one.place));
    }
    if (!told.other.empty()) add_heading(tr("Besides"));
    for (const std::string& line : told.other)
        add(DrillDocument::no_place, QString::fromStdString(line), {}, {}, PlaceSign::nothing);
    if (chosen != DrillDocument::no_place) list_->setCurrentRow(row_before);
    tell_kept();
}

void DrillJudged::tell_kept() {
    keep_->setVisible(document_.has_drill() && document_.is_handed_in() && !document_.kept());
    const bool kept = document_.has_drill() && document_.kept();
    kept_->setVisible(kept);
    if (kept)
        kept_->setText(tr("Kept in %1: attempt %2 of %3 at this drill")
                           .arg(QFileInfo(document_.progress_file()).fileName())
                           .arg(*document_.kept())
                           .arg(document_.trainee()));
}

void DrillJudged::show_chosen(int place) {
    if (!document_.has_drill() || !document_.is_handed_in() || place == DrillDocument::no_place) return;
    if (list_->currentItem() != nullptr && list_->currentItem()->data(DrillRow::place).toInt() == place) return;
    const QSignalBlocker quiet(list_);
    for (int row = list_->count() - 1; row >= 0; --row) {  // of two, the row of the place, not that of its harm
        if (list_->item(row)->data(DrillRow::place).toInt() == place) return list_->setCurrentRow(row);
    }
}

void DrillJudged::retranslate() {
    list_->setAccessibleName(tr("How it went"));
    again_->setText(tr("L&ook again"));
    again_->setToolTip(tr("The same drill anew, from the beginning"));
    save_->setText(tr("&Save the answers..."));
    keep_->setText(tr("&Keep the result..."));
    keep_->setToolTip(tr("Adds this attempt to the file in which your progress is kept"));
    leave_->setText(tr("&Leave the drill"));
    fill();
    tell_kept();
}

void DrillJudged::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
}

}  // namespace seamward::viewer
