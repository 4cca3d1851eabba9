// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "materials/duty_rules.h"
#include "tests/support/survey_builder.h"

namespace seamward::test {

inline const Slot long_slot{0.001, 9};
inline const Hole hole{0.005};

/// A small house with a space of every kind that the table asks for.
inline SurveyBuilder house() {
    SurveyBuilder survey;
    survey.outdoors("yard").cavity("wall").cavity("attic").living("kitchen").space("garage", SpaceKind::attached);
    survey.space("back-porch", SpaceKind::attached).space("corridor", SpaceKind::attached);
    return survey;
}

/// The same with spaces that rows know by a word.
inline SurveyBuilder named_house() {
    SurveyBuilder survey = house();
    survey.cavity("party-wall").cavity("dryer-duct").cavity("bath-duct").cavity("bath-laundry-duct").cavity("common-attic");
    return survey;
}

/// A gap of that house.
struct Asked {
    const char* row;  ///< of the table of duties that must fit; empty: none
    Duty duty = Duty::none;
    const char* feature = "";
    std::vector<std::string> substrates;
    Shape shape = long_slot;
    const char* from = "yard";
    const char* to = "wall";
    std::optional<double> z;
};

inline Gap gap_of(const Asked& asked, const SurveyBuilder& survey) {
    Gap gap;
    gap.id = "gap";
    gap.between = {survey[asked.from], survey[asked.to]};
    gap.duty = asked.duty;
    gap.feature = asked.feature;
    gap.substrates = asked.substrates;
    gap.shape = asked.shape;
    if (asked.z) gap.at = Point{1, 2, *asked.z};
    return gap;
}

inline DutyRuling ruling(const Asked& asked) {
    SurveyBuilder survey = named_house();
    return ruling_on(gap_of(asked, survey), survey.survey());
}

}  // namespace seamward::test
