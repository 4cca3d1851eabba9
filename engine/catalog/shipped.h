// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "catalog/drill_scores.h"
#include "catalog/duties.h"
#include "catalog/envelope.h"
#include "catalog/features.h"
#include "catalog/free_areas.h"
#include "catalog/joint_figures.h"
#include "catalog/provisions.h"
#include "catalog/removals.h"
#include "catalog/site_cautions.h"
#include "catalog/tables.h"

namespace seamward {

/// The tables that the program ships: the YAML files of this folder, checked when the program is built and carried
/// in it. Read once, at first use.
[[nodiscard]] const Table<Pest>& shipped_pests();
[[nodiscard]] const Table<Gauge>& shipped_gauges();
[[nodiscard]] const Table<Treatment>& shipped_treatments();
[[nodiscard]] const Table<Feature>& shipped_features();
[[nodiscard]] const Table<DutyRow>& shipped_duties();
[[nodiscard]] const Table<MeshKind>& shipped_meshes();
[[nodiscard]] const Table<FreeAreaRule>& shipped_free_areas();
[[nodiscard]] const Table<JointFigure>& shipped_joints();
/// Ids of the treatments that leave nothing open.
[[nodiscard]] std::vector<std::string_view> full_closings();
[[nodiscard]] const Table<Measure>& shipped_measures();
[[nodiscard]] const Table<Provision>& shipped_provisions();
[[nodiscard]] const Table<Removal>& shipped_removals();
[[nodiscard]] const Table<SiteCaution>& shipped_site_cautions();
[[nodiscard]] const Table<DrillScore>& shipped_drill_scores();
[[nodiscard]] const Table<EnvelopePart>& shipped_envelope();

}  // namespace seamward
