// SPDX-License-Identifier: GPL-3.0-or-later
// The tables of docs/catalog.md against those of engine/catalog, cell by cell and as written there.
#include <gtest/gtest.h>

#include "base/document.h"
#include "catalog/shipped.h"
#include "tests/docs/page.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

using Cells = std::vector<std::string>;

std::string text_at(Node mapping, std::string_view key) {
    const Node node = value_of(mapping, key);
    return node.present() ? std::string(node.text()) : "";
}

/// A table of engine/catalog as text, for what its reader turns into numbers.
class TableText {
public:
    explicit TableText(const std::string& name)
        : document_(parse_yaml(page("engine/catalog/" + name + ".yaml"), name)), rows_(value_of(document_.root(), name)) {
        value_of(document_.root(), "sources").for_each_item([&](Node source) {
            seen_[text_at(source, "id")] = text_at(source, "seen");
        });
    }

    [[nodiscard]] std::string edition() const { return text_at(document_.root(), "edition"); }
    [[nodiscard]] std::string seen(Node named) const { return seen_.at(text_at(named, "source")); }

    /// What the page must say, row by row.
    template <class CellsOf>
    [[nodiscard]] std::map<std::string, Cells> rows(CellsOf&& cells_of) const {
        std::map<std::string, Cells> rows;
        rows_.for_each_item([&](Node row) { rows[text_at(row, "id")] = cells_of(row); });
        return rows;
    }

private:
    Document document_;
    Node rows_;
    std::map<std::string, std::string> seen_;
};

void expect_same(const std::map<std::string, Cells>& shown, const std::map<std::string, Cells>& table) {
    EXPECT_FALSE(table.empty());
    for (const auto& [id, cells] : table) {
        if (shown.contains(id))
            EXPECT_EQ(shown.at(id), cells) << id;
        else
            ADD_FAILURE() << "the page has no row for " << id;
    }
    for (const auto& [id, cells] : shown) EXPECT_TRUE(table.contains(id)) << id << " is in no table";
}

TEST(CatalogPage, ShowsThePestsAsInTheirTable) {
    const TableText pests("pests");
    const auto table = pests.rows([&](Node row) {
        Cells cells{text_at(row, "name")};
        for (const char* key : {"slit", "hole"}) {
            const Node size = value_of(row, key);
            cells.push_back(text_at(size, "size"));
            cells.push_back(text_at(size, "basis") + ", " + pests.seen(size));
        }
        cells.push_back(text_at(row, "confidence"));
        return cells;
    });
    EXPECT_EQ(table.size(), shipped_pests().rows.size());
    const std::string text = page("docs/catalog.md");
    expect_same(table_below(text, "## Pests"), table);
    EXPECT_NE(text.find("Edition " + pests.edition() + '.'), std::string::npos);
}

TEST(CatalogPage, ShowsTheGaugesAsInTheirTable) {
    const auto table = TableText("gauges").rows([](Node row) {
        return Cells{text_at(row, "name"), text_at(row, "thickness"), text_at(row, "confidence")};
    });
    EXPECT_EQ(table.size(), shipped_gauges().rows.size());
    expect_same(table_below(page("docs/catalog.md"), "## Gauges"), table);
}

TEST(CatalogPage, ShowsTheTreatmentsAsInTheirTable) {
    const TableText treatments("treatments");
    const auto table = treatments.rows([&](Node row) {
        return Cells{text_at(row, "name"), text_at(row, "leaves") == "mesh" ? "openings of the mesh" : "nothing open",
                     text_at(row, "gnawed") == "true" ? "yes" : "no", treatments.seen(row)};
    });
    EXPECT_EQ(table.size(), shipped_treatments().rows.size());
    expect_same(table_below(page("docs/catalog.md"), "## Treatments"), table);
}

/// Place, shape, clear width, duty and usual treatment, as in features.yaml.
std::string gap_cell(Node gap) {
    std::string cell = text_at(gap, "at") + ' ' + text_at(gap, "shape") + ' ';
    for (const char* key : {"width", "diameter", "opening"}) cell += text_at(gap, key);
    for (const char* key : {"duty", "usual"}) {
        if (value_of(gap, key).present()) cell += ", " + text_at(gap, key);
    }
    return cell + (value_of(gap, "never").present() ? ", never" : "");
}

TEST(CatalogPage, ShowsTheFeaturesAsInTheirTable) {
    const auto table = TableText("features").rows([](Node row) {
        std::string hosts, gaps;
        value_of(row, "hosts").for_each_item([&](Node host) { hosts += (hosts.empty() ? "" : ", ") + std::string(host.text()); });
        value_of(row, "gaps").for_each_item([&](Node gap) { gaps += (gaps.empty() ? "" : "; ") + gap_cell(gap); });
        return Cells{text_at(row, "name"), hosts, gaps};
    });
    EXPECT_EQ(table.size(), shipped_features().rows.size());
    expect_same(table_below(page("docs/catalog.md"), "## Features"), table);
}

/// Every word for a place that a row may use is explained.
TEST(CatalogPage, ExplainsThePlacesOfGaps) {
    const std::string text = page("docs/catalog.md");
    const std::string places = text.substr(text.find("\nPlaces: "));
    for (int host = 0; host <= static_cast<int>(Host::duct); ++host) {
        for (const FeatureGap::At at : places_of(static_cast<Host>(host)))
            EXPECT_NE(places.find('`' + std::string(place_word(at)) + '`'), std::string::npos) << place_word(at);
    }
}

/// The page quotes what the table of treatments quotes.
TEST(CatalogPage, QuotesTheSourceOfWhatIsGnawed) {
    const std::string quote = "Rodents can chew through caulk, expanding foam, plastic, wood";
    std::string text = page("docs/catalog.md");
    for (char& c : text) c = c == '\n' ? ' ' : c;
    EXPECT_NE(text.find(quote), std::string::npos);
    EXPECT_NE(page("engine/catalog/treatments.yaml").find(quote), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
