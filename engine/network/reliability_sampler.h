// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "network/reliability_graph.h"

namespace seamward::reliability {

/// The answer from random samples; the slopes only when asked for. O(samples * edges).
[[nodiscard]] Answer sample(const Graph& graph, const Tape& tape, const ReliabilitySettings& settings, bool with_slopes);

}  // namespace seamward::reliability
