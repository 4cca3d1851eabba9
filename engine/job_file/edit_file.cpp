// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/edit_file.h"

#include <algorithm>
#include <cmath>

#include "base/diagnostics.h"
#include "base/quantity.h"
#include "base/text.h"

namespace seamward {

using Kind = EditTree::Kind;

namespace {

/// Small letters, digits and dashes from a name; `other` where it has none of these.
std::string id_from(std::string_view name, std::string_view other) {
    std::string id;
    for (char c : name) {
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        const bool fits = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (fits)
            id += c;
        else if (c != '\'' && !id.empty() && id.back() != '-')
            id += '-';
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? std::string(other) : id;
}

}  // namespace

FileEditor::FileEditor(EditTree file, const std::filesystem::path& path) : file_(path.string()), tree_(std::move(file)) {
    if (tree_.kind != Kind::map) fail("this is no job file and no house file", "a job file begins with seamward: 1");
}

void FileEditor::fail(std::string what, std::string mend) const {
    throw BadInput({{file_, {}, std::move(what), std::move(mend)}});
}

EditTree& FileEditor::list(std::string_view key) {
    EditTree& found = tree_[key];
    if (found.kind == Kind::null) found.kind = Kind::list;
    if (found.kind != Kind::list) fail(std::string(key) + " is no list", "mend the file in a text editor");
    return found;
}

EditTree* FileEditor::entry(std::string_view of, std::string_view key, std::string_view text) {
    EditTree* found = tree_.find(of);
    if (found == nullptr || found->kind != Kind::list) return nullptr;
    const auto at = std::ranges::find_if(found->children, [&](const EditTree& item) { return item.text_of(key) == text; });
    return at == found->children.end() ? nullptr : &*at;
}

void FileEditor::erase_entry(std::string_view of, std::string_view key, std::string_view text) {
    if (EditTree* found = tree_.find(of))
        std::erase_if(found->children, [&](const EditTree& item) { return item.text_of(key) == text; });
}

std::string FileEditor::new_id(const EditTree& among, const std::string& name, std::string_view other,
                               const std::vector<std::string>& taken) const {
    const std::string wish = id_from(name, other);
    const auto used = [&](const std::string& id) {
        return std::ranges::find(taken, id) != taken.end() ||
               std::ranges::any_of(among.children, [&](const EditTree& item) { return item.text_of("id") == id; });
    };
    std::string id = wish;
    for (int i = 2; used(id); ++i) id = wish + '-' + std::to_string(i);
    return id;
}

EditTree FileEditor::size(const std::string& text, std::string_view key) const {
    if (key == "area") {
        if (const auto area = parse_area(text); !area) fail(area.fault.what, area.fault.mend);
    } else if (const auto length = key == "length" ? parse_distance(text) : parse_length(text); !length) {
        fail(std::string(key) + ": " + length.fault.what, length.fault.mend);
    }
    return EditTree::word(text);
}

void FileEditor::set_size(EditTree& sizes, std::string_view key, const std::string& text) const {
    EditTree made = size(text, key);
    EditTree& there = sizes[key];
    const auto value = key == "area" ? parse_area(text) : parse_distance(text);
    const auto before = key == "area" ? parse_area(there.text) : parse_distance(there.text);
    if (there.kind != Kind::scalar || before.value != value.value) there = std::move(made);
}

void FileEditor::set_text(EditTree& entry, std::string_view key, const std::string& text) const {
    if (!is_utf8(text) || has_control_character(text))
        fail(std::string(key) + " holds characters that are no text", "remove them");
    if (is_blank(text))
        entry.erase(key);
    else
        entry[key] = EditTree::line(text);
}

void FileEditor::set_line(EditTree& entry, std::string_view key, const std::string& text, std::string_view called) const {
    if (text.find_first_of("\r\n") != std::string::npos) fail(std::string(called) + " is one line", "remove the line ends");
    set_text(entry, key, text);
}

EditTree coordinate(double meters) { return EditTree::word(decimal(std::llround(meters * 1e4), 4) + " m"); }

}  // namespace seamward
