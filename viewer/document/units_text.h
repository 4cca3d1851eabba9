// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

namespace seamward::viewer {

/// How widths are written for people.
enum class Lengths : std::uint8_t { inches_first, millimeters };

/// Holds for all widths written from now on; what is on the screen already has to be written again. Of any thread.
void write_lengths_as(Lengths lengths);
[[nodiscard]] Lengths lengths_written();

/// "3/64 in (1.2 mm)", or "1.2 mm". `meters`: a width.
[[nodiscard]] QString length_words(double meters);

/// "2 m (6.6 ft)", or "2 m": for what is as large as a room; below half a meter as length_words().
[[nodiscard]] QString distance_words(double meters);

}  // namespace seamward::viewer
