// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/pockets.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <queue>

namespace seamward {

namespace {

constexpr double least_depth = 5;      // widths
constexpr double least_volume = 1e-6;  // cubic meters of shut-in air: a cubic centimeter
constexpr double facing = 0.5;         // cosine of how far surfaces that face each other may be off
constexpr double far_off = 1e6;        // meters
constexpr double nearly = 0.98;        // of a radius
constexpr std::uint32_t none = 0xffffffff;

/// What a stand is, by the largest ball that touches the surface nearest to it and has the stand within.
enum class Room : std::uint8_t {
    nothing,  ///< solid, or too narrow to count
    thin,     ///< the ball is held from opposite sides
    corner,   ///< it is held as in the corner of a room
    open,     ///< it is as large as the smallest space
};

/// The parts on two sides of a ball.
std::array<std::uint32_t, 2> parts_at(const Passages& passages, const Point& at) {
    const std::vector<Clearance::Hold> holds = passages.clearance().holds_of(at);
    const std::vector<std::uint32_t>& part_of = passages.air().part_of;
    if (holds.empty()) {
        const std::uint32_t part = part_of[passages.clearance().tree().nearest(at, far_off).triangle];
        return {part, part};
    }
    return {part_of[holds.front().triangle], part_of[holds.back().triangle]};
}

class PocketSearch {
public:
    PocketSearch(const Passages& passages, const Bodies& bodies, const Openings& openings, double roomy)
        : passages_(passages), bodies_(bodies), openings_(openings), roomy_(roomy) {
        room_.resize(passages.size());
        tbb::parallel_for(std::size_t{0}, room_.size(), [&](std::size_t i) {
            const Stand& stand = passages[static_cast<std::uint32_t>(i)];
            if (bodies.of[i] >= 0 && stand.clearance >= passages.least()) room_[i] = room_of(stand);
        });
    }

    std::vector<Pocket> blind(const std::vector<std::size_t>& space_of) {
        std::vector<Pocket> pockets;
        std::vector<char> seen(room_.size(), 0);
        for (std::uint32_t i = 0; i < room_.size(); ++i) {
            if (room_[i] != Room::thin || seen[i]) continue;
            const std::vector<std::uint32_t> group = thin_around(i, seen);
            if (auto pocket = pocket_of(group, space_of)) pockets.push_back(*pocket);
        }
        return pockets;
    }

private:
    /// The largest ball that touches the surface where it is nearest, up to the size of a space; found by shrinking (Ma, Bae and
    /// Choi 2012).
    [[nodiscard]] Room room_of(const Stand& stand) const {
        if (stand.clearance >= roomy_ * nearly) return Room::open;
        const TriangleTree& tree = passages_.clearance().tree();
        const Nearest near = tree.nearest(stand.at, roomy_);
        if (!near.found() || near.distance <= 0) return Room::open;
        const Vector off = (stand.at - near.on_triangle) * (1 / near.distance);
        double radius = roomy_;
        Nearest other;
        other.triangle = Nearest::none;
        constexpr int most_steps = 12;
        for (int step = 0; step < most_steps; ++step) {
            const Nearest within = tree.nearest(near.on_triangle + off * radius, radius * nearly);
            if (!within.found()) break;
            other = within;
            const Vector across = other.on_triangle - near.on_triangle;
            const double next = dot(across, across) / (2 * std::max(dot(across, off), 1e-12));
            if (next >= radius * nearly) break;
            radius = std::max(next, stand.clearance);
        }
        if (!other.found()) return Room::open;
        const Vector toward = other.on_triangle - (near.on_triangle + off * radius);
        return dot(toward, off) >= facing * length(toward) ? Room::thin : Room::corner;
    }

    std::vector<std::uint32_t> thin_around(std::uint32_t first, std::vector<char>& seen) const {
        std::vector<std::uint32_t> group{first};
        seen[first] = 1;
        for (std::size_t i = 0; i < group.size(); ++i) {
            for (const std::uint32_t p : passages_.of(group[i])) {
                const std::uint32_t next = passages_.passage(p).across(group[i]);
                if (room_[next] != Room::thin || seen[next]) continue;
                seen[next] = 1;
                group.push_back(next);
            }
        }
        return group;
    }

    std::optional<Pocket> pocket_of(const std::vector<std::uint32_t>& group, const std::vector<std::size_t>& space_of) {
        Pocket pocket;
        std::int32_t body = bodies_.of[group[0]];
        std::vector<std::uint32_t> mouth;
        for (const std::uint32_t stand : group) {
            if (bodies_.of[stand] != body) return std::nullopt;
            if (passages_.is_portal(stand) && openings_.at_portal[stand] != Openings::none) return std::nullopt;
            pocket.volume += passages_.volume_of(stand);
            bool out = false;
            for (const std::uint32_t p : passages_.of(stand)) {
                const std::uint32_t next = passages_.passage(p).across(stand);
                if (bodies_.of[next] >= 0 && bodies_.of[next] != body) return std::nullopt;
                out = out || room_[next] == Room::open;
            }
            if (out) mouth.push_back(stand);
        }
        if (mouth.empty()) return std::nullopt;
        const std::uint32_t widest = *std::max_element(mouth.begin(), mouth.end(), [&](std::uint32_t a, std::uint32_t b) {
            return passages_[a].clearance < passages_[b].clearance;
        });
        pocket.space = space_of[static_cast<std::size_t>(body)];
        pocket.width = 2 * passages_[widest].clearance;
        pocket.at = passages_[widest].at;
        pocket.depth = depth_of(mouth);
        if (pocket.depth < least_depth * pocket.width) return std::nullopt;
        pocket.parts = parts_at(passages_, pocket.at);
        return pocket;
    }

    /// The way from the mouth to the stand that is farthest from it, and from there straight on to the end.
    double depth_of(const std::vector<std::uint32_t>& mouth) {
        if (far_.empty()) far_.assign(room_.size(), 1e300);
        struct Step {
            double far;
            std::uint32_t stand, from;
            bool operator<(const Step& other) const { return far != other.far ? far > other.far : stand > other.stand; }
        };
        std::priority_queue<Step> open;
        for (const std::uint32_t stand : mouth) {
            far_[stand] = 0;
            open.push({0, stand, none});
        }
        Step last{0, mouth[0], none};
        while (!open.empty()) {
            const Step at = open.top();
            open.pop();
            if (at.far > far_[at.stand]) continue;
            if (at.far > last.far) last = at;
            for (const std::uint32_t p : passages_.of(at.stand)) {
                const std::uint32_t next = passages_.passage(p).across(at.stand);
                const double far = at.far + distance(passages_[at.stand].at, passages_[next].at);
                if (room_[next] != Room::thin || far >= far_[next]) continue;
                far_[next] = far;
                open.push({far, next, at.stand});
            }
        }
        if (last.from == none) return last.far;
        return last.far + straight_on(passages_[last.from].at, last.stand);
    }

    /// How far it goes on from a stand in the direction from another place, when it ends there.
    [[nodiscard]] double straight_on(const Point& from, std::uint32_t stand) const {
        constexpr double ended = 0.1;  // of the clearance at the stand
        constexpr int most_steps = 2000;
        const Stand& start = passages_[stand];
        Vector along = start.at - from;
        const double size = length(along);
        if (size <= 0) return 0;
        along = along * (1 / size);
        double gone = 0;
        for (int i = 0; i < most_steps; ++i) {
            const Point at = start.at + along * gone;
            const double clearance = passages_.clearance().at(at);
            if (clearance <= start.clearance * ended) return gone;
            if (room_of({at, clearance}) == Room::open) return 0;
            gone += clearance * nearly;
        }
        return 0;
    }

    const Passages& passages_;
    const Bodies& bodies_;
    const Openings& openings_;
    double roomy_;
    std::vector<Room> room_;
    std::vector<double> far_;  ///< by stand, from the mouth of its pocket
};

/// Air that no body is joined to, as a ball of the smallest width sees it.
class ShutInAir {
public:
    ShutInAir(const Passages& passages, const Bodies& bodies) : passages_(passages), bodies_(bodies) {
        seen_.assign(passages.air().solid.begin(), passages.air().solid.end());
    }

    void find(std::vector<Pocket>& pockets) {
        for (std::uint32_t i = 0; i < seen_.size(); ++i) {
            if (seen_[i]) continue;
            Pocket pocket;
            if (gather(i, pocket)) pockets.push_back(pocket);
        }
    }

private:
    /// All air around a cell; whether it is shut in.
    bool gather(std::uint32_t first, Pocket& pocket) {
        const Air& air = passages_.air();
        std::uint32_t widest = passages_.middle_of(first);
        bool alone = true;
        std::vector<std::uint32_t> open{first};
        seen_[first] = 1;
        while (!open.empty()) {
            const std::uint32_t cell = open.back();
            open.pop_back();
            pocket.volume += air.complex.cells[cell].volume;
            const auto look = [&](std::uint32_t stand) {
                alone = alone && bodies_.of[stand] < 0;
                if (passages_[stand].clearance > passages_[widest].clearance) widest = stand;
            };
            look(passages_.middle_of(cell));
            for (const std::uint32_t p : air.portals_of(cell)) {
                if (passages_[p].clearance < passages_.least()) continue;  // counts as shut
                look(p);
                const Portal& portal = air.complex.portals[p];
                const std::uint32_t next = portal.front == cell ? portal.back : portal.front;
                if (seen_[next]) continue;
                seen_[next] = 1;
                open.push_back(next);
            }
        }
        const Stand& stand = passages_[widest];
        if (!alone || pocket.volume < least_volume || stand.clearance < passages_.least()) return false;
        pocket.at = stand.at;
        pocket.width = 2 * stand.clearance;
        pocket.parts = parts_at(passages_, stand.at);
        return true;
    }

    const Passages& passages_;
    const Bodies& bodies_;
    std::vector<char> seen_;  ///< by cell
};

}  // namespace

std::vector<Pocket> find_pockets(const Passages& passages, const Bodies& bodies, const Openings& openings,
                                 const std::vector<std::size_t>& space_of, double roomy, const RunContext& run) {
    run.stage("looking for pockets");
    PocketSearch search(passages, bodies, openings, roomy);
    std::vector<Pocket> pockets = search.blind(space_of);
    ShutInAir(passages, bodies).find(pockets);
    std::stable_sort(pockets.begin(), pockets.end(),
                     [](const Pocket& a, const Pocket& b) { return std::round(a.volume * 1e9) > std::round(b.volume * 1e9); });
    return pockets;
}

}  // namespace seamward
