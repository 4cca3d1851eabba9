// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/page_model.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>
#include <numbers>
#include <optional>
#include <vector>

#include "base/json_writer.h"
#include "exchange/finish.h"
#include "exchange/glb_container.h"
#include "exchange/gltf_json.h"
#include "house/facing.h"
#include "report/plain_shape.h"

// Khronos Group, glTF 2.0 Specification, 2021 (ISO/IEC 12113:2022), and its extension KHR_mesh_quantization; the numbers below
// are theirs.

namespace seamward {

namespace {

constexpr std::int64_t unsigned_short = 5123, unsigned_int = 5125;
constexpr std::size_t point_bytes = 8;  ///< three of 16 bits, and what fills up to four bytes
constexpr int ways_round = 8;           ///< directions in which walls are told apart
constexpr int facing_none = -2, facing_up = -1;

using Steps = std::array<std::uint16_t, 3>;

/// From meters to whole numbers and back.
struct Grid {
    std::array<double, 3> low{1e300, 1e300, 1e300};
    double step = 1;  ///< meters

    explicit Grid(const House& house) {
        std::array<double, 3> high{-1e300, -1e300, -1e300};
        for (const Part& part : house.parts) {
            for (const Point& p : part.mesh.points) {
                for (std::size_t axis = 0; axis < 3; ++axis) {
                    low.at(axis) = std::min(low.at(axis), y_up(p).at(axis));
                    high.at(axis) = std::max(high.at(axis), y_up(p).at(axis));
                }
            }
        }
        double longest = 0;
        for (std::size_t axis = 0; axis < 3; ++axis) longest = std::max(longest, high.at(axis) - low.at(axis));
        if (longest > 0) step = longest / std::numeric_limits<std::uint16_t>::max();
    }
    [[nodiscard]] Steps of(const Point& p) const {
        Steps steps{};
        for (std::size_t axis = 0; axis < 3; ++axis)
            steps.at(axis) = static_cast<std::uint16_t>(std::lround((y_up(p).at(axis) - low.at(axis)) / step));
        return steps;
    }
};

/// What is drawn as one: faces of one color.
struct Primitive {
    std::vector<Steps> points;
    std::vector<std::uint32_t> corners;

    /// Adds those triangles of a mesh that `wanted` takes and that have an area on the grid.
    template <class Wanted>
    void add(const TriangleMesh& mesh, const Grid& grid, Wanted wanted) {
        constexpr std::uint32_t none = std::numeric_limits<std::uint32_t>::max();
        std::vector<std::uint32_t> at(mesh.points.size(), none);
        for (std::size_t i = 0; i < mesh.triangles.size(); ++i) {
            if (!wanted(i)) continue;
            std::array<Steps, 3> steps{};
            for (std::size_t k = 0; k < 3; ++k) steps.at(k) = grid.of(mesh.points[mesh.triangles[i].at(k)]);
            if (steps[0] == steps[1] || steps[1] == steps[2] || steps[2] == steps[0]) continue;
            for (std::size_t k = 0; k < 3; ++k) {
                std::uint32_t& place = at[mesh.triangles[i].at(k)];
                if (place == none) {
                    place = static_cast<std::uint32_t>(points.size());
                    points.push_back(steps.at(k));
                }
                corners.push_back(place);
            }
        }
    }
};

/// A node with its mesh: of a coat, or the faces of a gap.
struct Node {
    std::optional<GapIndex> gap;
    Coat coat = Coat::walls;
    int facing = facing_none;  ///< or one of the ways round
    std::map<std::size_t, Primitive> of_surface;
};

int facing_number(const std::optional<Vector>& facing) {
    if (!facing) return facing_none;
    if (facing->z > 0.5) return facing_up;
    const double turn = std::atan2(facing->y, facing->x) / (2 * std::numbers::pi) * ways_round;
    return (static_cast<int>(std::lround(turn)) + ways_round) % ways_round;
}

std::vector<Node> nodes_of(const House& house, std::span<const GapIndex> marked, const Grid& grid, const Surfaces& surfaces) {
    std::map<std::pair<Coat, int>, Node> coats;
    std::map<GapIndex, Node> gaps;
    const Facings facings(house);
    for (std::size_t i = 0; i < house.parts.size(); ++i) {
        const Part& part = house.parts[i];
        const Coat coat = coat_of(part.layer);
        const int facing = facing_number(facings.of(part));
        Node& node = coats[{coat, facing}];
        node.coat = coat;
        node.facing = facing;
        const std::optional<TriangleMesh> plain = plain_plate(part.mesh);
        node.of_surface[surfaces.of_part[i]].add(plain ? *plain : part.mesh, grid, [](std::size_t) { return true; });
        std::vector<GapIndex> bounded = part.bounds;
        std::sort(bounded.begin(), bounded.end());
        bounded.erase(std::unique(bounded.begin(), bounded.end()), bounded.end());
        for (const GapIndex gap : bounded) {
            if (!gap.valid() || std::find(marked.begin(), marked.end(), gap) == marked.end()) continue;
            gaps[gap].gap = gap;
            gaps[gap].of_surface[0].add(part.mesh, grid, [&](std::size_t triangle) {
                return triangle < part.bounds.size() && part.bounds[triangle] == gap;
            });
        }
    }
    std::vector<Node> nodes;
    const auto keep = [&](Node& node) {
        std::erase_if(node.of_surface, [](const auto& entry) { return entry.second.corners.empty(); });
        if (!node.of_surface.empty()) nodes.push_back(std::move(node));
    };
    for (auto& [key, node] : coats) keep(node);
    for (auto& [gap, node] : gaps) keep(node);
    return nodes;
}

void put(std::string& bytes, std::uint32_t number, int count) {
    for (int i = 0; i < count; ++i) bytes += static_cast<char>(number >> (8 * static_cast<unsigned>(i)) & 0xFFU);
}

/// Writes the nodes as the two chunks of a file.
class PageGlb {
public:
    PageGlb(const std::vector<Node>& nodes, const Grid& grid, const Surfaces& surfaces)
        : nodes_(nodes), grid_(grid), surfaces_(surfaces) {}

    std::string bytes() {
        json_.begin_object();
        write_gltf_head(json_);
        for (const char* key : {"extensionsUsed", "extensionsRequired"})
            json_.key(key).begin_array().value("KHR_mesh_quantization").end_array();
        write_nodes();
        if (!nodes_.empty()) {  // empty arrays are not allowed
            write_meshes();
            write_gltf_materials(json_, surfaces_);
            write_accessors();
            write_gltf_buffer(json_, {points_.size(), point_bytes, corners_.size()});
        }
        json_.end_object();
        return glb_container(json_.text(), points_ + corners_);
    }

private:
    JsonWriter& number(const char* key, std::size_t value) { return json_.key(key).value(static_cast<std::int64_t>(value)); }
    void three(const char* key, const auto& values) {
        json_.key(key).begin_array();
        for (const auto each : values) json_.value(static_cast<double>(each));
        json_.end_array();
    }

    void write_nodes() {
        json_.key("nodes").begin_array().begin_object();
        three("translation", grid_.low);
        three("scale", std::array{grid_.step, grid_.step, grid_.step});
        if (!nodes_.empty()) {
            json_.key("children").begin_array();
            for (std::size_t i = 0; i < nodes_.size(); ++i) json_.value(static_cast<std::int64_t>(i) + 1);
            json_.end_array();
        }
        json_.end_object();
        for (std::size_t i = 0; i < nodes_.size(); ++i) {
            const Node& node = nodes_[i];
            json_.begin_object();
            number("mesh", i).key("extras").begin_object();
            if (node.gap) {
                number("gap", node.gap->value);
            } else {
                json_.key("coat").value(coat_word(node.coat));
                const double turn = node.facing * 2 * std::numbers::pi / ways_round;
                // Rounded, so that an eighth of a turn is the same text on every machine.
                const auto short_text = [](double value) { return std::round(value * 1e4) / 1e4; };
                if (node.facing == facing_up) three("facing", std::array{0.0, 1.0, 0.0});
                if (node.facing >= 0) three("facing", std::array{short_text(std::cos(turn)), 0.0, short_text(-std::sin(turn))});
            }
            json_.end_object().end_object();
        }
        json_.end_array();
    }

    void write_meshes() {
        json_.key("meshes").begin_array();
        std::size_t accessors = 0;
        for (const Node& node : nodes_) {
            json_.begin_object().key("primitives").begin_array();
            for (const auto& [surface, primitive] : node.of_surface) {
                json_.begin_object().key("attributes").begin_object();
                number("POSITION", accessors++).end_object();
                number("indices", accessors++);
                if (!node.gap) number("material", surface);
                json_.end_object();
            }
            json_.end_array().end_object();
        }
        json_.end_array();
    }

    void write_accessors() {
        json_.key("accessors").begin_array();
        for (const Node& node : nodes_) {
            for (const auto& [surface, primitive] : node.of_surface) {
                write_points(primitive);
                write_corners(primitive);
            }
        }
        json_.end_array();
    }

    void write_points(const Primitive& primitive) {
        Steps low = primitive.points.front(), high = low;
        json_.begin_object();
        number("bufferView", 0);
        number("byteOffset", points_.size());
        for (const Steps& steps : primitive.points) {
            for (std::size_t axis = 0; axis < 3; ++axis) {
                low.at(axis) = std::min(low.at(axis), steps.at(axis));
                high.at(axis) = std::max(high.at(axis), steps.at(axis));
                put(points_, steps.at(axis), 2);
            }
            put(points_, 0, 2);
        }
        json_.key("componentType").value(unsigned_short);
        number("count", primitive.points.size());
        json_.key("type").value("VEC3");
        three("min", low);
        three("max", high);
        json_.end_object();
    }

    void write_corners(const Primitive& primitive) {
        const bool is_short = primitive.points.size() < std::numeric_limits<std::uint16_t>::max();  // the last one is reserved
        json_.begin_object();
        number("bufferView", 1);
        number("byteOffset", corners_.size());
        for (const std::uint32_t corner : primitive.corners) put(corners_, corner, is_short ? 2 : 4);
        corners_.append((4 - corners_.size() % 4) % 4, '\0');
        json_.key("componentType").value(is_short ? unsigned_short : unsigned_int);
        number("count", primitive.corners.size());
        json_.key("type").value("SCALAR").end_object();
    }

    const std::vector<Node>& nodes_;
    const Grid& grid_;
    const Surfaces& surfaces_;
    std::string points_, corners_;
    JsonWriter json_;
};

}  // namespace

const char* coat_word(Coat coat) {
    constexpr std::array words{"roof", "walls", "framing", "linings", "fixtures", "ground"};
    return words.at(static_cast<std::size_t>(coat));
}

std::string page_model(const House& house, std::span<const GapIndex> marked) {
    const Grid grid(house);
    const Surfaces surfaces = surfaces_of(house.parts);
    const std::vector<Node> nodes = nodes_of(house, marked, grid, surfaces);
    return PageGlb(nodes, grid, surfaces).bytes();
}

}  // namespace seamward
