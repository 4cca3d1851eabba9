// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/run_context.h"

namespace seamward {

/// While it lives, the first Ctrl-C (or a polite kill) cancels the work instead of ending the program; a second one ends it. One
/// at a time.
class CancelOnSignal {
public:
    explicit CancelOnSignal(RunContext& context);
    ~CancelOnSignal();
    CancelOnSignal(const CancelOnSignal&) = delete;
    CancelOnSignal& operator=(const CancelOnSignal&) = delete;

    /// The signal that came, or 0.
    [[nodiscard]] static int signal_seen();
};

/// Ends the program as if the signal had not been caught, which is what shells look for.
void end_by_signal(int signal);

}  // namespace seamward
