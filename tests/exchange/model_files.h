// SPDX-License-Identifier: GPL-3.0-or-later
// Small 3D files of every kind that is read, all with the same box.
#pragma once

#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward::test {

/// In the coordinates of the file, whatever its unit and its axis.
constexpr Point box_low{1, 2, 3}, box_high{5, 4, 9};

/// A file of one kind.
struct ModelFile {
    std::string name;  ///< "inches.dae"
    std::string content;
};

/// A box named "box" as Assimp writes it: "collada", "fbxa", "3ds", "stl", "stlb", "ply", "plyb", "gltf2", "glb2", "obj".
[[nodiscard]] std::string exported_box(const std::string& format);

/// The text with one part of it replaced, which must be there once or more.
[[nodiscard]] std::string with(std::string text, const std::string& part, const std::string& by);

/// An OBJ file of a mesh, without objects; corners count from `first`.
[[nodiscard]] std::string obj_lines(const TriangleMesh& mesh, std::size_t first = 1);

/// A DXF file with the box on the layer "box"; `insunits` is the number of its unit, 0 for none.
[[nodiscard]] std::string dxf_box(int insunits);

/// A glTF file with the box, whose nodes are JSON: "{\"mesh\":0}". The numbers are in `buffer`, by default in the file itself.
[[nodiscard]] std::string gltf_box(const std::string& nodes, const std::string& buffer = "");

/// What `buffer` names in gltf_box().
[[nodiscard]] std::string gltf_numbers();

/// An IFC4 file in millimeters: a wall of 4 x 0.2 x 3 m at x = 1 m with a window's opening of 1 x 1 m through it, a room, a
/// round column of 100 mm across, a roof without a shape, and a door whose shape cannot be read.
[[nodiscard]] std::string ifc_rooms();

/// One file of each kind.
[[nodiscard]] std::vector<ModelFile> one_of_each_kind();

}  // namespace seamward::test
