// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <functional>

#include "window/picture_canvas.h"

namespace seamward::viewer {

/// Writes the ride that the picture is on, at its speed, as an Ogg Theora film (.ogv), or, for a name that ends in .png, as a
/// picture for each frame, numbered. `go_on` is told the share that is done and says whether to go on; when not, nothing is left
/// behind. Returns what went wrong, in words; empty when nothing did. The window's thread, for as long as it takes to draw all
/// frames.
[[nodiscard]] QString write_film(const QString& path, PictureCanvas& canvas, const std::function<bool(double)>& go_on);

}  // namespace seamward::viewer
