// SPDX-License-Identifier: GPL-3.0-or-later
// seamward-reader: reads one 3D file for read_model(), which starts it, and writes a ReaderAnswer. It is a program of its own
// because the libraries that know the formats crash on many a broken file: here nothing else can be harmed.
#include <malloc.h>
#include <unistd.h>

#include <cerrno>
#include <charconv>
#include <cstdio>
#include <exception>
#include <limits>
#include <new>
#include <string>
#include <string_view>

#include "exchange/model_wire.h"
#include "exchange/reader/exit_codes.h"
#include "exchange/reader/lock_in.h"
#include "exchange/reader/read_ifc.h"
#include "exchange/reader/read_scene.h"
#include "exchange/reader/refusal.h"
#include "exchange/reader/source_files.h"

namespace {

using namespace seamward;

/// Says how it went and is gone, past destructors that may stumble over a broken scene.
[[noreturn]] void leave(int code) { _exit(code); }

template <class Number>
bool read_number(std::string_view text, Number& number) {
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    return error == std::errc() && end == text.data() + text.size();
}

/// The words that read_model() gives, in its order.
bool read_task(int count, char** words, ReadTask& task) {
    if (count != 8) return false;
    task.kind = words[1];
    const std::string_view unit = words[2];
    const std::string_view up = words[3];
    for (const auto& [name, value] :
         {std::pair("m", ModelUnit::m), std::pair("cm", ModelUnit::cm), std::pair("mm", ModelUnit::mm),
          std::pair("in", ModelUnit::in), std::pair("ft", ModelUnit::ft)}) {
        if (unit == name) task.unit = value;
    }
    for (const auto& [name, value] : {std::pair("x", UpAxis::x), std::pair("y", UpAxis::y), std::pair("z", UpAxis::z)}) {
        if (up == name) task.up = value;
    }
    return read_number(words[4], task.most_file_bytes) && read_number(words[5], task.most_memory_bytes) &&
           read_number(words[6], task.most_cpu_seconds) && read_number(words[7], task.most_triangles);
}

ReaderAnswer answer(const ReadTask& task) {
    ReaderAnswer answer;
    try {
        SourceFiles files(model_descriptor, task.most_file_bytes);
        if (task.kind == "gltf") files.open_named(folder_descriptor);
        if (!forbid_the_rest()) leave(exit_code_not_locked_in);
        answer.model = task.kind == "ifc" ? read_ifc(files.text(), task) : read_scene(files, task);
    } catch (const ReadRefusal& refusal) {
        answer.what = refusal.what();
        answer.mend = refusal.mend();
    } catch (const std::bad_alloc&) {
        leave(exit_code_out_of_memory);
    } catch (const std::exception& problem) {
        answer.what = std::string("cannot be read: ") + problem.what();
        answer.mend = "export it again, or as another kind of file";
    }
    return answer;
}

/// Memory once fetched is kept, as the program ends soon: to hand large blocks back and fetch them anew takes up to a quarter of
/// the time of reading.
void keep_memory() {
    constexpr int most_block = 32 << 20;  // bytes; the most that the library takes: larger blocks are handed back all the same
    constexpr int fetched = 16 << 20;     // bytes at once
    (void)mallopt(M_MMAP_THRESHOLD, most_block);
    (void)mallopt(M_TRIM_THRESHOLD, std::numeric_limits<int>::max());
    (void)mallopt(M_TOP_PAD, fetched);
    (void)mallopt(M_MXFAST, 0);  // else all small blocks that are free are merged whenever a large one becomes free
}

bool write_all(std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = write(answer_descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) continue;
        if (written < 0) return false;
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

}  // namespace

int main(int count, char** words) {
    ReadTask task;
    if (!read_task(count, words, task)) {
        std::fputs("seamward-reader is started by Seamward, not by hand\n", stderr);
        return exit_code_wrong_start;
    }
    if (!keep_descriptors() || !limit_resources(task.most_memory_bytes, task.most_cpu_seconds)) leave(exit_code_not_locked_in);
    keep_memory();
    // Memory that is not there ends the program at once: libraries take the exception for one of theirs.
    std::set_new_handler([] { leave(exit_code_out_of_memory); });
    leave(write_all(wire_bytes(answer(task))) ? exit_code_done : exit_code_wrong_start);
}
