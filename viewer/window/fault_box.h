// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/job_document.h"

namespace seamward::viewer {

/// Shows why a job or a drill could not be opened, all of it, and lets the user go on.
void show_fault(QWidget& parent, const OpenFault& fault);

}  // namespace seamward::viewer
