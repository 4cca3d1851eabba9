// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/departure_lines.h"

#include "catalog/shipped.h"

namespace seamward {

namespace {

std::string what_waits(const Survey& survey, const Departure& departure) {
    if (!departure.waits()) {
        if (departure.removal != nullptr && departure.removal->by == Removal::By::nothing) return "nothing waits for it.";
        return departure.way_known ? "these steps leave it a way out. They keep it out of the rooms and do not drive it away."
                                   : "no way out is known, and these steps do not touch its space. Look for the way it came.";
    }
    std::string gaps;
    for (const GapIndex gap : departure.last) gaps += (gaps.empty() ? "" : "; ") + survey[gap].label();
    return (departure.way_known ? "it must not be shut in. Its main way out stays open until it is gone: "
                                : "no way out is known, so all around its space waits until it is gone: ") +
           gaps + ".";
}

void how_it_leaves(const Survey& survey, const Departure& departure, const Console& console) {
    const Removal& removal = *departure.removal;
    const std::vector<CatalogSource>& sources = shipped_removals().sources;
    const std::string at = departure.device ? " Here: " + survey[*departure.device].label() + "." : "";
    print_paragraph("    ", removal.how + "." + at + " (" + cited(sources, removal.source).english() + ")", console);
    if (departure.season) {
        const ClosedSeason& season = *departure.season->season;
        print_paragraph("    ",
                        "Not now: " + season.why + ". Begin on " + date_text(departure.begin) + " at the earliest (" +
                            cited(sources, season.source).english() + ")",
                        console);
    }
    if (departure.waits())
        print_paragraph("    ",
                        (removal.quiet_nights > 0 ? "After " + std::to_string(removal.quiet_nights) + " nights without a sign, "
                                                  : "Once it is gone, ") +
                            "on " + date_text(departure.close_from) + " at the earliest, close what waits.",
                        console);
    for (const Caution& caution : removal.cautions)
        print_paragraph("    Caution: ", caution.text + " (" + cited(sources, caution.source).english() + ")", console);
}

}  // namespace

void print_departure(const Job& job, const Departure& departure, const Console& console) {
    const Occupant& occupant = job.occupied[departure.occupant];
    print_paragraph("  ",
                    occupant.animal.name + " in " + job.survey[occupant.space].label() +
                        (occupant.seen.empty() ? "" : " (seen: " + occupant.seen + ")") + ": " +
                        what_waits(job.survey, departure),
                    console);
    if (departure.removal == nullptr) {
        if (departure.waits())
            print_paragraph("    ",
                            "The tables do not know this animal: nobody closes these before somebody who knows it has looked.",
                            console);
        return;
    }
    if (departure.waits() || departure.removal->by == Removal::By::nothing) how_it_leaves(job.survey, departure, console);
}

}  // namespace seamward
