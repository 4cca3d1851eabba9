// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <map>

#include "base/drawn_shut.h"
#include "base/text.h"
#include "catalog/pest_sizes.h"
#include "catalog/shipped.h"
#include "tool/completion_command.h"

namespace seamward {

namespace {

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

/// `A, B and C`
std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return text;
}

/// The labels of gaps; of the same label once, with the number: `louver, west wall (2)`.
std::string labels(const Survey& survey, const std::vector<GapIndex>& gaps) {
    std::vector<std::pair<std::string, std::size_t>> counts;
    for (const GapIndex gap : gaps) {
        const std::string& label = survey[gap].label();
        const auto at = std::find_if(counts.begin(), counts.end(), [&](const auto& one) { return one.first == label; });
        if (at != counts.end())
            ++at->second;
        else
            counts.emplace_back(label, 1);
    }
    std::string text;
    for (const auto& [label, count] : counts)
        text += (text.empty() ? "" : "; ") + label + (count > 1 ? " (" + std::to_string(count) + ")" : "");
    return text;
}

class Statement {
public:
    explicit Statement(const JudgedJob& judged)
        : job_(judged.job),
          survey_(judged.job.survey),
          settings_(judged.settings),
          completion_(judged.completion),
          judged_(judged) {}

    std::vector<PageLine> all() {
        opening();
        closings();
        departed();
        seen_since();
        callbacks();
        fuel();
        look_again();
        rests_on();
        not_covered();
        left_open();
        also_open();
        signatures();
        return std::move(lines_);
    }

private:
    void title(const std::string& text) {
        lines_.push_back({});
        lines_.push_back({"", text, true});
    }
    void line(const std::string& text, const std::string& lead = "  ") { lines_.push_back({lead, text}); }

    void opening() {
        lines_.push_back({"", "Completion statement", true});
        line(judged_.heading + (job_.address.empty() ? "" : ", " + printable(job_.address)), "");
        line(date_text(settings_.date), "");
        lines_.push_back({});
        std::vector<std::string> names;
        for (const Pest& pest : settings_.against) names.push_back(pest.name);
        line("Along the gaps that were surveyed, " + std::string(names.size() == 1 ? "this animal has" : "these animals have") +
                 " no way into the rooms any more: " + listed(names) + ".",
             "");
    }

    /// By whom they keep out, so that the list stays short.
    void closings() {
        std::vector<std::vector<std::size_t>> kept_out(survey_.gaps.size());
        for (const AnimalOutcome& outcome : completion_.animals) {
            for (const GapIndex gap : outcome.rests_on) kept_out[gap.value].push_back(outcome.pest);
        }
        std::vector<std::pair<std::vector<std::size_t>, std::vector<const ClosedGap*>>> groups;
        std::size_t count = 0;
        for (const ClosedGap& closed : job_.closed) {
            if (!closed.holds()) continue;
            ++count;
            const std::vector<std::size_t>& who = kept_out[closed.gap.value];
            auto at = std::find_if(groups.begin(), groups.end(), [&](const auto& group) { return group.first == who; });
            if (at == groups.end()) at = groups.insert(groups.end(), {who, {}});
            at->second.push_back(&closed);
        }
        std::stable_sort(groups.begin(), groups.end(),
                         [](const auto& a, const auto& b) { return a.first.size() > b.first.size(); });
        title("What was closed");
        line(count == 0 ? "Nothing had to be closed." : counted(count, "gap.", "gaps."));
        for (const auto& [who, closings] : groups) {
            line(group_text(who, closings.size()));
            for (const ClosedGap* closed : closings) line(closing_text(*closed), "  - ");
        }
    }

    [[nodiscard]] std::string group_text(const std::vector<std::size_t>& who, std::size_t closings) const {
        if (who.empty())
            return closings == 1 ? "Closed too, with another behind or before it:"
                                 : "Closed too, each with another behind or before it:";
        std::vector<std::string> names;
        for (const std::size_t pest : who) names.push_back(settings_.against[pest].name);
        return (closings == 1 ? "Keeps out " : "Each keeps out ") + listed(names) + "; opened again, it lets " +
               (names.size() == 1 ? "it" : "them") + " in:";
    }

    [[nodiscard]] std::string closing_text(const ClosedGap& closed) const {
        const Treatment* treatment = shipped_treatments().find(closed.with);
        const std::optional<Date> since = closed.held_since();
        return survey_[closed.gap].label() + ", " + (treatment != nullptr ? treatment->name : "closed") +
               (since ? ", " + date_text(*since) : "");
    }

    void departed() {
        std::vector<const Occupant*> gone;
        for (const Occupant& occupant : job_.occupied) {
            if (occupant.left) gone.push_back(&occupant);
        }
        if (gone.empty()) return;
        title("What lived here and is gone");
        for (const Occupant* occupant : gone)
            line(occupant->animal.name + " in " + survey_[occupant->space].label() + ": gone since " +
                     date_text(*occupant->left) + way_back_text(*occupant),
                 "  - ");
    }

    /// Nobody is told to close what must stay open.
    [[nodiscard]] std::string advice(const WayBack& back) const {
        if (back.may_close.empty())
            return "it must not be closed: ask whether a mesh may be put over it, or the animal comes back";
        const bool all = back.may_close.size() == back.gaps.size();
        return "close " + (all ? "it too" : labels(survey_, back.may_close)) + ", or it comes back";
    }

    [[nodiscard]] std::string way_back_text(const Occupant& occupant) const {
        for (const WayBack& back : completion_.ways_back) {
            if (&job_.occupied[back.occupant] != &occupant) continue;
            const bool other = occupant.way && !back.as_seen;
            return std::string(other ? "; the way that it was seen to use is closed, but another is open: "
                                     : "; its way is still open: ") +
                   labels(survey_, back.gaps) + "; " + advice(back);
        }
        return "";
    }

    void seen_since() {
        if (completion_.seen_since.empty()) return;
        title("Seen since the last closing");
        for (const std::uint32_t i : completion_.seen_since) {
            const Sighting& sighting = job_.sightings[i];
            line(std::to_string(sighting.count) + " x " + sighting.pest.name + " in " + survey_[sighting.room].label() + ", " +
                     date_text(*sighting.date),
                 "  - ");
        }
        line("What was inside may show up for some weeks. Call when there are still some after that.");
    }

    void callbacks() {
        if (completion_.callbacks.empty()) return;
        title("What had to be mended");
        for (const std::uint32_t i : completion_.callbacks) line(callback_text(job_, job_.closed[i]), "  - ");
    }

    void fuel() {
        if (!completion_.burns_fuel) return;
        title("Fuel is burned in this house");
        const CheckMade& tested = *completion_.combustion_safety;
        const CheckMade& alarms = *completion_.co_alarms;
        line("Appliances tested for draft, spillage and carbon monoxide after the last closing: " + date_text(tested.date) +
             ", by " + printable(tested.by) + ".");
        line("Carbon monoxide alarms looked at: " + date_text(alarms.date) + ", by " + printable(alarms.by) + ".");
    }

    void look_again() {
        title("When to look again");
        for (const std::string& text : when_to_look_again(judged_)) line(text);
    }

    void rests_on() {
        title("What this rests on");
        std::map<Evidence::How, std::size_t> how;
        const std::size_t shut = drawn_shut(survey_);
        for (const Gap& gap : survey_.gaps) {
            if (!is_drawn_shut(gap)) ++how[gap.evidence.how];
        }
        std::vector<std::string> known;
        const auto add = [&](Evidence::How one, const std::string& words) {
            if (how[one] > 0) known.push_back(std::to_string(how[one]) + ' ' + words);
        };
        add(Evidence::How::measured, "measured");
        add(Evidence::How::modeled, "taken from drawings");
        add(Evidence::How::assumed, "assumed");
        add(Evidence::How::unstated, "without a word on how the width is known");
        line("The survey" + (job_.surveyed.empty() ? "" : " of " + printable(job_.surveyed)) +
             (job_.surveyor.empty() ? "" : " (" + printable(job_.surveyor) + ")") + ": " +
             counted(survey_.gaps.size() - shut, "gap", "gaps") + (known.empty() ? "" : ", " + listed(known)) + ".");
        if (shut > 0)
            line("Counted as tight, as drawn, and measured by nobody: " + counted(shut, "joint", "joints") + " of the model.");
        line(settings_.sizing == Sizing::with_plus_minus
                 ? "Every gap counts as wide as its width and its plus-minus together."
                 : "Every gap counts as wide as stated; how far that may be off is not counted.");
        for (const Pest& pest : settings_.against) line(pest.name + " needs: " + sizes_text(pest).english() + ".");
    }

    void not_covered() {
        title("What it does not cover");
        line("Gaps that nobody surveyed, and widths that were written down wrong.", "  - ");
        line("Doors and windows that stand open, and boxes, plants or firewood that are carried in. They are no gaps.", "  - ");
        line("What comes later: houses settle, sealant ages, somebody drills a hole, animals make new ones.", "  - ");
        line("Other animals than those named, and any that are inside today: some may be seen for a few weeks more.", "  - ");
    }

    void left_open() {
        if (completion_.left_open.empty()) return;
        title("What stays open on purpose");
        line("None of the animals named gets from there into the rooms. Please leave these open:");
        for (const LeftOpen& open : completion_.left_open) line(labels(survey_, open.gaps) + ": " + open.why.english(), "  - ");
    }

    void also_open() {
        if (completion_.also_open.empty()) return;
        title("What else stays open");
        line("Surveyed and left open, because nothing that it is about gets from there into the rooms:");
        line(labels(survey_, completion_.also_open) + ".", "  - ");
    }

    void signatures() {
        lines_.push_back({});
        for (const char* who : {"  Work done by  ", "  Customer      "}) {
            lines_.push_back({});
            lines_.push_back({std::string(who), std::string(30, '_') + " Date " + std::string(14, '_')});
        }
    }

    const Job& job_;
    const Survey& survey_;
    const PlanSettings& settings_;
    const Completion& completion_;
    const JudgedJob& judged_;
    std::vector<PageLine> lines_;
};

}  // namespace

std::vector<PageLine> completion_statement(const JudgedJob& judged) {
    if (!judged.completion.complete()) return {};
    return Statement(judged).all();
}

std::vector<std::string> when_to_look_again(const JudgedJob& judged) {
    const Completion& completion = judged.completion;
    const Survey& survey = judged.job.survey;
    std::vector<std::string> texts;
    if (completion.reinspect) {
        const Reinspection& first = *completion.reinspect;
        const bool late = first.date < judged.settings.date;
        texts.push_back((late ? "This was due by " : "By ") + date_text(first.date) + ": " + survey[first.gap].label() + ", " +
                        first.why.english() + '.');
    } else {
        texts.emplace_back("No date is known.");
    }
    if (!completion.undated.empty())
        texts.push_back("It is not written down since when, or not known for how long, " +
                        std::string(completion.undated.size() == 1 ? "this holds: " : "these hold: ") +
                        labels(survey, completion.undated) + ".");
    return texts;
}

std::string callback_text(const Job& job, const ClosedGap& closed) {
    const Callback& callback = *closed.callback;
    return job.survey[closed.gap].label() + ": called back on " + date_text(callback.date) + ", " + printable(callback.cause) +
           "; " + (callback.mended ? "mended on " + date_text(*callback.mended) : "not mended");
}

}  // namespace seamward
