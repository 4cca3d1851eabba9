// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/gap_parts.h"

#include <algorithm>

#include "geometry/triangle_tree.h"

namespace seamward {

namespace {

constexpr double reach = 0.05;  ///< meters: a place is written to the millimeter at best, and stands in the middle of the air

std::vector<std::size_t> in_order(std::vector<std::size_t> parts) {
    std::sort(parts.begin(), parts.end());
    parts.erase(std::unique(parts.begin(), parts.end()), parts.end());
    return parts;
}

}  // namespace

GapParts parts_of_house(const Job& job) {
    GapParts out;
    out.of_gap.resize(job.survey.gaps.size());
    for (std::size_t i = 0; i < job.house.parts.size(); ++i) {
        const Part& part = job.house.parts[i];
        out.parts.push_back({part.id, part.name, "", ""});
        for (const GapIndex gap : part.bounds) {
            if (gap.valid() && gap.value < out.of_gap.size()) out.of_gap[gap.value].push_back(i);
        }
    }
    for (std::vector<std::size_t>& parts : out.of_gap) parts = in_order(std::move(parts));
    return out;
}

GapParts parts_of_found(const Found& found) {
    GapParts out;
    for (const FoundPart& part : found.parts) out.parts.push_back({part.id, part.name, part.ifc_class, part.global_id});
    for (const FoundGap& gap : found.gaps) out.of_gap.push_back(in_order({gap.parts[0], gap.parts[1]}));
    for (const FoundJoint& joint : found.joints) out.of_gap.push_back(in_order({joint.parts[0], joint.parts[1]}));
    return out;
}

GapParts parts_near(const Survey& survey, const Model& model) {
    GapParts out;
    std::vector<TriangleTree::Triangle> triangles;
    std::vector<std::size_t> part_of;
    for (const ModelPart& part : model.parts) {
        for (const auto& [a, b, c] : part.mesh.triangles) {
            triangles.push_back({part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]});
            part_of.push_back(out.parts.size());
        }
        out.parts.push_back({part.id, part.name, part.ifc_class, part.global_id});
    }
    const TriangleTree tree(std::move(triangles));
    for (const Gap& gap : survey.gaps) {
        std::vector<std::pair<double, std::size_t>> near;
        if (gap.at && tree.size() > 0) {
            const double at_most = clear_width(gap.shape) + reach;
            tree.around(*gap.at, at_most, [&](std::uint32_t triangle) {
                const double away = distance(nearest_of(tree[triangle], *gap.at), *gap.at);
                if (away > at_most) return true;
                const auto same = [&](const auto& one) { return one.second == part_of[triangle]; };
                const auto known = std::find_if(near.begin(), near.end(), same);
                if (known == near.end())
                    near.emplace_back(away, part_of[triangle]);
                else
                    known->first = std::min(known->first, away);
                return true;
            });
        }
        std::sort(near.begin(), near.end());
        std::vector<std::size_t> parts;
        for (std::size_t i = 0; i < std::min<std::size_t>(2, near.size()); ++i) parts.push_back(near[i].second);
        out.of_gap.push_back(in_order(std::move(parts)));
    }
    return out;
}

}  // namespace seamward
