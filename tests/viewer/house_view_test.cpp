// SPDX-License-Identifier: GPL-3.0-or-later
// What the picture of a house shows and what a click hits, against every triangle of its solids.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "ray_peer.h"
#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

class HouseView : public WholeWindowFixture {
protected:
    /// Everything whole, nothing fades.
    void show_all() {
        canvas().set_open(false);
        for (std::size_t i = 0; i < coat_count; ++i) canvas().set_shown(static_cast<Coat>(i), Shown::whole);
    }
    RayPeer peer() {
        const Point& origin = canvas().scene().frame().origin;
        return {window->document().solids()->parts, origin - Point{}};
    }
    std::vector<bool> hit_by_clicks() {
        std::vector<bool> solid;
        for (const Part& one : window->document().solids()->parts) {
            const bool whole = canvas().scene().house().shown(coat_by_page(one.layer)) == Shown::whole;
            solid.push_back(whole && one.layer != Layer::ground);
        }
        return solid;
    }
    OrbitCamera some_camera(std::mt19937& random) {
        std::uniform_real_distribution<double> share(0, 1);
        OrbitCamera camera = canvas().camera();
        camera.azimuth = share(random) * 2 * std::numbers::pi;
        camera.elevation = 0.06 + share(random) * 1.45;
        camera = canvas().scene().whole_house(camera, 1.4);
        camera.distance *= 0.4 + share(random);
        return camera;
    }
    /// As many random rays through the picture as that, each against all triangles.
    void compare_picks(int rays, std::optional<Cut> cut) {
        const RayPeer all = peer();
        const std::vector<bool> solid = hit_by_clicks();
        std::optional<CutPlane> plane;
        if (cut) plane = canvas().scene().plane_of(static_cast<int>(cut->from), cut->depth);
        std::mt19937 random(11);
        std::uniform_real_distribution<double> share(0, 1);
        int hits = 0;
        for (int i = 0; i < rays; ++i) {
            const OrbitCamera camera = some_camera(random);
            const PicturePoint at{share(random) * 700, share(random) * 500};
            const Point eye = camera.eye();
            const Vector ahead = camera.sight(at, 700, 500);
            const auto picked = canvas().scene().solid_at(at, camera, 700, 500);
            const std::vector<RayPeer::Hit> expected = all.first(eye, ahead, solid, plane);
            ASSERT_EQ(picked.has_value(), !expected.empty()) << "ray " << i;
            if (!picked) continue;
            ++hits;
            EXPECT_NEAR(distance(eye, picked->at), expected.front().far, 2e-5) << "ray " << i;
            EXPECT_TRUE(std::ranges::any_of(expected, [&](const RayPeer::Hit& hit) { return hit.part == picked->part; }))
                << "ray " << i << ": " << window->document().solids()->parts[picked->part].id;
            EXPECT_LT(dot(picked->outward, ahead), 1e-9);
        }
        EXPECT_GT(hits, rays / 12);
    }
    double hidden_length() {
        double sum = 0;
        for (const auto& line : canvas().scene().hidden_parts()) {
            for (std::size_t i = 1; i < line.size(); ++i) sum += distance(line[i - 1], line[i]);
        }
        return sum;
    }
    Layer layer_at_middle() {
        const PicturePoint middle{canvas().width() / 2.0, canvas().height() / 2.0};
        const auto hit = canvas().scene().solid_at(middle, canvas().camera(), canvas().width(), canvas().height());
        if (!hit) throw std::runtime_error("nothing in the middle");
        return window->document().solids()->parts[hit->part].layer;
    }
};

class PicksOf : public HouseView, public testing::WithParamInterface<const char*> {};

TEST_P(PicksOf, AgreeWithAllTriangles) {
    open_shipped(GetParam());
    show_all();
    compare_picks(150, std::nullopt);
    canvas().set_shown(Coat::roof, Shown::hidden);
    compare_picks(80, std::nullopt);
    canvas().set_shown(Coat::walls, Shown::faint);
    canvas().set_shown(Coat::linings, Shown::hidden);
    compare_picks(80, std::nullopt);
    show_all();
    for (const Cut& cut : {Cut{Side::south, 0.4}, Cut{Side::west, 0.7}, Cut{Side::above, 0.55}}) {
        canvas().set_cut(cut);
        canvas().set_open(false);
        compare_picks(60, cut);
    }
}

TEST_P(PicksOf, GiveTheGapThatAFaceBounds) {
    open_shipped(GetParam());
    show_all();
    const Vector to_scene = Point{} - canvas().scene().frame().origin;
    const auto& parts = window->document().solids()->parts;
    int tried = 0;
    for (std::uint32_t p = 0; p < parts.size(); ++p) {
        const TriangleMesh& mesh = parts[p].mesh;
        for (std::size_t i = 0; i < parts[p].bounds.size(); i += 7) {
            if (!parts[p].bounds[i].valid()) continue;
            const auto& [a, b, c] = mesh.triangles[i];
            const Vector across = cross(mesh.points[b] - mesh.points[a], mesh.points[c] - mesh.points[a]);
            if (length(across) < 1e-9) continue;
            const Vector out = across * (1e-4 / length(across));
            const Vector third = ((mesh.points[b] - mesh.points[a]) + (mesh.points[c] - mesh.points[a])) * (1.0 / 3);
            const Point middle = mesh.points[a] + third + to_scene;
            const auto hit = canvas().scene().house().first_solid(middle + out, middle + out * -1);
            ASSERT_TRUE(hit) << parts[p].id << ' ' << i;
            EXPECT_EQ(hit->part, p) << parts[p].id;
            EXPECT_EQ(hit->gap, parts[p].bounds[i]) << parts[p].id;
            ++tried;
        }
    }
    EXPECT_GT(tried, 200);
}

TEST_P(PicksOf, HideWhatReallyIsHidden) {
    open_shipped(GetParam());
    show_all();
    const RayPeer all = peer();
    const std::vector<bool> solid = hit_by_clicks();
    int hidden = 0;
    for (int way = 0; way < 5; ++way) {
        window->document().choose_way(way);
        canvas().settle();
        const Point eye = canvas().camera().eye();
        for (const auto& line : canvas().scene().hidden_parts()) {
            for (std::size_t i = 1; i < line.size(); ++i) {
                const Point middle = line[i - 1] + (line[i] - line[i - 1]) * 0.5;
                const double far = distance(eye, middle);
                const auto hits = all.first(eye, (middle - eye) * (1 / far), solid, std::nullopt);
                ASSERT_FALSE(hits.empty());
                EXPECT_LT(hits.front().far, far - 0.0199);
                ++hidden;
            }
        }
    }
    EXPECT_GT(hidden, 20);
}

TEST_P(PicksOf, TurnToNoWorseView) {
    open_shipped(GetParam());
    const int ways = static_cast<int>(window->document().ways().paths.size());
    for (int way = 0; way < ways; ++way) {
        window->document().choose_way(way);
        for (const Side side : {Side::south, Side::north, Side::above}) {
            canvas().show_side(side);
            const double before = hidden_length();
            canvas().show_chosen_way();
            EXPECT_LE(hidden_length(), before + 1e-6) << "way " << way << " from " << static_cast<int>(side);
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Jobs, PicksOf, testing::Values("demo.yaml", "townhouse.yaml"),
                         [](const auto& job) { return QString(job.param).section('.', 0, 0).remove('-').toStdString(); });

/// What moves is drawn fast; what rests, finely, by itself.
TEST_F(HouseView, IsDrawnFinelyAtRest) {
    open_shipped("wall-corner.yaml");
    canvas().settle();
    const QImage fine = canvas().image();
    canvas().set_shown(Coat::roof, Shown::hidden);
    canvas().set_shown(Coat::roof, Shown::whole);
    const QImage fast = canvas().image();
    EXPECT_NE(fast, fine);
    QTest::qWait(400);
    EXPECT_EQ(canvas().image(), fast) << "of pictures that do not move by themselves";
    canvas().set_animated(true);
    canvas().set_shown(Coat::roof, Shown::hidden);
    canvas().set_shown(Coat::roof, Shown::whole);
    EXPECT_TRUE(QTest::qWaitFor([&] { return canvas().image() == fine; }, soon));
}

TEST_F(HouseView, LooksUnderWhatIsHiddenOrFaint) {
    open_shipped("demo.yaml");
    show_all();
    canvas().show_side(Side::above);
    EXPECT_EQ(layer_at_middle(), Layer::roof);
    for (const Shown how : {Shown::faint, Shown::hidden}) {
        canvas().set_shown(Coat::roof, how);
        EXPECT_NE(layer_at_middle(), Layer::roof);
        EXPECT_NE(layer_at_middle(), Layer::eaves);
    }
    for (const Coat coat : {Coat::framing, Coat::linings, Coat::walls, Coat::fixtures}) canvas().set_shown(coat, Shown::hidden);
    EXPECT_EQ(layer_at_middle(), Layer::foundation);
    canvas().set_shown(Coat::roof, Shown::whole);
    EXPECT_EQ(layer_at_middle(), Layer::roof);
}

TEST_F(HouseView, MeasuresWhatTheHouseFileSays) {
    open_shipped("demo.yaml");  // 18 m by 12 m
    show_all();
    for (const Coat coat : {Coat::roof, Coat::framing, Coat::linings, Coat::walls, Coat::fixtures})
        canvas().set_shown(coat, Shown::hidden);
    const Vector to_scene = Point{} - canvas().scene().frame().origin;
    const auto& parts = window->document().solids()->parts;
    const auto slab = std::ranges::find_if(parts, [](const Part& one) { return one.name.find("slab") != std::string::npos; });
    ASSERT_NE(slab, parts.end());
    double top = -100;
    for (const Point& at : slab->mesh.points) top = std::max(top, at.z);
    canvas().set_tool(PictureCanvas::Tool::measure);
    EXPECT_EQ(canvas().measured(), std::nullopt);
    canvas().show_side(Side::above);
    click(Point{0, 0, top} + to_scene, {2, -2});
    EXPECT_EQ(canvas().measured(), std::nullopt);
    click(Point{18, 0, top} + to_scene, {-2, -2});
    ASSERT_TRUE(canvas().measured());
    EXPECT_NEAR(*canvas().measured(), 18, 0.001);
    click(Point{18, 0, top} + to_scene, {-2, -2});
    EXPECT_EQ(canvas().measured(), std::nullopt);
    click(Point{18, 12, top} + to_scene, {-2, 2});
    ASSERT_TRUE(canvas().measured());
    EXPECT_NEAR(*canvas().measured(), 12, 0.001);
    canvas().set_tool(PictureCanvas::Tool::look);
    EXPECT_EQ(canvas().measured(), std::nullopt);
}

TEST_F(HouseView, TellsWhichGapWasClicked) {
    open_shipped("demo.yaml");
    canvas().show_side(Side::north);
    Picked what;
    QObject context;
    QObject::connect(&canvas(), &PictureCanvas::picked, &context, [&](const Picked& now) { what = now; });
    const Survey& survey = window->document().job().survey;
    int clicked = 0;
    for (std::uint32_t i = 0; i < survey.gaps.size(); i += 9) {
        const auto& at = survey.gaps[i].at;
        if (!at) continue;
        const auto shown =
            canvas().camera().shown_at(canvas().scene().frame().to_scene(*at), canvas().width(), canvas().height());
        if (!shown || !canvas().rect().adjusted(5, 5, -5, -5).contains(static_cast<int>(shown->x), static_cast<int>(shown->y)))
            continue;
        what = {};
        click(canvas().scene().frame().to_scene(*at));
        ASSERT_TRUE(what.gap);
        // Another gap may be shown in the same place.
        const Point other = canvas().scene().frame().to_scene(*survey[*what.gap].at);
        const auto there = canvas().camera().shown_at(other, canvas().width(), canvas().height());
        EXPECT_LT(std::hypot(there->x - shown->x, there->y - shown->y), 2) << survey.gaps[i].id;
        EXPECT_EQ(window->picture().facts().gap(), what.gap);
        EXPECT_TRUE(window->picture().facts().isVisible());
        ++clicked;
    }
    EXPECT_GT(clicked, 5);
}

}  // namespace
}  // namespace seamward::viewer::test
