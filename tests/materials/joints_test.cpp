// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/joints.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

constexpr double inch = 0.0254;
constexpr double foot = 12;  // in inches: the formula takes any unit of length

constexpr double brick = 3.6e-6;  // for a degree Fahrenheit

/// A workbook to Allen and Rand, Architectural Detailing: brick, 24 ft, 120 F, grows by 1/8 in; a sealant of class 25 then takes
/// a joint of 1/2 in.
TEST(JointWidth, PublishedForBrickOf24Feet) {
    const double growth = brick * 24 * foot * 120;  // 3.6e-6 x 288 x 120 = 0.124416
    EXPECT_NEAR(growth, 0.124, 0.0005);
    EXPECT_DOUBLE_EQ(joint_width(0.25, 0, 0, 0, 0.125, 0), 0.5);
    EXPECT_NEAR(joint_width(0.25, brick, 24 * foot, 120, 0, 0), 0.497664, 1e-12);
    EXPECT_NEAR(stock_width(0.497664 * inch), 0.5 * inch, 1e-12);
}

/// The same workbook: strain 0.0009, class 50, a joint of 3/8 in follows 3/16 in; spacing 208 in at the most.
TEST(JointWidth, PublishedSpacing) {
    EXPECT_DOUBLE_EQ(0.5 * 0.375, 0.1875);
    EXPECT_NEAR(joint_spacing(0.5, 0.375, 0.0009), 208.0, 0.5);
    EXPECT_NEAR(joint_spacing(0.5, 0.375, 0.0009) * inch, 5.29, 0.005);
}

struct Assignment {
    const char* what;
    double movement, feet, degrees, other_share, other, tolerance;
    double width;  ///< inches
    double stock;  ///< inches, in steps of 1/8
};

/// Assignments of Cornell's ARCH 262 (Ochshorn); what they give is given, the widths are worked out here:
///   2002: (3.6e-6 x 240 x 95 + 0.0002 x 240 + 1/8) / 0.5 + 1/8 = (0.08208 + 0.048 + 0.125) x 2 + 0.125 = 0.63516
///   2001: (3.6e-6 x 300 x 100 + 0.0002 x 300) / 0.25 + 1/8 = (0.108 + 0.06) x 4 + 0.125 = 0.797
///   2004: (3.6e-6 x 144 x 90 + 0.0002 x 144 + 1/8) / 0.5 + 3/16 = (0.046656 + 0.0288 + 0.125) x 2 + 0.1875 = 0.588412
constexpr Assignment assignments[] = {{"2002", 0.50, 20, 95, 0.0002, 0.125, 0.125, 0.63516, 0.75},
                                      {"2001", 0.25, 25, 100, 0.0002, 0, 0.125, 0.797, 0.875},
                                      {"2004", 0.50, 12, 90, 0.0002, 0.125, 0.1875, 0.588412, 0.625}};

TEST(JointWidth, AssignmentsOfCornell) {
    for (const Assignment& a : assignments) {
        const double length = a.feet * foot;
        const double width = joint_width(a.movement, brick, length, a.degrees, a.other_share * length + a.other, a.tolerance);
        EXPECT_NEAR(width, a.width, 1e-12) << a.what;
        EXPECT_NEAR(stock_width(width * inch), a.stock * inch, 1e-12) << a.what;
    }
}

TEST(JointWidth, AssignmentsInMillimeters) {
    EXPECT_NEAR(0.63516 * 25.4, 16.13, 0.005);
    EXPECT_NEAR(0.797 * 25.4, 20.24, 0.005);
    EXPECT_NEAR(joint_width(0.5, brick * 1.8, 144 * inch, 90 / 1.8, (0.0288 + 0.125) * inch, 0.1875 * inch), 0.01494566, 1e-8);
}

/// Allen and Rand: 3.6e-6, 288 in, 180 F, M 0.06, t 0.125; which sealant could not be read, so both stand here.
/// 3.6e-6 x 288 x 180 + 0.06 = 0.186624 + 0.06 = 0.246624
TEST(JointWidth, OfAllenAndRand) {
    EXPECT_NEAR(joint_width(0.25, brick, 288, 180, 0.06, 0.125), 1.111496, 1e-12);
    EXPECT_NEAR(joint_width(0.50, brick, 288, 180, 0.06, 0.125), 0.618248, 1e-12);
}

TEST(StockWidth, StaysOnAStepAndNeverGoesDown) {
    EXPECT_NEAR(stock_width(0.75 * inch), 0.75 * inch, 1e-12);
    EXPECT_NEAR(stock_width((0.25 + 0.5) * inch + 1e-13), 0.75 * inch, 1e-12);
    for (int i = 1; i <= 2000; ++i) {
        const double width = i * 0.00002;
        EXPECT_GE(stock_width(width), width - 1e-9);
        EXPECT_LT(stock_width(width), width + 0.125 * inch);
    }
}

/// Architectural Detailing: 6 x 6, 19 x 9 and 32 x 13 mm; half the width, 6 mm at least, 13 mm at most.
TEST(JointDepth, WorkedDepthsOfAllenAndRand) {
    EXPECT_DOUBLE_EQ(joint_depth(0.006), 0.006);
    EXPECT_NEAR(joint_depth(0.019), 0.0095, 1e-12);
    EXPECT_NEAR(joint_depth(0.75 * inch), 0.375 * inch, 1e-12);
    EXPECT_DOUBLE_EQ(joint_depth(0.032), 0.013);
    EXPECT_DOUBLE_EQ(joint_depth(0.0012), 0.006);
}

TEST(BeadWidth, IsNeverUnderSixMillimeters) {
    EXPECT_DOUBLE_EQ(bead_width(0.001), 0.006);
    EXPECT_DOUBLE_EQ(bead_width(0.02), 0.02);
}

/// Advice of the US Department of Energy, as a utility gives it.
TEST(CaulkOnly, UnderAQuarterInch) {
    EXPECT_TRUE(caulk_only(0.006));
    EXPECT_FALSE(caulk_only(0.25 * inch));
    EXPECT_FALSE(caulk_only(0.01));
}

/// 1/8 in over up to joints of 3/4 in, 25 % over beyond, then the next stock size: practice under ASTM C1193, from memory.
TEST(BackerRod, IsTheNextStockSizeUp) {
    const std::pair<double, const char*> rows[] = {{1.0 / 8, "backer-rod-1-4"},  // 1/8 + 1/8 = 1/4
                                                   {1.0 / 4, "backer-rod-3-8"},  // 1/4 + 1/8
                                                   {3.0 / 8, "backer-rod-1-2"},  // 3/8 + 1/8
                                                   {0.4, "backer-rod-5-8"},      // 0.525
                                                   {3.0 / 4, "backer-rod-7-8"},  // 3/4 + 1/8
                                                   {0.8, "backer-rod-1"},        // 0.8 x 1.25 = 1
                                                   {0.81, "backer-rod-1-1-4"},   // 1.0125
                                                   {1.0, "backer-rod-1-1-4"},    // 1.25
                                                   {1.25, "backer-rod-2"},       // 1.5625
                                                   {1.6, "backer-rod-2"}};       // 2
    for (const auto& [width, id] : rows) {
        ASSERT_NE(backer_rod(width * inch), nullptr) << width;
        EXPECT_EQ(backer_rod(width * inch)->id, id) << width;
    }
    EXPECT_EQ(backer_rod(1.61 * inch), nullptr);
}

/// What stands in documents is marked as read or second hand, the rest as memory.
TEST(JointTable, SaysHowFarItIsToBeTrusted) {
    const auto seen = [](const char* id) {
        const Table<JointFigure>& table = shipped_joints();
        for (const CatalogSource& source : table.sources) {
            if (source.id == table.find(id)->source) return source.seen;
        }
        throw std::out_of_range(id);
    };
    using Seen = CatalogSource::Seen;
    for (const char* id : {"brick", "brick-older", "douglas-fir-parallel", "douglas-fir-perpendicular", "cement-mortar",
                           "concrete-older", "width-least", "depth-share", "depth-least", "depth-most"})
        EXPECT_EQ(seen(id), Seen::read) << id;
    for (const char* id : {"pine", "caulk-below", "class-12-1-2", "class-25"}) EXPECT_EQ(seen(id), Seen::secondary) << id;
    for (const char* id : {"class-35", "class-50", "class-100-50", "concrete", "aluminum", "stucco", "vinyl", "steel", "copper",
                           "rod-larger", "backer-rod-1"})
        EXPECT_EQ(seen(id), Seen::memory) << id;
}

TEST(JointTable, HoldsClassesAndCoefficients) {
    const auto value = [](const char* id) { return shipped_joints().find(id)->value; };
    EXPECT_DOUBLE_EQ(value("class-12-1-2"), 0.125);
    EXPECT_DOUBLE_EQ(value("class-100-50"), 1.0);
    EXPECT_DOUBLE_EQ(shipped_joints().find("class-100-50")->shrinks, 0.5);
    EXPECT_DOUBLE_EQ(shipped_joints().find("class-25")->shrinks, 0.25);
    // For a kelvin, in millionths: 3.6 x 1.8 = 6.48, 2.1 x 1.8 = 3.78, 32 x 1.8 = 57.6, 2.8 x 1.8 = 5.04.
    EXPECT_NEAR(value("brick"), 6.48e-6, 1e-15);
    EXPECT_NEAR(value("douglas-fir-parallel"), 3.78e-6, 1e-15);
    EXPECT_NEAR(value("douglas-fir-perpendicular"), 57.6e-6, 1e-15);
    EXPECT_NEAR(value("pine"), 5.04e-6, 1e-15);
    EXPECT_NEAR(value("range"), 130 / 1.8, 1e-12);  // kelvin
}

/// The rules that a table must have, then one more row.
std::vector<Diagnostic> faults_of_row(const std::string& row) {
    std::string text =
        "catalog: joints\nedition: e\nsources:\n  - {id: book, title: t, publisher: p, year: 0, seen: read}\njoints:\n";
    for (const char* id :
         {"width-least", "depth-least", "depth-most", "caulk-below", "stock-step", "rod-larger-small", "rod-small-to"})
        text += "  - {id: " + std::string(id) + ", kind: length, length: 6 mm, source: book}\n";
    for (const char* id : {"depth-share", "rod-larger"})
        text += "  - {id: " + std::string(id) + ", kind: share, share: 50 %, source: book}\n";
    text += "  - {id: range, kind: degrees, degrees: 130 F, source: book}\n";
    return faults_of([&] { (void)read_joints(text + row, "joints.yaml"); });
}

TEST(JointTable, FaultsNameTheirPlace) {
    EXPECT_TRUE(faults_of_row("").empty());
    EXPECT_TRUE(faults_of_row("  - {id: x, kind: expansion, per: 6.5e-6 /C, source: book}\n").empty());
    const auto fault = [](const std::string& row, std::uint32_t column, const char* what) {
        return only_fault(faults_of_row("  - " + row + "\n"), Place{16, column}, what, "");
    };
    EXPECT_TRUE(fault("{id: x, kind: expansion, per: 6.5e-6, source: book}", 35, "no growth for a degree"));
    EXPECT_TRUE(fault("{id: x, kind: expansion, share: 5 %, per: 1e-6 /F, source: book}", 37, "says nothing of kind: expansion"));
    EXPECT_TRUE(fault("{id: x, kind: degrees, degrees: 130, source: book}", 37, "no range of temperature"));
    EXPECT_TRUE(fault("{id: x, kind: rod, source: book}", 5, "has no length"));
    EXPECT_TRUE(fault("{id: x, kind: rods, length: 1 in, source: book}", 19, "unknown kind"));
}

TEST(JointTable, NeedsEveryRule) {
    const auto faults =
        faults_of([] { (void)read_joints("catalog: joints\nedition: e\nsources: []\njoints: []\n", "joints.yaml"); });
    EXPECT_EQ(faults.size(), 10U) << listing(faults);
}

}  // namespace
}  // namespace seamward::test
