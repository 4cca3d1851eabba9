// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "report/report_page.h"
#include "tests/support/page_reader.h"

namespace seamward::test {

/// A job, what a report of it is made of, and its page as an independent reader finds it.
struct MadePage {
    Job job;
    ReportFacts facts;
    std::string html;
    PageElement page;

    MadePage(Job given, ReportSettings settings)
        : job(std::move(given)),
          facts(gather_facts(job, heading(job, "job.yaml"), settings, RunContext())),
          html(report_page(facts)),
          page(read_page(html)) {}
    MadePage(const MadePage&) = delete;
    MadePage& operator=(const MadePage&) = delete;
};

inline ReportSettings settings_for(const Job& job, Audience audience, Language language = Language::english) {
    ReportSettings settings;
    settings.audience = audience;
    settings.language = language;
    settings.planning.against = job.pests;
    settings.planning.date = *parse_date("2026-11-27").value;
    return settings;
}

inline Job job_of_text(const std::string& text) { return parse_job(text, "job.yaml"); }

inline Job scenario(const std::string& name) {
    return read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / (name + ".yaml"), RunContext(), Make::survey);
}

inline std::vector<std::string> scenarios() {
    return {"demo", "two-story", "brick-crawl", "apartments", "townhouse", "wall-corner"};
}

}  // namespace seamward::test
