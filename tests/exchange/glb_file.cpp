// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/glb_file.h"

#include <algorithm>
#include <bit>
#include <cstdint>
#include <cstdlib>
#include <limits>
#include <stdexcept>
#include <utility>

#include "tests/support/document_text.h"

namespace seamward::test {

namespace {

void require(bool truth, const char* what) {
    if (!truth) throw std::runtime_error(what);
}

std::uint32_t word_at(std::string_view bytes, std::size_t at) {
    require(at + 4 <= bytes.size(), "the file ends early");
    const auto byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(bytes[at + i])); };
    return byte(0) | byte(1) << 8U | byte(2) << 16U | byte(3) << 24U;
}

std::string text_of(Node mapping, std::string_view key) {
    if (!mapping.present()) return "";
    const Node value = value_of(mapping, key);
    return value.present() ? std::string(value.text()) : "";
}

std::size_t number_of(Node mapping, std::string_view key) {
    const std::string text = text_of(mapping, key);
    require(!text.empty(), "a number is missing");
    return std::stoul(text);
}

double decimal(Node sequence, std::size_t i) { return std::strtod(std::string(item_of(sequence, i).text()).c_str(), nullptr); }

class Reader {
public:
    Reader(Node root, std::string_view binary) : root_(root), binary_(binary) {}

    GlbPart part(Node node) const {
        GlbPart part{.id = text_of(node, "name")};
        const Node extras = value_of(node, "extras");
        part.name = text_of(extras, "name");
        part.material = text_of(extras, "material");
        part.layer = text_of(extras, "layer");
        require(!value_of(node, "rotation").present() && !value_of(node, "matrix").present(), "a node turns");
        if (!value_of(node, "mesh").present()) return part;
        const Node primitives = value_of(item("meshes", number_of(node, "mesh")), "primitives");
        const std::size_t points = number_of(value_of(item_of(primitives, 0), "attributes"), "POSITION");
        read_points(points, value_of(node, "translation"), part);
        primitives.for_each_item([&](Node primitive) {
            require(number_of(value_of(primitive, "attributes"), "POSITION") == points, "points are not shared");
            part.primitives.push_back({.gap = text_of(value_of(primitive, "extras"), "gap"),
                                       .material = text_of(item("materials", number_of(primitive, "material")), "name")});
            std::vector<std::uint32_t> corners;
            for_each_word(number_of(primitive, "indices"), "5125", 1, [&](std::uint32_t word) { corners.push_back(word); });
            for (std::size_t i = 0; i + 2 < corners.size(); i += 3)
                part.primitives.back().triangles.push_back({corners[i], corners[i + 1], corners[i + 2]});
        });
        return part;
    }

private:
    Node item(const char* list, std::size_t i) const { return item_of(value_of(root_, list), i); }

    template <class Visit>
    void for_each_word(std::size_t accessor_number, const char* component, std::size_t width, Visit visit) const {
        const Node accessor = item("accessors", accessor_number);
        require(text_of(accessor, "componentType") == component, "another type of number");
        const Node view = item("bufferViews", number_of(accessor, "bufferView"));
        const std::string start = text_of(view, "byteOffset");
        const std::size_t begin = (start.empty() ? 0 : std::stoul(start)) + number_of(accessor, "byteOffset");
        for (std::size_t i = 0; i < number_of(accessor, "count") * width; ++i) visit(word_at(binary_, begin + 4 * i));
    }

    void read_points(std::size_t accessor, Node translation, GlbPart& part) const {
        std::vector<double> floats;
        for_each_word(accessor, "5126", 3, [&](std::uint32_t word) { floats.push_back(double{std::bit_cast<float>(word)}); });
        for (std::size_t axis = 0; axis < 3; ++axis) {
            double low = std::numeric_limits<double>::infinity(), high = -low;
            for (std::size_t i = axis; i < floats.size(); i += 3) {
                low = std::min(low, floats[i]);
                high = std::max(high, floats[i]);
            }
            part.found.at(axis) = low;
            part.found.at(axis + 3) = high;
            part.stated.at(axis) = decimal(value_of(item("accessors", accessor), "min"), axis);
            part.stated.at(axis + 3) = decimal(value_of(item("accessors", accessor), "max"), axis);
        }
        for (std::size_t i = 0; i + 2 < floats.size(); i += 3) {
            const double x = floats[i] + decimal(translation, 0);
            const double y = floats[i + 1] + decimal(translation, 1);
            const double z = floats[i + 2] + decimal(translation, 2);
            part.points.push_back({x, -z, y});
        }
    }

    Node root_;
    std::string_view binary_;
};

}  // namespace

TriangleMesh GlbPart::mesh() const {
    TriangleMesh mesh{points, {}};
    for (const GlbPrimitive& primitive : primitives)
        mesh.triangles.insert(mesh.triangles.end(), primitive.triangles.begin(), primitive.triangles.end());
    return mesh;
}

GlbFile read_glb(std::string_view bytes) {
    require(bytes.substr(0, 4) == "glTF" && word_at(bytes, 4) == 2, "no GLB of version 2");
    require(word_at(bytes, 8) == bytes.size(), "its length is wrong");
    const std::size_t json_size = word_at(bytes, 12);
    require(bytes.substr(16, 4) == "JSON" && json_size % 4 == 0, "no JSON chunk");
    std::string_view binary = bytes.substr(20 + json_size);
    if (!binary.empty()) {
        require(word_at(binary, 0) == binary.size() - 8 && binary.substr(4, 4) == std::string_view("BIN\0", 4),
                "no binary chunk");
        binary.remove_prefix(8);
    }
    GlbFile file{.json = parse_json(bytes.substr(20, json_size), "GLB")};
    const Reader reader(file.json.root(), binary);
    std::size_t at = 0;
    value_of(file.json.root(), "nodes").for_each_item([&](Node node) {
        if (at++ == 0)
            file.house = text_of(node, "name");
        else
            file.parts.push_back(reader.part(node));
    });
    return file;
}

}  // namespace seamward::test
