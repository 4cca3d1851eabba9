// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <variant>

#include "sweep/work_off.h"

namespace seamward {

/// The signal that ended a program.
struct DiedOf {
    int signal = 0;
};

/// Does one lot in a process of its own, a copy of this one, so that a lot which ends the program ends that one only. It
/// ends when the thread that called this does. Throws Cancelled when the work is called off meanwhile. Not to be called while
/// other threads work.
[[nodiscard]] std::variant<LotRow, DiedOf> do_lot_apart(const std::string& name, const LotDoer& doer, const RunContext& context);

}  // namespace seamward
