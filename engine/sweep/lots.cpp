// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lots.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <string_view>
#include <unordered_set>

#include "base/diagnostics.h"
#include "base/file_io.h"
#include "base/text.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t most_list_bytes = 1ULL << 28;  ///< a million lots with long names have less

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(" \t\r");
    return begin == std::string_view::npos ? std::string_view() : text.substr(begin, text.find_last_not_of(" \t\r") - begin + 1);
}

std::string_view without_comment(std::string_view line) {
    for (std::size_t at = line.find('#'); at != std::string_view::npos; at = line.find('#', at + 1)) {
        if (at == 0 || line[at - 1] == ' ' || line[at - 1] == '\t') return line.substr(0, at);
    }
    return line;
}

/// Whether a file begins with the key of a house file, a drill, a price book or a table. Only the first key is looked at, so that
/// a job file with any fault stays a lot.
bool is_another_sort(const fs::path& path) {
    std::array<char, 4096> begin{};
    std::ifstream in(path, std::ios::binary);
    in.read(begin.data(), begin.size());
    std::string_view text(begin.data(), static_cast<std::size_t>(in.gcount()));
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size() - 1) + 1;
        std::string_view line = trimmed(text.substr(0, end));
        text.remove_prefix(end);
        while (!line.empty() && std::string_view("{\"'\n").find(line.front()) != std::string_view::npos)
            line = trimmed(line.substr(1));
        if (line.empty() || line.front() == '#' || line.front() == '%' || line.starts_with("---")) continue;
        const std::string_view key = line.substr(0, line.find_first_of("\"': \t"));
        return key.starts_with("seamward-") || key == "catalog";
    }
    return false;
}

std::vector<std::string> names_in_folder(const fs::path& folder, const RunContext& context) {
    std::vector<std::string> names;
    std::error_code error;
    fs::directory_iterator all(folder, error);
    if (error)
        throw BadInput({{folder.string(), {}, "this folder cannot be read (" + error.message() + ")", "check its permissions"}});
    for (const fs::directory_entry& entry : all) {
        context.check();
        const std::string ending = entry.path().extension().string();
        if (ending != ".yaml" && ending != ".yml" && ending != ".json") continue;
        if (entry.is_regular_file(error) && !is_another_sort(entry.path())) names.push_back(entry.path().filename().string());
    }
    std::sort(names.begin(), names.end());
    return names;
}

std::vector<std::string> names_in_list(const fs::path& list, const RunContext& context) {
    const std::string text = read_file(list, list.string(), most_list_bytes);
    std::vector<std::string> names;
    std::unordered_set<std::string_view> seen;
    std::vector<Diagnostic> faults;
    std::uint32_t number = 0;
    for (std::string_view rest = text; !rest.empty();) {
        if (++number % 1024 == 0) context.check();
        const std::size_t end = std::min(rest.find('\n'), rest.size() - 1) + 1;
        const std::string_view name = trimmed(without_comment(rest.substr(0, rest[end - 1] == '\n' ? end - 1 : end)));
        rest.remove_prefix(end);
        if (name.empty()) continue;
        if (!is_utf8(name) || has_control_character(name) || name.find('\t') != std::string_view::npos) {
            faults.push_back(
                {list.string(), {number, 1}, "this line is no name of a file", "write one job file a line, in UTF-8"});
            if (faults.size() >= 100) break;
        } else if (seen.insert(name).second) {
            names.emplace_back(name);
        } else {
            faults.push_back({list.string(), {number, 1}, in_quotes(name) + " stands twice", "keep one line"});
            if (faults.size() >= 100) break;
        }
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
    return names;
}

}  // namespace

fs::path folder_of_lots(const fs::path& list_or_folder) {
    std::error_code error;
    return fs::is_directory(list_or_folder, error) ? list_or_folder : list_or_folder.parent_path();
}

LotFiles read_lot_files(const fs::path& list_or_folder, const RunContext& context) {
    context.stage("looking for lots");
    std::error_code error;
    if (fs::is_directory(list_or_folder, error)) {
        LotFiles lots{list_or_folder, names_in_folder(list_or_folder, context)};
        if (lots.names.empty())
            throw BadInput({{list_or_folder.string(),
                             {},
                             "there is no job file in this folder",
                             "name one that has .yaml or .json files, or a list of them"}});
        return lots;
    }
    const std::string ending = list_or_folder.extension().string();
    if (ending == ".yaml" || ending == ".yml" || ending == ".json")
        throw BadInput({{list_or_folder.string(),
                         {},
                         "a sweep takes a folder of job files or a list of them, not one job file",
                         "name its folder, or use seamward trace or seamward plan"}});
    LotFiles lots{list_or_folder.parent_path(), names_in_list(list_or_folder, context)};
    if (lots.names.empty()) throw BadInput({{list_or_folder.string(), {}, "the list names no job file", "write one a line"}});
    return lots;
}

}  // namespace seamward
