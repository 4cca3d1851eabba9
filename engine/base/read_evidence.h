// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/record.h"
#include "base/survey.h"

namespace seamward {

/// The value of the key `evidence` of a gap: how its width came to be known. Unstated when there is none.
[[nodiscard]] Evidence read_evidence(const Record& record, Diagnostics& diagnostics);

/// The value of the key `closing` of a gap: a cost and perhaps what it is for, one of `treatments`; or the reason why never.
[[nodiscard]] Closing read_closing(const Record& record, Words treatments, Diagnostics& diagnostics);

}  // namespace seamward
