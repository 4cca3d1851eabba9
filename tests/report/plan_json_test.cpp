// SPDX-License-Identifier: GPL-3.0-or-later
// Pages as the program writes them, read by expat, beside `seamward plan --json` as the program prints it, read by RapidJSON.
#include <gtest/gtest.h>
#include <rapidjson/document.h>

#include <cmath>
#include <cstdio>
#include <map>
#include <regex>

#include "tests/report/made_page.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

using Json = rapidjson::Value;

constexpr const char* day = "2026-11-27";
constexpr double shown_to = 0.0051;  ///< pages round to a hundredth of a millimeter

/// $1,234.50: the same in the United States and in Mexico.
std::string money(double dollars) {
    char digits[32];
    std::snprintf(digits, sizeof digits, "%.2f", dollars);
    std::string text = digits;
    for (std::size_t at = text.size() - 3; at > 3; at -= 3) text.insert(at - 3, ",");
    return '$' + text;
}

/// All lengths in millimeters of a text such as "Now 7/32 in (5.6 mm). Afterwards a mesh with openings of 1/16 in (1.31 mm)."
std::vector<double> millimeters(const std::string& text) {
    static const std::regex pattern("([0-9]+\\.?[0-9]*) mm");
    std::vector<double> all;
    for (std::sregex_iterator at(text.begin(), text.end(), pattern), end; at != end; ++at) all.push_back(std::stod((*at)[1]));
    return all;
}

std::string file_of(const std::string& scenario) {
    return (std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "scenarios" / (scenario + ".yaml")).string();
}

Ran seamward(const std::string& words) { return run_shell(shell_word(SEAMWARD_PROGRAM) + ' ' + words); }

class PlanAndPages : public testing::TestWithParam<std::string> {
protected:
    void SetUp() override {
        job_ = scenario(GetParam());
        const Ran ran = seamward("plan " + shell_word(file_of(GetParam())) + " --json --on " + day);
        ASSERT_EQ(ran.exit_code, 0) << ran.err;
        plan_.Parse(ran.out.c_str());
        ASSERT_FALSE(plan_.HasParseError());
        ASSERT_TRUE(plan_["feasible"].GetBool());
        for (std::uint32_t i = 0; i < job_.survey.gaps.size(); ++i) index_[job_.survey.gaps[i].id] = i;
    }

    [[nodiscard]] PageElement page(const std::string& audience, const std::string& language) const {
        const ScratchFolder folder;
        const std::string file = (folder.path() / "page.html").string();
        const Ran ran = seamward("report " + shell_word(file_of(GetParam())) + " -o " + shell_word(file) + " --for " + audience +
                                 " --lang " + language + " --on " + day);
        EXPECT_EQ(ran.exit_code, 0) << ran.err;
        return read_page(read_file(file, file, 1ULL << 30));
    }

    [[nodiscard]] const Json& steps() const { return plan_["steps"]; }
    [[nodiscard]] const Gap& gap_of(const Json& step) const { return job_.survey.gaps.at(index_.at(step["gap"].GetString())); }

    /// The entries of closings in the order of the page.
    static std::vector<const PageElement*> closings(const PageElement& page) {
        return page.all([](const PageElement& one) { return one.name == "li" && one.attributes.contains("data-gap"); });
    }

    void expect_order(const std::vector<const PageElement*>& items) const {
        ASSERT_EQ(items.size(), steps().Size());
        for (unsigned i = 0; i < items.size(); ++i) {
            const Json& step = steps()[i];
            const std::string number = std::to_string(step["order"].GetInt());
            EXPECT_EQ(items[i]->attribute("id"), "closing-" + number);
            EXPECT_EQ(items[i]->attribute("value"), number);
            EXPECT_EQ(items[i]->attribute("data-gap"), std::to_string(index_.at(step["gap"].GetString())));
        }
    }

    Job job_;
    rapidjson::Document plan_;
    std::map<std::string, std::uint32_t> index_;
};

std::string term(const PageElement& element, const std::string& english, const std::string& spanish) {
    for (const auto& [key, text] : element.terms()) {
        if (key == english || key == spanish) return text;
    }
    return "";
}

/// The width as it is, and what is left of it: both in one text.
void expect_width(const std::string& text, const Gap& gap, const Json& step) {
    const std::vector<double> told = millimeters(text);
    ASSERT_FALSE(told.empty()) << text;
    EXPECT_NEAR(told.front(), clear_width(gap.shape) * 1e3, shown_to) << text;
    const bool leaves = step.HasMember("leaves_mm");
    if (leaves) {
        EXPECT_NEAR(told.back(), step["leaves_mm"].GetDouble(), shown_to) << text;
    }
    const bool shut = text.find("Afterwards shut.") != std::string::npos || text.find("Después, cerrado.") != std::string::npos;
    EXPECT_NE(shut, leaves) << text;
}

TEST_P(PlanAndPages, TellTheHomeownerTheSame) {
    for (const char* language : {"en", "es"}) {
        SCOPED_TRACE(language);
        const PageElement made = page("homeowner", language);
        const auto items = closings(made);
        expect_order(items);
        double sum = 0;
        for (unsigned i = 0; i < items.size(); ++i) {
            const Json& step = steps()[i];
            expect_width(term(*items[i], "Width", "Ancho"), gap_of(step), step);
            const std::string price = term(*items[i], "Price", "Precio");
            EXPECT_TRUE((price + ',').starts_with(money(step["cost"].GetDouble()) + ',')) << price;
            sum += step["cost"].GetDouble();
        }
        EXPECT_NEAR(plan_["cost"].GetDouble(), sum, 0.005);
        EXPECT_NE(made.with_id("work")->text().find(money(plan_["cost"].GetDouble())), std::string::npos);
    }
}

/// Every rung of the ladder stands in the chart's table of all steps, or in the short one where that has them all.
TEST_P(PlanAndPages, TellTheSameLadder) {
    for (const char* language : {"en", "es"}) {
        SCOPED_TRACE(language);
        const PageElement made = page("homeowner", language);
        const PageElement* ladder = made.with_id("ladder");
        const Json& rungs = plan_["ladder"];
        ASSERT_EQ(ladder == nullptr, rungs.Empty());
        if (ladder == nullptr) return;
        const auto rows = ladder->named("table").back()->named("tbody").front()->named("tr");
        ASSERT_EQ(rows.size(), rungs.Size());
        for (unsigned i = 0; i < rows.size(); ++i) {
            EXPECT_EQ(rows[i]->named("th").front()->text(), money(rungs[i]["cost"].GetDouble()));
            const std::string width = rows[i]->named("td").front()->text();
            EXPECT_NEAR(millimeters(width).front(), rungs[i]["keeps_out_mm"].GetDouble(), shown_to) << width;
        }
    }
}

TEST_P(PlanAndPages, TellTheCrewTheSame) {
    for (const char* language : {"en", "es"}) {
        SCOPED_TRACE(language);
        const PageElement made = page("crew", language);
        EXPECT_EQ(made.text().find('$'), std::string::npos) << "prices are not for the crew";
        const auto items = closings(made);
        expect_order(items);
        double before = -1;
        for (unsigned i = 0; i < items.size(); ++i) {
            const Json& step = steps()[i];
            const std::string size = term(*items[i], "Size", "Medida");
            ASSERT_FALSE(millimeters(size).empty()) << items[i]->text();
            EXPECT_NEAR(millimeters(size).front(), clear_width(gap_of(step).shape) * 1e3, shown_to) << size;
            // The widest way that is left is told where it changes.
            const double after = step["widest_open_mm_after"].GetDouble();
            const auto told = items[i]->all([](const PageElement& one) { return one.attribute("class") == "after"; });
            ASSERT_EQ(told.size(), after == before ? 0U : 1U) << items[i]->text();
            if (!told.empty()) {
                const std::vector<double> widths = millimeters(told.front()->text());
                ASSERT_EQ(widths.size(), after > 0 ? 1U : 0U) << told.front()->text();
                EXPECT_NEAR(widths.empty() ? 0 : widths.front(), after, shown_to) << told.front()->text();
            }
            before = after;
        }
    }
}

TEST_P(PlanAndPages, TellTheBuilderTheSame) {
    for (const char* language : {"en", "es"}) {
        SCOPED_TRACE(language);
        const PageElement made = page("builder", language);
        const auto items = closings(made);
        expect_order(items);
        for (unsigned i = 0; i < items.size(); ++i) {
            const Json& step = steps()[i];
            expect_width(term(*items[i], "Width", "Ancho"), gap_of(step), step);
            const std::string price = term(*items[i], "Price", "Precio");
            EXPECT_EQ(price, money(step["cost"].GetDouble()));
        }
        EXPECT_NE(made.with_id("work")->text().find(money(plan_["cost"].GetDouble())), std::string::npos);
    }
}

/// What the plan refuses to close stands in the pages of owner and crew, and of cautions and steps nothing is lost.
TEST_P(PlanAndPages, TellEveryCautionAndRefusal) {
    for (const char* audience : {"homeowner", "crew", "builder"}) {
        SCOPED_TRACE(audience);
        const PageElement made = page(audience, "en");
        const auto items = closings(made);
        ASSERT_EQ(items.size(), steps().Size());
        for (unsigned i = 0; i < items.size(); ++i) {
            const std::string text = items[i]->text();
            for (const Json& caution : steps()[i]["cautions"].GetArray())
                EXPECT_NE(text.find(caution.GetString()), std::string::npos) << caution.GetString() << "\nis not in\n" << text;
        }
        const std::string whole = made.text();
        for (const Json& refused : plan_["refused"].GetArray()) {
            if (refused.HasMember("treatment")) continue;
            EXPECT_NE(whole.find(refused["why"].GetString()), std::string::npos) << refused["why"].GetString();
        }
        for (const Json& check : plan_["last_checks"].GetArray())
            EXPECT_NE(whole.find(check.GetString()), std::string::npos) << check.GetString();
    }
}

INSTANTIATE_TEST_SUITE_P(Scenarios, PlanAndPages, testing::ValuesIn(scenarios()), [](const auto& one) {
    std::string name = one.param;
    std::erase(name, '-');
    return name;
});

}  // namespace
}  // namespace seamward::test
