// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/voxel_rooms.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <optional>
#include <utility>

#include "base/vector.h"

namespace seamward::test {
namespace {

/// A cube of the box that may hold centers of balls.
struct Cube {
    std::int32_t x = 0, y = 0, z = 0;  ///< in cubes of its level
    std::int32_t level = 0;
    double clearance = 0;  ///< from its center to the nearest triangle
};

class Groups {
public:
    explicit Groups(std::size_t count) : leader_(count) { std::iota(leader_.begin(), leader_.end(), 0U); }
    std::uint32_t of(std::uint32_t i) {
        while (leader_[i] != i) i = leader_[i] = leader_[leader_[i]];
        return i;
    }
    void join(std::uint32_t a, std::uint32_t b) { leader_[of(a)] = of(b); }

private:
    std::vector<std::uint32_t> leader_;
};

/// Numbers of cubes by key, with open addressing: most of the time goes into looking up neighbors.
class Places {
public:
    void reset(std::size_t count) {
        std::size_t size = 16;
        while (size < 2 * count) size *= 2;
        slots_.assign(size, {none, 0});
    }
    void add(std::uint64_t key, std::uint32_t value) {
        std::size_t i = first(key);
        while (slots_[i].first != none) i = (i + 1) & (slots_.size() - 1);
        slots_[i] = {key, value};
    }
    [[nodiscard]] std::optional<std::uint32_t> find(std::uint64_t key) const {
        for (std::size_t i = first(key);; i = (i + 1) & (slots_.size() - 1)) {
            if (slots_[i].first == key) return slots_[i].second;
            if (slots_[i].first == none) return std::nullopt;
        }
    }

private:
    static constexpr std::uint64_t none = ~std::uint64_t{0};
    [[nodiscard]] std::size_t first(std::uint64_t key) const {
        key = (key ^ key >> 29U) * 0xBF58476D1CE4E5B9U;
        return (key ^ key >> 32U) & (slots_.size() - 1);
    }
    std::vector<std::pair<std::uint64_t, std::uint32_t>> slots_;
};

class Search {
public:
    Search(const TriangleDistance& distance, const Box& box, double diameter)
        : distance_(distance), radius_(diameter / 2), box_(box) {
        const Vector size = box.highest - box.lowest;
        std::array sides{size.x, size.y, size.z};
        std::sort(sides.begin(), sides.end());
        first_side_ = std::max(sides[1], sides[2] / 256);
        const auto count = [&](double length) { return static_cast<std::int32_t>(std::floor(length / first_side_) + 1); };
        for (std::int32_t x = 0; x < count(size.x); ++x) {
            for (std::int32_t y = 0; y < count(size.y); ++y) {
                for (std::int32_t z = 0; z < count(size.z); ++z) add({x, y, z, 0, 0}, 1e9);
            }
        }
    }

    [[nodiscard]] std::size_t size() const { return cubes_.size(); }
    [[nodiscard]] double finest() const { return side(deepest_); }

    Passage look(const Point& from, const Point& to) {
        index();
        const std::optional<std::uint32_t> a = cube_at(from), b = cube_at(to);
        if (!a || !b) return Passage::apart;
        maybe_ = Groups(cubes_.size());
        Groups sure(cubes_.size());
        for (std::uint32_t i = 0; i < cubes_.size(); ++i) link(i, sure);
        if (maybe_.of(*a) != maybe_.of(*b)) return Passage::apart;
        kept_ = maybe_.of(*a);
        const bool joined = sure.of(*a) == sure.of(*b) && reaches(from, *a) && reaches(to, *b);
        return joined ? Passage::joined : Passage::unsettled;
    }

    /// Halves what is not settled and may be on the way; drops what is not on the way.
    void halve(std::int32_t level) {
        std::vector<Cube> old;
        old.swap(cubes_);
        for (std::uint32_t i = 0; i < old.size(); ++i) {
            if (maybe_.of(i) != kept_) continue;
            const Cube& cube = old[i];
            if (cube.level != level || cube.clearance - reach(level) >= radius_) {
                cubes_.push_back(cube);
                continue;
            }
            for (std::int32_t k = 0; k < 8; ++k) {
                add({2 * cube.x + (k & 1), 2 * cube.y + (k >> 1 & 1), 2 * cube.z + (k >> 2), level + 1, 0},
                    cube.clearance + reach(level + 1));
            }
        }
    }

private:
    [[nodiscard]] double side(std::int32_t level) const { return std::ldexp(first_side_, -level); }
    /// From the center of a cube to its corners.
    [[nodiscard]] double reach(std::int32_t level) const { return side(level) * std::sqrt(0.75); }
    [[nodiscard]] Point center(const Cube& cube) const {
        return box_.lowest + Vector{cube.x + 0.5, cube.y + 0.5, cube.z + 0.5} * side(cube.level);
    }
    static std::uint64_t key(std::int32_t level, std::int32_t x, std::int32_t y, std::int32_t z) {
        const auto part = [](std::int32_t i) { return static_cast<std::uint64_t>(i) & 0xFFFFFU; };
        return static_cast<std::uint64_t>(level) << 60U | part(x) << 40U | part(y) << 20U | part(z);
    }

    void add(Cube cube, double at_most) {
        const double edge = side(cube.level);
        const Vector size = box_.highest - box_.lowest;
        if (cube.x * edge > size.x || cube.y * edge > size.y || cube.z * edge > size.z) return;
        cube.clearance = distance_.to(center(cube), at_most);
        if (cube.clearance + reach(cube.level) >= radius_) cubes_.push_back(cube);
    }

    void index() {
        place_.reset(cubes_.size());
        deepest_ = 0;
        for (std::uint32_t i = 0; i < cubes_.size(); ++i) {
            const Cube& cube = cubes_[i];
            place_.add(key(cube.level, cube.x, cube.y, cube.z), i);
            deepest_ = std::max(deepest_, cube.level);
        }
    }

    /// The cube that is this one or holds it.
    [[nodiscard]] std::optional<std::uint32_t> find(std::int32_t level, std::int32_t x, std::int32_t y, std::int32_t z) const {
        if (x < 0 || y < 0 || z < 0) return std::nullopt;
        for (; level >= 0; --level, x /= 2, y /= 2, z /= 2) {
            if (const auto found = place_.find(key(level, x, y, z))) return found;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::optional<std::uint32_t> cube_at(const Point& p) const {
        const Vector from = (p - box_.lowest) * (1 / side(deepest_));
        return find(deepest_, static_cast<std::int32_t>(std::floor(from.x)), static_cast<std::int32_t>(std::floor(from.y)),
                    static_cast<std::int32_t>(std::floor(from.z)));
    }

    /// A ball can go straight from one point to another when spheres of what is free around both cover the way.
    [[nodiscard]] bool straight(const Point& p, double p_free, const Point& q, double q_free) const {
        return p_free >= radius_ && q_free >= radius_ && p_free + q_free - 2 * radius_ >= length(q - p);
    }
    [[nodiscard]] bool reaches(const Point& p, std::uint32_t i) const {
        return straight(p, distance_.to(p, 1e9), center(cubes_[i]), cubes_[i].clearance);
    }

    void link(std::uint32_t i, Groups& sure) {
        const Cube cube = cubes_[i];
        for (std::int32_t k = 0; k < 27; ++k) {
            if (k == 13) continue;
            const auto j = find(cube.level, cube.x + k % 3 - 1, cube.y + k / 3 % 3 - 1, cube.z + k / 9 - 1);
            if (!j || *j == i) continue;
            maybe_.join(i, *j);
            const Cube& other = cubes_[*j];
            if (straight(center(cube), cube.clearance, center(other), other.clearance)) sure.join(i, *j);
        }
    }

    const TriangleDistance& distance_;
    double radius_;
    const Box& box_;
    double first_side_ = 0;
    std::int32_t deepest_ = 0;
    std::vector<Cube> cubes_;
    Places place_;
    Groups maybe_{0};
    std::uint32_t kept_ = 0;
};

}  // namespace

VoxelRooms::VoxelRooms(std::span<const ModelPart> parts, const Box& box, double finest, std::size_t most_cubes)
    : distance_(parts), box_(box), finest_(finest), most_cubes_(most_cubes) {}

Passage VoxelRooms::judge(const Point& from, const Point& to, double diameter) const {
    Search search(distance_, box_, diameter);
    for (std::int32_t level = 0;; ++level) {
        const Passage answer = search.look(from, to);
        if (answer != Passage::unsettled || level == 15 || search.finest() <= finest_ || search.size() > most_cubes_)
            return answer;
        search.halve(level);
    }
}

WidthBracket VoxelRooms::widest_between(const Point& from, const Point& to, double high, double share) const {
    WidthBracket bracket{0, high};
    for (double open = high; open - bracket.low > share * high;) {  // what is not settled counts as not joined
        const double middle = (bracket.low + open) / 2;
        const Passage answer = judge(from, to, middle);
        if (answer == Passage::apart) bracket.high = middle;
        (answer == Passage::joined ? bracket.low : open) = middle;
    }
    for (double open = bracket.low; bracket.high - open > share * high;) {  // and now as not apart
        const double middle = (open + bracket.high) / 2;
        (judge(from, to, middle) == Passage::apart ? bracket.high : open) = middle;
    }
    return bracket;
}

}  // namespace seamward::test
