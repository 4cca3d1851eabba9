// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/shipped.h"
#include "plan/owner_part.h"
#include "tool/plan_command.h"
#include "tool/sightings_lines.h"
#include "tool/treatment_name.h"

namespace seamward {

namespace {

std::vector<std::string> names_of(const std::vector<Pest>& pests) {
    std::vector<std::string> names;
    for (const Pest& pest : pests) names.push_back(pest.name);
    return names;
}

class PlanTable {
public:
    PlanTable(const Job& job, const PlanSettings& settings, const Plan& plan, bool diy, const Console& console)
        : job_(job), survey_(job.survey), settings_(settings), plan_(plan), diy_(diy), console_(console) {}

    void print() {
        if (plan_.open_way) {
            no_plan();
        } else {
            summary();
            before();
            steps();
            departures();
            if (diy_) owner();
            if (plan_.budget) budget(*plan_.budget);
            proof();
            if (plan_.chances) chances(*plan_.chances);
            materials();
            tools();
        }
        print_sightings(job_, plan_, settings_, console_);
        ladder();
        refused();
        marginal();
        if (!plan_.vent_doubts.empty() || !plan_.notes.empty()) console_.out << '\n';
        for (const std::string& doubt : plan_.vent_doubts) paragraph("Air: ", doubt);
        for (const std::string& note : plan_.notes) paragraph("Check: ", note);
        if (!plan_.last_checks.empty()) console_.out << '\n';
        for (const std::string& check : plan_.last_checks) paragraph("At the end: ", check);
    }

private:
    void title(const std::string& text) { console_.out << '\n' << console_.bold(text) << '\n'; }
    void paragraph(const std::string& lead, const std::string& text) { print_paragraph(lead, text, console_); }

    [[nodiscard]] std::string way_text(const EntryPath& path) const {
        std::string text = survey_[path.from()].label();
        for (std::size_t i = 0; i < path.gaps.size(); ++i)
            text += " > [" + survey_[path.gaps[i]].label() + "] > " + survey_[path.spaces[i + 1]].label();
        return text;
    }

    void no_plan() {
        title("No plan: there is a way in that must not or cannot be closed");
        const OpenWay& way = *plan_.open_way;
        paragraph("  way in   ", way_text(way.path));
        paragraph("  pinch    ", width_text(way.pinch) + ", open to " + settings_.against[way.pest].name);
        for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
            paragraph("  stays    ", survey_[way.path.gaps[i]].label() + ": " + plan_.open_way_reasons[i]);
        paragraph(
            "", "Measure these gaps anew, look for another place to stop the way, or plan against larger animals: --against ID.");
    }

    void summary() {
        std::string text = "Against " + listed(names_of(settings_.against)) + ": ";
        if (plan_.steps.empty())
            text += plan_.budget && !plan_.budget->reaches_all ? "nothing within the budget helps." : "nothing to do.";
        else
            text += counted(plan_.steps.size(), "gap", "gaps") + " to treat, " + money_text(plan_.cost) + ", about " +
                    time_text(plan_.minutes) + " of work. Call-out, overhead, tax and whole packs are not in this price.";
        paragraph("", text);
        if (settings_.sizing == Sizing::with_plus_minus)
            paragraph("", "Every gap counts as wide as its width and its plus-minus together.");
    }

    void before() {
        if (plan_.before.empty()) return;
        title("Before the work");
        for (const std::string& line : plan_.before) paragraph("  ", line);
    }

    void steps() {
        std::size_t order = 0;
        std::optional<WorkZone> zone;
        bool waited = false;
        for (const PlanStep& step : plan_.steps) {
            if (zone != step.stop.zone || waited != step.waits) zone_title(step);
            zone = step.stop.zone;
            waited = step.waits;
            const Gap& gap = survey_[step.gap];
            const std::string number = std::to_string(++order);
            const std::string lead = std::string(4 - std::min<std::size_t>(3, number.size()), ' ') + number + "  ";
            std::string what = gap.label() + ", " + inches_text(clear_width(gap.shape));
            if (gap.count > 1) what += ", " + std::to_string(gap.count) + " pieces";
            paragraph(lead, what + ": " + treatment_name(step.option.treatment) + ", " + money_text(step.option.cost) +
                                (step.option.minutes > 0 ? ", " + time_text(step.option.minutes) : "") + ladder_text(step.stop) +
                                (diy_ ? step.owner ? ", you can do this" : ", for hire" : ""));
            if (order == 1 || step.widest_open_after != plan_.steps[order - 2].widest_open_after)
                paragraph("      ", step.widest_open_after > 0 ? "still open: " + width_text(step.widest_open_after)
                                                               : "no way in is left open");
            cautions(step, number);
        }
    }

    void zone_title(const PlanStep& step) {
        std::string text = zone_words(step.stop.zone);
        if (step.stop.zone == WorkZone::outside_high && !step.waits)
            text +=
                ", the ladder set " + (plan_.ladder_settings == 1 ? "once" : std::to_string(plan_.ladder_settings) + " times");
        title(step.waits ? "On a later visit, when the animals are gone: " + text : text);
    }

    static std::string ladder_text(const WalkStop& stop) {
        if (stop.ladder_first == 0) return "";
        std::string text = ", ladder " + std::to_string(stop.ladder_first);
        if (stop.ladder_last > stop.ladder_first) text += " to " + std::to_string(stop.ladder_last);
        return stop.two_people ? text + ", two people" : text;
    }

    void departures() {
        if (plan_.departures.empty()) return;
        title("Animals that live in the house");
        for (const Departure& departure : plan_.departures) {
            const Occupant& occupant = job_.occupied[departure.occupant];
            paragraph("  ", occupant.animal.name + " in " + survey_[occupant.space].label() +
                                (occupant.seen.empty() ? "" : " (seen: " + occupant.seen + ")") + ": " + what_waits(departure));
            if (departure.removal == nullptr) {
                if (departure.waits())
                    paragraph("    ",
                              "The tables do not know this animal: nobody closes these before somebody who knows it has looked.");
                continue;
            }
            if (departure.waits() || departure.removal->by == Removal::By::nothing) how_it_leaves(departure);
        }
    }

    [[nodiscard]] std::string what_waits(const Departure& departure) const {
        if (!departure.waits()) {
            if (departure.removal != nullptr && departure.removal->by == Removal::By::nothing) return "nothing waits for it.";
            return departure.way_known ? "these steps leave it a way out. They keep it out of the rooms and do not drive it away."
                                       : "no way out is known, and these steps do not touch its space. Look for the way it came.";
        }
        std::string gaps;
        for (const GapIndex gap : departure.last) gaps += (gaps.empty() ? "" : "; ") + survey_[gap].label();
        return (departure.way_known ? "it must not be shut in. Its main way out stays open until it is gone: "
                                    : "no way out is known, so all around its space waits until it is gone: ") +
               gaps + ".";
    }

    void how_it_leaves(const Departure& departure) {
        const Removal& removal = *departure.removal;
        const std::string at = departure.device ? " Here: " + survey_[*departure.device].label() + "." : "";
        paragraph("    ", removal.how + "." + at + " (" + cited(shipped_removals().sources, removal.source) + ")");
        if (departure.season) {
            const ClosedSeason& season = *departure.season->season;
            paragraph("    ", "Not now: " + season.why + ". Begin on " + date_text(departure.season->over) +
                                  " at the earliest (" + cited(shipped_removals().sources, season.source) + ")");
        }
        if (departure.waits())
            paragraph("    ",
                      (removal.quiet_nights > 0 ? "After " + std::to_string(removal.quiet_nights) + " nights without a sign, "
                                                : "Once it is gone, ") +
                          "on " + date_text(departure.close_from(settings_.date)) + " at the earliest, close what waits.");
        for (const Caution& caution : removal.cautions)
            paragraph("    Caution: ", caution.text + " (" + cited(shipped_removals().sources, caution.source) + ")");
    }

    void owner() {
        const OwnerPart part = owner_part(plan_, settings_.prices);
        title("To do yourself");
        if (part.steps == 0) {
            paragraph("  ", "None of these steps is safe from the ground without training; hire for all of them.");
            return;
        }
        paragraph("  ", counted(part.steps, "step", "steps") + ", all from the ground: material for " + money_text(part.to_buy) +
                            " in whole packs, and about " + time_text(part.minutes) +
                            " of work for somebody who does it often. Read the cautions first.");
        for (const Purchase& purchase : part.materials) paragraph("    ", purchase_text(purchase));
        if (part.hired_steps > 0)
            paragraph("  ", "For hire stay " + counted(part.hired_steps, "step", "steps") + ", " + money_text(part.hired) +
                                " before call-out and tax: ladders, roof, attic and crawl space, and what takes a trade.");
    }

    /// Each in full where it first comes up.
    void cautions(const PlanStep& step, const std::string& number) {
        std::string told;
        for (const std::string& caution : step.cautions()) {
            const auto [first, anew] = told_at_.emplace(caution, number);
            if (anew)
                paragraph("      Caution: ", caution);
            else if (told.find(" " + first->second + ",") == std::string::npos)
                told += " " + first->second + ",";
        }
        if (!told.empty()) paragraph("      ", "Cautions as at" + told.substr(0, told.size() - 1));
    }

    void budget(const BudgetResult& result) {
        title("Within " + money_text(*settings_.budget));
        if (result.reaches_all) {
            paragraph("  ", "The whole plan fits in the budget.");
            return;
        }
        paragraph("  ", "The whole plan costs " + money_text(result.full_cost) + "; after these steps " +
                            money_text(result.still_to_pay) + " is still to pay.");
        if (result.left_open)
            paragraph("  ", "The widest way that stays open is " + width_text(result.left_open->pinch) + ": " +
                                way_text(result.left_open->path));
    }

    void proof() {
        if (plan_.proof.routes.empty()) return;
        title("Why nothing cheaper will do");
        const Proof& proof = plan_.proof;
        const std::string routes = counted(proof.routes.size(), "way in", "ways in");
        if (proof.kind == Proof::Kind::flow)
            paragraph("  ", "There are " + routes + " that have to be closed each at a price of its own; these add up to " +
                                money_text(proof.lower_bound) + ", the price of the plan.");
        else
            paragraph("  ",
                      "There are " + routes + " that cost at least " + money_text(proof.lower_bound) +
                          " to close. Between that and the price of the plan the solver has tried all that could be cheaper" +
                          (proof.solver_gap > 0 ? ", but for " + percent(proof.solver_gap) + "." : "."));
    }

    static std::string share(double part) { return percent_text(std::round(part * 1000) / 1000); }
    static std::string percent(double share) { return percent_text(std::ceil(share * 1000) / 1000); }

    static std::string chance_text(const OpenChance& open) {
        if (open.chance <= 0) return "none";
        const std::string text = open.chance >= 1      ? "certain"
                                 : open.chance < 0.001 ? "under 0.1 %"
                                 : open.chance > 0.999 ? "over 99.9 %"
                                                       : share(open.chance);
        return open.exact ? text : text + " (between " + share(open.low) + " and " + share(open.high) + ")";
    }

    void chances(const PlanChances& all) {
        title("How sure this is, when every width within its plus-minus is as likely as any other");
        for (std::size_t i = 0; i < all.before.size(); ++i) {
            paragraph("  ", settings_.against[all.before[i].pest].name + ": chance of a way in now " +
                                chance_text(all.before[i].open) + ", after these steps " + chance_text(all.after[i].open));
            for (const WorthMeasuring& one : worth_measuring(all, i)) {
                if (one.change >= 0.001)
                    paragraph("    measure again: ",
                              survey_[one.gap].label() + ", which it passes with a chance of " + share(one.passes));
            }
        }
    }

    [[nodiscard]] std::string purchase_text(const Purchase& purchase) const {
        const Material& material = *settings_.prices.find(purchase.material);
        std::string count;
        if (purchase.cases > 0) count = std::to_string(purchase.cases) + " x case of " + std::to_string(material.in_case);
        const std::string unit = material.unit == "piece" ? "" : " " + material.unit;
        if (purchase.units > 0) count += (count.empty() ? "" : " and ") + std::to_string(purchase.units) + " x" + unit;
        return count + " " + material.name + ", " + money_text(purchase.cost);
    }

    void materials() {
        if (plan_.materials.empty()) return;
        title("To bring");
        for (const Purchase& purchase : plan_.materials) paragraph("  ", purchase_text(purchase));
    }

    /// Tools and protection of all treatments, each once.
    void tools() {
        std::vector<std::string> tools, protection;
        const auto add = [](std::vector<std::string>& list, const std::vector<std::string>& more) {
            for (const std::string& one : more) {
                if (std::find(list.begin(), list.end(), one) == list.end()) list.push_back(one);
            }
        };
        for (const PlanStep& step : plan_.steps) {
            const Treatment* treatment = shipped_treatments().find(step.option.treatment);
            if (treatment == nullptr) continue;
            add(tools, treatment->tools);
            add(protection, treatment->protection);
        }
        const auto list = [&](const char* lead, const std::vector<std::string>& things) {
            std::string text;
            for (const std::string& thing : things) text += (text.empty() ? "" : ", ") + thing;
            if (!text.empty()) paragraph(lead, text);
        };
        list("  Tools: ", tools);
        list("  To wear: ", protection);
    }

    void ladder() {
        if (plan_.ladder.empty()) return;
        title("What each price keeps out, by full closings");
        for (const LadderRung& rung : plan_.ladder) {
            const std::string gaps = counted(rung.gaps.size(), "gap", "gaps");
            console_.out << "  " << padded(money_text(rung.cost), 12) << padded(gaps, 10) << "nothing " << width_text(rung.width)
                         << " wide or wider gets in\n";
        }
        if (plan_.rungs_left_out > 0) paragraph("  ", std::to_string(plan_.rungs_left_out) + " more between these are left out.");
        if (plan_.ladder_stop)
            paragraph("  ", "It ends at " + width_text(plan_.ladder_stop->width) + ", " +
                                survey_[plan_.ladder_stop->gap].label() + ": " + plan_.ladder_stop->why);
    }

    /// Gaps that nothing is done to, by reason.
    void refused() {
        std::map<std::pair<std::string, std::string>, std::vector<std::string>> by_reason;
        for (const RefusedGap& refused : plan_.refused) {
            if (refused.refusal.treatment.empty())
                by_reason[{refused.refusal.why, refused.refusal.source}].push_back(survey_[refused.gap].label());
        }
        if (by_reason.empty()) return;
        title("Stays open, and why");
        for (const auto& [reason, gaps] : by_reason) {
            std::string list;
            for (const std::string& gap : gaps) list += (list.empty() ? "" : "; ") + gap;
            paragraph("  ", list + ": " + reason.first + " (" + reason.second + ")");
        }
    }

    void marginal() {
        if (plan_.marginal.empty()) return;
        title("Close calls: these stop an animal by less than its size is known");
        for (const MarginalStop& stop : plan_.marginal)
            paragraph("  ",
                      survey_[stop.gap].label() + ": " + settings_.against[stop.pest].name + ", by " + percent(stop.share_short));
    }

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const Plan& plan_;
    bool diy_;
    const Console& console_;
    std::map<std::string, std::string> told_at_;  ///< caution, number of the step where it stands
};

}  // namespace

void print_plan_table(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan, bool diy,
                      const Console& console) {
    console.out << console.bold(heading) << '\n';
    PlanTable(job, settings, plan, diy, console).print();
}

}  // namespace seamward
