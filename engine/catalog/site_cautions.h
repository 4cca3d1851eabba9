// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <string>
#include <string_view>

#include "catalog/tables.h"

namespace seamward {

/// What to mind at a place of work, or what counts there.
struct SiteCaution {
    /// When a row holds.
    enum class When : std::uint8_t {
        ladder,  ///< work above `limit`, meters over the ground
        high_ladder,
        ladder_reach,  ///< no caution: one setting of a ladder serves gaps that lie no farther apart than `limit`, meters
        roof,
        tile_roof,
        shingle_roof,
        metal_roof,
        membrane_roof,
        foam_roof,
        attic,
        crawl_space,
        built_before,  ///< `limit` is a year
        droppings,     ///< rodents, bats or birds live here
        named          ///< nobody says what the gap belongs to, and a word of its name tells of `words`; no work for an owner
    };
    std::string id;
    When when = When::ladder;
    double limit = 0;
    std::vector<std::string> words;  ///< small letters
    std::string text;
    std::string source;
};

/// Throws BadInput that names file, line and column when a key is unknown or missing, or a limit stands where none is due.
[[nodiscard]] Table<SiteCaution> read_site_cautions(std::string_view yaml, const std::string& shown_as);

/// The first row of a kind; every kind has one, the reader sees to it.
[[nodiscard]] const SiteCaution& site_caution(const Table<SiteCaution>& table, SiteCaution::When when);

}  // namespace seamward
