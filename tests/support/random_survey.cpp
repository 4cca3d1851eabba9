// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/random_survey.h"

#include <random>

namespace seamward::test {

namespace {

/// Distributions of the standard library differ between implementations; these do not.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : engine_(seed) {}
    std::uint32_t below(std::uint32_t n) { return static_cast<std::uint32_t>(engine_() % n); }
    double share() { return static_cast<double>(engine_() >> 11U) * 0x1p-53; }

private:
    std::mt19937_64 engine_;
};

}  // namespace

Survey random_survey(const RandomSurveySettings& settings, std::uint64_t seed) {
    Dice dice(seed);
    Survey survey;
    for (std::uint32_t i = 0; i < settings.spaces; ++i) {
        const double draw = dice.share();
        SpaceKind kind = SpaceKind::cavity;
        if (i == 0 || draw < settings.outdoors_share)
            kind = SpaceKind::outdoors;
        else if (i + 1 == settings.spaces || draw > 1 - settings.living_share)
            kind = SpaceKind::living;
        survey.spaces.push_back({"s" + std::to_string(i), "", kind, dice.share() < settings.source_share});
    }
    for (std::uint32_t i = 0; i < settings.gaps; ++i) {
        Gap gap;
        // Ids in an order of their own, so that ties are not decided by position.
        gap.id = "g" + std::to_string((std::uint64_t{i} * 7919 + seed) % 100'003) + "-" + std::to_string(i);
        const std::uint32_t a = dice.below(settings.spaces);
        std::uint32_t b = dice.below(settings.spaces - 1);
        if (b >= a) ++b;
        gap.between = {SpaceIndex{a}, SpaceIndex{b}};
        const double width = 0.025 * (1 + dice.below(settings.distinct_widths)) / settings.distinct_widths;
        const std::uint32_t shape = settings.shapes ? dice.below(4) : 0;
        if (shape == 0) gap.shape = Slot{width, settings.shapes ? 0.03 * dice.share() : 1.0};
        if (shape == 1) gap.shape = Hole{width};
        if (shape == 2) gap.shape = Ring{width, 0.03 * dice.share()};
        if (shape == 3) gap.shape = Mesh{width, 0.01};
        if (settings.shapes) gap.evidence.plus_minus = 0.002 * dice.share();
        if (dice.share() < settings.located_share) gap.at = Point{1.0 * dice.below(4), 1.0 * dice.below(3), 0};
        survey.gaps.push_back(std::move(gap));
    }
    return survey;
}

}  // namespace seamward::test
