// SPDX-License-Identifier: GPL-3.0-or-later
// Names, files and folders as somebody would send them who means harm, or does not care.
#include <gtest/gtest.h>
#include <sys/stat.h>

#include <algorithm>

#include "base/text.h"
#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

const std::string survey =
    "spaces: [{id: yard, kind: outdoors}, {id: kitchen, kind: living}]\n"
    "gaps: [{id: \"=cmd|' /C calc'!A0\", between: [yard, kitchen], slot: {width: 1.2 mm, length: 9 m}, closing: {cost: $8.00}}]\n"
    "pests: [bark-scorpion-young]\n";

TEST(HostileNames, ComeBackAsTheyAreAndAreNoFormulas) {
    const Subdivision all(1, 1);
    const std::vector<std::string> names{
        "=1+1.yaml", "@a.yaml", "a,b \"c\".yaml", "-x'; DROP TABLE lots; --.yaml", "\xC3\xA4\xE2\x82\xAC.yaml", "file:x.yaml"};
    std::string list;
    for (const std::string& name : names) {
        std::ofstream(all.path(name)) << "seamward: 1\njob: {name: \"+SUM(A1)\", lot: \"@1\", option: \"a, \\\"b\\\"\"}\n"
                                      << survey;
        list += name + '\n';
    }
    std::ofstream(all.path("list.txt")) << list;
    const Ran ran = all.run("sweep list.txt --do plan -o out --on 2026-06-15");
    ASSERT_EQ(ran.exit_code, 0) << ran.err;
    const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
    ASSERT_EQ(rows.size(), names.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const bool formula = std::string("=+-@").find(names[i].front()) != std::string::npos;
        EXPECT_EQ(rows[i].at("file"), (formula ? "'" : "") + names[i]);
        EXPECT_EQ(rows[i].at("name"), "'+SUM(A1)");
        EXPECT_EQ(rows[i].at("lot"), "'@1");
        EXPECT_EQ(rows[i].at("option"), "a, \"b\"");
        EXPECT_EQ(rows[i].at("result"), "open") << rows[i].at("error");
        EXPECT_EQ(rows[i].at("cost"), "8.00");
    }
    std::vector<std::string> stored;  // rows come as lots are done
    for (const auto& row : query(all.path("out/sweep.sqlite"), "SELECT file FROM lots")) stored.push_back(row[0]);
    EXPECT_TRUE(std::is_permutation(stored.begin(), stored.end(), names.begin(), names.end()));
    EXPECT_EQ(read_csv_file(all.path("out/details.csv"))[0].at("detail"), "'=cmd|' /C calc'!A0");
}

TEST(HostileNames, ErrorsStayInOneLineAndKeepNoControlCharacters) {
    const Subdivision all(1, 1);
    std::ofstream(all.path("lots/bad.yaml")) << "seamward: 1\n\"a\\x1b[31m\\nb\": 1\n\"c\": 2\n";
    all.sweep("trace", "out");
    const std::string error = read_csv_file(all.path("out/lots.csv"))[0].at("error");
    EXPECT_EQ(error.find_first_of("\x1b\n\r"), std::string::npos) << error;
    EXPECT_NE(error.find("bad.yaml:2:1: error: "), std::string::npos) << error;
}

TEST(HostileNames, FileWhoseNameIsNotUtf8IsOneBadLot) {
    const Subdivision all(2, 1);
    std::ofstream(all.path("lots/b\xff.yaml")) << "seamward: 1\n";
    for (int run = 0; run < 2; ++run) {
        all.sweep("trace", "out");
        EXPECT_TRUE(is_utf8(tables_of(all.path("out"))));
        const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
        ASSERT_EQ(rows.size(), 3U);
        EXPECT_EQ(rows[0].at("file"), "b?.yaml");
        EXPECT_EQ(rows[0].at("error"),
                  "lots/b?.yaml: error: the name of this file is not UTF-8 or has control characters; give it another");
        EXPECT_NE(rows[1].at("result"), "error") << rows[1].at("error");
    }
}

TEST(HostileNames, PipesAndDevicesAreErrorsOfTheirLots) {
    const Subdivision all(1, 1);
    for (const char* name : {"pipe.yaml", "plan.yaml"}) ASSERT_EQ(mkfifo(all.path(name).c_str(), 0600), 0);
    std::ofstream(all.path("a.yaml")) << "seamward: 1\nhouse: plan.yaml\n";
    std::ofstream(all.path("list.txt")) << "pipe.yaml\n/dev/zero\na.yaml\nlots/lot-00001.yaml\n";
    for (int run = 0; run < 2; ++run) {
        const Ran ran = all.run("sweep list.txt --do trace -o out", "timeout 60");
        ASSERT_EQ(ran.exit_code, 0) << ran.err;
        const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
        ASSERT_EQ(rows.size(), 4U);
        EXPECT_EQ(rows[0].at("error"), "pipe.yaml: error: is a pipe or a device, not a file; name a file");
        EXPECT_EQ(rows[1].at("error"), "/dev/zero: error: is a pipe or a device, not a file; name a file");
        EXPECT_NE(rows[2].at("error").find("plan.yaml: error: is a pipe or a device, not a file"), std::string::npos)
            << rows[2].at("error");
        EXPECT_NE(rows[3].at("result"), "error") << rows[3].at("error");
    }
}

TEST(HostileNames, FileThatCannotBeOpenedIsNotCalledDamaged) {
    const Subdivision all(1, 1);
    all.sweep("trace", "out");
    std::filesystem::create_directory(all.path("out/sweep.sqlite-wal"));  // root may open any file, but no folder
    const Ran ran = all.run("sweep lots --do trace -o out");
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("; check the permissions of this file and of its folder"), std::string::npos) << ran.err;
    EXPECT_EQ(ran.err.find("damaged"), std::string::npos) << ran.err;
}

TEST(HostileNames, FolderThatHoldsSomethingElseIsLeftAlone) {
    const Subdivision all(2, 2);
    std::filesystem::create_directory(all.path("out"));
    std::ofstream(all.path("out/sweep.sqlite")) << "these are my notes, not a database; please keep them as they are";
    const Ran notes = all.run("sweep lots --do trace -o out");
    EXPECT_EQ(notes.exit_code, 1);
    EXPECT_NE(notes.err.find("out/sweep.sqlite: error: "), std::string::npos) << notes.err;
    EXPECT_EQ(read_file(all.path("out/sweep.sqlite"), "", 1000).substr(0, 18), "these are my notes");
    (void)query(all.path("other.sqlite"), "CREATE TABLE lots(a); INSERT INTO lots VALUES(1)");
    std::filesystem::copy_file(all.path("other.sqlite"), all.path("out/sweep.sqlite"),
                               std::filesystem::copy_options::overwrite_existing);
    const Ran other = all.run("sweep lots --do trace -o out");
    EXPECT_EQ(other.exit_code, 1);
    EXPECT_NE(other.err.find("is no file of a sweep; name another folder"), std::string::npos) << other.err;
    EXPECT_EQ(query(all.path("out/sweep.sqlite"), "SELECT * FROM lots").size(), 1U);
}

TEST(HostileNames, FolderOfAnotherKindOfWorkIsLeftAlone) {
    const Subdivision all(2, 2);
    all.sweep("trace", "out");
    const std::string before = tables_of(all.path("out"));
    const Ran ran = all.run("sweep lots --do plan -o out");
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("holds a sweep of \"trace\", not of plan"), std::string::npos) << ran.err;
    EXPECT_EQ(tables_of(all.path("out")), before);
}

TEST(HostileNames, OneSweepAtATimeWritesToAFolder) {
    const Subdivision all(2, 2);
    all.sweep("trace", "out");
    const Ran ran =
        run_shell("flock " + shell_word(all.path("out/sweep.lock").string()) + " " + shell_word(SEAMWARD_PROGRAM) + " sweep " +
                  shell_word(all.path("lots").string()) + " --do trace -o " + shell_word(all.path("out").string()));
    EXPECT_EQ(ran.exit_code, 1);
    EXPECT_NE(ran.err.find("another sweep writes to this folder"), std::string::npos) << ran.err;
}

TEST(HostileNames, FolderThatCannotBeWrittenIsAnError) {
    const Subdivision all(1, 2);
    std::ofstream(all.path("file")) << "x";
    EXPECT_EQ(all.run("sweep lots --do trace -o file").exit_code, 1);
    EXPECT_EQ(all.run("sweep lots --do trace -o file/deeper").exit_code, 1);
}

}  // namespace
}  // namespace seamward::test
