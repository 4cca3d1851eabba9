// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/start_page.h"

#include <QCoreApplication>
#include <QDir>
#include <QEvent>
#include <QFrame>
#include <QHBoxLayout>
#include <QPainter>
#include <algorithm>

#include "layers/palette.h"
#include "panels/begin_button.h"
#include "panels/recent_row.h"

namespace seamward::viewer {

namespace {

constexpr int side = 24;  ///< pixels around each half of the page
constexpr int card_gap = 16;
constexpr int least_card = 190;

QLabel* label(QWidget* parent, const char* name, double scale = 1, bool strong = false) {
    auto* made = new QLabel(parent);
    made->setObjectName(name);
    made->setTextFormat(Qt::PlainText);
    made->setWordWrap(true);
    if (scale != 1 || strong) {
        QFont font = made->font();
        font.setPointSizeF(font.pointSizeF() * scale);
        font.setBold(strong);
        made->setFont(font);
    }
    return made;
}

BeginButton* button(QWidget* parent, BeginButton::Sign sign, const char* name) {
    auto* made = new BeginButton(sign, parent);
    made->setObjectName(name);
    return made;
}

QScrollArea* clear_scroll_area(QWidget* content, QWidget* parent) {
    auto* area = new QScrollArea(parent);
    area->setFrameShape(QFrame::NoFrame);
    area->setWidgetResizable(true);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setWidget(content);
    area->setFocusPolicy(Qt::NoFocus);
    content->setAutoFillBackground(false);
    area->viewport()->setAutoFillBackground(false);
    return area;
}

/// A bar of work that was left behind, with an orange edge.
class NoticeBox : public QWidget {
public:
    using QWidget::QWidget;

protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        QPainter painter(this);
        painter.fillRect(rect(), palette::card);
        painter.fillRect(QRect(0, 0, 6, height()), palette::smallest);
        painter.setPen(palette::hairline);
        painter.drawLine(rect().bottomLeft(), rect().bottomRight());
    }
};

/// Cards in so many columns, of equal width; what is left below them stays empty.
template <class Card>
void lay_out(QGridLayout& grid, const std::vector<Card*>& cards, int columns) {
    while (grid.count() > 0) delete grid.takeAt(0);
    for (int i = 0; i < static_cast<int>(cards.size()); ++i)
        grid.addWidget(cards[static_cast<std::size_t>(i)], i / columns, i % columns);
    for (int i = 0; i < 4; ++i) grid.setColumnStretch(i, i < columns ? 1 : 0);
}

/// The examples in the order in which they are best seen; others follow by name.
int order_of(const QString& name) {
    const QStringList order{"demo", "two-story", "brick-crawl", "townhouse", "wall-corner", "apartments"};
    const auto at = static_cast<int>(order.indexOf(name));
    return at < 0 ? static_cast<int>(order.size()) : at;
}

}  // namespace

QString shipped_examples() {
    const QDir installed(QDir(QCoreApplication::applicationDirPath()).filePath("../share/seamward/scenarios"));
    return installed.exists() ? installed.canonicalPath() : QStringLiteral(SEAMWARD_EXAMPLES);
}

StartPage::StartPage(RecentJobs& recent, const QString& examples_folder, QWidget* parent, const QString& pictures)
    : QWidget(parent),
      recent_(recent),
      pictures_(new ExamplePictures(pictures, this)),
      name_(label(this, "product", 2.4, true)),
      purpose_(label(this, "purpose", 1.1)),
      recent_title_(label(this, "recent_title", 1.15, true)),
      no_recent_(label(this, "no_recent")),
      examples_title_(label(this, "examples_title", 1.15, true)),
      no_examples_(label(this, "no_examples")),
      drills_title_(label(this, "drills_title", 1.15, true)),
      new_house_(button(this, BeginButton::Sign::new_house, "new_house")),
      open_(button(this, BeginButton::Sign::job, "open_job")),
      model_(button(this, BeginButton::Sign::model, "open_model")) {
    setObjectName("start_page");
    find_examples(examples_folder);
    find_drills(QDir(examples_folder).filePath("drills"));
    left_behind_box_ = new NoticeBox(this);
    left_behind_box_->setObjectName("left_behind");
    left_behind_rows_ = new QVBoxLayout(left_behind_box_);
    left_behind_rows_->setContentsMargins(side, 10, side, 10);
    left_behind_box_->hide();
    left_side_ = make_left_side();
    auto* halves = new QHBoxLayout;
    halves->setSpacing(0);
    halves->addWidget(left_side_, 0);
    halves->addWidget(make_right_side(), 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(left_behind_box_);
    column->addLayout(halves, 1);
    connect(new_house_, &QPushButton::clicked, this, &StartPage::new_house_wanted);
    connect(open_, &QPushButton::clicked, this, &StartPage::open_wanted);
    connect(model_, &QPushButton::clicked, this, &StartPage::model_wanted);
    connect(&recent_, &RecentJobs::changed, this, &StartPage::fill_recent);
    connect(pictures_, &ExamplePictures::ready, this, [this](const QString& job, const QImage& picture) {
        const auto card = std::ranges::find(cards_, job, &ExampleCard::path);
        if (card != cards_.end()) (*card)->set_picture(picture);
    });
    retranslate();
}

QWidget* StartPage::make_left_side() {
    auto* page = new QWidget;
    purpose_->setForegroundRole(QPalette::PlaceholderText);
    no_recent_->setForegroundRole(QPalette::PlaceholderText);
    auto* rows = new QWidget(page);
    recent_rows_ = new QVBoxLayout(rows);
    recent_rows_->setContentsMargins(0, 0, 0, 0);
    recent_rows_->setSpacing(2);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(side, 20, 14, 14);
    column->setSpacing(8);
    column->addWidget(name_);
    column->addWidget(purpose_);
    column->addSpacing(8);
    for (QPushButton* way : {new_house_, open_, model_}) column->addWidget(way);
    column->addSpacing(10);
    column->addWidget(recent_title_);
    column->addWidget(no_recent_);
    column->addWidget(rows, 1);
    return clear_scroll_area(page, this);
}

QWidget* StartPage::make_right_side() {
    auto* page = new QWidget(this);
    no_examples_->setForegroundRole(QPalette::PlaceholderText);
    no_examples_->setVisible(cards_.empty());
    auto* cards = new QWidget(page);
    auto* groups = new QVBoxLayout(cards);
    groups->setContentsMargins(side, 2, side, side);
    groups->setSpacing(10);
    grid_ = new QGridLayout;
    drill_grid_ = new QGridLayout;
    for (QGridLayout* grid : {grid_, drill_grid_}) grid->setSpacing(card_gap);
    groups->addLayout(grid_);
    groups->addSpacing(6);
    groups->addWidget(drills_title_);
    groups->addLayout(drill_grid_);
    groups->addStretch(1);
    drills_title_->setVisible(!drills_.empty());
    examples_ = clear_scroll_area(cards, page);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 26, 0, 0);
    column->setSpacing(10);
    examples_title_->setContentsMargins(side, 0, side, 0);
    no_examples_->setContentsMargins(side, 0, side, 0);
    column->addWidget(examples_title_);
    column->addWidget(no_examples_);
    column->addWidget(examples_, 1);
    return page;
}

void StartPage::find_examples(const QString& folder) {
    QFileInfoList files = QDir(folder).entryInfoList({"*.yaml"}, QDir::Files, QDir::Name);
    std::stable_sort(files.begin(), files.end(), [](const QFileInfo& a, const QFileInfo& b) {
        return order_of(a.completeBaseName()) < order_of(b.completeBaseName());
    });
    constexpr int most_examples = 6;  // more push the drills out of sight; the folder has them all
    files = files.mid(0, most_examples);
    for (const QFileInfo& file : files) {
        auto* card = new ExampleCard(file.absoluteFilePath(), this);
        connect(card, &ExampleCard::clicked, this, [this, card] { emit job_wanted(card->path()); });
        cards_.push_back(card);
    }
}

void StartPage::find_drills(const QString& folder) {
    for (const QFileInfo& file : QDir(folder).entryInfoList({"*.yaml"}, QDir::Files, QDir::Name)) {
        const auto head = drill_head(file.absoluteFilePath());
        if (!head) continue;
        auto* card = new DrillCard(file.absoluteFilePath(), *head, this);
        connect(card, &DrillCard::clicked, this, [this, card] { emit job_wanted(card->path()); });
        drills_.push_back(card);
    }
}

void StartPage::lay_out_cards() {
    const int room = examples_->viewport()->width() - 2 * side;
    const int most = std::max(1, static_cast<int>(cards_.size()));
    const int least = std::max(least_card, fontMetrics().averageCharWidth() * 21);
    const int columns = std::clamp((room + card_gap) / (least + card_gap), 1, std::min(3, most));
    if (columns == columns_) return;
    columns_ = columns;
    lay_out(*grid_, cards_, columns);
    lay_out(*drill_grid_, drills_, columns);
}

void StartPage::fill_recent() {
    while (QLayoutItem* item = recent_rows_->takeAt(0)) {
        if (item->widget() != nullptr) item->widget()->deleteLater();
        delete item;
    }
    QWidget* before = model_;
    for (const RecentJob& job : recent_.jobs()) {
        auto* row = new RecentRow(job, recent_rows_->parentWidget());
        connect(row, &RecentRow::open_wanted, this, &StartPage::job_wanted);
        connect(row, &RecentRow::remove_wanted, &recent_, &RecentJobs::remove, Qt::QueuedConnection);
        recent_rows_->addWidget(row);
        row->show();
        setTabOrder(before, row);
        before = row;
    }
    recent_rows_->addStretch(1);
    no_recent_->setVisible(recent_.jobs().empty());
}

void StartPage::set_left_behind(const QStringList& descriptions) {
    left_behind_ = descriptions;
    fill_left_behind();
}

void StartPage::fill_left_behind() {
    for (QWidget* old : left_behind_box_->findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
        old->hide();
        old->deleteLater();
    }
    for (int i = 0; i < left_behind_.size(); ++i) {
        auto* row = new QWidget(left_behind_box_);
        auto* words = label(row, "left_behind_words");
        words->setText(tr("Not saved when the program ended: %1").arg(left_behind_[i]));
        auto* recover = new QPushButton(tr("Bring it back"), row);
        recover->setObjectName("recover");
        recover->setAccessibleName(tr("Bring back %1").arg(left_behind_[i]));
        auto* discard = new QPushButton(tr("Throw it away"), row);
        discard->setObjectName("discard");
        discard->setAccessibleName(tr("Throw away %1").arg(left_behind_[i]));
        connect(recover, &QPushButton::clicked, this, [this, i] { emit recover_wanted(i); });
        connect(discard, &QPushButton::clicked, this, [this, i] { emit discard_wanted(i); });
        auto* line = new QHBoxLayout(row);
        line->setContentsMargins(0, 0, 0, 0);
        line->addWidget(words, 1);
        line->addWidget(recover);
        line->addWidget(discard);
        left_behind_rows_->addWidget(row);
    }
    left_behind_box_->setVisible(!left_behind_.isEmpty());
}

void StartPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    lay_out_cards();
    recent_.look();
    QStringList jobs;
    for (const ExampleCard* card : cards_) {
        if (!card->has_picture()) jobs << card->path();
    }
    pictures_->want(jobs);
}

void StartPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    pictures_->rest();
}

void StartPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    const int words = std::max(model_->sizeHint().width(), QFontMetrics(name_->font()).horizontalAdvance(name_->text()));
    left_side_->setFixedWidth(std::max(words + side + 26, std::clamp(width() * 31 / 100, 270, 400)));
    if (isVisible()) layout()->activate();
    lay_out_cards();
}

void StartPage::paintEvent(QPaintEvent* /*event*/) {
    QPainter painter(this);
    painter.fillRect(rect(), palette::paper_high);
    const QRect left(0, 0, left_side_->geometry().right() + 1, height());
    QLinearGradient paper(left.topLeft(), left.bottomLeft());
    paper.setColorAt(0, palette::panel);
    paper.setColorAt(1, palette::paper_low);
    painter.fillRect(left, paper);
    painter.setPen(palette::hairline);
    painter.drawLine(left.topRight(), left.bottomRight());
}

void StartPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::LanguageChange) retranslate();
    if (event->type() == QEvent::FontChange && grid_ != nullptr) lay_out_cards();
}

void StartPage::retranslate() {
    name_->setText(tr("Seamward"));
    purpose_->setText(tr("Shows the gaps by which pests get into a house, the ways through them, and what closes them."));
    new_house_->setText(tr("&New house..."));
    new_house_->setToolTip(tr("Describe a house by a few questions"));
    open_->setText(tr("&Open a job..."));
    open_->setToolTip(tr("Open a job file from this computer"));
    model_->setText(tr("Open a &builder's model..."));
    model_->setToolTip(tr("Find the gaps in a 3D file of the house"));
    recent_title_->setText(tr("Recent jobs"));
    no_recent_->setText(tr("Jobs that you open are listed here."));
    examples_title_->setText(tr("Examples to look around in"));
    drills_title_->setText(tr("Drills to train on"));
    no_examples_->setText(tr("The examples are not on this computer."));
    fill_recent();
    fill_left_behind();
}

}  // namespace seamward::viewer
