// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "catalog/shipped.h"
#include "tool/plan_command.h"

namespace seamward {

namespace {

std::string names_of(const std::vector<Pest>& pests) {
    std::string text;
    for (std::size_t i = 0; i < pests.size(); ++i) text += (i == 0 ? "" : i + 1 == pests.size() ? " and " : ", ") + pests[i].name;
    return text;
}

/// `45 min`, `3 h 10 min`
std::string time_text(double minutes) {
    const long whole = std::lround(minutes);
    if (whole < 60) return std::to_string(whole) + " min";
    const std::string hours = std::to_string(whole / 60) + " h";
    return whole % 60 == 0 ? hours : hours + ' ' + std::to_string(whole % 60) + " min";
}

std::string treatment_name(const Option& option) {
    const Treatment* treatment = shipped_treatments().find(option.treatment);
    return treatment != nullptr ? treatment->name : "closed at the price that the survey states";
}

class PlanTable {
public:
    PlanTable(const Job& job, const PlanSettings& settings, const Plan& plan, const Console& console)
        : survey_(job.survey), settings_(settings), plan_(plan), console_(console) {}

    void print() {
        if (plan_.open_way) {
            no_plan();
        } else {
            summary();
            steps();
            if (plan_.budget) budget(*plan_.budget);
            proof();
            if (plan_.chances) chances(*plan_.chances);
            materials();
        }
        ladder();
        refused();
        marginal();
        if (!plan_.vent_doubts.empty()) console_.out << '\n';
        for (const std::string& doubt : plan_.vent_doubts) paragraph("Air: ", doubt);
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
        std::string text = "Against " + names_of(settings_.against) + ": ";
        if (plan_.steps.empty())
            text += plan_.budget && !plan_.budget->reaches_all ? "nothing within the budget helps." : "nothing to do.";
        else
            text += std::to_string(plan_.steps.size()) + (plan_.steps.size() == 1 ? " gap" : " gaps") + " to treat, " +
                    money_text(plan_.cost) + ", about " + time_text(plan_.minutes) +
                    " of work. Call-out, overhead, tax and whole packs are not in this price.";
        paragraph("", text);
        if (settings_.sizing == Sizing::with_plus_minus)
            paragraph("", "Every gap counts as wide as its width and its plus-minus together.");
    }

    void steps() {
        std::size_t order = 0;
        std::optional<WorkZone> zone;
        for (const PlanStep& step : plan_.steps) {
            if (zone != step.zone) title(zone_words(step.zone));
            zone = step.zone;
            const Gap& gap = survey_[step.gap];
            const std::string number = std::to_string(++order);
            const std::string lead = std::string(4 - std::min<std::size_t>(3, number.size()), ' ') + number + "  ";
            std::string what = gap.label() + ", " + inches_text(clear_width(gap.shape));
            if (gap.count > 1) what += ", " + std::to_string(gap.count) + " pieces";
            paragraph(lead, what + ": " + treatment_name(step.option) + ", " + money_text(step.option.cost) +
                                (step.option.minutes > 0 ? ", " + time_text(step.option.minutes) : ""));
            if (order == 1 || step.widest_open_after != plan_.steps[order - 2].widest_open_after)
                paragraph("      ", step.widest_open_after > 0 ? "still open: " + width_text(step.widest_open_after)
                                                               : "no way in is left open");
            cautions(step, number);
        }
    }

    /// Each in full where it first comes up.
    void cautions(const PlanStep& step, const std::string& number) {
        std::string told;
        for (const std::string& caution : step.option.cautions) {
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
        const std::string routes = std::to_string(proof.routes.size()) + (proof.routes.size() == 1 ? " way in" : " ways in");
        if (proof.kind == Proof::Kind::flow)
            paragraph("  ", "There are " + routes + " that have to be closed each at a price of its own; these add up to " +
                                money_text(proof.lower_bound) + ", the price of the plan.");
        else
            paragraph("  ",
                      "There are " + routes + " that cost at least " + money_text(proof.lower_bound) +
                          " to close. Between that and the price of the plan the solver has tried all that could be cheaper" +
                          (proof.solver_gap > 0 ? ", but for " + percent(proof.solver_gap) + "." : "."));
    }

    static std::string one_decimal(double value) {
        const long tenths = std::lround(value * 10);
        return std::to_string(tenths / 10) + (tenths % 10 != 0 ? "." + std::to_string(tenths % 10) : "");
    }
    static std::string share(double part) { return one_decimal(part * 100) + " %"; }
    static std::string percent(double share) { return one_decimal(std::ceil(share * 1000) / 10) + " %"; }

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

    void materials() {
        if (plan_.materials.empty()) return;
        title("To bring");
        for (const Purchase& purchase : plan_.materials) {
            const Material& material = *settings_.prices.find(purchase.material);
            std::string count;
            if (purchase.cases > 0) count = std::to_string(purchase.cases) + " x case of " + std::to_string(material.in_case);
            if (purchase.units > 0)
                count += (count.empty() ? "" : " and ") + std::to_string(purchase.units) + " x " + material.unit;
            paragraph("  ", count + " " + material.name + ", " + money_text(purchase.cost));
        }
    }

    void ladder() {
        if (plan_.ladder.empty()) return;
        title("What each price keeps out, by full closings");
        for (const LadderRung& rung : plan_.ladder) {
            const std::string gaps = std::to_string(rung.gaps.size()) + (rung.gaps.size() == 1 ? " gap" : " gaps");
            console_.out << "  " << padded(money_text(rung.cost), 12) << padded(gaps, 10) << "nothing " << width_text(rung.width)
                         << " wide or wider gets in\n";
        }
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

    const Survey& survey_;
    const PlanSettings& settings_;
    const Plan& plan_;
    const Console& console_;
    std::map<std::string, std::string> told_at_;  ///< caution, number of the step where it stands
};

}  // namespace

void print_plan_table(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan,
                      const Console& console) {
    console.out << console.bold(heading) << '\n';
    PlanTable(job, settings, plan, console).print();
}

}  // namespace seamward
