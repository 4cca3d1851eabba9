// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/document.h"
#include "base/survey.h"
#include "job_file/id_index.h"

namespace seamward {

/// Reads one entry of the list of gaps. Faults go to `diagnostics`; what comes back is then not to be used.
[[nodiscard]] Gap read_gap(Node node, const IdIndex& spaces, Diagnostics& diagnostics);

}  // namespace seamward
