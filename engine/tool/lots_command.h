// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "sweep/make_lots.h"
#include "tool/console.h"

namespace seamward {

/// `seamward lots` as it was asked for.
struct LotsRequest {
    std::string count = "100", seed = "1", bad = "0";
    std::string folder;
};

/// Makes up a subdivision. Throws WrongUsage, and BadInput when the folder cannot be made.
void run_lots(const LotsRequest& request, const Console& console, const RunContext& context);

}  // namespace seamward
