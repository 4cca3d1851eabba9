// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/obj.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstdint>
#include <string_view>

#include "base/text.h"
#include "exchange/face_groups.h"
#include "exchange/finish.h"

namespace seamward {

namespace {

/// A text as one word of the file. Only what is written as % and two digits holds a %, so different texts stay different.
std::string word(std::string_view text) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    const bool utf8 = is_utf8(text);
    std::string out;
    for (const char c : text) {
        const auto byte = static_cast<unsigned char>(c);
        const bool plain = byte > 0x20 && byte != 0x7F && (byte < 0x80 || utf8) && c != '%' && c != '#' && c != '\\';
        if (plain)
            out += c;
        else
            out.append({'%', digits[byte >> 4U], digits[byte & 0xFU]});
    }
    return out.empty() ? "%" : out;
}

/// A comment line. A line end would end it, a backslash before its end would let it swallow the next line.
std::string comment(const std::string& text) {
    std::string line = "# " + printable(text) + '\n';
    std::replace(line.begin(), line.end(), '\\', '/');
    return line;
}

void put(std::string& text, double number) {
    std::array<char, 32> digits{};  // -2.2250738585072014e-308 has 24
    const char* end = std::to_chars(digits.data(), digits.data() + digits.size(), number).ptr;
    text.append(1, ' ').append(digits.cbegin(), end);
}

void put(std::string& text, std::uint64_t number) { text.append(1, ' ').append(std::to_string(number)); }

}  // namespace

std::string obj_text(std::span<const Part> parts, const Survey& survey, const std::string& house_name,
                     const std::string& mtl_file) {
    const Surfaces surfaces = surfaces_of(parts);
    std::string text = comment(house_name) + "# meters; x east, y north, z up\n";
    if (!mtl_file.empty()) text += "mtllib " + mtl_file + '\n';
    text += "s off\n";
    std::uint64_t first = 1;  // points are counted from 1 through the whole file
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const Part& part = parts[i];
        // The group first: a group goes on until the next one, also into the next object.
        text += '\n' + comment(part.name) + "g " + word(part.id) + "\no " + word(part.id) + '\n';
        if (!mtl_file.empty()) text += "usemtl " + word(surfaces.list[surfaces.of_part[i]].name()) + '\n';
        for (const Point& point : part.mesh.points) {
            text += 'v';
            for (const double number : {point.x, point.y, point.z}) put(text, number);
            text += '\n';
        }
        for (const FaceGroup& group : face_groups(part)) {
            if (group.gap.valid()) text += "g gap_" + word(survey[group.gap].id) + '\n';
            for (const std::size_t triangle : group.triangles) {
                text += 'f';
                for (const std::uint32_t corner : part.mesh.triangles[triangle]) put(text, first + corner);
                text += '\n';
            }
        }
        first += part.mesh.points.size();
    }
    return text;
}

std::string mtl_text(std::span<const Part> parts) {
    std::string text = "# colors\n";
    for (const Surface& surface : surfaces_of(parts).list) {
        const Finish finish = finish_of(surface.layer, surface.material);
        text += "\nnewmtl " + word(surface.name()) + "\nKd";
        for (const std::uint8_t byte : finish.color) put(text, byte / 255.0);
        text += "\nKa 0 0 0\nKs 0 0 0\nd";
        put(text, finish.opaque);
        text += "\nillum 1\n";
    }
    return text;
}

}  // namespace seamward
