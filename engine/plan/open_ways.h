// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "paths/entry_path.h"
#include "plan/closing_problem.h"

namespace seamward {

/// A way in that is left open: the widest, of equally wide ones one with the fewest gaps.
struct LeftWay {
    EntryPath path;
    double pinch = 0;      ///< meters
    std::size_t pest = 0;  ///< position in ClosingProblem::pests
};

/// The widest way in that is open to any animal once `picks` are done. Nothing: there is none.
[[nodiscard]] std::optional<LeftWay> widest_way(const ClosingProblem& problem, std::span<const Pick> picks);

/// For every number of picks done, from the first on, the pinch of the widest way still open, in meters; 0 when there is none. A
/// way is looked for anew only when the pick before lies on it.
[[nodiscard]] std::vector<double> pinches_after_each(const ClosingProblem& problem, std::span<const Pick> picks);

/// The spaces along gaps that follow each other from a start. Throws std::logic_error when they do not.
[[nodiscard]] EntryPath path_along(const Survey& survey, std::span<const GapIndex> gaps);

}  // namespace seamward
