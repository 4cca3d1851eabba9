// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/write_whole_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <memory>
#include <optional>
#include <system_error>
#include <vector>

#include "base/diagnostics.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

/// An open file, closed at the end; `close()` says whether that went well.
class Descriptor {
public:
    explicit Descriptor(int number) : number_(number) {}
    ~Descriptor() { close(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    [[nodiscard]] int number() const { return number_; }
    bool close() {
        const int number = number_;
        number_ = -1;
        return number < 0 || ::close(number) == 0;
    }

private:
    int number_;
};

/// A new file beside another that is removed at the end unless it was kept.
class FileBeside {
public:
    explicit FileBeside(const fs::path& target) {
        // Not mkstemp: its files are for their owner only, these have the permissions of any new file. The short name fits
        // wherever the target's does.
        for (int attempt = 0; attempt < 1000 && number_ < 0; ++attempt) {
            path_ = target.parent_path() / (".seamward-" + std::to_string(getpid()) + '-' + std::to_string(attempt));
            number_ = open(path_.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
            if (number_ < 0 && errno != EEXIST) return;
        }
    }
    ~FileBeside() {
        if (number_ >= 0 && !kept_) unlink(path_.c_str());
    }
    FileBeside(const FileBeside&) = delete;
    FileBeside& operator=(const FileBeside&) = delete;

    [[nodiscard]] int number() const { return number_; }
    bool take_name_of(const fs::path& target) {
        kept_ = rename(path_.c_str(), target.c_str()) == 0;
        return kept_;
    }

private:
    fs::path path_;
    int number_ = -1;
    bool kept_ = false;
};

/// What the path stands for once links are followed, whether or not it is there.
fs::path end_of_links(fs::path path) {
    std::error_code error;
    for (int most = 40; most > 0 && fs::is_symlink(fs::symlink_status(path, error)); --most) {
        const fs::path link = fs::read_symlink(path, error);
        if (error) break;
        path = path.parent_path() / link;
    }
    return path;
}

bool write_all(int number, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = write(number, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// One file on its way: checked, then prepared beside its name, then put there.
class Writing {
public:
    explicit Writing(const WholeFile& file) : file_(file) {
        if (file.path.filename().empty()) fail("names no file", "end it with the name of a file");
        struct stat there {};
        const bool exists = stat(file.path.c_str(), &there) == 0;
        if (!exists && errno != ENOENT) fail_because("check the path and the permissions of its folder");
        if (exists && S_ISDIR(there.st_mode)) fail("is a folder, not a file", "name a file in it");
        if (exists && faccessat(AT_FDCWD, file.path.c_str(), W_OK, AT_EACCESS) != 0) fail_because("check its permissions");
        device_ = exists && !S_ISREG(there.st_mode);
        if (!device_) prepare(exists ? std::optional(there.st_mode) : std::nullopt);
    }

    [[nodiscard]] bool is_device() const { return device_; }

    void put() {
        if (device_) {
            Descriptor device(open(file_.path.c_str(), O_WRONLY | O_CLOEXEC));
            if (device.number() < 0 || !write_all(device.number(), file_.bytes) || !device.close())
                fail_because("check what it is");
        } else if (!fresh_->take_name_of(target_)) {
            fail_because("check the permissions of its folder");
        }
    }

private:
    void prepare(std::optional<mode_t> mode) {
        target_ = end_of_links(file_.path);
        fresh_ = std::make_unique<FileBeside>(target_);
        Descriptor open_file(fresh_->number());
        if (open_file.number() < 0) fail_because("check that its folder is there and its permissions");
        if (mode) (void)fchmod(open_file.number(), *mode & 0777U);
        const bool written = write_all(open_file.number(), file_.bytes) && fsync(open_file.number()) == 0 && open_file.close();
        if (!written) fail_because("check the disk");
    }

    [[noreturn]] void fail(const std::string& what, const std::string& mend) const {
        throw BadInput({{file_.shown_as, {}, what, mend}});
    }
    [[noreturn]] void fail_because(const std::string& mend) const {
        fail(std::string("cannot be written (") + std::strerror(errno) + ')', mend);
    }

    const WholeFile& file_;
    bool device_ = false;
    fs::path target_;
    std::unique_ptr<FileBeside> fresh_;
};

}  // namespace

void write_whole_file(const fs::path& path, const std::string& shown_as, std::string_view bytes) {
    const WholeFile file{path, shown_as, bytes};
    write_whole_files({&file, 1});
}

void write_whole_files(std::span<const WholeFile> files) {
    std::vector<std::unique_ptr<Writing>> all;
    for (const WholeFile& file : files) all.push_back(std::make_unique<Writing>(file));
    for (const bool devices : {false, true}) {
        for (const auto& writing : all) {
            if (writing->is_device() == devices) writing->put();
        }
    }
}

}  // namespace seamward
