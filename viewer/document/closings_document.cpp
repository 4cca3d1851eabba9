// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/closings_document.h"

#include <algorithm>

#include "plan/starved_vents.h"

namespace seamward::viewer {

namespace {

std::vector<TreatedGap> treated(const std::vector<TickedClosing>& ticked) {
    std::vector<TreatedGap> all;
    for (const TickedClosing& one : ticked) all.push_back({one.gap, one.opening});
    return all;
}

bool same(const std::vector<TreatedGap>& a, const std::vector<TreatedGap>& b) {
    return std::ranges::equal(a, b, [](const TreatedGap& one, const TreatedGap& other) {
        return one.gap == other.gap && one.opening == other.opening;
    });
}

/// The gap of that id, when the plan offers to close it.
std::optional<GapIndex> offered(const ClosingsPlan& plan, const std::string& id) {
    const auto at = std::ranges::find(plan.survey().gaps, id, &Gap::id);
    const auto position = static_cast<std::size_t>(at - plan.survey().gaps.begin());
    if (position >= plan.of_gap.size() || plan.of_gap[position] < 0) return std::nullopt;
    return GapIndex{static_cast<std::uint32_t>(position)};
}

/// Tells a gap from another one of the same id.
std::string what_it_is(const Survey& survey, const Gap& gap) {
    return gap.label() + '\n' + survey[gap.between[0]].id + '\n' + survey[gap.between[1]].id + '\n' + shape_word(gap.shape) +
           ' ' + std::to_string(clear_width(gap.shape));
}

}  // namespace

ClosingsDocument::ClosingsDocument(JobDocument& document, QObject* parent) : QObject(parent), document_(document) {
    qRegisterMetaType<GapIndex>("seamward::GapIndex");
    qRegisterMetaType<Money>("seamward::Money");
    qRegisterMetaType<Refusal>("seamward::Refusal");
    qRegisterMetaType<BudgetResult>("seamward::BudgetResult");
    connect(&document_, &JobDocument::opened, this, [this] {
        against_ = document_.filed()->pests;
        plan_again(true);
    });
    connect(&document_, &JobDocument::changed, this, [this] {
        // Animals that the job has lost are planned against no more, new ones are.
        const std::vector<Pest> before = has_plan() ? plan_->job->pests : std::vector<Pest>();
        const auto holds = [](const std::vector<Pest>& all, const Pest& one) {
            return std::ranges::find(all, one.id, &Pest::id) != all.end();
        };
        std::vector<Pest> now;
        for (const Pest& pest : document_.filed()->pests) {
            if (holds(against_, pest) || !holds(before, pest)) now.push_back(pest);
        }
        for (const Pest& pest : against_) {
            if (!holds(before, pest) && !holds(now, pest)) now.push_back(pest);
        }
        against_ = std::move(now);
        plan_again(false);
    });
    // What was ticked while a file was read that could not be opened.
    connect(&document_, &JobDocument::open_failed, this, &ClosingsDocument::close_on_trial);
    connect(&document_, &JobDocument::change_failed, this, &ClosingsDocument::close_on_trial);
}

void ClosingsDocument::plan_against(std::vector<Pest> pests) {
    against_ = std::move(pests);
    if (document_.has_job()) plan_again(false);
}

void ClosingsDocument::plan_again(bool fresh) {
    fresh_ = fresh_ || fresh;  // until a plan of the job was taken, there are no ticks to keep
    const auto question = [this, job = document_.filed(), against = against_](const RunContext& context) -> Answer {
        auto made = std::make_shared<const ClosingsPlan>(plan_closings(job, against, context));
        return [this, made] { take(made); };
    };
    ask(plan_task_, plan_ticket_, question);
}

void ClosingsDocument::ask(NewestTask& task, std::uint64_t& newest, std::function<Answer(const RunContext&)> question) {
    task.start([this, question = std::move(question), &newest, ticket = ++newest](const RunContext& context) {
        Answer answer;
        try {
            answer = question(context);
        } catch (const Cancelled&) {
            throw;
        } catch (const std::exception& error) {
            answer = [this, text = QString::fromUtf8(error.what())] { fail(text); };
        }
        // An event of the window's thread; there an answer that was overtaken is dropped.
        const auto deliver = [&newest, ticket, answer] {
            if (ticket == newest) answer();
        };
        QMetaObject::invokeMethod(this, deliver, Qt::QueuedConnection);
    });
}

void ClosingsDocument::take(std::shared_ptr<const ClosingsPlan> plan) {
    if (fresh_) {
        plan_.reset();
        gone_.clear();
    }
    remember_gone(plan.get());
    std::vector<ClosingState> keep = state();
    for (ClosingState& one : take_returned(*plan)) keep.push_back(std::move(one));
    fresh_ = false;
    plan_ = std::move(plan);
    fault_.clear();
    hands_ = hands_of(keep);
    ++budget_ticket_;  // it was asked of the plan before
    outlook_ = {};
    emit planned();
    tell();
}

void ClosingsDocument::remember_gone(const ClosingsPlan* plan) {
    for (const ClosingState& one : state()) {
        if (plan != nullptr && offered(*plan, one.gap)) continue;
        const auto& gaps = plan_->survey().gaps;
        gone_[one.gap] = {one, what_it_is(plan_->survey(), *std::ranges::find(gaps, one.gap, &Gap::id))};
    }
}

std::vector<ClosingState> ClosingsDocument::take_returned(const ClosingsPlan& plan) {
    std::vector<ClosingState> returned;
    for (auto at = gone_.begin(); at != gone_.end();) {
        const std::optional<GapIndex> gap = offered(plan, at->first);
        if (!gap) {
            ++at;
            continue;
        }
        // A new one under the same id was never ticked.
        const std::string& what = at->second.what;
        if (what.empty() || what_it_is(plan.survey(), plan.survey()[*gap]) == what) returned.push_back(at->second.state);
        at = gone_.erase(at);
    }
    return returned;
}

void ClosingsDocument::fail(const QString& text) {
    fault_ = text;
    remember_gone(nullptr);
    plan_.reset();
    hands_.clear();
    outlook_ = {};
    if (!document_.on_trial().empty()) document_.close_on_trial({});
    emit planned();
}

const OfferedClosing* ClosingsDocument::offer_of(GapIndex gap) const {
    if (!has_plan() || gap.value >= plan_->of_gap.size() || plan_->of_gap[gap.value] < 0) return nullptr;
    return &plan_->offers[static_cast<std::size_t>(plan_->of_gap[gap.value])];
}

void ClosingsDocument::tick(GapIndex gap, bool ticked) {
    const OfferedClosing* offer = offer_of(gap);
    if (offer == nullptr) return;
    const Hand& before = hands_[offer->place()];
    change_one(*offer, {before.by_hand ? before.option : offer->usual, ticked, true});
}

void ClosingsDocument::tick_all() {
    if (!has_plan()) return;
    Hands hands = usual_hands();
    for (std::size_t i = 0; i < hands.size(); ++i) {
        if (hands_[i].by_hand) hands[i] = hands_[i];
        hands[i].ticked = hands[i].ticked || plan_->offers[i].planned;
    }
    change(std::move(hands));
}

void ClosingsDocument::tick_plan() {
    if (!has_plan()) return;
    Hands hands = usual_hands();
    for (std::size_t i = 0; i < hands.size(); ++i) hands[i].ticked = plan_->offers[i].planned;
    change(std::move(hands));
}

void ClosingsDocument::untick_all() {
    if (!has_plan()) return;
    Hands hands = usual_hands();
    for (std::size_t i = 0; i < hands.size(); ++i) {
        if (hands_[i].by_hand) hands[i] = {hands_[i].option, false, hands_[i].option != hands[i].option};
    }
    change(std::move(hands));
}

void ClosingsDocument::choose_treatment(GapIndex gap, const std::string& treatment) {
    const OfferedClosing* offer = offer_of(gap);
    if (offer == nullptr) return;
    if (const auto option = offer->find(treatment)) change_one(*offer, {*option, is_ticked(*offer), true});
}

void ClosingsDocument::tick_rung(int rung) {
    if (!has_plan()) return;
    if (rung == none_done) return untick_all();
    const auto at = static_cast<std::size_t>(rung);
    if (rung >= 0 && at < plan_->plan.ladder.size()) change(hands_of_rung(plan_->plan.ladder[at]));
}

void ClosingsDocument::tick_within(Money budget) {
    if (!has_plan()) return;
    const auto question = [this, budget, plan = plan_](const RunContext& context) -> Answer {
        PlanSettings settings = plan->settings;
        settings.budget = budget;
        const Plan made = make_plan(*plan->job, settings, context);
        std::vector<ClosingState> state;
        for (const PlanStep& step : made.steps)
            state.push_back({plan->survey()[step.gap].id, step.option.treatment, true, false});
        return [this, budget, state, result = made.budget.value_or(BudgetResult())] {
            change(hands_of(state));
            emit budget_spent(budget, result);
        };
    };
    ask(budget_task_, budget_ticket_, question);
}

ClosingsSum ClosingsDocument::ticked() const {
    ClosingsSum sum;
    for (std::size_t i = 0; i < hands_.size(); ++i) {
        if (!hands_[i].ticked) continue;
        const Option& option = plan_->offers[i].options[hands_[i].option];
        sum = {sum.cost + option.cost, sum.minutes + option.minutes, sum.gaps + 1};
    }
    return sum;
}

ClosingsSum ClosingsDocument::whole_plan() const {
    ClosingsSum sum;
    for (std::size_t i = 0; i < hands_.size(); ++i) {
        const OfferedClosing& offer = plan_->offers[i];
        if (!offer.planned) continue;
        const Option& option = offer.options[hands_[i].by_hand ? hands_[i].option : offer.usual];
        sum = {sum.cost + option.cost, sum.minutes + option.minutes, sum.gaps + 1};
    }
    return sum;
}

ClosingsSum ClosingsDocument::most() const {
    ClosingsSum sum;
    for (const OfferedClosing& offer : plan_->offers) {
        sum.cost = sum.cost + std::ranges::max_element(offer.options, {}, &Option::cost)->cost;
        sum.minutes += std::ranges::max_element(offer.options, {}, &Option::minutes)->minutes;
        ++sum.gaps;
    }
    return sum;
}

int ClosingsDocument::rung() const {
    const ClosingsSum sum = ticked();
    if (sum.gaps == 0) return none_done;
    const std::vector<LadderRung>& ladder = plan_->plan.ladder;
    for (std::size_t i = 0; i < ladder.size(); ++i) {
        if (ladder[i].gaps.size() != sum.gaps || ladder[i].cost != sum.cost) continue;
        const Hands hands = hands_of_rung(ladder[i]);
        const auto alike = [](const Hand& a, const Hand& b) {
            return a.ticked == b.ticked && (!a.ticked || a.option == b.option);
        };
        if (std::ranges::equal(hands, hands_, alike)) return static_cast<int>(i);
    }
    return no_rung;
}

std::vector<NumberedGap> ClosingsDocument::numbered() const {
    std::vector<NumberedGap> all;
    for (std::size_t i = 0; i < hands_.size(); ++i) {
        const OfferedClosing& offer = plan_->offers[i];
        if (offer.planned || hands_[i].ticked) all.push_back({offer.gap, offer.number, hands_[i].ticked});
    }
    return all;
}

std::vector<ClosingState> ClosingsDocument::state() const {
    std::vector<ClosingState> all;
    if (!has_plan()) return all;
    for (const int position : plan_->of_gap) {
        if (position < 0) continue;
        const OfferedClosing& offer = plan_->offers[static_cast<std::size_t>(position)];
        const Hand& hand = hands_[offer.place()];
        const bool other = hand.option != offer.usual;
        if (!other && !hand.ticked) continue;
        all.push_back(
            {plan_->survey()[offer.gap].id, other ? chosen(offer).treatment : std::string(), hand.ticked, hand.by_hand});
    }
    return all;
}

std::vector<ClosingState> ClosingsDocument::remembered() const {
    std::vector<ClosingState> all = state();
    for (const auto& [id, gone] : gone_) all.push_back(gone.state);
    std::ranges::sort(all, {}, &ClosingState::gap);
    return all;
}

void ClosingsDocument::set_state(const std::vector<ClosingState>& state) {
    std::map<std::string, Gone> gone;
    for (const ClosingState& one : state) {
        if (has_plan() && offered(*plan_, one.gap)) continue;
        const auto known = gone_.find(one.gap);
        gone[one.gap] = {one, known == gone_.end() ? std::string() : known->second.what};
    }
    gone_ = std::move(gone);
    if (has_plan()) change(hands_of(state));
}

ClosingsDocument::Hands ClosingsDocument::usual_hands() const {
    Hands hands;
    for (const OfferedClosing& offer : plan_->offers) hands.push_back({offer.usual, false, false});
    return hands;
}

ClosingsDocument::Hands ClosingsDocument::hands_of(const std::vector<ClosingState>& state) const {
    std::map<std::string, const ClosingState*> by_id;
    for (const ClosingState& one : state) by_id[one.gap] = &one;
    Hands hands = usual_hands();
    for (std::size_t i = 0; i < hands.size(); ++i) {
        const auto at = by_id.find(plan_->survey()[plan_->offers[i].gap].id);
        if (at != by_id.end())
            hands[i] = {plan_->offers[i].find(at->second->treatment).value_or(hands[i].option), at->second->ticked,
                        at->second->by_hand};
    }
    return hands;
}

ClosingsDocument::Hands ClosingsDocument::hands_of_rung(const LadderRung& rung) const {
    Hands hands = usual_hands();
    for (const GapIndex gap : rung.gaps) {
        const OfferedClosing* offer = offer_of(gap);
        if (offer != nullptr) hands[offer->place()] = {plan_->rung_option(*offer), true, false};
    }
    return hands;
}

std::vector<TickedClosing> ClosingsDocument::closings(const Hands& hands) const {
    std::vector<TickedClosing> all;
    for (std::size_t i = 0; i < hands.size(); ++i) {
        const Option& option = plan_->offers[i].options[hands[i].option];
        if (hands[i].ticked) all.push_back({plan_->offers[i].gap, option.opening, option.gnawed});
    }
    std::ranges::sort(all, {}, &TickedClosing::gap);
    return all;
}

std::optional<RefusedGap> ClosingsDocument::starved(const Hands& hands) const {
    const std::vector<TreatedGap> all = treated(closings(hands));
    if (std::ranges::none_of(all, [](const TreatedGap& one) { return one.opening > 0; })) return std::nullopt;
    std::vector<Message> doubts;
    const VentLimits limits{plan_->job->vented, plan_->job->inputs};
    const std::vector<StarvingMesh> found = starving_meshes(plan_->survey(), all, limits, doubts);
    if (found.empty()) return std::nullopt;
    const OfferedClosing& offer = *offer_of(found.front().gap);
    return RefusedGap{offer.gap, {offer.options[hands[offer.place()].option].treatment, found.front().why, found.front().source}};
}

void ClosingsDocument::change(Hands hands) {
    // One mesh after the other is left out until what is left lets enough air through.
    std::vector<RefusedGap> all;
    while (const std::optional<RefusedGap> found = starved(hands)) {
        hands[offer_of(found->gap)->place()].ticked = false;
        all.push_back(*found);
    }
    if (hands != hands_) {
        hands_ = std::move(hands);
        tell();
    }
    for (const RefusedGap& one : all) emit refused(one.refusal, one.gap);
}

void ClosingsDocument::change_one(const OfferedClosing& offer, const Hand& hand) {
    Hands hands = hands_;
    hands[offer.place()] = hand;
    if (hands == hands_) return;
    if (const std::optional<RefusedGap> found = starved(hands)) {
        emit refused({offer.options[hand.option].treatment, found->refusal.why, found->refusal.source}, offer.gap);
        return;
    }
    hands_ = std::move(hands);
    tell();
}

void ClosingsDocument::tell() {
    close_on_trial();
    const auto question = [this, plan = plan_, ticked = closings(hands_)](const RunContext& context) -> Answer {
        ClosingsOutlook found = look_ahead(*plan, ticked, context);
        return [this, found] {
            outlook_ = found;
            emit outlook_found();
        };
    };
    ask(outlook_task_, outlook_ticket_, question);
    emit state_changed();
}

void ClosingsDocument::close_on_trial() {
    // A plan of the job as it was before knows other gaps; the next plan closes them.
    if (!has_plan() || plan_->job != document_.filed()) return;
    std::vector<TreatedGap> all = treated(closings(hands_));
    if (!same(all, document_.on_trial())) document_.close_on_trial(std::move(all));
}

}  // namespace seamward::viewer
