// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/shapes.h"

#include <algorithm>
#include <array>

namespace seamward {

namespace {

struct ClearWidth {
    double& operator()(Slot& slot) const { return slot.width; }
    double& operator()(Hole& hole) const { return hole.diameter; }
    double& operator()(Ring& ring) const { return ring.width; }
    double& operator()(Mesh& mesh) const { return mesh.opening; }
};

}  // namespace

double clear_width(const Shape& shape) {
    Shape copy = shape;
    return std::visit(ClearWidth{}, copy);
}

Shape widened(const Shape& shape, double by) {
    Shape copy = shape;
    double& width = std::visit(ClearWidth{}, copy);
    width = std::max(0.0, width + by);
    return copy;
}

bool is_shut(const Shape& shape) {
    const Slot* slot = std::get_if<Slot>(&shape);
    const Mesh* mesh = std::get_if<Mesh>(&shape);
    return clear_width(shape) <= 0 || (slot != nullptr && slot->length <= 0) ||
           (mesh != nullptr && mesh->area && *mesh->area <= 0);
}

const char* shape_word(const Shape& shape) {
    constexpr std::array words{"slot", "hole", "ring", "mesh"};
    return words.at(shape.index());
}

}  // namespace seamward
