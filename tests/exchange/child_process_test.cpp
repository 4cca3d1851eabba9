// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/child_process.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/personality.h>
#include <sys/wait.h>
#include <unistd.h>

#include <cerrno>
#include <thread>

#include "tests/exchange/fixed_addresses.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

using std::chrono::milliseconds;
using Clock = std::chrono::steady_clock;

ChildTask shell(const std::string& command, milliseconds most_time = milliseconds(20'000)) {
    return {.program = "/bin/sh", .arguments = {"-c", command}, .most_output = 1000, .most_time = most_time};
}

/// Nothing that we started is left, not even dead and not waited for.
void expect_no_children() {
    EXPECT_EQ(waitpid(-1, nullptr, WNOHANG), -1);
    EXPECT_EQ(errno, ECHILD);
}

TEST(ChildProcess, GivesOutputComplaintsAndExitCode) {
    const ChildResult result = run_child(shell("echo out; echo err >&2; exit 7"), RunContext());
    EXPECT_EQ(result.end, ChildEnd::exited);
    EXPECT_EQ(result.code, 7);
    EXPECT_EQ(result.output, "out\n");
    EXPECT_EQ(result.complaints, "err\n");
    expect_no_children();
}

TEST(ChildProcess, HandsOverNothingButWhatIsListed) {
    const ScratchFolder folder;
    const int listed = open(folder.write("listed", "content").c_str(), O_RDONLY);
    const int other = open("/dev/null", O_RDONLY | O_CLOEXEC);
    ChildTask task = shell("cat <&3; cat; ls /proc/self/fd | wc -l; env | grep -v '^PWD=\\|^_=\\|^SHLVL='; trap");
    task.descriptors = {listed};
    const ChildResult result = run_child(task, RunContext());
    EXPECT_EQ(result.output, "content5\nLC_ALL=C\n");  // 0 to 3, and the one that lists them
    close(listed);
    close(other);
}

TEST(ChildProcess, FixesAddressesOfThatProgramOnly) {
    if (!may_fix_addresses()) GTEST_SKIP() << "the system does not allow it";
    const int before = personality(0xFFFFFFFF);
    ChildTask task = shell("cat /proc/self/personality");
    const std::string as_ours = run_child(task, RunContext()).output;
    task.fixed_addresses = true;
    const std::string fixed = run_child(task, RunContext()).output;
    EXPECT_NE(std::stoul(fixed, nullptr, 16) & ADDR_NO_RANDOMIZE, 0U);
    EXPECT_EQ(personality(0xFFFFFFFF), before);
    task.fixed_addresses = false;
    EXPECT_EQ(run_child(task, RunContext()).output, as_ours);
}

TEST(ChildProcess, EndsWhatTakesTooLong) {
    const auto begin = Clock::now();
    const ChildResult result = run_child(shell("sleep 60", milliseconds(200)), RunContext());
    EXPECT_EQ(result.end, ChildEnd::out_of_time);
    EXPECT_LT(Clock::now() - begin, milliseconds(5000));
    const ChildTask deaf = shell("exec >&- 2>&-; exec sleep 60", milliseconds(200));
    EXPECT_EQ(run_child(deaf, RunContext()).end, ChildEnd::out_of_time);
    expect_no_children();
}

TEST(ChildProcess, EndsWhatTalksTooMuch) {
    EXPECT_EQ(run_child(shell("exec cat /dev/zero"), RunContext()).end, ChildEnd::too_much_output);
    const ChildResult result = run_child(shell("head -c 100000 /dev/zero >&2; echo done"), RunContext());
    EXPECT_EQ(result.output, "done\n");
    EXPECT_EQ(result.complaints.size(), 4096U);
    expect_no_children();
}

TEST(ChildProcess, TellsSignals) {
    const ChildResult result = run_child(shell("kill -SEGV $$"), RunContext());
    EXPECT_EQ(result.end, ChildEnd::killed_by_signal);
    EXPECT_EQ(result.code, SIGSEGV);
}

TEST(ChildProcess, TellsWhatDoesNotStart) {
    const ChildResult result = run_child({.program = "/no/such/program", .most_time = milliseconds(1000)}, RunContext());
    EXPECT_EQ(result.end, ChildEnd::not_started);
    EXPECT_EQ(result.code, ENOENT);
    expect_no_children();
}

TEST(ChildProcess, ACancelEndsIt) {
    RunContext context;
    std::thread canceler([&] {
        std::this_thread::sleep_for(milliseconds(100));
        context.cancel();
    });
    const auto begin = Clock::now();
    EXPECT_THROW((void)run_child(shell("exec sleep 60"), context), Cancelled);
    EXPECT_LT(Clock::now() - begin, milliseconds(5000));
    canceler.join();
    expect_no_children();
}

}  // namespace
}  // namespace seamward::test
