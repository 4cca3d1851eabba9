// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/quote_terms.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string_view>
#include <utility>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

using Numbers = std::set<std::size_t>;  ///< options, counted from 1

/// What no table tells: closing gaps is all that is priced.
constexpr std::array<std::string_view, 6> never_priced{
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
std::string options_text(const Numbers& numbers) {
    std::string text = numbers.size() == 1 ? "option " : "options ";
    std::size_t left = numbers.size();
    for (const std::size_t number : numbers) {
        text += std::to_string(number);
        --left;
        if (left > 0) text += left == 1 ? " and " : ", ";
    }
    return text;
}

class Terms {
public:
    Terms(const Job& job, const QuoteSettings& settings, const Quote& quote)
        : job_(job), survey_(job.survey), settings_(settings), quote_(quote) {}

    QuoteTerms run() {
        if (!quote_.options.empty()) stays_open();
        guesses();
        departures();
        for (const WrongClosing& wrong : wrong_closings(job_))
            terms_.exclusions.push_back("Opening again what must not be there: " + wrong_closing_text(survey_, wrong));
        if (quote_.feasible()) terms_.exclusions.insert(terms_.exclusions.end(), never_priced.begin(), never_priced.end());
        approvals();
        if (quote_.feasible()) warranty();
        for_each_step([&](std::size_t, const PlanStep& step) {
            const Treatment* treatment = shipped_treatments().find(step.option.treatment);
            if (treatment != nullptr) customer_cautions(*treatment);
        });
        for (const QuoteOption& option : quote_.options) {
            for (const std::string& check : option.plan.last_checks) add_once(terms_.checks, check);
        }
        notes();
        warning();
        return std::move(terms_);
    }

private:
    static void add_once(std::vector<std::string>& list, const std::string& text) {
        if (std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
    }

    void customer_cautions(const Treatment& treatment) {
        const auto& theirs = cautions_for_customers;
        for (const Caution& caution : treatment.cautions) {
            if (std::find(theirs.begin(), theirs.end(), caution.source) != theirs.end())
                add_once(terms_.cautions, caution.text + " (" + cited(shipped_treatments().sources, caution.source) + ')');
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
    [[nodiscard]] std::string labels(const Gaps& gaps) const {
        std::vector<std::pair<std::string, std::size_t>> counts;
        for (const GapIndex gap : gaps) {
            const std::string& label = survey_[gap].label();
            const auto found = std::find_if(counts.begin(), counts.end(), [&](const auto& one) { return one.first == label; });
            if (found == counts.end())
                counts.emplace_back(label, 1);
            else
                ++found->second;
        }
        std::string text;
        for (const auto& [label, count] : counts)
            text += (text.empty() ? "" : "; ") + label + (count > 1 ? " (" + std::to_string(count) + ')' : "");
        return text;
    }

    /// Gaps that nothing is offered for, by reason. Which they are does not depend on the animals.
    void stays_open() {
        std::map<std::pair<std::string, std::string>, std::vector<GapIndex>> by_reason;
        for (const RefusedGap& refused : quote_.options.front().plan.refused) {
            if (refused.refusal.treatment.empty())
                by_reason[{refused.refusal.why, refused.refusal.source}].push_back(refused.gap);
        }
        for (const auto& [reason, gaps] : by_reason)
            terms_.exclusions.push_back("Stays open: " + labels(gaps) + ": " + reason.first + " (" + reason.second + ')');
    }

    void guesses() {
        std::vector<std::string> counts;
        for (std::size_t i = 0; i < quote_.options.size(); ++i) {
            const QuoteOption& option = quote_.options[i];
            if (option.unmeasured > 0)
                counts.push_back("option " + std::to_string(i + 1) + ": " + std::to_string(option.unmeasured) + " of " +
                                 counted(option.plan.steps.size(), "gap", "gaps"));
        }
        if (counts.empty()) return;
        terms_.exclusions.push_back("Other sizes than were written down: some gaps were not said to be measured (" +
                                    joined(counts, ", ") + "); where one turns out different, its price does too");
    }

    /// Animals that live in the house: what others have to do, and when closings must wait.
    void departures() {
        std::map<std::string, Numbers> licensed, waits;
        for (std::size_t i = 0; i < quote_.options.size(); ++i) {
            for (const Departure& departure : quote_.options[i].plan.departures) {
                const Pest& animal = job_.occupied[departure.occupant].animal;
                const std::string who = animal.name + ", in " + survey_[job_.occupied[departure.occupant].space].label();
                if (departure.removal == nullptr) {
                    licensed[who + ": somebody who knows this animal has to look first, and its last way stays open until then"]
                        .insert(i + 1);
                    continue;
                }
                const Removal& removal = *departure.removal;
                if (removal.by == Removal::By::licensed) licensed[who + ": " + removal.how].insert(i + 1);
                if (removal.by == Removal::By::nothing) add_once(terms_.notes, who + ": " + removal.how);
                if (!departure.waits()) continue;
                if (removal.by == Removal::By::trapping)
                    add_once(terms_.exclusions, "Looking at the traps every day: you do that, or order it besides");
                for (const Caution& caution : removal.cautions)
                    add_once(terms_.cautions, caution.text + " (" + cited(shipped_removals().sources, caution.source) + ')');
                waits[waiting_text(who, departure)].insert(i + 1);
            }
        }
        for (const auto& [text, numbers] : licensed) terms_.exclusions.push_back(text + " (" + options_text(numbers) + ')');
        for (const auto& [text, numbers] : waits) terms_.notes.push_back(text + " (" + options_text(numbers) + ')');
    }

    [[nodiscard]] std::string waiting_text(const std::string& who, const Departure& departure) const {
        const Removal& removal = *departure.removal;
        std::string text =
            who + ": " + removal.how + ". " + counted(departure.last.size(), "gap waits", "gaps wait") + " until it is gone";
        if (removal.quiet_nights > 0) text += ", " + counted(removal.quiet_nights, "night", "nights") + " without a sign of it";
        if (departure.season) text += "; not before " + date_text(departure.begin) + ": " + departure.season->season->why;
        return text + "; the last closings follow on " + date_text(departure.close_from) + " at the earliest";
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
            const std::string choice = row.colors.empty() ? "" : ", to choose from " + row.colors;
            terms_.approvals.push_back("What is seen from outside: " + row.name + " (" + row.finish + choice +
                                       "): " + labels(found->second));
        }
        if (!neighbor.empty())
            terms_.approvals.push_back("The neighbor, before anybody works at what may be shared: " + labels(neighbor));
        if (job_.site.association && !seen.empty())
            terms_.approvals.emplace_back("The homeowners' association, for what is seen from outside");
        for (const QuoteOption& option : quote_.options) {
            for (const std::string& text : option.plan.before) add_once(terms_.approvals, text);
        }
    }

    void warranty() {
        Warranty& warranty = terms_.warranty;
        warranty.months = settings_.prices.warranty_months;
        if (warranty.months == 0) return;
        warranty.covers = "The closings listed for the option that is ordered, against the animals of that option: " +
                          counted(warranty.months, "month", "months") + " from the last visit on";
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
            warranty.void_if.push_back("animals gnaw through what can be gnawed through (" +
                                       joined({gnawed.begin(), gnawed.end()}, ", ") + ')');
    }

    void notes() {
        for (const ClosedGap& closed : job_.closed) {
            if (std::find(quote_.free.begin(), quote_.free.end(), closed.gap) == quote_.free.end()) continue;
            terms_.notes.push_back("Under warranty: " + survey_[closed.gap].label() + ", closed on " + date_text(*closed.date) +
                                   " and called back on " + date_text(closed.callback->date) +
                                   ": where an option closes it again, that is free of charge");
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
            terms_.notes.push_back("Everything that can be closed is no more than that: a way in stays open that is " +
                                   width_text(stop.width) + " wide, " + survey_[stop.gap].label() + ": " + stop.why);
        }
        for (const QuoteOption& option : quote_.options) {
            for (const std::string& doubt : option.plan.vent_doubts) add_once(terms_.notes, "Air: " + doubt);
        }
        if (quote_.left_out > 0)
            terms_.notes.push_back(counted(quote_.left_out, "option between these is", "options between these are") +
                                   " not shown: the price changes least there");
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
        const std::set<std::string> left = prices_as_shipped();
        if (left.empty()) return;
        terms_.warning = "These prices are the same as the invented ones that come with the program: " +
                         joined({left.begin(), left.end()}, "; ") +
                         ". Do not give this quote to a customer before you have checked them.";
    }

    [[nodiscard]] std::set<std::string> prices_as_shipped() const {
        std::set<std::string> left;
        const PriceBook& own = settings_.prices;
        const PriceBook& shipped = shipped_prices();
        const auto compare = [&](const std::string& id) {
            const Material* mine = own.find(id);
            const Material* other = shipped.find(id);
            if (mine != nullptr && other != nullptr && mine->price == other->price) left.insert(mine->name);
        };
        for (const QuoteOption& option : quote_.options) {
            for (const Purchase& purchase : option.plan.materials) compare(purchase.material);
            for (const Departure& departure : option.plan.departures) {
                if (departure.waits() && departure.removal != nullptr) compare(departure.removal->material);
            }
        }
        if (own.labor_per_hour == shipped.labor_per_hour) left.insert("an hour of labor");
        if (own.call_out == shipped.call_out) left.insert("a visit");
        if (own.overhead == shipped.overhead) left.insert("overhead");
        if (own.tax == shipped.tax) left.insert("tax");
        return left;
    }

    const Job& job_;
    const Survey& survey_;
    const QuoteSettings& settings_;
    const Quote& quote_;
    QuoteTerms terms_;
};

}  // namespace

std::vector<std::string> who_stays_inside(const Job& job, const Plan& plan) {
    std::vector<std::string> texts;
    for (const Departure& departure : plan.departures) {
        const bool as_it_comes = departure.removal != nullptr && departure.removal->by == Removal::By::nothing;
        if (departure.waits() || as_it_comes) continue;
        const Occupant& occupant = job.occupied[departure.occupant];
        texts.push_back(occupant.animal.name + " stays in " + job.survey[occupant.space].label() +
                        ": getting it out and closing its way is not in this option");
    }
    return texts;
}

QuoteTerms terms_of(const Job& job, const QuoteSettings& settings, const Quote& quote) {
    return Terms(job, settings, quote).run();
}

}  // namespace seamward
