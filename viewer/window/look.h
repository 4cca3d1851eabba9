// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>

#include "document/preferences.h"

namespace seamward::viewer {

/// To be called before the application object is made: what the 3D picture needs of the graphics system.
void prepare_graphics();

/// Colors, style and font size of all windows, in English; numbers are read and written with a point whatever the locale.
void dress(QApplication& application);

/// Language, lengths, size of the letters and contrast as the preferences say, now and whenever they change: all windows get
/// QEvent::LanguageChange (also when only lengths changed), fonts of all widgets are scaled, colors are those of the set wanted
/// and all windows are painted again (QEvent::PaletteChange). The preferences must outlive the application's windows.
void wear(QApplication& application, Preferences& preferences);

}  // namespace seamward::viewer
