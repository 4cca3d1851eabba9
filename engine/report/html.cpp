// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/html.h"

#include <stdexcept>

#include "base/text.h"

namespace seamward {

namespace {

/// Bytes of the character at the front that turns the direction of writing (U+061C, U+200E, U+200F, U+202A to U+202E, U+2066 to
/// U+2069); 0: another one.
std::size_t turning_character(std::string_view text) {
    if (text.starts_with("\xd8\x9c")) return 2;
    if (text.size() < 3 || text[0] != '\xe2') return 0;
    const auto second = static_cast<unsigned char>(text[1]), third = static_cast<unsigned char>(text[2]);
    if (second == 0x80 && ((third >= 0xaa && third <= 0xae) || third == 0x8e || third == 0x8f)) return 3;
    return second == 0x81 && third >= 0xa6 && third <= 0xa9 ? 3 : 0;
}

}  // namespace

std::string shown_text(std::string_view text) {
    const std::string shown = printable(text);
    std::string made;
    made.reserve(shown.size());
    for (std::size_t i = 0; i < shown.size(); ++i) {
        const std::size_t turning = turning_character(std::string_view(shown).substr(i));
        made += turning > 0 ? '?' : shown[i];
        if (turning > 0) i += turning - 1;
    }
    return made;
}

std::string escaped(std::string_view text) {
    std::string made;
    for (const char letter : shown_text(text)) {
        switch (letter) {
            case '&': made += "&amp;"; break;
            case '<': made += "&lt;"; break;
            case '>': made += "&gt;"; break;
            case '"': made += "&quot;"; break;
            case '\'': made += "&#39;"; break;
            default: made += letter;
        }
    }
    return made;
}

/// As XML has it too, so that strict readers understand the page.
void Html::tag(std::string_view element, const Attributes& attributes, std::string_view end) {
    out_ += '<';
    out_ += element;
    for (const auto& [name, value] : attributes) {
        out_ += ' ';
        out_ += name;
        out_ += "=\"" + escaped(value) + '"';
    }
    out_ += end;
}

std::string within_script(std::string_view json) {
    std::string safe;
    for (const char letter : json) letter == '<' ? safe += "\\u003c" : safe += letter;
    return safe;
}

Html& Html::begin(std::string_view element, const Attributes& attributes) {
    tag(element, attributes, ">");
    open_.emplace_back(element);
    return *this;
}

Html& Html::end() {
    if (open_.empty()) throw std::logic_error("an element ends that was not begun");
    out_ += "</" + open_.back() + ">\n";
    open_.pop_back();
    return *this;
}

Html& Html::text(std::string_view text) {
    out_ += escaped(text);
    return *this;
}

Html& Html::element(std::string_view element, std::string_view text, const Attributes& attributes) {
    return begin(element, attributes).text(text).end();
}

Html& Html::single(std::string_view element, const Attributes& attributes) {
    tag(element, attributes, "/>\n");
    return *this;
}

Html& Html::markup(std::string_view made) {
    out_ += made;
    return *this;
}

const std::string& Html::written() const {
    if (!open_.empty()) throw std::logic_error("the element " + open_.back() + " has no end");
    return out_;
}

}  // namespace seamward
