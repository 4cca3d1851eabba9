// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/section.h"

#include <algorithm>
#include <unordered_map>

namespace seamward {

namespace {

constexpr double out = 1.5;     // where a ball larger by this fits, one is out of the opening
constexpr double exact = 2e-4;  // fraction of the radius
constexpr int effort = 400;
constexpr double on_plane = 1e-9;  // meters

ConvexPolygon square_around(const Point& at, const Vector& normal, double half) {
    Vector u = cross(normal, std::abs(normal.x) < 0.7 ? Vector{1, 0, 0} : Vector{0, 1, 0});
    u = u * (half / length(u));
    const Vector v = cross(normal, u);
    return {at + u * -1 + v * -1, at + u + v * -1, at + u + v, at + u * -1 + v};
}

/// The stretch that a plane cuts out of a convex polygon; nothing when it only touches a corner.
std::optional<std::pair<Point, Point>> stretch(std::span<const Point> polygon, const CutPlane& plane) {
    std::vector<Point> ends;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point &p = polygon[i], &q = polygon[i + 1 < polygon.size() ? i + 1 : 0];
        const double a = plane.over(p), b = plane.over(q);
        if (std::abs(a) <= on_plane) ends.push_back(p);
        if ((a > on_plane && b < -on_plane) || (a < -on_plane && b > on_plane)) ends.push_back(p + (q - p) * (a / (a - b)));
    }
    std::optional<std::pair<Point, Point>> best;
    double longest = 1e-7;
    for (std::size_t i = 0; i < ends.size(); ++i) {
        for (std::size_t j = i + 1; j < ends.size(); ++j) {
            const double size = distance(ends[i], ends[j]);
            if (size > longest) {
                longest = size;
                best.emplace(ends[i], ends[j]);
            }
        }
    }
    return best;
}

/// A section as it grows from slice to slice.
class Cut {
public:
    Cut(const Passages& passages, const Point& at, const Vector& normal, double radius)
        : passages_(passages), at_(at), plane_{normal, dot(normal, {at.x, at.y, at.z})}, radius_(radius) {}

    std::optional<Section> grow() {
        const Air& air = passages_.air();
        double half = 32 * radius_;
        for (int turn = 0; turn < 8; ++turn, half *= 4) {
            slices_ = air.complex.slices(square_around(at_, plane_.normal, half));
            rims_ = square_around(at_, plane_.normal, half);
            const Grown grown = flood();
            if (grown == Grown::open) return {};
            if (grown == Grown::shut) return section();
        }
        return {};
    }

private:
    enum class Grown : std::uint8_t { shut, open, cut_off };

    Grown flood() {
        std::unordered_map<std::uint32_t, std::vector<std::uint32_t>> in_cell;
        for (std::uint32_t i = 0; i < slices_.size(); ++i) in_cell[slices_[i].cell].push_back(i);
        taken_.assign(slices_.size(), 0);
        at_most_.assign(slices_.size(), 0);
        const auto first = in_cell.find(passages_.air().complex.cell_at(at_));
        if (first == in_cell.end()) return Grown::open;
        std::vector<std::uint32_t> open;
        const auto take = [&](std::uint32_t i) {
            if (!taken_[i]) open.push_back(i);
            taken_[i] = 1;
        };
        for (const std::uint32_t i : first->second) take(i);
        while (!open.empty()) {
            const CellComplex::Slice& slice = slices_[open.back()];
            const std::uint32_t at = open.back();
            open.pop_back();
            if (touches_rim(slice.polygon)) return Grown::cut_off;
            const double most = std::min(radius_ * out, std::max(radius_ * 1.01, passages_.clearance().cap() * 0.999));
            const Highest highest = passages_.clearance().highest(
                slice.polygon, {.tolerance = exact, .effort = effort, .floor = radius_ * (1 + exact), .enough = most});
            if (highest.stand.clearance >= most) return Grown::open;
            at_most_[at] = highest.at_most;
            for (const std::uint32_t portal : passages_.air().portals_of(slice.cell)) {
                const Portal& p = passages_.air().complex.portals[portal];
                const auto next = in_cell.find(p.front == slice.cell ? p.back : p.front);
                if (next == in_cell.end()) continue;
                const auto shared = stretch(passages_.air().complex.corners_of(p), plane_);
                if (!shared || !is_open(shared->first, shared->second)) continue;
                for (const std::uint32_t i : next->second) take(i);
            }
        }
        return Grown::shut;
    }

    [[nodiscard]] bool touches_rim(const ConvexPolygon& polygon) const {
        for (std::size_t i = 0; i < 4; ++i) {
            const Vector inward = cross(plane_.normal, rims_[(i + 1) % 4] - rims_[i]);
            for (const Point& p : polygon) {
                if (dot(inward, p - rims_[i]) <= 1e-7 * length(inward)) return true;
            }
        }
        return false;
    }

    [[nodiscard]] bool is_open(const Point& a, const Point& b) const {
        for (const double part : {0.5, 0.25, 0.75, 0.05, 0.95}) {
            if (passages_.clearance().at(a + (b - a) * part) >= passages_.least() * 0.25) return true;
        }
        return false;
    }

    [[nodiscard]] Section section() const {
        Section section;
        std::unordered_map<std::uint32_t, bool> cells;
        for (std::size_t i = 0; i < slices_.size(); ++i) {
            if (!taken_[i]) continue;
            const ConvexPolygon& piece = slices_[i].polygon;
            section.pieces.push_back(piece);
            section.at_most = std::max(section.at_most, at_most_[i]);
            section.area += length(doubled_area(piece)) / 2;
            for (std::size_t k = 0; k < piece.size(); ++k) section.rim += distance(piece[k], piece[(k + 1) % piece.size()]);
            cells.emplace(slices_[i].cell, true);
        }
        for (const auto& [cell, taken] : cells) {  // edges in the open were counted on both sides
            for (const std::uint32_t portal : passages_.air().portals_of(cell)) {
                const Portal& p = passages_.air().complex.portals[portal];
                if (p.front != cell || !cells.contains(p.back)) continue;
                if (const auto shared = stretch(passages_.air().complex.corners_of(p), plane_))
                    section.rim -= 2 * distance(shared->first, shared->second);
            }
        }
        return section;
    }

    const Passages& passages_;
    Point at_;
    CutPlane plane_;
    double radius_;
    std::vector<CellComplex::Slice> slices_;
    ConvexPolygon rims_;
    std::vector<char> taken_;
    std::vector<double> at_most_;
};

}  // namespace

std::optional<Section> section_at(const Passages& passages, const Point& at, const Vector& normal, double radius) {
    return Cut(passages, at, normal, radius).grow();
}

}  // namespace seamward
