// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lots.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <limits>
#include <string_view>
#include <unordered_set>

#include "base/diagnostics.h"
#include "base/document.h"
#include "base/file_io.h"
#include "base/text.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

constexpr std::uint64_t most_list_bytes = 1ULL << 28;  ///< a million lots with long names have less
constexpr std::size_t most_named = 64;                 ///< values of a key that are looked at; an honest job has one
constexpr std::size_t most_of_value = 8192;            ///< bytes after a key; no path is longer

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

std::string_view without_byte_order_mark(std::string_view text) {
    return text.starts_with("\xEF\xBB\xBF") ? text.substr(3) : text;
}

bool is_name_of_file(std::string_view name) {
    return is_utf8(name) && !has_control_character(name) && name.find_first_of("\t\r\n") == std::string_view::npos;
}

/// False at the end. Of a long line only the beginning comes.
bool next_line(std::istream& in, std::string& line) {
    std::array<char, 4096> begin{};
    in.getline(begin.data(), begin.size());
    line = begin.data();
    if (in.gcount() == 0) return false;
    if (in.fail() && !in.eof()) {
        in.clear();
        in.ignore(std::numeric_limits<std::streamsize>::max(), '\n');
    }
    return true;
}

/// Whether a file begins with the key of a house file, a drill, a price book or a table. Only the first key is looked at, so that
/// a job file with any fault stays a lot.
bool is_another_sort(const fs::path& path) {
    std::ifstream in(path, std::ios::binary);
    std::string text;
    for (bool first = true; next_line(in, text); first = false) {
        std::string_view line = trimmed(first ? without_byte_order_mark(text) : text);
        while (!line.empty() && std::string_view("{\"'").find(line.front()) != std::string_view::npos)
            line = trimmed(line.substr(1));
        if (line.empty() || line.front() == '#' || line.front() == '%' || line.starts_with("---")) continue;
        const std::string_view key = line.substr(0, line.find_first_of("\"': \t"));
        return key.starts_with("seamward-") || key == "catalog";
    }
    return false;
}

/// A name that can be told, and that no file of the folder has.
std::string shown_name(std::string_view name, const std::unordered_set<std::string>& taken) {
    std::string shown = printable(name);
    std::replace_if(
        shown.begin(), shown.end(), [](char letter) { return letter == '\t' || letter == '\r' || letter == '\n'; }, '?');
    while (taken.contains(shown)) shown += '?';
    return shown;
}

LotFiles lots_in_folder(const fs::path& folder, const RunContext& context) {
    LotFiles lots{folder, {}, {}};
    std::vector<std::string> odd;
    std::error_code error;
    fs::directory_iterator all(folder, error);
    if (error)
        throw BadInput({{folder.string(), {}, "this folder cannot be read (" + error.message() + ")", "check its permissions"}});
    for (const fs::directory_entry& entry : all) {
        context.check();
        const std::string ending = entry.path().extension().string();
        if (ending != ".yaml" && ending != ".yml" && ending != ".json") continue;
        if (!entry.is_regular_file(error) || is_another_sort(entry.path())) continue;
        std::string name = entry.path().filename().string();
        (is_name_of_file(name) ? lots.names : odd).push_back(std::move(name));
    }
    if (!odd.empty()) {
        std::unordered_set<std::string> taken(lots.names.begin(), lots.names.end());
        std::sort(odd.begin(), odd.end());
        for (const std::string& name : odd) {
            lots.misnamed.push_back(shown_name(name, taken));
            taken.insert(lots.misnamed.back());
        }
        lots.names.insert(lots.names.end(), lots.misnamed.begin(), lots.misnamed.end());
    }
    std::sort(lots.names.begin(), lots.names.end());
    return lots;
}

std::vector<std::string> names_in_list(const fs::path& list, const RunContext& context) {
    const std::string text = read_file(list, list.string(), most_list_bytes);
    std::vector<std::string> names;
    std::unordered_set<std::string> seen;
    std::error_code error;  // without a folder of the program, names stay as they are
    const fs::path folder = fs::current_path(error) / list.parent_path();
    std::vector<Diagnostic> faults;
    std::uint32_t number = 0;
    for (std::string_view rest = without_byte_order_mark(text); !rest.empty();) {
        if (++number % 1024 == 0) context.check();
        const std::size_t end = std::min(rest.find('\n'), rest.size() - 1) + 1;
        const std::string_view name = trimmed(without_comment(rest.substr(0, rest[end - 1] == '\n' ? end - 1 : end)));
        rest.remove_prefix(end);
        if (name.empty()) continue;
        if (!is_name_of_file(name)) {
            faults.push_back(
                {list.string(), {number, 1}, "this line is no name of a file", "write one job file a line, in UTF-8"});
            if (faults.size() >= 100) break;
        } else if (seen.insert((folder / name).lexically_normal().string()).second) {
            names.emplace_back(name);
        } else {
            faults.push_back({list.string(), {number, 1}, in_quotes(name) + " stands twice", "keep one line"});
            if (faults.size() >= 100) break;
        }
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
    return names;
}

bool is_of_word(char letter) {
    return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9') ||
           letter == '-' || letter == '_';
}

/// What may stand as the value at the beginning of a text: what is in quotes, or all up to the end of the line, and up to what
/// ends it in a list in braces.
std::vector<std::string_view> values_at(std::string_view text) {
    text.remove_prefix(std::min(text.find_first_not_of(" \t\r\n"), text.size()));
    if (text.empty()) return {};
    if (text.front() == '"' || text.front() == '\'') return {text.substr(1, text.find(text.front(), 1) - 1)};
    const std::string_view line = trimmed(without_comment(text.substr(0, text.find('\n'))));
    return {line, trimmed(line.substr(0, line.find_first_of(",}")))};
}

/// Adds the values of a key, in bare letters or in quotes.
void add_values_of(std::string_view key, std::string_view text, std::vector<std::string_view>& values) {
    std::size_t left = most_named;
    for (std::size_t at = text.find(key); at != std::string_view::npos && left > 0; at = text.find(key, at + 1)) {
        if (at > 0 && is_of_word(text[at - 1])) continue;
        std::string_view rest = text.substr(at + key.size(), most_of_value);
        if (!rest.empty() && (rest.front() == '"' || rest.front() == '\'')) rest.remove_prefix(1);
        rest.remove_prefix(std::min(rest.find_first_not_of(" \t\r\n"), rest.size()));
        if (rest.empty() || rest.front() != ':') continue;
        --left;
        for (const std::string_view value : values_at(rest.substr(1))) {
            if (!value.empty() && is_name_of_file(value)) values.push_back(value);
        }
    }
}

}  // namespace

fs::path folder_of_lots(const fs::path& list_or_folder) {
    std::error_code error;
    return fs::is_directory(list_or_folder, error) ? list_or_folder : list_or_folder.parent_path();
}

void refuse_pipes_and_devices(const fs::path& path, const std::string& shown_as) {
    std::error_code error;
    const fs::file_status status = fs::status(path, error);
    if (fs::exists(status) && !fs::is_regular_file(status) && !fs::is_directory(status))
        throw BadInput({{shown_as, {}, "is a pipe or a device, not a file", "name a file"}});
}

std::string read_lot(const fs::path& path, const std::string& shown_as) {
    refuse_pipes_and_devices(path, shown_as);
    return read_file(path, shown_as, Document::most_bytes);
}

std::vector<fs::path> files_named_in(std::string_view text, const fs::path& job_file) {
    std::vector<std::string_view> values;
    for (const std::string_view key : {"house", "file"}) add_values_of(key, text, values);
    std::vector<fs::path> files;
    for (const std::string_view value : values) files.push_back(job_file.parent_path() / value);
    std::sort(files.begin(), files.end());
    files.erase(std::unique(files.begin(), files.end()), files.end());
    return files;
}

LotFiles read_lot_files(const fs::path& list_or_folder, const RunContext& context) {
    context.stage("looking for lots");
    std::error_code error;
    if (fs::is_directory(list_or_folder, error)) {
        LotFiles lots = lots_in_folder(list_or_folder, context);
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
    LotFiles lots{list_or_folder.parent_path(), names_in_list(list_or_folder, context), {}};
    if (lots.names.empty()) throw BadInput({{list_or_folder.string(), {}, "the list names no job file", "write one a line"}});
    return lots;
}

}  // namespace seamward
