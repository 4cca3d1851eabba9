// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>

namespace seamward::viewer {

/// Calls `row` for each row from 0 to before `rows`, on all processors; returns when all are done. `row` must not throw, and must
/// write nothing but what belongs to its row.
void for_rows(int rows, const std::function<void(int)>& row);

}  // namespace seamward::viewer
