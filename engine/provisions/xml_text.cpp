// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/xml_text.h"

#include "base/text.h"

namespace seamward {

namespace {

std::string clean(std::string_view text, bool keep_lines) {
    // Characters of Unicode that XML 1.0 forbids and that are no control characters: U+FFFE and U+FFFF.
    constexpr std::string_view last_but_one = "\xEF\xBF\xBE", last = "\xEF\xBF\xBF";
    std::string out, run;
    const auto flush = [&] {
        out += printable(run);
        run.clear();
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const std::string_view next = text.substr(i, last.size());
        if (text[i] == '\n' || text[i] == '\r' || text[i] == '\t') {
            flush();
            if (text[i] == '\r' && text.substr(i + 1, 1) == "\n") ++i;
            out += keep_lines && text[i] != '\t' ? '\n' : ' ';
        } else if (next == last || next == last_but_one) {
            run += '?';
            i += last.size() - 1;
        } else {
            run += text[i];
        }
    }
    flush();
    return out;
}

}  // namespace

std::string xml_line(std::string_view text) { return clean(text, false); }
std::string xml_lines(std::string_view text) { return clean(text, true); }

}  // namespace seamward
