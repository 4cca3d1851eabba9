// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <sys/wait.h>

#include <array>
#include <cstdio>
#include <stdexcept>
#include <string>
#include <string_view>

#include "base/file_io.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {

/// A word as the shell passes it on unchanged.
inline std::string shell_word(std::string_view text) {
    std::string quoted = "'";
    for (const char c : text) quoted += c == '\'' ? std::string("'\\''") : std::string(1, c);
    return quoted + '\'';
}

/// What a program did.
struct Ran {
    int exit_code = -1;
    std::string out;
    std::string err;
};

/// Runs a shell command with nothing on its standard input; its standard output and error are kept apart.
inline Ran run_shell(const std::string& command) {
    const ScratchFolder scratch;
    const std::filesystem::path err = scratch.path() / "err";
    FILE* pipe = popen(("( " + command + " ) < /dev/null 2> " + shell_word(err.string())).c_str(), "r");
    if (pipe == nullptr) throw std::runtime_error("no pipe");
    Ran ran;
    std::array<char, 4096> block{};
    for (std::size_t n = 0; (n = fread(block.data(), 1, block.size(), pipe)) > 0;) ran.out.append(block.data(), n);
    const int status = pclose(pipe);
    ran.exit_code = WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status);
    ran.err = read_file(err, err.string(), 1ULL << 30);
    return ran;
}

}  // namespace seamward::test
