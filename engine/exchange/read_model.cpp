// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/read_model.h"

#include <fcntl.h>
#include <signal.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <cstring>
#include <stdexcept>
#include <utility>

#include "base/diagnostics.h"
#include "base/text.h"
#include "exchange/child_process.h"
#include "exchange/model_kinds.h"
#include "exchange/model_wire.h"
#include "exchange/part_ids.h"
#include "exchange/reader/exit_codes.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

class OpenFile {
public:
    explicit OpenFile(int number) : number_(number) {}
    ~OpenFile() {
        if (number_ >= 0) close(number_);
    }
    OpenFile(const OpenFile&) = delete;
    OpenFile& operator=(const OpenFile&) = delete;
    [[nodiscard]] int number() const { return number_; }

private:
    int number_;
};

std::string size_text(std::uint64_t bytes) {
    if (bytes % (1ULL << 30) == 0) return std::to_string(bytes >> 30) + " GiB";
    if (bytes % (1ULL << 20) == 0) return std::to_string(bytes >> 20) + " MiB";
    return std::to_string(bytes) + " bytes";
}

/// The program that reads, or an empty path.
fs::path reader_program() {
    std::error_code error;
    const fs::path own = fs::read_symlink("/proc/self/exe", error);
    if (error) return {};
    for (const fs::path& folder : {own.parent_path(), own.parent_path().parent_path() / "bin"}) {
        const fs::path program = folder / "seamward-reader";
        if (access(program.c_str(), X_OK) == 0) return program;
    }
    return {};
}

class Reading {
public:
    Reading(const fs::path& path, const std::string& shown_as, const ReadSettings& settings)
        : path_(path), shown_as_(shown_as), settings_(settings), kind_(model_kind(path)) {}

    Model run(const RunContext& context) const {
        check_kind();
        const OpenFile file(open(path_.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK | O_NOCTTY));
        check_file(file.number());
        const fs::path parent = path_.has_parent_path() ? path_.parent_path() : fs::path(".");
        const OpenFile folder(open(parent.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
        ChildTask task{.program = reader_program(), .arguments = arguments(), .descriptors = {file.number()}};
        if (folder.number() >= 0) task.descriptors.push_back(folder.number());
        task.most_output = most_wire_bytes(settings_.most_triangles);
        task.most_time = std::chrono::seconds(2 * std::min<std::uint64_t>(settings_.most_cpu_seconds, 1'000'000) + 2);
        // libifcplusplus keeps tables by address and cuts openings in their order: with other addresses the same file gives other
        // points. What the program may do is locked in all the same. Assimp does not care, so all else stays randomized.
        task.fixed_addresses = kind_ == "ifc";
        if (task.program.empty()) fail("no program to read it: seamward-reader is not beside this one", "install Seamward again");
        const ChildResult result = run_child(task, context);
        check_end(result);
        ReaderAnswer answer = checked_answer(result.output);
        if (!answer.model) fail(answer.what, answer.mend);
        if (answer.model->parts.empty()) fail_without_triangles();
        give_ids(*answer.model);
        return std::move(*answer.model);
    }

private:
    [[noreturn]] void fail(const std::string& what, const std::string& mend) const {
        throw BadInput({{shown_as_, {}, what, mend}});
    }
    [[noreturn]] void fail_without_triangles() const {
        fail("has no triangles", "export surfaces or solids; lines and points make no house");
    }

    void check_kind() const {
        if (is_model_name(path_)) return;
        std::error_code error;
        if (!fs::exists(path_, error) && !error) fail("no such file", "check the path");
        if (fs::is_directory(path_, error)) fail("is a folder, not a file", "name a file in it");
        fail("is of no kind of 3D file that can be read", "use one of " + all_model_kinds());
    }

    void check_file(int number) const {
        if (number < 0 && errno == ENOENT) fail("no such file", "check the path");
        const std::string why = std::strerror(errno);
        struct stat facts {};
        if (number < 0 || fstat(number, &facts) != 0) fail("cannot be opened (" + why + ')', "check its permissions");
        if (S_ISDIR(facts.st_mode)) fail("is a folder, not a file", "name a file in it");
        if (!S_ISREG(facts.st_mode)) fail("is no ordinary file", "copy what it holds to a file");
        if (facts.st_size == 0) fail("is empty", "export it again");
        if (static_cast<std::uint64_t>(facts.st_size) > settings_.most_file_bytes)
            fail("is larger than " + size_text(settings_.most_file_bytes), "split it, or leave out what is no part of the house");
    }

    [[nodiscard]] std::vector<std::string> arguments() const {
        const auto word = [](const auto& choice, std::initializer_list<const char*> words) {
            return std::string(choice ? words.begin()[static_cast<std::size_t>(*choice)] : "-");
        };
        return {kind_,
                word(settings_.unit, {"m", "cm", "mm", "in", "ft"}),
                word(settings_.up, {"x", "y", "z"}),
                std::to_string(settings_.most_file_bytes),
                std::to_string(settings_.most_memory_bytes),
                std::to_string(settings_.most_cpu_seconds),
                std::to_string(settings_.most_triangles)};
    }

    void check_end(const ChildResult& result) const {
        const std::string simpler = "split it, or leave out what is no part of the house";
        const std::string too_long = "takes longer to read than " + std::to_string(settings_.most_cpu_seconds) + " s";
        const bool exited = result.end == ChildEnd::exited;
        const bool killed = result.end == ChildEnd::killed_by_signal;
        if (exited && result.code == exit_code_done) return;
        if (result.end == ChildEnd::not_started)
            fail(std::string("cannot be read: seamward-reader does not start (") + std::strerror(result.code) + ')',
                 "install Seamward again");
        if (exited && result.code == exit_code_not_locked_in)
            fail("cannot be read safely: this system does not let seamward-reader lock itself in",
                 "run it on Linux with seccomp filters, outside of containers that forbid them");
        if (exited && result.code == exit_code_out_of_memory)
            fail("needs more memory to read than " + size_text(settings_.most_memory_bytes), simpler);
        if (result.end == ChildEnd::out_of_time) fail(too_long, simpler);
        if (killed && result.code == SIGXCPU) fail(too_long, simpler);
        if (killed && result.code == SIGKILL)
            fail("was stopped by the system while it was read, for lack of memory it seems", simpler);
        if (result.end == ChildEnd::too_much_output) fail("is too large once it is read", simpler);
        std::string what = "breaks the program that reads it";
        if (killed) what += " (signal " + std::to_string(result.code) + ", " + strsignal(result.code) + ')';
        fail(what, "export it again, or as another kind of file");
    }

    [[nodiscard]] ReaderAnswer checked_answer(const std::string& bytes) const {
        try {
            return answer_from_wire(bytes, settings_.most_triangles);
        } catch (const std::invalid_argument&) {
            fail("was read as something that makes no sense, with triangles without points or points far beyond the Earth",
                 "check its unit, or export it again as another kind of file");
        }
    }

    const fs::path& path_;
    const std::string& shown_as_;
    const ReadSettings& settings_;
    std::string kind_;
};

}  // namespace

Model read_model(const fs::path& path, const std::string& shown_as, const ReadSettings& settings, const RunContext& context) {
    context.stage("reading the model");
    Model model = Reading(path, shown_as, settings).run(context);
    context.check();
    return model;
}

}  // namespace seamward
