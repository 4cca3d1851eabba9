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

/// Sizes that answers rest on, and how sure they are.
void print_pests(const std::vector<Pest>& pests, const Console& console) {
    if (pests.empty()) return;
    std::size_t name_width = 0;
    for (const Pest& pest : pests) name_width = std::max(name_width, letters(pest.name));
    console.out << '\n' << console.bold("Sizes these answers rest on") << '\n';
    for (const Pest& pest : pests) {
        const bool unsure = !pest.slit_source.empty() && pest.confidence == Confidence::low;
        console.out << "  " << padded(pest.name, name_width) << "  "
                    << size_text("slit", pest.size.slit, pest.slit_basis, pest.slit_source) << "; "
                    << size_text("hole", pest.size.hole, pest.hole_basis, pest.hole_source) << (unsure ? "; low confidence" : "")
                    << '\n';
    }
}

void print_rooms(const Survey& survey, std::vector<RoomPinch> rooms, std::size_t indent, std::size_t room_width,
                 const Console& console) {
    if (rooms.empty()) return;
    console.out << '\n' << console.bold("Rooms by their widest way in") << '\n';
    std::stable_sort(rooms.begin(), rooms.end(), [](const RoomPinch& a, const RoomPinch& b) { return a.pinch > b.pinch; });
    for (const RoomPinch& room : rooms) {
        console.out << std::string(indent, ' ') << padded(survey[room.space].label(), room_width) << "  ";
        if (room.pinch)
            console.out << padded(inches_text(*room.pinch), 10) << "  " << millimeters_text(*room.pinch)
                        << (room.maybe ? "  perhaps" : "");
        else
            console.out << "no way in";
        console.out << '\n';
    }
}

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
    std::ostream& out = console.out;
    out << console.bold(heading) << '\n';
    out << counted(survey.spaces.size(), "space", "spaces") << ", " << counted(survey.gaps.size(), "gap", "gaps");
    if (!job.closed.empty()) out << " (" << job.closed.size() << " closed already)";
    out << ". A way in is ranked by its smallest gap, widest first.\n\n";
    const std::vector<Pest> pests = pests_of(job, settings);
    if (trace.paths.empty()) {
        out << "No way in" << (settings.pests.empty() ? "" : " for the animals asked for") << ".\n";
        print_pests(pests, console);
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
    const auto columns = [&](const std::string& rank, const std::string& room, const std::string& inches,
                             const std::string& millimeters) {
        return std::string(rank_width - std::min(rank_width, rank.size()), ' ') + rank + "  " + padded(room, room_width) + "  " +
               padded(inches, 10) + "  " + padded(millimeters, 9) + "  ";
    };
    out << console.bold(columns("#", "Room", "Smallest", "gap") + "In the hand") << '\n';
    std::size_t rank = 0;
    for (const RankedPath& ranked : trace.paths) {
        out << console.bold(columns(std::to_string(++rank), survey[ranked.path.to()].label(), inches_text(ranked.pinch),
                                    millimeters_text(ranked.pinch))) +
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
        if (!pests.empty()) paragraph("open to", open_to_text(survey, pests, ranked));
        paragraph("way in", way_text(survey, ranked));
    }
    print_rooms(survey, trace.rooms, indent, room_width, console);
    print_pests(pests, console);
}

}  // namespace seamward
