// SPDX-License-Identifier: GPL-3.0-or-later
// Every text of the shipped tables and every fixed word of the engine has Spanish.
#include <gtest/gtest.h>

#include <algorithm>
#include <set>
#include <string>

#include "base/shapes.h"
#include "base/survey.h"
#include "catalog/prices.h"
#include "catalog/shipped.h"
#include "catalog/translator.h"

namespace seamward {
namespace {

/// Numbers of sections and editions, as 60.3(c)(5) and R806.1, are the same in all languages.
bool has_word(const std::string& text) {
    const auto small = [](char letter) { return letter >= 'a' && letter <= 'z'; };
    return std::adjacent_find(text.begin(), text.end(), [&](char a, char b) { return small(a) && small(b); }) != text.end();
}

class SpokenTables : public testing::Test {
protected:
    void expect(const std::string& text) {
        if (text.empty()) return;
        ++asked_;
        if (spanish_texts().find(text) == spanish_texts().end()) missing_.insert(text);
    }
    void expect(const std::vector<std::string>& texts) {
        for (const std::string& text : texts) expect(text);
    }
    /// Who published a document is said as it is; what it is called may be a sentence.
    void expect(const std::vector<CatalogSource>& sources) {
        for (const CatalogSource& source : sources) expect(source.title);
    }
    void TearDown() override {
        EXPECT_GT(asked_, 0U);
        for (const std::string& text : missing_)
            ADD_FAILURE() << "no Spanish; add a row to engine/catalog/spanish.yaml: " << text;
    }

private:
    std::size_t asked_ = 0;
    std::set<std::string> missing_;
};

TEST_F(SpokenTables, AnimalsAndThingsAtHand) {
    for (const Pest& row : shipped_pests().rows) expect(row.name);
    for (const Gauge& row : shipped_gauges().rows) expect(row.name);
    for (const MeshKind& row : shipped_meshes().rows) expect(row.name);
}

TEST_F(SpokenTables, Features) {
    for (const Feature& row : shipped_features().rows) {
        expect({row.name, row.caution.text});
        for (const FeatureGap& gap : row.gaps) expect({gap.name, gap.never.text});
    }
    expect(shipped_features().sources);
}

TEST_F(SpokenTables, Treatments) {
    for (const Treatment& row : shipped_treatments().rows) {
        expect({row.name, row.conditions, row.finish, row.colors});
        expect(row.steps);
        expect(row.tools);
        expect(row.protection);
        for (const Caution& caution : row.cautions) expect(caution.text);
    }
    expect(shipped_treatments().sources);
    expect(shipped_joints().sources);
}

TEST_F(SpokenTables, Duties) {
    for (const DutyRow& row : shipped_duties().rows) expect({row.name, row.why, row.instead});
    expect(shipped_duties().sources);
    expect(shipped_free_areas().sources);
}

TEST_F(SpokenTables, Provisions) {
    for (const Provision& row : shipped_provisions().rows) {
        expect({row.name, row.text, row.group, row.mend, row.document});
        for (const std::string& where : {row.edition, row.section}) {
            if (has_word(where)) expect(where);
        }
    }
    for (const Measure& row : shipped_measures().rows) expect({row.name, row.ask});
    expect(shipped_provisions().sources);
    expect(shipped_measures().sources);
}

TEST_F(SpokenTables, PlacesOfWorkAndAnimalsThatLeave) {
    for (const SiteCaution& row : shipped_site_cautions().rows) expect(row.text);
    for (const Removal& row : shipped_removals().rows) {
        expect(row.how);
        for (const Caution& caution : row.cautions) expect(caution.text);
        for (const ClosedSeason& season : row.seasons) expect(season.why);
    }
    expect(shipped_site_cautions().sources);
    expect(shipped_removals().sources);
}

TEST_F(SpokenTables, Materials) {
    for (const Material& row : shipped_prices().materials) expect({row.name, row.unit});
}

TEST_F(SpokenTables, WordsOfTheEngine) {
    for (int duty = 1; duty <= static_cast<int>(Duty::operable); ++duty) expect(duty_words(static_cast<Duty>(duty)));
    for (const Shape& shape : {Shape(Slot{}), Shape(Hole{}), Shape(Ring{}), Shape(Mesh{})}) expect(shape_word(shape));
    // What parts of described houses are usually made of.
    expect({"block", "brick", "concrete", "drywall", "earth", "fascia", "glass", "membrane", "metal", "shingle", "stucco", "tile",
            "wood"});
}

}  // namespace
}  // namespace seamward
