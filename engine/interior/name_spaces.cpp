// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/name_spaces.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "geometry/inside.h"

namespace seamward {

namespace {

// What a room for people has, for guessing only; common practice, no published source.
constexpr double room_volume = 4;    // cubic meters
constexpr double room_height = 1.9;  // meters of free height somewhere in it

Point middle_of(const TriangleMesh& mesh) {
    Point low = mesh.points[0], high = mesh.points[0];
    for (const Point& p : mesh.points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
    return {(low.x + high.x) / 2, (low.y + high.y) / 2, (low.z + high.z) / 2};
}

/// Free height above and below a point, in meters; 0 where nothing is above or below it.
double free_height(const Air& air, const Point& at) {
    const double far = 100;
    const Nearest up = air.tree.nearest(at, at + Vector{0, 0, far}, 1e-9);
    const Nearest down = air.tree.nearest(at, at + Vector{0, 0, -far}, 1e-9);
    if (!up.found() || !down.found()) return 0;
    return up.on_query.z - down.on_query.z;
}

/// The stand of a body where a person might stand: a cell's middle with the greatest volume around it.
Point place_of(const Passages& passages, const Bodies& bodies, std::size_t body) {
    const Body& b = bodies.list[body];
    Point best = passages[b.seed].at;
    double most = -1;
    for (std::uint32_t i = 0; i < passages.size(); ++i) {
        if (bodies.of[i] != static_cast<std::int32_t>(body) || passages.is_portal(i)) continue;
        const double volume = passages.volume_of(i);
        if (volume > most && passages[i].clearance > 0) {
            most = volume;
            best = passages[i].at;
        }
    }
    return best;
}

}  // namespace

std::vector<std::size_t> name_spaces(const Passages& passages, const Bodies& bodies, const Model& model,
                                     const FindSettings& settings, Found& found) {
    std::vector<std::size_t> order(bodies.list.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin() + 1, order.end(),
                     [&](std::size_t a, std::size_t b) { return bodies.list[a].volume > bodies.list[b].volume; });

    std::vector<const RoomSeed*> named(bodies.list.size(), nullptr);
    std::set<std::string> taken;
    for (const RoomSeed& room : settings.rooms) {
        taken.insert(room.id);
        if (room.kind == SpaceKind::outdoors) continue;
        const std::int32_t body = bodies.of[passages.middle_of(passages.air().complex.cell_at(room.at))];
        if (body > 0) named[static_cast<std::size_t>(body)] = &room;
    }
    taken.insert("outdoors");
    const auto free_id = [&](const std::string& stem) {
        for (int n = 1;; ++n) {
            const std::string id = stem + '-' + std::to_string(n);
            if (taken.insert(id).second) return id;
        }
    };
    std::vector<std::size_t> space_of(bodies.list.size());
    bool guessed = false;
    for (const std::size_t body : order) {
        space_of[body] = found.spaces.size();
        FoundSpace space;
        if (body == 0) {
            space = {"outdoors", SpaceKind::outdoors, {}, passages[bodies.list[0].seed].at};
        } else if (named[body]) {
            space = {named[body]->id, named[body]->kind, bodies.list[body].volume, named[body]->at};
        } else {
            const Point at = place_of(passages, bodies, body);
            const bool room = settings.rooms.empty() && bodies.list[body].volume >= room_volume &&
                              free_height(passages.air(), at) >= room_height;
            guessed = guessed || room;
            space = {free_id(room ? "room" : "space"), room ? SpaceKind::living : SpaceKind::cavity, bodies.list[body].volume,
                     at};
        }
        found.spaces.push_back(std::move(space));
    }
    // What the file calls a space of the building is a label for the air that it lies in.
    for (const ModelPart& room : model.rooms) {
        if (room.mesh.triangles.empty() || !settings.rooms.empty()) continue;
        const Point at = middle_of(room.mesh);
        const std::uint32_t cell = passages.air().complex.cell_at(at);
        const std::int32_t body = passages.air().solid[cell] ? -1 : bodies.of[passages.middle_of(cell)];
        if (body <= 0) continue;
        FoundSpace& space = found.spaces[space_of[static_cast<std::size_t>(body)]];
        space.kind = SpaceKind::living;
        space.labels.push_back(room.name.empty() ? room.id : room.name);
    }
    if (guessed) {
        found.notes.push_back(
            "No room was named: air of 4 cubic meters or more with 1.9 m of free height was taken for a living space. "
            "--room NAME=X,Y,Z says which air is a room.");
    }
    return space_of;
}

}  // namespace seamward
