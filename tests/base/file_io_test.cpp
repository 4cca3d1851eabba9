// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/file_io.h"

#include <gtest/gtest.h>
#include <unistd.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

std::vector<Diagnostic> faults(const std::filesystem::path& path, std::uint64_t most) {
    return faults_of([&] { (void)read_file(path, "shown", most); });
}

TEST(ReadFile, GivesEveryByte) {
    const ScratchFolder folder;
    std::string bytes;
    for (int i = 0; i < 200'000; ++i) bytes += static_cast<char>(i * 37 % 256);
    EXPECT_EQ(read_file(folder.write("bytes", bytes), "shown", 1 << 20), bytes);
    EXPECT_EQ(read_file(folder.write("empty", ""), "shown", 1 << 20), "");
}

TEST(ReadFile, ReadsAsMuchAsAllowedAndNoMore) {
    const ScratchFolder folder;
    constexpr std::uint64_t most = 1 << 20;
    EXPECT_EQ(read_file(folder.write("just", std::string(most, 'x')), "shown", most).size(), most);
    EXPECT_TRUE(only_fault(faults(folder.write("over", std::string(most + 1, 'x')), most), {0, 0}, "larger than 1 MiB", "split"));
}

TEST(ReadFile, NamesWhatItCannotRead) {
    const ScratchFolder folder;
    EXPECT_TRUE(only_fault(faults(folder.path() / "none", 100), {0, 0}, "no such file", "path"));
    EXPECT_TRUE(only_fault(faults(folder.path(), 100), {0, 0}, "folder", "file"));
    EXPECT_TRUE(only_fault(faults(folder.write("file", "x") / "below", 100), {0, 0}, "no such file", "path"));
    EXPECT_TRUE(only_fault(faults("", 100), {0, 0}, "no such file", "path"));
    EXPECT_EQ(faults(folder.path() / "none", 100).front().file, "shown");
}

TEST(ReadFile, NamesAFileThatMayNotBeRead) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.write("secret", "x");
    std::filesystem::permissions(folder.path(), std::filesystem::perms::all);
    std::filesystem::permissions(path, std::filesystem::perms::none);
    // Root may read every file; for a moment this is somebody else.
    const bool root = geteuid() == 0;
    constexpr uid_t nobody = 65534;
    ASSERT_TRUE(!root || seteuid(nobody) == 0);
    const auto found = faults(path, 100);
    ASSERT_TRUE(!root || seteuid(0) == 0);
    EXPECT_TRUE(only_fault(found, {0, 0}, "cannot be opened", "permissions"));
}

/// A device without end is refused once the limit is passed.
TEST(ReadFile, StopsReadingWhatHasNoEnd) {
    EXPECT_TRUE(only_fault(faults("/dev/zero", 1 << 20), {0, 0}, "larger than", "split"));
}

TEST(ReadFile, FollowsLinks) {
    const ScratchFolder folder;
    std::filesystem::create_symlink(folder.write("target", "text"), folder.path() / "link");
    EXPECT_EQ(read_file(folder.path() / "link", "shown", 100), "text");
    std::filesystem::create_symlink(folder.path() / "loop", folder.path() / "loop");
    EXPECT_FALSE(faults(folder.path() / "loop", 100).empty());
}

}  // namespace
}  // namespace seamward::test
