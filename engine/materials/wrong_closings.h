// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward {

/// A gap that was closed with what must not be there.
struct WrongClosing {
    GapIndex gap;
    std::string with;         ///< id of a treatment; empty where the job does not say
    bool stays_open = false;  ///< nothing may close it; otherwise something else than this may
    Message why, source;      ///< of the ruling
};

/// The closings that hold and that the ruling on the gap, as it was found, does not allow. One of an unknown kind counts as a
/// full closing, and is wrong only where no full closing is allowed; a mesh is not wrong for being too coarse. O(closings *
/// rows).
[[nodiscard]] std::vector<WrongClosing> wrong_closings(const Job& job);

/// `louver, garage, is written down as closed. It must stay open: an appliance breathes here. Open it again`
[[nodiscard]] Message wrong_closing_text(const Survey& survey, const WrongClosing& wrong);

}  // namespace seamward
