// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/palette.h"

#include <array>

namespace seamward::viewer::palette {

namespace {

struct Row {
    QColor* color;
    QColor normal;
    QColor high;
};

Contrast& contrast_now() {
    static Contrast contrast = Contrast::normal;
    return contrast;
}

/// The normal set is what the header says.
const std::array<Row, 23>& rows() {
    const auto row = [](QColor& color, QRgb high) { return Row{&color, color, QColor(high)}; };
    static const std::array<Row, 23> all{
        row(paper_high, 0xffffff), row(paper_low, 0xffffff),  row(panel, 0xffffff),      row(card, 0xffffff),
        row(button, 0xf0f0f0),     row(hairline, 0x000000),   row(ground, 0xe6e6e6),     row(floor, 0xd6d6d6),
        row(grid, 0x8a8a8a),       row(chosen_row, 0xd6e4ff), row(outline, 0x2a2a2a),    row(gap, 0x5e5e5e),
        row(other_way, 0x4d4d4d),  row(way, 0x0033a0),        row(way_shadow, 0x9a9a9a), row(smallest, 0xf07200),
        row(measure, 0x660022),    row(selection, 0x0084d6),  row(shut_sign, 0x00243d),  row(open_sign, 0xc23b00),
        row(warn_sign, 0xc28400),  row(ink, 0x000000),        row(soft_ink, 0x1f1f1f)};
    return all;
}

}  // namespace

void use(Contrast contrast) {
    for (const Row& row : rows()) {
        *row.color = contrast == Contrast::high ? row.high : row.normal;
    }
    contrast_now() = contrast;
}

Contrast in_use() { return contrast_now(); }

}  // namespace seamward::viewer::palette
