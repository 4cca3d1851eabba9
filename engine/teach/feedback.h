// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "base/run_context.h"
#include "paths/entry_path.h"
#include "teach/score.h"

namespace seamward {

/// A path that goes through a missed gap, for drawing and for telling.
struct MissedWay {
    EntryPath path;
    double pinch = 0;  ///< meters
    GapIndex pinch_gap;
    std::vector<std::size_t> open_to;  ///< animals of the drill; positions in Drill::animals
};

/// What a trainer would say of one place.
struct PlaceFeedback {
    std::size_t place = 0;
    std::string title;               ///< the place, as the briefing calls it
    std::string verdict;             ///< "found", "missed", "false alarm"
    std::vector<std::string> notes;  ///< sentences
    std::optional<MissedWay> way;
};

struct HarmFeedback {
    std::string what;
    std::vector<std::string> notes;  ///< why, who says so, what to do instead
};

/// A round for people, in one language.
struct DrillFeedback {
    std::string headline;               ///< passed or not, and points
    std::vector<HarmFeedback> harms;    ///< first: they decide
    std::vector<PlaceFeedback> places;  ///< what was not wholly right, then what was, each in the order of places
    std::vector<std::string> other;     ///< findings that are none of the drill's places, the entry that was asked for
};

[[nodiscard]] DrillFeedback feedback(const DrillRound& round, const Answers& answers, const DrillResult& result,
                                     const Translator& say, const RunContext& context);

}  // namespace seamward
