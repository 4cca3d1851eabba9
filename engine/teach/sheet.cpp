// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/html.h"
#include "teach/briefing.h"
#include "teach/plain_page.h"

namespace seamward {

namespace {

void list(Html& html, const std::string& title, const std::vector<std::string>& lines) {
    if (lines.empty()) return;
    html.element("h3", title);
    html.begin("ul", {{"class", "compact"}});
    for (const std::string& line : lines) html.element("li", line);
    html.end();
}

std::vector<std::string> named(const std::vector<std::pair<std::string, std::string>>& rows) {
    std::vector<std::string> lines;
    for (const auto& [id, name] : rows) lines.push_back(name == id ? name : name + " (" + id + ")");
    return lines;
}

}  // namespace

std::string briefing_sheet(const DrillRound& round, const Translator& say) {
    const Briefing brief = briefing(round, say);
    Html html;
    html.element("p", brief.story, {{"class", "lead"}});
    html.element("p", say(message("{}; name: ____________________  date: __________", {as_it_stands(brief.difficulty)})));
    list(html, say("Animals"), brief.animals);
    list(html, say("They live in the house"), brief.lives);
    if (!brief.question.empty()) {
        html.element("h3", say("Question"));
        html.element("p", brief.question);
    }
    html.begin("section").element("h2", say("Places to look at"));
    html.begin("table", {{"class", "stack"}});
    html.begin("thead").begin("tr");
    const std::vector<std::string> heads{say("Place"), say("Open or tight"), say("Width"), say("Joins"), say("Treatment")};
    for (const std::string& head : heads) html.element("th", head, {{"scope", "col"}});
    html.end().end().begin("tbody");
    for (const BriefedPlace& place : brief.places) {
        html.begin("tr");
        html.element("th", std::to_string(place.number) + ". " + place.name + (place.height.empty() ? "" : ", " + place.height),
                     {{"scope", "row"}});
        for (std::size_t i = 1; i < heads.size(); ++i) html.element("td", "________", {{"data-label", heads[i]}});
        html.end();
    }
    html.end().end().end();
    html.begin("section");
    list(html, say("Spaces"), named(brief.spaces));
    list(html, say("Treatments"), named(brief.treatments));
    list(html, say("How it is scored"), brief.rules);
    html.end();
    return plain_page(say, brief.title, html.written());
}

}  // namespace seamward
