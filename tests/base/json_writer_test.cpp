// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <random>

#include "base/document.h"
#include "tests/support/document_text.h"

namespace seamward::test {
namespace {

std::string tree(const JsonWriter& json) { return document_text(parse_json(json.text(), "answer").root()); }

TEST(JsonWriter, WritesWhatTheParserReads) {
    JsonWriter json;
    json.begin_object().key("paths").begin_array();
    json.begin_object().key("rank").value(std::int64_t{1}).key("pinch_mm").value(1.2).key("maybe").value(true);
    json.key("gaps").begin_array().value("a").value("b").end_array().end_object();
    json.end_array().key("none").begin_array().end_array().key("empty").begin_object().end_object().end_object();
    EXPECT_EQ(tree(json),
              "{'paths': [{'rank': 1, 'pinch_mm': 1.2, 'maybe': true, 'gaps': ['a', 'b']}], 'none': [], 'empty': {}}");
}

TEST(JsonWriter, EndsWithALineEnd) {
    JsonWriter json;
    json.begin_array().end_array();
    EXPECT_EQ(json.text().back(), '\n');
}

TEST(JsonWriter, EscapesText) {
    using namespace std::string_literals;
    const std::string hard = "quote \" backslash \\ slash / tab \t line \n zero \0 bell \a escape \x1b del \x7f é 漢 🏠"s;
    JsonWriter json;
    json.begin_object().key(hard).value(hard).end_object();
    const std::string text = json.text();
    for (const char c : text) EXPECT_TRUE(static_cast<unsigned char>(c) >= 0x20 || c == '\n') << static_cast<int>(c);
    const Document document = parse_json(text, "answer");
    EXPECT_EQ(value_of(document.root(), hard).text(), hard);
}

TEST(JsonWriter, WritesShortNumbersShortly) {
    JsonWriter json;
    json.begin_array();
    for (const double number : {0.0, 1.2, 0.1, 8.73125, 100.0, 123456.789, -2.5}) json.value(number);
    json.end_array();
    EXPECT_EQ(tree(json), "[0.0, 1.2, 0.1, 8.73125, 100.0, 123456.789, -2.5]");
}

TEST(JsonWriter, NumbersAreReadBackBitForBit) {
    std::mt19937_64 bits(1);
    for (int i = 0; i < 20'000; ++i) {
        const double number = std::ldexp(static_cast<double>(bits() >> 11U), static_cast<int>(bits() % 120) - 90);
        JsonWriter json;
        json.begin_array().value(number).end_array();
        const Document document = parse_json(json.text(), "answer");
        const std::string text(item_of(document.root(), 0).text());
        ASSERT_EQ(std::strtod(text.c_str(), nullptr), number) << text;
    }
}

TEST(JsonWriter, WritesWholeNumbersExactly) {
    JsonWriter json;
    json.begin_array()
        .value(std::int64_t{9'007'199'254'740'993})
        .value(std::int64_t{-1})
        .value(std::int64_t{0})
        .value(false)
        .end_array();
    EXPECT_EQ(tree(json), "[9007199254740993, -1, 0, false]");
}

}  // namespace
}  // namespace seamward::test
