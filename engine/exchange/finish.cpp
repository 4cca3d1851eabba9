// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/finish.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace seamward {

namespace {

struct Row {
    std::string_view word;
    Finish finish;
};

constexpr std::array by_material{
    Row{"aluminum", {{190, 193, 196}, 1, 0.4, 0.7}},
    Row{"asphalt", {{84, 82, 80}}},
    Row{"block", {{168, 166, 160}}},
    Row{"brick", {{150, 84, 64}}},
    Row{"concrete", {{158, 156, 150}}},
    Row{"copper", {{186, 118, 78}, 1, 0.4, 0.7}},
    Row{"drywall", {{236, 233, 226}}},
    Row{"foam", {{240, 222, 170}}},
    Row{"glass", {{196, 220, 228}, 0.35, 0.1}},
    Row{"gravel", {{166, 154, 138}, 1, 1}},
    Row{"insulation", {{236, 188, 196}, 1, 1}},
    Row{"metal", {{150, 155, 160}, 1, 0.5, 0.6}},
    Row{"osb", {{196, 160, 110}}},
    Row{"plywood", {{200, 168, 120}}},
    Row{"pvc", {{240, 240, 238}, 1, 0.4}},
    Row{"rubber", {{52, 52, 54}}},
    Row{"shingle", {{92, 88, 84}, 1, 1}},
    Row{"soil", {{122, 98, 74}, 1, 1}},
    Row{"steel", {{140, 144, 150}, 1, 0.5, 0.7}},
    Row{"stone", {{148, 142, 132}}},
    Row{"stucco", {{216, 198, 168}, 1, 1}},
    Row{"tile", {{182, 104, 76}, 1, 0.7}},
    Row{"vinyl", {{232, 230, 222}, 1, 0.5}},
    Row{"wood", {{178, 138, 96}}},
};

constexpr std::array<Finish, 10> by_layer{{
    {{134, 112, 88}, 1, 1},     // ground
    {{152, 160, 120}, 1, 1},    // yard
    {{158, 156, 150}},          // foundation
    {{178, 138, 96}},           // framing
    {{216, 198, 168}},          // cladding
    {{150, 96, 78}},            // roof
    {{206, 196, 180}},          // eaves
    {{226, 226, 222}, 1, 0.5},  // opening
    {{236, 233, 226}},          // interior
    {{160, 176, 190}, 1, 0.5},  // fixture
}};

}  // namespace

double linear_light(std::uint8_t byte) {
    const double value = byte / 255.0;
    const double light = value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    return std::round(light * 1e4) / 1e4;
}

const char* layer_word(Layer layer) {
    constexpr std::array words{"ground", "yard",  "foundation", "framing",  "cladding",
                               "roof",   "eaves", "opening",    "interior", "fixture"};
    return words.at(static_cast<std::size_t>(layer));
}

Finish finish_of(Layer layer, const std::string& material) {
    const auto row =
        std::find_if(by_material.begin(), by_material.end(), [&](const Row& candidate) { return candidate.word == material; });
    return row != by_material.end() ? row->finish : by_layer.at(static_cast<std::size_t>(layer));
}

Surfaces surfaces_of(std::span<const Part> parts) {
    Surfaces surfaces;
    for (const Part& part : parts) {
        const Surface surface{part.layer, part.material};
        const auto found = std::find(surfaces.list.begin(), surfaces.list.end(), surface);
        surfaces.of_part.push_back(static_cast<std::size_t>(found - surfaces.list.begin()));
        if (found == surfaces.list.end()) surfaces.list.push_back(surface);
    }
    return surfaces;
}

Coat coat_of(Layer layer) {
    switch (layer) {
        case Layer::ground:
        case Layer::yard:
        case Layer::foundation: return Coat::ground;
        case Layer::framing: return Coat::framing;
        case Layer::cladding:
        case Layer::opening: return Coat::walls;
        case Layer::roof:
        case Layer::eaves: return Coat::roof;
        case Layer::interior: return Coat::linings;
        case Layer::fixture: break;
    }
    return Coat::fixtures;
}

}  // namespace seamward
