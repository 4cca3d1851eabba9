// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/shapes.h"
#include "catalog/prices.h"
#include "catalog/tables.h"

namespace seamward {

/// How much of one material is taken, waste included, counted as the price book counts it: cubic meters, square meters, meters or
/// pieces.
struct Need {
    std::string material;  ///< id of the price book
    double amount = 0;
};

/// What is bought of one material.
struct Purchase {
    std::string material;
    double needed = 0;        ///< as in Need
    std::uint64_t cases = 0;  ///< whole cases
    std::uint64_t units = 0;  ///< single units beside the cases
    Money cost;               ///< of all of it
};

/// Volumes of sealant, cubic meters, from meters.
[[nodiscard]] double rectangular_bead(double width, double depth, double length);
/// A fillet in a corner, its two legs on the faces.
[[nodiscard]] double fillet_bead(double leg, double other_leg, double length);
[[nodiscard]] double round_bead(double diameter, double length);

/// How far `volume` reaches when one meter takes `volume_per_meter`, meters.
[[nodiscard]] double bead_reach(double volume, double volume_per_meter);

/// Whether so much can be had of that volume: width * depth * length is no more than it, but for what printed tables round (2 %).
[[nodiscard]] bool yield_is_possible(double width, double depth, double length, double volume);

/// One piece of a gap, as work is measured on it. Meters, square meters.
struct Piece {
    double width = 0;           ///< clear width
    double length = 0;          ///< of a slot; the middle line of a ring; the edge of a hole or a screened opening
    double area = 0;            ///< of the opening
    double across = 0, up = 0;  ///< sides of the smallest rectangle over it, pipe included
};

/// `unstated`: side of a screened opening whose area is not stated, meters.
[[nodiscard]] Piece piece_of(const Shape& shape, double unstated);

/// Sides of the rectangle that is cut to go over a piece, meters: `overlap` wider at every edge, rounded up to whole steps.
struct CutSize {
    double across = 0, up = 0;
};
[[nodiscard]] CutSize cut_over(const Piece& piece, double overlap, double step);

/// What one piece of a gap takes of one material, without waste. The material is the row's; of a backer rod it is the stock size
/// that fits, or the amount is 0 where none is thick enough. `depth`: of the part, meters, where it is known.
[[nodiscard]] Need taken(const Take& take, const Shape& shape, const Piece& piece, std::optional<double> depth);

/// What `totals` cost at the least, in the order in which materials first stand there: whole units, in cases where those are
/// cheaper, fewer units left over among equals. Needs of one material are added up first. Every material must be in the book.
[[nodiscard]] std::vector<Purchase> to_buy(const std::vector<Need>& totals, const PriceBook& prices);

}  // namespace seamward
