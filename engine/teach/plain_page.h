// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "catalog/translator.h"

namespace seamward {

/// An HTML file that needs nothing else and runs no script, in the style of the reports. `content` is markup of this program.
[[nodiscard]] std::string plain_page(const Translator& say, const std::string& title, const std::string& content);

}  // namespace seamward
