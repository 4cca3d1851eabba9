// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/survey.h"

namespace seamward {

/// A gap and the mesh that a treatment leaves over it.
struct TreatedGap {
    GapIndex gap;
    double opening = 0;  ///< clear opening of the mesh, meters; 0: nothing is left open
};

}  // namespace seamward
