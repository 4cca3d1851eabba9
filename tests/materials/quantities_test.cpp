// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/quantities.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace seamward::test {
namespace {

constexpr double inch = 0.0254;
constexpr double foot = 0.3048;

double cartridge() { return *parse_volume("10.1 fl oz"); }

/// 10.1 fl oz of 1.8046875 in3 are 18.227 in3, 298.7 cm3.
TEST(Cartridge, Holds18CubicInches) {
    EXPECT_NEAR(cartridge() / (inch * inch * inch), 18.2273, 5e-5);
    EXPECT_NEAR(cartridge() * 1e6, 298.7, 0.05);
}

struct Yield {
    double width, depth;                      ///< inches
    double rectangle, fillet, round, meters;  ///< feet, feet, feet, meters; 0: the table has none
};

/// Feet to a cartridge of 10.1 fl oz without waste: 18.227 in3 / (width x depth x 12), twice that for a fillet, and
/// 18.227 / (pi / 4 x d^2 x 12) for a round bead. Worked out by hand; no published table could be found that agrees with itself.
constexpr Yield yields[] = {{1.0 / 8, 1.0 / 8, 97.2, 194.4, 123.8, 29.6}, {3.0 / 16, 3.0 / 16, 43.2, 86.4, 55.0, 13.2},
                            {1.0 / 4, 1.0 / 8, 48.6, 97.2, 0, 14.8},      {1.0 / 4, 1.0 / 4, 24.3, 48.6, 30.9, 7.41},
                            {3.0 / 8, 1.0 / 4, 16.2, 32.4, 0, 4.94},      {3.0 / 8, 3.0 / 8, 10.8, 21.6, 13.8, 3.29},
                            {1.0 / 2, 1.0 / 4, 12.15, 24.3, 0, 3.70},     {1.0 / 2, 1.0 / 2, 6.08, 12.2, 7.74, 1.85},
                            {3.0 / 4, 3.0 / 8, 5.40, 10.8, 0, 1.65},      {1.0, 1.0 / 2, 3.04, 6.08, 0, 0.93}};

/// Within half a unit of the last digit that is printed: one place from 10 on, two below.
void expect_printed(double value, double printed) { EXPECT_NEAR(value, printed, printed < 10 ? 0.00501 : 0.0501); }

TEST(Cartridge, YieldsOfTheWholeTable) {
    for (const Yield& row : yields) {
        SCOPED_TRACE(testing::Message() << row.width << " x " << row.depth);
        const double w = row.width * inch, d = row.depth * inch;
        expect_printed(bead_reach(cartridge(), rectangular_bead(w, d, 1)) / foot, row.rectangle);
        expect_printed(bead_reach(cartridge(), rectangular_bead(w, d, 1)), row.meters);
        expect_printed(bead_reach(cartridge(), fillet_bead(w, d, 1)) / foot, row.fillet);
        if (row.round > 0) expect_printed(bead_reach(cartridge(), round_bead(w, 1)) / foot, row.round);
        EXPECT_TRUE(yield_is_possible(w, d, row.rectangle * foot, cartridge()));
    }
}

/// A table on the web gives 50 to 55 ft for 1/4 x 1/4 in and 9 to 10 ft for 3/4 x 1/2 in (true: 24.3 and 4.05): twice what is in
/// the cartridge.
TEST(Yield, ImpossibleOnesAreToldFromPossibleOnes) {
    const double quarter = 0.25 * inch;
    EXPECT_FALSE(yield_is_possible(quarter, quarter, 50 * foot, cartridge()));
    EXPECT_FALSE(yield_is_possible(quarter, quarter, 55 * foot, cartridge()));
    EXPECT_FALSE(yield_is_possible(0.75 * inch, 0.5 * inch, 9 * foot, cartridge()));
    EXPECT_FALSE(yield_is_possible(0.75 * inch, 0.5 * inch, 10 * foot, cartridge()));
    EXPECT_TRUE(yield_is_possible(quarter, quarter, 24 * foot, cartridge()));
    EXPECT_FALSE(yield_is_possible(quarter, quarter, 27 * foot, cartridge()));
    EXPECT_TRUE(yield_is_possible(0.75 * inch, 0.5 * inch, 4.05 * foot, cartridge()));
}

TEST(Piece, OfEveryShape) {
    const Piece slot = piece_of(Slot{0.002, 3}, 0);
    EXPECT_DOUBLE_EQ(slot.length, 3);
    EXPECT_DOUBLE_EQ(slot.area, 0.006);
    const Piece hole = piece_of(Hole{0.02}, 0);
    EXPECT_NEAR(hole.length, 0.0628319, 1e-7);  // pi x 20 mm
    EXPECT_NEAR(hole.area, 3.14159e-4, 1e-9);   // pi x 10 mm x 10 mm
    const Piece ring = piece_of(Ring{0.003, 0.022}, 0);
    EXPECT_NEAR(ring.length, 0.0785398, 1e-7);  // pi x (22 + 3) mm
    EXPECT_NEAR(ring.area, 2.35619e-4, 1e-9);   // pi x (14 x 14 - 11 x 11) mm2
    EXPECT_DOUBLE_EQ(ring.across, 0.028);
    const Piece mesh = piece_of(Mesh{0.0057, 0.01}, 0.3);
    EXPECT_DOUBLE_EQ(mesh.across, 0.1);
    EXPECT_DOUBLE_EQ(piece_of(Mesh{0.0057, std::nullopt}, 0.3).up, 0.3);
}

TEST(CutOver, IsRoundedUpToWholeSteps) {
    // 100 mm + 2 x 25 mm = 150 mm = 5.91 in: 6 in; 3 mm + 50 mm = 53 mm = 2.09 in: 3 in.
    const CutSize cut = cut_over(piece_of(Slot{0.003, 0.1}, 0), 0.025, inch);
    EXPECT_NEAR(cut.across, 6 * inch, 1e-12);
    EXPECT_NEAR(cut.up, 3 * inch, 1e-12);
    // A whole number of steps stays what it is: 50.8 mm + 50.8 mm = 4 in.
    EXPECT_NEAR(cut_over(piece_of(Hole{0.0508}, 0), 0.0254, inch).up, 4 * inch, 1e-12);
}

Take take(Take::As as, double depth = 0, double overlap = 0, double step = 0, double every = 0) {
    return {"stuff", as, depth, overlap, step, every};
}

double amount(const Take& counted, const Shape& shape, std::optional<double> depth = std::nullopt) {
    return taken(counted, shape, piece_of(shape, 0.3), depth).amount;
}

TEST(Taken, Beads) {
    const Take bead = take(Take::As::bead);
    EXPECT_NEAR(amount(bead, Slot{0.0012, 9}), 324e-6, 1e-12);         // 6 mm x 6 mm x 9 m
    EXPECT_NEAR(amount(bead, Slot{0.02, 2}), 400e-6, 1e-12);           // 20 mm x 10 mm x 2 m
    EXPECT_NEAR(amount(bead, Ring{0.003, 0.022}), 2.82743e-6, 1e-11);  // 6 mm x 6 mm x 78.5398 mm
    EXPECT_NEAR(amount(bead, Hole{0.005}), 0.169646e-6, 1e-12);        // pi x 3 mm x 3 mm x 6 mm
}

TEST(Taken, FillsAreNoDeeperThanTheGap) {
    const Take fill = take(Take::As::fill, 0.05);
    EXPECT_NEAR(amount(fill, Slot{0.02, 1}), 1e-3, 1e-12);        // 20 mm x 1 m x 50 mm
    EXPECT_NEAR(amount(fill, Slot{0.02, 1}, 0.02), 4e-4, 1e-12);  // 20 mm deep
    EXPECT_NEAR(amount(fill, Slot{0.02, 1}, 0.2), 1e-3, 1e-12);
}

TEST(Taken, RodIsOfTheStockSizeThatFits) {
    const Slot slot{0.375 * inch, 4};
    const Need rod = taken(take(Take::As::rod), slot, piece_of(slot, 0), std::nullopt);
    EXPECT_EQ(rod.material, "backer-rod-1-2");
    EXPECT_DOUBLE_EQ(rod.amount, 4);
}

TEST(Taken, CutsRimsAndScrews) {
    const Hole hole{0.02};  // 20 mm + 2 x 25 mm = 70 mm: 3 in = 76.2 mm square, 304.8 mm round it
    EXPECT_NEAR(amount(take(Take::As::cut, 0, 0.025, inch), hole), 9 * inch * inch, 1e-12);
    EXPECT_NEAR(amount(take(Take::As::rim, 0, 0.025, inch), hole), 5.4864e-6, 1e-12);  // 6 mm x 6 mm / 2 x 304.8 mm
    EXPECT_DOUBLE_EQ(amount(take(Take::As::along, 0, 0.025, inch, 0.15), hole), 3);    // 304.8 / 150 = 2.03
    EXPECT_DOUBLE_EQ(amount(take(Take::As::length), Slot{0.005, 0.9}), 0.9);
    EXPECT_DOUBLE_EQ(amount(take(Take::As::piece), Slot{0.005, 0.9}), 1);
}

PriceBook book_of(Money unit, std::uint32_t in_case, Money in_cases) {
    PriceBook book;
    book.materials = {{"stuff", "stuff", "can", Material::By::volume, 2.0, unit, in_case, in_cases}};
    return book;
}

TEST(ToBuy, WholeUnits) {
    const PriceBook book = book_of({950}, 0, {});
    EXPECT_EQ(to_buy({{"stuff", 4.0}}, book).at(0).units, 2U);
    EXPECT_EQ(to_buy({{"stuff", 4.0000001}}, book).at(0).units, 3U);
    EXPECT_EQ(to_buy({{"stuff", 1.0}, {"stuff", 1.0}}, book).at(0).units, 1U);  // added up first
    EXPECT_EQ(to_buy({{"stuff", 0.3}}, book).at(0).cost.cents, 950);
    EXPECT_EQ(to_buy({{"stuff", 0}}, book).at(0).cost.cents, 0);
    EXPECT_THROW((void)to_buy({{"nothing", 1}}, book), std::invalid_argument);
}

/// 12 for $99.00, one for $9.50: 10 singles are $95.00, 11 are $104.50 and a case is cheaper.
TEST(ToBuy, CasesWhereTheyAreCheaper) {
    const PriceBook book = book_of({950}, 12, {9900});
    const Purchase ten = to_buy({{"stuff", 20}}, book).at(0);
    EXPECT_EQ(ten.cases, 0U);
    EXPECT_EQ(ten.units, 10U);
    EXPECT_EQ(ten.cost.cents, 9500);
    const Purchase eleven = to_buy({{"stuff", 22}}, book).at(0);
    EXPECT_EQ(eleven.cases, 1U);
    EXPECT_EQ(eleven.units, 0U);
    EXPECT_EQ(eleven.cost.cents, 9900);
    const Purchase thirteen = to_buy({{"stuff", 26}}, book).at(0);
    EXPECT_EQ(thirteen.cases, 1U);
    EXPECT_EQ(thirteen.units, 1U);
    EXPECT_EQ(thirteen.cost.cents, 10850);
}

TEST(ToBuy, CasesThatAreDearerAreLeft) {
    const Purchase many = to_buy({{"stuff", 48}}, book_of({100}, 12, {1300})).at(0);
    EXPECT_EQ(many.cases, 0U);
    EXPECT_EQ(many.units, 24U);
}

/// Against every number of cases there is.
TEST(ToBuy, IsTheCheapestWay) {
    std::mt19937_64 random(20261126);
    for (int i = 0; i < 2000; ++i) {
        const auto any = [&](std::int64_t most) {
            return static_cast<std::int64_t>(random() % static_cast<std::uint64_t>(most)) + 1;
        };
        const std::int64_t price = any(500), in_case = any(9), case_price = any(3000), units = any(60);
        const PriceBook book = book_of({price}, static_cast<std::uint32_t>(in_case), {case_price});
        std::int64_t least = units * price;
        for (std::int64_t cases = 0; cases <= units + 1; ++cases)
            least = std::min(least, cases * case_price + std::max<std::int64_t>(0, units - cases * in_case) * price);
        const Purchase bought = to_buy({{"stuff", static_cast<double>(units) * 2.0}}, book).at(0);
        EXPECT_EQ(bought.cost.cents, least);
        EXPECT_GE(static_cast<std::int64_t>(bought.units) + static_cast<std::int64_t>(bought.cases) * in_case, units);
    }
}

}  // namespace
}  // namespace seamward::test
