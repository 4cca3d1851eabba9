// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "teach/score.h"

namespace seamward::test {

inline const std::filesystem::path source_folder = SEAMWARD_SOURCE_FOLDER;

inline std::vector<std::string> drill_names() {
    return {"1-corner", "2-eave", "3-bathroom", "4-garage", "5-whole-house", "6-sighting"};
}

/// A shipped drill, read once.
inline const DrillRound& shipped_drill(const std::string& name) {
    static std::map<std::string, DrillRound> read;
    const auto there = read.find(name);
    if (there != read.end()) return there->second;
    return read.emplace(name, read_drill(source_folder / "scenarios/drills" / (name + ".yaml"), RunContext())).first->second;
}

/// The position of the place that is a gap.
inline std::size_t place_of(const DrillRound& round, const std::string& gap) {
    for (std::size_t i = 0; i < round.places.size(); ++i) {
        if (round.places[i].gap && round.job.survey[*round.places[i].gap].id == gap) return i;
    }
    throw std::out_of_range("no place " + gap);
}

inline GapIndex gap_of(const DrillRound& round, const std::string& id) {
    for (std::uint32_t i = 0; i < round.job.survey.gaps.size(); ++i) {
        if (round.job.survey.gaps[i].id == id) return {i};
    }
    throw std::out_of_range("no gap " + id);
}

/// One answer: a gap of the job, closed with a treatment.
inline Answers closing(const DrillRound& round, GapIndex gap, const std::string& treatment, double opening = 0) {
    PlaceAnswer answer;
    answer.where.gap = gap;
    answer.open = true;
    answer.treatment = treatment;
    answer.opening = opening;
    return {"Ines Aguirre", round.drill.id, std::nullopt, std::nullopt, {answer}};
}

/// A round over one gap of a job, or over none.
inline DrillRound round_on(Job job, std::vector<GapIndex> gaps) {
    DrillRound round;
    round.drill.id = "made";
    round.drill.pass_mark = 0;
    round.drill.animals = job.pests;
    round.drill.widths = {0.25, 0.0005, {}};
    round.job = std::move(job);
    for (const GapIndex gap : gaps) round.places.push_back({gap, {}, round.job.survey[gap].at, std::nullopt});
    return round;
}

}  // namespace seamward::test
