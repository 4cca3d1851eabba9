// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "base/document.h"

namespace seamward {

/// Makes a Document from the events of a parser: the one place where nesting, aliases, repeated keys and size
/// are checked, whatever the syntax. Every member throws BadInput when its limit is passed.
class DocumentBuilder {
public:
    explicit DocumentBuilder(std::string shown_as, Spans spans = Spans::dropped);

    /// Where the node of the next call stands; its end is corrected by end() when the node has children.
    void stands(const Span& span) { next_span_ = span; }

    void scalar(Place place, std::string_view text, Document::Kind kind, std::string_view anchor = {});
    void begin(Place place, Document::Kind kind, std::string_view anchor = {});
    /// `at`: the end in bytes of what stands in brackets.
    void end(std::size_t at = 0);
    void alias(Place place, std::string_view anchor);

    /// Throws BadInput.
    [[noreturn]] void fail(Place place, std::string what, std::string mend = "") const;
    /// The finished document; an empty file is a null node.
    [[nodiscard]] Document finish();

private:
    struct Open {
        std::uint32_t node;
        std::uint32_t children;
        std::uint64_t aliased_before;
        std::string anchor;
    };
    struct Anchor {
        std::uint32_t node;
        std::uint64_t stands_for;  ///< nodes, aliases inside followed
    };

    std::uint32_t add(Place place, Document::Kind kind, std::string_view anchor);
    void count_child();
    void check_keys(std::uint32_t mapping);

    Document document_;
    bool keeps_spans_;
    Span next_span_;
    std::vector<Open> open_;
    std::unordered_map<std::string, Anchor> anchors_;
    std::uint64_t aliased_ = 0;  ///< nodes that the aliases so far stand for
};

}  // namespace seamward
