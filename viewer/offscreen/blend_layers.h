// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkFloatArray.h>
#include <vtkSmartPointer.h>
#include <vtkUnsignedCharArray.h>

#include <QImage>
#include <span>
#include <vector>

#include "offscreen/sight.h"

namespace seamward::viewer {

/// What an eye sees of some solids alone: rows from below, `fine` times the pixels of the picture each way. Empty: nothing at
/// all.
struct DrawnLayer {
    vtkSmartPointer<vtkUnsignedCharArray> colors;  ///< red, green, blue, alpha
    vtkSmartPointer<vtkFloatArray> depths;         ///< as Sight has them; 1: nothing is seen there

    [[nodiscard]] bool empty() const { return depths == nullptr; }
    [[nodiscard]] const float* depth() const { return depths->GetPointer(0); }
};

/// A layer and how it goes into the picture. Of what lies behind one another in one layer only the nearest is seen: a wall fades
/// as one, however many boards it has.
struct BlendLayer {
    DrawnLayer drawn;
    float opacity = 1;         ///< of its faces
    float edges = 1;           ///< opacity of lines along edges and outlines
    float least = 1;           ///< share of both that is left right before the shown way
    std::vector<float> light;  ///< for each pixel of the picture, its rows from above; empty: 1
    std::vector<float> cover;  ///< share of the opacity, likewise
};

/// Where the shown way lies in the picture: what is before it is faded more.
struct Lens {
    std::vector<float> weight;  ///< for each pixel, rows from above: 1 on the way, falling to 0
    std::vector<float> away;    ///< meters from the plane of the eye: the way's there, or a mean of what is near of it
};

/// A lens around a line in the scene, `reach` pixels to each side.
[[nodiscard]] Lens lens_along(std::span<const Point> line, double reach, const Sight& sight);

/// The picture: paper, layers by their depth, and the way, which shows through whatever is before it. The same on any number of
/// processors.
[[nodiscard]] QImage blended(std::span<const BlendLayer> layers, const DrawnLayer& way, const Lens& lens, const Sight& sight,
                             int fine);

}  // namespace seamward::viewer
