// SPDX-License-Identifier: GPL-3.0-or-later
// How seamward-reader gives up what reading a file does not need, before it looks at a byte of it.
#pragma once

#include <cstdint>

namespace seamward {

/// Descriptor of the answer once keep_descriptors() was called; standard output then goes where standard error goes.
constexpr int answer_descriptor = 5;
constexpr int model_descriptor = 3, folder_descriptor = 4;

/// Moves the answer's pipe away from standard output, where importers chat, and closes all that was not handed over.
[[nodiscard]] bool keep_descriptors();

/// Limits of memory and processor time, no files written, no core, few descriptors; gone when its parent is gone.
[[nodiscard]] bool limit_resources(std::uint64_t memory_bytes, std::uint64_t cpu_seconds);

/// From here on the process can compute, read what is open, and write to the answer, standard output and standard error.
/// Every other call to the system fails with EPERM: opening files, sockets, programs, processes, signals to others, memory
/// that can be executed. Whether the system agreed.
[[nodiscard]] bool forbid_the_rest();

}  // namespace seamward
