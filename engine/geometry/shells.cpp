// SPDX-License-Identifier: GPL-3.0-or-later
#include "geometry/shells.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "base/vector.h"
#include "geometry/box_tree.h"
#include "geometry/triangle_tree.h"

namespace seamward {

namespace {

constexpr std::uint32_t none = 0xffffffff;
/// How many triangles of a shell are asked whether they are inside of another; all say so only of a hollow.
constexpr std::size_t most_asked = 1000;

/// Over an edge of two triangles, and whether one of them has to be turned for both to agree.
struct Neighbor {
    std::uint32_t triangle = 0;
    bool disagrees = false;
};

/// Triangles that hang together by edges of two.
struct Shell {
    std::size_t first = 0, last = 0;  ///< its triangles: positions in their order by shells
    bool closed = true;
    // With all that it meets at crowded edges:
    bool all_even = true;     ///< no edge is a side of an odd number of triangles
    bool balanced = true;     ///< as many triangles run along each edge one way as the other
    std::uint32_t group = 0;  ///< leads to the shell that stands for all of them
    double volume = 0;        ///< what it adds to six times the volume of a closed surface
    double size = 0;          ///< the same with all parts taken positive
};

/// A point as seen askew, so that what is upright or level in the part is neither and no face stands right above a point.
Point askew(const Point& p) {
    constexpr double third = 1.0 / 3, c = 0.8910065241883679, s = 0.4539904997395468;  // a turn by 27 degrees
    const double x = c * p.x - s * p.y, y = s * p.x + c * p.y;
    return {third * (2 * x - 2 * y + p.z), third * (2 * x + y - 2 * p.z), third * (x + 2 * y + 2 * p.z)};
}

class Shells {
public:
    Shells(std::span<const Point> points, std::span<Corners> triangles, double tolerance)
        : points_(points),
          triangles_(triangles),
          tolerance_(tolerance),
          uses_(edge_uses(points.size(), triangles)),
          turned_(triangles.size(), 0),
          shell_of_(triangles.size(), none) {
        cut_where_they_touch(uses_, points, tolerance);
    }

    void turn(PartFaults& faults) {
        link_neighbors();
        for (std::uint32_t t = 0; t < triangles_.size(); ++t)
            if (shell_of_[t] == none) faults.flipped += add_shell(t);
        faults.shells = shells_.size();
        judge_shells(faults);
        grow_tree();
        const std::vector<std::uint32_t> wrong = inside_out();
        for (const std::uint32_t s : wrong)
            for (const std::uint32_t t : triangles_of(shells_[s])) turned_[t] ^= 1;
        faults.inside_out = !wrong.empty();
        faults.closed = !triangles_.empty() && is_balanced();
        for (std::uint32_t t = 0; t < triangles_.size(); ++t)
            if (turned_[t] != 0) std::swap(triangles_[t][1], triangles_[t][2]);
    }

private:
    [[nodiscard]] std::span<const std::uint32_t> triangles_of(const Shell& shell) const {
        return std::span(by_shell_).subspan(shell.first, shell.last - shell.first);
    }

    /// 1 or -1: which way along its edge a side runs now.
    [[nodiscard]] int way(const EdgeUse& use) const { return use.forward == (turned_[use.triangle] == 0) ? 1 : -1; }

    void link_neighbors() {
        starts_.assign(triangles_.size() + 1, 0);
        const auto for_each_pair = [&](auto visit) {
            for_each_edge(uses_, [&](std::span<const EdgeUse> edge) {
                if (edge.size() == 2 && edge[0].triangle != edge[1].triangle) visit(edge[0], edge[1]);
            });
        };
        for_each_pair([&](const EdgeUse& a, const EdgeUse& b) {
            ++starts_[a.triangle + 1];
            ++starts_[b.triangle + 1];
        });
        std::partial_sum(starts_.begin(), starts_.end(), starts_.begin());
        neighbors_.resize(starts_.back());
        std::vector<std::uint32_t> ends(starts_.begin(), starts_.end() - 1);
        for_each_pair([&](const EdgeUse& a, const EdgeUse& b) {
            const bool disagree = a.forward == b.forward;
            neighbors_[ends[a.triangle]++] = {b.triangle, disagree};
            neighbors_[ends[b.triangle]++] = {a.triangle, disagree};
        });
    }

    [[nodiscard]] Vector doubled_area(std::uint32_t t) const {
        const auto [a, b, c] = triangles_[t];
        return cross(points_[b] - points_[a], points_[c] - points_[a]);
    }

    /// Collects the shell of a triangle and turns what disagrees with most of its area. How many triangles that are.
    std::size_t add_shell(std::uint32_t start) {
        const auto number = static_cast<std::uint32_t>(shells_.size());
        Shell& shell = shells_.emplace_back();
        shell.group = number;
        shell.first = by_shell_.size();
        by_shell_.push_back(start);
        shell_of_[start] = number;
        std::array<double, 2> area{};
        std::array<std::size_t, 2> count{};
        for (std::size_t i = shell.first; i < by_shell_.size(); ++i) {
            const std::uint32_t t = by_shell_[i];
            area[turned_[t]] += length(doubled_area(t));
            ++count[turned_[t]];
            for (std::uint32_t k = starts_[t]; k < starts_[t + 1]; ++k) {
                const auto [next, disagrees] = neighbors_[k];
                if (shell_of_[next] != none) continue;
                shell_of_[next] = number;
                turned_[next] = turned_[t] ^ (disagrees ? 1 : 0);
                by_shell_.push_back(next);
            }
        }
        shell.last = by_shell_.size();
        if (area[1] <= area[0]) return count[1];
        for (const std::uint32_t t : triangles_of(shell)) turned_[t] ^= 1;
        return count[0];
    }

    std::uint32_t group_of(std::uint32_t s) {
        while (shells_[s].group != s) s = shells_[s].group = shells_[shells_[s].group].group;
        return s;
    }

    void judge_shells(PartFaults& faults) {
        open_volume_.assign(shells_.size(), 0);
        std::vector<std::pair<std::uint32_t, int>> sides;  // shells and ways along the edge
        for_each_edge(uses_, [&](std::span<const EdgeUse> edge) {
            if (edge.size() == 1) faults.open_edges += length(points_[edge[0].high] - points_[edge[0].low]);
            if (edge.size() > 2) ++faults.crowded_edges;
            sides.clear();
            for (const EdgeUse& use : edge) sides.emplace_back(shell_of_[use.triangle], way(use));
            std::sort(sides.begin(), sides.end());
            int whole = 0;
            for (const auto& [shell, way_along] : sides) whole += way_along;
            const std::uint32_t first = sides.front().first;
            for (std::size_t i = 0; i < sides.size();) {
                const std::uint32_t own = sides[i].first;
                int balance = 0;
                for (; i < sides.size() && sides[i].first == own; ++i) balance += sides[i].second;
                Shell& shell = shells_[own];
                shell.closed = shell.closed && balance == 0;
                shell.all_even = shell.all_even && edge.size() % 2 == 0;
                shell.balanced = shell.balanced && whole == 0;
                const std::uint32_t a = group_of(first), b = group_of(own);
                shells_[std::max(a, b)].group = std::min(a, b);
            }
        });
        for (std::uint32_t s = 0; s < shells_.size(); ++s) {
            Shell& shell = shells_[s];
            measure(shell, points_[triangles_[by_shell_[shells_[group_of(s)].first]][0]]);
            Shell& leader = shells_[group_of(s)];
            leader.all_even = leader.all_even && shell.all_even;
            leader.balanced = leader.balanced && shell.balanced;
            if (!shell.closed) open_volume_[group_of(s)] += shell.volume;
        }
        for (std::uint32_t s = 0; s < shells_.size(); ++s) {
            shells_[s].group = group_of(s);
            shells_[s].all_even = shells_[shells_[s].group].all_even;
            shells_[s].balanced = shells_[shells_[s].group].balanced;
        }
    }

    void measure(Shell& shell, const Point& about) const {
        for (const std::uint32_t t : triangles_of(shell)) {
            const double part = dot(doubled_area(t), points_[triangles_[t][0]] - about) * (turned_[t] != 0 ? -1 : 1);
            shell.volume += part;
            shell.size += std::abs(part);
        }
    }

    /// A tree over all triangles, if there is anything to ask it.
    void grow_tree() {
        const auto closed = std::count_if(shells_.begin(), shells_.end(), [](const Shell& s) { return s.closed; });
        if (closed < 2 && std::none_of(shells_.begin(), shells_.end(), [](const Shell& s) { return !s.closed && s.all_even; }))
            return;
        std::vector<TriangleTree::Triangle> seen;
        seen.reserve(triangles_.size());
        for (const auto& [a, b, c] : triangles_) seen.push_back({askew(points_[a]), askew(points_[b]), askew(points_[c])});
        tree_.emplace(std::move(seen));
        std::vector<AxisBox> boxes;
        for (std::uint32_t s = 0; s < shells_.size(); ++s) {
            if (!shells_[s].closed) continue;
            closed_.push_back(s);
            boxes.push_back(box_of(shells_[s]));
        }
        box_tree_ = BoxTree(boxes);
        boxes_ = std::move(boxes);
    }

    [[nodiscard]] AxisBox box_of(const Shell& shell) const {
        const Point& first = points_[triangles_[by_shell_[shell.first]][0]];
        AxisBox box{first, first};
        for (const std::uint32_t t : triangles_of(shell)) {
            for (const std::uint32_t corner : triangles_[t]) {
                const Point& p = points_[corner];
                box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
                box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
            }
        }
        return box;
    }

    /// Closed shells that have all of a shell inside: their boxes hold its box, and the parity of what lies above its triangles.
    [[nodiscard]] std::vector<std::uint32_t> shells_around(std::uint32_t s) const {
        const AxisBox box = box_of(shells_[s]);
        const auto holds = [&](const AxisBox& other) {
            return other.low.x <= box.low.x && other.low.y <= box.low.y && other.low.z <= box.low.z &&
                   other.high.x >= box.high.x && other.high.y >= box.high.y && other.high.z >= box.high.z;
        };
        std::vector<std::uint32_t> around, met;
        box_tree_.walk(holds, [&](std::uint32_t k) {
            if (closed_[k] != s && holds(boxes_[k])) around.push_back(closed_[k]);
        });
        if (around.empty()) return around;
        std::sort(around.begin(), around.end());
        // Corners would not do: those of a pane all lie on its frame. Some of its faces do not.
        const std::span<const std::uint32_t> own = triangles_of(shells_[s]);
        for (std::size_t i = 0; i < own.size(); i += own.size() / most_asked + 1) {
            const TriangleTree::Triangle& seen = (*tree_)[own[i]];
            met.clear();
            tree_->above(seen[0] + ((seen[1] - seen[0]) + (seen[2] - seen[0])) * (1.0 / 3),
                         [&](std::uint32_t t, bool) { met.push_back(shell_of_[t]); });
            std::sort(met.begin(), met.end());
            std::erase_if(around, [&](std::uint32_t other) {
                const auto [first, last] = std::equal_range(met.begin(), met.end(), other);
                return (last - first) % 2 == 0;
            });
            if (around.empty()) break;
        }
        return around;
    }

    /// The shells that must be turned.
    [[nodiscard]] std::vector<std::uint32_t> inside_out() const {
        std::vector<std::optional<bool>> verdicts(shells_.size(), false);
        std::vector<bool> unknown(shells_.size(), false);
        for (std::uint32_t s = 0; s < shells_.size(); ++s) {
            const Shell& shell = shells_[s];
            if (shell.closed) verdicts[s] = is_inside_out(s);
            if (!shell.closed && shell.all_even) verdicts[s] = has_outside_behind(s);
            if (!verdicts[s]) unknown[shell.group] = true;
        }
        std::vector<std::uint32_t> turn;
        for (std::uint32_t s = 0; s < shells_.size(); ++s) {
            const Shell& shell = shells_[s];
            // Where not all is known, trust a file that agrees in itself.
            if (!shell.closed && shell.all_even && shell.balanced && unknown[shell.group])
                verdicts[s] = open_volume_[shell.group] < 0;
            if (verdicts[s].value_or(false)) turn.push_back(s);
        }
        return turn;
    }

    /// Whether a closed shell faces inward and is no hollow, or is one and faces outward.
    [[nodiscard]] bool is_inside_out(std::uint32_t s) const {
        const Shell& shell = shells_[s];
        if (std::abs(shell.volume) <= 1e-9 * shell.size) return false;  // folded flat: it has no inside
        const bool hollow = tree_ && shells_around(s).size() % 2 == 1;
        return (shell.volume < 0) != hollow;
    }

    /// For a piece of a surface that closes only together with others: the outside is where the way out crosses them an even
    /// number of times. Nothing when both sides are inside or outside: two sheets in one place. Asked of the triangle that is
    /// largest from above.
    [[nodiscard]] std::optional<bool> has_outside_behind(std::uint32_t s) const {
        double most = 0;
        std::uint32_t asked = none;
        for (const std::uint32_t t : triangles_of(shells_[s])) {
            const TriangleTree::Triangle& seen = (*tree_)[t];
            const double area = std::abs(cross(seen[1] - seen[0], seen[2] - seen[0]).z);
            if (area <= most) continue;
            most = area;
            asked = t;
        }
        if (asked == none) return std::nullopt;
        const TriangleTree::Triangle& seen = (*tree_)[asked];
        const Vector u = seen[1] - seen[0], v = seen[2] - seen[0], normal = cross(u, v);
        const Vector step = normal * ((turned_[asked] != 0 ? -2 : 2) * tolerance_ / length(normal));
        const Point middle = seen[0] + (u + v) * (1.0 / 3);
        const bool inside_before = is_within_group(middle + step, s), inside_behind = is_within_group(middle + step * -1, s);
        if (inside_before == inside_behind) return std::nullopt;
        return inside_before;
    }

    [[nodiscard]] bool is_within_group(const Point& seen, std::uint32_t s) const {
        std::size_t crossed = 0;
        tree_->above(seen, [&](std::uint32_t t, bool) {
            if (shells_[shell_of_[t]].group == shells_[s].group) ++crossed;
        });
        return crossed % 2 == 1;
    }

    [[nodiscard]] bool is_balanced() const {
        bool balanced = true;
        for_each_edge(uses_, [&](std::span<const EdgeUse> edge) {
            int balance = 0;
            for (const EdgeUse& use : edge) balance += way(use);
            balanced = balanced && balance == 0;
        });
        return balanced;
    }

    std::span<const Point> points_;
    std::span<Corners> triangles_;
    double tolerance_;
    std::vector<EdgeUse> uses_;
    std::vector<std::uint8_t> turned_;  ///< 1: the triangle runs the other way than in the file
    std::vector<std::uint32_t> starts_;
    std::vector<Neighbor> neighbors_;  ///< those of triangle t from starts_[t] on
    std::vector<std::uint32_t> shell_of_, by_shell_;
    std::vector<Shell> shells_;
    std::vector<double> open_volume_;    ///< of the shells in each group that are not closed, six times
    std::vector<std::uint32_t> closed_;  ///< the closed shells,
    std::vector<AxisBox> boxes_;         ///< their boxes, not askew,
    BoxTree box_tree_;                   ///< and a tree over these
    std::optional<TriangleTree> tree_;   ///< over all triangles, seen askew
};

}  // namespace

void turn_shells(std::span<const Point> points, std::span<Corners> triangles, double tolerance, PartFaults& faults) {
    Shells(points, triangles, tolerance).turn(faults);
}

}  // namespace seamward
