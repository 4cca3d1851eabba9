// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/job_json.h"

#include <algorithm>
#include <string>

#include "base/document.h"
#include "base/json_writer.h"

namespace seamward {

namespace {

constexpr std::size_t most_digits = 15;  ///< of a number that every reader of JSON keeps to the last digit

/// A whole number as JSON writes it.
bool is_number(std::string_view text) {
    const bool digits = !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    return digits && text.size() <= most_digits && (text.size() == 1 || text.front() != '0');
}

void write(JsonWriter& json, Node node) {
    const std::string text(node.text());
    switch (node.kind()) {
        case Document::Kind::null: json.null(); return;
        case Document::Kind::quoted: json.value(text); return;
        case Document::Kind::plain:
            if (text == "true" || text == "false")
                json.value(text == "true");
            else if (is_number(text))
                json.value(static_cast<std::int64_t>(std::stoll(text)));
            else
                json.value(text);
            return;
        case Document::Kind::sequence:
            json.begin_array();
            node.for_each_item([&](Node item) { write(json, item); });
            json.end_array();
            return;
        case Document::Kind::mapping: break;
    }
    json.begin_object();
    node.for_each_pair([&](Node key, Node value) {
        json.key(key.text());
        write(json, value);
    });
    json.end_object();
}

}  // namespace

std::string job_as_json(std::string_view text, const std::filesystem::path& path) {
    const Document document = path.extension() == ".json" ? parse_json(text, path.string()) : parse_yaml(text, path.string());
    JsonWriter json;
    write(json, document.root());
    return json.text();
}

}  // namespace seamward
