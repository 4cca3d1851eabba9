// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

#include "provisions/audit.h"

namespace seamward::test {

/// What is left out of a survey.
enum class Dropped : std::uint8_t {
    nothing,
    measured_width,
    detail,
    input,
    floor,
    screened_area,
    construction,
    closed_with,
    thing
};

/// A job without a house in which a provision looks at one thing, written from the row of the table itself: a gap of one of its
/// cases, built so that the provision applies, measured at `value` in its unit.
struct RuleJob {
    const Provision& provision;
    std::size_t which_case = 0;  ///< of its gaps
    Dropped dropped = Dropped::nothing;
    double plus_minus = 0;  ///< in the provision's unit

    /// Whether a survey without solids can tell at all.
    [[nodiscard]] bool can_be_told() const;
    [[nodiscard]] std::string text(double value) const;
    /// What its verdict rests on.
    [[nodiscard]] std::vector<Dropped> rests_on() const;
    /// The provision's own result in an audit of that job.
    [[nodiscard]] ProvisionResult held(double value) const;

private:
    [[nodiscard]] std::string spaces() const;
    [[nodiscard]] std::string gaps(double value) const;
    [[nodiscard]] std::string construction() const;
    [[nodiscard]] std::string stated(double value) const;
    [[nodiscard]] std::string shape(double value) const;
    [[nodiscard]] std::string evidence() const;
    [[nodiscard]] std::string kind_of_gap() const;
    [[nodiscard]] const DutyCase* asked() const;
    [[nodiscard]] Measure::Of of() const;
    [[nodiscard]] bool is(const char* measure) const { return provision.measure == measure; }
};

/// A number with all the digits that it takes, and a quantity of a unit: `0.1016 m`, `75 %`, `true`.
[[nodiscard]] std::string digits(double value);
[[nodiscard]] std::string quantity(Unit unit, double value);

/// The audit of a job's text.
[[nodiscard]] Audit audited(const std::string& job);
/// The result of a provision in an audit.
[[nodiscard]] const ProvisionResult& result_of(const Audit& audit, const std::string& id);

}  // namespace seamward::test
