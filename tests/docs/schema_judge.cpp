// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/docs/schema_judge.h"

#include <rapidjson/document.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

#include <cstdlib>

#include "base/document.h"
#include "house/description.h"
#include "job_file/job.h"
#include "tests/docs/page.h"

namespace seamward::test {

namespace {

rapidjson::SchemaDocument read_schema(const std::string& name) {
    rapidjson::Document text;
    text.Parse(page(name).c_str());
    return rapidjson::SchemaDocument(text);
}

/// A YAML tree as an editor's validator sees it: numbers and truth values are no strings.
rapidjson::Value as_json(Node node, rapidjson::Document::AllocatorType& memory) {
    rapidjson::Value value;
    if (node.is_sequence()) {
        value.SetArray();
        node.for_each_item([&](Node item) { value.PushBack(as_json(item, memory), memory); });
    } else if (node.is_mapping()) {
        value.SetObject();
        node.for_each_pair([&](Node key, Node item) {
            value.AddMember(rapidjson::Value(std::string(key.text()).c_str(), memory), as_json(item, memory), memory);
        });
    } else if (node.kind() == Document::Kind::plain && (node.text() == "true" || node.text() == "false")) {
        value.SetBool(node.text() == "true");
    } else if (node.is_scalar()) {
        const std::string text(node.text());
        char* end = nullptr;
        const double number = std::strtod(text.c_str(), &end);
        const bool is_number = node.kind() == Document::Kind::plain && !text.empty() && *end == '\0';
        if (is_number && number == static_cast<int>(number))
            value.SetInt(static_cast<int>(number));
        else if (is_number)
            value.SetDouble(number);
        else
            value.SetString(text.c_str(), memory);
    }
    return value;
}

std::string judge(const rapidjson::SchemaDocument& schema, const std::string& yaml) {
    rapidjson::SchemaValidator validator(schema);
    rapidjson::Document memory;
    const Document document = parse_yaml(yaml, "file.yaml");
    if (as_json(document.root(), memory.GetAllocator()).Accept(validator)) return "";
    rapidjson::StringBuffer place;
    validator.GetInvalidDocumentPointer().StringifyUriFragment(place);
    return std::string(validator.GetInvalidSchemaKeyword()) + " at " + place.GetString();
}

template <class Read>
bool accepts(Read read) {
    try {
        read();
        return true;
    } catch (const BadInput&) {
        return false;
    }
}

}  // namespace

std::string verdict(const std::string& yaml) {
    static const rapidjson::SchemaDocument schema = read_schema("docs/job.schema.json");
    return judge(schema, yaml);
}

std::string house_verdict(const std::string& yaml) {
    static const rapidjson::SchemaDocument schema = read_schema("docs/house.schema.json");
    return judge(schema, yaml);
}

std::string drill_verdict(const std::string& yaml) {
    static const rapidjson::SchemaDocument schema = read_schema("docs/drill.schema.json");
    return judge(schema, yaml);
}

std::string answers_verdict(const std::string& yaml) {
    static const rapidjson::SchemaDocument schema = read_schema("docs/answers.schema.json");
    return judge(schema, yaml);
}

bool program_accepts(const std::string& yaml) {
    return accepts([&] { (void)parse_job(yaml, "job.yaml"); });
}

bool program_accepts_house(const std::string& yaml) {
    return accepts([&] { (void)parse_house_yaml(yaml, "house.yaml"); });
}

std::string put(const std::string& file, const std::string& what) {
    std::string text = file;
    return text.replace(text.find('@'), 1, what);
}

}  // namespace seamward::test
