// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/name_spaces.h"

#include <algorithm>
#include <numeric>
#include <optional>
#include <set>
#include <utility>

#include "geometry/inside.h"

namespace seamward {

namespace {

// What a room for people has, for guessing only; common practice, no published source.
constexpr double room_volume = 4;    // cubic meters
constexpr double room_height = 1.9;  // meters of free height somewhere in it
constexpr double room_width = 0.5;   // meters that are free there, all around

Point middle_of(const TriangleMesh& mesh) {
    Point low = mesh.points[0], high = mesh.points[0];
    for (const Point& p : mesh.points) {
        low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
    }
    return {(low.x + high.x) / 2, (low.y + high.y) / 2, (low.z + high.z) / 2};
}

/// Meters that one gets straight from a point before something is in the way, to a millimeter; nothing where there is nothing
/// within `far`.
std::optional<double> free_way(const TriangleTree& tree, const Point& at, const Vector& direction) {
    constexpr double far = 100, exact = 1e-3, touching = 1e-9;  // meters
    if (!tree.is_near(at, at + direction * far, touching)) return {};
    double free = 0, met = far;
    while (met - free > exact) {
        const double middle = (free + met) / 2;
        (tree.is_near(at, at + direction * middle, touching) ? met : free) = middle;
    }
    return met;
}

/// Whether a person can stand upright under and over a point, with nothing near from shin to shoulder.
bool has_standing_room(const TriangleTree& tree, const Point& at) {
    const std::optional<double> up = free_way(tree, at, {0, 0, 1}), down = free_way(tree, at, {0, 0, -1});
    if (!up || !down || *up + *down < room_height) return false;
    const Point floor = at + Vector{0, 0, -*down};
    return !tree.is_near(floor + Vector{0, 0, room_width}, floor + Vector{0, 0, room_height - room_width}, room_width / 2);
}

std::optional<Point> standing_room(const TriangleTree& tree, const std::vector<Point>& places) {
    const auto found = std::ranges::find_if(places, [&](const Point& p) { return has_standing_room(tree, p); });
    return found != places.end() ? std::optional(*found) : std::nullopt;
}

/// Where each body is tried for standing room and told to be: the middles of its largest cells, those first; its seed where it
/// has no cells.
std::vector<std::vector<Point>> places_of(const Passages& passages, const Bodies& bodies) {
    constexpr std::size_t most_places = 64;
    std::vector<std::vector<std::pair<double, std::uint32_t>>> cells(bodies.list.size());
    for (std::uint32_t i = 0; i < passages.size(); ++i) {
        if (bodies.of[i] < 0 || passages.is_portal(i) || !(passages[i].clearance > 0)) continue;
        cells[static_cast<std::size_t>(bodies.of[i])].emplace_back(-passages.volume_of(i), i);
    }
    std::vector<std::vector<Point>> places(cells.size());
    for (std::size_t body = 0; body < cells.size(); ++body) {
        std::sort(cells[body].begin(), cells[body].end());
        if (cells[body].size() > most_places) cells[body].resize(most_places);
        for (const auto& [volume, cell] : cells[body]) places[body].push_back(passages[cell].at);
        if (places[body].empty()) places[body].push_back(passages[bodies.list[body].seed].at);
    }
    return places;
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
        const std::int32_t body = bodies.of[passages.middle_of(passages.air().complex.cell_at(room.at))];
        if (body > 0 && !named[static_cast<std::size_t>(body)]) named[static_cast<std::size_t>(body)] = &room;
    }
    taken.insert("outdoors");
    const auto free_id = [&](const std::string& stem) {
        for (int n = 1;; ++n) {
            const std::string id = stem + '-' + std::to_string(n);
            if (taken.insert(id).second) return id;
        }
    };
    // What the file calls a space of the building is a label for the air that it lies in.
    std::vector<std::vector<std::string>> labels(bodies.list.size());
    for (const ModelPart& room : model.rooms) {
        if (room.mesh.triangles.empty() || !settings.rooms.empty()) continue;
        const std::uint32_t cell = passages.air().complex.cell_at(middle_of(room.mesh));
        const std::int32_t body = passages.air().solid[cell] ? -1 : bodies.of[passages.middle_of(cell)];
        if (body > 0) labels[static_cast<std::size_t>(body)].push_back(room.name.empty() ? room.id : room.name);
    }
    std::vector<std::size_t> space_of(bodies.list.size());
    const std::vector<std::vector<Point>> places = places_of(passages, bodies);
    bool guessed = false;
    for (const std::size_t body : order) {
        space_of[body] = found.spaces.size();
        FoundSpace space;
        if (body == 0) {
            space = {"outdoors", SpaceKind::outdoors, {}, passages[bodies.list[0].seed].at};
        } else if (named[body]) {
            space = {named[body]->id, named[body]->kind, bodies.list[body].volume, named[body]->at};
        } else {
            const std::optional<Point> stand = settings.rooms.empty() && bodies.list[body].volume >= room_volume
                                                   ? standing_room(passages.air().tree, places[body])
                                                   : std::nullopt;
            guessed = guessed || (stand && labels[body].empty());
            const bool is_room = stand || !labels[body].empty();
            space = {free_id(is_room ? "room" : "space"), is_room ? SpaceKind::living : SpaceKind::cavity,
                     bodies.list[body].volume, stand.value_or(places[body][0])};
            space.labels = std::move(labels[body]);
        }
        found.spaces.push_back(std::move(space));
    }
    if (guessed) {
        found.notes.push_back(
            "No room was named: air of 4 cubic meters or more in which a person can stand upright was taken for a living space. "
            "--room NAME=X,Y,Z says which air is a room.");
    }
    return space_of;
}

}  // namespace seamward
