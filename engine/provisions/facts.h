// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "base/vector.h"
#include "geometry/triangle_tree.h"
#include "provisions/audit.h"

/// For this folder only.
namespace seamward {

/// Whether a space is called so: "attic" in "attic-2" and "Attic over the garage".
[[nodiscard]] bool called(const Space& space, const std::string& word);

/// What provisions are held against, made ready once. It refers to the job and to the parts, and lives no longer.
class AuditFacts {
public:
    AuditFacts(const Job& job, const GapParts& parts);

    const Job& job;
    const GapParts& parts;
    /// The whole house is described: what its file does not show is not there.
    bool described = false;

    [[nodiscard]] const Survey& survey() const { return job.survey; }
    /// Whether it is built so: yes, no, or nothing where nobody says.
    [[nodiscard]] std::optional<bool> applies(const Applies& asked) const;
    /// The gaps that a provision looks at, in the survey's order.
    [[nodiscard]] std::vector<GapIndex> gaps_of(const Provision& provision) const;
    /// Whether nobody measured a gap's width: it is a starting value of the tables, or a model draws it shut, and nobody closed
    /// it.
    [[nodiscard]] bool is_guess(GapIndex gap) const;
    /// The closing of a gap that holds; null: none does.
    [[nodiscard]] const ClosedGap* closing_of(GapIndex gap) const;
    /// The faces that bound a gap; empty where there are no solids.
    [[nodiscard]] const std::vector<TriangleTree::Triangle>& faces(GapIndex gap) const { return faces_[gap.value]; }
    /// The level direction from a gap toward the air outdoors, or toward its first space that is no room; a unit vector. Nothing
    /// where its way is not known or goes straight up.
    [[nodiscard]] std::optional<Vector> outward(GapIndex gap) const;

    /// Whether a part stands in or before the outside walls.
    [[nodiscard]] bool is_outside(const Part& part) const;

    /// What lies under a point.
    struct Ground {
        double z = 0;
        bool earth = false;  ///< otherwise paving
    };
    /// The highest ground or paving at a place of the plan, wherever the point is; nothing where there is none.
    [[nodiscard]] std::optional<Ground> ground_at(const Point& at) const;

    /// The nearest solid straight above and straight below a point, heights; nothing where there is none.
    [[nodiscard]] std::optional<double> solid_above(const Point& at) const;
    [[nodiscard]] std::optional<double> solid_below(const Point& at) const;

private:
    [[nodiscard]] std::optional<bool> has(const std::string& word) const;
    [[nodiscard]] bool between_classes(GapIndex gap, const Provision& provision) const;
    [[nodiscard]] bool leads_as_asked(const Gap& gap, const Provision& provision) const;
    /// Whether it is known to be in a wall between rooms or between dwellings.
    [[nodiscard]] bool is_in_inner_wall(GapIndex gap) const;
    void gather_solids();

    std::set<std::size_t> attics_, garages_;                  ///< spaces; none: nobody says which they are
    std::vector<const ClosedGap*> closings_;                  ///< by gap: the one that holds; null: none
    std::vector<std::vector<TriangleTree::Triangle>> faces_;  ///< by gap
    std::unique_ptr<TriangleTree> ground_, solids_;
    std::vector<bool> is_earth_;  ///< of the ground's triangles
};

}  // namespace seamward
