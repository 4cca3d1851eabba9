// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/page_writer.h"

namespace seamward {

/// The figure `house`, hidden until the script has drawn the house, with what steers it; before it a sentence that says where the
/// same facts stand. Nothing where there are no solids, or where the page is for paper alone.
void house_figure(PageWriter& page);

}  // namespace seamward
