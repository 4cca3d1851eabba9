// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/completion.h"

#include <algorithm>
#include <iterator>

#include "base/measure_text.h"
#include "catalog/shipped.h"
#include "materials/duty_rules.h"
#include "network/on_ways.h"
#include "plan/last_checks.h"
#include "plan/open_ways.h"
#include "plan/opened_again.h"

namespace seamward {

namespace {

/// So long after a callback at the latest somebody looks again, months. Common practice, no published source.
constexpr int months_after_a_callback = 12;

/// Spaces that something comes to from `from`, going on through passable ones.
std::vector<bool> reached(const Network& network, const Roles& roles, std::span<const SpaceIndex> from) {
    std::vector<bool> reached(network.space_count(), false);
    std::vector<SpaceIndex> waiting(from.begin(), from.end());
    for (const SpaceIndex space : waiting) reached[space.value] = true;
    for (std::size_t i = 0; i < waiting.size(); ++i) {
        for (const Arc& arc : network.arcs(waiting[i])) {
            if (reached[arc.to.value] || !roles.passable(arc.to)) continue;
            reached[arc.to.value] = true;
            waiting.push_back(arc.to);
        }
    }
    return reached;
}

class Completer {
public:
    Completer(const Job& job, const PlanSettings& settings, const RunContext& context)
        : job_(job), survey_(job.survey), settings_(settings), context_(context) {}

    Completion run() {
        context_.stage("looking for ways that are left");
        survey_tells_something();
        for (std::size_t pest = 0; pest < settings_.against.size(); ++pest) add_animal(pest);
        add_work_for_all();
        add_wrong_closings();
        add_callbacks();
        add_occupants();
        add_ways_back();
        add_checks();
        add_sightings();
        add_later_days();
        add_reinspection();
        add_left_open();
        return std::move(completion_);
    }

private:
    void because(Message reason) { completion_.reasons.push_back(std::move(reason)); }

    [[nodiscard]] Message label(GapIndex gap) const { return survey_[gap].called(); }

    /// Where no way can begin or end, nothing is proven by there being none.
    void survey_tells_something() {
        const Roles roles(survey_, {});
        if (roles.start_spaces().empty())
            because("The survey has no outdoors or source space: no way in can begin, so none is ruled out");
        if (roles.end_spaces().empty()) because("The survey has no living space: no way in can end, so none is ruled out");
    }

    void add_animal(std::size_t pest) {
        context_.check();
        const Pest& animal = settings_.against[pest];
        const Survey survey = as_it_stands_to(job_, animal);
        const std::vector<GapOptions> untreated(survey.gaps.size());
        const ClosingProblem problem = make_closing_problem(survey, std::span(&animal, 1), untreated, settings_.sizing);
        std::vector<Link> links;
        for (const Doorway& doorway : problem.doorways) links.push_back({doorway.a, doorway.b, doorway.gap, doorway.width});
        const Network network(survey.spaces.size(), std::move(links));
        AnimalOutcome outcome;
        outcome.pest = pest;
        std::optional<LeftWay> widest = widest_way(problem, {});
        outcome.shut = !widest;
        if (widest) {
            outcome.widest = OpenWay{std::move(widest->path), widest->pinch, {}, pest};
            for (const GapIndex gap : outcome.widest->path.gaps) {
                if (counted_width(survey[gap], settings_.sizing) > widest->pinch) continue;
                outcome.widest->pinch_gap = gap;
                break;
            }
            tell_open(problem, network, outcome);
            outcome.left = work_left(std::span(&animal, 1));
            because(open_text(outcome));
        } else {
            outcome.rests_on = rests_on(animal, survey, problem, network);
        }
        completion_.animals.push_back(std::move(outcome));
    }

    void tell_open(const ClosingProblem& problem, const Network& network, AnimalOutcome& outcome) const {
        std::vector<bool> on(network.links().size(), false);
        for (const Roles& roles : problem.roles) {
            const std::vector<bool> on_these = links_on_ways(network, roles);
            for (std::size_t i = 0; i < on.size(); ++i) on[i] = on[i] || on_these[i];
        }
        for (std::size_t i = 0; i < on.size(); ++i) {
            if (!on[i]) continue;
            ++outcome.gaps_on_ways;
            const GapIndex gap = network.links()[i].gap;
            for (const ClosedGap& closed : job_.closed) {
                if (closed.gap == gap && is_gnawed_by(closed, settings_.against[outcome.pest])) outcome.gnawed.push_back(gap);
            }
        }
    }

    [[nodiscard]] Message open_text(const AnimalOutcome& outcome) const {
        return message("{} still has a way in, {} where it is narrowest ({})",
                       {as_named(settings_.against[outcome.pest].name), width_message(outcome.widest->pinch),
                        label(outcome.widest->pinch_gap)});
    }

    /// With no way in, one more open gap makes a way exactly when something gets to one side of it, and from the other side on
    /// in.
    [[nodiscard]] std::vector<GapIndex> rests_on(const Pest& animal, const Survey& survey, const ClosingProblem& problem,
                                                 const Network& network) const {
        std::vector<bool> needed(job_.closed.size(), false);
        for (const Roles& roles : problem.roles) {
            const std::vector<bool> out = reached(network, roles, roles.start_spaces());
            const std::vector<bool> in = reached(network, roles, roles.end_spaces());
            for (std::size_t i = 0; i < job_.closed.size(); ++i) {
                const ClosedGap& closed = job_.closed[i];
                if (!closed.holds() || !passes_again(closed, animal, survey)) continue;
                const auto [a, b] = survey[closed.gap].between;
                if ((out[a.value] && in[b.value]) || (out[b.value] && in[a.value])) needed[i] = true;
            }
        }
        std::vector<GapIndex> gaps;
        for (std::size_t i = 0; i < needed.size(); ++i) {
            if (needed[i]) gaps.push_back(job_.closed[i].gap);
        }
        return gaps;
    }

    [[nodiscard]] bool passes_again(const ClosedGap& closed, const Pest& animal, const Survey& survey) const {
        const Gap opened = opened_gap(closed, survey[closed.gap]);
        return lets_through(opened, animal.size, settings_.sizing);
    }

    /// What `seamward plan` says of the same house.
    [[nodiscard]] WorkLeft work_left(std::span<const Pest> animals) const {
        PlanSettings settings = settings_;
        settings.against.assign(animals.begin(), animals.end());
        settings.budget.reset();
        settings.explain = false;
        Plan plan = make_plan(job_, settings, context_);
        return {plan.feasible, std::move(plan.steps), plan.cost};
    }

    void add_work_for_all() {
        const auto open = std::count_if(completion_.animals.begin(), completion_.animals.end(),
                                        [](const AnimalOutcome& outcome) { return !outcome.shut; });
        if (open > 1) completion_.left = work_left(settings_.against);
    }

    void add_wrong_closings() {
        completion_.wrong_closings = wrong_closings(job_);
        for (const WrongClosing& wrong : completion_.wrong_closings) because(wrong_closing_text(survey_, wrong));
    }

    void add_callbacks() {
        for (std::uint32_t i = 0; i < job_.closed.size(); ++i) {
            if (job_.closed[i].callback) completion_.callbacks.push_back(i);
        }
        const auto earlier = [&](std::uint32_t a, std::uint32_t b) {
            const ClosedGap& x = job_.closed[a];
            const ClosedGap& y = job_.closed[b];
            if (x.holds() != y.holds()) return y.holds();
            return x.callback->date > y.callback->date;
        };
        std::stable_sort(completion_.callbacks.begin(), completion_.callbacks.end(), earlier);
        for (const std::uint32_t i : completion_.callbacks) {
            const ClosedGap& closed = job_.closed[i];
            if (!closed.holds())
                because(message("{} did not hold (called back {}: {}) and is not mended",
                                {label(closed.gap), date_message(closed.callback->date), as_it_stands(closed.callback->cause)}));
        }
    }

    /// Animals that are shut in or out as it comes do not hold anything up.
    void add_occupants() {
        for (const Occupant& occupant : job_.occupied) {
            const Removal* removal = removal_of(shipped_removals(), occupant.animal.id);
            if (occupant.left || (removal != nullptr && removal->by == Removal::By::nothing)) continue;
            const Message animal = as_named(occupant.animal.name), space = survey_[occupant.space].called();
            because(occupant.seen.empty()
                        ? message("{} in {} is not known to be gone", {animal, space})
                        : message("{} in {} (seen: {}) is not known to be gone", {animal, space, as_it_stands(occupant.seen)}));
        }
    }

    /// Plans keep animals out of the rooms; into the space where one lived a way may be left.
    void add_ways_back() {
        for (std::uint32_t i = 0; i < job_.occupied.size(); ++i) {
            const Occupant& occupant = job_.occupied[i];
            const Removal* removal = removal_of(shipped_removals(), occupant.animal.id);
            if (!occupant.left || (removal != nullptr && removal->by == Removal::By::nothing)) continue;
            std::vector<GapIndex> gaps = open_way_out(job_, occupant);
            if (gaps.empty()) continue;
            const bool as_seen = occupant.way && std::find(gaps.begin(), gaps.end(), *occupant.way) != gaps.end();
            std::vector<GapIndex> may_close;
            std::copy_if(gaps.begin(), gaps.end(), std::back_inserter(may_close),
                         [&](GapIndex gap) { return ruling_on(survey_[gap], survey_).may_close; });
            completion_.ways_back.push_back({i, std::move(gaps), std::move(may_close), as_seen});
        }
    }

    /// What was seen after the last closing. Small animals that are inside stay for some weeks; others must have come in.
    void add_sightings() {
        std::optional<Date> last;
        for (const ClosedGap& closed : job_.closed) {
            const std::optional<Date> since = closed.holds() ? closed.held_since() : std::nullopt;
            if (since && (!last || *since > *last)) last = since;
        }
        for (std::uint32_t i = 0; i < job_.sightings.size(); ++i) {
            const Sighting& sighting = job_.sightings[i];
            if (!last || !sighting.date || *sighting.date <= *last) continue;
            const Removal* removal = removal_of(shipped_removals(), sighting.pest.id);
            if (removal != nullptr && removal->by == Removal::By::nothing)
                completion_.seen_since.push_back(i);
            else
                because(message("{} was seen in {} on {}, after the last closing ({}): find out how it came in",
                                {as_named(sighting.pest.name), survey_[sighting.room].called(), date_message(*sighting.date),
                                 date_message(*last)}));
        }
    }

    void add_checks() {
        const Message where = where_fuel_burns(job_);
        completion_.burns_fuel = !where.empty();
        for (const CheckMade& check : job_.checks) {
            std::optional<CheckMade>& latest =
                check.what == CheckMade::What::combustion_safety ? completion_.combustion_safety : completion_.co_alarms;
            if (!latest || check.date >= latest->date) latest = check;
        }
        if (!completion_.burns_fuel) return;
        require_check(
            completion_.combustion_safety, where,
            {"Fuel is burned in this house ({}), and it is not written down that the appliances were tested for draft, "
             "spillage and carbon monoxide",
             "Fuel is burned in this house ({}), and the appliances were tested for draft, spillage and carbon monoxide "
             "on {}, before the last closing ({}, {})",
             "Fuel is burned in this house ({}), and nobody can tell whether the appliances were tested for draft, "
             "spillage and carbon monoxide after the last closing: {} was closed on a day that is not written down"});
        require_check(completion_.co_alarms, where,
                      {"Fuel is burned in this house ({}), and it is not written down that the carbon monoxide alarms were "
                       "looked at",
                       "Fuel is burned in this house ({}), and the carbon monoxide alarms were looked at on {}, before the last "
                       "closing ({}, {})",
                       "Fuel is burned in this house ({}), and nobody can tell whether the carbon monoxide alarms were looked at "
                       "after the last closing: {} was closed on a day that is not written down"});
    }

    /// What is said of a check that was not made, that was made too early, and of which nobody knows whether it was.
    struct CheckPatterns {
        const char *not_made, *too_early, *unknown;
    };

    void require_check(const std::optional<CheckMade>& check, const Message& where, const CheckPatterns& says) {
        if (!check) {
            because(message(says.not_made, {where}));
            return;
        }
        const ClosedGap* last = nullptr;
        const ClosedGap* undated = nullptr;
        for (const ClosedGap& closed : job_.closed) {
            if (!closed.holds()) continue;
            if (!closed.held_since())
                undated = undated == nullptr ? &closed : undated;
            else if (last == nullptr || *closed.held_since() > *last->held_since())
                last = &closed;
        }
        if (last != nullptr && check->date < *last->held_since())
            because(
                message(says.too_early, {where, date_message(check->date), label(last->gap), date_message(*last->held_since())}));
        else if (undated != nullptr)
            because(message(says.unknown, {where, label(undated->gap)}));
    }

    /// A day after that of the page is a slip, or the work is not done yet.
    void add_later_days() {
        std::vector<Message> later;
        const auto add = [&](const std::optional<Date>& date, const char* pattern, std::vector<Message> parts) {
            if (!date || *date <= settings_.date) return;
            parts.push_back(date_message(*date));
            later.push_back(message(pattern, std::move(parts)));
        };
        for (const ClosedGap& closed : job_.closed) {
            if (closed.holds()) add(closed.held_since(), "{} closed on {}", {label(closed.gap)});
        }
        for (const Occupant& occupant : job_.occupied) add(occupant.left, "{} gone on {}", {as_named(occupant.animal.name)});
        for (const CheckMade& check : job_.checks)
            add(check.date,
                check.what == CheckMade::What::combustion_safety ? "the appliances tested on {}" : "the alarms looked at on {}",
                {});
        if (!later.empty())
            because(message("The day of this page, {}, comes before days that the job has: {}",
                            {date_message(settings_.date), joined_message(later, "; ")}));
    }

    void add_reinspection() {
        std::optional<Reinspection>& earliest = completion_.reinspect;
        const ClosedGap* called_back = nullptr;
        for (const ClosedGap& closed : job_.closed) {
            if (closed.callback && (called_back == nullptr || closed.callback->date > called_back->callback->date))
                called_back = &closed;
            if (!closed.holds()) continue;
            const Treatment* treatment = shipped_treatments().find(closed.with);
            const std::optional<Date> since = closed.held_since();
            if (!since || treatment == nullptr || treatment->years == 0) {
                completion_.undated.push_back(closed.gap);
                continue;
            }
            const Date due = months_after(*since, 12 * static_cast<int>(treatment->years));
            if (earliest && earliest->date <= due) continue;
            earliest = Reinspection{
                due, closed.gap,
                message("{} of {}, expected to hold {}",
                        {treatment->name, date_message(*since), counted_message(treatment->years, "1 year", "{} years")})};
        }
        if (called_back == nullptr) return;
        const Date latest = months_after(called_back->callback->date, months_after_a_callback);
        if (earliest && earliest->date <= latest) return;
        earliest = Reinspection{
            latest, called_back->gap,
            message("called back on {}; looked at again within 12 months of that (common practice, no published source)",
                    {date_message(called_back->callback->date)})};
    }

    void add_left_open() {
        std::vector<bool> closed(survey_.gaps.size(), false);
        for (const ClosedGap& one : job_.closed) closed[one.gap.value] = closed[one.gap.value] || one.holds();
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            const Gap& gap = survey_.gaps[i];
            if (is_shut(gap.shape)) continue;
            const DutyRuling ruling = ruling_on(gap, survey_);
            if (!ruling.restricted() || ruling.may_close) {
                if (!closed[i]) completion_.also_open.push_back({i});
                continue;
            }
            std::vector<LeftOpen>& all = completion_.left_open;
            auto at = std::find_if(all.begin(), all.end(),
                                   [&](const LeftOpen& open) { return open.why == ruling.why && open.source == ruling.source; });
            if (at == all.end()) at = all.insert(all.end(), {ruling.why, ruling.source, {}});
            at->gaps.push_back({i});
        }
    }

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const RunContext& context_;
    Completion completion_;
};

}  // namespace

Completion completion(const Job& job, const PlanSettings& settings, const RunContext& context) {
    return Completer(job, settings, context).run();
}

}  // namespace seamward
