// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/docs/schema_judge.h"

#include <rapidjson/document.h>
#include <rapidjson/schema.h>
#include <rapidjson/stringbuffer.h>

#include <cstdlib>

#include "base/document.h"
#include "job_file/job.h"
#include "tests/docs/page.h"

namespace seamward::test {

namespace {

const rapidjson::SchemaDocument& job_schema() {
    static const rapidjson::SchemaDocument schema = [] {
        rapidjson::Document text;
        text.Parse(page("docs/job.schema.json").c_str());
        return rapidjson::SchemaDocument(text);
    }();
    return schema;
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

}  // namespace

std::string verdict(const std::string& yaml) {
    rapidjson::SchemaValidator validator(job_schema());
    rapidjson::Document memory;
    const Document document = parse_yaml(yaml, "job.yaml");
    if (as_json(document.root(), memory.GetAllocator()).Accept(validator)) return "";
    rapidjson::StringBuffer place;
    validator.GetInvalidDocumentPointer().StringifyUriFragment(place);
    return std::string(validator.GetInvalidSchemaKeyword()) + " at " + place.GetString();
}

bool program_accepts(const std::string& yaml) {
    try {
        (void)parse_job_yaml(yaml, "job.yaml");
        return true;
    } catch (const BadInput&) {
        return false;
    }
}

}  // namespace seamward::test
