// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

/// For the editors of this folder only.
namespace seamward {

/// Lines and blanks of a text around its bytes.
class TextLines {
public:
    struct Range {
        std::size_t begin = 0;
        std::size_t end = 0;
    };

    explicit TextLines(std::string_view text) : text_(text) {}

    /// The line end that the text uses.
    [[nodiscard]] std::string newline() const;
    /// The end of the line of a byte, before its line end.
    [[nodiscard]] std::size_t end_of(std::size_t at) const;
    [[nodiscard]] bool is_first_on_line(std::size_t at) const { return is_blank(begin_of(at), at); }
    /// Whether nothing but blanks and perhaps a comment follow on the line.
    [[nodiscard]] bool rest_is_blank(std::size_t at) const;
    /// What stands before a byte on its line, blanks only.
    [[nodiscard]] std::string_view indent_before(std::size_t at) const;
    /// Spaces, tabs and line ends only.
    [[nodiscard]] bool is_blank(std::size_t begin, std::size_t end) const;
    /// The next byte that is no space or tab.
    [[nodiscard]] std::size_t skip_blanks(std::size_t at) const;
    /// The next byte that is no space, tab or line end and in no comment.
    [[nodiscard]] std::size_t skip_blanks_and_comments(std::size_t at) const;
    /// The lines from that of `begin` to that of `end`, with a line end: the last one's, or where the text ends without, the one
    /// before.
    [[nodiscard]] Range whole_lines(std::size_t begin, std::size_t end) const;

private:
    [[nodiscard]] std::size_t begin_of(std::size_t at) const;

    std::string_view text_;
};

/// Changes of a text, collected in any order. What is inserted at the end of something erased stays.
class TextChanges {
public:
    void replace(std::size_t begin, std::size_t end, std::string by) { all_.push_back({begin, end, std::move(by)}); }
    void insert(std::size_t at, std::string text) { replace(at, at, std::move(text)); }
    void erase(TextLines::Range range) { replace(range.begin, range.end, {}); }
    [[nodiscard]] std::string applied(std::string_view text) const;

private:
    struct One {
        std::size_t begin, end;
        std::string by;
    };
    std::vector<One> all_;
};

}  // namespace seamward
