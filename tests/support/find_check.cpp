// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/find_check.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <set>
#include <tuple>

#include "base/vector.h"
#include "tests/support/ball_ways.h"

namespace seamward::test {
namespace {

constexpr double length_share = 0.02;     // what a length may be off by
constexpr double bound_share = 0.01;      // how far apart the two bounds of a width may be
constexpr double rounding = 1e-3;         // share of its radius by which a ball on its way may touch something
constexpr double narrower_ball = 0.9;     // of the widest: goes about in spaces without grazing everything
constexpr double piece_reach = 0.15;      // meters: pieces of a gap lie within, other gaps beyond
constexpr double width_over_place = 100;  // a millimeter of width counts like 0.1 m of place

std::set<std::string> names_of(const std::vector<ExpectedSpace>& spaces) {
    std::set<std::string> names;
    for (const ExpectedSpace& space : spaces) names.insert(space.name);
    return names;
}

/// The scene's names of the spaces that were found. A space that was not named is the thin one nearest to it.
std::vector<std::string> names_in(const Scene& scene, const Found& found) {
    const std::set<std::string> known = names_of(scene.spaces);
    std::vector<std::string> names;
    for (const FoundSpace& space : found.spaces) {
        names.push_back(space.id);
        if (known.contains(space.id) || scene.thin_spaces.empty()) continue;
        names.back() = std::ranges::min_element(scene.thin_spaces, {}, [&](const ExpectedSpace& thin) {
                           return distance(thin.inside, space.at);
                       })->name;
    }
    return names;
}

double to_segment(const Point& p, const Point& a, const Point& b) {
    const Vector along = b - a;
    const double whole = dot(along, along);
    return distance(p, a + along * (whole > 0 ? std::clamp(dot(p - a, along) / whole, 0.0, 1.0) : 0));
}

double to_way(const Point& p, const std::vector<Point>& way) {
    double least = way.empty() ? 1e9 : distance(p, way.front());
    for (std::size_t i = 1; i < way.size(); ++i) least = std::min(least, to_segment(p, way[i - 1], way[i]));
    return least;
}

std::string in_mm(double width) {
    char text[40];
    std::snprintf(text, sizeof text, "%.4f mm", width * 1e3);
    return text;
}

std::string in_words(const Found& found, const FoundGap& gap) {
    char at[80];
    std::snprintf(at, sizeof at, " at (%.3f, %.3f, %.3f)", gap.at.x, gap.at.y, gap.at.z);
    return gap.id + " " + found.spaces[gap.between[0]].id + "|" + found.spaces[gap.between[1]].id + " " + in_mm(gap.width) + at;
}

void compare(const ExpectedGap& expected, const FoundGap& gap, const std::string& which, std::string& text) {
    const double off = allowance(expected);
    const auto say = [&](const std::string& what) { text += which + what + "\n"; };
    if (std::abs(gap.width - expected.width) > off) say("width " + in_mm(gap.width));
    if (gap.width > gap.at_most) say("width " + in_mm(gap.width) + " is more than its bound " + in_mm(gap.at_most));
    if (gap.at_most < expected.width - off) say("bound " + in_mm(gap.at_most) + " is too low");
    if (gap.at_most > gap.width + std::max(off, bound_share * gap.width)) {
        say("bound " + in_mm(gap.at_most) + " says little of " + in_mm(gap.width));
    }
    if (!expected.shape.empty() && expected.shape != shape_word(gap.shape)) {
        say(std::string("is a ") + shape_word(gap.shape) + ", not a " + expected.shape);
    }
    if (expected.length > 0 && std::abs(gap.length - expected.length) > length_share * expected.length) {
        say("length " + in_mm(gap.length) + ", not " + in_mm(expected.length));
    }
}

/// Whether a gap that nobody listed is a piece of one that may be told as several.
bool may_be_a_piece(const FoundGap& gap, const std::vector<std::string>& names, std::span<const ExpectedGap> expected) {
    return std::ranges::any_of(expected, [&](const ExpectedGap& whole) {
        const std::set<std::string> pair{whole.one, whole.other};
        return pair == std::set{names[gap.between[0]], names[gap.between[1]]} && gap.width <= whole.width + allowance(whole) &&
               distance(gap.at, whole.near) < piece_reach;
    });
}

}  // namespace

Found found_in(const Scene& scene) {
    Model model;
    model.parts = scene.parts;
    FindSettings settings;
    settings.smallest = scene.smallest;
    settings.widest = scene.widest;
    std::set<std::string> seen{"outdoors"};
    for (const ExpectedSpace& space : scene.spaces) {
        if (seen.insert(space.name).second) settings.rooms.push_back({space.name, SpaceKind::living, space.inside});
    }
    return find_gaps(model, settings, RunContext());
}

std::vector<std::optional<std::size_t>> matches(const Scene& scene, std::span<const ExpectedGap> expected, const Found& found) {
    const std::vector<std::string> names = names_in(scene, found);
    std::vector<std::tuple<double, std::size_t, std::size_t>> pairs;
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const std::set<std::string> wanted{expected[i].one, expected[i].other};
        for (std::size_t j = 0; j < found.gaps.size(); ++j) {
            const FoundGap& gap = found.gaps[j];
            if (wanted != std::set{names[gap.between[0]], names[gap.between[1]]}) continue;
            const double off = to_way(expected[i].near, gap.through) + width_over_place * std::abs(gap.width - expected[i].width);
            pairs.emplace_back(off, i, j);
        }
    }
    std::ranges::sort(pairs);
    std::vector<std::optional<std::size_t>> match(expected.size());
    std::vector<char> taken(found.gaps.size());
    for (const auto& [off, i, j] : pairs) {
        if (match[i] || taken[j]) continue;
        match[i] = j;
        taken[j] = 1;
    }
    return match;
}

std::string differences(const Scene& scene, const Found& found) {
    std::string text;
    const std::size_t spaces = names_of(scene.spaces).size();
    const bool thin = !scene.thin_spaces.empty() && found.spaces.size() == spaces + scene.thin_spaces.size();
    if (!thin && found.spaces.size() != spaces) text += std::to_string(found.spaces.size()) + " spaces\n";
    const std::vector<ExpectedGap>& expected = thin ? scene.gaps_with_thin : scene.gaps;
    const auto match = matches(scene, expected, found);
    std::vector<char> listed(found.gaps.size());
    for (std::size_t i = 0; i < expected.size(); ++i) {
        const std::string which = expected[i].one + "|" + expected[i].other + " " + in_mm(expected[i].width) + ": ";
        if (!match[i]) {
            text += which + "missing\n";
            continue;
        }
        listed[*match[i]] = 1;
        compare(expected[i], found.gaps[*match[i]], which, text);
    }
    const std::size_t most = std::max(scene.most_gaps, expected.size());
    if (found.gaps.size() > most) text += std::to_string(found.gaps.size()) + " gaps, not " + std::to_string(most) + "\n";
    const std::vector<std::string> names = names_in(scene, found);
    for (std::size_t j = 0; j < found.gaps.size(); ++j) {
        const FoundGap& gap = found.gaps[j];
        const bool piece = most > expected.size() && may_be_a_piece(gap, names, expected);
        if (listed[j] == 0 && !piece) text += "not expected: " + in_words(found, gap) + "\n";
    }
    return text;
}

std::string faults_of_ways(const Scene& scene, const Found& found) {
    std::string text;
    const StraightWays ways(scene.parts);
    std::vector<Point> places;
    for (const ExpectedSpace& space : scene.spaces) places.push_back(space.inside);
    for (const FoundGap& gap : found.gaps) {
        if (gap.through.size() < 2) return gap.id + " has no way\n";
        places.push_back(gap.through.front());
        places.push_back(gap.through.back());
    }
    const BallWays balls(ways, narrower_ball * scene.widest / 2, places);
    const auto stands_in = [&](std::size_t place, const std::string& name) {
        for (std::size_t i = 0; i < scene.spaces.size(); ++i) {
            if (scene.spaces[i].name == name && balls.joined(place, i)) return true;
        }
        return false;
    };
    const std::set<std::string> known = names_of(scene.spaces);
    std::size_t place = scene.spaces.size();
    for (const FoundGap& gap : found.gaps) {
        const std::string which = in_words(found, gap) + ": ";
        const double free = gap.width / 2 * (1 - rounding);
        double least = free;
        for (std::size_t i = 1; i < gap.through.size(); ++i) {
            least = std::min(least, ways.to(gap.through[i - 1], gap.through[i], free));
        }
        if (least < free) text += which + "on its way are only " + in_mm(2 * least) + " free\n";
        const std::string &one = found.spaces[gap.between[0]].id, &other = found.spaces[gap.between[1]].id;
        const std::size_t from = place++, to = place++;
        for (const std::size_t end : {from, to}) {
            for (const ModelPart& part : scene.parts) {
                if (is_in_solid(part.mesh, places[end])) text += which + "an end lies in " + part.id + "\n";
            }
        }
        if (!known.contains(one) || !known.contains(other)) continue;  // a thin space: no ball of `widest` stands in it
        if (!(stands_in(from, one) && stands_in(to, other)) && !(stands_in(from, other) && stands_in(to, one))) {
            text += which + "its way does not lead from one space to the other\n";
        }
    }
    return text;
}

}  // namespace seamward::test
