// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

#include "base/shapes.h"
#include "geometry/convex_polygon.h"
#include "interior/throat.h"

namespace seamward {

/// The pieces of an opening's mouth, and the box around them. Meters.
struct Mouth {
    Mouth(const Passages& passages, const Opening& opening);
    explicit Mouth(std::vector<ConvexPolygon> of);

    std::vector<ConvexPolygon> pieces;
    Point low, high;
    double area = 0;

private:
    void take_box();
};

/// An opening, measured. Meters.
struct MeasuredOpening {
    double width = 0;    ///< of the largest ball that was led through, its diameter
    double at_most = 0;  ///< no larger ball gets through
    double length = 0;   ///< of the mouth, along its middle
    double depth = 0;    ///< as depth_of() tells it; of one that was measured like another the other's, until settle_depth()
    Shape shape;
    Point at;                              ///< where the ball is held tightest
    std::vector<Point> through;            ///< the way of its middle, from body to body
    std::array<std::uint32_t, 2> parts{};  ///< that hold it there
    Point low, high;                       ///< of the box around the mouth and that place
    bool apart = false;                    ///< told apart from others that share its mouth
    bool depth_of_other = false;           ///< the depth is still that of another one
    /// The flat cut that shuts it at its narrowest, where there is one; of those told apart all together shut the mouth.
    struct Cut {
        Point middle;
        Vector normal;    ///< of length 1
        double area = 0;  ///< square meters
    };
    std::optional<Cut> cut;
    std::vector<ConvexPolygon> mouth;

    void take_mouth(const Mouth& of);
};

/// In one plane, one piece at least.
[[nodiscard]] MeasuredOpening::Cut cut_of(const std::vector<ConvexPolygon>& pieces);

/// An upper bound farther above the width, as a fraction of it, is not sure: a wider way is looked for.
inline constexpr double sure = 1.004;

/// The two parts that hold a ball at a place of the air; the first alone, twice, where it is all.
[[nodiscard]] std::array<std::uint32_t, 2> parts_around(const Passages& passages, const Point& at);

/// The middle of a stretch on which the ball is held as tightly as anywhere on its way, and the way's direction there.
struct TightPlace {
    Point at;
    Vector along;
};

/// The stretch with the tightest place first, others by falling length; `most` of them, one at least.
[[nodiscard]] std::vector<TightPlace> tight_places(const Passages& passages, const ThroatWay& way, std::size_t most);

/// Measures an opening anew, exactly: all that went before was to find it. The width lies between the ball that was led through
/// and the largest that fits into any portal of the mouth. Where several openings turn out to share the mouth, each is told, the
/// widest first; none where an opening that no passage between its bodies belongs to is no way from one to the other: then what
/// parts them is narrower, and lies elsewhere.
[[nodiscard]] std::vector<MeasuredOpening> measure(const Passages& passages, const Bodies& bodies, const WaysHome& home,
                                                   const Openings& openings, std::size_t which);

}  // namespace seamward
