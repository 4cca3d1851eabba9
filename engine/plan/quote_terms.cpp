// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/quote_terms.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "base/measure_text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

using Numbers = std::set<std::size_t>;  ///< options, counted from 1

/// What no table tells: closing gaps is all that is priced.
constexpr std::array<const char*, 6> never_priced{
    "Doors, windows and hatches that are left open, and animals that are carried in with boxes, plants or firewood: these are no "
    "gaps",
    "Rot and other damage that shows when the work begins: you are told before anything else is done there",
    "Treatment with pesticides: whoever does that for hire has a license for it",
    "Electrical work and gas work: a closing ends at the box, the panel, the meter and the valve",
    "Painting, and matching of stucco, tile, paint and other finishes",
    "What nobody could see at the survey: behind finishes, insulation, fixed furniture and stored goods"};

/// Sources of cautions of treatments that are for whoever lives there; all others are for whoever works there.
constexpr std::array<std::string_view, 1> cautions_for_customers{"foam-reentry"};

/// `option 2`, `options 1, 2 and 4`
Message options_message(const Numbers& numbers) {
    std::vector<Message> all;
    for (const std::size_t number : numbers) all.push_back(as_it_stands(number));
    return message(numbers.size() == 1 ? "option {}" : "options {}", {listed_message(all)});
}

Message caution_message(const Message& text, const std::vector<CatalogSource>& sources, const std::string& source) {
    return message("{} ({})", {text, cited(sources, source)});
}

/// Sentences and the options that they hold for, by what they are in English.
class ForOptions {
public:
    void add(const Message& text, std::size_t option) {
        auto& [said, numbers] = all_[text.english()];
        said = text;
        numbers.insert(option);
    }
    void tell(std::vector<Message>& list) const {
        for (const auto& [english, told] : all_) list.push_back(message("{} ({})", {told.first, options_message(told.second)}));
    }

private:
    std::map<std::string, std::pair<Message, Numbers>> all_;
};

class Terms {
public:
    Terms(const Job& job, const QuoteSettings& settings, const Quote& quote)
        : job_(job), survey_(job.survey), settings_(settings), quote_(quote) {}

    QuoteTerms run() {
        if (!quote_.options.empty()) stays_open();
        guesses();
        departures();
        for (const WrongClosing& wrong : wrong_closings(job_))
            terms_.exclusions.push_back(
                message("Opening again what must not be there: {}", {wrong_closing_text(survey_, wrong)}));
        if (quote_.feasible()) terms_.exclusions.insert(terms_.exclusions.end(), never_priced.begin(), never_priced.end());
        approvals();
        if (quote_.feasible()) warranty();
        for_each_step([&](std::size_t, const PlanStep& step) {
            const Treatment* treatment = shipped_treatments().find(step.option.treatment);
            if (treatment != nullptr) customer_cautions(*treatment);
        });
        for (const QuoteOption& option : quote_.options) {
            for (const Message& check : option.plan.last_checks) add_once(terms_.checks, check);
        }
        notes();
        warning();
        return std::move(terms_);
    }

private:
    static void add_once(std::vector<Message>& list, const Message& text) {
        if (std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
    }

    void customer_cautions(const Treatment& treatment) {
        const auto& theirs = cautions_for_customers;
        for (const Caution& caution : treatment.cautions) {
            if (std::find(theirs.begin(), theirs.end(), caution.source) != theirs.end())
                add_once(terms_.cautions, caution_message(caution.text, shipped_treatments().sources, caution.source));
        }
    }

    /// Of every option, with the option's number.
    template <class Visit>
    void for_each_step(Visit&& visit) const {
        for (std::size_t i = 0; i < quote_.options.size(); ++i) {
            for (const PlanStep& step : quote_.options[i].plan.steps) visit(i + 1, step);
        }
    }

    /// The names of gaps, in the order of the survey; how many have one name is said there.
    template <class Gaps>
    [[nodiscard]] Message labels(const Gaps& gaps) const {
        std::vector<std::pair<Message, std::size_t>> counts;
        for (const GapIndex gap : gaps) {
            const Message name = survey_[gap].called();
            const auto found = std::find_if(counts.begin(), counts.end(), [&](const auto& one) { return one.first == name; });
            if (found == counts.end())
                counts.emplace_back(name, 1);
            else
                ++found->second;
        }
        std::vector<Message> names;
        for (const auto& [name, count] : counts)
            names.push_back(count > 1 ? message("{} ({})", {name, as_it_stands(count)}) : name);
        return joined_message(names, "; ");
    }

    /// Gaps that nothing is offered for, by reason. Which they are does not depend on the animals.
    void stays_open() {
        std::map<std::pair<std::string, std::string>, std::pair<const Refusal*, std::vector<GapIndex>>> by_reason;
        for (const RefusedGap& refused : quote_.options.front().plan.refused) {
            if (!refused.refusal.treatment.empty()) continue;
            auto& [refusal, gaps] = by_reason[{refused.refusal.why.english(), refused.refusal.source.english()}];
            refusal = &refused.refusal;
            gaps.push_back(refused.gap);
        }
        for (const auto& [english, reason] : by_reason)
            terms_.exclusions.push_back(
                message("Stays open: {}: {} ({})", {labels(reason.second), reason.first->why, reason.first->source}));
        terms_.stays_open = terms_.exclusions.size();
    }

    void guesses() {
        std::vector<Message> counts;
        for (std::size_t i = 0; i < quote_.options.size(); ++i) {
            const QuoteOption& option = quote_.options[i];
            if (option.unmeasured > 0)
                counts.push_back(message("option {}: {} of {}", {as_it_stands(i + 1), as_it_stands(option.unmeasured),
                                                                 counted_message(option.plan.steps.size(), "1 gap", "{} gaps")}));
        }
        if (counts.empty()) return;
        terms_.exclusions.push_back(
            message("Other sizes than were written down: some gaps were not said to be measured ({}); where one turns out "
                    "different, its price does too",
                    {joined_message(counts, ", ")}));
    }

    /// Animals that live in the house: what others have to do, and when closings must wait.
    void departures() {
        ForOptions licensed, waits;
        for (std::size_t i = 0; i < quote_.options.size(); ++i) {
            for (const Departure& departure : quote_.options[i].plan.departures) {
                const Occupant& occupant = job_.occupied[departure.occupant];
                const Message who = message("{}, in {}", {as_named(occupant.animal.name), survey_[occupant.space].called()});
                if (departure.removal == nullptr) {
                    licensed.add(
                        message("{}: somebody who knows this animal has to look first, and its last way stays open until then",
                                {who}),
                        i + 1);
                    continue;
                }
                const Removal& removal = *departure.removal;
                const Message how = message("{}: {}", {who, removal.how});
                if (removal.by == Removal::By::licensed) licensed.add(how, i + 1);
                if (removal.by == Removal::By::nothing) add_once(terms_.notes, how);
                if (!departure.waits()) continue;
                if (removal.by == Removal::By::trapping)
                    add_once(terms_.exclusions, "Looking at the traps every day: you do that, or order it besides");
                for (const Caution& caution : removal.cautions)
                    add_once(terms_.cautions, caution_message(caution.text, shipped_removals().sources, caution.source));
                waits.add(waiting_message(how, departure), i + 1);
            }
        }
        licensed.tell(terms_.exclusions);
        waits.tell(terms_.notes);
    }

    [[nodiscard]] static Message waiting_message(const Message& how, const Departure& departure) {
        const std::uint32_t nights = departure.removal->quiet_nights;
        Message text =
            message("{}. {} until it is gone", {how, counted_message(departure.last.size(), "1 gap waits", "{} gaps wait")});
        if (nights > 0) text = message("{}, {} without a sign of it", {text, counted_message(nights, "1 night", "{} nights")});
        if (departure.season)
            text = message("{}; not before {}: {}", {text, date_message(departure.begin), departure.season->season->why});
        return message("{}; the last closings follow on {} at the earliest", {text, date_message(departure.close_from)});
    }

    static bool outside(const PlanStep& step) {
        const WorkZone zone = step.stop.zone;
        return zone == WorkZone::outside_low || zone == WorkZone::outside_high || zone == WorkZone::roof;
    }

    static const Treatment* seen_treatment(const PlanStep& step) {
        const Treatment* treatment = outside(step) ? shipped_treatments().find(step.option.treatment) : nullptr;
        const bool shows = treatment != nullptr && !treatment->finish.empty() && !treatment->finish.starts_with("hidden");
        return shows ? treatment : nullptr;
    }

    [[nodiscard]] bool concerns_a_neighbor(GapIndex gap) const {
        const auto harborage = [&](SpaceIndex space) { return survey_[space].kind == SpaceKind::harborage; };
        return harborage(survey_[gap].between[0]) || harborage(survey_[gap].between[1]) ||
               host_of(survey_[gap]) == Host::block_wall;
    }

    void approvals() {
        std::map<const Treatment*, std::set<GapIndex>> seen;
        std::set<GapIndex> neighbor;
        for_each_step([&](std::size_t, const PlanStep& step) {
            if (const Treatment* treatment = seen_treatment(step)) seen[treatment].insert(step.gap);
            if (concerns_a_neighbor(step.gap)) neighbor.insert(step.gap);
        });
        for (const Treatment& row : shipped_treatments().rows) {
            const auto found = seen.find(&row);
            if (found == seen.end()) continue;
            if (row.colors.empty())
                terms_.approvals.push_back(
                    message("What is seen from outside: {} ({}): {}", {row.name, row.finish, labels(found->second)}));
            else
                terms_.approvals.push_back(message("What is seen from outside: {} ({}, to choose from {}): {}",
                                                   {row.name, row.finish, row.colors, labels(found->second)}));
        }
        if (!neighbor.empty())
            terms_.approvals.push_back(
                message("The neighbor, before anybody works at what may be shared: {}", {labels(neighbor)}));
        if (job_.site.association && !seen.empty())
            terms_.approvals.emplace_back("The homeowners' association, for what is seen from outside");
        for (const QuoteOption& option : quote_.options) {
            for (const Message& text : option.plan.before) add_once(terms_.approvals, text);
        }
    }

    void warranty() {
        Warranty& warranty = terms_.warranty;
        warranty.months = settings_.prices.warranty_months;
        if (warranty.months == 0) return;
        warranty.covers = message(
            "The closings listed for the option that is ordered, against the animals of that option: {} from the last visit on",
            {counted_message(warranty.months, "1 month", "{} months")});
        warranty.callback =
            "When one of these closings lets one of these animals in within that time, it is done again free of charge";
        warranty.void_if = {"a closing is cut, pulled out or painted over where its label forbids that",
                            "the house moves, or is altered at a closing", "new holes are drilled or broken"};
        std::set<std::string> gnawed;
        for_each_step([&](std::size_t, const PlanStep& step) {
            const Treatment* treatment = shipped_treatments().find(step.option.treatment);
            if (step.option.gnawed && treatment != nullptr) gnawed.insert(treatment->name);
        });
        if (!gnawed.empty())
            warranty.void_if.push_back(message("animals gnaw through what can be gnawed through ({})",
                                               {joined_message({gnawed.begin(), gnawed.end()}, ", ")}));
    }

    void notes() {
        for (const ClosedGap& closed : job_.closed) {
            if (std::find(quote_.free.begin(), quote_.free.end(), closed.gap) == quote_.free.end()) continue;
            terms_.notes.push_back(message(
                "Under warranty: {}, closed on {} and called back on {}: where an option closes it again, that is free of charge",
                {survey_[closed.gap].called(), date_message(*closed.date), date_message(closed.callback->date)}));
        }
        bool warranted = false;
        for_each_step([&](std::size_t, const PlanStep& step) {
            warranted = warranted || std::find(quote_.free.begin(), quote_.free.end(), step.gap) != quote_.free.end();
        });
        if (warranted) terms_.notes.emplace_back("The visit for the work under warranty is free.");
        const QuoteOption* everything = nullptr;
        for (const QuoteOption& option : quote_.options) {
            if (option.everything) everything = &option;
        }
        if (everything != nullptr && everything->plan.ladder_stop) {
            const LadderStop& stop = *everything->plan.ladder_stop;
            terms_.notes.push_back(
                message("Everything that can be closed is no more than that: a way in stays open that is {} wide, {}: {}",
                        {width_message(stop.width), survey_[stop.gap].called(), stop.why}));
        }
        for (const QuoteOption& option : quote_.options) {
            for (const Message& doubt : option.plan.vent_doubts) add_once(terms_.notes, message("Air: {}", {doubt}));
        }
        if (quote_.left_out > 0)
            terms_.notes.push_back(counted_message(quote_.left_out,
                                                   "1 option between these is not shown: the price changes least there",
                                                   "{} options between these are not shown: the price changes least there"));
    }

    /// Prices that are invented, as far as this quote has them.
    void warning() {
        if (settings_.invented) {
            terms_.warning =
                "All prices here are invented: they are the ones that come with the program. Do not give this quote to a "
                "customer. "
                "Write a price book of your own and name it with --prices.";
            return;
        }
        const std::map<std::string, Message> left = prices_as_shipped();
        if (left.empty()) return;
        std::vector<Message> names;
        for (const auto& [english, name] : left) names.push_back(name);
        terms_.warning = message(
            "These prices are the same as the invented ones that come with the program: {}. Do not give this quote to a "
            "customer before you have checked them.",
            {joined_message(names, "; ")});
    }

    /// By what they are in English.
    [[nodiscard]] std::map<std::string, Message> prices_as_shipped() const {
        std::map<std::string, Message> left;
        const PriceBook& own = settings_.prices;
        const PriceBook& shipped = shipped_prices();
        const auto compare = [&](const std::string& id) {
            const Material* mine = own.find(id);
            const Material* other = shipped.find(id);
            if (mine != nullptr && other != nullptr && mine->price == other->price)
                left.emplace(mine->name, as_named(mine->name));
        };
        for (const QuoteOption& option : quote_.options) {
            for (const Purchase& purchase : option.plan.materials) compare(purchase.material);
            for (const Departure& departure : option.plan.departures) {
                if (departure.waits() && departure.removal != nullptr) compare(departure.removal->material);
            }
        }
        if (own.labor_per_hour == shipped.labor_per_hour) left.emplace("an hour of labor", "an hour of labor");
        if (own.call_out == shipped.call_out) left.emplace("a visit", "a visit");
        if (own.overhead == shipped.overhead) left.emplace("overhead", "overhead");
        if (own.tax == shipped.tax) left.emplace("tax", "tax");
        return left;
    }

    const Job& job_;
    const Survey& survey_;
    const QuoteSettings& settings_;
    const Quote& quote_;
    QuoteTerms terms_;
};

}  // namespace

std::vector<Message> who_stays_inside(const Job& job, const Plan& plan) {
    std::vector<Message> texts;
    for (const Departure& departure : plan.departures) {
        const bool as_it_comes = departure.removal != nullptr && departure.removal->by == Removal::By::nothing;
        if (departure.waits() || as_it_comes) continue;
        const Occupant& occupant = job.occupied[departure.occupant];
        texts.push_back(message("{} stays in {}: getting it out and closing its way is not in this option",
                                {as_named(occupant.animal.name), job.survey[occupant.space].called()}));
    }
    return texts;
}

QuoteTerms terms_of(const Job& job, const QuoteSettings& settings, const Quote& quote) {
    return Terms(job, settings, quote).run();
}

}  // namespace seamward
