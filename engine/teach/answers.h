// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/date.h"
#include "teach/key.h"

namespace seamward {

/// Where somebody found something: one of these.
struct FoundAt {
    std::optional<std::size_t> place;  ///< position in DrillRound::places
    std::optional<GapIndex> gap;
    std::optional<Point> at;
};

/// What a trainee says of one place.
struct PlaceAnswer {
    FoundAt where;
    bool open = false;            ///< otherwise tight
    std::optional<double> width;  ///< clear width, meters
    std::optional<std::array<SpaceIndex, 2>> between;
    std::string treatment;  ///< id of a treatment or `leave_open`; empty: not said
    double opening = 0;     ///< of a mesh whose kind does not say it, meters
    bool wait = false;      ///< to be closed only when the animal that lives there is gone

    [[nodiscard]] bool closes() const { return !treatment.empty() && treatment != leave_open; }
    /// Clear opening of the mesh that the treatment leaves, meters; 0: nothing is left.
    [[nodiscard]] double left() const;
};

/// An answers file.
struct Answers {
    std::string trainee, drill;
    std::optional<Date> date;
    std::optional<FoundAt> entry;  ///< by which a seen animal came
    std::vector<PlaceAnswer> findings;
};

/// Reads answers to a drill, YAML, or JSON when the name ends in `.json`. What is left empty was not said. Throws BadInput with
/// all faults: unknown keys, places, ids and units, a place that is told of twice, a tight place with a treatment.
[[nodiscard]] Answers read_answers(const std::filesystem::path& path, const DrillRound& round);
[[nodiscard]] Answers parse_answers(std::string_view yaml, const std::string& shown_as, const DrillRound& round);

/// An answers file to fill in, YAML: every place with empty keys, what may stand there in comments.
[[nodiscard]] std::string blank_answers(const DrillRound& round, const Translator& say);

/// Answers as an answers file, YAML.
[[nodiscard]] std::string written_answers(const Answers& answers, const DrillRound& round);

/// What somebody says who knows the key: every due place, and nothing else.
[[nodiscard]] Answers perfect_answers(const DrillRound& round, const std::string& trainee);

}  // namespace seamward
