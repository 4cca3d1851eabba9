// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/remarks.h"

#include <algorithm>
#include <queue>
#include <set>

#include "base/drawn_shut.h"
#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "materials/wrong_closings.h"
#include "network/network.h"
#include "network/pinches.h"

namespace seamward {

namespace {

/// `a`, `a and b`, `a, b, c and 7 more`
Message first_few(std::vector<Message> names) {
    constexpr std::size_t most = 3;
    if (names.size() <= most + 1) return listed_message(names);
    const std::size_t left = names.size() - most;
    names.resize(most);
    return message("{} and {} more", {joined_message(names, ", "), as_it_stands(left)});
}

class Remarks {
public:
    Remarks(const Job& job, const TraceSettings& settings)
        : job_(job), survey_(job.survey), settings_(settings), roles_(survey_, settings.to) {}

    std::vector<Message> all() {
        starts_and_ends();
        rooms_without_gaps();
        spaces_that_nothing_leads_into();
        gaps_between_rooms();
        closed_though_needed();
        gnawed_closings();
        slots_wider_than_long();
        joints_drawn_shut();
        return std::move(remarks_);
    }

    std::vector<Message> on_what_is_unknown() {
        starts_and_ends();
        joints_drawn_shut();
        return std::move(remarks_);
    }

private:
    /// The patterns have a place for the names.
    void add(const std::vector<Message>& names, const char* one, const char* many) {
        if (!names.empty()) remarks_.push_back(message(names.size() == 1 ? one : many, {first_few(names)}));
    }

    void starts_and_ends() {
        if (roles_.start_spaces().empty())
            remarks_.emplace_back("this survey has no outdoors or source space: no way in can begin");
        if (roles_.end_spaces().empty()) remarks_.emplace_back("this survey has no living space: no way in can end");
        for (const SpaceIndex space : settings_.to) {
            if (roles_.starts(space))
                remarks_.push_back(
                    message("{} is where ways in start; only ways from elsewhere end there", {survey_[space].called()}));
        }
    }

    void rooms_without_gaps() {
        std::vector<bool> has_gap(survey_.spaces.size(), false);
        for (const Gap& gap : survey_.gaps) has_gap[gap.between[0].value] = has_gap[gap.between[1].value] = true;
        std::vector<Message> names;
        for (std::size_t i = 0; i < survey_.spaces.size(); ++i) {
            if (survey_.spaces[i].is_living() && !has_gap[i]) names.push_back(survey_.spaces[i].called());
        }
        add(names, "{}: no gap of this room is listed, so that nothing is known of it",
            "{}: no gap of these rooms is listed, so that nothing is known of them");
    }

    /// Spaces with an open gap of their own, but without a way from where paths start.
    void spaces_that_nothing_leads_into() {
        if (roles_.start_spaces().empty()) return;
        const Network network = make_network(survey_, [](const Gap& gap) { return !is_shut(gap.shape); });
        std::vector<bool> reached(survey_.spaces.size(), false);
        std::vector<SpaceIndex> waiting(roles_.start_spaces().begin(), roles_.start_spaces().end());
        while (!waiting.empty()) {
            const SpaceIndex here = waiting.back();
            waiting.pop_back();
            for (const Arc& arc : network.arcs(here)) {
                if (reached[arc.to.value] || !roles_.passable(arc.to)) continue;
                reached[arc.to.value] = true;
                waiting.push_back(arc.to);
            }
        }
        std::vector<Message> names;
        for (std::uint32_t i = 0; i < reached.size(); ++i) {
            if (!reached[i] && roles_.passable({i}) && !network.arcs({i}).empty())
                names.push_back(survey_[SpaceIndex{i}].called());
        }
        add(names, "{}: no open gap leads into this space from outdoors",
            "{}: no open gaps lead into these spaces from outdoors");
    }

    void gaps_between_rooms() {
        std::vector<Message> names;
        for (const Gap& gap : survey_.gaps) {
            if (!is_shut(gap.shape) && survey_[gap.between[0]].is_living() && survey_[gap.between[1]].is_living())
                names.push_back(gap.called());
        }
        add(names, "{}: leads from room to room; a way in is told as far as its first room",
            "{}: lead from room to room; a way in is told as far as its first room");
    }

    void closed_though_needed() {
        for (const WrongClosing& wrong : wrong_closings(job_)) remarks_.push_back(wrong_closing_text(survey_, wrong));
    }

    void gnawed_closings() {
        std::vector<Message> animals;
        for (const Pest& pest : job_.pests) {
            if (pest.gnaws) animals.push_back(as_named(pest.name));
        }
        if (animals.empty()) return;
        std::vector<Message> names;
        for (const ClosedGap& closed : job_.closed) {
            const Treatment* treatment = shipped_treatments().find(closed.with);
            if (treatment != nullptr && treatment->gnawed && closed.holds())
                names.push_back(message("{} ({})", {survey_[closed.gap].called(), treatment->name}));
        }
        if (!names.empty())
            remarks_.push_back(message("{}: closed with what is gnawed through by {}", {first_few(names), first_few(animals)}));
    }

    void slots_wider_than_long() {
        std::vector<Message> names;
        for (const Gap& gap : survey_.gaps) {
            const Slot* slot = std::get_if<Slot>(&gap.shape);
            if (slot != nullptr && slot->length > 0 && slot->width > slot->length) names.push_back(gap.called());
        }
        add(names, "{}: wider than long; were width and length swapped?", "{}: wider than long; were width and length swapped?");
    }

    void joints_drawn_shut() {
        if (!job_.model) return;
        const std::size_t count = drawn_shut(survey_);
        if (count > 0)
            remarks_.push_back(
                counted_message(count, "1 joint of the model counts as tight, as it is drawn: nobody has measured it",
                                "{} joints of the model count as tight, as they are drawn: nobody has measured them"));
    }

    const Job& job_;
    const Survey& survey_;
    const TraceSettings& settings_;
    Roles roles_;
    std::vector<Message> remarks_;
};

}  // namespace

std::vector<Message> remarks_on(const Job& job, const TraceSettings& settings) { return Remarks(job, settings).all(); }

std::vector<Message> remarks_on_what_is_unknown(const Job& job) { return Remarks(job, {}).on_what_is_unknown(); }

std::optional<Message> remark_on_widths(const Survey& survey, const Trace& trace) {
    std::set<std::uint32_t> gaps;
    for (const RankedPath& ranked : trace.paths) {
        for (const GapIndex gap : ranked.path.gaps) gaps.insert(gap.value);
    }
    const auto assumed = std::count_if(
        gaps.begin(), gaps.end(), [&](std::uint32_t gap) { return survey.gaps[gap].evidence.how == Evidence::How::assumed; });
    if (assumed == 0) return std::nullopt;
    return message(assumed == 1
                       ? "{} of the {} gaps on the ways listed is not measured: its width is a starting value or a guess"
                       : "{} of the {} gaps on the ways listed are not measured: their widths are starting values or guesses",
                   {as_it_stands(static_cast<std::size_t>(assumed)), as_it_stands(gaps.size())});
}

namespace {

/// Whether a gap counts for the question that was asked.
bool counts(const Gap& gap, const std::vector<Pest>& pests) {
    if (pests.empty()) return !is_shut(gap.shape);
    return std::any_of(pests.begin(), pests.end(),
                       [&](const Pest& pest) { return lets_through(gap, pest.size, Sizing::with_plus_minus); });
}

/// The pinch of the best path into each living space.
std::vector<double> pinches_of_rooms(const Survey& survey, const std::vector<Pest>& pests) {
    const Roles roles(survey, {});
    if (pests.empty()) return pinches(make_network(survey, [](const Gap& gap) { return !is_shut(gap.shape); }), roles);
    std::vector<double> best(survey.spaces.size(), no_way);
    for (const Pest& pest : pests) {
        const std::vector<double> of_this = pinches(
            make_network(survey, [&](const Gap& gap) { return lets_through(gap, pest.size, Sizing::with_plus_minus); }), roles);
        for (std::size_t i = 0; i < best.size(); ++i) best[i] = std::max(best[i], of_this[i]);
    }
    return best;
}

}  // namespace

std::vector<std::optional<SharedAir>> shared_air(const Survey& survey, const TraceSettings& settings,
                                                 std::span<const RoomPinch> rooms) {
    const auto between_rooms = [&](const Gap& gap) {
        return survey[gap.between[0]].is_living() && survey[gap.between[1]].is_living() && counts(gap, settings.pests);
    };
    const Network joined = make_network(survey, between_rooms);
    std::vector<std::optional<SharedAir>> from(survey.spaces.size());
    if (!joined.links().empty()) {
        // Widest first, from all rooms at once: how wide a way in each is open to, and through which room.
        std::vector<double> open = pinches_of_rooms(survey, settings.pests);
        std::priority_queue<std::pair<double, std::uint32_t>> waiting;
        for (std::uint32_t i = 0; i < open.size(); ++i) {
            if (survey.spaces[i].is_living() && open[i] > 0) waiting.emplace(open[i], i);
        }
        while (!waiting.empty()) {
            const auto [width, here] = waiting.top();
            waiting.pop();
            if (width < open[here]) continue;
            for (const Arc& arc : joined.arcs({here})) {
                const double opening = clear_width(survey[joined.links()[arc.link].gap].shape);
                if (std::min(width, opening) <= open[arc.to.value]) continue;
                open[arc.to.value] = std::min(width, opening);
                const SharedAir before = from[here].value_or(SharedAir{{here}, opening});
                from[arc.to.value] = SharedAir{before.with, std::min(before.width, opening)};
                waiting.emplace(open[arc.to.value], arc.to.value);
            }
        }
    }
    std::vector<std::optional<SharedAir>> shared;
    for (const RoomPinch& room : rooms) shared.push_back(from[room.space.value]);
    return shared;
}

std::vector<std::size_t> pests_kept_out(const Survey& survey, std::span<const SpaceIndex> to, std::span<const Pest> pests) {
    const Roles roles(survey, to);
    std::vector<std::size_t> kept_out;
    if (roles.start_spaces().empty() || roles.end_spaces().empty()) return kept_out;
    for (std::size_t i = 0; i < pests.size(); ++i) {
        const auto passes = [&](const Gap& gap) { return lets_through(gap, pests[i].size, Sizing::with_plus_minus); };
        const std::vector<double> pinch = pinches(make_network(survey, passes), roles);
        const bool none = std::none_of(roles.end_spaces().begin(), roles.end_spaces().end(),
                                       [&](SpaceIndex end) { return !roles.starts(end) && pinch[end.value] != no_way; });
        if (none) kept_out.push_back(i);
    }
    return kept_out;
}

}  // namespace seamward
