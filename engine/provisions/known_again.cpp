// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/known_again.h"

#include <algorithm>
#include <array>
#include <iterator>
#include <limits>
#include <map>
#include <tuple>

#include "provisions/camera.h"

namespace seamward {

namespace {

constexpr std::array ways_to_know{KnownBy::same_parts, KnownBy::shared_parts, KnownBy::key, KnownBy::place};

void add_parts(const Audit& audit, const std::vector<std::size_t>& parts, const std::optional<Point>& at, Marks& marks) {
    for (const std::size_t part : parts) {
        if (part < audit.parts.size() && !audit.parts[part].global_id.empty())
            marks.global_ids.push_back(audit.parts[part].global_id);
    }
    std::sort(marks.global_ids.begin(), marks.global_ids.end());
    marks.global_ids.erase(std::unique(marks.global_ids.begin(), marks.global_ids.end()), marks.global_ids.end());
    if (at && can_be_shown(*at)) marks.at = at;
}

/// 0: the same GlobalIds; 1: none in common.
double not_shared(const Marks& a, const Marks& b) {
    std::vector<std::string> both;
    std::set_intersection(a.global_ids.begin(), a.global_ids.end(), b.global_ids.begin(), b.global_ids.end(),
                          std::back_inserter(both));
    if (both.empty()) return 1;
    const std::size_t all = a.global_ids.size() + b.global_ids.size() - both.size();
    return static_cast<double>(all - both.size()) / static_cast<double>(all);
}

/// Pairs up what is left free of both sides.
class Pairing {
public:
    Pairing(const std::vector<Marks>& first, const std::vector<Marks>& second)
        : first_(first), second_(second), free_first_(first.size(), true), free_second_(second.size(), true) {}

    std::vector<Known> make() {
        take_the_same();
        for (const KnownBy by : ways_to_know) take(by);
        return std::move(pairs_);
    }

private:
    using Positions = std::map<std::string, std::vector<std::size_t>>;
    using Names = std::map<std::pair<std::string, std::string>, std::vector<std::size_t>>;

    void pair_up(std::size_t a, std::size_t b, const Closeness& close) {
        free_first_[a] = free_second_[b] = false;
        pairs_.push_back({a, b, close});
    }

    static Names by_name(const std::vector<Marks>& all) {
        Names names;
        for (std::size_t i = 0; i < all.size(); ++i) names[{all[i].rule, all[i].name}].push_back(i);
        return names;
    }

    /// What did not change at all: no other pair can be closer, so that take() would come to the same. It keeps audits of large
    /// buildings from being quadratic.
    void take_the_same() {
        const Names names = by_name(second_);
        for (const auto& [name, here] : by_name(first_)) {
            const auto there = names.find(name);
            if (name.second.empty() || here.size() != 1 || there == names.end() || there->second.size() != 1) continue;
            const std::size_t i = here.front(), j = there->second.front();
            const Marks &a = first_[i], &b = second_[j];
            const bool no_parts = a.global_ids.empty() && b.global_ids.empty();
            if (no_parts || (a.global_ids == b.global_ids && moved(a, b) == 0))
                pair_up(i, j, *closeness(no_parts ? KnownBy::key : KnownBy::same_parts, a, b));
        }
    }

    static Positions left(const std::vector<Marks>& all, const std::vector<bool>& free) {
        Positions left;
        for (std::size_t i = 0; i < all.size(); ++i) {
            if (free[i]) left[all[i].rule].push_back(i);
        }
        return left;
    }

    void take(KnownBy by) {
        const Positions here = left(first_, free_first_), there = left(second_, free_second_);
        for (const auto& [rule, some] : here) {
            const auto others = there.find(rule);
            if (others == there.end()) continue;
            std::vector<Known> candidates;
            for (const std::size_t i : some) {
                for (const std::size_t j : others->second) {
                    if (const std::optional<Closeness> close = closeness(by, first_[i], second_[j]))
                        candidates.push_back({i, j, *close});
                }
            }
            std::sort(candidates.begin(), candidates.end(), [&](const Known& a, const Known& b) { return closer(a, b); });
            for (const Known& pair : candidates) {
                if (free_first_[pair.first] && free_second_[pair.second]) pair_up(pair.first, pair.second, pair.close);
            }
        }
    }

    /// Equally close ones by what they are called, so that no order of the lists decides; which of the two names is looked at
    /// first does not matter: pairs that shut each other out have one in common.
    [[nodiscard]] bool closer(const Known& a, const Known& b) const {
        if (a.close < b.close || b.close < a.close) return a.close < b.close;
        return std::tie(first_[a.first].name, second_[a.second].name, a.first, a.second) <
               std::tie(first_[b.first].name, second_[b.second].name, b.first, b.second);
    }

    const std::vector<Marks>& first_;
    const std::vector<Marks>& second_;
    std::vector<bool> free_first_, free_second_;
    std::vector<Known> pairs_;
};

}  // namespace

Marks marks_of(const Audit& audit, const Finding& finding) {
    Marks marks{finding.rule, finding.key, {}, {}};
    add_parts(audit, finding.parts, finding.at, marks);
    return marks;
}

Marks marks_of(const Audit& audit, const Provision& provision, const Checked& thing) {
    Marks marks{provision.id, thing.subject.english(), {}, {}};
    add_parts(audit, thing.parts, thing.at, marks);
    return marks;
}

bool operator<(const Closeness& a, const Closeness& b) {
    return std::tie(a.by, a.not_shared, a.moved, a.renamed) < std::tie(b.by, b.not_shared, b.moved, b.renamed);
}

double moved(const Marks& a, const Marks& b) {
    return a.at && b.at ? distance(*a.at, *b.at) : std::numeric_limits<double>::infinity();
}

std::optional<Closeness> closeness(KnownBy by, const Marks& a, const Marks& b) {
    const Closeness close{by, not_shared(a, b), moved(a, b), a.name != b.name};
    const bool placed = a.at && b.at;
    bool known = false;
    switch (by) {
        case KnownBy::same_parts: known = close.not_shared == 0; break;
        case KnownBy::shared_parts: known = close.not_shared < 1 && (!placed || close.moved <= same_part_place); break;
        case KnownBy::key: known = !a.name.empty() && a.name == b.name; break;
        case KnownBy::place: known = placed && close.moved <= same_place; break;
    }
    return known ? std::optional(close) : std::nullopt;
}

std::optional<Closeness> closeness(const Marks& a, const Marks& b) {
    for (const KnownBy by : ways_to_know) {
        if (const std::optional<Closeness> close = closeness(by, a, b)) return close;
    }
    return std::nullopt;
}

std::vector<Known> known_again(const std::vector<Marks>& first, const std::vector<Marks>& second) {
    return Pairing(first, second).make();
}

}  // namespace seamward
