// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/record.h"

#include <algorithm>

#include "base/nearest_word.h"

namespace seamward {

namespace {

constexpr std::size_t longest_text = 4000;

const char* kind_word(Node node) {
    switch (node.kind()) {
        case Document::Kind::null: return "nothing";
        case Document::Kind::sequence: return "a list";
        case Document::Kind::mapping: return "a mapping";
        default: return "text";
    }
}

bool is_blank(std::string_view text) { return text.find_first_not_of(" \t\n\r") == std::string_view::npos; }

std::string in_quotes(std::string_view text) { return '"' + std::string(text.substr(0, 80)) + '"'; }

}  // namespace

Record::Record(Node mapping, Words keys, std::string_view called, Diagnostics& diagnostics)
    : mapping_(mapping),
      called_(called),
      diagnostics_(&diagnostics),
      usable_(mapping.present() && (mapping.is_mapping() || mapping.is_null())) {
    if (!mapping.present()) return;
    if (!usable_) {
        report(mapping.place(), std::string(called) + " must be a mapping, not " + kind_word(mapping),
               "write keys and values, for example {" + std::string(keys.front()) + ": ...}");
        return;
    }
    mapping.for_each_pair([&](Node key, Node value) {
        const auto known = std::find(keys.begin(), keys.end(), key.text());
        if (known == keys.end()) {
            report(key.place(), "unknown key " + in_quotes(key.text()) + " in " + std::string(called),
                   suggestion(key.text(), keys));
        } else {
            fields_[field_count_++] = {*known, value};  // keys are distinct, and no table has more than most_keys
        }
    });
}

Node Record::operator[](std::string_view key) const {
    for (std::size_t i = 0; i < field_count_; ++i) {
        if (fields_[i].key == key) return fields_[i].value;
    }
    return {};
}

bool Record::require(std::initializer_list<std::string_view> keys) const {
    bool all = usable_;
    for (const std::string_view key : keys) {
        if (!usable_ || has(key)) continue;
        all = false;
        report(place(), std::string(called_) + " has no " + std::string(key), "add " + std::string(key) + ": ...");
    }
    return all;
}

Node Record::scalar(std::string_view key, std::string_view due) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_scalar()) return node;
    report(node.place(), std::string(key) + " holds " + kind_word(node) + " where " + std::string(due) + " is due");
    return {};
}

template <class Value>
std::optional<Value> Record::quantity(std::string_view key, Parsed<Value> (*parse)(std::string_view)) const {
    const Node node = scalar(key, "a quantity");
    if (!node.present()) return std::nullopt;
    Parsed<Value> parsed = parse(node.text());
    if (!parsed) report(node.place(), std::string(key) + ": " + parsed.fault.what, parsed.fault.mend);
    return parsed.value;
}

template std::optional<double> Record::quantity(std::string_view, Parsed<double> (*)(std::string_view)) const;
template std::optional<Money> Record::quantity(std::string_view, Parsed<Money> (*)(std::string_view)) const;
template std::optional<std::uint32_t> Record::quantity(std::string_view, Parsed<std::uint32_t> (*)(std::string_view)) const;

std::optional<std::string> Record::text(std::string_view key) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_null() || (node.is_scalar() && is_blank(node.text()))) return std::nullopt;
    return read_text(node, key, *diagnostics_);
}

std::string Record::required_text(std::string_view key) const {
    if (!require({key})) return "";
    return read_text((*this)[key], key, *diagnostics_).value_or("");
}

std::optional<bool> Record::truth(std::string_view key) const {
    const Node node = scalar(key, "true or false");
    if (!node.present()) return std::nullopt;
    if (node.kind() == Document::Kind::plain && node.text() == "true") return true;
    if (node.kind() == Document::Kind::plain && node.text() == "false") return false;
    report(node.place(), std::string(key) + ": " + in_quotes(node.text()) + " is neither true nor false", "write true or false");
    return std::nullopt;
}

std::optional<std::size_t> Record::word(std::string_view key, Words words) const {
    const Node node = scalar(key, "a word");
    if (!node.present()) return std::nullopt;
    const auto found = std::find(words.begin(), words.end(), node.text());
    if (found != words.end()) return static_cast<std::size_t>(found - words.begin());
    report(node.place(), "unknown " + std::string(key) + ' ' + in_quotes(node.text()), suggestion(node.text(), words));
    return std::nullopt;
}

void Record::each(std::string_view key, const std::function<void(Node)>& visit) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_null()) return;
    if (!node.is_sequence()) {
        report(node.place(), std::string(key) + " must be a list, not " + kind_word(node),
               "write [a, b] or one item a line, each after a dash");
        return;
    }
    node.for_each_item(visit);
}

std::optional<std::string> read_text(Node node, std::string_view called, Diagnostics& diagnostics) {
    const auto bad = [&](std::string what, std::string mend = "") {
        diagnostics.add(node.place(), std::string(called) + std::move(what), std::move(mend));
        return std::nullopt;
    };
    if (!node.is_scalar()) return bad(std::string(" holds ") + kind_word(node) + " where text is due");
    const std::string_view text = node.text();
    if (is_blank(text)) return bad(" is empty", "write something or leave the key out");
    if (text.size() > longest_text) return bad(" is longer than " + std::to_string(longest_text) + " bytes", "shorten it");
    const bool control = std::any_of(text.begin(), text.end(), [](char c) {
        return (static_cast<unsigned char>(c) < 0x20 && c != '\n' && c != '\t') || c == 0x7f;
    });
    if (control) return bad(" holds a control character", "remove it");
    return std::string(text);
}

}  // namespace seamward
