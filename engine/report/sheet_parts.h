// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "report/page_writer.h"

namespace seamward {

// Parts of sheets that are carried about and written on.

/// A list with a box before each item; nothing where there are none.
void tick_list(PageWriter& page, const std::vector<Message>& items);

/// Lines to write on, each with what belongs there before it.
void blanks(PageWriter& page, const std::vector<Message>& labels);

/// `section#drawings` with all drawings of the house; nothing where there are none.
void drawings_part(PageWriter& page);

/// The titles of the drawings that show a closing.
[[nodiscard]] std::vector<Message> drawings_showing(const PageWriter& page, std::size_t closing);

[[nodiscard]] std::vector<Message> names_of(const std::vector<Pest>& pests);

/// "14 ft 9 in east, 29 ft 6 in south, 2 in up", or meters; z = 0 on the ground floor.
[[nodiscard]] Message place_part(const PageWriter& page, const Point& at);

/// How large a gap is, and how sure that is, for whoever works on it.
[[nodiscard]] Message size_part(const PageWriter& page, const Gap& gap);

/// "4.1 fl oz (120 ml)", "10 ft 6 in (3.2 m)", "70 in2 (450 cm2)", "4 pieces": as the price book counts a material.
[[nodiscard]] Message amount_part(const PageWriter& page, double amount, Material::By by);

/// Temperature, wetness, rain and paint as a treatment's row has them; empty where it has none.
[[nodiscard]] Message weather_part(const std::string& treatment);

/// "1 to 4, 7, 9".
[[nodiscard]] Message ranges_part(std::vector<std::size_t> numbers);

}  // namespace seamward
