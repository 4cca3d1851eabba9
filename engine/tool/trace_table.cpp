// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <numeric>

#include "base/drawn_shut.h"
#include "base/measure_text.h"
#include "base/phrases.h"
#include "catalog/field_check.h"
#include "catalog/pest_sizes.h"
#include "catalog/shipped.h"
#include "paths/remarks.h"
#include "tool/trace_command.h"

namespace seamward {

namespace {

/// `joint under the weep screed, 3/64 in not measured, one of 2, smallest, stays open: vent`
std::string gap_text(const Gap& gap, bool smallest) {
    std::string text = gap.label() + ", " + inches_text(clear_width(gap.shape));
    if (gap.evidence.how == Evidence::How::assumed) text += " not measured";
    if (gap.count > 1) text += ", one of " + std::to_string(gap.count);
    if (smallest) text += ", smallest";
    if (serves_as_opening(gap.duty))
        text += std::string(", stays open: ") + duty_words(gap.duty);
    else if (gap.must_stay_open())
        text += ", never to be closed";
    return text;
}

/// `yard > [joint under the weep screed, 3/64 in, smallest] > north wall > ...`
std::string way_text(const Survey& survey, const RankedPath& ranked) {
    std::string text = survey[ranked.path.from()].label();
    for (std::size_t i = 0; i < ranked.path.gaps.size(); ++i) {
        const bool smallest = ranked.path.gaps[i] == ranked.pinch_gap && ranked.path.gaps.size() > 1;
        text += " > [" + gap_text(survey[ranked.path.gaps[i]], smallest) + "] > " + survey[ranked.path.spaces[i + 1]].label();
    }
    return text;
}

/// The job's animals and those asked for besides.
std::vector<Pest> pests_of(const Job& job, const TraceSettings& settings) {
    std::vector<Pest> pests = job.pests;
    for (const Pest& asked : settings.pests) {
        const bool there = std::any_of(pests.begin(), pests.end(), [&](const Pest& pest) { return pest.id == asked.id; });
        if (!there) pests.push_back(asked);
    }
    return pests;
}

std::string names_of(const std::vector<Pest>& pests, const std::vector<std::size_t>& which) {
    std::vector<std::string> names;
    for (const std::size_t pest : which) names.push_back(pests[pest].name);
    return joined(names, ", ");
}

std::string open_to_text(const Survey& survey, const std::vector<Pest>& pests, const RankedPath& ranked) {
    const std::vector<std::size_t> sure = open_to(survey, ranked.path, pests);
    std::vector<std::size_t> doubtful = perhaps_open_to(survey, ranked.path, pests);
    std::erase_if(doubtful, [&](std::size_t pest) { return std::find(sure.begin(), sure.end(), pest) != sure.end(); });
    std::string text = names_of(pests, sure);
    if (!doubtful.empty())
        text +=
            (text.empty() ? "" : "; ") + ("perhaps " + names_of(pests, doubtful)) + ", if widths are larger by their plus-minus";
    return text.empty() ? "none of this job's animals" : text;
}

/// Sizes that answers rest on, and how sure they are.
void print_pests(const std::vector<Pest>& pests, const Console& console) {
    if (pests.empty()) return;
    std::size_t name_width = 0;
    for (const Pest& pest : pests) name_width = std::max(name_width, letters(pest.name));
    console.out << '\n' << console.bold("Sizes these answers rest on, and where they come from") << '\n';
    for (const Pest& pest : pests) {
        print_paragraph("  " + padded(pest.name, name_width) + "  ", sizes_text(pest).english(), console);
    }
}

/// Animals that get into no room may yet get under the roof or under the floor.
void print_hollow_spaces(const Survey& survey, const TraceSettings& settings, const Console& console) {
    constexpr std::size_t most = 3;
    std::vector<std::string> options;
    for (const Space& space : survey.spaces) {
        const bool hollow = space.id.find("attic") != std::string::npos || space.id.find("crawl") != std::string::npos;
        if (space.kind == SpaceKind::cavity && !space.source && hollow && options.size() < most)
            options.push_back("--to " + space.id);
    }
    if (options.empty() || !settings.to.empty()) return;
    std::string text = "Ways that end under the roof or under the floor are asked for with ";
    for (std::size_t i = 0; i < options.size(); ++i) text += (i == 0 ? "" : ", ") + options[i];
    print_paragraph("", text + '.', console);
}

/// The table's columns, as wide as what stands in them.
class TablePrinter {
public:
    TablePrinter(const Survey& survey, const Trace& trace, const std::vector<Pest>& pests, const Console& console)
        : survey_(survey), trace_(trace), pests_(pests), console_(console) {
        std::size_t check_width = 0;
        for (const RankedPath& ranked : trace.paths) {
            room_width_ = std::max(room_width_, letters(survey[ranked.path.to()].label()));
            check_width = std::max(check_width, letters(hand_check(ranked)));
        }
        for (const RoomPinch& room : trace.rooms) room_width_ = std::max(room_width_, letters(survey[room.space].label()));
        rank_width_ = std::max<std::size_t>(2, std::to_string(trace.paths.size()).size());
        check_in_row_ = letters(row("", "", "", "")) + check_width <= console.columns;
    }

    void print_paths() const {
        const std::string head =
            std::string(rank_width_ - 1, ' ') + "#  " + padded("Room", room_width_) + "  " + padded("Smallest gap", 23);
        console_.out << console_.bold(head + (check_in_row_ ? "In the hand" : "")) << '\n';
        std::size_t rank = 0;
        for (const RankedPath& ranked : trace_.paths) {
            const std::string& room = survey_[ranked.path.to()].label();
            const std::string in_row =
                row(std::to_string(++rank), room, inches_text(ranked.pinch), millimeters_text(ranked.pinch));
            console_.out << console_.bold(in_row) << (check_in_row_ ? hand_check(ranked) : "") << '\n';
            if (!check_in_row_) paragraph("in hand", hand_check(ranked));
            if (!pests_.empty()) paragraph("open to", open_to_text(survey_, pests_, ranked));
            paragraph("way in", way_text(survey_, ranked));
        }
    }

    void print_rooms(const std::vector<std::vector<std::size_t>>& rooms_open,
                     const std::vector<std::optional<SharedAir>>& shared) const {
        if (trace_.rooms.empty()) return;
        console_.out << '\n'
                     << console_.bold("Rooms by their widest way in" +
                                      std::string(pests_.empty() ? "" : ", and what can get there"))
                     << '\n';
        std::vector<std::size_t> order(trace_.rooms.size());
        std::iota(order.begin(), order.end(), 0U);
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return trace_.rooms[a].pinch > trace_.rooms[b].pinch; });
        for (const std::size_t i : order) {
            const RoomPinch& room = trace_.rooms[i];
            std::string lead = std::string(indent(), ' ') + padded(survey_[room.space].label(), room_width_) + "  ";
            if (!room.pinch) {
                print_paragraph(lead, "no way in listed" + shared_text("; ", shared[i]), console_);
                continue;
            }
            lead += padded(inches_text(*room.pinch), 10) + "  " + padded(millimeters_text(*room.pinch), 9) + "  ";
            std::string open = names_of(pests_, rooms_open[i]);
            if (room.maybe)
                open = "perhaps, if widths are larger by their plus-minus" + (open.empty() ? "" : "; for certain " + open);
            if (open.empty() && !pests_.empty()) open = "none of these animals";
            open += shared_text(open.empty() ? "" : "; ", shared[i]);
            if (open.empty()) console_.out << lead.substr(0, lead.find_last_not_of(' ') + 1) << '\n';
            print_paragraph(lead, open, console_);
        }
    }

private:
    [[nodiscard]] std::size_t indent() const { return rank_width_ + 2; }

    /// `open to kitchen (36 in)`: whatever is in there is in here too.
    [[nodiscard]] std::string shared_text(const std::string& before, const std::optional<SharedAir>& shared) const {
        if (!shared) return "";
        return before + "open to " + survey_[shared->with].label() + " (" + inches_text(shared->width) + ')';
    }

    [[nodiscard]] static std::string hand_check(const RankedPath& ranked) {
        return field_check(ranked.pinch, shipped_gauges().rows).english();
    }

    [[nodiscard]] std::string row(const std::string& rank, const std::string& room, const std::string& inches,
                                  const std::string& millimeters) const {
        return std::string(rank_width_ - std::min(rank_width_, rank.size()), ' ') + rank + "  " + padded(room, room_width_) +
               "  " + padded(inches, 10) + "  " + padded(millimeters, 9) + "  ";
    }

    void paragraph(const std::string& title, const std::string& text) const {
        print_paragraph(std::string(indent(), ' ') + padded(title, 9), text, console_);
    }

    const Survey& survey_;
    const Trace& trace_;
    const std::vector<Pest>& pests_;
    const Console& console_;
    std::size_t room_width_ = 4;
    std::size_t rank_width_ = 2;
    bool check_in_row_ = true;
};

/// `House mouse or Bat`: whose ways were asked for.
std::string names_asked_for(const TraceSettings& settings) {
    std::string asked;
    for (const Pest& pest : settings.pests) asked += (asked.empty() ? "" : " or ") + pest.name;
    return asked;
}

}  // namespace

void print_trace_table(const Job& job, const std::string& heading, const TraceSettings& settings, const Trace& trace,
                       const Console& console) {
    const Survey& survey = job.survey;
    const std::size_t shut = drawn_shut(survey);
    std::string summary =
        counted(survey.spaces.size(), "space", "spaces") + ", " + counted(survey.gaps.size() - shut, "gap", "gaps");
    if (shut > 0) summary += " and " + counted(shut, "joint drawn shut", "joints drawn shut");
    if (!job.closed.empty()) summary += " (" + std::to_string(job.closed.size()) + " closed already)";
    console.out << console.bold(heading) << '\n';
    print_paragraph("", summary + ". Each way in is as wide as its smallest gap; the widest come first.", console);
    const std::string asked = names_asked_for(settings);
    if (!asked.empty()) print_paragraph("", "Only ways open to: " + asked + ".", console);
    console.out << '\n';
    print_ways_in(job, settings, trace, console, true);
}

void print_ways_in(const Job& job, const TraceSettings& settings, const Trace& trace, const Console& console, bool with_options) {
    const Survey& survey = job.survey;
    const std::string asked = names_asked_for(settings);
    std::vector<Message> remarks = remarks_on(job, settings);
    if (const auto widths = remark_on_widths(survey, trace)) remarks.push_back(*widths);
    for (const Message& remark : remarks) print_paragraph("Check: ", remark.english(), console);
    if (!remarks.empty()) console.out << '\n';

    const std::vector<Pest> pests = pests_of(job, settings);
    const TablePrinter printer(survey, trace, pests, console);
    const std::vector<std::size_t> kept_out = pests_kept_out(survey, settings.to, pests);
    if (trace.paths.empty()) {
        console.out << "No way in" << (asked.empty() ? "" : " for " + asked) << ", as far as this survey goes.\n";
    } else {
        printer.print_paths();
        const bool more = trace.paths.size() == settings.top;
        if (more && with_options)
            print_paragraph("", "There may be more: --top K shows K of them, --to SPACE those into one space.", console);
        printer.print_rooms(rooms_open_to(survey, settings.to, trace.rooms, pests), shared_air(survey, settings, trace.rooms));
        if (!kept_out.empty()) {
            console.out << '\n';
            print_paragraph("", names_of(pests, kept_out) + ": no way in, as far as this survey goes.", console);
        }
    }
    if (with_options && (!kept_out.empty() || trace.paths.empty())) print_hollow_spaces(survey, settings, console);
    print_pests(pests, console);
}

}  // namespace seamward
