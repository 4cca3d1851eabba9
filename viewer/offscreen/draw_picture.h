// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <filesystem>
#include <optional>
#include <span>
#include <stdexcept>
#include <string>
#include <vector>

#include "house/house.h"
#include "layers/house_way.h"
#include "paths/trace.h"

namespace seamward::viewer {

/// A picture that cannot be made; what() says why and what helps, in one line.
struct BadPicture : std::runtime_error {
    using std::runtime_error::runtime_error;
};

/// What to draw, and where to.
struct PictureRequest {
    /// From where the house is seen. Radians.
    struct View {
        double azimuth = 0;    ///< of the eye as seen from the house, from east (x) toward north (y)
        double elevation = 0;  ///< of the eye above the horizon, 0.1 to 1.5
    };

    static constexpr int least_width = 640, least_height = 480, most_width = 4096, most_height = 4096;

    std::filesystem::path file;  ///< ends in .png; replaced when it is there
    int width = 1600, height = 1100;
    std::size_t rank = 1;             ///< which of the paths is shown, from 1; the five best others are drawn thin
    bool more_ways = false;           ///< there are more ways in than those given
    std::string animals;              ///< whose ways these are, for people: "house mouse"; empty: anything's
    std::optional<View> view;         ///< nothing: from where the shown way comes
    bool words = true;                ///< without: the house and the line of the way alone, as large as there is room
    std::optional<GapIndex> closeup;  ///< nothing: all of the house; otherwise this gap, cut open, from close by
};

/// Draws a described house and its ways in, and writes it as a PNG; `heading` stands above it. Without paths: the house with what
/// is closed, and that no way in is open. Starts Xvfb for as long as it takes where DISPLAY names no screen that can be drawn on.
/// To be called where no other thread reads the environment. Throws BadPicture, and leaves nothing behind then.
void draw_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths,
                  const PictureRequest& request);

}  // namespace seamward::viewer
