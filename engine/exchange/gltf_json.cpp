// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/gltf_json.h"

namespace seamward {

namespace {

constexpr std::int64_t array_buffer = 34962, element_array_buffer = 34963;  // numbers of the specification

JsonWriter& number(JsonWriter& json, const char* key, std::size_t value) {
    return json.key(key).value(static_cast<std::int64_t>(value));
}

}  // namespace

std::array<double, 3> y_up(const Point& p) { return {p.x, p.z, -p.y}; }

void write_gltf_head(JsonWriter& json) {
    json.key("asset").begin_object().key("version").value("2.0").key("generator").value("Seamward").end_object();
    json.key("scene").value(std::int64_t{0}).key("scenes").begin_array().begin_object();
    json.key("nodes").begin_array().value(std::int64_t{0}).end_array().end_object().end_array();
}

void write_gltf_materials(JsonWriter& json, const Surfaces& surfaces) {
    json.key("materials").begin_array();
    for (const Surface& surface : surfaces.list) {
        const Finish finish = finish_of(surface.layer, surface.material);
        json.begin_object().key("name").value(surface.name());
        json.key("pbrMetallicRoughness").begin_object().key("baseColorFactor").begin_array();
        for (const std::uint8_t byte : finish.color) json.value(linear_light(byte));
        json.value(finish.opaque).end_array();
        json.key("metallicFactor").value(finish.metallic).key("roughnessFactor").value(finish.rough).end_object();
        if (finish.opaque < 1) json.key("alphaMode").value("BLEND");
        json.end_object();
    }
    json.end_array();
}

void write_gltf_buffer(JsonWriter& json, const GltfBytes& bytes) {
    json.key("bufferViews").begin_array().begin_object();
    number(json, "buffer", 0);
    number(json, "byteOffset", 0);
    number(json, "byteLength", bytes.points);
    number(json, "byteStride", bytes.point_stride);
    json.key("target").value(array_buffer).end_object();
    json.begin_object();
    number(json, "buffer", 0);
    number(json, "byteOffset", bytes.points);
    number(json, "byteLength", bytes.corners);
    json.key("target").value(element_array_buffer).end_object().end_array();
    json.key("buffers").begin_array().begin_object();
    number(json, "byteLength", bytes.points + bytes.corners).end_object().end_array();
}

}  // namespace seamward
