// SPDX-License-Identifier: GPL-3.0-or-later
// The colors of both sets by formulas: contrast as WCAG 2.1 defines it (relative luminance, 1.4.3 and 1.4.11), and how they look
// to people who lack one kind of cones, by the matrices of Machado, Oliveira and Fernandes, "A Physiologically-based Model for
// Simulation of Color Vision Deficiency", IEEE Transactions on Visualization and Computer Graphics 15(6), 2009, severity 1.
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "layers/palette.h"

namespace seamward::viewer::test {
namespace {

using Three = std::array<double, 3>;
using Matrix = std::array<Three, 3>;

constexpr std::array<Matrix, 4> sights{
    Matrix{Three{1, 0, 0}, Three{0, 1, 0}, Three{0, 0, 1}},
    Matrix{Three{0.152286, 1.052583, -0.204868}, Three{0.114503, 0.786281, 0.099216}, Three{-0.003882, -0.048116, 1.051998}},
    Matrix{Three{0.367322, 0.860646, -0.227968}, Three{0.280085, 0.672501, 0.047413}, Three{-0.011820, 0.042940, 0.968881}},
    Matrix{Three{1.255528, -0.076749, -0.178779}, Three{-0.078411, 0.930809, 0.147602}, Three{0.004733, 0.691367, 0.303900}}};
constexpr std::array sight_names{"all cones", "protanopia", "deuteranopia", "tritanopia"};

Three linear(const QColor& color) {
    const auto one = [](double c) { return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4); };
    return {one(color.redF()), one(color.greenF()), one(color.blueF())};
}

double luminance(const Three& c) { return 0.2126 * c[0] + 0.7152 * c[1] + 0.0722 * c[2]; }

double contrast(const QColor& a, const QColor& b) {
    const double first = luminance(linear(a)) + 0.05;
    const double second = luminance(linear(b)) + 0.05;
    return std::max(first, second) / std::min(first, second);
}

/// CIE 1976 L*a*b* under D65, as seen through a matrix.
Three lab(const QColor& color, const Matrix& sight) {
    const Three c = linear(color);
    Three s{};
    for (std::size_t i = 0; i < 3; ++i) s[i] = std::clamp(sight[i][0] * c[0] + sight[i][1] * c[1] + sight[i][2] * c[2], 0.0, 1.0);
    const auto f = [](double t) { return t > 0.008856 ? std::cbrt(t) : 7.787 * t + 16.0 / 116; };
    const double x = f((0.4124 * s[0] + 0.3576 * s[1] + 0.1805 * s[2]) / 0.9505);
    const double y = f(luminance(s));
    const double z = f((0.0193 * s[0] + 0.1192 * s[1] + 0.9505 * s[2]) / 1.089);
    return {116 * y - 16, 500 * (x - y), 200 * (y - z)};
}

struct Named {
    const char* name;
    QColor color;
};

/// Far enough apart for everybody: `apart` in all (CIE 1976 difference), `lighter` in lightness alone.
void expect_apart(const Named& a, const Named& b, double apart, double lighter) {
    for (std::size_t i = 0; i < sights.size(); ++i) {
        const Three p = lab(a.color, sights[i]);
        const Three q = lab(b.color, sights[i]);
        EXPECT_GE(std::hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2]), apart) << a.name << ", " << b.name << ", " << sight_names[i];
        EXPECT_GE(std::abs(p[0] - q[0]), lighter) << a.name << ", " << b.name << ", " << sight_names[i];
    }
}

class Colors : public testing::TestWithParam<palette::Contrast> {
protected:
    void SetUp() override { palette::use(GetParam()); }
    void TearDown() override { palette::use(palette::Contrast::normal); }
    [[nodiscard]] bool high() const { return GetParam() == palette::Contrast::high; }
};

TEST_P(Colors, LettersStandOut) {
    const double least = high() ? 7 : 4.5;
    for (const QColor& under : {palette::panel, palette::card, palette::button, palette::chosen_row, palette::paper_low}) {
        EXPECT_GE(contrast(palette::ink, under), least) << under.name().toStdString();
        EXPECT_GE(contrast(palette::soft_ink, under), least) << under.name().toStdString();
    }
    EXPECT_GE(contrast(palette::ink, palette::smallest), least);
    EXPECT_GE(contrast(palette::card, palette::way), least);
    EXPECT_GE(contrast(palette::way, palette::chosen_row), least);
}

TEST_P(Colors, SignsStandOut) {
    for (const QColor& sign : {palette::way, palette::open_sign, palette::shut_sign, palette::warn_sign, palette::measure,
                               palette::selection, palette::other_way})
        EXPECT_GE(contrast(sign, palette::card), 3) << sign.name().toStdString();
    // No color is 7 times darker than white under black letters and 3 times darker than white: (1 + 0.05) / (L + 0.05) and
    // (L + 0.05) / 0.05 are 21 together. The smallest gap has a ring and a label beside its color.
    EXPECT_GE(contrast(palette::smallest, palette::card), 2.9);
}

TEST_P(Colors, AreToldApartWhateverConesAreMissing) {
    const Named way{"way", palette::way};
    const Named smallest{"smallest", palette::smallest};
    const Named open{"open_sign", palette::open_sign};
    const Named shut{"shut_sign", palette::shut_sign};
    const Named warn{"warn_sign", palette::warn_sign};
    expect_apart(way, smallest, 60, 20);
    expect_apart(open, shut, 40, 15);
    expect_apart(open, warn, 14, 11);
    expect_apart(shut, warn, 40, 25);
    expect_apart(way, {"other_way", palette::other_way}, 20, 0);
    expect_apart(smallest, {"other_way", palette::other_way}, 45, 0);
    expect_apart(smallest, {"gap", palette::gap}, 45, 0);
    expect_apart(way, {"gap", palette::gap}, 20, 7);
    expect_apart({"measure", palette::measure}, way, 25, 0);
    expect_apart({"measure", palette::measure}, smallest, 30, 30);
    expect_apart({"selection", palette::selection}, way, 25, 20);
    expect_apart({"selection", palette::selection}, smallest, 90, 0);
}

INSTANTIATE_TEST_SUITE_P(BothSets, Colors, testing::Values(palette::Contrast::normal, palette::Contrast::high),
                         [](const auto& set) { return set.param == palette::Contrast::high ? "High" : "Normal"; });

TEST(Palette, ComesBackAsItWas) {
    const QColor way = palette::way;
    palette::use(palette::Contrast::high);
    EXPECT_EQ(palette::in_use(), palette::Contrast::high);
    EXPECT_NE(palette::way, way);
    palette::use(palette::Contrast::normal);
    EXPECT_EQ(palette::way, way);
}

}  // namespace
}  // namespace seamward::viewer::test
