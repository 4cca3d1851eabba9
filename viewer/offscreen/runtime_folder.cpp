// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/runtime_folder.h"

#include <QDir>

namespace seamward::viewer {

namespace {

constexpr const char* variable = "XDG_RUNTIME_DIR";

}  // namespace

RuntimeFolder::RuntimeFolder() {
    if (!qEnvironmentVariableIsEmpty(variable)) return;
    own_.emplace(QDir::tempPath() + "/seamward-XXXXXX");  // only its owner may enter
    if (own_->isValid()) qputenv(variable, own_->path().toLocal8Bit());
}

RuntimeFolder::~RuntimeFolder() {
    if (own_) qunsetenv(variable);
}

}  // namespace seamward::viewer
