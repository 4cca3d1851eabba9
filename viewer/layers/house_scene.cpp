// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_scene.h"

#include <vtkActorCollection.h>
#include <vtkCamera.h>
#include <vtkLight.h>
#include <vtkProperty.h>
#include <vtkRenderStepsPass.h>
#include <vtkSSAAPass.h>

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "adapt/polydata.h"
#include "adapt/room_middle.h"
#include "base/drawn_shut.h"
#include "document/way_text.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

/// A light that stays where it is beside the eye.
void add_light(vtkRenderer& renderer, double x, double y, double z, double strength, const QColor& color) {
    vtkNew<vtkLight> light;
    light->SetLightTypeToCameraLight();
    light->SetPosition(x, y, z);
    light->SetFocalPoint(0, 0, 0);
    light->SetIntensity(strength);
    light->SetColor(color.redF(), color.greenF(), color.blueF());
    renderer.AddLight(light);
}

QString words(const char* text) { return QCoreApplication::translate("picture", text); }

/// "\ngaps 1 to 3: positions not given": what lies between the end of a way and its part in the picture, for the steps from
/// `begin` to before `end`; empty when there are none.
QString unplaced_text(std::size_t begin, std::size_t end) {
    if (begin == end) return {};
    const QString one = words("\ngap %1: position not given");
    return end - begin == 1 ? one.arg(end) : words("\ngaps %1 to %2: positions not given").arg(begin + 1).arg(end);
}

// Radius of a gap's symbol, as a share of the reach: on the chosen way, and elsewhere.
constexpr double symbol_reach = 0.015;
constexpr double plain_reach = 0.009;
// Words are placed anew for each picture, so that their number has to stay low.
constexpr std::size_t most_rooms_named = 40;
constexpr std::size_t most_gaps_kept_clear = 1000;

}  // namespace

HouseScene::HouseScene()
    : ground_(*renderer_),
      ways_(*renderer_),
      gaps_(*renderer_, palette::gap, 1.0),
      way_gaps_(*renderer_, palette::way, 1.35),
      smallest_(*renderer_, palette::smallest, 1.6) {
    renderer_->GradientBackgroundOn();
    renderer_->SetBackground(palette::paper_low.redF(), palette::paper_low.greenF(), palette::paper_low.blueF());
    renderer_->SetBackground2(palette::paper_high.redF(), palette::paper_high.greenF(), palette::paper_high.blueF());
    renderer_->AutomaticLightCreationOff();
    add_light(*renderer_, -0.6, 0.9, 1.0, 0.85, QColor(255, 247, 234));
    add_light(*renderer_, 0.9, -0.1, 0.8, 0.30, QColor(232, 240, 255));
    vtkNew<vtkRenderStepsPass> steps;
    vtkNew<vtkSSAAPass> samples;
    samples->SetDelegatePass(steps);
    fine_ = samples;
    set_fine(true);
    renderer_->GetActiveCamera()->SetViewAngle(OrbitCamera::view_angle * 180 / std::numbers::pi);
}

bool HouseScene::show_job(const JobDocument& document) {
    frame_ = picture_frame(document.job().survey);
    forget_words();
    if (!frame_) return false;
    ground_.show(*frame_);
    return true;
}

void HouseScene::show_ways(const JobDocument& document) {
    forget_words();
    if (!frame_) return;
    const Survey& survey = document.job().survey;
    const RankedPath* chosen = document.chosen();
    const std::vector<std::vector<Point>> others = joint_lines(survey, document.ways().paths, chosen, *frame_);
    show_gaps(survey, chosen);
    if (chosen == nullptr) {
        ways_.show(nullptr, std::nullopt, others, *frame_);
        return tell_rooms(survey, nullptr);
    }
    line_ = way_line(survey, chosen->path, *frame_);
    const std::optional<Point>& pinch = survey[chosen->pinch_gap].at;
    ways_.show(&line_, pinch ? std::optional(frame_->to_scene(*pinch)) : std::nullopt, others, *frame_);
    tell(survey, *chosen);
    tell_rooms(survey, chosen);
}

void HouseScene::show_gaps(const Survey& survey, const RankedPath* chosen) {
    std::vector<GapIndex> on_way;
    std::vector<GapIndex> smallest;
    if (chosen != nullptr) {
        on_way = chosen->path.gaps;
        std::erase(on_way, chosen->pinch_gap);
        smallest.push_back(chosen->pinch_gap);
    }
    std::vector<bool> taken(survey.gaps.size());
    for (const GapIndex gap : on_way) taken[gap.value] = true;
    for (const GapIndex gap : smallest) taken[gap.value] = true;
    std::vector<GapIndex> rest;
    for (std::uint32_t i = 0; i < survey.gaps.size(); ++i) {
        if (taken[i] || is_drawn_shut(survey.gaps[i])) continue;
        rest.push_back({i});
        const std::optional<Point>& at = survey.gaps[i].at;
        if (at && other_gaps_.size() < most_gaps_kept_clear)
            other_gaps_.push_back({frame_->to_scene(*at), plain_reach * frame_->reach});
    }
    gaps_.show(gap_points(survey, rest, *frame_));
    way_gaps_.show(gap_points(survey, on_way, *frame_));
    smallest_.show(gap_points(survey, smallest, *frame_));
}

void HouseScene::tell(const Survey& survey, const RankedPath& chosen) {
    for (const WayLeg& leg : line_.legs) {
        for (const Point& at : leg.line) keep_clear_.push_back({at, 0});
    }
    for (const WayStop& stop : line_.stops) {
        const bool smallest = chosen.path.gaps[stop.step] == chosen.pinch_gap;
        keep_clear_.push_back({stop.at, frame_->reach * (smallest ? halo_share : symbol_reach)});
        callouts_.push_back({Callout::Kind::step, stop.at, QString::number(stop.step + 1), {}, smallest});
    }
    const Gap& pinch = survey[chosen.pinch_gap];
    QString text = smallest_gap_text(survey, chosen);
    const QString stays = stays_open_text(pinch);
    if (!stays.isEmpty()) text += '\n' + stays;
    if (!pinch.at) text += '\n' + words("position not given");
    callouts_.push_back({Callout::Kind::smallest, pinch.at ? std::optional(frame_->to_scene(*pinch.at)) : std::nullopt,
                         words("Smallest gap: %1").arg(gap_width_text(pinch)), text});
    if (line_.stops.empty()) return;
    const std::size_t first = line_.stops.front().step;
    const std::size_t last = line_.stops.back().step;
    const QString from = words("from %1").arg(QString::fromStdString(survey[chosen.path.from()].label()));
    const QString into = words("into %1").arg(QString::fromStdString(survey[chosen.path.to()].label()));
    callouts_.push_back({Callout::Kind::end, line_.stops.front().at, from + unplaced_text(0, first)});
    callouts_.push_back({Callout::Kind::end, line_.stops.back().at, into + unplaced_text(last + 1, chosen.path.gaps.size())});
}

void HouseScene::tell_rooms(const Survey& survey, const RankedPath* chosen) {
    const GroundArrows arrows = ground_arrows(*frame_);
    callouts_.push_back({Callout::Kind::axis, arrows.x_name, QStringLiteral("x")});
    callouts_.push_back({Callout::Kind::axis, arrows.y_name, QStringLiteral("y")});
    std::vector<RoomMiddle> rooms = room_middles(survey);
    rooms.resize(std::min(rooms.size(), most_rooms_named));
    for (const auto& [room, at] : rooms) {
        if (chosen != nullptr && room == chosen->path.to()) continue;  // "into ..." says it
        callouts_.push_back({Callout::Kind::room, frame_->to_scene(at), QString::fromStdString(survey[room].label())});
    }
}

void HouseScene::forget_words() {
    callouts_.clear();
    keep_clear_.clear();
    other_gaps_.clear();
    line_ = {};
}

void HouseScene::look(const OrbitCamera& camera) {
    vtkCamera* eye = renderer_->GetActiveCamera();
    const Point from = camera.eye();
    eye->SetPosition(from.x, from.y, from.z);
    eye->SetFocalPoint(camera.focus.x, camera.focus.y, camera.focus.z);
    eye->SetViewUp(0, 0, 1);
    for (MarkerLayer* layer : {&gaps_, &way_gaps_, &smallest_}) layer->face(camera);
    renderer_->ResetCameraClippingRange();
}

std::optional<GapIndex> HouseScene::gap_near(const Survey& survey, PicturePoint at, const OrbitCamera& camera, double width,
                                             double height) const {
    std::optional<GapIndex> nearest;
    double least = 12;  // pixels
    for (std::uint32_t i = 0; frame_ && i < survey.gaps.size(); ++i) {
        if (!survey.gaps[i].at || is_drawn_shut(survey.gaps[i])) continue;
        const auto shown = camera.shown_at(frame_->to_scene(*survey.gaps[i].at), width, height);
        if (!shown) continue;
        const double away = std::hypot(shown->x - at.x, shown->y - at.y);
        if (away >= least) continue;
        least = away;
        nearest = GapIndex{i};
    }
    return nearest;
}

void HouseScene::set_fine(bool fine) {
    if (fine == is_fine_) return;
    is_fine_ = fine;
    renderer_->SetPass(fine ? fine_.Get() : nullptr);
    // Lines are measured in samples, of which two make a pixel's width then.
    vtkActorCollection* actors = renderer_->GetActors();
    actors->InitTraversal();
    while (vtkActor* actor = actors->GetNextActor()) {
        actor->GetProperty()->SetLineWidth(actor->GetProperty()->GetLineWidth() * (fine ? 2.0F : 0.5F));
    }
}

OrbitCamera HouseScene::whole_house(const OrbitCamera& camera, double aspect) const {
    return frame_ ? fitted(camera, frame_->gaps, aspect, 0.86) : camera;
}

}  // namespace seamward::viewer
