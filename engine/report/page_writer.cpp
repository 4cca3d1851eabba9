// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/page_writer.h"

#include "base/measure_text.h"
#include "base/phrases.h"
#include "report/packed.h"

namespace seamward {

namespace {

Html::Attributes with_class(const std::string& css_class) {
    if (css_class.empty()) return {};
    return {{"class", css_class}};
}

}  // namespace

std::string PageWriter::width(double meters) const {
    if (facts.settings.lengths == Lengths::millimeters) return say(millimeters_message(meters));
    return say(width_message(meters));
}

Message PageWriter::short_width(double meters) const {
    return facts.settings.lengths == Lengths::millimeters ? millimeters_message(meters) : inches_message(meters);
}

Message PageWriter::money_part(Money money) const {
    return as_it_stands(money.cents < 0 ? "-" + money_text({-money.cents}) : money_text(money));
}

std::string PageWriter::date(Date date) const { return say(date_message(date)); }

Message PageWriter::time_part(double minutes) const { return as_it_stands(time_text(minutes)); }

Message PageWriter::animals_part(const std::vector<Pest>& pests, const std::vector<std::size_t>& which) const {
    std::vector<Message> names;
    for (const std::size_t pest : which) names.push_back(as_named(pests[pest].name));
    return listed_message(names);
}

Message PageWriter::gap_part(GapIndex gap) const {
    const Gap& one = survey()[gap];
    return one.count > 1 ? message("{}, {} pieces", {one.called(), as_it_stands(one.count)}) : one.called();
}

void PageWriter::heading(int level, const Message& text, const std::string& id) {
    Html::Attributes attributes;
    if (!id.empty()) attributes.push_back({"id", id});
    if (level == 2 && !id.empty()) contents_.push_back({id, text});
    html.element("h" + std::to_string(level), say(text), attributes);
}

void PageWriter::paragraph(const Message& text, const std::string& css_class) {
    html.element("p", say(text), with_class(css_class));
}

void PageWriter::list(const std::vector<Message>& items, const std::string& css_class) {
    if (items.empty()) return;
    html.begin("ul", with_class(css_class));
    for (const Message& item : items) html.element("li", say(item));
    html.end();
}

void PageWriter::titled_list(const Message& title, const std::vector<Message>& items) {
    if (items.empty()) return;
    heading(3, title);
    list(items);
}

void PageWriter::terms(const std::vector<std::pair<Message, Message>>& rows, const std::string& css_class) {
    if (rows.empty()) return;
    html.begin("dl", with_class(css_class));
    for (const auto& [term, text] : rows) {
        html.begin("div");
        html.element("dt", say(term));
        html.element("dd", say(text));
        html.end();
    }
    html.end();
}

void PageWriter::table(const Message& caption, const std::vector<Message>& head, const std::vector<std::vector<Message>>& rows,
                       const std::string& css_class) {
    if (rows.empty()) return;
    // Blocks in place of rows take the sense of a table away from some readers: the roles give it back.
    html.begin("table", {{"class", css_class.empty() ? "stack" : "stack " + css_class}, {"role", "table"}});
    html.element("caption", say(caption));
    html.begin("thead", {{"role", "rowgroup"}}).begin("tr", {{"role", "row"}});
    for (const Message& cell : head) html.element("th", say(cell), {{"scope", "col"}, {"role", "columnheader"}});
    html.end().end();
    html.begin("tbody", {{"role", "rowgroup"}});
    for (const std::vector<Message>& row : rows) {
        html.begin("tr", {{"role", "row"}});
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (i == 0)
                html.element("th", say(row[i]), {{"scope", "row"}, {"role", "rowheader"}});
            else
                html.element("td", say(row[i]), {{"role", "cell"}, {"data-label", say(head.at(i))}});
        }
        html.end();
    }
    html.end().end();
}

void PageWriter::number(std::size_t value) { html.element("span", std::to_string(value), {{"class", "number"}}); }

void PageWriter::photo(GapIndex gap) {
    const ReportPhoto* photo = facts.photos.of(gap);
    if (photo == nullptr) return;
    html.single("img", {{"class", "photo"},
                        {"src", "data:image/jpeg;base64," + base64(photo->jpeg)},
                        {"alt", say("Photo of {}", {gap_part(gap)})},
                        {"width", std::to_string(photo->width)},
                        {"height", std::to_string(photo->height)}});
}

void PageWriter::link(const std::string& target, const Message& text) { html.element("a", say(text), {{"href", '#' + target}}); }

void PageWriter::begin_section(const std::string& id, const Message& title) {
    contents_.push_back({id, title});
    html.begin("section", {{"id", id}, {"aria-labelledby", id + "-title"}});
    html.element("h2", say(title), {{"id", id + "-title"}});
}

}  // namespace seamward
