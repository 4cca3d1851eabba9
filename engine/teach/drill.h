// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/run_context.h"
#include "job_file/job.h"
#include "teach/spoken.h"

namespace seamward {

enum class Difficulty : std::uint8_t { easy, medium, hard };

/// `easy`, `medium`, `hard`
[[nodiscard]] const char* difficulty_word(Difficulty difficulty);

/// How far a width may be off and still count as right: by a share of the true one or by a size, whichever is more.
struct WidthTolerance {
    double share = 0;
    double least = 0;  ///< meters
    Spoken why;        ///< of a drill's own; empty: that of the table
};

/// Something that looks like a gap to close and is tight, or must stay open.
struct Decoy {
    std::optional<GapIndex> gap;  ///< nothing: no gap is there at all
    Spoken looks;                 ///< why one might fall for it, told afterwards; may be empty
};

/// A place to look at. Its number is its position in DrillRound::places and one.
struct DrillPlace {
    std::optional<GapIndex> gap;       ///< nothing: nothing is open there
    Spoken name;                       ///< of the drill file; empty: what the survey calls the gap
    std::optional<Point> at;           ///< meters
    std::optional<std::size_t> decoy;  ///< position in Drill::decoys
};

/// An animal that was seen; the drill asks by which entry it came.
struct SeenAnimal {
    SpaceIndex room;
    Pest animal;
};

/// What a trainer set: which part of a house is to be inspected, against which animals, and how it is judged.
struct Drill {
    std::string id;
    Spoken title, story;
    Difficulty difficulty = Difficulty::easy;
    std::vector<Pest> animals;
    std::vector<Decoy> decoys;
    double pass_mark = 0;  ///< share of all points
    WidthTolerance widths;
    std::optional<SeenAnimal> seen;
};

/// A drill with the job whose gaps are the truth. Indices in it are those of the job's survey.
struct DrillRound {
    Drill drill;
    Job job;
    std::vector<DrillPlace> places;  ///< in the order of a walk round the outside, then from space to space
};

/// Whether the first key of a YAML or JSON text is that of a drill file.
[[nodiscard]] bool begins_as_drill(std::string_view text);

/// The drill files of a folder, by their names: those that begin as one and end in .yaml, .yml or .json. Nothing: it is no
/// folder.
[[nodiscard]] std::optional<std::vector<std::filesystem::path>> drill_files(const std::filesystem::path& folder);

/// Reads a drill file and the job file that it names. Throws BadInput with all faults of a file, each with line and column. Of a
/// drill that cannot be done (nothing is due, a decoy that is a gap to close, a sighting that nothing explains or that no place
/// of it does) likewise.
[[nodiscard]] DrillRound read_drill(const std::filesystem::path& path, const RunContext& context, Make make = Make::survey);

/// The same from text in memory; `newer`: what is read in place of the job's and the house's file.
[[nodiscard]] DrillRound parse_drill(std::string_view text, const std::filesystem::path& path, const RunContext& context,
                                     Make make = Make::survey, const FileTexts& newer = {});

/// What the trainee may see of the job: its house and spaces, and no gap of it.
[[nodiscard]] Job job_to_inspect(const DrillRound& round);

}  // namespace seamward
