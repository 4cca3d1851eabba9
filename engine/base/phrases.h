// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// `A`, `A and B`, `A, B and C`
[[nodiscard]] std::string listed(const std::vector<std::string>& words);

/// `A; B; C`
[[nodiscard]] std::string joined(const std::vector<std::string>& words, std::string_view between);

/// `1 gap`, `3 gaps`
[[nodiscard]] std::string counted(std::size_t count, const std::string& one, const std::string& many);

/// `45 min`, `3 h 10 min`
[[nodiscard]] std::string time_text(double minutes);

/// `12.5 %`, to hundredths of a percent, from a share of one.
[[nodiscard]] std::string percent_text(double share);

}  // namespace seamward
