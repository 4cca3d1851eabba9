// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

/// Text of the YAML files of this folder, as embed_tables wrote it when the program was built.
namespace seamward::shipped_text {

extern const std::string_view pests;
extern const std::string_view gauges;
extern const std::string_view treatments;
extern const std::string_view features;

}  // namespace seamward::shipped_text
