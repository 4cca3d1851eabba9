// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "materials/treatment_name.h"
#include "tool/quote_command.h"

namespace seamward {

namespace {

std::string amount_text(Money money) { return money.cents < 0 ? "-" + money_text({-money.cents}) : money_text(money); }

class QuoteTable {
public:
    QuoteTable(const Job& job, const QuoteSettings& settings, const Quote& quote, const QuoteTerms& terms, const Console& console)
        : job_(job), survey_(job.survey), settings_(settings), quote_(quote), terms_(terms), console_(console) {
        for (const QuoteOption& option : quote_.options) {
            if (option.plan.feasible) offered_.push_back(&option);
        }
    }

    void print(const std::string& heading) {
        head(heading);
        for (std::size_t i = 0; i < offered_.size(); ++i) describe(i);
        not_offered();
        if (!offered_.empty()) {
            prices();
            closings();
        }
        list(offered_.empty() ? "What cannot be closed" : "What the price does not cover", terms_.exclusions);
        list("To be settled before the work begins", terms_.approvals);
        if (!offered_.empty()) warranty();
        list("When the work is done; not in the price", terms_.checks);
        list("Cautions", terms_.cautions);
        list("Notes", terms_.notes);
        if (!offered_.empty()) signatures();
    }

private:
    void title(const std::string& text) { console_.out << '\n' << console_.bold(text) << '\n'; }
    void paragraph(const std::string& lead, const std::string& text) { print_paragraph(lead, text, console_); }

    void list(const std::string& heading, const std::vector<Message>& texts) {
        if (texts.empty()) return;
        title(heading);
        for (const Message& text : texts) paragraph("  - ", text.english());
    }

    void head(const std::string& heading) {
        console_.out << console_.bold("Quote: " + heading) << '\n';
        if (!job_.address.empty()) paragraph("", printable(job_.address));
        paragraph("", "Made on " + date_text(quote_.date) + ", holds until " + date_text(quote_.valid_until) +
                          ". Prices: " + settings_.prices.name + ".");
        if (!terms_.warning.empty()) paragraph("Warning: ", terms_.warning.english());
    }

    void describe(std::size_t i) {
        const QuoteOption& option = *offered_[i];
        title("Option " + std::to_string(i + 1) + (option.everything ? ": everything that can be closed" : ""));
        std::vector<std::string> kept;
        for (const std::size_t animal : option.against) kept.push_back(quote_.animals[animal].name);
        std::string keeps = listed(kept);
        if (option.everything) keeps += ", and all else that needs " + width_text(option.nothing_from) + " or more";
        paragraph("  keeps out     ", keeps);
        std::string lead = "  can get in    ";
        for (const auto& [where, who] : still_open(option)) {
            paragraph(lead, listed(who) + ": " + where);
            lead = "                ";
        }
        if (option.stays_open.empty())
            paragraph("  can get in    ", "none of the animals of this job, as far as the survey goes");
        for (const Message& animal : who_stays_inside(job_, option.plan)) paragraph("  inside        ", animal.english() + ".");
        if (option.plan.steps.empty()) {
            paragraph("  work          ", "none: nothing has to be closed against these animals, and nothing is charged");
            return;
        }
        std::string work = counted(option.plan.steps.size(), "gap", "gaps");
        if (option.sum.minutes > 0) work += ", about " + time_text(option.sum.minutes) + " of work";
        work += ", " + counted(option.sum.visits, "visit", "visits");
        if (option.unmeasured > 0)
            work += "; " + std::to_string(option.unmeasured) + " of " + counted(option.plan.steps.size(), "gap", "gaps") +
                    (option.unmeasured == 1 ? " was" : " were") + " not said to be measured";
        if (option.guessed > 0) work += ", and the size of " + std::to_string(option.guessed) + " is a guess";
        paragraph("  work          ", work);
        paragraph("  total         ", amount_text(option.sum.total));
    }

    using OpenTo = std::pair<std::string, std::vector<std::string>>;  ///< a way and the animals that have it

    /// Ways, each with the animals that have it, in the order of these.
    [[nodiscard]] std::vector<OpenTo> still_open(const QuoteOption& option) const {
        std::vector<OpenTo> ways;
        for (const OpenWay& way : option.stays_open) {
            const std::string where = "by a way " + width_text(way.pinch) + " wide at its narrowest [" +
                                      survey_[way.pinch_gap].label() + "] into " + survey_[way.path.to()].label();
            auto found = std::find_if(ways.begin(), ways.end(), [&](const OpenTo& other) { return other.first == where; });
            if (found == ways.end()) found = ways.insert(ways.end(), {where, {}});
            found->second.push_back(quote_.animals[way.pest].name);
        }
        return ways;
    }

    void not_offered() {
        for (const QuoteOption& option : quote_.options) {
            if (option.plan.feasible) continue;
            title("Not offered: " + option.name.english());
            const OpenWay& way = option.stays_open.front();
            paragraph("  ", "No price: a way in that must not or cannot be closed stays open, " + width_text(way.pinch) +
                                " wide at its narrowest, into " + survey_[way.path.to()].label() + ".");
            for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
                paragraph("  - ", survey_[way.path.gaps[i]].label() + ": " + option.plan.open_way_reasons[i].english());
        }
    }

    // ------------------------------------------------------------ Prices

    struct Row {
        std::string label;
        std::vector<Money> amounts;  ///< of the options offered
        bool sum = false;
    };

    [[nodiscard]] std::string label_of(Charge charge, const std::vector<Money>& amounts) const {
        const auto credit = [](Money money) { return money.cents < 0; };
        switch (charge) {
            case Charge::closings: return "Closings, labor and material";
            case Charge::warranty: return "Done again under warranty";
            case Charge::packs:
                if (std::none_of(amounts.begin(), amounts.end(), credit)) return "Whole packs, beyond what is used";
                if (std::any_of(amounts.begin(), amounts.end(), [](Money money) { return money.cents > 0; }))
                    return "Whole packs, or cases instead";
                return "Cases instead of single packs";
            case Charge::departures: return "Devices and traps";
            case Charge::visits: return "Further visits";
            case Charge::least: return "Up to the least charge of a visit";
            case Charge::overhead: return "Overhead, " + percent_text(settings_.prices.overhead);
            case Charge::tax: break;
        }
        return "Tax, " + percent_text(settings_.prices.tax);
    }

    [[nodiscard]] std::vector<Row> rows() const {
        std::vector<Row> rows;
        for (const Charge charge : {Charge::closings, Charge::warranty, Charge::packs, Charge::departures, Charge::visits,
                                    Charge::least, Charge::overhead, Charge::tax}) {
            Row row;
            for (const QuoteOption* option : offered_) row.amounts.push_back(option->sum.of(charge));
            row.label = label_of(charge, row.amounts);
            const bool charged = std::any_of(row.amounts.begin(), row.amounts.end(), [](Money m) { return m != Money{}; });
            if (charged || charge == Charge::closings) rows.push_back(std::move(row));
        }
        Row total{"Total", {}, true}, deposit{"Due with the order, " + percent_text(settings_.prices.deposit), {}, false},
            balance{"Due when the work is done", {}, false};
        for (const QuoteOption* option : offered_) {
            total.amounts.push_back(option->sum.total);
            deposit.amounts.push_back(option->sum.deposit);
            balance.amounts.push_back(option->sum.balance);
        }
        for (Row* row : {&total, &deposit, &balance}) rows.push_back(std::move(*row));
        return rows;
    }

    /// Options side by side, as many as a line holds.
    void prices() {
        title("What it costs");
        const std::vector<Row> all = rows();
        std::size_t label = 0, cell = letters("Option 1");
        for (const Row& row : all) {
            label = std::max(label, letters(row.label));
            for (const Money money : row.amounts) cell = std::max(cell, letters(amount_text(money)));
        }
        cell += 3;
        const std::size_t room = console_.columns > label + 2 ? (console_.columns - label - 2) / cell : 1;
        const std::size_t at_once = std::max<std::size_t>(1, room);
        for (std::size_t from = 0; from < offered_.size(); from += at_once) {
            if (from > 0) console_.out << '\n';
            price_block(all, from, std::min(offered_.size(), from + at_once), label, cell);
        }
    }

    void price_block(const std::vector<Row>& rows, std::size_t from, std::size_t to, std::size_t label, std::size_t cell) {
        const auto right = [&](const std::string& text) { return std::string(cell - std::min(cell, letters(text)), ' ') + text; };
        std::string head = std::string(label + 2, ' ');
        for (std::size_t i = from; i < to; ++i) head += right("Option " + std::to_string(i + 1));
        console_.out << head << '\n';
        for (const Row& row : rows) {
            if (row.sum) console_.out << std::string(label + 2, ' ') << std::string(cell * (to - from), '-') << '\n';
            std::string line = "  " + padded(row.label, label);
            for (std::size_t i = from; i < to; ++i) line += right(amount_text(row.amounts[i]));
            console_.out << (row.sum ? console_.bold(line) : line) << '\n';
        }
    }

    // ------------------------------------------------------------ Closings

    static constexpr std::size_t of_treatment = 34, least_aside = 66;  ///< letters

    struct Closing {
        WorkZone zone = WorkZone::outside_low;
        std::string gap, treatment;
        std::string marks;  ///< one letter an option
    };

    /// Every gap with every treatment that some option has for it, in working order.
    [[nodiscard]] std::vector<Closing> all_closings() const {
        std::map<GapIndex, std::vector<Closing>> by_gap;
        for (std::size_t i = 0; i < offered_.size(); ++i) {
            for (const PlanStep& step : offered_[i]->plan.steps) {
                std::vector<Closing>& of_gap = by_gap[step.gap];
                const std::string treatment = treatment_name(step.option.treatment).english();
                auto found = std::find_if(of_gap.begin(), of_gap.end(),
                                          [&](const Closing& other) { return other.treatment == treatment; });
                if (found == of_gap.end()) {
                    const Gap& gap = survey_[step.gap];
                    const std::string pieces = gap.count > 1 ? ", " + std::to_string(gap.count) + " pieces" : "";
                    const std::string none(offered_.size(), '-');
                    found = of_gap.insert(of_gap.end(), {step.stop.zone, gap.label() + pieces, treatment, none});
                }
                found->marks[i] = step.waits ? 'w' : 'x';
            }
        }
        std::vector<GapIndex> gaps;
        for (const auto& [gap, treatments] : by_gap) gaps.push_back(gap);
        std::vector<Closing> closings;
        for (const GapIndex gap : in_working_order(survey_, gaps)) {
            for (Closing& closing : by_gap[gap]) closings.push_back(std::move(closing));
        }
        return closings;
    }

    void closings() {
        const std::vector<Closing> all = all_closings();
        if (all.empty()) return;
        title("What is closed, by option");
        std::string numbers;
        for (std::size_t i = 0; i < offered_.size(); ++i) numbers += "  " + std::to_string(i + 1);
        std::size_t longest = 0;
        for (const Closing& closing : all) longest = std::max(longest, letters(closing.gap));
        const std::size_t room = console_.columns - numbers.size() - 4;
        const bool aside = room >= least_aside;
        const std::size_t width = aside ? std::min(room, longest + of_treatment + 4) : room;
        std::optional<WorkZone> zone;
        for (const Closing& closing : all) {
            if (zone != closing.zone) console_.out << "  " << padded(zone_words(closing.zone), width + 2) << numbers << '\n';
            zone = closing.zone;
            print_closing(closing, width, aside);
        }
        const auto lacks = [](const Closing& closing) { return closing.marks.find('-') != std::string::npos; };
        if (std::any_of(all.begin(), all.end(), lacks))
            paragraph("  ", "-: not in that option, which closes the gap with something else or needs no closing there");
        const auto waits = [](const Closing& closing) { return closing.marks.find('w') != std::string::npos; };
        if (std::any_of(all.begin(), all.end(), waits))
            paragraph("  ", "w: closed on a later visit, when the animals inside are gone");
    }

    /// The gap and what is done there, side by side or in one text.
    void print_closing(const Closing& closing, std::size_t width, bool aside) {
        const std::size_t of_gap = aside ? width - of_treatment - 4 : width - 2;
        const std::vector<std::string> gap = wrapped(aside ? closing.gap : closing.gap + ": " + closing.treatment, of_gap);
        const std::vector<std::string> treatment = aside ? wrapped(closing.treatment, of_treatment) : std::vector<std::string>();
        for (std::size_t i = 0; i < std::max(gap.size(), treatment.size()); ++i) {
            std::string line = i < gap.size() ? (i > 0 ? "  " : "") + gap[i] : "";
            if (i < treatment.size()) line = padded(line, width - of_treatment) + treatment[i];
            if (i == 0) {
                line = padded(line, width);
                for (const char mark : closing.marks) line += std::string("  ") + mark;
            }
            console_.out << "    " << line << '\n';
        }
    }

    // ------------------------------------------------------------ Terms

    void warranty() {
        title("Warranty");
        const Warranty& warranty = terms_.warranty;
        if (warranty.months == 0) {
            paragraph("  ", "None.");
            return;
        }
        paragraph("  ", warranty.covers.english() + ". " + warranty.callback.english() + '.');
        std::string text;
        for (const Message& reason : warranty.void_if) text += (text.empty() ? "" : "; ") + reason.english();
        paragraph("  ", "It ends where " + text + '.');
    }

    void signatures() {
        title("Order");
        std::string boxes = "Option ordered:";
        for (std::size_t i = 0; i < offered_.size(); ++i) boxes += "   [ ] " + std::to_string(i + 1);
        console_.out << "  " << boxes << '\n';
        const std::size_t line = std::min<std::size_t>(40, console_.columns - 36);
        for (const char* who : {"Customer", "Company"}) {
            console_.out << "\n  " << padded(who, 10) << std::string(line, '_') << "  Date " << std::string(14, '_') << '\n';
        }
    }

    const Job& job_;
    const Survey& survey_;
    const QuoteSettings& settings_;
    const Quote& quote_;
    const QuoteTerms& terms_;
    const Console& console_;
    std::vector<const QuoteOption*> offered_;
};

}  // namespace

void print_quote_table(const Job& job, const std::string& heading, const QuoteSettings& settings, const Quote& quote,
                       const QuoteTerms& terms, const Console& console) {
    QuoteTable(job, settings, quote, terms, console).print(heading);
}

}  // namespace seamward
