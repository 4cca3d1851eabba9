// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/painted_picture.h"

#include <QPainter>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "layers/house_groups.h"
#include "layers/palette.h"
#include "offscreen/drawn_way.h"
#include "offscreen/house_image.h"
#include "offscreen/legend.h"
#include "offscreen/lettering.h"
#include "offscreen/picture_story.h"
#include "offscreen/picture_view.h"
#include "offscreen/section_drawing.h"

namespace seamward::viewer {

namespace {

constexpr double corner_radius = 0.05;        ///< meters: how round the drawn way's corners are
constexpr std::size_t most_thin_ways = 5;     ///< the best of the others; more would hide the house
constexpr double as_well_seen = 0.05;         ///< difference in how much is seen of two places that does not matter
constexpr double margin = 26;                 ///< units from the picture's edge
constexpr QSizeF whereabouts_size(300, 196);  ///< of the small picture of all of the house
constexpr double closeup_cut = 0.3;           ///< share of the way to a gap seen from close by where the picture begins
constexpr std::size_t most_layers = 8;        ///< that are named in a section

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
    return std::clamp(std::min(std::sqrt(pixels / (1600.0 * 1100.0)), request.width / 1000.0), 0.72, 4.0);
}

/// All that is worked out before anything is drawn.
struct Plan {
    const House& house;
    const PictureRequest& request;
    HouseFrame frame;
    std::vector<std::vector<Point>> lines;  ///< of the paths but the shown one, scene
    std::vector<Point> line;                ///< of the shown one
    PictureStory story;
    double unit;
    QSizeF sheet;  ///< units

    [[nodiscard]] bool is_closeup() const { return request.closeup.has_value(); }
    [[nodiscard]] std::vector<Point> marks() const {
        std::vector<Point> all;
        for (const PictureStory::Step& step : story.steps) {
            if (step.at) all.push_back(*step.at);
        }
        return all;
    }
};

Plan planned(const House& house, const std::string& heading, std::span<const DrawnPath> paths, const PictureRequest& request) {
    Plan plan{house, request, house_frame(house), {}, {}, {}, unit_of(request), {}};
    plan.sheet = QSizeF(request.width, request.height) / plan.unit;
    std::vector<std::size_t> drawn;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        const bool shown = i + 1 == request.rank;
        if (!shown && plan.lines.size() == most_thin_ways) continue;
        drawn.push_back(i);
        std::vector<Point> line = rounded(line_of_way(house, plan.frame, paths[i]), corner_radius);
        shown ? std::swap(plan.line, line) : plan.lines.push_back(std::move(line));
    }
    if (request.closeup) {
        plan.lines.clear();
        plan.line = way_through_gap(house, plan.frame, *request.closeup);
        plan.story = story_of_gap(house, plan.frame, *request.closeup, plan.line);
    } else {
        plan.story = story_of_way(house, plan.frame, paths, drawn, request, plan.line);
        plan.story.thin_ways = plan.lines.size();
    }
    plan.story.heading = QString::fromStdString(heading).simplified();
    return plan;
}

/// A house that is cut to show a gap.
struct CutHouse {
    CutPlane plane;              ///< scene
    House house;                 ///< what is left of it
    std::vector<CutFace> faces;  ///< scene
};

/// Takes away what is before the gap, on the side of the eye.
CutHouse cut_open(const Plan& plan, const CutPlane& plane) {
    const Vector to_scene = plan.frame.to_scene({}) - Point{};
    Section left = section(plan.house.parts, {plane.at + to_scene * -1, plane.normal});
    for (CutFace& face : left.faces) face.move(to_scene);
    const House& house = plan.house;
    return {plane, {house.name, house.survey, house.places, house.middles, std::move(left.parts)}, std::move(left.faces)};
}

/// Where the cut meets the sides of the gap.
std::vector<Point> sides_of_gap(const CutHouse& cut, GapIndex gap) {
    std::vector<Point> sides;
    for (const CutFace& face : cut.faces) {
        for (const CutFace::GapEdge& edge : face.gap_edges) {
            if (edge.gap == gap) sides.push_back(edge.from + (edge.to - edge.from) * 0.5);
        }
    }
    return sides;
}

/// `part`: what heading and cards leave free.
OrbitCamera camera_of(const Plan& plan, std::span<const DrawnPath> paths, const QRectF& part) {
    const PictureRequest& request = plan.request;
    const auto turned = [&](OrbitCamera camera) {
        if (!request.view) return camera;
        camera.azimuth = request.view->azimuth;
        camera.elevation = std::clamp(request.view->elevation, 0.1, 1.5);
        return camera;
    };
    if (request.closeup) {
        const CutPlane plane = plane_of_gap(plan.house, plan.frame, *request.closeup);
        OrbitCamera camera = turned(view_of_gap(plan.house, plan.frame, *request.closeup, plane));
        camera.shift(0, 0.5 - part.center().y() / plan.sheet.height());
        return camera;
    }
    std::vector<Point> points = farthest_points(plan.house, plan.frame);
    points.insert(points.end(), plan.line.begin(), plan.line.end());
    const auto fit = [&](const OrbitCamera& camera) {
        return fitted_to(camera, points, part, plan.sheet.width(), plan.sheet.height());
    };
    if (request.view) return fit(turned({}));
    return view_of_way(plan.house, plan.frame, paths.empty() ? nullptr : &paths[request.rank - 1].way, plan.line, fit);
}

/// Places of a room in the order in which its name may stand there: those that are about as well seen as any, and then the rest.
std::vector<Point> best_seen(const std::vector<Point>& places, std::span<const double> seen) {
    const double best = std::ranges::max(seen);
    std::vector<Point> first;
    std::vector<Point> rest;
    for (std::size_t i = 0; i < places.size(); ++i) (seen[i] >= best - as_well_seen ? first : rest).push_back(places[i]);
    first.insert(first.end(), rest.begin(), rest.end());
    return first;
}

/// The picture without words; finds out which closed gaps are hidden, and where on its floor a room's name is seen best.
QImage drawn(Plan& plan, const HouseGroups& groups, const CutHouse* cut, const Sight& sight) {
    HouseImageContent content{plan.line, plan.lines, plan.marks(), {}, {}, plan.unit};
    if (cut != nullptr) content.cut = {*plan.request.closeup, cut->plane, cut->faces};
    for (const PictureStory::Closed& closed : plan.story.closed) content.asked.push_back(closed.at.value_or(Point{}));
    for (const PictureStory::Room& room : plan.story.rooms)
        content.asked.insert(content.asked.end(), room.places.begin(), room.places.end());
    HouseImage drawn = house_image(cut != nullptr ? cut->house : plan.house, plan.frame, groups, content, sight);
    std::span<const double> seen = drawn.seen;
    for (PictureStory::Closed& closed : plan.story.closed) {
        closed.is_hidden = !(seen.front() > 0);
        seen = seen.subspan(1);
    }
    for (PictureStory::Room& room : plan.story.rooms) {
        const std::span<const double> here = seen.first(room.places.size());
        seen = seen.subspan(here.size());
        room.places = best_seen(room.places, here);
    }
    return drawn.image;
}

/// A small picture of all of the house, with a ring where the gap is.
void paint_whereabouts(QPainter& painter, const Plan& plan, const HouseGroups& groups, const OrbitCamera& camera,
                       const QRectF& place) {
    const QSize size = (place.size() * plan.unit).toSize();
    const QRectF part(10, 8, place.width() - 20, place.height() - 16);
    OrbitCamera wide;
    wide.azimuth = camera.azimuth;
    wide.elevation = 0.5;
    wide = fitted_to(wide, farthest_points(plan.house, plan.frame), part, place.width(), place.height());
    const Sight sight(wide, size.width(), size.height(), plan.frame.all);
    const HouseImage house = house_image(plan.house, plan.frame, groups, {.unit = plan.unit * 0.55}, sight);  // finer lines
    lettering::paint_card(painter, place, lettering::light_paper, palette::hairline, 8);
    painter.drawImage(place.adjusted(3, 3, -3, -3), house.image);
    const std::vector<Point> marks = plan.marks();
    if (marks.empty()) return;
    const auto at = wide.shown_at(marks.front(), place.width(), place.height());
    if (at) lettering::paint_ring(painter, place.topLeft() + QPointF(at->x, at->y), 10);
}

/// How many times larger than in the section a narrow gap has to be shown to be seen; 1: it is seen there. `shown`: units.
double magnification(double shown) {
    constexpr double clear = 16;
    constexpr double seen = 24;
    if (!(shown > 0) || shown > clear) return 1;
    for (const double times : {2.0, 3.0, 5.0, 10.0, 20.0}) {
        if (times * shown >= seen) return times;
    }
    return 40;
}

/// A small picture of the gap in its section, that many times larger.
void paint_magnified(QPainter& painter, const Plan& plan, const CutHouse& cut, const HouseGroups& groups, OrbitCamera camera,
                     double times, const QRectF& place) {
    const QSize size = (place.size() * plan.unit).toSize();
    camera.focus = plan.marks().front();
    camera.distance *= place.height() / plan.sheet.height() / times;
    const Sight sight(camera, size.width(), size.height(), plan.frame.all, closeup_cut);
    HouseImageContent content{plan.line, {}, plan.marks(), {}, {}, plan.unit};
    content.cut = {*plan.request.closeup, cut.plane, cut.faces};
    const HouseImage section = house_image(cut.house, plan.frame, groups, content, sight);
    lettering::paint_card(painter, place, lettering::light_paper, palette::smallest, 8);
    painter.drawImage(place.adjusted(3, 3, -3, -3), section.image);
    const QString text = QStringLiteral("%1 times larger").arg(times);
    const QFont font = lettering::words(15);
    const QRectF words(place.left() + 8, place.bottom() - 31, lettering::width_of(font, text) + 16, 23);
    painter.setPen(Qt::NoPen);
    painter.setBrush(QColor(255, 253, 249, 225));
    painter.drawRoundedRect(words, 4, 4);
    painter.setPen(palette::ink);
    painter.setFont(font);
    painter.drawText(words, Qt::AlignCenter, text);
}

}  // namespace

PaintedPicture painted_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths,
                               const PictureRequest& request) {
    Plan plan = planned(house, heading, paths, request);
    const QSizeF& sheet = plan.sheet;
    const bool closeup = plan.is_closeup();
    // The card is higher with a line on what is faded. What is depends on the camera, and that on the card: it is taken as there.
    if (!closeup) plan.story.faded = QStringLiteral(" ");
    const Legend first(plan.story, sheet, closeup);
    QRectF part(margin + 10, first.heading().bottom() + 4, sheet.width() - 2 * margin - 20,
                first.card().top() - first.heading().bottom() - 24);
    if (!request.words) part = QRectF(QPointF(), sheet).adjusted(10, 10, -10, -10);
    const OrbitCamera camera = camera_of(plan, paths, part);
    const HouseGroups groups = house_groups(house, plan.frame, {std::cos(camera.azimuth), std::sin(camera.azimuth), 0});
    const QString faded = faded_groups(groups);
    if (!closeup) plan.story.faded = faded.isEmpty() ? QString() : QStringLiteral("Faded to show the inside: %1.").arg(faded);
    const Sight sight(camera, request.width, request.height, plan.frame.all, closeup ? closeup_cut : 0.04);

    PaintedPicture picture;
    picture.unit = plan.unit;
    picture.camera = camera;
    std::optional<CutHouse> cut;
    HouseGroups cut_groups;
    if (closeup) {
        CutPlane plane = plane_of_gap(house, plan.frame, *request.closeup);
        if (plane.over(camera.eye()) < 0) plane.normal = plane.normal * -1;
        cut = cut_open(plan, plane);
        cut_groups = house_groups(cut->house, plan.frame, plane.normal);
        picture.image = drawn(plan, cut_groups, &*cut, sight);
    } else {
        picture.image = drawn(plan, groups, nullptr, sight);
    }
    if (!request.words) return picture;
    const Legend legend(plan.story, sheet, closeup);
    picture.taken = {legend.heading(), legend.card(), legend.measures()};
    QPainter painter(&picture.image);
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing | QPainter::SmoothPixmapTransform);
    painter.scale(plan.unit, plan.unit);
    if (closeup) {
        picture.taken.emplace_back(QPointF(sheet.width() - margin - whereabouts_size.width(), margin - 4), whereabouts_size);
        paint_whereabouts(painter, plan, groups, camera, picture.taken.back());
        const double shown =
            clear_width(house.survey[*request.closeup].shape) * camera.shown_length(camera.focus, 1, sheet.height());
        const double times = plan.line.empty() ? 1 : magnification(shown);
        if (times > 1) {
            picture.taken.push_back(picture.taken.back().translated(0, whereabouts_size.height() + 12));
            paint_magnified(painter, plan, *cut, cut_groups, camera, times, picture.taken.back());
        }
    }
    const QRectF area(margin, 20, sheet.width() - 2 * margin, sheet.height() - 20 - margin);
    if (cut) {
        plan.story.sides = sides_of_gap(*cut, *request.closeup);
        plan.story.layers =
            cut_layers(cut->faces, camera, sheet, area, picture.taken,
                       plan.marks().empty() ? cut->plane.at : plan.marks().front(), plan.story.ring + 6, most_layers);
    }
    picture.labels = placed_labels(plan.story, plan.line, camera, sheet, area, picture.taken);
    Point measured = camera.focus;
    for (const PictureStory::Step& step : plan.story.steps) {
        if (step.smallest && step.at) measured = *step.at;
    }
    paint_labels(painter, picture.labels);
    legend.paint(painter, camera, camera.shown_length(measured, 1, sheet.height()));
    return picture;
}

}  // namespace seamward::viewer
