// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/date.h"
#include "base/message.h"
#include "base/run_context.h"
#include "base/vector.h"
#include "catalog/provisions.h"
#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward {

enum class Verdict : std::uint8_t { pass, fail, unknown, not_applicable };

/// `pass`, `fail`, `unknown`, `not-applicable`
[[nodiscard]] const char* verdict_word(Verdict verdict);

/// A part of the house or model that an audit names.
struct AuditedPart {
    std::string id, name, ifc_class;
    std::string global_id;  ///< 22 characters of IFC; empty elsewhere
};

/// The parts of a house or model, and those that bound each gap of its survey.
struct GapParts {
    std::vector<AuditedPart> parts;
    std::vector<std::vector<std::size_t>> of_gap;  ///< positions in `parts`, rising; by gap
};

/// One thing that a provision was held against.
struct Checked {
    Message subject;  ///< "hose bibb, north wall"
    Verdict verdict = Verdict::unknown;
    std::optional<double> measured;  ///< in the provision's unit
    double plus_minus = 0;           ///< likewise
    Message remark;                  ///< why it is unknown, or how it was measured; may be empty
    std::optional<GapIndex> gap;
    std::optional<Point> at;         ///< meters, z up
    std::vector<std::size_t> parts;  ///< positions in Audit::parts
};

/// A provision held against a house.
struct ProvisionResult {
    Provision provision;
    Verdict verdict = Verdict::unknown;  ///< fail where one thing fails, else unknown where one is, else pass
    std::optional<double> measured;      ///< of the thing that decides: the one farthest past the limit, or nearest to it
    std::vector<Checked> checked;
    Message why;     ///< why it is unknown or does not apply; empty else
    Message source;  ///< for people
};

/// An entry path that is open to one of the animals asked for.
struct WayIn {
    RankedPath way;
    std::vector<std::size_t> open_to;  ///< positions in Audit::pests
    std::vector<std::size_t> parts;    ///< of all gaps on it, positions in Audit::parts
};

/// The rule of findings that are ways in.
inline constexpr const char* way_in = "way-in";

/// Something to be put right: a thing that fails a provision, or an open way in. What reports, BCF files and comparisons are made
/// of.
struct Finding {
    std::string rule;  ///< id of the provision; `way-in` for a way
    std::string key;   ///< of its own within the audit, and the same as long as the thing is called the same
    Message title;     ///< "Weep screed above earth: screed, north wall"
    Message text;      ///< what was measured, what is due, what puts it right; with the caution of Audit::caution left out
    Message source;
    std::optional<GapIndex> gap;
    std::optional<Point> at;
    std::optional<Vector> outward;   ///< level, toward outdoors there; a unit vector
    std::vector<std::size_t> parts;  ///< positions in Audit::parts, rising
};

struct Audit {
    std::string heading;
    Date date;
    std::vector<Pest> pests;  ///< that ways were looked for; empty: all that any gap lets through
    std::vector<AuditedPart> parts;
    std::vector<ProvisionResult> results;  ///< in the order of the table
    std::vector<WayIn> ways;               ///< best first
    bool more_ways = false;                ///< there are more than were asked for
    std::vector<Finding> findings;         ///< provisions in the order of the table, then ways
    Message caution;                       ///< that the local code and its official decide
};

struct AuditSettings {
    std::string heading;
    Date date{};
    std::vector<Pest> pests;                  ///< none: ways that anything gets through
    std::size_t most_ways = 50;               ///< that become findings
    const Table<Provision>* rules = nullptr;  ///< null: the shipped ones
};

/// Holds a house against the provisions. Its parts are those of its house, or of `model` where its solids are another file's.
/// Nothing that was not measured passes: a width that is a guess, a joint that a model draws tight, and a value as near to its
/// limit as it may be off are unknown. O(provisions x gaps), and what the ways and the areas take.
[[nodiscard]] Audit audit(const Job& job, const GapParts& parts, const AuditSettings& settings, const RunContext& context);

}  // namespace seamward
