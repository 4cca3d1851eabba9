// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "base/file_io.h"

namespace seamward::test {

/// A file of the source folder, `docs/commands.md` for example.
inline std::string page(const std::string& name) {
    const std::filesystem::path path = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / name;
    return read_file(path, path.string(), 1 << 20);
}

/// The fenced block after `mark`, without its fences; `after` is moved behind it.
inline std::string block_after(const std::string& text, const std::string& mark, std::size_t& after) {
    const std::size_t at = text.find(mark, after);
    if (at == std::string::npos) throw std::out_of_range("the page has no " + mark);
    const std::size_t begin = text.find('\n', text.find("```", at)) + 1;
    const std::size_t end = text.find("```", begin);
    after = end + 3;
    return text.substr(begin, end - begin);
}

/// The rows of the table below a line with `heading` (`## Pests`), by the word in backquotes in their first cell: the
/// other cells, without the space around them. The table's own head is left out.
inline std::map<std::string, std::vector<std::string>> table_below(const std::string& text, const std::string& heading) {
    std::map<std::string, std::vector<std::string>> rows;
    const std::size_t at = text.find('\n' + heading + '\n');
    if (at == std::string::npos) throw std::out_of_range("the page has no " + heading);
    std::size_t begin = text.find("\n|", at) + 1;
    while (begin < text.size() && text[begin] == '|') {
        const std::size_t line_end = text.find('\n', begin);
        std::vector<std::string> cells;
        while (true) {
            const std::size_t end = text.find(" |", begin + 1);
            if (end == std::string::npos || end >= line_end) break;
            cells.push_back(text.substr(begin + 2, end - begin - 2));
            begin = end + 1;
        }
        begin = line_end + 1;
        if (cells.empty() || cells.front().size() < 2 || cells.front().front() != '`') continue;
        const std::string id = cells.front().substr(1, cells.front().size() - 2);
        if (!rows.emplace(id, std::vector<std::string>(cells.begin() + 1, cells.end())).second)
            throw std::invalid_argument(id + " stands twice below " + heading);
    }
    return rows;
}

}  // namespace seamward::test
