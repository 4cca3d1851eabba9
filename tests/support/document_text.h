// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <stdexcept>
#include <string>
#include <string_view>

#include "base/document.h"

namespace seamward::test {

/// What a node says, on one line: `{a: 'quoted', b: [1, ~]}`. With `places` each node has its own before it:
/// `1:1{1:2a:1:5...}`.
inline std::string document_text(Node node, bool places = false) {
    std::string text = places ? std::to_string(node.place().line) + ':' + std::to_string(node.place().column) : "";
    switch (node.kind()) {
        case Document::Kind::null: return text + '~';
        case Document::Kind::plain: return text + std::string(node.text());
        case Document::Kind::quoted: return text + '\'' + std::string(node.text()) + '\'';
        case Document::Kind::sequence: {
            std::string items;
            node.for_each_item([&](Node item) { items += (items.empty() ? "" : ", ") + document_text(item, places); });
            return text + '[' + items + ']';
        }
        case Document::Kind::mapping: break;
    }
    std::string pairs;
    node.for_each_pair([&](Node key, Node value) {
        pairs += (pairs.empty() ? "" : ", ") + document_text(key, places) + ": " + document_text(value, places);
    });
    return text + '{' + pairs + '}';
}

/// The value of a key of a mapping, or an absent node.
inline Node value_of(Node mapping, std::string_view key) {
    Node found;
    mapping.for_each_pair([&](Node k, Node value) {
        if (k.text() == key) found = value;
    });
    return found;
}

/// An item of a sequence.
inline Node item_of(Node sequence, std::size_t wanted) {
    Node found;
    std::size_t at = 0;
    sequence.for_each_item([&](Node item) {
        if (at++ == wanted) found = item;
    });
    if (!found.present()) throw std::out_of_range("no such item");
    return found;
}

}  // namespace seamward::test
