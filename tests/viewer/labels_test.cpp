// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <cmath>

#include "layers/ground_layer.h"
#include "layers/label_places.h"
#include "layers/orbit_camera.h"

namespace seamward::viewer::test {
namespace {

/// Labels crowd at one point near a corner: none covers another, none leaves the picture.
TEST(PlaceLabels, KeepApartAndInside) {
    const QRectF area(0, 0, 800, 600);
    std::vector<LabelWish> wishes;
    for (int i = 0; i < 8; ++i) wishes.push_back({{785.0 - i, 590.0}, {i == 2 ? 260.0 : 24.0, i == 2 ? 60.0 : 24.0}, 12});
    const std::vector<QRectF> places = place_labels(wishes, {}, area);
    ASSERT_EQ(places.size(), wishes.size());
    for (std::size_t i = 0; i < places.size(); ++i) {
        EXPECT_TRUE(area.contains(places[i])) << i;
        for (std::size_t j = 0; j < i; ++j) EXPECT_FALSE(places[i].intersects(places[j])) << i << ' ' << j;
    }
}

/// Labels of other gaps leave a marker alone, even where a line has to be covered instead.
TEST(PlaceLabels, KeepOffMarkers) {
    const QRectF area(0, 0, 800, 600);
    std::vector<KeptClear> kept;
    for (int i = 0; i < 12; ++i) kept.push_back({{400 + 70 * std::cos(i * 0.5236), 300 + 70 * std::sin(i * 0.5236)}, 14});
    for (int x = 0; x < 800; x += 20) {
        for (int y = 0; y < 600; y += 20) kept.push_back({{x * 1.0, y * 1.0}, 0});
    }
    const std::vector<LabelWish> wishes{{{400, 300}, {160, 50}, 46}, {{430, 310}, {90, 22}, 26}};
    for (const QRectF& place : place_labels(wishes, kept, area)) {
        for (int i = 0; i < 12; ++i)
            EXPECT_FALSE(place.intersects(QRectF(kept[static_cast<std::size_t>(i)].at - QPointF(14, 14), QSizeF(28, 28)))) << i;
    }
}

TEST(PlaceLabels, PinTheOneWithoutAPosition) {
    const std::vector<LabelWish> wishes{{{12, 12}, {200, 60}, 46, true}, {{30, 40}, {24, 24}, 11}};
    const auto places = place_labels(wishes, {}, QRectF(12, 12, 700, 500));
    EXPECT_EQ(places[0], QRectF(12, 12, 200, 60));
    EXPECT_FALSE(places[1].intersects(places[0]));
}

TEST(FreePlace, IsFreeOrNone) {
    const QRectF area(0, 0, 400, 300);
    const LabelWish wish{{200, 150}, {60, 18}};
    EXPECT_EQ(free_place(wish, {}, {}, area)->center(), wish.anchor);
    const std::vector<KeptClear> beside{{{195, 150}, 8}};
    const auto moved = free_place(wish, {}, beside, area);
    ASSERT_TRUE(moved);
    EXPECT_FALSE(moved->intersects(QRectF(187, 142, 16, 16)));
    const std::vector<QRectF> taken{area};
    EXPECT_FALSE(free_place(wish, taken, {}, area));
    EXPECT_FALSE(free_place({{2, 2}, {600, 18}}, {}, {}, area));
}

/// From any side, in any shape of window, the whole box is seen, and fills the picture one way or the other.
TEST(OrbitCamera, FitsTheHouse) {
    const Box box{{-9, -8, 0}, {9, 8, 5}};
    for (const double aspect : {0.5, 1.0, 1.78, 3.0}) {
        for (double azimuth = -3; azimuth < 3.2; azimuth += 0.37) {
            OrbitCamera camera;
            camera.azimuth = azimuth;
            camera = fitted(camera, box, aspect, 0.8);
            double widest = 0;
            for (int corner = 0; corner < 8; ++corner) {
                const Point at{corner & 1 ? 9.0 : -9.0, corner & 2 ? 8.0 : -8.0, corner & 4 ? 5.0 : 0.0};
                const auto shown = camera.shown_at(at, aspect * 600, 600);
                ASSERT_TRUE(shown);
                const double x = std::abs(shown->x / (aspect * 300) - 1);
                const double y = std::abs(shown->y / 300 - 1);
                EXPECT_LE(std::max(x, y), 0.8 + 1e-9);
                widest = std::max({widest, x, y});
            }
            EXPECT_NEAR(widest, 0.8, 1e-9);
        }
    }
}

TEST(OrbitCamera, StaysUprightAndAboveTheGround) {
    OrbitCamera camera;
    for (int i = 0; i < 100; ++i) camera.turn(0.5, -0.2);
    EXPECT_GT(camera.eye().z, camera.focus.z);
    for (int i = 0; i < 100; ++i) camera.turn(0, 0.2);
    EXPECT_LT(camera.elevation, 1.5708);
}

TEST(RoundGridStep, KeepsTheNumberOfLinesLow) {
    EXPECT_EQ(round_grid_step(24), 1);
    for (double reach = 1; reach < 1e6; reach *= 1.3) {
        EXPECT_LE(reach / round_grid_step(reach), 60) << reach;
        if (reach > 60) {
            EXPECT_GE(reach / round_grid_step(reach), 6) << reach;
        }
    }
}

}  // namespace
}  // namespace seamward::viewer::test
