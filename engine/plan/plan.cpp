// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/plan.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "network/cut.h"
#include "paths/remarks.h"
#include "plan/closing_program.h"
#include "plan/ladder_by_programs.h"
#include "plan/last_checks.h"
#include "plan/open_ways.h"
#include "plan/starved_vents.h"

namespace seamward {

namespace {

class Planner {
public:
    Planner(const Job& job, const PlanSettings& settings, const RunContext& context)
        : job_(job), survey_(job.survey), settings_(settings), context_(context), roles_(survey_, {}) {}

    Plan run() {
        plan_.wrong_closings = wrong_closings(job_);
        for (const WrongClosing& wrong : plan_.wrong_closings) plan_.notes.push_back(wrong_closing_text(survey_, wrong));
        context_.stage("looking for treatments");
        const double ground = ground_height(survey_);
        for (const Gap& gap : survey_.gaps) options_.push_back(options_for(gap, survey_, settings_.prices, ground));
        context_.stage("planning");
        solve();
        add_refused();
        add_ladder();
        if (!closings_.possible) {
            add_open_way();
            return std::move(plan_);
        }
        std::vector<Pick> picks = closings_.picks;
        if (settings_.budget) picks = within_budget();
        add_steps(picks);
        refuse_in_season();
        add_notes();
        add_marginal_stops(picks);
        add_proof();
        if (settings_.explain) add_chances(picks);
        if (!plan_.steps.empty()) plan_.last_checks = last_checks(job_);
        return std::move(plan_);
    }

private:
    /// The cheapest plan none of whose meshes starves a vent: a mesh that would is refused, and the rest planned anew.
    void solve() {
        while (true) {
            context_.check();
            problem_.emplace(make_closing_problem(survey_, settings_.against, options_, settings_.sizing,
                                                  settings_.budget ? Choices::narrowing_too : Choices::stopping));
            closings_ = cheapest_closing(*problem_);
            if (!closings_.possible || !refuse_starving()) return;
        }
    }

    bool refuse_starving() {
        std::vector<TreatedGap> treated;
        for (const Pick& pick : closings_.picks) {
            const GapIndex gap = problem_->doorways[pick.doorway].gap;
            treated.push_back({gap, option_of(pick).opening});
        }
        bool refused = false;
        for (const StarvingMesh& starving : starving_meshes(survey_, treated, {job_.vented, job_.inputs}, plan_.vent_doubts)) {
            GapOptions& of_gap = options_[starving.gap.value];
            const double opening = starving.opening;
            // Finer ones let even less air through.
            const auto finer = [&](const Option& option) { return option.opening > 0 && option.opening <= opening; };
            for (const Option& option : of_gap.options) {
                if (finer(option)) of_gap.refused.push_back({option.treatment, starving.why, starving.source});
            }
            refused = std::erase_if(of_gap.options, finer) > 0 || refused;
        }
        return refused;
    }

    void add_refused() {
        for (std::uint32_t i = 0; i < options_.size(); ++i) {
            if (is_shut(survey_.gaps[i].shape)) continue;
            for (const Refusal& refusal : options_[i].refused) plan_.refused.push_back({{i}, refusal});
        }
    }

    /// The price of the cheapest full closing; where somebody who gnaws gets through the gap, of one that resists.
    [[nodiscard]] std::optional<Money> full_price(std::uint32_t index) const {
        const Gap& gap = survey_.gaps[index];
        const bool gnawing = std::any_of(settings_.against.begin(), settings_.against.end(), [&](const Pest& pest) {
            return pest.gnaws && lets_through(gap, pest.size, settings_.sizing);
        });
        std::optional<Money> price;
        for (const Option& option : options_[index].options) {
            if (option.opening > 0 || (gnawing && option.gnawed)) continue;
            if (!price || option.cost < *price) price = option.cost;
        }
        return price;
    }

    void add_ladder() {
        std::vector<PricedLink> links;
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            const Gap& gap = survey_.gaps[i];
            const double width = counted_width(gap, settings_.sizing);
            if (width > 0) links.push_back({gap.between[0], gap.between[1], {i}, width, full_price(i)});
        }
        const std::vector<Roles> roles = one_way_roles(survey_);
        const CutLadder ladder = roles.size() == 1 ? cut_ladder(roles.front(), survey_.spaces.size(), links)
                                                   : ladder_by_programs(roles, survey_.spaces.size(), links);
        plan_.rungs_left_out = ladder.left_out;
        for (const Rung& rung : ladder.rungs) {
            LadderRung told{rung.width, rung.price, {}};
            for (const std::uint32_t link : rung.links) told.gaps.push_back(links[link].gap);
            plan_.ladder.push_back(std::move(told));
        }
        if (ladder.stopped_by.empty()) return;
        const auto narrowest =
            std::min_element(ladder.stopped_by.begin(), ladder.stopped_by.end(),
                             [&](std::uint32_t a, std::uint32_t b) { return links[a].width < links[b].width; });
        plan_.ladder_stop = LadderStop{links[*narrowest].width, links[*narrowest].gap, why_not(links[*narrowest].gap)};
    }

    /// Why a gap is not closed.
    [[nodiscard]] Message why_not(GapIndex gap) const {
        for (const Refusal& refusal : options_[gap.value].refused) {
            if (refusal.treatment.empty()) return refusal.why;
        }
        const DutyRuling ruling = ruling_on(survey_[gap], survey_);
        const std::vector<Option>& options = options_[gap.value].options;
        if (options.empty()) return ruling.restricted() ? ruling.why : "no treatment of the table fits it";
        const bool all_gnawed =
            std::all_of(options.begin(), options.end(), [](const Option& option) { return option.gnawed || option.opening > 0; });
        const Message why = all_gnawed ? "nothing that fits it resists gnawing" : "nothing that fits it stops these animals";
        return ruling.restricted() ? message("{}; {}", {why, ruling.why}) : why;
    }

    void add_open_way() {
        plan_.feasible = false;
        OpenWay way;
        way.path = path_along(survey_, closings_.open_path);
        way.pest = problem_->pests[closings_.open_pest];
        finish(way);
        for (const GapIndex gap : way.path.gaps) plan_.open_way_reasons.push_back(why_not(gap));
        plan_.open_way = std::move(way);
    }

    /// Sets the pinch: the first of the narrowest from the start.
    void finish(OpenWay& way) const {
        way.pinch = std::numeric_limits<double>::infinity();
        for (const GapIndex gap : way.path.gaps) {
            const double width = counted_width(survey_[gap], settings_.sizing);
            if (width >= way.pinch) continue;
            way.pinch = width;
            way.pinch_gap = gap;
        }
    }

    /// The picks that the budget buys.
    std::vector<Pick> within_budget() {
        BudgetResult result;
        result.full_cost = closings_.cost;
        result.reaches_all = closings_.cost <= *settings_.budget;
        std::vector<Pick> picks = closings_.picks;
        if (!result.reaches_all) {
            const std::optional<BudgetAnswer> answer = best_within_budget(*problem_, least_pinch_within(), *settings_.budget);
            picks.clear();
            result.proven = answer && answer->proven;
            if (answer) picks = answer->now;
            result.still_to_pay = answer ? problem_->cost_of(answer->later) : closings_.cost;
        }
        if (std::optional<LeftWay> left = widest_way(*problem_, picks)) {
            OpenWay way{std::move(left->path), left->pinch, {}, problem_->pests[left->pest]};
            const double pinch = way.pinch;
            finish(way);
            way.pinch = pinch;  // what was treated may be narrower now
            result.left_open = std::move(way);
        }
        plan_.budget = std::move(result);
        return picks;
    }

    /// The smallest pinch that a way in can be left with for the budget, meters.
    [[nodiscard]] double least_pinch_within() const {
        std::vector<double> widths{0};
        for (const Doorway& doorway : problem_->doorways) {
            widths.push_back(doorway.width);
            for (const Choice& choice : doorway.choices) widths.push_back(choice.leaves);
        }
        std::sort(widths.begin(), widths.end());
        widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
        // The wider the ways that may stay, the less there is to pay.
        const auto affordable = [&](double width) {
            context_.check();
            const Closings closings = cheapest_closing(only_wider_than(*problem_, width));
            return closings.possible && closings.cost <= *settings_.budget;
        };
        const auto least =
            std::partition_point(widths.begin(), widths.end() - 1, [&](double width) { return !affordable(width); });
        return *least;
    }

    [[nodiscard]] const Option& option_of(const Pick& pick) const {
        return options_[problem_->doorways[pick.doorway].gap.value].options[(*problem_)[pick].option];
    }

    void add_steps(const std::vector<Pick>& picks) {
        std::vector<GapIndex> gaps;
        std::vector<Pick> of_gap(survey_.gaps.size());
        std::vector<TreatedGap> treated;
        for (const Pick& pick : picks) {
            gaps.push_back(problem_->doorways[pick.doorway].gap);
            of_gap[gaps.back().value] = pick;
            treated.push_back({gaps.back(), option_of(pick).opening});
        }
        plan_.departures = departures_of(job_, treated, settings_.date);
        std::vector<bool> waits(survey_.gaps.size(), false);
        for (const Departure& departure : plan_.departures) {
            for (const GapIndex gap : departure.last) waits[gap.value] = true;
        }
        std::vector<GapIndex> order = in_working_order(survey_, gaps);
        std::stable_partition(order.begin(), order.end(), [&](GapIndex gap) { return !waits[gap.value]; });
        Walk walk = walk_to(job_, order);
        std::vector<Pick> in_order;
        std::vector<Need> needs;
        const double ground = ground_height(survey_);
        for (WalkStop& stop : walk.stops) {
            const GapIndex gap = stop.gap;
            in_order.push_back(of_gap[gap.value]);
            const Option& option = option_of(in_order.back());
            const Treatment* treatment = shipped_treatments().find(option.treatment);
            const bool owner = treatment != nullptr && treatment->owner && !waits[gap.value] && !stop.trade &&
                               from_the_ground(survey_[gap], stop.zone, ground);
            plan_.steps.push_back({gap, option, std::move(stop), 0, waits[gap.value], owner});
            plan_.cost = plan_.cost + option.cost;
            plan_.minutes += option.minutes;
            needs.insert(needs.end(), option.needs.begin(), option.needs.end());
        }
        plan_.before = std::move(walk.before);
        plan_.ladder_settings = walk.ladder_settings;
        const std::vector<double> after = pinches_after_each(*problem_, in_order);
        for (std::size_t i = 0; i < after.size(); ++i) plan_.steps[i].widest_open_after = after[i];
        plan_.materials = to_buy(needs, settings_.prices);
    }

    /// Closings that the season of an animal in the house forbids until later.
    void refuse_in_season() {
        for (const Departure& departure : plan_.departures) {
            if (!departure.season) continue;
            const Occupant& occupant = job_.occupied[departure.occupant];
            for (const GapIndex gap : departure.last) {
                const auto step =
                    std::find_if(plan_.steps.begin(), plan_.steps.end(), [&](const PlanStep& one) { return one.gap == gap; });
                const ClosedSeason& season = *departure.season->season;
                const Message why =
                    message("{} in {}: {}; not before {}", {as_named(occupant.animal.name), survey_[occupant.space].called(),
                                                            season.why, date_message(departure.close_from)});
                plan_.refused.push_back({gap, {step->option.treatment, why, cited(shipped_removals().sources, season.source)}});
            }
        }
    }

    /// Why fewer ways in are known than there may be, spaces that animals live in and that start no ways in the survey, and ways
    /// that are too small for them.
    void add_notes() {
        for (Message& remark : remarks_on_what_is_unknown(job_)) plan_.notes.push_back(std::move(remark));
        for (const Departure& departure : plan_.departures) {
            const Occupant& occupant = job_.occupied[departure.occupant];
            if (!departure.way_passes)
                plan_.notes.push_back(
                    message("{} is too small for {} as it was measured, and it was seen to use it: measure again, or look for "
                            "another way",
                            {survey_[*occupant.way].called(), as_named(occupant.animal.name)}));
        }
        for (std::uint32_t i = 0; i < survey_.spaces.size(); ++i) {
            const Space& space = survey_.spaces[i];
            if (space.source || space.is_living()) continue;
            std::vector<Message> animals;
            for (const Occupant& occupant : job_.occupied) {
                if (occupant.space.value == i && !occupant.gone_on(settings_.date))
                    animals.push_back(as_named(occupant.animal.name));
            }
            if (animals.empty()) continue;
            plan_.notes.push_back(message(
                "{} is lived in ({}) and is no source in the survey: ways from there into rooms count only as parts of ways from "
                "outdoors. Write source: true at the space to close it off from the rooms too",
                {space.called(), joined_message(animals, ", ")}));
        }
    }

    /// Whether an animal smaller by that share would get through a gap as it is once the steps are done.
    [[nodiscard]] bool would_pass(const Gap& gap, const Pest& pest, double share) const {
        const PassageSize smaller{pest.size.slit * (1 - share), pest.size.hole * (1 - share)};
        return lets_through(gap, smaller, settings_.sizing);
    }

    /// The survey once some picks are done.
    [[nodiscard]] Survey treated(const std::vector<Pick>& picks) const {
        Survey after = survey_;
        for (const Pick& pick : picks) {
            const GapIndex gap = problem_->doorways[pick.doorway].gap;
            close_gap(after.gaps[gap.value], options_[gap.value].options[(*problem_)[pick].option].opening);
        }
        return after;
    }

    /// One animal at a time, since what one gnaws through stops the next.
    void add_chances(const std::vector<Pick>& picks) {
        std::optional<std::vector<PestChance>> before = open_chances(survey_, settings_.against);
        if (!before) return;
        PlanChances chances{std::move(*before), {}};
        for (std::size_t p = 0; p < settings_.against.size(); ++p) {
            std::vector<Pick> resisting;
            std::copy_if(picks.begin(), picks.end(), std::back_inserter(resisting), [&](const Pick& pick) {
                const GapIndex gap = problem_->doorways[pick.doorway].gap;
                return !settings_.against[p].gnaws || !options_[gap.value].options[(*problem_)[pick].option].gnawed;
            });
            const Survey after = treated(resisting);
            chances.after.push_back(open_chances(after, std::span(&settings_.against[p], 1))->front());
            chances.after.back().pest = p;
        }
        plan_.chances = std::move(chances);
    }

    /// Gaps that are narrow enough, but not by the margin, and lie on a way in if they are not.
    void add_marginal_stops(const std::vector<Pick>& picks) {
        const Survey after = treated(picks);
        for (std::size_t p = 0; p < settings_.against.size(); ++p) {
            const Pest& pest = settings_.against[p];
            std::vector<Link> links;
            std::vector<std::uint32_t> marginal;
            for (std::uint32_t i = 0; i < after.gaps.size(); ++i) {
                const Gap& gap = after.gaps[i];
                if (!would_pass(gap, pest, pest.margin)) continue;
                if (!would_pass(gap, pest, 0)) marginal.push_back(i);
                links.push_back({gap.between[0], gap.between[1], {i}, 1});
            }
            if (marginal.empty()) continue;
            const Network network(after.spaces.size(), std::move(links));
            const std::vector<bool> out = reached_from(network, roles_.start_spaces());
            const std::vector<bool> in = reached_from(network, roles_.end_spaces());
            for (const std::uint32_t i : marginal) {
                const auto [a, b] = after.gaps[i].between;
                if ((out[a.value] && in[b.value]) || (out[b.value] && in[a.value]))
                    plan_.marginal.push_back({{i}, p, share_short(after.gaps[i], pest)});
            }
        }
    }

    /// By which share of its size an animal is too large, by bisection to a thousandth.
    [[nodiscard]] double share_short(const Gap& gap, const Pest& pest) const {
        double low = 0;
        double high = pest.margin;
        while (high - low > 1e-3) {
            const double middle = (low + high) / 2;
            (would_pass(gap, pest, middle) ? high : low) = middle;
        }
        return high;
    }

    [[nodiscard]] std::vector<bool> reached_from(const Network& network, std::span<const SpaceIndex> from) const {
        std::vector<bool> reached(network.space_count(), false);
        std::vector<SpaceIndex> waiting(from.begin(), from.end());
        for (const SpaceIndex space : waiting) reached[space.value] = true;
        for (std::size_t i = 0; i < waiting.size(); ++i) {
            for (const Arc& arc : network.arcs(waiting[i])) {
                if (reached[arc.to.value] || !roles_.passable(arc.to)) continue;
                reached[arc.to.value] = true;
                waiting.push_back(arc.to);
            }
        }
        return reached;
    }

    void add_proof() {
        plan_.proof = closings_.proof;
        for (ProofRoute& route : plan_.proof.routes) route.pest = problem_->pests[route.pest];
    }

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const RunContext& context_;
    Roles roles_;
    std::vector<GapOptions> options_;
    std::optional<ClosingProblem> problem_;
    Closings closings_;
    Plan plan_;
};

}  // namespace

std::vector<Message> PlanStep::cautions() const {
    std::vector<Message> all = option.cautions;
    all.insert(all.end(), stop.cautions.begin(), stop.cautions.end());
    return all;
}

Plan make_plan(const Job& job, const PlanSettings& settings, const RunContext& context) {
    return Planner(job, settings, context).run();
}

}  // namespace seamward
