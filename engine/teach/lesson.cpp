// SPDX-License-Identifier: GPL-3.0-or-later
#include "teach/lesson.h"

#include "catalog/shipped.h"
#include "report/html.h"
#include "teach/plain_page.h"

namespace seamward {

namespace {

LessonPart told(const EnvelopePart& part, const Translator& say) {
    LessonPart lesson{part.id, say(as_named(part.name)), {}};
    const auto add = [&](const char* word, const Message& text) { lesson.lines.emplace_back(say(word), say(text)); };
    add("What it is for", part.purpose);
    add("Water", part.water);
    add("Pests", part.pests);
    add("You may", part.may);
    add("Never", part.never);
    std::vector<Message> sources;
    for (const std::string& id : part.sources) sources.push_back(starred(cited(shipped_envelope().sources, id)));
    add("Source", joined_message(sources, "; "));
    return lesson;
}

class Page {
public:
    explicit Page(Language language) : say_(language), lesson_(envelope_lesson(say_)) {}

    std::string write() {
        html_.element("p", lesson_.lead, {{"class", "lead"}});
        drawings();
        parts();
        html_.element("p", lesson_.note, {{"class", "source"}});
        return plain_page(say_, lesson_.title, html_.written());
    }

    [[nodiscard]] const Translator& words() const { return say_; }

private:
    void drawings() {
        for (const LessonDrawing& drawing : lesson_drawings(say_)) {
            html_.begin("section").element("h2", drawing.title);
            html_.markup(drawing.svg).end();
        }
    }

    void parts() {
        html_.begin("section", {{"aria-labelledby", "parts"}});
        html_.element("h2", say_("Part by part"), {{"id", "parts"}});
        html_.begin("ol", {{"class", "numbered"}});
        for (std::size_t i = 0; i < lesson_.parts.size(); ++i) {
            const LessonPart& part = lesson_.parts[i];
            html_.begin("li", {{"id", "part-" + part.id}});
            html_.element("span", std::to_string(i + 1), {{"class", "number"}});
            html_.element("h3", part.name);
            html_.begin("dl", {{"class", "brief"}});
            for (const auto& [word, text] : part.lines) {
                html_.begin("div");
                html_.element("dt", word).element("dd", text);
                html_.end();
            }
            html_.end().end();
        }
        html_.end().end();
    }

    Translator say_;
    Lesson lesson_;
    Html html_;
};

}  // namespace

Lesson envelope_lesson(const Translator& say) {
    Lesson lesson;
    lesson.title = say("The skin of a house, part by part");
    lesson.lead =
        say("From the ground up and from outside in. Each part keeps something out, and each has a way by which water leaves and "
            "a way by "
            "which animals come. Close the second, and never the first.");
    for (const EnvelopePart& part : shipped_envelope().rows) lesson.parts.push_back(told(part, say));
    lesson.note = say(star_note);
    return lesson;
}

std::string lesson_page(Language language, std::set<std::string, std::less<>>* missing) {
    Page page(language);
    std::string written = page.write();
    if (missing != nullptr) missing->insert(page.words().missing().begin(), page.words().missing().end());
    return written;
}

}  // namespace seamward
