// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward::viewer {

/// What the window says of ways in. Plain text unless it says HTML; names come from files and are escaped there.

/// "hall": the space where a way ends.
[[nodiscard]] QString room_text(const Survey& survey, const RankedPath& way);

/// "sweep under the garage-to-house door": the smallest gap of a way.
[[nodiscard]] QString smallest_gap_text(const Survey& survey, const RankedPath& way);

/// The same with where it stands on the way: "sweep under the garage-to-house door, gap 2 of 2".
[[nodiscard]] QString smallest_gap_place_text(const Survey& survey, const RankedPath& way);

/// "stays open: combustion air", "never close: smoke has to leave": that a gap is not for plugging, and why; empty when
/// it may be closed.
[[nodiscard]] QString stays_open_text(const Gap& gap);

/// "Way in 1: into hall, smallest gap 11/32 in (8.73 mm), sweep under the door": one row of the list for a screen
/// reader, with whether that gap stays open. `row` counts from 0.
[[nodiscard]] QString row_text(const Survey& survey, const RankedPath& way, int row);

/// "Open to: House mouse; perhaps Norway rat, if gaps are as wide as they may be."
[[nodiscard]] QString open_to_text(const Job& job, const RankedPath& way);

/// A way gap by gap, its smallest gap in things at hand, and the job's animals that get through. HTML.
[[nodiscard]] QString steps_html(const Job& job, const RankedPath& way, int row);

/// What to look at again in the survey, under a heading of its own; empty without remarks. HTML.
[[nodiscard]] QString remarks_html(const QStringList& remarks);

/// "garage door, lower corners\nslot, 1/2 in (12.7 mm)": a gap in the picture under the mouse, with whether it stays open.
[[nodiscard]] QString gap_text(const Gap& gap);

/// "between a card and a dime": a width in things at hand, as field_check() of the catalog tells it.
[[nodiscard]] QString hand_text(double width);

/// "House mouse": the name of an animal of the catalog in the language spoken; one that a job's file names stays as it is.
[[nodiscard]] QString animal_text(const Pest& animal);

/// "3/64 in (1.2 mm)", as the preferences want it
[[nodiscard]] QString width_words(double meters);

/// "3/64 in (1.2 mm), assumed": the clear width of a gap, and whether nobody measured it.
[[nodiscard]] QString gap_width_text(const Gap& gap);

}  // namespace seamward::viewer
