// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/spaces.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <numeric>
#include <unordered_map>
#include <utility>

#include "interior/slope.h"

namespace seamward {

namespace {

constexpr std::size_t at_a_time = 128;  // passages
constexpr double at_home = 0.99;        // of a radius: stands are placed a little roughly
constexpr double rise = 1.25;           // a place wider by this is uphill

/// The stands joined from the widest passage down; a group becomes a body when it is one at the place where it would join another
/// (a maximum of the clearance that lasts; Edelsbrunner, Letscher and Zomorodian 2002).
class Gathering {
public:
    Gathering(Passages& passages, const BodyRules& rules) : passages_(passages), rules_(rules) {
        const std::size_t n = passages.size();
        parent_.resize(n);
        widest_.resize(n);
        std::iota(parent_.begin(), parent_.end(), 0u);
        std::iota(widest_.begin(), widest_.end(), 0u);
        body_.assign(n, -1);
        climbed_.assign(n, 0);
        volume_.resize(n);
        for (std::uint32_t i = 0; i < n; ++i) volume_[i] = passages[i].clearance > 0 ? passages.volume_of(i) : 0;
    }

    Bodies gather(const std::vector<std::uint32_t>& seeds, const RunContext& run) {
        for (const std::uint32_t seed : seeds) {
            if (body_[seed] < 0) make_body(seed, seed);
        }
        lead_off();
        std::vector<Next> heap(passages_.count());
        for (std::uint32_t i = 0; i < heap.size(); ++i) heap[i] = next(i);
        std::make_heap(heap.begin(), heap.end());
        std::vector<std::uint32_t> batch;
        while (!heap.empty()) {
            if (passages_.passage(heap.front().passage).led()) {
                join_from_above(heap.front().passage);
                std::pop_heap(heap.begin(), heap.end());
                heap.pop_back();
                continue;
            }
            // Balls are led through many passages at a time: most turn out to be narrower and have to wait. Of those that no
            // straight line leads through hardly any matters once its ends have gone uphill, and turning corners costs the most.
            batch.clear();
            while (!heap.empty() && batch.size() < at_a_time && !passages_.passage(heap.front().passage).led()) {
                std::pop_heap(heap.begin(), heap.end());
                if (matters(heap.back().passage)) batch.push_back(heap.back().passage);
                heap.pop_back();
            }
            run.check();
            climb_from(batch, Passage::Known::straight);
            std::erase_if(batch, [&](std::uint32_t i) { return !matters(i); });
            tbb::parallel_for(std::size_t{0}, batch.size(), [&](std::size_t k) { passages_.lead(batch[k]); });
            look_uphill(batch, Passage::Known::led);
            for (const std::uint32_t i : batch) {
                heap.push_back(next(i));
                std::push_heap(heap.begin(), heap.end());
            }
        }
        for (std::uint32_t i = 0; i < parent_.size(); ++i) {  // air that nothing leads to
            if (parent_[i] == i && body_[i] < 0 && is_body(i, 0)) make_body(i, widest_[i]);
        }
        bodies_.of.resize(parent_.size());
        for (std::uint32_t i = 0; i < parent_.size(); ++i) {
            const std::uint32_t group = find(i);
            bodies_.of[i] = body_[group];
            if (group == i && body_[i] >= 0) bodies_.list[static_cast<std::size_t>(body_[i])].volume += volume_[i];
        }
        passages_.list_by_stand();
        return std::move(bodies_);
    }

private:
    /// A passage as it waits, by what is known of it then.
    struct Next {
        double clearance, span;
        std::uint32_t passage;

        /// Of two alike the shorter comes first, which is led sooner.
        bool operator<(const Next& other) const {
            return clearance != other.clearance ? clearance < other.clearance : span > other.span;
        }
    };

    [[nodiscard]] Next next(std::uint32_t i) const {
        const Passage& p = passages_.passage(i);
        return {p.clearance, distance(passages_[p.from].at, passages_[p.to].at), i};
    }

    std::uint32_t find(std::uint32_t x) {
        while (parent_[x] != x) x = parent_[x] = parent_[parent_[x]];
        return x;
    }

    /// Whether a ball fits into a passage that does not lead from a group or body to itself.
    bool matters(std::uint32_t i) {
        if (passages_.passage(i).clearance < passages_.least()) return false;
        const std::uint32_t a = find(passages_.passage(i).from), b = find(passages_.passage(i).to);
        return a != b && (body_[a] < 0 || body_[a] != body_[b]);
    }

    /// Joins what a passage leads to, once both its ends have gone with what lies uphill of them.
    void join_from_above(std::uint32_t i) {
        if (!matters(i)) return;
        for (const std::uint32_t stand : to_climb(i)) climb(stand);
        join(i);
    }

    /// Adds ways straight out of roomy portals on whose one side no other stand of the cell is roomy.
    void lead_off() {
        const double home = rules_.roomy * at_home;
        std::vector<std::vector<Slope>> ways(passages_.size());
        tbb::parallel_for(std::uint32_t{0}, static_cast<std::uint32_t>(passages_.size()), [&](std::uint32_t stand) {
            if (passages_.is_portal(stand) && passages_[stand].clearance >= home && is_cornered(stand, home))
                ways[stand] = straight_off(passages_, stand, home);
        });
        for (std::uint32_t stand = 0; stand < ways.size(); ++stand) {
            for (Slope& way : ways[stand]) passages_.add(stand, way.top, way.clearance, std::move(way.corners));
        }
    }

    [[nodiscard]] bool is_cornered(std::uint32_t portal, double home) const {
        const std::vector<Portal>& portals = passages_.air().complex.portals;
        const Portal& mine = portals[portal];
        bool front = false, back = false;
        for (const std::uint32_t i : passages_.of(portal)) {
            const Passage& p = passages_.passage(i);
            if (p.clearance < home) continue;
            const std::uint32_t other = p.across(portal);
            const auto touches = [&](std::uint32_t cell) {
                return passages_.is_portal(other) ? portals[other].front == cell || portals[other].back == cell
                                                  : other == passages_.middle_of(cell);
            };
            front = front || touches(mine.front);
            back = back || touches(mine.back);
        }
        return !front || !back;
    }

    /// Those ends of a passage that have yet to go with what lies uphill of them; not where the passage itself leads there.
    [[nodiscard]] std::vector<std::uint32_t> to_climb(std::uint32_t i) const {
        const Passage& p = passages_.passage(i);
        std::vector<std::uint32_t> stands;
        for (const auto& [stand, other] : {std::pair{p.from, p.to}, std::pair{p.to, p.from}}) {
            const double wanted = rise * passages_[stand].clearance;
            if (climbed_[stand] || wanted >= rules_.roomy * 0.9) continue;
            if (p.known == Passage::Known::straight || passages_[other].clearance < wanted) stands.push_back(stand);
        }
        return stands;
    }

    void climb_from(const std::vector<std::uint32_t>& batch, Passage::Known known) {
        for (const std::uint32_t stand : look_uphill(batch, known)) climb(stand);
    }

    /// Looks what lies uphill of the passages of which so much is known. Returns the stands.
    std::vector<std::uint32_t> look_uphill(const std::vector<std::uint32_t>& batch, Passage::Known known) {
        std::vector<std::uint32_t> stands, fresh;
        for (const std::uint32_t i : batch) {
            if (passages_.passage(i).known != known) continue;
            for (const std::uint32_t stand : to_climb(i)) {
                stands.push_back(stand);
                if (uphill_.try_emplace(stand).second) fresh.push_back(stand);
            }
        }
        tbb::parallel_for(std::size_t{0}, fresh.size(), [&](std::size_t k) {
            uphill_.find(fresh[k])->second = slope_from(passages_, fresh[k], rise * passages_[fresh[k]].clearance);
        });
        return stands;
    }

    void climb(std::uint32_t stand) {
        if (std::exchange(climbed_[stand], 1)) return;
        auto found = uphill_.extract(stand);
        Slope slope = found ? std::move(found.mapped()) : slope_from(passages_, stand, rise * passages_[stand].clearance);
        if (slope.top != Slope::none) join(passages_.add(stand, slope.top, slope.clearance, std::move(slope.corners)));
    }

    void join(std::uint32_t i) {
        if (!matters(i)) return;
        const double clearance = passages_.passage(i).clearance;
        const std::uint32_t a = find(passages_.passage(i).from), b = find(passages_.passage(i).to);
        for (const std::uint32_t group : {a, b}) {
            if (body_[group] < 0 && is_body(group, clearance)) make_body(group, widest_[group]);
        }
        if (body_[a] >= 0 && body_[b] >= 0) {
            bodies_.between.push_back(i);
        } else {
            bodies_.joined.push_back(i);
            unite(a, b);
        }
    }

    void make_body(std::uint32_t group, std::uint32_t seed) {
        body_[group] = static_cast<std::int32_t>(bodies_.list.size());
        bodies_.list.push_back({seed, 0});
    }

    void unite(std::uint32_t a, std::uint32_t b) {
        if (body_[a] < 0 && (body_[b] >= 0 || volume_[b] > volume_[a])) std::swap(a, b);
        parent_[b] = a;
        volume_[a] += volume_[b];
        const Stand &mine = passages_[widest_[a]], &other = passages_[widest_[b]];
        if (other.clearance > mine.clearance) widest_[a] = widest_[b];
    }

    /// Whether a group that is about to be joined through a passage of that clearance is a body of its own.
    [[nodiscard]] bool is_body(std::uint32_t group, double joined_at) const {
        if (joined_at >= rules_.roomy * at_home || volume_[group] < rules_.least_volume) return false;
        const Stand& widest = passages_[widest_[group]];
        if (widest.clearance >= rules_.roomy * at_home) return true;
        return widest.clearance >= rules_.thin_cavity * at_home && widest.clearance >= rules_.widening * joined_at &&
               is_sheet(widest);
    }

    /// Whether a ball nearly as large as at its place can be rolled to all sides between what holds it.
    [[nodiscard]] bool is_sheet(const Stand& stand) const {
        const TriangleTree& tree = passages_.clearance().tree();
        const Nearest near = tree.nearest(stand.at, passages_.clearance().cap());
        if (!near.found() || near.distance <= 0) return true;
        const Vector across = (stand.at - near.on_triangle) * (1 / near.distance);
        Vector u = cross(across, std::abs(across.x) < 0.7 ? Vector{1, 0, 0} : Vector{0, 1, 0});
        u = u * (1 / length(u));
        const Vector v = cross(across, u);
        constexpr int directions = 8;
        for (int i = 0; i < directions; ++i) {
            const double angle = 2 * std::numbers::pi * i / directions;
            const Point to = stand.at + u * (rules_.sheet / 2 * std::cos(angle)) + v * (rules_.sheet / 2 * std::sin(angle));
            if (tree.is_near(stand.at, to, stand.clearance * 0.6)) return false;
        }
        return true;
    }

    Passages& passages_;
    BodyRules rules_;
    std::vector<char> climbed_;                        ///< stands
    std::unordered_map<std::uint32_t, Slope> uphill_;  ///< of stands that will probably climb
    std::vector<std::uint32_t> parent_, widest_;
    std::vector<std::int32_t> body_;
    std::vector<double> volume_;
    Bodies bodies_;
};

}  // namespace

Bodies find_bodies(Passages& passages, const std::vector<std::uint32_t>& seeds, const BodyRules& rules, const RunContext& run) {
    run.stage("looking for spaces");
    return Gathering(passages, rules).gather(seeds, run);
}

}  // namespace seamward
