// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <cstdint>

namespace seamward::viewer {

/// What is known of a place of a drill: before handing in what the trainee said, afterwards how it was judged.
enum class PlaceSign : std::uint8_t { nothing, told_open, told_tight, right, partly, missed, false_alarm, harm };

/// "missed": a word or two beside the sign; empty for nothing.
[[nodiscard]] QString sign_words(PlaceSign sign);

}  // namespace seamward::viewer
