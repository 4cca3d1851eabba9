// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/painted_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "offscreen/blend_layers.h"
#include "offscreen/drawn_way.h"
#include "offscreen/house_groups.h"
#include "offscreen/layer_renderer.h"
#include "offscreen/legend.h"
#include "offscreen/picture_story.h"
#include "offscreen/picture_view.h"
#include "offscreen/soft_light.h"

namespace seamward::viewer {

namespace {

constexpr double corner_radius = 0.05;           ///< meters: how round the drawn way's corners are
constexpr double lens_reach = 130;               ///< units to each side of the way where what is before it fades more
constexpr double closeup_lens = 150;             ///< the same around a gap seen from close by
constexpr std::int64_t most_fine = 3'000'000;    ///< pixels of a picture up to which each is made of four samples

/// How a group goes into the picture of the whole house: see BlendLayer.
struct GroupLook {
    float opacity, edges, least;
    const char* name;  ///< in "Drawn faded: ..."; null: stays
};

constexpr std::array<GroupLook, group_count> looks{
    GroupLook{1.0F, 0.45F, 1.0F, nullptr},
    GroupLook{1.0F, 0.75F, 0.5F, nullptr},
    GroupLook{0.34F, 0.36F, 0.9F, "framing"},
    GroupLook{0.20F, 0.34F, 0.3F, "ceilings"},
    GroupLook{0.60F, 0.80F, 0.3F, "near doors and windows"},
    GroupLook{0.62F, 0.75F, 0.2F, "near walls"},
    GroupLook{0.52F, 0.70F, 0.2F, "roof"},
};

QString faded_words(const HouseGroups& groups) {
    QStringList names;
    for (std::size_t i = group_count; i-- > 0;) {
        if (looks.at(i).name != nullptr && groups.at(i)->GetNumberOfCells() > 0) names << QString::fromLatin1(looks.at(i).name);
    }
    return names.isEmpty() ? QString() : QStringLiteral("Faded to show the inside: %1.").arg(names.join(", "));
}

/// Points of the house that are farthest in one of many directions: what has to be inside of the picture.
std::vector<Point> farthest_points(const House& house, const HouseFrame& frame) {
    constexpr int directions = 120;
    std::vector<Vector> along;
    for (int i = 0; i < directions; ++i) {  // evenly over the sphere, on a spiral
        const double z = 1 - (i + 0.5) * 2 / directions;
        const double turn = i * std::numbers::pi * (3 - std::sqrt(5.0));
        const double level = std::sqrt(1 - z * z);
        along.push_back({level * std::cos(turn), level * std::sin(turn), z});
    }
    std::vector<Point> farthest(directions, frame.house.low);
    std::vector<double> reach(directions, -1e300);
    for (const Part& part : house.parts) {
        if (part.layer == Layer::ground || part.layer == Layer::yard) continue;
        for (const Point& point : part.mesh.points) {
            const Point at = frame.to_scene(point);
            for (std::size_t i = 0; i < directions; ++i) {
                const double far = dot(at - Point{}, along[i]);
                if (far <= reach[i]) continue;
                reach[i] = far;
                farthest[i] = at;
            }
        }
    }
    return farthest;
}

double unit_of(const PictureRequest& request) {
    const double pixels = static_cast<double>(request.width) * request.height;
    return std::clamp(std::min(std::sqrt(pixels / (1600.0 * 1100.0)), request.width / 1000.0), 0.6, 4.0);
}

/// All that is worked out before anything is drawn.
struct Plan {
    const House& house;
    const PictureRequest& request;
    HouseFrame frame;
    std::vector<std::vector<Point>> lines;  ///< of the paths, scene
    std::vector<Point> line;                ///< of the shown one
    PictureStory story;
    double unit;
    QSizeF sheet;  ///< units
};

Plan planned(const House& house, const std::string& heading, std::span<const DrawnPath> paths, const PictureRequest& request) {
    Plan plan{house, request, house_frame(house), {}, {}, {}, unit_of(request), {}};
    plan.sheet = QSizeF(request.width, request.height) / plan.unit;
    for (const DrawnPath& path : paths) plan.lines.push_back(rounded(line_of_way(house, plan.frame, path), corner_radius));
    if (!paths.empty()) std::swap(plan.line, plan.lines[request.rank - 1]);
    plan.story = request.closeup ? story_of_gap(house, plan.frame, *request.closeup)
                                 : story_of_way(house, plan.frame, paths, request, plan.line);
    plan.story.heading = QString::fromStdString(heading).simplified();
    return plan;
}

/// The space from which a gap is looked at: outdoors if that is on one side of it, or else a room.
SpaceIndex side_to_look_from(const Survey& survey, const Gap& gap) {
    for (const SpaceIndex side : gap.between) {
        if (survey[side].starts_paths()) return side;
    }
    return survey[gap.between[1]].is_living() ? gap.between[1] : gap.between[0];
}

OrbitCamera camera_of(const Plan& plan, std::span<const DrawnPath> paths, const QRectF& part) {
    const PictureRequest& request = plan.request;
    OrbitCamera camera;
    if (request.closeup) {
        const Gap& gap = plan.house.survey[*request.closeup];
        camera = view_of_gap(plan.house, plan.frame, *request.closeup, side_to_look_from(plan.house.survey, gap));
    } else {
        camera = view_of_way(plan.house, plan.frame, paths.empty() ? nullptr : &paths[request.rank - 1].way.path, plan.line);
    }
    if (request.view) {
        camera.azimuth = request.view->azimuth;
        camera.elevation = std::clamp(request.view->elevation, 0.1, 1.5);
    }
    if (request.closeup) {
        // The gap in the middle of what the heading and the card leave free.
        camera.shift(0, 0.5 - part.center().y() / plan.sheet.height());
        return camera;
    }
    std::vector<Point> points = farthest_points(plan.house, plan.frame);
    points.insert(points.end(), plan.line.begin(), plan.line.end());
    return fitted_to(camera, points, part, plan.sheet.width(), plan.sheet.height());
}

/// Marks what lies behind the parts that are not faded.
void find_hidden(PictureStory& story, const DrawnLayer& solid, const Sight& sight, int fine) {
    constexpr double thick = 0.05;  // meters: in a part's face is not behind it
    for (PictureStory::Closed& closed : story.closed) {
        if (!closed.at || solid.empty()) continue;
        const auto shown = sight.camera().shown_at(*closed.at, sight.width(), sight.height());
        if (!shown || shown->x < 0 || shown->y < 0 || shown->x >= sight.width() || shown->y >= sight.height()) continue;
        const auto column = static_cast<std::size_t>(shown->x) * static_cast<std::size_t>(fine);
        const auto row = static_cast<std::size_t>(sight.height() - 1 - static_cast<int>(shown->y)) * static_cast<std::size_t>(fine);
        const float depth = solid.depth()[row * static_cast<std::size_t>(sight.width() * fine) + column];
        closed.is_hidden = depth < 1 && sight.away(static_cast<double>(depth)) < sight.away(*closed.at) - thick;
    }
}

QImage drawn_house(Plan& plan, const HouseGroups& groups, const Sight& sight) {
    const int fine = static_cast<std::int64_t>(sight.width()) * sight.height() <= most_fine ? 2 : 1;
    LayerRenderer renderer(sight, fine);
    const bool closeup = plan.request.closeup.has_value();
    std::vector<BlendLayer> layers(group_count);
    for (std::size_t i = 0; i < group_count; ++i) {
        const GroupLook& look = looks.at(i);
        layers[i].drawn = renderer.drawn(groups.at(i));
        layers[i].opacity = closeup ? 1 : look.opacity;
        layers[i].edges = look.edges;
        layers[i].least = closeup ? 0.12F : look.least;
    }
    const auto layer = [&](Group group) -> BlendLayer& { return layers[static_cast<std::size_t>(group)]; };
    find_hidden(plan.story, layer(Group::solid).drawn, sight, fine);
    std::vector<const DrawnLayer*> lit{&layer(Group::ground).drawn, &layer(Group::solid).drawn};
    if (closeup) {
        for (const BlendLayer& one : layers) lit.push_back(&one.drawn);
    }
    const std::vector<float> sky = sky_light(lit, sight, fine);
    for (BlendLayer& one : layers) {
        if (closeup || &one == &layer(Group::solid)) one.light = sky;
    }
    std::vector<vtkPolyData*> casting;
    for (std::size_t i = 1; i < group_count; ++i) casting.push_back(groups.at(i));
    std::vector<float>& ground = layer(Group::ground).light;
    ground = ground_light(layer(Group::ground).drawn, casting, plan.frame.house,
                          groups[0]->GetNumberOfCells() > 0 ? groups[0]->GetBounds()[5] : 0, sight, fine);
    for (std::size_t i = 0; i < ground.size(); ++i) ground[i] *= sky[i];
    for (const Group group : {Group::ground, Group::solid, Group::cladding}) {
        if (!closeup) layer(group).cover = nearness(layer(group).drawn, plan.frame.house, sight, fine);
    }

    BlendLayer others;
    others.drawn = renderer.drawn(thin_ways(plan.lines, sight, plan.unit));
    others.opacity = 0.9F;
    others.edges = 0;
    layers.push_back(std::move(others));
    Lens lens;
    DrawnLayer way;
    if (closeup) {
        way = renderer.drawn(gap_faces(plan.house, plan.frame, *plan.request.closeup));
        std::vector<Point> through;
        if (const auto at = plan.story.steps.front().at) through.push_back(*at);
        lens = lens_along(through, closeup_lens * plan.unit, sight);
    } else {
        std::vector<Point> marks;
        for (const PictureStory::Step& step : plan.story.steps) {
            if (step.at) marks.push_back(*step.at);
        }
        way = renderer.drawn(way_solid(plan.line, marks, sight, plan.unit));
        lens = lens_along(plan.line, lens_reach * plan.unit, sight);
    }
    return blended(layers, way, lens, sight, fine);
}

}  // namespace

PaintedPicture painted_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths,
                               const PictureRequest& request) {
    Plan plan = planned(house, heading, paths, request);
    const QSizeF& sheet = plan.sheet;
    const bool closeup = request.closeup.has_value();
    constexpr double margin = 26;
    // The card's height depends on whether there is a line on what is faded, and that on the direction of view: taken as there.
    if (!closeup) plan.story.faded = QStringLiteral(" ");
    const Legend first(plan.story, sheet, closeup);
    const QRectF part(margin + 10, first.heading().bottom() + 4, sheet.width() - 2 * margin - 20,
                      first.card().top() - first.heading().bottom() - 24);
    const OrbitCamera camera = camera_of(plan, paths, part);
    const HouseGroups groups = house_groups(house, plan.frame, {std::cos(camera.azimuth), std::sin(camera.azimuth), 0});
    if (!closeup) plan.story.faded = faded_words(groups);
    const Legend legend(plan.story, sheet, closeup);
    const Sight sight(camera, request.width, request.height, plan.frame.all);

    PaintedPicture picture;
    picture.unit = plan.unit;
    picture.image = drawn_house(plan, groups, sight);
    picture.heading = legend.heading();
    picture.card = legend.card();
    const QRectF area(margin, 20, sheet.width() - 2 * margin, legend.card().top() - 32);
    const std::array<QRectF, 1> taken{legend.heading()};
    picture.labels = placed_labels(plan.story, closeup ? std::vector<Point>{} : plan.line, camera, sheet, area, taken);
    Point measured = camera.focus;
    for (const PictureStory::Step& step : plan.story.steps) {
        if (step.smallest && step.at) measured = *step.at;
    }
    QPainter painter(&picture.image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    painter.scale(plan.unit, plan.unit);
    paint_labels(painter, picture.labels);
    legend.paint(painter, camera, camera.shown_length(measured, 1, sheet.height()));
    return picture;
}

}  // namespace seamward::viewer
