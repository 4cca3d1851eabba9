// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <cstddef>
#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "base/run_context.h"

namespace seamward {

/// A program to run, with nothing of ours but what stands here: its standard input is empty, its environment bare.
struct ChildTask {
    std::filesystem::path program;
    std::vector<std::string> arguments;
    std::vector<int> descriptors;  ///< open files that it gets as 3, 4, ...
    std::size_t most_output = 0;   ///< bytes of standard output
    std::chrono::milliseconds most_time{0};
    /// Starts it without address randomization, where the system allows that: for a program whose results depend on where its
    /// memory lies. The price: who finds a hole in it knows the addresses. So only for what locks itself in before it reads.
    bool fixed_addresses = false;
};

enum class ChildEnd : std::uint8_t { exited, killed_by_signal, out_of_time, too_much_output, not_started };

struct ChildResult {
    ChildEnd end = ChildEnd::not_started;
    int code = 0;            ///< the exit code, the signal, or the error number of the start
    std::string output;      ///< its standard output
    std::string complaints;  ///< its standard error, at most 4096 bytes of it
};

/// Runs a program to its end or to its limits. Whatever happens, it is gone on return. Throws Cancelled.
[[nodiscard]] ChildResult run_child(const ChildTask& task, const RunContext& context);

}  // namespace seamward
