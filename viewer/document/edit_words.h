// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "job_file/job.h"
#include "job_file/job_edits.h"

namespace seamward::viewer {

/// What an edit changes, for menus: "width of “hose bibb, north wall”". Names come from the job, where it has them.
[[nodiscard]] QString edit_words(const Edit& edit, const Job& job);

}  // namespace seamward::viewer
