// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/flat_facets.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <iterator>
#include <optional>
#include <utility>

#include "geometry/convex_pieces.h"
#include "geometry/flat_regions.h"
#include "geometry/plane_index.h"
#include "geometry/weld.h"

namespace seamward {

namespace {

/// Axes within a plane, so that what is counterclockwise there is so seen from where its normal points.
struct PlaneAxes {
    Point origin;
    Vector u, v;

    PlaneAxes(const Point& at, Vector normal) : origin(at) {
        const Vector least = std::abs(normal.x) <= std::abs(normal.y) && std::abs(normal.x) <= std::abs(normal.z)
                                 ? Vector{1, 0, 0}
                             : std::abs(normal.y) <= std::abs(normal.z) ? Vector{0, 1, 0}
                                                                        : Vector{0, 0, 1};
        u = cross(least, normal);
        u = u * (1 / length(u));
        v = cross(normal, u);
    }
    [[nodiscard]] Point2 of(const Point& p) const { return {dot(p - origin, u), dot(p - origin, v)}; }
};

/// What one face becomes.
struct Face {
    Plane3 plane;
    double area = 0;                  ///< square meters, of its triangles
    std::size_t first = 0, last = 0;  ///< its facets
};

/// Cuts the faces of a part into convex facets.
class PartFacets {
public:
    PartFacets(const TriangleMesh& part, std::uint32_t number, double tolerance) : number_(number), tolerance_(tolerance) {
        const Welded welded = weld(part.points, tolerance);
        points_ = welded.points;
        corners_.reserve(part.triangles.size());
        for (const Corners& given : part.triangles) {
            Corners corners{};
            for (std::size_t i = 0; i < 3; ++i)
                corners[i] = given[i] < welded.number.size() ? welded.number[given[i]] : PointGrid::none;
            const auto [a, b, c] = corners;
            const bool usable = a != PointGrid::none && b != PointGrid::none && c != PointGrid::none;
            if (usable && a != b && b != c && c != a) corners_.push_back(corners);
        }
        regions_ = flat_regions(points_, corners_, tolerance, tolerance / 2);
    }

    void add_to(std::vector<Facet>& facets, std::vector<Face>& faces) const {
        for (std::size_t region = 0; region < regions_.planes.size(); ++region) {
            Face face{regions_.planes[region], 0, facets.size(), 0};
            for (const std::uint32_t t : regions_.triangles_of(region)) face.area += area_along(t, face.plane.normal);
            if (regions_.triangles_of(region).size() == 1)
                add(corners_[regions_.triangles_of(region).front()], facets);
            else if (!add_pieces(region, face.area, facets))
                add_triangles(region, facets);
            face.last = facets.size();
            if (face.last > face.first) faces.push_back(face);
        }
    }

private:
    [[nodiscard]] double area_along(std::uint32_t t, Vector normal) const {
        const auto [a, b, c] = corners_[t];
        return dot(cross(points_[b] - points_[a], points_[c] - points_[a]), normal) / 2;
    }

    void add(std::span<const std::uint32_t> loop, std::vector<Facet>& facets) const {
        Facet& facet = facets.emplace_back();
        facet.part = number_;
        facet.corners.reserve(loop.size());
        for (const std::uint32_t corner : loop) facet.corners.push_back(points_[corner]);
    }

    void add_triangles(std::size_t region, std::vector<Facet>& facets) const {
        for (const std::uint32_t t : regions_.triangles_of(region)) {
            const std::vector<std::uint32_t> loop = straightened(corners_[t], points_, tolerance_ / 2);
            if (!loop.empty()) add(loop, facets);
        }
    }

    /// False when the borders of a region make no figure of its area.
    bool add_pieces(std::size_t region, double area, std::vector<Facet>& facets) const {
        const PlaneAxes axes(points_[corners_[regions_.triangles_of(region).front()][0]], regions_.planes[region].normal);
        const auto loop_of = [&](std::span<const std::uint32_t> corners) {
            Loop loop;
            loop.reserve(corners.size());
            for (const std::uint32_t corner : corners) loop.push_back(axes.of(points_[corner]));
            return loop;
        };
        Figure figure;
        std::vector<std::uint32_t> outline, holes;
        double length_around = 0, left = area;
        for (const std::vector<std::uint32_t>& border : regions_.borders_of(region, corners_)) {
            const std::vector<std::uint32_t> corners = straightened(border, points_, tolerance_ / 2);
            if (corners.empty()) continue;
            Loop loop = loop_of(corners);
            for (std::size_t i = 0; i < loop.size(); ++i) {
                const Point2 along = loop[(i + 1) % loop.size()] - loop[i];
                length_around += std::sqrt(dot(along, along));
            }
            const double doubled = doubled_area(loop);
            left -= doubled / 2;
            if (doubled <= 0) {
                holes.insert(holes.end(), corners.begin(), corners.end());
                figure.holes.push_back(std::move(loop));
            } else if (outline.empty()) {
                outline = corners;
                figure.outline = std::move(loop);
            } else {
                return false;
            }
        }
        if (outline.empty()) return true;  // nothing as wide as the tolerance
        if (std::abs(left) > tolerance_ * length_around) return false;
        if (figure.holes.empty() && is_convex(figure.outline, tolerance_ / 10)) {
            add(outline, facets);
            return true;
        }
        outline.insert(outline.end(), holes.begin(), holes.end());
        return add_cut(figure, outline, doubled_area_of(figure) / 2, facets);
    }

    static double doubled_area_of(const Figure& figure) {
        double sum = doubled_area(figure.outline);
        for (const Loop& hole : figure.holes) sum += doubled_area(hole);
        return sum;
    }

    /// Adds the convex pieces of a figure over points.
    bool add_cut(const Figure& figure, std::span<const std::uint32_t> numbers, double area, std::vector<Facet>& facets) const {
        const auto pieces = convex_pieces(figure, tolerance_ / 2);
        if (!pieces) return false;
        std::vector<Point2> corners = figure.outline;
        for (const Loop& hole : figure.holes) corners.insert(corners.end(), hole.begin(), hole.end());
        double left = area, width = 0;
        for (const std::vector<std::uint32_t>& piece : *pieces) {
            Loop loop;
            for (const std::uint32_t corner : piece) loop.push_back(corners[corner]);
            left -= doubled_area(loop) / 2;
            width = std::max(width, std::abs(loop[0].x - loop[1].x) + std::abs(loop[0].y - loop[1].y));
        }
        if (std::abs(left) > 1e-9 * (area + width * width)) return false;
        for (const std::vector<std::uint32_t>& piece : *pieces) {
            std::vector<std::uint32_t> loop;
            for (const std::uint32_t corner : piece) loop.push_back(numbers[corner]);
            loop = straightened(loop, points_, tolerance_ / 4);
            if (!loop.empty()) add(loop, facets);
        }
        return true;
    }

    std::uint32_t number_;
    double tolerance_;
    std::vector<Point> points_;
    std::vector<Corners> corners_;
    FlatRegions regions_;
};

/// The middle of the box around all facets.
Point middle_of(const std::vector<Facet>& facets) {
    if (facets.empty()) return {};
    Point low = facets.front().corners.front(), high = low;
    for (const Facet& facet : facets) {
        for (const Point& p : facet.corners) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
    }
    return low + (high - low) * 0.5;
}

/// About the distance between the two points farthest from each other, by two looks.
double across(std::span<const Point> points) {
    Point from = points.front();
    double most = 0;
    for (int look = 0; look < 2; ++look) {
        const Point* farthest = &points.front();
        for (const Point& p : points) {
            const double square = dot(p - from, p - from);
            if (square > most) most = square, farthest = &p;
        }
        from = *farthest;
    }
    return std::sqrt(most);
}

/// Gives each face a plane, the largest first.
void share_planes(std::vector<Face>& faces, double tolerance, FlatFacets& out) {
    std::vector<Plane3> planes;
    std::vector<std::pair<double, std::uint32_t>> largest_first;
    for (std::uint32_t i = 0; i < faces.size(); ++i) {
        planes.push_back(faces[i].plane);
        largest_first.emplace_back(-faces[i].area, i);
    }
    std::sort(largest_first.begin(), largest_first.end());
    PlaneIndex index(planes, middle_of(out.facets));
    std::vector<Point> corners;
    for (const auto& [area, i] : largest_first) {
        const Face& face = faces[i];
        corners.clear();
        for (std::size_t k = face.first; k < face.last; ++k)
            corners.insert(corners.end(), out.facets[k].corners.begin(), out.facets[k].corners.end());
        std::optional<std::uint32_t> number = index.find(corners, face.plane, face.area / across(corners), tolerance);
        if (!number) {
            number = static_cast<std::uint32_t>(out.planes.size());
            out.planes.push_back(face.plane);
            index.let_in(i, *number);
        }
        const bool flipped = dot(out.planes[*number].normal, face.plane.normal) < 0;
        for (std::size_t k = face.first; k < face.last; ++k) {
            out.facets[k].plane = *number;
            out.facets[k].flipped = flipped;
        }
    }
}

}  // namespace

FlatFacets flat_facets(std::span<const TriangleMesh> parts, double tolerance) {
    struct OfPart {
        std::vector<Facet> facets;
        std::vector<Face> faces;
    };
    std::vector<OfPart> each(parts.size());
    tbb::parallel_for(std::size_t{0}, parts.size(), [&](std::size_t i) {
        PartFacets(parts[i], static_cast<std::uint32_t>(i), tolerance).add_to(each[i].facets, each[i].faces);
    });
    FlatFacets out;
    std::vector<Face> faces;
    for (OfPart& of : each) {
        const std::size_t before = out.facets.size();
        std::move(of.facets.begin(), of.facets.end(), std::back_inserter(out.facets));
        for (Face& face : of.faces) {
            face.first += before;
            face.last += before;
            faces.push_back(face);
        }
    }
    share_planes(faces, tolerance, out);
    return out;
}

}  // namespace seamward
