// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/briefing.h"

#include <array>
#include <cmath>
#include <cstdlib>
#include <map>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "base/text.h"
#include "catalog/field_check.h"
#include "catalog/pest_sizes.h"
#include "catalog/shipped.h"
#include "plan/work_order.h"
#include "teach/key.h"

namespace seamward {

namespace {

constexpr double meters_per_inch = 0.0254;
constexpr long long inches_per_foot = 12;

Message difficulty_message(Difficulty difficulty) {
    switch (difficulty) {
        case Difficulty::easy: return "easy";
        case Difficulty::medium: return "medium";
        case Difficulty::hard: break;
    }
    return "hard";
}

/// As a message, so that an English unit is said in Spanish.
Message height_message(double meters) {
    const long long inches = std::llround(meters / meters_per_inch);
    const long long feet = inches / inches_per_foot, rest = inches % inches_per_foot;
    const long long hundredths = std::llround(meters * 100);
    std::string metric = std::to_string(hundredths / 100) + '.';
    metric += (hundredths % 100 < 10 ? "0" : "") + std::to_string(hundredths % 100) + " m";
    const auto number = [](long long value) { return as_it_stands(static_cast<std::size_t>(value)); };
    if (feet == 0) return message("{} in ({})", {number(rest), as_it_stands(metric)});
    if (feet == 1 && rest == 0) return message("1 ft ({})", {as_it_stands(metric)});
    if (feet == 1) return message("1 ft {} in ({})", {number(rest), as_it_stands(metric)});
    if (rest == 0) return message("{} ft ({})", {number(feet), as_it_stands(metric)});
    return message("{} ft {} in ({})", {number(feet), number(rest), as_it_stands(metric)});
}

/// To the nearest mark of a tape and to a millimeter: `2 1/8 in (54 mm)`.
Message marked_message(double meters, double mark) {
    const double marked = std::round(meters / mark) * mark;
    const auto millimeters = static_cast<std::size_t>(std::llround(meters * 1000));
    return message("{} ({})", {inches_message(marked > 0 ? marked : meters), as_it_stands(std::to_string(millimeters) + " mm")});
}

/// To an eighth of an inch, a short one as a long one: `3 1/2 in (90 mm)`, `7 ft 10 1/2 in (2.40 m)`.
Message long_as(double meters) {
    const Message told = length_message(meters);
    return told == width_message(meters) ? marked_message(meters, meters_per_inch / 8) : told;
}

std::string height_of(const DrillPlace& place, double ground, const Translator& say) {
    if (!place.at) return "";
    const double up = place.at->z - ground;
    if (std::abs(up) < meters_per_inch / 2) return say("at the ground");
    if (up < 0) return say(message("{} below the ground", {height_message(-up)}));
    return say(message("{} above the ground", {height_message(up)}));
}

/// Places that are called the same are told apart by where they lie.
void tell_apart(std::vector<BriefedPlace>& places, const Translator& say) {
    std::map<std::string, std::size_t> names;
    for (const BriefedPlace& place : places) ++names[place.name + place.height];
    const auto meters = [](double value) {
        const long long tenths = std::llround(value * 10);
        return as_it_stands((tenths < 0 ? "-" : "") + std::to_string(std::llabs(tenths) / 10) + '.' +
                            std::to_string(std::llabs(tenths) % 10) + " m");
    };
    for (BriefedPlace& place : places) {
        if (names.at(place.name + place.height) < 2 || !place.at) continue;
        place.name = say(message("{} ({} east, {} north)", {as_it_stands(place.name), meters(place.at->x), meters(place.at->y)}));
    }
}

std::vector<std::string> scoring_rules(const Drill& drill, const Translator& say) {
    const auto points = [](DrillScore::Of of) {
        return as_it_stands(static_cast<std::size_t>(std::lround(drill_figure(shipped_drill_scores(), of))));
    };
    using Of = DrillScore::Of;
    std::vector<std::string> rules{
        say(message(
            "Each gap that is open to one of these animals, and each opening that must stay open: {} points for finding it, {} "
            "for its width, {} for the two spaces that it joins, {} for its treatment.",
            {points(Of::found), points(Of::width), points(Of::connection), points(Of::treatment)})),
        say(message("A place told to be open that is tight takes {} points away.", {points(Of::false_alarm)})),
        say(message("A width counts when it is off by no more than {} or {}, whichever is more.",
                    {as_it_stands(percent_text(drill.widths.share)), width_message(drill.widths.least)})),
        say(message("What is wider than {} is read on a tape; there a width that is off by {} counts too.",
                    {as_named(shipped_gauges().rows.back().name), width_message(tape_mark)})),
        say(message("{} of the points pass. Whatever does harm fails the round: a drain or weep sealed, a vent or an appliance "
                    "starved, a "
                    "dryer screened, an animal shut in, a fire wall filled with what burns.",
                    {as_it_stands(percent_text(drill.pass_mark))}))};
    if (drill.seen)
        rules.insert(rules.begin() + 1, say(message("The entry that explains what was seen: {} points.", {points(Of::entry)})));
    if (!drill.widths.why.empty()) rules.push_back(drill.widths.why.in(say.language()));
    return rules;
}

/// Names of the table of features that tell what is open, and what to call such places before the inspection.
constexpr std::array<std::pair<const char*, const char*>, 22> plain_names{{
    {"gap around the hose bibb", "hose bibb"},
    {"gap under the door", "bottom of the door"},
    {"missing knockout of the electrical panel", "knockouts of the electrical panel"},
    {"open box in the slab under the tub trap", "box in the slab under the tub trap"},
    {"open ceiling framing round the chimney", "ceiling framing round the chimney"},
    {"open floor framing round the chimney", "floor framing round the chimney"},
    {"open drywall seam", "drywall seam"},
    {"open joist bays behind the porch ledger", "joist bays behind the porch ledger"},
    {"open miter at a fascia corner", "fascia corners"},
    {"open rake return", "rake return"},
    {"open top of a chase or a party wall", "top of a chase or a party wall"},
    {"cracked corner of a window frame", "corners of a window frame"},
    {"rotted corner of a crawl door", "corner of a crawl door"},
    {"slipped joint of a duct", "joint of a duct"},
    {"weeps of a window whose frame is cracked open to the wall", "window weeps"},
    {"empty irrigation sleeve", "irrigation sleeve"},
    {"hole in the ceiling or floor", "ceiling or floor"},
    {"open weep joint in the brick", "weep joints in the brick"},
    {"open mouth of the plumbing vent", "mouth of the plumbing vent"},
    {"open tops of the block wall's cells", "tops of the block wall's cells"},
    {"gap around the dryer duct, through the floor", "dryer duct through the floor"},
    {"hole in the outside wall", "outside wall"},
}};

/// The name with its telling parts in plain words.
Message in_plain_words(Message name) {
    for (const auto& [telling, plain] : plain_names) {
        if (name.pattern == telling) name.pattern = plain;
    }
    for (Message& part : name.parts) part = in_plain_words(std::move(part));
    return name;
}

}  // namespace

std::string place_name(const DrillRound& round, std::size_t place, const Translator& say) {
    const DrillPlace& one = round.places[place];
    if (!one.name.empty()) return one.name.in(say.language());
    const Gap& gap = round.job.survey[*one.gap];
    const Message name = in_plain_words(gap.called());
    if (gap.count <= 1) return say(name);
    return say(message("{}, {} pieces", {name, as_it_stands(static_cast<std::size_t>(gap.count))}));
}

Briefing briefing(const DrillRound& round, const Translator& say) {
    const Drill& drill = round.drill;
    const double ground = ground_height(round.job.survey);
    Briefing brief;
    brief.title = drill.title.in(say.language());
    brief.difficulty = say(difficulty_message(drill.difficulty));
    brief.story = drill.story.in(say.language());
    for (const Pest& animal : drill.animals)
        brief.animals.push_back(say(message("{}: {}", {as_named(animal.name), sizes_text(animal)})));
    for (const Occupant& occupant : round.job.occupied) {
        if (occupant.left) continue;
        const Message where = round.job.survey[occupant.space].called();
        brief.lives.push_back(say(message("{}: {}", {as_named(occupant.animal.name), where})));
    }
    if (drill.seen)
        brief.question = say(message("{} was seen in the {}. By which of these places did it come into the house?",
                                     {as_named(drill.seen->animal.name), round.job.survey[drill.seen->room].called()}));
    for (std::size_t i = 0; i < round.places.size(); ++i)
        brief.places.push_back({i + 1, place_name(round, i, say), height_of(round.places[i], ground, say), round.places[i].at});
    tell_apart(brief.places, say);
    for (const Space& space : round.job.survey.spaces) brief.spaces.emplace_back(space.id, say(space.called()));
    for (const Treatment& row : shipped_treatments().rows) brief.treatments.emplace_back(row.id, say(as_named(row.name)));
    brief.treatments.emplace_back(leave_open, say("it stays as it is"));
    brief.rules = scoring_rules(drill, say);
    return brief;
}

std::vector<std::string> close_look(const DrillRound& round, std::size_t place, const Translator& say) {
    std::vector<std::string> notes;
    const DrillPlace& one = round.places[place];
    const Gap* gap = one.gap ? &round.job.survey[*one.gap] : nullptr;
    if (gap != nullptr && !gap->substrates.empty()) {
        std::vector<Message> sides;
        for (const std::string& word : gap->substrates) sides.push_back(as_named(word));
        notes.push_back(say(message("Its sides: {}.", {listed_message(sides)})));
    }
    if (gap == nullptr || is_shut(gap->shape)) {
        notes.push_back(say("Nothing goes in, not even paper."));
        return notes;
    }
    const double width = clear_width(gap->shape);
    notes.push_back(say(message("What goes in: {}.", {field_check(width, shipped_gauges().rows)})));
    if (read_on_tape(width)) notes.push_back(say(message("A tape reads: {}.", {marked_message(width, tape_mark)})));
    if (const Slot* slot = std::get_if<Slot>(&gap->shape))
        notes.push_back(say(message("It is {} long.", {long_as(slot->length)})));
    if (const Ring* ring = std::get_if<Ring>(&gap->shape))
        notes.push_back(say(message("Through it goes something {} thick.", {length_message(ring->around)})));
    if (std::holds_alternative<Mesh>(gap->shape))
        notes.push_back(say("A screen is in it; the width is that of one of its openings."));
    if (std::holds_alternative<Hole>(gap->shape)) notes.push_back(say("It is round."));
    return notes;
}

}  // namespace seamward
