// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/prism.h"

namespace seamward {

namespace {

/// Where a corner of the figure stands at one height.
Point2 slanted(Point2 p, const Slant& slant, double n) {
    const bool lifted = p.y > slant.lift_above;
    if (p.x == slant.left && slant.left_slant != 0) return {p.x + slant.left_slant * n, p.y + (lifted ? slant.left_lift * n : 0)};
    if (p.x == slant.right && slant.right_slant != 0)
        return {p.x + slant.right_slant * n, p.y + (lifted ? slant.right_lift * n : 0)};
    return p;
}

Figure at_height(const Figure& figure, const Slant& slant, const Height& height) {
    Figure out = figure;
    for (Point2& p : out.outline) p = slanted(p, slant, height.at(p));
    for (Loop& hole : out.holes) {
        for (Point2& p : hole) p = slanted(p, slant, height.at(p));
    }
    return out;
}

class PrismMesh {
public:
    PrismMesh(const Prism& prism, TriangleMesh& mesh, std::vector<GapIndex>& bounds)
        : prism_(prism), mesh_(mesh), bounds_(bounds), slants_(prism.slant.left_slant != 0 || prism.slant.right_slant != 0) {}

    void add(const CutFigure& piece) {
        const Figure& figure = piece.figure;
        std::vector<Figure> figures;
        const auto first = static_cast<std::uint32_t>(mesh_.points.size());
        std::uint32_t corners = 0;
        for (const Height& height : prism_.heights) {
            figures.push_back(slants_ ? at_height(figure, prism_.slant, height) : figure);
            corners = 0;
            const auto put = [&](const Loop& loop, const Loop& straight) {
                for (std::size_t i = 0; i < loop.size(); ++i, ++corners)
                    mesh_.points.push_back(prism_.frame.at(loop[i].x, loop[i].y, height.at(straight[i])));
            };
            put(figures.back().outline, figure.outline);
            for (std::size_t h = 0; h < figure.holes.size(); ++h) put(figures.back().holes[h], figure.holes[h]);
        }
        const auto levels = static_cast<std::uint32_t>(prism_.heights.size() - 1);
        const auto back = triangulate(figures.front());
        for (const auto& [a, b, c] : back) add_triangle(first + a, first + c, first + b, prism_.gap_of_back);
        const auto front = slants_ ? triangulate(figures.back()) : back;
        const std::uint32_t top = first + levels * corners;
        for (const auto& [a, b, c] : front) add_triangle(top + a, top + b, top + c, prism_.gap_of_front);
        for (std::uint32_t level = 0; level < levels; ++level) add_sides(piece, first + level * corners, corners, level);
    }

private:
    void add_sides(const CutFigure& piece, std::uint32_t base, std::uint32_t corners, std::uint32_t level) {
        const GapIndex of_level = prism_.gap_of_level.empty() ? GapIndex() : prism_.gap_of_level[level];
        std::uint32_t corner = 0;
        const auto add_loop = [&](const Loop& loop) {
            const auto size = static_cast<std::uint32_t>(loop.size());
            for (std::uint32_t i = 0; i < size; ++i) {
                const std::int32_t cut = piece.cut_of_edge[corner + i];
                const GapIndex gap = cut >= 0                     ? prism_.gap_of_cut[static_cast<std::size_t>(cut)]
                                     : prism_.gap_of_edge.empty() ? of_level
                                                                  : prism_.gap_of_edge[static_cast<std::size_t>(-1 - cut)];
                const std::uint32_t a = base + corner + i, b = base + corner + (i + 1) % size;
                add_triangle(a, b, b + corners, gap);
                add_triangle(a, b + corners, a + corners, gap);
            }
            corner += size;
        };
        add_loop(piece.figure.outline);
        for (const Loop& hole : piece.figure.holes) add_loop(hole);
    }

    void add_triangle(std::uint32_t a, std::uint32_t b, std::uint32_t c, GapIndex gap) {
        mesh_.triangles.push_back({a, b, c});
        bounds_.push_back(gap);
    }

    const Prism& prism_;
    TriangleMesh& mesh_;
    std::vector<GapIndex>& bounds_;
    bool slants_;
};

}  // namespace

void add_prism(const Prism& prism, TriangleMesh& mesh, std::vector<GapIndex>& bounds) {
    PrismMesh out(prism, mesh, bounds);
    for (const CutFigure& piece : remainder(prism.outline, prism.cuts)) out.add(piece);
}

}  // namespace seamward
