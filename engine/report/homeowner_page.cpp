// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <numeric>

#include "report/compare.h"
#include "report/house_figure.h"
#include "report/page_parts.h"
#include "report/pages.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

class Summary {
public:
    explicit Summary(PageWriter& page) : page_(page), facts_(page.facts) {
        for (const QuoteOption& option : facts_.quote.options) {
            if (option.plan.feasible && !option.everything) offered_.push_back(&option);
        }
        for (const Space& space : page.survey().spaces) rooms_ += space.is_living() ? 1 : 0;
    }

    void write() {
        page_.begin_section("summary", "In short");
        for (const Message& sentence : {found(), cost(), third()}) page_.paragraph(sentence, "lead");
        figures();
        page_.end_section();
    }

private:
    [[nodiscard]] Message all_animals() const {
        std::vector<std::size_t> all(facts_.animals.size());
        std::iota(all.begin(), all.end(), 0U);
        return page_.animals_part(facts_.animals, all);
    }

    [[nodiscard]] bool complete() const {
        return !offered_.empty() && offered_.back()->against.size() == facts_.animals.size() && facts_.plan.feasible;
    }

    [[nodiscard]] Message found() const {
        if (rooms_ == 0) return "The survey names no room where people live, so that no way in can be told.";
        const Entries& entries = facts_.entries;
        if (entries.rooms == 0 && facts_.animals.empty())
            return "As far as this survey goes, no gap leads from outside into a room.";
        if (entries.rooms == 0)
            return message("As far as this survey goes, none of these animals gets into a room: {}.", {all_animals()});
        const Message ways = counted_message(entries.gaps.size(), "1 opening", "{} openings");
        const Message open = as_it_stands(entries.rooms), rooms = as_it_stands(rooms_);
        if (facts_.animals.empty())
            return message(
                "Through {} on the outside, ways lead into {} of {} rooms; no animal was named that is to be kept out.",
                {ways, open, rooms});
        return message("Through {} on the outside, animals can get into {} of {} rooms: {}.",
                       {ways, open, rooms, page_.animals_part(facts_.animals, entries.animals)});
    }

    [[nodiscard]] Message cost() const {
        if (facts_.animals.empty()) return "So nothing is planned and nothing is priced here.";
        if (!complete()) return infeasible();
        const QuoteOption& all = *offered_.back();
        if (all.plan.steps.empty()) return "Nothing has to be closed against them, and nothing is charged.";
        return message("To keep all of them out takes {}: {} in all, {} and about {} of work.",
                       {counted_message(all.plan.steps.size(), "1 closing", "{} closings"), page_.money_part(all.sum.total),
                        counted_message(all.sum.visits, "1 visit", "{} visits"), page_.time_part(all.sum.minutes)});
    }

    [[nodiscard]] Message infeasible() const {
        if (!facts_.plan.open_way) return "Not all of them can be kept out.";
        const OpenWay& way = *facts_.plan.open_way;
        return message(
            "Not all of them can be kept out: {} has a way in that must not or cannot be closed, {} wide at its narrowest.",
            {as_named(facts_.animals[way.pest].name), page_.width_part(way.pinch)});
    }

    [[nodiscard]] Message third() const {
        const auto cheaper = std::find_if(offered_.begin(), offered_.end(),
                                          [&](const QuoteOption* option) { return !option->plan.steps.empty(); });
        if (cheaper != offered_.end() && (!complete() || *cheaper != offered_.back()))
            return message("To keep out {} alone takes {} and about {} of work.",
                           {page_.animals_part(facts_.quote.animals, (*cheaper)->against),
                            page_.money_part((*cheaper)->sum.total), page_.time_part((*cheaper)->sum.minutes)});
        return "Openings that the house needs, such as drains and vents, stay open; below it says which, and why.";
    }

    /// The same figures, to be seen at a glance.
    void figures() {
        std::vector<std::pair<Message, Message>> rows;
        rows.push_back({"openings that lead in", as_it_stands(facts_.entries.gaps.size())});
        rows.push_back(
            {"rooms that they lead into", message("{} of {}", {as_it_stands(facts_.entries.rooms), as_it_stands(rooms_)})});
        if (complete()) {
            rows.push_back({"closings", as_it_stands(offered_.back()->plan.steps.size())});
            rows.push_back({"in all", page_.money_part(offered_.back()->sum.total)});
        }
        page_.terms(rows, "figures");
    }

    PageWriter& page_;
    const ReportFacts& facts_;
    std::vector<const QuoteOption*> offered_;
    std::size_t rooms_ = 0;
};

}  // namespace

void homeowner_page(PageWriter& page) {
    Summary(page).write();
    house_figure(page);
    comparison_part(page);
    rooms_part(page);
    ways_part(page);
    doubts_part(page);
    options_part(page);
    closings_part(page);
    drawings_part(page);
    stays_open_part(page);
    photos_part(page);
    animals_inside_part(page);
    before_part(page);
    cautions_part(page);
    promises_part(page);
    upkeep_part(page);
    warranty_part(page);
    checks_part(page);
    approval_part(page);
    sources_part(page);
}

}  // namespace seamward
