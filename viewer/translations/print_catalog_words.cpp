// SPDX-License-Identifier: GPL-3.0-or-later
// Prints the texts of the shipped tables and the fixed words of the engine as lupdate reads them, under the context "catalog".
#include <iostream>
#include <set>
#include <string>

#include "base/shapes.h"
#include "base/survey.h"
#include "catalog/duties.h"
#include "catalog/prices.h"
#include "catalog/shipped.h"
#include "plan/work_order.h"

namespace {

using Texts = std::set<std::string>;

void add_engine_words(Texts& texts) {
    for (int duty = 1; duty <= static_cast<int>(seamward::Duty::operable); ++duty)
        texts.insert(seamward::duty_words(static_cast<seamward::Duty>(duty)));
    for (const seamward::Shape& shape : {seamward::Shape(seamward::Slot{}), seamward::Shape(seamward::Hole{}),
                                         seamward::Shape(seamward::Ring{}), seamward::Shape(seamward::Mesh{})})
        texts.insert(seamward::shape_word(shape));
    for (int zone = 0; zone <= static_cast<int>(seamward::WorkZone::rooms); ++zone)
        texts.insert(seamward::zone_words(static_cast<seamward::WorkZone>(zone)));
    // What parts of described houses are usually made of.
    texts.insert({"block", "brick", "concrete", "drywall", "earth", "fascia", "glass", "membrane", "metal", "shingle", "stucco",
                  "tile", "wood"});
}

void add_treatments(Texts& texts) {
    for (const seamward::Treatment& row : seamward::shipped_treatments().rows) {
        texts.insert({row.name, row.conditions});
        texts.insert(row.steps.begin(), row.steps.end());
        texts.insert(row.tools.begin(), row.tools.end());
        texts.insert(row.protection.begin(), row.protection.end());
        for (const seamward::Caution& caution : row.cautions) texts.insert(caution.text);
    }
}

void add_rules(Texts& texts) {
    for (const seamward::DutyRow& row : seamward::shipped_duties().rows) texts.insert({row.name, row.why, row.instead});
    for (const seamward::SiteCaution& row : seamward::shipped_site_cautions().rows) texts.insert(row.text);
    for (const seamward::Removal& row : seamward::shipped_removals().rows) {
        texts.insert(row.how);
        for (const seamward::Caution& caution : row.cautions) texts.insert(caution.text);
        for (const seamward::ClosedSeason& season : row.seasons) texts.insert(season.why);
    }
}

/// As a C++ string.
std::string quoted(const std::string& text) {
    std::string made = "\"";
    for (const char letter : text) {
        if (letter == '"' || letter == '\\') made += '\\';
        made += letter;
    }
    return made + '"';
}

}  // namespace

int main() {
    Texts texts;
    for (const seamward::Pest& row : seamward::shipped_pests().rows) texts.insert(row.name);
    for (const seamward::Gauge& row : seamward::shipped_gauges().rows) texts.insert(row.name);
    for (const seamward::MeshKind& row : seamward::shipped_meshes().rows) texts.insert(row.name);
    for (const seamward::Feature& row : seamward::shipped_features().rows) {
        texts.insert({row.name, row.caution.text});
        for (const seamward::FeatureGap& gap : row.gaps) texts.insert(gap.never.text);
    }
    add_engine_words(texts);
    add_treatments(texts);
    add_rules(texts);
    for (const seamward::Material& row : seamward::shipped_prices().materials) texts.insert({row.name, row.unit});
    texts.erase("");
    for (const std::string& text : texts) std::cout << "QT_TRANSLATE_NOOP(\"catalog\", " << quoted(text) << ");\n";
    return std::cout.good() ? 0 : 1;
}
