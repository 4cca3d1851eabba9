// SPDX-License-Identifier: GPL-3.0-or-later
// The same tables whatever works on them: one thread or two, one process or several.
#include <gtest/gtest.h>
#include <unistd.h>

#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

/// In containers there may be only root, and fewer slots than processes.
const std::string mpirun =
    "env OMPI_ALLOW_RUN_AS_ROOT=1 OMPI_ALLOW_RUN_AS_ROOT_CONFIRM=1 mpirun --oversubscribe --bind-to none -n ";

bool has_mpirun() { return run_shell("command -v mpirun").exit_code == 0; }

TEST(Ranks, OneAndTwoThreadsGiveTheSameTables) {
    const Subdivision all(80, 41, 4);
    all.sweep("plan", "one", "--threads 1");
    all.sweep("plan", "two", "--threads 2");
    all.sweep("plan", "five", "--threads 5");
    EXPECT_EQ(tables_of(all.path("one")), tables_of(all.path("two")));
    EXPECT_EQ(tables_of(all.path("one")), tables_of(all.path("five")));
}

TEST(Ranks, OneTwoAndThreeProcessesGiveTheSameTables) {
    if (!has_mpirun()) GTEST_SKIP() << "mpirun is not installed";
    const Subdivision all(80, 42, 4);
    all.sweep("plan", "one");
    for (const char* ranks : {"2", "3"}) {
        const Ran ran = all.sweep("plan", std::string("by-") + ranks, "--threads 1", mpirun + ranks);
        EXPECT_NE(ran.out.find("80 lots: 80 done now"), std::string::npos) << ran.out;
        EXPECT_EQ(ran.out.find("80 lots"), ran.out.rfind("80 lots")) << "only one process speaks";
        EXPECT_EQ(tables_of(all.path("one")), tables_of(all.path(std::string("by-") + ranks)));
    }
    const Ran again = all.sweep("plan", "by-2", "", mpirun + "2");
    EXPECT_NE(again.out.find("80 lots: 4 done now, 76 as they were"), std::string::npos) << again.out;
}

TEST(Ranks, FewerLotsThanProcessesIsFine) {
    if (!has_mpirun()) GTEST_SKIP() << "mpirun is not installed";
    const Subdivision all(1, 43);
    all.sweep("trace", "one");
    all.sweep("trace", "three", "", mpirun + "3");
    EXPECT_EQ(tables_of(all.path("one")), tables_of(all.path("three")));
}

TEST(Ranks, FaultsOfTheWholeSweepEndAllProcesses) {
    if (!has_mpirun()) GTEST_SKIP() << "mpirun is not installed";
    const Subdivision all(2, 44);
    const Ran ran = all.run("sweep nothing.txt --do trace -o out", mpirun + "2");
    EXPECT_EQ(ran.exit_code, 1) << ran.err;
    EXPECT_NE(ran.err.find("nothing.txt: error: no such file"), std::string::npos) << ran.err;
}

/// Where mpirun did not start it, a sweep has nothing to do with MPI.
TEST(Ranks, MpiIsLoadedUnderMpirunOnly) {
    const Ran libraries = run_shell("ldd " + shell_word(SEAMWARD_PROGRAM));
    EXPECT_EQ(libraries.out.find("libmpi"), std::string::npos) << libraries.out;
}

}  // namespace
}  // namespace seamward::test
