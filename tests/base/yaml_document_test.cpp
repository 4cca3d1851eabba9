// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "base/document.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

std::vector<Diagnostic> faults(std::string_view text) {
    return faults_of([&] { (void)parse_yaml(text, "f.yaml"); });
}

std::string tree(std::string_view text) { return document_text(parse_yaml(text, "f.yaml").root()); }
std::string placed(std::string_view text) { return document_text(parse_yaml(text, "f.yaml").root(), true); }

TEST(YamlPlaces, OfBlockNodes) {
    EXPECT_EQ(placed("a: 1\nb:\n  - x\n  -   y\nc:\n  d:  'e'\n"),
              "1:1{1:1a: 1:41, 2:1b: 3:3[3:5x, 4:7y], 5:1c: 6:3{6:3d: 6:7'e'}}");
}

TEST(YamlPlaces, OfFlowNodes) {
    EXPECT_EQ(placed("a: {b: [1, 2],\n    c: 3}"), "1:1{1:1a: 1:4{1:5b: 1:8[1:91, 1:122], 2:5c: 2:83}}");
}

/// Columns count characters, as editors do, not bytes.
TEST(YamlPlaces, AfterLettersOfSeveralBytes) {
    EXPECT_EQ(placed("{é: ü, 漢字: 🏠, x: y}"), "1:1{1:2é: 1:5ü, 1:8漢字: 1:12🏠, 1:15x: 1:18y}");
    EXPECT_TRUE(only_fault(faults("{名: 1, 名: 2}"), {1, 8}, "twice", "keep one"));
}

TEST(YamlPlaces, AfterCommentsAndOtherLineEnds) {
    EXPECT_EQ(placed("# one\n\na: 1 # two\nb: 2\n"), "3:1{3:1a: 3:41, 4:1b: 4:42}");
    EXPECT_EQ(placed("a: 1\r\nb: 2\r\n"), "1:1{1:1a: 1:41, 2:1b: 2:42}");
    EXPECT_EQ(placed("---\na: 1\n"), "2:1{2:1a: 2:41}");
}

/// A byte order mark is no letter of the first line.
TEST(YamlPlaces, AfterAByteOrderMark) { EXPECT_EQ(placed("\xEF\xBB\xBF{a: 1}\n"), "1:1{1:2a: 1:51}"); }

TEST(YamlScalars, StayText) {
    EXPECT_EQ(tree("[no, yes, on, 12, 0x1F, 1e3, .inf, 2026-03-12, 1_000, =]"),
              "[no, yes, on, 12, 0x1F, 1e3, .inf, 2026-03-12, 1_000, =]");
}

TEST(YamlScalars, NullsAreNullUnlessQuoted) {
    EXPECT_EQ(tree("[~, null, Null, NULL, '~', \"null\", nUll]"), "[~, ~, ~, ~, '~', 'null', nUll]");
    EXPECT_EQ(tree("{a: , b: ''}"), "{a: ~, b: ''}");
    EXPECT_EQ(tree("a:\nb: 1\n"), "{a: ~, b: 1}");
}

TEST(YamlScalars, EscapesAndBlocks) {
    EXPECT_EQ(tree(R"(["a\tb", "\u00e9", "\x41", 'it''s', "3/8\""])"), "['a\tb', 'é', 'A', 'it's', '3/8\"']");
    EXPECT_EQ(tree("a: |\n  x\n  y\nb: >\n  x\n  y\n"), "{a: 'x\ny\n', b: 'x y\n'}");
    EXPECT_EQ(tree("a: 3/8\"\nb: 12' 6\"\n"), "{a: 3/8\", b: 12' 6\"}");
    EXPECT_EQ(tree("a: x\n  y\n"), "{a: x y}");
}

TEST(YamlAliases, StandForTheirAnchor) {
    EXPECT_EQ(tree("a: &n {x: 1, y: [2, 3]}\nb: *n\nc: &s text\nd: [*s, *n]\n"),
              "{a: {x: 1, y: [2, 3]}, b: {x: 1, y: [2, 3]}, c: text, d: [text, {x: 1, y: [2, 3]}]}");
}

TEST(YamlAliases, StandWhereTheyAreWritten) {
    const Document document = parse_yaml("a: &n [1]\nbb: *n\n", "f.yaml");
    const Node alias = value_of(document.root(), "bb");
    EXPECT_EQ(alias.place().line, 2U);
    EXPECT_EQ(alias.place().column, 5U);
    EXPECT_EQ(item_of(alias, 0).place().line, 1U);
}

TEST(YamlAliases, WorkAsKeysAndInsideOtherAnchors) {
    EXPECT_EQ(tree("[&k id, {*k : 1}, &l [*k, *k], *l]"), "[id, {id: 1}, [id, id], [id, id]]");
    EXPECT_TRUE(only_fault(faults("[&k id, {id: 2, *k : 1}]"), {1, 17}, "twice", "keep one"));
}

TEST(YamlAliases, TakeTheLatestAnchorOfAName) { EXPECT_EQ(tree("[&a 1, *a, &a 2, *a]"), "[1, 1, 2, 2]"); }

TEST(YamlAliases, WithoutAnAnchorAreFaults) {
    EXPECT_TRUE(only_fault(faults("a: 1\nb: *nowhere\n"), {2, 4}, "*nowhere", "&nowhere"));
}

TEST(YamlAliases, ThatHoldThemselvesAreFaults) {
    EXPECT_TRUE(only_fault(faults("&a [*a]"), {1, 5}, "*a", "&a"));
    EXPECT_TRUE(only_fault(faults("a: &x\n  b:\n    - *x\n"), {3, 7}, "*x", "&x"));
    EXPECT_TRUE(only_fault(faults("&a {&b k: *a}"), {1, 11}, "*a", "&a"));
}

TEST(YamlKeys, RepeatedInOneMappingAreFaults) {
    EXPECT_TRUE(only_fault(faults("a: 1\nb: 2\na: 3\n"), {3, 1}, "key \"a\" stands twice", "keep one"));
    EXPECT_TRUE(only_fault(faults("x: {a: 1, 'a': 2}\n"), {1, 11}, "key \"a\" stands twice", "keep one"));
    EXPECT_EQ(tree("[{a: 1}, {a: 2}]"), "[{a: 1}, {a: 2}]");
}

TEST(YamlKeys, RepeatedAmongMany) {
    std::string text;
    for (int i = 0; i < 1000; ++i) text += "k" + std::to_string(i) + ": 1\n";
    EXPECT_TRUE(faults(text).empty());
    EXPECT_TRUE(only_fault(faults(text + "k500: 1\n"), {1001, 1}, "k500", "keep one"));
}

TEST(YamlKeys, AreWords) {
    EXPECT_TRUE(only_fault(faults("{[a]: 1}"), {1, 2}, "key must be a word", "key: value"));
    EXPECT_TRUE(only_fault(faults("{~: 1}"), {1, 2}, "key must be a word", "key: value"));
    EXPECT_TRUE(only_fault(faults("? {a: b}\n: 1\n"), {1, 3}, "key must be a word", "key: value"));
}

TEST(YamlDocuments, TwoInOneFileAreAFault) {
    EXPECT_TRUE(only_fault(faults("a: 1\n---\nb: 2\n"), {3, 1}, "second document", "one document"));
    EXPECT_TRUE(only_fault(faults("a: 1\n...\n---\n- b\n"), {4, 1}, "second document", "one document"));
}

TEST(YamlDocuments, OfNothingAreNull) {
    for (const char* text : {"", "\n\n", "# only a comment\n", "---\n", "---\n...\n", "   "}) {
        const Document document = parse_yaml(text, "f.yaml");
        EXPECT_TRUE(document.root().is_null()) << text;
        EXPECT_GE(document.root().place().line, 1U) << text;
    }
}

TEST(YamlSyntax, TabsAreNamed) {
    EXPECT_TRUE(only_fault(faults("a:\n\tb: 1\n"), {2, 1}, "", "spaces, not tabs"));
    EXPECT_TRUE(only_fault(faults("a:\n  - x\n\t- y\n"), {3, 1}, "", "spaces, not tabs"));
}

TEST(YamlSyntax, FaultsHaveTheirPlace) {
    EXPECT_TRUE(only_fault(faults("a: 1\nb: [1, 2\nc: 3\n"), {3, 2}, "YAML syntax", "brackets"));
    EXPECT_TRUE(only_fault(faults("a: 1\n b: 2\n"), {2, 3}, "YAML syntax", "indentation"));
    EXPECT_TRUE(only_fault(faults("a: @b\n"), {1, 4}, "YAML syntax", "quotes"));
    EXPECT_TRUE(only_fault(faults("a: b: c\n"), {1, 5}, "YAML syntax", "colons"));
    EXPECT_FALSE(faults("a: \"x\n").empty());
    EXPECT_FALSE(faults("{a: 1").empty());
}

}  // namespace
}  // namespace seamward::test
