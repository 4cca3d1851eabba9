// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalog/tables.h"

namespace seamward {

/// One part of the building envelope, as the lesson tells it.
struct EnvelopePart {
    std::string id;
    std::string part;     ///< where the drawing of the lesson has it
    std::string name;     ///< for people
    std::string purpose;  ///< what it is for
    std::string water;    ///< how rain and damp leave
    std::string pests;    ///< how animals get past it
    std::string may;      ///< what a sealer may do there
    std::string never;
    std::vector<std::string> sources;  ///< ids of sources of the table
};

/// Reads the table of the envelope; the order of its rows is that of the lesson. Throws BadInput that names file, line and column
/// when a key is unknown or missing, or two rows are at one place of the drawing.
[[nodiscard]] Table<EnvelopePart> read_envelope(std::string_view yaml, const std::string& shown_as);

}  // namespace seamward
