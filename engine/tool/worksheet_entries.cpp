// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <array>
#include <cctype>

#include "catalog/shipped.h"
#include "tool/worksheet_command.h"

namespace seamward {

namespace {

/// Room to write by hand. As a date it is none, so a file in which one was forgotten is not read.
constexpr const char* blank = "________";

/// An id as YAML: in quotes where it could be taken for something else.
std::string yaml_id(const std::string& id) {
    constexpr std::array<std::string_view, 9> taken{"null", "true", "false", "yes", "no", "on", "off", "y", "n"};
    std::string small;
    for (const char c : id) small += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    const bool word = !small.empty() && small.front() >= 'a' && small.front() <= 'z' &&
                      small.find_first_not_of("abcdefghijklmnopqrstuvwxyz0123456789-_") == std::string::npos &&
                      std::find(taken.begin(), taken.end(), small) == taken.end();
    if (word) return id;
    std::string quoted = "\"";
    for (const char c : id) quoted += c == '"' || c == '\\' ? std::string{'\\', c} : std::string(1, c);
    return quoted + '"';
}

const ClosedGap* entry_of(const Job& job, GapIndex gap) {
    const auto found = std::find_if(job.closed.begin(), job.closed.end(), [&](const ClosedGap& one) { return one.gap == gap; });
    return found == job.closed.end() ? nullptr : &*found;
}

/// `, with: bead`; nothing where the survey states a price and no method.
std::string with_text(const PlanStep& step) {
    return step.option.treatment == stated_closing ? "" : ", with: " + step.option.treatment;
}

class Entries {
public:
    Entries(const Job& job, const Plan& plan, const Console& console) : job_(job), plan_(plan), console_(console) {}

    void print() {
        if (plan_.steps.empty() && plan_.wrong_closings.empty()) return;
        console_.out << '\n' << console_.bold("When it is done, write into the job file") << '\n';
        closed();
        if (!plan_.last_checks.empty()) checks();
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            if (const ClosedGap* entry = entry_of(job_, plan_.steps[i].gap)) change(*entry, plan_.steps[i], i + 1);
        }
        for (const WrongClosing& wrong : plan_.wrong_closings)
            paragraph("Under closed: take out the entry of " + job_.survey[wrong.gap].id + ", which was opened again.");
        for (const Departure& departure : plan_.departures) left(departure);
    }

private:
    void paragraph(const std::string& text) { print_paragraph("", text, console_); }

    void closed() {
        bool begun = false;
        for (std::size_t i = 0; i < plan_.steps.size(); ++i) {
            const PlanStep& step = plan_.steps[i];
            if (entry_of(job_, step.gap) != nullptr) continue;
            if (!begun) begin_closed();
            begun = true;
            console_.out << "  - {gap: " << yaml_id(job_.survey[step.gap].id) << with_text(step) << ", date: " << blank << "}  # "
                         << i + 1 << (step.waits ? ", later visit" : "") << '\n';
        }
    }

    void begin_closed() {
        if (!job_.closed.empty()) paragraph("The file has closed: already. These lines go below it, without a second closed:.");
        console_.out << "closed:\n";
    }

    void checks() {
        if (!job_.checks.empty()) paragraph("It has checks: too. These go below it, without a second checks:.");
        console_.out << "checks:\n";
        for (const char* check : {"combustion-safety", "co-alarms"})
            console_.out << "  - {check: " << check << ", date: " << blank << ", by: " << blank << "}\n";
    }

    /// A gap that was closed before has its entry already, and may have no second one.
    void change(const ClosedGap& entry, const PlanStep& step, std::size_t number) {
        const bool stated = step.option.treatment == stated_closing;
        const Treatment* before = shipped_treatments().find(entry.with);
        std::string text =
            "Step " + std::to_string(number) + ": " + job_.survey[step.gap].id + " is under closed: already. Write there ";
        if (!stated) text += "with: " + step.option.treatment + " and ";
        text += (entry.callback ? "in its callback mended: " : "date: ") + std::string(blank);
        if (stated && before != nullptr) text += ", and take out with:";
        if (before != nullptr && before->leaves_mesh()) text += ", and take out opening: where it has one";
        paragraph(text);
    }

    void left(const Departure& departure) {
        if (!departure.waits()) return;
        const Occupant& occupant = job_.occupied[departure.occupant];
        paragraph("Under occupied: for " + occupant.animal.name + " in " + job_.survey[occupant.space].label() +
                  ": left: " + blank + " (the day from which on it is known to be gone)");
    }

    const Job& job_;
    const Plan& plan_;
    const Console& console_;
};

}  // namespace

void print_entries(const Job& job, const Plan& plan, const Console& console) { Entries(job, plan, console).print(); }

}  // namespace seamward
