// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "teach/answers.h"
#include "teach/match.h"

namespace seamward {

/// How one part of an answer was judged.
enum class Mark : std::uint8_t {
    not_asked,  ///< the place is not due, or nothing is right or wrong there
    missing,    ///< not said
    wrong,
    right
};

/// How a place was answered.
struct PlaceResult {
    std::optional<std::size_t> finding;  ///< position in Answers::findings
    Mark found = Mark::not_asked, width = Mark::not_asked, connection = Mark::not_asked, treatment = Mark::not_asked;
    bool false_alarm = false;  ///< told to be open, and it is tight or far narrower than told
    int points = 0, most = 0;  ///< without what false alarms take away

    /// Whether the place is due and was not told to be open.
    [[nodiscard]] bool missed() const { return most > 0 && found != Mark::right; }
};

/// Something that would hurt the house, an animal or somebody who lives there. One is enough to fail.
struct Harm {
    std::size_t finding = 0;
    GapIndex gap;
    Message what;     ///< "weep holes, north wall: sealant bead"
    Message why;      ///< of the ruling on the gap
    Message source;   ///< for people
    Message instead;  ///< may be empty
};

/// Answers to a drill, judged.
struct DrillResult {
    std::vector<PlaceResult> places;        ///< one for each place, in their order
    std::vector<Matched> matched;           ///< one for each finding
    std::vector<std::size_t> false_alarms;  ///< findings
    std::vector<Harm> harms;
    Mark entry = Mark::not_asked;
    int points = 0, most = 0;  ///< never below 0
    bool passed = false;

    [[nodiscard]] double share() const { return most == 0 ? 0 : static_cast<double>(points) / most; }
};

/// Judges answers by the key of the drill and the figures of drill_scores.yaml. What does harm is decided by the rulings on
/// duties, by the air that is left to vented spaces and appliances, and by the animals that live in the house.
[[nodiscard]] DrillResult score(const DrillRound& round, const Answers& answers);

/// A share of the points as people see it: tenths of a percent, rounded down, so that none that fell short looks like a pass.
[[nodiscard]] int shown_tenths(double share);

/// The entries that explain what was seen best, equally well; empty where the drill asks for none.
[[nodiscard]] std::vector<GapIndex> right_entries(const DrillRound& round);

/// The day that a drill plays on: the survey's, or a later one by which an animal is known to have left.
[[nodiscard]] Date drill_date(const Job& job);

}  // namespace seamward
