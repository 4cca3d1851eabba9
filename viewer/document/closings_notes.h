// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <vector>

#include "document/closings_document.h"

namespace seamward::viewer {

/// What is told beside the closings themselves, in plain text.
struct ClosingNote {
    QString text;
    QString reason;               ///< why, and the source; may be empty
    std::optional<GapIndex> gap;  ///< to be shown in the picture
};

/// Why nothing can be planned at all: no living space, no space where ways in begin, no animals; empty: it can.
[[nodiscard]] std::vector<ClosingNote> lack_notes(const ClosingsPlan& plan);

/// Why there is no plan against all these animals, what stays open, and what helps; empty where there is one.
[[nodiscard]] std::vector<ClosingNote> no_plan_notes(const ClosingsPlan& plan);

/// What was closed with what must not be there.
[[nodiscard]] std::vector<ClosingNote> wrong_notes(const ClosingsPlan& plan);

/// What to settle before the work begins.
[[nodiscard]] std::vector<ClosingNote> before_notes(const ClosingsPlan& plan);

/// How the animals that live in the house leave it before their last way out is shut.
[[nodiscard]] std::vector<ClosingNote> departure_notes(const ClosingsPlan& plan, const std::vector<Departure>& departures);

/// Gaps that nothing may be done to, by reason.
[[nodiscard]] std::vector<ClosingNote> stays_open_notes(const ClosingsPlan& plan);

/// What no price shuts out, and why; empty where there is no such limit.
[[nodiscard]] std::vector<ClosingNote> limit_notes(const ClosingsPlan& plan);

/// Notes on the survey, close calls, and what has to be done at the end.
[[nodiscard]] std::vector<ClosingNote> check_notes(const ClosingsPlan& plan);

/// Why nothing cheaper will do.
[[nodiscard]] std::vector<ClosingNote> proof_notes(const ClosingsPlan& plan);

/// What to bring for all that is ticked, in whole packs.
[[nodiscard]] std::vector<ClosingNote> material_notes(const ClosingsDocument& closings);

}  // namespace seamward::viewer
