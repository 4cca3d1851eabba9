// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/flat_regions.h"

#include <algorithm>
#include <cmath>
#include <utility>

#include "base/vector.h"

namespace seamward {

namespace {

constexpr std::uint32_t none = FlatRegions::none;
// What joins a face looks the same way as it does, within 60 degrees: the two sides of a foil are two faces.
constexpr double least_agreement = 0.5;
// How often a face takes another look at what it refused, with its plane fitted anew.
constexpr int most_rounds = 6;

std::uint32_t side_of(const Corners& corners, std::uint32_t from) { return corners[0] == from ? 0 : corners[1] == from ? 1 : 2; }

std::vector<Corners> neighbors(std::size_t points, std::span<const Corners> triangles) {
    std::vector<Corners> beside(triangles.size(), Corners{none, none, none});
    for_each_edge(edge_uses(points, triangles), [&](std::span<const EdgeUse> edge) {
        if (edge.size() != 2 || edge[0].forward == edge[1].forward || edge[0].triangle == edge[1].triangle) return;
        for (int i = 0; i < 2; ++i) {
            const EdgeUse& use = edge[static_cast<std::size_t>(i)];
            const std::uint32_t side = side_of(triangles[use.triangle], use.forward ? use.low : use.high);
            beside[use.triangle][side] = edge[static_cast<std::size_t>(1 - i)].triangle;
        }
    });
    return beside;
}

/// Least squares for heights over a frame, as sums over the points so far.
class PlaneFit {
public:
    PlaneFit(const Point& origin, Vector along, Vector normal)
        : origin_(origin), u_(along), v_(cross(normal, along)), n_(normal) {}

    void add(const Point& p) {
        const Vector off = p - origin_;
        const double x = dot(off, u_), y = dot(off, v_), h = dot(off, n_);
        ++count_, x_ += x, y_ += y, h_ += h;
        xx_ += x * x, xy_ += x * y, yy_ += y * y, xh_ += x * h, yh_ += y * h;
    }

    /// The seed's own plane when the points lie along one line.
    [[nodiscard]] Plane3 plane() const {
        const double mx = x_ / count_, my = y_ / count_, mh = h_ / count_;
        const double xx = xx_ - mx * x_, xy = xy_ - mx * y_, yy = yy_ - my * y_, xh = xh_ - mx * h_, yh = yh_ - my * h_;
        const double determinant = xx * yy - xy * xy;
        double a = 0, b = 0;
        if (determinant > 1e-12 * (xx + yy) * (xx + yy)) {
            a = (xh * yy - yh * xy) / determinant;
            b = (yh * xx - xh * xy) / determinant;
        }
        Vector normal = n_ - u_ * a - v_ * b;
        normal = normal * (1 / length(normal));
        const Point middle = origin_ + (u_ * mx + v_ * my + n_ * mh);
        return {normal, dot(normal, middle - Point{})};
    }

private:
    Point origin_;
    Vector u_, v_, n_;
    double count_ = 0, x_ = 0, y_ = 0, h_ = 0, xx_ = 0, xy_ = 0, yy_ = 0, xh_ = 0, yh_ = 0;
};

class Growth {
public:
    Growth(std::span<const Point> points, std::span<const Corners> triangles, double tolerance, double least_height)
        : points_(points), triangles_(triangles), tolerance_(tolerance), region_of_(triangles.size(), none) {
        regions_.beside = neighbors(points.size(), triangles);
        regions_.triangles.reserve(triangles.size());
        measure();
        std::vector<std::pair<double, std::uint32_t>> seeds;
        for (std::uint32_t t = 0; t < triangles.size(); ++t)
            if (heights_[t] > least_height) seeds.emplace_back(-length(facing_[t]), t);
        std::sort(seeds.begin(), seeds.end());
        for (const auto& [area, t] : seeds)
            if (region_of_[t] == none) grow(t);
        regions_.starts.push_back(static_cast<std::uint32_t>(regions_.triangles.size()));
        for (std::uint32_t t = 0; t < triangles.size(); ++t)
            for (std::uint32_t& next : regions_.beside[t])
                if (next != none && (region_of_[next] != region_of_[t] || region_of_[t] == none)) next = none;
    }

    FlatRegions take() && { return std::move(regions_); }

private:
    void measure() {
        for (const auto& [a, b, c] : triangles_) {
            const Vector u = points_[b] - points_[a], v = points_[c] - points_[a], w = v - u;
            const double longest = std::sqrt(std::max({dot(u, u), dot(v, v), dot(w, w)}));
            facing_.push_back(cross(u, v));
            heights_.push_back(longest > 0 ? length(facing_.back()) / longest : 0);
        }
    }

    [[nodiscard]] bool lies_in(std::uint32_t t, const Plane3& plane) const {
        for (const std::uint32_t corner : triangles_[t])
            if (!(std::abs(plane.height_of(points_[corner])) <= tolerance_)) return false;
        return true;
    }

    [[nodiscard]] bool belongs(std::uint32_t t, const Plane3& plane) const {
        if (!lies_in(t, plane)) return false;
        // Slivers look anywhere.
        return heights_[t] <= tolerance_ || dot(facing_[t], plane.normal) >= least_agreement * length(facing_[t]);
    }

    void take_in(std::uint32_t t, PlaneFit& fit) {
        region_of_[t] = static_cast<std::uint32_t>(regions_.planes.size());
        regions_.triangles.push_back(t);
        for (const std::uint32_t corner : triangles_[t]) fit.add(points_[corner]);
    }

    void grow(std::uint32_t seed) {
        const auto start = regions_.triangles.size();
        regions_.starts.push_back(static_cast<std::uint32_t>(start));
        const Point& origin = points_[triangles_[seed][0]];
        const Vector normal = facing_[seed] * (1 / length(facing_[seed])), side = points_[triangles_[seed][1]] - origin;
        Plane3 plane{normal, dot(normal, origin - Point{})};
        PlaneFit fit(origin, side * (1 / length(side)), normal);
        take_in(seed, fit);
        refused_.clear();
        std::size_t looked = start, next_fit = 8;
        for (int round = 0; round < most_rounds; ++round) {
            for (; looked < regions_.triangles.size(); ++looked) {
                for (const std::uint32_t t : regions_.beside[regions_.triangles[looked]]) {
                    if (t == none || region_of_[t] != none) continue;
                    if (belongs(t, plane))
                        take_in(t, fit);
                    else
                        refused_.push_back(t);
                }
                if (regions_.triangles.size() - start >= next_fit) {
                    next_fit *= 2;
                    (void)adopt(fit.plane(), plane, start);
                }
            }
            if (refused_.empty() || regions_.triangles.size() - start < 2 || !adopt(fit.plane(), plane, start)) break;
            std::swap(refused_, again_);
            refused_.clear();
            for (const std::uint32_t t : again_) {
                if (region_of_[t] != none) continue;
                if (belongs(t, plane))
                    take_in(t, fit);
                else
                    refused_.push_back(t);
            }
            if (looked == regions_.triangles.size()) break;
        }
        if (regions_.triangles.size() - start > 1) settle(fit.plane(), plane, start);
        regions_.planes.push_back(plane);
    }

    [[nodiscard]] double farthest_off(const Plane3& plane, std::size_t start) const {
        double farthest = 0;
        for (std::size_t i = start; i < regions_.triangles.size(); ++i)
            for (const std::uint32_t corner : triangles_[regions_.triangles[i]])
                farthest = std::max(farthest, std::abs(plane.height_of(points_[corner])));
        return farthest;
    }

    /// Takes the fitted plane if all that has joined so far lies in it.
    [[nodiscard]] bool adopt(const Plane3& fitted, Plane3& plane, std::size_t start) const {
        if (farthest_off(fitted, start) > tolerance_) return false;
        plane = fitted;
        return true;
    }

    /// The better plane in the end. That of the seed stays where it is as good as exact: a wall along an axis faces along it.
    void settle(const Plane3& fitted, Plane3& plane, std::size_t start) const {
        const std::uint32_t seed = regions_.triangles[start];
        const Vector normal = facing_[seed] * (1 / length(facing_[seed]));
        const Plane3 first{normal, dot(normal, points_[triangles_[seed][0]] - Point{})};
        if (farthest_off(first, start) <= tolerance_ / 1000)
            plane = first;
        else if (farthest_off(fitted, start) < farthest_off(plane, start))
            plane = fitted;
    }

    std::span<const Point> points_;
    std::span<const Corners> triangles_;
    double tolerance_;
    std::vector<Vector> facing_;
    std::vector<double> heights_;  ///< over the longest side
    std::vector<std::uint32_t> region_of_, refused_, again_;
    FlatRegions regions_;
};

}  // namespace

FlatRegions flat_regions(std::span<const Point> points, std::span<const Corners> triangles, double tolerance,
                         double least_height) {
    return Growth(points, triangles, tolerance, least_height).take();
}

std::vector<std::vector<std::uint32_t>> FlatRegions::borders_of(std::size_t region, std::span<const Corners> corners) const {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> sides;  // of triangles, those without a neighbor
    for (const std::uint32_t t : triangles_of(region))
        for (std::uint32_t side = 0; side < 3; ++side)
            if (beside[t][side] == none) sides.emplace_back(t, side);
    std::sort(sides.begin(), sides.end());
    std::vector<bool> walked(sides.size(), false);
    std::vector<std::vector<std::uint32_t>> loops;
    for (std::size_t start = 0; start < sides.size(); ++start) {
        if (walked[start]) continue;
        std::vector<std::uint32_t>& loop = loops.emplace_back();
        for (std::size_t at = start; !walked[at];) {
            walked[at] = true;
            auto [t, side] = sides[at];
            loop.push_back(corners[t][side]);
            // Turn about the end of this side, over the region, to the next side without a neighbor.
            side = (side + 1) % 3;
            const std::uint32_t end = corners[t][side];
            while (beside[t][side] != none) {
                t = beside[t][side];
                side = side_of(corners[t], end);
            }
            at = static_cast<std::size_t>(std::lower_bound(sides.begin(), sides.end(), std::pair(t, side)) - sides.begin());
        }
    }
    return loops;
}

namespace {

double square_off(const Point& p, const Point& a, const Point& b) {
    const Vector along = b - a, off = p - a;
    const double square = dot(along, along);
    const Vector aside = square > 0 ? off - along * std::clamp(dot(off, along) / square, 0.0, 1.0) : off;
    return dot(aside, aside);
}

/// The position in the loop of the corner farthest from one.
std::size_t farthest_from(const Point& from, std::span<const std::uint32_t> loop, std::span<const Point> points) {
    std::size_t farthest = 0;
    double most = -1;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Vector off = points[loop[i]] - from;
        if (dot(off, off) <= most) continue;
        most = dot(off, off);
        farthest = i;
    }
    return farthest;
}

}  // namespace

std::vector<std::uint32_t> straightened(std::span<const std::uint32_t> loop, std::span<const Point> points, double tolerance) {
    std::vector<std::uint32_t> kept;
    if (loop.size() < 3) return kept;
    // What is farthest from something is a corner for certain.
    const std::size_t start = farthest_from(points[loop[0]], loop, points);
    const std::size_t other = farthest_from(points[loop[start]], loop, points);
    const std::size_t half = (other + loop.size() - start) % loop.size();
    const auto at = [&](std::size_t i) { return loop[(start + i) % loop.size()]; };
    std::vector<std::pair<std::size_t, std::size_t>> open{{half, loop.size()}, {0, half}};
    while (!open.empty()) {
        const auto [first, last] = open.back();
        open.pop_back();
        double most = tolerance * tolerance;
        std::size_t farthest = first;
        for (std::size_t i = first + 1; i < last; ++i) {
            const double off = square_off(points[at(i)], points[at(first)], points[at(last)]);
            if (off <= most) continue;
            most = off;
            farthest = i;
        }
        if (farthest == first) {
            kept.push_back(at(first));
            continue;
        }
        open.emplace_back(farthest, last);
        open.emplace_back(first, farthest);
    }
    if (kept.size() < 3) kept.clear();
    return kept;
}

}  // namespace seamward
