// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/measure_text.h"
#include "base/text.h"
#include "materials/treatment_name.h"
#include "tool/completion_command.h"

namespace seamward {

namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

class NotYet {
public:
    NotYet(const JudgedJob& judged, const Console& console)
        : job_(judged.job), survey_(judged.job.survey), completion_(judged.completion), judged_(judged), console_(console) {}

    void print() {
        console_.out << console_.bold(judged_.heading) << '\n'
                     << date_text(judged_.settings.date) << "\n\n"
                     << console_.bold("No completion statement yet:") << '\n';
        for (const Message& reason : completion_.reasons) print_paragraph("  - ", reason.english() + '.', console_);
        title("Animals");
        for (const AnimalOutcome& outcome : completion_.animals) animal(outcome);
        if (completion_.left) print_paragraph("  ", "Against all animals together, " + work_text(*completion_.left), console_);
        if (!completion_.callbacks.empty()) title("What did not hold");
        for (const std::uint32_t i : completion_.callbacks)
            print_paragraph("  - ", callback_text(job_, job_.closed[i]), console_);
        fuel();
        title("When to look again");
        for (const std::string& text : when_to_look_again(judged_)) print_paragraph("  ", text, console_);
    }

private:
    void title(const std::string& text) { console_.out << '\n' << console_.bold(text) << '\n'; }

    [[nodiscard]] std::string labels(const std::vector<GapIndex>& gaps) const {
        std::string text;
        for (const GapIndex gap : gaps) text += (text.empty() ? "" : "; ") + survey_[gap].label();
        return text;
    }

    [[nodiscard]] std::string work_text(const WorkLeft& left) const {
        if (!left.feasible) return "there is no plan: seamward plan tells which way cannot be closed.";
        if (left.steps.empty()) return "seamward plan would close nothing: it counts what is closed as shut.";
        return "seamward plan would close " + counted(left.steps.size(), "gap", "gaps") + " for " + money_text(left.cost) +
               (judged_.invented_prices ? " (at prices that are invented)." : ".");
    }

    void animal(const AnimalOutcome& outcome) {
        const std::string& name = judged_.settings.against[outcome.pest].name;
        if (outcome.shut) {
            const std::vector<GapIndex>& on = outcome.rests_on;
            print_paragraph("  ",
                            name + ": shut out." +
                                (on.empty() ? " No one of the closings decides that alone."
                                            : " It rests on " + counted(on.size(), "closing", "closings") +
                                                  (on.size() == 1 ? "; opened again, it lets it in: "
                                                                  : "; any of these opened again lets it in: ") +
                                                  labels(on) + '.'),
                            console_);
            return;
        }
        const OpenWay& way = *outcome.widest;
        print_paragraph(
            "  ", name + ": not shut out. " + counted(outcome.gaps_on_ways, "gap lies", "gaps lie") + " on open ways.", console_);
        std::string text = survey_[way.path.from()].label();
        for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
            text += " > [" + survey_[way.path.gaps[i]].label() + "] > " + survey_[way.path.spaces[i + 1]].label();
        print_paragraph("    ", "The widest, " + width_text(way.pinch) + ": " + text, console_);
        if (!outcome.gnawed.empty()) print_paragraph("    ", gnawed_text(name, outcome.gnawed), console_);
        print_paragraph("    ", "Against it alone, " + work_text(outcome.left), console_);
    }

    /// `House mouse gnaws through: cable, south (sealant bead): close it again with something that resists gnawing.`
    [[nodiscard]] std::string gnawed_text(const std::string& name, const std::vector<GapIndex>& gaps) const {
        std::string list;
        for (const ClosedGap& closed : job_.closed) {
            if (std::find(gaps.begin(), gaps.end(), closed.gap) == gaps.end()) continue;
            list += (list.empty() ? "" : ", ") + survey_[closed.gap].label() + " (" + treatment_name(closed.with).english() + ')';
        }
        return name + " gnaws through: " + list + ": close " + (gaps.size() == 1 ? "it" : "them") +
               " again with something that resists gnawing.";
    }

    void fuel() {
        if (!completion_.burns_fuel) return;
        title("Fuel is burned in this house");
        const auto check = [&](const char* what, const std::optional<CheckMade>& made) {
            print_paragraph(
                "  ",
                what + (made ? date_text(made->date) + ", by " + printable(made->by) : std::string("not written down")) + '.',
                console_);
        };
        check("Appliances tested for draft, spillage and carbon monoxide: ", completion_.combustion_safety);
        check("Carbon monoxide alarms looked at: ", completion_.co_alarms);
    }

    const Job& job_;
    const Survey& survey_;
    const Completion& completion_;
    const JudgedJob& judged_;
    const Console& console_;
};

}  // namespace

void print_completion(const JudgedJob& judged, const Console& console) {
    if (!judged.completion.complete()) {
        NotYet(judged, console).print();
        return;
    }
    for (const PageLine& line : completion_statement(judged)) {
        if (line.title)
            console.out << console.bold(line.text) << '\n';
        else if (line.text.empty())
            console.out << '\n';
        else
            print_paragraph(line.lead, line.text, console);
    }
}

}  // namespace seamward
