// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>

namespace seamward {

/// The extension of a file in small letters, without the dot: what says which kind of 3D file it is.
[[nodiscard]] std::string model_kind(const std::filesystem::path& path);

/// Whether files of that name are of a kind that can be read.
[[nodiscard]] bool is_model_name(const std::filesystem::path& path);

/// `.gltf, .glb, ... and .ifc`
[[nodiscard]] std::string all_model_kinds();

}  // namespace seamward
