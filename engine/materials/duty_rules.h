// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"
#include "catalog/duty_case.h"

namespace seamward {

/// What may be done to a gap because of what it is there for. A gap that nothing restricts is free: everything may.
struct DutyRuling {
    bool may_close = true;                ///< a full closing is allowed
    std::vector<std::string> treatments;  ///< the only treatments allowed, ids; empty: all, or none where `may_close` is false
    double least_opening = 0;             ///< of a mesh put over it, clear, meters
    double widest_opening = std::numeric_limits<double>::infinity();  ///< likewise
    bool keeps_area = false;  ///< its net free area is due: check_ventilation or check_combustion_air has the last word on a mesh
    Message why;              ///< why it is restricted; empty when it is not
    Message source;           ///< for people: document, publisher, year, and whether it was read; empty when not restricted
    Message instead;          ///< what may be done, for people; empty: leave it as it is
    std::string row;          ///< id of the row of the table of duties that holds; empty: none fits

    [[nodiscard]] bool restricted() const { return !why.empty(); }
    /// Whether that treatment may be used; `opening`: of the mesh that it leaves, 0 for a full closing. A closing at a price that
    /// the survey states (`stated_closing` of options.h) is allowed where any full closing is.
    [[nodiscard]] bool allows(std::string_view treatment, double opening) const;
};

/// Whether all that a case asks holds of a gap.
[[nodiscard]] bool fits_case(const DutyCase& when, const Gap& gap, const Survey& survey);

/// The ruling of the first row of the table of duties that fits the gap's duty, feature, substrates and place. What the survey
/// itself forbids (`closing.never`) comes first and leaves nothing. Where a reference table forbids it, no full closing is left,
/// and of the row's treatments those that leave an open mesh; a price that the survey states changes nothing. O(rows).
[[nodiscard]] DutyRuling ruling_on(const Gap& gap, const Survey& survey);

}  // namespace seamward
