// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/run_context.h"
#include "teach/briefing.h"
#include "teach/feedback.h"
#include "teach/lesson.h"
#include "tool/console.h"

namespace CLI {
class App;
}

namespace seamward {

/// `seamward drill ...` as it was asked for.
struct DrillRequest {
    std::string drill, answers;               ///< files
    std::string folder = "scenarios/drills";  ///< of drills to list
    std::string file;                         ///< to write; of `make` a folder
    std::string language = "en";
    std::vector<std::string> places;    ///< numbers
    std::vector<std::string> progress;  ///< files
    std::optional<std::string> keep;    ///< progress file that an attempt is added to
    std::optional<std::string> house;   ///< of `make`
    std::string seed = "1", difficulty = "easy";
    bool json = false;
};

/// Declares `drill` and what stands under it.
void add_drill(CLI::App& app, DrillRequest& request);

/// Does what was asked for. Throws BadInput and WrongUsage.
void run_drill(const CLI::App& app, const DrillRequest& request, const Console& console, const RunContext& context);

/// What is printed of a drill and of answers to it.
void print_briefing(const Briefing& briefing, const Translator& say, const Console& console);
void print_lesson(const Lesson& lesson, const Console& console);
void print_feedback(const DrillFeedback& feedback, const Translator& say, const Console& console);

/// The same as JSON.
[[nodiscard]] std::string briefing_answer(const DrillRound& round, const Briefing& briefing);
[[nodiscard]] std::string check_answer(const DrillRound& round, const Answers& answers, const DrillResult& result,
                                       const DrillFeedback& feedback);

}  // namespace seamward
