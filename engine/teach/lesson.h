// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string>
#include <utility>
#include <vector>

#include "catalog/translator.h"

namespace seamward {

/// One part of the building envelope as the lesson tells it, in one language.
struct LessonPart {
    std::string id, name;
    std::vector<std::pair<std::string, std::string>> lines;  ///< "Water", and how it leaves
};

/// What the lesson says.
struct Lesson {
    std::string title, lead;
    std::vector<LessonPart> parts;
    std::string note;  ///< on sources that were not checked
};

[[nodiscard]] Lesson envelope_lesson(const Translator& say);

/// The lesson as one HTML file that needs nothing else and runs no script, with drawn sections whose numbers lead to the parts.
/// `missing`: gets the texts that have no translation, when it is given.
[[nodiscard]] std::string lesson_page(Language language, std::set<std::string, std::less<>>* missing = nullptr);

/// A drawn section as an SVG element: its numbers are those of the parts, each a link to `#part-ID`.
struct LessonDrawing {
    std::string title, svg;
    std::vector<std::string> parts;  ///< words of EnvelopePart::part that it shows
};

/// A wall with its eave, and a house with what goes through its skin. Together they show every part of the table.
[[nodiscard]] std::vector<LessonDrawing> lesson_drawings(const Translator& say);

}  // namespace seamward
