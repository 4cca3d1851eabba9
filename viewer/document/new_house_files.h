// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include "base/run_context.h"
#include "document/new_house.h"

namespace seamward::viewer {

/// The two files that a new house is written to.
struct NewHouseFiles {
    QString job, house;
};

/// Their names in a folder, after the name of the house: `quail-run-4.yaml` and `quail-run-4-house.yaml`.
[[nodiscard]] NewHouseFiles new_house_files(const QString& folder, const QString& name);

/// Where houses are written unless somebody says otherwise: the user's folder for documents where there is one, or their home.
[[nodiscard]] QString usual_house_folder();

/// Why nothing can be written there, a sentence; empty when it can. A folder that is not there yet
/// can be made where the one above it is there. Looks at the disk.
[[nodiscard]] QString fault_of_folder(const QString& folder, const QString& name);

/// Builds the house, to be sure that it can be, and writes both files or none; makes their folder. Throws BadInput.
void write_new_house(const NewHouse& house, const NewHouseFiles& files, const RunContext& context);

}  // namespace seamward::viewer
