// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "report/drawing_sheet.h"
#include "report/drawing_svg.h"

namespace seamward {

/// The sign at a gap: a disk, or a square where it stays open.
void draw_mark(SvgWriter& svg, Point2 at, bool stays_open);
/// A circle with a number, or a hexagon with a letter.
void draw_balloon(SvgWriter& svg, Point2 at, double size, const std::string& text, bool stays_open);

/// A height over the ground floor: `+9'-10"`, `+3.00 m`.
[[nodiscard]] std::string height_text(double meters, Lengths lengths);
/// A length over all: `59'-3"`, `18.06 m`.
[[nodiscard]] std::string dimension_text(double meters, Lengths lengths);

/// The letters of gaps that stay open, A, B ... without I and O, which read as figures; then AA, AB ...
[[nodiscard]] std::string open_letter(std::size_t position);
/// The letters of rooms that are too small for their names: a, b ...
[[nodiscard]] std::string room_key(std::size_t position);

struct LegendSettings {
    DrawingScale scale;
    Lengths lengths = Lengths::inches;
    bool compass = false;
    double width = 0;  ///< of the sheet, mm
};

/// Title, scale, scale bar and north arrow, from a height of the sheet on; the height where they end.
double draw_title(SvgWriter& svg, const DrawnView& view, const LegendSettings& settings, const Translator& say, double top);

/// What signs mean, likewise.
double draw_legend(SvgWriter& svg, const DrawnView& view, const std::vector<DrawnGap>& gaps,
                   const std::vector<std::pair<std::string, std::string>>& room_keys, const LegendSettings& settings,
                   const Translator& say, double top);

}  // namespace seamward
