// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/envelope.h"

#include <gtest/gtest.h>

#include "catalog/shipped.h"
#include "catalog/translator.h"
#include "tests/support/diagnostic_matchers.h"

namespace seamward::test {
namespace {

const std::string head =
    "catalog: envelope\nedition: e\nsources: [{id: s, title: t, publisher: none, year: 0, seen: memory}]\nenvelope:\n";
const std::string row = "{id: a, part: x, name: n, purpose: p, water: w, pests: q, may: m, never: v, sources: [s]}";

std::vector<Diagnostic> faults(const std::string& rows) {
    return faults_of([&] { (void)read_envelope(head + rows, "envelope.yaml"); });
}

TEST(Envelope, IsRead) {
    const Table<EnvelopePart> table = read_envelope(head + "  - " + row + '\n', "envelope.yaml");
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(table.rows[0].water, "w");
    EXPECT_EQ(table.rows[0].sources, (std::vector<std::string>{"s"}));
}

TEST(Envelope, NamesEachFaultWithItsPlace) {
    EXPECT_TRUE(has_fault(faults("  - {id: a}\n"), {5, 5}, "part has no water", "add water"));
    EXPECT_TRUE(has_fault(faults("  - " + row + "\n  - " + row + '\n'), {6, 5}, "id a stands twice", "keep one"));
    EXPECT_TRUE(has_fault(faults("  - " + row + "\n  - " + row + '\n'), {6, 19}, "two rows are drawn as \"x\"", "its own"));
    std::string unknown = row;
    unknown.replace(unknown.find("[s]"), 3, "[z]");
    EXPECT_TRUE(has_fault(faults("  - " + unknown + '\n'), {5, 91}, "unknown source \"z\"", ""));
}

/// Every text of it has Spanish, and another one than English.
TEST(Envelope, IsSpanishToo) {
    for (const EnvelopePart& part : shipped_envelope().rows) {
        for (const std::string& text : {part.name, part.purpose, part.water, part.pests, part.may, part.never}) {
            const auto found = spanish_texts().find(text);
            ASSERT_NE(found, spanish_texts().end()) << text;
            if (part.name != "fascia") {
                EXPECT_NE(found->second, text);
            }
        }
        EXPECT_FALSE(part.sources.empty()) << part.id;
    }
    for (const CatalogSource& source : shipped_envelope().sources)
        EXPECT_TRUE(spanish_texts().contains(source.title)) << source.title;
}

}  // namespace
}  // namespace seamward::test
