// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/yaml_text.h"

#include <cstdio>

#include "base/quantity.h"

namespace seamward {

std::string yaml_quoted(const std::string& text) {
    std::string made = "\"";
    for (const char letter : text) {
        if (letter == '"' || letter == '\\') made += '\\';
        made += letter;
    }
    return made + '"';
}

std::string yaml_length(double meters) {
    constexpr int first = 3, last = 17;  // digits; with 17 each double has a text of its own
    char text[40];
    for (int digits = first; digits <= last; ++digits) {
        (void)std::snprintf(text, sizeof text, "%.*g mm", digits, meters * 1000);
        const Parsed<double> parsed = parse_length(text);
        if (parsed && *parsed == meters) break;
    }
    return text;
}

}  // namespace seamward
