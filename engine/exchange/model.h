// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward {

/// One product or object of a 3D file as it was read: its triangles may be open, doubled, turned inside out.
struct ModelPart {
    std::string id;         ///< of its own within the model; letters, digits and `-_./` only (exchange/part_ids.h)
    std::string name;       ///< as the file has it; may be empty
    std::string ifc_class;  ///< "IfcWallStandardCase"; empty where the file knows no classes
    std::string global_id;  ///< 22 characters of IFC; empty elsewhere
    TriangleMesh mesh;      ///< meters, z up
};

/// Products of an IFC class of which fewer came through than the file has.
struct LostProducts {
    std::string ifc_class;
    std::size_t in_file = 0;  ///< counted in the text of the file
    std::size_t read = 0;     ///< came through with triangles
};

/// A 3D file of other makers, read whole.
struct Model {
    std::vector<ModelPart> parts;    ///< solids, in the order of the file
    std::vector<ModelPart> rooms;    ///< bodies that the file calls spaces of the building: labels, never walls
    std::vector<LostProducts> lost;  ///< sorted by class
    std::vector<std::string> notes;  ///< what was assumed and what was left out, for people
};

}  // namespace seamward
