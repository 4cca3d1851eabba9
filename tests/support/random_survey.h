// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>

#include "base/survey.h"

namespace seamward::test {

/// What random surveys look like. The same settings and seed give the same survey on every machine.
struct RandomSurveySettings {
    std::uint32_t spaces = 6;
    std::uint32_t gaps = 10;
    std::uint32_t distinct_widths = 1'000'000;  ///< few: many ties; widths are whole multiples of 25 mm / distinct_widths
    double outdoors_share = 0.15;
    double living_share = 0.25;
    double source_share = 0.1;   ///< of all spaces, living ones too
    double located_share = 1.0;  ///< gaps with a position, on a coarse grid so that lengths tie as well
    bool shapes = false;         ///< holes, rings and meshes too, with plus_minus; else slots
};

/// The first space is outdoors and the last is living; kinds of the rest, ends and sizes are random.
[[nodiscard]] Survey random_survey(const RandomSurveySettings& settings, std::uint64_t seed);

}  // namespace seamward::test
