// SPDX-License-Identifier: GPL-3.0-or-later
// What the program writes on a terminal: a pseudo-terminal of the test's own.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <pty.h>
#include <sys/wait.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <string>

#include "tool/console.h"

namespace seamward::test {
namespace {

/// The output of `seamward trace` of a job of tests/tool/jobs on a terminal of so many columns.
std::string on_terminal(const std::string& job, unsigned short columns, const char* no_color) {
    const std::string path = std::string(SEAMWARD_SOURCE_FOLDER) + "/" + job;
    winsize size{};
    size.ws_row = 24;
    size.ws_col = columns;
    int terminal = -1;
    const pid_t child = forkpty(&terminal, nullptr, nullptr, &size);
    if (child == 0) {
        if (no_color != nullptr)
            setenv("NO_COLOR", no_color, 1);
        else
            unsetenv("NO_COLOR");
        execl(SEAMWARD_PROGRAM, "seamward", "trace", path.c_str(), static_cast<char*>(nullptr));
        _exit(127);
    }
    std::string text;
    std::array<char, 4096> block{};
    for (ssize_t n = 0; (n = read(terminal, block.data(), block.size())) > 0;)
        text.append(block.data(), static_cast<std::size_t>(n));
    close(terminal);
    int status = 0;
    waitpid(child, &status, 0);
    EXPECT_TRUE(WIFEXITED(status) && WEXITSTATUS(status) == 0) << text;
    return text;
}

std::size_t longest_line(const std::string& text) {
    std::size_t longest = 0;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find_first_of("\r\n", begin), text.size());
        longest = std::max(longest, letters(std::string_view(text).substr(begin, end - begin)));
        begin = end + 1;
    }
    return longest;
}

/// Some containers have no pseudo-terminals.
class Terminal : public testing::Test {
protected:
    void SetUp() override {
        const int terminal = posix_openpt(O_RDWR | O_NOCTTY);
        const bool usable = terminal >= 0 && grantpt(terminal) == 0 && unlockpt(terminal) == 0 && ptsname(terminal) != nullptr &&
                            access(ptsname(terminal), R_OK) == 0;
        if (terminal >= 0) close(terminal);
        if (!usable) GTEST_SKIP() << "this system has no pseudo-terminals (is /dev/pts mounted?)";
    }
};

TEST_F(Terminal, ShowsHeadingsInBold) {
    EXPECT_NE(on_terminal("scenarios/demo.yaml", 100, nullptr).find("\x1b[1m"), std::string::npos);
}

/// https://no-color.org: when it is set and not empty.
TEST_F(Terminal, ShowsNoStylesWhenNoColorIsSet) {
    EXPECT_EQ(on_terminal("scenarios/demo.yaml", 100, "1").find('\x1b'), std::string::npos);
    EXPECT_EQ(on_terminal("tests/tool/jobs/shut.yaml", 100, "1").find('\x1b'), std::string::npos);
}

TEST_F(Terminal, ShowsStylesWhenNoColorIsEmpty) {
    EXPECT_NE(on_terminal("scenarios/demo.yaml", 100, "").find("\x1b[1m"), std::string::npos);
}

TEST_F(Terminal, KeepsLinesWithinItsColumns) {
    for (const unsigned short columns : std::to_array<unsigned short>({80, 100, 120, 160})) {
        EXPECT_LE(longest_line(on_terminal("scenarios/demo.yaml", columns, "1")), columns) << columns;
    }
}

}  // namespace
}  // namespace seamward::test
