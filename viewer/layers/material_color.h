// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <string>

#include "base/solid.h"

namespace seamward::viewer {

/// A light, natural color for what a part is made of; for an unknown material one that suits its layer.
[[nodiscard]] QColor material_color(const std::string& material, Layer layer);

}  // namespace seamward::viewer
