// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstddef>
#include <functional>
#include <vector>

#include "job_file/job_edits.h"

namespace seamward::viewer {

/// A change that can be taken back and made again.
struct Command {
    QString text;  ///< what it changes: "width of “hose bibb”"
    std::function<void()> redo, undo;
};

/// One step of the history of a survey: what can be taken back at once.
struct SurveyStep {
    struct Part {
        TextChange change;
        bool of_house = false;  ///< of the text of the house
    };

    QString text;
    std::vector<Part> parts;  ///< one after the other; none: the functions
    bool solids = false;      ///< the solids become others
    std::function<void()> redo, undo;

    /// What it takes in memory.
    [[nodiscard]] std::size_t bytes() const;
};

}  // namespace seamward::viewer
