// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "paths/trace.h"
#include "plan/quote.h"
#include "plan/quote_terms.h"
#include "provisions/audit.h"
#include "report/photos.h"
#include "report/report_settings.h"

namespace seamward {

/// A way in that a report shows.
struct ShownWay {
    RankedPath ranked;
    std::vector<std::size_t> open_to;  ///< positions in ReportFacts::animals, sizes as stated
    /// For each of `open_to` the step of the plan after which the way is shut for it, counted from 1; 0: it stays open.
    std::vector<std::size_t> shut_after;
    /// The line through the house's air, meters, as route() makes it; empty where there are no solids or places.
    std::vector<Point> line;
};

/// Where animals get in, by widths as stated; without animals, where anything does.
struct Entries {
    std::vector<GapIndex>
        gaps;               ///< from where paths start, and with which some way into a room begins; in the order of the survey
    std::size_t rooms = 0;  ///< living spaces that such a way leads into
    std::vector<std::size_t> animals;  ///< that have such a way, positions in `animals`
};

[[nodiscard]] Entries entries_of(const Survey& survey, const std::vector<Pest>& animals);

/// The job file itself, for a sheet that gives it back filled in.
struct JobFileText {
    std::string stem;  ///< its name without folder and ending
    std::string json;  ///< as job_as_json() makes it; empty: the sheet is for paper
};

/// What all pages of a report are made of. It refers to the job and lives no longer.
struct ReportFacts {
    const Job& job;
    std::string heading;
    ReportSettings settings;
    std::vector<Pest> animals;  ///< planned against, as in PlanSettings::against
    Plan plan;                  ///< closing N of the pages and drawings is step N of it
    Quote quote;                ///< options rising in price; empty where there are no animals
    QuoteTerms terms;
    /// The best ways of all, then of each animal, then those which are best for an animal after some step; each once.
    std::vector<ShownWay> ways;
    Entries entries;
    const Job* before = nullptr;  ///< the job as it was at another visit, to compare with
    JobFileText job_file;
    std::optional<Audit> audit;  ///< for builders
    ReportPhotos photos;

    [[nodiscard]] const Survey& survey() const { return job.survey; }
    [[nodiscard]] bool has_solids() const { return !job.house.parts.empty(); }
    /// The number of the closing at a gap, counted from 1; 0: the plan has none there.
    [[nodiscard]] std::size_t closing_at(GapIndex gap) const;
};

/// Plans, quotes and traces for a report. The job is read with its solids where it has a house. Deterministic for a date.
[[nodiscard]] ReportFacts gather_facts(const Job& job, const std::string& heading, const ReportSettings& settings,
                                       const RunContext& context);

}  // namespace seamward
