// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/plan_words.h"

#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/duties.h"

namespace seamward {

std::string names_text(const std::vector<Pest>& pests) {
    std::vector<std::string> names;
    for (const Pest& pest : pests) names.push_back(pest.name);
    return listed(names);
}

std::string way_text(const Survey& survey, const EntryPath& path) {
    std::string text = survey[path.from()].label();
    for (std::size_t i = 0; i < path.gaps.size(); ++i)
        text += " > [" + survey[path.gaps[i]].label() + "] > " + survey[path.spaces[i + 1]].label();
    return text;
}

bool opens_less(const Plan& plan, std::size_t step) {
    return step == 0 || plan.steps[step].widest_open_after != plan.steps[step - 1].widest_open_after;
}

void print_no_plan(const Job& job, const PlanSettings& settings, const Plan& plan, const Console& console) {
    const OpenWay& way = *plan.open_way;
    console.out << '\n' << console.bold("No plan: there is a way in that must not or cannot be closed") << '\n';
    print_paragraph("  way in        ", way_text(job.survey, way.path), console);
    print_paragraph("  smallest gap  ", width_text(way.pinch) + ", open to " + settings.against[way.pest].name, console);
    for (std::size_t i = 0; i < way.path.gaps.size(); ++i)
        print_paragraph("  stays open    ", job.survey[way.path.gaps[i]].label() + ": " + plan.open_way_reasons[i].english(),
                        console);
    print_paragraph(
        "", "Measure these gaps anew, look for another place to stop the way, or plan against larger animals: --against ID.",
        console);
}

void CautionTeller::tell(const PlanStep& step, const std::string& number, const std::string& indent) {
    std::string told;
    for (const Message& said : step.cautions()) {
        const std::string caution = said.english();
        const auto [first, anew] = told_at_.emplace(caution, number);
        const std::string shown = stars_ != nullptr ? starred(caution) : caution;
        if (anew && shown != caution) *stars_ = true;
        if (anew)
            print_paragraph(indent + "Caution: ", shown, console_);
        else if (told.find(" " + first->second + ",") == std::string::npos)
            told += " " + first->second + ",";
    }
    if (!told.empty()) print_paragraph(indent, "Cautions as at" + told.substr(0, told.size() - 1), console_);
}

}  // namespace seamward
