// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/sightings_lines.h"

#include <cmath>
#include <string>

#include "base/measure_text.h"

namespace seamward {

namespace {

constexpr double least_told = 0.01;  ///< smaller shares are left out of the table

/// Beyond that the digits are those of rounding.
double answer_share(double share) { return std::round(share * 1e6) / 1e6; }

std::string percent(double share) {
    const long whole = std::lround(share * 100);
    if (whole >= 100 && share < 1 - 1e-9) return "over 99 %";
    if (whole <= 0 && share > 0) return "under 1 %";
    return std::to_string(whole) + " %";
}

/// `kitchen 3, hall 1`
std::string rooms_text(const Survey& survey, const std::vector<SeenIn>& rooms) {
    std::string text;
    for (const SeenIn& seen : rooms)
        text += (text.empty() ? "" : ", ") + survey[seen.room].label() + ' ' + std::to_string(seen.count);
    return text;
}

void print_entries(const Survey& survey, const SightingsOfPest& of, const Console& console) {
    std::size_t small = 0;
    double left = 0;
    for (const EntryShare& entry : of.entries) {
        if (entry.share < least_told) {
            ++small;
            left += entry.share;
            continue;
        }
        const std::string share = percent(entry.share);
        print_paragraph(std::string(10 - std::min<std::size_t>(9, share.size()), ' ') + share + "  ",
                        survey[entry.gap].label() + (!entry.cut     ? ": stays open"
                                                     : entry.closed ? ": closed"
                                                                    : ": stays open, leads into no room any more"),
                        console);
    }
    if (small > 0)
        print_paragraph("    ",
                        std::to_string(small) + (small == 1 ? " more entry has" : " more entries have") + " less than 1 %" +
                            (small == 1 ? "." : " each, " + percent(left) + " together."),
                        console);
}

/// `It may have come through another room: hall is open to House mouse (door from the garage, 11/32 in (8.7 mm)). `
std::string other_room_text(const Survey& survey, const SightingsOfPest& of) {
    if (!of.other_room) return "";
    const OpenWay& way = of.other_room->way;
    return "It may have come through another room: " + survey[way.path.to()].label() +
           (of.other_room->still ? " is" : " was then") + " open to " + of.pest.name + " (" + survey[way.pinch_gap].label() +
           ", " + inches_text(way.pinch) + "). ";
}

void print_one(const Survey& survey, const SightingsOfPest& of, const Plan& plan, const Console& console) {
    print_paragraph("  ", of.pest.name + ", " + std::to_string(of.seen) + " seen (" + rooms_text(survey, of.rooms) + ")",
                    console);
    print_entries(survey, of, console);
    if (of.explained > 0 && plan.feasible)
        print_paragraph("    ",
                        of.cut_share >= 1 - 1e-9 ? "Once this plan is done, none of these ways leads into the rooms any more."
                        : of.cut_share <= 0      ? "Once this plan is done, all of these ways still lead into the rooms."
                                                 : "The ways that lead into no room once this plan is done make up " +
                                                  percent(of.cut_share) + " of the chance.",
                        console);
    if (!of.unexplained.empty())
        print_paragraph("    ",
                        "Not explained (" + rooms_text(survey, of.unexplained) + "): no surveyed way leads there. " +
                            other_room_text(survey, of) +
                            "Look for a gap that nobody wrote down, a door left open, or a carried-in box.",
                        console);
    if (!of.at_starts.empty())
        print_paragraph("    ", "Not counted (" + rooms_text(survey, of.at_starts) + "): ways in begin there, so it took none.",
                        console);
}

void write_rooms(const char* key, const Survey& survey, const std::vector<SeenIn>& rooms, JsonWriter& json) {
    json.key(key).begin_array();
    for (const SeenIn& seen : rooms) {
        json.begin_object().key("room").value(survey[seen.room].id);
        json.key("count").value(static_cast<std::int64_t>(seen.count)).end_object();
    }
    json.end_array();
}

}  // namespace

void print_sightings(const Job& job, const Plan& plan, const PlanSettings& settings, const Console& console) {
    if (job.sightings.empty()) return;
    console.out << '\n' << console.bold("Where the animals that were seen most likely came in") << '\n';
    for (const SightingsOfPest& of : explain_sightings(job, plan.steps, settings.sizing))
        print_one(job.survey, of, plan, console);
    print_paragraph(
        "  ",
        "Reckoned as if each had come alone, by chance, and wandered about until somebody saw it: a hint where to look "
        "first, no proof.",
        console);
}

void write_sightings(const Job& job, const Plan& plan, const PlanSettings& settings, JsonWriter& json) {
    if (job.sightings.empty()) return;
    json.key("sightings").begin_array();
    for (const SightingsOfPest& of : explain_sightings(job, plan.steps, settings.sizing)) {
        json.begin_object().key("pest").value(of.pest.id).key("sightings").value(static_cast<std::int64_t>(of.seen));
        json.key("explained").value(static_cast<std::int64_t>(of.explained)).key("entries").begin_array();
        for (const EntryShare& entry : of.entries) {
            json.begin_object().key("gap").value(job.survey[entry.gap].id).key("share").value(answer_share(entry.share));
            json.key("cut").value(entry.cut).key("closed").value(entry.closed).end_object();
        }
        json.end_array().key("cut_share").value(answer_share(of.cut_share));
        write_rooms("unexplained", job.survey, of.unexplained, json);
        if (of.other_room) {
            const OpenWay& way = of.other_room->way;
            json.key("other_room").begin_object().key("room").value(job.survey[way.path.to()].id);
            json.key("gap").value(job.survey[way.pinch_gap].id).key("pinch_mm").value(answer_millimeters(way.pinch));
            json.key("still").value(of.other_room->still).end_object();
        }
        write_rooms("no_way_needed", job.survey, of.at_starts, json);
        json.end_object();
    }
    json.end_array();
}

}  // namespace seamward
