// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/obj.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <sstream>

#include "tests/exchange/assimp_reading.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

std::string text_of(const SampleHouse& house) { return obj_text(house.parts, house.survey, house.name, "house.mtl"); }

/// What follows a keyword, line by line.
std::vector<std::string> lines_with(const std::string& text, const std::string& keyword) {
    std::vector<std::string> rest;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);) {
        if (line.starts_with(keyword + ' ')) rest.push_back(line.substr(keyword.size() + 1));
    }
    return rest;
}

TEST(Obj, IsWrittenLikeThis) {
    Part part =
        part_of("wedge", {{{0, 0, 0}, {0.1, 0, 0}, {0, 1e-7, 0}, {0, 0, 1234.5}}, {{0, 2, 1}, {0, 1, 3}, {1, 2, 3}, {0, 3, 2}}},
                Layer::roof, "tile");
    bind(part, GapIndex{0}, {1});
    const std::vector<Part> parts{part, part_of("dot", {{{7, 8, 9}}, {{0, 0, 0}}})};
    EXPECT_EQ(obj_text(parts, survey_with({"ridge"}), "My house", "my.mtl"),
              "# My house\n"
              "# meters; x east, y north, z up\n"
              "mtllib my.mtl\n"
              "s off\n"
              "\n"
              "# the wedge\n"
              "g wedge\n"
              "o wedge\n"
              "usemtl roof/tile\n"
              "v 0 0 0\n"
              "v 0.1 0 0\n"
              "v 0 1e-07 0\n"
              "v 0 0 1234.5\n"
              "f 1 3 2\n"
              "f 2 3 4\n"
              "f 1 4 3\n"
              "g gap_ridge\n"
              "f 1 2 4\n"
              "\n"
              "# the dot\n"
              "g dot\n"
              "o dot\n"
              "usemtl framing/wood\n"
              "v 7 8 9\n"
              "f 5 5 5\n");
    const std::string plain = obj_text(parts, survey_with({"ridge"}), "My house", "");
    EXPECT_EQ(plain.find("mtl"), std::string::npos);
}

TEST(Obj, NumbersAreReadBackBitForBit) {
    const SampleHouse house = sample_house();
    std::vector<double> expected;
    for (const Part& part : house.parts) {
        for (const Point& point : part.mesh.points) expected.insert(expected.end(), {point.x, point.y, point.z});
    }
    std::vector<double> found;
    for (const std::string& line : lines_with(text_of(house), "v")) {
        const char* at = line.c_str();
        for (int axis = 0; axis < 3; ++axis) {
            char* end = nullptr;
            found.push_back(std::strtod(at, &end));
            at = end;
        }
        EXPECT_EQ(*at, 0) << line;
    }
    EXPECT_EQ(found, expected);
}

/// Assimp takes each object and each group for a node; a part is the node of its id and those of its gaps after it.
TEST(Obj, AssimpReadsTheSameHouse) {
    const SampleHouse house = sample_house();
    const ScratchFolder folder;
    folder.write("house.mtl", mtl_text(house.parts));
    const std::vector<ReadNode> nodes = read_with_assimp(folder.write("house.obj", text_of(house)));
    std::vector<std::string> names;
    std::size_t triangles = 0;
    for (const ReadNode& node : nodes) {
        names.push_back(node.name);
        triangles += node.mesh.triangles.size();
    }
    EXPECT_EQ(names,
              (std::vector<std::string>{"north-wall/stucco", "gap_seam", "chase", "gap_sleeve", "sills", "gap_seam", "pane"}));
    EXPECT_EQ(triangles, 80U);
    const std::vector<std::size_t> counts{10, 2, 24, 8, 20, 4, 12};
    const std::vector<std::size_t> of_part{0, 0, 1, 1, 2, 2, 3};
    const std::vector<std::string> materials{"cladding/stucco", "framing/wood", "framing/wood", "opening/glass"};
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        EXPECT_EQ(nodes[i].mesh.triangles.size(), counts[i]) << i;
        EXPECT_EQ(nodes[i].materials, std::vector{materials[of_part[i]]}) << i;
    }
    // The ordinary faces of a part reach all of its corners.
    for (std::size_t i = 0; i < nodes.size(); i += 2) {
        const Bounds found = facts_of(nodes[i].mesh).bounds;
        const Bounds expected = facts_of(house.parts[of_part[i]].mesh).bounds;
        EXPECT_LE(distance(found.lowest, expected.lowest), 2e-6) << i;
        EXPECT_LE(distance(found.highest, expected.highest), 2e-6) << i;
    }
}

/// A part's faces of all groups together, read by the letter, are the solid that was written.
TEST(Obj, SolidsStaySolidAcrossGroups) {
    const SampleHouse house = sample_house();
    const std::string text = text_of(house);
    std::size_t begin = text.find("\no ");
    std::uint32_t before = 1;
    for (const Part& part : house.parts) {
        const std::size_t end = std::min(text.size(), text.find("\no ", begin + 1));
        TriangleMesh mesh{part.mesh.points, {}};
        for (const std::string& line : lines_with(text.substr(begin, end - begin), "f")) {
            std::istringstream in(line);
            std::array<std::uint32_t, 3> corners{};
            for (std::uint32_t& corner : corners) {
                in >> corner;
                corner -= before;
            }
            mesh.triangles.push_back(corners);
        }
        EXPECT_EQ(fault_of_solid(mesh), "") << part.id;
        EXPECT_DOUBLE_EQ(facts_of(mesh).volume, facts_of(part.mesh).volume) << part.id;
        before += static_cast<std::uint32_t>(part.mesh.points.size());
        begin = end;
    }
}

TEST(Obj, HostileNamesEndNoLineAndStayDifferent) {
    const SampleHouse house = hostile_house();
    const std::string text = text_of(house);
    EXPECT_EQ(lines_with(text, "o"), (std::vector<std::string>{"wall%20\"north\"%0Af%201%202%203", "wall%2520\"north\"", "%20%20",
                                                               "%00%01%7F%23pane%5C"}));
    EXPECT_EQ(lines_with(text, "g"),
              (std::vector<std::string>{"wall%20\"north\"%0Af%201%202%203", "gap_gap%20\"0\"%20%5C", "wall%2520\"north\"",
                                        "gap_gap%0A%23%200", "%20%20", "gap_gap%20\"0\"%20%5C", "%00%01%7F%23pane%5C"}));
    EXPECT_EQ(lines_with(text, "usemtl").front(), "cladding/stucco%20\"é\"");
    EXPECT_EQ(lines_with(text, "f").size(), 80U);
    EXPECT_EQ(lines_with(text, "v").size(), 48U);
    EXPECT_EQ(text.find('\\'), std::string::npos);  // it would join lines
    const ScratchFolder folder;
    folder.write("house.mtl", mtl_text(house.parts));
    const std::vector<ReadNode> nodes = read_with_assimp(folder.write("house.obj", text));
    std::size_t triangles = 0;
    for (const ReadNode& node : nodes) triangles += node.mesh.triangles.size();
    EXPECT_EQ(triangles, 80U);
    EXPECT_EQ(nodes.front().materials.front(), "cladding/stucco%20\"é\"");
}

TEST(Obj, BytesThatAreNotUtf8AreSpelledOut) {
    const std::vector<Part> parts{part_of("a\xff", {}), part_of("", {})};
    EXPECT_EQ(lines_with(obj_text(parts, {}, "", ""), "o"), (std::vector<std::string>{"a%FF", "%"}));
}

TEST(Obj, MaterialsAreWrittenOnce) {
    const SampleHouse house = sample_house();
    const std::string text = mtl_text(house.parts);
    EXPECT_EQ(lines_with(text, "newmtl"), (std::vector<std::string>{"cladding/stucco", "framing/wood", "opening/glass"}));
    const std::vector<std::string> opaque = lines_with(text, "d");
    ASSERT_EQ(opaque.size(), 3U);
    EXPECT_EQ(opaque[0], "1");
    EXPECT_LT(std::stod(opaque[2]), 0.6);
    std::vector<std::string> used = lines_with(text_of(house), "usemtl");
    used.erase(std::unique(used.begin(), used.end()), used.end());
    EXPECT_EQ(used, lines_with(text, "newmtl"));
}

TEST(Obj, AHouseWithoutPartsIsAComment) {
    EXPECT_EQ(obj_text({}, {}, "no\nhouse\\", ""), "# no?house/\n# meters; x east, y north, z up\ns off\n");
}

}  // namespace
}  // namespace seamward::test
