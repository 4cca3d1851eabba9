// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/way_through.h"

#include <algorithm>
#include <vector>

#include "network/network.h"
#include "paths/ranked_paths.h"

namespace seamward {

namespace {

class WayFinder {
public:
    WayFinder(const Survey& survey, GapIndex gap, std::span<const SpaceIndex> to, const RunContext& context)
        : survey_(survey), gap_(gap), context_(context) {
        for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
            const Space& space = survey.spaces[i];
            if (space.starts_paths()) starts_.push_back({i});
            if (to.empty() && space.is_living()) ends_.push_back({i});
        }
        ends_.insert(ends_.end(), to.begin(), to.end());
    }

    std::optional<EntryPath> find() {
        if (is_shut(survey_[gap_].shape)) return std::nullopt;
        const auto& [a, b] = survey_[gap_].between;
        look(a, b);
        look(b, a);
        return best_;
    }

private:
    [[nodiscard]] bool starts(SpaceIndex space) const { return survey_[space].starts_paths(); }
    [[nodiscard]] bool ends(SpaceIndex space) const { return std::find(ends_.begin(), ends_.end(), space) != ends_.end(); }
    [[nodiscard]] bool passable(SpaceIndex space) const { return !starts(space) && !survey_[space].is_living(); }

    /// Open gaps that do not touch any of the spaces.
    [[nodiscard]] Network network_without(const std::vector<SpaceIndex>& used) const {
        return make_network(survey_, [&](const Gap& gap) {
            return !is_shut(gap.shape) && std::none_of(used.begin(), used.end(), [&](SpaceIndex space) {
                return gap.between[0] == space || gap.between[1] == space;
            });
        });
    }

    /// The best way on from a space to an end that uses none of the spaces.
    [[nodiscard]] std::optional<EntryPath> way_on(SpaceIndex from, const std::vector<SpaceIndex>& used) const {
        if (ends(from)) return EntryPath{{from}, {}};
        if (!passable(from)) return std::nullopt;
        std::vector<SpaceIndex> to;
        for (const SpaceIndex end : ends_) {
            if (std::find(used.begin(), used.end(), end) == used.end()) to.push_back(end);
        }
        if (to.empty()) return std::nullopt;
        const Network network = network_without(used);
        const Roles roles(survey_, std::span(&from, 1), to);
        return RankedPaths(survey_, network, roles, false, context_).next();
    }

    void take(const EntryPath& before, SpaceIndex far) {
        if (std::find(before.spaces.begin(), before.spaces.end(), far) != before.spaces.end()) return;
        std::optional<EntryPath> after = way_on(far, before.spaces);
        if (!after) return;
        EntryPath whole = before;
        whole.gaps.push_back(gap_);
        whole.gaps.insert(whole.gaps.end(), after->gaps.begin(), after->gaps.end());
        whole.spaces.insert(whole.spaces.end(), after->spaces.begin(), after->spaces.end());
        if (!best_ || pinch(whole) > pinch(*best_)) best_ = std::move(whole);
    }

    [[nodiscard]] double pinch(const EntryPath& path) const { return clear_width(survey_[pinch_gap(survey_, path)].shape); }

    void look(SpaceIndex near, SpaceIndex far) {
        if (starts(near)) {
            take({{near}, {}}, far);
            return;
        }
        if (!passable(near) || (starts(far) && !ends(far))) return;
        const Network network = network_without({far});
        const Roles roles(survey_, starts_, std::span(&near, 1));
        RankedPaths beginnings(survey_, network, roles, false, context_);
        for (std::size_t i = 0; i < most_beginnings; ++i) {
            const std::optional<EntryPath> before = beginnings.next();
            if (!before || (best_ && pinch(*before) <= pinch(*best_))) return;
            take(*before, far);
        }
    }

    const Survey& survey_;
    GapIndex gap_;
    const RunContext& context_;
    std::vector<SpaceIndex> starts_, ends_;
    std::optional<EntryPath> best_;
};

}  // namespace

std::optional<EntryPath> way_through(const Survey& survey, GapIndex gap, std::span<const SpaceIndex> to,
                                     const RunContext& context) {
    return WayFinder(survey, gap, to, context).find();
}

}  // namespace seamward
