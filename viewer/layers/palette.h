// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>
#include <cstdint>

namespace seamward::viewer::palette {

/// The colors of the window. What must be told apart differs in lightness as well as in hue, and has a shape, a number
/// or a dash of its own: the chosen way is dark blue, its smallest gap a lighter orange, all else a pale gray-brown.
/// They are those of one of two sets, and change with it: take them when painting, do not keep them. Of the window's thread.
enum class Contrast : std::uint8_t {
    normal,
    high  ///< black on white, strong blue and strong orange
};

/// Changes all colors below; what is on the screen has to be painted again.
void use(Contrast contrast);
[[nodiscard]] Contrast in_use();

// Behind things
inline QColor paper_high{0xfd, 0xfa, 0xf5};
inline QColor paper_low{0xf3, 0xea, 0xdb};
inline QColor panel{0xfb, 0xf7, 0xf0};
inline QColor card{0xff, 0xfd, 0xf9};    ///< what is written on: boxes in the picture, lists, fields
inline QColor button{0xf4, 0xec, 0xdf};  ///< what can be pressed
inline QColor hairline{0xde, 0xd2, 0xbf};
inline QColor ground{0xee, 0xe3, 0xd0};
inline QColor floor{0xe6, 0xd7, 0xbd};
inline QColor grid{0xcf, 0xbe, 0xa2};
inline QColor chosen_row{0xe3, 0xea, 0xf0};

// Things
inline QColor outline{0x9c, 0x89, 0x6b};
inline QColor gap{0xb9, 0xab, 0x95};
inline QColor other_way{0x8c, 0x80, 0x70};
inline QColor way{0x1e, 0x4a, 0x78};
inline QColor way_shadow{0xb9, 0xb1, 0xa6};
inline QColor smallest{0xe0, 0x7b, 0x1a};  ///< letters on it are `ink`
inline QColor measure{0x7a, 0x00, 0x30};   ///< what the user measures, marks and notes
inline QColor selection{0x1a, 0x86, 0xd8};

// States, from dark to light; each has words or a sign beside it
inline QColor shut_sign{0x0b, 0x3a, 0x36};
inline QColor open_sign{0xc2, 0x41, 0x0c};
inline QColor warn_sign{0xc5, 0x84, 0x00};

// Letters on panel, card, button and chosen_row
inline QColor ink{0x2c, 0x27, 0x21};
inline QColor soft_ink{0x66, 0x5c, 0x50};

}  // namespace seamward::viewer::palette
