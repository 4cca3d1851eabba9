// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/feedback.h"

#include <gtest/gtest.h>

#include "catalog/passage.h"
#include "teach/progress.h"
#include "tests/support/brute_force.h"
#include "tests/teach/shipped_drills.h"

namespace seamward::test {
namespace {

DrillFeedback told(const DrillRound& round, const Answers& answers) {
    return feedback(round, answers, score(round, answers), Translator(Language::english), RunContext());
}

bool says(const std::vector<std::string>& notes, const std::string& words) {
    return std::any_of(notes.begin(), notes.end(),
                       [&](const std::string& note) { return note.find(words) != std::string::npos; });
}

const PlaceFeedback& at(const DrillFeedback& feedback, std::size_t place) {
    for (const PlaceFeedback& one : feedback.places) {
        if (one.place == place) return one;
    }
    throw std::out_of_range("nothing is told of place " + std::to_string(place));
}

/// Of each missed gap that an animal gets through: a path of the survey through it, and who gets all the way.
TEST(Feedback, ShowsTheWayThroughEachMissedGap) {
    std::size_t ways = 0;
    for (const std::string& name : drill_names()) {
        const DrillRound& round = shipped_drill(name);
        Answers nothing = perfect_answers(round, "Ines Aguirre");
        nothing.findings.clear();
        const DrillFeedback feedback = told(round, nothing);
        const std::vector<PlaceKey> key = drill_key(round);
        for (const PlaceFeedback& place : feedback.places) {
            EXPECT_EQ(place.verdict, "missed");
            if (!place.way) continue;
            ++ways;
            const Survey& survey = round.job.survey;
            const GapIndex gap = *round.places[place.place].gap;
            EXPECT_NE(std::find(place.way->path.gaps.begin(), place.way->path.gaps.end(), gap), place.way->path.gaps.end());
            EXPECT_TRUE(survey[place.way->path.from()].starts_paths());
            EXPECT_TRUE(survey[place.way->path.to()].is_living());
            for (std::size_t i = 0; i < place.way->path.gaps.size(); ++i) {
                const auto& between = survey[place.way->path.gaps[i]].between;
                const SpaceIndex a = place.way->path.spaces[i], b = place.way->path.spaces[i + 1];
                EXPECT_TRUE((between[0] == a && between[1] == b) || (between[0] == b && between[1] == a));
            }
            for (std::size_t i = 0; i < round.drill.animals.size(); ++i) {
                const bool all_the_way = std::all_of(place.way->path.gaps.begin(), place.way->path.gaps.end(), [&](GapIndex one) {
                    return gets_through(survey[one], round.drill.animals[i], false);
                });
                const auto& open_to = place.way->open_to;
                EXPECT_EQ(std::find(open_to.begin(), open_to.end(), i) != open_to.end(), all_the_way);
            }
            EXPECT_TRUE(says(place.notes, "The way that you missed"));
        }
    }
    EXPECT_GT(ways, 40U);
}

TEST(Feedback, SaysWhatFitsWhereATreatmentIsWrong) {
    const DrillRound& round = shipped_drill("4-garage");
    Answers answers = perfect_answers(round, "Marisol Quade");
    const std::size_t sweep = place_of(round, "garage-house-sweep");
    for (PlaceAnswer& answer : answers.findings) {
        if (answer.where.place == sweep) answer.treatment = "sweep";
    }
    const DrillFeedback feedback = told(round, answers);
    const PlaceFeedback& place = at(feedback, sweep);
    EXPECT_TRUE(says(place.notes, "you said door sweep")) << place.notes.size();
    EXPECT_TRUE(says(place.notes, "door sweep with a core of metal wool"));
    EXPECT_TRUE(says(place.notes, "Gnaws through it: House mouse"));
}

/// Of two strips that are both gnawed neither is told to be worse for it; where something resists, what is gnawed is.
TEST(Feedback, TellsOneTruthOfWhatIsGnawed) {
    const DrillRound& round = shipped_drill("4-garage");
    const auto notes = [&](const char* gap, const char* treatment) {
        Answers answers = perfect_answers(round, "Marisol Quade");
        const std::size_t place = place_of(round, gap);
        for (PlaceAnswer& answer : answers.findings) {
            if (answer.where.place == place && *treatment != '\0') answer.treatment = treatment;
        }
        return at(told(round, answers), place).notes;
    };
    for (const char* treatment : {"weatherstrip", "threshold", "sweep", ""}) {
        const std::vector<std::string> corner = notes("garage-door-corner", treatment);
        EXPECT_FALSE(says(corner, "Gnaws through it")) << treatment;
        EXPECT_TRUE(says(corner, "Nothing that fits there resists gnawing by House mouse")) << treatment;
    }
    EXPECT_TRUE(says(notes("garage-attic-stair", ""), "Nothing that fits there resists gnawing by House mouse"));
    EXPECT_FALSE(says(notes("garage-door-sides", ""), "gnaw")) << "no mouse gets through 4 mm";
    for (const char* treatment : {"sweep", "threshold"}) {
        EXPECT_TRUE(says(notes("closet-door-sweep", treatment), "Gnaws through it: House mouse")) << treatment;
        EXPECT_FALSE(says(notes("closet-door-sweep", treatment), "resists gnawing")) << treatment;
    }
    EXPECT_FALSE(says(notes("closet-door-sweep", "metal-core-sweep"), "gnaw"));
}

/// Strips that fit are there, and all who get through gnaw them: that nothing fits would be wrong.
TEST(Feedback, SaysWhereAllThatFitsIsGnawed) {
    const DrillRound& round = shipped_drill("5-whole-house");
    Answers nothing = perfect_answers(round, "Ines Aguirre");
    nothing.findings.clear();
    const DrillFeedback feedback = told(round, nothing);
    const PlaceFeedback& door = at(feedback, place_of(round, "crawl-door-sides"));
    EXPECT_TRUE(says(door.notes, "What fits it is gnawed through by all that get through"));
    EXPECT_FALSE(says(door.notes, "No treatment of the table fits it"));
}

/// Foam round an access panel is wrong, and not for anybody's way out.
TEST(Feedback, TellsWhyAPanelGoesOnOpening) {
    const auto harm = [](const char* drill, const char* gap) {
        const DrillRound& round = shipped_drill(drill);
        const DrillFeedback feedback = told(round, closing(round, gap_of(round, gap), "foam"));
        return feedback.harms.at(0).notes;
    };
    for (const auto& [drill, gap] : {std::pair("3-bathroom", "tub-access-panel"), std::pair("4-garage", "garage-attic-stair")}) {
        EXPECT_TRUE(says(harm(drill, gap), "whoever looks after what is behind it")) << gap;
        EXPECT_FALSE(says(harm(drill, gap), "fire")) << gap;
    }
    EXPECT_TRUE(says(harm("4-garage", "closet-door-sweep"), "a way out in a fire stays one"));
}

TEST(Feedback, TellsHarmFirstWithReasonAndSource) {
    const DrillRound& round = shipped_drill("1-corner");
    const DrillFeedback feedback = told(round, closing(round, gap_of(round, "screed-drain-holes"), "bead"));
    ASSERT_EQ(feedback.harms.size(), 1U);
    EXPECT_NE(feedback.headline.find("it does harm"), std::string::npos);
    EXPECT_TRUE(says(feedback.harms[0].notes, "water in the wall"));
    EXPECT_TRUE(says(feedback.harms[0].notes, "R703.7.2.1"));
    EXPECT_TRUE(says(feedback.harms[0].notes, "close the joint"));
}

/// An open knockout does not have to stay open: it is somebody else's to close. A dryer's joint is put together.
TEST(Feedback, TellsWhoseWorkItIs) {
    const auto notes = [](const char* scenario, const char* feature, Language language, bool hired = true) {
        Job job = read_job(source_folder / "scenarios" / (std::string(scenario) + ".yaml"), RunContext());
        std::uint32_t i = 0;
        while (job.survey.gaps.at(i).feature != feature || (hired && job.survey.gaps.at(i).duty != Duty::none)) ++i;
        const DrillRound round = round_on(std::move(job), {{i}});
        const Answers nothing{"Ines Aguirre", "made", std::nullopt, std::nullopt, {}};
        const Translator say(language);
        std::vector<std::string> all = feedback(round, nothing, score(round, nothing), say, RunContext()).places.at(0).notes;
        EXPECT_TRUE(say.missing().empty());
        return all;
    };
    for (const char* feature : {"panel-knockout", "meter-can"}) {
        EXPECT_TRUE(says(notes("demo", feature, Language::english), "Not yours to close: service equipment")) << feature;
        EXPECT_FALSE(says(notes("demo", feature, Language::english), "It must stay open")) << feature;
        EXPECT_TRUE(says(notes("demo", feature, Language::spanish), "No le toca a usted cerrarlo")) << feature;
    }
    EXPECT_TRUE(says(notes("brick-crawl", "duct-joint", Language::english), "Instead: push the joint together"));
    EXPECT_TRUE(says(notes("brick-crawl", "duct-joint", Language::spanish), "En su lugar: empuje la junta"));
    EXPECT_TRUE(says(notes("demo", "meter-can", Language::english, false), "It must stay open"));
}

/// One share, told the same by a check and by the table of a class.
TEST(Feedback, TellsTheShareAsTheTableOfAClassDoes) {
    const DrillRound& round = shipped_drill("1-corner");
    const Translator say(Language::english);
    for (const auto& [points, most, text] :
         {std::tuple(28, 39, "71.7"), std::tuple(56, 80, "70"), std::tuple(699, 1000, "69.9"), std::tuple(6999, 10000, "69.9"),
          std::tuple(39, 39, "100"), std::tuple(0, 39, "0")}) {
        DrillResult result;
        result.points = points;
        result.most = most;
        const Answers nothing{"Ines Aguirre", "corner", std::nullopt, std::nullopt, {}};
        const std::string headline = feedback(round, nothing, result, say, RunContext()).headline;
        EXPECT_NE(headline.find(std::string(" points, ") + text + " %"), std::string::npos) << headline;
        const std::vector<Attempt> one{{"Ines Aguirre", "corner", std::nullopt, points, most, false, {}, {}, 0}};
        const std::string share = text;
        EXPECT_NE(class_summary(one, say).find(',' + share + ',' + share + ',' + share + ','), std::string::npos) << share;
    }
}

TEST(Feedback, ExplainsDecoys) {
    const DrillRound& round = shipped_drill("1-corner");
    Answers answers = perfect_answers(round, "Lucia Ferrand");
    answers.findings.emplace_back();
    answers.findings.back().where.place = 5;
    answers.findings.back().open = true;
    const DrillFeedback feedback = told(round, answers);
    EXPECT_EQ(at(feedback, 5).verdict, "false alarm");
    EXPECT_TRUE(says(at(feedback, 5).notes, "Only the paint is cracked"));
}

TEST(Feedback, NamesTheEntryThatWasAskedFor) {
    const DrillRound& round = shipped_drill("6-sighting");
    Answers answers = perfect_answers(round, "Ines Aguirre");
    EXPECT_TRUE(says(told(round, answers).other, "The entry is right"));
    answers.entry = FoundAt{std::nullopt, gap_of(round, "hose-bibb-east"), std::nullopt};
    EXPECT_TRUE(says(told(round, answers).other, "The entry is another: joint under the weep screed"));
    EXPECT_EQ(score(round, answers).points, score(round, answers).most - 10);
    answers.entry.reset();
    EXPECT_TRUE(says(told(round, answers).other, "The entry was not told"));
}

}  // namespace
}  // namespace seamward::test
