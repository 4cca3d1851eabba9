// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "job_file/job_edits.h"

namespace seamward::viewer {

/// A gap as the survey has it, before anything was closed.
struct GapFacts {
    Gap gap;                            ///< with the shape and the plus-minus that were found
    const ClosedGap* closed = nullptr;  ///< what the job says of its closing, if it does
    bool of_house = false;              ///< the described house's: a job says only its width, evidence, note and photo
    std::string feature{};              ///< id of the feature of the house that makes it; empty: none does

    [[nodiscard]] double width() const { return clear_width(gap.shape); }
    [[nodiscard]] bool measured() const { return gap.evidence.how == Evidence::How::measured; }
};

/// `job` outlives the answer.
[[nodiscard]] GapFacts gap_facts(const Job& job, GapIndex gap);

/// All gaps that a feature of the described house makes.
[[nodiscard]] std::vector<GapIndex> gaps_of_feature(const Job& job, const std::string& feature);

/// What a job says of the evidence of a gap of the house replaces both parts of it: says the part again that does not change.
void complete_evidence(ChangeGap& edit, const GapFacts& facts);
/// Another width, as it was typed. Whoever types one has measured it, or says otherwise.
[[nodiscard]] ChangeGap measured_width(const GapFacts& facts, const std::string& width);

/// The text with a capital at its beginning, where it is to be a sentence.
[[nodiscard]] QString as_sentence(QString text);

/// "measured", "from drawings", "assumed", "not said how"
[[nodiscard]] QString how_words(Evidence::How how);

/// "measured, plus or minus 0.2 mm"; "closed with a bead of sealant on 2026-03-20".
[[nodiscard]] QString known_words(const GapFacts& facts);

/// "yard to north wall": the two sides of a gap.
[[nodiscard]] QString sides_words(const Survey& survey, const Gap& gap);

/// "slot, 9 m (30 ft) long", "ring around a pipe of 7/8 in (22 mm)": all of a shape but its clear width.
[[nodiscard]] QString shape_words(const Shape& shape);

/// A length as somebody would type it: `3/8 in` or `1.2 mm`, whichever says it exactly. `large`: of walls, `2.4 m`.
[[nodiscard]] QString typed_length(double meters, bool large = false);

/// The same of an area: `100 cm2`.
[[nodiscard]] QString typed_area(double square_meters);

}  // namespace seamward::viewer
