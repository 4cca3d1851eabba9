// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/ride.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

#include "layers/house_way.h"

namespace seamward::viewer {

namespace {

constexpr double corner = 0.05;    ///< meters by which corners are rounded: it stays within a wall's cavity
constexpr double slowest = 0.05;   ///< meters per second, in a gap
constexpr double fastest = 1.6;    ///< far from any
constexpr double quickens = 0.85;  ///< meters per second for each meter from a gap
constexpr double near_gap = 0.25;  ///< meters
constexpr double steepest = 1.3;   ///< radians; the picture keeps its up
constexpr int looks = 8;           ///< places ahead whose mean the eye looks at
constexpr double short_of_end = 0.3;
constexpr double turn_seconds = 2.0;  ///< of the turn at the end
constexpr double stay_seconds = 1.0;  ///< after it
constexpr int directions = 24;        ///< in which the room is probed
constexpr double farthest_probe = 9;  ///< meters
constexpr double probe_shrinks = 0.8;
constexpr double most_rise = 1.2;
constexpr double least_room = 0.4;  ///< meters: with less before the eye there is nothing to see

void append(std::vector<Point>& line, const std::vector<Point>& more) {
    for (const Point& at : more) {
        if (line.empty() || distance(line.back(), at) > 1e-6) line.push_back(at);
    }
}

/// The curve that rounds one corner; the corner itself where there is no room for one, as round a pipe that the way hugs.
std::vector<Point> turn(const Point& from, const Point& at, const Point& to, const Ride::Free& free) {
    for (const double radius : {corner, corner / 3, corner / 10}) {
        std::vector<Point> curve = rounded({from, at, to}, radius);
        const auto solid = [&](const Point& a, const Point& b) { return !free(a, b); };
        if (!free || std::ranges::adjacent_find(curve, solid) == curve.end()) return {curve.begin() + 1, curve.end() - 1};
    }
    return {at};
}

std::vector<Point> turning(const std::vector<Point>& line, const Ride::Free& free) {
    if (line.size() < 3) return line;
    std::vector<Point> round{line.front()};
    for (std::size_t i = 1; i + 1 < line.size(); ++i) append(round, turn(line[i - 1], line[i], line[i + 1], free));
    append(round, {line.back()});
    return round;
}

/// Meters that are free from a point in a level direction, to a fifth, where the line rises by so many meters in all: from the
/// floor one sees far below a door, and nothing.
double free_length(const Point& from, const Vector& to, double rise, const Ride::Free& free) {
    double reach = farthest_probe;
    while (reach > 0.05 && !free(from, from + to * reach + Vector{0, 0, rise})) reach *= probe_shrinks;
    return reach > 0.05 ? reach : 0;
}

double eased(double share) {
    share = std::clamp(share, 0.0, 1.0);
    return share * share * (3 - 2 * share);
}

/// An eye there; where the way is steeper than the eye can look, it looks a little aside of it.
OrbitCamera looking(const Point& from, const Vector& way) {
    OrbitCamera camera;
    camera.view_angle = Ride::view_angle;
    camera.distance = 0.2;
    camera.focus = from + way * camera.distance;
    camera.elevation = std::clamp(std::asin(std::clamp(-way.z, -1.0, 1.0)), -steepest, steepest);
    camera.azimuth = std::hypot(way.x, way.y) > 1e-6 ? std::atan2(-way.y, -way.x) : 0;
    camera.focus = camera.focus + (from - camera.eye());
    return camera;
}

}  // namespace

Ride::Ride(const WayLine& way, const Free& free) {
    // Corners are rounded piece by piece, so that the stops stay on the line.
    append(line_, turning(way.before, free));
    std::vector<std::size_t> ends;
    for (std::size_t i = 0; i < way.stops.size(); ++i) {
        append(line_, {way.stops[i].at});
        ends.push_back(line_.size() - 1);
        if (i < way.legs.size()) append(line_, turning(way.legs[i].line, free));
    }
    append(line_, turning(way.after, free));
    if (line_.size() < 2) return;
    for (std::size_t i = 0; i < line_.size(); ++i) runs_.push_back(i == 0 ? 0 : runs_.back() + distance(line_[i - 1], line_[i]));
    for (const std::size_t end : ends) stops_.push_back(runs_[end]);

    const double whole = runs_.back();
    const auto pieces = static_cast<std::size_t>(std::clamp(whole / step_, 50.0, 20'000.0));
    step_ = whole / static_cast<double>(pieces);
    seconds_.push_back(0);
    for (std::size_t i = 0; i < pieces; ++i) {
        const double run = (static_cast<double>(i) + 0.5) * step_;
        double off = 2;  // meters to the nearest stop, or to the end
        for (const double stop : stops_) off = std::min(off, std::abs(stop - run));
        seconds_.push_back(seconds_.back() + step_ / std::clamp(slowest + quickens * off, slowest, fastest));
    }
    const double too_long = seconds_.back() / longest;
    if (too_long > 1) std::ranges::for_each(seconds_, [&](double& at) { at /= too_long; });
    stays_at_ = runs_.back() - std::min(short_of_end, runs_.back() / 4);
    if (free) look_round(free);
}

void Ride::look_round(const Free& free) {
    const Point here = at(stays_at_);
    const Vector came = ahead(stays_at_);
    std::array<double, directions> reach{};
    const auto level = [](int i) {
        const double angle = 2 * std::numbers::pi * i / directions;
        return Vector{std::cos(angle), std::sin(angle), 0};
    };
    // From the floor a little up, from under the ceiling down: to the middle of the room's height.
    const double up = free_length(here, {0, 0, 1}, 0, free) - free_length(here, {0, 0, -1}, 0, free);
    double rise = std::clamp(up / 2, -most_rise, most_rise);
    const auto probe = [&] {
        for (int i = 0; i < directions; ++i) reach.at(static_cast<std::size_t>(i)) = free_length(here, level(i), rise, free);
    };
    probe();
    if (std::ranges::max(reach) < least_room) {  // below something, as a tub or a shelf
        rise = 0;
        probe();
    }
    int best = 0;
    double most = -1;
    for (int i = 0; i < directions; ++i) {
        // Through a doorway one sees far, but little; and of two that are about alike the one ahead.
        double open = dot(level(i), came);
        for (const int beside : {-2, -1, 0, 1, 2})
            open += reach.at(static_cast<std::size_t>((i + beside + directions) % directions));
        if (open <= most) continue;
        most = open;
        best = i;
    }
    const double far = reach.at(static_cast<std::size_t>(best));
    if (far < least_room) return;
    room_ = level(best) + Vector{0, 0, std::clamp(rise / far, -0.6, 0.4)};
    room_ = room_ * (1 / length(room_));
    turning_ = turn_seconds + stay_seconds;
    const double too_long = (seconds_.back() + turning_) / longest;
    if (too_long <= 1) return;
    const double share = (longest - turning_) / seconds_.back();
    std::ranges::for_each(seconds_, [&](double& at) { at *= share; });
}

double Ride::run_at(double seconds) const {
    const auto next = std::ranges::upper_bound(seconds_, seconds);
    if (next == seconds_.begin()) return 0;
    if (next == seconds_.end()) return runs_.back();
    const auto i = static_cast<double>(next - seconds_.begin() - 1);
    return step_ * (i + (seconds - *(next - 1)) / (*next - *(next - 1)));
}

Point Ride::at(double run) const {
    const auto next = std::ranges::upper_bound(runs_, run);
    if (next == runs_.begin()) return line_.front();
    if (next == runs_.end()) return line_.back();
    const auto i = static_cast<std::size_t>(next - runs_.begin());
    return line_[i - 1] + (line_[i] - line_[i - 1]) * ((run - runs_[i - 1]) / (runs_[i] - runs_[i - 1]));
}

Vector Ride::ahead(double run) const {
    const Point here = at(run);
    double off = 2;
    for (const double stop : stops_) off = std::min(off, std::abs(stop - run));
    const double far = std::clamp(0.18 + 0.5 * off, 0.18, 0.8);
    Vector way{};
    for (int i = 1; i <= looks; ++i) {
        const Vector to = at(std::min(run + far * i / looks, runs_.back())) - here;
        way = way + to * (1 / std::max(1e-9, length(to)));
    }
    const double size = length(way);
    return size > 1e-9 ? way * (1 / size) : Vector{1, 0, 0};
}

OrbitCamera Ride::eye(double seconds) const {
    const double run = std::min(run_at(seconds), stays_at_);
    const Point here = at(run);
    const Vector way = ahead(run);
    OrbitCamera camera = looking(here, way);
    const double turned = seconds - seconds_.back();
    if (turning_ > 0 && turned > 0) camera = between(camera, looking(here, room_), eased(turned / turn_seconds));
    camera.focus = camera.focus + (here - camera.eye());  // the eye stays where it is
    return camera;
}

std::size_t Ride::passed(double seconds) const {
    const double run = run_at(seconds);
    return static_cast<std::size_t>(std::ranges::count_if(stops_, [&](double stop) { return stop < run; }));
}

std::optional<std::size_t> Ride::near(double seconds) const {
    const double run = run_at(seconds);
    std::optional<std::size_t> nearest;
    double least = near_gap;
    for (std::size_t i = 0; i < stops_.size(); ++i) {
        if (std::abs(stops_[i] - run) > least) continue;
        least = std::abs(stops_[i] - run);
        nearest = i;
    }
    return nearest;
}

double Ride::time_of(std::size_t stop) const {
    const auto i = static_cast<std::size_t>(std::clamp(stops_[stop] / step_, 0.0, static_cast<double>(seconds_.size() - 1)));
    return seconds_[i];
}

}  // namespace seamward::viewer
