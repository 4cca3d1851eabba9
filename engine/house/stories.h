// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "house/layout.h"

namespace seamward {

/// The plan of a partition, reaching a little into what it meets at its ends, so that no crack is left there.
[[nodiscard]] Loop plan_of(const WallLayout& wall);
/// Finds which ends of partitions meet something; once all walls stand.
void find_ends(Layout& layout);

/// Parts of lay_out_shell(), story by story, once all walls stand.
void lay_out_rooms(Layout& layout, std::size_t story);
/// The floor under an upper story: boards, and the air between the joists, parted by partitions that go through it.
void lay_out_floor(Layout& layout, std::size_t story);
void lay_out_bulkhead(Layout& layout, const BulkheadDescription& described);

}  // namespace seamward
