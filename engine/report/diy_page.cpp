// SPDX-License-Identifier: GPL-3.0-or-later
#include <numeric>

#include "catalog/shipped.h"
#include "materials/treatment_name.h"
#include "plan/owner_part.h"
#include "plan/to_bring.h"
#include "report/page_parts.h"
#include "report/pages.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

class DiyPage {
public:
    explicit DiyPage(PageWriter& page)
        : page_(page),
          html_(page.html),
          plan_(page.facts.plan),
          prices_(page.facts.settings.planning.prices),
          part_(owner_part(plan_, prices_)) {}

    void write() {
        summary();
        if (part_.steps > 0) {
            first();
            to_buy();
            yours();
        }
        if (part_.hired_steps > 0) hired();
        drawings_part(page_);
        stays_open_part(page_);
        animals_inside_part(page_);
        upkeep_part(page_);
        promises();
        checks_part(page_);
        sources_part(page_);
    }

private:
    void summary() {
        page_.begin_section("summary", "In short");
        if (page_.facts.animals.empty()) {
            page_.paragraph("This job names no animals to keep out. So there is no plan, and nothing to do for you.", "lead");
        } else if (!plan_.feasible) {
            page_.paragraph(
                "There is no plan against all of these animals, for a way in must not or cannot be closed. So no list is made: "
                "closing a part "
                "of the gaps would look safe and not be.",
                "warning");
            if (plan_.open_way) open_way(*plan_.open_way);
        } else if (plan_.steps.empty()) {
            page_.paragraph("As far as this survey goes, none of these animals has a way in. There is nothing to close.", "lead");
        } else {
            steps_in_short();
        }
        page_.end_section();
    }

    void open_way(const OpenWay& way) {
        std::vector<Message> reasons;
        for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
            reasons.push_back(message("{}: {}", {page_.survey()[way.path.gaps[i]].called(), Message(plan_.open_way_reasons[i])}));
        page_.list(reasons);
    }

    void steps_in_short() {
        std::vector<std::size_t> all(page_.facts.animals.size());
        std::iota(all.begin(), all.end(), 0U);
        page_.paragraph(message("To keep out {} takes {}.", {page_.animals_part(page_.facts.animals, all),
                                                             counted_message(plan_.steps.size(), "1 closing", "{} closings")}),
                        "lead");
        if (part_.steps == 0)
            page_.paragraph("None of these steps is safe from the ground without training: hire for all of them.", "lead");
        else
            page_.paragraph(message("You can do {} of them yourself, all from the ground: material for {} in whole packs, and "
                                    "about {} of work for somebody "
                                    "who does it often.",
                                    {as_it_stands(part_.steps), page_.money_part(part_.to_buy), page_.time_part(part_.minutes)}),
                            "lead");
        if (part_.hired_steps > 0)
            page_.paragraph(
                message("For hire: {}, {} before what is added for coming, overhead and tax.",
                        {counted_message(part_.hired_steps, "1 closing", "{} closings"), page_.money_part(part_.hired)}),
                "lead");
        if (part_.hired_steps > 0 && part_.steps > 0)
            page_.paragraph("The animals are kept out only when both parts are done.", "lead");
        if (!Message(page_.facts.terms.warning).empty()) page_.paragraph(page_.facts.terms.warning, "warning");
    }

    void first() {
        std::vector<Message> items;
        if (!plan_.last_checks.empty())
            items.emplace_back(
                "Fuel is burned in this house: before you begin, arrange for a licensed person to test the appliances once the "
                "gaps are closed.");
        items.emplace_back(
            "Read the cautions of a step before you begin it. Where something is not as described here, stop and ask.");
        items.emplace_back("Close nothing that is listed below as staying open, and no gap behind which an animal lives.");
        for (const auto& text : plan_.before) items.emplace_back(text);
        page_.begin_section("before", "Before you begin");
        page_.list(items);
        page_.end_section();
    }

    void to_buy() {
        page_.begin_section("material", "What to buy and what to have at hand");
        std::vector<std::vector<Message>> rows;
        for (const Purchase& purchase : part_.materials)
            rows.push_back({packs_text(purchase, prices_), page_.money_part(purchase.cost)});
        rows.push_back({"Total", page_.money_part(part_.to_buy)});
        page_.table("Material for your steps, in whole packs", {"Material", "Price"}, rows, "money");
        std::vector<PlanStep> own;
        for (const PlanStep& step : plan_.steps) {
            if (step.owner) own.push_back(step);
        }
        const Kit kit = kit_of(own);
        page_.titled_list("Tools", {kit.tools.begin(), kit.tools.end()});
        page_.titled_list("To wear", {kit.protection.begin(), kit.protection.end()});
        page_.end_section();
    }

    void yours() {
        page_.begin_section("work", "Your steps");
        page_.paragraph(
            "The numbers are those of the whole plan, as in the drawings; where one is missing, that step is for hire.");
        html_.begin("ol", {{"id", "closings"}, {"class", "numbered"}});
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            if (plan_.steps[i].owner) step(i + 1);
        }
        html_.end();
        page_.end_section();
    }

    void step(std::size_t number) {
        const PlanStep& step = plan_.steps[number - 1];
        begin_closing(page_, number);
        page_.paragraph(zone_words(step.stop.zone), "where");
        step_cautions(page_, step);
        std::vector<std::pair<Message, Message>> rows{{"With", treatment_name(step.option.treatment)},
                                                      {"Width", widths_of(page_, step)}};
        if (step.option.minutes > 0) rows.push_back({"Time", page_.time_part(step.option.minutes)});
        page_.terms(rows, "brief");
        html_.begin("ol", {{"class", "steps"}});
        for (const auto& text : step.option.steps) html_.element("li", page_.say(Message(text)));
        html_.end();
        html_.begin("p", {{"class", "done"}})
            .element("span", "", {{"class", "box"}, {"aria-hidden", "true"}})
            .text(page_.say("done"))
            .end();
        html_.end();
    }

    void hired() {
        page_.begin_section("for-hire", "For hire, and why");
        page_.paragraph("Leave these to somebody who does this for a living.");
        html_.begin("ol", {{"class", "numbered"}, {"id", part_.steps > 0 ? "hired" : "closings"}});
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            const PlanStep& step = plan_.steps[i];
            if (step.owner) continue;
            begin_closing(page_, i + 1);
            page_.terms({{"Why not you", message("{}.", {why_hired(step)})},
                         {"With", treatment_name(step.option.treatment)},
                         {"Width", widths_of(page_, step)},
                         {"Price", page_.money_part(step.option.cost)}},
                        "brief");
            step_cautions(page_, step);
            html_.end();
        }
        html_.end();
        page_.end_section();
    }

    /// The first that holds, gravest first.
    [[nodiscard]] static Message why_hired(const PlanStep& step) {
        if (step.waits) return "an animal lives behind it: it is closed only when that is gone";
        if (step.stop.trade) return "it is at gas, electricity, a flue or the air of an appliance: that takes a trade";
        switch (step.stop.zone) {
            case WorkZone::outside_high: return "it is worked on from a ladder";
            case WorkZone::roof: return "it is on the roof";
            case WorkZone::crawl_space: return "it is in the crawl space";
            case WorkZone::hidden: return "it is in the attic or another hidden space";
            case WorkZone::outside_low:
            case WorkZone::attached:
            case WorkZone::rooms: break;
        }
        const Treatment* treatment = shipped_treatments().find(step.option.treatment);
        if (treatment == nullptr) return "its price is that of a trade";
        if (!treatment->owner) return "this treatment takes training";
        return "it is at the ceiling or above reach, or its place is not known";
    }

    void promises() {
        page_.begin_section("promises", "What this cannot promise");
        page_.list({"It deals with the gaps that were surveyed. One that nobody saw may still let animals in.",
                    "Houses settle, sealant ages, animals gnaw: new gaps come later."});
        page_.end_section();
    }

    PageWriter& page_;
    Html& html_;
    const Plan& plan_;
    const PriceBook& prices_;
    OwnerPart part_;
};

}  // namespace

void diy_page(PageWriter& page) { DiyPage(page).write(); }

}  // namespace seamward
