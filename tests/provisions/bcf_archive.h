// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "tests/support/page_reader.h"

namespace seamward::test {

/// A BCF file as others read it: unpacked by libzip, its XML read by expat.
struct BcfArchive {
    explicit BcfArchive(const std::string& bytes);

    std::vector<std::string> names;            ///< of all entries, in their order
    std::map<std::string, std::string> files;  ///< bytes by name; without folders
    std::vector<std::string> topics;           ///< GUIDs, in the order of their folders

    [[nodiscard]] bool has(const std::string& name) const { return files.contains(name); }
    [[nodiscard]] const std::string& bytes(const std::string& name) const { return files.at(name); }
    [[nodiscard]] PageElement xml(const std::string& name) const { return read_xml(files.at(name)); }
    [[nodiscard]] PageElement markup(std::size_t topic) const { return xml(topics.at(topic) + "/markup.bcf"); }
    [[nodiscard]] PageElement view(std::size_t topic) const { return xml(topics.at(topic) + "/viewpoint.bcfv"); }
};

/// The text of the only element of that name, to the letter. Throws std::out_of_range when there is none.
[[nodiscard]] std::string only(const PageElement& within, const std::string& name);
/// The numbers of its X, Y and Z.
[[nodiscard]] std::vector<double> numbers(const PageElement& within, const std::string& name);
/// What all elements of that name say.
[[nodiscard]] std::vector<std::string> all_of(const PageElement& within, const std::string& name);

}  // namespace seamward::test
