// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostics.h"
#include "base/text_span.h"

namespace seamward {

class Node;

/// A parsed text file (YAML or JSON): a tree of scalars, sequences and mappings, each with its place in the file.
/// Scalars stay text; what they mean is decided by whoever reads them. Nodes stand in one array in file order,
/// 24 bytes each and the text of scalars once.
class Document {
public:
    enum class Kind : std::uint8_t { null, plain, quoted, sequence, mapping };

    /// Limits that no honest file reaches.
    static constexpr std::uint64_t most_bytes = 1ULL << 30;
    static constexpr std::uint32_t most_nodes = 100'000'000;
    static constexpr std::uint32_t deepest = 64;
    /// How many nodes a file may stand for once aliases are followed, beyond those it spells out.
    static constexpr std::uint64_t most_aliased = 1'000'000;

    [[nodiscard]] Node root() const;
    [[nodiscard]] const std::string& file() const { return file_; }

private:
    friend class Node;
    friend class DocumentBuilder;

    struct Record {
        std::uint32_t line = 0;
        std::uint32_t column = 0;
        std::uint32_t text_begin = 0;  ///< of a scalar, in text_; of an alias, the node it stands for
        std::uint32_t size = 0;        ///< letters of a scalar, items of a sequence, pairs of a mapping
        std::uint32_t end = 0;         ///< one past the last node of this subtree
        Kind kind = Kind::null;
        bool alias = false;
    };

    std::string file_;
    std::vector<Record> records_;
    std::vector<Span> spans_;  ///< of the records, or empty
    std::string text_;
};

/// A view of one node. Valid as long as its document is; a default-made node is absent.
class Node {
public:
    Node() = default;

    [[nodiscard]] bool present() const { return document_ != nullptr; }
    [[nodiscard]] Document::Kind kind() const { return record().kind; }
    [[nodiscard]] bool is_null() const { return kind() == Document::Kind::null; }
    [[nodiscard]] bool is_scalar() const { return kind() == Document::Kind::plain || kind() == Document::Kind::quoted; }
    [[nodiscard]] bool is_sequence() const { return kind() == Document::Kind::sequence; }
    [[nodiscard]] bool is_mapping() const { return kind() == Document::Kind::mapping; }

    /// Where the node stands; an alias stands where it was written, not where it points.
    [[nodiscard]] Place place() const;
    /// The same in bytes; of a document that keeps spans.
    [[nodiscard]] Span span() const;
    [[nodiscard]] bool is_alias() const { return written_ != target_; }
    /// The text of a scalar, empty for anything else.
    [[nodiscard]] std::string_view text() const;
    /// Items of a sequence, pairs of a mapping, 0 for anything else.
    [[nodiscard]] std::size_t size() const { return is_sequence() || is_mapping() ? record().size : 0; }

    /// Calls `visit(Node item)` for each item of a sequence, in order.
    template <class Visit>
    void for_each_item(Visit&& visit) const;
    /// Calls `visit(Node key, Node value)` for each pair of a mapping, in order.
    template <class Visit>
    void for_each_pair(Visit&& visit) const;

private:
    friend class Document;
    friend class DocumentBuilder;
    Node(const Document& document, std::uint32_t index);

    [[nodiscard]] const Document::Record& record() const { return document_->records_[target_]; }

    const Document* document_ = nullptr;
    std::uint32_t written_ = 0;  ///< the node as written, perhaps an alias
    std::uint32_t target_ = 0;   ///< the node that it stands for
};

template <class Visit>
void Node::for_each_item(Visit&& visit) const {
    std::uint32_t next = target_ + 1;
    for (std::size_t i = 0; i < size(); ++i) {
        visit(Node(*document_, next));
        next = document_->records_[next].end;
    }
}

template <class Visit>
void Node::for_each_pair(Visit&& visit) const {
    std::uint32_t next = target_ + 1;
    for (std::size_t i = 0; i < size(); ++i) {
        const std::uint32_t value = document_->records_[next].end;
        visit(Node(*document_, next), Node(*document_, value));
        next = document_->records_[value].end;
    }
}

/// Parses a YAML file, or a JSON file when its name ends in `.json`. Time and memory are linear in the file.
/// Throws BadInput on a missing, unreadable, too large, wrongly encoded or malformed file, on two documents in
/// one file, on a mapping with the same key twice, on nesting deeper than Document::deepest, and on aliases that
/// blow up. `shown_as` is the name used in messages.
[[nodiscard]] Document read_document(const std::filesystem::path& path, const std::string& shown_as);

/// The same from text in memory.
[[nodiscard]] Document parse_yaml(std::string_view text, const std::string& shown_as, Spans spans = Spans::dropped);
[[nodiscard]] Document parse_json(std::string_view text, const std::string& shown_as, Spans spans = Spans::dropped);

}  // namespace seamward
