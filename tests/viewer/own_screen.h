// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/types.h>

namespace seamward::viewer::test {

/// A screen in memory (Xvfb) that this process and its children draw on, as long as the object lives.
class OwnScreen {
public:
    /// Throws std::runtime_error when Xvfb does not start.
    OwnScreen();
    ~OwnScreen();
    OwnScreen(const OwnScreen&) = delete;
    OwnScreen& operator=(const OwnScreen&) = delete;

private:
    pid_t server_ = -1;
};

}  // namespace seamward::viewer::test
