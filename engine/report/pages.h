// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "report/page_writer.h"

namespace seamward {

/// What stands in the reports below their title, one for each Audience.
void homeowner_page(PageWriter& page);
void crew_page(PageWriter& page);
void builder_page(PageWriter& page);
void diy_page(PageWriter& page);
void survey_sheet(PageWriter& page);

}  // namespace seamward
