// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "materials/treatment_name.h"
#include "plan/walk.h"
#include "report/page_parts.h"
#include "report/pages.h"
#include "report/sheet_form.h"
#include "report/sheet_parts.h"

namespace seamward {

namespace {

constexpr std::size_t empty_lines = 8;  ///< for gaps that are not in the list

class SurveySheet {
public:
    explicit SurveySheet(PageWriter& page) : page_(page), html_(page.html), survey_(page.survey()) {
        std::vector<GapIndex> all;
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) all.push_back({i});
        walk_ = walk_to(page.job(), in_working_order(survey_, all));
        for (const ShownWay& way : page.facts.ways) deciding_.insert(way.ranked.pinch_gap);
        for (const ClosedGap& closed : page.job().closed) {
            if (closed.holds()) closed_[closed.gap] = closed.with;
        }
    }

    void write() {
        how();
        if (fills_in()) sheet_settings(page_);
        page_.begin_section("who", "Who looked, and when");
        blanks(page_, {"Surveyed by", "Day", "Second reader"});
        page_.end_section();
        for (std::size_t i = 0; i < walk_.stops.size();) i = zone(i);
        not_in_list();
        if (fills_in()) sheet_end(page_);
        drawings_part(page_);
    }

private:
    [[nodiscard]] bool fills_in() const { return !page_.facts.settings.printed && !page_.facts.job_file.json.empty(); }

    void how() {
        page_.begin_section("how", "How to look");
        page_.list({
            "Go round the house at night with an ultraviolet light: scorpions glow. Mark where they sit and where they go in.",
            "Light test: stand in the dark attic or garage by day, with the door shut. Wherever daylight shows there is a gap. "
            "Let "
            "somebody outside go along it with a lamp.",
            "Smoke test: hold a smoke pencil or a stick of incense at registers, outlets, baseboards and under doors, with the "
            "exhaust fans on. Where the smoke bends, air comes through.",
            "Measure with a feeler gauge or with drill shanks, at the widest place. What goes in without force is the width.",
            "Take a picture of each gap with the gauge in the gap and its marking to be read. Write the number of the picture "
            "down.",
            "Sizes that decide are marked. A second person measures them anew, without seeing the first reading.",
            "Plus or minus is how far the width may be off: the step of the gauge at least, more where a gap is uneven.",
            "Look at what was closed before too: cracked, loose, gnawed?",
        });
        page_.paragraph("These ways of looking are common practice, without a published source.", "source");
        page_.list(
            {
                "Caution: Nobody goes up a ladder or into an attic alone. Whoever is not at ease there looks from below.",
                "Caution: No gauge, wire or finger into outlets, switches, panels or lights. Covers stay on unless the power is "
                "off and "
                "tested.",
                "Caution: Openings near a furnace, water heater, dryer or flue may feed air to a flame or lead exhaust away. "
                "Measure them and "
                "leave them open. Where it smells of gas: out, and call from outside.",
                "Caution: No smoke and no open flame near gas, solvents or insulation, and tell whoever watches the smoke "
                "alarms.",
                "Caution: Do not reach where you cannot see: snakes, spiders, wasps, scorpions. Leave bats, birds and nests "
                "alone; many are "
                "protected. Nothing is closed while an animal is inside.",
                "Caution: Local code and licensed practice decide. What needs a license is for those who have it.",
            },
            "cautions");
        page_.titled_list("Before you begin", walk_.before);
        page_.end_section();
    }

    /// The gaps of one zone, from position `first` on; returns the end.
    std::size_t zone(std::size_t first) {
        const WorkZone zone = walk_.stops[first].zone;
        std::size_t end = first;
        while (end < walk_.stops.size() && walk_.stops[end].zone == zone) ++end;
        page_.begin_section("zone-" + std::to_string(static_cast<int>(zone) + 1), zone_title(zone));
        std::vector<Message> cautions;
        for (std::size_t i = first; i < end; ++i) {
            for (const Message& caution : walk_.stops[i].cautions) {
                const Message said = message("Caution: {}", {caution});
                if (std::find(cautions.begin(), cautions.end(), said) == cautions.end()) cautions.push_back(said);
            }
        }
        page_.list(cautions, "cautions");
        std::vector<SpaceIndex> spaces;
        for (std::size_t i = first; i < end; ++i) {
            const SpaceIndex space = looked_at(walk_.stops[i]);
            if (std::find(spaces.begin(), spaces.end(), space) == spaces.end()) spaces.push_back(space);
        }
        for (const SpaceIndex space : spaces) place(space, first, end);
        page_.end_section();
        return end;
    }

    static Message zone_title(WorkZone zone) {
        switch (zone) {
            case WorkZone::outside_low: return "Outside, from the ground";
            case WorkZone::outside_high: return "Outside, from a ladder";
            case WorkZone::roof: return "On the roof";
            case WorkZone::attached: return "Garage and porches";
            case WorkZone::crawl_space: return "Crawl space";
            case WorkZone::hidden: return "Attic and other hidden spaces";
            case WorkZone::rooms: break;
        }
        return "Rooms";
    }

    /// The space that one looks at: of a gap that leads outdoors, what lies behind; in rooms and garages, that room.
    [[nodiscard]] SpaceIndex looked_at(const WalkStop& stop) const {
        const auto& [one, other] = survey_[stop.gap].between;
        const auto is = [&](SpaceKind kind) { return survey_[one].kind == kind; };
        switch (stop.zone) {
            case WorkZone::rooms: return is(SpaceKind::living) ? one : other;
            case WorkZone::attached: return is(SpaceKind::attached) ? one : other;
            default: return is(SpaceKind::outdoors) || is(SpaceKind::living) ? other : one;
        }
    }

    /// The gaps of one zone at which one looks at one space.
    void place(SpaceIndex space, std::size_t first, std::size_t end) {
        page_.heading(3, survey_[space].called());
        const std::vector<Message> head{"Gap", "Measured width", "Plus or minus", "Second reading", "Photo", "Note"};
        begin_table(head);
        for (; first < end; ++first) {
            if (looked_at(walk_.stops[first]) == space) row(walk_.stops[first], head);
        }
        html_.end().end();
    }

    void begin_table(const std::vector<Message>& head) {
        html_.begin("table", {{"class", "stack sheet-table"}, {"role", "table"}});
        html_.begin("thead", {{"role", "rowgroup"}}).begin("tr", {{"role", "row"}});
        for (const Message& cell : head) html_.element("th", page_.say(cell), {{"scope", "col"}, {"role", "columnheader"}});
        html_.end().end();
        html_.begin("tbody", {{"role", "rowgroup"}});
    }

    void row(const WalkStop& stop, const std::vector<Message>& head) {
        constexpr std::array fields{"name", "width", "plus_minus", "second", "photo", "note"};
        const Gap& gap = survey_[stop.gap];
        const auto closed = closed_.find(stop.gap);
        html_.begin("tr", {{"role", "row"}, {"data-gap", std::to_string(stop.gap.value)}});
        html_.begin("th", {{"scope", "row"}, {"role", "rowheader"}});
        html_.element("span", page_.say(page_.gap_part(stop.gap)), {{"class", "gap-name"}});
        for (const Message& line : known(gap, stop)) html_.element("span", page_.say(line), {{"class", "known"}});
        html_.end();
        for (std::size_t i = 1; i < fields.size(); ++i) {
            const bool of_width = i < 4;
            const bool not_asked = (of_width && closed != closed_.end()) || (i == 3 && !deciding_.contains(stop.gap));
            html_.element("td", "",
                          {{"role", "cell"},
                           {"class", not_asked ? "not-asked" : "to-fill"},
                           {not_asked ? "data-none" : "data-field", fields.at(i)},
                           {"data-label", page_.say(head[i])}});
        }
        html_.end();
    }

    [[nodiscard]] std::vector<Message> known(const Gap& gap, const WalkStop& stop) const {
        std::vector<Message> lines;
        const auto closed = closed_.find(stop.gap);
        if (closed == closed_.end())
            lines.push_back(message("So far: {}", {size_part(page_, gap)}));
        else if (closed->second.empty())
            lines.emplace_back("Was closed. Does it hold?");
        else
            lines.push_back(message("Was closed: {}. Does it hold?", {treatment_name(closed->second)}));
        if (gap.must_stay_open()) lines.emplace_back("Stays open: measure it and leave it.");
        if (stop.trade) lines.emplace_back("For a licensed person: look, do not touch.");
        if (deciding_.contains(stop.gap) && closed == closed_.end()) lines.emplace_back("This size decides: two readings.");
        if (!gap.note.empty()) lines.push_back(as_named(gap.note));
        return lines;
    }

    /// On paper, lines to write on; with a script, a form in their place.
    void not_in_list() {
        page_.begin_section("new-gaps", "Gaps that are not in the list");
        if (fills_in()) new_gap_form(page_);
        html_.begin("div", {{"id", "new-lines"}});
        page_.paragraph(
            "What it is and where, from which space into which, and what shape: a slot (width and length), a hole (diameter), "
            "a ring around a pipe (width, and how thick the pipe is), or a mesh (one opening).");
        const std::vector<Message> head{"What and where", "From, into", "Shape and size", "Plus or minus", "Photo", "Note"};
        begin_table(head);
        for (std::size_t line = 0; line < empty_lines; ++line) {
            html_.begin("tr", {{"role", "row"}});
            for (const Message& cell : head)
                html_.element("td", "", {{"role", "cell"}, {"class", "to-fill"}, {"data-label", page_.say(cell)}});
            html_.end();
        }
        html_.end().end().end();
        page_.end_section();
    }

    PageWriter& page_;
    Html& html_;
    const Survey& survey_;
    Walk walk_;
    std::set<GapIndex> deciding_;             ///< the smallest gap of some way that the report shows
    std::map<GapIndex, std::string> closed_;  ///< those that hold, with their treatments
};

}  // namespace

void survey_sheet(PageWriter& page) { SurveySheet(page).write(); }

}  // namespace seamward
