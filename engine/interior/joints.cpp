// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/joints.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <set>
#include <tuple>

#include "interior/joint_groups.h"
#include "interior/joint_rims.h"

namespace seamward {

namespace {

constexpr double touching = 1e-5;    // meters: surfaces so near touch; what counts as flat when the air is cut
constexpr double shortest = 5e-3;    // meters: what is shorter is where wires cross and corners meet
constexpr double finest = 5e-3;      // meters: mouths are compared piece by piece, none shorter than this,
constexpr double most_pieces = 400;  // and about so many of a joint
constexpr double same_point = 3e-5;  // meters: ends of pieces that follow each other
constexpr double known_to = 1e-4;    // meters: lengths are told no finer than the ends of mouths are found
constexpr double into_air = 5e-3;    // meters: how far a way through a joint goes on beyond its mouths
constexpr double straight = 1e-4;    // meters: a corner that is less off the line is none

/// A piece of a mouth, and what it faces across the joint.
struct Piece {
    RimRun run;
    std::size_t facing = 0;  ///< space
    double depth = 1e300;    ///< meters to the nearest mouth of that
};

std::vector<Piece> pieces_of(const std::vector<RimRun>& runs) {
    double whole = 0;
    for (const RimRun& run : runs) whole += run.length();
    const double size = std::max(finest, whole / most_pieces);
    std::vector<Piece> pieces;
    for (const RimRun& run : runs) {
        const auto count = static_cast<std::size_t>(std::max(1.0, std::ceil(run.length() / size)));
        const Vector step = (run.to - run.from) * (1.0 / static_cast<double>(count));
        for (std::size_t i = 0; i < count; ++i)
            pieces.push_back(
                {{run.from + step * static_cast<double>(i), run.from + step * static_cast<double>(i + 1), run.space, run.out},
                 run.space});
    }
    for (Piece& piece : pieces) {
        const Point middle = piece.run.middle();
        for (const Piece& other : pieces) {
            if (other.run.space == piece.run.space) continue;
            const double off = distance(other.run.middle(), middle);
            if (off >= piece.depth) continue;
            piece.depth = off;
            piece.facing = other.run.space;
        }
    }
    return pieces;
}

/// Puts pieces together end to end; the longest line of them, without corners that are none.
std::vector<Point> longest_line(std::vector<const Piece*> pieces) {
    std::vector<Point> best;
    double most = -1;
    std::vector<char> used(pieces.size(), 0);
    const auto extend = [&](std::vector<Point>& line) {
        for (bool more = true; more;) {
            more = false;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                if (used[i]) continue;
                const RimRun& run = pieces[i]->run;
                const bool forward = distance(run.from, line.back()) <= same_point;
                if (!forward && distance(run.to, line.back()) > same_point) continue;
                line.push_back(forward ? run.to : run.from);
                used[i] = 1;
                more = true;
            }
        }
    };
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (used[i]) continue;
        used[i] = 1;
        std::vector<Point> line{pieces[i]->run.from, pieces[i]->run.to};
        extend(line);
        std::reverse(line.begin(), line.end());
        extend(line);
        double size = 0;
        for (std::size_t k = 1; k < line.size(); ++k) size += distance(line[k - 1], line[k]);
        if (size <= most + same_point) continue;
        most = size;
        best = std::move(line);
    }
    std::vector<Point> corners;
    for (const Point& p : best) {
        while (corners.size() >= 2) {
            const Point &a = corners[corners.size() - 2], &b = corners.back();
            const Vector along = p - a;
            const double square = dot(along, along);
            const double share = square > 0 ? dot(b - a, along) / square : 0;
            if (share < 0 || share > 1 || distance(b, a + along * share) > straight) break;
            corners.pop_back();
        }
        corners.push_back(p);
    }
    return corners;
}

Point middle_of_line(const std::vector<Point>& line) {
    double left = 0;
    for (std::size_t i = 1; i < line.size(); ++i) left += distance(line[i - 1], line[i]) / 2;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double size = distance(line[i - 1], line[i]);
        if (left <= size && size > 0) return line[i - 1] + (line[i] - line[i - 1]) * (left / size);
        left -= size;
    }
    return line.back();
}

/// Where the mouth in a space is nearest to a place, and which way is out there.
struct MouthPlace {
    Point at;
    Vector out;
};

MouthPlace nearest_mouth(const std::vector<Piece>& pieces, std::size_t space, const Point& to) {
    MouthPlace best;
    double nearest = 1e300;
    for (const Piece& piece : pieces) {
        if (piece.run.space != space) continue;
        const Vector along = piece.run.to - piece.run.from;
        const double share = std::clamp(dot(to - piece.run.from, along) / dot(along, along), 0.0, 1.0);
        const Point at = piece.run.from + along * share;
        if (distance(at, to) >= nearest) continue;
        nearest = distance(at, to);
        best = {at, piece.run.out};
    }
    return best;
}

/// From the first space to the second through a place on the mouth in either.
std::vector<Point> way_through(const std::vector<Piece>& pieces, const std::array<std::size_t, 2>& between, const Point& at,
                               std::size_t side) {
    const MouthPlace own = nearest_mouth(pieces, between.at(side), at), other = nearest_mouth(pieces, between.at(1 - side), at);
    std::vector<Point> way{at + own.out * into_air, at, other.at, other.at + other.out * into_air};
    if (side == 1) std::reverse(way.begin(), way.end());
    return way;
}

/// The joints of one contact that hangs together.
void add_joints(const std::array<std::uint32_t, 2>& parts, const std::vector<RimRun>& runs, std::vector<Joint>& joints) {
    std::map<std::size_t, double> whole;  // length of the mouths by space
    for (const RimRun& run : runs) whole[run.space] += run.length();
    if (whole.size() < 2) return;
    const std::vector<Piece> pieces = pieces_of(runs);
    std::map<std::array<std::size_t, 2>, std::array<double, 2>> facing;  // how much of either mouth looks at the other
    for (const Piece& piece : pieces) {
        const std::size_t a = piece.run.space, b = piece.facing;
        facing[{std::min(a, b), std::max(a, b)}].at(a < b ? 0 : 1) += piece.run.length();
    }
    for (const auto& [between, sizes] : facing) {
        Joint joint{parts, between, 0, 0, {}, {}, {}};
        joint.length = std::min({whole[between[0]], whole[between[1]], std::max(sizes[0], sizes[1])});
        if (joint.length < shortest) continue;
        std::array<std::vector<const Piece*>, 2> mouths;
        std::vector<double> depths;
        for (const Piece& piece : pieces) {
            const std::size_t side = piece.run.space == between[0] ? 0 : 1;
            if (piece.run.space != between.at(side) || piece.facing != between.at(1 - side)) continue;
            mouths.at(side).push_back(&piece);
            depths.push_back(piece.depth);
        }
        joint.length = std::round(joint.length / known_to) * known_to;
        std::sort(depths.begin(), depths.end());
        joint.depth = std::round(depths[depths.size() / 2] / known_to) * known_to;
        const std::size_t side = mouths[0].empty() ? 1 : 0;
        joint.along = longest_line(mouths.at(side));
        joint.at = middle_of_line(joint.along);
        joint.through = way_through(pieces, between, joint.at, side);
        joints.push_back(std::move(joint));
    }
}

/// Where the contacts of one pair of parts begin, and the end of all.
std::vector<std::size_t> pairs_of(const std::vector<Contact>& contacts) {
    std::vector<std::size_t> first;
    for (std::size_t i = 0; i < contacts.size(); ++i) {
        if (i == 0 || contacts[i].parts != contacts[i - 1].parts) first.push_back(i);
    }
    first.push_back(contacts.size());
    return first;
}

std::vector<Joint> joints_of_pair(std::span<const Contact> contacts, const RimAir& air, const JointGroups& groups,
                                  const std::vector<std::size_t>& space_of) {
    std::vector<std::vector<RimRun>> runs;
    std::set<std::size_t> spaces;
    for (const Contact& contact : contacts) {
        runs.push_back(rim_runs(contact, air, space_of));
        for (const RimRun& run : runs.back()) spaces.insert(run.space);
    }
    if (spaces.size() < 2) return {};
    const std::vector<std::uint32_t> group_of = groups.groups_of(contacts);
    std::map<std::uint32_t, std::vector<RimRun>> by_group;
    for (std::size_t i = 0; i < contacts.size(); ++i) {
        std::vector<RimRun>& all = by_group[group_of[i]];
        all.insert(all.end(), runs[i].begin(), runs[i].end());
    }
    std::vector<Joint> joints;
    for (const auto& [group, all] : by_group) add_joints(contacts[0].parts, all, joints);
    return joints;
}

}  // namespace

std::vector<Joint> find_joints(const Passages& passages, const Bodies& bodies, const std::vector<std::size_t>& space_of,
                               const RunContext& run) {
    const std::vector<Contact> contacts = find_contacts(passages.air().facets, touching, run);
    const RimAir air(passages, bodies);
    const JointGroups groups(passages.air(), std::any_of(contacts.begin(), contacts.end(),
                                                         [](const Contact& contact) { return !contact.is_flush(); }));
    const std::vector<std::size_t> pairs = pairs_of(contacts);
    std::vector<std::vector<Joint>> of_pair(pairs.size() - 1);
    tbb::parallel_for(std::size_t{0}, of_pair.size(), [&](std::size_t i) {
        run.check();
        of_pair[i] = joints_of_pair(std::span(contacts).subspan(pairs[i], pairs[i + 1] - pairs[i]), air, groups, space_of);
    });
    std::vector<Joint> joints;
    for (std::vector<Joint>& some : of_pair) joints.insert(joints.end(), some.begin(), some.end());
    std::stable_sort(joints.begin(), joints.end(), [](const Joint& a, const Joint& b) { return a.length > b.length; });
    return joints;
}

}  // namespace seamward
