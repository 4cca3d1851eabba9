// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/provisions/bcf_archive.h"

#include <zip.h>

#include <memory>
#include <stdexcept>

namespace seamward::test {

BcfArchive::BcfArchive(const std::string& bytes) {
    zip_error_t error;
    zip_error_init(&error);
    zip_source_t* source = zip_source_buffer_create(bytes.data(), bytes.size(), 0, &error);
    const std::unique_ptr<zip_t, decltype(&zip_discard)> archive(zip_open_from_source(source, ZIP_RDONLY | ZIP_CHECKCONS, &error),
                                                                 zip_discard);
    if (!archive) throw std::runtime_error(zip_error_strerror(&error));
    const zip_int64_t count = zip_get_num_entries(archive.get(), 0);
    for (zip_uint64_t i = 0; i < static_cast<zip_uint64_t>(count); ++i) {
        zip_stat_t about;
        if (zip_stat_index(archive.get(), i, 0, &about) != 0) throw std::runtime_error("an entry is not told of");
        const std::string name = about.name;
        names.push_back(name);
        if (name.ends_with('/')) {
            topics.push_back(name.substr(0, name.size() - 1));
            continue;
        }
        const std::unique_ptr<zip_file_t, decltype(&zip_fclose)> file(zip_fopen_index(archive.get(), i, 0), zip_fclose);
        std::string content(about.size, '\0');
        if (!file || zip_fread(file.get(), content.data(), content.size()) != static_cast<zip_int64_t>(content.size()))
            throw std::runtime_error("an entry does not unpack");
        files[name] = content;
    }
}

std::string only(const PageElement& within, const std::string& name) {
    const std::vector<const PageElement*> found = within.named(name);
    if (found.size() != 1) throw std::out_of_range(std::to_string(found.size()) + " of " + name);
    return found.front()->own_text;
}

std::vector<double> numbers(const PageElement& within, const std::string& name) {
    const std::vector<const PageElement*> found = within.named(name);
    if (found.size() != 1) throw std::out_of_range(std::to_string(found.size()) + " of " + name);
    return {std::stod(only(*found.front(), "X")), std::stod(only(*found.front(), "Y")), std::stod(only(*found.front(), "Z"))};
}

std::vector<std::string> all_of(const PageElement& within, const std::string& name) {
    std::vector<std::string> texts;
    for (const PageElement* element : within.named(name)) texts.push_back(element->own_text);
    return texts;
}

}  // namespace seamward::test
