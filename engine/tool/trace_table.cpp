// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "base/measure_text.h"
#include "catalog/field_check.h"
#include "catalog/shipped.h"
#include "tool/trace_command.h"

namespace seamward {

namespace {

const char* basis_text(Basis basis) {
    switch (basis) {
        case Basis::measured: return "measured";
        case Basis::advice: return "advice";
        case Basis::harborage: return "harborage";
        case Basis::claim: break;
    }
    return "claim";
}

std::string counted(std::size_t n, const std::string& one, const std::string& many) {
    return std::to_string(n) + ' ' + (n == 1 ? one : many);
}

/// `yard > [joint under the weep screed, 3/64 in, smallest] > north wall > ...`
std::string way_text(const Survey& survey, const RankedPath& ranked) {
    std::string text = survey[ranked.path.from()].label();
    for (std::size_t i = 0; i < ranked.path.gaps.size(); ++i) {
        const Gap& gap = survey[ranked.path.gaps[i]];
        text += " > [" + gap.label() + ", " + inches_text(clear_width(gap.shape));
        if (gap.count > 1) text += ", one of " + std::to_string(gap.count);
        if (ranked.path.gaps[i] == ranked.pinch_gap && ranked.path.gaps.size() > 1) text += ", smallest";
        text += "] > " + survey[ranked.path.spaces[i + 1]].label();
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
    std::string text;
    for (const std::size_t pest : which) text += (text.empty() ? "" : ", ") + pests[pest].name;
    return text;
}

std::string open_to_text(const Survey& survey, const std::vector<Pest>& pests, const RankedPath& ranked) {
    const std::vector<std::size_t> sure = open_to(survey, ranked.path, pests);
    std::vector<std::size_t> doubtful = perhaps_open_to(survey, ranked.path, pests);
    std::erase_if(doubtful, [&](std::size_t pest) { return std::find(sure.begin(), sure.end(), pest) != sure.end(); });
    std::string text = names_of(pests, sure);
    if (!doubtful.empty())
        text +=
            (text.empty() ? "" : "; ") + ("perhaps " + names_of(pests, doubtful)) + ", if a width is larger by its plus-minus";
    return text.empty() ? "none of this job's animals" : text;
}

std::string size_text(const std::string& what, double size, Basis basis, const std::string& source_id) {
    std::string text = what + ' ' + width_text(size);
    if (source_id.empty()) return text + ", this job's own";
    const auto& sources = shipped_pests().sources;
    const auto source = std::find_if(sources.begin(), sources.end(), [&](const CatalogSource& s) { return s.id == source_id; });
    const bool memory = source != sources.end() && source->seen == CatalogSource::Seen::memory;
    return text + ", " + basis_text(basis) + (memory ? ", no document seen" : "");
}

/// A paragraph that hangs from `lead`.
void print_hanging(std::string lead, const std::string& text, const Console& console) {
    const std::size_t width = letters(lead);
    for (const std::string& line : wrapped(text, console.columns - std::min(console.columns - 20, width))) {
        console.out << lead << line << '\n';
        lead.assign(width, ' ');
    }
}

/// Sizes that answers rest on, and how sure they are.
void print_pests(const std::vector<Pest>& pests, const Console& console) {
    if (pests.empty()) return;
    std::size_t name_width = 0;
    for (const Pest& pest : pests) name_width = std::max(name_width, letters(pest.name));
    console.out << '\n' << console.bold("Sizes these answers rest on") << '\n';
    for (const Pest& pest : pests) {
        const bool unsure = !pest.slit_source.empty() && pest.confidence == Confidence::low;
        print_hanging("  " + padded(pest.name, name_width) + "  ",
                      size_text("slit", pest.size.slit, pest.slit_basis, pest.slit_source) + "; " +
                          size_text("hole", pest.size.hole, pest.hole_basis, pest.hole_source) +
                          (unsure ? "; low confidence" : ""),
                      console);
    }
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
        console_.out << console_.bold(row("#", "Room", "Smallest", "gap") + (check_in_row_ ? "In the hand" : "")) << '\n';
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

    void print_rooms() const {
        if (trace_.rooms.empty()) return;
        console_.out << '\n' << console_.bold("Rooms by their widest way in") << '\n';
        std::vector<RoomPinch> rooms = trace_.rooms;
        std::stable_sort(rooms.begin(), rooms.end(), [](const RoomPinch& a, const RoomPinch& b) { return a.pinch > b.pinch; });
        for (const RoomPinch& room : rooms) {
            console_.out << std::string(indent(), ' ') << padded(survey_[room.space].label(), room_width_) << "  ";
            if (!room.pinch)
                console_.out << "no way in";
            else
                console_.out << padded(inches_text(*room.pinch), 10) << "  " << millimeters_text(*room.pinch);
            console_.out << (room.maybe ? "  perhaps\n" : "\n");
        }
    }

private:
    [[nodiscard]] std::size_t indent() const { return rank_width_ + 2; }

    [[nodiscard]] static std::string hand_check(const RankedPath& ranked) {
        return field_check(ranked.pinch, shipped_gauges().rows);
    }

    [[nodiscard]] std::string row(const std::string& rank, const std::string& room, const std::string& inches,
                                  const std::string& millimeters) const {
        return std::string(rank_width_ - std::min(rank_width_, rank.size()), ' ') + rank + "  " + padded(room, room_width_) +
               "  " + padded(inches, 10) + "  " + padded(millimeters, 9) + "  ";
    }

    void paragraph(const std::string& title, const std::string& text) const {
        print_hanging(std::string(indent(), ' ') + padded(title, 9), text, console_);
    }

    const Survey& survey_;
    const Trace& trace_;
    const std::vector<Pest>& pests_;
    const Console& console_;
    std::size_t room_width_ = 4;
    std::size_t rank_width_ = 2;
    bool check_in_row_ = true;
};

}  // namespace

std::string why_no_path_can_be(const Survey& survey, const TraceSettings& settings) {
    const bool starts =
        std::any_of(survey.spaces.begin(), survey.spaces.end(), [](const Space& space) { return space.starts_paths(); });
    const bool ends = !settings.to.empty() || std::any_of(survey.spaces.begin(), survey.spaces.end(),
                                                          [](const Space& space) { return space.is_living(); });
    if (!starts) return "this survey has no outdoors or source space, so that no way in can begin";
    return ends ? "" : "this survey has no living space, so that no way in can end";
}

void print_trace_table(const Job& job, const std::string& heading, const TraceSettings& settings, const Trace& trace,
                       const Console& console) {
    const Survey& survey = job.survey;
    std::string summary = counted(survey.spaces.size(), "space", "spaces") + ", " + counted(survey.gaps.size(), "gap", "gaps");
    if (!job.closed.empty()) summary += " (" + std::to_string(job.closed.size()) + " closed already)";
    console.out << console.bold(heading) << '\n';
    print_hanging("", summary + ". A way in is ranked by its smallest gap, widest first.", console);
    console.out << '\n';
    const std::vector<Pest> pests = pests_of(job, settings);
    if (trace.paths.empty()) {
        console.out << "No way in" << (settings.pests.empty() ? "" : " for the animals asked for") << ".\n";
    } else {
        const TablePrinter printer(survey, trace, pests, console);
        printer.print_paths();
        printer.print_rooms();
    }
    print_pests(pests, console);
}

}  // namespace seamward
