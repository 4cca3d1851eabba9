// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/document_builder.h"

#include <algorithm>
#include <unordered_set>
#include <utility>

#include "base/text.h"

namespace seamward {

DocumentBuilder::DocumentBuilder(std::string shown_as, Spans spans) : keeps_spans_(spans == Spans::kept) {
    document_.file_ = std::move(shown_as);
}

void DocumentBuilder::fail(Place place, std::string what, std::string mend) const {
    throw BadInput({{document_.file_, place, std::move(what), std::move(mend)}});
}

void DocumentBuilder::count_child() {
    if (!open_.empty()) ++open_.back().children;
}

std::uint32_t DocumentBuilder::add(Place place, Document::Kind kind, std::string_view anchor) {
    if (document_.records_.size() >= Document::most_nodes) {
        fail(place, "the file holds more than " + std::to_string(Document::most_nodes) + " values", "split it");
    }
    if (open_.empty() && !document_.records_.empty()) fail(place, "a second document begins here", "keep one document in a file");
    count_child();
    const auto index = static_cast<std::uint32_t>(document_.records_.size());
    document_.records_.push_back({.line = place.line, .column = place.column, .end = index + 1, .kind = kind});
    if (keeps_spans_) document_.spans_.push_back(next_span_);
    const bool container = kind == Document::Kind::sequence || kind == Document::Kind::mapping;
    if (!anchor.empty() && !container) anchors_[std::string(anchor)] = {index, 1};
    return index;
}

void DocumentBuilder::scalar(Place place, std::string_view text, Document::Kind kind, std::string_view anchor) {
    const std::uint32_t index = add(place, kind, anchor);
    document_.records_[index].text_begin = static_cast<std::uint32_t>(document_.text_.size());
    document_.records_[index].size = static_cast<std::uint32_t>(text.size());
    document_.text_ += text;
}

void DocumentBuilder::begin(Place place, Document::Kind kind, std::string_view anchor) {
    if (open_.size() >= Document::deepest) {
        fail(place, "nested more than " + std::to_string(Document::deepest) + " levels deep", "flatten the file");
    }
    const std::uint32_t index = add(place, kind, anchor);
    open_.push_back({index, 0, aliased_, std::string(anchor)});
}

void DocumentBuilder::end(std::size_t at) {
    const Open open = std::move(open_.back());
    open_.pop_back();
    Document::Record& record = document_.records_[open.node];
    record.end = static_cast<std::uint32_t>(document_.records_.size());
    if (keeps_spans_) {
        // The parser ends a block of lines where the next thing begins; its last value says where it really does.
        Span& span = document_.spans_[open.node];
        if (span.in_brackets)
            span.end = at;
        else
            for (std::uint32_t i = open.node + 1; i < record.end; i = document_.records_[i].end)
                span.end = std::max(span.end, document_.spans_[i].end);
    }
    if (record.kind == Document::Kind::mapping) {
        record.size = open.children / 2;
        check_keys(open.node);
    } else {
        record.size = open.children;
    }
    if (!open.anchor.empty()) anchors_[open.anchor] = {open.node, record.end - open.node + aliased_ - open.aliased_before};
}

void DocumentBuilder::alias(Place place, std::string_view anchor) {
    const auto found = anchors_.find(std::string(anchor));
    if (found == anchors_.end()) {
        fail(place, "alias " + in_quotes("*" + std::string(anchor)) + " has no finished anchor before it",
             "define " + in_quotes("&" + std::string(anchor)) + " above");
    }
    aliased_ += found->second.stands_for;
    if (aliased_ > Document::most_aliased) {
        fail(place, "aliases blow this file up to more than " + std::to_string(Document::most_aliased) + " values",
             "write the values out, or remove the aliases");
    }
    const std::uint32_t index = add(place, document_.records_[found->second.node].kind, {});
    document_.records_[index].alias = true;
    document_.records_[index].text_begin = found->second.node;
}

void DocumentBuilder::check_keys(std::uint32_t mapping) {
    const Node node(document_, mapping);
    constexpr std::size_t few = 16;
    std::vector<std::string_view> seen;
    std::unordered_set<std::string_view> many;
    node.for_each_pair([&](Node key, Node) {
        if (!key.is_scalar()) fail(key.place(), "a key must be a word", "write key: value");
        const std::string_view text = key.text();
        const bool repeated =
            node.size() > few ? !many.insert(text).second : std::find(seen.begin(), seen.end(), text) != seen.end();
        if (repeated) fail(key.place(), "key " + in_quotes(text) + " stands twice in one mapping", "keep one of them");
        seen.push_back(text);
    });
}

Document DocumentBuilder::finish() {
    if (document_.records_.empty()) {
        document_.records_.push_back({.line = 1, .column = 1, .end = 1});
        if (keeps_spans_) document_.spans_.push_back({});
    }
    return std::move(document_);
}

}  // namespace seamward
