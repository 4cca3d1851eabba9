// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/duties.h"
#include "materials/treatment_name.h"
#include "network/network.h"
#include "plan/owner_part.h"
#include "plan/to_bring.h"
#include "tool/departure_lines.h"
#include "tool/plan_command.h"
#include "tool/plan_words.h"
#include "tool/sightings_lines.h"

namespace seamward {

namespace {

class PlanTable {
public:
    PlanTable(const Job& job, const PlanSettings& settings, const Plan& plan, bool diy, const Console& console)
        : job_(job),
          survey_(job.survey),
          settings_(settings),
          plan_(plan),
          diy_(diy),
          console_(console),
          cautions_(console, &stars_) {}

    void print() {
        if (plan_.open_way) {
            print_no_plan(job_, settings_, plan_, console_);
            wrong_closings();
        } else {
            summary();
            wrong_closings();
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
        for (const Message& doubt : plan_.vent_doubts) paragraph("Air: ", doubt.english());
        for (const Message& note : plan_.notes) paragraph("Check: ", note.english());
        if (!plan_.last_checks.empty()) console_.out << '\n';
        for (const Message& check : plan_.last_checks) paragraph("At the end: ", check.english());
        if (stars_) console_.out << '\n';
        if (stars_) paragraph("", star_note);
    }

private:
    void title(const std::string& text) { console_.out << '\n' << console_.bold(text) << '\n'; }
    void paragraph(const std::string& lead, const std::string& text) { print_paragraph(lead, text, console_); }
    void sourced(const std::string& lead, const std::string& text) {
        const std::string shown = starred(text);
        stars_ = stars_ || shown != text;
        paragraph(lead, shown);
    }

    void summary() {
        std::string text = "Against " + names_text(settings_.against) + ": ";
        const Roles roles(survey_, {});
        if (roles.start_spaces().empty() || roles.end_spaces().empty())
            text += "nothing can be planned, since no way in is known.";
        else if (plan_.steps.empty())
            text += plan_.budget && !plan_.budget->reaches_all ? "nothing within the budget helps." : "nothing to do.";
        else
            text += counted(plan_.steps.size(), "gap", "gaps") + " to treat, " + money_text(plan_.cost) + ", about " +
                    time_text(plan_.minutes) + " of work. Call-out, overhead, tax and whole packs are not in this price.";
        paragraph("", text);
        if (settings_.sizing == Sizing::with_plus_minus)
            paragraph("", "Every gap counts as wide as it may be: the width after \"up to\".");
    }

    void wrong_closings() {
        if (plan_.wrong_closings.empty()) return;
        title("Wrong closings to open again");
        for (const WrongClosing& wrong : plan_.wrong_closings)
            sourced("  ", wrong_closing_text(survey_, wrong).english() + ". (" + wrong.source.english() + ")");
    }

    void before() {
        if (plan_.before.empty()) return;
        title("Before the work");
        for (const Message& line : plan_.before) paragraph("  ", line.english());
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
            const double counted_as = counted_width(gap, settings_.sizing);
            if (inches_text(counted_as) != inches_text(clear_width(gap.shape))) what += ", up to " + inches_text(counted_as);
            if (gap.count > 1) what += ", " + std::to_string(gap.count) + " pieces";
            paragraph(lead, what + ": " + treatment_name(step.option.treatment).english() + ", " + money_text(step.option.cost) +
                                (step.option.minutes > 0 ? ", " + time_text(step.option.minutes) : "") + ladder_text(step.stop) +
                                (diy_ ? step.owner ? ", you can do this" : ", for hire" : ""));
            if (opens_less(plan_, order - 1))
                paragraph("      ", step.widest_open_after > 0 ? "still open: " + width_text(step.widest_open_after)
                                                               : "no way in is left open");
            cautions_.tell(step, number, "      ");
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
        for (const Departure& departure : plan_.departures) print_departure(job_, departure, console_);
    }

    void owner() {
        const OwnerPart part = owner_part(plan_, settings_.prices);
        title("To do yourself");
        if (part.steps == 0) {
            paragraph("  ", "None of these steps is safe from the ground without training; hire for all of them.");
            return;
        }
        if (!plan_.last_checks.empty())
            paragraph("  ",
                      "Fuel is burned in this house: before you begin, arrange for a licensed person to test the appliances once "
                      "the gaps are closed.");
        paragraph("  ", counted(part.steps, "step", "steps") + ", all from the ground: material for " + money_text(part.to_buy) +
                            " in whole packs, and about " + time_text(part.minutes) +
                            " of work for somebody who does it often. Read the cautions first.");
        for (const Purchase& purchase : part.materials) paragraph("    ", priced_packs(purchase));
        if (part.hired_steps > 0)
            paragraph("  ", "For hire stay " + counted(part.hired_steps, "step", "steps") + ", " + money_text(part.hired) +
                                " before call-out and tax: ladders, roof, attic and crawl space, and what takes a trade.");
    }

    void budget(const BudgetResult& result) {
        title("Within " + money_text(*settings_.budget));
        if (result.reaches_all) {
            paragraph(
                "  ",
                "The whole plan fits in the budget. A quote adds whole packs, the least charge of a visit, overhead and tax.");
            return;
        }
        paragraph("  ", "The whole plan costs " + money_text(result.full_cost) + "; after these steps " +
                            money_text(result.still_to_pay) +
                            " is still to pay. A quote adds whole packs, the least charge of a visit, overhead and tax.");
        if (result.left_open)
            paragraph("  ", "The widest way that stays open is " + width_text(result.left_open->pinch) + ": " +
                                way_text(survey_, result.left_open->path));
    }

    void proof() {
        if (plan_.proof.routes.empty()) return;
        title("Why nothing cheaper will do");
        const Proof& proof = plan_.proof;
        const Money whole = plan_.budget ? plan_.budget->full_cost : plan_.cost;
        const std::string routes = counted(proof.routes.size(), "way in", "ways in");
        if (proof.kind == Proof::Kind::flow)
            paragraph("  ", "No set of closings is cheaper: " + routes + (proof.routes.size() == 1 ? " has" : " have") +
                                " to be closed, each at a price of its own, and these add up to " +
                                money_text(proof.lower_bound) + ", the price of the plan.");
        else
            paragraph("  ",
                      "No cheaper set was found: " + routes + (proof.routes.size() == 1 ? " costs" : " cost") + " at least " +
                          money_text(proof.lower_bound) + " to close" +
                          (proof.lower_bound == whole
                               ? ", the price of the plan."
                               : ", and whatever lies between that and the price of the plan was tried and "
                                 "does not do" +
                                     (proof.solver_gap > 0 ? ", but for " + percent(proof.solver_gap) + "." : std::string("."))));
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
                                chance_text(all.before[i].open) + ", after these steps " + chance_text(all.after[i].open) +
                                (all.after[i].open.chance <= 0 ? ", if every width is right and the work is done well" : ""));
            for (const WorthMeasuring& one : worth_measuring(all, i)) {
                if (one.change >= 0.001)
                    paragraph("    measure again: ",
                              survey_[one.gap].label() + ", which it passes with a chance of " + share(one.passes));
            }
        }
    }

    [[nodiscard]] std::string priced_packs(const Purchase& purchase) const {
        return packs_text(purchase, settings_.prices).english() + ", " + money_text(purchase.cost);
    }

    void materials() {
        if (plan_.materials.empty()) return;
        title("To bring");
        for (const Purchase& purchase : plan_.materials) paragraph("  ", priced_packs(purchase));
    }

    void tools() {
        const Kit kit = kit_of(plan_.steps);
        if (!kit.tools.empty()) paragraph("  Tools: ", joined(kit.tools, ", "));
        if (!kit.protection.empty()) paragraph("  To wear: ", joined(kit.protection, ", "));
    }

    void ladder() {
        if (plan_.ladder.empty()) return;
        title("What each price keeps out, with gaps shut completely");
        constexpr std::size_t most = 12;
        const std::size_t count = plan_.ladder.size();
        const std::size_t shown = std::min(count, most);
        for (std::size_t i = 0; i < shown; ++i) {
            const LadderRung& rung = plan_.ladder[shown > 1 ? i * (count - 1) / (shown - 1) : 0];
            const std::string gaps = counted(rung.gaps.size(), "gap", "gaps");
            console_.out << "  " << padded(money_text(rung.cost), 12) << padded(gaps, 10) << "nothing " << width_text(rung.width)
                         << " wide or wider gets in\n";
        }
        const std::size_t left_out = plan_.rungs_left_out + count - shown;
        if (left_out > 0) paragraph("  ", counted(left_out, "price", "prices") + " between these left out; --json has them.");
        if (plan_.ladder_stop)
            paragraph("  ", "No price goes further: " + width_text(plan_.ladder_stop->width) + " stays open at " +
                                survey_[plan_.ladder_stop->gap].label() + ": " + plan_.ladder_stop->why.english());
    }

    /// Gaps that nothing is done to, by reason.
    void refused() {
        std::map<std::pair<std::string, std::string>, std::vector<std::string>> by_reason;
        for (const RefusedGap& refused : plan_.refused) {
            if (refused.refusal.treatment.empty())
                by_reason[{refused.refusal.why.english(), refused.refusal.source.english()}].push_back(
                    survey_[refused.gap].label());
        }
        if (by_reason.empty()) return;
        title("Stays open, and why");
        for (const auto& [reason, gaps] : by_reason) {
            std::string list;
            for (const std::string& gap : gaps) list += (list.empty() ? "" : "; ") + gap;
            sourced("  ", list + ": " + reason.first + " (" + reason.second + ")");
        }
    }

    void marginal() {
        if (plan_.marginal.empty()) return;
        title("Close calls: a little too narrow for an animal whose size is not known so exactly");
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
    bool stars_ = false;  ///< a source was told with one; before the cautions, which set it
    CautionTeller cautions_;
};

}  // namespace

void print_plan_table(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan, bool diy,
                      const Console& console) {
    console.out << console.bold(heading) << '\n';
    PlanTable(job, settings, plan, diy, console).print();
}

}  // namespace seamward
