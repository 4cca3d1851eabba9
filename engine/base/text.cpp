// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/text.h"

#include <algorithm>
#include <cstdint>

namespace seamward {

namespace {

/// One letter at the front of a text: how many bytes it takes (0: not UTF-8) and its code point.
struct Letter {
    std::size_t bytes = 0;
    std::uint32_t code = 0;
};

Letter first_letter(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(0);
    if (lead < 0x80U) return {1, lead};
    const std::size_t bytes = lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
    if (lead < 0xC2U || lead > 0xF4U || text.size() < bytes) return {};
    std::uint32_t code = lead & (0x7FU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) return {};
        code = (code << 6U) | (byte(i) & 0x3FU);
    }
    const bool overlong = (bytes == 3 && code < 0x800U) || (bytes == 4 && code < 0x10000U);
    const bool surrogate = code >= 0xD800U && code <= 0xDFFFU;
    return overlong || surrogate || code > 0x10FFFFU ? Letter{} : Letter{bytes, code};
}

bool is_control(std::uint32_t code) { return code < 0x20U || (code >= 0x7FU && code < 0xA0U); }

}  // namespace

std::string in_quotes(std::string_view text) {
    constexpr std::size_t most = 60;
    if (text.size() <= most) return '"' + std::string(text) + '"';
    std::size_t end = most;
    while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U) --end;
    return '"' + std::string(text.substr(0, end)) + "...\"";
}

bool is_blank(std::string_view text) { return text.find_first_not_of(" \t\n\r") == std::string_view::npos; }

bool is_utf8(std::string_view text) {
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        if (letter.bytes == 0) return false;
        text.remove_prefix(letter.bytes);
    }
    return true;
}

bool has_control_character(std::string_view text) {
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        const bool harmless = letter.code == '\t' || letter.code == '\n' || letter.code == '\r';
        if (letter.bytes > 0 && is_control(letter.code) && !harmless) return true;
        text.remove_prefix(std::max<std::size_t>(1, letter.bytes));
    }
    return false;
}

std::string printable(std::string_view text) {
    std::string out;
    while (!text.empty()) {
        const Letter letter = first_letter(text);
        if (letter.bytes == 0 || is_control(letter.code))
            out += '?';
        else
            out += text.substr(0, letter.bytes);
        text.remove_prefix(std::max<std::size_t>(1, letter.bytes));
    }
    return out;
}

}  // namespace seamward
