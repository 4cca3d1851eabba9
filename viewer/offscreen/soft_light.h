// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>

#include <span>
#include <vector>

#include "offscreen/blend_layers.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// How much light of the sky reaches what the nearest of `layers` shows, 0 to 1 for each pixel of the picture: corners and joints
/// are darker. `reach`: meters around a point that take light from it. Estimated from depths around each pixel, after McGuire et
/// al., The Alchemy Screen-Space Ambient Obscurance Algorithm (2011).
[[nodiscard]] std::vector<float> sky_light(std::span<const DrawnLayer* const> layers, double reach, const Sight& sight, int fine);

/// Light on the ground, for each pixel of the picture: less in the shadow that `casting` throws, within `reach` meters of
/// `house`. `level` is the height of the ground in the scene, `ground` how it was drawn.
[[nodiscard]] std::vector<float> ground_light(const DrawnLayer& ground, std::span<vtkPolyData* const> casting, const Box& house,
                                              double reach, double level, const Sight& sight, int fine);

/// For each pixel of the picture how near a layer is to the house there: 1 beside it, falling to 0 at `reach` meters from it.
[[nodiscard]] std::vector<float> nearness(const DrawnLayer& layer, const Box& house, double reach, const Sight& sight, int fine);

}  // namespace seamward::viewer
