// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "report/page_writer.h"

namespace seamward {

/// What the script of a page is told, as JSON that can stand within a script element.
[[nodiscard]] std::string page_data(const PageWriter& page);

}  // namespace seamward
