// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lots.h"

#include <gtest/gtest.h>
#include <sys/stat.h>

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

TEST(Lots, ByteOrderMarksAndLongCommentsAreNoPartOfALot) {
    const ScratchFolder folder;
    const std::string mark = "\xEF\xBB\xBF", comment = "# " + std::string(5000, 'x') + '\n';
    folder.write("a.yaml", mark + "seamward: 1\n");
    folder.write("b.yaml", comment + comment + "seamward: 1\n");
    folder.write("house-a.yaml", mark + "seamward-house: 1\n");
    folder.write("house-b.yaml", comment + comment + "seamward-house: 1\n");
    folder.write("house-c.yaml", "\n\n" + comment + "{\n  \"seamward-house\": 1}");
    EXPECT_EQ(read_lot_files(folder.path(), RunContext()).names, (Names{"a.yaml", "b.yaml"}));
    EXPECT_EQ(read_lot_files(folder.write("list.txt", mark + "a.yaml\nb.yaml\n"), RunContext()).names,
              (Names{"a.yaml", "b.yaml"}));
    EXPECT_EQ(read_lot_files(folder.write("list.txt", mark + "# phase 2\nb.yaml\n"), RunContext()).names, (Names{"b.yaml"}));
}

TEST(Lots, NamesThatCannotBeToldGetOthers) {
    const ScratchFolder folder;
    for (const char* name : {"a.yaml", "b\xff.yaml", "b\xfe.yaml", "b?.yaml", "c\n.yaml"}) folder.write(name, "seamward: 1\n");
    const LotFiles lots = read_lot_files(folder.path(), RunContext());
    EXPECT_EQ(lots.names, (Names{"a.yaml", "b?.yaml", "b?.yaml?", "b?.yaml??", "c?.yaml"}));
    EXPECT_EQ(lots.misnamed, (Names{"b?.yaml?", "b?.yaml??", "c?.yaml"}));
}

TEST(Lots, NoFileStandsTwiceHoweverItIsSpelled) {
    const ScratchFolder folder;
    for (const std::string again : {"./lot-2.yaml", "north/../lot-2.yaml", ".//lot-2.yaml", "WHOLE/lot-2.yaml"}) {
        const bool whole = again.starts_with("WHOLE");
        const std::string line = whole ? folder.path().string() + again.substr(5) : again;
        const std::string fault = fault_of(folder.write("twice.txt", "lot-2.yaml\nlot-3.yaml\n" + line + '\n'));
        EXPECT_NE(fault.find("twice.txt:3:1: error: "), std::string::npos) << again << fault;
        EXPECT_NE(fault.find(" stands twice"), std::string::npos) << again << fault;
    }
    EXPECT_EQ(fault_of(folder.write("once.txt", "lot-2.yaml\nnorth/lot-2.yaml\n")), "");
}

TEST(Lots, PipesAndDevicesAreNotRead) {
    const ScratchFolder folder;
    const std::filesystem::path pipe = folder.path() / "pipe.yaml";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
    EXPECT_THROW((void)read_lot(pipe, "pipe"), BadInput);
    EXPECT_THROW((void)read_lot("/dev/zero", "zero"), BadInput);
    EXPECT_EQ(read_lot(folder.write("a.yaml", "text"), "a"), "text");
}

TEST(Lots, FilesThatATextNamesAreFoundByItsLetters) {
    const auto named = [](std::string_view text) {
        Names names;
        for (const std::filesystem::path& file : files_named_in(text, "lots/a.yaml")) names.push_back(file.string());
        return names;
    };
    EXPECT_EQ(named("seamward: 1\nhouse: plans/b.yaml  # drawn in May\n"), (Names{"lots/plans/b.yaml"}));
    EXPECT_EQ(named("seamward: 1\r\nhouse: plans/b c.yaml\r\n"), (Names{"lots/plans/b c.yaml"}));
    EXPECT_EQ(named("{\"seamward\": 1, \"house\": \"b, c.yaml\", \"gaps\": []}"), (Names{"lots/b, c.yaml"}));
    EXPECT_EQ(named("model:\n  file: ../x.ifc\n"), (Names{"lots/../x.ifc"}));
    EXPECT_EQ(named("model: {file: /x.ifc, up: z}\n"), (Names{"/x.ifc", "/x.ifc, up: z}"}));
    EXPECT_EQ(named("seamward-house: 1\nprofile: x\nfiles: y\nhouse\nhouse:"), Names());
    std::string many;
    for (int i = 0; i < 100'000; ++i) many += "house: " + std::to_string(i) + ' ';
    EXPECT_LE(named(many).size(), 200U);
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
