// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <chrono>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/date.h"
#include "catalog/tables.h"

namespace seamward {

/// A part of the year in which an animal's last way out must not be shut.
struct ClosedSeason {
    std::string state;                ///< two letters; empty: wherever no row of a state's own is given
    std::chrono::month_day from, to;  ///< both days are part of it; it may go past the end of the year
    std::string why;
    std::string source;

    [[nodiscard]] bool holds_on(Date date) const;
};

/// How animals of some kinds that live in a house leave it before the last of their ways is shut.
struct Removal {
    enum class By : std::uint8_t {
        one_way,   ///< a device over the last hole lets them out and not back in
        trapping,  ///< they are caught
        licensed,  ///< somebody licensed for it takes them away
        nothing    ///< they are shut in or out as it comes
    };
    std::string id;
    std::vector<std::string> animals;  ///< ids of pests
    By by = By::one_way;
    std::string how;
    std::uint32_t quiet_nights = 0;  ///< without a sign of them, before the last hole is closed; 0: none needed
    std::string material;            ///< id of the price book, one for each last hole; empty: none
    double minutes = 0;              ///< to set it up and to take it away
    std::string source;
    std::vector<Caution> cautions;
    std::vector<ClosedSeason> seasons;
};

/// As in the table: "one-way", "trapping", "licensed", "nothing".
[[nodiscard]] const char* removal_word(Removal::By by);

/// Throws BadInput that names file, line and column when a key is unknown or missing, an animal unknown or in two rows, a day or
/// a source unknown.
[[nodiscard]] Table<Removal> read_removals(std::string_view yaml, const std::string& shown_as, const Table<Pest>& pests);

/// The row of an animal, or null.
[[nodiscard]] const Removal* removal_of(const Table<Removal>& table, std::string_view animal);

/// A closed season that holds on a day, and the first day after it.
struct InSeason {
    const ClosedSeason* season = nullptr;
    Date over;
};

/// The closed season in which a day lies: of the state's own rows, or of those for any state where the state has none or is not
/// known (then also of every state's). Seasons that follow each other without a day between are taken together. Nothing: none.
[[nodiscard]] std::optional<InSeason> closed_season(const Removal& removal, const std::string& state, Date date);

}  // namespace seamward
