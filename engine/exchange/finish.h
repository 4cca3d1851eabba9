// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "base/solid.h"

namespace seamward {

/// How a surface looks in a picture. Chosen by eye to tell parts apart; no figures about the world.
struct Finish {
    std::array<std::uint8_t, 3> color{};  ///< red, green, blue as on a screen (sRGB)
    double opaque = 1;                    ///< 1: nothing shines through
    double rough = 0.9;                   ///< 0 a mirror, 1 chalk
    double metallic = 0;                  ///< 0 to 1
};

/// A byte of a screen's color (sRGB) as light, 0 to 1, to four digits: the same text whatever the last bit of std::pow.
[[nodiscard]] double linear_light(std::uint8_t byte);

/// The word for a layer in files: "cladding".
[[nodiscard]] const char* layer_word(Layer layer);

/// The finish of a substrate word; of one that is not known, the finish of the layer.
[[nodiscard]] Finish finish_of(Layer layer, const std::string& material);

/// A layer and a substrate word that occur together in a house.
struct Surface {
    Layer layer = Layer::framing;
    std::string material;

    friend bool operator==(const Surface&, const Surface&) = default;
    /// "cladding/stucco"
    [[nodiscard]] std::string name() const { return std::string(layer_word(layer)) + '/' + material; }
};

/// The surfaces of a house, each once in the order of its first part, and which of them each part has.
struct Surfaces {
    std::vector<Surface> list;
    std::vector<std::size_t> of_part;  ///< position in `list`
};

[[nodiscard]] Surfaces surfaces_of(std::span<const Part> parts);

/// What of a house is shown, faint or hidden together in a picture.
enum class Coat : std::uint8_t { roof, walls, framing, linings, fixtures, ground };

[[nodiscard]] Coat coat_of(Layer layer);

}  // namespace seamward
