// SPDX-License-Identifier: GPL-3.0-or-later
#include <cstdio>

#include "teach/answers.h"
#include "teach/briefing.h"
#include "teach/yaml_text.h"

namespace seamward {

namespace {

std::string coordinate_text(double meters) {
    char text[40];
    (void)std::snprintf(text, sizeof text, "%.17g m", meters);
    return text;
}

std::string where_text(const FoundAt& where, const DrillRound& round) {
    if (where.place) return "place: " + std::to_string(*where.place + 1);
    if (where.gap) return "gap: " + round.job.survey[*where.gap].id;
    if (!where.at) return "";
    return "at: [" + coordinate_text(where.at->x) + ", " + coordinate_text(where.at->y) + ", " + coordinate_text(where.at->z) +
           "]";
}

}  // namespace

std::string written_answers(const Answers& answers, const DrillRound& round) {
    std::string text =
        "seamward-answers: 1\ndrill: " + yaml_quoted(answers.drill) + "\ntrainee: " + yaml_quoted(answers.trainee) + '\n';
    if (answers.date) text += "date: " + date_text(*answers.date) + '\n';
    if (answers.entry) text += "entry: {" + where_text(*answers.entry, round) + "}\n";
    text += "findings:" + std::string(answers.findings.empty() ? " []" : "") + '\n';
    for (const PlaceAnswer& finding : answers.findings) {
        text += "  - {" + where_text(finding.where, round) + ", state: " + (finding.open ? "open" : "tight");
        if (finding.width) text += ", width: " + yaml_length(*finding.width);
        if (finding.between)
            text += ", between: [" + round.job.survey[(*finding.between)[0]].id + ", " +
                    round.job.survey[(*finding.between)[1]].id + "]";
        if (!finding.treatment.empty()) text += ", treatment: " + finding.treatment;
        if (finding.opening > 0) text += ", opening: " + yaml_length(finding.opening);
        if (finding.wait) text += ", wait: true";
        text += "}\n";
    }
    return text;
}

std::string blank_answers(const DrillRound& round, const Translator& say) {
    const Briefing brief = briefing(round, say);
    std::string text = "# " + brief.title + '\n';
    const auto comment = [&](const Message& line) { text += "# " + say(line) + '\n'; };
    comment("Write your name, and at each place that you looked at what you found. Leave empty where you did not look.");
    comment(
        "state: open or tight. width: with its unit, 1.2 mm or 3/64 in. between: the two spaces that it joins, [yard, kitchen].");
    comment("treatment: how it is closed, or leave-open. wait: true where an animal has to leave before it is closed.");
    text += "#\n# " + say("Spaces") + ":\n";
    for (const auto& [id, name] : brief.spaces) text += "#   " + id + "  " + name + '\n';
    text += "# " + say("Treatments") + ":\n";
    for (const auto& [id, name] : brief.treatments) text += "#   " + id + "  " + name + '\n';
    text += "seamward-answers: 1\ndrill: " + yaml_quoted(round.drill.id) + "\ntrainee: \"\"\ndate:\n";
    if (!brief.question.empty()) text += "# " + brief.question + "\nentry: {place: }\n";
    text += "findings:\n";
    for (const BriefedPlace& place : brief.places) {
        text +=
            "  # " + std::to_string(place.number) + "  " + place.name + (place.height.empty() ? "" : ", " + place.height) + '\n';
        text += "  - place: " + std::to_string(place.number) + "\n    state:\n    width:\n    between: []\n    treatment:\n";
    }
    return text;
}

}  // namespace seamward
