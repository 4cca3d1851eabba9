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

std::string counted(std::size_t n, const std::string& one, const std::string& many) { return std::to_string(n) + ' ' + (n == 1 ? one : many); }

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

std::string pests_text(const Job& job, const TraceSettings& settings, const RankedPath& ranked) {
    const std::vector<Pest>& asked = job.pests.empty() ? settings.pests : job.pests;
    if (asked.empty()) return "";
    std::string text;
    for (const std::size_t pest : open_to(job.survey, ranked.path, asked)) text += (text.empty() ? "" : ", ") + asked[pest].name;
    if (ranked.maybe) text += std::string(text.empty() ? "" : "; ") + "perhaps what was asked for, if a width is off by its plus-minus";
    return text.empty() ? "none of the animals of this job" : text;
}

/// Sizes that answers rest on, and how sure they are.
void print_pests(const Job& job, const TraceSettings& settings, const Console& console) {
    std::vector<Pest> pests = job.pests;
    for (const Pest& asked : settings.pests) {
        const bool there = std::any_of(pests.begin(), pests.end(), [&](const Pest& pest) { return pest.id == asked.id; });
        if (!there) pests.push_back(asked);
    }
    if (pests.empty()) return;
    std::size_t name_width = 0;
    for (const Pest& pest : pests) name_width = std::max(name_width, letters(pest.name));
    console.out << '\n' << console.bold("Sizes these answers rest on") << '\n';
    for (const Pest& pest : pests) {
        console.out << "  " << padded(pest.name, name_width) << "  slit " << padded(width_text(pest.size.slit), 20) << "hole "
                    << padded(width_text(pest.size.hole), 20);
        if (pest.slit_source.empty()) {
            console.out << "this job's own";
        } else {
            const auto& sources = shipped_pests().sources;
            const auto source = std::find_if(sources.begin(), sources.end(), [&](const CatalogSource& s) { return s.id == pest.slit_source; });
            const bool memory = source != sources.end() && source->seen == CatalogSource::Seen::memory;
            console.out << basis_text(pest.slit_basis) << (memory ? ", no document seen" : "")
                        << (pest.confidence == Confidence::low ? ", low confidence" : "");
        }
        console.out << '\n';
    }
}

}  // namespace

void print_trace_table(const Job& job, const std::string& heading, const TraceSettings& settings, const Trace& trace, const Console& console) {
    const Survey& survey = job.survey;
    std::ostream& out = console.out;
    out << console.bold(heading) << '\n';
    out << counted(survey.spaces.size(), "space", "spaces") << ", " << counted(survey.gaps.size(), "gap", "gaps");
    if (!job.closed.empty()) out << " (" << job.closed.size() << " closed already)";
    out << ". A way in is ranked by its smallest gap, widest first.\n\n";
    if (trace.paths.empty()) {
        out << "No way in" << (settings.pests.empty() ? "" : " for the animals asked for") << ".\n";
        print_pests(job, settings, console);
        return;
    }
    const std::span<const Gauge> gauges = shipped_gauges().rows;
    std::size_t room_width = 4;
    std::size_t check_width = 8;
    for (const RankedPath& ranked : trace.paths) {
        room_width = std::max(room_width, letters(survey[ranked.path.to()].label()));
        check_width = std::max(check_width, letters(field_check(ranked.pinch, gauges)));
    }
    for (const RoomPinch& room : trace.rooms) room_width = std::max(room_width, letters(survey[room.space].label()));
    const std::size_t rank_width = std::max<std::size_t>(2, std::to_string(trace.paths.size()).size());
    const std::size_t indent = rank_width + 2;
    const auto columns = [&](const std::string& rank, const std::string& room, const std::string& inches, const std::string& millimeters) {
        return std::string(rank_width - std::min(rank_width, rank.size()), ' ') + rank + "  " + padded(room, room_width) + "  " + padded(inches, 10) + "  " +
               padded(millimeters, 9) + "  ";
    };
    out << console.bold(columns("#", "Room", "Smallest", "gap") + "In the hand") << '\n';
    std::size_t rank = 0;
    for (const RankedPath& ranked : trace.paths) {
        out << console.bold(columns(std::to_string(++rank), survey[ranked.path.to()].label(), inches_text(ranked.pinch), millimeters_text(ranked.pinch))) +
                   field_check(ranked.pinch, gauges)
            << '\n';
        const auto paragraph = [&](const std::string& title, const std::string& text) {
            const std::string gap(indent, ' ');
            std::string lead = padded(title, 9);
            for (const std::string& line : wrapped(text, console.columns - indent - lead.size())) {
                out << gap << lead << line << '\n';
                lead.assign(lead.size(), ' ');
            }
        };
        paragraph("open to", pests_text(job, settings, ranked));
        paragraph("way in", way_text(survey, ranked));
    }
    out << '\n' << console.bold("Rooms by their widest way in") << '\n';
    std::vector<RoomPinch> rooms = trace.rooms;
    std::stable_sort(rooms.begin(), rooms.end(), [](const RoomPinch& a, const RoomPinch& b) { return a.pinch > b.pinch; });
    for (const RoomPinch& room : rooms) {
        const bool open = room.pinch > 0;
        out << std::string(indent, ' ') << padded(survey[room.space].label(), room_width) << "  "
            << padded(open ? inches_text(room.pinch) : "no way in", 10) << "  " << (open ? millimeters_text(room.pinch) : "") << '\n';
    }
    print_pests(job, settings, console);
}

}  // namespace seamward
