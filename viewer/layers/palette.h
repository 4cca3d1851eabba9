// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QColor>

namespace seamward::viewer::palette {

/// The colors of the window. What must be told apart differs in lightness as well as in hue, and has a shape, a number
/// or a dash of its own: the chosen way is dark blue, its smallest gap a lighter orange, all else a pale gray-brown.
inline const QColor paper_high{0xfd, 0xfa, 0xf5};
inline const QColor paper_low{0xf3, 0xea, 0xdb};
inline const QColor panel{0xfb, 0xf7, 0xf0};
inline const QColor hairline{0xde, 0xd2, 0xbf};
inline const QColor ground{0xee, 0xe3, 0xd0};
inline const QColor floor{0xe6, 0xd7, 0xbd};
inline const QColor grid{0xcf, 0xbe, 0xa2};
inline const QColor outline{0x9c, 0x89, 0x6b};
inline const QColor gap{0xb9, 0xab, 0x95};
inline const QColor other_way{0x8c, 0x80, 0x70};
inline const QColor way{0x1e, 0x4a, 0x78};
inline const QColor way_shadow{0xb9, 0xb1, 0xa6};
inline const QColor smallest{0xe0, 0x7b, 0x1a};
inline const QColor chosen_row{0xe3, 0xea, 0xf0};
inline const QColor ink{0x2c, 0x27, 0x21};
inline const QColor soft_ink{0x66, 0x5c, 0x50};

}  // namespace seamward::viewer::palette
