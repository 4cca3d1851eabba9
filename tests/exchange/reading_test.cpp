// SPDX-License-Identifier: GPL-3.0-or-later
// What seamward-reader does by itself, without the libraries of others.
#include <fcntl.h>
#include <gtest/gtest.h>
#include <unistd.h>

#include "exchange/reader/mesh_builder.h"
#include "exchange/reader/refusal.h"
#include "exchange/reader/scene_hints.h"
#include "exchange/reader/source_files.h"
#include "exchange/reader/step_products.h"
#include "exchange/reader/turn_alike.h"
#include "tests/exchange/model_files.h"
#include "tests/exchange/sample_parts.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/solid_check.h"

namespace seamward::test {
namespace {

std::string products_of(const std::string& text) {
    std::string found;
    for (const StepProduct& product : products_in_step(text))
        found += std::to_string(product.number) + ' ' + product.ifc_class + ' ' + product.global_id +
                 (product.has_shape ? " +;" : ";");
    return found;
}

constexpr const char* id = "0000000000000000000001";

TEST(StepProducts, AreCountedByWhatTheyAre) {
    const std::string places = "#1=IFCLOCALPLACEMENT($,#9);#2=IFCPRODUCTDEFINITIONSHAPE($,$,(#9));";
    const std::string head = std::string("('") + id + "',$,";
    EXPECT_EQ(products_of(places + "#3=IFCWALL" + head + "$,$,$,#1,#2,$);"), "3 IFCWALL 0000000000000000000001 +;");
    EXPECT_EQ(products_of("#3 = IfcWall " + head + "$ , $ , $ , #1 , #2 , $ ) ;\n" + places),
              "3 IFCWALL 0000000000000000000001 +;");
    EXPECT_EQ(products_of(places + "#3=IFCROOF" + head + "$,$,$,#1,$,$);"), "3 IFCROOF 0000000000000000000001;");
    EXPECT_EQ(products_of(places + "#3=IFCFUTURE" + head + "$,$,$,$,#2,$);"), "3 IFCFUTURE 0000000000000000000001 +;");
    EXPECT_EQ(products_of(places + "#3=IFCSITE" + head + "$,$,$,#1,$,$);"), "");
    EXPECT_EQ(products_of(places + "#3=IFCOPENINGELEMENT" + head + "$,$,$,#1,#2,$);"), "");
    EXPECT_EQ(products_of(places + "#3=IFCWALLTYPE" + head + "$,$,$,(#1),(#2),$);"), "");
    EXPECT_EQ(products_of(places + "#3=IFCRELAGGREGATES" + head + "$,$,#1,(#2));"), "");
}

TEST(StepProducts, TextsAndCommentsAreRespected) {
    const std::string places = "#1=IFCLOCALPLACEMENT($,#9);#2=IFCPRODUCTDEFINITIONSHAPE($,$,(#9));";
    const std::string wall = std::string("#3=IFCWALL('") + id + "',$,'it''s; (a, wall) /* with */',$,$,#1,#2,$);";
    EXPECT_EQ(products_of(places + wall), "3 IFCWALL 0000000000000000000001 +;");
    EXPECT_EQ(products_of(places + "/* " + wall + " */"), "");
    EXPECT_EQ(products_of(places + "#8=IFCLABEL('" + wall + "');"), "");
    for (const char* broken :
         {"/*", "'", "#", "#1", "#1=", "#1=X(", "#1=X('0000000000000000000001'", "/", ";;;", "#99999999999999999999=X();"})
        EXPECT_EQ(products_of(broken), "");
}

TEST(SceneHints, UnitsAndAxesOfCollada) {
    std::string text = R"(<asset><unit name="meter" meter='0.3048'/><up_axis> Z_UP </up_axis></asset>)";
    const SceneHints hints = take_collada_hints(text);
    ASSERT_TRUE(hints.unit && hints.up);
    EXPECT_EQ(hints.unit->over / hints.unit->under, 0.3048);
    EXPECT_EQ(*hints.up, UpAxis::z);
    EXPECT_EQ(text.find("0.3048"), std::string::npos);
    EXPECT_EQ(text.find("Z_UP"), std::string::npos);
    for (std::string broken :
         {"<unit", "<unit meter=", "<unit meter=\"", "<unit meter=\"-1\"/>", "<up_axis>", "<up_axis>Q", "<unit>"}) {
        const SceneHints none = take_collada_hints(broken);
        EXPECT_FALSE(none.unit || none.up) << broken;
    }
}

TEST(SceneHints, UnitsOfDxf) {
    EXPECT_FALSE(dxf_hints(dxf_box(0)).unit);
    EXPECT_FALSE(dxf_hints(dxf_box(99)).unit);
    EXPECT_EQ(dxf_hints(dxf_box(10)).unit->over, 9144);
    EXPECT_FALSE(dxf_hints("$INSUNITS").unit);
    EXPECT_FALSE(dxf_hints("$INSUNITS\n71\n1\n").unit);
    EXPECT_EQ(dxf_hints("9\r\n$INSUNITS\r\n 70\r\n     6\r\n").unit->over, 1);
}

TEST(SceneHints, ObjFilesAreMadePlain) {
    const PlainObj objects = plain_obj("mtllib x.mtl\r\ng all\n o a b\nv 1 2 3\nusemtl y\no c\ng d\nf 1 2 3");
    EXPECT_EQ(objects.text, "\n\no n0\nv 1 2 3\n\no n1\n\nf 1 2 3\n");
    EXPECT_EQ(objects.names, (std::vector<std::string>{"a b", "c"}));
    EXPECT_FALSE(objects.hints.unit || objects.hints.up);
    const PlainObj groups = plain_obj("# x\n# meters; x east, y north, z up\ng a%20b\n");
    EXPECT_EQ(groups.names, std::vector<std::string>{"a b"});
    EXPECT_EQ(groups.hints.up, UpAxis::z);
}

TEST(SourceFiles, PercentEscapes) {
    EXPECT_EQ(percent_decoded("a%20b%2Fc%2fd"), "a b/c/d");
    EXPECT_EQ(percent_decoded("%%4%zz%4"), "%%4%zz%4");
}

TEST(SourceFiles, ChangesStayInMemory) {
    const ScratchFolder folder;
    const int number = open(folder.write("a", "content").c_str(), O_RDONLY);
    SourceFiles files(number, 100);
    files.model()[0] = 'C';
    EXPECT_EQ(files.text(), "Content");
    const SourceFiles again(number, 100);
    EXPECT_EQ(again.text(), "content");
    EXPECT_THROW(SourceFiles(number, 6), ReadRefusal);
    close(number);
}

TEST(MeshBuilder, WeldsWhatIsInExactlyOnePlace) {
    TriangleTally tally{.most = 2};
    MeshBuilder builder(tally);
    builder.add({0, 0, 0}, {1, 0, 0}, {0, 1, 0});
    builder.add({-0.0, 0, 0}, {1, 0, 0}, {0, 0, 1e-300});
    builder.add({0, 0, 0}, {5, 5, 5}, {0, 0, 0});
    EXPECT_EQ(tally.kept, 2U);
    EXPECT_EQ(tally.collapsed, 1U);
    EXPECT_THROW(builder.add({2, 0, 0}, {3, 0, 0}, {2, 1, 0}), ReadRefusal);
    const TriangleMesh mesh = builder.take();
    EXPECT_EQ(mesh.triangles.size(), 2U);
    EXPECT_EQ(mesh.points.size(), 4U);
}

TEST(MeshBuilder, PiecesBeyondTheMostStayTogether) {
    TriangleTally tally{.most = 100};
    MeshBuilder builder(tally);
    for (int i = 0; i < 5; ++i) {
        const double x = i;
        builder.add({x, 0, 0}, {x + 0.5, 0, 0}, {x, 1, 0});
    }
    const TriangleMesh mesh = builder.take();
    EXPECT_EQ(pieces_of(mesh, 5).size(), 5U);
    ASSERT_EQ(pieces_of(mesh, 4).size(), 1U);
    EXPECT_EQ(pieces_of(mesh, 4)[0].triangles.size(), 5U);
}

TEST(TurnAlike, ClosedPatchesFaceOutward) {
    for (unsigned mask = 1; mask < (1U << 12U) - 1; mask += 5) {  // all kinds of triangles turned, but not all or none
        TriangleMesh mesh = box({0, 0, 0}, {1, 2, 3});
        for (std::size_t t = 0; t < 12; ++t) {
            if ((mask >> t & 1U) != 0) std::swap(mesh.triangles[t][1], mesh.triangles[t][2]);
        }
        EXPECT_GT(turn_alike(mesh), 0U);
        ASSERT_EQ(fault_of_solid(mesh), "") << mask;
    }
}

TEST(TurnAlike, WhatAgreesStaysAsItIs) {
    TriangleMesh inside_out = turned(box({0, 0, 0}, {1, 2, 3}));
    EXPECT_EQ(turn_alike(inside_out), 0U);
    TriangleMesh hollow = joined(box({0, 0, 0}, {3, 3, 3}), turned(box({1, 1, 1}, {2, 2, 2})));
    EXPECT_EQ(turn_alike(hollow), 0U);
}

TEST(TurnAlike, OpenPatchesFaceWhereMostOfThemFaced) {
    TriangleMesh mesh = turned(box({0, 0, 0}, {1, 2, 3}));
    mesh.triangles.resize(10);
    const TriangleMesh wanted = mesh;
    std::swap(mesh.triangles[4][1], mesh.triangles[4][2]);
    EXPECT_EQ(turn_alike(mesh), 1U);
    const SolidFacts facts = facts_of(mesh);
    EXPECT_EQ(facts.volume, facts_of(wanted).volume);
}

TEST(TurnAlike, ABandWithOneTwistCannotAgreeAndStays) {
    TriangleMesh band;
    for (std::uint32_t i = 0; i < 5; ++i) {
        band.points.push_back({0.0 + i, 0, 0});
        band.triangles.push_back({i, (i + 1) % 5, (i + 2) % 5});
    }
    const auto before = band.triangles;
    EXPECT_EQ(turn_alike(band), 0U);
    EXPECT_EQ(band.triangles, before);
}

}  // namespace
}  // namespace seamward::test
