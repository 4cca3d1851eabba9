// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/finish.h"

#include <gtest/gtest.h>

#include <set>

#include "tests/exchange/sample_parts.h"

namespace seamward::test {
namespace {

TEST(Finish, LayersHaveWordsOfTheirOwn) {
    std::set<std::string> words;
    for (int i = 0; i <= static_cast<int>(Layer::fixture); ++i) words.insert(layer_word(static_cast<Layer>(i)));
    EXPECT_EQ(words.size(), 10U);
    EXPECT_STREQ(layer_word(Layer::ground), "ground");
    EXPECT_STREQ(layer_word(Layer::eaves), "eaves");
    EXPECT_STREQ(layer_word(Layer::opening), "opening");
    EXPECT_STREQ(layer_word(Layer::fixture), "fixture");
}

TEST(Finish, TheMaterialDecidesWhereItIsKnown) {
    EXPECT_EQ(finish_of(Layer::roof, "stucco").color, finish_of(Layer::ground, "stucco").color);
    EXPECT_NE(finish_of(Layer::roof, "stucco").color, finish_of(Layer::roof, "concrete").color);
    EXPECT_EQ(finish_of(Layer::roof, "unheard of").color, finish_of(Layer::roof, "").color);
    EXPECT_NE(finish_of(Layer::roof, "unheard of").color, finish_of(Layer::ground, "unheard of").color);
}

TEST(Finish, OnlyGlassIsSeenThrough) {
    EXPECT_LT(finish_of(Layer::opening, "glass").opaque, 0.6);
    for (const char* word : {"stucco", "wood", "metal", "drywall", "unheard of"}) {
        const Finish finish = finish_of(Layer::opening, word);
        EXPECT_EQ(finish.opaque, 1) << word;
        EXPECT_TRUE(finish.rough > 0 && finish.rough <= 1 && finish.metallic >= 0 && finish.metallic <= 1) << word;
    }
}

TEST(Surfaces, EachLayerAndMaterialOnce) {
    const TriangleMesh mesh = box({0, 0, 0}, {1, 1, 1});
    const std::vector<Part> parts{part_of("a", mesh, Layer::roof, "tile"), part_of("b", mesh, Layer::roof, "wood"),
                                  part_of("c", mesh, Layer::eaves, "wood"), part_of("d", mesh, Layer::roof, "tile")};
    const Surfaces surfaces = surfaces_of(parts);
    ASSERT_EQ(surfaces.list.size(), 3U);
    EXPECT_EQ(surfaces.list[0].name(), "roof/tile");
    EXPECT_EQ(surfaces.list[1].name(), "roof/wood");
    EXPECT_EQ(surfaces.list[2].name(), "eaves/wood");
    EXPECT_EQ(surfaces.of_part, (std::vector<std::size_t>{0, 1, 2, 0}));
}

}  // namespace
}  // namespace seamward::test
