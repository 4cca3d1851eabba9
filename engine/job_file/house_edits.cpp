// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/house_edits.h"

#include "base/quantity.h"
#include "base/text.h"

namespace seamward {

namespace {

EditTree point(const std::array<double, 2>& at) { return EditTree::list({coordinate(at[0]), coordinate(at[1])}); }

}  // namespace

std::string HouseEditor::make(const AddFeature& edit) {
    EditTree& features = list("features");
    EditTree feature = EditTree::map({{"id", EditTree::line(new_id(features, edit.name, edit.type, edit.taken))}});
    const std::string id(feature.text_of("id"));
    feature["type"] = EditTree::word(edit.type);
    if (edit.name != id) set_line(feature, "name", edit.name, "a name");
    if (!edit.on.empty()) feature["on"] = EditTree::line(edit.on);
    set_coordinate(feature, "along", edit.along);
    set_coordinate(feature, "up", edit.up);
    if (edit.at) feature["at"] = point(*edit.at);
    if (!edit.side.empty()) feature["side"] = EditTree::line(edit.side);
    if (!edit.story.empty()) feature["story"] = EditTree::word(edit.story);
    if (!edit.gap.empty()) feature["gap"] = size(edit.gap, "gap");
    for (const auto& [gap, width] : edit.measured)
        feature[gap] =
            EditTree::map({{"gap", size(width, "gap")}, {"evidence", EditTree::map({{"how", EditTree::word("measured")}})}});
    features.push(std::move(feature));
    return id;
}

std::string HouseEditor::make(const ChangeFeature& edit) {
    EditTree* feature = entry("features", "id", edit.id);
    if (feature == nullptr) fail("there is no feature " + in_quotes(edit.id) + " in this file", "look at its list of features");
    if (edit.name) set_line(*feature, "name", *edit.name, "a name");
    for (const auto& [key, text] : {std::pair("on", &edit.on), std::pair("side", &edit.side), std::pair("story", &edit.story)}) {
        if (*text && feature->text_of(key) != **text) set_line(*feature, key, **text, key);
    }
    for (const auto& [key, text] : {std::pair("along", &edit.along), std::pair("up", &edit.up)}) {
        if (!*text) continue;
        if ((*text)->empty()) feature->erase(key);
        set_coordinate(*feature, key, **text);
    }
    if (edit.at)
        (*feature)["at"] = point(*edit.at);
    else if (edit.along && !edit.along->empty())
        feature->erase("at");
    return edit.id;
}

std::string HouseEditor::make(const RemoveFeature& edit) {
    if (entry("features", "id", edit.id) == nullptr)
        fail("there is no feature " + in_quotes(edit.id) + " in this file", "look at its list of features");
    erase_entry("features", "id", edit.id);
    return edit.id;
}

/// One that is the same in other words stays as it is written; an empty text changes nothing.
void HouseEditor::set_coordinate(EditTree& feature, std::string_view key, const std::string& text) const {
    if (text.empty()) return;
    const auto place = parse_coordinate(text);
    if (!place) fail(std::string(key) + ": " + place.fault.what, place.fault.mend);
    const EditTree* there = feature.find(key);
    if (there == nullptr || parse_coordinate(there->text).value != place.value) feature[key] = EditTree::word(text);
}

}  // namespace seamward
