// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/compare.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <unordered_map>

#include "materials/treatment_name.h"

namespace seamward {

namespace {

using Positions = std::unordered_map<std::string_view, std::uint32_t>;

template <class Thing>
Positions positions_of(const std::vector<Thing>& things) {
    Positions positions;
    for (std::uint32_t i = 0; i < things.size(); ++i) positions.emplace(things[i].id, i);
    return positions;
}

/// Widest way into each living space, by its id.
std::map<std::string_view, double> pinches_of(const Survey& survey) {
    std::map<std::string_view, double> widths;
    for (const RoomPinch& room : trace(survey, {{}, {}, 1}, RunContext()).rooms)
        widths[survey[room.space].id] = room.pinch.value_or(0);
    return widths;
}

class Comparer {
public:
    Comparer(const Job& then, const Job& now, const std::vector<Pest>& animals)
        : then_(then), now_(now), gaps_then_(positions_of(then.survey.gaps)), gaps_now_(positions_of(now.survey.gaps)) {
        const Entries before = entries_of(then.survey, animals), after = entries_of(now.survey, animals);
        answer_.entries = {before.gaps.size(), after.gaps.size()};
        answer_.animals_then = before.animals;
        answer_.animals_now = after.animals;
    }

    Comparison compare() {
        const bool any = std::any_of(now_.survey.gaps.begin(), now_.survey.gaps.end(),
                                     [&](const Gap& gap) { return gaps_then_.contains(gap.id); });
        const bool empty = then_.survey.gaps.empty() && now_.survey.gaps.empty();
        answer_.same_house = any || empty;
        if (!answer_.same_house) return answer_;
        rooms();
        for (std::uint32_t i = 0; i < now_.survey.gaps.size(); ++i) gap({i});
        for (std::uint32_t i = 0; i < then_.survey.gaps.size(); ++i) {
            if (!gaps_now_.contains(then_.survey.gaps[i].id)) answer_.gone.push_back({i});
        }
        return answer_;
    }

private:
    void rooms() {
        const auto before = pinches_of(then_.survey), after = pinches_of(now_.survey);
        for (std::uint32_t i = 0; i < now_.survey.spaces.size(); ++i) {
            const auto then = before.find(now_.survey.spaces[i].id), now = after.find(now_.survey.spaces[i].id);
            if (then != before.end() && now != after.end()) answer_.rooms.push_back({{i}, then->second, now->second});
        }
    }

    static const ClosedGap* closed(const Job& job, GapIndex gap) {
        const auto found = std::find_if(job.closed.begin(), job.closed.end(),
                                        [&](const ClosedGap& one) { return one.gap == gap && one.holds(); });
        return found == job.closed.end() ? nullptr : &*found;
    }

    /// As it was measured, whatever was put into it or over it.
    static double measured_width(const Job& job, GapIndex gap) {
        const ClosedGap* shut = closed(job, gap);
        return clear_width(shut != nullptr ? shut->before : job.survey[gap].shape);
    }

    void gap(GapIndex index) {
        const auto found = gaps_then_.find(now_.survey[index].id);
        if (found == gaps_then_.end()) {
            answer_.added.push_back(index);
            return;
        }
        const GapIndex old{found->second};
        const double then = clear_width(then_.survey[old].shape), now = clear_width(now_.survey[index].shape);
        if (closed(now_, index) != nullptr && closed(then_, old) == nullptr) answer_.closed.push_back({index, then, now});
        const Evidence &before = then_.survey[old].evidence, &after = now_.survey[index].evidence;
        const double measured_then = measured_width(then_, old), measured_now = measured_width(now_, index);
        const bool opened = closed(then_, old) != nullptr && closed(now_, index) == nullptr;
        const bool known_better = closed(now_, index) == nullptr && closed(then_, old) == nullptr &&
                                  (before.how != after.how || before.plus_minus != after.plus_minus);
        if (opened || measured_then != measured_now || known_better)
            answer_.anew.push_back({index, opened ? then : measured_then, measured_now});
    }

    const Job& then_;
    const Job& now_;
    Positions gaps_then_, gaps_now_;
    Comparison answer_;
};

class ComparisonPart {
public:
    ComparisonPart(PageWriter& page, const Job& then)
        : page_(page), then_(then), found_(compare(then, page.job(), page.facts.animals)) {}

    void write() {
        page_.begin_section("since", "Since the visit before");
        page_.paragraph(message("Compared with: {}.", {visit(then_)}));
        if (!found_.same_house) {
            page_.paragraph(
                "No gap of this job has the id of a gap of that one: it tells of another house, or its gaps were named anew. So "
                "gaps "
                "and rooms cannot be compared.",
                "warning");
        } else {
            figures();
            rooms();
            widths("Closed since", found_.closed, true);
            widths("Measured anew, or open again", found_.anew, false);
            page_.titled_list("New in the list", gaps(page_.survey(), found_.added));
            page_.titled_list("No longer in the list", gaps(then_.survey, found_.gone));
        }
        page_.end_section();
    }

private:
    [[nodiscard]] Message visit(const Job& job) const {
        const Message name = job.name.empty() ? Message("a job without a name") : as_it_stands(job.name);
        if (job.surveyed.empty()) return name;
        const Parsed<Date> day = parse_date(job.surveyed);
        return message("{}, surveyed {}", {name, day ? page_.date_part(*day) : as_it_stands(job.surveyed)});
    }

    [[nodiscard]] Message animals(const std::vector<std::size_t>& which) const {
        return which.empty() ? Message("none of these animals") : page_.animals_part(page_.facts.animals, which);
    }

    void figures() {
        std::vector<std::vector<Message>> rows{
            {"Openings where a way in begins", as_it_stands(found_.entries.then), as_it_stands(found_.entries.now)}};
        if (!page_.facts.animals.empty())
            rows.push_back({"Animals that get in", animals(found_.animals_then), animals(found_.animals_now)});
        page_.table("The house then and now", {"What", "Then", "Now"}, rows);
    }

    [[nodiscard]] Message way(double width) const { return width > 0 ? page_.width_part(width) : Message("no way in"); }

    void rooms() {
        std::vector<std::vector<Message>> rows;
        for (const Comparison::Room& room : found_.rooms)
            rows.push_back({page_.survey()[room.room].called(), way(room.then), way(room.now)});
        page_.table("Widest way into each room", {"Room", "Then", "Now"}, rows);
    }

    void widths(const Message& title, const std::vector<Comparison::Width>& list, bool closings) {
        std::vector<std::vector<Message>> rows;
        for (const Comparison::Width& one : list) {
            std::vector<Message> cells{page_.gap_part(one.gap), page_.width_part(one.then),
                                       one.now > 0 ? page_.width_part(one.now) : Message("shut")};
            if (closings) cells.push_back(closed_with(one.gap));
            rows.push_back(std::move(cells));
        }
        std::vector<Message> head{"Gap", "Width then", "Width now"};
        if (closings) head.emplace_back("With");
        page_.table(title, head, rows);
    }

    [[nodiscard]] Message closed_with(GapIndex gap) const {
        for (const ClosedGap& closed : page_.job().closed) {
            if (closed.gap == gap && !closed.with.empty()) return treatment_name(closed.with);
        }
        return "not stated";
    }

    [[nodiscard]] std::vector<Message> gaps(const Survey& survey, const std::vector<GapIndex>& list) const {
        std::vector<Message> items;
        for (const GapIndex gap : list)
            items.push_back(message("{}: {}", {survey[gap].called(), page_.width_part(clear_width(survey[gap].shape))}));
        return items;
    }

    PageWriter& page_;
    const Job& then_;
    Comparison found_;
};

}  // namespace

Comparison compare(const Job& then, const Job& now, const std::vector<Pest>& animals) {
    return Comparer(then, now, animals).compare();
}

void comparison_part(PageWriter& page) {
    if (page.facts.before != nullptr) ComparisonPart(page, *page.facts.before).write();
}

}  // namespace seamward
