// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

#include "network/network.h"
#include "paths/entry_path.h"

namespace seamward::test {

/// Yen's algorithm as in the textbook: for every deviation from every path told, a Dijkstra whose labels are the sorted
/// lists of widths. Shares no code with the engine's search. For networks whose widths all differ.
[[nodiscard]] std::vector<EntryPath> textbook_yen(const Survey& survey, const Network& network, const Roles& roles,
                                                  std::size_t k);

}  // namespace seamward::test
