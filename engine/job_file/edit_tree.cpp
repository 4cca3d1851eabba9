// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/edit_tree.h"

#include <algorithm>
#include <array>
#include <cstdlib>

namespace seamward {

namespace {

bool is_letter(char c) { return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z'); }
bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Words that YAML takes for something other than text.
bool has_meaning(std::string_view text) {
    constexpr std::array<std::string_view, 9> words{"null", "true", "false", "yes", "no", "on", "off", "y", "n"};
    std::string small(text);
    for (char& c : small) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    return std::ranges::find(words, small) != words.end();
}

/// An id or a word that needs no quotes anywhere.
bool is_simple(std::string_view text) {
    const auto inner = [](char c) { return is_letter(c) || is_digit(c) || c == '-' || c == '_' || c == '.' || c == '/'; };
    return !text.empty() && is_letter(text.front()) && std::ranges::all_of(text, inner) && !has_meaning(text);
}

/// What may stand without quotes in YAML, in brackets too, where somebody wrote such text before.
bool is_plain(std::string_view text) {
    constexpr std::string_view others = " -_./\"'$+%()";
    const auto inner = [&](char c) { return is_letter(c) || is_digit(c) || others.find(c) != std::string_view::npos; };
    if (text.empty() || text.back() == ' ' || has_meaning(text) || !std::ranges::all_of(text, inner)) return false;
    const char first = text.front();
    if (first == '.') return text.starts_with("./") || text.starts_with("../");
    if (first == '-') return text.size() > 1 && is_digit(text[1]);
    return is_letter(first) || is_digit(first) || first == '$';
}

bool is_json_word(std::string_view text) {
    const bool whole = !text.empty() && std::ranges::all_of(text, is_digit) && (text.size() == 1 || text.front() != '0');
    return whole || text == "true" || text == "false";
}

std::string in_double_quotes(std::string_view text) {
    // Letters that YAML takes for line ends, or does not take at all, are spelled by their numbers.
    constexpr std::array<std::pair<std::string_view, std::string_view>, 9> spelled{{{"\"", "\\\""},
                                                                                    {"\\", "\\\\"},
                                                                                    {"\n", "\\n"},
                                                                                    {"\t", "\\t"},
                                                                                    {"\xE2\x80\xA8", "\\u2028"},
                                                                                    {"\xE2\x80\xA9", "\\u2029"},
                                                                                    {"\xEF\xBB\xBF", "\\uFEFF"},
                                                                                    {"\xEF\xBF\xBE", "\\uFFFE"},
                                                                                    {"\xEF\xBF\xBF", "\\uFFFF"}}};
    std::string quoted = "\"";
    while (!text.empty()) {
        const auto* special = std::ranges::find_if(spelled, [&](const auto& s) { return text.starts_with(s.first); });
        quoted += special == spelled.end() ? text.substr(0, 1) : special->second;
        text.remove_prefix(special == spelled.end() ? 1 : special->first.size());
    }
    return quoted + '"';
}

std::string in_single_quotes(std::string_view text) {
    std::string quoted = "'";
    for (const char c : text) quoted += c == '\'' ? "''" : std::string(1, c);
    return quoted + '\'';
}

std::string scalar(const EditTree& tree, Syntax syntax) {
    if (syntax == Syntax::json) return tree.bare && is_json_word(tree.text) ? tree.text : in_double_quotes(tree.text);
    if (is_simple(tree.text) || (tree.bare && (is_plain(tree.text) || is_json_word(tree.text)))) return tree.text;
    return in_double_quotes(tree.text);
}

}  // namespace

EditTree::EditTree(Node node) {
    if (node.is_null()) return;
    if (node.is_scalar()) {
        kind = Kind::scalar;
        text = node.text();
        return;
    }
    children.reserve(node.size());
    if (node.is_sequence()) {
        kind = Kind::list;
        node.for_each_item([this](Node item) { children.emplace_back(item); });
        return;
    }
    kind = Kind::map;
    keys.reserve(node.size());
    node.for_each_pair([this](Node key, Node value) {
        keys.emplace_back(key.text());
        children.emplace_back(value);
    });
}

EditTree EditTree::word(std::string text) {
    EditTree tree = line(std::move(text));
    tree.bare = true;
    return tree;
}

EditTree EditTree::line(std::string text) {
    EditTree tree;
    tree.kind = Kind::scalar;
    tree.text = std::move(text);
    return tree;
}

EditTree EditTree::list(std::vector<EditTree> items) {
    EditTree tree;
    tree.kind = Kind::list;
    tree.children = std::move(items);
    return tree;
}

EditTree EditTree::map(std::vector<std::pair<std::string, EditTree>> pairs) {
    EditTree tree;
    tree.kind = Kind::map;
    for (auto& [key, value] : pairs) {
        tree.keys.push_back(std::move(key));
        tree.children.push_back(std::move(value));
    }
    return tree;
}

const EditTree* EditTree::find(std::string_view key) const {
    const auto at = std::ranges::find(keys, key);
    return kind != Kind::map || at == keys.end() ? nullptr : &children[static_cast<std::size_t>(at - keys.begin())];
}

EditTree* EditTree::find(std::string_view key) { return const_cast<EditTree*>(std::as_const(*this).find(key)); }

std::string_view EditTree::text_of(std::string_view key) const {
    const EditTree* value = find(key);
    return value == nullptr ? std::string_view() : std::string_view(value->text);
}

EditTree& EditTree::operator[](std::string_view key) {
    if (EditTree* there = find(key)) return *there;
    kind = Kind::map;
    keys.emplace_back(key);
    return children.emplace_back();
}

void EditTree::erase(std::string_view key) {
    const auto at = std::ranges::find(keys, key);
    if (at == keys.end()) return;
    children.erase(children.begin() + (at - keys.begin()));
    keys.erase(at);
}

void EditTree::push(EditTree item) {
    kind = Kind::list;
    children.push_back(std::move(item));
}

void EditTree::erase_item(std::size_t position) { children.erase(children.begin() + static_cast<std::ptrdiff_t>(position)); }

bool same(Node node, const EditTree& tree) {
    using Kind = EditTree::Kind;
    if (node.is_null() || node.is_scalar())
        return tree.kind == (node.is_null() ? Kind::null : Kind::scalar) && (node.is_null() || node.text() == tree.text);
    if (tree.kind != (node.is_sequence() ? Kind::list : Kind::map) || node.size() != tree.children.size()) return false;
    std::size_t i = 0;
    bool all = true;
    if (node.is_sequence()) {
        node.for_each_item([&](Node item) { all = all && same(item, tree.children[i++]); });
    } else {
        node.for_each_pair([&](Node key, Node value) {
            const EditTree* there = key.text() == tree.keys[i] ? &tree.children[i] : tree.find(key.text());
            all = all && there != nullptr && same(value, *there);
            ++i;
        });
    }
    return all;
}

std::string written_key(const std::string& key, Syntax syntax) {
    const auto fits = [](char c) { return is_letter(c) || c == '_' || c == '-'; };  // `on` too: nobody takes it for a truth here
    return syntax == Syntax::yaml && std::ranges::all_of(key, fits) ? key : in_one_line(EditTree::line(key), syntax);
}

std::string in_one_line(const EditTree& tree, Syntax syntax) {
    if (tree.kind == EditTree::Kind::null) return "null";
    if (tree.kind == EditTree::Kind::scalar) return scalar(tree, syntax);
    const bool map = tree.kind == EditTree::Kind::map;
    std::string text = map ? "{" : "[";
    for (std::size_t i = 0; i < tree.children.size(); ++i) {
        if (i > 0) text += ", ";
        if (map) text += written_key(tree.keys[i], syntax) + ": ";
        text += in_one_line(tree.children[i], syntax);
    }
    return text + (map ? '}' : ']');
}

std::string decimal(long long count, std::size_t digits) {
    std::string text = std::to_string(std::llabs(count));
    if (text.size() <= digits) text.insert(0, digits + 1 - text.size(), '0');
    text.insert(text.size() - digits, 1, '.');
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return (count < 0 ? "-" : "") + text;
}

std::string written_like(const EditTree& tree, std::string_view like, Syntax syntax) {
    if (tree.kind != EditTree::Kind::scalar || syntax == Syntax::json || like.empty()) return in_one_line(tree, syntax);
    const bool in_line =
        tree.text.find_first_of("\n\t") == std::string::npos && in_double_quotes(tree.text).find("\\u") == std::string::npos;
    if (like.front() == '"') return in_double_quotes(tree.text);
    if (like.front() == '\'') return in_line ? in_single_quotes(tree.text) : in_double_quotes(tree.text);
    return is_plain(tree.text) ? tree.text : in_one_line(tree, syntax);
}

}  // namespace seamward
