// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "house/layout.h"

namespace seamward {

/// An upright rectangle round something flat.
struct Box {
    Point2 least{1e9, 1e9}, most{-1e9, -1e9};

    void take(const Loop& loop);
    [[nodiscard]] bool touches(const Box& other) const;  ///< with what counts as touching, a tenth of a millimeter
};
[[nodiscard]] Box box_of(const Loop& loop);

/// Whether all of a loop lies in an extent or on its edge.
[[nodiscard]] bool lies_within(const Loop& extent, const Loop& loop);
/// From where to where a loop reaches along x at the height of a point, on both sides of it; its whole width when the point lies
/// outside.
[[nodiscard]] std::pair<double, double> stretch_at(const Loop& loop, Point2 at);

/// The stretches in which a figure meets a line: a level one at v = `at`, or an upright one at u = `at`.
[[nodiscard]] std::vector<std::pair<double, double>> stretches_of(const Figure& figure, double at, bool upright);

/// What to say of openings that do not lie within their skin.
struct Misfit {
    std::string what, mend;
};
/// `pieces` so many, all of them in `box`, on something called `name`.
[[nodiscard]] Misfit misfit_of(const Skin& skin, const std::string& name, const Box& box, std::size_t pieces, double piece);
/// Of a row whose pieces do not fit between two ends: at most how many do.
[[nodiscard]] Misfit row_misfit(std::size_t pieces, double spacing, double piece, const std::string& axis, double middle,
                                std::pair<double, double> ends, const std::string& name);

/// The cuts of one panel, by where they lie along u. Adding and asking take about as long as there are cuts near.
class CutIndex {
public:
    /// Takes in what was cut since the last time.
    void update(const std::vector<Loop>& cuts);
    /// Whether one of the first `before` cuts touches a box.
    [[nodiscard]] bool touches(const Box& box, std::size_t before) const;

private:
    std::vector<Box> boxes_;
    std::unordered_map<std::int64_t, std::vector<std::size_t>> columns_;
    std::vector<std::size_t> wide_;  ///< over many columns
};

}  // namespace seamward
