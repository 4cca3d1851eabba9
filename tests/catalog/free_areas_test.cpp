// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/free_areas.h"

#include <gtest/gtest.h>

#include <stdexcept>

#include "catalog/shipped.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

constexpr std::string_view sources = R"(edition: 2026-01-02
sources:
  - {id: code, title: "A code", publisher: "A council", year: 2018, seen: read}
)";

constexpr std::string_view meshes = R"(meshes:
  - {id: square, name: "A square mesh", counts: [8], wire: 0.017 in, source: code}
  - {id: oblong, name: "An oblong mesh", counts: [16, 18], wire: 0.011 in, source: code}
)";

constexpr std::string_view rules = R"(free_areas:
  - {id: attic, name: "attic", free: 1 ft2, per_floor: 150 ft2, source: code}
  - {id: burner, name: "burner", free: 1 in2, per_input: 4000, source: code}
  - {id: louver, name: "louver", share: 75 %, source: code}
)";

std::string text_of(std::string_view kind, std::string_view rows) {
    return "catalog: " + std::string(kind) + "\n" + std::string(sources) + std::string(rows);
}

std::string replaced(std::string text, std::string_view from, std::string_view to) {
    const std::size_t at = text.find(from);
    if (at == std::string::npos) throw std::out_of_range("not there: " + std::string(from));
    return text.replace(at, from.size(), to);
}

void expect_mesh_fault(std::string_view from, std::string_view to, std::string_view what) {
    const MarkedText marked(replaced(text_of("meshes", meshes), from, to));
    EXPECT_TRUE(only_fault(faults_of([&] { (void)read_meshes(marked.text, "m.yaml"); }), marked.places.at(0), what, "")) << to;
}

void expect_rule_fault(std::string_view from, std::string_view to, std::string_view what) {
    const MarkedText marked(replaced(text_of("free_areas", rules), from, to));
    EXPECT_TRUE(only_fault(faults_of([&] { (void)read_free_areas(marked.text, "f.yaml"); }), marked.places.at(0), what, ""))
        << to;
}

TEST(ReadMeshes, ReadsEveryKey) {
    const Table<MeshKind> table = read_meshes(text_of("meshes", meshes), "m.yaml");
    ASSERT_EQ(table.rows.size(), 2U);
    EXPECT_EQ(table.rows[0].counts, (std::array<std::uint32_t, 2>{8, 8}));
    EXPECT_NEAR(table.rows[0].opening(), 0.108 * 0.0254, 1e-15);
    EXPECT_NEAR(table.rows[0].open_share(), 0.864 * 0.864, 1e-12);
    EXPECT_EQ(table.rows[1].counts, (std::array<std::uint32_t, 2>{16, 18}));
    EXPECT_NEAR(table.rows[1].opening(), (1.0 / 18 - 0.011) * 0.0254, 1e-15) << "the smaller one";
    EXPECT_NEAR(table.rows[1].open_share(), (1 - 16 * 0.011) * (1 - 18 * 0.011), 1e-12);
}

TEST(MeshTableFault, EachAtItsPlace) {
    expect_mesh_fault("counts: [8]", "^count: [8]", "unknown key \"count\" in mesh");
    expect_mesh_fault("counts: [8]", "counts: ^[]", "counts holds one number");
    expect_mesh_fault("counts: [8]", "counts: [^0]", "counts: ");
    expect_mesh_fault("counts: [16, 18]", "counts: ^[16, 18, 20]", "counts holds one number");
    expect_mesh_fault("wire: 0.017 in", "wire: ^0 in", "wire must be more than 0");
    expect_mesh_fault("wire: 0.017 in", "wire: ^1/8 in", "wires this thick leave nothing open");
    expect_mesh_fault("source: code}\n  - {id: o", "source: ^cod}\n  - {id: o", "unknown source \"cod\"");
    expect_mesh_fault("wire: 0.017 in", "wire: ^0.017", "");
}

TEST(ReadFreeAreas, ReadsEveryKey) {
    const Table<FreeAreaRule> table = read_free_areas(text_of("free_areas", rules), "f.yaml");
    ASSERT_EQ(table.rows.size(), 3U);
    EXPECT_DOUBLE_EQ(table.rows[0].per_floor / table.rows[0].free, 150);
    EXPECT_EQ(table.rows[1].per_input, 4000);
    EXPECT_NEAR(table.rows[1].free, 0.0254 * 0.0254, 1e-15);
    EXPECT_EQ(table.rows[2].share, 0.75);
    EXPECT_EQ(table.rows[2].source, "code");
}

TEST(FreeAreaTableFault, EachAtItsPlace) {
    expect_rule_fault("per_floor: 150 ft2", "per_floor: ^0 ft2", "per_floor must be more than 0");
    expect_rule_fault("free: 1 ft2", "^fre: 1 ft2, free: 1 ft2", "unknown key \"fre\" in rule");
    expect_rule_fault("  - {id: attic, name: \"attic\", free: 1 ft2, per_floor: 150 ft2,",
                      "  - ^{id: attic, name: \"attic\", free: 1 ft2,",
                      "a rule has one of per_floor, per_input and share, not 0");
    expect_rule_fault("  - {id: burner, name: \"burner\",", "  - ^{id: burner, name: \"burner\", share: 10 %,",
                      "a rule has one of per_floor, per_input and share, not 2");
    expect_rule_fault("  - {id: louver, name: \"louver\",", "  - ^{id: louver, name: \"louver\", free: 1 in2,",
                      "free says nothing of a louver");
    expect_rule_fault("  - {id: attic, name: \"attic\", free: 1 ft2,", "  - ^{id: attic, name: \"attic\",", "free is missing");
    expect_rule_fault("share: 75 %", "share: ^175 %", "share is more than 100 %");
}

/// Openings in inches and open areas in percent, worked out by hand from count and wire.
TEST(ShippedMeshes, HaveTheOpeningsOfTheirCountAndWire) {
    struct Row {
        const char* id;
        double inches, millimeters, percent;
    };
    for (const Row& row :
         {Row{"half-inch-cloth", 0.459, 11.66, 84.3}, Row{"third-inch-cloth", 0.292, 7.43, 76.9},
          Row{"quarter-inch-cloth", 0.225, 5.71, 81.0}, Row{"quarter-inch-code-cloth", 0.215, 5.46, 74.0},
          Row{"eighth-inch-cloth", 0.108, 2.74, 74.6}, Row{"eighth-inch-heavy-cloth", 0.097, 2.46, 60.2},
          Row{"screen-14", 0.0604, 1.53, 71.6}, Row{"screen-16", 0.0515, 1.31, 67.9}, Row{"screen-18", 0.0446, 1.13, 64.3},
          Row{"screen-18-16", 0.0446, 1.13, 66.1}, Row{"screen-20", 0.036, 0.91, 51.8}}) {
        const MeshKind* mesh = shipped_meshes().find(row.id);
        ASSERT_NE(mesh, nullptr) << row.id;
        EXPECT_NEAR(mesh->opening() / 0.0254, row.inches, 0.0005) << row.id;
        EXPECT_NEAR(mesh->opening() * 1000, row.millimeters, 0.0051) << row.id;
        EXPECT_NEAR(mesh->open_share() * 100, row.percent, 0.051) << row.id;
    }
    EXPECT_EQ(shipped_meshes().rows.size(), 11U);
}

/// The 66.2 % of 18 x 16 mesh that goes about comes from openings rounded to 0.0446 in and 0.0515 in.
TEST(ShippedMeshes, RoundedOpeningsMakeALittleMore) {
    EXPECT_NEAR(0.0446 * 18 * 0.0515 * 16 * 100, 66.2, 0.051);
    EXPECT_NEAR(shipped_meshes().find("screen-18-16")->open_share() * 100, 66.2, 0.12);
}

/// A maker's figure: 4 mesh of 0.063 in wire opens 0.187 in.
TEST(ShippedMeshes, FollowThePublishedExample) {
    MeshKind mesh;
    mesh.counts = {4, 4};
    mesh.wire = 0.063 * 0.0254;
    EXPECT_NEAR(mesh.opening() / 0.0254, 0.187, 1e-12);
}

/// Treatments that are meshes state the opening of one that is in the table.
TEST(ShippedMeshes, HaveThoseOfTheTreatments) {
    for (const Treatment& treatment : shipped_treatments().rows) {
        if (treatment.leaves != Treatment::Leaves::mesh || treatment.opening == 0 || treatment.id == "mesh-insert") continue;
        EXPECT_TRUE(std::any_of(shipped_meshes().rows.begin(), shipped_meshes().rows.end(), [&](const MeshKind& mesh) {
            return std::abs(mesh.opening() - treatment.opening) < 0.0051e-3 * 2;
        })) << treatment.id;
    }
}

}  // namespace
}  // namespace seamward::test
