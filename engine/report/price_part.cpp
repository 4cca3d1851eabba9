// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <map>

#include "base/phrases.h"
#include "materials/treatment_name.h"
#include "report/page_parts.h"
#include "report/price_ladder.h"

namespace seamward {

namespace {

std::vector<const QuoteOption*> offered(const PageWriter& page) {
    std::vector<const QuoteOption*> all;
    for (const QuoteOption& option : page.facts.quote.options) {
        if (option.plan.feasible) all.push_back(&option);
    }
    return all;
}

class Options {
public:
    explicit Options(PageWriter& page)
        : page_(page),
          survey_(page.survey()),
          quote_(page.facts.quote),
          prices_(page.facts.settings.planning.prices),
          offered_(offered(page)) {}

    void write() {
        page_.paragraph(message("Made on {}, holds until {}. Prices: {}.",
                                {page_.date_part(quote_.date), page_.date_part(quote_.valid_until), as_named(prices_.name)}));
        if (!Message(page_.facts.terms.warning).empty()) page_.paragraph(page_.facts.terms.warning, "warning");
        page_.html.begin("div", {{"class", "options"}});
        for (std::size_t i = 0; i < offered_.size(); ++i) card(i);
        page_.html.end();
        for (const QuoteOption& option : quote_.options) {
            if (!option.plan.feasible) not_offered(option);
        }
        if (offered_.empty()) return;
        prices();
        closings();
    }

private:
    void card(std::size_t i) {
        const QuoteOption& option = *offered_[i];
        page_.html.begin("article", {{"class", "option"}, {"id", "option-" + std::to_string(i + 1)}});
        page_.heading(3, option.everything ? message("Option {}: everything that can be closed", {as_it_stands(i + 1)})
                                           : message("Option {}", {as_it_stands(i + 1)}));
        page_.paragraph(page_.money_part(option.sum.total), "price");
        std::vector<std::pair<Message, Message>> rows;
        Message keeps = page_.animals_part(quote_.animals, option.against);
        if (option.everything)
            keeps = message("{}, and all else that needs {} or more", {keeps, page_.width_part(option.nothing_from)});
        rows.push_back({"Keeps out", keeps});
        for (const Message& open : still_open(option)) rows.push_back({"Still gets in", open});
        if (option.stays_open.empty())
            rows.push_back({"Still gets in", "none of the animals of this job, as far as the survey goes"});
        for (const auto& animal : who_stays_inside(page_.job(), option.plan))
            rows.push_back({"Lives inside", message("{}.", {Message(animal)})});
        rows.push_back({"Work", work(option)});
        if (option.unmeasured > 0) rows.push_back({"Not certain", unmeasured(option)});
        page_.terms(rows, "brief");
        page_.html.end();
    }

    [[nodiscard]] Message work(const QuoteOption& option) const {
        if (option.plan.steps.empty()) return "none: nothing has to be closed against these animals, and nothing is charged";
        Message text = counted_message(option.plan.steps.size(), "1 closing", "{} closings");
        if (option.sum.minutes > 0) text = message("{}, about {} of work", {text, page_.time_part(option.sum.minutes)});
        return message("{}, {}", {text, counted_message(option.sum.visits, "1 visit", "{} visits")});
    }

    [[nodiscard]] static Message unmeasured(const QuoteOption& option) {
        const Message text = message("{} of {} gaps are not said to be measured",
                                     {as_it_stands(option.unmeasured), as_it_stands(option.plan.steps.size())});
        return option.guessed > 0 ? message("{}, and the sizes of {} are guesses", {text, as_it_stands(option.guessed)}) : text;
    }

    /// Ways, each with the animals that have it, in the order of these.
    [[nodiscard]] std::vector<Message> still_open(const QuoteOption& option) const {
        std::vector<std::pair<Message, std::vector<std::size_t>>> ways;
        for (const OpenWay& way : option.stays_open) {
            const Message where =
                message("by a way {} wide at its narrowest ({}) into {}",
                        {page_.width_part(way.pinch), survey_[way.pinch_gap].called(), survey_[way.path.to()].called()});
            auto found = std::find_if(ways.begin(), ways.end(), [&](const auto& other) { return other.first == where; });
            if (found == ways.end()) found = ways.insert(ways.end(), {where, {}});
            found->second.push_back(way.pest);
        }
        std::vector<Message> told;
        for (const auto& [where, who] : ways) told.push_back(message("{}, {}", {page_.animals_part(quote_.animals, who), where}));
        return told;
    }

    void not_offered(const QuoteOption& option) {
        const OpenWay& way = option.stays_open.front();
        page_.html.begin("article", {{"class", "not-offered"}});
        page_.heading(3, message("Not offered: to keep out {}", {page_.animals_part(quote_.animals, option.against)}));
        page_.paragraph(message(
            "There is no price, for a way in that must not or cannot be closed stays open: {} wide at its narrowest, into {}.",
            {page_.width_part(way.pinch), survey_[way.path.to()].called()}));
        std::vector<Message> reasons;
        for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
            reasons.push_back(message("{}: {}", {survey_[way.path.gaps[i]].called(), Message(option.plan.open_way_reasons[i])}));
        page_.list(reasons);
        page_.html.end();
    }

    // ------------------------------------------------------------ Prices

    [[nodiscard]] Message label_of(Charge charge, const std::vector<Money>& amounts) const {
        const auto credit = [](Money money) { return money.cents < 0; };
        switch (charge) {
            case Charge::closings: return "Closings, labor and material";
            case Charge::warranty: return "Done again under warranty";
            case Charge::packs:
                return std::none_of(amounts.begin(), amounts.end(), credit) ? "Whole packs, beyond what is used"
                                                                            : "Whole packs, or cases instead";
            case Charge::departures: return "Devices and traps";
            case Charge::visits: return "Further visits";
            case Charge::least: return "Up to the least charge of a visit";
            case Charge::overhead: return message("Overhead, {}", {as_it_stands(percent_text(prices_.overhead))});
            case Charge::tax: break;
        }
        return message("Tax, {}", {as_it_stands(percent_text(prices_.tax))});
    }

    [[nodiscard]] std::vector<Message> row(const Message& label, const std::vector<Money>& amounts) const {
        std::vector<Message> cells{label};
        for (const Money amount : amounts) cells.push_back(page_.money_part(amount));
        return cells;
    }

    void prices() {
        std::vector<Message> head{"What for"};
        for (std::size_t i = 0; i < offered_.size(); ++i) head.push_back(message("Option {}", {as_it_stands(i + 1)}));
        std::vector<std::vector<Message>> rows;
        for (const Charge charge : {Charge::closings, Charge::warranty, Charge::packs, Charge::departures, Charge::visits,
                                    Charge::least, Charge::overhead, Charge::tax}) {
            std::vector<Money> amounts;
            for (const QuoteOption* option : offered_) amounts.push_back(option->sum.of(charge));
            const bool charged = std::any_of(amounts.begin(), amounts.end(), [](Money money) { return money != Money{}; });
            if (charged || charge == Charge::closings) rows.push_back(row(label_of(charge, amounts), amounts));
        }
        std::vector<Money> totals, deposits, balances;
        for (const QuoteOption* option : offered_) {
            totals.push_back(option->sum.total);
            deposits.push_back(option->sum.deposit);
            balances.push_back(option->sum.balance);
        }
        rows.push_back(row("Total", totals));
        rows.push_back(row(message("Due with the order, {}", {as_it_stands(percent_text(prices_.deposit))}), deposits));
        rows.push_back(row("Due when the work is done", balances));
        page_.table("What the prices are made of", head, rows, "money");
    }

    // ------------------------------------------------------------ Closings

    struct Row {
        Message treatment;
        std::vector<bool> there, waits;  ///< by option
    };

    [[nodiscard]] std::map<GapIndex, std::vector<Row>> by_gap() const {
        std::map<GapIndex, std::vector<Row>> all;
        for (std::size_t i = 0; i < offered_.size(); ++i) {
            for (const PlanStep& step : offered_[i]->plan.steps) {
                const Message treatment = treatment_name(step.option.treatment);
                std::vector<Row>& rows = all[step.gap];
                auto found =
                    std::find_if(rows.begin(), rows.end(), [&](const Row& other) { return other.treatment == treatment; });
                if (found == rows.end())
                    found = rows.insert(rows.end(),
                                        {treatment, std::vector<bool>(offered_.size()), std::vector<bool>(offered_.size())});
                (step.waits ? found->waits : found->there)[i] = true;
            }
        }
        return all;
    }

    void closings() {
        const std::map<GapIndex, std::vector<Row>> all = by_gap();
        if (all.empty()) return;
        std::vector<GapIndex> gaps;
        for (const auto& [gap, rows] : all) gaps.push_back(gap);
        std::vector<Message> head{"What is closed"};
        for (std::size_t i = 0; i < offered_.size(); ++i) head.push_back(message("Option {}", {as_it_stands(i + 1)}));
        std::vector<std::vector<Message>> cells;
        for (const GapIndex gap : in_working_order(survey_, gaps)) {
            for (const Row& row : all.at(gap)) {
                cells.push_back({message("{}: {}", {page_.gap_part(gap), row.treatment})});
                for (std::size_t i = 0; i < offered_.size(); ++i)
                    cells.back().push_back(row.there[i] ? "yes" : row.waits[i] ? "later" : as_it_stands("–"));
            }
        }
        page_.html.begin("details");
        page_.html.element("summary", page_.say("What each option closes, gap by gap"));
        page_.table("What each option closes", head, cells, "marks");
        page_.paragraph(
            "Where an option has a dash, it closes the gap with something else or needs no closing there. \"Later\" is a later "
            "visit, when "
            "the animals inside are gone.",
            "note");
        page_.html.end();
    }

    PageWriter& page_;
    const Survey& survey_;
    const Quote& quote_;
    const PriceBook& prices_;
    std::vector<const QuoteOption*> offered_;
};

/// An empty box and what it stands for.
void box(PageWriter& page, const Message& text) {
    page.html.begin("li");
    page.html.element("span", "", {{"class", "box"}, {"aria-hidden", "true"}});
    page.html.text(page.say(text)).end();
}

void line_to_sign(PageWriter& page, const Message& who) {
    page.html.begin("div", {{"class", "sign"}});
    for (const Message& what : {who, Message("Signature"), Message("Date")}) page.html.element("p", page.say(what));
    page.html.end();
}

}  // namespace

void options_part(PageWriter& page) {
    page.begin_section("prices", "What it costs, and what you get for it");
    if (page.facts.animals.empty())
        page.paragraph("This job names no animals to keep out. So there is no plan and no price.");
    else if (page.facts.quote.options.empty())
        page.paragraph("There is nothing to offer: none of the animals of this job has a way in that could be priced.");
    else
        Options(page).write();
    if (!page.facts.animals.empty()) price_ladder(page);
    page.end_section();
}

void approval_part(PageWriter& page) {
    const std::vector<const QuoteOption*> all = offered(page);
    if (all.empty()) return;
    page.begin_section("approval", "Your decision");
    page.paragraph("Tick the option that you order. Nothing is done before this page is signed.");
    page.html.begin("ul", {{"class", "boxes"}});
    for (std::size_t i = 0; i < all.size(); ++i)
        box(page, message("Option {}, {}: keeps out {}", {as_it_stands(i + 1), page.money_part(all[i]->sum.total),
                                                          page.animals_part(page.facts.quote.animals, all[i]->against)}));
    box(page, "None of these");
    box(page, "I have read what stays open, what the work does not promise, and the cautions.");
    page.html.end();
    line_to_sign(page, "Name of the customer");
    line_to_sign(page, "For the company");
    page.end_section();
}

}  // namespace seamward
