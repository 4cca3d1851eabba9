// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "base/record.h"
#include "base/survey.h"
#include "catalog/features.h"
#include "catalog/tables.h"

namespace seamward {

/// What a gap must be like for a row of the table of duties, or a provision, to be about it. Whatever is empty is not asked; a
/// row fits when all that is asked holds.
struct DutyCase {
    std::vector<Duty> duties;                       ///< one of these
    std::vector<std::string> features;              ///< of one of these kinds; ids of the table of features
    bool feature_unknown = false;                   ///< the kind of feature is not known, as of gaps that were typed in
    std::vector<std::string> all_of;                ///< substrates that all stand there
    std::vector<std::string> any_of;                ///< substrates of which one stands there
    std::vector<std::string> nothing_but;           ///< substrates stand there, and none but these
    std::array<std::vector<SpaceKind>, 2> between;  ///< kinds of its two spaces, one side each, in either order
    std::vector<std::string> words;                 ///< one of these is a word in the id or name of one of its two spaces
    std::vector<ShapeKind> shapes;                  ///< of one of these, before any mesh was put over it
    double least_length = 0;                        ///< of a slot, one piece, meters
    double height = std::numeric_limits<double>::infinity();  ///< its middle lies below this z, or nobody knows where it is

    /// Whether gaps of that duty can fit at all.
    [[nodiscard]] bool takes(Duty duty) const;
    /// Whether nothing is asked but the duty.
    [[nodiscard]] bool asks_duty_only() const;
};

/// The keys of a case, as `when` of duties.yaml has them.
[[nodiscard]] Words duty_case_keys();

/// Reads a case; its `features` are ids of that table. Reports unknown words, and a case that asks nothing.
[[nodiscard]] DutyCase read_duty_case(const Record& record, const Table<Feature>& features, Diagnostics& diagnostics);

/// The words of a list, of text in one line each.
[[nodiscard]] std::vector<std::string> read_lines(const Record& record, std::string_view key, std::string_view called,
                                                  Diagnostics& diagnostics);

/// The word of job files for a duty.
[[nodiscard]] std::string_view duty_word(Duty duty);

}  // namespace seamward
