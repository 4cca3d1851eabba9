// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/closings_plan.h"

#include <algorithm>

#include "plan/open_ways.h"
#include "plan/starved_vents.h"

namespace seamward::viewer {

namespace {

/// What gets through any gap that is not shut. Meters.
constexpr double next_to_nothing = 1e-9;

/// A treatment that the plan refuses is offered no more; what only the season forbids stays, and waits.
void take_refused(OfferedClosing& offer, const Plan& plan, const std::string& planned) {
    for (const RefusedGap& refused : plan.refused) {
        if (refused.gap != offer.gap || refused.refusal.treatment.empty()) continue;
        offer.refused.push_back(refused.refusal);
        if (refused.refusal.treatment == planned) continue;
        std::erase_if(offer.options, [&](const Option& option) { return option.treatment == refused.refusal.treatment; });
    }
}

void add_steps(ClosingsPlan& made, std::vector<GapOptions>& options) {
    for (const PlanStep& step : made.plan.steps) {
        OfferedClosing offer{.gap = step.gap,
                             .planned = true,
                             .waits = step.waits,
                             .widest_open_after = step.widest_open_after,
                             .stop = step.stop,
                             .options = std::move(options[step.gap.value].options)};
        take_refused(offer, made.plan, step.option.treatment);
        offer.usual = offer.find(step.option.treatment).value();
        made.offers.push_back(std::move(offer));
    }
}

void add_others(ClosingsPlan& made, std::vector<GapOptions>& options) {
    std::vector<bool> stepped(made.survey().gaps.size(), false);
    for (const PlanStep& step : made.plan.steps) stepped[step.gap.value] = true;
    std::vector<GapIndex> others;
    for (std::uint32_t i = 0; i < made.survey().gaps.size(); ++i) {
        const bool open = counted_width(made.survey().gaps[i], made.settings.sizing) > 0;
        if (open && !stepped[i] && !options[i].options.empty()) others.push_back({i});
    }
    Walk walk = walk_to(*made.job, in_working_order(made.survey(), others));
    for (WalkStop& stop : walk.stops) {
        OfferedClosing offer{.gap = stop.gap, .options = std::move(options[stop.gap.value].options)};
        offer.stop = std::move(stop);
        take_refused(offer, made.plan, {});
        if (offer.options.empty()) continue;
        offer.usual = offer.full_closing(made.gnawed_at(offer.gap)).value_or(0);
        made.offers.push_back(std::move(offer));
    }
}

Survey with_closed(const Survey& survey, const std::vector<TickedClosing>& ticked, bool gnaws) {
    Survey after = survey;
    for (const TickedClosing& one : ticked) {
        if (!gnaws || !one.gnawed) close_gap(after.gaps[one.gap.value], one.opening);
    }
    return after;
}

AnimalOutlook outlook_of(const Pest& pest, const Survey& survey, const std::vector<TickedClosing>& ticked,
                         const RunContext& context) {
    AnimalOutlook outlook{.pest = pest, .way = {}, .gnaws = {}};
    Trace found = trace(with_closed(survey, ticked, pest.gnaws), {.pests = {pest}, .to = {}, .top = 1}, context);
    if (found.paths.empty()) return outlook;
    for (const GapIndex gap : found.paths.front().path.gaps) {
        if (std::ranges::find(ticked, gap, &TickedClosing::gap) != ticked.end()) outlook.gnaws.push_back(gap);
    }
    // A mesh that the animal fits through is on its way, and is not gnawed.
    std::erase_if(outlook.gnaws,
                  [&](GapIndex gap) { return !pest.gnaws || !std::ranges::find(ticked, gap, &TickedClosing::gap)->gnawed; });
    outlook.way = std::move(found.paths.front());
    return outlook;
}

double widest_left(const Survey& after, Sizing sizing) {
    Pest anything;
    anything.size = {next_to_nothing, next_to_nothing};
    const std::vector<GapOptions> none(after.gaps.size());
    const ClosingProblem problem = make_closing_problem(after, std::span(&anything, 1), none, sizing);
    const std::optional<LeftWay> way = widest_way(problem, {});
    return way ? way->pinch : 0;
}

void add_widest(ClosingsPlan& made, const RunContext& context) {
    const Sizing sizing = made.settings.sizing;
    std::vector<TickedClosing> steps;
    for (const PlanStep& step : made.plan.steps) steps.push_back({step.gap, step.option.opening, step.option.gnawed});
    made.widest_now = widest_left(made.survey(), sizing);
    made.widest_after_plan = widest_left(with_closed(made.survey(), steps, false), sizing);
    for (const LadderRung& rung : made.plan.ladder) {
        context.check();
        std::vector<TickedClosing> closed;
        for (const GapIndex gap : rung.gaps) closed.push_back({gap});
        made.widest_after_rung.push_back(widest_left(with_closed(made.survey(), closed, false), sizing));
    }
}

}  // namespace

std::optional<std::size_t> OfferedClosing::find(const std::string& treatment) const {
    const auto at = std::ranges::find(options, treatment, &Option::treatment);
    return at == options.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - options.begin()));
}

std::optional<std::size_t> OfferedClosing::full_closing(bool gnawing) const {
    for (std::size_t i = 0; i < options.size(); ++i) {
        if (options[i].opening == 0 && (!gnawing || !options[i].gnawed)) return i;
    }
    return std::nullopt;
}

std::vector<Message> OfferedClosing::cautions(std::size_t option) const {
    std::vector<Message> all = options[option].cautions;
    all.insert(all.end(), stop.cautions.begin(), stop.cautions.end());
    return all;
}

bool ClosingsPlan::gnawed_at(GapIndex gap) const {
    return std::ranges::any_of(settings.against, [&](const Pest& pest) {
        return pest.gnaws && lets_through(survey()[gap], pest.size, settings.sizing);
    });
}

ClosingsPlan plan_closings(std::shared_ptr<const Job> job, std::vector<Pest> against, const RunContext& context) {
    ClosingsPlan made;
    made.job = std::move(job);
    made.settings.against = std::move(against);
    made.plan = make_plan(*made.job, made.settings, context);
    const double ground = ground_height(made.survey());
    std::vector<GapOptions> options;
    for (const Gap& gap : made.survey().gaps) options.push_back(options_for(gap, made.survey(), made.settings.prices, ground));
    add_steps(made, options);
    add_others(made, options);
    made.of_gap.assign(made.survey().gaps.size(), -1);
    for (std::size_t i = 0; i < made.offers.size(); ++i) {
        made.offers[i].number = static_cast<int>(i) + 1;
        made.of_gap[made.offers[i].gap.value] = static_cast<int>(i);
    }
    add_widest(made, context);
    if (made.plan.feasible) return made;
    for (const Pest& pest : made.settings.against) {
        PlanSettings alone = made.settings;
        alone.against = {pest};
        made.alone.push_back(make_plan(*made.job, alone, context).feasible);
    }
    return made;
}

ClosingsOutlook look_ahead(const ClosingsPlan& plan, const std::vector<TickedClosing>& ticked, const RunContext& context) {
    ClosingsOutlook outlook;
    const auto add = [&](const Pest& pest) {
        outlook.animals.push_back(outlook_of(pest, plan.survey(), ticked, context));
        outlook.animals.back().planned_against =
            std::ranges::find(plan.settings.against, pest.id, &Pest::id) != plan.settings.against.end();
    };
    for (const Pest& pest : plan.job->pests) add(pest);
    for (const Pest& pest : plan.settings.against) {
        if (std::ranges::find(plan.job->pests, pest.id, &Pest::id) == plan.job->pests.end()) add(pest);
    }
    outlook.widest = widest_left(with_closed(plan.survey(), ticked, false), plan.settings.sizing);
    std::vector<TreatedGap> treated;
    for (const TickedClosing& one : ticked) treated.push_back({one.gap, one.opening});
    outlook.departures = departures_of(*plan.job, treated, plan.settings.date);
    const VentLimits limits{plan.job->vented, plan.job->inputs};
    static_cast<void>(starving_meshes(plan.survey(), treated, limits, outlook.air_doubts));
    return outlook;
}

}  // namespace seamward::viewer
