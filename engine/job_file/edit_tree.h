// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/document.h"

/// For the editors of this folder only.
namespace seamward {

/// What a node of a file holds, apart from how and where it is written. Aliases are followed.
struct EditTree {
    enum class Kind : std::uint8_t { null, scalar, list, map };

    Kind kind = Kind::null;
    std::string text;                ///< of a scalar
    bool bare = false;               ///< of a scalar to be written: a quantity or a word of the format, not somebody's text
    std::vector<std::string> keys;   ///< of a map
    std::vector<EditTree> children;  ///< items of a list, values of a map

    EditTree() = default;
    explicit EditTree(Node node);

    /// A quantity or a word of the format.
    [[nodiscard]] static EditTree word(std::string text);
    /// Somebody's text.
    [[nodiscard]] static EditTree line(std::string text);
    [[nodiscard]] static EditTree list(std::vector<EditTree> items);
    [[nodiscard]] static EditTree map(std::vector<std::pair<std::string, EditTree>> pairs);

    /// The value of a key of a map, or null.
    [[nodiscard]] EditTree* find(std::string_view key);
    [[nodiscard]] const EditTree* find(std::string_view key) const;
    /// The text of a scalar under a key of a map; empty when there is none.
    [[nodiscard]] std::string_view text_of(std::string_view key) const;
    /// The value of a key, made when the map has none.
    EditTree& operator[](std::string_view key);
    void erase(std::string_view key);
    void push(EditTree item);
    void erase_item(std::size_t position);
};

/// Whether the node holds the same; how it is written, and the order of keys, make no difference.
[[nodiscard]] bool same(Node node, const EditTree& tree);

/// How the file writes values.
enum class Syntax : std::uint8_t { yaml, json };

/// A key of the format.
[[nodiscard]] std::string written_key(const std::string& key, Syntax syntax);

/// The tree in one line, lists and maps in brackets.
[[nodiscard]] std::string in_one_line(const EditTree& tree, Syntax syntax);

/// A whole number of units of 10^-`digits` as a decimal without zeros at its end.
[[nodiscard]] std::string decimal(long long count, std::size_t digits);

/// A scalar in the manner of the one that it replaces, whose text in the file is `like`.
[[nodiscard]] std::string written_like(const EditTree& scalar, std::string_view like, Syntax syntax);

}  // namespace seamward
