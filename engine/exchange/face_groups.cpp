// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/face_groups.h"

#include <map>
#include <utility>

namespace seamward {

std::vector<FaceGroup> face_groups(const Part& part) {
    FaceGroup ordinary;
    std::map<GapIndex, std::vector<std::size_t>> of_gaps;
    for (std::size_t i = 0; i < part.mesh.triangles.size(); ++i) {
        const GapIndex gap = i < part.bounds.size() ? part.bounds[i] : GapIndex{};
        (gap.valid() ? of_gaps[gap] : ordinary.triangles).push_back(i);
    }
    std::vector<FaceGroup> groups;
    if (!ordinary.triangles.empty()) groups.push_back(std::move(ordinary));
    for (auto& [gap, triangles] : of_gaps) groups.push_back({gap, std::move(triangles)});
    return groups;
}

}  // namespace seamward
