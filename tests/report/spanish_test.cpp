// SPDX-License-Identifier: GPL-3.0-or-later
// Nothing in a Spanish page is English but what the job or its house gives names and notes.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <iterator>
#include <set>

#include "tests/report/made_page.h"

namespace seamward::test {
namespace {

using Texts = std::set<std::string, std::less<>>;

constexpr std::array audiences{Audience::homeowner, Audience::crew, Audience::builder, Audience::diy, Audience::survey};

std::string lines_of(const Texts& texts) {
    std::string all;
    for (const std::string& text : texts) all += text + '\n';
    return all;
}

void add_texts(const PageElement& element, Texts& texts) {
    texts.insert(element.own_text);
    for (const char* key : {"aria-label", "alt", "title", "placeholder"}) texts.insert(element.attribute(key));
    for (const PageElement& child : element.children) add_texts(child, texts);
}

std::size_t words_of(const std::string& text) {
    std::size_t words = 0;
    bool within = false;
    for (const unsigned char letter : text + ' ') {
        const bool is_letter = std::isalpha(letter) != 0 || letter >= 0x80;
        if (within && !is_letter) ++words;
        within = is_letter;
    }
    return words;
}

/// What the job says itself, and documents that are called the same.
/// Names within a name that come from a house file: no table has them.
void add_own_names(const Message& name, std::vector<std::string>& given) {
    if (name.parts.empty() && !spanish_texts().contains(name.pattern)) given.push_back(name.pattern);
    for (const Message& part : name.parts) add_own_names(part, given);
}

std::vector<std::string> given_texts(const Job& job) {
    std::vector<std::string> given{job.notes, job.address, job.site.notes, job.site.gates, job.site.pets};
    for (const Gap& gap : job.survey.gaps) {
        given.insert(given.end(), {gap.note, gap.closing.never});
        add_own_names(gap.called(), given);
    }
    for (const Occupant& occupant : job.occupied) given.push_back(occupant.seen);
    for (const auto& [english, spanish] : spanish_texts()) {
        if (english == spanish) given.push_back(english);
    }
    std::erase_if(given, [](const std::string& text) { return words_of(text) < 2; });
    return given;
}

/// Texts of a page that are the same in both languages and as long as a sentence.
Texts same_in_both(const Job& job, const std::string& english_page, const std::string& spanish_page) {
    Texts english, spanish, kept;
    add_texts(read_page(english_page), english);
    add_texts(read_page(spanish_page), spanish);
    std::set_intersection(english.begin(), english.end(), spanish.begin(), spanish.end(), std::inserter(kept, kept.end()));
    constexpr std::size_t sentence = 6;  // names of things in a house are shorter
    const std::vector<std::string> given = given_texts(job);
    std::set<std::string> ids;
    for (const Gap& gap : job.survey.gaps) ids.insert(gap.label());
    const auto lists_ids = [&](const std::string& text) {
        for (std::size_t from = 0, to = 0; to != std::string::npos; from = to + 2) {
            to = text.find(", ", from);
            if (!ids.contains(text.substr(from, to == std::string::npos ? to : to - from))) return false;
        }
        return true;
    };
    std::erase_if(kept, [&](const std::string& text) {
        return words_of(text) < sentence || lists_ids(text) ||
               std::any_of(given.begin(), given.end(),
                           [&](const std::string& one) { return text.find(one) != std::string::npos; });
    });
    return kept;
}

void expect_spanish(const Job& job) {
    ReportFacts facts = gather_facts(job, heading(job, "job.yaml"), settings_for(job, Audience::homeowner), RunContext());
    for (const Audience audience : audiences) {
        facts.settings.audience = audience;
        facts.settings.language = Language::english;
        const std::string english = report_page(facts);
        facts.settings.language = Language::spanish;
        Texts missing;
        const std::string spanish = report_page(facts, &missing);
        EXPECT_NE(spanish.find("lang=\"es\""), std::string::npos);
        EXPECT_EQ(lines_of(missing), "") << audience_id(audience) << ": no row in engine/catalog/spanish.yaml";
        EXPECT_EQ(lines_of(same_in_both(job, english, spanish)), "") << audience_id(audience) << ": the same in both languages";
    }
}

/// Names that no row has, as they stand in English.
void add_unsaid(const Message& name, Texts& unsaid) {
    if (name.kind == Message::Kind::name && !spanish_texts().contains(name.pattern)) unsaid.insert(name.english());
    for (const Message& part : name.parts) add_unsaid(part, unsaid);
}

class SpanishPages : public testing::TestWithParam<std::string> {};

// Names of users stay as they are; those of the houses that ship are all in the table.
TEST_P(SpanishPages, NameAllOfAShippedHouse) {
    const Job job = scenario(GetParam());
    Texts unsaid;
    for (const Space& space : job.survey.spaces) add_unsaid(space.called(), unsaid);
    for (const Gap& gap : job.survey.gaps) add_unsaid(gap.called(), unsaid);
    EXPECT_EQ(lines_of(unsaid), "") << "no row in engine/catalog/spanish.yaml";
}

TEST_P(SpanishPages, HaveNoEnglish) { expect_spanish(scenario(GetParam())); }

INSTANTIATE_TEST_SUITE_P(Scenarios, SpanishPages, testing::ValuesIn(scenarios()), [](const auto& given) {
    std::string name = given.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
});

// Drawings and the house in 3D come with its solids.
TEST(SpanishPage, HasNoEnglishOnDrawings) {
    expect_spanish(read_job(std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios/demo.yaml", RunContext(), Make::solids));
}

// What the scenarios have none of: wrong closings, animals in the house, no plan, callbacks, no rooms.
TEST(SpanishPage, HasNoEnglishWhateverTheJob) {
    const std::filesystem::path jobs = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "tests/tool/jobs";
    for (const char* name : {"occupied", "wrongly-closed", "no-plan", "remarks", "gnawed", "closed", "sightings", "doubtful",
                             "assumed", "completed", "not-completed", "plan"})
        expect_spanish(read_job(jobs / (std::string(name) + ".yaml"), RunContext(), Make::survey));
}

}  // namespace
}  // namespace seamward::test
