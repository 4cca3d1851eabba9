// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QRectF>
#include <span>
#include <vector>

#include "layers/colored_triangles.h"
#include "layers/section.h"
#include "offscreen/picture_story.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// Adds the faces of a cut, a hair before those of its parts: colored and hatched by material, with a dark border, and orange
/// where they bound the gap. All in the scene; `unit` is the picture's unit of length in pixels.
void add_cut_faces(ColoredTriangles& all, std::span<const CutFace> faces, const CutPlane& plane, GapIndex gap, const Sight& sight,
                   double unit);

/// What the cut goes through in the picture, in a word each, and where it is seen best; what is near `middle` first, at most
/// `most`. `free`: where the picture (of the size of `sheet`) has room, units; none within `ring` units of
/// `middle`, and rather somewhat farther off.
[[nodiscard]] std::vector<PictureStory::Word> cut_layers(std::span<const CutFace> faces, const OrbitCamera& camera,
                                                         const QSizeF& sheet, const QRectF& free, std::span<const QRectF> taken,
                                                         const Point& middle, double ring, std::size_t most);

}  // namespace seamward::viewer
