// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/network.h"

#include <numeric>

namespace seamward {

Network::Network(std::size_t space_count, std::vector<Link> links)
    : links_(std::move(links)), first_(space_count + 1, 0), arcs_(links_.size() * 2) {
    for (const Link& link : links_) {
        ++first_[link.a.value];
        ++first_[link.b.value];
    }
    std::exclusive_scan(first_.begin(), first_.end(), first_.begin(), std::uint32_t{0});
    std::vector<std::uint32_t> next(first_.begin(), first_.end() - 1);
    for (std::uint32_t i = 0; i < links_.size(); ++i) {
        arcs_[next[links_[i].a.value]++] = {links_[i].b, i};
        arcs_[next[links_[i].b.value]++] = {links_[i].a, i};
    }
}

Network make_network(const Survey& survey, const std::function<bool(const Gap&)>& counts) {
    std::vector<Link> links;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        const Gap& gap = survey.gaps[i];
        if (counts(gap)) links.push_back({gap.between[0], gap.between[1], {i}, clear_width(gap.shape)});
    }
    return {survey.spaces.size(), std::move(links)};
}

Roles::Roles(const Survey& survey, std::span<const SpaceIndex> to) : bits_(survey.spaces.size(), 0) {
    for (const SpaceIndex space : to) bits_[space.value] |= end_bit;
    for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
        const Space& space = survey.spaces[i];
        if (space.starts_paths()) bits_[i] |= start_bit;
        if (to.empty() && space.is_living()) bits_[i] |= end_bit;
        if (!space.starts_paths() && !space.is_living()) bits_[i] |= middle_bit;
    }
    list_ends();
}

Roles::Roles(const Survey& survey, std::span<const SpaceIndex> from, std::span<const SpaceIndex> to)
    : bits_(survey.spaces.size(), 0) {
    for (const SpaceIndex space : from) bits_[space.value] |= start_bit;
    for (const SpaceIndex space : to) bits_[space.value] |= end_bit;
    for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
        if (!survey.spaces[i].starts_paths() && !survey.spaces[i].is_living()) bits_[i] |= middle_bit;
    }
    list_ends();
}

void Roles::list_ends() {
    for (std::uint32_t i = 0; i < bits_.size(); ++i) {
        if (starts({i})) start_spaces_.push_back({i});
        if (ends({i})) end_spaces_.push_back({i});
    }
}

std::vector<Roles> one_way_roles(const Survey& survey) {
    std::vector<SpaceIndex> starts, ends, both;
    for (std::uint32_t i = 0; i < survey.spaces.size(); ++i) {
        const Space& space = survey.spaces[i];
        if (space.is_living()) ends.push_back({i});
        if (space.starts_paths()) (space.is_living() ? both : starts).push_back({i});
    }
    std::vector<Roles> all{Roles(survey, starts, ends)};
    for (const SpaceIndex one : both) {
        std::vector<SpaceIndex> others;
        for (const SpaceIndex end : ends) {
            if (end != one) others.push_back(end);
        }
        all.emplace_back(survey, std::span(&one, 1), others);
    }
    return all;
}

}  // namespace seamward
