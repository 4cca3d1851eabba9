// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "catalog/shipped.h"
#include "materials/treatment_name.h"
#include "materials/wrong_closings.h"
#include "plan/to_bring.h"
#include "report/compare.h"
#include "report/page_parts.h"
#include "report/pages.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

class CrewPage {
public:
    explicit CrewPage(PageWriter& page) : page_(page), html_(page.html), plan_(page.facts.plan) {}

    void write() {
        head();
        comparison_part(page_);
        before_part(page_);
        bring();
        open_again();
        stops();
        animals_inside_part(page_);
        stays_open_part(page_);
        checks_part(page_);
        drawings_part(page_);
    }

private:
    void head() {
        const PlanSettings& planning = page_.facts.settings.planning;
        page_.begin_section("work", "The work");
        std::vector<std::pair<Message, Message>> rows{
            {"Day of the work", page_.date_part(planning.date)},
            {"Against", listed_message(names_of(page_.facts.animals))},
            {"Gaps to close", as_it_stands(plan_.steps.size())},
            {"Time on the work", page_.time_part(plan_.minutes)},
        };
        if (plan_.ladder_settings > 0) rows.push_back({"Ladder positions", as_it_stands(plan_.ladder_settings)});
        if (!page_.job().notes.empty()) rows.push_back({"Notes", as_named(page_.job().notes)});
        if (!page_.job().site.notes.empty()) rows.push_back({"About the place", as_named(page_.job().site.notes)});
        if (!page_.job().site.gates.empty()) rows.push_back({"Gates", as_named(page_.job().site.gates)});
        if (!page_.job().site.pets.empty()) rows.push_back({"Pets", as_named(page_.job().site.pets)});
        page_.terms(rows, "brief");
        if (plan_.steps.empty()) page_.paragraph("Nothing has to be closed against these animals.");
        page_.end_section();
    }

    void bring() {
        if (plan_.steps.empty()) return;
        const PriceBook& prices = page_.facts.settings.planning.prices;
        page_.begin_section("bring", "To buy and to load");
        std::vector<Message> packs;
        for (const Purchase& purchase : plan_.materials) packs.push_back(packs_text(purchase, prices));
        for (const Purchase& purchase : packs_for_departures(plan_, prices))
            packs.push_back(message("{}, for the animals that have to leave first", {packs_text(purchase, prices)}));
        page_.heading(3, "Material");
        tick_list(page_, packs);
        const Kit kit = kit_of(plan_.steps);
        kit_list("Tools", kit.tools);
        kit_list("To wear", kit.protection);
        page_.end_section();
    }

    void kit_list(const Message& title, const std::vector<std::string>& things) {
        if (things.empty()) return;
        page_.heading(3, title);
        tick_list(page_, {things.begin(), things.end()});
    }

    void open_again() {
        if (plan_.wrong_closings.empty()) return;
        page_.begin_section("open-again", "Open again first");
        std::vector<Message> items;
        for (const WrongClosing& wrong : plan_.wrong_closings)
            items.push_back(message("{}.", {wrong_closing_text(page_.survey(), wrong)}));
        tick_list(page_, items);
        page_.paragraph("What is opened may let animals in: take these entries out of the job file and make this sheet anew.");
        page_.end_section();
    }

    // ------------------------------------------------------------ Stops

    void stops() {
        if (plan_.steps.empty()) return;
        page_.begin_section("closings", "Stop by stop");
        page_.paragraph("In the order of the walk. Measure each gap before it is closed and write the width down.");
        if (std::any_of(plan_.steps.begin(), plan_.steps.end(),
                        [&](const PlanStep& step) { return page_.survey()[step.gap].at.has_value(); }))
            page_.paragraph(
                "Places are told from the zero point of the survey, as a rule a corner of the house: so far east or west, so far "
                "north or "
                "south, so far up from the ground floor.");
        std::string last;
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            const std::string where = page_.say(place_of_work(plan_.steps[i]));
            if (where != last) {
                if (!last.empty()) html_.end();
                page_.heading(3, as_it_stands(where));
                html_.begin("ol", {{"class", "numbered stops"}, {"start", std::to_string(i + 1)}});
            }
            last = where;
            stop(i);
        }
        html_.end();
        page_.end_section();
    }

    /// `On a later visit: outside, from the ground`, `rooms: kitchen`
    [[nodiscard]] Message place_of_work(const PlanStep& step) const {
        const WorkZone zone = step.stop.zone;
        Message text = zone_words(zone);
        if (zone == WorkZone::rooms || zone == WorkZone::attached) {
            const SpaceKind kind = zone == WorkZone::rooms ? SpaceKind::living : SpaceKind::attached;
            const auto& [one, other] = page_.survey()[step.gap].between;
            text = message("{}: {}", {text, page_.survey()[page_.survey()[one].kind == kind ? one : other].called()});
        }
        return step.waits ? message("On a later visit, when the animals are gone: {}", {text}) : text;
    }

    void stop(std::size_t i) {
        const PlanStep& step = plan_.steps[i];
        const Gap& gap = page_.survey()[step.gap];
        begin_closing(page_, i + 1);
        // Long ones and short ones in turn: on paper four stand side by side.
        std::vector<std::pair<Message, Message>> rows{{"Size", size_part(page_, gap)}};
        if (gap.at) rows.push_back({"Place", place_part(page_, *gap.at)});
        rows.push_back({"Treatment", treatment_name(step.option.treatment)});
        if (const std::vector<Message> shown = drawings_showing(page_, i + 1); !shown.empty())
            rows.push_back({"Drawing", listed_message(shown)});
        if (const Message limits = weather_part(step.option.treatment); !limits.empty()) rows.push_back({"Weather", limits});
        if (!step.option.needs.empty()) rows.push_back({"Takes", needs(step.option.needs)});
        if (step.stop.ladder_first > 0) rows.push_back({"Ladder", ladder(step.stop)});
        if (step.option.minutes > 0) rows.push_back({"Time", page_.time_part(step.option.minutes)});
        page_.terms(rows, "brief");
        if (!gap.note.empty()) page_.terms({{"Note", as_named(gap.note)}}, "brief whole-line");
        page_.photo(step.gap);
        how(step.option, i + 1);
        step_cautions(page_, step);
        if (i == 0 || step.widest_open_after != plan_.steps[i - 1].widest_open_after)
            page_.paragraph(step.widest_open_after > 0 ? message("After it the widest way in still open is {}.",
                                                                 {page_.width_part(step.widest_open_after)})
                                                       : Message("After it no way in is left open."),
                            "after");
        blanks(page_, {"Measured width", "Done on", "With", "By"});
        html_.end();
    }

    static Message ladder(const WalkStop& stop) {
        Message text = stop.ladder_last > stop.ladder_first
                           ? message("positions {} to {}", {as_it_stands(stop.ladder_first), as_it_stands(stop.ladder_last)})
                           : message("position {}", {as_it_stands(stop.ladder_first)});
        return stop.two_people ? message("{}, two people", {text}) : text;
    }

    [[nodiscard]] Message needs(const std::vector<Need>& needs) const {
        std::vector<Message> items;
        for (const Need& need : needs) {
            const Material& material = *page_.facts.settings.planning.prices.find(need.material);
            items.push_back(message("{} of {}", {amount_part(page_, need.amount, material.by), as_named(material.name)}));
        }
        return joined_message(items, "; ");
    }

    /// In full where a treatment first comes up; later by the number of that stop, with what was not said there.
    void how(const Option& option, std::size_t number) {
        if (option.treatment == stated_closing) {
            page_.paragraph("The survey names a price and no method: ask the estimator.");
            return;
        }
        auto& told = told_at_[option.treatment];
        std::vector<Message> rest;
        for (const Message& line : option.steps) {
            if (std::find(told.second.begin(), told.second.end(), line) == told.second.end()) rest.push_back(line);
        }
        if (told.first > 0)
            page_.paragraph(rest.empty() ? message("Do it as at stop {}.", {as_it_stands(told.first)})
                                         : message("Do it as at stop {}, and:", {as_it_stands(told.first)}));
        else
            told.first = number;
        page_.list(rest, "how");
        told.second.insert(told.second.end(), rest.begin(), rest.end());
    }

    PageWriter& page_;
    Html& html_;
    const Plan& plan_;
    std::map<std::string, std::pair<std::size_t, std::vector<Message>>> told_at_;  ///< by treatment
};

}  // namespace

void crew_page(PageWriter& page) { CrewPage(page).write(); }

}  // namespace seamward
