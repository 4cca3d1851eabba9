// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "job_file/job_edits.h"

namespace seamward::viewer {

/// What an edit changes, for menus: "width of “hose bibb, north wall”". Names come from the survey, where it has them.
[[nodiscard]] QString edit_words(const Edit& edit, const Survey& survey);

}  // namespace seamward::viewer
