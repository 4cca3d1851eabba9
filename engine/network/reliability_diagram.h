// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>

#include "network/reliability_graph.h"

namespace seamward::reliability {

/// Sorts the edges and reads the answer off their decision diagram. Nothing when that needs more than `most_states`.
[[nodiscard]] std::optional<Answer> answer_by_diagram(Graph& graph, const Tape& tape, std::size_t most_states);

}  // namespace seamward::reliability
