// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>

#include "provisions/audit.h"

namespace seamward {

/// Whether a value keeps to a limit. A value that may be off passes only when all that it may be keeps to the limit, and fails
/// only when none of it does (the rule of ISO 14253-1 for proving that something conforms, and that it does not); between, and
/// without a value, it is unknown. A billionth of the unit does not count.
[[nodiscard]] Verdict judge(const Provision& provision, std::optional<double> value, double plus_minus);

/// How far a value is past the limit; less than 0 where it keeps to it.
[[nodiscard]] double past_limit(const Provision& provision, double value);

/// A value in the provision's unit: `4 in (101.6 mm)`, `144 in2 (929 cm2)`, `133 %`, `2`, `yes`, `4.2 air changes an hour`. Where
/// the limit is thinner than a rule can tell, as of sheets and wires: `0.019 in (0.48 mm)`.
[[nodiscard]] Message value_text(const Provision& provision, double value);

/// `4 in (101.6 mm) or more`, `1/16 in (1.6 mm) to 1/4 in (6.4 mm)`, `none`, `yes`
[[nodiscard]] Message limit_text(const Provision& provision);

}  // namespace seamward
