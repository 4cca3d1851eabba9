// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>

namespace seamward::viewer {

/// Why no picture was made.
struct ScreenshotFault {
    enum class Of { input, usage, program };
    QString text;  ///< empty: the picture was made
    Of of = Of::input;
};

/// Opens a window of `size` pixels with a job in it, chooses a way in (from 1) and saves what it shows as a PNG. Runs the
/// event loop.
[[nodiscard]] ScreenshotFault take_screenshot(const QString& job, int way, const QString& file, QSize size);

}  // namespace seamward::viewer
