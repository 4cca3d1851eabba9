// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/ranked_paths.h"

#include <algorithm>
#include <unordered_set>

#include "paths/detour.h"

namespace seamward {

class RankedPaths::Search {
public:
    Search(const Survey& survey, const Network& network, const Roles& roles, bool by_length, const RunContext& context)
        : survey_(survey),
          network_(network),
          roles_(roles),
          ways_(survey, network, roles, by_length, context),
          finder_(survey, network, roles, ways_, context),
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
        std::int64_t length = 0;                       ///< to the point of `link`
        std::unordered_set<std::uint32_t> taken = {};  ///< links by which paths told go on from here
    };
    /// The best path that leaves the trie at `trunk`: at first only a bound, by widths, then the path itself.
    struct Pending {
        std::uint32_t trunk;
        WidthTallies::Sum sum;
        std::vector<Step> steps = {};
        std::int64_t length = 0;

        [[nodiscard]] bool found() const { return !steps.empty(); }
    };

    struct Later {
        const Search& search;
        bool operator()(const Pending& x, const Pending& y) const { return search.comes_later(x, y); }
    };

    /// Bounds come before paths of the same widths: what is behind them may be shorter or have smaller ids.
    [[nodiscard]] bool comes_later(const Pending& x, const Pending& y) const {
        const auto by_widths = ways_.tallies().compare(x.sum, y.sum);
        if (by_widths != 0) return by_widths > 0;
        if (!x.found() || !y.found()) return x.found() && !y.found();
        if (x.length != y.length) return x.length > y.length;
        const EntryPath x_path = path(x);
        const EntryPath y_path = path(y);
        for (std::size_t i = 0; i < x_path.gaps.size(); ++i) {
            const int by_id = survey_[x_path.gaps[i]].id.compare(survey_[y_path.gaps[i]].id);
            if (by_id != 0) return by_id > 0;
        }
        const auto ends = [&](const EntryPath& p) { return std::pair(survey_[p.from()].id, survey_[p.to()].id); };
        return ends(x_path) > ends(y_path);
    }

    [[nodiscard]] EntryPath path(const Pending& pending) const {
        EntryPath path;
        for (std::uint32_t i = pending.trunk; i != none; i = trie_[i].parent) {
            path.spaces.push_back(trie_[i].space);
            if (trie_[i].link != none) path.gaps.push_back(network_.links()[trie_[i].link].gap);
        }
        std::reverse(path.spaces.begin(), path.spaces.end());
        std::reverse(path.gaps.begin(), path.gaps.end());
        for (const Step& step : pending.steps) {
            path.spaces.push_back(step.to);
            path.gaps.push_back(network_.links()[step.link].gap);
        }
        return path;
    }

    /// The steps by which a path not yet told may leave the trie; the trunk's spaces must be marked as used.
    void allowed_steps(const Trunk& trunk, std::vector<Step>& steps) const {
        finder_.steps_from(trunk.space, steps);
        std::erase_if(steps, [&](const Step& step) { return used_.has(step.to) || trunk.taken.contains(step.link); });
    }

    /// Queues the search from a trunk with its lower bound; the trunk's spaces must be marked as used.
    void wait_for(std::uint32_t index) {
        allowed_steps(trie_[index], scratch_);
        if (scratch_.empty()) return;
        const auto best = std::min_element(scratch_.begin(), scratch_.end(), [&](const Step& x, const Step& y) {
            return ways_.tallies().compare(ways_.ahead(x), ways_.ahead(y)) < 0;
        });
        WidthTallies::Sum bound = ways_.ahead(*best);
        bound.parts[1] = trie_[index].tally;
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
        allowed_steps(trunk, scratch_);
        const std::optional<std::uint32_t> last = trunk.link == none ? std::nullopt : std::optional(trunk.link);
        std::optional<std::vector<Step>> steps = finder_.find(scratch_, last, used_);
        if (!steps) return;
        Pending found{bound.trunk, {{trunk.tally, WidthTallies::empty}}, std::move(*steps), trunk.length};
        std::optional<std::uint32_t> before = last;
        for (const Step& step : found.steps) {
            found.sum.parts[0] = ways_.tallies().plus(found.sum.parts[0], ways_.rank(step.link));
            if (before) found.length += ways_.hop(*before, step.link);
            before = step.link;
        }
        push(std::move(found));
    }

    /// Adds the path to the trie and queues what can leave it where it is new.
    EntryPath tell(const Pending& pending) {
        EntryPath told = path(pending);
        std::uint32_t here = pending.trunk;
        mark_used(here);
        for (const Step& step : pending.steps) {
            trie_[here].taken.insert(step.link);
            wait_for(here);
            const Trunk& trunk = trie_[here];
            const std::int64_t length = trunk.length + (trunk.link == none ? 0 : ways_.hop(trunk.link, step.link));
            const WidthTallies::Tally tally = ways_.tallies().plus(trunk.tally, ways_.rank(step.link));
            trie_.push_back({here, step.link, step.to, tally, length});
            here = static_cast<std::uint32_t>(trie_.size() - 1);
            used_.add(step.to);
        }
        if (roles_.passable(trie_[here].space) && ways_.open(trie_[here].space))
            wait_for(here);  // ends there, or goes on to another end
        return told;
    }

    const Survey& survey_;
    const Network& network_;
    const Roles& roles_;
    RemainingWays ways_;
    DetourFinder finder_;
    UsedSpaces used_;
    std::vector<Trunk> trie_;
    std::vector<Pending> pending_;  ///< heap
    std::vector<Step> scratch_;
};

RankedPaths::RankedPaths(const Survey& survey, const Network& network, const Roles& roles, bool by_length,
                         const RunContext& context)
    : search_(std::make_unique<Search>(survey, network, roles, by_length, context)) {}
RankedPaths::~RankedPaths() = default;
RankedPaths::RankedPaths(RankedPaths&&) noexcept = default;
RankedPaths& RankedPaths::operator=(RankedPaths&&) noexcept = default;

std::optional<EntryPath> RankedPaths::next() { return search_->next(); }

}  // namespace seamward
