// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <span>
#include <vector>

#include "base/survey.h"

namespace seamward {

/// A gap as an edge between two spaces.
struct Link {
    SpaceIndex a, b;
    GapIndex gap;
    double width = 0;  ///< clear width as stated, meters
};

/// One way along a link, as seen from a space.
struct Arc {
    SpaceIndex to;
    std::uint32_t link = 0;
};

/// Spaces as nodes, the gaps that count as edges; parallel edges are the rule. Undirected.
class Network {
public:
    /// O(spaces + links)
    Network(std::size_t space_count, std::vector<Link> links);

    [[nodiscard]] std::size_t space_count() const { return first_.size() - 1; }
    [[nodiscard]] std::span<const Link> links() const { return links_; }
    /// All ways out of a space, in the order of the links.
    [[nodiscard]] std::span<const Arc> arcs(SpaceIndex space) const {
        return std::span(arcs_).subspan(first_[space.value], first_[space.value + 1] - first_[space.value]);
    }

private:
    std::vector<Link> links_;
    std::vector<std::uint32_t> first_;
    std::vector<Arc> arcs_;
};

/// The network of those gaps for which `counts` says true.
[[nodiscard]] Network make_network(const Survey& survey, const std::function<bool(const Gap&)>& counts);

/// What a space may be in an entry path.
class Roles {
public:
    /// Paths start at outdoors and source spaces; they end at the spaces `to`, or at all living spaces when there
    /// are none. Outdoors, source and living spaces never stand in the middle.
    Roles(const Survey& survey, std::span<const SpaceIndex> to);
    /// Paths start at these spaces and end at those only; what stands in the middle stays the same. No space is both.
    Roles(const Survey& survey, std::span<const SpaceIndex> from, std::span<const SpaceIndex> to);

    [[nodiscard]] bool starts(SpaceIndex space) const { return (bits_[space.value] & start_bit) != 0; }
    [[nodiscard]] bool ends(SpaceIndex space) const { return (bits_[space.value] & end_bit) != 0; }
    [[nodiscard]] bool passable(SpaceIndex space) const { return (bits_[space.value] & middle_bit) != 0; }
    [[nodiscard]] std::span<const SpaceIndex> start_spaces() const { return start_spaces_; }
    [[nodiscard]] std::span<const SpaceIndex> end_spaces() const { return end_spaces_; }

private:
    void list_ends();

    static constexpr std::uint8_t start_bit = 1, end_bit = 2, middle_bit = 4;

    std::vector<std::uint8_t> bits_;
    std::vector<SpaceIndex> start_spaces_, end_spaces_;
};

/// All entry paths of a survey as sets of paths none of which has a space that is start and end at once: one for the spaces where
/// paths only start, and one for each living space that is a source, from there. Where there is no such space, just one.
[[nodiscard]] std::vector<Roles> one_way_roles(const Survey& survey);

}  // namespace seamward
