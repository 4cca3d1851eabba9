// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/archive.h"

#include <zip.h>

#include <memory>
#include <stdexcept>

namespace seamward {

namespace {

/// The earliest that zip archives can say, and what they say who have none: January 1, 1980, midnight. Set as it stands in the
/// file; a time_t would be turned into the time of the machine's zone.
constexpr zip_uint16_t no_time = 0, first_day = (1U << 5U) | 1U;

[[noreturn]] void fail(const std::string& why) { throw std::runtime_error("the archive could not be written: " + why); }

void add(zip_t* archive, const ArchiveEntry& entry) {
    zip_int64_t at = -1;
    if (entry.name.ends_with('/')) {
        at = zip_dir_add(archive, entry.name.c_str(), ZIP_FL_ENC_UTF_8);
    } else {
        // The bytes stay where they are until the archive is closed.
        zip_source_t* source = zip_source_buffer(archive, entry.bytes.data(), entry.bytes.size(), 0);
        if (source == nullptr) fail(zip_strerror(archive));
        at = zip_file_add(archive, entry.name.c_str(), source, ZIP_FL_ENC_UTF_8);
        if (at < 0) zip_source_free(source);
    }
    if (at < 0 || zip_file_set_dostime(archive, static_cast<zip_uint64_t>(at), no_time, first_day, 0) != 0)
        fail(zip_strerror(archive));
}

std::string content(zip_source_t* source) {
    zip_stat_t size;
    zip_stat_init(&size);
    if (zip_source_stat(source, &size) != 0 || zip_source_open(source) != 0) fail(zip_error_strerror(zip_source_error(source)));
    std::string bytes(size.size, '\0');
    const zip_int64_t read = zip_source_read(source, bytes.data(), bytes.size());
    zip_source_close(source);
    if (read < 0 || static_cast<std::size_t>(read) != bytes.size()) fail("it could not be read back");
    return bytes;
}

}  // namespace

std::string zip_bytes(const std::vector<ArchiveEntry>& entries) {
    zip_error_t error;
    zip_error_init(&error);
    const std::unique_ptr<zip_source_t, decltype(&zip_source_free)> target(zip_source_buffer_create(nullptr, 0, 0, &error),
                                                                           zip_source_free);
    if (!target) fail(zip_error_strerror(&error));
    std::unique_ptr<zip_t, decltype(&zip_discard)> archive(zip_open_from_source(target.get(), ZIP_CREATE | ZIP_TRUNCATE, &error),
                                                           zip_discard);
    if (!archive) fail(zip_error_strerror(&error));
    zip_source_keep(target.get());  // the archive frees it once, and `target` once more
    for (const ArchiveEntry& entry : entries) add(archive.get(), entry);
    if (zip_close(archive.get()) != 0) fail(zip_strerror(archive.get()));
    static_cast<void>(archive.release());
    return content(target.get());
}

}  // namespace seamward
