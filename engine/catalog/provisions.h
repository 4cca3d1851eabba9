// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/record.h"
#include "catalog/duty_case.h"
#include "catalog/free_areas.h"
#include "catalog/tables.h"

namespace seamward {

/// What a value of a measure is given in: meters, square meters, shares of one, numbers, 1 for yes and 0 for no, air changes an
/// hour at 50 Pa.
enum class Unit : std::uint8_t { length, area, share, count, answer, air_changes };

/// What provisions are measured by.
struct Measure {
    enum class Of : std::uint8_t { gap, space, house };
    enum class Stated : std::uint8_t { gap, place, no };

    std::string id;
    std::string name;
    Unit unit = Unit::length;
    Of of = Of::gap;              ///< what one value is of
    Stated stated = Stated::gap;  ///< whether a survey may state it, and of what
    std::string ask;              ///< the question for whoever stands before it
};

/// How a house must be built for a provision to apply. Whatever is empty is not asked.
struct Applies {
    std::vector<std::string> cladding;    ///< the outermost layer of its walls is one of these
    std::vector<std::string> foundation;  ///< one of these
    std::vector<std::string> has;         ///< it has all of these
};

/// The words that a survey may state of how a house is built.
[[nodiscard]] Words foundation_words();
[[nodiscard]] Words built_with_words();

/// A rule of a code or of the trade, with its limit.
struct Provision {
    std::string id;
    std::string name;
    std::string text;   ///< what it asks for, in our own words
    std::string group;  ///< the part of the house that it is about, as a heading
    Applies applies;
    std::vector<DutyCase> gaps;  ///< the gaps of a survey that it looks at: those of any of these cases
    /// The gaps of a model that it looks at: IFC classes, one of each list for its two parts. A class stands for all that begin
    /// with it; what `gaps` says of the spaces holds for them too. Both empty: no gap of a model.
    std::array<std::vector<std::string>, 2> classes;
    std::string into;  ///< of these only the ones into an attic or a garage, where the survey says which spaces are; empty: all
    bool outside_walls =
        false;  ///< of these only the ones in outside walls of a house whose outline is known, party walls left out
    std::vector<std::string> closed_with;  ///< treatments that count as closing; empty: all do
    std::string measure;                   ///< id
    Unit unit = Unit::length;
    std::optional<double> at_least, at_most;  ///< in the unit; one of them at least
    std::string area_rule;                    ///< of areas: id of the table of free areas that says what is due
    std::string lower_rule;                   ///< likewise, where less is due when `lower_if` is answered with yes
    std::string lower_if;                     ///< id of a measure
    std::string document, edition, section;   ///< `edition` may say that it is not known
    Confidence confidence = Confidence::low;
    std::string mend;    ///< what puts it right
    std::string source;  ///< id of a source of the table
};

/// Readers of the tables' YAML text. Each throws BadInput that names file, line and column when a key or word is unknown or
/// missing, a measure, feature, area rule or source is unknown, an area rule is of another kind, or a limit is none, or not of
/// the measure's unit.
[[nodiscard]] Table<Measure> read_measures(std::string_view yaml, const std::string& shown_as);
[[nodiscard]] Table<Provision> read_provisions(std::string_view yaml, const std::string& shown_as, const Table<Measure>& measures,
                                               const Table<Feature>& features, const Table<FreeAreaRule>& areas);

/// A value in a unit: `4 in`, `3 in2`, `75 %`, `2`, `true`, `4.2 per hour`. Reports what is none, and answers nothing.
[[nodiscard]] std::optional<double> read_value(const Record& record, std::string_view key, Unit unit);

}  // namespace seamward
