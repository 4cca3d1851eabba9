// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <span>

#include "base/message.h"
#include "catalog/tables.h"

namespace seamward {

/// How wide a gap is in things at hand: "thinner than a card", "a dime", "between a card and a dime", "more than a
/// pencil". `width` in meters, gauges in rising order.
[[nodiscard]] Message field_check(double width, std::span<const Gauge> gauges);

}  // namespace seamward
