// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/measure_text.h"
#include "catalog/passage.h"
#include "materials/treatment_name.h"
#include "report/page_parts.h"

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
        if (!step_.option.steps.empty()) {
            page_.html.begin("details");
            page_.html.element("summary", page_.say("How it is done"));
            page_.html.begin("ol");
            for (const auto& step : step_.option.steps) page_.html.element("li", page_.say(Message(step)));
            page_.html.end().end();
        }
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

Message intro(const PageWriter& page) {
    const Plan& plan = page.facts.plan;
    const Message names = page.animals_part(page.facts.animals, [&] {
        std::vector<std::size_t> all;
        for (std::size_t i = 0; i < page.facts.animals.size(); ++i) all.push_back(i);
        return all;
    }());
    return message(
        "To keep out {}: {}, in the order of the work. The numbers are the same in the picture, in the drawings and here. Prices "
        "are labor "
        "and material, before what is added for coming, overhead and tax.",
        {names, counted_message(plan.steps.size(), "1 closing", "{} closings")});
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
    std::vector<Message> cautions;
    for (const auto& caution : step.cautions()) cautions.push_back(message("Caution: {}", {Message(caution)}));
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
    }
    page.end_section();
}

}  // namespace seamward
