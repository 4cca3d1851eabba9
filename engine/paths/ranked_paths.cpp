// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/ranked_paths.h"

#include <algorithm>

#include "paths/detour.h"
#include "paths/ordered_steps.h"
#include "paths/path_order.h"

namespace seamward {

class RankedPaths::Search {
public:
    Search(const Survey& survey, const Network& network, const Roles& roles, bool by_length, const RunContext& context)
        : survey_(survey),
          network_(network),
          roles_(roles),
          ways_(survey, network, roles, by_length, context),
          ordered_(survey, network, roles, ways_),
          finder_(survey, network, ways_, ordered_, context),
          used_(network.space_count()) {
        for (const SpaceIndex start : roles.start_spaces()) {
            trie_.push_back({.space = start});
            used_.forget();
            used_.add(start);
            wait_for(static_cast<std::uint32_t>(trie_.size() - 1));
        }
    }

    std::optional<EntryPath> next() {
        while (!pending_.empty()) {
            std::pop_heap(pending_.begin(), pending_.end(), Later{*this});
            Pending best = std::move(pending_.back());
            pending_.pop_back();
            if (best.found()) return tell(best);
            search(best);
        }
        return std::nullopt;
    }

private:
    static constexpr std::uint32_t none = static_cast<std::uint32_t>(-1);

    /// The beginning of a path: the spaces and gaps from the start to here are those of the parents.
    struct Trunk {
        std::uint32_t parent = none;
        std::uint32_t link = none;  ///< by which `space` was entered
        SpaceIndex space;
        WidthTallies::Tally tally = WidthTallies::empty;
        std::int64_t length = 0;                ///< to the point of `link`
        std::size_t next = 0;                   ///< of the ordered steps from here, those before are taken or lead back
        std::vector<std::uint32_t> taken = {};  ///< links by which paths told go on from here, rising
    };
    /// The best path that leaves the trie at `trunk`: at first only a bound, by widths, then the path itself, whose
    /// steps after the last one here are the best ways on.
    struct Pending {
        std::uint32_t trunk;
        WidthTallies::Sum sum;
        std::vector<Step> steps = {};
        std::int64_t length = 0;

        [[nodiscard]] bool found() const { return !steps.empty(); }
    };

    struct Later {
        Search& search;
        bool operator()(const Pending& x, const Pending& y) const { return search.comes_later(x, y); }
    };

    /// Bounds come before paths of the same widths: what is behind them may be shorter or have smaller ids.
    [[nodiscard]] bool comes_later(const Pending& x, const Pending& y) {
        const auto by_widths = ways_.tallies().compare(x.sum, y.sum);
        if (by_widths != 0) return by_widths > 0;
        if (!x.found() || !y.found()) return x.found() && !y.found();
        if (x.length != y.length) return x.length > y.length;
        return compare_ids(survey_, path(x, whole_steps(x)), path(y, whole_steps(y))) > 0;
    }

    [[nodiscard]] std::vector<Step> whole_steps(const Pending& pending) {
        std::vector<Step> steps = pending.steps;
        while (!steps.back().ends) steps.push_back(ways_.best_after(steps.back()));
        return steps;
    }

    [[nodiscard]] EntryPath path(const Pending& pending, const std::vector<Step>& steps) const {
        EntryPath path;
        for (std::uint32_t i = pending.trunk; i != none; i = trie_[i].parent) {
            path.spaces.push_back(trie_[i].space);
            if (trie_[i].link != none) path.gaps.push_back(network_.links()[trie_[i].link].gap);
        }
        std::reverse(path.spaces.begin(), path.spaces.end());
        std::reverse(path.gaps.begin(), path.gaps.end());
        for (const Step& step : steps) {
            path.spaces.push_back(step.to);
            path.gaps.push_back(network_.links()[step.link].gap);
        }
        return path;
    }

    [[nodiscard]] static bool has_taken(const Trunk& trunk, std::uint32_t link) {
        return std::binary_search(trunk.taken.begin(), trunk.taken.end(), link);
    }

    /// Queues the search from a trunk with its lower bound, that of the best step by which a path not yet told may leave
    /// the trie there; the trunk's spaces must be marked as used.
    void wait_for(std::uint32_t index) {
        Trunk& trunk = trie_[index];
        const std::span<const Step> steps = ordered_.from(trunk.space);
        while (trunk.next < steps.size() && (used_.has(steps[trunk.next].to) || has_taken(trunk, steps[trunk.next].link)))
            ++trunk.next;
        if (trunk.next == steps.size()) return;
        WidthTallies::Sum bound = ways_.ahead(steps[trunk.next]);
        bound.parts[1] = trunk.tally;
        push({index, bound});
    }

    void push(Pending pending) {
        pending_.push_back(std::move(pending));
        std::push_heap(pending_.begin(), pending_.end(), Later{*this});
    }

    void mark_used(std::uint32_t trunk) {
        used_.forget();
        for (std::uint32_t i = trunk; i != none; i = trie_[i].parent) used_.add(trie_[i].space);
    }

    void search(const Pending& bound) {
        const Trunk& trunk = trie_[bound.trunk];
        mark_used(bound.trunk);
        const std::optional<std::uint32_t> last = trunk.link == none ? std::nullopt : std::optional(trunk.link);
        const auto allowed = [&](std::uint32_t link) { return !has_taken(trunk, link); };
        std::optional<std::vector<Step>> steps =
            finder_.find(ordered_.from(trunk.space).subspan(trunk.next), allowed, last, used_);
        if (!steps) return;
        Pending found{bound.trunk, ways_.ahead(steps->back()), std::move(*steps), trunk.length};
        found.sum.parts[1] = trunk.tally;
        std::optional<std::uint32_t> before = last;
        for (const Step& step : found.steps) {
            if (&step != &found.steps.back())
                found.sum.parts[1] = ways_.tallies().plus(found.sum.parts[1], ways_.rank(step.link));
            if (before) found.length += ways_.hop(*before, step.link);
            before = step.link;
        }
        found.length += ways_.length_ahead(found.steps.back());
        push(std::move(found));
    }

    /// Adds the path to the trie and queues what can leave it where it is new.
    EntryPath tell(const Pending& pending) {
        const std::vector<Step> steps = whole_steps(pending);
        std::uint32_t here = pending.trunk;
        mark_used(here);
        for (const Step& step : steps) {
            std::vector<std::uint32_t>& taken = trie_[here].taken;
            taken.insert(std::lower_bound(taken.begin(), taken.end(), step.link), step.link);
            wait_for(here);
            const Trunk& trunk = trie_[here];
            const std::int64_t length = trunk.length + (trunk.link == none ? 0 : ways_.hop(trunk.link, step.link));
            const WidthTallies::Tally tally = ways_.tallies().plus(trunk.tally, ways_.rank(step.link));
            trie_.push_back({here, step.link, step.to, tally, length});
            here = static_cast<std::uint32_t>(trie_.size() - 1);
            used_.add(step.to);
        }
        // A way told up to a passable space may go on from there to another end.
        if (roles_.passable(trie_[here].space) && ways_.open(trie_[here].space)) wait_for(here);
        return path(pending, steps);
    }

    const Survey& survey_;
    const Network& network_;
    const Roles& roles_;
    RemainingWays ways_;
    OrderedSteps ordered_;
    DetourFinder finder_;
    UsedSpaces used_;
    std::vector<Trunk> trie_;
    std::vector<Pending> pending_;  ///< heap
};

RankedPaths::RankedPaths(const Survey& survey, const Network& network, const Roles& roles, bool by_length,
                         const RunContext& context)
    : search_(std::make_unique<Search>(survey, network, roles, by_length, context)) {}
RankedPaths::~RankedPaths() = default;
RankedPaths::RankedPaths(RankedPaths&&) noexcept = default;
RankedPaths& RankedPaths::operator=(RankedPaths&&) noexcept = default;

std::optional<EntryPath> RankedPaths::next() { return search_->next(); }

}  // namespace seamward
