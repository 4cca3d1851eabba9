// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/section_drawing.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>
#include <string_view>

#include "layers/material_color.h"
#include "layers/palette.h"

namespace seamward::viewer {

namespace {

constexpr double outline_width = 1.7;  ///< units
constexpr double gap_edge_width = 3.2;
constexpr double hatch_width = 0.9;
constexpr int border_dark = 210, hatch_dark = 122;  ///< QColor::darker()

/// Lines on a cut face.
struct Hatch {
    std::string_view word;  ///< somewhere in the material
    double turn;            ///< radians from level
    double apart;           ///< units
};
constexpr std::array hatches{Hatch{"stucco", 1.05, 7},   Hatch{"concrete", 0.785, 16}, Hatch{"block", 0.785, 16},
                             Hatch{"mortar", 0.785, 16}, Hatch{"wood", -0.45, 9},      Hatch{"lumber", -0.45, 9},
                             Hatch{"osb", -0.45, 9},     Hatch{"plywood", -0.45, 9},   Hatch{"metal", 0.785, 5},
                             Hatch{"steel", 0.785, 5},   Hatch{"soil", -0.785, 22},    Hatch{"gravel", -0.785, 12},
                             Hatch{"drywall", 1.2, 34},  Hatch{"gypsum", 1.2, 34},     Hatch{"shingle", -1.05, 6}};
constexpr Hatch unknown{"", -1.05, 12};

Hatch hatch_of(const std::string& material) {
    const auto found =
        std::ranges::find_if(hatches, [&](const Hatch& hatch) { return material.find(hatch.word) != material.npos; });
    return found != hatches.end() ? *found : unknown;
}

/// Deeper than the same material seen from outside, so that the cut stands out.
QColor cut_color(const CutFace& face) {
    if (face.layer == Layer::ground) return {0xb3, 0x91, 0x68};  // earth, whatever grows on it
    const QColor color = material_color(face.material, face.layer);
    return QColor::fromHsv(std::max(color.hsvHue(), 0), std::min(255, color.hsvSaturation() * 3 / 2), color.value() * 24 / 25);
}

/// Draws in a plane, in layers one over another.
class PlanePen {
public:
    PlanePen(ColoredTriangles& all, const CutPlane& plane, const Sight& sight, double unit)
        : all_(all),
          plane_(plane),
          level_{-plane.normal.y, plane.normal.x, 0},
          up_(cross(plane.normal, level_)),
          one_(sight.pixel(sight.camera().distance) * unit),
          lit_from_(sight.forward() * -1) {}

    [[nodiscard]] double unit() const { return one_; }

    void fill(const std::array<Point, 3>& corners, double lift, const QColor& color) {
        all_.add({lifted(corners[0], lift), lifted(corners[1], lift), lifted(corners[2], lift)}, color, lit_from_);
    }

    void line(const Point& from, const Point& to, double width, double lift, const QColor& color) {
        const Vector along = to - from;
        const double size = length(along);
        if (!(size > 0)) return;
        const Vector half = along * (width * one_ / 2 / size);
        const Vector side = cross(plane_.normal, half);
        const Point a = lifted(from + half * -1, lift);  // square ends: lines join at corners
        const Point b = lifted(to + half, lift);
        const Point c = a + side * -1;
        all_.add({c, b + side * -1, b + side}, color, lit_from_);
        all_.add({c, b + side, a + side}, color, lit_from_);
    }

    /// Parallel lines over a triangle; those of neighbors go on in one another.
    void hatch(const std::array<Point, 3>& corners, const Hatch& hatch, double lift, const QColor& color) {
        const Vector across = level_ * -std::sin(hatch.turn) + up_ * std::cos(hatch.turn);
        const double step = hatch.apart * one_;
        std::array<double, 3> at{};
        for (std::size_t i = 0; i < 3; ++i) at.at(i) = dot(corners.at(i) - plane_.at, across) / step;
        const double low = std::max(std::ranges::min(at), -hatched / step);
        const double high = std::min(std::ranges::max(at), hatched / step);
        for (double line_at = std::ceil(low); line_at <= high; ++line_at) {
            std::array<Point, 2> ends;
            std::size_t count = 0;
            for (std::size_t i = 0; i < 3 && count < 2; ++i) {
                const double a = at.at(i);
                const double b = at.at((i + 1) % 3);
                if ((a < line_at) == (b < line_at)) continue;
                ends.at(count++) = corners.at(i) + (corners.at((i + 1) % 3) - corners.at(i)) * ((line_at - a) / (b - a));
            }
            if (count == 2) line(ends[0], ends[1], hatch_width, lift, color);
        }
    }

private:
    static constexpr double hatched = 2;  ///< meters around the gap

    [[nodiscard]] Point lifted(const Point& at, double layer) const { return at + plane_.normal * (0.3 * layer * one_); }

    ColoredTriangles& all_;
    CutPlane plane_;
    Vector level_, up_;
    double one_;  ///< meters
    Vector lit_from_;
};

std::array<Point, 3> corners_of(const TriangleMesh& mesh, std::size_t i) {
    const auto& [a, b, c] = mesh.triangles[i];
    return {mesh.points[a], mesh.points[b], mesh.points[c]};
}

/// The picture in squares: which of them a face of the cut fills.
class Squares {
public:
    static constexpr double size = 4;  ///< units

    Squares(const OrbitCamera& camera, const QSizeF& sheet, const QRectF& free)
        : camera_(camera),
          eye_(camera.eye()),
          ahead_((camera.focus - eye_) * (1 / camera.distance)),
          sheet_(sheet),
          free_(free),
          columns_(std::max(1, static_cast<int>(free.width() / size))),
          rows_(std::max(1, static_cast<int>(free.height() / size))) {}

    [[nodiscard]] std::optional<QPointF> shown(const Point& at) const {
        const auto point = camera_.shown_at(at, sheet_.width(), sheet_.height());
        return point ? std::optional(QPointF(point->x, point->y)) : std::nullopt;
    }

    /// The point of a face that lies well inside of it and not far from `near`, off `taken`.
    [[nodiscard]] std::optional<Point> best_point(const CutFace& face, const QPointF& near, double ring,
                                                  std::span<const QRectF> taken) const {
        std::vector<int> inside(static_cast<std::size_t>(columns_) * static_cast<std::size_t>(rows_), 0);
        std::vector<std::pair<QPointF, Point>> extra;  // of what is thinner than a square
        std::vector<std::array<Point, 3>> triangles;
        for (std::size_t i = 0; i < face.mesh.triangles.size(); ++i) add_before_eye(triangles, corners_of(face.mesh, i));
        for (const std::array<Point, 3>& corners : triangles) fill(inside, extra, corners);
        deepen(inside);
        double best = -1e300;
        std::optional<QPointF> place;
        const auto judge = [&](const QPointF& at, double deep) {
            const double off = std::hypot(at.x() - near.x(), at.y() - near.y());
            if (off < ring || !free_.contains(at)) return false;
            if (std::ranges::any_of(taken, [&](const QRectF& other) { return other.contains(at); })) return false;
            const double value = 60 * std::min(deep, 5.0) - off;
            if (value <= best) return false;
            best = value;
            place = at;
            return true;
        };
        for (int y = 0; y < rows_; ++y) {
            for (int x = 0; x < columns_; ++x) {
                const int deep = inside[at(x, y)];
                if (deep > 0) judge(free_.topLeft() + QPointF((x + 0.5) * size, (y + 0.5) * size), deep);
            }
        }
        std::optional<Point> found;
        if (place) return on_face(triangles, *place);
        for (const auto& [point, in_scene] : extra) {
            if (judge(point, 0)) found = in_scene;
        }
        return found;
    }

private:
    [[nodiscard]] std::size_t at(int x, int y) const {
        return static_cast<std::size_t>(y) * static_cast<std::size_t>(columns_) + static_cast<std::size_t>(x);
    }

    [[nodiscard]] static double turn(const QPointF& a, const QPointF& b, const QPointF& c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
    [[nodiscard]] static bool is_in(const std::array<QPointF, 3>& t, const QPointF& at) {
        const double a = turn(t[0], t[1], at);
        const double b = turn(t[1], t[2], at);
        const double c = turn(t[2], t[0], at);
        return (a >= 0 && b >= 0 && c >= 0) || (a <= 0 && b <= 0 && c <= 0);
    }
    [[nodiscard]] std::optional<std::array<QPointF, 3>> shown(const std::array<Point, 3>& corners) const {
        std::array<QPointF, 3> all;
        for (std::size_t i = 0; i < 3; ++i) {
            const auto point = shown(corners.at(i));
            if (!point) return std::nullopt;
            all.at(i) = *point;
        }
        return all;
    }

    void fill(std::vector<int>& inside, std::vector<std::pair<QPointF, Point>>& extra,
              const std::array<Point, 3>& corners) const {
        const auto t = shown(corners);
        if (!t) return;
        for (int i = 0; i <= 20; ++i) {  // along the middle line
            const double share = i / 20.0;
            const Point a = corners[0] + (corners[1] - corners[0]) * share;
            const Point b = corners[0] + (corners[2] - corners[0]) * share;
            const Point middle = a + (b - a) * 0.5;
            if (const auto point = shown(middle); point && free_.contains(*point)) extra.emplace_back(*point, middle);
        }
        const auto [left, right] = std::minmax({(*t)[0].x(), (*t)[1].x(), (*t)[2].x()});
        const auto [top, bottom] = std::minmax({(*t)[0].y(), (*t)[1].y(), (*t)[2].y()});
        const auto column = [&](double x) {
            return static_cast<int>(std::clamp((x - free_.left()) / size, 0.0, columns_ - 1.0));
        };
        const auto line = [&](double y) { return static_cast<int>(std::clamp((y - free_.top()) / size, 0.0, rows_ - 1.0)); };
        for (int y = line(top); y <= line(bottom); ++y) {
            for (int x = column(left); x <= column(right); ++x) {
                if (is_in(*t, free_.topLeft() + QPointF((x + 0.5) * size, (y + 0.5) * size))) inside[at(x, y)] = 1;
            }
        }
    }

    /// Makes of each square inside how many squares lie between it and the border.
    void deepen(std::vector<int>& inside) const {
        constexpr int most = 12;
        for (int deep = 1; deep < most; ++deep) {
            bool any = false;
            for (int y = 1; y + 1 < rows_; ++y) {
                for (int x = 1; x + 1 < columns_; ++x) {
                    if (inside[at(x, y)] < deep) continue;
                    if (std::min({inside[at(x - 1, y)], inside[at(x + 1, y)], inside[at(x, y - 1)], inside[at(x, y + 1)]}) < deep)
                        continue;
                    inside[at(x, y)] = deep + 1;
                    any = true;
                }
            }
            if (!any) return;
        }
    }

    [[nodiscard]] double away(const Point& at) const { return dot(at - eye_, ahead_); }

    /// What of a triangle lies before the eye, in triangles.
    void add_before_eye(std::vector<std::array<Point, 3>>& all, const std::array<Point, 3>& corners) const {
        const double nearest = camera_.distance / 5;
        std::vector<Point> left;
        for (std::size_t i = 0; i < 3; ++i) {
            const Point& from = corners.at(i);
            const Point& to = corners.at((i + 1) % 3);
            const double a = away(from) - nearest;
            const double b = away(to) - nearest;
            if (a >= 0) left.push_back(from);
            if ((a >= 0) != (b >= 0)) left.push_back(from + (to - from) * (a / (a - b)));
        }
        for (std::size_t i = 2; i < left.size(); ++i) all.push_back({left[0], left[i - 1], left[i]});
    }

    /// The point that is shown there.
    [[nodiscard]] std::optional<Point> on_face(const std::vector<std::array<Point, 3>>& triangles, const QPointF& place) const {
        for (const std::array<Point, 3>& corners : triangles) {
            const auto t = shown(corners);
            if (!t || !is_in(*t, place)) continue;
            // Shares of the corners in the picture, and in space: a share of what is farther away is smaller there.
            const double a = turn((*t)[1], (*t)[2], place) / away(corners[0]);
            const double b = turn((*t)[2], (*t)[0], place) / away(corners[1]);
            const double c = turn((*t)[0], (*t)[1], place) / away(corners[2]);
            if (a + b + c == 0) return corners[0];
            return corners[0] + (corners[1] - corners[0]) * (b / (a + b + c)) + (corners[2] - corners[0]) * (c / (a + b + c));
        }
        return std::nullopt;
    }

    OrbitCamera camera_;
    Point eye_;
    Vector ahead_;
    QSizeF sheet_;
    QRectF free_;
    int columns_, rows_;
};

}  // namespace

void add_cut_faces(ColoredTriangles& all, std::span<const CutFace> faces, const CutPlane& plane, GapIndex gap, const Sight& sight,
                   double unit) {
    constexpr double reach = 4;  // meters around the focus: farther off it is not seen
    PlanePen pen(all, plane, sight, unit);
    const auto near = [&](const Point& at) { return distance(at, sight.camera().focus) < reach; };
    for (const CutFace& face : faces) {
        const QColor color = cut_color(face);
        const double lowest = face.layer == Layer::ground ? 1 : 2.5;  // what stands in the ground covers it
        for (std::size_t i = 0; i < face.mesh.triangles.size(); ++i) {
            const std::array<Point, 3> corners = corners_of(face.mesh, i);
            pen.fill(corners, lowest, color);
            pen.hatch(corners, hatch_of(face.material), lowest + 1, color.darker(hatch_dark));
        }
        for (const auto& [from, to] : face.outline) pen.line(from, to, outline_width, lowest + 2, color.darker(border_dark));
        for (const CutFace::GapEdge& edge : face.gap_edges) {
            if (edge.gap == gap && (near(edge.from) || near(edge.to)))
                pen.line(edge.from, edge.to, gap_edge_width, 5.5, palette::smallest);
        }
    }
}

std::vector<PictureStory::Word> cut_layers(std::span<const CutFace> faces, const OrbitCamera& camera, const QSizeF& sheet,
                                           const QRectF& free, std::span<const QRectF> taken, const Point& middle, double ring,
                                           std::size_t most) {
    const Squares squares(camera, sheet, free);
    const QPointF near = squares.shown(middle).value_or(free.center());
    constexpr double alike = 110;  // units: a second label of the same word is farther away
    struct Found {
        PictureStory::Word word;
        QPointF at;
        double away;
    };
    std::vector<Found> all;
    for (const CutFace& face : faces) {
        auto point = squares.best_point(face, near, ring + 46, taken);
        if (!point) point = squares.best_point(face, near, ring, taken);
        if (!point) continue;
        const QPointF at = squares.shown(*point).value_or(near);
        const QString word = QString::fromStdString(face.material).simplified();
        if (!word.isEmpty()) all.push_back({{word, *point}, at, std::hypot(at.x() - near.x(), at.y() - near.y())});
    }
    std::ranges::stable_sort(all, {}, &Found::away);
    std::vector<Found> chosen;
    for (const Found& one : all) {
        const auto repeats = [&](const Found& other) {
            return other.word.text == one.word.text && std::hypot(other.at.x() - one.at.x(), other.at.y() - one.at.y()) < alike;
        };
        if (chosen.size() < most && std::ranges::none_of(chosen, repeats)) chosen.push_back(one);
    }
    std::vector<PictureStory::Word> words;
    for (Found& one : chosen) words.push_back(std::move(one.word));
    return words;
}

}  // namespace seamward::viewer
