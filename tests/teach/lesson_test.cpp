// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/lesson.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "catalog/shipped.h"
#include "tests/support/page_reader.h"

namespace seamward::test {
namespace {

/// The parts of a house's skin that the trade tells apart; none may go missing.
constexpr std::array parts{"grade",     "foundation",    "weep-screed", "flashing",    "barrier",    "stucco",
                           "brick",     "siding",        "sheathing",   "stud-cavity", "insulation", "drywall",
                           "top-plate", "soffit",        "fascia",      "eave-vent",   "roof",       "attic",
                           "register",  "plumbing-vent", "door-bottom", "window"};

TEST(EnvelopeLesson, HasEveryPart) {
    for (const char* id : parts) EXPECT_NE(shipped_envelope().find(id), nullptr) << id;
    const Lesson lesson = envelope_lesson(Translator(Language::english));
    EXPECT_EQ(lesson.parts.size(), shipped_envelope().rows.size());
    for (const LessonPart& part : lesson.parts) EXPECT_EQ(part.lines.size(), 6U) << part.id;
}

/// Each part is drawn once, and no drawing has a part that the table does not.
TEST(EnvelopeLesson, DrawsEveryPartOnce) {
    std::multiset<std::string> drawn;
    for (const LessonDrawing& drawing : lesson_drawings(Translator(Language::english)))
        drawn.insert(drawing.parts.begin(), drawing.parts.end());
    std::multiset<std::string> told;
    for (const EnvelopePart& row : shipped_envelope().rows) told.insert(row.part);
    EXPECT_EQ(drawn, told);
}

class LessonPage : public testing::TestWithParam<Language> {};

/// A strict reader of XML understands it; numbers lead to parts, in their order; nothing is loaded and nothing runs.
TEST_P(LessonPage, TiesNumbersToParts) {
    std::set<std::string, std::less<>> missing;
    const std::string html = lesson_page(GetParam(), &missing);
    for (const std::string& text : missing) ADD_FAILURE() << "no row in engine/catalog/spanish.yaml: " << text;
    const PageElement page = read_page(html);
    std::size_t numbers = 0;
    for (const PageElement* link : page.named("a")) {
        const std::string target = link->attribute("href");
        if (!target.starts_with("#part-")) continue;
        const PageElement* part = page.with_id(target.substr(1));
        ASSERT_NE(part, nullptr) << target;
        EXPECT_EQ(part->named("span").front()->text(), link->named("text").front()->text()) << target;
        EXPECT_NE(link->attribute("aria-label").find(part->named("h3").front()->text()), std::string::npos);
        ++numbers;
    }
    EXPECT_EQ(numbers, shipped_envelope().rows.size());
    EXPECT_TRUE(page.named("script").empty() && page.named("img").empty());
    EXPECT_TRUE(page.all([](const PageElement& one) { return !one.attribute("style").empty(); }).empty());
    for (const char* outside : {"src=", "@import", "url(http", "href=\"http"})
        EXPECT_EQ(html.find(outside), std::string::npos) << outside;
    EXPECT_NE(html.find("default-src &#39;none&#39;"), std::string::npos);
    EXPECT_EQ(html.find("script-src"), std::string::npos);
}

INSTANTIATE_TEST_SUITE_P(Both, LessonPage, testing::Values(Language::english, Language::spanish),
                         [](const auto& given) { return given.param == Language::english ? "English" : "Spanish"; });

TEST(LessonPage, SaysNothingTwiceInBothLanguages) {
    const Lesson english = envelope_lesson(Translator(Language::english)),
                 spanish = envelope_lesson(Translator(Language::spanish));
    EXPECT_NE(english.lead, spanish.lead);
    for (std::size_t i = 0; i < english.parts.size(); ++i) {
        for (std::size_t line = 0; line + 1 < english.parts[i].lines.size(); ++line)  // the last one names documents
            EXPECT_NE(english.parts[i].lines[line].second, spanish.parts[i].lines[line].second) << english.parts[i].id;
    }
}

}  // namespace
}  // namespace seamward::test
