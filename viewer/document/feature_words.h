// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "document/feature_places.h"

namespace seamward::viewer {

/// "from the west corner": the end of what is upright that `along` counts from.
[[nodiscard]] QString from_words(const FeaturePlace& place);

/// "from the west side", "from the south side": of what is level, which `at` is told from, along x and along y.
[[nodiscard]] QString across_words(const FeaturePlace& place);
[[nodiscard]] QString deep_words(const FeaturePlace& place);

/// "north wall, 3.2 m from the west corner, 0.4 m up": with as much as `needs` asks for.
[[nodiscard]] QString place_words(const FeaturePlace& place, const PlaceNeeds& needs);

/// "hose bibb by the kitchen": what something may be called there.
[[nodiscard]] QString usual_name(const Feature& type, const FeaturePlace& place);

}  // namespace seamward::viewer
