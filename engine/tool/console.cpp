// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/console.h"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <iostream>

namespace seamward {

Console Console::of_process() {
    Console console{std::cout, std::cerr};
    winsize size{};
    if (ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col > 0)
        console.columns = std::clamp<std::size_t>(size.ws_col, 60, 160);
    const char* no_color = std::getenv("NO_COLOR");  // no-color.org: set and not empty
    console.styled = isatty(STDOUT_FILENO) == 1 && (no_color == nullptr || *no_color == '\0');
    return console;
}

std::string Console::bold(std::string_view text) const {
    return styled ? "\x1b[1m" + std::string(text) + "\x1b[0m" : std::string(text);
}

std::size_t letters(std::string_view text) {
    return static_cast<std::size_t>(
        std::count_if(text.begin(), text.end(), [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; }));
}

std::string padded(std::string_view text, std::size_t width) {
    const std::size_t there = letters(text);
    return std::string(text) + std::string(width > there ? width - there : 0, ' ');
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    std::vector<std::string> lines;
    std::string line;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find(' ', begin), text.size());
        const std::string_view word = text.substr(begin, end - begin);
        if (!line.empty() && letters(line) + 1 + letters(word) > width) {
            lines.push_back(std::move(line));
            line.clear();
        }
        if (!word.empty()) line += (line.empty() ? "" : " ") + std::string(word);
        begin = end + 1;
    }
    if (!line.empty()) lines.push_back(std::move(line));
    return lines;
}

void print_paragraph(const std::string& lead, const std::string& text, const Console& console) {
    const std::size_t width = letters(lead);
    std::string head = lead;
    for (const std::string& line : wrapped(text, console.columns - std::min(console.columns - 20, width))) {
        console.out << head << line << '\n';
        head.assign(width, ' ');
    }
}

}  // namespace seamward
