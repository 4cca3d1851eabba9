// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVTKOpenGLNativeWidget.h>

#include <QElapsedTimer>
#include <QTimer>
#include <QVariantAnimation>
#include <cstdint>
#include <string>

#include "document/closings_document.h"
#include "document/job_document.h"
#include "layers/house_scene.h"
#include "layers/place_marks.h"
#include "layers/ride.h"
#include "panels/view_tools.h"

namespace seamward::viewer {

/// What the user clicked in the picture.
struct Picked {
    std::optional<GapIndex> gap;        ///< of the job
    std::optional<std::uint32_t> part;  ///< of the solids
    std::optional<Point> at;            ///< on a solid, in the job's frame
    QPoint pixel;                       ///< of the picture
};

/// The 3D picture with its words. Drag turns it, drag with the right or middle button (or Shift) moves it, the wheel
/// comes closer; arrow keys, + and - do the same, Home or a double click shows the whole house again. A click picks.
class PictureCanvas : public QVTKOpenGLNativeWidget {
    Q_OBJECT

public:
    /// What the picture tells besides the house.
    enum class Story : std::uint8_t { ways, closings, survey, drill };
    /// What a click does.
    enum class Tool : std::uint8_t { look, measure, place };

    explicit PictureCanvas(JobDocument& document, ClosingsDocument& closings, QWidget* parent = nullptr);

    /// Takes the document's job up. `keep`: it is the same job with other solids, so that the eye, the cut and what is marked
    /// stay. False when there is nothing to show.
    bool show_job(bool keep);
    void show_ways();
    void show_closings();
    void show_whole_house();
    void show_side(Side side);
    /// Turns until most of the chosen way is seen, where much of it is hidden.
    void show_chosen_way();
    void set_story(Story story);
    void set_tool(Tool tool);
    [[nodiscard]] Tool tool() const { return tool_; }
    void set_shown(Coat coat, Shown shown);
    void set_open(bool open);
    void set_cut(const std::optional<Cut>& cut);
    [[nodiscard]] const std::optional<Cut>& cut() const { return cut_; }
    /// Marks a gap, or none.
    void mark(std::optional<GapIndex> gap);
    [[nodiscard]] std::optional<GapIndex> marked() const { return gap_with(marked_); }
    /// The places of a drill, in the job's frame; shown in its story.
    void set_places(std::vector<PlaceMark> places);
    [[nodiscard]] const std::vector<PlaceMark>& places() const { return places_; }
    /// The position among those of the mark that is shown within some pixels of a point of the picture, the nearest; or nothing.
    [[nodiscard]] std::optional<std::size_t> place_at(const QPoint& at) const;
    /// Flies to where these points are seen best, in the job's frame, or, where there are none, the chosen way.
    void show_around(std::vector<Point> points);
    [[nodiscard]] Story story() const { return story_; }
    /// False, for tests: moves of the eye jump to their end, and only settle() draws finely.
    void set_animated(bool animated) { animated_ = animated; }

    [[nodiscard]] bool can_ride() const;
    /// The ride along the chosen way, whether or not the picture is on it.
    [[nodiscard]] Ride ride() const;
    void start_ride();
    void end_ride();
    [[nodiscard]] bool is_riding() const { return ride_.has_value(); }
    [[nodiscard]] double ride_duration() const { return ride_ ? ride_->duration() : 0; }
    void ride_to(double seconds);
    void set_ride_going(bool going);
    /// How many times as fast as at first, also of the film that is saved; it holds for all rides.
    [[nodiscard]] double ride_speed() const { return ride_speed_; }
    /// Twice as fast or half as fast, between `slowest_ride` and `fastest_ride`.
    void change_ride_speed(bool faster);
    static constexpr double slowest_ride = 0.25, fastest_ride = 4;
    /// Where the ride is: "in gap 2 of 4: sweep under the door, 3/8 in".
    [[nodiscard]] QString ride_words() const;

    [[nodiscard]] const HouseScene& scene() const { return scene_; }
    [[nodiscard]] const OrbitCamera& camera() const { return camera_; }
    /// Meters between the two points measured, or nothing.
    [[nodiscard]] std::optional<double> measured() const;
    /// What the window shows here, words and all.
    [[nodiscard]] QImage image();
    /// Draws finely now, and not only when the picture has been at rest for a while.
    void settle();

signals:
    void picked(const seamward::viewer::Picked& what);
    /// The click that Tool::place waits for, in the job's frame, and the part that was clicked.
    void placed(const seamward::Point& at, const QString& part);
    void ride_moved(double seconds, bool going);
    void ride_ended();
    void tool_changed();
    /// The house was opened or shut by something else than set_open().
    void open_changed(bool open);

protected:
    bool event(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    class Words;

    void moved();
    void redraw();
    void draw();
    void move_eye(const OrbitCamera& to);
    void click(const QPoint& at);
    void tell_gap(const QPoint& at, const QPoint& on_screen);
    void next_frame();
    [[nodiscard]] Point in_job(const Point& at) const;
    [[nodiscard]] std::optional<GapIndex> gap_of(const SolidHit& hit) const;
    [[nodiscard]] std::optional<GapIndex> gap_with(const std::string& id) const;
    [[nodiscard]] std::optional<CutPlane> cut_plane() const;
    void paint_words(QPainter& painter);
    [[nodiscard]] std::vector<GapDot> gap_dots() const;

    JobDocument& document_;
    ClosingsDocument& closings_;
    HouseScene scene_;
    OrbitCamera camera_;
    bool whole_house_ = true;  ///< the eye was not moved by hand
    QPoint last_, pressed_;
    bool dragged_ = false;
    bool animated_ = true;
    Story story_ = Story::ways;
    std::vector<PlaceMark> places_;
    Tool tool_ = Tool::look;
    std::string marked_;                              ///< id of a gap, whose position in the survey changes; empty: none
    std::optional<Point> measure_from_, measure_to_;  ///< scene
    std::optional<Cut> cut_;
    std::optional<Ride> ride_;
    std::optional<OrbitCamera> before_ride_;
    bool open_before_ride_ = true;
    bool open_after_measuring_ = false;
    double ride_at_ = 0;  ///< seconds
    double ride_speed_ = 1;
    QElapsedTimer ride_clock_;
    QTimer ride_timer_;
    QTimer at_rest_;  ///< runs out when the picture has stopped moving
    QVariantAnimation flight_;
    QWidget* words_;  ///< over the picture
};

}  // namespace seamward::viewer
