// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>
#include <numeric>

#include "catalog/field_check.h"
#include "catalog/shipped.h"
#include "paths/remarks.h"
#include "report/page_parts.h"

namespace seamward {

namespace {

constexpr std::size_t shown_at_once = 6;  ///< ways; the others are folded away

/// "11/32 in (8.73 mm), between a pencil and a 3/8 in drill shank"
Message width_in_the_hand(const PageWriter& page, double width) {
    return message("{}, {}", {page.width_part(width), Message(field_check(width, shipped_gauges().rows))});
}

Message gap_on_the_way(const PageWriter& page, GapIndex index) {
    const Gap& gap = page.survey()[index];
    const Message width = page.short_width(clear_width(gap.shape));
    if (gap.evidence.how == Evidence::How::assumed) return message("{} ({}, not measured)", {gap.called(), width});
    return message("{} ({})", {gap.called(), width});
}

/// From the yard to the room: spaces and the gaps between them in turn. Names stand alone, for no language can put an article
/// before what a job calls its own.
void way_steps(PageWriter& page, const EntryPath& path) {
    page.html.begin("ol", {{"class", "way"}});
    for (std::size_t i = 0; i < path.spaces.size(); ++i) {
        page.html.element("li", page.say(page.survey()[path.spaces[i]].called()), {{"class", "space"}});
        if (i < path.gaps.size()) page.html.element("li", page.say(gap_on_the_way(page, path.gaps[i])));
    }
    page.html.end();
}

class WayItem {
public:
    WayItem(PageWriter& page, const ShownWay& way) : page_(page), way_(way) {}

    void write(std::size_t number) {
        const EntryPath& path = way_.ranked.path;
        page_.html.begin("li", {{"id", "way-" + std::to_string(number)}, {"value", std::to_string(number)}});
        page_.number(number);
        page_.heading(3, message("Into {}: {} at the narrowest",
                                 {page_.survey()[path.to()].called(), page_.width_part(way_.ranked.pinch)}));
        way_steps(page_, path);
        std::vector<std::pair<Message, Message>> rows;
        rows.push_back({"Narrowest place", message("{}, {}", {page_.survey()[way_.ranked.pinch_gap].called(),
                                                              Message(field_check(way_.ranked.pinch, shipped_gauges().rows))})});
        if (!page_.facts.animals.empty())
            rows.push_back({"Open to", way_.open_to.empty() ? Message("none of these animals")
                                                            : page_.animals_part(page_.facts.animals, way_.open_to)});
        page_.terms(rows, "brief");
        closed_by();
        page_.html.end();
    }

private:
    /// Which closing shuts the way for whom.
    void closed_by() {
        if (!page_.facts.plan.feasible) return;
        std::map<std::size_t, std::vector<std::size_t>> by_step;
        for (std::size_t i = 0; i < way_.open_to.size(); ++i) by_step[way_.shut_after[i]].push_back(way_.open_to[i]);
        for (const auto& [step, animals] : by_step) {
            const Message names = page_.animals_part(page_.facts.animals, animals);
            page_.html.begin("p", {{"class", "shut-by"}});
            const Message number = as_it_stands(step);
            if (step == 0)
                page_.html.text(page_.say("This plan leaves this way open for {}.", {names}));
            else
                page_.link("closing-" + std::to_string(step), by_step.size() == 1
                                                                  ? message("Closing {} shuts it.", {number})
                                                                  : message("Closing {} shuts it for {}.", {number, names}));
            page_.html.end();
        }
    }

    PageWriter& page_;
    const ShownWay& way_;
};

class RoomRows {
public:
    explicit RoomRows(PageWriter& page)
        : page_(page),
          trace_(trace(page.survey(), {{}, {}, 1}, RunContext())),
          open_(rooms_open_to(page.survey(), {}, trace_.rooms, page.facts.animals)),
          shared_(shared_air(page.survey(), {}, trace_.rooms)) {}

    [[nodiscard]] std::vector<std::vector<Message>> all() const {
        std::vector<std::size_t> order(trace_.rooms.size());
        std::iota(order.begin(), order.end(), 0U);
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return trace_.rooms[a].pinch > trace_.rooms[b].pinch; });
        std::vector<std::vector<Message>> rows;
        for (const std::size_t i : order) rows.push_back(row(i));
        return rows;
    }

private:
    [[nodiscard]] std::vector<Message> row(std::size_t i) const {
        const RoomPinch& room = trace_.rooms[i];
        std::vector<Message> cells{page_.survey()[room.space].called(),
                                   room.pinch ? width_in_the_hand(page_, *room.pinch) : Message("no way in listed")};
        if (page_.facts.animals.empty()) return cells;
        Message who = open_[i].empty() ? Message("none of these animals") : page_.animals_part(page_.facts.animals, open_[i]);
        if (shared_[i])
            who = message("{}; open to {} ({})",
                          {who, page_.survey()[shared_[i]->with].called(), page_.short_width(shared_[i]->width)});
        cells.push_back(who);
        return cells;
    }

    PageWriter& page_;
    Trace trace_;
    std::vector<std::vector<std::size_t>> open_;
    std::vector<std::optional<SharedAir>> shared_;
};

}  // namespace

void rooms_part(PageWriter& page) {
    page.begin_section("rooms", "What was found, room by room");
    const std::vector<std::vector<Message>> rows = RoomRows(page).all();
    if (rows.empty()) {
        page.paragraph("The survey has no room where people live. So there is no way in to tell of.");
    } else {
        page.paragraph(
            "A way in is as wide as its narrowest place: that decides what gets through. The widest way into each room:");
        std::vector<Message> head{"Room", "Widest way in", "Which animals get there"};
        if (page.facts.animals.empty()) head.pop_back();
        page.table("Rooms by their widest way in", head, rows, "rooms");
    }
    if (!page.facts.animals.empty() && !rows.empty()) {
        const std::vector<std::size_t> kept_out = pests_kept_out(page.survey(), {}, page.facts.animals);
        if (!kept_out.empty())
            page.paragraph(
                message("No way in, as far as this survey goes: {}.", {page.animals_part(page.facts.animals, kept_out)}), "good");
    }
    page.end_section();
}

void ways_part(PageWriter& page) {
    const std::vector<ShownWay>& ways = page.facts.ways;
    page.begin_section("ways-in", "The ways in");
    if (ways.empty()) {
        page.paragraph("No way in was found, as far as this survey goes.", "good");
    } else {
        page.paragraph(
            "The widest come first. Each is told from outside to the room: spaces in bold, between them the gaps and their "
            "widths.");
        page.html.begin("ol", {{"id", "ways"}, {"class", "numbered"}});
        for (std::size_t i = 0; i < std::min(shown_at_once, ways.size()); ++i) WayItem(page, ways[i]).write(i + 1);
        page.html.end();
    }
    if (ways.size() > shown_at_once) {
        page.html.begin("details");
        page.html.element("summary",
                          page.say("More ways in: the next ones of each animal, and those that are left once others are shut"));
        page.html.begin("ol", {{"class", "numbered more-ways"}, {"start", std::to_string(shown_at_once + 1)}});
        for (std::size_t i = shown_at_once; i < ways.size(); ++i) WayItem(page, ways[i]).write(i + 1);
        page.html.end().end();
    }
    page.end_section();
}

void doubts_part(PageWriter& page) {
    const Survey& survey = page.survey();
    std::vector<Message> doubts, unmeasured;
    std::vector<Message> wrong;
    for (const WrongClosing& one : page.facts.plan.wrong_closings) wrong.emplace_back(wrong_closing_text(survey, one));
    for (const auto& remark : remarks_on(page.job(), {})) {
        const Message told(remark);
        if (std::find(wrong.begin(), wrong.end(), told) == wrong.end()) doubts.push_back(message("{}.", {told}));
    }
    for (const auto& doubt : page.facts.plan.vent_doubts) doubts.push_back(message("Air: {}.", {Message(doubt)}));
    for (const Gap& gap : survey.gaps) {
        if (gap.evidence.how == Evidence::How::assumed && !is_shut(gap.shape))
            unmeasured.push_back(message("{}, taken as {}", {gap.called(), page.short_width(clear_width(gap.shape))}));
    }
    if (doubts.empty() && unmeasured.empty()) return;
    page.begin_section("doubts", "What is not certain");
    page.list(doubts);
    if (!unmeasured.empty()) {
        page.html.begin("details");
        page.html.element("summary", page.say(counted_message(unmeasured.size(), "The width of 1 gap was assumed, not measured",
                                                              "The widths of {} gaps were assumed, not measured")));
        page.list(unmeasured, "compact");
        page.html.end();
    }
    page.end_section();
}

}  // namespace seamward
