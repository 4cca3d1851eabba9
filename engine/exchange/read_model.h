// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>

#include "base/run_context.h"
#include "exchange/model.h"

namespace seamward {

/// What one unit of a file's coordinates is.
enum class ModelUnit : std::uint8_t { m, cm, mm, in, ft };

/// The axis of a file that points up. How the others come to lie is in docs/models.md.
enum class UpAxis : std::uint8_t { x, y, z };

struct ReadSettings {
    std::optional<ModelUnit> unit;  ///< nothing: what the file says, else meters
    std::optional<UpAxis> up;       ///< nothing: what the file says, else y

    // Limits, so that no file can take the machine.
    std::uint64_t most_file_bytes = 2ULL << 30;
    std::uint64_t most_memory_bytes = 4ULL << 30;  ///< of the program that reads
    std::uint64_t most_cpu_seconds = 300;          ///< of the program that reads; by the clock it may take twice as long
    std::size_t most_triangles = 20'000'000;
};

/// Reads a 3D file of other makers: .gltf .glb .obj .stl .ply .3ds .dae .fbx .dxf .ifc. docs/models.md says what becomes of it.
///
/// The reading is done by a program of its own, `seamward-reader`, which can neither write nor start anything nor reach a
/// network, and what it answers is checked: a file made to do harm ends as an error. That program is looked for in the folder
/// of the running one, then in `../bin`.
///
/// Throws BadInput, under the name `shown_as`, for whatever is wrong with the file, and Cancelled within a tenth of a second.
[[nodiscard]] Model read_model(const std::filesystem::path& path, const std::string& shown_as, const ReadSettings& settings,
                               const RunContext& context);

}  // namespace seamward
