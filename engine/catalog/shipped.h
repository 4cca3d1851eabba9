// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "catalog/features.h"
#include "catalog/tables.h"

namespace seamward {

/// The tables that the program ships: the YAML files of this folder, checked when the program is built and carried
/// in it. Read once, at first use.
[[nodiscard]] const Table<Pest>& shipped_pests();
[[nodiscard]] const Table<Gauge>& shipped_gauges();
[[nodiscard]] const Table<Treatment>& shipped_treatments();
[[nodiscard]] const Table<Feature>& shipped_features();

}  // namespace seamward
