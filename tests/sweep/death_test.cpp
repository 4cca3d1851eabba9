// SPDX-License-Identifier: GPL-3.0-or-later
// A lot that ends the program: the next run finds out which it is, and goes on without it.
#include <gtest/gtest.h>
#include <poll.h>
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <array>
#include <csignal>
#include <cstdlib>

#include "sweep/sweep.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

struct Lots {
    Lots() {
        for (int i = 10; i < 50; ++i) {
            files.names.push_back(std::to_string(i) + ".yaml");
            folder.write(files.names.back(), "seamward: 1\n");
        }
        files.folder = folder.path();
    }
    ScratchFolder folder;
    LotFiles files;
};

/// Ends the program at some lots, as a fault in the program would.
LotRow do_or_die(const std::string& name) {
    if (name == "23.yaml" || name == "37.yaml") {
        const rlimit no_core{0, 0};
        setrlimit(RLIMIT_CORE, &no_core);
        std::signal(SIGSEGV, SIG_DFL);
        std::raise(SIGSEGV);
    }
    LotRow row;
    row.file = name;
    row.result = LotResult::shut;
    row.digest = "x";
    row.cells.resize(columns_of(LotWork::trace).size());
    return row;
}

SweepTally run(const Lots& lots, unsigned threads, const std::function<LotRow(const std::string&)>& doer = do_or_die) {
    SweepResults results(lots.folder.path() / "out", LotWork::trace);
    SweepTally tally;
    const std::shared_ptr<Ranks> alone = open_ranks();
    sweep(
        lots.files, "settings", [&](const std::string& name, const RunContext&) { return doer(name); }, threads, results, *alone,
        RunContext(), tally);
    return tally;
}

/// The signal that ends a run in a process of its own; 0: it ends well.
int signal_of_run(const Lots& lots, unsigned threads) {
    const pid_t child = fork();
    if (child == 0) {
        run(lots, threads);
        _exit(0);
    }
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? WTERMSIG(status) : 0;
}

TEST(Death, OfTheProgramTwiceBecomesARowOfThatLotAlone) {
    for (const unsigned threads : {1U, 2U}) {
        const Lots lots;
        // The first run meets one of the two lots, the next one settles it, and meets the other.
        EXPECT_EQ(signal_of_run(lots, threads), SIGSEGV);
        int runs = 1;
        while (signal_of_run(lots, threads) != 0) ASSERT_LT(++runs, 4);
        SweepResults results(lots.folder.path() / "out", LotWork::trace);
        std::vector<std::string> dead;
        std::size_t done = 0;
        results.each_row(lots.files.names, [&](const LotRow& row) {
            if (row.result == LotResult::error) {
                dead.push_back(row.file);
                EXPECT_NE(row.error.find("the program died twice at this lot (signal 11"), std::string::npos) << row.error;
            }
            ++done;
        });
        EXPECT_EQ(done, 40U);
        EXPECT_EQ(dead, (std::vector<std::string>{"23.yaml", "37.yaml"}));
        EXPECT_TRUE(results.begun().empty());
    }
}

TEST(Death, IsNotTriedAgainUntilTheFileChanges) {
    const Lots lots;
    while (signal_of_run(lots, 1) != 0) {}
    EXPECT_EQ(signal_of_run(lots, 1), 0);
    SweepResults results(lots.folder.path() / "out", LotWork::trace);
    const auto known = results.known("23.yaml");
    ASSERT_TRUE(known);
    EXPECT_TRUE(known->died);
}

TEST(Death, IsTriedAgainWhenTheHouseIsMended) {
    const Lots lots;
    lots.folder.write("23.yaml", "seamward: 1\nhouse: plans/plan.yaml\n");
    while (signal_of_run(lots, 1) != 0) {}
    EXPECT_EQ(signal_of_run(lots, 1), 0);
    lots.folder.write("plans/plan.yaml", "seamward-house: 1\n");
    EXPECT_EQ(signal_of_run(lots, 1), SIGSEGV) << "the house is there now";
    while (signal_of_run(lots, 1) != 0) {}
    EXPECT_EQ(signal_of_run(lots, 1), 0);
    lots.folder.write("plans/plan.yaml", "seamward-house: 1\n# mended\n");
    EXPECT_EQ(signal_of_run(lots, 1), SIGSEGV) << "the house has changed";
}

TEST(Death, OfASweepEndsTheCopyThatTriesALotAndFreesTheFolder) {
    const Lots lots;
    const std::filesystem::path out = lots.folder.path() / "out";
    SweepResults(out, LotWork::trace).begin({"23.yaml"});
    std::array<int, 2> ends{};
    ASSERT_EQ(pipe(ends.data()), 0);
    const pid_t child = fork();
    if (child == 0) {
        close(ends[0]);
        run(lots, 1, [&](const std::string& name) {
            if (write(ends[1], "x", 1) != 1) _exit(1);
            sleep(60);
            LotRow row;
            row.file = name;
            return row;
        });
        _exit(0);
    }
    close(ends[1]);
    char said = 0;
    ASSERT_EQ(read(ends[0], &said, 1), 1) << "the copy is at work";
    kill(child, SIGKILL);
    waitpid(child, nullptr, 0);
    EXPECT_NO_THROW((void)SweepResults(out, LotWork::trace));
    // The last end that can be written to is closed when the copy has ended.
    pollfd ended{ends[0], POLLIN, 0};
    ASSERT_EQ(poll(&ended, 1, 20'000), 1);
    EXPECT_EQ(read(ends[0], &said, 1), 0);
    close(ends[0]);
}

}  // namespace
}  // namespace seamward::test
