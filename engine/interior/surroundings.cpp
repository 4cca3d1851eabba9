// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/surroundings.h"

#include <algorithm>
#include <numeric>

namespace seamward {

namespace {

constexpr double narrower = 0.6;  // of the radius: a passage of less is no way for the ball
constexpr double wider = 1.5;     // of the radius: a stand of so much is out of the opening
constexpr std::size_t most_stands = 4000;

}  // namespace

Surroundings::Surroundings(const Passages& passages, const Bodies& bodies, const Openings& openings, std::size_t which,
                           double radius)
    : passages_(passages), openings_(openings), which_(which), radius_(radius) {
    const Opening& opening = openings.list[which];
    const auto is_elsewhere = [&](std::uint32_t stand) {
        return passages.is_portal(stand) && openings.at_portal[stand] != Openings::none && openings.at_portal[stand] != which;
    };
    for (const std::uint32_t i : opening.passages) {
        for (const std::uint32_t end : {passages.passage(i).from, passages.passage(i).to}) {
            if (!is_elsewhere(end)) add(end, bodies, opening);
        }
    }
    for (std::size_t k = 0; k < stands_.size(); ++k) {
        if (stands_[k].out) continue;
        if (stands_.size() >= most_stands) {
            cut_short_ = true;
            break;
        }
        for (const std::uint32_t i : passages.of(stands_[k].stand)) {
            const std::uint32_t to = passages.passage(i).across(stands_[k].stand);
            const std::int32_t body = bodies.of[to];
            if (body != opening.first && body != opening.second) continue;
            if (is_elsewhere(to)) continue;
            if (passages.passage(i).clearance >= narrower * radius && openings.may_lead_through(passages, i, which))
                add(to, bodies, opening);
        }
    }
}

void Surroundings::add(std::uint32_t stand, const Bodies& bodies, const Opening& opening) {
    const double clearance = passages_[stand].clearance;
    if (clearance < narrower * radius_ || !local_.emplace(stand, stands_.size()).second) return;
    const std::int32_t body = bodies.of[stand];
    const bool out = clearance >= std::min(wider * radius_, passages_.clearance().cap() * 0.98);
    stands_.push_back({stand, !out ? -1 : body == opening.first ? 0 : body == opening.second ? 1 : -1, out});
}

bool Surroundings::shut_by(const std::vector<Gate>& gates) const { return !cut_short_ && !widest_beside(gates); }

std::optional<Beside> Surroundings::widest_beside(const std::vector<Gate>& gates) const {
    std::vector<Link> links;
    for (std::size_t k = 0; k < stands_.size(); ++k) {
        for (const std::uint32_t i : passages_.of(stands_[k].stand)) {
            const Passage& p = passages_.passage(i);
            const auto to = local_.find(p.across(stands_[k].stand));
            if (to == local_.end() || to->second <= k || p.clearance < narrower * radius_) continue;
            if (!is_any_crossed(gates, passages_, i) && openings_.may_lead_through(passages_, i, which_))
                links.push_back({p.clearance, i, k, to->second, p.led()});
        }
    }
    std::make_heap(links.begin(), links.end());
    // Most of them were never led, and count for what they may be: that does where they do not even so.
    if (!link_up(links, false)) return std::nullopt;
    return link_up(std::move(links), true);
}

std::optional<Beside> Surroundings::link_up(std::vector<Link> links, bool lead) const {
    const std::size_t sides = stands_.size();  // two more: all that is beyond the one end, and the other
    std::vector<std::size_t> parent(sides + 2);
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto find = [&](std::size_t x) {
        while (parent[x] != x) x = parent[x] = parent[parent[x]];
        return x;
    };
    for (std::size_t k = 0; k < sides; ++k) {
        if (stands_[k].side >= 0) parent[k] = sides + static_cast<std::size_t>(stands_[k].side);
    }
    while (!links.empty()) {
        std::pop_heap(links.begin(), links.end());
        Link link = links.back();
        links.pop_back();
        const std::size_t from = find(link.from), to = find(link.to);
        if (from == to) continue;
        if (lead && !link.led) {
            link.led = true;
            link.clearance = clearance_of(link.passage);
            if (link.clearance < narrower * radius_) continue;
            links.push_back(link);
            std::push_heap(links.begin(), links.end());
            continue;
        }
        parent[from] = to;
        if (find(sides) == find(sides + 1)) return Beside{link.passage, link.clearance};
    }
    return std::nullopt;
}

double Surroundings::clearance_of(std::uint32_t passage) const {
    constexpr int turns = 2;
    const auto [known, fresh] = led_.emplace(passage, 0);
    if (fresh) {
        const Passage& p = passages_.passage(passage);
        known->second =
            passages_.way(passage, p.from, passages_[p.from].at, passages_[p.to].at, {p.clearance, 1, turns, narrower * radius_})
                .clearance;
    }
    return known->second;
}

}  // namespace seamward
