// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>

#include "tool/drill_command.h"

namespace seamward {

namespace {

void print_heading(const std::string& text, const Console& console) { console.out << '\n' << console.bold(text) << '\n'; }

/// Lines that hang from a word, all words as wide as the widest.
void print_pairs(const std::vector<std::pair<std::string, std::string>>& rows, const Console& console) {
    std::size_t width = 0;
    for (const auto& [word, text] : rows) width = std::max(width, letters(word));
    for (const auto& [word, text] : rows) print_paragraph("  " + padded(word, width) + "  ", text, console);
}

void print_list(const std::vector<std::string>& lines, const Console& console) {
    for (const std::string& line : lines) print_paragraph("  - ", line, console);
}

}  // namespace

void print_briefing(const Briefing& briefing, const Translator& say, const Console& console) {
    console.out << console.bold(briefing.title) << " (" << briefing.difficulty << ")\n\n";
    print_paragraph("", briefing.story, console);
    print_heading(say("Animals"), console);
    print_list(briefing.animals, console);
    if (!briefing.lives.empty()) {
        print_heading(say("They live in the house"), console);
        print_list(briefing.lives, console);
    }
    if (!briefing.question.empty()) {
        print_heading(say("Question"), console);
        print_paragraph("  ", briefing.question, console);
    }
    print_heading(say("Places to look at"), console);
    for (const BriefedPlace& place : briefing.places) {
        const std::string number = std::to_string(place.number);
        print_paragraph("  " + std::string(number.size() < 3 ? 3 - number.size() : 0, ' ') + number + "  ",
                        place.name + (place.height.empty() ? "" : ", " + place.height), console);
    }
    print_heading(say("Spaces"), console);
    print_pairs(briefing.spaces, console);
    print_heading(say("Treatments"), console);
    print_pairs(briefing.treatments, console);
    print_heading(say("How it is scored"), console);
    print_list(briefing.rules, console);
}

void print_lesson(const Lesson& lesson, const Console& console) {
    console.out << console.bold(lesson.title) << "\n\n";
    print_paragraph("", lesson.lead, console);
    for (std::size_t i = 0; i < lesson.parts.size(); ++i) {
        const LessonPart& part = lesson.parts[i];
        print_heading(std::to_string(i + 1) + ". " + part.name, console);
        print_pairs(part.lines, console);
    }
    console.out << '\n';
    print_paragraph("", lesson.note, console);
}

void print_feedback(const DrillFeedback& feedback, const Translator& say, const Console& console) {
    console.out << console.bold(feedback.headline) << '\n';
    if (!feedback.harms.empty()) print_heading(say("Harm: this fails the round"), console);
    for (const HarmFeedback& harm : feedback.harms) {
        print_paragraph("  ! ", harm.what, console);
        for (const std::string& note : harm.notes) print_paragraph("      ", note, console);
    }
    if (!feedback.places.empty()) print_heading(say("Place by place"), console);
    for (const PlaceFeedback& place : feedback.places) {
        const std::string number = std::to_string(place.place + 1);
        print_paragraph("  " + std::string(number.size() < 3 ? 3 - number.size() : 0, ' ') + number + "  ",
                        place.title + ": " + place.verdict, console);
        for (const std::string& note : place.notes) print_paragraph("         ", note, console);
    }
    if (feedback.other.empty()) return;
    print_heading(say("Besides"), console);
    print_list(feedback.other, console);
}

}  // namespace seamward
