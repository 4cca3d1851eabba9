// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/picture_canvas.h"

#include <vtkGenericOpenGLRenderWindow.h>
#include <vtkRenderWindowInteractor.h>

#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/drawn_shut.h"
#include "document/translations.h"
#include "document/units_text.h"
#include "document/way_text.h"
#include "layers/way_overlay.h"

namespace seamward::viewer {

namespace {

constexpr int flight_time = 420;  ///< milliseconds of a move of the eye
constexpr int frame_time = 33;    ///< of a ride, likewise

}  // namespace

/// The words over the picture.
class PictureCanvas::Words : public QWidget {
public:
    explicit Words(PictureCanvas& canvas) : QWidget(&canvas), canvas_(canvas) { setAttribute(Qt::WA_TransparentForMouseEvents); }

protected:
    void paintEvent(QPaintEvent* /*event*/) override {
        QPainter painter(this);
        canvas_.paint_words(painter);
    }

private:
    PictureCanvas& canvas_;
};

PictureCanvas::PictureCanvas(JobDocument& document, ClosingsDocument& closings, QWidget* parent)
    : QVTKOpenGLNativeWidget(parent), document_(document), closings_(closings), words_(new Words(*this)) {
    document_.prepare_solids_with([](const House& house, const RunContext& context) { return prepare_house(house, context); });
    vtkNew<vtkGenericOpenGLRenderWindow> window;
    window->SetMultiSamples(0);  // the scene has samples of its own, on any machine
    window->AddRenderer(scene_.renderer());
    setRenderWindow(window);
    interactor()->SetInteractorStyle(nullptr);  // the eye is ours: always upright, never under the ground
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("Picture of the house"));
    setMinimumSize(320, 240);
    at_rest_.setSingleShot(true);
    at_rest_.setInterval(180);
    connect(&at_rest_, &QTimer::timeout, this, &PictureCanvas::settle);
    ride_timer_.setInterval(frame_time);
    connect(&ride_timer_, &QTimer::timeout, this, &PictureCanvas::next_frame);
    flight_.setDuration(flight_time);
    flight_.setEasingCurve(QEasingCurve::InOutCubic);
}

bool PictureCanvas::show_job(bool keep) {
    end_ride();
    measure_from_ = measure_to_ = std::nullopt;
    const bool any = scene_.show_job(document_);
    if (!keep) {
        cut_.reset();
        marked_.clear();
    }
    if (cut_) scene_.cut(cut_plane());
    // The plan may still be that of the job before.
    const bool planned = closings_.has_plan() && closings_.plan().job == document_.filed();
    if (planned || keep)
        show_closings();
    else
        scene_.mark_closings(document_.job().survey, {});
    if (keep)
        redraw();
    else
        show_whole_house();
    return any;
}

void PictureCanvas::show_ways() {
    end_ride();
    scene_.show_ways(document_);
    redraw();
}

void PictureCanvas::show_closings() {
    if (!document_.has_job()) return;
    // Its numbers are those of gaps in the survey that was planned, which may be one change behind.
    if (closings_.has_plan())
        scene_.mark_closings(closings_.plan().survey(), closings_.numbered());
    else
        scene_.mark_closings(document_.job().survey, {});
    words_->update();
}

void PictureCanvas::show_whole_house() {
    end_ride();
    flight_.stop();
    whole_house_ = true;
    camera_ = scene_.whole_house(camera_, static_cast<double>(width()) / std::max(1, height()));
    redraw();
}

void PictureCanvas::show_side(Side side) {
    end_ride();
    OrbitCamera to = camera_;
    constexpr double quarter = std::numbers::pi / 2;
    to.elevation = side == Side::above ? 1.55 : 0.16;
    if (side != Side::above) to.azimuth = quarter * (static_cast<double>(side) - 1);
    if (side == Side::above) to.azimuth = -quarter;
    whole_house_ = true;
    move_eye(scene_.whole_house(to, static_cast<double>(width()) / std::max(1, height())));
}

void PictureCanvas::show_chosen_way() {
    if (is_riding()) return;
    const auto better = scene_.better_view(camera_);
    if (!better) return;
    move_eye(whole_house_ ? scene_.whole_house(*better, static_cast<double>(width()) / std::max(1, height())) : *better);
}

void PictureCanvas::move_eye(const OrbitCamera& to) {
    flight_.stop();
    if (!animated_ || !isVisible()) {
        camera_ = to;
        return redraw();
    }
    disconnect(&flight_, nullptr, this, nullptr);
    connect(&flight_, &QVariantAnimation::valueChanged, this, [this, from = camera_, to](const QVariant& share) {
        camera_ = between(from, to, share.toDouble());
        redraw();
    });
    flight_.setStartValue(0.0);
    flight_.setEndValue(1.0);
    flight_.start();
}

void PictureCanvas::set_story(Story story) {
    story_ = story;
    words_->update();
}

void PictureCanvas::set_places(std::vector<PlaceMark> places) {
    places_ = std::move(places);
    words_->update();
}

std::optional<std::size_t> PictureCanvas::place_at(const QPoint& at) const {
    std::optional<std::size_t> nearest;
    double least = 14;  // pixels
    for (std::size_t i = 0; i < places_.size() && scene_.has_places(); ++i) {
        const auto shown = camera_.shown_at(scene_.frame().to_scene(places_[i].at), width(), height());
        if (!shown || std::hypot(shown->x - at.x(), shown->y - at.y()) >= least) continue;
        least = std::hypot(shown->x - at.x(), shown->y - at.y());
        nearest = i;
    }
    return nearest;
}

void PictureCanvas::show_around(std::vector<Point> points) {
    if (!scene_.has_places()) return;
    end_ride();
    for (Point& at : points) at = scene_.frame().to_scene(at);
    whole_house_ = false;
    move_eye(scene_.view_of(points, camera_, static_cast<double>(width()) / std::max(1, height())));
}

void PictureCanvas::set_tool(Tool tool) {
    if (tool == tool_) return;
    // One measures what one sees: a faint wall would let clicks through to what is behind it.
    if (tool == Tool::measure && scene_.house().is_open()) {
        scene_.set_open(false);
        open_after_measuring_ = true;
        emit open_changed(false);
    } else if (tool_ == Tool::measure && open_after_measuring_) {
        scene_.set_open(true);
        open_after_measuring_ = false;
        emit open_changed(true);
    }
    tool_ = tool;
    measure_from_ = measure_to_ = std::nullopt;
    setCursor(tool == Tool::look ? Qt::ArrowCursor : Qt::CrossCursor);
    setMouseTracking(tool == Tool::measure);
    redraw();
    emit tool_changed();
}

void PictureCanvas::set_shown(Coat coat, Shown shown) {
    scene_.set_shown(coat, shown);
    redraw();
}

void PictureCanvas::set_open(bool open) {
    scene_.set_open(open);
    redraw();
}

void PictureCanvas::set_cut(const std::optional<Cut>& cut) {
    if (cut == cut_) return;
    const bool from_elsewhere = cut && (!cut_ || cut_->from != cut->from);
    cut_ = cut;
    scene_.cut(cut_plane());
    if (document_.has_job()) scene_.show_ways(document_);
    if (!from_elsewhere) return redraw();
    // The eye goes to where the cut is seen from, a little aside, so that it looks like a cut.
    OrbitCamera to = camera_;
    constexpr double quarter = std::numbers::pi / 2;
    to.elevation = cut->from == Side::above ? 0.95 : 0.36;
    if (cut->from != Side::above) to.azimuth = quarter * (static_cast<double>(cut->from) - 1) + 0.32;
    whole_house_ = true;
    move_eye(scene_.whole_house(to, static_cast<double>(width()) / std::max(1, height())));
}

std::optional<CutPlane> PictureCanvas::cut_plane() const {
    if (!cut_ || !scene_.has_house()) return std::nullopt;
    return scene_.plane_of(static_cast<int>(cut_->from), cut_->depth);
}

void PictureCanvas::mark(std::optional<GapIndex> gap) {
    marked_.clear();
    if (gap && document_.has_job() && gap->value < document_.job().survey.gaps.size()) marked_ = document_.job().survey[*gap].id;
    words_->update();
}

std::optional<double> PictureCanvas::measured() const {
    return measure_from_ && measure_to_ ? std::optional(distance(*measure_from_, *measure_to_)) : std::nullopt;
}

QImage PictureCanvas::image() {
    QImage all = grabFramebuffer();
    QPainter painter(&all);
    paint_words(painter);
    return all;
}

void PictureCanvas::moved() {
    flight_.stop();
    whole_house_ = false;
    // Not under the ground, nor into it.
    const double lowest = (scene_.has_house() ? 0 : scene_.has_places() ? scene_.frame().gaps.low.z : 0) + 0.004 * scene_.reach();
    camera_.focus.z += std::max(0.0, lowest - camera_.eye().z);
    redraw();
}

void PictureCanvas::redraw() {
    // Finely drawn only at rest: then several changes at once cost no more than one.
    scene_.set_fine(false);
    if (animated_ && !is_riding()) at_rest_.start();
    draw();
}

void PictureCanvas::settle() {
    flight_.stop();
    at_rest_.stop();
    scene_.set_fine(true);
    draw();
}

void PictureCanvas::draw() {
    scene_.look(camera_);
    if (isVisible()) renderWindow()->Render();
    words_->update();
}

Point PictureCanvas::in_job(const Point& at) const { return at + (scene_.frame().origin - Point{}); }

std::optional<GapIndex> PictureCanvas::gap_of(const SolidHit& hit) const {
    if (!hit.gap.valid() || !document_.solids()) return std::nullopt;
    // The solids may be those of the survey before the last change.
    return gap_with(document_.solids()->survey[hit.gap].id);
}

std::optional<GapIndex> PictureCanvas::gap_with(const std::string& id) const {
    if (id.empty() || !document_.has_job()) return std::nullopt;
    const std::vector<Gap>& gaps = document_.job().survey.gaps;
    for (std::uint32_t i = 0; i < gaps.size(); ++i) {
        if (gaps[i].id == id) return GapIndex{i};
    }
    return std::nullopt;
}

void PictureCanvas::paint_words(QPainter& painter) {
    const QRectF area = rect();
    if (is_riding()) return;
    paint_way_overlay(painter, scene_.chosen_line(), scene_.hidden_parts(), camera_, area);
    std::vector<Callout> callouts = scene_.callouts();
    if (story_ != Story::ways && story_ != Story::drill)
        std::erase_if(callouts, [](const Callout& c) { return c.kind != Callout::Kind::room; });
    // From outside rooms are not seen, and a cut goes through them.
    if (scene_.has_house() && (!scene_.house().is_open() || cut_))
        std::erase_if(callouts, [](const Callout& c) { return c.kind == Callout::Kind::room; });
    painter.save();
    if (story_ == Story::drill && scene_.has_places()) {
        std::vector<PlaceMark> marks = places_;
        for (PlaceMark& mark : marks) mark.at = scene_.frame().to_scene(mark.at);
        paint_place_marks(painter, marks, camera_, area);
    }
    paint_callouts(painter, callouts, scene_.keep_clear(), scene_.other_gaps(), camera_, area);
    painter.restore();
    painter.save();
    if (story_ == Story::survey) paint_gap_dots(painter, gap_dots(), camera_, area);
    if (story_ == Story::closings) paint_closings(painter, scene_.closings(), camera_, area);
    painter.restore();
    if (const auto chosen = marked(); chosen && scene_.has_places()) {
        const Gap& gap = document_.job().survey[*chosen];
        if (gap.at) paint_chosen_place(painter, scene_.frame().to_scene(*gap.at), spoken_name(gap), camera_, area);
    }
    if (measure_from_) {
        const auto meters = measured();
        const QString words = !meters         ? tr("and now the other end")
                              : *meters < 1.5 ? width_words(*meters)
                                              : distance_words(std::round(*meters * 1000) / 1000);
        paint_measure(painter, *measure_from_, measure_to_, words, camera_, area);
    }
}

std::vector<GapDot> PictureCanvas::gap_dots() const {
    constexpr std::size_t most = 3000;  // more of them would be a carpet
    std::vector<GapDot> dots;
    if (!document_.has_job() || !scene_.has_places()) return dots;
    // In an open house all of them are seen; on one that is shut, those within would look like holes in its roof.
    const bool hides = !scene_.house().is_open() && scene_.house().triangle_count() < HouseScene::many_triangles;
    for (const Gap& gap : document_.job().survey.gaps) {
        if (dots.size() == most) break;
        if (!gap.at || is_drawn_shut(gap)) continue;
        const Point at = scene_.frame().to_scene(*gap.at);
        if (hides && scene_.is_hidden(at, camera_)) continue;
        dots.push_back({at, gap.evidence.how == Evidence::How::measured});
    }
    return dots;
}

void PictureCanvas::resizeEvent(QResizeEvent* event) {
    QVTKOpenGLNativeWidget::resizeEvent(event);
    words_->setGeometry(rect());
    if (whole_house_ && !is_riding()) camera_ = scene_.whole_house(camera_, static_cast<double>(width()) / std::max(1, height()));
    redraw();
}

}  // namespace seamward::viewer
