// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/exchange/sample_parts.h"

#include <cstdint>
#include <utility>

namespace seamward::test {

namespace {

void add_quad(TriangleMesh& mesh, std::uint32_t a, std::uint32_t b, std::uint32_t c, std::uint32_t d) {
    mesh.triangles.push_back({a, b, c});
    mesh.triangles.push_back({a, c, d});
}

}  // namespace

TriangleMesh box(const Point& low, const Point& high) {
    TriangleMesh mesh;
    for (const double z : {low.z, high.z}) {
        for (const double y : {low.y, high.y}) {
            for (const double x : {low.x, high.x}) mesh.points.push_back({x, y, z});
        }
    }
    add_quad(mesh, 0, 4, 6, 2);
    add_quad(mesh, 1, 3, 7, 5);
    add_quad(mesh, 0, 1, 5, 4);
    add_quad(mesh, 2, 6, 7, 3);
    add_quad(mesh, 0, 2, 3, 1);
    add_quad(mesh, 4, 5, 7, 6);
    return mesh;
}

TriangleMesh tube(const Point& low, const Point& high, double wall) {
    TriangleMesh mesh;
    for (const double z : {low.z, high.z}) {
        for (const double in : {0.0, wall}) {  // counterclockwise, seen from above
            mesh.points.push_back({low.x + in, low.y + in, z});
            mesh.points.push_back({high.x - in, low.y + in, z});
            mesh.points.push_back({high.x - in, high.y - in, z});
            mesh.points.push_back({low.x + in, high.y - in, z});
        }
    }
    for (std::uint32_t i = 0; i < 4; ++i) {
        const std::uint32_t next = (i + 1) % 4;
        add_quad(mesh, i, next, next + 8, i + 8);            // outside
        add_quad(mesh, i + 4, i + 12, next + 12, next + 4);  // inside of the hole
        add_quad(mesh, i, i + 4, next + 4, next);            // bottom
        add_quad(mesh, i + 8, next + 8, next + 12, i + 12);  // top
    }
    return mesh;
}

TriangleMesh joined(const TriangleMesh& a, const TriangleMesh& b) {
    TriangleMesh both = a;
    const auto shift = static_cast<std::uint32_t>(a.points.size());
    both.points.insert(both.points.end(), b.points.begin(), b.points.end());
    for (const auto& [i, j, k] : b.triangles) both.triangles.push_back({i + shift, j + shift, k + shift});
    return both;
}

TriangleMesh turned(TriangleMesh mesh) {
    for (auto& corners : mesh.triangles) std::swap(corners[1], corners[2]);
    return mesh;
}

Part part_of(const std::string& id, TriangleMesh mesh, Layer layer, const std::string& material) {
    Part part{.id = id, .name = "the " + id, .material = material, .layer = layer, .mesh = std::move(mesh)};
    part.bounds.resize(part.mesh.triangles.size());
    return part;
}

void bind(Part& part, GapIndex gap, const std::vector<std::size_t>& triangles) {
    for (const std::size_t triangle : triangles) part.bounds.at(triangle) = gap;
}

Survey survey_with(const std::vector<std::string>& gaps) {
    Survey survey;
    survey.spaces = {{.id = "yard", .kind = SpaceKind::outdoors}, {.id = "hall", .kind = SpaceKind::living}};
    for (const std::string& id : gaps)
        survey.gaps.push_back({.id = id, .between = {SpaceIndex{0}, SpaceIndex{1}}, .shape = Slot{0.01, 1}});
    return survey;
}

SampleHouse sample_house() {
    SampleHouse house{.survey = survey_with({"seam", "sleeve"})};
    house.parts.push_back(part_of("north-wall/stucco", box({0.1, 17.3, -0.2}, {12.7, 17.4, 2.9}), Layer::cladding, "stucco"));
    house.parts.push_back(part_of("chase", tube({3.3, 4.1, 0.3}, {3.9, 4.9, 2.7}, 0.07)));
    house.parts.push_back(
        part_of("sills", joined(box({1.1, 17.41, 0.9}, {2.3, 17.5, 1.1}), box({5.7, 17.41, 0.9}, {6.9, 17.5, 1.1}))));
    house.parts.push_back(part_of("pane", box({1.1, 17.33, 1.1}, {2.3, 17.34, 2.1}), Layer::opening, "glass"));
    bind(house.parts[0], GapIndex{0}, {6, 7});  // 10 mm from the sills
    bind(house.parts[2], GapIndex{0}, {4, 5, 16, 17});
    bind(house.parts[1], GapIndex{1}, {2, 3, 10, 11, 18, 19, 26, 27});
    return house;
}

SampleHouse hostile_house() {
    SampleHouse house = sample_house();
    house.name = "\"Müller's\"\nhouse \\ </script> \t漢字 🏠";
    house.survey.gaps[0].id = "gap \"0\" \\";
    house.survey.gaps[1].id = "gap\n# 0";
    house.parts[0].id = "wall \"north\"\nf 1 2 3";
    house.parts[0].name = "стена\r\nv 0 0 0 \\";
    house.parts[0].material = "stucco \"é\"";
    house.parts[1].id = "wall%20\"north\"";
    house.parts[2].id = "  ";
    house.parts[3].id = std::string("\0\x01\x7f#pane\\", 9);
    return house;
}

}  // namespace seamward::test
