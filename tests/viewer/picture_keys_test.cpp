// SPDX-License-Identifier: GPL-3.0-or-later
// Keys that change the picture, and only while it has the focus.
#include <QLineEdit>

#include "whole_window_fixture.h"

namespace seamward::viewer::test {
namespace {

class PictureKeys : public WholeWindowFixture {
protected:
    void press(Qt::Key key) { QTest::keyClick(&canvas(), key); }
    Shown shown(Coat coat) { return canvas().scene().house().shown(coat); }
};

TEST_F(PictureKeys, LookFromASide) {
    open_shipped("demo.yaml");
    constexpr std::array<Vector, 5> sides{{{0, -1, 0}, {1, 0, 0}, {0, 1, 0}, {-1, 0, 0}, {0, 0, 1}}};
    constexpr std::array keys{Qt::Key_S, Qt::Key_E, Qt::Key_N, Qt::Key_W, Qt::Key_T};
    canvas().setFocus();
    for (std::size_t i = 0; i < sides.size(); ++i) {
        press(keys.at(i));
        const OrbitCamera& camera = canvas().camera();
        const Vector back = (camera.eye() - camera.focus) * (1 / camera.distance);
        EXPECT_GT(dot(back, sides.at(i)), 0.98) << i;
        for (const Part& one : window->document().solids()->parts) {
            if (one.layer == Layer::ground || one.layer == Layer::yard) continue;
            const auto at =
                camera.shown_at(canvas().scene().frame().to_scene(one.mesh.points.front()), canvas().width(), canvas().height());
            ASSERT_TRUE(at) << one.id;
            EXPECT_TRUE(canvas().rect().contains(static_cast<int>(at->x), static_cast<int>(at->y))) << i << ' ' << one.id;
        }
        press(Qt::Key_Plus);
        const double near = camera.distance;
        press(Qt::Key_Home);
        EXPECT_GT(canvas().camera().distance, near);
    }
}

TEST_F(PictureKeys, DoNothingElsewhere) {
    open_shipped("demo.yaml");
    canvas().setFocus();
    for (std::size_t i = 0; i < coat_count; ++i) {
        const auto coat = static_cast<Coat>(i);
        for (const Shown how : {Shown::faint, Shown::hidden, Shown::whole}) {
            press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i)));
            EXPECT_EQ(shown(coat), how);
            EXPECT_EQ(window->picture().tools().shown(coat), how);
        }
    }
    press(Qt::Key_I);
    EXPECT_FALSE(canvas().scene().house().is_open());
    EXPECT_FALSE(part<QToolButton>("open_house").isChecked());
    press(Qt::Key_I);
    EXPECT_TRUE(part<QToolButton>("open_house").isChecked());
    press(Qt::Key_M);
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::measure);
    EXPECT_TRUE(part<QToolButton>("measure").isChecked());
    press(Qt::Key_Escape);
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);
    EXPECT_FALSE(part<QToolButton>("measure").isChecked());
    const OrbitCamera before = canvas().camera();
    press(Qt::Key_R);
    EXPECT_TRUE(canvas().is_riding());
    // Nothing that a ride cannot show changes behind it.
    press(Qt::Key_I);
    press(Qt::Key_M);
    press(Qt::Key_Escape);
    EXPECT_FALSE(canvas().is_riding());
    EXPECT_EQ(canvas().scene().house().is_open(), part<QToolButton>("open_house").isChecked());
    EXPECT_TRUE(canvas().scene().house().is_open());
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);
    EXPECT_LT(distance(canvas().camera().eye(), before.eye()), 1e-12);

    window->show_page(MainWindow::Page::survey);
    auto& search = part<QLineEdit>("search_gaps");
    search.setFocus();
    QTest::keyClicks(&search, "rimsenwt 123456");
    EXPECT_EQ(search.text(), "rimsenwt 123456");
    QTest::keyClick(&search, Qt::Key_Home);
    EXPECT_EQ(search.cursorPosition(), 0);
    EXPECT_FALSE(canvas().is_riding());
    EXPECT_LT(distance(canvas().camera().eye(), before.eye()), 1e-12);
    EXPECT_EQ(canvas().tool(), PictureCanvas::Tool::look);
    for (std::size_t i = 0; i < coat_count; ++i) EXPECT_EQ(shown(static_cast<Coat>(i)), Shown::whole);
}

}  // namespace
}  // namespace seamward::viewer::test
