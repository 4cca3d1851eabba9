// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/write_whole_file.h"

#include <fcntl.h>
#include <gtest/gtest.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/sysmacros.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <csignal>

#include "base/file_io.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

std::string content(const fs::path& path) { return read_file(path, "shown", 1 << 30); }

std::size_t files_in(const fs::path& folder) {
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

std::vector<Diagnostic> faults(const fs::path& path, const std::string& bytes = "new") {
    return faults_of([&] { write_whole_file(path, "shown", bytes); });
}

unsigned mode_of(const fs::path& path) { return static_cast<unsigned>(fs::status(path).permissions()) & 07777U; }

/// Root may do everything; while this lives, the process is somebody else.
class AsNobody {
public:
    AsNobody() : root_(geteuid() == 0), done_(!root_ || seteuid(65534) == 0) {}
    ~AsNobody() {
        if (root_) (void)!seteuid(0);
    }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;
    [[nodiscard]] bool done() const { return done_; }

private:
    bool root_, done_;
};

TEST(WriteWholeFile, WritesEveryByteAndNothingBeside) {
    const ScratchFolder folder;
    std::string bytes;
    for (int i = 0; i < 3'000'000; ++i) bytes += static_cast<char>(i * 37 % 256);
    write_whole_file(folder.path() / "new.glb", "shown", bytes);
    EXPECT_EQ(content(folder.path() / "new.glb"), bytes);
    write_whole_file(folder.path() / "new.glb", "shown", "short");
    EXPECT_EQ(content(folder.path() / "new.glb"), "short");
    write_whole_file(folder.path() / "new.glb", "shown", "");
    EXPECT_EQ(content(folder.path() / "new.glb"), "");
    EXPECT_EQ(files_in(folder.path()), 1U);
}

TEST(WriteWholeFile, WritesIntoTheWorkingFolder) {
    const ScratchFolder folder;
    const fs::path before = fs::current_path();
    fs::current_path(folder.path());
    write_whole_file("bare", "shown", "x");
    fs::current_path(before);
    EXPECT_EQ(content(folder.path() / "bare"), "x");
}

TEST(WriteWholeFile, LongNamesFit) {
    const ScratchFolder folder;
    const fs::path path = folder.path() / std::string(255, 'n');
    write_whole_file(path, "shown", "x");
    EXPECT_EQ(content(path), "x");
    EXPECT_TRUE(only_fault(faults(folder.path() / std::string(256, 'n')), {0, 0}, "too long", ""));
}

TEST(WriteWholeFile, PermissionsAreThoseOfAnyNewFileOrOfTheOldOne) {
    const ScratchFolder folder;
    const mode_t before = umask(027);
    write_whole_file(folder.path() / "new", "shown", "x");
    umask(before);
    EXPECT_EQ(mode_of(folder.path() / "new"), 0640U);
    fs::permissions(folder.path() / "new", fs::perms(0604));
    write_whole_file(folder.path() / "new", "shown", "y");
    EXPECT_EQ(mode_of(folder.path() / "new"), 0604U);
}

TEST(WriteWholeFile, LinksGoOnPointing) {
    const ScratchFolder folder;
    fs::create_directory(folder.path() / "below");
    const fs::path target = folder.write("below/target", "old");
    fs::create_symlink("below/target", folder.path() / "link");
    fs::create_symlink("link", folder.path() / "link-to-link");
    write_whole_file(folder.path() / "link-to-link", "shown", "new");
    EXPECT_TRUE(fs::is_symlink(folder.path() / "link"));
    EXPECT_TRUE(fs::is_symlink(folder.path() / "link-to-link"));
    EXPECT_EQ(content(target), "new");
    fs::create_symlink(folder.path() / "below/later", folder.path() / "ahead");
    write_whole_file(folder.path() / "ahead", "shown", "new");
    EXPECT_TRUE(fs::is_symlink(folder.path() / "ahead"));
    EXPECT_EQ(content(folder.path() / "below/later"), "new");
    fs::create_symlink("loop", folder.path() / "loop");
    EXPECT_FALSE(faults(folder.path() / "loop").empty());
    EXPECT_TRUE(fs::is_symlink(folder.path() / "loop"));
}

/// Another name of the same file keeps the old content: the new one is another file.
TEST(WriteWholeFile, TheOldContentIsNeverWrittenOver) {
    const ScratchFolder folder;
    fs::create_hard_link(folder.write("file", "old"), folder.path() / "other-name");
    write_whole_file(folder.path() / "file", "shown", "new");
    EXPECT_EQ(content(folder.path() / "other-name"), "old");
}

TEST(WriteWholeFile, NamesWhatItCannotWrite) {
    const ScratchFolder folder;
    EXPECT_TRUE(only_fault(faults(folder.path()), {0, 0}, "folder", "file"));
    EXPECT_TRUE(only_fault(faults(folder.path() / "none" / "file"), {0, 0}, "No such file", "folder"));
    EXPECT_TRUE(only_fault(faults(folder.write("file", "x") / "below"), {0, 0}, "Not a directory", "folder"));
    EXPECT_TRUE(only_fault(faults(""), {0, 0}, "names no file", ""));
    EXPECT_TRUE(only_fault(faults(folder.path().string() + '/'), {0, 0}, "names no file", ""));
    EXPECT_EQ(faults(folder.path()).front().file, "shown");
    EXPECT_EQ(files_in(folder.path()), 1U);
}

TEST(WriteWholeFile, NamesAFileOrFolderThatMayNotBeWritten) {
    const ScratchFolder folder;
    fs::permissions(folder.path(), fs::perms(0777));
    const fs::path file = folder.write("read-only", "old");
    fs::permissions(file, fs::perms(0444));
    fs::create_directory(folder.path() / "closed");
    fs::permissions(folder.path() / "closed", fs::perms(0555));
    {
        const AsNobody nobody;
        ASSERT_TRUE(nobody.done());
        EXPECT_TRUE(only_fault(faults(file), {0, 0}, "cannot be written", "permissions"));
        EXPECT_TRUE(only_fault(faults(folder.path() / "closed" / "new"), {0, 0}, "cannot be written", "permissions"));
    }
    EXPECT_EQ(content(file), "old");
    EXPECT_EQ(files_in(folder.path() / "closed"), 0U);
}

/// A disk that is full in the middle of it: the old file is whole, and nothing is left beside it.
TEST(WriteWholeFile, NothingIsHalfWritten) {
    const ScratchFolder folder;
    const fs::path file = folder.write("file", "old");
    rlimit before{};
    ASSERT_EQ(getrlimit(RLIMIT_FSIZE, &before), 0);
    const auto handler = std::signal(SIGXFSZ, SIG_IGN);
    rlimit small = before;
    small.rlim_cur = 100'000;
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &small), 0);
    const std::vector<Diagnostic> found = faults(file, std::string(1'000'000, 'x'));
    const std::vector<Diagnostic> fresh = faults(folder.path() / "fresh", std::string(1'000'000, 'x'));
    ASSERT_EQ(setrlimit(RLIMIT_FSIZE, &before), 0);
    (void)std::signal(SIGXFSZ, handler);
    EXPECT_TRUE(only_fault(found, {0, 0}, "cannot be written (File too large)", "disk"));
    EXPECT_TRUE(only_fault(fresh, {0, 0}, "cannot be written", "disk"));
    EXPECT_EQ(content(file), "old");
    EXPECT_EQ(files_in(folder.path()), 1U);
}

/// Of files that belong together none is replaced when one of them cannot be written.
TEST(WriteWholeFile, FilesThatBelongTogetherAreReplacedTogether) {
    const ScratchFolder folder;
    const fs::path a = folder.path() / "a", b = folder.path() / "b";
    const std::array<WholeFile, 2> files{{{a, "a", "new a"}, {b, "b", "new b"}}};
    write_whole_files(files);
    EXPECT_EQ(content(a) + content(b), "new anew b");
    for (const auto& [good, bad] : {std::pair{a, b}, std::pair{b, a}}) {
        fs::remove(bad);
        fs::create_directory(bad);
        folder.write(good.filename().string(), "old");
        EXPECT_TRUE(only_fault(faults_of([&] { write_whole_files(files); }), {0, 0}, "is a folder", ""));
        EXPECT_EQ(content(good), "old");
        EXPECT_EQ(files_in(folder.path()), 2U);
        fs::remove(bad);
        folder.write(bad.filename().string(), "old");
    }
}

/// A file of the same name that another process of the same number left is not touched.
TEST(WriteWholeFile, LeavesLeftoversOfOthersAlone) {
    const ScratchFolder folder;
    const fs::path left = folder.write(".seamward-" + std::to_string(getpid()) + "-0", "left");
    write_whole_file(folder.path() / "file", "shown", "new");
    EXPECT_EQ(content(folder.path() / "file"), "new");
    EXPECT_EQ(content(left), "left");
}

TEST(WriteWholeFile, PipesAreWrittenTo) {
    const ScratchFolder folder;
    const fs::path pipe = folder.path() / "pipe";
    ASSERT_EQ(mkfifo(pipe.c_str(), 0666), 0);
    // Both ends are open here, so that nothing waits for ever when the pipe is replaced by a file.
    const int end = open(pipe.c_str(), O_RDWR | O_NONBLOCK);
    ASSERT_GE(end, 0);
    write_whole_file(pipe, "shown", "through");
    std::array<char, 100> received{};
    const ssize_t count = read(end, received.data(), received.size());
    close(end);
    ASSERT_TRUE(fs::is_fifo(pipe));
    EXPECT_EQ(std::string(received.data(), static_cast<std::size_t>(std::max<ssize_t>(0, count))), "through");
}

/// On devices of the test's own: a fault that puts a file in the place of a device must not hit the machine's. Only root makes
/// devices, and not on every file system.
TEST(WriteWholeFile, DevicesAreWrittenTo) {
    const ScratchFolder folder;
    const fs::path null = folder.path() / "null", full = folder.path() / "full";
    const bool made =
        mknod(null.c_str(), S_IFCHR | 0666, makedev(1, 3)) == 0 && mknod(full.c_str(), S_IFCHR | 0666, makedev(1, 7)) == 0;
    const int opened = made ? open(null.c_str(), O_WRONLY) : -1;
    if (opened < 0) GTEST_SKIP() << "no devices can be made in " << folder.path();
    close(opened);
    write_whole_file(null, "shown", "gone");
    EXPECT_TRUE(fs::is_character_file(null));
    EXPECT_TRUE(only_fault(faults(full), {0, 0}, "No space left", ""));
    EXPECT_TRUE(fs::is_character_file(full));
    EXPECT_EQ(files_in(folder.path()), 2U);
}

}  // namespace
}  // namespace seamward::test
