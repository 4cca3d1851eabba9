// SPDX-License-Identifier: GPL-3.0-or-later
// What is seen of the scene from an eye.
#include <algorithm>
#include <cmath>
#include <numbers>
#include <span>

#include "base/drawn_shut.h"
#include "layers/house_scene.h"

namespace seamward::viewer {

std::optional<SolidHit> HouseScene::solid_at(PicturePoint at, const OrbitCamera& camera, double width, double height) const {
    if (!has_house()) return std::nullopt;
    const Vector ahead = camera.sight(at, width, height);
    const double far = camera.distance + 4 * frame_->reach;
    return house_.first_solid(camera.eye(), camera.eye() + ahead * far);
}

bool HouseScene::is_hidden(const Point& at, const OrbitCamera& camera) const {
    constexpr double touching = 0.06;  // meters: a gap lies in the solids that bound it
    const Point eye = camera.eye();
    const Vector sight = at - eye;
    const double far = length(sight);
    return has_house() && far > touching && house_.first_solid(eye, eye + sight * ((far - touching) / far)).has_value();
}

Point HouseScene::snapped(const SolidHit& hit, PicturePoint at, const OrbitCamera& camera, double width, double height) const {
    constexpr double near = 9;  // pixels
    Point best = hit.at;
    double least = near;
    for (const Point& corner : hit.face) {
        const auto shown = camera.shown_at(corner, width, height);
        if (!shown || std::hypot(shown->x - at.x, shown->y - at.y) >= least) continue;
        least = std::hypot(shown->x - at.x, shown->y - at.y);
        best = corner;
    }
    return best;
}

CutPlane HouseScene::plane_of(int side, double depth) const {
    const Box& box = house_frame_.house;
    switch (side) {
        case 0: return {{0, std::lerp(box.low.y, box.high.y, depth), 0}, {0, -1, 0}};
        case 1: return {{std::lerp(box.high.x, box.low.x, depth), 0, 0}, {1, 0, 0}};
        case 2: return {{0, std::lerp(box.high.y, box.low.y, depth), 0}, {0, 1, 0}};
        case 3: return {{std::lerp(box.low.x, box.high.x, depth), 0, 0}, {-1, 0, 0}};
        default: break;
    }
    return {{0, 0, std::lerp(box.high.z, box.low.z, depth)}, {0, 0, 1}};
}

void HouseScene::find_hidden(const Point& eye) {
    hidden_.clear();
    if (!has_house() || riding_) return;
    std::vector<std::vector<Point>> parts{line_.before};
    for (const WayLeg& leg : line_.legs) {
        if (leg.sure) parts.push_back(leg.line);
    }
    parts.push_back(line_.after);
    const double step = std::max(0.03, frame_->reach * 0.006);
    const double touching = 0.02;  // meters: what a gap's own sides hide does not count
    std::vector<Point> open;       // the hidden stretch that goes on
    const auto end = [&] {
        if (open.size() > 1) hidden_.push_back(open);
        open.clear();
    };
    for (const std::vector<Point>& line : parts) {
        for (std::size_t i = 1; i < line.size(); ++i) {
            const Vector way = line[i] - line[i - 1];
            const int pieces = std::clamp(static_cast<int>(length(way) / step), 1, 200);
            for (int piece = 0; piece < pieces; ++piece) {
                const Point from = line[i - 1] + way * (static_cast<double>(piece) / pieces);
                const Point to = line[i - 1] + way * (static_cast<double>(piece + 1) / pieces);
                const Point middle = from + (to - from) * 0.5;
                const Vector sight = middle - eye;
                const double far = length(sight);
                if (far <= touching || !house_.first_solid(eye, eye + sight * ((far - touching) / far))) {
                    end();
                    continue;
                }
                if (open.empty()) open.push_back(from);
                open.push_back(to);
            }
        }
    }
    end();
}

std::optional<OrbitCamera> HouseScene::better_view(const OrbitCamera& camera) {
    if (!has_house() || line_.stops.empty() || house_.triangle_count() >= many_triangles) return std::nullopt;
    const auto hidden = [&](const OrbitCamera& eye) {
        house_.look(eye);
        find_hidden(eye.eye());
        double sum = 0;
        for (const std::vector<Point>& part : hidden_) {
            for (std::size_t i = 1; i < part.size(); ++i) sum += distance(part[i - 1], part[i]);
        }
        return sum;
    };
    double whole = 0;
    const auto add = [&](const std::vector<Point>& line) {
        for (std::size_t i = 1; i < line.size(); ++i) whole += distance(line[i - 1], line[i]);
    };
    add(line_.before);
    add(line_.after);
    for (const WayLeg& leg : line_.legs) add(leg.line);
    double least = hidden(camera) - 0.2 * whole;  // turning confuses: only where much more is seen
    std::optional<OrbitCamera> best;
    constexpr int directions = 8;
    for (int i = 0; i < directions; ++i) {
        OrbitCamera eye = camera;
        eye.azimuth = -1.05 + i * 2 * std::numbers::pi / directions;
        eye.elevation = std::clamp(camera.elevation, 0.45, 0.9);
        const double now = hidden(eye);
        if (now >= least) continue;
        least = now;
        best = eye;
    }
    house_.look(camera);
    find_hidden(camera.eye());
    return best;
}

OrbitCamera HouseScene::view_of(std::span<const Point> points, const OrbitCamera& camera, double aspect) {
    std::vector<Point> seen(points.begin(), points.end());
    if (seen.empty()) {
        for (const WayLeg& leg : line_.legs) seen.insert(seen.end(), leg.line.begin(), leg.line.end());
        for (const WayStop& stop : line_.stops) seen.push_back(stop.at);
    }
    if (seen.empty() || !frame_) return camera;
    constexpr double least_half = 1.1;  // meters: one has to see where in the house it is
    constexpr std::size_t most_looked_for = 60;
    constexpr int directions = 12;
    constexpr double touching = 0.06;  // meters: a gap lies in the solids that bound it
    Box box{seen.front(), seen.front()};
    for (const Point& at : seen) {
        box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y), std::min(box.low.z, at.z)};
        box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y), std::max(box.high.z, at.z)};
    }
    const auto widen = [](double& low, double& high) {
        const double more = std::max(0.0, least_half - (high - low) / 2);
        low -= more;
        high += more;
    };
    widen(box.low.x, box.high.x);
    widen(box.low.y, box.high.y);
    widen(box.low.z, box.high.z);
    const std::size_t step = std::max<std::size_t>(1, seen.size() / most_looked_for);
    OrbitCamera best = fitted(camera, box, aspect, 0.7);
    // A place that one stands before is best seen as it is, under an eave from below; a way through walls is seen through them.
    const bool stood_before = !points.empty() && has_house();
    double most = -1;
    for (const double elevation : {-0.2, 0.28, 0.62, 1.0}) {
        if (elevation < 0 && !stood_before) continue;
        for (int i = 0; i < directions; ++i) {
            OrbitCamera eye = camera;
            eye.view_angle = OrbitCamera::usual_angle;
            eye.azimuth = camera.azimuth + i * 2 * std::numbers::pi / directions;
            eye.elevation = elevation;
            eye = fitted(eye, box, aspect, 0.7);
            if (eye.eye().z < 0.05) continue;
            house_.look(eye);
            double free = 0;
            for (std::size_t at = 0; at < seen.size(); at += step) {
                if (is_hidden(seen[at], eye)) continue;
                const Vector sight = seen[at] - eye.eye();
                const bool bare = stood_before && house_.is_free(eye.eye(), eye.eye() + sight * (1 - touching / length(sight)));
                free += bare ? 1.3 : 1;
            }
            // Of views that show as much, the one that turns least, from a usual height.
            const double turn = 1 - std::cos(eye.azimuth - camera.azimuth) + std::abs(elevation - 0.45);
            const double worth = free * static_cast<double>(step) / static_cast<double>(seen.size()) - 0.08 * turn;
            if (worth <= most) continue;
            most = worth;
            best = eye;
        }
    }
    house_.look(camera);
    return best;
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

}  // namespace seamward::viewer
