// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/scene_hints.h"

#include <algorithm>
#include <charconv>
#include <cmath>

#include "exchange/reader/refusal.h"
#include "exchange/reader/source_files.h"

namespace seamward {

namespace {

constexpr std::string_view blanks = " \t\r\n";
/// Headers stand at the beginning; nothing is looked for behind these many bytes.
constexpr std::size_t most_header_bytes = 1U << 20U;

std::string_view trimmed(std::string_view text) {
    const std::size_t begin = text.find_first_not_of(blanks);
    if (begin == text.npos) return {};
    return text.substr(begin, text.find_last_not_of(blanks) - begin + 1);
}

std::optional<double> number_in(std::string_view text) {
    text = trimmed(text);
    double value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || !std::isfinite(value)) return std::nullopt;
    return value;
}

/// The first line of a text, without its end; the text begins behind it.
std::string_view next_line(std::string_view& text) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    std::string_view line = text.substr(0, end);
    text.remove_prefix(std::min(text.size(), end + 1));
    if (line.ends_with('\r')) line.remove_suffix(1);
    return line;
}

/// The factors in which files state their units, as quotients where they are ours.
UnitRatio ratio_of_meters(double meters) {
    for (const ModelUnit unit : {ModelUnit::m, ModelUnit::cm, ModelUnit::mm, ModelUnit::in, ModelUnit::ft}) {
        const UnitRatio ratio = ratio_of(unit);
        if (std::abs(meters - ratio.over / ratio.under) <= 1e-12 * meters) return ratio;
    }
    return {meters, 1};
}

void blank_out(std::span<char> text, std::size_t begin, std::size_t end) {
    std::fill(text.begin() + static_cast<std::ptrdiff_t>(begin), text.begin() + static_cast<std::ptrdiff_t>(end), ' ');
}

/// The keyword that an OBJ line begins with, and what follows it.
std::pair<std::string_view, std::string_view> keyword_of(std::string_view line) {
    line = trimmed(line);
    const std::size_t end = std::min(line.find_first_of(blanks), line.size());
    return {line.substr(0, end), trimmed(line.substr(end))};
}

bool has_objects(std::string_view text) {
    while (!text.empty()) {
        if (keyword_of(next_line(text)).first == "o") return true;
    }
    return false;
}

/// What the header of a PLY file promises.
struct PlyHeader {
    bool ended = false;
    bool is_text = true;
    double needed = 0;  ///< lines of a text, bytes of a binary file: at least so many must follow
};

/// Bytes of a number in a binary PLY file; 1 for what is not known.
double bytes_of(std::string_view type) {
    if (type == "double" || type == "float64") return 8;
    if (type == "float" || type == "float32" || type == "int" || type == "int32" || type == "uint" || type == "uint32") return 4;
    return type == "short" || type == "int16" || type == "ushort" || type == "uint16" ? 2 : 1;
}

/// Takes the header from the text.
PlyHeader ply_header(std::string_view& text) {
    PlyHeader header;
    double count = 0;
    const std::size_t most = text.size() - std::min(text.size(), most_header_bytes);
    while (text.size() > most) {
        const auto [keyword, rest] = keyword_of(next_line(text));
        const auto [word, more] = keyword_of(rest);
        if (keyword == "end_header") {
            header.ended = true;
            return header;
        }
        if (keyword == "format") header.is_text = word == "ascii";
        if (keyword == "element") {
            count = number_in(more).value_or(0);
            if (header.is_text) header.needed += count;
        }
        if (keyword == "property" && !header.is_text)
            header.needed += count * bytes_of(word == "list" ? keyword_of(more).first : word);
    }
    return header;
}

}  // namespace

SceneHints take_collada_hints(std::span<char> text) {
    SceneHints hints;
    const std::string_view head(text.data(), std::min(text.size(), most_header_bytes));
    const std::size_t unit = head.find("<unit");
    const std::size_t unit_end = unit == head.npos ? head.npos : head.find('>', unit);
    if (unit_end != head.npos) {
        const std::string_view element = head.substr(unit, unit_end - unit);
        const std::size_t meter = element.find("meter=");  // "name=" may say "meter" as well
        if (meter != element.npos && meter + 7 < element.size()) {
            const std::string_view value = element.substr(meter + 7);
            const std::optional<double> meters = number_in(value.substr(0, value.find(element[meter + 6])));
            if (meters && *meters > 0) hints.unit = ratio_of_meters(*meters);
        }
        // An element that is left open ends later, with "</unit>": only what makes it known is taken away.
        blank_out(text, unit + 5, element.ends_with('/') ? unit_end - 1 : unit_end);
    }
    constexpr std::string_view axis_begin = "<up_axis>";
    const std::size_t axis = head.find(axis_begin);
    if (axis != head.npos) {
        const std::size_t word = axis + axis_begin.size();
        const std::size_t end = std::min(head.find('<', word), head.size());
        const std::string_view value = trimmed(head.substr(word, end - word));
        if (value == "X_UP") hints.up = UpAxis::x;
        if (value == "Y_UP") hints.up = UpAxis::y;
        if (value == "Z_UP") hints.up = UpAxis::z;
        blank_out(text, word, end);
        if (end - word >= 4) std::copy_n("Y_UP", 4, text.begin() + static_cast<std::ptrdiff_t>(word));
    }
    return hints;
}

SceneHints dxf_hints(std::string_view text) {
    SceneHints hints{.up = UpAxis::z};
    text = text.substr(0, most_header_bytes);
    const std::size_t at = text.find("$INSUNITS");
    if (at == text.npos) return hints;
    text.remove_prefix(at);
    (void)next_line(text);
    if (trimmed(next_line(text)) != "70") return hints;
    const std::optional<double> code = number_in(next_line(text));
    if (code == 1) hints.unit = ratio_of(ModelUnit::in);
    if (code == 2) hints.unit = ratio_of(ModelUnit::ft);
    if (code == 4) hints.unit = ratio_of(ModelUnit::mm);
    if (code == 5) hints.unit = ratio_of(ModelUnit::cm);
    if (code == 6) hints.unit = ratio_of(ModelUnit::m);
    if (code == 10) hints.unit = {9144, 10'000};  // yards
    if (code == 14) hints.unit = {1, 10};         // decimeters
    return hints;
}

void check_ply_header(std::string_view text) {
    const PlyHeader header = ply_header(text);
    if (!header.ended) throw ReadRefusal("has no end of its PLY header", "export it again");
    const double there =
        header.is_text ? static_cast<double>(std::count(text.begin(), text.end(), '\n')) + 1 : static_cast<double>(text.size());
    if (header.needed > there) throw ReadRefusal("ends before all that its PLY header counts", "copy or export it again");
}

PlainObj plain_obj(std::string_view text) {
    PlainObj plain;
    std::string_view second = text;
    (void)next_line(second);
    const bool ours = next_line(second) == "# meters; x east, y north, z up";
    if (ours) plain.hints = {ratio_of(ModelUnit::m), UpAxis::z};
    const std::string_view divider = has_objects(text) ? "o" : "g";
    plain.text.reserve(text.size() + text.size() / 16);
    while (!text.empty()) {
        const std::string_view line = next_line(text);
        const auto [keyword, rest] = keyword_of(line);
        if (keyword == divider) {
            plain.text += "o n" + std::to_string(plain.names.size());
            plain.names.push_back(ours ? percent_decoded(rest) : std::string(rest));
        } else if (keyword != "o" && keyword != "g" && keyword != "s" && keyword != "mtllib" && keyword != "usemtl") {
            plain.text += line;
        }
        plain.text += '\n';
    }
    return plain;
}

}  // namespace seamward
