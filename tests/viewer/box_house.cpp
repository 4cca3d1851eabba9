// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/viewer/box_house.h"

#include "paths/entry_path.h"

namespace seamward::viewer::test {

TriangleMesh box(const Point& low, const Point& high) {
    TriangleMesh mesh;
    for (const double z : {low.z, high.z}) {
        for (const Point& at :
             {Point{low.x, low.y, z}, Point{high.x, low.y, z}, Point{high.x, high.y, z}, Point{low.x, high.y, z}})
            mesh.points.push_back(at);
    }
    const auto face = [&](std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
        mesh.triangles.push_back({a, b, c});
        mesh.triangles.push_back({a, c, d});
    };
    face(3, 2, 1, 0);
    face(4, 5, 6, 7);
    for (std::uint32_t i = 0; i < 4; ++i) face(i, (i + 1) % 4, (i + 1) % 4 + 4, i + 4);
    return mesh;
}

namespace {

void add_part(House& house, const std::string& id, const std::string& material, Layer layer, const Point& low,
              const Point& high) {
    Part part{id, id, material, layer, box(low, high), {}};
    part.bounds.assign(part.mesh.triangles.size(), GapIndex{});
    house.parts.push_back(std::move(part));
}

void add_gap(House& house, const std::string& id, std::uint32_t a, std::uint32_t b, const Shape& shape,
             std::vector<Point> through) {
    Gap gap;
    gap.id = id;
    gap.between = {SpaceIndex{a}, SpaceIndex{b}};
    gap.shape = shape;
    gap.at = through[through.size() / 2];
    house.places.push_back({GapIndex{static_cast<std::uint32_t>(house.survey.gaps.size())}, std::move(through)});
    house.survey.gaps.push_back(std::move(gap));
}

void add_walls(House& house) {
    struct Wall {
        const char* name;
        Point low, high;
        double out_x, out_y;
    };
    for (const Wall& wall :
         {Wall{"south", {-4, -3.1, 0}, {4, -3, 2.5}, 0, -0.03}, Wall{"north", {-4, 3, 0}, {4, 3.1, 2.5}, 0, 0.03},
          Wall{"west", {-4.1, -3, 0}, {-4, 3, 2.5}, -0.03, 0}, Wall{"east", {4, -3, 0}, {4.1, 3, 2.5}, 0.03, 0}}) {
        const std::string name = wall.name;
        const Vector out{wall.out_x, wall.out_y, 0};
        // The inner skin's outer half is left as the wall's air.
        add_part(house, name + "/stucco", "stucco", Layer::cladding, wall.low + out, wall.high + out);
        add_part(house, name + "/drywall", "drywall", Layer::interior, wall.low + out * -5, wall.high + out * -5);
    }
}

}  // namespace

House box_house() {
    House house;
    house.name = "box house";
    house.survey.spaces = {{"yard", "yard", SpaceKind::outdoors},
                           {"wall", "south wall cavity", SpaceKind::cavity},
                           {"attic", "attic", SpaceKind::cavity},
                           {"kitchen", "kitchen", SpaceKind::living}};
    house.middles.resize(4);
    house.middles[3] = {{{0, 0, 0.12}}, {{{-4, -3}, {4, -3}, {4, 3}, {-4, 3}}, {}}};
    add_part(house, "ground", "soil", Layer::ground, {-9, -8, -1}, {9, 8, -0.2});
    add_part(house, "slab", "concrete", Layer::foundation, {-4.2, -3.2, -0.4}, {4.2, 3.2, 0});
    add_walls(house);
    add_part(house, "ceiling", "drywall", Layer::interior, {-4, -3, 2.5}, {4, 3, 2.52});
    add_part(house, "roof", "tile", Layer::roof, {-4.6, -3.6, 3.2}, {4.6, 3.6, 3.3});
    add_gap(house, "screed", 0, 1, Slot{0.0032, 5}, {{1, -3.3, -0.05}, {1, -3.1, 0.02}, {1, -3.04, 0.05}});
    add_gap(house, "plate", 1, 2, Hole{0.008}, {{1.4, -3.04, 2.45}, {1.4, -3.04, 2.5}, {1.4, -3.04, 2.6}});
    add_gap(house, "can", 2, 3, Ring{0.0012, 0.15}, {{2, 0, 2.6}, {2, 0, 2.51}, {2, 0, 2.4}});
    add_gap(house, "sweep", 0, 3, Slot{0.0009, 0.9}, {{-2, -3.3, 0.01}, {-2, -3.1, 0.01}, {-2, -2.9, 0.01}});
    add_gap(house, "vent", 0, 2, Slot{0, 0.3}, {{4.3, 1, 2.8}, {4.1, 1, 2.8}, {4, 1, 2.8}});
    for (std::size_t i = 0; i < 2; ++i) house.parts[2].bounds[i] = GapIndex{0};
    return house;
}

DrawnPath way_through(const House& house, std::vector<std::uint32_t> gaps) {
    DrawnPath path;
    EntryPath& way = path.way.path;
    way.spaces.push_back(house.survey.gaps[gaps.front()].between[0]);
    for (const std::uint32_t gap : gaps) {
        way.gaps.push_back({gap});
        way.spaces.push_back(house.survey.gaps[gap].across(way.spaces.back()));
    }
    path.way.pinch_gap = pinch_gap(house.survey, way);
    path.way.pinch = clear_width(house.survey[path.way.pinch_gap].shape);
    return path;
}

std::vector<DrawnPath> both_ways(const House& house) { return {way_through(house, {0, 1, 2}), way_through(house, {3})}; }

}  // namespace seamward::viewer::test
