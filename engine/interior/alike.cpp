// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/alike.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>
#include <optional>

#include "geometry/polyline.h"
#include "interior/mouth_way.h"
#include "interior/section.h"
#include "interior/throat.h"

namespace seamward {

namespace {

constexpr double same_side = 2e-5;           // meters; sides of mouths are told apart by steps of that
constexpr double same_area = 0.005;          // likewise their areas, as a fraction
constexpr std::array exits{1.4, 1.1, 1.02};  // where a ball larger by that fits, one is out of the opening
constexpr double less = 1e-3;                // of the radius: what the way may lose when it is moved
constexpr double exact = 5e-4;               // of the radius, on the way home

/// The part of another opening's way that lies between its ends, from where a ball larger by `exit` fits on the one side to the
/// other, moved. Empty where it does not come out.
std::vector<Point> moved_way(const Clearance& clearance, const MeasuredOpening& other, const Vector& by, double exit) {
    const std::vector<Point>& corners = other.through;
    const std::size_t first = nearest_on(corners, other.at).leg;
    const double wide = std::min(exit * other.width / 2, clearance.cap() * 0.99);
    const auto is_out = [&](const Point& p) { return clearance.at(p + by) >= wide; };
    std::size_t begin = first, end = first + 1;
    while (begin > 0 && !is_out(corners[begin])) --begin;
    while (end + 1 < corners.size() && !is_out(corners[end])) ++end;
    if (end >= corners.size() || !is_out(corners[begin]) || !is_out(corners[end])) return {};
    std::vector<Point> way;
    for (std::size_t i = begin; i <= end; ++i) way.push_back(corners[i] + by);
    return way;
}

/// Around a point the nearest stand of a body that a ball gets to straight and where one larger by `exit` fits; Openings::none
/// where there is none.
std::uint32_t stand_at(const Passages& passages, const Bodies& bodies, const Openings& openings, const Point& at, double radius,
                       double exit, std::int32_t body) {
    const Air& air = passages.air();
    const std::uint32_t cell = air.complex.cell_at(at);
    std::vector<std::pair<double, std::uint32_t>> near;
    const auto add = [&](std::uint32_t stand) {
        if (passages[stand].clearance < exit * radius && passages[stand].clearance < passages.clearance().cap() * 0.99) return;
        if (bodies.of[stand] == body && openings.body_at(passages, stand) == body)
            near.emplace_back(distance(passages[stand].at, at), stand);
    };
    add(passages.middle_of(cell));
    for (const std::uint32_t portal : air.portals_of(cell)) add(portal);
    std::sort(near.begin(), near.end());
    for (const auto& [off, stand] : near) {
        if (!passages.clearance().tree().is_near(at, passages[stand].at, radius)) return stand;
    }
    return Openings::none;
}

/// The cut across an opening, where that across another of the same width has the same area.
std::optional<Section> as_large_section(const Passages& passages, const Point& one, const Point& other, const Vector& facing,
                                        double radius) {
    constexpr double same = 0.01;
    const double size = length(facing);
    if (size <= 0) return {};
    const std::optional<Section> a = section_at(passages, one, facing * (1 / size), radius);
    std::optional<Section> b = section_at(passages, other, facing * (1 / size), radius);
    return a && b && std::abs(a->area - b->area) <= same * std::max(a->area, b->area) ? std::move(b) : std::nullopt;
}

/// Of those that an opening is measured as.
Shape with_width(const Shape& shape, double width) {
    if (const auto* slot = std::get_if<Slot>(&shape)) return Slot{width, slot->length};
    if (const auto* ring = std::get_if<Ring>(&shape)) return Ring{width, ring->around};
    return Hole{width};
}

/// For each opening the first one whose mouth has the same size, as the holes of a screen and the vents along an eave do, or
/// itself; those that were led through come first.
std::vector<std::size_t> look_alikes(const Passages& passages, const Openings& openings) {
    using Look = std::array<std::int64_t, 4>;
    std::map<Look, std::size_t> first;
    std::vector<std::size_t> like(openings.list.size());
    for (const bool unled : {false, true}) {
        for (std::size_t i = 0; i < like.size(); ++i) {
            if (openings.list[i].unled != unled) continue;
            like[i] = i;
            if (openings.list[i].stray) continue;  // its mouth does not part the two
            const Mouth mouth(passages, openings.list[i]);
            const Vector sides = mouth.high - mouth.low;
            const auto steps = [](double value) { return static_cast<std::int64_t>(std::llround(value)); };
            const Look look{steps(sides.x / same_side), steps(sides.y / same_side), steps(sides.z / same_side),
                            steps(std::log(std::max(mouth.area, 1e-12)) / same_area)};
            like[i] = first.emplace(look, i).first->second;
        }
    }
    return like;
}

/// From a stand of an opening's passage on its way home the first that is, with its cell, of a body; Openings::none where there
/// is none close by.
std::uint32_t stand_on_way(const Passages& passages, const WaysHome& home, const Openings& openings, std::uint32_t stand,
                           std::int32_t body) {
    constexpr int most_steps = 8;
    for (int step = 0; step < most_steps && stand != WaysHome::none; ++step) {
        if (openings.body_at(passages, stand) == body) return stand;
        stand = home.next(stand);
    }
    return Openings::none;
}

/// Leads the ball through another opening that looks the same, moved to this one.
class AlikeWay {
public:
    AlikeWay(const Passages& passages, const Bodies& bodies, const WaysHome& home, const Openings& openings, std::size_t which,
             const MeasuredOpening& other, const Vector& by)
        : passages_(passages),
          bodies_(bodies),
          home_(home),
          openings_(openings),
          opening_(openings.list[which]),
          other_(other),
          by_(by) {}

    /// From a stand of the one body to one of the other; nothing where the ball does not get through so.
    [[nodiscard]] std::optional<ThroatWay> lead() const {
        if (!(other_.width > 0)) return {};
        for (const double exit : exits) {
            if (std::optional<ThroatWay> way = to_stands_beside(exit)) return way;
        }
        return to_its_passage();
    }

private:
    /// Through the opening only, without the ends; nothing where it is narrower.
    [[nodiscard]] std::optional<ThroatWay> core(double exit) const {
        return through(moved_way(passages_.clearance(), other_, by_, exit));
    }

    /// The same straight through the middle of a hole.
    [[nodiscard]] std::optional<ThroatWay> straight_core() const {
        constexpr double to_each_side = 1.5;  // radii
        if (!opening_.hole) return {};
        const MeasuredOpening::Cut cut = cut_of(Mouth(passages_, opening_).pieces);
        const Vector off = cut.normal * (to_each_side * other_.width / 2);
        return through({cut.middle + off * -1, cut.middle, cut.middle + off});
    }

    [[nodiscard]] std::optional<ThroatWay> through(std::vector<Point> corners) const {
        if (corners.size() < 2) return {};
        ThroatWay way;
        way.corners = std::move(corners);
        way.radius = other_.width / 2;
        way.tightest = other_.at + by_;
        const double least = way.radius * (1 - less);
        for (std::size_t i = 0; i + 1 < way.corners.size(); ++i) {
            const Nearest near = passages_.clearance().tree().nearest(way.corners[i], way.corners[i + 1], way.radius);
            if (!near.found()) continue;
            way.radius = near.distance;
            way.tightest = near.on_query;
            if (way.radius < least) return {};
        }
        return way;
    }

    /// Straight on to stands of the cells where it comes out.
    [[nodiscard]] std::optional<ThroatWay> to_stands_beside(double exit) const {
        std::optional<ThroatWay> way = core(exit);
        if (!way) return {};
        const auto end_at = [&](const Point& at, std::int32_t body) {
            return stand_at(passages_, bodies_, openings_, at, way->radius, exit, body);
        };
        for (int turn = 0; turn < 2; ++turn) {
            way->ends = {end_at(way->corners.front(), opening_.first), end_at(way->corners.back(), opening_.second)};
            if (way->ends[0] != Openings::none && way->ends[1] != Openings::none) {
                way->corners.insert(way->corners.begin(), passages_[way->ends[0]].at);
                way->corners.push_back(passages_[way->ends[1]].at);
                return way;
            }
            std::reverse(way->corners.begin(), way->corners.end());
        }
        return {};
    }

    /// On to where the opening's widest passage goes, or to stands of the cells beside its mouth.
    [[nodiscard]] std::optional<ThroatWay> to_its_passage() const {
        std::optional<ThroatWay> way = straight_core();
        if (!way) way = core(exits.back());
        if (!way) return {};
        if (opening_.unled) {
            const double fits = other_.width / 2 * (1 - less);
            way->ends = {stand_beside(passages_, bodies_, openings_, opening_, opening_.first, fits),
                         stand_beside(passages_, bodies_, openings_, opening_, opening_.second, fits)};
        } else {
            const Passage& p = passages_.passage(opening_.widest);
            const bool forward = bodies_.of[p.from] == opening_.first;
            way->ends = {stand_on_way(passages_, home_, openings_, forward ? p.from : p.to, opening_.first),
                         stand_on_way(passages_, home_, openings_, forward ? p.to : p.from, opening_.second)};
        }
        if (way->ends[0] == Openings::none || way->ends[1] == Openings::none) return {};
        const auto span = [&] {
            return distance(way->corners.front(), passages_[way->ends[0]].at) +
                   distance(way->corners.back(), passages_[way->ends[1]].at);
        };
        const double one = span();
        std::reverse(way->corners.begin(), way->corners.end());
        if (span() > one) std::reverse(way->corners.begin(), way->corners.end());
        for (const std::uint32_t end : {way->ends[1], way->ends[0]}) {
            if (!lead_on(passages_, end, other_.width / 2 * (1 - less), *way)) return {};
            std::reverse(way->corners.begin(), way->corners.end());
        }
        return way;
    }

    const Passages& passages_;
    const Bodies& bodies_;
    const WaysHome& home_;
    const Openings& openings_;
    const Opening& opening_;
    const MeasuredOpening& other_;
    Vector by_;
};

/// Measures an opening by the way of the ball through another that looks the same, moved to this one. The way is led
/// anew, from body to body through the mouth, and the bound is that of the mouth; the length is the other's where a cut across is
/// as large. Nothing where the ball does not get through so, or a larger one might.
std::optional<MeasuredOpening> measure_alike(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                             const Openings& openings, std::size_t which, std::size_t like,
                                             const MeasuredOpening& other) {
    const Clearance& clearance = passages.clearance();
    const Mouth mouth(passages, openings.list[which]);
    const Vector by = mouth.low - Mouth(passages, openings.list[like]).low;
    std::optional<ThroatWay> found = AlikeWay(passages, bodies, home, openings, which, other, by).lead();
    if (!found) return {};
    ThroatWay& way = *found;
    const double least = other.width / 2 * (1 - less);
    int crossed = 0;
    Point in_mouth;
    for (std::size_t i = 0; i + 1 < way.corners.size(); ++i) {
        for (const ConvexPolygon& piece : mouth.pieces) {
            const std::optional<double> part = crossing(piece, way.corners[i], way.corners[i + 1]);
            if (!part) continue;
            in_mouth = way.corners[i] + (way.corners[i + 1] - way.corners[i]) * *part;
            ++crossed;
        }
    }
    if (crossed % 2 == 0) return {};
    const Point moved = other.at + by;
    const double there = nearest_on(way.corners, moved).distance <= less * way.radius ? clearance.at(moved) : 0;
    const bool is_held = there >= least && there <= sure * way.radius;
    const Point at = is_held ? moved : in_mouth;  // held as tightly there, or nearly
    std::optional<MeasuredOpening::Cut> cut;
    if (openings.list[which].hole) {
        cut = cut_of(mouth.pieces);
    } else if (!std::holds_alternative<Hole>(other.shape)) {
        if (!other.cut) return {};
        const std::optional<Section> section = as_large_section(passages, other.at, at, other.cut->normal, way.radius);
        if (!section) return {};
        cut = cut_of(section->pieces);
    }
    lead_home(passages, home, way.ends[1], exact, way);
    std::reverse(way.corners.begin(), way.corners.end());
    lead_home(passages, home, way.ends[0], exact, way);
    std::reverse(way.corners.begin(), way.corners.end());
    if (way.radius < least) return {};
    std::vector<Stand> wider;
    const double most = widest_in(clearance, mouth.pieces, way.radius, clearance.cap(), wider);
    if (most > way.radius * sure) return {};
    MeasuredOpening m;
    m.width = 2 * way.radius;
    m.at_most = 2 * std::max(way.radius, most);
    m.shape = with_width(other.shape, m.width);
    m.length = std::holds_alternative<Hole>(m.shape) ? m.width : other.length;
    m.depth = other.depth;
    m.depth_of_other = true;
    m.at = at;
    m.through = std::move(way.corners);
    m.parts = parts_around(passages, m.at);
    m.take_mouth(mouth);
    m.cut = cut;
    return m;
}

}  // namespace

std::vector<std::vector<MeasuredOpening>> measure_all(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                                      const Openings& openings, const RunContext& run) {
    constexpr int most_rounds = 12;
    run.stage("measuring gaps");
    const std::vector<std::size_t> like = look_alikes(passages, openings);
    std::vector<std::vector<MeasuredOpening>> measured(like.size());
    std::vector<std::size_t> pattern(like.size());  // by first of its kind: the one that others are tried like
    std::vector<std::size_t> fresh, rest;           // to be measured anew; those that wait
    for (std::size_t i = 0; i < like.size(); ++i) (like[i] == i ? fresh : rest).push_back(i);
    // What cannot be measured like the first of its kind serves as the next one to be tried like.
    for (int round = 0; !fresh.empty(); ++round) {
        tbb::parallel_for(std::size_t{0}, fresh.size(), [&](std::size_t k) {
            run.check();
            measured[fresh[k]] = measure(passages, bodies, home, openings, fresh[k]);
        });
        for (const std::size_t i : fresh) pattern[like[i]] = i;
        if (round == most_rounds) {
            fresh = std::exchange(rest, {});
            continue;
        }
        fresh.clear();
        tbb::parallel_for(std::size_t{0}, rest.size(), [&](std::size_t k) {
            run.check();
            const std::size_t i = rest[k], other = pattern[like[i]];
            if (measured[other].size() != 1) return;
            if (auto alike = measure_alike(passages, bodies, home, openings, i, other, measured[other][0]))
                measured[i] = {*std::move(alike)};
        });
        std::vector<std::size_t> left;
        for (const std::size_t i : rest) {
            if (!measured[i].empty()) continue;
            const bool is_first = std::exchange(pattern[like[i]], like.size()) != like.size();
            (is_first ? fresh : left).push_back(i);
        }
        rest = std::move(left);
    }
    return measured;
}

}  // namespace seamward
