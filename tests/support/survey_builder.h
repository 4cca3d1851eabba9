// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

#include "base/survey.h"

namespace seamward::test {

/// Builds surveys in a line or two: spaces by id and kind, slots of one meter by width in millimeters.
class SurveyBuilder {
public:
    SurveyBuilder& space(const std::string& id, SpaceKind kind, bool source = false);
    SurveyBuilder& outdoors(const std::string& id) { return space(id, SpaceKind::outdoors); }
    SurveyBuilder& cavity(const std::string& id) { return space(id, SpaceKind::cavity); }
    SurveyBuilder& living(const std::string& id) { return space(id, SpaceKind::living); }
    /// A slot of that width, 1 m long, between two spaces that exist.
    SurveyBuilder& slot(const std::string& id, const std::string& a, const std::string& b, double width_mm);
    /// Puts the gap added last at a point in meters.
    SurveyBuilder& at(double x, double y, double z);
    /// The gap added last, to change it further.
    Gap& last() { return survey_.gaps.back(); }

    [[nodiscard]] const Survey& survey() const { return survey_; }
    [[nodiscard]] SpaceIndex operator[](const std::string& id) const;

private:
    Survey survey_;
};

/// The flow network of Cormen et al., Introduction to Algorithms, its capacities taken as widths in millimeters and its
/// edges both ways.
[[nodiscard]] SurveyBuilder textbook_network();

}  // namespace seamward::test
