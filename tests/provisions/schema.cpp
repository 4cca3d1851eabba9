// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/provisions/schema.h"

#include <libxml/parser.h>
#include <libxml/xmlschemas.h>

#include <cstdarg>
#include <stdexcept>

#include "base/file_io.h"

namespace seamward::test {

namespace {

const std::string folder = SEAMWARD_SOURCE_FOLDER "/tests/provisions/bcf-2.1/";

using Faults = std::vector<std::string>;

void note(void* faults, xmlErrorPtr error) {
    static_cast<Faults*>(faults)->push_back(error->message == nullptr ? "unnamed fault" : error->message);
}

using OneDocument = std::unique_ptr<xmlDoc, decltype(&xmlFreeDoc)>;

OneDocument read(const std::string& xml, const std::string& address) {
    return {xmlReadMemory(xml.data(), static_cast<int>(xml.size()), address.c_str(), nullptr,
                          XML_PARSE_NONET | XML_PARSE_NOERROR | XML_PARSE_NOWARNING),
            xmlFreeDoc};
}

}  // namespace

struct Schema::Held {
    OneDocument document{nullptr, xmlFreeDoc};
    std::unique_ptr<xmlSchema, decltype(&xmlSchemaFree)> schema{nullptr, xmlSchemaFree};
};

Schema Schema::from_text(const std::string& text) {
    auto held = std::make_shared<Held>();
    held->document = read(text, folder + "made.xsd");
    if (!held->document) throw std::runtime_error("the schema is no XML");
    const std::unique_ptr<xmlSchemaParserCtxt, decltype(&xmlSchemaFreeParserCtxt)> parser(
        xmlSchemaNewDocParserCtxt(held->document.get()), xmlSchemaFreeParserCtxt);
    Faults faults;
    xmlSchemaSetParserStructuredErrors(parser.get(), reinterpret_cast<xmlStructuredErrorFunc>(note), &faults);
    held->schema.reset(xmlSchemaParse(parser.get()));
    if (!held->schema || !faults.empty()) throw std::runtime_error("no schema: " + (faults.empty() ? "" : faults.front()));
    return Schema(held);
}

Schema::Schema(const std::string& name) : Schema(from_text(read_file(folder + name, "schema", 1U << 20U)).held_) {}

std::vector<std::string> Schema::faults(const std::string& xml) const {
    const OneDocument document = read(xml, "document.xml");
    if (!document) return {"no XML"};
    Faults faults;
    const std::unique_ptr<xmlSchemaValidCtxt, decltype(&xmlSchemaFreeValidCtxt)> validator(
        xmlSchemaNewValidCtxt(held_->schema.get()), xmlSchemaFreeValidCtxt);
    xmlSchemaSetValidStructuredErrors(validator.get(), reinterpret_cast<xmlStructuredErrorFunc>(note), &faults);
    if (xmlSchemaValidateDoc(validator.get(), document.get()) != 0 && faults.empty()) faults.push_back("not valid");
    return faults;
}

}  // namespace seamward::test
