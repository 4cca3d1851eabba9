// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "house/layout.h"

namespace seamward {

/// Where a wall's layers begin and end along n.
struct Depth {
    double inside = 0, outside = 0;
};
[[nodiscard]] Depth depth_of(const Assembly& assembly, bool exterior);

/// The plan of a partition, reaching a little into what it meets at its ends, so that no crack is left there.
[[nodiscard]] Loop plan_of(const WallLayout& wall);
/// Finds which ends of partitions meet something; once all walls stand.
void find_ends(Layout& layout);

/// Layers, studs and plates of a wall whose frame, length, heights and openings are known, and the air in it, named as in
/// `cavities`. `under` is the same partition one story down, where its air goes on up into this one.
void build_wall(Layout& layout, WallLayout& wall, const Assembly& assembly, const std::vector<NamedSpace>& cavities, Place place,
                const WallLayout* under = nullptr);
/// Parts of lay_out_shell(), story by story, once all walls stand.
void lay_out_rooms(Layout& layout, std::size_t story);
/// The floor under an upper story: boards, and the air between the joists, parted by partitions that go through it.
void lay_out_floor(Layout& layout, std::size_t story);
void lay_out_bulkhead(Layout& layout, const BulkheadDescription& described);

}  // namespace seamward
