// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "teach/drill.h"

namespace seamward {

/// A place as it is called before the inspection: what and where, not whether it is open.
[[nodiscard]] std::string place_name(const DrillRound& round, std::size_t place, const Translator& say);

struct BriefedPlace {
    std::size_t number = 0;  ///< from 1
    std::string name;        ///< "hose bibb, north wall"
    std::string height;      ///< "1 ft 4 in (0.41 m) above floor level"; empty: not known
    std::optional<Point> at;
};

/// What a trainee is told, in one language.
struct Briefing {
    std::string title, difficulty, story;
    std::vector<std::string> animals;  ///< name and sizes
    std::vector<std::string> lives;    ///< animals that live in the house, where they do
    std::string question;              ///< by which entry a seen animal came; empty: not asked
    std::vector<BriefedPlace> places;
    std::vector<std::pair<std::string, std::string>> spaces;      ///< ids and names, for `between`
    std::vector<std::pair<std::string, std::string>> treatments;  ///< ids and names; the last is to leave it open
    std::vector<std::string> rules;                               ///< how it is scored
};

/// A sheet to print and to write on, as one HTML file that needs nothing else.
[[nodiscard]] std::string briefing_sheet(const DrillRound& round, const Translator& say);

[[nodiscard]] Briefing briefing(const DrillRound& round, const Translator& say);

/// What hands, eyes and things at hand tell at a place: what its sides are made of, between which gauges it is, and what a tape
/// reads where it is wider than all of them. What it is for and what it joins is for the trainee to know.
[[nodiscard]] std::vector<std::string> close_look(const DrillRound& round, std::size_t place, const Translator& say);

}  // namespace seamward
