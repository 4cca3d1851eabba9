// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <vector>

#include "base/document.h"
#include "base/survey.h"
#include "job_file/id_index.h"

namespace seamward {

/// Reads one entry of the list of gaps. Faults go to `diagnostics`; what comes back is then not to be used. `through`: where to
/// put the way through it, if anybody wants that; left as it is when the entry has none.
[[nodiscard]] Gap read_gap(Node node, const IdIndex& spaces, Diagnostics& diagnostics, std::vector<Point>* through = nullptr);

/// What a job says anew of a gap of its house: an entry of the list of gaps without `between`.
struct GapUpdate {
    Place place;
    Node id;
    std::optional<double> width;  ///< meters
    const char* shape = nullptr;  ///< the word that the width stood under
    std::optional<Evidence> evidence;
    std::optional<Duty> duty;
    std::optional<Closing> closing;
    std::optional<std::string> note;
    std::optional<std::string> photo;
};

[[nodiscard]] GapUpdate read_gap_update(Node node, Diagnostics& diagnostics);

}  // namespace seamward
