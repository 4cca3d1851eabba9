// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/model_kinds.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "base/phrases.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 10> kinds{"gltf", "glb", "obj", "stl", "ply", "3ds", "dae", "fbx", "dxf", "ifc"};

}  // namespace

std::string model_kind(const std::filesystem::path& path) {
    std::string kind = path.extension().string();
    if (!kind.empty()) kind.erase(0, 1);
    for (char& c : kind) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return kind;
}

bool is_model_name(const std::filesystem::path& path) {
    return std::find(kinds.begin(), kinds.end(), model_kind(path)) != kinds.end();
}

std::string all_model_kinds() {
    std::vector<std::string> names;
    for (const std::string_view kind : kinds) names.push_back('.' + std::string(kind));
    return listed(names);
}

}  // namespace seamward
