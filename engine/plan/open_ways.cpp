// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/open_ways.h"

#include <algorithm>
#include <stdexcept>

#include "network/pinches.h"

namespace seamward {

namespace {

/// The doorways that stay open to one animal, each with the width that is left.
class OpenDoorways {
public:
    OpenDoorways(const ClosingProblem& problem, std::span<const Pick> picks, std::size_t pest)
        : space_count_(problem.space_count) {
        const PestSet bit = PestSet{1} << pest;
        std::vector<double> width(problem.doorways.size());
        for (std::size_t i = 0; i < width.size(); ++i)
            width[i] = (problem.doorways[i].open_to & bit) != 0 ? problem.doorways[i].width : no_way;
        for (const Pick& pick : picks) {
            const Choice& choice = problem[pick];
            double& left = width[pick.doorway];
            // What stops this animal, or leaves less than there was; what is gnawed through leaves all.
            if ((choice.stops & bit) != 0)
                left = no_way;
            else if ((choice.gnaw & bit) == 0)
                left = std::min(left, choice.leaves);
        }
        std::vector<Link> links;
        for (std::uint32_t i = 0; i < width.size(); ++i) {
            const Doorway& doorway = problem.doorways[i];
            if (width[i] != no_way) links.push_back({doorway.a, doorway.b, doorway.gap, width[i]});
        }
        network_.emplace(problem.space_count, std::move(links));
    }

    [[nodiscard]] double pinch(const Roles& roles) const {
        const std::vector<double> all = pinches(*network_, roles);
        double widest = no_way;
        for (const SpaceIndex end : roles.end_spaces()) widest = std::max(widest, all[end.value]);
        return widest;
    }

    /// A way with the fewest gaps whose widths are all `pinch` or more; there must be one.
    [[nodiscard]] EntryPath way(const Roles& roles, double pinch) const {
        std::vector<Arc> by(space_count_, Arc{{}, 0});
        std::vector<bool> seen(space_count_, false);
        std::vector<SpaceIndex> waiting(roles.start_spaces().begin(), roles.start_spaces().end());
        for (const SpaceIndex start : waiting) seen[start.value] = true;
        for (std::size_t i = 0; i < waiting.size(); ++i) {
            const SpaceIndex here = waiting[i];
            for (const Arc& arc : network_->arcs(here)) {
                if (seen[arc.to.value] || network_->links()[arc.link].width < pinch) continue;
                seen[arc.to.value] = true;
                by[arc.to.value] = {here, arc.link};
                if (roles.ends(arc.to)) return traced_back(roles, by, arc.to);
                if (roles.passable(arc.to)) waiting.push_back(arc.to);
            }
        }
        throw std::logic_error("there is no such way");
    }

private:
    [[nodiscard]] EntryPath traced_back(const Roles& roles, const std::vector<Arc>& by, SpaceIndex end) const {
        EntryPath path;
        SpaceIndex here = end;
        for (; !roles.starts(here); here = by[here.value].to) {
            path.spaces.push_back(here);
            path.gaps.push_back(network_->links()[by[here.value].link].gap);
        }
        path.spaces.push_back(here);
        std::reverse(path.spaces.begin(), path.spaces.end());
        std::reverse(path.gaps.begin(), path.gaps.end());
        return path;
    }

    std::size_t space_count_;
    std::optional<Network> network_;
};

/// The widest way of one animal; nothing when it has none.
std::optional<LeftWay> widest_way_of(const ClosingProblem& problem, std::span<const Pick> picks, std::size_t pest) {
    const OpenDoorways open(problem, picks, pest);
    std::optional<LeftWay> widest;
    for (const Roles& roles : problem.roles) {
        const double pinch = open.pinch(roles);
        if (pinch != no_way && (!widest || pinch > widest->pinch)) widest = LeftWay{open.way(roles, pinch), pinch, pest};
    }
    return widest;
}

}  // namespace

std::optional<LeftWay> widest_way(const ClosingProblem& problem, std::span<const Pick> picks) {
    std::optional<LeftWay> widest;
    for (std::size_t pest = 0; pest < problem.pests.size(); ++pest) {
        std::optional<LeftWay> way = widest_way_of(problem, picks, pest);
        if (way && (!widest || way->pinch > widest->pinch)) widest = std::move(way);
    }
    return widest;
}

std::vector<double> pinches_after_each(const ClosingProblem& problem, std::span<const Pick> picks) {
    std::vector<std::optional<LeftWay>> ways;
    for (std::size_t pest = 0; pest < problem.pests.size(); ++pest) ways.push_back(widest_way_of(problem, {}, pest));
    std::vector<double> after;
    for (std::size_t i = 0; i < picks.size(); ++i) {
        const GapIndex gap = problem.doorways[picks[i].doorway].gap;
        double widest = 0;
        for (std::size_t pest = 0; pest < ways.size(); ++pest) {
            std::optional<LeftWay>& way = ways[pest];
            if (way && std::find(way->path.gaps.begin(), way->path.gaps.end(), gap) != way->path.gaps.end())
                way = widest_way_of(problem, picks.first(i + 1), pest);
            if (way) widest = std::max(widest, way->pinch);
        }
        after.push_back(widest);
    }
    return after;
}

EntryPath path_along(const Survey& survey, std::span<const GapIndex> gaps) {
    EntryPath path;
    for (std::size_t i = 0; i < gaps.size(); ++i) {
        const GapIndex gap = gaps[i];
        const std::array<SpaceIndex, 2>& ends = survey[gap].between;
        if (i == 0) {
            // The far end is where the next gap begins, or else the one that is lived in.
            const auto leads_on = [&](SpaceIndex space) {
                if (gaps.size() == 1) return survey[space].is_living();
                return survey[gaps[1]].between[0] == space || survey[gaps[1]].between[1] == space;
            };
            const bool first = survey[ends[0]].starts_paths() && (leads_on(ends[1]) || !survey[ends[1]].starts_paths());
            path.spaces.push_back(first ? ends[0] : ends[1]);
        }
        const SpaceIndex here = path.spaces.back();
        if (ends[0] != here && ends[1] != here) throw std::logic_error("these gaps do not follow each other");
        path.spaces.push_back(survey[gap].across(here));
        path.gaps.push_back(gap);
    }
    return path;
}

}  // namespace seamward
