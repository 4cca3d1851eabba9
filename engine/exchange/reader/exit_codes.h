// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace seamward {

// How seamward-reader ends. Whether the file was any good stands in its answer, not here.
constexpr int exit_code_done = 0;
constexpr int exit_code_wrong_start = 2;    ///< not started by read_model()
constexpr int exit_code_not_locked_in = 3;  ///< the system did not let it give up its rights
constexpr int exit_code_out_of_memory = 4;

}  // namespace seamward
