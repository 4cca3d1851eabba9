// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "provisions/compare_audits.h"

namespace seamward {

/// What a finding, or a thing that a provision was held against, is known again by.
struct Marks {
    std::string rule, name;
    std::vector<std::string> global_ids;  ///< of its parts; sorted, each once
    std::optional<Point> at;              ///< nothing also where it is no place on Earth
};

[[nodiscard]] Marks marks_of(const Audit& audit, const Finding& finding);
/// By name: what it is called in English.
[[nodiscard]] Marks marks_of(const Audit& audit, const Provision& provision, const Checked& thing);

/// How close two are to each other; the smaller, the closer.
struct Closeness {
    KnownBy by = KnownBy::place;
    double not_shared = 0;  ///< of all GlobalIds of the two, the share that only one has
    double moved = 0;       ///< meters; infinite: a place is not known
    bool renamed = false;

    friend bool operator<(const Closeness& a, const Closeness& b);
};

/// Nothing: they are not known to be the same in that way. Of the same provision.
[[nodiscard]] std::optional<Closeness> closeness(KnownBy by, const Marks& a, const Marks& b);
/// The same in the first way that holds.
[[nodiscard]] std::optional<Closeness> closeness(const Marks& a, const Marks& b);
/// Meters between them; infinite: a place is not known.
[[nodiscard]] double moved(const Marks& a, const Marks& b);

/// Pairs as compare() makes them: first and second position.
struct Known {
    std::size_t first = 0, second = 0;
    Closeness close;
};
[[nodiscard]] std::vector<Known> known_again(const std::vector<Marks>& first, const std::vector<Marks>& second);

}  // namespace seamward
