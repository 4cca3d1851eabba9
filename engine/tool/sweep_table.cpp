// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <tuple>

#include "base/measure_text.h"
#include "base/text.h"
#include "tool/sweep_command.h"

namespace seamward {

namespace {

constexpr std::size_t most_details = 10;  ///< that are shown; the table on disk has all

std::string counted(std::size_t count, const char* one, const char* many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

std::size_t sum_of(const RollUp& sums, std::size_t CostTally::*part) {
    std::size_t sum = 0;
    for (const CostTally& tally : sums.costs) sum += tally.*part;
    return sum;
}

void print_summary(const SweepEnd& end, const Console& console) {
    const std::size_t errors = sum_of(end.sums, &CostTally::errors), open = sum_of(end.sums, &CostTally::open);
    console.out << console.bold(counted(end.tally.lots, "lot", "lots")) << ": " << end.tally.done << " done now";
    if (end.tally.kept > 0) console.out << ", " << end.tally.kept << " as they were";
    console.out << ".\n";
    const bool audit = end.settings.work == LotWork::audit;
    console.out << open << (audit ? " with something that fails, " : " with a way in, ") << end.tally.lots - open - errors
                << (audit ? " without, " : " without one, ") << errors << " that could not be done.\n";
    if (const std::size_t no_plan = sum_of(end.sums, &CostTally::no_plan); no_plan > 0)
        console.out << no_plan << " of those with a way in cannot be closed up: see `no-plan` in lots.csv.\n";
    if (end.tally.died > 0)
        console.out << end.tally.died << " of them ended the program twice and are left out until their files change.\n";
    if (end.settings.work != LotWork::trace) console.out << "Day of the work: " << date_text(end.settings.date) << ".\n";
}

void print_costs(const SweepEnd& end, const Console& console) {
    console.out << "\n" << console.bold("By plan and option") << '\n';
    std::size_t widest = 4;
    const auto called = [](const CostTally& tally) {
        return printable((tally.plan.empty() ? "(no house file)" : tally.plan) +
                         (tally.option.empty() ? "" : ", " + tally.option));
    };
    for (const CostTally& tally : end.sums.costs) widest = std::max(widest, letters(called(tally)));
    widest = std::min<std::size_t>(widest, 60);
    const bool plan = end.settings.work == LotWork::plan;
    console.out << padded("plan", widest) << "    lots    open"
                << (plan ? "       least      median        most         sum" : "") << '\n';
    const auto right = [](const std::string& text, std::size_t width) {
        return std::string(width > letters(text) ? width - letters(text) : 0, ' ') + text;
    };
    for (const CostTally& tally : end.sums.costs) {
        console.out << padded(called(tally), widest) << right(std::to_string(tally.lots), 8)
                    << right(std::to_string(tally.open), 8);
        if (plan && tally.open > tally.no_plan) {
            for (const Money cost : {tally.least, tally.middle, tally.most, tally.sum})
                console.out << ' ' << right(money_text(cost), 11);
        }
        console.out << '\n';
    }
}

/// What a builder can do something about: closings of most lots first; without plans, what leaks on most lots and need not stay
/// open. What fails a rule is to be put right in any case.
std::vector<const DetailTally*> worst_details(const SweepEnd& end) {
    std::vector<const DetailTally*> worst;
    for (const DetailTally& tally : end.sums.details) {
        if (tally.closed > 0 || !tally.stays || end.settings.work == LotWork::audit) worst.push_back(&tally);
    }
    std::stable_sort(worst.begin(), worst.end(), [](const DetailTally* a, const DetailTally* b) {
        return std::tie(a->closed, a->leaks) > std::tie(b->closed, b->leaks);
    });
    worst.resize(std::min(worst.size(), most_details));
    return worst;
}

void print_details(const SweepEnd& end, const Console& console) {
    const std::vector<const DetailTally*> worst = worst_details(end);
    if (worst.empty()) return;
    console.out << "\n"
                << console.bold(end.settings.work == LotWork::audit ? "Fails on most lots" : "Leaks on most lots") << '\n';
    for (const DetailTally* tally : worst) {
        std::string text = printable(tally->name) + " (" + printable(tally->plan) + "): " + std::to_string(tally->leaks) +
                           " of " + counted(tally->lots, "lot", "lots");
        if (tally->widest > 0) text += ", " + width_text(tally->widest / 1000) + " at worst";
        if (tally->closed > 0) text += "; closed on " + std::to_string(tally->closed) + " for " + money_text(tally->sum);
        print_paragraph("  ", text, console);
    }
    console.out << "  All " << counted(end.sums.details.size(), "detail is", "details are") << " in details.csv.\n";
}

}  // namespace

void print_sweep_table(const SweepEnd& end, const Console& console) {
    print_summary(end, console);
    print_costs(end, console);
    print_details(end, console);
    console.out << "\nlots.csv, details.csv, costs.csv and sweep.sqlite are in " << printable(end.folder) << '\n';
}

}  // namespace seamward
