// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/measure_text.h"
#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "materials/treatment_name.h"
#include "report/page_parts.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

/// The options, counted from 1 among those offered, that do the same at the same gap.
std::vector<Message> options_with(const PageWriter& page, const PlanStep& step) {
    std::vector<Message> numbers;
    std::size_t number = 0;
    for (const QuoteOption& option : page.facts.quote.options) {
        if (!option.plan.feasible) continue;
        ++number;
        const std::vector<PlanStep>& steps = option.plan.steps;
        const bool there = std::any_of(steps.begin(), steps.end(), [&](const PlanStep& other) {
            return other.gap == step.gap && other.option.treatment == step.option.treatment;
        });
        if (there) numbers.push_back(as_it_stands(number));
    }
    return numbers;
}

class ClosingItem {
public:
    ClosingItem(PageWriter& page, std::size_t number) : page_(page), step_(page.facts.plan.steps[number - 1]), number_(number) {}

    void write() {
        begin_closing(page_, number_);
        page_.paragraph(step_.waits ? message("{}; on a later visit, when the animals inside are gone",
                                              {Message(zone_words(step_.stop.zone))})
                                    : Message(zone_words(step_.stop.zone)),
                        "where");
        std::vector<std::pair<Message, Message>> rows;
        rows.push_back({"With", treatment_name(step_.option.treatment)});
        rows.push_back({"Width", widths_of(page_, step_)});
        rows.push_back({"Price", price()});
        if (const std::vector<Message> options = options_with(page_, step_); !options.empty())
            rows.push_back({"In option", listed_message(options)});
        page_.terms(rows, "brief");
        page_.photo(step_.gap);
        step_cautions(page_, step_);
        page_.html.end();
    }

private:
    [[nodiscard]] Message price() const {
        const Message money = page_.money_part(step_.option.cost);
        return step_.option.minutes > 0 ? message("{}, {} of work", {money, page_.time_part(step_.option.minutes)}) : money;
    }

    PageWriter& page_;
    const PlanStep& step_;
    std::size_t number_;
};

/// What is done in the same way is told once, with the numbers of its closings.
void how_part(PageWriter& page) {
    struct Way {
        std::string treatment;
        std::vector<Message> steps;
        std::vector<std::size_t> numbers;
    };
    std::vector<Way> ways;
    const std::vector<PlanStep>& all = page.facts.plan.steps;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const Option& option = all[i].option;
        if (option.steps.empty()) continue;
        auto found = std::find_if(ways.begin(), ways.end(),
                                  [&](const Way& way) { return way.treatment == option.treatment && way.steps == option.steps; });
        if (found == ways.end()) found = ways.insert(ways.end(), {option.treatment, option.steps, {}});
        found->numbers.push_back(i + 1);
    }
    if (ways.empty()) return;
    page.heading(3, "How it is done");
    for (const Way& way : ways) {
        page.html.begin("details", {{"class", "how-to"}});
        page.html.element("summary", page.say(way.numbers.size() == 1 ? "{}: closing {}" : "{}: closings {}",
                                              {treatment_name(way.treatment), ranges_part(way.numbers)}));
        page.html.begin("ol");
        for (const Message& step : way.steps) page.html.element("li", page.say(step));
        page.html.end().end();
    }
}

Message intro(const PageWriter& page) {
    const Plan& plan = page.facts.plan;
    const Message names = page.animals_part(page.facts.animals, [&] {
        std::vector<std::size_t> all;
        for (std::size_t i = 0; i < page.facts.animals.size(); ++i) all.push_back(i);
        return all;
    }());
    return message(
        "To keep out {}: {}, {} of labor and material before what is added for coming, overhead and tax. They stand in the order "
        "of the "
        "work. The numbers are the same in the picture, in the drawings and here.",
        {names, counted_message(plan.steps.size(), "1 closing", "{} closings"), page.money_part(plan.cost)});
}

}  // namespace

Message widths_of(const PageWriter& page, const PlanStep& step) {
    const Gap& gap = page.survey()[step.gap];
    Message now = page.width_part(clear_width(gap.shape));
    const double most = counted_width(gap, page.facts.settings.planning.sizing);
    if (const Message up_to = page.width_part(most); up_to != now) now = message("{}, perhaps up to {}", {now, up_to});
    if (gap.evidence.how == Evidence::How::assumed) now = message("{}, not measured", {now});
    if (step.option.opening > 0)
        return message("Now {}. Afterwards a mesh with openings of {}.", {now, page.width_part(step.option.opening)});
    return message("Now {}. Afterwards shut.", {now});
}

void step_cautions(PageWriter& page, const PlanStep& step) {
    std::vector<Message> told = step.cautions();
    // A price that the survey states without a method brings no cautions with it: what the gap is at has its own all the same.
    const Feature* feature = shipped_features().find(page.survey()[step.gap].feature);
    if (feature != nullptr && !feature->caution.text.empty()) {
        const Message own =
            message("{} ({})", {Message(feature->caution.text), cited(shipped_features().sources, feature->caution.source)});
        if (std::find(told.begin(), told.end(), own) == told.end()) told.insert(told.begin(), own);
    }
    std::vector<Message> cautions;
    for (const Message& caution : told) cautions.push_back(message("Caution: {}", {caution}));
    page.list(cautions, "cautions");
}

void begin_closing(PageWriter& page, std::size_t number) {
    const PlanStep& step = page.facts.plan.steps[number - 1];
    const std::string text = std::to_string(number);
    page.html.begin("li", {{"id", "closing-" + text}, {"value", text}, {"data-gap", std::to_string(step.gap.value)}});
    page.number(number);
    page.heading(3, page.gap_part(step.gap));
}

void closings_part(PageWriter& page) {
    const Plan& plan = page.facts.plan;
    if (page.facts.animals.empty()) return;
    page.begin_section("work", "What is closed, and how");
    if (!plan.feasible) {
        const OpenWay& way = *plan.open_way;
        page.paragraph(message("There is no plan against all of these animals: {} gets in by a way that must not or cannot be "
                               "closed, {} wide at its "
                               "narrowest.",
                               {as_named(page.facts.animals[way.pest].name), page.width_part(way.pinch)}),
                       "warning");
        std::vector<Message> reasons;
        for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
            reasons.push_back(message("{}: {}", {page.survey()[way.path.gaps[i]].called(), Message(plan.open_way_reasons[i])}));
        page.list(reasons);
    } else if (plan.steps.empty()) {
        page.paragraph("Nothing has to be closed: as far as this survey goes, none of these animals has a way in.", "good");
    } else {
        page.paragraph(intro(page));
        page.html.begin("ol", {{"id", "closings"}, {"class", "numbered"}});
        for (std::size_t i = 0; i < plan.steps.size(); ++i) ClosingItem(page, i + 1).write();
        page.html.end();
        how_part(page);
    }
    page.end_section();
}

}  // namespace seamward
