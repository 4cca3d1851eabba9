// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/json_writer.h"
#include "base/measure_text.h"
#include "base/text.h"
#include "tool/drill_command.h"

namespace seamward {

namespace {

void texts(JsonWriter& json, const char* key, const std::vector<std::string>& lines) {
    json.key(key).begin_array();
    for (const std::string& line : lines) json.value(printable(line));
    json.end_array();
}

void pairs(JsonWriter& json, const char* key, const std::vector<std::pair<std::string, std::string>>& rows) {
    json.key(key).begin_array();
    for (const auto& [id, name] : rows) json.begin_object().key("id").value(id).key("name").value(printable(name)).end_object();
    json.end_array();
}

const char* mark_word(Mark mark) {
    switch (mark) {
        case Mark::right: return "right";
        case Mark::wrong: return "wrong";
        case Mark::missing: return "missing";
        case Mark::not_asked: break;
    }
    return "not-asked";
}

void write_way(JsonWriter& json, const DrillRound& round, const MissedWay& way) {
    const Survey& survey = round.job.survey;
    json.key("way").begin_object().key("pinch_mm").value(answer_millimeters(way.pinch));
    json.key("pinch_gap").value(survey[way.pinch_gap].id).key("gaps").begin_array();
    for (const GapIndex gap : way.path.gaps) json.value(survey[gap].id);
    json.end_array().key("spaces").begin_array();
    for (const SpaceIndex space : way.path.spaces) json.value(survey[space].id);
    json.end_array().key("open_to").begin_array();
    for (const std::size_t i : way.open_to) json.value(round.drill.animals[i].id);
    json.end_array().end_object();
}

}  // namespace

std::string briefing_answer(const DrillRound& round, const Briefing& briefing) {
    JsonWriter json;
    json.begin_object().key("drill").value(round.drill.id).key("title").value(briefing.title);
    json.key("difficulty").value(difficulty_word(round.drill.difficulty)).key("story").value(briefing.story);
    if (!briefing.question.empty()) json.key("question").value(briefing.question);
    json.key("pass_share").value(round.drill.pass_mark);
    texts(json, "animals", briefing.animals);
    texts(json, "lives", briefing.lives);
    json.key("places").begin_array();
    for (const BriefedPlace& place : briefing.places) {
        json.begin_object().key("place").value(static_cast<std::int64_t>(place.number));
        json.key("name").value(printable(place.name)).key("height").value(place.height);
        if (place.at) json.key("at").begin_array().value(place.at->x).value(place.at->y).value(place.at->z).end_array();
        json.end_object();
    }
    json.end_array();
    pairs(json, "spaces", briefing.spaces);
    pairs(json, "treatments", briefing.treatments);
    texts(json, "rules", briefing.rules);
    json.end_object();
    return json.text();
}

std::string check_answer(const DrillRound& round, const Answers& answers, const DrillResult& result,
                         const DrillFeedback& feedback) {
    const Survey& survey = round.job.survey;
    JsonWriter json;
    json.begin_object().key("drill").value(round.drill.id).key("trainee").value(printable(answers.trainee));
    json.key("passed").value(result.passed).key("points").value(std::int64_t{result.points});
    json.key("most").value(std::int64_t{result.most}).key("headline").value(feedback.headline);
    json.key("harms").begin_array();
    for (std::size_t i = 0; i < result.harms.size(); ++i) {
        json.begin_object().key("gap").value(survey[result.harms[i].gap].id).key("what").value(feedback.harms[i].what);
        texts(json, "notes", feedback.harms[i].notes);
        json.end_object();
    }
    json.end_array().key("places").begin_array();
    for (const PlaceFeedback& told : feedback.places) {
        const PlaceResult& place = result.places[told.place];
        json.begin_object()
            .key("place")
            .value(static_cast<std::int64_t>(told.place + 1))
            .key("name")
            .value(printable(told.title));
        if (round.places[told.place].gap) json.key("gap").value(survey[*round.places[told.place].gap].id);
        json.key("verdict").value(told.verdict).key("false_alarm").value(place.false_alarm);
        json.key("found").value(mark_word(place.found)).key("width").value(mark_word(place.width));
        json.key("connection").value(mark_word(place.connection)).key("treatment").value(mark_word(place.treatment));
        json.key("points").value(std::int64_t{place.points}).key("most").value(std::int64_t{place.most});
        texts(json, "notes", told.notes);
        if (told.way) write_way(json, round, *told.way);
        json.end_object();
    }
    json.end_array();
    json.key("false_alarms").value(static_cast<std::int64_t>(result.false_alarms.size()));
    if (result.entry != Mark::not_asked) json.key("entry").value(mark_word(result.entry));
    texts(json, "other", feedback.other);
    json.end_object();
    return json.text();
}

}  // namespace seamward
