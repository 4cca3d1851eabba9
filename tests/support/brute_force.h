// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <span>
#include <string>
#include <vector>

#include "catalog/tables.h"
#include "paths/entry_path.h"

namespace seamward::test {

/// A second opinion that shares no code with the engine's search: every entry path, found by walking on from each
/// start in all ways, sorted by the order of docs/commands.md written down anew. For surveys of a few gaps only.
[[nodiscard]] std::vector<EntryPath> all_paths(const Survey& survey, std::span<const SpaceIndex> to,
                                               const std::function<bool(const Gap&)>& counts);

/// The pest rule written down anew, in millimeters.
[[nodiscard]] bool gets_through(const Gap& gap, const Pest& pest, bool with_plus_minus);

/// `yard>screed>wall>sink>kitchen`, for messages.
[[nodiscard]] std::string text(const Survey& survey, const EntryPath& path);

}  // namespace seamward::test
