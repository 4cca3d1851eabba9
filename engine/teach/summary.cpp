// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "report/tables.h"
#include "teach/progress.h"

namespace seamward {

namespace {

/// All attempts of one trainee at one drill, or of a class at it.
class Tally {
public:
    void add(const Attempt& attempt) {
        ++attempts_;
        passed_ += attempt.passed ? 1 : 0;
        best_ = std::max(best_, attempt.share());
        last_ = attempt.share();
        sum_ += attempt.share();
        harmful_ += attempt.harms.empty() ? 0 : 1;
        harms_ += attempt.harms.size();
        false_alarms_ += attempt.false_alarms;
        for (const std::string& id : attempt.missed) ++missed_[id];
        for (const std::string& id : attempt.harms) ++harmed_[id];
    }

    [[nodiscard]] std::vector<Cell> row(const std::string& who, const std::string& drill, std::size_t trainees) const {
        const auto percent = [](double share) { return shown_tenths(share) / 10.0; };
        const auto number = [](std::size_t count) { return static_cast<double>(count); };
        return {who,
                drill,
                number(trainees),
                number(attempts_),
                number(passed_),
                percent(best_),
                percent(last_),
                percent(sum_ / number(attempts_)),
                number(harmful_),
                number(harms_),
                number(false_alarms_),
                most_often(missed_),
                most_often(harmed_)};
    }

private:
    using Counts = std::map<std::string, std::size_t>;

    /// `screed-joint (3), bibb (3)`: what stands there most often; ties in order.
    static std::string most_often(const Counts& counts) {
        std::size_t most = 0;
        for (const auto& [id, count] : counts) most = std::max(most, count);
        std::string text;
        for (const auto& [id, count] : counts) {
            if (count == most) text += (text.empty() ? "" : ", ") + id + " (" + std::to_string(count) + ")";
        }
        return text;
    }

    std::size_t attempts_ = 0, passed_ = 0, harmful_ = 0, harms_ = 0, false_alarms_ = 0;
    double best_ = 0, last_ = 0, sum_ = 0;
    Counts missed_, harmed_;
};

}  // namespace

std::string class_summary(std::span<const Attempt> attempts, const Translator& say) {
    std::map<std::pair<std::string, std::string>, Tally> each;
    std::map<std::string, std::pair<Tally, std::map<std::string, std::size_t>>> whole;
    for (const Attempt& attempt : attempts) {
        each[{attempt.trainee, attempt.drill}].add(attempt);
        auto& [tally, trainees] = whole[attempt.drill];
        tally.add(attempt);
        ++trainees[attempt.trainee];
    }
    DataTable table;
    table.id = "class";
    table.title = "The class";
    table.columns = {{"Trainee", false},          {"Drill", false},   {"Trainees", false},     {"Attempts", false},
                     {"Passed", false},           {"Best, %", false}, {"Last, %", false},      {"Mean, %", false},
                     {"Rounds with harm", false}, {"Harms", false},   {"False alarms", false}, {"Missed most often", false},
                     {"Harmed most often", false}};
    for (const auto& [who, tally] : each) table.rows.push_back(tally.row(who.first, who.second, 1));
    for (const auto& [drill, tally] : whole)
        table.rows.push_back(tally.first.row(say("The whole class"), drill, tally.second.size()));
    return csv_text(table, say);
}

}  // namespace seamward
