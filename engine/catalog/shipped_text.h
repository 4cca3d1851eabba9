// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// Text of the YAML files of this folder, as embed_tables wrote it when the program was built.
namespace seamward::shipped_text {

extern const std::string_view pests;
extern const std::string_view gauges;
extern const std::string_view treatments;
extern const std::string_view features;
extern const std::string_view duties;
extern const std::string_view meshes;
extern const std::string_view free_areas;
extern const std::string_view joints;
extern const std::string_view measures;
extern const std::string_view provisions;
extern const std::string_view prices;
extern const std::string_view removals;
extern const std::string_view site_cautions;
extern const std::string_view drill_scores;
extern const std::string_view envelope;
extern const std::string_view spanish;

}  // namespace seamward::shipped_text
