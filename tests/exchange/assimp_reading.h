// SPDX-License-Identifier: GPL-3.0-or-later
// What Assimp, a reader of 3D files by others, finds in a file of ours.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward::test {

/// A node with triangles.
struct ReadNode {
    std::string name;
    std::string above;                   ///< the name of the node that it hangs from
    std::vector<std::string> materials;  ///< of each of its meshes
    TriangleMesh mesh;                   ///< all its meshes in the frame of the file, points in one place made one
};

/// The nodes with triangles in the order of the file. Throws std::runtime_error with Assimp's words when it reads nothing.
[[nodiscard]] std::vector<ReadNode> read_with_assimp(const std::filesystem::path& path);

/// A mesh whose y is up with our z up.
[[nodiscard]] TriangleMesh z_up(TriangleMesh mesh);

}  // namespace seamward::test
