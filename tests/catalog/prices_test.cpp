// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/prices.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "base/file_io.h"
#include "catalog/shipped.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

PriceBook changed(const std::string& text) { return read_price_book("catalog: prices\n" + text, "mine.yaml", shipped_prices()); }

/// The caret in the text is where the only fault must stand.
void expect_fault(const std::string& marked_text, std::string_view what, std::string_view mend) {
    const MarkedText marked("catalog: prices\n" + marked_text);
    const auto faults = faults_of([&] { (void)read_price_book(marked.text, "mine.yaml", shipped_prices()); });
    EXPECT_TRUE(only_fault(faults, marked.places.at(0), what, mend)) << marked_text;
}

TEST(ShippedPrices, AreWhole) {
    const PriceBook& book = shipped_prices();
    EXPECT_NE(book.name.find("Invented"), std::string::npos);
    EXPECT_GT(book.labor_per_hour.cents, 0);
    EXPECT_GT(book.call_out.cents, 0);
    EXPECT_GT(book.valid_days, 0U);
    for (const double share : {book.waste, book.overhead, book.tax, book.deposit}) {
        EXPECT_GT(share, 0);
        EXPECT_LT(share, 1);
    }
    for (const Material& material : book.materials) {
        EXPECT_FALSE(material.name.empty()) << material.id;
        EXPECT_GT(material.holds, 0) << material.id;
        EXPECT_GT(material.price.cents, 0) << material.id;
        if (material.in_case > 0) {
            EXPECT_LT(material.case_price, material.price * material.in_case) << material.id;
        }
        EXPECT_EQ(book.find(material.id), &material);
    }
    EXPECT_EQ(book.find("gold"), nullptr);
}

/// 10.1 fl oz of 29.5735 cm3; 331 in3 of 16.387 cm3; 20 ft; 6 ft2.
TEST(ShippedPrices, HoldWhatThePackSays) {
    const auto holds = [](const char* id) { return shipped_prices().find(id)->holds; };
    EXPECT_NEAR(holds("sealant"), 298.6926e-6, 1e-10);
    EXPECT_NEAR(holds("foam"), 5.42412e-3, 1e-8);
    EXPECT_NEAR(holds("backer-rod-1"), 6.096, 1e-12);
    EXPECT_NEAR(holds("sheet-metal"), 0.557418, 1e-6);
    EXPECT_EQ(holds("screw"), 100);
    EXPECT_EQ(shipped_prices().find("screw")->by, Material::By::piece);
}

TEST(OwnPrices, ReplaceEntriesAndKeepTheRest) {
    const PriceBook book = changed(R"(name: "Shop prices 2027"
labor_per_hour: $92.50
waste: 12.5 %
materials:
  - {id: sealant, price: $8.25}
  - {id: foam, unit: can, holds: 24 fl oz, price: $12.00, case: {units: 12, price: $130.00}}
)");
    EXPECT_EQ(book.name, "Shop prices 2027");
    EXPECT_EQ(book.labor_per_hour.cents, 9250);
    EXPECT_EQ(book.waste, 0.125);
    EXPECT_EQ(book.call_out, shipped_prices().call_out);
    EXPECT_EQ(book.materials.size(), shipped_prices().materials.size());
    const Material& sealant = *book.find("sealant");
    EXPECT_EQ(sealant.price.cents, 825);
    EXPECT_EQ(sealant.unit, "cartridge");
    EXPECT_EQ(sealant.holds, shipped_prices().find("sealant")->holds);
    EXPECT_EQ(sealant.in_case, 0U);  // what a case costs beside the user's own price is not known
    EXPECT_NEAR(book.find("foam")->holds, 709.7647e-6, 1e-9);
    EXPECT_EQ(book.find("foam")->case_price.cents, 13000);
    EXPECT_EQ(book.find("mortar")->price, shipped_prices().find("mortar")->price);
}

TEST(OwnPrices, MayChangeNothing) {
    const PriceBook book = changed("");
    EXPECT_EQ(book.name, shipped_prices().name + ", some replaced");
    EXPECT_EQ(book.labor_per_hour, shipped_prices().labor_per_hour);
}

TEST(OwnPrices, FaultsNameTheirPlaceAndTheMending) {
    expect_fault("^labour_per_hour: $92.50\n", "unknown key \"labour_per_hour\"", "did you mean labor_per_hour?");
    expect_fault("labor_per_hour: ^92.50\n", "labor_per_hour", "$92.50");
    expect_fault("waste: ^0.1\n", "waste", "%");
    expect_fault("deposit: ^130 %\n", "more than 100 %", "");
    expect_fault("valid_days: ^3651\n", "valid_days is more than 3650", "");
    expect_fault("warranty_months: ^1201\n", "warranty_months is more than 1200", "");
    expect_fault("materials: [{id: ^sealent, price: $1.00}]\n", "unknown material \"sealent\"", "did you mean sealant?");
    expect_fault("materials: [^{id: sealant}]\n", "material has no price", "add price");
    expect_fault("materials: [{id: sealant, price: $1.00}, ^{id: sealant, price: $2.00}]\n", "sealant stands twice", "keep one");
    expect_fault("materials: [{id: sealant, price: $1.00, unit: can, holds: ^20 ft}]\n", "counted by volume", "10.1 fl oz");
    expect_fault("materials: [{id: screw, price: $1.00, unit: box, holds: ^many pieces}]\n", "holds", "");
    expect_fault("materials: [^{id: sealant, price: $1.00, unit: can}]\n", "belong together", "both");
    expect_fault("materials: [{id: sealant, price: $1.00, case: ^{units: 12}}]\n", "case has no price", "add price");
    expect_fault("materials: [{id: sealant, price: $1.00, unit: can, holds: ^0 ml}]\n", "more than 0", "");
    expect_fault("materials: [{id: sealant, price: $1.00, unit: can, holds: ^2000 m3}]\n", "more than 1000 m3", "unit");
}

TEST(OwnPrices, AllFaultsAtOnce) {
    const auto faults = faults_of([] { (void)changed("waste: 3\ntax: 4\nmaterials: [{id: x, price: $1.00}]\n"); });
    EXPECT_EQ(faults.size(), 3U) << listing(faults);
}

TEST(OwnPrices, AnotherFileIsNoPriceBook) {
    EXPECT_FALSE(faults_of([] { (void)read_price_book("seamward: 1\n", "job.yaml", shipped_prices()); }).empty());
    EXPECT_FALSE(faults_of([] { (void)read_price_book("catalog: pests\n", "pests.yaml", shipped_prices()); }).empty());
    EXPECT_FALSE(faults_of([] { (void)read_price_book("- a\n", "list.yaml", shipped_prices()); }).empty());
}

/// A book that stands alone says everything.
TEST(PriceBook, NeedsEveryKeyWhenNothingIsBehindIt) {
    const auto faults = faults_of([] { (void)read_price_book("catalog: prices\n", "prices.yaml"); });
    EXPECT_EQ(faults.size(), 11U) << listing(faults);
}

TEST(ReadPrices, FromAFileOnDisk) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.path() / "mine.yaml";
    std::ofstream(path) << "catalog: prices\ncall_out: $120.00\n";
    EXPECT_EQ(read_prices(path, "mine.yaml").call_out.cents, 12000);
    const auto faults = faults_of([&] { (void)read_prices(folder.path() / "none.yaml", "none.yaml"); });
    EXPECT_EQ(faults.size(), 1U);
}

/// The book of docs/prices.md, and what the page says of cases.
TEST(OwnPrices, TheExampleOfThePageIsRight) {
    const std::filesystem::path page = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "docs/prices.md";
    const std::string text = read_file(page, page.string(), 1 << 20);
    const std::size_t begin = text.find("```yaml\n") + 8;
    const PriceBook book =
        read_price_book(text.substr(begin, text.find("```", begin) - begin), "docs/prices.md", shipped_prices());
    EXPECT_EQ(book.labor_per_hour.cents, 9250);
    EXPECT_EQ(book.find("screw")->holds, 250);
    EXPECT_EQ(book.find("sealant")->case_price.cents, 8700);
    EXPECT_EQ(shipped_prices().find("sealant")->price.cents, 950);
    EXPECT_EQ(shipped_prices().find("sealant")->case_price.cents, 9900);
}

TEST(ParseVolume, KnowsTheUnitsOfPacks) {
    EXPECT_DOUBLE_EQ(*parse_volume("300 ml"), 300e-6);
    EXPECT_DOUBLE_EQ(*parse_volume("300cm3"), 300e-6);
    EXPECT_DOUBLE_EQ(*parse_volume("5.4 l"), 5.4e-3);
    EXPECT_DOUBLE_EQ(*parse_volume("0.02 m3"), 0.02);
    EXPECT_DOUBLE_EQ(*parse_volume("1 gal"), 231 * 16.387064e-6);
    EXPECT_DOUBLE_EQ(*parse_volume("128 fl oz"), *parse_volume("1 gal"));
    EXPECT_DOUBLE_EQ(*parse_volume("1728 in3"), *parse_volume("1 ft3"));
    for (const char* wrong : {"", "5", "ml", "5 oz", "-5 ml", "5 5 ml", "inf l", "5 mml"})
        EXPECT_FALSE(parse_volume(wrong)) << wrong;
}

TEST(ShippedTreatments, NameFeaturesAndMaterialsThatExist) {
    for (const Treatment& row : shipped_treatments().rows) {
        for (const auto& features : {row.fits.features, row.fits.not_at}) {
            for (const std::string& id : features) EXPECT_NE(shipped_features().find(id), nullptr) << row.id << ' ' << id;
        }
        for (const Take& take : row.takes) {
            if (take.as == Take::As::rod) continue;
            EXPECT_NE(shipped_prices().find(take.material), nullptr) << row.id << ' ' << take.material;
        }
    }
    for (const JointFigure& figure : shipped_joints().rows) {
        if (figure.kind == JointFigure::Kind::rod) {
            EXPECT_NE(shipped_prices().find(figure.id), nullptr) << figure.id;
        }
    }
}

/// Materials are counted in the price book as their treatments count them.
TEST(ShippedTreatments, CountAsThePriceBookDoes) {
    using By = Material::By;
    constexpr By by[] = {By::volume, By::length, By::volume, By::area, By::volume, By::piece, By::length, By::piece, By::piece};
    for (const Treatment& row : shipped_treatments().rows) {
        for (const Take& take : row.takes) {
            const Material* material = shipped_prices().find(take.as == Take::As::rod ? "backer-rod-2" : take.material);
            ASSERT_NE(material, nullptr);
            EXPECT_EQ(material->by, by[static_cast<std::size_t>(take.as)]) << row.id << ' ' << take.material;
        }
    }
}

/// What the table of features calls usual is not ruled out at that feature.
TEST(ShippedTreatments, AreNotKeptFromWhereTheyAreUsual) {
    for (const Feature& feature : shipped_features().rows) {
        for (const FeatureGap& gap : feature.gaps) {
            const Treatment* usual = shipped_treatments().find(gap.usual);
            if (usual == nullptr) continue;
            const std::vector<std::string>& not_at = usual->fits.not_at;
            EXPECT_TRUE(std::find(not_at.begin(), not_at.end(), feature.id) == not_at.end()) << feature.id << ' ' << usual->id;
            EXPECT_TRUE(usual->fits.shapes[static_cast<std::size_t>(gap.shape)]) << feature.id << ' ' << usual->id;
        }
    }
}

/// Clear openings are an inch through the count less the wire, to a hundredth of a millimeter.
TEST(ShippedTreatments, MeshesOpenAsTheirWireSays) {
    struct Row {
        const char* id;
        double count, wire;  ///< to the inch, inches
    };
    constexpr Row rows[] = {
        {"mesh-1-4", 4, 0.035}, {"mesh-1-8", 8, 0.028}, {"mesh-14", 14, 0.011}, {"mesh-16", 16, 0.011}, {"mesh-20", 20, 0.014}};
    for (const Row& row : rows)
        EXPECT_NEAR(shipped_treatments().find(row.id)->opening, (1 / row.count - row.wire) * 0.0254, 5.1e-6) << row.id;
}

}  // namespace
}  // namespace seamward::test
