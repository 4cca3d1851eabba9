// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/reading.h"

#include "base/text.h"

namespace seamward {

std::optional<Point> read_at(Node node, Diagnostics& diagnostics) {
    if (!node.is_sequence() || node.size() != 3) {
        diagnostics.add(node.place(), "at is a point of three coordinates", "write at: [4.5 m, 9 m, 0.05 m]");
        return std::nullopt;
    }
    std::array<double, 3> point{};
    std::size_t axis = 0;
    bool whole = true;
    node.for_each_item([&](Node coordinate) {
        const Parsed<double> parsed = coordinate.is_scalar()
                                          ? parse_coordinate(coordinate.text())
                                          : Parsed<double>{std::nullopt, {"a coordinate is a length", "write for example 4.5 m"}};
        if (!parsed) diagnostics.add(coordinate.place(), "at: " + parsed.fault.what, parsed.fault.mend);
        whole = whole && parsed;
        point.at(axis++) = parsed.value.value_or(0);
    });
    return whole ? std::optional(Point{point[0], point[1], point[2]}) : std::nullopt;
}

bool is_said(const Record& record, std::string_view key) {
    const Node node = record[key];
    if (!node.present() || node.is_null()) return false;
    return !node.is_scalar() || !is_blank(node.text());
}

bool is_listed(const Record& record, std::string_view key) {
    return is_said(record, key) && !(record[key].is_sequence() && record[key].size() == 0);
}

void check_version(const Record& file, std::string_view key) {
    if (!file.has(key)) {
        if (file.usable()) file.report(file.place(), "the file has no " + std::string(key), "add " + std::string(key) + ": 1");
        return;
    }
    const Node node = file[key];
    if (node.kind() == Document::Kind::plain && node.text() == "1") return;
    const bool quoted = node.kind() == Document::Kind::quoted && node.text() == "1";
    file.report(node.place(), "unknown format version" + (node.is_scalar() ? " " + in_quotes(node.text()) : std::string()),
                quoted ? "write it without quotes" : "this program reads " + std::string(key) + ": 1");
}

}  // namespace seamward
