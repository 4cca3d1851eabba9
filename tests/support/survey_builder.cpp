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

SurveyBuilder textbook_network() {
    SurveyBuilder net;
    net.outdoors("s").cavity("v1").cavity("v2").cavity("v3").cavity("v4").living("t");
    net.slot("a", "s", "v1", 16)
        .slot("b", "s", "v2", 13)
        .slot("c", "v1", "v2", 10)
        .slot("d", "v2", "v1", 4)
        .slot("e", "v1", "v3", 12);
    net.slot("f", "v3", "v2", 9)
        .slot("g", "v2", "v4", 14)
        .slot("h", "v4", "v3", 7)
        .slot("i", "v3", "t", 20)
        .slot("j", "v4", "t", 4);
    return net;
}

}  // namespace seamward::test
