// SPDX-License-Identifier: GPL-3.0-or-later
// Files made to hurt: each is refused at once with a clear message, however it nests, repeats or is encoded.
#include <gtest/gtest.h>

#include <chrono>

#include "base/document.h"
#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

std::vector<Diagnostic> yaml_faults(std::string_view text) {
    return faults_of([&] { (void)parse_yaml(text, "f.yaml"); });
}
std::vector<Diagnostic> json_faults(std::string_view text) {
    return faults_of([&] { (void)parse_json(text, "f.json"); });
}

std::string repeated(std::string_view text, std::size_t times) {
    std::string all;
    for (std::size_t i = 0; i < times; ++i) all += text;
    return all;
}

/// Checks that work is over in far less than anyone would wait, also in a debug build on a busy machine.
class Deadline {
public:
    ~Deadline() {
        const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - begun_;
        EXPECT_LT(spent.count(), 5) << "seconds";
    }

private:
    std::chrono::steady_clock::time_point begun_ = std::chrono::steady_clock::now();
};

constexpr std::size_t deep = 20'000;

TEST(Nesting, DeepYamlFlowIsRefused) {
    const Deadline deadline;
    EXPECT_TRUE(only_fault(yaml_faults(repeated("[", deep)), {1, 65}, "nested more than 64 levels", "flatten"));
    EXPECT_TRUE(
        only_fault(yaml_faults(repeated("[", deep) + repeated("]", deep)), {1, 65}, "nested more than 64 levels", "flatten"));
    EXPECT_TRUE(only_fault(yaml_faults(repeated("{a: ", deep) + repeated("}", deep)), {1, 4 * 64 + 1}, "nested", "flatten"));
    EXPECT_TRUE(only_fault(yaml_faults(repeated("[\n", deep)), {65, 1}, "nested", "flatten"));
}

TEST(Nesting, DeepYamlBlocksAreRefused) {
    const Deadline deadline;
    EXPECT_TRUE(only_fault(yaml_faults(repeated("- ", deep) + "x"), {1, 2 * 64 + 1}, "nested more than 64 levels", "flatten"));
    EXPECT_FALSE(yaml_faults(repeated("? ", deep) + "x").empty());
    std::string steps;
    for (std::size_t i = 0; i < 2000; ++i) steps += std::string(i, ' ') + "a:\n";
    EXPECT_TRUE(only_fault(yaml_faults(steps), {65, 65}, "nested", "flatten"));
}

TEST(Nesting, DeepJsonIsRefused) {
    const Deadline deadline;
    EXPECT_TRUE(only_fault(json_faults(repeated("[", deep)), {1, 65}, "nested more than 64 levels", "flatten"));
    EXPECT_TRUE(only_fault(json_faults(repeated("[", deep) + repeated("]", deep)), {1, 65}, "nested", "flatten"));
    EXPECT_TRUE(
        only_fault(json_faults(repeated("{\"a\":", deep) + '1' + repeated("}", deep)), {1, 5 * 64 + 1}, "nested", "flatten"));
}

TEST(Nesting, OfSixtyFourLevelsIsRead) {
    EXPECT_TRUE(yaml_faults(repeated("[", 64) + repeated("]", 64)).empty());
    EXPECT_TRUE(json_faults(repeated("[", 64) + repeated("]", 64)).empty());
    EXPECT_TRUE(yaml_faults(repeated("- ", 64) + "x").empty());
}

/// Nine lists of nine aliases each would stand for 9^9 values.
TEST(AliasBomb, BillionLaughsIsRefused) {
    const Deadline deadline;
    std::string text = "a0: &a0 [lol, lol, lol, lol, lol, lol, lol, lol, lol]\n";
    for (int i = 1; i < 9; ++i) {
        const std::string n = std::to_string(i);
        const std::string alias = "*a" + std::to_string(i - 1);
        text += "a" + n + ": &a" + n + " [" + alias + repeated(", " + alias, 8) + "]\n";
    }
    const auto faults = yaml_faults(text);
    ASSERT_EQ(faults.size(), 1U) << listing(faults);
    EXPECT_NE(faults.front().what.find("aliases blow this file up"), std::string::npos);
    EXPECT_NE(faults.front().mend.find("aliases"), std::string::npos);
    EXPECT_GT(faults.front().place.line, 1U);
    EXPECT_GT(faults.front().place.column, 1U);
}

TEST(AliasBomb, QuadraticBlowUpIsRefused) {
    const Deadline deadline;
    const std::string text = "a: &a [" + repeated("x, ", 10'000) + "]\nb: [" + repeated("*a, ", 10'000) + "]\n";
    EXPECT_NE(listing(yaml_faults(text)).find("blow this file up"), std::string::npos);
}

TEST(AliasBomb, ManyHonestAliasesAreRead) {
    EXPECT_TRUE(yaml_faults("a: &a {how: measured}\nb: [" + repeated("*a, ", 100'000) + "]\n").empty());
}

TEST(LongInput, IsReadInLinearTime) {
    const Deadline deadline;
    EXPECT_TRUE(yaml_faults("[" + repeated("x, ", 200'000) + "]").empty());
    EXPECT_TRUE(json_faults("[" + repeated("1, ", 200'000) + "1]").empty());
    EXPECT_TRUE(yaml_faults("a: \"" + std::string(2'000'000, 'x') + "\"\n").empty());
    EXPECT_TRUE(json_faults("[\"" + std::string(2'000'000, 'x') + "\"]").empty());
    std::string keys;
    for (int i = 0; i < 100'000; ++i) keys += "k" + std::to_string(i) + ": 1\n";
    EXPECT_TRUE(yaml_faults(keys).empty());
}

/// The place is that of the faulty byte, not of the file's beginning.
TEST(Encoding, BadUtf8InYamlIsNamedWithItsLine) {
    for (const char* bad :
         {"\xff", "\x80", "\xC3(", "\xE2\x82(", "\xF0\x9F\x8F(", "\xC0\xAF", "\xED\xA0\x80", "\xF5\x80\x80\x80"}) {
        const auto faults = yaml_faults("a: 1\nb: 2\nc: \"x" + std::string(bad) + "\"\nd: 4\n");
        ASSERT_EQ(faults.size(), 1U) << listing(faults);
        EXPECT_NE(faults.front().what.find("UTF-8"), std::string::npos) << faults.front().what;
        EXPECT_NE(faults.front().mend.find("UTF-8"), std::string::npos);
        EXPECT_EQ(faults.front().place.line, 3U) << listing(faults);
    }
}

TEST(Encoding, BadUtf8InJsonIsNamedWithItsLine) {
    for (const char* bad : {"\xff", "\x80", "\xC3(", "\xE2\x82(", "\xC0\xAF", "\xED\xA0\x80"}) {
        const auto faults = json_faults("{\"a\": 1,\n\"b\": 2,\n\"c\": \"x" + std::string(bad) + "\"}");
        ASSERT_EQ(faults.size(), 1U) << listing(faults);
        EXPECT_EQ(faults.front().place.line, 3U) << listing(faults);
    }
}

TEST(Encoding, Utf16IsRefusedOrRead) {
    const std::string utf16_le(
        "\xFF\xFE"
        "a\0:\0 \0"
        "1\0\n\0",
        12);
    const auto faults = yaml_faults(utf16_le);
    EXPECT_TRUE(faults.empty() || faults.front().what.find("UTF-8") != std::string::npos) << listing(faults);
    EXPECT_EQ(json_faults(std::string("\xFF\xFE[\0001\0]\0", 8)).size(), 1U);
}

/// A zero byte is valid UTF-8, so saving the file as UTF-8 would not mend it.
TEST(ZeroBytes, InYamlAreNamedWithTheirLine) {
    const auto faults = yaml_faults(std::string_view("a: 1\nb: x\0y\n", 12));
    ASSERT_EQ(faults.size(), 1U) << listing(faults);
    EXPECT_EQ(faults.front().place.line, 2U) << listing(faults);
    EXPECT_EQ(faults.front().what.find("not UTF-8"), std::string::npos) << listing(faults);
}

TEST(ZeroBytes, InJsonAreNamedWithTheirPlace) {
    EXPECT_TRUE(only_fault(json_faults(std::string_view("[1]\n\0", 5)), {2, 1}, "zero byte", "remove"));
    EXPECT_TRUE(only_fault(json_faults(std::string_view("\0", 1)), {1, 1}, "zero byte", "remove"));
    EXPECT_EQ(json_faults(std::string_view("[\"a\0b\"]", 7)).size(), 1U);
    EXPECT_EQ(json_faults(std::string_view("[1,\0 2]", 7)).size(), 1U);
}

TEST(AnyBytes, AreReadOrRefused) {
    std::uint64_t state = 7;
    for (int round = 0; round < 20'000; ++round) {
        constexpr std::string_view letters = "[]{}:,-?&*a!|>'\"%@`# \n\t\\\xC3\xA9~0.";
        std::string text;
        for (int i = 0; i < 24; ++i) {
            state = state * 6364136223846793005ULL + 1442695040888963407ULL;
            text += letters[(state >> 33U) % letters.size()];
        }
        for (const auto& faults : {yaml_faults(text), json_faults(text)}) {
            for (const Diagnostic& fault : faults) {
                ASSERT_FALSE(fault.what.empty()) << text;
                ASSERT_GE(fault.place.line, 1U) << text;
                ASSERT_GE(fault.place.column, 1U) << text;
            }
        }
    }
}

}  // namespace
}  // namespace seamward::test
