// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace seamward {

/// A style sheet or a script as it stands in a page, made by a step of the build from `page/`.
struct PageAsset {
    std::string_view text;
    std::string_view digest;  ///< for a Content-Security-Policy: "sha256-..."
};

[[nodiscard]] PageAsset page_style();
/// What paper a page is printed on.
[[nodiscard]] PageAsset letter_style();
[[nodiscard]] PageAsset a4_style();
/// Shows the house of a report; three.js with its license is in it.
[[nodiscard]] PageAsset house_script();
/// Makes a survey sheet one to fill in.
[[nodiscard]] PageAsset sheet_script();

}  // namespace seamward
