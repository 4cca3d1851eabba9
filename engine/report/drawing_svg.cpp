// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_svg.h"

#include <array>
#include <cmath>
#include <cstdio>

namespace seamward {

namespace {

constexpr double capitals = 0.73;  ///< height of capitals, of the font's size
constexpr const char* family = "DejaVu Sans, Verdana, Arial, sans-serif";

double advance(char letter) {
    if (std::string_view("ijlI.,:;'|! ").find(letter) != std::string_view::npos) return 0.37;
    if (std::string_view("frt()[]-/\"").find(letter) != std::string_view::npos) return 0.46;
    if (std::string_view("mwMW%@").find(letter) != std::string_view::npos) return 0.99;
    if (letter >= 'A' && letter <= 'Z') return 0.76;
    return 0.64;
}

const char* anchor_word(SvgWriter::Anchor anchor) {
    switch (anchor) {
        case SvgWriter::Anchor::start: return "start";
        case SvgWriter::Anchor::middle: return "middle";
        case SvgWriter::Anchor::end: break;
    }
    return "end";
}

}  // namespace

std::string paper_number(double millimeters) {
    std::array<char, 32> text{};
    std::snprintf(text.data(), text.size(), "%.2f", millimeters);
    std::string out = text.data();
    while (out.back() == '0') out.pop_back();
    if (out.back() == '.') out.pop_back();
    return out == "-0" ? "0" : out;
}

double text_width(std::string_view text, double size) {
    double width = 0;
    for (const char letter : text) {
        const bool goes_on = (static_cast<unsigned char>(letter) & 0xC0U) == 0x80U;  // a letter of several bytes counts once
        if (!goes_on) width += advance(letter);
    }
    return width * size;
}

std::vector<std::string> broken_text(std::string_view text, double width, double size) {
    std::vector<std::string> lines(1);
    std::size_t at = 0;
    while (at < text.size()) {
        std::size_t end = text.find(' ', at);
        if (end == std::string_view::npos) end = text.size();
        const std::string word(text.substr(at, end - at));
        at = end + 1;
        if (word.empty()) continue;
        const std::string longer = lines.back().empty() ? word : lines.back() + " " + word;
        if (lines.back().empty() || text_width(longer, size) <= width)
            lines.back() = longer;
        else
            lines.push_back(word);
    }
    return lines;
}

void SvgWriter::text(Point2 at, const std::string& text, Anchor anchor, double size, bool strong) {
    Html::Attributes attributes{{"x", paper_number(at.x)},         {"y", paper_number(at.y + size * capitals / 2)},
                                {"font-size", paper_number(size)}, {"font-family", family},
                                {"fill", DrawingColor::ink},       {"text-anchor", anchor_word(anchor)}};
    if (strong) attributes.push_back({"font-weight", "bold"});
    html_.element("text", text, attributes);
}

void SvgWriter::text_on_white(Point2 at, const std::string& text, Anchor anchor) {
    html_.element("text", text,
                  {{"x", paper_number(at.x)},
                   {"y", paper_number(at.y + letter_size * capitals / 2)},
                   {"font-size", paper_number(letter_size)},
                   {"font-family", family},
                   {"fill", DrawingColor::ink},
                   {"stroke", "#fff"},
                   {"stroke-width", "1"},
                   {"stroke-linejoin", "round"},
                   {"paint-order", "stroke"},
                   {"text-anchor", anchor_word(anchor)}});
}

void SvgWriter::line(Point2 from, Point2 to, double width) {
    path(path_of(from, to), {{"stroke", DrawingColor::ink}, {"stroke-width", paper_number(width)}});
}

void SvgWriter::path(const std::string& data, const Html::Attributes& attributes) {
    if (data.empty()) return;
    Html::Attributes all{{"d", data}};
    all.insert(all.end(), attributes.begin(), attributes.end());
    html_.element("path", "", all);
}

std::string path_of(Point2 from, Point2 to) {
    return "M" + paper_number(from.x) + " " + paper_number(from.y) + "L" + paper_number(to.x) + " " + paper_number(to.y);
}

std::string path_of(const Loop& loop) {
    std::string data;
    for (std::size_t i = 0; i < loop.size(); ++i)
        data += (i == 0 ? "M" : "L") + paper_number(loop[i].x) + " " + paper_number(loop[i].y);
    return data.empty() ? data : data + "Z";
}

}  // namespace seamward
