// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/page_reader.h"

#include <expat.h>

#include <memory>
#include <stdexcept>

namespace seamward::test {

namespace {

/// The page without doctype and without what stands in scripts and styles: that is no XML.
std::string markup_alone(std::string_view html) {
    const std::string_view doctype = "<!doctype html>";
    if (!html.starts_with(doctype)) throw std::runtime_error("no doctype");
    std::string kept;
    std::size_t at = doctype.size();
    while (at < html.size()) {
        const std::size_t script = html.find("<script", at), style = html.find("<style", at);
        const std::size_t next = std::min(script, style);
        if (next == std::string_view::npos) break;
        const std::string_view end = next == script ? "</script>" : "</style>";
        const std::size_t inside = html.find('>', next) + 1, closed = html.find(end, inside);
        if (closed == std::string_view::npos) throw std::runtime_error("a script or style without an end");
        kept += html.substr(at, inside - at);
        at = closed;
    }
    return kept += html.substr(std::min(at, html.size()));
}

struct Reading {
    PageElement top;
    std::vector<PageElement> open;
};

void begin_element(void* data, const XML_Char* name, const XML_Char** attributes) {
    PageElement element;
    element.name = name;
    for (; *attributes != nullptr; attributes += 2) element.attributes[attributes[0]] = attributes[1];
    static_cast<Reading*>(data)->open.push_back(std::move(element));
}

void end_element(void* data, const XML_Char*) {
    auto& reading = *static_cast<Reading*>(data);
    PageElement done = std::move(reading.open.back());
    reading.open.pop_back();
    if (reading.open.empty())
        reading.top = std::move(done);
    else {
        reading.open.back().own_text += ' ';
        reading.open.back().children.push_back(std::move(done));
    }
}

void text_of(void* data, const XML_Char* text, int length) {
    static_cast<Reading*>(data)->open.back().own_text.append(text, static_cast<std::size_t>(length));
}

void add_text(const PageElement& element, std::string& text) {
    text += element.own_text + ' ';
    for (const PageElement& child : element.children) add_text(child, text);
}

}  // namespace

std::string PageElement::attribute(const std::string& key) const {
    const auto found = attributes.find(key);
    return found == attributes.end() ? "" : found->second;
}

std::string PageElement::text() const {
    std::string raw, text;
    add_text(*this, raw);
    for (const char letter : raw) {
        const bool space = letter == ' ' || letter == '\n' || letter == '\t' || letter == '\r';
        if (!space)
            text += letter;
        else if (!text.empty() && text.back() != ' ')
            text += ' ';
    }
    if (text.ends_with(' ')) text.pop_back();
    return text;
}

std::vector<const PageElement*> PageElement::all(const std::function<bool(const PageElement&)>& wanted) const {
    std::vector<const PageElement*> found;
    if (wanted(*this)) found.push_back(this);
    for (const PageElement& child : children) {
        const std::vector<const PageElement*> more = child.all(wanted);
        found.insert(found.end(), more.begin(), more.end());
    }
    return found;
}

std::vector<const PageElement*> PageElement::named(std::string_view element) const {
    return all([&](const PageElement& one) { return one.name == element; });
}

const PageElement* PageElement::with_id(std::string_view id) const {
    const std::vector<const PageElement*> found = all([&](const PageElement& one) { return one.attribute("id") == id; });
    return found.empty() ? nullptr : found.front();
}

std::vector<std::pair<std::string, std::string>> PageElement::terms() const {
    const std::vector<const PageElement*> names = named("dt"), texts = named("dd");
    std::vector<std::pair<std::string, std::string>> all_terms;
    for (std::size_t i = 0; i < names.size() && i < texts.size(); ++i) all_terms.emplace_back(names[i]->text(), texts[i]->text());
    return all_terms;
}

PageElement read_page(std::string_view html) { return read_xml(markup_alone(html)); }

PageElement read_xml(std::string_view markup) {
    const std::unique_ptr<std::remove_pointer_t<XML_Parser>, decltype(&XML_ParserFree)> parser(XML_ParserCreate("UTF-8"),
                                                                                               XML_ParserFree);
    Reading reading;
    XML_SetUserData(parser.get(), &reading);
    XML_SetElementHandler(parser.get(), begin_element, end_element);
    XML_SetCharacterDataHandler(parser.get(), text_of);
    if (XML_Parse(parser.get(), markup.data(), static_cast<int>(markup.size()), 1) != XML_STATUS_OK)
        throw std::runtime_error("line " + std::to_string(XML_GetCurrentLineNumber(parser.get())) + ": " +
                                 XML_ErrorString(XML_GetErrorCode(parser.get())));
    return reading.top;
}

}  // namespace seamward::test
