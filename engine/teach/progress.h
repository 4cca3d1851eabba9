// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/date.h"
#include "teach/score.h"
#include "teach/spoken.h"

namespace seamward {

/// One round that somebody did.
struct Attempt {
    std::string trainee, drill;
    std::optional<Date> date;
    int points = 0, most = 0;
    bool passed = false;
    std::vector<std::string> harms;   ///< ids of gaps
    std::vector<std::string> missed;  ///< ids of gaps that were due and not found
    std::size_t false_alarms = 0;
    Spoken title = {};                         ///< of the drill; empty: not known, as in files of earlier versions
    std::map<std::string, Spoken> names = {};  ///< by id, of the gaps above, as the briefing calls them; some may be missing

    [[nodiscard]] double share() const { return most == 0 ? 0 : static_cast<double>(points) / most; }
};

[[nodiscard]] Attempt attempt_of(const DrillRound& round, const Answers& answers, const DrillResult& result);

/// Reads a progress file: one JSON object a line, in the order of the attempts. Throws BadInput with all faulty lines, each with
/// how to mend it; a file cut off in its last line is one.
[[nodiscard]] std::vector<Attempt> read_progress(const std::filesystem::path& path, const std::string& shown_as);
[[nodiscard]] std::vector<Attempt> parse_progress(std::string_view text, const std::string& shown_as);

/// The whole file.
[[nodiscard]] std::string written_progress(std::span<const Attempt> attempts);

/// Adds an attempt to a progress file, which is made when there is none. It is read first and written whole: one that is faulty
/// stays as it is, and nobody ever sees half of it. Whoever adds to it at the same time waits: an empty file `PATH.lock` beside
/// it is locked meanwhile, and stays. Returns how many attempts of that trainee at that drill there are now. Throws BadInput.
std::size_t add_attempt(const Attempt& attempt, const std::filesystem::path& path, const std::string& shown_as);

/// A class of trainees over all their progress files, as CSV by RFC 4180: one row for each trainee and drill, in order of both,
/// then one row for each drill over the whole class. Drills and gaps by their names, as the newest attempt has them, and by their
/// ids where it has none; the last three columns have the ids.
[[nodiscard]] std::string class_summary(std::span<const Attempt> attempts, const Translator& say);

}  // namespace seamward
