// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/message.h"
#include "base/money.h"

namespace seamward {

/// Inches to the nearest 1/64 as a reduced fraction: `3/64 in`, `1 1/2 in`, `0 in`; a positive length below
/// that reads `under 1/64 in`, never as more than it is.
[[nodiscard]] std::string inches_text(double meters);

/// Millimeters with at most two decimals: `1.2 mm`, `0.76 mm`, `25 mm`; a positive length that rounds to
/// nothing reads `under 0.01 mm`.
[[nodiscard]] std::string millimeters_text(double meters);

/// `3/64 in (1.2 mm)`
[[nodiscard]] std::string width_text(double meters);

/// The same, for sentences.
[[nodiscard]] Message inches_message(double meters);
[[nodiscard]] Message millimeters_message(double meters);
[[nodiscard]] Message width_message(double meters);

/// A length, a height or a distance, as a tape is read: `7 ft 2 1/8 in (2.19 m)`, to the nearest 1/8 in and 1 cm, `2 ft 1 in
/// (635 mm)` below a meter. Below 24 in, and below 0, as widths are written.
[[nodiscard]] Message length_message(double meters);
/// `2.19 m`, `635 mm`: its metric half; as widths are written below 24 in.
[[nodiscard]] Message metric_length_message(double meters);

/// `$1,250.00`
[[nodiscard]] std::string money_text(Money money);

/// A length for an answer meant for programs: millimeters, rounded to 1e-6 mm and no further.
[[nodiscard]] double answer_millimeters(double meters);

}  // namespace seamward
