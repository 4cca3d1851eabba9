// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/house_figure.h"

#include <algorithm>
#include <array>
#include <set>

#include "report/page_model.h"

namespace seamward {

namespace {

Message coat_name(Coat coat) {
    switch (coat) {
        case Coat::roof: return "Roof";
        case Coat::walls: return "Outer walls, windows and doors";
        case Coat::framing: return "Framing";
        case Coat::linings: return "Ceilings and inner walls";
        case Coat::fixtures: return "Pipes, vents and fixtures";
        case Coat::ground: break;
    }
    return "Ground, slab and yard";
}

class HouseFigure {
public:
    explicit HouseFigure(PageWriter& page) : page_(page), html_(page.html) {}

    void write() {
        html_.element("p",
                      page_.say("The house in 3D is shown where scripts and 3D drawing (WebGL) are at hand. The same facts stand "
                                "in the lists, tables and drawings of this page."),
                      {{"id", "no-house"}, {"class", "note"}});
        html_.begin("figure", {{"id", "house"}, {"hidden", ""}, {"aria-labelledby", "house-title"}});
        html_.begin("figcaption");
        html_.element("h2", page_.say("The house and its ways in"), {{"id", "house-title"}});
        html_.element(
            "p", page_.say("Drag to turn the house, pinch or scroll to come nearer. Touch a number to see what it stands for."),
            {{"id", "house-help"}});
        html_.end();
        stage();
        work();
        animals();
        coats();
        legend();
        html_.end();
    }

private:
    void stage() {
        html_.begin("div", {{"class", "stage"}});
        html_.element(
            "canvas", "",
            {{"id", "house-picture"},
             {"tabindex", "0"},
             {"role", "application"},
             {"aria-label", page_.say("Picture of the house in 3D. Arrow keys turn it, plus and minus come nearer and go away, "
                                      "Home goes back.")}});
        html_.element("canvas", "", {{"id", "house-marks"}, {"aria-hidden", "true"}});
        // The browser may take the picture's memory away, as phones do when another page wants it.
        html_.begin("div", {{"id", "house-lost"}, {"class", "lost"}, {"role", "alert"}, {"hidden", ""}});
        html_.element(
            "p", page_.say("The browser took the picture away to save memory. It is drawn again once it may be; the lists and "
                           "drawings below are not touched."));
        html_.element("button", page_.say("Load the page again"), {{"type", "button"}, {"id", "house-again"}});
        html_.end();
        html_.begin("div", {{"class", "sides"}, {"role", "group"}, {"aria-label", page_.say("Look from")}});
        constexpr std::array<std::pair<const char*, const char*>, 6> sides{
            {{"north", "North"}, {"east", "East"}, {"south", "South"}, {"west", "West"}, {"above", "Above"}, {"home", "Start"}}};
        for (const auto& [side, name] : sides)
            html_.element("button", page_.say(name), {{"type", "button"}, {"data-side", side}});
        html_.end();
        html_.begin("div", {{"id", "house-card"}, {"class", "card"}, {"hidden", ""}});
        html_.begin("p").element("strong", "", {{"id", "card-title"}}).end();
        html_.element("p", "", {{"id", "card-text"}});
        html_.begin("p", {{"class", "card-buttons"}});
        html_.element("button", page_.say("Go to the list"), {{"type", "button"}, {"id", "card-list"}});
        html_.element("button", page_.say("Close"), {{"type", "button"}, {"id", "card-close"}});
        html_.end().end().end();
    }

    void work() {
        html_.begin("div", {{"class", "work"}});
        const std::string steps = std::to_string(page_.facts.plan.steps.size());
        if (!page_.facts.plan.steps.empty()) {
            html_.element("label", page_.say("The work as it goes on"), {{"for", "house-step"}});
            html_.begin("div", {{"class", "work-row"}});
            html_.element("button", page_.say("Before"), {{"type", "button"}, {"id", "work-before"}});
            html_.single("input",
                         {{"type", "range"}, {"id", "house-step"}, {"min", "0"}, {"max", steps}, {"value", "0"}, {"step", "1"}});
            html_.element("button", page_.say("After"), {{"type", "button"}, {"id", "work-after"}});
            html_.end();
        }
        html_.element("p", "", {{"id", "house-news"}, {"role", "status"}});
        html_.end();
    }

    void radio(const std::string& group, const std::string& value, bool checked, const std::string& words) {
        html_.begin("label", {{"class", "choice"}});
        Html::Attributes attributes{{"type", "radio"}, {"name", group}, {"value", value}};
        if (checked) attributes.push_back({"checked", ""});
        html_.single("input", attributes);
        html_.element("span", words);
        html_.end();
    }

    void animals() {
        if (page_.facts.animals.empty()) return;
        html_.begin("fieldset", {{"class", "animals"}});
        html_.element("legend", page_.say("Whose ways in are shown"));
        html_.begin("div", {{"class", "choices"}});
        radio("animal", "all", true, page_.say("All animals"));
        for (std::size_t i = 0; i < page_.facts.animals.size(); ++i)
            radio("animal", std::to_string(i), false, page_.say(as_named(page_.facts.animals[i].name)));
        html_.end().end();
    }

    void coats() {
        std::set<Coat> there;
        for (const Part& part : page_.facts.job.house.parts) there.insert(coat_of(part.layer));
        html_.begin("details", {{"class", "coats"}});
        html_.element("summary", page_.say("What of the house is shown"));
        html_.begin("label", {{"class", "choice"}});
        html_.single("input", {{"type", "checkbox"}, {"id", "look-through"}, {"checked", ""}});
        html_.element("span", page_.say("What stands in front of the rooms gets faint"));
        html_.end();
        html_.begin("div", {{"class", "coat-rows"}});
        for (const Coat coat : all_coats) {
            if (!there.contains(coat)) continue;
            const std::string group = std::string("coat-") + coat_word(coat);
            html_.begin("fieldset");
            html_.element("legend", page_.say(coat_name(coat)));
            html_.begin("div", {{"class", "choices"}});
            radio(group, "shown", true, page_.say("Shown"));
            radio(group, "faint", false, page_.say("Faint"));
            radio(group, "hidden", false, page_.say("Hidden"));
            html_.end().end();
        }
        html_.end().end();
    }

    void legend() {
        html_.begin("ul", {{"class", "legend"}});
        constexpr std::array<std::pair<const char*, const char*>, 5> rows{
            {{"way", "way in, with its number; dashed where something stands before it"},
             {"pinch", "its smallest gap, which decides what gets in"},
             {"closing", "number of a closing"},
             {"done", "closing that is done"},
             {"open", "gap that must stay open"}}};
        for (const auto& [mark, words] : rows) {
            html_.begin("li");
            html_.element("span", "", {{"class", std::string("mark ") + mark}, {"aria-hidden", "true"}});
            html_.text(page_.say(words));
            html_.end();
        }
        html_.end();
    }

    PageWriter& page_;
    Html& html_;
};

}  // namespace

void house_figure(PageWriter& page) {
    if (page.facts.has_solids() && !page.facts.settings.printed) HouseFigure(page).write();
}

}  // namespace seamward
