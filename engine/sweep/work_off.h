// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <functional>
#include <optional>
#include <string>

#include "base/run_context.h"
#include "sweep/lot_row.h"

namespace seamward {

/// Does one lot.
using LotDoer = std::function<LotRow(const std::string& name, const RunContext& context)>;

/// Does lots on so many threads until `next` has no more: a few more lots are at hand than there are threads, so that memory
/// stays flat. `next` and `done` are called by one thread at a time each. What either throws comes out here.
void work_off(unsigned threads, const std::function<std::optional<std::string>()>& next, const LotDoer& doer,
              const std::function<void(LotRow)>& done, const RunContext& context);

}  // namespace seamward
