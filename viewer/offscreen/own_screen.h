// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

#include <optional>
#include <string>

namespace seamward::viewer {

/// A screen in memory (Xvfb) that this process and its children draw on, as long as the object lives: DISPLAY names it. To be
/// made and ended where no other thread reads the environment.
class OwnScreen {
public:
    /// Throws std::runtime_error when Xvfb is not installed, or does not come up within some seconds.
    OwnScreen(int width, int height);
    /// Ends Xvfb, waits for it, and puts DISPLAY back.
    ~OwnScreen();
    OwnScreen(const OwnScreen&) = delete;
    OwnScreen& operator=(const OwnScreen&) = delete;

private:
    void end() const;

    pid_t server_ = -1;
    std::optional<std::string> before_;  ///< DISPLAY as it was
};

/// Whether DISPLAY names a screen that this process may draw on with OpenGL.
[[nodiscard]] bool has_drawable_screen();

}  // namespace seamward::viewer
