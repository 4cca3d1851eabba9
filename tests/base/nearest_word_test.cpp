// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/nearest_word.h"

#include <gtest/gtest.h>

#include <array>
#include <vector>

namespace seamward::test {
namespace {

using Words = std::vector<std::string_view>;

std::string nearest(std::string_view word, const Words& known) {
    return std::string(nearest_word(word, known).value_or("(none)"));
}

const Words animals{"bark-scorpion", "bark-scorpion-young", "american-cockroach", "house-mouse", "roof-rat", "norway-rat", "bat"};

TEST(NearestWord, MendsOneSlip) {
    EXPECT_EQ(nearest("house-mous", animals), "house-mouse");    // a letter left out
    EXPECT_EQ(nearest("house-mousse", animals), "house-mouse");  // one too many
    EXPECT_EQ(nearest("house-mause", animals), "house-mouse");   // a wrong one
    EXPECT_EQ(nearest("huose-mouse", animals), "house-mouse");   // two swapped
    EXPECT_EQ(nearest("bta", animals), "bat");
    EXPECT_EQ(nearest("bark-scorpion-yuong", animals), "bark-scorpion-young");
}

TEST(NearestWord, TakesCaseAndHyphensLightly) {
    EXPECT_EQ(nearest("House Mouse", animals), "house-mouse");
    EXPECT_EQ(nearest("NORWAY_RAT", animals), "norway-rat");
    EXPECT_EQ(nearest("housemouse", animals), "house-mouse");
}

TEST(NearestWord, OffersNothingThatIsFarOff) {
    EXPECT_EQ(nearest("elephant", animals), "(none)");
    EXPECT_EQ(nearest("x", animals), "(none)");
    EXPECT_EQ(nearest("", animals), "(none)");
    EXPECT_EQ(nearest("bat", {}), "(none)");
    EXPECT_EQ(nearest(std::string(10'000, 'a'), animals), "(none)");
    EXPECT_EQ(nearest("a", {"b"}), "(none)");
}

TEST(NearestWord, AllowsAThirdOfTheLetters) {
    EXPECT_EQ(nearest("abcdxx", {"abcdef"}), "abcdef");
    EXPECT_EQ(nearest("abcxxx", {"abcdef"}), "(none)");
}

TEST(NearestWord, TakesTheFirstOfEquals) {
    EXPECT_EQ(nearest("cart", {"care", "card"}), "care");
    EXPECT_EQ(nearest("cart", {"card", "care"}), "card");
    EXPECT_EQ(nearest("cart", {"carpet", "card", "cart"}), "cart");
}

TEST(Suggestion, AsksWhetherTheNearestWasMeant) { EXPECT_EQ(suggestion("roof-rta", animals), "did you mean roof-rat?"); }

TEST(Suggestion, ListsAFewWordsWhenNothingIsNear) {
    const std::string text = suggestion("elephant", animals);
    for (const std::string_view animal : animals) EXPECT_NE(text.find(animal), std::string::npos) << text;
}

TEST(Suggestion, ListsNoCrowd) {
    std::vector<std::string> ids;
    for (int i = 0; i < 1000; ++i) ids.push_back("gap-" + std::to_string(i));
    const Words known(ids.begin(), ids.end());
    EXPECT_EQ(suggestion("completely-different", known), "");
    EXPECT_EQ(suggestion("gap-77x", known), "did you mean gap-77?");
    EXPECT_EQ(suggestion("anything", {}), "");
}

TEST(NearestWord, KnowsAPartOfACompound) {
    const std::vector<std::string_view> known{"bark-scorpion-young", "house-mouse", "roof-rat"};
    EXPECT_EQ(nearest_word("mouse", known), "house-mouse");
    EXPECT_EQ(nearest_word("scorpion", known), "bark-scorpion-young");
    EXPECT_EQ(nearest_word("hedgehog", known), std::nullopt);
}

}  // namespace
}  // namespace seamward::test
