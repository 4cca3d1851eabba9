// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/shadow_map.h"

#include <vtkDataArray.h>
#include <vtkPoints.h>

#include <QImage>
#include <QPainter>
#include <QPolygonF>
#include <algorithm>
#include <array>
#include <cmath>

#include "layers/rows.h"

namespace seamward::viewer {

namespace {

constexpr double least_cell = 0.04;   ///< meters
constexpr double shadow_blur = 0.16;  ///< meters
constexpr double most_cells = 1500;   ///< across

std::size_t index(int x, int y, int width) {
    return static_cast<std::size_t>(y) * static_cast<std::size_t>(width) + static_cast<std::size_t>(x);
}

/// What a cut leaves of a triangle, three or four corners; none when all is taken away.
int left_of(const std::array<Point, 3>& triangle, const std::optional<CutPlane>& cut, std::array<Point, 4>& left) {
    int count = 0;
    for (std::size_t i = 0; i < 3; ++i) {
        const Point& from = triangle.at(i);
        const Point& to = triangle.at((i + 1) % 3);
        const double over_from = cut ? cut->over(from) : -1;
        const double over_to = cut ? cut->over(to) : -1;
        if (over_from <= 0) left.at(static_cast<std::size_t>(count++)) = from;
        if ((over_from <= 0) != (over_to <= 0))
            left.at(static_cast<std::size_t>(count++)) = from + (to - from) * (over_from / (over_from - over_to));
    }
    return count;
}

/// Paints the shadows of triangles on a map whose corner lies at `low`.
void paint_shadows(QImage& map, std::span<vtkPolyData* const> casting, const Point& low, double cell, Vector sun,
                   const std::optional<CutPlane>& cut) {
    QPainter painter(&map);
    painter.setPen(Qt::NoPen);
    painter.setBrush(Qt::white);
    for (vtkPolyData* solids : casting) {
        vtkDataArray* corners = solids->GetPoints()->GetData();
        std::array<Point, 3> triangle;
        std::array<Point, 4> left;
        std::array<QPointF, 4> shadow;
        for (vtkIdType i = 0; i + 2 < corners->GetNumberOfTuples(); i += 3) {
            for (std::size_t corner = 0; corner < 3; ++corner) {
                std::array<double, 3> at{};
                corners->GetTuple(i + static_cast<vtkIdType>(corner), at.data());
                triangle.at(corner) = {at[0], at[1], at[2]};
            }
            const int count = left_of(triangle, cut, left);
            for (std::size_t corner = 0; corner < static_cast<std::size_t>(count); ++corner) {
                const Point& at = left.at(corner);
                const double up = std::max(0.0, at.z - low.z);
                shadow.at(corner) = {(at.x - sun.x / sun.z * up - low.x) / cell, (at.y - sun.y / sun.z * up - low.y) / cell};
            }
            if (count > 0) painter.drawPolygon(shadow.data(), count);
        }
    }
}

}  // namespace

ShadowMap::ShadowMap(std::span<vtkPolyData* const> casting, const Box& house, double reach, double level, Vector sun,
                     const std::optional<CutPlane>& cut)
    : low_{house.low.x - reach, house.low.y - reach, level} {
    const double across = std::max(house.high.x - house.low.x, house.high.y - house.low.y) + 2 * reach;
    cell_ = std::max(least_cell, across / most_cells);
    width_ = static_cast<int>((house.high.x - house.low.x + 2 * reach) / cell_) + 1;
    height_ = static_cast<int>((house.high.y - house.low.y + 2 * reach) / cell_) + 1;
    QImage map(width_, height_, QImage::Format_Grayscale8);
    map.fill(0);
    paint_shadows(map, casting, low_, cell_, sun, cut);
    shade_.resize(index(0, height_, width_));
    for (int y = 0; y < height_; ++y) {
        for (int x = 0; x < width_; ++x) shade_[index(x, y, width_)] = static_cast<float>(map.constScanLine(y)[x]) / 255;
    }
    for (int pass = 0; pass < 3; ++pass) {
        blur(width_, height_, 1, static_cast<std::size_t>(width_));
        blur(height_, width_, static_cast<std::size_t>(width_), 1);
    }
}

float ShadowMap::at(const Point& on_ground) const {
    const double x = std::clamp((on_ground.x - low_.x) / cell_ - 0.5, 0.0, width_ - 1.001);
    const double y = std::clamp((on_ground.y - low_.y) / cell_ - 0.5, 0.0, height_ - 1.001);
    const int i = static_cast<int>(x);
    const int j = static_cast<int>(y);
    const auto value = [&](int di, int dj) { return shade_[index(i + di, j + dj, width_)]; };
    const auto right = static_cast<float>(x - i);
    const auto down = static_cast<float>(y - j);
    return std::lerp(std::lerp(value(0, 0), value(1, 0), right), std::lerp(value(0, 1), value(1, 1), right), down);
}

/// A running mean along lines: `count` cells in a line, `step` from one to the next.
void ShadowMap::blur(int count, int lines, std::size_t step, std::size_t line_step) {
    const int reach = std::max(1, static_cast<int>(shadow_blur / cell_));
    for_rows(lines, [&](int line) {
        float* const cells = shade_.data() + static_cast<std::size_t>(line) * line_step;
        std::vector<float> sums(static_cast<std::size_t>(count) + 1, 0);
        for (std::size_t i = 0; i < static_cast<std::size_t>(count); ++i) sums[i + 1] = sums[i] + cells[i * step];
        for (int i = 0; i < count; ++i) {
            const auto from = static_cast<std::size_t>(std::max(0, i - reach));
            const auto to = static_cast<std::size_t>(std::min(count, i + reach + 1));
            cells[static_cast<std::size_t>(i) * step] = (sums[to] - sums[from]) / static_cast<float>(to - from);
        }
    });
}

}  // namespace seamward::viewer
