// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/gltf.h"

#include <algorithm>
#include <array>
#include <bit>
#include <cmath>
#include <cstdint>
#include <limits>
#include <optional>
#include <utility>
#include <vector>

#include "base/json_writer.h"
#include "base/text.h"
#include "exchange/face_groups.h"
#include "exchange/finish.h"
#include "exchange/glb_container.h"
#include "exchange/gltf_json.h"

// Khronos Group, glTF 2.0 Specification, 2021 (ISO/IEC 12113:2022); the numbers below are its.

namespace seamward {

namespace {

constexpr std::int64_t float_component = 5126, unsigned_component = 5125;
constexpr std::int64_t point_bytes = 12, index_bytes = 4;

/// Middles of parts are multiples of this many meters: few enough bits for a float up to 16 km, fine enough to be the middle.
constexpr double middle_grid = 1.0 / 1024;

using Float3 = std::array<float, 3>;

void put(std::string& bytes, std::uint32_t word) {
    for (unsigned shift = 0; shift < 32; shift += 8) bytes += static_cast<char>((word >> shift) & 0xFFU);
}

struct Primitive {
    GapIndex gap;
    std::size_t first_index = 0, index_count = 0;  ///< among the indices of all parts
};

struct PartNumbers {
    std::array<double, 3> middle{};
    Float3 lowest{}, highest{};
    std::size_t first_point = 0, point_count = 0;  ///< among the points of all parts
    std::vector<Primitive> primitives;
};

/// The numbers of all parts; a part without triangles has none.
struct Numbers {
    std::string points, indices;
    std::vector<std::optional<PartNumbers>> of_part;
};

std::array<double, 3> middle_of(const std::vector<Point>& points) {
    std::array<double, 3> middle{};
    for (std::size_t axis = 0; axis < 3; ++axis) {
        const auto [low, high] = std::minmax_element(
            points.begin(), points.end(), [&](const Point& a, const Point& b) { return y_up(a).at(axis) < y_up(b).at(axis); });
        middle.at(axis) = std::round((y_up(*low).at(axis) + y_up(*high).at(axis)) / 2 / middle_grid) * middle_grid;
    }
    return middle;
}

PartNumbers add_numbers(const Part& part, Numbers& numbers) {
    PartNumbers own{.middle = middle_of(part.mesh.points),
                    .first_point = numbers.points.size() / point_bytes,
                    .point_count = part.mesh.points.size()};
    own.lowest.fill(std::numeric_limits<float>::max());
    own.highest.fill(std::numeric_limits<float>::lowest());
    for (const Point& point : part.mesh.points) {
        for (std::size_t axis = 0; axis < 3; ++axis) {
            const auto at = static_cast<float>(y_up(point).at(axis) - own.middle.at(axis));
            own.lowest.at(axis) = std::min(own.lowest.at(axis), at);
            own.highest.at(axis) = std::max(own.highest.at(axis), at);
            put(numbers.points, std::bit_cast<std::uint32_t>(at));
        }
    }
    for (const FaceGroup& group : face_groups(part)) {
        own.primitives.push_back({group.gap, numbers.indices.size() / index_bytes, 3 * group.triangles.size()});
        for (const std::size_t triangle : group.triangles) {
            for (const std::uint32_t corner : part.mesh.triangles[triangle]) put(numbers.indices, corner);
        }
    }
    return own;
}

Numbers numbers_of(std::span<const Part> parts) {
    Numbers numbers;
    for (const Part& part : parts) {
        if (part.mesh.triangles.empty())
            numbers.of_part.emplace_back();
        else
            numbers.of_part.emplace_back(add_numbers(part, numbers));
    }
    return numbers;
}

/// Writes the JSON chunk.
class Description {
public:
    Description(std::span<const Part> parts, const Survey& survey, const Numbers& numbers)
        : parts_(parts), survey_(survey), numbers_(numbers), surfaces_(surfaces_of(parts)) {}

    std::string text(const std::string& house_name) {
        json_.begin_object();
        write_gltf_head(json_);
        write_nodes(house_name);
        if (!numbers_.points.empty()) {  // empty arrays are not allowed
            write_meshes();
            write_gltf_materials(json_, surfaces_);
            write_accessors();
            write_gltf_buffer(json_, {numbers_.points.size(), point_bytes, numbers_.indices.size()});
        }
        json_.end_object();
        return json_.text();
    }

private:
    JsonWriter& number(const char* key, std::size_t value) { return json_.key(key).value(static_cast<std::int64_t>(value)); }
    JsonWriter& words(const char* key, const std::string& text) {
        return json_.key(key).value(is_utf8(text) ? text : printable(text));
    }
    template <class Three>
    void three(const char* key, const Three& numbers) {
        json_.key(key).begin_array();
        for (const auto each : numbers) json_.value(double{each});
        json_.end_array();
    }

    void write_nodes(const std::string& house_name) {
        json_.key("nodes").begin_array().begin_object();
        words("name", house_name);
        if (!parts_.empty()) {
            json_.key("children").begin_array();
            for (std::size_t i = 0; i < parts_.size(); ++i) json_.value(static_cast<std::int64_t>(i) + 1);
            json_.end_array();
        }
        json_.end_object();
        std::size_t meshes = 0;
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const Part& part = parts_[i];
            json_.begin_object();
            words("name", part.id);
            if (const std::optional<PartNumbers>& own = numbers_.of_part[i]) {
                number("mesh", meshes++);
                three("translation", own->middle);
            }
            json_.key("extras").begin_object();
            words("name", part.name);
            words("material", part.material);
            words("layer", layer_word(part.layer));
            json_.end_object().end_object();
        }
        json_.end_array();
    }

    void write_meshes() {
        json_.key("meshes").begin_array();
        std::size_t accessors = 0;
        for (std::size_t i = 0; i < parts_.size(); ++i) {
            const std::optional<PartNumbers>& own = numbers_.of_part[i];
            if (!own) continue;
            json_.begin_object();
            words("name", parts_[i].id);
            json_.key("primitives").begin_array();
            const std::size_t points = accessors++;
            for (const Primitive& primitive : own->primitives) {
                json_.begin_object().key("attributes").begin_object();
                number("POSITION", points).end_object();
                number("indices", accessors++);
                number("material", surfaces_.of_part[i]);
                if (primitive.gap.valid()) {
                    json_.key("extras").begin_object();
                    words("gap", survey_[primitive.gap].id).end_object();
                }
                json_.end_object();
            }
            json_.end_array().end_object();
        }
        json_.end_array();
    }

    /// For each part its points, then the indices of its primitives: the order in which write_meshes counts.
    void write_accessors() {
        json_.key("accessors").begin_array();
        for (const std::optional<PartNumbers>& own : numbers_.of_part) {
            if (!own) continue;
            write_accessor(0, own->first_point * point_bytes, float_component, own->point_count, "VEC3");
            three("min", own->lowest);
            three("max", own->highest);
            json_.end_object();
            for (const Primitive& primitive : own->primitives) {
                write_accessor(1, primitive.first_index * index_bytes, unsigned_component, primitive.index_count, "SCALAR");
                json_.end_object();
            }
        }
        json_.end_array();
    }

    void write_accessor(std::size_t view, std::size_t offset, std::int64_t component, std::size_t count, const char* type) {
        json_.begin_object();
        number("bufferView", view);
        number("byteOffset", offset);
        json_.key("componentType").value(component);
        number("count", count);
        json_.key("type").value(type);
    }

    std::span<const Part> parts_;
    const Survey& survey_;
    const Numbers& numbers_;
    Surfaces surfaces_;
    JsonWriter json_;
};

}  // namespace

std::string gltf_binary(std::span<const Part> parts, const Survey& survey, const std::string& house_name) {
    const Numbers numbers = numbers_of(parts);
    return glb_container(Description(parts, survey, numbers).text(house_name), numbers.points + numbers.indices);
}

}  // namespace seamward
