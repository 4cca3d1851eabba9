// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <limits>
#include <string>
#include <vector>

#include "provisions/audit.h"

namespace seamward {

/// By what a finding of one audit was known again in another. Each is tried for all findings of a provision before the next.
enum class KnownBy : std::uint8_t {
    same_parts,    ///< its parts have the same GlobalIds, all of them
    shared_parts,  ///< some of its parts do, and it is not known to lie elsewhere
    key,           ///< it is called the same
    place          ///< it lies where the other lay
};

/// Places farther apart than this are two places. Half a bay of studs or joists 16 in on center: gaps of one kind repeat by the
/// bay or more, so what lies nearer to a gap's old place than this is nearer to it than to the next one's; and redrawing a wall
/// with another cladding or measuring a gap anew moves its middle by less. Meters.
inline constexpr double same_place = 0.2;

/// The same where the findings share a part: a wall has many gaps with many pipes. One that moved within reach is the same one,
/// done anew; one across the room is another. Meters.
inline constexpr double same_part_place = 1.0;

/// What became of the findings of a house between two audits. Findings are positions in Audit::findings.
struct AuditChanges {
    struct Pair {
        std::size_t before = 0, now = 0;
        KnownBy by = KnownBy::key;
        double moved = std::numeric_limits<double>::infinity();  ///< meters; infinite: a place is not known
    };
    struct VerdictChange {
        std::string rule;
        Verdict before = Verdict::unknown, now = Verdict::unknown;
    };

    std::vector<Pair> unchanged;              ///< by position in the audit now
    std::vector<std::size_t> fixed;           ///< of the audit before: looked at again, and as it should be or no longer there
    std::vector<std::size_t> unknown_now;     ///< of the audit before: gone only because it was not looked at again
    std::vector<std::size_t> appeared;        ///< of the audit now: was looked at before, and was as it should be or not there
    std::vector<std::size_t> unknown_before;  ///< of the audit now: was not looked at before
    std::vector<VerdictChange> verdicts;      ///< of provisions of both audits, in the order of the audit now
};

/// Findings of the same provision are paired one to one, first those known by the same parts, then by shared ones, by key, by
/// place; each time the closest pair of all that are left first: those that share more, then those nearer to each other, then
/// those of the same key. Neither the order of findings nor that of parts matters, and audits the other way around give the
/// same pairs.
///
/// What has no partner is fixed (or appeared) only if the other audit could have told: not when its provision is missing there,
/// or has there a thing of unknown verdict that may be this one. A thing that now passes under the same name or GlobalIds or at
/// the same place tells. A way in is fixed only if all animals that it was open to were asked for again, and if it would be in
/// the list.
///
/// O(n log n) for n findings that stayed; for those that changed, quadratic in how many of one provision did.
[[nodiscard]] AuditChanges compare(const Audit& before, const Audit& now);

}  // namespace seamward
