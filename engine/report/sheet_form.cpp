// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/sheet_form.h"

#include <array>

#include "base/json_writer.h"
#include "base/measure_text.h"

namespace seamward {

namespace {

/// What the script says; `{}` as in Message, filled in by it.
constexpr std::array<std::pair<const char*, const char*>, 21> words{{
    {"width", "Measured width"},
    {"plus_minus", "Plus or minus"},
    {"second", "Second reading"},
    {"photo", "Photo"},
    {"note", "Note"},
    {"at", "{1}: {2}"},
    {"no_length", "{1}: this is no length: {2}. Write for example 1.2 mm or 3/64 in."},
    {"no_plus_minus", "{}: write how far the width may be off, here or as the usual plus or minus."},
    {"no_width", "{}: there is no width. Write it, or take this out."},
    {"readings_differ",
     "{}: the two readings differ by more than plus or minus. Measure again, or write a larger plus or minus."},
    {"no_name", "Say what the new gap is and where."},
    {"same_space", "A gap leads from one space into another. Choose two."},
    {"one_line", "{}: write it in one line of 4000 letters at most."},
    {"not_added", "There is a new gap that was not added yet. Add it, or empty its boxes."},
    {"problems", "Not saved. To mend: {}"},
    {"saved", "Saved as {}."},
    {"kept", "{1} of {2} gaps measured, {3} new. Kept on this device as you write."},
    {"not_kept", "{1} of {2} gaps measured, {3} new. This browser keeps nothing: save before you close the page."},
    {"remove", "Take out: {}"},
    {"photo_number", "Photo {}"},
    {"second_reader", "Second reader: {}"},
}};

/// A duty in words of the job file.
constexpr std::array<std::pair<const char*, Duty>, 10> duties{{{"none", Duty::none},
                                                               {"drain", Duty::drain},
                                                               {"weep", Duty::weep},
                                                               {"vent", Duty::vent},
                                                               {"exhaust", Duty::exhaust},
                                                               {"combustion-air", Duty::combustion_air},
                                                               {"flood", Duty::flood},
                                                               {"relief", Duty::relief},
                                                               {"movement", Duty::movement},
                                                               {"operable", Duty::operable}}};

/// A box to write in with its label.
void text_box(PageWriter& page, const std::string& id, const Message& label) {
    page.html.begin("p", {{"class", "field"}, {"id", id + "-field"}});
    page.html.element("label", page.say(label), {{"for", id}});
    page.html.single("input", {{"id", id}, {"type", "text"}, {"autocomplete", "off"}});
    page.html.end();
}

void choice(PageWriter& page, const std::string& id, const Message& label,
            const std::vector<std::pair<std::string, Message>>& options) {
    page.html.begin("p", {{"class", "field"}});
    page.html.element("label", page.say(label), {{"for", id}});
    page.html.begin("select", {{"id", id}});
    for (const auto& [value, text] : options) page.html.element("option", page.say(text), {{"value", value}});
    page.html.end().end();
}

const char* shape_of(const Gap& gap) {
    constexpr std::array names{"slot", "hole", "ring", "mesh"};
    return names.at(gap.shape.index());
}

}  // namespace

void sheet_settings(PageWriter& page) {
    Html& html = page.html;
    html.begin("section", {{"id", "fill-in"}, {"hidden", ""}, {"aria-labelledby", "fill-in-title"}});
    html.element("h2", page.say("Fill in on this screen"), {{"id", "fill-in-title"}});
    page.paragraph(
        "This works without a network, and nothing is sent anywhere. Leave boxes empty where you did not look. At the end, save "
        "it as a job file.");
    html.begin("fieldset").element("legend", page.say("A number without a unit is in"));
    const bool inches = page.facts.settings.lengths == Lengths::inches;
    for (const auto& [value, text] : {std::pair("mm", "millimeters"), std::pair("in", "inches")}) {
        Html::Attributes radio{{"type", "radio"}, {"name", "unit"}, {"id", std::string("unit-") + value}, {"value", value}};
        if (inches == (std::string_view(value) == "in")) radio.push_back({"checked", ""});
        html.begin("label").single("input", radio).text(page.say(text)).end();
    }
    html.end();
    text_box(page, "usual-plus-minus", "Usual plus or minus, where a gap has none of its own");
    html.element("p", "", {{"id", "kept"}, {"role", "status"}});
    html.end();
}

void new_gap_form(PageWriter& page) {
    Html& html = page.html;
    std::vector<std::pair<std::string, Message>> spaces, meanings;
    for (std::size_t i = 0; i < page.survey().spaces.size(); ++i)
        spaces.emplace_back(std::to_string(i), page.survey().spaces[i].called());
    for (const auto& [word, duty] : duties)
        meanings.emplace_back(word, duty == Duty::none ? "nothing, it is just there" : duty_words(duty));
    html.begin("div", {{"id", "new-gap"}, {"hidden", ""}, {"role", "group"}, {"aria-labelledby", "new-gaps-title"}});
    text_box(page, "new-name", "What it is and where");
    choice(page, "new-from", "From", spaces);
    choice(page, "new-into", "Into", spaces);
    choice(page, "new-shape", "Shape",
           {{"slot", "slot: a long opening"},
            {"hole", "hole: a round opening"},
            {"ring", "ring: around a pipe"},
            {"mesh", "mesh: a screen"}});
    text_box(page, "new-width", "Measured width, diameter, or one opening of the mesh");
    text_box(page, "new-length", "Length of the slot");
    text_box(page, "new-around", "How thick the pipe is");
    text_box(page, "new-plus_minus", "Plus or minus");
    choice(page, "new-duty", "What it is there for", meanings);
    text_box(page, "new-photo", "Photo, number or file");
    text_box(page, "new-note", "Note");
    html.element("button", page.say("Add this gap"), {{"type", "button"}, {"id", "add-gap"}});
    html.element("p", "", {{"id", "add-problems"}, {"role", "alert"}});
    html.begin("ul", {{"id", "added-gaps"}, {"aria-label", page.say("New gaps")}}).end();
    html.end();
}

void sheet_end(PageWriter& page) {
    Html& html = page.html;
    html.begin("section", {{"id", "hand-back"}, {"hidden", ""}, {"aria-labelledby", "hand-back-title"}});
    html.element("h2", page.say("Hand back"), {{"id", "hand-back-title"}});
    page.paragraph("The file holds the whole job with what was measured put in. Comments of the old file are not in it.");
    page.paragraph("Put it into the folder of the old job file: it finds the house and the photos from there.");
    html.element("button", page.say("Save as a job file"), {{"type", "button"}, {"id", "save"}, {"class", "main"}});
    html.begin("div", {{"id", "problems"}, {"role", "alert"}}).end();
    html.begin("details").element("summary", page.say("Nothing was saved? Copy the text from here"));
    html.element("label", page.say("Text of the job file"), {{"for", "job-text"}});
    html.element("textarea", "", {{"id", "job-text"}, {"readonly", ""}, {"rows", "8"}, {"spellcheck", "false"}});
    html.end();
    html.begin("details").element("summary", page.say("Empty all boxes"));
    html.element("button", page.say("Yes, empty all boxes of this sheet"), {{"type", "button"}, {"id", "clear"}});
    html.end();
    html.end();
}

std::string sheet_data(const PageWriter& page) {
    JsonWriter json;
    json.begin_object();
    json.key("words").begin_object();
    for (const auto& [key, pattern] : words) json.key(key).value(page.say(Message(pattern)));
    json.end_object();
    json.key("name").value(shown_text(page.facts.job_file.stem));
    json.key("job").value(page.facts.job_file.json);
    json.key("spaces").begin_array();
    for (const Space& space : page.survey().spaces) json.value(space.id);
    json.end_array();
    json.key("gaps").begin_array();
    for (std::size_t i = 0; i < page.survey().gaps.size(); ++i) {
        const Gap& gap = page.survey().gaps[i];
        json.begin_object();
        json.key("id").value(gap.id);
        json.key("shape").value(shape_of(gap));
        json.key("of_house").value(i < page.job().gaps_of_house);
        json.end_object();
    }
    json.end_array();
    json.end_object();
    return within_script(json.text());
}

}  // namespace seamward
