// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lots.h"

#include <gtest/gtest.h>

#include "base/diagnostics.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

using Names = std::vector<std::string>;

std::string fault_of(const std::filesystem::path& lots) {
    try {
        (void)read_lot_files(lots, RunContext());
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

TEST(Lots, ListHasOneFileALineInItsOrder) {
    const ScratchFolder folder;
    const auto list = folder.write("lots.txt", "# phase 2\n\n  north/b.yaml  # corner lot\r\na #1.yaml\n\tlot#3.json\nlast.yml");
    const LotFiles lots = read_lot_files(list, RunContext());
    EXPECT_EQ(lots.names, (Names{"north/b.yaml", "a", "lot#3.json", "last.yml"}));
    EXPECT_EQ(lots.path_of("north/b.yaml"), folder.path() / "north/b.yaml");
}

TEST(Lots, FolderHasItsJobFilesByName) {
    const ScratchFolder folder;
    folder.write("b.yaml", "seamward: 1\n");
    folder.write("a.json", "{\"seamward\": 1}");
    folder.write("c.yml", "not: a job, but a lot all the same\n");
    folder.write("broken.yaml", "[[[");
    folder.write("house.yaml", "# a plan\n---\nseamward-house: 1\n");
    folder.write("house.json", "\n{ \"seamward-house\" : 1}");
    folder.write("prices.yaml", "catalog: prices\n");
    folder.write("notes.txt", "seamward: 1\n");
    folder.write("deeper/d.yaml", "seamward: 1\n");
    EXPECT_EQ(read_lot_files(folder.path(), RunContext()).names, (Names{"a.json", "b.yaml", "broken.yaml", "c.yml"}));
}

TEST(Lots, SaysWhatIsWrongWithAList) {
    const ScratchFolder folder;
    EXPECT_NE(fault_of(folder.path() / "none.txt").find("no such file"), std::string::npos);
    EXPECT_NE(fault_of(folder.path()).find("there is no job file in this folder"), std::string::npos);
    EXPECT_NE(fault_of(folder.write("empty.txt", "# nothing\n\n")).find("the list names no job file"), std::string::npos);
    EXPECT_NE(fault_of(folder.write("job.yaml", "seamward: 1\n")).find("not one job file"), std::string::npos);
    const std::string twice = fault_of(folder.write("twice.txt", "a.yaml\nb.yaml\na.yaml\n\xff\n"));
    EXPECT_NE(twice.find("twice.txt:3:1: error: \"a.yaml\" stands twice; keep one line"), std::string::npos) << twice;
    EXPECT_NE(twice.find("twice.txt:4:1: error: this line is no name of a file"), std::string::npos) << twice;
}

TEST(Lots, ManyFaultsOfAListAreCutShort) {
    const ScratchFolder folder;
    std::string text;
    for (int i = 0; i < 100'000; ++i) text += "a.yaml\n";
    EXPECT_LT(fault_of(folder.write("many.txt", text)).size(), 100'000U);
}

}  // namespace
}  // namespace seamward::test
