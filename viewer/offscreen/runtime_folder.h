// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QTemporaryDir>
#include <optional>

namespace seamward::viewer {

/// A folder of our own for the window system's files as long as the object lives, where the login gave none
/// (XDG_RUNTIME_DIR is not set); Qt says so on standard error otherwise. To be made before the application object.
class RuntimeFolder {
public:
    RuntimeFolder();
    ~RuntimeFolder();
    RuntimeFolder(const RuntimeFolder&) = delete;
    RuntimeFolder& operator=(const RuntimeFolder&) = delete;

private:
    std::optional<QTemporaryDir> own_;
};

}  // namespace seamward::viewer
