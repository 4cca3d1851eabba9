// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <array>
#include <cmath>

#include "base/diagnostics.h"
#include "sweep/even_random.h"
#include "sweep/make_lots.h"
#include "sweep/sha256.h"
#include "tests/sweep/sweep_results.h"

namespace seamward::test {
namespace {

std::string text_of(const Subdivision& all, const std::string& name) {
    return read_file(all.path("lots/" + name), name, 1U << 20);
}

std::string name_of(int number) {
    std::string digits = std::to_string(number);
    return "lot-" + std::string(5 - digits.size(), '0') + digits + ".yaml";
}

TEST(MadeLots, AreTheSameForASeedOnEveryMachine) {
    const Subdivision one(40, 7), same(40, 7), other(40, 8), more(60, 7);
    Sha256 digest;
    int differ = 0;
    for (int number = 1; number <= 40; ++number) {
        const std::string text = text_of(one, name_of(number));
        EXPECT_EQ(text, text_of(same, name_of(number)));
        EXPECT_EQ(text, text_of(more, name_of(number))) << "the first lots of many are those of few";
        differ += text == text_of(other, name_of(number)) ? 0 : 1;
        digest.add(text);
    }
    EXPECT_EQ(differ, 40);
    EXPECT_EQ(digest.hex(), "460d7359576a7f0216b703034ef2fe4f1de862cce71170a466059508dfce1a1e")
        << "other numbers than on other machines, or the maker was changed: then pin it anew";
}

TEST(MadeLots, CanAllBeDoneButTheFaultyOnes) {
    const Subdivision all(300, 11, 20);
    all.sweep("trace", "out", "--threads 2 --against bark-scorpion --against house-mouse");
    const std::vector<CsvRow> rows = read_csv_file(all.path("out/lots.csv"));
    ASSERT_EQ(rows.size(), 300U);
    int errors = 0, shut = 0;
    for (const CsvRow& row : rows) {
        const bool faulty = text_of(all, row.at("file")).find("Wrenfeather") == std::string::npos;
        EXPECT_EQ(row.at("result") == "error", faulty) << row.at("file") << ' ' << row.at("error");
        errors += faulty ? 1 : 0;
        shut += row.at("result") == "shut" ? 1 : 0;
    }
    EXPECT_EQ(errors, 20);
    EXPECT_GE(shut, 3) << "a few have nothing wrong";
    EXPECT_LE(shut, 30);
}

TEST(MadeLots, FolderThatIsInUseStaysAsItIs) {
    const ScratchFolder folder;
    folder.write("there/notes.txt", "mine");
    EXPECT_THROW(make_lots({5, 1, 0}, folder.path() / "there", RunContext()), BadInput);
    EXPECT_EQ(read_file(folder.path() / "there/notes.txt", "", 100), "mine");
    std::size_t entries = 0;
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) entries += entry.exists() ? 1 : 0;
    EXPECT_EQ(entries, 1U) << "nothing half-made is left";
    EXPECT_THROW(make_lots({5, 1, 0}, folder.path() / "none" / std::string(300, 'x'), RunContext()), BadInput);
}

TEST(EvenRandom, SharesAreEvenAndDeviationsNormal) {
    EvenRandom random(3, 1);
    constexpr int count = 200'000;
    double sum = 0, squares = 0, logs = 0;
    std::array<int, 10> tenths{};
    for (int i = 0; i < count; ++i) {
        const double z = random.deviation();
        sum += z;
        squares += z * z;
        logs += std::log(random.factor(0.4));
        ++tenths[random.below(10)];
    }
    EXPECT_NEAR(sum / count, 0, 0.01);
    EXPECT_NEAR(squares / count, 1, 0.02);
    EXPECT_NEAR(logs / count, 0, 0.005);
    for (const int tenth : tenths) EXPECT_NEAR(tenth, count / 10, 700);
}

TEST(EvenRandom, StreamsDiffer) {
    EXPECT_NE(EvenRandom(1, 1).next(), EvenRandom(1, 2).next());
    EXPECT_NE(EvenRandom(1, 1).next(), EvenRandom(2, 1).next());
    EXPECT_EQ(EvenRandom(9, 4).next(), EvenRandom(9, 4).next());
}

}  // namespace
}  // namespace seamward::test
