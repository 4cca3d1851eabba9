// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/survey_builder.h"

#include <stdexcept>

namespace seamward::test {

SurveyBuilder& SurveyBuilder::space(const std::string& id, SpaceKind kind, bool source) {
    survey_.spaces.push_back({id, "", kind, source});
    return *this;
}

SurveyBuilder& SurveyBuilder::slot(const std::string& id, const std::string& a, const std::string& b, double width_mm) {
    Gap gap;
    gap.id = id;
    gap.between = {(*this)[a], (*this)[b]};
    gap.shape = Slot{width_mm / 1000, 1};
    survey_.gaps.push_back(gap);
    return *this;
}

SurveyBuilder& SurveyBuilder::at(double x, double y, double z) {
    last().at = Point{x, y, z};
    return *this;
}

SpaceIndex SurveyBuilder::operator[](const std::string& id) const {
    for (std::uint32_t i = 0; i < survey_.spaces.size(); ++i) {
        if (survey_.spaces[i].id == id) return {i};
    }
    throw std::out_of_range("no space " + id);
}

}  // namespace seamward::test
