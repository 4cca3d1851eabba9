// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>

#include "teach/spoken.h"

namespace seamward::viewer {

/// Whether a file is a drill: its first key is `seamward-drill`. Reads no more than its beginning; false when it cannot be read.
[[nodiscard]] bool is_drill_file(const QString& path);

/// What a list of drills says of one, without the job that it is about.
struct DrillHead {
    Spoken title;
    QString difficulty;  ///< in the language spoken
};

/// Nothing when the file is no drill, or does not parse.
[[nodiscard]] std::optional<DrillHead> drill_head(const QString& path);

}  // namespace seamward::viewer
