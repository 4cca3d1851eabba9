// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/price_part.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QMenu>
#include <QVBoxLayout>
#include <algorithm>
#include <functional>

#include "base/quantity.h"
#include "catalog/shipped.h"
#include "document/closings_text.h"
#include "document/translations.h"
#include "panels/price_curve.h"

namespace seamward::viewer {

namespace {

constexpr int target = 32;  ///< height of what is pressed
constexpr int side = 18;

bool holds(const std::vector<Pest>& all, const Pest& one) { return std::ranges::find(all, one.id, &Pest::id) != all.end(); }

/// A whole plan that costs more than the ladder, which ends at what cannot be shut, comes after it.
std::vector<PriceCurve::Stair> stairs_of(const ClosingsPlan& made) {
    const Plan& plan = made.plan;
    std::vector<PriceCurve::Stair> stairs;
    for (std::size_t i = 0; i < plan.ladder.size(); ++i) stairs.push_back({plan.ladder[i].cost, made.widest_after_rung[i]});
    const bool dearer = stairs.empty() || plan.cost > stairs.back().price;
    if (!plan.steps.empty() && dearer) stairs.push_back({plan.cost, made.widest_after_plan});
    return stairs;
}

}  // namespace

PricePart::PricePart(ClosingsDocument& closings, QWidget* parent)
    : QWidget(parent),
      closings_(closings),
      title_(new QLabel(this)),
      curve_(new PriceCurve(this)),
      words_(new QLabel(this)),
      all_(new QPushButton(this)),
      none_(new QPushButton(this)),
      against_(new QPushButton(this)),
      others_(new QPushButton(this)),
      budget_(new QLineEdit(this)) {
    words_->setObjectName("price_words");
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    words_->setAlignment(Qt::AlignTop);
    against_->setObjectName("against");
    against_->setMenu(new QMenu(against_));
    others_->setObjectName("plan_against_others");
    all_->setObjectName("tick_all");
    none_->setObjectName("untick_all");
    budget_->setObjectName("budget");
    lay_out();
    connect(curve_, &PriceCurve::chosen, this, &PricePart::go_to);
    connect(all_, &QPushButton::clicked, &closings_, &ClosingsDocument::tick_all);
    connect(none_, &QPushButton::clicked, &closings_, &ClosingsDocument::untick_all);
    connect(budget_, &QLineEdit::returnPressed, this, &PricePart::spend_budget);
    connect(others_, &QPushButton::clicked, this, &PricePart::plan_against_others);
    connect(against_->menu(), &QMenu::aboutToShow, this, &PricePart::fill_animals_menu);
    connect(&closings_, &ClosingsDocument::planned, this, &PricePart::retranslate);
    connect(&closings_, &ClosingsDocument::state_changed, this, &PricePart::refresh);
    connect(&closings_, &ClosingsDocument::outlook_found, this, &PricePart::refresh);
    retranslate();
}

void PricePart::lay_out() {
    title_->setWordWrap(true);
    title_->setContentsMargins(side, 8, side, 0);
    words_->setContentsMargins(side, 2, side, 4);
    for (QWidget* one : std::initializer_list<QWidget*>{all_, none_, against_, others_, budget_}) one->setMinimumHeight(target);
    const auto row = [](QWidget* first, QWidget* second, QWidget* third) {
        auto* made = new QHBoxLayout;
        made->setContentsMargins(side, 2, side, 2);
        made->setSpacing(8);
        made->addWidget(first);
        made->addWidget(second);
        if (third != nullptr) made->addWidget(third, 1);
        if (third == nullptr) made->addStretch(1);
        return made;
    };
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 6);
    column->setSpacing(2);
    column->addWidget(title_);
    column->addWidget(curve_);
    column->addWidget(words_);
    column->addLayout(row(all_, none_, budget_));
    column->addLayout(row(against_, others_, nullptr));
    setTabOrder(none_, budget_);
    setTabOrder(budget_, against_);
    setTabOrder(against_, others_);
}

void PricePart::retranslate() {
    title_->setText(tr("Widest way left in, at each price"));
    all_->setText(tr("Tick &all"));
    all_->setToolTip(tr("Tick every step of the plan"));
    none_->setText(tr("&Untick all"));
    none_->setToolTip(tr("The house as it stands"));
    budget_->setPlaceholderText(tr("Budget, as $400"));
    budget_->setAccessibleName(tr("Budget"));
    budget_->setToolTip(tr("Type an amount and press Enter: what shuts out the most for it is ticked."));
    against_->setToolTip(tr("Which animals the plan has to shut out"));
    const auto count = static_cast<int>(closings_.against().size());
    against_->setText(count == 0   ? tr("Pla&n against: choose animals")
                      : count == 1 ? tr("Pla&n against %1").arg(catalog_text(closings_.against().front().name))
                                   : tr("Pla&n against %1 animals").arg(count));
    others_->setText(tr("Plan a&gainst the others"));
    refresh();
}

void PricePart::changeEvent(QEvent* event) {
    if (event->type() == QEvent::LanguageChange) retranslate();
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange) keep_room();
}

void PricePart::refresh() {
    refresh_buttons();
    refresh_curve();
}

void PricePart::refresh_buttons() {
    const bool planned = closings_.has_plan() && !closings_.plan().plan.steps.empty();
    all_->setEnabled(planned);
    budget_->setEnabled(planned);
    none_->setEnabled(closings_.ticked().gaps > 0);
    const bool some = closings_.has_plan() && std::ranges::count(closings_.plan().alone, true) > 0;
    others_->setVisible(some);
    if (!some) return;
    QStringList names;
    for (std::size_t i = 0; i < closings_.plan().alone.size(); ++i) {
        if (closings_.plan().alone[i]) names << catalog_text(closings_.plan().settings.against[i].name);
    }
    others_->setToolTip(tr("Against those that can be shut out: %1").arg(names.join(", ")));
}

void PricePart::refresh_curve() {
    const std::vector<PriceCurve::Stair> stairs =
        closings_.has_plan() ? stairs_of(closings_.plan()) : std::vector<PriceCurve::Stair>();
    title_->setVisible(!stairs.empty());
    curve_->setVisible(!stairs.empty());
    words_->setVisible(closings_.has_plan());
    if (!closings_.has_plan()) return;
    words_->setText(price_words(closings_));
    keep_room();
    if (stairs.empty()) return;
    PriceCurve::Shown shown{.width_now = closings_.plan().widest_now,
                            .stairs = stairs,
                            .animals = {},
                            .plan = {},
                            .knob = {},
                            .words = words_->text()};
    for (const AnimalOutlook& animal : closings_.outlook().animals)
        shown.animals.push_back({catalog_text(animal.pest.name), animal.pest.size.slit, !animal.way});
    std::ranges::stable_sort(shown.animals, std::greater<>(), &PriceCurve::Animal::needs);
    const int rung = closings_.rung();
    const double now = rung == ClosingsDocument::none_done ? shown.width_now
                       : rung >= 0                         ? stairs[static_cast<std::size_t>(rung)].width
                                                           : closings_.outlook().widest;
    if (closings_.plan().plan.feasible) shown.plan = closings_.plan().plan.cost;
    shown.knob = {closings_.ticked().cost, now};
    curve_->show(std::move(shown));
}

void PricePart::keep_room() {
    if (!closings_.has_plan()) return;
    const QMargins margins = words_->contentsMargins();
    const QRect inside(0, 0, std::max(1, width() - margins.left() - margins.right()), QWIDGETSIZE_MAX);
    int most = 0;
    for (const QString& text : possible_price_words(closings_))
        most = std::max(most, words_->fontMetrics().boundingRect(inside, Qt::TextWordWrap, text).height());
    words_->setMinimumHeight(most + margins.top() + margins.bottom());
}

void PricePart::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    keep_room();
}

void PricePart::go_to(int stair) {
    if (stair == PriceCurve::beginning) return closings_.tick_rung(ClosingsDocument::none_done);
    if (static_cast<std::size_t>(stair) < closings_.plan().plan.ladder.size()) return closings_.tick_rung(stair);
    closings_.tick_plan();
}

void PricePart::plan_against_others() {
    std::vector<Pest> can;
    for (std::size_t i = 0; i < closings_.plan().alone.size(); ++i) {
        if (closings_.plan().alone[i]) can.push_back(closings_.plan().settings.against[i]);
    }
    closings_.plan_against(std::move(can));
}

void PricePart::fill_animals_menu() {
    QMenu& menu = *against_->menu();
    menu.clear();
    if (!closings_.has_plan()) return;
    const std::vector<Pest>& listed = closings_.plan().job->pests;
    const auto add = [this](QMenu& to, const Pest& pest) {
        QAction* action = to.addAction(catalog_text(pest.name));
        action->setCheckable(true);
        action->setChecked(holds(closings_.against(), pest));
        connect(action, &QAction::toggled, this, [this, pest](bool on) { choose_animal(pest, on); });
    };
    for (const Pest& pest : listed) add(menu, pest);
    if (!listed.empty()) menu.addSeparator();
    QMenu& others = listed.empty() ? menu : *menu.addMenu(tr("&Others"));
    for (const Pest& pest : shipped_pests().rows) {
        if (!holds(listed, pest)) add(others, pest);
    }
}

void PricePart::choose_animal(const Pest& pest, bool against) {
    if (!closings_.has_plan()) return;
    std::vector<Pest> now = closings_.against();
    std::erase_if(now, [&](const Pest& one) { return one.id == pest.id; });
    if (against) now.push_back(pest);
    // In the order of the job, as the command line takes them.
    const std::vector<Pest>& listed = closings_.plan().job->pests;
    std::ranges::stable_sort(now, {},
                             [&](const Pest& one) { return std::ranges::find(listed, one.id, &Pest::id) - listed.begin(); });
    closings_.plan_against(std::move(now));
}

void PricePart::spend_budget() {
    const QString typed = budget_->text().trimmed();
    if (typed.isEmpty()) return;
    const Parsed<Money> budget = parse_money((typed.startsWith('$') ? typed : '$' + typed).toStdString());
    if (budget) return closings_.tick_within(*budget);
    emit said(tr("%1 is no amount of money. Write it as $400 or $399.50.").arg(typed));
}

}  // namespace seamward::viewer
