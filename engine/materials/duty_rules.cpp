// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/duty_rules.h"

#include <algorithm>

#include "catalog/duties.h"
#include "catalog/shipped.h"
#include "materials/options.h"

namespace seamward {

namespace {

template <class Value>
bool holds(const std::vector<Value>& values, const Value& wanted) {
    return std::find(values.begin(), values.end(), wanted) != values.end();
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

std::string lower(std::string text) {
    std::transform(text.begin(), text.end(), text.begin(), [](char c) { return lower(c); });
    return text;
}

/// Whether the text has that word, given in small letters: "garage" in "Garage, west" and "garage-2", not in "garages".
bool has_word(const std::string& text, const std::string& word) {
    std::string piece;
    for (const char c : text + ' ') {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (letter) {
            piece += lower(c);
            continue;
        }
        if (piece == word) return true;
        piece.clear();
    }
    return false;
}

bool fits_feature(const DutyCase& when, const Gap& gap) {
    if (when.feature_unknown && !gap.feature.empty()) return false;
    return when.features.empty() || holds(when.features, gap.feature);
}

bool fits_substrates(const DutyCase& when, const Gap& gap) {
    std::vector<std::string> said;
    for (const std::string& word : gap.substrates) said.push_back(lower(word));
    const auto stands = [&](const std::string& word) { return holds(said, word); };
    if (!std::all_of(when.all_of.begin(), when.all_of.end(), stands)) return false;
    if (!when.any_of.empty() && std::none_of(when.any_of.begin(), when.any_of.end(), stands)) return false;
    if (when.nothing_but.empty()) return true;
    return !said.empty() &&
           std::all_of(said.begin(), said.end(), [&](const std::string& word) { return holds(when.nothing_but, word); });
}

bool fits_spaces(const DutyCase& when, const Gap& gap, const Survey& survey) {
    const Space& a = survey[gap.between[0]];
    const Space& b = survey[gap.between[1]];
    const auto takes = [](const std::vector<SpaceKind>& kinds, const Space& space) {
        return kinds.empty() || holds(kinds, space.kind);
    };
    const auto& [one, other] = when.between;
    if (!(takes(one, a) && takes(other, b)) && !(takes(one, b) && takes(other, a))) return false;
    return when.words.empty() || std::any_of(when.words.begin(), when.words.end(), [&](const std::string& word) {
               return has_word(a.id, word) || has_word(a.name, word) || has_word(b.id, word) || has_word(b.name, word);
           });
}

bool fits_place(const DutyCase& when, const Gap& gap) {
    const Shape& shape = gap.covered ? gap.covered->shape : gap.shape;
    if (!when.shapes.empty() && !holds(when.shapes, static_cast<ShapeKind>(shape.index()))) return false;
    if (when.least_length > 0) {
        const Slot* slot = std::get_if<Slot>(&shape);
        if (slot == nullptr || slot->length < when.least_length) return false;
    }
    return !gap.at || gap.at->z < when.height;
}

/// Whether a treatment does not defeat a duty: it leaves an open mesh, or lets past what has to get past.
bool serves(const Treatment& treatment, Duty duty) { return treatment.leaves_mesh() || holds(treatment.keeps, duty); }

/// Keeps what does not defeat the duty of what a ruling allows; all meshes where it restricts nothing.
void keep_serving(DutyRuling& ruling, Duty duty, bool unrestricted_ones) {
    const Table<Treatment>& table = shipped_treatments();
    std::vector<std::string> meshes;
    if (ruling.restricted()) {
        for (const std::string& id : ruling.treatments) {
            const Treatment* treatment = table.find(id);
            if (treatment != nullptr && serves(*treatment, duty)) meshes.push_back(id);
        }
    } else if (unrestricted_ones) {
        for (const Treatment& treatment : table.rows) {
            if (treatment.leaves_mesh()) meshes.push_back(treatment.id);
        }
    }
    ruling.treatments = std::move(meshes);
    ruling.may_close = false;
}

/// Whether the table's row keeps some duty without leaving an opening; that it is the gap's own was seen to when it was listed.
bool serving_treatment(std::string_view id) {
    const Treatment* treatment = shipped_treatments().find(id);
    return treatment != nullptr && !treatment->keeps.empty();
}

DutyRuling ruling_of_table(const Gap& gap, const Survey& survey) {
    DutyRuling ruling;
    for (const DutyRow& row : shipped_duties().rows) {
        if (!fits_case(row.when, gap, survey)) continue;
        ruling.row = row.id;
        if (row.free) return ruling;
        ruling.may_close = row.full;
        for (const std::string& id : row.allow) {
            const Treatment* treatment = shipped_treatments().find(id);
            const bool defeats = !row.full && treatment != nullptr && !serves(*treatment, gap.duty);
            if (!defeats) ruling.treatments.push_back(id);
        }
        ruling.least_opening = row.least;
        ruling.widest_opening = row.widest;
        ruling.keeps_area = row.keeps_area;
        ruling.why = row.why;
        ruling.source = cited(shipped_duties().sources, row.source);
        ruling.instead = row.instead;
        return ruling;
    }
    return ruling;
}

}  // namespace

bool fits_case(const DutyCase& when, const Gap& gap, const Survey& survey) {
    return when.takes(gap.duty) && fits_feature(when, gap) && fits_place(when, gap) && fits_spaces(when, gap, survey) &&
           fits_substrates(when, gap);
}

bool DutyRuling::allows(std::string_view treatment, double opening) const {
    if (!restricted()) return true;
    const bool listed = std::find(treatments.begin(), treatments.end(), treatment) != treatments.end();
    if (!may_close && !(opening > 0)) return listed && serving_treatment(treatment);
    if (treatment == stated_closing) return may_close && opening == 0;
    if (!listed) return treatments.empty() && may_close;
    return opening == 0 || (opening >= least_opening && opening <= widest_opening);
}

DutyRuling ruling_on(const Gap& gap, const Survey& survey) {
    const Closing& closing = gap.closing;
    if (!closing.never.empty() && closing.never_source.empty() && !closing.mesh_allowed) {
        DutyRuling ruling;
        ruling.may_close = false;
        ruling.why = as_named(closing.never);
        ruling.source = "the survey";
        return ruling;
    }
    DutyRuling ruling = ruling_of_table(gap, survey);
    if (closing.never.empty()) return ruling;
    // What the survey itself says leaves meshes at most.
    keep_serving(ruling, closing.never_source.empty() ? Duty::none : gap.duty, closing.mesh_allowed);
    ruling.why = as_named(closing.never);
    ruling.source =
        closing.never_source.empty() ? Message("the survey") : cited(shipped_features().sources, closing.never_source);
    return ruling;
}

}  // namespace seamward
