// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/record.h"

#include <gtest/gtest.h>

#include <array>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

constexpr std::array<std::string_view, 4> keys{"id", "width", "count", "kind"};
constexpr std::array<std::string_view, 3> kinds{"outdoors", "cavity", "living"};

/// A mapping in a file with the collection that its faults go to.
struct Read {
    explicit Read(const char* yaml)
        : document(parse_yaml(yaml, "f.yaml")), diagnostics("f.yaml"), record(document.root(), keys, "thing", diagnostics) {}

    Document document;
    Diagnostics diagnostics;
    Record record;

    std::vector<Diagnostic> faults() { return faults_in(diagnostics); }
};

TEST(Record, GivesTheValuesOfItsKeys) {
    Read read("id: a\nwidth: 1/16 in\ncount: 3\nkind: living\n");
    EXPECT_TRUE(read.record.usable());
    EXPECT_TRUE(read.record.has("id"));
    EXPECT_EQ(read.record.text("id"), "a");
    EXPECT_EQ(read.record.length("width"), 0.0015875);
    EXPECT_EQ(read.record.count("count"), 3U);
    EXPECT_EQ(read.record.word("kind", kinds), 2U);
    EXPECT_EQ(read.record["width"].place().line, 2U);
    EXPECT_TRUE(read.faults().empty());
}

TEST(Record, AnswersNothingForAbsentKeysWithoutAFault) {
    Read read("id: a\n");
    EXPECT_FALSE(read.record.has("width"));
    EXPECT_FALSE(read.record.length("width"));
    EXPECT_FALSE(read.record.count("count"));
    EXPECT_FALSE(read.record.word("kind", kinds));
    EXPECT_FALSE(read.record.text("width"));
    EXPECT_FALSE(read.record.truth("width"));
    EXPECT_TRUE(read.faults().empty());
}

TEST(Record, ReportsUnknownKeysWithTheNearest) {
    Read read("id: a\nwidht: 1 mm\nxyzzy: 1\n");
    const auto faults = read.faults();
    EXPECT_EQ(faults.size(), 2U);
    EXPECT_TRUE(has_fault(faults, {2, 1}, "unknown key \"widht\" in thing", "did you mean width?"));
    EXPECT_TRUE(has_fault(faults, {3, 1}, "unknown key \"xyzzy\" in thing", "id, width, count, kind"));
}

TEST(Record, ReportsEveryMissingKey) {
    Read read("count: 1\n");
    EXPECT_FALSE(read.record.require({"id", "width", "count"}));
    const auto faults = read.faults();
    EXPECT_EQ(faults.size(), 2U);
    EXPECT_TRUE(has_fault(faults, {1, 1}, "thing has no id", "add id: ..."));
    EXPECT_TRUE(has_fault(faults, {1, 1}, "thing has no width", "add width: ..."));
}

TEST(Record, ReportsWhatIsNoMapping) {
    for (const char* yaml : {"[a, b]", "text", "''"}) {
        Read read(yaml);
        EXPECT_FALSE(read.record.usable());
        EXPECT_FALSE(read.record.require({"id"}));
        EXPECT_FALSE(read.record.text("id"));
        EXPECT_TRUE(only_fault(read.faults(), {1, 1}, "thing must be a mapping", "{id: ...}")) << yaml;
    }
}

TEST(Record, TakesNothingForAMappingWithoutKeys) {
    for (const char* yaml : {"~", ""}) {
        Read read(yaml);
        EXPECT_TRUE(read.record.usable());
        EXPECT_FALSE(read.record.has("id"));
        EXPECT_FALSE(read.record.require({"id"}));
        EXPECT_TRUE(only_fault(read.faults(), {1, 1}, "thing has no id", "add id: ..."));
    }
}

TEST(Record, OfAnAbsentNodeIsQuiet) {
    Diagnostics diagnostics("f.yaml");
    const Record record(Node(), keys, "thing", diagnostics);
    EXPECT_FALSE(record.usable());
    EXPECT_FALSE(record.has("id"));
    EXPECT_TRUE(diagnostics.empty());
}

TEST(Record, GoesOnAfterAFault) {
    Read read("id: [a]\nwidth: 5\ncount: none\nkind: livingg\n");
    EXPECT_FALSE(read.record.text("id"));
    EXPECT_FALSE(read.record.length("width"));
    EXPECT_FALSE(read.record.count("count"));
    EXPECT_FALSE(read.record.word("kind", kinds));
    const auto faults = read.faults();
    EXPECT_EQ(faults.size(), 4U);
    EXPECT_TRUE(has_fault(faults, {1, 5}, "id holds a list where text is due", ""));
    EXPECT_TRUE(has_fault(faults, {2, 8}, "width: a length needs a unit", "5 mm"));
    EXPECT_TRUE(has_fault(faults, {3, 8}, "count: \"none\" is not a whole number", "12"));
    EXPECT_TRUE(has_fault(faults, {4, 7}, "unknown kind \"livingg\"", "did you mean living?"));
}

TEST(Record, ReportsContainersAndNothingWhereAQuantityIsDue) {
    for (const char* yaml : {"width: [1 mm]", "width: {a: 1 mm}", "width: ~", "width:"}) {
        Read read(yaml);
        EXPECT_FALSE(read.record.length("width"));
        const auto faults = read.faults();
        ASSERT_EQ(faults.size(), 1U) << yaml;
        EXPECT_NE(faults.front().what.find("width holds"), std::string::npos);
    }
}

TEST(Record, TruthIsTrueOrFalseOnly) {
    EXPECT_EQ(Read("id: true").record.truth("id"), true);
    EXPECT_EQ(Read("id: false").record.truth("id"), false);
    for (const char* yaml : {"id: yes", "id: no", "id: True", "id: 1", "id: 'true'", "id: [true]", "id:"}) {
        Read read(yaml);
        EXPECT_FALSE(read.record.truth("id")) << yaml;
        EXPECT_EQ(read.faults().size(), 1U) << yaml;
    }
}

TEST(Record, EachGoesThroughAList) {
    Read read("id: [a, b, c]\nwidth: []\ncount:\nkind: x\n");
    std::string items;
    read.record.each("id", [&](Node item) { items += item.text(); });
    EXPECT_EQ(items, "abc");
    const auto never = [](Node) { FAIL(); };
    read.record.each("width", never);
    read.record.each("count", never);
    read.record.each("absent", never);
    EXPECT_TRUE(read.diagnostics.empty());
    read.record.each("kind", never);
    EXPECT_TRUE(only_fault(read.faults(), {4, 7}, "kind must be a list", "[a, b]"));
}

TEST(ReadText, TakesWordsOfAnyScript) {
    for (const char* yaml : {"id: no", "id: 12", "id: true", "id: '~'", "id: 漢字", "id: \"a b\"", "id: 1.5 mm"}) {
        Read read(yaml);
        EXPECT_TRUE(read.record.text("id")) << yaml;
        EXPECT_TRUE(read.faults().empty()) << yaml;
    }
    EXPECT_EQ(Read("id: 12").record.text("id"), "12");
    EXPECT_EQ(Read("id: '~'").record.text("id"), "~");
}

TEST(ReadText, TakesBlankTextForNone) {
    for (const char* yaml : {"id: ~", "id:", "id: null", "id: ''", "id: '  '", "id: \"\\n\""}) {
        Read read(yaml);
        EXPECT_FALSE(read.record.text("id")) << yaml;
        EXPECT_TRUE(read.diagnostics.empty()) << yaml;
        EXPECT_EQ(read.record.required_line("id"), "") << yaml;
        EXPECT_EQ(read.faults().size(), 1U) << yaml;
    }
    Read read("width: 1 mm");
    EXPECT_EQ(read.record.required_line("id"), "");
    EXPECT_TRUE(only_fault(read.faults(), {1, 1}, "thing has no id", "add id: ..."));
    EXPECT_EQ(Read("id: a").record.required_line("id"), "a");
}

TEST(ReadText, RefusesControlCharactersListsAndMappings) {
    for (const char* yaml : {"id: \"a\\0b\"", "id: \"\\e[31m\"", "id: \"a\\x7fb\"", "id: {a: b}", "id: [a]"}) {
        Read read(yaml);
        EXPECT_FALSE(read.record.text("id")) << yaml;
        const auto faults = read.faults();
        ASSERT_EQ(faults.size(), 1U) << yaml;
        EXPECT_EQ(faults.front().place.line, 1U) << yaml;
        EXPECT_EQ(faults.front().what.find("id"), 0U) << faults.front().what;
    }
}

/// C1 controls (U+0080 to U+009F) drive terminals as the escape character does: U+009B begins a control sequence.
TEST(ReadText, RefusesControlCharactersOfTwoBytes) {
    Read read("id: \"a\\x9b31mb\"");
    EXPECT_FALSE(read.record.text("id"));
    EXPECT_EQ(read.faults().size(), 1U);
}

TEST(ReadText, TakesFourThousandBytes) {
    Read read(("id: " + std::string(4000, 'x') + '\n').c_str());
    EXPECT_EQ(read.record.text("id"), std::string(4000, 'x'));
    EXPECT_TRUE(read.faults().empty());
}

TEST(ReadText, RefusesTextWithoutEnd) {
    const std::string yaml = "id: " + std::string(5000, 'x');
    Read read(yaml.c_str());
    EXPECT_FALSE(read.record.text("id"));
    EXPECT_TRUE(only_fault(read.faults(), {1, 5}, "longer than", "shorten"));
}

/// The text of a file stands in messages; a letter of several bytes must not be cut in two.
TEST(Record, CutsLongTextBetweenLetters) {
    for (int shift = 0; shift < 2; ++shift) {
        std::string key(static_cast<std::size_t>(shift), 'a');
        for (int i = 0; i < 100; ++i) key += "é";
        Read read((key + ": 1\n").c_str());
        const std::string what = read.faults().front().what;
        std::size_t bytes_of_letters = 0;
        const std::size_t first = what.find("é");
        while (what.compare(first + bytes_of_letters, 2, "é") == 0) bytes_of_letters += 2;
        const auto next = static_cast<unsigned char>(what.at(first + bytes_of_letters));
        EXPECT_LT(next, 0x80) << what;
    }
}

}  // namespace
}  // namespace seamward::test
