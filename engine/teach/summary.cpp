// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "report/tables.h"
#include "teach/progress.h"

namespace seamward {

namespace {

using Names = std::map<std::string, Spoken>;

/// What gaps of one drill, or drills, are called.
class Called {
public:
    Called(const Names& names, const Translator& say) : say_(say) {
        for (const auto& [id, name] : names) {
            called_[id] = name.in(say.language());
            ++times_[called_[id]];
        }
    }

    /// The name of what has that id; with its id where another is called the same, and the id where no name is known.
    [[nodiscard]] std::string operator()(const std::string& id) const {
        const auto found = called_.find(id);
        if (found == called_.end()) return id;
        if (times_.at(found->second) < 2) return found->second;
        return say_(message("{} ({})", {as_it_stands(found->second), as_it_stands(id)}));
    }

private:
    const Translator& say_;
    std::map<std::string, std::string> called_;
    std::map<std::string, std::size_t> times_;
};

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

    [[nodiscard]] std::vector<Cell> row(const std::string& who, const std::string& drill, const std::string& title,
                                        std::size_t trainees, const Called& gaps) const {
        const auto percent = [](double share) { return shown_tenths(share) / 10.0; };
        const auto number = [](std::size_t count) { return static_cast<double>(count); };
        const auto by_id = [](const std::string& id) { return id; };
        return {who,
                title,
                number(trainees),
                number(attempts_),
                number(passed_),
                percent(best_),
                percent(last_),
                percent(sum_ / number(attempts_)),
                number(harmful_),
                number(harms_),
                number(false_alarms_),
                most_often(missed_, gaps),
                most_often(harmed_, gaps),
                drill,
                most_often(missed_, by_id),
                most_often(harmed_, by_id)};
    }

private:
    using Counts = std::map<std::string, std::size_t>;

    /// `screed joint (3); bibb (3)`: what stands there most often; ties in the order of their ids.
    template <class Name>
    static std::string most_often(const Counts& counts, const Name& name) {
        std::size_t most = 0;
        for (const auto& [id, count] : counts) most = std::max(most, count);
        std::string text;
        for (const auto& [id, count] : counts) {
            if (count == most) text += (text.empty() ? "" : "; ") + name(id) + " (" + std::to_string(count) + ")";
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
    Names titles;
    std::map<std::string, Names> names;
    for (const Attempt& attempt : attempts) {
        each[{attempt.trainee, attempt.drill}].add(attempt);
        auto& [tally, trainees] = whole[attempt.drill];
        tally.add(attempt);
        ++trainees[attempt.trainee];
        if (!attempt.title.empty()) titles[attempt.drill] = attempt.title;
        for (const auto& [id, name] : attempt.names) names[attempt.drill][id] = name;
    }
    const Called drills(titles, say);
    std::map<std::string, Called> gaps;
    for (const auto& [drill, tally] : whole) gaps.emplace(drill, Called(names[drill], say));
    DataTable table;
    table.id = "class";
    table.title = "The class";
    table.columns = {{"Trainee", false},
                     {"Drill", false},
                     {"Trainees", false},
                     {"Attempts", false},
                     {"Passed", false},
                     {"Best, %", false},
                     {"Last, %", false},
                     {"Mean, %", false},
                     {"Rounds with harm", false},
                     {"Harms", false},
                     {"False alarms", false},
                     {"Missed most often", false},
                     {"Harmed most often", false},
                     {"Drill, id", false},
                     {"Missed most often, ids", false},
                     {"Harmed most often, ids", false}};
    for (const auto& [who, tally] : each)
        table.rows.push_back(tally.row(who.first, who.second, drills(who.second), 1, gaps.at(who.second)));
    for (const auto& [drill, tally] : whole)
        table.rows.push_back(tally.first.row(say("The whole class"), drill, drills(drill), tally.second.size(), gaps.at(drill)));
    return csv_text(table, say);
}

}  // namespace seamward
