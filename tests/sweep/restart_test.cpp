// SPDX-License-Identifier: GPL-3.0-or-later
// A sweep that was ended goes on, and ends like one that was left alone.
#include <gtest/gtest.h>
#include <signal.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <thread>

#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

std::size_t rows_in(const std::filesystem::path& folder) {
    if (!std::filesystem::exists(folder / "lots.csv") && !std::filesystem::exists(folder / "sweep.sqlite")) return 0;
    const auto tables = query(folder / "sweep.sqlite", "SELECT count(*) FROM sqlite_master WHERE name = 'lots'");
    if (tables.empty() || tables[0][0] != "1") return 0;
    return std::stoul(query(folder / "sweep.sqlite", "SELECT count(*) FROM lots")[0][0]);
}

/// Starts a sweep and ends it by a signal once there are some rows. How it ended, as waitpid() has it, and what it said.
std::pair<int, std::string> start_and_end(const Subdivision& all, const std::string& folder, int signal) {
    const std::filesystem::path said = all.path("said");
    const pid_t child = fork();
    if (child == 0) {
        if (chdir(all.path("").c_str()) != 0 || freopen(said.c_str(), "w", stderr) == nullptr ||
            freopen("/dev/null", "w", stdout) == nullptr)
            _exit(99);
        execl(SEAMWARD_PROGRAM, "seamward", "sweep", "lots", "--do", "plan", "-o", folder.c_str(), "--on", "2026-06-15",
              "--threads", "1", static_cast<char*>(nullptr));
        _exit(98);
    }
    int status = 0;
    while (rows_in(all.path(folder)) == 0 && waitpid(child, &status, WNOHANG) == 0)
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    kill(child, signal);
    waitpid(child, &status, 0);
    return {status, read_file(said, "", 1U << 20)};
}

TEST(Restart, KilledInTheMiddleEndsLikeOneLeftAlone) {
    const Subdivision all(160, 31, 8);
    all.sweep("plan", "alone");
    const auto [status, said] = start_and_end(all, "killed", SIGKILL);
    ASSERT_TRUE(WIFSIGNALED(status)) << status << said;
    const std::size_t before = rows_in(all.path("killed"));
    ASSERT_GT(before, 0U);
    ASSERT_LT(before, 160U);
    EXPECT_FALSE(std::filesystem::exists(all.path("killed/lots.csv")));
    const Ran again = all.sweep("plan", "killed");
    // What had no error is kept.
    EXPECT_EQ(again.out.find("160 lots: 160 done now"), std::string::npos) << again.out;
    EXPECT_EQ(tables_of(all.path("killed")), tables_of(all.path("alone")));
    EXPECT_EQ(query(all.path("killed/sweep.sqlite"), "SELECT * FROM begun").size(), 0U);
    EXPECT_EQ(query(all.path("killed/sweep.sqlite"), "SELECT * FROM lots WHERE died").size(), 0U)
        << "the lots at hand are not to blame";
}

TEST(Restart, CtrlCKeepsWhatIsDoneAndSaysSo) {
    const Subdivision all(160, 32);
    const auto [status, said] = start_and_end(all, "out", SIGINT);
    ASSERT_TRUE(WIFSIGNALED(status)) << status << said;
    EXPECT_EQ(WTERMSIG(status), SIGINT);
    EXPECT_NE(said.find(" of 160 lots are done and kept in out; the same command goes on from there\n"), std::string::npos)
        << said;
    const std::size_t kept = rows_in(all.path("out"));
    EXPECT_NE(said.find("stopped; " + std::to_string(kept) + " of 160"), std::string::npos) << said << kept;
    const Ran again = all.sweep("plan", "out");
    EXPECT_NE(again.out.find(std::to_string(kept) + " as they were"), std::string::npos) << again.out;
    all.sweep("plan", "alone");
    EXPECT_EQ(tables_of(all.path("out")), tables_of(all.path("alone")));
}

TEST(Restart, OnlyWhatChangedIsDoneAgain) {
    const Subdivision all(30, 33);
    const auto done_now = [&](const std::string& more = "") {
        const std::string out = all.sweep("plan", "out", more).out;
        return out.substr(0, out.find(" done now"));
    };
    EXPECT_EQ(done_now(), "30 lots: 30");
    EXPECT_EQ(done_now(), "30 lots: 0");
    std::ofstream(all.path("lots/lot-00007.yaml"), std::ios::app) << "# looked at again\n";
    EXPECT_EQ(done_now(), "30 lots: 1");
    std::filesystem::remove(all.path("lots/lot-00008.yaml"));
    EXPECT_EQ(done_now(), "29 lots: 0");
    EXPECT_EQ(query(all.path("out/sweep.sqlite"), "SELECT count(*) FROM lots")[0][0], "29");
    EXPECT_EQ(query(all.path("out/sweep.sqlite"), "SELECT count(*) FROM leaks WHERE lot NOT IN (SELECT id FROM lots)")[0][0],
              "0");
    std::ofstream(all.path("lots/plans/larkspur.yaml"), std::ios::app) << "# drawn anew\n";
    const std::string of_plan =
        query(all.path("out/sweep.sqlite"), "SELECT count(*) FROM lots WHERE plan = 'plans/larkspur.yaml'")[0][0];
    EXPECT_EQ(done_now(), "29 lots: " + of_plan);
    std::ofstream(all.path("book.yaml")) << "catalog: prices\nlabor_per_hour: $93.00\n";
    EXPECT_EQ(done_now("--prices book.yaml"), "29 lots: 29") << "other prices";
    EXPECT_EQ(done_now("--prices book.yaml"), "29 lots: 0");
    std::ofstream(all.path("book.yaml")) << "catalog: prices\nlabor_per_hour: $94.00\n";
    EXPECT_EQ(done_now("--prices book.yaml"), "29 lots: 29") << "the same file with other prices in it";
    EXPECT_EQ(done_now("--prices book.yaml --against house-mouse"), "29 lots: 29");
}

TEST(Restart, MendedLotIsDoneAgain) {
    const Subdivision all(3, 34);
    const std::string good = read_file(all.path("lots/lot-00002.yaml"), "", 1U << 20);
    std::ofstream(all.path("lots/lot-00002.yaml")) << "seamward: 1\nhouse: plans/later.yaml\n";
    all.sweep("trace", "out");
    EXPECT_EQ(read_csv_file(all.path("out/lots.csv"))[1].at("result"), "error");
    std::filesystem::copy_file(all.path("lots/plans/larkspur.yaml"), all.path("lots/plans/later.yaml"));
    all.sweep("trace", "out");
    EXPECT_EQ(read_csv_file(all.path("out/lots.csv"))[1].at("result"), "open") << "its house is there now";
}

TEST(Restart, WithoutADayItGoesOnWithTheDayItBeganWith) {
    const Subdivision all(4, 35);
    all.sweep("plan", "out");
    const Ran again = all.run("sweep lots --do plan -o out");
    EXPECT_EQ(again.exit_code, 0);
    EXPECT_NE(again.out.find("4 lots: 0 done now, 4 as they were"), std::string::npos) << again.out;
    EXPECT_NE(again.out.find("Day of the work: 2026-06-15."), std::string::npos) << again.out;
}

}  // namespace
}  // namespace seamward::test
