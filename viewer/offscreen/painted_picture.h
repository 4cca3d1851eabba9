// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QImage>
#include <QRectF>
#include <span>
#include <string>
#include <vector>

#include "layers/orbit_camera.h"
#include "offscreen/draw_picture.h"
#include "offscreen/picture_labels.h"

namespace seamward::viewer {

/// A picture and where its words stand, in units of `unit` pixels.
struct PaintedPicture {
    QImage image;
    double unit = 1;
    OrbitCamera camera;  ///< the eye that sees it
    std::vector<PlacedLabel> labels;
    std::vector<QRectF> taken;  ///< by the heading and the cards
};

/// The picture that draw_picture() writes. Needs an application object of Qt's and a screen that OpenGL draws on. Throws
/// BadPicture when OpenGL fails. `request.rank` and `request.closeup` must exist.
[[nodiscard]] PaintedPicture painted_picture(const House& house, const std::string& heading, std::span<const DrawnPath> paths,
                                             const PictureRequest& request);

}  // namespace seamward::viewer
