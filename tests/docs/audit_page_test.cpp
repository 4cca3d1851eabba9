// SPDX-License-Identifier: GPL-3.0-or-later
// docs/audit.md against the tables of provisions and measures, cell by cell and as written there; and what it shows against the
// program.
#include <gtest/gtest.h>

#include "base/document.h"
#include "catalog/shipped.h"
#include "tests/docs/page.h"
#include "tests/support/document_text.h"
#include "tests/support/run_program.h"

namespace seamward::test {
namespace {

using Cells = std::vector<std::string>;

std::string text_at(Node mapping, std::string_view key) {
    const Node node = value_of(mapping, key);
    return node.present() ? std::string(node.text()) : "";
}

template <class CellsOf>
std::map<std::string, Cells> rows_of(const std::string& name, CellsOf&& cells_of) {
    const Document document = parse_yaml(page("engine/catalog/" + name + ".yaml"), name);
    std::map<std::string, Cells> rows;
    value_of(document.root(), name).for_each_item([&](Node row) { rows[text_at(row, "id")] = cells_of(row); });
    return rows;
}

std::string limit_cell(Node limit) {
    if (value_of(limit, "is").present()) return text_at(limit, "is") == "true" ? "yes" : "no";
    std::string cell;
    if (value_of(limit, "at_least").present()) cell = text_at(limit, "at_least") + " or more";
    if (value_of(limit, "at_most").present()) cell += (cell.empty() ? "" : ", ") + text_at(limit, "at_most") + " or less";
    return cell;
}

TEST(AuditPage, ShowsTheRulesAsInTheirTable) {
    const auto table = rows_of("provisions", [](Node row) {
        const std::string section = text_at(row, "section");
        return Cells{text_at(row, "name"),
                     '`' + text_at(row, "measure") + '`',
                     limit_cell(value_of(row, "limit")),
                     text_at(row, "document") + (section == "not known" ? "" : ", " + section),
                     text_at(row, "edition"),
                     text_at(row, "confidence")};
    });
    EXPECT_EQ(table.size(), shipped_provisions().rows.size());
    EXPECT_EQ(table_below(page("docs/audit.md"), "## Rules"), table);
}

TEST(AuditPage, ShowsTheMeasuresAsInTheirTable) {
    const std::map<std::string, std::string> stated{{"gap", "of a gap"}, {"place", "of the house or a place"}, {"no", "no"}};
    const auto table = rows_of("measures", [&](Node row) {
        return Cells{text_at(row, "name"), text_at(row, "unit"), text_at(row, "of"), stated.at(text_at(row, "stated")),
                     text_at(row, "ask")};
    });
    EXPECT_EQ(table.size(), shipped_measures().rows.size());
    EXPECT_EQ(table_below(page("docs/audit.md"), "## Measures"), table);
}

TEST(AuditPage, ExplainsTheWordsOfConstruction) {
    std::map<std::string, int> words;
    for (const auto& [word, cells] : table_below(page("docs/job-file.md"), "Words of `has` and `without`:")) words[word] = 1;
    for (const std::string_view word : built_with_words()) EXPECT_EQ(words.erase(std::string(word)), 1U) << word;
    EXPECT_TRUE(words.empty()) << words.begin()->first;
}

/// The page's own table of rules is read, and its details are those of a job.
TEST(AuditPage, ShowsRulesAndDetailsThatAreRead) {
    const std::string text = page("docs/audit.md");
    std::size_t at = 0;
    const std::string details = block_after(text, "## Stating what was looked up", at),
                      rules = block_after(text, "## Rules of your own", at);
    const ScratchFolder folder;
    folder.write("rules.yaml", rules);
    folder.write("job.yaml",
                 "seamward: 1\nspaces: [{id: yard, kind: outdoors}, {id: closet, kind: living}]\ngaps:\n"
                 "  - {id: dryer-hood, between: [yard, closet], slot: {width: 8 mm, length: 0.1 m}, duty: exhaust}\n"
                 "  - {id: door, between: [yard, closet], slot: {width: 5 mm, length: 0.9 m}, type: door-sweep}\n" +
                     details);
    const Ran ran = run_shell("cd " + shell_word(folder.path().string()) + " && " + shell_word(SEAMWARD_PROGRAM) +
                              " audit job.yaml --rules rules.yaml");
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    EXPECT_NE(ran.out.find("own-doors"), std::string::npos) << ran.out;
    EXPECT_NE(ran.out.find("1 failed"), std::string::npos) << ran.out;
}

}  // namespace
}  // namespace seamward::test
