// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/gltf.h"

#include <gtest/gtest.h>

#include <cmath>
#include <set>

#include "tests/exchange/assimp_reading.h"
#include "tests/exchange/glb_file.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/document_text.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

std::string bytes_of(const SampleHouse& house) { return gltf_binary(house.parts, house.survey, house.name); }

void expect_near(const Bounds& found, const Bounds& expected, double within) {
    EXPECT_LE(distance(found.lowest, expected.lowest), within);
    EXPECT_LE(distance(found.highest, expected.highest), within);
}

TEST(Gltf, EachPartIsANodeWithItsWords) {
    const SampleHouse house = sample_house();
    const GlbFile file = read_glb(bytes_of(house));
    EXPECT_EQ(file.house, "Sample house");
    ASSERT_EQ(file.parts.size(), 4U);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(file.parts[i].id, house.parts[i].id);
        EXPECT_EQ(file.parts[i].name, house.parts[i].name);
        EXPECT_EQ(file.parts[i].material, house.parts[i].material);
    }
    EXPECT_EQ(file.parts[0].layer, "cladding");
    EXPECT_EQ(file.parts[1].layer, "framing");
    EXPECT_EQ(file.parts[3].layer, "opening");
}

TEST(Gltf, PointsComeBackWithinAFractionOfAMicrometer) {
    const SampleHouse house = sample_house();
    const GlbFile file = read_glb(bytes_of(house));
    for (std::size_t i = 0; i < 4; ++i) {
        const std::vector<Point>& points = house.parts[i].mesh.points;
        const Bounds bounds = facts_of(house.parts[i].mesh).bounds;
        const double size = distance(bounds.lowest, bounds.highest);
        ASSERT_EQ(file.parts[i].points.size(), points.size());
        for (std::size_t p = 0; p < points.size(); ++p)
            EXPECT_LE(distance(file.parts[i].points[p], points[p]), std::ldexp(size, -24)) << i << ' ' << p;
        EXPECT_EQ(file.parts[i].stated, file.parts[i].found) << i;
    }
}

/// A part of 20 mm, 20 m away, is right to a nanometer; floats of the whole would be off by a thousand.
TEST(Gltf, SmallPartsFarAwayKeepTheirShape) {
    const std::vector<Part> parts{
        part_of("bead", box({19.8765432101, -23.4567890123, 7.6543210987}, {19.8965432101, -23.4467890123, 7.6593210987}))};
    const GlbFile file = read_glb(gltf_binary(parts, {}, ""));
    for (std::size_t p = 0; p < 8; ++p) EXPECT_LE(distance(file.parts[0].points[p], parts[0].mesh.points[p]), 2e-9) << p;
}

/// Readers add translations as floats: they must be floats.
TEST(Gltf, TranslationsAreExactAsFloats) {
    const GlbFile file = read_glb(bytes_of(sample_house()));
    std::size_t nodes = 0;
    value_of(file.json.root(), "nodes").for_each_item([&](Node node) {
        const Node translation = value_of(node, "translation");
        if (!translation.present()) return;
        ++nodes;
        translation.for_each_item([](Node number) {
            const double value = std::stod(std::string(number.text()));
            EXPECT_EQ(value, double{static_cast<float>(value)});
            EXPECT_EQ(value * 1024, std::round(value * 1024));
        });
    });
    EXPECT_EQ(nodes, 4U);
}

TEST(Gltf, FacesOfAGapAreAPrimitiveOfTheirOwn) {
    const SampleHouse house = sample_house();
    const GlbFile file = read_glb(bytes_of(house));
    const auto gaps = [&](std::size_t part) {
        std::vector<std::pair<std::string, std::size_t>> list;
        for (const GlbPrimitive& primitive : file.parts[part].primitives)
            list.emplace_back(primitive.gap, primitive.triangles.size());
        return list;
    };
    using List = std::vector<std::pair<std::string, std::size_t>>;
    EXPECT_EQ(gaps(0), (List{{"", 10}, {"seam", 2}}));
    EXPECT_EQ(gaps(1), (List{{"", 24}, {"sleeve", 8}}));
    EXPECT_EQ(gaps(2), (List{{"", 20}, {"seam", 4}}));
    EXPECT_EQ(gaps(3), (List{{"", 12}}));
    EXPECT_EQ(file.parts[0].primitives[1].triangles[0], house.parts[0].mesh.triangles[6]);
    EXPECT_EQ(file.parts[0].primitives[1].triangles[1], house.parts[0].mesh.triangles[7]);
}

TEST(Gltf, APartMayBoundSeveralGapsWithAllItsFaces) {
    std::vector<Part> parts{part_of("box", box({0, 0, 0}, {1, 1, 1}))};
    bind(parts[0], GapIndex{1}, {0, 1, 2, 3, 4, 5, 6});
    bind(parts[0], GapIndex{0}, {7, 8, 9, 10, 11});
    const GlbFile file = read_glb(gltf_binary(parts, survey_with({"a", "b"}), "house"));
    ASSERT_EQ(file.parts[0].primitives.size(), 2U);
    EXPECT_EQ(file.parts[0].primitives[0].gap, "a");
    EXPECT_EQ(file.parts[0].primitives[1].gap, "b");
    EXPECT_EQ(fault_of_solid(file.parts[0].mesh()), "");
}

TEST(Gltf, SolidsStaySolid) {
    const SampleHouse house = sample_house();
    const GlbFile file = read_glb(bytes_of(house));
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(fault_of_solid(file.parts[i].mesh()), "") << i;
        EXPECT_NEAR(facts_of(file.parts[i].mesh()).volume, facts_of(house.parts[i].mesh).volume, 1e-5) << i;
        EXPECT_NEAR(facts_of(file.parts[i].mesh()).area, facts_of(house.parts[i].mesh).area, 1e-5) << i;
    }
}

TEST(Gltf, AssimpReadsTheSameHouse) {
    const SampleHouse house = sample_house();
    const ScratchFolder folder;
    const std::vector<ReadNode> nodes = read_with_assimp(folder.write("house.glb", bytes_of(house)));
    ASSERT_EQ(nodes.size(), 4U);
    const std::vector<double> volumes{12.6 * 0.1 * 3.1, (0.6 * 0.8 - 0.46 * 0.66) * 2.4, 2 * 1.2 * 0.09 * 0.2, 1.2 * 0.01 * 1};
    const std::vector<std::vector<std::string>> materials{{"cladding/stucco", "cladding/stucco"},
                                                          {"framing/wood", "framing/wood"},
                                                          {"framing/wood", "framing/wood"},
                                                          {"opening/glass"}};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(nodes[i].name, house.parts[i].id);
        EXPECT_EQ(nodes[i].above, "Sample house");
        EXPECT_EQ(nodes[i].materials, materials[i]);
        const TriangleMesh mesh = z_up(nodes[i].mesh);
        EXPECT_EQ(mesh.triangles.size(), house.parts[i].mesh.triangles.size()) << i;
        EXPECT_EQ(mesh.points.size(), house.parts[i].mesh.points.size()) << i;
        EXPECT_EQ(fault_of_solid(mesh), "") << i;
        EXPECT_NEAR(facts_of(mesh).volume, volumes[i], 1e-4) << i;
        expect_near(facts_of(mesh).bounds, facts_of(house.parts[i].mesh).bounds, 3e-6);  // it adds floats
    }
}

TEST(Gltf, HostileNamesSurvive) {
    const SampleHouse house = hostile_house();
    const GlbFile file = read_glb(bytes_of(house));
    EXPECT_EQ(file.house, house.name);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_EQ(file.parts[i].id, house.parts[i].id);
        EXPECT_EQ(file.parts[i].name, house.parts[i].name);
        EXPECT_EQ(file.parts[i].material, house.parts[i].material);
    }
    EXPECT_EQ(file.parts[0].primitives[1].gap, "gap \"0\" \\");
    EXPECT_EQ(file.parts[1].primitives[1].gap, "gap\n# 0");
    EXPECT_EQ(file.parts[0].primitives[0].material, "cladding/stucco \"é\"");
    const ScratchFolder folder;
    const std::vector<ReadNode> nodes = read_with_assimp(folder.write("house.glb", bytes_of(house)));
    ASSERT_EQ(nodes.size(), 4U);
    EXPECT_EQ(nodes[0].name, house.parts[0].id);
    EXPECT_EQ(nodes[0].above, house.name);
}

TEST(Gltf, WhatIsNotUtf8IsMadePrintable) {
    const std::vector<Part> parts{
        part_of("a\xff"
                "b",
                box({0, 0, 0}, {1, 1, 1}))};
    const GlbFile file = read_glb(gltf_binary(parts, {}, "h\xc3"));
    EXPECT_EQ(file.house, "h?");
    EXPECT_EQ(file.parts[0].id, "a?b");
}

TEST(Gltf, AHouseWithoutPartsIsAnEmptyRoot) {
    const GlbFile file = read_glb(gltf_binary({}, {}, "nothing"));
    EXPECT_EQ(file.house, "nothing");
    EXPECT_TRUE(file.parts.empty());
    EXPECT_EQ(document_text(file.json.root()),
              "{'asset': {'version': '2.0', 'generator': 'Seamward'}, 'scene': 0, 'scenes': [{'nodes': [0]}], "
              "'nodes': [{'name': 'nothing'}]}");
}

TEST(Gltf, APartWithoutTrianglesIsANodeWithoutMesh) {
    std::vector<Part> parts{part_of("none", {}), part_of("box", box({0, 0, 0}, {1, 1, 1}))};
    const GlbFile file = read_glb(gltf_binary(parts, {}, "house"));
    ASSERT_EQ(file.parts.size(), 2U);
    EXPECT_EQ(file.parts[0].id, "none");
    EXPECT_TRUE(file.parts[0].points.empty());
    EXPECT_EQ(fault_of_solid(file.parts[1].mesh()), "");
    parts.pop_back();
    EXPECT_EQ(read_glb(gltf_binary(parts, {}, "house")).parts.size(), 1U);
}

TEST(Gltf, MaterialsAreWrittenOnceAndOnlyGlassShinesThrough) {
    const GlbFile file = read_glb(bytes_of(sample_house()));
    std::vector<std::string> names;
    value_of(file.json.root(), "materials").for_each_item([&](Node material) {
        names.emplace_back(value_of(material, "name").text());
        EXPECT_EQ(value_of(material, "alphaMode").present(), names.back() == "opening/glass");
        EXPECT_FALSE(value_of(material, "doubleSided").present());
    });
    EXPECT_EQ(names, (std::vector<std::string>{"cladding/stucco", "framing/wood", "opening/glass"}));
}

TEST(Gltf, TheSameHouseIsTheSameBytes) { EXPECT_EQ(bytes_of(hostile_house()), bytes_of(hostile_house())); }

}  // namespace
}  // namespace seamward::test
