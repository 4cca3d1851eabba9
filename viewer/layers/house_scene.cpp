// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_scene.h"

#include <vtkActorCollection.h>
#include <vtkCamera.h>
#include <vtkLight.h>
#include <vtkOpaquePass.h>
#include <vtkProperty.h>
#include <vtkRenderStepsPass.h>
#include <vtkSSAAPass.h>
#include <vtkSSAOPass.h>

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "adapt/polydata.h"
#include "adapt/room_middle.h"
#include "base/drawn_shut.h"
#include "document/translations.h"
#include "document/way_text.h"
#include "layers/house_way.h"
#include "layers/palette.h"
#include "layers/room_places.h"

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

/// The sun stays where it is while one goes round the house.
void add_sun(vtkRenderer& renderer) {
    const Vector to = sun_direction();
    vtkNew<vtkLight> light;
    light->SetLightTypeToSceneLight();
    light->PositionalOff();
    light->SetPosition(to.x, to.y, to.z);
    light->SetFocalPoint(0, 0, 0);
    light->SetIntensity(0.32);
    light->SetColor(1, 0.975, 0.93);
    renderer.AddLight(light);
}

/// Every pixel from several samples, with less light in corners and joints.
vtkSmartPointer<vtkRenderPass> fine_pass() {
    vtkNew<vtkSSAOPass> corners;
    corners->SetDelegatePass(vtkNew<vtkOpaquePass>());
    corners->SetRadius(0.6);
    corners->SetBias(0.04);
    corners->SetKernelSize(32);
    corners->BlurOn();
    vtkNew<vtkRenderStepsPass> steps;
    steps->SetOpaquePass(corners);
    vtkNew<vtkSSAAPass> samples;
    samples->SetDelegatePass(steps);
    return samples;
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
// Meters from the eye of an animal: in a gap less than from the eye to its walls, or one would see into them; in the open more,
// so that the depths of what is far are told apart.
constexpr double nearest_in_gap = 0.0003, nearest_seen = 0.0012, open_from = 0.3;
constexpr std::size_t most_others = 24;  ///< stretches of other ways that are drawn
constexpr double house_symbols = 0.42;   ///< times their plain size: walls and pipes tell what they are

}  // namespace

HouseScene::HouseScene()
    : ground_(*renderer_),
      yard_(*renderer_),
      house_(*renderer_),
      ways_(*renderer_),
      gaps_(*renderer_, palette::gap, 1.0),
      way_gaps_(*renderer_, palette::way, 1.35),
      smallest_(*renderer_, palette::smallest, 1.6) {
    renderer_->SetBackground(palette::paper_low.redF(), palette::paper_low.greenF(), palette::paper_low.blueF());
    renderer_->AutomaticLightCreationOff();
    add_sun(*renderer_);
    add_light(*renderer_, -0.5, 0.5, 1.0, 0.17, QColor(255, 249, 238));
    add_light(*renderer_, 0.9, 0.1, 0.8, 0.10, QColor(232, 240, 255));
    vtkNew<vtkRenderStepsPass> quick;
    quick_ = quick;
    fine_ = fine_pass();
    set_fine(true);
}

bool HouseScene::show_job(const JobDocument& document) {
    solids_ = document.solids();
    whole_distance_ = 0;
    forget_words();
    frame_ = picture_frame(document.job().survey);
    if (solids_ && solids_->parts.empty()) solids_.reset();
    std::shared_ptr<const PreparedHouse> prepared;
    if (solids_) {
        prepared = document.prepared() ? document.prepared() : prepare_house(*solids_, RunContext());
        house_frame_ = prepared->frame;
        const Box& box = house_frame_.house;
        frame_ = PictureFrame{house_frame_.origin, box, distance(box.low, box.high)};
    }
    house_.show(solids_, prepared, document.job().model.has_value());
    yard_.hide();
    cut(std::nullopt);
    if (solids_) yard_.show(prepared->ground);
    cast_shadow();
    ground_.set_shown(frame_ && !yard_.has_ground(), !solids_);
    if (!frame_) return false;
    ground_.show(*frame_);
    set_fine(is_fine_);
    return true;
}

void HouseScene::show_ways(const JobDocument& document) {
    forget_words();
    if (!frame_) return;
    const Survey& survey = document.job().survey;
    const RankedPath* chosen = document.chosen();
    const std::vector<std::vector<Point>> others = other_lines(document);
    show_gaps(survey, chosen);
    if (chosen == nullptr) {
        ways_.show(nullptr, std::nullopt, others, *frame_);
        return tell_rooms(survey, nullptr);
    }
    line_ = line_of(document, static_cast<std::size_t>(document.way()));
    const std::optional<Point>& pinch = survey[chosen->pinch_gap].at;
    ways_.show(&line_, pinch ? std::optional(frame_->to_scene(*pinch)) : std::nullopt, others, *frame_);
    tell(survey, *chosen);
    tell_rooms(survey, chosen);
}

WayLine HouseScene::line_of(const JobDocument& document, std::size_t way) const {
    const RankedPath& path = document.ways().paths[way];
    const std::vector<Point>& route = document.routes()[way];
    if (route.empty()) return way_line(document.job().survey, path.path, *frame_);
    HouseFrame frame = house_frame_;
    if (!solids_) {
        frame.origin = frame_->origin;
        frame.house = frame_->gaps;
    }
    return way_line_along(document.job().house, frame, {path, route});
}

std::vector<std::vector<Point>> HouseScene::other_lines(const JobDocument& document) const {
    const std::vector<RankedPath>& paths = document.ways().paths;
    if (!solids_ || document.job().model) return joint_lines(document.job().survey, paths, document.chosen(), *frame_);
    std::vector<std::vector<Point>> lines;
    for (std::size_t i = 0; i < paths.size() && lines.size() < most_others; ++i) {
        if (static_cast<int>(i) == document.way()) continue;
        const WayLine way = line_of(document, i);
        for (const WayLeg& leg : way.legs) lines.push_back(leg.line);
    }
    return lines;
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
        const std::optional<Point>& at = survey.gaps[i].at;
        if (at && cut_ && cut_->over(frame_->to_scene(*at)) > 0) continue;
        rest.push_back({i});
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
    const QString from = words("from %1").arg(spoken_name(survey[chosen.path.from()]));
    const QString into = words("into %1").arg(spoken_name(survey[chosen.path.to()]));
    callouts_.push_back({Callout::Kind::end, line_.stops.front().at, from + unplaced_text(0, first)});
    callouts_.push_back({Callout::Kind::end, line_.stops.back().at, into + unplaced_text(last + 1, chosen.path.gaps.size())});
}

void HouseScene::tell_rooms(const Survey& survey, const RankedPath* chosen) {
    if (has_house() && !solids_->middles.empty()) {
        for (std::uint32_t i = 0; i < std::min(solids_->middles.size(), survey.spaces.size()); ++i) {
            const SpaceKind kind = survey.spaces[i].kind;
            if (kind != SpaceKind::living && kind != SpaceKind::attached) continue;
            if (chosen != nullptr && SpaceIndex{i} == chosen->path.to()) continue;
            const std::vector<Point> places = room_places(solids_->middles[i], house_frame_);
            if (places.empty()) continue;
            callouts_.push_back({Callout::Kind::room, places.front(), spoken_name(survey.spaces[i])});
        }
        return;
    }
    const GroundArrows arrows = ground_arrows(*frame_);
    callouts_.push_back({Callout::Kind::axis, arrows.x_name, QStringLiteral("x")});
    callouts_.push_back({Callout::Kind::axis, arrows.y_name, QStringLiteral("y")});
    std::vector<RoomMiddle> rooms = room_middles(survey);
    rooms.resize(std::min(rooms.size(), most_rooms_named));
    for (const auto& [room, at] : rooms) {
        if (chosen != nullptr && room == chosen->path.to()) continue;  // "into ..." says it
        callouts_.push_back({Callout::Kind::room, frame_->to_scene(at), spoken_name(survey[room])});
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
    eye->SetViewAngle(camera.view_angle * 180 / std::numbers::pi);
    if (whole_distance_ == 0) whole_distance_ = whole_house({}, 1.3).distance;
    const double scale = whole_distance_ > 0 ? std::clamp(camera.distance / whole_distance_, 0.01, 1.4) : 1;
    for (MarkerLayer* layer : {&gaps_, &way_gaps_, &smallest_}) {
        layer->face(camera);
        layer->set_scale(has_house() ? house_symbols * scale : 1);
    }
    ways_.set_scale(has_house() ? 0.55 * scale : 1);
    house_.look(camera);
    if (is_fine_ || house_.triangle_count() < HouseScene::many_triangles) find_hidden(from);
    if (riding_) {
        double off = open_from;  // to the nearest gap of the way
        for (const WayStop& stop : line_.stops) off = std::min(off, distance(stop.at, from));
        eye->SetClippingRange(std::lerp(nearest_in_gap, nearest_seen, off / open_from), 4 * frame_->reach);
    } else {
        renderer_->ResetCameraClippingRange();
    }
}

void HouseScene::recolor() {
    renderer_->SetBackground(palette::paper_low.redF(), palette::paper_low.greenF(), palette::paper_low.blueF());
    ways_.recolor();
    ground_.recolor();
    gaps_.set_color(palette::gap);
    way_gaps_.set_color(palette::way);
    smallest_.set_color(palette::smallest);
}

void HouseScene::mark_closings(const Survey& survey, std::span<const NumberedGap> closings) {
    closings_.clear();
    for (const NumberedGap& closing : closings) {
        const std::optional<Point>& at = survey[closing.gap].at;
        if (frame_ && at) closings_.push_back({frame_->to_scene(*at), closing.number, closing.ticked});
    }
}

void HouseScene::set_riding(bool riding) {
    riding_ = riding;
    ways_.set_shown(!riding);
    for (MarkerLayer* layer : {&gaps_, &way_gaps_, &smallest_}) layer->set_shown(!riding);
}

void HouseScene::set_shown(Coat coat, Shown shown) {
    house_.set_shown(coat, shown);
    if (coat == Coat::ground) yard_.set_shown(shown != Shown::hidden);
    cast_shadow();
}

void HouseScene::cast_shadow() {
    if (!solids_) return;
    std::vector<vtkSmartPointer<vtkPolyData>> faces = house_.shown_faces();
    const bool whole = !cut_ && faces.size() == house_.set_count();
    yard_.cast(whole ? std::nullopt : std::optional(Casting{std::move(faces), cut_}));
    if (is_fine_) yard_.settle();
}

void HouseScene::cut(const std::optional<CutPlane>& plane) {
    cut_ = plane;
    house_.cut(plane);
    ways_.cut_others(plane);
    cast_shadow();
}

void HouseScene::set_fine(bool fine) {
    if (fine == is_fine_) return;
    is_fine_ = fine;
    renderer_->SetPass(fine ? fine_.Get() : quick_.Get());
    house_.set_fine(fine);
    if (fine) yard_.settle();
    // Lines are measured in samples, of which two make a pixel's width then.
    vtkActorCollection* actors = renderer_->GetActors();
    actors->InitTraversal();
    while (vtkActor* actor = actors->GetNextActor()) {
        actor->GetProperty()->SetLineWidth(actor->GetProperty()->GetLineWidth() * (fine ? 2.0F : 0.5F));
    }
}

OrbitCamera HouseScene::whole_house(const OrbitCamera& camera, double aspect) const {
    if (!frame_) return camera;
    OrbitCamera whole = camera;
    whole.view_angle = OrbitCamera::usual_angle;
    whole = fitted(whole, frame_->gaps, aspect, has_house() ? 0.92 : 0.86);
    return whole;
}

}  // namespace seamward::viewer
