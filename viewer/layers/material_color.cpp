// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/material_color.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string_view>

namespace seamward::viewer {

namespace {

struct Paint {
    std::string_view word;  ///< somewhere in the material
    QRgb color;
};

/// The first word that fits decides: special ones come before general ones.
constexpr std::array paints{
    Paint{"glass", 0xffb9d6e2},      Paint{"stucco", 0xffeadbc0},  Paint{"brick", 0xffc79077},    Paint{"stone", 0xffc9c1b2},
    Paint{"tile", 0xffc9a08c},       Paint{"shingle", 0xffa49a90}, Paint{"slate", 0xff949699},    Paint{"drywall", 0xfff6f2ea},
    Paint{"gypsum", 0xfff6f2ea},     Paint{"plaster", 0xfff3ede1}, Paint{"concrete", 0xffcbc6bc}, Paint{"block", 0xffc6bfb2},
    Paint{"cement", 0xffd3cfc4},     Paint{"mortar", 0xffcfc9bd},  Paint{"soil", 0xffd3cfae},     Paint{"earth", 0xffd3cfae},
    Paint{"ground", 0xffd3cfae},     Paint{"gravel", 0xffcfc6b3},  Paint{"fill", 0xffcdbf9e},     Paint{"sand", 0xffded2b4},
    Paint{"grass", 0xffcdd6ac},      Paint{"asphalt", 0xff9d958d}, Paint{"metal", 0xffb4bbc0},    Paint{"steel", 0xffb4bbc0},
    Paint{"alumin", 0xffc3c8cb},     Paint{"copper", 0xffc78f66},  Paint{"vinyl", 0xfff0eee8},    Paint{"pvc", 0xfff0eee8},
    Paint{"plastic", 0xffe8e6e0},    Paint{"rubber", 0xff6c6862},  Paint{"felt", 0xff8d8780},     Paint{"foam", 0xffefe3c4},
    Paint{"insulation", 0xffefd6c6}, Paint{"plywood", 0xffe3cca4}, Paint{"osb", 0xffe0c79b},      Paint{"sheathing", 0xffe3cca4},
    Paint{"lumber", 0xffe4c698},     Paint{"wood", 0xffe2c79d},    Paint{"siding", 0xffdfd3bd},
};

QRgb layer_color(Layer layer) {
    switch (layer) {
        case Layer::ground: return 0xffc9cfaa;
        case Layer::yard: return 0xffcdc6b8;
        case Layer::foundation: return 0xffcbc6bc;
        case Layer::framing: return 0xffe4c698;
        case Layer::cladding: return 0xffeadbc0;
        case Layer::roof: return 0xffbfa396;
        case Layer::eaves: return 0xffe6dcc8;
        case Layer::opening: return 0xffcfb08a;
        case Layer::interior: return 0xfff6f2ea;
        case Layer::fixture: break;
    }
    return 0xffb9bec0;
}

}  // namespace

QColor material_color(const std::string& material, Layer layer) {
    std::string word = material;
    std::transform(word.begin(), word.end(), word.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    if (layer == Layer::ground && word != "sand" && word != "gravel") return layer_color(layer);
    if (layer == Layer::interior && word.find("tile") != std::string::npos) return 0xffe4e8e4;  // glazed, of a bath
    const auto found = std::find_if(paints.begin(), paints.end(),
                                    [&](const Paint& paint) { return word.find(paint.word) != std::string::npos; });
    return found != paints.end() ? QColor(found->color) : QColor(layer_color(layer));
}

}  // namespace seamward::viewer
