// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "catalog/shipped.h"
#include "report/page_parts.h"

namespace seamward {

namespace {

/// Gaps that nothing is done to for one reason.
struct OpenGroup {
    Message why, source;
    std::vector<GapIndex> gaps;
};

std::vector<OpenGroup> open_groups(const Plan& plan) {
    std::vector<OpenGroup> groups;
    for (const RefusedGap& refused : plan.refused) {
        if (!refused.refusal.treatment.empty()) continue;
        const Message why(refused.refusal.why), source(refused.refusal.source);
        auto found = std::find_if(groups.begin(), groups.end(),
                                  [&](const OpenGroup& other) { return other.why == why && other.source == source; });
        if (found == groups.end()) found = groups.insert(groups.end(), {why, source, {}});
        found->gaps.push_back(refused.gap);
    }
    return groups;
}

void wrong_closings_in(PageWriter& page) {
    std::vector<Message> items;
    for (const WrongClosing& wrong : page.facts.plan.wrong_closings)
        items.push_back(message("{}. ({})", {Message(wrong_closing_text(page.survey(), wrong)), Message(wrong.source)}));
    if (items.empty()) return;
    page.html.begin("div", {{"class", "warning"}});
    page.titled_list("Closed wrongly: to be opened again", items);
    page.html.end();
}

class DepartureItem {
public:
    DepartureItem(PageWriter& page, const Departure& departure)
        : page_(page), departure_(departure), removal_(departure.removal), occupant_(page.job().occupied[departure.occupant]) {}

    void write() {
        page_.html.begin("article");
        page_.heading(3, message("{} in {}", {as_named(occupant_.animal.name), page_.survey()[occupant_.space].called()}));
        if (!occupant_.seen.empty()) page_.paragraph(message("Seen: {}.", {as_it_stands(occupant_.seen)}));
        page_.paragraph(what_waits());
        if (departure_.waits()) {
            std::vector<Message> gaps;
            for (const GapIndex gap : departure_.last) gaps.push_back(page_.gap_part(gap));
            page_.list(gaps, "compact");
        }
        how();
        page_.html.end();
    }

private:
    [[nodiscard]] Message what_waits() const {
        if (departure_.waits())
            return departure_.way_known
                       ? "It must not be shut in. Its main way out stays open until it is gone:"
                       : "It must not be shut in. No way out is known, so all around its space waits until it is gone:";
        if (removal_ != nullptr && removal_->by == Removal::By::nothing) return "Nothing waits for it.";
        return departure_.way_known ? "This work leaves it a way out. It is kept out of the rooms and not driven away."
                                    : "No way out is known, and this work does not touch its space. Look for the way it came.";
    }

    void how() {
        if (removal_ == nullptr) {
            if (departure_.waits())
                page_.paragraph("Nobody closes these before somebody who knows this animal has looked.", "warning");
            return;
        }
        if (!departure_.waits() && removal_->by != Removal::By::nothing) return;
        const std::vector<CatalogSource>& sources = shipped_removals().sources;
        page_.paragraph(message("{}. ({})", {Message(removal_->how), Message(cited(sources, removal_->source))}));
        if (departure_.device) page_.paragraph(message("The place for it: {}.", {page_.survey()[*departure_.device].called()}));
        if (departure_.season) {
            const ClosedSeason& season = *departure_.season->season;
            page_.paragraph(
                message("Not now: {}. The work for it begins on {} at the earliest. ({})",
                        {Message(season.why), page_.date_part(departure_.begin), Message(cited(sources, season.source))}),
                "warning");
        }
        if (departure_.waits()) page_.paragraph(last_day());
        std::vector<Message> cautions;
        for (const auto& caution : removal_->cautions)
            cautions.push_back(message("Caution: {} ({})", {Message(caution.text), Message(cited(sources, caution.source))}));
        page_.list(cautions, "cautions");
    }

    [[nodiscard]] Message last_day() const {
        const Message day = page_.date_part(departure_.close_from);
        if (removal_->quiet_nights == 0) return message("Once it is gone, on {} at the earliest, what waits is closed.", {day});
        return message("After {} without a sign of it, on {} at the earliest, what waits is closed.",
                       {counted_message(removal_->quiet_nights, "1 night", "{} nights"), day});
    }

    PageWriter& page_;
    const Departure& departure_;
    const Removal* removal_;
    const Occupant& occupant_;
};

}  // namespace

void stays_open_part(PageWriter& page) {
    const std::vector<OpenGroup> groups = open_groups(page.facts.plan);
    if (groups.empty() && page.facts.plan.wrong_closings.empty()) return;
    page.begin_section("stays-open", "What will not be closed, and why");
    wrong_closings_in(page);
    if (!groups.empty()) {
        page.paragraph("A house has openings that it needs: they let water out and air in. Nobody closes these.");
        page.html.begin("ul", {{"class", "open-groups"}});
        for (const OpenGroup& group : groups) {
            std::vector<Message> labels;
            for (const GapIndex gap : group.gaps) labels.push_back(page.gap_part(gap));
            page.html.begin("li");
            page.html.element("p", page.say(joined_message(labels, "; ")), {{"class", "what"}});
            page.paragraph(message("Why: {}.", {group.why}));
            page.paragraph(message("Source: {}", {group.source}), "source");
            page.html.end();
        }
        page.html.end();
    }
    page.end_section();
}

void photos_part(PageWriter& page) {
    std::vector<GapIndex> others;
    for (const ReportPhoto& photo : page.facts.photos.shown) {
        if (page.facts.closing_at(photo.gap) == 0) others.push_back(photo.gap);
    }
    if (others.empty()) return;
    page.begin_section("photos", "Photos of gaps that this work does not close");
    page.html.begin("div", {{"class", "photos"}});
    for (const GapIndex gap : others) {
        page.html.begin("figure");
        page.photo(gap);
        page.html.element("figcaption", page.say(page.gap_part(gap))).end();
    }
    page.html.end();
    page.end_section();
}

void animals_inside_part(PageWriter& page) {
    if (page.facts.plan.departures.empty()) return;
    page.begin_section("animals-inside", "Animals that live in the house");
    page.paragraph("No animal is ever shut in: it would die there, or do damage to get out.");
    for (const Departure& departure : page.facts.plan.departures) DepartureItem(page, departure).write();
    page.end_section();
}

}  // namespace seamward
