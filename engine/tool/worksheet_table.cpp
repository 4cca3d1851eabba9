// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cctype>
#include <map>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "base/text.h"
#include "materials/treatment_name.h"
#include "materials/wrong_closings.h"
#include "plan/to_bring.h"
#include "tool/departure_lines.h"
#include "tool/gap_size.h"
#include "tool/plan_words.h"
#include "tool/worksheet_command.h"

namespace seamward {

namespace {

/// Room to write by hand.
constexpr const char* day = "________";
constexpr const char* words = "______________";

/// Where the lines of a stop begin, under its label.
const std::string under_label(10, ' ');

class Worksheet {
public:
    Worksheet(const Job& job, const PlanSettings& settings, const Plan& plan, const Console& console)
        : job_(job), survey_(job.survey), settings_(settings), plan_(plan), console_(console), cautions_(console) {
        for (const Gap& gap : survey_.gaps) ++labels_[gap.label()];
    }

    void print(const std::string& heading) {
        head(heading);
        before();
        to_bring();
        wrong_closings();
        const auto waiting =
            std::find_if(plan_.steps.begin(), plan_.steps.end(), [](const PlanStep& step) { return step.waits; });
        const auto today = static_cast<std::size_t>(waiting - plan_.steps.begin());
        stops(0, today);
        departures();
        if (today < plan_.steps.size()) title("On a later visit, when the animals are gone");
        stops(today, plan_.steps.size());
        stays_open();
        last_checks();
        print_entries(job_, plan_, console_);
    }

private:
    void title(const std::string& text) { console_.out << '\n' << console_.bold(text) << '\n'; }
    void paragraph(const std::string& lead, const std::string& text) { print_paragraph(lead, text, console_); }

    /// Parts of a text, none of them broken where it fits into a line.
    void whole_parts(const std::string& lead, const std::vector<std::string>& parts) {
        const std::size_t width = console_.columns - std::min(console_.columns, letters(lead));
        std::string head = lead;
        std::string line;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            const std::string part = parts[i] + (i + 1 < parts.size() ? "," : "");
            if (!line.empty() && letters(line) + 1 + letters(part) > width) {
                paragraph(head, line);
                head.assign(letters(lead), ' ');
                line.clear();
            }
            line += (line.empty() ? "" : " ") + part;
        }
        paragraph(head, line);
    }

    /// Text of the survey as its author broke it into lines.
    void survey_text(const std::string& lead, const std::string& text) {
        std::string head = lead;
        for (std::size_t begin = 0; begin <= text.size();) {
            const std::size_t end = std::min(text.find_first_of("\r\n", begin), text.size());
            std::string line = text.substr(begin, end - begin);
            std::replace(line.begin(), line.end(), '\t', ' ');
            begin = end + 1;
            if (is_blank(line)) continue;
            paragraph(head, printable(line));
            head.assign(letters(lead), ' ');
        }
    }

    // ------------------------------------------------------------ Head

    void head(const std::string& heading) {
        console_.out << console_.bold("Work sheet: " + heading) << '\n';
        if (!job_.address.empty()) paragraph("", printable(job_.address));
        std::string days = "Day of the work " + date_text(settings_.date) + '.';
        if (!job_.surveyor.empty() || !job_.surveyed.empty())
            days += " Surveyed" + (job_.surveyed.empty() ? "" : ' ' + printable(job_.surveyed)) +
                    (job_.surveyor.empty() ? "" : " by " + printable(job_.surveyor)) + '.';
        paragraph("", days);
        std::string work = plan_.steps.empty() ? "nothing to close" : counted(plan_.steps.size(), "gap", "gaps") + " to close";
        if (plan_.minutes > 0) work += ", about " + time_text(plan_.minutes) + " of work";
        paragraph("", "Against " + names_text(settings_.against) + ": " + work + '.');
        survey_text("Notes: ", job_.notes);
        survey_text("Site: ", job_.site.notes);
    }

    void before() {
        if (plan_.before.empty()) return;
        title("Before the work");
        for (const Message& line : plan_.before) paragraph("  [ ] ", line.english());
    }

    void to_bring() {
        if (plan_.steps.empty()) return;
        title("To bring");
        for (const Purchase& purchase : plan_.materials) paragraph("  [ ] ", packs_text(purchase, settings_.prices).english());
        const std::string not_yet = animals_begin() > settings_.date ? ", not before " + date_text(animals_begin()) : "";
        for (const Purchase& purchase : packs_for_departures(plan_, settings_.prices))
            paragraph("  [ ] ",
                      packs_text(purchase, settings_.prices).english() + ", for the animals that have to leave first" + not_yet);
        const Kit kit = kit_of(plan_.steps);
        if (!kit.tools.empty()) paragraph("  Tools: ", joined(kit.tools, ", "));
        if (!kit.protection.empty()) paragraph("  To wear: ", joined(kit.protection, ", "));
        if (plan_.ladder_settings == 0) return;
        const bool high =
            std::any_of(plan_.steps.begin(), plan_.steps.end(), [](const PlanStep& step) { return step.stop.two_people; });
        paragraph("  Ladder: ", counted(plan_.ladder_settings, "ladder position", "ladder positions") +
                                    (high ? "; two people at the highest" : ""));
    }

    /// The first day on which a device or a trap may be set; the day of the work where there is none.
    [[nodiscard]] Date animals_begin() const {
        std::optional<Date> first;
        for (const Departure& departure : plan_.departures) {
            if (departure.waits() && (!first || departure.begin < *first)) first = departure.begin;
        }
        return first.value_or(settings_.date);
    }

    void wrong_closings() {
        if (plan_.wrong_closings.empty()) return;
        title("Open again first");
        for (const WrongClosing& wrong : plan_.wrong_closings) {
            paragraph("  [ ] ", wrong_closing_text(survey_, wrong).english() + '.');
            done("      ");
        }
        paragraph("  ", "What is opened may let animals in: take these entries out of the job file and make this sheet anew.");
    }

    // ------------------------------------------------------------ Stops

    void stops(std::size_t from, std::size_t to) {
        std::string last;
        for (std::size_t i = from; i < to; ++i) {
            const std::string where = place_of_work(plan_.steps[i]);
            if (where != last) title(where);
            last = where;
            console_.out << '\n';
            stop(i);
        }
    }

    /// `Outside, from the ground`, `Rooms: kitchen`
    [[nodiscard]] std::string place_of_work(const PlanStep& step) const {
        const WorkZone zone = step.stop.zone;
        std::string text = zone_words(zone);
        text.front() = static_cast<char>(std::toupper(static_cast<unsigned char>(text.front())));
        if (zone != WorkZone::rooms && zone != WorkZone::attached) return text;
        const SpaceKind kind = zone == WorkZone::rooms ? SpaceKind::living : SpaceKind::attached;
        const auto& [one, other] = survey_[step.gap].between;
        return text + ": " + survey_[survey_[one].kind == kind ? one : other].label();
    }

    void stop(std::size_t i) {
        const PlanStep& step = plan_.steps[i];
        const Gap& gap = survey_[step.gap];
        const std::string number = std::to_string(i + 1);
        paragraph(std::string(4 - std::min<std::size_t>(3, number.size()), ' ') + number + "  [ ] ", label(gap));
        if (gap.at && labels_.at(gap.label()) > 1) paragraph(under_label, place_text(*gap.at));
        whole_parts(under_label + "Size: ", gap_size(gap));
        if (step.stop.ladder_first > 0) paragraph(under_label + "Ladder: ", ladder_text(step.stop));
        survey_text(under_label + "Note: ", gap.note);
        how(step.option, number);
        cautions_.tell(step, number, under_label);
        if (opens_less(plan_, i))
            paragraph(under_label, step.widest_open_after > 0
                                       ? "After it the widest way in still open is " + width_text(step.widest_open_after)
                                       : "After it no way in is left open");
        done(under_label);
    }

    /// With the gap's id where others are called the same.
    [[nodiscard]] std::string label(const Gap& gap) const {
        return labels_.at(gap.label()) > 1 ? gap.label() + " (" + gap.id + ')' : gap.label();
    }

    static std::string ladder_text(const WalkStop& stop) {
        std::string text = stop.ladder_last > stop.ladder_first
                               ? "positions " + std::to_string(stop.ladder_first) + " to " + std::to_string(stop.ladder_last)
                               : "position " + std::to_string(stop.ladder_first);
        return stop.two_people ? text + ", two people" : text;
    }

    /// What to do: in full at the first step of a treatment; later what is not said there.
    void how(const Option& option, const std::string& number) {
        if (option.treatment == stated_closing) {
            paragraph(under_label + "With: ", "the survey names no method; ask the estimator");
            return;
        }
        std::vector<Told>& told = how_at_[option.treatment];
        std::vector<Message> rest = option.steps;
        const Told* nearest = nullptr;
        for (const Told& earlier : told) {
            std::vector<Message> left = option.steps;
            std::erase_if(left, [&](const Message& line) {
                return std::find(earlier.lines->begin(), earlier.lines->end(), line) != earlier.lines->end();
            });
            if (left.size() >= rest.size()) continue;
            rest = std::move(left);
            nearest = &earlier;
        }
        paragraph(under_label + "With: ", treatment_name(option.treatment).english() +
                                              (nearest == nullptr ? "" : ", as at " + nearest->number) +
                                              (nearest == nullptr || rest.empty() ? "" : ", and:"));
        for (const Message& line : rest) paragraph(under_label + "- ", line.english());
        if (!rest.empty()) told.push_back({number, &option.steps});
    }

    void done(const std::string& indent) {
        console_.out << indent << "done on " << day << "  with " << words << "  by " << day << '\n';
    }

    // ------------------------------------------------------------ Animals, and the end

    void departures() {
        if (plan_.departures.empty()) return;
        title("Animals that live in the house");
        for (const Departure& departure : plan_.departures) {
            print_departure(job_, departure, console_);
            if (!departure.waits()) continue;
            console_.out << "    [ ] " << what_begins(departure) << " on " << day << "  by " << day << '\n'
                         << "        last sign of it on " << day << '\n';
        }
    }

    static const char* what_begins(const Departure& departure) {
        if (departure.removal == nullptr) return "looked at";
        switch (departure.removal->by) {
            case Removal::By::one_way: return "device set up";
            case Removal::By::trapping: return "traps set";
            case Removal::By::licensed: return "handed over";
            case Removal::By::nothing: break;
        }
        return "seen";
    }

    /// Gaps that stay as they are, by reason, so that nobody closes them by habit.
    void stays_open() {
        std::map<std::string, std::vector<std::string>> never, leave, only_so;
        std::vector<bool> told(survey_.gaps.size(), false);
        for (const PlanStep& step : plan_.steps) told[step.gap.value] = true;
        for (const RefusedGap& refused : plan_.refused) {
            const Gap& gap = survey_[refused.gap];
            const bool nothing_fits = refused.refusal.treatment.empty();
            if (told[refused.gap.value] || (!nothing_fits && !gap.must_stay_open())) continue;
            told[refused.gap.value] = true;
            (!nothing_fits          ? only_so
             : gap.must_stay_open() ? never
                                    : leave)[refused.refusal.why.english()]
                .push_back(gap.label());
        }
        if (never.empty() && leave.empty() && only_so.empty()) return;
        title("Must stay open");
        for (const auto& [why, labels] : never) paragraph("  Never close: ", grouped(labels) + ": " + why);
        for (const auto& [why, labels] : only_so) paragraph("  Never shut tight: ", grouped(labels) + ": " + why);
        for (const auto& [why, labels] : leave) paragraph("  Leave: ", grouped(labels) + ": " + why);
    }

    /// `drain holes (2: north wall, east wall); exhaust cap`: labels that differ in their last words only are one.
    static std::string grouped(const std::vector<std::string>& labels) {
        struct Group {
            std::string stem;
            std::vector<std::string> labels, ends;
        };
        std::vector<Group> groups;
        for (const std::string& label : labels) {
            const std::size_t comma = label.rfind(", ");
            const std::string stem = label.substr(0, comma);
            const std::string end = comma == std::string::npos ? "" : label.substr(comma + 2);
            auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& one) { return one.stem == stem; });
            if (group == groups.end()) group = groups.insert(groups.end(), {stem, {}, {}});
            group->labels.push_back(label);
            if (!end.empty() && std::find(group->ends.begin(), group->ends.end(), end) == group->ends.end())
                group->ends.push_back(end);
        }
        std::vector<std::string> texts;
        for (const Group& group : groups) {
            const std::string count = std::to_string(group.labels.size());
            texts.push_back(group.labels.size() == 1
                                ? group.labels.front()
                                : group.stem + " (" + count + (group.ends.empty() ? "" : ": " + joined(group.ends, ", ")) + ')');
        }
        return joined(texts, "; ");
    }

    void last_checks() {
        if (plan_.last_checks.empty()) return;
        title("At the end");
        for (const Message& said : plan_.last_checks) {
            const std::string check = said.english();
            paragraph("  [ ] ", check);
            console_.out << "      done on " << day << "  by " << words << '\n';
        }
    }

    /// Where a treatment was told, and what was told there.
    struct Told {
        std::string number;
        const std::vector<Message>* lines;
    };

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const Plan& plan_;
    const Console& console_;
    CautionTeller cautions_;
    std::map<std::string, std::size_t> labels_;        ///< how many gaps of the survey are called so
    std::map<std::string, std::vector<Told>> how_at_;  ///< by treatment
};

}  // namespace

void print_worksheet(const Job& job, const std::string& heading, const PlanSettings& settings, const Plan& plan,
                     const Console& console) {
    Worksheet(job, settings, plan, console).print(heading);
}

}  // namespace seamward
