// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <span>
#include <vector>

#include "base/plane.h"
#include "base/solid.h"
#include "base/vector.h"

namespace seamward {

/// A solid that is drawn.
struct ViewedSolid {
    const TriangleMesh* mesh = nullptr;
    std::uint32_t look = 0;  ///< where solids of the same look lie flush, no seam is drawn
    bool closed = true;      ///< its faces look outward all over; else both sides of them are drawn
};

/// What a line of a drawing parts, from the strongest to the faintest.
enum class ViewLineKind : std::uint8_t {
    profile,  ///< beyond it there is nothing
    outline,  ///< what lies beyond it is farther away
    surface   ///< an edge within what one looks at, or where its look changes
};

/// A straight line that is seen, in meters along u and v of the view.
struct ViewLine {
    Point2 from, to;
    ViewLineKind kind = ViewLineKind::surface;
};

struct ViewSettings {
    /// The finest that can be printed, in meters of the house: shorter lines are left out, of lines alongside each other that are
    /// nearer than half of it only one is drawn, and a flat solid whose lines would lie closer than it, a screen,
    /// is drawn as its outline.
    double finest = 0.02;
    /// Along n of the view: edges no lower than this are not drawn; of solids that were cut there.
    double below = 1e9;
};

class ViewFaces;

/// Solids seen from far away, in the direction against n of a frame.
class LineView {
public:
    LineView(std::span<const ViewedSolid> solids, const Frame& view, const ViewSettings& settings);
    ~LineView();
    LineView(const LineView&) = delete;
    LineView& operator=(const LineView&) = delete;

    /// The lines that are seen: edges where faces meet at more than 25 degrees, borders, and folds, as far as nothing is before
    /// them. A stretch of an edge is hidden where a triangle is nearer by more than a millimeter, which spares the edge's own
    /// faces; its ends are worked out along the edge, from the four inequalities of each triangle. Where what is seen on both
    /// sides is one flush surface of one look, there is no line. Where solids run through each other, none is made. O(edges *
    /// triangles near them). The same input gives the same lines.
    [[nodiscard]] std::vector<ViewLine> lines() const;
    /// Whether nothing stands before a point by more than `within` meters.
    [[nodiscard]] bool sees(const Point& p, double within) const;

private:
    class Maker;

    Frame view_;
    ViewSettings settings_;
    std::vector<std::array<Point, 2>> edges_;  ///< x and y on the paper, z toward the eye
    std::unique_ptr<ViewFaces> faces_;
};

/// Lines drawn over each other made one: where a line lies alongside a stronger or longer one, nearer than `apart`, it goes;
/// rests shorter than `least` go too. Lengths in meters. Every stretch of the given lines that is longer than `least` lies within
/// `apart` of a line that stays.
[[nodiscard]] std::vector<ViewLine> merged_lines(std::vector<ViewLine> lines, double apart, double least);

}  // namespace seamward
