// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/departures.h"

#include <algorithm>
#include <deque>
#include <limits>

#include "catalog/passage.h"
#include "catalog/shipped.h"
#include "network/network.h"
#include "plan/opened_again.h"

namespace seamward {

namespace {

constexpr std::uint32_t nowhere = std::numeric_limits<std::uint32_t>::max();

/// How sure it must be that a gap lets an animal through.
enum class Sure : std::uint8_t { yes, maybe };

bool may_pass(const Gap& gap, const Pest& animal, Sure sure) {
    if (sure == Sure::maybe) return lets_through(gap, animal.size, Sizing::with_plus_minus);
    Gap least = gap;
    least.shape = widened(gap.shape, -std::min(gap.evidence.plus_minus, clear_width(gap.shape)));
    if (least.covered)
        least.covered->shape =
            widened(least.covered->shape, -std::min(least.covered->plus_minus, clear_width(least.covered->shape)));
    return lets_through(least, animal.size, Sizing::stated);
}

/// The ways of one animal about the house, as it stands now.
class WaysOut {
public:
    WaysOut(const Survey& survey, const Pest& animal, std::span<const TreatedGap> closings, Sure sure)
        : survey_(survey),
          network_(make_network(survey, [&](const Gap& gap) { return may_pass(gap, animal, sure); })),
          closed_(survey.gaps.size(), false) {
        for (const TreatedGap& closing : closings) {
            Gap treated = survey[closing.gap];
            close_gap(treated, closing.opening);
            closed_[closing.gap.value] = !may_pass(treated, animal, Sure::yes);
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
        for (const std::size_t near : {std::size_t{0}, std::size_t{1}}) {
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
    departure.way_passes = !occupant.way || may_pass(job.survey[*occupant.way], occupant.animal, Sure::maybe);
    const std::optional<GapIndex> seen_at = departure.way_passes ? occupant.way : std::nullopt;
    const WaysOut sure(job.survey, occupant.animal, closings, Sure::yes);
    if (sure.out_when_closed(occupant.space)) return;
    const WaysOut maybe(job.survey, occupant.animal, closings, Sure::maybe);
    std::vector<GapIndex> main = sure.main_way(occupant.space, seen_at);
    if (main.empty()) main = maybe.main_way(occupant.space, seen_at);
    departure.way_known = !main.empty();
    if (!departure.way_known) {
        departure.last = maybe.closings_around(occupant.space);
        return;
    }
    std::copy_if(main.begin(), main.end(), std::back_inserter(departure.last), [&](GapIndex gap) { return sure.is_closed(gap); });
    if (departure.removal != nullptr && departure.removal->by == Removal::By::one_way && departure.waits())
        departure.device = departure.last.back();
}

/// The first day from which on all nights up to the closing are outside of closed seasons, and the season that came first.
void find_days(const Job& job, Departure& departure, Date date) {
    departure.begin = departure.close_from = date;
    if (departure.removal == nullptr || !departure.waits()) return;
    const Removal& removal = *departure.removal;
    const auto nights = static_cast<int>(removal.quiet_nights);
    const Date last_looked_at = days_after(date, 3 * 366);  // beyond that the table leaves no day at all
    for (int day = 0; day <= nights && departure.begin < last_looked_at; ++day) {
        const auto season = closed_season(removal, job.site.state, days_after(departure.begin, day));
        if (!season) continue;
        if (!departure.season) departure.season = season;
        departure.begin = season->over;
        day = -1;  // from there on anew
    }
    departure.close_from = days_after(departure.begin, nights);
}

/// What waits for several animals waits for the last of them.
void wait_for_each_other(std::vector<Departure>& departures) {
    const auto meet = [](const Departure& a, const Departure& b) {
        return std::any_of(a.last.begin(), a.last.end(),
                           [&](GapIndex gap) { return std::find(b.last.begin(), b.last.end(), gap) != b.last.end(); });
    };
    for (bool changed = true; changed;) {
        changed = false;
        for (Departure& one : departures) {
            for (const Departure& other : departures) {
                if (other.close_from <= one.close_from || !meet(one, other)) continue;
                one.close_from = other.close_from;
                changed = true;
            }
        }
    }
}

}  // namespace

std::vector<Departure> departures_of(const Job& job, std::span<const TreatedGap> closings, Date date) {
    std::vector<Departure> departures;
    for (std::size_t i = 0; i < job.occupied.size(); ++i) {
        const Occupant& occupant = job.occupied[i];
        if (occupant.gone_on(date)) continue;
        const bool listed = std::any_of(departures.begin(), departures.end(), [&](const Departure& other) {
            const Occupant& before = job.occupied[other.occupant];
            return before.space == occupant.space && before.animal.id == occupant.animal.id && before.way == occupant.way;
        });
        if (listed) continue;
        Departure departure;
        departure.occupant = i;
        departure.removal = removal_of(shipped_removals(), occupant.animal.id);
        if (departure.removal == nullptr || departure.removal->by != Removal::By::nothing) find_last(job, closings, departure);
        find_days(job, departure, date);
        departures.push_back(std::move(departure));
    }
    wait_for_each_other(departures);
    return departures;
}

std::vector<GapIndex> open_way_out(const Job& job, const Occupant& occupant) {
    if (job.survey[occupant.space].kind == SpaceKind::outdoors) return {};
    const Survey survey = as_it_stands_to(job, occupant.animal);
    std::optional<GapIndex> way = occupant.way;
    if (way && !may_pass(survey[*way], occupant.animal, Sure::maybe)) way.reset();
    return WaysOut(survey, occupant.animal, {}, Sure::maybe).main_way(occupant.space, way);
}

}  // namespace seamward
