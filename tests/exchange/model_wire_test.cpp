// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/model_wire.h"

#include <gtest/gtest.h>

#include <cstring>
#include <limits>
#include <random>
#include <stdexcept>

#include "exchange/part_ids.h"
#include "tests/exchange/sample_parts.h"

namespace seamward::test {
namespace {

constexpr std::size_t many = 1000;

ReaderAnswer sample() {
    Model model;
    model.parts = {{.id = "wall", .name = "Wall", .ifc_class = "IfcWall", .global_id = "0", .mesh = box({0, 0, 0}, {1, 2, 3})}};
    model.rooms = {{.id = "room", .name = "Küche", .mesh = box({0, 0, 0}, {1, 1, 1})}};
    model.lost = {{"IfcDoor", 3, 1}};
    model.notes = {"a note"};
    return {.model = std::move(model)};
}

bool is_refused(const std::string& bytes, std::size_t most_triangles = many) {
    try {
        (void)answer_from_wire(bytes, most_triangles);
    } catch (const std::invalid_argument&) {
        return true;
    }
    return false;
}

TEST(ModelWire, ModelsComeThrough) {
    const ReaderAnswer answer = answer_from_wire(wire_bytes(sample()), many);
    ASSERT_TRUE(answer.model);
    const Model& model = *answer.model;
    ASSERT_EQ(model.parts.size(), 1U);
    EXPECT_EQ(model.parts[0].id, "wall");
    EXPECT_EQ(model.parts[0].ifc_class, "IfcWall");
    EXPECT_EQ(model.parts[0].mesh.triangles, sample().model->parts[0].mesh.triangles);
    EXPECT_EQ(model.parts[0].mesh.points.at(7).z, 3);
    ASSERT_EQ(model.rooms.size(), 1U);
    EXPECT_EQ(model.rooms[0].name, "Küche");
    ASSERT_EQ(model.lost.size(), 1U);
    EXPECT_EQ(model.lost[0].in_file, 3U);
    EXPECT_EQ(model.notes, std::vector<std::string>{"a note"});
}

TEST(ModelWire, RefusalsComeThrough) {
    const ReaderAnswer answer = answer_from_wire(wire_bytes({.what = "is bad", .mend = "mend it"}), many);
    EXPECT_FALSE(answer.model);
    EXPECT_EQ(answer.what, "is bad");
    EXPECT_EQ(answer.mend, "mend it");
}

TEST(ModelWire, TextsAreCutAndMadePrintable) {
    ReaderAnswer answer = sample();
    answer.model->parts[0].name = "a\x1b[31mb\xff\n" + std::string(2000, 'x');
    answer.model->notes[0] = std::string(999, 'x') + "ü";
    const Model model = *answer_from_wire(wire_bytes(answer), many).model;
    EXPECT_EQ(model.parts[0].name.substr(0, 9), "a?[31mb??");
    EXPECT_EQ(model.parts[0].name.size(), most_text_bytes);
    EXPECT_EQ(model.notes[0], std::string(999, 'x'));
}

TEST(ModelWire, WhatMakesNoSenseIsRefused) {
    for (const double bad : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity(), -1.1e8}) {
        ReaderAnswer answer = sample();
        answer.model->rooms[0].mesh.points[3].y = bad;
        EXPECT_TRUE(is_refused(wire_bytes(answer))) << bad;
    }
    ReaderAnswer answer = sample();
    answer.model->parts[0].mesh.triangles[5][1] = 8;
    EXPECT_TRUE(is_refused(wire_bytes(answer)));
    answer = sample();
    answer.model->parts[0].mesh.triangles.clear();
    EXPECT_TRUE(is_refused(wire_bytes(answer)));
    EXPECT_TRUE(is_refused(wire_bytes(sample()), 11));
    EXPECT_FALSE(is_refused(wire_bytes(sample()), 12));
    EXPECT_TRUE(is_refused(wire_bytes(sample()) + '\0'));
    EXPECT_TRUE(is_refused(""));
}

TEST(ModelWire, EveryCutIsRefused) {
    const std::string bytes = wire_bytes(sample());
    for (std::size_t size = 0; size < bytes.size(); ++size) EXPECT_TRUE(is_refused(bytes.substr(0, size))) << size;
}

/// Whatever a reader that was taken over may say: an answer that keeps its promises, or a refusal.
TEST(ModelWire, ChangedBytesNeverMakeAnUnsoundModel) {
    const std::string sound = wire_bytes(sample());
    std::mt19937 random(20260101);
    std::size_t refused = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string bytes = sound;
        for (int flips = 1 + static_cast<int>(random() % 3); flips > 0; --flips) {
            const std::size_t at = random() % bytes.size();
            if (random() % 4 == 0 && at + 8 <= bytes.size())
                std::memset(bytes.data() + at, static_cast<int>(random() % 2 * 255), 8);
            else
                bytes[at] = static_cast<char>(random());
        }
        try {
            const ReaderAnswer answer = answer_from_wire(bytes, many);
            if (!answer.model) continue;
            for (const ModelPart& part : answer.model->parts) {
                for (const auto& corners : part.mesh.triangles) {
                    for (const std::uint32_t corner : corners) ASSERT_LT(corner, part.mesh.points.size());
                }
            }
        } catch (const std::invalid_argument&) {
            ++refused;
        }
    }
    EXPECT_GT(refused, 1000U);
}

TEST(PartIds, ArePlainAndUnique) {
    Model model;
    for (const char* name : {"north-wall/stucco", "north wall", " north  wall ", "", "Öffnung", "north-wall-2", "north wall"})
        model.parts.push_back({.name = name});
    model.rooms = {{.name = "north wall"}, {.name = "   "}};
    give_ids(model);
    std::vector<std::string> ids;
    for (const ModelPart& part : model.parts) ids.push_back(part.id);
    for (const ModelPart& room : model.rooms) ids.push_back(room.id);
    EXPECT_EQ(ids, (std::vector<std::string>{"north-wall/stucco", "north-wall", "north-wall-2", "part-4", "ffnung",
                                             "north-wall-2-2", "north-wall-3", "north-wall-4", "room-2"}));
}

}  // namespace
}  // namespace seamward::test
