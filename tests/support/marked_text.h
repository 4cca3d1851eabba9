// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/diagnostics.h"

namespace seamward::test {

/// A text in which carets mark places, so that a test shows where it expects a fault: `width: ^5`.
struct MarkedText {
    explicit MarkedText(std::string_view marked) {
        Place here{1, 1};
        for (const char c : marked) {
            if (c == '^') {
                places.push_back(here);
                continue;
            }
            text += c;
            if (c == '\n')
                here = {here.line + 1, 1};
            else if ((static_cast<unsigned char>(c) & 0xC0U) != 0x80U)
                ++here.column;  // columns count characters
        }
    }

    std::string text;           ///< without the carets
    std::vector<Place> places;  ///< where they stood
};

}  // namespace seamward::test
