// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "report/drawings.h"
#include "report/html.h"
#include "report/report_facts.h"

namespace seamward {

/// What all parts of a page write with: the facts, the page so far, the words, and how quantities are written.
class PageWriter {
public:
    explicit PageWriter(const ReportFacts& given)
        : facts(given), say(given.settings.language), drawings(draw_house(given, say)) {}

    const ReportFacts& facts;
    Html html;
    Translator say;
    std::vector<Drawing> drawings;

    [[nodiscard]] const Job& job() const { return facts.job; }
    [[nodiscard]] const Survey& survey() const { return facts.job.survey; }

    /// "3/64 in (1.2 mm)", or "1.2 mm"; meters.
    [[nodiscard]] std::string width(double meters) const;
    [[nodiscard]] Message width_part(double meters) const { return as_it_stands(width(meters)); }
    /// "3/64 in", or "1.2 mm": for a text that has many of them.
    [[nodiscard]] Message short_width(double meters) const;
    [[nodiscard]] Message money_part(Money money) const;
    /// "June 15, 2026"
    [[nodiscard]] std::string date(Date date) const;
    [[nodiscard]] Message date_part(Date day) const { return as_it_stands(date(day)); }
    /// "45 min", "3 h 10 min": the same in both languages.
    [[nodiscard]] Message time_part(double minutes) const;
    /// "House mouse and Bark scorpion": positions in `pests`.
    [[nodiscard]] Message animals_part(const std::vector<Pest>& pests, const std::vector<std::size_t>& which) const;
    /// "outlet, north wall", "stub-outs under a sink, 2 pieces"
    [[nodiscard]] Message gap_part(GapIndex gap) const;

    /// A heading of level 2 with an id stands in the table of contents.
    void heading(int level, const Message& text, const std::string& id = "");
    void paragraph(const Message& text, const std::string& css_class = "");
    /// Nothing where there are no items.
    void list(const std::vector<Message>& items, const std::string& css_class = "");
    /// A heading of level 3 with a list below it; nothing where there are no items.
    void titled_list(const Message& title, const std::vector<Message>& items);
    /// Terms and what is said of each.
    void terms(const std::vector<std::pair<Message, Message>>& rows, const std::string& css_class = "");
    /// The first cell of a row is its head. On a phone each row is a block of its own.
    void table(const Message& caption, const std::vector<Message>& head, const std::vector<std::vector<Message>>& rows,
               const std::string& css_class = "");
    /// A number that stands beside what it counts, as in the drawings.
    void number(std::size_t value);
    /// The photo of a gap, where there is one.
    void photo(GapIndex gap);
    /// "#closing-5" with the words of the message.
    void link(const std::string& target, const Message& text);

    /// A section with a heading of level 2, in the table of contents.
    void begin_section(const std::string& id, const Message& title);
    void end_section() { html.end(); }

    struct Chapter {
        std::string id;
        Message title;
    };
    [[nodiscard]] const std::vector<Chapter>& contents() const { return contents_; }

private:
    std::vector<Chapter> contents_;
};

}  // namespace seamward
