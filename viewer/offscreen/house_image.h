// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QString>
#include <optional>
#include <span>
#include <vector>

#include "layers/house_groups.h"
#include "layers/section.h"
#include "offscreen/sight.h"

namespace seamward::viewer {

/// What is drawn beside the house itself. Scene.
struct HouseImageContent {
    std::span<const Point> line;  ///< of the shown way
    std::span<const std::vector<Point>> other_lines;
    std::vector<Point> marks;  ///< gaps of the shown way
    /// A house that is cut to show a gap; nothing is faded then, and the faces of the gap are colored.
    struct Cut {
        GapIndex gap;
        CutPlane plane;
        std::span<const CutFace> faces;
    };
    std::optional<Cut> cut;
    std::vector<Point> asked;  ///< places of which it is asked how much of them is seen
    double unit = 1;           ///< the picture's unit of length in pixels
};

/// A house without any words.
struct HouseImage {
    QImage image;
    /// For each of the places asked for how much the layers before it let through, 0 to 1; 0 outside of the picture and behind
    /// what does not fade.
    std::vector<double> seen;
};

/// Needs a screen that OpenGL draws on. Throws BadPicture when OpenGL fails.
[[nodiscard]] HouseImage house_image(const House& house, const HouseFrame& frame, const HouseGroups& groups,
                                     const HouseImageContent& content, const Sight& sight);

/// "roof, near walls": which of the groups are drawn faded, as far as the house has them.
[[nodiscard]] QString faded_groups(const HouseGroups& groups);

}  // namespace seamward::viewer
