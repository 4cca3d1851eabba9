// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>

namespace seamward::viewer {

/// To be called before the application object is made: what the 3D picture needs of the graphics system.
void prepare_graphics();

/// Colors, style and font size of all windows; numbers are read and written with a point whatever the locale.
void dress(QApplication& application);

}  // namespace seamward::viewer
