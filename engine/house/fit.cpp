// SPDX-License-Identifier: GPL-3.0-or-later
#include "house/fit.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace seamward {

namespace {

constexpr double tolerance = 1e-6;   ///< an opening may reach so far past an edge by rounding, meters
constexpr double column = 0.25;      ///< width of the columns that cuts are sorted into
constexpr double most_columns = 16;  ///< what is wider stands in no column

std::int64_t column_of(double x) { return static_cast<std::int64_t>(std::floor(x / column)); }

bool is_wide(const Box& box) { return box.most.x - box.least.x > most_columns * column; }

bool is_upright_rectangle(const Loop& loop) {
    return loop.size() == 4 && loop[0].y == loop[1].y && loop[2].y == loop[3].y && loop[0].x == loop[3].x &&
           loop[1].x == loop[2].x;
}

bool cross_each_other(Point2 a, Point2 b, Point2 c, Point2 d) {
    const double abc = cross(b - a, c - a), abd = cross(b - a, d - a), cda = cross(d - c, a - c), cdb = cross(d - c, b - c);
    return ((abc > 0 && abd < 0) || (abc < 0 && abd > 0)) && ((cda > 0 && cdb < 0) || (cda < 0 && cdb > 0));
}

/// A gap that was closed has no width and may lie on the edge itself.
bool lies_on_edge(const Loop& loop, Point2 p) {
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i], along = loop[(i + 1) % loop.size()] - a;
        const double at = std::clamp(dot(p - a, along) / dot(along, along), 0.0, 1.0);
        const Point2 off = a + along * at - p;
        if (dot(off, off) <= tolerance * tolerance) return true;
    }
    return false;
}

std::string meters(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.2f m", value + 0.0);
    return text[0] == '-' && std::string(text) == "-0.00 m" ? "0.00 m" : text;
}

std::string from_to(double from, double to) { return meters(from) + " to " + meters(to); }

}  // namespace

void Box::take(const Loop& loop) {
    for (const Point2 p : loop) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
}

bool Box::touches(const Box& other) const {
    constexpr double margin = 1e-4;
    return least.x < other.most.x + margin && other.least.x < most.x + margin && least.y < other.most.y + margin &&
           other.least.y < most.y + margin;
}

Box box_of(const Loop& loop) {
    Box box;
    box.take(loop);
    return box;
}

bool lies_within(const Loop& extent, const Loop& loop) {
    const Box all = box_of(extent), box = box_of(loop);
    if (box.least.x < all.least.x - tolerance || box.most.x > all.most.x + tolerance || box.least.y < all.least.y - tolerance ||
        box.most.y > all.most.y + tolerance)
        return false;
    if (is_upright_rectangle(extent)) return true;
    const Point2 middle = (box.least + box.most) * 0.5;
    Loop inner;  // drawn in a little, so that an edge may be shared
    for (const Point2 p : loop) {
        const Point2 off = middle - p;
        const double far = std::sqrt(dot(off, off));
        inner.push_back(far > 2 * tolerance ? p + off * (2 * tolerance / far) : middle);
    }
    for (const Point2 p : inner) {
        if (!is_inside(extent, p) && !lies_on_edge(extent, p)) return false;
    }
    for (std::size_t i = 0; i < extent.size(); ++i) {
        const Point2 a = extent[i], b = extent[(i + 1) % extent.size()];
        if (std::max(a.x, b.x) < box.least.x || std::min(a.x, b.x) > box.most.x || std::max(a.y, b.y) < box.least.y ||
            std::min(a.y, b.y) > box.most.y)
            continue;
        for (std::size_t k = 0; k < inner.size(); ++k) {
            if (cross_each_other(a, b, inner[k], inner[(k + 1) % inner.size()])) return false;
        }
    }
    return true;
}

std::pair<double, double> stretch_at(const Loop& loop, Point2 at) {
    const Box box = box_of(loop);
    if (!is_inside(loop, at)) return {box.least.x, box.most.x};
    std::pair<double, double> stretch{box.least.x, box.most.x};
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 a = loop[i], b = loop[(i + 1) % loop.size()];
        if ((a.y > at.y) == (b.y > at.y)) continue;
        const double x = a.x + (b.x - a.x) * (at.y - a.y) / (b.y - a.y);
        if (x <= at.x) stretch.first = std::max(stretch.first, x);
        if (x >= at.x) stretch.second = std::min(stretch.second, x);
    }
    return stretch;
}

std::vector<std::pair<double, double>> stretches_of(const Figure& figure, double at, bool upright) {
    std::vector<double> ends;
    const auto take = [&](const Loop& loop) {
        for (std::size_t i = 0; i < loop.size(); ++i) {
            Point2 a = loop[i], b = loop[(i + 1) % loop.size()];
            if (upright) {
                std::swap(a.x, a.y);
                std::swap(b.x, b.y);
            }
            if ((a.y > at) != (b.y > at)) ends.push_back(a.x + (b.x - a.x) * (at - a.y) / (b.y - a.y));
        }
    };
    take(figure.outline);
    for (const Loop& hole : figure.holes) take(hole);
    std::sort(ends.begin(), ends.end());
    std::vector<std::pair<double, double>> stretches;
    for (std::size_t i = 0; i + 1 < ends.size(); i += 2) stretches.emplace_back(ends[i], ends[i + 1]);
    return stretches;
}

Misfit row_misfit(std::size_t pieces, double spacing, double piece, const std::string& axis, double middle,
                  std::pair<double, double> ends, const std::string& name) {
    const double length = static_cast<double>(pieces - 1) * spacing + piece;
    const double room = 2 * std::min(middle - ends.first, ends.second - middle);
    const double most = std::floor((room - piece) / spacing + 1e-9) + 1;
    Misfit out;
    out.what = "a row of " + std::to_string(pieces) + ", one every " + meters(spacing) + ", is " + meters(length) +
               " long and would reach " + axis + " " + from_to(middle - length / 2, middle + length / 2) + ": " + name +
               " leaves room " + axis + " " + from_to(ends.first, ends.second);
    out.mend = most >= 1 ? "about its middle there " + std::to_string(static_cast<long long>(most)) +
                               " fit; make count or spacing smaller, or move it"
                         : std::string("move its middle inward");
    return out;
}

Misfit misfit_of(const Skin& skin, const std::string& name, const Box& box, std::size_t pieces, double piece) {
    const Box all = box_of(skin.extent);
    const bool upright = std::abs(skin.frame.v.z) > 0.5, plan = !upright && skin.frame.u.x == 1 && skin.frame.v.y == 1;
    const bool past_end = box.least.x < all.least.x - tolerance || box.most.x > all.most.x + tolerance;
    const bool past_edge = box.least.y < all.least.y - tolerance || box.most.y > all.most.y + tolerance;
    const Point2 middle = (box.least + box.most) * 0.5;
    const std::string axis = plan ? "from x" : "along";
    if (pieces > 1 && (past_end || !past_edge)) {
        const double spacing = (box.most.x - box.least.x - piece) / static_cast<double>(pieces - 1);
        return row_misfit(pieces, spacing, piece, axis, middle.x, stretch_at(skin.extent, middle), name);
    }
    if (past_end && !plan)
        return {"along " + from_to(box.least.x, box.most.x) + " is past the end of " + name + ", which is " +
                    meters(all.most.x - all.least.x) + " long",
                "keep it between " + meters(all.least.x) + " and " + meters(all.most.x)};
    if (upright && past_edge)
        return {"up " + from_to(box.least.y, box.most.y) + " is past the edge of " + name + ", which goes up from " +
                    from_to(all.least.y, all.most.y),
                "move it, or make it smaller"};
    if (upright) return {"it reaches past the sloping edge of " + name, "move it toward the middle, or make it smaller"};
    if (!plan)
        return {"it is " + meters(box.most.y - box.least.y) + " across, and " + name + " is " + meters(all.most.y - all.least.y) +
                    " across",
                "make it smaller, or move it"};
    const auto [from, to] = stretch_at(skin.extent, middle);
    return {"it does not fit on " + name + " at its place: it takes up x " + from_to(box.least.x, box.most.x) + ", y " +
                from_to(box.least.y, box.most.y) + ", and there is room from x " + from_to(from, to) + ", y " +
                from_to(all.least.y, all.most.y),
            "move it inward"};
}

void CutIndex::update(const std::vector<Loop>& cuts) {
    while (boxes_.size() < cuts.size()) {
        const std::size_t number = boxes_.size();
        const Box box = box_of(cuts[number]);
        boxes_.push_back(box);
        if (is_wide(box)) {
            wide_.push_back(number);
            continue;
        }
        for (std::int64_t i = column_of(box.least.x); i <= column_of(box.most.x); ++i) columns_[i].push_back(number);
    }
}

bool CutIndex::touches(const Box& box, std::size_t before) const {
    const auto any = [&](const std::vector<std::size_t>& numbers) {
        return std::any_of(numbers.begin(), numbers.end(),
                           [&](std::size_t number) { return number < before && boxes_[number].touches(box); });
    };
    if (any(wide_)) return true;
    if (is_wide(box))
        return std::any_of(boxes_.begin(), boxes_.begin() + static_cast<std::ptrdiff_t>(before),
                           [&](const Box& other) { return other.touches(box); });
    // What touches across the border of two columns lies a tenth of a millimeter away at most.
    for (std::int64_t i = column_of(box.least.x - 0.001); i <= column_of(box.most.x + 0.001); ++i) {
        const auto here = columns_.find(i);
        if (here != columns_.end() && any(here->second)) return true;
    }
    return false;
}

}  // namespace seamward
