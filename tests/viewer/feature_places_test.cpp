// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/feature_places.h"

#include <gtest/gtest.h>

#include <QFile>
#include <algorithm>
#include <set>

#include "base/diagnostics.h"
#include "catalog/shipped.h"
#include "document/feature_words.h"
#include "document/units_text.h"
#include "document/usual_features.h"
#include "house/build_house.h"
#include "house/read_description.h"

namespace seamward::viewer::test {
namespace {

std::string text_of(const std::string& model) {
    QFile file(QStringLiteral(SEAMWARD_SOURCE_FOLDER "/models/%1.yaml").arg(QString::fromStdString(model)));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << model;
    return file.readAll().toStdString();
}

/// Why the house cannot stand with an entry more; empty: it can.
std::string fault_of(const std::string& house, const AddFeature& entry, const std::set<std::string>& gaps = {}) {
    try {
        const Edited edited = apply(house, "house.yaml", entry);
        const House built = build_house(parse_house_yaml(edited.text, "house.yaml"), {}, Make::survey, RunContext());
        for (const Gap& gap : built.survey.gaps) {
            if (!gaps.empty() && gap.id.starts_with(edited.id) && !gaps.contains(gap.id)) return "another gap, " + gap.id;
        }
        return "";
    } catch (const BadInput& bad) {
        return bad.what();
    }
}

double height_of(const std::string& house, const char* gap) {
    const House built = build_house(parse_house_yaml(house, "house"), {}, Make::survey, RunContext());
    return std::ranges::find(built.survey.gaps, gap, &Gap::id)->at->z;
}

TEST(FeaturePlaces, ReadAPlaceFromAPoint) {
    const FeaturePlaces places(text_of("quillfeather"), "house");
    const auto words = [&](const Point& at, const char* part, bool along = true) {
        const auto place = places.place(at, part);
        if (!place) return std::string("none");
        const bool level = place->level();
        return place_words(*place, {along && !level, along && !level, level}).toStdString();
    };
    write_lengths_as(Lengths::millimeters);
    const double soffit = height_of(text_of("quillfeather"), "soffit-to-wall-south");
    EXPECT_EQ(words({14.8, 12.03, 0.4}, "north-wall/stucco"), "north wall, 3.2 m from the east corner, 400 mm up");
    EXPECT_EQ(words({14.8, 11.9, 0.4}, "north-wall/drywall-1"),
              "north wall, inside, primary bath, 3.2 m from the east corner, 400 mm up");
    EXPECT_EQ(words({4, 6.663, 1}, "garage-north/drywall"), "garage north, toward hall, 3.9 m from the west end, 1 m up");
    EXPECT_EQ(words({4, 10, 2.74}, "kitchen/ceiling").substr(0, 16), "ceiling, kitchen");
    EXPECT_EQ(words({4, 10, 0}, "slab").substr(0, 14), "floor, kitchen");
    EXPECT_EQ(words({9, 3, 3.95}, "roof/plane-1").substr(0, 4), "roof");
    EXPECT_EQ(words({7.3, 0, 1}, "front-door/leaf", false), "front door");
    EXPECT_EQ(words({5, -0.4, soffit}, "south-wall/soffit", false), "eave, south wall");
    EXPECT_EQ(words({-2.6, 12, 0.5}, "block-wall/2/left", false), "block wall");
    EXPECT_EQ(words({5, -3, -0.15}, "paving/driveway"), "none");
    write_lengths_as(Lengths::inches_first);
}

/// Each type that is offered at a place of the demo goes there, with the ids that are told ahead, but for those that find the
/// place taken or too small.
TEST(FeaturePlaces, OfferOnlyWhatCanStandThere) {
    struct Spot {
        const char* model;
        Point at;
        int least;  ///< types that go there
    };
    const double soffit = height_of(text_of("quillfeather"), "soffit-to-wall-south");
    const double upper = height_of(text_of("larkspur"), "register-primary");
    const std::vector<Spot> spots{{"quillfeather", {15, 12.03, 1.2}, 12},    {"quillfeather", {15, 11.9, 1.2}, 20},
                                  {"quillfeather", {4, 6.663, 1.2}, 20},     {"quillfeather", {4.3, 9.3, 2.74}, 8},
                                  {"quillfeather", {4.3, 9.3, 0}, 5},        {"quillfeather", {9, 3, 3.95}, 2},
                                  {"quillfeather", {7.3, 0, 1}, 1},          {"quillfeather", {10.2, 0, 1.4}, 2},
                                  {"quillfeather", {11.8, -0.4, soffit}, 3}, {"quillfeather", {18.02, 4, 1.2}, 2},
                                  {"quillfeather", {-2.6, 12, 0.5}, 1},      {"larkspur", {12, 8.5, upper}, 8},
                                  {"larkspur", {12, 8.5, upper - 2.5}, 4},   {"larkspur", {14.02, 6.9, upper + 0.9}, 1},
                                  {"bramblequoin", {7.5, -0.08, -0.15}, 4},  {"bramblequoin", {7.5, 0, -0.45}, 4}};
    for (const Spot& spot : spots) {
        const std::string house = text_of(spot.model);
        const auto place = FeaturePlaces(house, "house").place(spot.at, "");
        ASSERT_TRUE(place) << spot.model << ' ' << spot.at.x << ' ' << spot.at.y;
        int placed = 0;
        for (const Feature* type : features_for(*place)) {
            AddFeature entry = entry_of(*type, *place, meters_text(place->along), meters_text(place->up));
            entry.name = "new one";
            std::set<std::string> gaps;
            const std::vector<const FeatureGap*> rows = gaps_of(*type, *place);
            for (const FeatureGap* row : rows) gaps.insert(rows.size() == 1 ? "new-one" : "new-one-" + row->id);
            const std::string fault = fault_of(house, entry, gaps);
            placed += fault.empty() ? 1 : 0;
            const auto tells = [&](const char* words) { return fault.find(words) != std::string::npos; };
            EXPECT_TRUE(fault.empty() || tells("runs into") || tells("does not fit on") || tells("reaches past") ||
                        tells("stands framing") || tells("past the edge of") || tells("no room for it"))
                << place->called << ' ' << type->id << ": " << fault;
        }
        EXPECT_GE(placed, spot.least) << spot.model << ' ' << place->called;
    }
}

/// Where things of the shipped houses are, they could be added.
TEST(FeaturePlaces, KnowTheHostsOfWhatIsThere) {
    for (const char* name : {"quillfeather", "larkspur", "thimblewick", "bramblequoin", "tern-street"}) {
        const std::string text = text_of(name);
        const FeaturePlaces places(text, name);
        const HouseDescription described = parse_house_yaml(text, name);
        const House built = build_house(described, {}, Make::survey, RunContext());
        std::size_t right = 0, all = 0;
        std::string wrong;
        for (const Gap& gap : built.survey.gaps) {
            const Feature* type = shipped_features().find(gap.feature);
            if (type == nullptr || !gap.at) continue;
            const auto place = places.place(*gap.at, "");
            const bool known = place && std::ranges::any_of(type->hosts, [&](Host host) { return place->is(host); });
            ++all;
            right += known ? 1 : 0;
            if (!known) wrong += ' ' + gap.id;
        }
        EXPECT_GT(right, all * 9 / 10) << name << ':' << wrong;
    }
}

}  // namespace
}  // namespace seamward::viewer::test
