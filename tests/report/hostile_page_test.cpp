// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever a job calls things, a page stays the page that this program wrote.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

const std::vector<std::string>& hostile_names() {
    static const std::vector<std::string> names{"<script>alert(1)</script>",
                                                "\"><img src=x onerror=alert(1)>",
                                                "' onmouseover='alert(1)",
                                                "</title></style></script><script>alert(1)</script>",
                                                "<!-- --> ]]> &lt;b&gt; &#60;",
                                                "javascript:alert(1)",
                                                "\xe2\x80\xae gpj.exe \xe2\x80\x8f\xe2\x80\x8e\xd8\x9c",
                                                "{} {1} {9}",
                                                std::string(10000, 'W')};
    return names;
}

/// All that a job says in its own words, in turn from `words`.
Job renamed(Job job, const std::vector<std::string>& words) {
    std::size_t turn = 0;
    const auto next = [&] { return words[turn++ % words.size()]; };
    job.name = next();
    job.address = next();
    job.surveyed = next();
    job.surveyor = next();
    job.notes = next();
    job.site.gates = next();
    job.site.pets = next();
    job.site.notes = next();
    for (Space& space : job.survey.spaces) {
        space.name = next();
        space.spoken = {};
    }
    for (Gap& gap : job.survey.gaps) {
        gap.name = next();
        gap.spoken = {};
        gap.note = next();
    }
    for (Pest& pest : job.pests) pest.name = next();
    for (Occupant& occupant : job.occupied) occupant.seen = next();
    for (ClosedGap& closed : job.closed) {
        if (closed.callback) closed.callback->cause = next();
    }
    return job;
}

/// Names of elements with their attributes; values only of those that never hold a text for people.
void skeleton_of(const PageElement& element, std::string& skeleton) {
    static const std::set<std::string> told{"aria-label", "data-label", "alt", "title", "content"};
    skeleton += '<' + element.name;
    if (element.name == "svg") return;  // a chart makes room for the words in it; the next test looks into it
    for (const auto& [key, value] : element.attributes) skeleton += ' ' + key + '=' + (told.contains(key) ? "" : value);
    skeleton += '>';
    for (const PageElement& child : element.children) skeleton_of(child, skeleton);
    skeleton += "</>";
}

std::size_t occurrences(const std::string& text, const std::string& what) {
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) ++count;
    return count;
}

constexpr std::array audiences{Audience::homeowner, Audience::crew, Audience::builder, Audience::diy, Audience::survey};

TEST(HostilePage, HasTheElementsOfAHarmlessOne) {
    Job job = scenario("brick-crawl");
    for (const Audience audience : audiences) {
        SCOPED_TRACE(audience_id(audience));
        const MadePage harmless(renamed(job, {"a name"}), settings_for(job, audience));
        // Of one length of list and one order each: every name is another, and so are these.
        for (const std::string& name : hostile_names()) {
            const Job hostile = renamed(job, {name});
            const MadePage made(hostile, settings_for(hostile, audience));
            std::string expected, found;
            skeleton_of(harmless.page, expected);
            skeleton_of(made.page, found);
            const std::size_t same = static_cast<std::size_t>(
                std::mismatch(found.begin(), found.end(), expected.begin(), expected.end()).first - found.begin());
            EXPECT_TRUE(found == expected) << name.substr(0, 60) << ": " << found.substr(same < 100 ? 0 : same - 100, 300);
        }
    }
}

TEST(HostilePage, KeepsScriptsAndDrawingsOfAHouseItsOwn) {
    const Job job =
        read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios/wall-corner.yaml", RunContext(), Make::solids);
    const MadePage harmless(renamed(job, {"a name"}), settings_for(job, Audience::homeowner));
    const Job hostile = renamed(job, hostile_names());
    const MadePage made(hostile, settings_for(hostile, Audience::homeowner));
    for (const char* tag :
         {"<script", "</script", "<img", "<iframe", "<style", "<!--", "<object", "<embed", "<form", "<base", "<link"})
        EXPECT_EQ(occurrences(made.html, tag), occurrences(harmless.html, tag)) << tag;
    std::set<std::string> names, attributes;
    for (const PageElement* one : harmless.page.all([](const PageElement&) { return true; })) {
        names.insert(one->name);
        for (const auto& [key, value] : one->attributes) attributes.insert(key);
    }
    for (const PageElement* one : made.page.all([](const PageElement&) { return true; })) {
        EXPECT_TRUE(names.contains(one->name)) << one->name;
        for (const auto& [key, value] : one->attributes) EXPECT_TRUE(attributes.contains(key)) << key;
    }
}

TEST(HostilePage, TurnsNoDirectionOfWriting) {
    const Job job = renamed(scenario("wall-corner"), {"\xe2\x80\xae turned \xe2\x80\x8f\xe2\x80\x8e\xd8\x9c\xe2\x81\xa6"});
    const MadePage made(job, settings_for(job, Audience::homeowner));
    for (const char* mark : {"\xe2\x80\xae", "\xe2\x80\x8f", "\xe2\x80\x8e", "\xd8\x9c", "\xe2\x81\xa6"})
        EXPECT_EQ(made.html.find(mark), std::string::npos);
    EXPECT_NE(made.html.find("? turned ????"), std::string::npos);
}

}  // namespace
}  // namespace seamward::test
