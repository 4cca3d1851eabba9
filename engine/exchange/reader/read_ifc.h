// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

#include "exchange/model.h"
#include "exchange/reader/frame.h"

namespace seamward {

/// Reads IFC2X3 and IFC4 with libifcplusplus: a part for each product with a body, a room for each space. Openings are cut into
/// what they are in. Counts the products in the text itself, so that none is lost without a word. Throws ReadRefusal.
[[nodiscard]] Model read_ifc(std::string_view text, const ReadTask& task);

}  // namespace seamward
