// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/shipped.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace seamward::test {
namespace {

template <class Row>
const CatalogSource& source_of(const Table<Row>& table, const std::string& id) {
    const auto found =
        std::find_if(table.sources.begin(), table.sources.end(), [&](const CatalogSource& s) { return s.id == id; });
    if (found == table.sources.end()) throw std::out_of_range("no source " + id);
    return *found;
}

CatalogSource::Seen slit_seen(const char* id) { return source_of(shipped_pests(), shipped_pests().find(id)->slit_source).seen; }
CatalogSource::Seen hole_seen(const char* id) { return source_of(shipped_pests(), shipped_pests().find(id)->hole_source).seen; }

/// Job files of every edition may name these; docs/job-file.md and the scenarios do.
constexpr const char* required_pests[] = {
    "bark-scorpion", "bark-scorpion-young", "american-cockroach", "german-cockroach", "house-mouse", "roof-rat", "norway-rat",
    "bat",           "honey-bee",           "house-sparrow"};

bool is_an_id(const std::string& id) {
    return !id.empty() &&
           std::all_of(id.begin(), id.end(), [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; });
}

template <class Row>
void expect_in_order(const Table<Row>& table) {
    EXPECT_FALSE(table.edition.empty());
    EXPECT_FALSE(table.rows.empty());
    for (const CatalogSource& source : table.sources) {
        EXPECT_TRUE(is_an_id(source.id)) << source.id;
        EXPECT_FALSE(source.title.empty()) << source.id;
        EXPECT_FALSE(source.publisher.empty()) << source.id;
        EXPECT_EQ(
            std::count_if(table.sources.begin(), table.sources.end(), [&](const CatalogSource& s) { return s.id == source.id; }),
            1)
            << source.id;
    }
    for (const Row& row : table.rows) {
        EXPECT_TRUE(is_an_id(row.id)) << row.id;
        EXPECT_FALSE(row.name.empty()) << row.id;
        EXPECT_EQ(table.find(row.id), &row) << row.id;
    }
}

TEST(ShippedTables, Load) {
    expect_in_order(shipped_pests());
    expect_in_order(shipped_gauges());
    expect_in_order(shipped_treatments());
}

TEST(ShippedTables, AreReadOnce) { EXPECT_EQ(&shipped_pests(), &shipped_pests()); }

TEST(ShippedPests, KeepTheIdsThatJobFilesName) {
    for (const char* id : required_pests) EXPECT_NE(shipped_pests().find(id), nullptr) << id;
}

TEST(ShippedPests, NameASourceForEveryNumber) {
    for (const Pest& pest : shipped_pests().rows) {
        EXPECT_NO_THROW((void)source_of(shipped_pests(), pest.slit_source)) << pest.id;
        EXPECT_NO_THROW((void)source_of(shipped_pests(), pest.hole_source)) << pest.id;
        EXPECT_FALSE(pest.scientific.empty()) << pest.id;
    }
    for (const Gauge& gauge : shipped_gauges().rows) EXPECT_NO_THROW((void)source_of(shipped_gauges(), gauge.source)) << gauge.id;
    for (const Treatment& row : shipped_treatments().rows)
        EXPECT_NO_THROW((void)source_of(shipped_treatments(), row.source)) << row.id;
}

TEST(ShippedPests, HaveSizesThatAnAnimalCanHave) {
    for (const Pest& pest : shipped_pests().rows) {
        EXPECT_GT(pest.size.slit, 0.0003) << pest.id;
        EXPECT_LE(pest.size.slit, pest.size.hole) << pest.id;
        EXPECT_LT(pest.size.hole, 0.1) << pest.id;
        EXPECT_GT(pest.margin, 0) << pest.id;
        EXPECT_LE(pest.margin, 0.5) << pest.id;
    }
}

/// None of these was seen in a document.
TEST(ShippedPests, NumbersFromMemorySaySo) {
    for (const char* id : {"bark-scorpion", "bark-scorpion-young", "desert-hairy-scorpion", "oriental-cockroach", "house-cricket",
                           "black-widow", "recluse-spider", "house-centipede", "desert-centipede", "silverfish", "earwig",
                           "argentine-ant", "carpenter-ant", "subterranean-termite", "yellowjacket", "house-gecko"}) {
        const Pest* pest = shipped_pests().find(id);
        ASSERT_NE(pest, nullptr) << id;
        EXPECT_EQ(slit_seen(id), CatalogSource::Seen::memory) << id;
        EXPECT_EQ(hole_seen(id), CatalogSource::Seen::memory) << id;
    }
    EXPECT_EQ(slit_seen("german-cockroach"), CatalogSource::Seen::memory);
    EXPECT_EQ(hole_seen("american-cockroach"), CatalogSource::Seen::memory);
    EXPECT_EQ(slit_seen("house-sparrow"), CatalogSource::Seen::memory);
    EXPECT_EQ(slit_seen("starling"), CatalogSource::Seen::memory);
}

TEST(ShippedPests, NumbersFromMemoryAreNeitherMeasuredNorSure) {
    for (const Pest& pest : shipped_pests().rows) {
        const bool slit = slit_seen(pest.id.c_str()) == CatalogSource::Seen::memory;
        const bool hole = hole_seen(pest.id.c_str()) == CatalogSource::Seen::memory;
        EXPECT_FALSE(slit && pest.slit_basis == Basis::measured) << pest.id;
        EXPECT_FALSE(hole && pest.hole_basis == Basis::measured) << pest.id;
        EXPECT_FALSE((slit || hole) && pest.confidence == Confidence::high) << pest.id;
    }
}

/// Who read a figure in the document itself, and who in one that repeats it or that was not named.
TEST(ShippedPests, NumbersSeenInDocumentsSayHow) {
    EXPECT_EQ(hole_seen("house-mouse"), CatalogSource::Seen::secondary);
    EXPECT_EQ(slit_seen("american-cockroach"), CatalogSource::Seen::secondary);
    EXPECT_EQ(hole_seen("honey-bee"), CatalogSource::Seen::secondary);
    EXPECT_EQ(hole_seen("house-sparrow"), CatalogSource::Seen::secondary);
    EXPECT_EQ(hole_seen("starling"), CatalogSource::Seen::secondary);
    for (const char* id : {"roof-rat", "norway-rat", "bat", "tree-squirrel", "snake"}) {
        EXPECT_EQ(hole_seen(id), CatalogSource::Seen::read) << id;
    }
    EXPECT_EQ(slit_seen("german-cockroach-nymph"), CatalogSource::Seen::read);
}

/// A publication that was not named cannot be looked up: the figure counts as unconfirmed.
TEST(ShippedPests, NumbersOfUnnamedPublicationsAreUnsure) {
    const auto unnamed = [](const std::string& id) { return source_of(shipped_pests(), id).publisher == "not named"; };
    for (const CatalogSource& source : shipped_pests().sources) {
        EXPECT_TRUE(!unnamed(source.id) || source.seen == CatalogSource::Seen::secondary) << source.id;
    }
    for (const Pest& pest : shipped_pests().rows) {
        if (!unnamed(pest.slit_source) && !unnamed(pest.hole_source)) continue;
        EXPECT_NE(pest.confidence, Confidence::high) << pest.id;
        EXPECT_NE(pest.note.find("unconfirmed"), std::string::npos) << pest.id;
    }
}

/// As the documents of the table give them, the smaller figure where there is a range. The young scorpion's slit is the
/// thickness of a card (ISO/IEC 7810).
TEST(ShippedPests, HaveTheSizesOfTheirSources) {
    struct Row {
        const char* id;
        double slit;
        double hole;
    };
    constexpr Row table[] = {{"bark-scorpion", 0.0015875, 0.00635},
                             {"bark-scorpion-young", 0.00076, 0.002},
                             {"house-mouse", 0.006, 0.006},
                             {"roof-rat", 0.0127, 0.0127},
                             {"norway-rat", 0.0127, 0.0127},
                             {"bat", 0.00635, 0.0127},
                             {"honey-bee", 0.003175, 0.0047625},
                             {"house-sparrow", 0.01905, 0.03175},
                             {"starling", 0.0254, 0.041275},
                             {"tree-squirrel", 0.0381, 0.0381},
                             {"snake", 0.00635, 0.00635}};
    for (const Row& row : table) {
        const Pest* pest = shipped_pests().find(row.id);
        ASSERT_NE(pest, nullptr) << row.id;
        EXPECT_EQ(pest->size.slit, row.slit) << row.id;
        EXPECT_EQ(pest->size.hole, row.hole) << row.id;
    }
    EXPECT_EQ(shipped_pests().find("american-cockroach")->size.slit, 0.003);
    EXPECT_EQ(shipped_pests().find("american-cockroach")->slit_basis, Basis::measured);
}

TEST(ShippedPests, RodentsGnawAndScorpionsClimb) {
    for (const char* id : {"house-mouse", "roof-rat", "norway-rat", "tree-squirrel"})
        EXPECT_TRUE(shipped_pests().find(id)->gnaws) << id;
    for (const char* id : {"bark-scorpion", "bark-scorpion-young"}) {
        EXPECT_TRUE(shipped_pests().find(id)->climbs) << id;
        EXPECT_FALSE(shipped_pests().find(id)->gnaws) << id;
    }
    for (const char* id : {"bat", "honey-bee", "house-sparrow"}) EXPECT_TRUE(shipped_pests().find(id)->flies) << id;
}

/// `closed: [{gap: bib, with: bead}]` stands in docs/job-file.md, and only a mesh states its opening there. The word mesh is for
/// a mesh of any count, which has no opening of its own; all others have one.
TEST(ShippedTreatments, OnlyMeshLeavesAnOpening) {
    EXPECT_NE(shipped_treatments().find("bead"), nullptr);
    for (const Treatment& treatment : shipped_treatments().rows) {
        EXPECT_EQ(treatment.leaves == Treatment::Leaves::mesh, treatment.id.starts_with("mesh")) << treatment.id;
        EXPECT_EQ(treatment.opening > 0, treatment.id.starts_with("mesh-")) << treatment.id;
    }
}

}  // namespace
}  // namespace seamward::test
