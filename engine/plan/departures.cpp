// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/departures.h"

#include <algorithm>
#include <deque>
#include <limits>

#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "network/network.h"

namespace seamward {

namespace {

constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();

/// The ways of one animal about the house, as it stands now.
class WaysOut {
public:
    WaysOut(const Survey& survey, const Pest& animal, std::span<const TreatedGap> closings)
        : survey_(survey),
          network_(make_network(survey, [&](const Gap& gap) { return lets_through(gap, animal.size, Sizing::with_plus_minus); })),
          closed_(survey.gaps.size(), false) {
        for (const TreatedGap& closing : closings) {
            Gap treated = survey[closing.gap];
            close_gap(treated, closing.opening);
            closed_[closing.gap.value] = !lets_through(treated, animal.size, Sizing::with_plus_minus);
        }
    }

    [[nodiscard]] bool is_closed(GapIndex gap) const { return closed_[gap.value]; }

    /// Whether it gets out from a space with all closings done.
    [[nodiscard]] bool out_when_closed(SpaceIndex from) const {
        const auto usable = [&](const Link& link) { return !is_closed(link.gap); };
        return !way(from, nowhere, usable, [](const Link&) { return 0; }).empty() || is_out(from);
    }

    /// The gaps along the main way out from a space, from inside to outdoors; empty: there is none.
    [[nodiscard]] std::vector<GapIndex> main_way(SpaceIndex from, std::optional<GapIndex> by_way_of) const {
        if (!by_way_of) return widest(from, nowhere);
        // To the near side of that gap, through it, and out on the other; the better of both directions.
        std::vector<GapIndex> best;
        for (const int near : {0, 1}) {
            const SpaceIndex here = survey_[*by_way_of].between.at(near);
            const SpaceIndex there = survey_[*by_way_of].between.at(1 - near);
            const bool through_room = survey_[there].is_living() || (here != from && survey_[here].is_living());
            if (is_out(here) || through_room) continue;
            std::vector<GapIndex> gaps = here == from ? std::vector<GapIndex>() : widest(from, here.value);
            if (here != from && gaps.empty()) continue;
            gaps.push_back(*by_way_of);
            const std::vector<GapIndex> rest = is_out(there) ? std::vector<GapIndex>() : widest(there, nowhere);
            if (!is_out(there) && rest.empty()) continue;
            gaps.insert(gaps.end(), rest.begin(), rest.end());
            if (best.empty() || width_along(gaps) > width_along(best)) best = std::move(gaps);
        }
        return best.empty() ? widest(from, nowhere) : best;  // where it was seen is not joined to its space
    }

    /// Closings at the gaps of a space.
    [[nodiscard]] std::vector<GapIndex> closings_around(SpaceIndex space) const {
        std::vector<GapIndex> gaps;
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            const auto& between = survey_.gaps[i].between;
            if (closed_[i] && (between[0] == space || between[1] == space)) gaps.push_back({i});
        }
        return gaps;
    }

private:
    [[nodiscard]] bool is_out(SpaceIndex space) const { return survey_[space].kind == SpaceKind::outdoors; }

    [[nodiscard]] double width_along(const std::vector<GapIndex>& gaps) const {
        double width = std::numeric_limits<double>::infinity();
        for (const GapIndex gap : gaps) width = std::min(width, counted_width(survey_[gap], Sizing::with_plus_minus));
        return width;
    }

    /// The widest way to a space, or to outdoors (`nowhere`); among equally wide ones one with the fewest closings.
    [[nodiscard]] std::vector<GapIndex> widest(SpaceIndex from, std::uint32_t to) const {
        std::vector<double> widths;
        for (const Link& link : network_.links()) widths.push_back(counted_width(survey_[link.gap], Sizing::with_plus_minus));
        std::sort(widths.begin(), widths.end());
        widths.erase(std::unique(widths.begin(), widths.end()), widths.end());
        const auto wide_enough = [&](double width) {
            return [this, width](const Link& link) { return counted_width(survey_[link.gap], Sizing::with_plus_minus) >= width; };
        };
        const auto none = [](const Link&) { return 0; };
        // The wider the gaps that count, the fewer ways there are.
        const auto past = std::partition_point(widths.begin(), widths.end(),
                                               [&](double width) { return !way(from, to, wide_enough(width), none).empty(); });
        if (past == widths.begin()) return {};
        return way(from, to, wide_enough(*(past - 1)), [this](const Link& link) { return is_closed(link.gap) ? 1 : 0; });
    }

    /// A way along usable links with the least sum of prices, each 0 or 1, then found first.
    template <class Usable, class Price>
    [[nodiscard]] std::vector<GapIndex> way(SpaceIndex from, std::uint32_t to, Usable&& usable, Price&& price) const {
        constexpr std::uint32_t far = std::numeric_limits<std::uint32_t>::max();
        std::vector<std::uint32_t> cost(network_.space_count(), far);
        std::vector<Arc> by(network_.space_count());
        std::vector<bool> done(network_.space_count(), false);
        std::deque<SpaceIndex> waiting{from};
        cost[from.value] = 0;
        while (!waiting.empty()) {
            const SpaceIndex here = waiting.front();
            waiting.pop_front();
            if (done[here.value]) continue;
            done[here.value] = true;
            if (here != from && (to == nowhere ? is_out(here) : here.value == to)) return traced(from, here, by);
            if (here != from && (is_out(here) || survey_[here].is_living())) continue;
            for (const Arc& arc : network_.arcs(here)) {
                const Link& link = network_.links()[arc.link];
                if (done[arc.to.value] || !usable(link)) continue;
                const std::uint32_t there = cost[here.value] + static_cast<std::uint32_t>(price(link));
                if (there >= cost[arc.to.value]) continue;
                cost[arc.to.value] = there;
                by[arc.to.value] = {here, arc.link};
                if (there == cost[here.value])
                    waiting.push_front(arc.to);
                else
                    waiting.push_back(arc.to);
            }
        }
        return {};
    }

    [[nodiscard]] std::vector<GapIndex> traced(SpaceIndex from, SpaceIndex to, const std::vector<Arc>& by) const {
        std::vector<GapIndex> gaps;
        for (SpaceIndex here = to; here != from; here = by[here.value].to)
            gaps.push_back(network_.links()[by[here.value].link].gap);
        std::reverse(gaps.begin(), gaps.end());
        return gaps;
    }

    const Survey& survey_;
    Network network_;
    std::vector<bool> closed_;  ///< by gap: a closing stops the animal there
};

/// Fills in what waits for the animal.
void find_last(const Job& job, std::span<const TreatedGap> closings, Departure& departure) {
    const Occupant& occupant = job.occupied[departure.occupant];
    const WaysOut ways(job.survey, occupant.animal, closings);
    const std::vector<GapIndex> main = ways.main_way(occupant.space, occupant.way);
    departure.way_known = !main.empty();
    if (!departure.way_known) {
        departure.last = ways.closings_around(occupant.space);
        return;
    }
    if (ways.out_when_closed(occupant.space)) return;
    std::copy_if(main.begin(), main.end(), std::back_inserter(departure.last), [&](GapIndex gap) { return ways.is_closed(gap); });
    if (departure.removal != nullptr && departure.removal->by == Removal::By::one_way && departure.waits())
        departure.device = departure.last.back();
}

}  // namespace

Date Departure::close_from(Date date) const {
    return days_after(season ? season->over : date, removal != nullptr ? static_cast<int>(removal->quiet_nights) : 0);
}

std::vector<Departure> departures_of(const Job& job, std::span<const TreatedGap> closings, Date date) {
    std::vector<Departure> departures;
    for (std::size_t i = 0; i < job.occupied.size(); ++i) {
        const Occupant& occupant = job.occupied[i];
        if (occupant.left) continue;
        Departure departure;
        departure.occupant = i;
        departure.removal = removal_of(shipped_removals(), occupant.animal.id);
        if (departure.removal == nullptr || departure.removal->by != Removal::By::nothing) find_last(job, closings, departure);
        if (departure.waits() && departure.removal != nullptr)
            departure.season = closed_season(*departure.removal, job.site.state, date);
        departures.push_back(std::move(departure));
    }
    return departures;
}

}  // namespace seamward
