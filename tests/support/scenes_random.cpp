// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>
#include <random>

#include "tests/support/scene_changes.h"
#include "tests/support/scene_room.h"

namespace seamward::test {
namespace {

constexpr double pi = std::numbers::pi;

class Dice {
public:
    explicit Dice(unsigned seed) : engine_(seed) {}
    double between(double low, double high) { return low + (high - low) * (static_cast<double>(engine_()) / 4294967295.0); }
    /// Every size of step up as likely as any other.
    double scaled(double low, double high) { return low * std::pow(high / low, between(0, 1)); }
    int below(int count) { return static_cast<int>(engine_() % static_cast<unsigned>(count)); }

private:
    std::mt19937 engine_;
};

struct Side {
    const char* name;
    Frame frame;   ///< n out of the room, 0 at its inner face
    double u, v;   ///< size of the inner face
    Loop outline;  ///< of the panel
};

std::array<Side, 6> sides_of(const RoomSize& r) {
    const double t = r.wall;
    return {Side{"floor", {{0, 0, 0}, {0, 1, 0}, {1, 0, 0}, {0, 0, -1}}, r.y, r.x, rectangle(-t, -t, r.y + t, r.x + t)},
            Side{"ceiling", {{0, 0, r.z}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, r.x, r.y, rectangle(-t, -t, r.x + t, r.y + t)},
            Side{"west", {{0, 0, 0}, {0, 0, 1}, {0, 1, 0}, {-1, 0, 0}}, r.z, r.y, rectangle(0, -t, r.z, r.y + t)},
            Side{"east", {{r.x, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 0, 0}}, r.y, r.z, rectangle(-t, 0, r.y + t, r.z)},
            Side{"south", {{0, 0, 0}, {1, 0, 0}, {0, 0, 1}, {0, -1, 0}}, r.x, r.z, rectangle(0, 0, r.x, r.z)},
            Side{"north", {{0, r.y, 0}, {0, 0, 1}, {1, 0, 0}, {0, 1, 0}}, r.z, r.x, rectangle(0, 0, r.z, r.x)}};
}

/// `turn` is where the middle of a facet looks.
struct Pipe {
    Point2 at;
    double radius = 0, turn = 0;
};

/// What is planted on one side: cuts in its inner and outer layer, pipes through both.
struct Planting {
    std::vector<Loop> inner, outer;
    std::vector<Pipe> pipes;
};

Box box_around(const Point& a, const Point& b) {
    return {{std::min(a.x, b.x), std::min(a.y, b.y), std::min(a.z, b.z)},
            {std::max(a.x, b.x), std::max(a.y, b.y), std::max(a.z, b.z)}};
}

struct Planter {
    Dice& dice;
    const Side& side;
    double depth;
    Planting& planting;
    std::vector<ExpectedGap>& gaps;
    std::size_t& more_pieces;  ///< that gaps may be told as

    void cut(const Loop& loop) const {
        planting.inner.push_back(loop);
        planting.outer.push_back(loop);
    }

    /// A gap whose ball goes straight through at a point of the side.
    void note(const char* shape, double width, Tolerance tolerance, double length, Point2 ball) const {
        ExpectedGap gap{
            .one = "outdoors", .other = "room", .shape = shape, .width = width, .tolerance = tolerance, .length = length};
        const double half = width / 4, before = 15 * mm;
        const auto at = [&](double du, double dv, double n) { return side.frame.at(ball.x + du, ball.y + dv, n); };
        gap.near = at(0, 0, depth / 2);
        gap.window = box_around(at(-half, -half, -before), at(half, half, depth + before));
        gap.from = at(0, 0, depth + before - 1 * mm);
        gap.to = at(0, 0, -before + 1 * mm);
        gaps.push_back(gap);
    }

    static Loop slot_at(Point2 c, double length, double width, double angle) {
        return turned_loop(rectangle(c.x - length / 2, c.y - width / 2, c.x + length / 2, c.y + width / 2), c, angle);
    }

    void slot(Point2 c) const {
        const double width = dice.scaled(0.4 * mm, 20 * mm), length = dice.between(0.08, 0.2);
        cut(slot_at(c, length, width, dice.between(0, pi)));
        note("slot", width, Tolerance::planar, length, c);
    }
    void shut_slot(Point2 c) const { cut(slot_at(c, 0.15, dice.between(0.05 * mm, 0.25 * mm), dice.between(0, pi))); }
    /// Layers with slots of different widths: the narrower counts.
    void stepped_slot(Point2 c) const {
        const double angle = dice.between(0, pi), in = dice.scaled(0.4 * mm, 15 * mm), out = dice.scaled(0.4 * mm, 15 * mm);
        planting.inner.push_back(slot_at(c, 0.15, in, angle));
        planting.outer.push_back(slot_at(c, 0.15, out, angle));
        note("slot", std::min(in, out), Tolerance::planar, 0.15, c);
        gaps.back().near = side.frame.at(c.x, c.y, depth * (in < out ? 0.25 : 0.75));
    }
    void blind_slot(Point2 c) const {
        (dice.below(2) == 0 ? planting.inner : planting.outer).push_back(slot_at(c, 0.15, dice.scaled(0.5 * mm, 20 * mm), 0.3));
    }
    void round_hole(Point2 c) const {
        const double diameter = dice.scaled(0.5 * mm, 24 * mm);
        cut(round_loop(c, diameter / 2, 32));
        note("hole", diameter, Tolerance::curved, 0, c);
    }
    void square_hole(Point2 c) const {
        const double width = dice.scaled(0.5 * mm, 24 * mm);
        cut(slot_at(c, width, width, dice.between(0, pi)));
        note("hole", width, Tolerance::planar, 0, c);
    }
    /// Widest where the pipe is farthest: hole less pipe and off. Facets of both are parallel.
    void ring(Point2 c) const {
        constexpr int facets = 48;
        const double pipe = dice.between(5 * mm, 60 * mm), gap = dice.scaled(0.5 * mm, 8 * mm), angle = dice.between(0, pi);
        const double off = gap * std::max(0.0, dice.between(-1, 1.2));  // some run into the hole's side
        const Point2 way{std::cos(angle), std::sin(angle)};
        cut(round_loop(c, pipe + gap, facets, angle));
        planting.pipes.push_back({c + way * -off, pipe, angle});
        const bool sickle = off > gap - Scene{}.smallest;
        note("ring", gap + off, off > 0 ? Tolerance::bent : Tolerance::curved, sickle ? 0 : pi * (2 * pipe + gap),
             c + way * (pipe + gap - (gap + off) / 2));
        // Corners of the pipe stand off those of the hole: near the ends of a sickle it is wider there than along the facets
        // between them, so each may be a piece.
        if (sickle) more_pieces += facets / 2;
    }
    /// As "square-hole-pipe": d = 2 (sqrt 2 (h + e) - p) / (1 + sqrt 2). Where the pipe shuts it at two sides, the corner between
    /// them is a piece of its own.
    void pipe_in_square(Point2 c) const {
        const double p = dice.between(5 * mm, 25 * mm), h = p + dice.scaled(0.5 * mm, 4 * mm), e = dice.between(0, 0.9) * (h - p);
        const double q = (std::numbers::sqrt2 * (h + e) - p) / (1 + std::numbers::sqrt2);
        cut(rectangle(c.x - h, c.y - h, c.x + h, c.y + h));
        planting.pipes.push_back({c + Point2{-e, -e}, p});
        note("", 2 * q, Tolerance::bent, 0, c + Point2{h - q, h - q});
        if (h - p - e < Scene{}.smallest) ++more_pieces;
    }
    void overlapping_pipe(Point2 c) const {
        const double hole = dice.between(5 * mm, 30 * mm);
        if (dice.below(2) == 0) cut(round_loop(c, hole));
        planting.pipes.push_back({c, hole + 3 * mm});
    }

    void plant(Point2 c) const {
        switch (dice.below(9)) {
            case 0: return slot(c);
            case 1: return shut_slot(c);
            case 2: return stepped_slot(c);
            case 3: return blind_slot(c);
            case 4: return round_hole(c);
            case 5: return square_hole(c);
            case 6: return ring(c);
            case 7: return pipe_in_square(c);
            default: return overlapping_pipe(c);
        }
    }
};

}  // namespace

Scene random_scene_upright(unsigned seed) {
    Dice dice(seed);
    RoomSize room{dice.between(0.6, 3), dice.between(0.6, 3), dice.between(0.6, 2.5), 0};
    constexpr std::array thicknesses{12 * mm, 22 * mm, 50 * mm, 100 * mm};
    room.wall = thicknesses[static_cast<std::size_t>(dice.below(4))];
    Scene scene{.name = "random-" + std::to_string(seed)};
    const auto& [x, y, z, t] = room;
    scene.spaces = {{"outdoors", {x / 2, -3 * y - t, z / 2}}, {"room", {x / 2, y / 2, z / 2}}};
    int pipes = 0;
    std::size_t more_pieces = 0;
    for (const Side& side : sides_of(room)) {
        Planting planting;
        const Planter planter{dice, side, t, planting, scene.gaps, more_pieces};
        // Each in a field of its own of 0.3 m.
        const int columns = static_cast<int>(side.u / 0.3), rows = static_cast<int>(side.v / 0.3);
        for (int field = 0; field < columns * rows; ++field) {
            if (dice.below(6) == 0)
                planter.plant({side.u * (field % columns + 0.5) / columns, side.v * (field / columns + 0.5) / rows});
        }
        const std::string name = side.name;
        add_parts(scene, name + "-inner", extruded(side.frame, side.outline, planting.inner, 0, t / 2));
        add_parts(scene, name + "-outer", extruded(side.frame, side.outline, planting.outer, t / 2, t));
        for (const Pipe& pipe : planting.pipes) {
            const Loop outline = round_loop(pipe.at, pipe.radius, 48, pipe.turn);
            add_part(scene, "pipe-" + std::to_string(++pipes), extruded(side.frame, outline, {}, -60 * mm, t + 60 * mm).front());
        }
    }
    if (more_pieces > 0) scene.most_gaps = scene.gaps.size() + more_pieces;
    return scene;
}

Scene random_scene(unsigned seed) {
    Dice dice(seed + 1'000'003);
    Vector axis{dice.between(-1, 1), dice.between(-1, 1), dice.between(-1, 1)};
    if (length(axis) < 0.1) axis = {0, 0, 1};
    const Point shift{dice.between(-20, 20), dice.between(-20, 20), dice.between(-5, 5)};
    return transformed(random_scene_upright(seed), turned_frame(axis, dice.between(0, 2 * pi), shift));
}

}  // namespace seamward::test
