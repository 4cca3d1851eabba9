// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/record.h"

#include <algorithm>

#include "base/nearest_word.h"
#include "base/text.h"

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

std::string mend_of(Node node) { return node.is_null() ? "write a value after the colon" : "write one value"; }

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
        if (known == keys.end() && value.is_null() && !key.text().empty() && key.text().front() >= '0' &&
            key.text().front() <= '9') {
            split_by_comma_ = true;
            report(key.place(), "a comma splits " + std::string(called) + " here, before " + in_quotes(key.text()),
                   "write numbers with a point and without commas, for example 0.25 in or 1500 mm");
        } else if (known == keys.end()) {
            report(key.place(), "unknown key " + in_quotes(key.text()) + " in " + std::string(called),
                   suggestion(key.text(), keys));
            if (const auto meant = nearest_word(key.text(), keys)) misspelled_.push_back(*meant);
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
        if (std::find(misspelled_.begin(), misspelled_.end(), key) != misspelled_.end()) continue;  // has been reported
        report(place(), std::string(called_) + " has no " + std::string(key), "add " + std::string(key) + ": ...");
    }
    return all;
}

Node Record::scalar(std::string_view key, std::string_view due) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_scalar()) return node;
    report(node.place(), std::string(key) + " holds " + kind_word(node) + " where " + std::string(due) + " is due",
           mend_of(node));
    return {};
}

template <class Value>
std::optional<Value> Record::quantity(std::string_view key, Parsed<Value> (*parse)(std::string_view)) const {
    const Node node = scalar(key, "a quantity");
    if (!node.present()) return std::nullopt;
    Parsed<Value> parsed = parse(node.text());
    if (!parsed && !split_by_comma_) report(node.place(), std::string(key) + ": " + parsed.fault.what, parsed.fault.mend);
    return parsed.value;
}

template std::optional<double> Record::quantity(std::string_view, Parsed<double> (*)(std::string_view)) const;
template std::optional<Date> Record::quantity(std::string_view, Parsed<Date> (*)(std::string_view)) const;
template std::optional<std::chrono::month_day> Record::quantity(std::string_view,
                                                                Parsed<std::chrono::month_day> (*)(std::string_view)) const;
template std::optional<Money> Record::quantity(std::string_view, Parsed<Money> (*)(std::string_view)) const;
template std::optional<std::uint32_t> Record::quantity(std::string_view, Parsed<std::uint32_t> (*)(std::string_view)) const;

std::optional<std::string> Record::line(std::string_view key) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_null() || (node.is_scalar() && is_blank(node.text()))) return std::nullopt;
    return read_line(node, key, *diagnostics_);
}

std::optional<std::string> Record::text(std::string_view key) const {
    const Node node = (*this)[key];
    if (!node.present() || node.is_null() || (node.is_scalar() && is_blank(node.text()))) return std::nullopt;
    return read_text(node, key, *diagnostics_);
}

std::string Record::required_line(std::string_view key) const {
    if (!require({key})) return "";
    return read_line((*this)[key], key, *diagnostics_).value_or("");
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
    const auto bad = [&](const std::string& what, std::string mend) {
        diagnostics.add(node.place(), std::string(called) + what, std::move(mend));
        return std::nullopt;
    };
    if (!node.is_scalar()) return bad(std::string(" holds ") + kind_word(node) + " where text is due", mend_of(node));
    std::string_view text = node.text();
    if (is_blank(text)) return bad(" is empty", "write something");
    if (text.size() > longest_text) return bad(" is longer than " + std::to_string(longest_text) + " bytes", "shorten it");
    if (has_control_character(text)) return bad(" holds a control character", "remove it");
    text.remove_prefix(text.find_first_not_of(" \t\n\r"));
    return std::string(text.substr(0, text.find_last_not_of(" \t\n\r") + 1));
}

std::optional<std::string> read_line(Node node, std::string_view called, Diagnostics& diagnostics) {
    std::optional<std::string> text = read_text(node, called, diagnostics);
    if (!text || text->find_first_of("\n\r\t") == std::string::npos) return text;
    diagnostics.add(node.place(), std::string(called) + " holds a line end or a tab", "write it in one line");
    return std::nullopt;
}

}  // namespace seamward
