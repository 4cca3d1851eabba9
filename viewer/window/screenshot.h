// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QSize>
#include <QString>
#include <string>

namespace seamward::viewer {

/// Why no picture was made.
struct ScreenshotFault {
    enum class Of { input, usage, program };
    QString text;  ///< empty: the picture was made
    Of of = Of::input;
};

/// What to take a picture of.
struct ScreenshotRequest {
    QString job;                ///< file
    std::string animal;         ///< id of an animal of the job; empty: all
    std::string room;           ///< id of a living space of the job; empty: all
    int way = 1;                ///< by its rank, from 1
    std::string page = "ways";  ///< what is on the left: `ways`, `closings` or `survey`
    QString file;               ///< PNG to write
    QSize size;                 ///< pixels
};

/// Opens a window of that size with the job in it, chooses animal, room and way in and saves what it shows as a PNG. Runs
/// the event loop.
[[nodiscard]] ScreenshotFault take_screenshot(const ScreenshotRequest& request);

}  // namespace seamward::viewer
