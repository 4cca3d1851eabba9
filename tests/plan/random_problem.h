// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <random>
#include <vector>

#include "plan/closing_problem.h"
#include "tests/support/random_survey.h"

namespace seamward::test {

/// A small survey with animals, and a few treatments for each gap: full ones, ones that are gnawed through, meshes, none at all.
struct RandomJob {
    Survey survey;
    std::vector<Pest> pests;
    std::vector<GapOptions> options;
};

struct RandomJobSettings {
    std::uint32_t spaces = 5, gaps = 7;
    std::uint32_t pests = 3;
    std::uint32_t most_options = 3;
    double never_share = 0.1;
    bool full_only = false;  ///< full closings that nobody gnaws through, one a gap
};

inline RandomJob random_job(const RandomJobSettings& settings, std::uint64_t seed) {
    std::mt19937_64 random(seed);
    RandomJob job;
    job.survey =
        random_survey({.spaces = settings.spaces, .gaps = settings.gaps, .distinct_widths = 12, .shapes = true}, random());
    for (std::uint32_t i = 0; i < settings.pests; ++i) {
        Pest pest;
        pest.id = "pest-" + std::to_string(i);
        pest.size.slit = 1e-3 * static_cast<double>(1 + random() % 12);
        pest.size.hole = pest.size.slit + 1e-3 * static_cast<double>(random() % 8);
        pest.gnaws = random() % 3 == 0;
        job.pests.push_back(pest);
    }
    for (std::size_t i = 0; i < job.survey.gaps.size(); ++i) {
        GapOptions options;
        const bool never = static_cast<double>(random() % 1000) < 1000 * settings.never_share;
        const std::uint64_t count = never ? 0 : settings.full_only ? 1 : 1 + random() % settings.most_options;
        for (std::uint64_t o = 0; o < count; ++o) {
            Option option;
            option.treatment = "treatment-" + std::to_string(o);
            option.cost = {static_cast<std::int64_t>(random() % 40)};
            if (!settings.full_only) {
                option.gnawed = random() % 3 == 0;
                if (random() % 3 == 0) option.opening = 1e-3 * static_cast<double>(1 + random() % 9);
            }
            options.options.push_back(option);
        }
        job.options.push_back(options);
    }
    return job;
}

}  // namespace seamward::test
