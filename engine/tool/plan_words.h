// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <map>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "plan/plan.h"
#include "tool/console.h"

namespace seamward {

/// `Bark scorpion and House mouse`
[[nodiscard]] std::string names_text(const std::vector<Pest>& pests);

/// `yard > [eave] > attic > [hatch] > hall`
[[nodiscard]] std::string way_text(const Survey& survey, const EntryPath& path);

/// Whether a step changes the widest way that is still open.
[[nodiscard]] bool opens_less(const Plan& plan, std::size_t step);

/// Why there is no plan: the way that stays open, why each of its gaps does, and what helps. The plan must have such a way.
void print_no_plan(const Job& job, const PlanSettings& settings, const Plan& plan, const Console& console);

/// Tells each caution in full where it first comes up, and by the number of that step from then on.
class CautionTeller {
public:
    /// `stars`: is set when a source told has one, see starred(); null: sources are told in full.
    explicit CautionTeller(const Console& console, bool* stars = nullptr) : console_(console), stars_(stars) {}

    /// `number`: of the step; `indent`: spaces before each line.
    void tell(const PlanStep& step, const std::string& number, const std::string& indent);

private:
    const Console& console_;
    bool* stars_;
    std::map<std::string, std::string> told_at_;  ///< caution, number of the step where it stands
};

}  // namespace seamward
