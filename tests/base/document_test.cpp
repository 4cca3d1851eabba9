// SPDX-License-Identifier: GPL-3.0-or-later
// What holds of a document whatever its syntax; yaml_document_test.cpp and json_document_test.cpp have the rest.
#include "base/document.h"

#include <gtest/gtest.h>

#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

constexpr const char* json_text = R"({
  "seamward": 1,
  "spaces": [{"id": "cour", "kind": "outdoors"}, {"id": "étage", "kind": "living"}],
  "gaps": [
    {"id": "g", "between": ["cour", "étage"], "slot": {"width": "1/16 in", "length": "9 m"}, "count": 30, "at": []}
  ],
  "closed": {}, "nothing": null, "yes": true, "no": false, "number": -1.50e+3
})";

constexpr const char* yaml_text = R"(# the same
seamward: 1
spaces:
  - {id: "cour", kind: "outdoors"}
  - id: "étage"
    kind: 'living'
gaps:
- "id": "g"
  between: ["cour", "étage"]
  slot:
    width: "1/16 in"
    length: "9 m"
  count: 30
  at: []
closed: {}
nothing: null
yes: true
no: false
number: -1.50e+3
)";

/// Keys may be quoted or not.
std::string without_quotes_of_keys(std::string text) {
    for (std::size_t end = text.find("': "); end != std::string::npos; end = text.find("': ", end)) {
        text.erase(end, 1);
        text.erase(text.rfind('\'', end), 1);
    }
    return text;
}

TEST(Document, IsTheSameTreeFromYamlAndFromJson) {
    const Document yaml = parse_yaml(yaml_text, "a.yaml");
    const Document json = parse_json(json_text, "a.json");
    EXPECT_EQ(without_quotes_of_keys(document_text(yaml.root())), without_quotes_of_keys(document_text(json.root())));
    EXPECT_EQ(
        document_text(value_of(json.root(), "gaps")),
        "[{'id': 'g', 'between': ['cour', 'étage'], 'slot': {'width': '1/16 in', 'length': '9 m'}, 'count': 30, 'at': []}]");
}

/// JSON is a kind of YAML: both parsers agree on a JSON text, down to the place of every node.
TEST(Document, OfAJsonTextIsTheSameFromBothParsers) {
    const Document yaml = parse_yaml(json_text, "a");
    const Document json = parse_json(json_text, "a");
    EXPECT_EQ(document_text(yaml.root(), true), document_text(json.root(), true));
}

TEST(Document, SizesAreOfListsAndMappings) {
    const Document document = parse_yaml(yaml_text, "a.yaml");
    EXPECT_EQ(document.file(), "a.yaml");
    EXPECT_EQ(document.root().size(), 8U);
    EXPECT_EQ(value_of(document.root(), "spaces").size(), 2U);
    EXPECT_EQ(value_of(document.root(), "closed").size(), 0U);
    EXPECT_EQ(value_of(document.root(), "seamward").size(), 0U);
    EXPECT_EQ(value_of(document.root(), "seamward").text(), "1");
    EXPECT_EQ(value_of(document.root(), "spaces").text(), "");
    EXPECT_FALSE(value_of(document.root(), "absent").present());
    EXPECT_FALSE(Node().present());
    EXPECT_EQ(Node().place().line, 0U);
}

TEST(ReadDocument, ChoosesTheSyntaxByTheName) {
    const ScratchFolder folder;
    EXPECT_EQ(read_document(folder.write("a.json", json_text), "a.json").root().size(), 8U);
    EXPECT_EQ(read_document(folder.write("a.yaml", yaml_text), "a.yaml").root().size(), 8U);
    EXPECT_EQ(read_document(folder.write("a.yml", yaml_text), "a.yml").root().size(), 8U);
    const auto faults = faults_of([&] { (void)read_document(folder.write("b.json", yaml_text), "b.json"); });
    EXPECT_TRUE(only_fault(faults, {1, 1}, "JSON syntax", ""));
    EXPECT_EQ(faults.front().file, "b.json");
}

TEST(ReadDocument, NamesAMissingFile) {
    const ScratchFolder folder;
    const auto faults = faults_of([&] { (void)read_document(folder.path() / "none.yaml", "none.yaml"); });
    EXPECT_TRUE(only_fault(faults, {0, 0}, "no such file", "path"));
    EXPECT_EQ(faults.front().file, "none.yaml");
}

}  // namespace
}  // namespace seamward::test
