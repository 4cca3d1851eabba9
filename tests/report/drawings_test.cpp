// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawings.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <regex>
#include <set>

#include "plan/plan.h"
#include "report/html.h"

namespace seamward {
namespace {

const RunContext context;

Job job_of(const std::string& name) {
    return read_job(std::string(SEAMWARD_SOURCE_FOLDER "/scenarios/") + name + ".yaml", context, Make::solids);
}

/// A shipped job, its plan and its drawings.
struct Drawn {
    Job job;
    Plan plan;
    std::vector<Drawing> drawings;

    explicit Drawn(const std::string& name, Lengths lengths = Lengths::inches) : job(job_of(name)) {
        PlanSettings settings;
        settings.against = job.pests;
        settings.date = *parse_date("2026-06-15").value;
        plan = make_plan(job, settings, context);
        drawings = draw_house(drawing_job(lengths), Translator(Language::english));
    }

    [[nodiscard]] DrawingJob drawing_job(Lengths lengths) const {
        DrawingJob drawn{job.house, true, {}, lengths};
        for (const PlanStep& step : plan.steps) drawn.closings.push_back(step.gap);
        return drawn;
    }
    [[nodiscard]] const Drawing& named(const std::string& id) const {
        return *std::find_if(drawings.begin(), drawings.end(), [&](const Drawing& drawing) { return drawing.id == id; });
    }
};

const Drawn& demo() {
    static const Drawn drawn("demo");
    return drawn;
}

std::size_t count_of(const std::string& text, const std::string& what) {
    std::size_t count = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + what.size())) ++count;
    return count;
}

/// Whether elements end in the order in which they began. (No regular expression: the library's runs out of stack on long paths.)
bool is_nested(const std::string& markup) {
    std::vector<std::string> open;
    for (std::size_t at = markup.find('<'); at != std::string::npos; at = markup.find('<', at + 1)) {
        const bool ends = markup.at(at + 1) == '/';
        const std::size_t begin = at + (ends ? 2 : 1);
        const std::string name = markup.substr(begin, markup.find_first_of(" >", begin) - begin);
        if (!ends) {
            open.push_back(name);
        } else {
            if (open.empty() || open.back() != name) return false;
            open.pop_back();
        }
    }
    return open.empty();
}

/// What stands between two texts, the first of them after a place.
std::string between(const std::string& text, const std::string& first, const std::string& second, std::size_t from = 0) {
    const std::size_t begin = text.find(first, from);
    if (begin == std::string::npos) return "";
    return text.substr(begin + first.size(), text.find(second, begin + first.size()) - begin - first.size());
}

class ShippedJobs : public testing::TestWithParam<const char*> {};

TEST_P(ShippedJobs, BalloonsAreClearAndEveryClosingIsShownOnce) {
    const Drawn drawn(GetParam());
    ASSERT_GE(drawn.drawings.size(), 5U);
    std::multiset<std::size_t> shown;
    for (const Drawing& drawing : drawn.drawings) {
        EXPECT_EQ(label_conflicts(drawing.balloons), 0U) << drawing.id;
        EXPECT_EQ(drawing.balloons.size(), drawing.closings.size() + drawing.open.size());
        shown.insert(drawing.closings.begin(), drawing.closings.end());
        for (const Balloon& balloon : drawing.balloons) {
            EXPECT_GT(balloon.at.x - balloon.size / 2, 0) << drawing.id;
            EXPECT_LT(balloon.at.x + balloon.size / 2, drawing.width) << drawing.id;
            EXPECT_LT(balloon.at.y + balloon.size / 2, drawing.height) << drawing.id;
            for (const PaperBox& word : drawing.words) {
                const double x = std::clamp(balloon.at.x, word.low.x, word.high.x),
                             y = std::clamp(balloon.at.y, word.low.y, word.high.y);
                EXPECT_GT(std::hypot(balloon.at.x - x, balloon.at.y - y), balloon.size / 2) << drawing.id << ' ' << balloon.text;
            }
        }
        EXPECT_LE(drawing.width, drawing.landscape ? 250 : 184) << drawing.id;
        EXPECT_LE(drawing.height, 250) << drawing.id;
        EXPECT_TRUE(is_nested(drawing.svg)) << drawing.id;
        EXPECT_EQ(drawing.svg.find("style="), std::string::npos) << drawing.id;
    }
    for (std::size_t number = 1; number <= drawn.plan.steps.size(); ++number) {
        EXPECT_EQ(shown.count(number), 1U) << number;
        const Drawing* drawing = drawing_of(drawn.drawings, number);
        ASSERT_NE(drawing, nullptr) << number;
        EXPECT_NE(drawing->svg.find("data-closing=\"" + std::to_string(number) + "\""), std::string::npos) << number;
    }
}

INSTANTIATE_TEST_SUITE_P(All, ShippedJobs,
                         testing::Values("demo", "two-story", "townhouse", "brick-crawl", "apartments", "wall-corner"));

TEST(Drawings, AreSizedSoThatAPrintIsToScale) {
    // The demo's framing is 18 m by 12 m, 33 mm of sheathing and stucco before it on each side.
    for (const auto& [lengths, denominator] : {std::pair(Lengths::inches, 128.0), std::pair(Lengths::millimeters, 125.0)}) {
        const Drawn& whole = demo();
        const auto drawings = draw_house(whole.drawing_job(lengths), Translator(Language::english));
        const auto plan = std::find_if(drawings.begin(), drawings.end(), [](const Drawing& d) { return d.id == "plan-1"; });
        ASSERT_NE(plan, drawings.end());
        const std::string& svg = plan->svg;
        const std::string width = between(svg, " width=\"", "mm\""), height = between(svg, " height=\"", "mm\"");
        EXPECT_EQ(between(svg, "viewBox=\"0 0 ", "\""),
                  width + " " + height);  // one unit of the box is a millimeter of the print
        double low = 1e9, high = -1e9;
        const std::string data = between(svg, "<defs><path d=\"", "\"");
        ASSERT_FALSE(data.empty());
        static const std::regex point("[ML](-?[0-9.]+) (-?[0-9.]+)");
        for (std::sregex_iterator at(data.begin(), data.end(), point), end; at != end; ++at) {
            low = std::min(low, std::stod((*at)[1]));
            high = std::max(high, std::stod((*at)[1]));
        }
        EXPECT_NEAR((high - low) * denominator / 1000, 18 + 2 * 0.033, 0.15);  // the meter can stands out of the wall
        EXPECT_NE(svg.find(lengths == Lengths::inches ? "3/32&quot; = 1&#39;-0&quot;" : "1:125"), std::string::npos)
            << plan->scale;
    }
}

TEST(Drawings, GapsStandInTheViewThatSeesThem) {
    const auto shows = [](const std::string& id, const std::string& gap) {
        const Drawing& drawing = demo().named(id);
        return std::any_of(drawing.balloons.begin(), drawing.balloons.end(),
                           [&](const Balloon& balloon) { return demo().job.survey.gaps[balloon.of].id == gap; });
    };
    EXPECT_TRUE(shows("north", "slider-corner"));
    EXPECT_TRUE(shows("north", "slider-weeps"));
    EXPECT_TRUE(shows("south", "front-door-sweep"));
    EXPECT_TRUE(shows("west", "dryer-hood"));
    EXPECT_TRUE(shows("east", "window-weeps-primary"));
    EXPECT_TRUE(shows("plan-1", "attic-hatch"));
    EXPECT_TRUE(shows("plan-1", "kitchen-sink-drain"));
    EXPECT_FALSE(shows("north", "kitchen-sink-drain"));
}

TEST(Drawings, MarksStandWhereTheGapsAre) {
    // In the north elevation west is on the right: of two gaps the one farther west.
    const Drawing& north = demo().named("north");
    const auto site = [&](const std::string& gap) {
        const auto found = std::find_if(north.balloons.begin(), north.balloons.end(),
                                        [&](const Balloon& b) { return demo().job.survey.gaps[b.of].id == gap; });
        return found->site;
    };
    const Point2 slider = site("slider-corner"),
                 window = site("window-weeps-kitchen");  // x = 12.28 m and 5.7 m, z = 0.06 and 1.07
    EXPECT_NEAR((window.x - slider.x) * 128 / 1000, 12.28 - 5.7, 0.25);
    EXPECT_NEAR((slider.y - window.y) * 128 / 1000, 1.07 - 0.06, 0.25);
}

TEST(Drawings, AreReadWithoutBeingSeen) {
    for (const Drawing& drawing : demo().drawings) {
        EXPECT_EQ(count_of(drawing.svg, "role=\"img\""), 1U);
        EXPECT_NE(drawing.svg.find("<title id=\"drawing-" + drawing.id + "-title\">" + drawing.title.english()),
                  std::string::npos);
        EXPECT_NE(drawing.svg.find("<desc id=\"drawing-" + drawing.id + "-desc\">Scale "), std::string::npos);
        static const std::regex font("font-size=\"([0-9.]+)\"");
        for (std::sregex_iterator at(drawing.svg.begin(), drawing.svg.end(), font), end; at != end; ++at)
            EXPECT_GE(std::stod((*at)[1]), 3.5) << drawing.id;
        for (const GapIndex gap : drawing.open) {
            const std::string first = demo().job.survey[gap].label().substr(0, 8);
            EXPECT_NE(drawing.svg.find(escaped(first)), std::string::npos) << first;
        }
    }
}

TEST(Drawings, NumbersAndLettersAreOnTheirDrawingOnly) {
    std::set<std::string> letters;
    for (const Drawing& drawing : demo().drawings) {
        for (const Balloon& balloon : drawing.balloons) {
            EXPECT_TRUE(!balloon.stays_open || letters.insert(balloon.text).second) << balloon.text;
        }
        EXPECT_EQ(count_of(drawing.svg, "data-closing="), drawing.closings.size());
        EXPECT_EQ(count_of(drawing.svg, "class=\"open-gap\""), drawing.open.size());
    }
    EXPECT_EQ(letters.count("I") + letters.count("O"), 0U);
}

TEST(Drawings, AJobWithoutSolidsHasNone) {
    const Job job = parse_job(
        "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: room, kind: living}]\n"
        "gaps: [{id: a, between: [yard, room], slot: {width: 2 mm, length: 1 m}}]\n",
        "job.yaml");
    EXPECT_TRUE(draw_house({job.house, true, {GapIndex{0}}, Lengths::inches}, Translator(Language::english)).empty());
}

TEST(Drawings, NamesOfTheJobAreNoMarkup) {
    Job job = job_of("wall-corner");
    for (Space& space : job.house.survey.spaces) space.name = "</text><script>alert(1)</script>";
    for (Gap& gap : job.house.survey.gaps) gap.name = "\"><img src=x onerror=alert(1)>";
    for (const Drawing& drawing : draw_house({job.house, true, {}, Lengths::inches}, Translator(Language::english))) {
        EXPECT_EQ(drawing.svg.find("<script"), std::string::npos);
        EXPECT_EQ(drawing.svg.find("<img"), std::string::npos);
        EXPECT_TRUE(is_nested(drawing.svg));
    }
}

TEST(Drawings, SameInputSameBytes) {
    const auto again = draw_house(demo().drawing_job(Lengths::inches), Translator(Language::english));
    ASSERT_EQ(again.size(), demo().drawings.size());
    for (std::size_t i = 0; i < again.size(); ++i) EXPECT_EQ(again[i].svg, demo().drawings[i].svg);
}

/// Walls and a floor as a model has them: no rooms, no ways through gaps, faces turned inside out.
TEST(Drawings, ModelsAreDrawnFromTheirSolidsAlone) {
    Job job = job_of("wall-corner");
    House model;
    model.survey = job.survey;
    model.middles.resize(model.survey.spaces.size());
    for (Part part : job.house.parts) {
        if (part.layer == Layer::ground) continue;
        part.layer = Layer::interior;
        for (auto& triangle : part.mesh.triangles) std::swap(triangle[0], triangle[1]);
        model.parts.push_back(std::move(part));
    }
    const auto drawings = draw_house({model, false, {}, Lengths::millimeters}, Translator(Language::english));
    ASSERT_EQ(drawings.size(), 5U);
    EXPECT_EQ(drawings.front().id, "plan-1");
    for (const Drawing& drawing : drawings) EXPECT_GT(count_of(drawing.svg, "M"), 8U) << drawing.id;
}

}  // namespace
}  // namespace seamward
