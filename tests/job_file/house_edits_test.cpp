// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <algorithm>

#include "edit_checks.h"
#include "house/read_description.h"
#include "job_file/job_edits.h"

namespace seamward::test {
namespace {

namespace fs = std::filesystem;

const fs::path models = fs::path(SEAMWARD_SOURCE_FOLDER) / "models";

std::string fault_of(const std::string& text, const Edit& edit, const fs::path& path = "house.yaml") {
    try {
        (void)apply(text, path, edit);
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

const std::string small =
    "seamward-house: 1\nfeatures:\n"
    "  # by the tap\n"
    "  - {id: bibb,  type: hose-bibb, on: north-wall, along: 12 ft 6 in, up: 0.4 m }   # old\n"
    "  - id: light\n    type: recessed-light   # two of them\n    at: [6 m, 9.6 m]\n    count: 2\n";

TEST(HouseEdits, AddWidthsThatWereMeasured) {
    const std::string before = text_of(models / "wall-corner.yaml");
    AddFeature spout{.name = "spout", .type = "tub-spout", .on = "wet-partition", .along = "0.5 m", .side = "bath"};
    const HouseDescription plain = parse_house_yaml(apply(before, "house.yaml", spout).text, "house");
    spout.measured = {{plain.features.back().type->gaps.front().id, "1/16 in"}};
    const Edited after = apply(before, "house.yaml", spout);
    check_change(before, after);
    const HouseDescription house = parse_house_yaml(after.text, "house");
    EXPECT_EQ(house.features.back().id, "spout");
    EXPECT_EQ(house.features.back().gaps.front().width, 0.0254 / 16);
    EXPECT_EQ(house.features.back().gaps.front().evidence.how, Evidence::How::measured);
    EXPECT_NE(plain.features.back().gaps.front().evidence.how, Evidence::How::measured);
    spout.measured.front().second = "2";
    EXPECT_NE(fault_of(before, spout).find("unit"), std::string::npos);
}

TEST(HouseEdits, ChangeOneLineAndNothingElseOfIt) {
    ChangeFeature edit{.id = "bibb"};
    edit.along = "3.81 m";  // the same in other words
    EXPECT_EQ(apply(small, "house.yaml", edit).text, small);
    edit.along = "4 m";
    edit.name = "tap";
    Edited after = apply(small, "house.yaml", edit);
    check_change(small, after);
    std::string wanted = small;
    wanted.replace(wanted.find("12 ft 6 in, up: 0.4 m"), 21, "4 m, up: 0.4 m, name: tap");
    EXPECT_EQ(after.text, wanted);
    // To something level: the place on the wall is forgotten.
    ChangeFeature level{.id = "bibb"};
    level.on = "ceiling";
    level.along = level.up = "";
    level.at = {1.5, 2};
    after = apply(small, "house.yaml", level);
    EXPECT_NE(after.text.find("{id: bibb,  type: hose-bibb, on: ceiling, at: [1.5 m, 2 m] }   # old\n"), std::string::npos)
        << after.text;
    // And back to a wall.
    ChangeFeature wall{.id = "light"};
    wall.on = "north-wall";
    wall.along = "2 m";
    after = apply(small, "house.yaml", wall);
    EXPECT_EQ(after.text.find("9.6"), std::string::npos);
    EXPECT_NE(after.text.find("type: recessed-light   # two of them\n"), std::string::npos);
    wall.along = "2";
    EXPECT_NE(fault_of(small, wall).find("along"), std::string::npos);
    EXPECT_NE(fault_of(small, ChangeFeature{.id = "lamp"}).find("no feature"), std::string::npos);
}

TEST(HouseEdits, RemoveOneLineWithWhatTheJobSaysOfIt) {
    const RemoveFeature edit{.id = "light", .gaps = {"light-a", "light-b"}};
    EXPECT_EQ(apply(small, "house.yaml", edit).text, small.substr(0, small.find("  - id: light")));
    const std::string job =
        "seamward: 1\nhouse: house.yaml\ngaps:\n  - {id: light-a, note: x}  # a\n  - {id: bibb, note: y}  # b\n"
        "closed: [{gap: light-b}, {gap: bibb}]\n";
    EXPECT_EQ(apply(job, "job.yaml", edit).text,
              "seamward: 1\nhouse: house.yaml\ngaps:\n  - {id: bibb, note: y}  # b\nclosed: [{gap: bibb}]\n");
    // What stands between two entries that go stays as it is.
    const std::string apart =
        "house: house.yaml\ngaps:\n  - {id: light-a}\n  - {id: bibb,  note: y}  # b\n  # c\n  - {id: sink, photo: 'p.jpg'}\n"
        "  - {id: light-b}\n  - {id: last}\n";
    EXPECT_EQ(apply(apart, "job.yaml", edit).text,
              "house: house.yaml\ngaps:\n  - {id: bibb,  note: y}  # b\n  # c\n  - {id: sink, photo: 'p.jpg'}\n  - {id: last}\n");
    EXPECT_NE(fault_of(job + "occupied: [{way: light-b}]\n", edit, "job.yaml").find("occupied"), std::string::npos);
    EXPECT_TRUE(is_of_house(edit) && is_of_job(edit));
    EXPECT_FALSE(is_of_job(ChangeFeature{.id = "light"}));
    EXPECT_FALSE(is_of_house(RemoveGap{"light-a"}));
    EXPECT_NE(fault_of(small, RemoveGap{"light-a"}).find("describes a house"), std::string::npos);
    EXPECT_NE(fault_of(small, RemoveFeature{.id = "lamp", .gaps = {}}).find("no feature"), std::string::npos);
}

/// In each shipped house every feature can be taken out and given another name; comments stay, and all others stay as they are.
TEST(HouseEdits, ReachEveryFeatureOfTheShippedHouses) {
    for (const char* name : {"quillfeather", "larkspur", "thimblewick", "bramblequoin", "tern-street", "wall-corner"}) {
        const fs::path path = models / (std::string(name) + ".yaml");
        const std::string before = text_of(path);
        const HouseDescription house = parse_house_yaml(before, name);
        for (std::size_t i = 0; i < house.features.size(); i += 7) {
            const std::string& id = house.features[i].id;
            const Edited gone = apply(before, path, RemoveFeature{.id = id, .gaps = {}});
            check_change(before, gone);
            const HouseDescription without = parse_house_yaml(gone.text, name);
            EXPECT_EQ(without.features.size() + 1, house.features.size()) << id;
            EXPECT_EQ(std::ranges::count(without.features, id, &FeatureDescription::id), 0) << id;
            ChangeFeature rename{.id = id};
            rename.name = "another \"name\"";
            const Edited renamed = apply(before, path, rename);
            EXPECT_EQ(comments(renamed.text), comments(before)) << id;
            EXPECT_EQ(parse_house_yaml(renamed.text, name).features[i].name, *rename.name) << id;
        }
    }
}

}  // namespace
}  // namespace seamward::test
