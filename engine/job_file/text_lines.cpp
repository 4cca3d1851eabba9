// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/text_lines.h"

#include <algorithm>

namespace seamward {

std::string TextLines::newline() const {
    const std::size_t at = text_.find('\n');
    return at != std::string_view::npos && at > 0 && text_[at - 1] == '\r' ? "\r\n" : "\n";
}

std::size_t TextLines::begin_of(std::size_t at) const {
    const std::size_t before = at == 0 ? std::string_view::npos : text_.rfind('\n', at - 1);
    return before == std::string_view::npos ? 0 : before + 1;
}

std::size_t TextLines::end_of(std::size_t at) const {
    const std::size_t end = std::min(text_.find('\n', at), text_.size());
    return end > at && text_[end - 1] == '\r' ? end - 1 : end;
}

bool TextLines::rest_is_blank(std::size_t at) const {
    const std::size_t next = skip_blanks(at);
    return next >= end_of(at) || text_[next] == '#';
}

std::string_view TextLines::indent_before(std::size_t at) const { return text_.substr(begin_of(at), at - begin_of(at)); }

bool TextLines::is_blank(std::size_t begin, std::size_t end) const {
    return std::ranges::all_of(text_.substr(begin, end - begin),
                               [](char c) { return c == ' ' || c == '\t' || c == '\r' || c == '\n'; });
}

std::size_t TextLines::skip_blanks(std::size_t at) const { return std::min(text_.find_first_not_of(" \t", at), text_.size()); }

std::size_t TextLines::skip_blanks_and_comments(std::size_t at) const {
    for (;;) {
        at = std::min(text_.find_first_not_of(" \t\r\n", at), text_.size());
        if (at == text_.size() || text_[at] != '#') return at;
        at = end_of(at);
    }
}

TextLines::Range TextLines::whole_lines(std::size_t begin, std::size_t end) const {
    begin = begin_of(begin);
    const std::size_t after = text_.find('\n', end);
    if (after != std::string_view::npos) return {begin, after + 1};
    if (begin > 0) --begin;
    if (begin > 0 && text_[begin - 1] == '\r') --begin;
    return {begin, text_.size()};
}

std::string TextChanges::applied(std::string_view text) const {
    std::vector<One> sorted = all_;
    std::ranges::stable_sort(sorted, {}, &One::begin);
    std::string made;
    std::size_t done = 0;
    for (const One& one : sorted) {
        if (one.begin > done) made += text.substr(done, one.begin - done);
        made += one.by;
        done = std::max({done, one.begin, one.end});
    }
    return made + std::string(text.substr(std::min(done, text.size())));
}

}  // namespace seamward
