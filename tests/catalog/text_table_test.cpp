// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/text_table.h"

#include <gtest/gtest.h>

#include "base/diagnostics.h"

namespace seamward {
namespace {

const std::string head = "catalog: spanish\nedition: now\ntexts:\n";

std::string faults_of(const std::string& rows) {
    try {
        (void)read_texts(head + rows, "table.yaml");
    } catch (const BadInput& bad) {
        return bad.what();
    }
    return "";
}

TEST(TextTable, Reads) {
    const TextTable texts =
        read_texts(head + "  - {en: House mouse, es: Ratón casero}\n  - {en: \"{} of {}\", es: \"{2}: {1}\"}\n", "table.yaml");
    EXPECT_EQ(texts.size(), 2U);
    EXPECT_EQ(texts.at("House mouse"), "Ratón casero");
    EXPECT_EQ(texts.at("{} of {}"), "{2}: {1}");
}

TEST(TextTable, NamesTheLineOfWhatIsWrong) {
    const std::string faults = faults_of(
        "  - {en: gap, es: hueco}\n  - {en: gap, es: brecha}\n  - {en: room, es: \"\"}\n  - {en: wall}\n"
        "  - {en: \"{} gaps\", es: huecos}\n  - {en: door, es: \"puerta {}\"}\n  - {en: roof, es: techo, fr: toit}\n");
    EXPECT_NE(faults.find("table.yaml:5:5: error: the text \"gap\" stands twice; keep one"), std::string::npos) << faults;
    EXPECT_NE(faults.find("table.yaml:6:"), std::string::npos) << faults;
    EXPECT_NE(faults.find("table.yaml:7:"), std::string::npos) << faults;
    EXPECT_NE(faults.find("table.yaml:8:25: error: en puts in 1 part, es does not put in each of them once; write {}"),
              std::string::npos)
        << faults;
    EXPECT_NE(faults.find("table.yaml:9:20: error: en puts in 0 parts"), std::string::npos) << faults;
    EXPECT_NE(faults.find("table.yaml:10:"), std::string::npos) << faults;
}

TEST(TextTable, EveryPartOnceInAnyOrder) {
    EXPECT_EQ(faults_of("  - {en: \"{} and {}\", es: \"{2} y {1}\"}\n"), "");
    EXPECT_NE(faults_of("  - {en: \"{} and {}\", es: \"{1} y {1}\"}\n"), "");
    EXPECT_NE(faults_of("  - {en: \"{} and {}\", es: \"{1} y {3}\"}\n"), "");
    EXPECT_NE(faults_of("  - {en: \"{} and {}\", es: \"{} y {} y {}\"}\n"), "");
}

TEST(TextTable, IsASpanishOne) {
    EXPECT_THROW((void)read_texts("catalog: pests\nedition: now\ntexts: [{en: a, es: b}]\n", "table.yaml"), BadInput);
    EXPECT_THROW((void)read_texts("catalog: spanish\nedition: now\n", "table.yaml"), BadInput);
}

}  // namespace
}  // namespace seamward
