// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/measure.h"

#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>
#include <utility>

#include "base/plane.h"
#include "interior/depth.h"
#include "interior/section.h"
#include "interior/surroundings.h"
#include "interior/throat.h"
#include "interior/widen.h"

namespace seamward {

namespace {

constexpr double exact = 5e-4;       // fraction of the width
constexpr double settled = 1.0015;   // a bound no farther above the width is as good as it gets
constexpr double long_enough = 1.7;  // an opening of no more than so many squares of its width is a hole
constexpr int most_slices = 16;

/// A piece of the mouth, in the plane of one portal.
struct Strip {
    Point middle;
    double width = 0;   ///< meters across, within the plane
    double length = 0;  ///< meters
};

/// A cut through an opening in strips: what is long is cut up along its length, so that each has about one width.
class Strips {
public:
    Strips(const Passages& passages, const std::vector<ConvexPolygon>& pieces, double radius) : passages_(passages) {
        for (const ConvexPolygon& piece : pieces) cut(piece, radius);
    }

    [[nodiscard]] double length() const {
        double sum = 0;
        for (const Strip& s : strips_) sum += s.length;
        return sum;
    }
    [[nodiscard]] double area() const {
        double sum = 0;
        for (const Strip& s : strips_) sum += s.length * s.width;
        return sum;
    }

private:
    void cut(const ConvexPolygon& polygon, double radius) {
        Vector far;
        for (std::size_t i = 0; i < polygon.size(); ++i) {
            for (std::size_t j = i + 1; j < polygon.size(); ++j) {
                const Vector d = polygon[j] - polygon[i];
                if (dot(d, d) > dot(far, far)) far = d;
            }
        }
        const double span = seamward::length(far);
        if (span <= 0) return;
        const int slices = std::clamp(static_cast<int>(span / (8 * radius)), 1, most_slices);
        const Vector along = far * (1 / span);
        double low = 1e300, high = -1e300;
        for (const Point& p : polygon) {
            const double d = dot(along, {p.x, p.y, p.z});
            low = std::min(low, d);
            high = std::max(high, d);
        }
        ConvexPolygon rest = polygon, before;
        for (int i = 1; i <= slices && !rest.empty(); ++i) {
            ConvexPolygon slice = rest;
            if (i < slices) {
                split(rest, {along, low + (high - low) * i / slices}, 1e-12, before, slice);
                rest = before;
            }
            if (!slice.empty()) take(slice);
        }
    }

    void take(const ConvexPolygon& slice) {
        const Vector doubled = doubled_area(slice);
        const double area = seamward::length(doubled) / 2;
        if (area <= 0) return;
        const Vector normal = doubled * (0.5 / area);
        const Stand stand = passages_.clearance().highest(slice, {.tolerance = 0.005, .effort = 24}).stand;
        if (stand.clearance < passages_.least()) return;
        // Where the mouth is cut at a slant, the strip is wider than the ball that gets through it.
        double slant = 1;
        const std::vector<Clearance::Hold> holds = passages_.clearance().holds_of(stand.at);
        if (!holds.empty()) {
            const double off = dot(holds[0].toward, normal);
            slant = std::max(0.3, std::sqrt(std::max(0.0, 1 - off * off)));
        }
        const double width = 2 * stand.clearance / slant;
        strips_.push_back({stand.at, width, area / width});
    }

    const Passages& passages_;
    std::vector<Strip> strips_;
};

/// The outline around all pieces of a flat section, in its plane (Andrew 1979), counterclockwise.
Loop hull_of(const std::vector<ConvexPolygon>& pieces) {
    Vector normal;
    for (const ConvexPolygon& piece : pieces) {
        if (const Vector area = doubled_area(piece); dot(area, area) > dot(normal, normal)) normal = area;
    }
    normal = normal * (1 / length(normal));
    Vector u = cross(normal, std::abs(normal.x) < 0.7 ? Vector{1, 0, 0} : Vector{0, 1, 0});
    u = u * (1 / length(u));
    const Vector v = cross(normal, u);
    Loop points;
    for (const ConvexPolygon& piece : pieces) {
        for (const Point& p : piece) points.push_back({dot(u, p - pieces[0][0]), dot(v, p - pieces[0][0])});
    }
    std::sort(points.begin(), points.end(), [](Point2 a, Point2 b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    Loop hull;
    for (int side = 0; side < 2; ++side) {
        const std::size_t start = hull.size();
        for (const Point2& p : points) {
            while (hull.size() >= start + 2 && cross(hull.back() - hull[hull.size() - 2], p - hull.back()) <= 0) hull.pop_back();
            hull.push_back(p);
        }
        hull.pop_back();
        std::reverse(points.begin(), points.end());
    }
    return hull;
}

/// The radius of a section's outline when that is a circle, as far as facets can be one.
std::optional<double> round_outline(const std::vector<ConvexPolygon>& pieces) {
    constexpr double roundness = 0.04;
    const Loop hull = hull_of(pieces);
    if (hull.size() < 6) return {};
    const double area = doubled_area(hull) / 2;
    Point2 center;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Point2 &p = hull[i], &q = hull[(i + 1) % hull.size()];
        center = center + (p + q) * (cross(p, q) / (6 * area));
    }
    double least = 1e300, most = 0;
    for (std::size_t i = 0; i < hull.size(); ++i) {
        const Point2 p = hull[i] - center, m = (hull[i] + hull[(i + 1) % hull.size()]) * 0.5 - center;
        most = std::max(most, std::sqrt(dot(p, p)));
        least = std::min(least, std::sqrt(dot(m, m)));
    }
    if (least < (1 - 2 * roundness) * most) return {};
    return std::sqrt(area / std::numbers::pi);
}

/// What a section looks like, and how long it is: a strip of length l and width w has a rim of 2 l + 2 w and an area of l w; a
/// ring has half its rim as its middle circumference. What has more area than a strip of its width, such as a cut along the wires
/// of a screen, is as long as all its strips together.
Shape shape_of(const Section& section, double width, double& length) {
    if (section.area <= long_enough * width * width) {
        length = width;
        return Hole{width};
    }
    const std::optional<double> radius = round_outline(section.pieces);
    if (radius) {
        const double filled = section.area / (std::numbers::pi * *radius * *radius);
        if (filled < 0.9) {
            length = section.rim / 2;
            return Ring{width, 2 * *radius * std::sqrt(1 - filled)};
        }
    }
    const double of_rim = (section.rim + std::sqrt(std::max(0.0, section.rim * section.rim - 16 * section.area))) / 4;
    length = std::max(of_rim, section.area / width);
    return Slot{width, length};
}

/// Directions that a flat cut through an opening at its narrowest may face: as the portals on the way do, across what holds the
/// ball and what is long, along the way.
std::vector<Vector> facings(const Passages& passages, const ThroatWay& way, const std::vector<ConvexPolygon>& mouth,
                            const TightPlace& place) {
    const Vector& along = place.along;
    std::vector<Vector> list;
    const auto add = [&](Vector v) {
        const double size = length(v);
        if (size <= 0) return;
        v = v * (1 / size);
        if (std::none_of(list.begin(), list.end(), [&](const Vector& w) { return std::abs(dot(v, w)) > 0.9999; }))
            list.push_back(v);
    };
    for (const std::uint32_t portal : way.portals) {
        const std::span<const Point> corners = passages.air().complex.corners_of(passages.air().complex.portals[portal]);
        if (passages[portal].clearance <= 1.5 * way.radius) add(doubled_area(ConvexPolygon(corners.begin(), corners.end())));
    }
    Vector longest;
    for (const ConvexPolygon& piece : mouth) {
        for (std::size_t i = 0; i < piece.size(); ++i) {
            const Vector edge = piece[(i + 1) % piece.size()] - piece[i];
            if (dot(edge, edge) > dot(longest, longest)) longest = edge;
        }
    }
    for (const Clearance::Hold& hold : passages.clearance().holds_of(place.at)) {
        add(cross(hold.toward, longest));
        add(along - hold.toward * dot(along, hold.toward));
    }
    add(along);
    return list;
}

/// The flat cuts through a place of the way, the smallest first.
std::vector<Section> sections_at(const Passages& passages, const ThroatWay& way, const std::vector<ConvexPolygon>& mouth,
                                 const TightPlace& place) {
    std::vector<Section> sections;
    for (const Vector& facing : facings(passages, way, mouth, place)) {
        if (std::optional<Section> section = section_at(passages, place.at, facing, way.radius))
            sections.push_back(std::move(*section));
    }
    std::stable_sort(sections.begin(), sections.end(), [](const Section& a, const Section& b) { return a.area < b.area; });
    return sections;
}

/// How far two edges lie on each other, in meters.
double shared_length(const Point& a, const Point& b, const Point& c, const Point& d) {
    constexpr double in_line = 2e-5;  // meters
    const double size = distance(a, b);
    if (size <= in_line) return 0;
    const Vector along = (b - a) * (1 / size), p = c - a, q = d - a;
    const double s = dot(p, along), t = dot(q, along);
    if (length(p - along * s) > in_line || length(q - along * t) > in_line) return 0;
    return std::max(0.0, std::min(size, std::max(s, t)) - std::max(0.0, std::min(s, t)));
}

/// A flat mouth as a cut. Between wires that cross in two layers any other is as long as the wires.
Section section_of_mouth(const std::vector<ConvexPolygon>& mouth) {
    Section section{mouth, 0, 0};
    for (std::size_t i = 0; i < mouth.size(); ++i) {
        const ConvexPolygon& mine = mouth[i];
        section.area += length(doubled_area(mine)) / 2;
        for (std::size_t k = 0; k < mine.size(); ++k) {
            const Point& next = mine[(k + 1) % mine.size()];
            section.rim += distance(mine[k], next);
            for (std::size_t j = 0; j < i; ++j) {
                const ConvexPolygon& other = mouth[j];
                for (std::size_t l = 0; l < other.size(); ++l)
                    section.rim -= 2 * shared_length(mine[k], next, other[l], other[(l + 1) % other.size()]);
            }
        }
    }
    return section;
}

/// A flat cut that shuts an opening, and the radius of the largest ball that fits into it.
struct ShutBy {
    std::optional<Section> section;
    Point at;  ///< a place of the way where it is
    double at_most = 0;
    std::vector<Stand> stands;  ///< places in cuts where a larger ball fits than on the way
};

/// Straight across where the opening is narrowest, the cut is smallest and its length is the opening's own. `most`: what fits
/// into the mouth. Where the mouth is no wider than the way, the width is settled and the smallest cut will do.
ShutBy narrowest_cut(const Passages& passages, const Surroundings& around, const Opening& opening, const ThroatWay& way,
                     const std::vector<ConvexPolygon>& mouth, double most) {
    constexpr std::size_t most_places = 4;
    const double limit = std::max(most, way.radius * 1.1);
    const bool is_settled = most <= way.radius * settled;
    const double floor = is_settled ? limit * 0.999 : way.radius;
    if (opening.hole && most <= way.radius * sure) return {section_of_mouth(mouth), way.tightest, most, {}};
    std::vector<TightPlace> places = tight_places(passages, way, most_places);
    places.insert(places.begin() + 1, {way.tightest, places[0].along});
    ShutBy best{{}, places[0].at, limit, {}};
    for (const TightPlace& place : places) {
        for (Section& section : sections_at(passages, way, mouth, place)) {
            if (!around.shut_by({Gate(section, way.radius)})) continue;
            const double widest = widest_in(passages.clearance(), section.pieces, floor, best.at_most, best.stands);
            if (widest >= best.at_most) continue;
            best.section = std::move(section);
            best.at = place.at;
            best.at_most = widest;
            if (is_settled || widest <= way.radius * settled) return best;
        }
    }
    return best;
}

std::array<Point, 2> box_around(const std::vector<ConvexPolygon>& pieces) {
    Point low = pieces[0][0], high = low;
    for (const ConvexPolygon& piece : pieces) {
        for (const Point& p : piece) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
    }
    return {low, high};
}

}  // namespace

MeasuredOpening::Cut cut_of(const std::vector<ConvexPolygon>& pieces) {
    MeasuredOpening::Cut cut;
    Vector weighted;
    for (const ConvexPolygon& piece : pieces) {
        const Vector doubled = doubled_area(piece);
        const double area = length(doubled) / 2;
        weighted = weighted + (middle_of(piece.data(), piece.size()) - pieces[0][0]) * area;
        if (dot(doubled, doubled) > dot(cut.normal, cut.normal)) cut.normal = doubled;
        cut.area += area;
    }
    cut.normal = cut.normal * (1 / length(cut.normal));
    cut.middle = pieces[0][0] + weighted * (1 / cut.area);
    return cut;
}

Mouth::Mouth(const Passages& passages, const Opening& opening) {
    const CellComplex& complex = passages.air().complex;
    for (const std::uint32_t portal : opening.mouth) {
        const std::span<const Point> corners = complex.corners_of(complex.portals[portal]);
        pieces.emplace_back(corners.begin(), corners.end());
        area += length(doubled_area(pieces.back())) / 2;
    }
    take_box();
}

Mouth::Mouth(std::vector<ConvexPolygon> of) : pieces(std::move(of)) {
    for (const ConvexPolygon& piece : pieces) area += length(doubled_area(piece)) / 2;
    take_box();
}

void Mouth::take_box() {
    if (pieces.empty()) return;
    const auto [least, most] = box_around(pieces);
    low = least;
    high = most;
}

namespace {

/// Stretches of a way that are as tight as it gets.
class TightStretches {
public:
    TightStretches(const Passages& passages, const ThroatWay& way) : way_(way) {
        double nearest = 1e300;
        for (std::size_t i = 0; i + 1 < way.corners.size(); ++i) {
            const Point& a = way.corners[i];
            const Vector ab = way.corners[i + 1] - a;
            const int steps = std::clamp(static_cast<int>(length(ab) / (0.5 * way.radius)), 4, 64);
            const double t = dot(ab, ab) > 0 ? std::clamp(dot(way.tightest - a, ab) / dot(ab, ab), 0.0, 1.0) : 0;
            for (int k = 0; k <= steps; ++k) {
                for (const double part : {static_cast<double>(k) / steps, k == steps ? -1 : t}) {
                    if (part < static_cast<double>(k) / steps || part >= static_cast<double>(k + 1) / steps) continue;
                    const Point p = a + ab * part;
                    samples_.push_back({p, ab, i, passages.clearance().at(p) <= 1.003 * way.radius});
                    if (distance(p, way.tightest) < nearest) {
                        nearest = distance(p, way.tightest);
                        start_ = samples_.size() - 1;
                    }
                }
            }
        }
        for (std::size_t i = 0; i < samples_.size(); ++i) {
            if (!samples_[i].tight) continue;
            if (i == 0 || !samples_[i - 1].tight) runs_.push_back({i, i});
            if (runs_.back().last + 1 == i) runs_.back().length += distance(samples_[i - 1].at, samples_[i].at);
            runs_.back().last = i;
        }
        const auto has_start = [&](const Run& run) { return run.first <= start_ && start_ <= run.last; };
        std::stable_sort(runs_.begin(), runs_.end(), [&](const Run& x, const Run& y) {
            return has_start(x) != has_start(y) ? has_start(x) : x.length > y.length;
        });
    }

    /// That with the tightest place first, others by falling length.
    [[nodiscard]] std::vector<TightPlace> middles(std::size_t most) const {
        if (samples_.empty()) return {{way_.tightest, {}}};
        std::vector<TightPlace> places;
        if (!samples_[start_].tight) places.push_back({way_.tightest, samples_[start_].along});
        for (const Run& run : runs_) {
            if (places.size() == most) break;
            TightPlace place{samples_[run.first].at, samples_[run.first].along};
            double before = 0;
            for (std::size_t i = run.first; i < run.last; ++i) {
                const double step = distance(samples_[i].at, samples_[i + 1].at);
                if (before + step >= run.length / 2 && step > 0) {
                    place = {samples_[i].at + (samples_[i + 1].at - samples_[i].at) * ((run.length / 2 - before) / step),
                             samples_[i].along};
                    break;
                }
                before += step;
            }
            places.push_back(place);
        }
        return places;
    }

    /// Those of the straight pieces of all stretches, by falling length: a way may run along a slot before it leads through.
    [[nodiscard]] std::vector<TightPlace> middles_of_legs(std::size_t most) const {
        std::vector<Run> legs;
        for (const Run& run : runs_) {
            for (std::size_t i = run.first; i <= run.last; ++i) {
                if (i == run.first || samples_[i].leg != samples_[i - 1].leg) legs.push_back({i, i});
                legs.back().last = i;
                legs.back().length = distance(samples_[legs.back().first].at, samples_[i].at);
            }
        }
        std::erase_if(legs, [](const Run& leg) { return leg.length <= 0; });
        std::stable_sort(legs.begin(), legs.end(), [](const Run& x, const Run& y) { return x.length > y.length; });
        if (legs.size() > most) legs.resize(most);
        std::vector<TightPlace> places;
        for (const Run& leg : legs) {
            const Sample &first = samples_[leg.first], &last = samples_[leg.last];
            places.push_back({first.at + (last.at - first.at) * 0.5, first.along});
        }
        return places;
    }

private:
    struct Sample {
        Point at;
        Vector along;
        std::size_t leg;
        bool tight;
    };
    struct Run {
        std::size_t first, last;
        double length = 0;
    };

    const ThroatWay& way_;
    std::vector<Sample> samples_;
    std::size_t start_ = 0;  ///< nearest to the tightest place
    std::vector<Run> runs_;
};

}  // namespace

std::vector<TightPlace> tight_places(const Passages& passages, const ThroatWay& way, std::size_t most) {
    return TightStretches(passages, way).middles(most);
}

void MeasuredOpening::take_mouth(const Mouth& of) {
    mouth = of.pieces;
    low = high = at;
    if (mouth.empty()) return;
    low = {std::min(of.low.x, at.x), std::min(of.low.y, at.y), std::min(of.low.z, at.z)};
    high = {std::max(of.high.x, at.x), std::max(of.high.y, at.y), std::max(of.high.z, at.z)};
}

std::array<std::uint32_t, 2> parts_around(const Passages& passages, const Point& at) {
    std::array<std::uint32_t, 2> parts{};
    const std::vector<Clearance::Hold> holds = passages.clearance().holds_of(at);
    for (std::size_t i = 0; i < 2; ++i) {
        parts[i] = holds.empty() ? 0 : passages.air().part_of[holds[std::min(i, holds.size() - 1)].triangle];
    }
    return parts;
}

namespace {

MeasuredOpening told(const Passages& passages, const ThroatWay& way, const Mouth& mouth, const Section* section, const Point& at,
                     double most) {
    MeasuredOpening m;
    m.width = 2 * way.radius;
    m.at = at;
    m.take_mouth(mouth);
    m.through = way.corners;
    m.at_most = 2 * std::max(way.radius, most);
    if (section != nullptr) {
        m.shape = shape_of(*section, m.width, m.length);
        m.cut = cut_of(section->pieces);
    } else {
        const Strips strips(passages, mouth.pieces, way.radius);
        m.length = strips.area() <= long_enough * m.width * m.width ? m.width : strips.length();
        m.shape = m.length > m.width ? Shape(Slot{m.width, m.length}) : Shape(Hole{m.width});
    }
    m.depth = depth_of(passages.clearance(), way.corners, m.at, way.radius, m.cut);
    m.parts = parts_around(passages, m.at);
    return m;
}

/// The cut across a way where the least fits in beside the ball, and of those where no more does the smallest.
ShutBy gate_across(const Passages& passages, const ThroatWay& way, const std::vector<ConvexPolygon>& mouth) {
    constexpr std::size_t most_places = 4;
    const TightStretches stretches(passages, way);
    std::vector<TightPlace> places = stretches.middles(most_places);
    const std::vector<TightPlace> of_legs = stretches.middles_of_legs(most_places);
    places.insert(places.end(), of_legs.begin(), of_legs.end());
    ShutBy best{{}, way.tightest, 1e300, {}};
    for (const TightPlace& place : places) {
        for (Section& section : sections_at(passages, way, mouth, place)) {
            const double widest = widest_in(passages.clearance(), section.pieces, way.radius,
                                            std::min(way.radius * 1.5, best.at_most), best.stands);
            if (widest >= best.at_most) continue;
            best.section = std::move(section);
            best.at = place.at;
            best.at_most = widest;
            if (widest <= way.radius * settled) return best;
        }
    }
    return best;
}

/// Openings that have one mouth in common, as two joints into one cavity may: each is shut by a cut of its own, and all of these
/// together shut the mouth. Nothing where that does not come out so.
std::vector<MeasuredOpening> tell_apart(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                        const Openings& openings, std::size_t which, const Surroundings& around,
                                        const Mouth& mouth, ThroatWay way) {
    constexpr std::size_t most_openings = 4;
    std::vector<MeasuredOpening> list;
    std::vector<Gate> gates;
    const double widest = way.radius;
    while (list.size() < most_openings) {
        const ShutBy gate = gate_across(passages, way, mouth.pieces);
        if (!gate.section) return {};
        list.push_back(told(passages, way, Mouth(gate.section->pieces), &*gate.section, gate.at, gate.at_most));
        list.back().apart = true;
        gates.emplace_back(*gate.section, way.radius);
        const std::optional<Beside> beside = around.widest_beside(gates);
        if (!beside) {
            if (list.size() == 1 || around.is_cut_short()) return {};
            std::stable_sort(list.begin(), list.end(),
                             [](const MeasuredOpening& a, const MeasuredOpening& b) { return a.width > b.width; });
            return list;
        }
        way = widest_way_beside(passages, bodies, home, openings, which, *beside, exact, gates, widest);
        if (way.corners.empty() || way.radius < passages.least()) return {};
    }
    return {};
}

}  // namespace

std::vector<MeasuredOpening> measure(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                     const Openings& openings, std::size_t which) {
    const Clearance& clearance = passages.clearance();
    const Opening& opening = openings.list[which];
    ThroatWay way = widest_way(passages, bodies, home, openings, which, exact);
    if (way.corners.empty()) return {};
    const Mouth mouth(passages, opening);
    const Surroundings around(passages, bodies, openings, which, way.radius);
    ShutBy cut;
    double most = 0;
    for (int turn = 0; turn < 4; ++turn) {
        std::vector<Stand> wider;
        most = widest_in(clearance, mouth.pieces, way.radius, clearance.cap(), wider);
        if (opening.stray) most = clearance.cap();  // its mouth does not shut it
        cut = narrowest_cut(passages, around, opening, way, mouth.pieces, most);
        if (std::min(most, cut.at_most) <= way.radius * sure) break;
        wider.insert(wider.end(), cut.stands.begin(), cut.stands.end());
        if (!widen(passages, bodies, home, openings, which, wider, exact, way)) break;
    }
    if (cut.section) return {told(passages, way, mouth, &*cut.section, cut.at, std::min(most, cut.at_most))};
    std::vector<MeasuredOpening> several = tell_apart(passages, bodies, home, openings, which, around, mouth, way);
    if (several.empty()) several.push_back(told(passages, way, mouth, nullptr, cut.at, most));
    return several;
}

}  // namespace seamward
