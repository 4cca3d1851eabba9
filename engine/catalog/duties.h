// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "catalog/duty_case.h"
#include "catalog/features.h"
#include "catalog/tables.h"

namespace seamward {

/// What may be done to gaps of one case.
struct DutyRow {
    std::string id;
    std::string name;  ///< of the case, for people
    DutyCase when;
    bool free = false;                                        ///< nothing is restricted: what later rows would say does not hold
    bool full = false;                                        ///< a full closing is allowed, by the treatments of `allow`
    std::vector<std::string> allow;                           ///< the only treatments allowed, ids
    double least = 0;                                         ///< of a mesh, clear opening, meters
    double widest = std::numeric_limits<double>::infinity();  ///< likewise
    bool keeps_area = false;                                  ///< its net free area is due: a mesh must not starve what it serves
    std::string why;
    std::string source;   ///< id of a source of the table
    std::string instead;  ///< what may be done, for people; empty: leave it as it is
};

/// Reads the table of duties; `features` of its rows are ids of that table. Treatments are not looked up. Throws BadInput that
/// names file, line and column when a key or word is unknown, a row asks nothing, allows a full closing of a gap whose duty that
/// defeats, or is never reached; and when such a duty has no row that asks for nothing else.
[[nodiscard]] Table<DutyRow> read_duties(std::string_view yaml, const std::string& shown_as, const Table<Feature>& features);

/// The source for people: title, publisher, year, and "from memory" or "second hand" where the document itself was not read.
[[nodiscard]] Message cited(const CatalogSource& source);

/// The source of a table with that id, for people; the id itself where the table has none such.
[[nodiscard]] Message cited(const std::vector<CatalogSource>& sources, const std::string& id);

/// What the stars of starred() mean.
inline constexpr const char* star_note = "* Not checked against the document itself: named from memory, or as others quote it.";

/// A text with cited() sources where "(from memory)" and "(second hand)" are stars, for a list that says once what they mean.
[[nodiscard]] std::string starred(std::string text);
[[nodiscard]] Message starred(Message text);

}  // namespace seamward
