// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include "base/document.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

std::vector<Diagnostic> faults(std::string_view text) {
    return faults_of([&] { (void)parse_json(text, "f.json"); });
}

std::string tree(std::string_view text) { return document_text(parse_json(text, "f.json").root()); }
std::string placed(std::string_view text) { return document_text(parse_json(text, "f.json").root(), true); }

TEST(JsonPlaces, OfEveryNode) {
    EXPECT_EQ(placed("{\"a\": 1,\n  \"b\" :\t[ true,\n null ]}"), "1:1{1:2'a': 1:71, 2:3'b': 2:9[2:11true, 3:2~]}");
    EXPECT_EQ(placed("\r\n\r\n{\"a\":\r\n1}"), "3:1{3:2'a': 4:11}");
}

/// Columns count characters, as editors do, not bytes.
TEST(JsonPlaces, AfterLettersOfSeveralBytes) {
    EXPECT_EQ(placed("{\"é漢🏠\": \"ü\", \"x\": 1}"), "1:1{1:2'é漢🏠': 1:9'ü', 1:14'x': 1:191}");
    EXPECT_TRUE(only_fault(faults("{\"名\": 1, \"名\": 2}"), {1, 10}, "twice", "keep one"));
}

TEST(JsonPlaces, AfterAByteOrderMark) { EXPECT_EQ(placed("\xEF\xBB\xBF{\"a\": 1}"), "1:1{1:2'a': 1:71}"); }

TEST(JsonScalars, KindsAndText) {
    EXPECT_EQ(tree(R"([null, true, false, "null", "true", "", 0])"), "[~, true, false, 'null', 'true', '', 0]");
    EXPECT_EQ(tree("[-0.5, 1.50e+3, 12345678901234567890123, 1E-2]"), "[-0.5, 1.50e+3, 12345678901234567890123, 1E-2]");
    EXPECT_EQ(tree("\"alone\""), "'alone'");
    EXPECT_EQ(tree("7"), "7");
}

TEST(JsonScalars, Escapes) {
    EXPECT_EQ(tree(R"(["\"\\\/\b\f\n\r\t"])"), "['\"\\/\b\f\n\r\t']");
    EXPECT_EQ(tree(R"(["\u0041\u00e9\u6f22"])"), "['Aé漢']");
    EXPECT_EQ(tree(R"(["3/8\"", "12' 6\""])"), "['3/8\"', '12' 6\"']");
}

/// RFC 8259, section 7: a letter outside the basic plane is a pair of escapes.
TEST(JsonScalars, SurrogatePairs) {
    EXPECT_EQ(tree(R"(["\ud83c\udfe0"])"), "['🏠']");
    EXPECT_EQ(tree(R"(["\uD834\uDD1E"])"), "['\xF0\x9D\x84\x9E']");
    for (const char* text : {R"(["\ud83c"])", R"(["\ud83cx"])", R"(["\ud83c\u0041"])", R"(["\ud83c\ud83c"])"}) {
        EXPECT_FALSE(faults(text).empty()) << text;
    }
}

/// The second half of a pair alone has no UTF-8 form: text read from it could not be written into an answer.
TEST(JsonScalars, LoneLowSurrogatesAreFaults) {
    for (const char* text : {R"(["\udfe0"])", R"(["x\uDC00y"])", R"({"\udfff": 1})"}) EXPECT_EQ(faults(text).size(), 1U) << text;
}

TEST(JsonSyntax, TrailingCommas) {
    EXPECT_TRUE(only_fault(faults("[1, 2, ]"), {1, 8}, "JSON syntax", "commas"));
    EXPECT_TRUE(only_fault(faults("{\"a\": 1,\n}"), {2, 1}, "JSON syntax", "commas"));
    EXPECT_TRUE(only_fault(faults("[,1]"), {1, 2}, "JSON syntax", "commas"));
    EXPECT_TRUE(only_fault(faults("[1 2]"), {1, 4}, "JSON syntax", "commas"));
}

/// RFC 8259, section 6: not permitted.
TEST(JsonSyntax, NumbersThatJsonDoesNotHave) {
    for (const char* text : {"[NaN]", "[Infinity]", "[-Infinity]", "[nan]", "[inf]", "[+1]", "[.5]", "[1.]", "[1e]", "[0x10]",
                             "[01]", "[1_000]", "[--1]"}) {
        EXPECT_EQ(faults(text).size(), 1U) << text;
        EXPECT_NE(listing(faults(text)).find("f.json:1:"), std::string::npos) << text;
    }
}

TEST(JsonSyntax, TextAfterTheEnd) {
    EXPECT_TRUE(only_fault(faults("{\"a\": 1}\n{\"b\": 2}"), {2, 1}, "JSON syntax", "brackets"));
    EXPECT_TRUE(only_fault(faults("[1] x"), {1, 5}, "JSON syntax", "brackets"));
    EXPECT_EQ(tree("[1]  \n\t\r\n"), "[1]");
}

TEST(JsonSyntax, WhatIsNotJson) {
    for (const char* text :
         {"{a: 1}",     "{'a': 1}",    "{\"a\" 1}",     "{\"a\": }",  "[1",         "{\"a\": 1", "[\"x]",
          "[tru]",      "[True]",      "[nul]",         "// c\n[1]",  "[1] # c",    "/* c */ 1", "]",
          "{\"a\": 1]", "[\"\\x41\"]", "[\"\\u12G4\"]", "[\"a\nb\"]", "[\"a\tb\"]", "{1: 2}",    "{null: 1}"}) {
        EXPECT_EQ(faults(text).size(), 1U) << text;
    }
}

TEST(JsonKeys, RepeatedInOneMappingAreFaults) {
    EXPECT_TRUE(only_fault(faults("{\"a\": 1,\n \"b\": {\"c\": 1, \"c\": 2}}"), {2, 16}, "key \"c\" stands twice", "keep one"));
    EXPECT_TRUE(only_fault(faults(R"({"a": 1, "\u0061": 2})"), {1, 10}, "key \"a\" stands twice", "keep one"));
    EXPECT_EQ(tree(R"([{"a": 1}, {"a": 2}])"), "[{'a': 1}, {'a': 2}]");
}

TEST(JsonDocuments, OfNothingAreNull) {
    for (const char* text : {"", "  \n", "\xEF\xBB\xBF"})
        EXPECT_TRUE(parse_json(text, "f.json").root().is_null()) << '"' << text << '"';
}

}  // namespace
}  // namespace seamward::test
