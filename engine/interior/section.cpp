// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/section.h"

#include <algorithm>
#include <map>

namespace seamward {

namespace {

constexpr double out = 1.5;        // where a ball larger by this fits, one is out of the opening
constexpr double exact = 1e-3;     // fraction of the radius
constexpr int effort = 240;        // pieces to look at for the largest ball,
constexpr int quick = 16;          // and to see whether one is out
constexpr double on_plane = 1e-9;  // meters
constexpr double far = 1e4;        // meters; larger than any model that is looked at in one piece
constexpr std::size_t most_slices = 20000;

ConvexPolygon square_around(const Point& at, const Vector& normal, double half) {
    Vector u = cross(normal, std::abs(normal.x) < 0.7 ? Vector{1, 0, 0} : Vector{0, 1, 0});
    u = u * (half / length(u));
    const Vector v = cross(normal, u);
    return {at + u * -1 + v * -1, at + u + v * -1, at + u + v, at + u * -1 + v};
}

/// The stretch that a plane cuts out of a convex polygon; nothing when it only touches a corner, or lies in the plane.
std::optional<std::pair<Point, Point>> stretch(std::span<const Point> polygon, const Plane3& plane) {
    std::vector<Point> ends;
    for (std::size_t i = 0; i < polygon.size(); ++i) {
        const Point &p = polygon[i], &q = polygon[i + 1 < polygon.size() ? i + 1 : 0];
        const double a = plane.height_of(p), b = plane.height_of(q);
        if (std::abs(a) <= on_plane) ends.push_back(p);
        if ((a > on_plane && b < -on_plane) || (a < -on_plane && b > on_plane)) ends.push_back(p + (q - p) * (a / (a - b)));
    }
    std::optional<std::pair<Point, Point>> best;
    if (ends.size() > 2) return best;  // it lies in the plane
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

/// A section as it grows from cell to cell.
class Cut {
public:
    Cut(const Passages& passages, const Point& at, const Vector& normal, double radius)
        : passages_(passages), at_(at), plane_{normal, dot(normal, {at.x, at.y, at.z})}, radius_(radius) {}

    std::optional<Section> grow() {
        const Air& air = passages_.air();
        const ConvexPolygon whole = square_around(at_, plane_.normal, far);
        std::vector<std::uint32_t> open{air.complex.cell_at(at_)};
        slices_[open[0]] = {};
        const double most = std::min(radius_ * out, std::max(radius_ * 1.01, passages_.clearance().cap() * 0.999));
        while (!open.empty()) {
            const std::uint32_t cell = open.back();
            open.pop_back();
            if (slices_.size() > most_slices) return {};
            ConvexPolygon& slice = slices_[cell];
            slice = air.complex.within(cell, whole);
            if (slice.size() < 3) continue;
            if (widest_stand(slice, most) >= most) return {};
            for (const std::uint32_t portal : air.portals_of(cell)) {
                const Portal& p = air.complex.portals[portal];
                const std::uint32_t next = p.front == cell ? p.back : p.front;
                if (slices_.contains(next)) continue;
                const auto shared = stretch(air.complex.corners_of(p), plane_);
                if (!shared || !is_open(shared->first, shared->second)) continue;
                slices_[next] = {};
                open.push_back(next);
            }
        }
        Section cut = section();
        if (cut.pieces.empty()) return {};
        return cut;
    }

private:
    /// Only whether that is `most` or more is looked for.
    [[nodiscard]] double widest_stand(const ConvexPolygon& slice, double most) const {
        return passages_.clearance()
            .highest(slice, {.tolerance = exact, .effort = quick, .floor = most * (1 - exact), .enough = most})
            .stand.clearance;
    }

    [[nodiscard]] bool is_open(const Point& a, const Point& b) const {
        for (const double part : {0.5, 0.25, 0.75, 0.05, 0.95}) {
            if (passages_.clearance().at(a + (b - a) * part) >= passages_.least() * 0.25) return true;
        }
        return false;
    }

    [[nodiscard]] Section section() const {
        Section section;
        for (const auto& [cell, piece] : slices_) {
            if (piece.size() < 3) continue;
            section.pieces.push_back(piece);
            section.area += length(doubled_area(piece)) / 2;
            for (std::size_t k = 0; k < piece.size(); ++k) section.rim += distance(piece[k], piece[(k + 1) % piece.size()]);
            for (const std::uint32_t portal : passages_.air().portals_of(cell)) {  // edges in the open are counted on both sides
                const Portal& p = passages_.air().complex.portals[portal];
                if (p.front != cell || !slices_.contains(p.back)) continue;
                if (const auto shared = stretch(passages_.air().complex.corners_of(p), plane_)) {
                    section.rim -= 2 * distance(shared->first, shared->second);
                }
            }
        }
        return section;
    }

    const Passages& passages_;
    Point at_;
    Plane3 plane_;
    double radius_;
    std::map<std::uint32_t, ConvexPolygon> slices_;  ///< by cell
};

}  // namespace

double widest_in(const Clearance& clearance, const std::vector<ConvexPolygon>& pieces, double floor, double most,
                 std::vector<Stand>& stands) {
    if (pieces.empty()) return most;
    double widest = floor * (1 + exact);
    for (const ConvexPolygon& piece : pieces) {
        if (widest >= most) break;
        const Highest highest = clearance.highest(piece, {.tolerance = exact, .effort = effort, .floor = widest, .enough = most});
        widest = std::max(widest, highest.at_most);
        if (highest.stand.clearance > floor) stands.push_back(highest.stand);
    }
    return std::min(widest, most);
}

Gate::Gate(const Section& section, double more) : more_(more), at_(section.pieces[0][0]) {
    for (const ConvexPolygon& piece : section.pieces) {
        if (const Vector area = doubled_area(piece); dot(area, area) > dot(normal_, normal_)) normal_ = area;
        for (const Point& p : piece) {
            low_ = {std::min(low_.x, p.x - more), std::min(low_.y, p.y - more), std::min(low_.z, p.z - more)};
            high_ = {std::max(high_.x, p.x + more), std::max(high_.y, p.y + more), std::max(high_.z, p.z + more)};
        }
        for (std::size_t k = 2; k < piece.size(); ++k) triangles_.push_back({piece[0], piece[k - 1], piece[k]});
    }
}

bool Gate::is_crossed(const Point& a, const Point& b) const {
    const double before = dot(normal_, a - at_), after = dot(normal_, b - at_);
    if ((before < 0) == (after < 0)) return false;
    const Point cut = a + (b - a) * (before / (before - after));
    if (cut.x < low_.x || cut.x > high_.x || cut.y < low_.y || cut.y > high_.y || cut.z < low_.z || cut.z > high_.z) return false;
    return std::ranges::any_of(triangles_, [&](const TriangleTree::Triangle& t) { return distance(t, cut) <= more_; });
}

bool Gate::is_crossed(const Passages& passages, std::uint32_t passage) const {
    Point from = passages[passages.passage(passage).from].at;
    for (const Point& to : passages.corners_of(passage)) {
        if (is_crossed(from, to)) return true;
        from = to;
    }
    return is_crossed(from, passages[passages.passage(passage).to].at);
}

bool is_any_crossed(const std::vector<Gate>& gates, const Passages& passages, std::uint32_t passage) {
    return std::any_of(gates.begin(), gates.end(), [&](const Gate& gate) { return gate.is_crossed(passages, passage); });
}

std::optional<Section> section_at(const Passages& passages, const Point& at, const Vector& normal, double radius) {
    return Cut(passages, at, normal, radius).grow();
}

}  // namespace seamward
