// SPDX-License-Identifier: GPL-3.0-or-later
// Every class of fault that docs/job-file.md speaks of, in a whole job file, with its place and how to mend it.
#include <gtest/gtest.h>

#include "job_file/job.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/marked_text.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {
namespace {

constexpr std::string_view spaces = R"(seamward: 1
spaces:
  - {id: yard, kind: outdoors}
  - {id: wall, kind: cavity}
  - {id: kitchen, kind: living}
)";

std::vector<Diagnostic> faults(const std::string& text) {
    return faults_of([&] { (void)parse_job(text, "job.yaml"); });
}

/// A file with one fault, at its caret.
void expect_fault(const std::string& marked_text, std::string_view what, std::string_view mend) {
    const MarkedText marked(marked_text);
    EXPECT_TRUE(only_fault(faults(marked.text), marked.places.at(0), what, mend)) << marked_text;
}

/// The same after three good spaces.
void expect_fault_after_spaces(const std::string& marked_text, std::string_view what, std::string_view mend) {
    expect_fault(std::string(spaces) + marked_text, what, mend);
}

TEST(JobFault, FormatVersion) {
    expect_fault("seamward: ^2\n", "unknown format version \"2\"", "seamward: 1");
    expect_fault("seamward: ^1.0\n", "unknown format version", "seamward: 1");
    expect_fault("seamward: ^one\n", "unknown format version", "seamward: 1");
    expect_fault("seamward: ^[1]\n", "unknown format version", "seamward: 1");
    expect_fault("seamward: ^~\n", "unknown format version", "seamward: 1");
    expect_fault("^spaces: []\n", "job file has no seamward", "add seamward");
}

TEST(JobFault, AHouseFileInThePlaceOfAJob) {
    expect_fault("name: x\n^seamward-house: 1\noutline: []\nrooms: []\n",
                 "this file describes a house; what is asked for is a job",
                 "write a job file of two lines, seamward: 1 and house: job.yaml, and give that");
    expect_fault("seamward: 1\n^seamward-house: 1\n", "unknown key \"seamward-house\" in job file", "");
}

TEST(JobFault, KeysOfTheFile) {
    expect_fault("seamward: 1\n^space: []\n", "unknown key \"space\" in job file", "did you mean spaces?");
    expect_fault("seamward: 1\n^Gaps: []\n", "unknown key \"Gaps\" in job file", "did you mean gaps?");
    expect_fault("seamward: 1\n^version: 1\n", "unknown key \"version\" in job file",
                 "seamward, job, house, spaces, gaps, pests, closed");
    expect_fault("seamward: 1\njob: {^nam: x}\n", "unknown key \"nam\" in job", "did you mean name?");
}

TEST(JobFault, EverydayWordsForKindsOfSpace) {
    expect_fault("seamward: 1\nspaces: [{id: a, kind: ^attic}]\n", "unknown kind \"attic\"", "of kind cavity");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: ^garage}]\n", "unknown kind \"garage\"", "of kind attached");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: ^room}]\n", "unknown kind \"room\"", "of kind living");
}

/// `{width: 0,25 in}` reads as a width of 0 and a key `25 in`: one fault, which says what happened.
TEST(JobFault, DecimalCommas) {
    expect_fault_after_spaces("gaps:\n  - {id: g, between: [yard, wall], slot: {width: 0,^25 in, length: 9 m}}\n",
                              "a comma splits slot here", "write numbers with a point");
}

TEST(JobFault, NotAMapping) {
    for (const char* text : {"- a\n", "text\n", "12\n", "''\n"}) {
        const auto found = faults(text);
        ASSERT_EQ(found.size(), 1U) << text;
        EXPECT_NE(found.front().what.find("job file must be a mapping"), std::string::npos) << text;
        EXPECT_EQ(found.front().place.line, 1U) << text;
        EXPECT_FALSE(found.front().mend.empty()) << text;
    }
    for (const char* text : {"", "# nothing\n", "~\n", "---\n"})
        EXPECT_NE(listing(faults(text)).find("job file has no seamward; add seamward"), std::string::npos) << text;
    expect_fault("seamward: 1\njob: ^name\n", "job must be a mapping", "name");
    expect_fault("seamward: 1\nspaces: ^{id: yard}\n", "spaces must be a list", "[a, b]");
    expect_fault("seamward: 1\ngaps: ^none\n", "gaps must be a list", "[a, b]");
    expect_fault("seamward: 1\npests: ^house-mouse\n", "pests must be a list", "[a, b]");
    expect_fault("seamward: 1\nclosed: ^bib\n", "closed must be a list", "[a, b]");
}

TEST(JobFault, Spaces) {
    expect_fault("seamward: 1\nspaces: [^yard]\n", "space must be a mapping", "id");
    expect_fault("seamward: 1\nspaces: [^{kind: cavity}]\n", "space has no id", "add id");
    expect_fault("seamward: 1\nspaces: [^{id: a}]\n", "space has no kind", "add kind");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: ^livin}]\n", "unknown kind \"livin\"", "did you mean living?");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: ^basement}]\n", "unknown kind \"basement\"",
                 "outdoors, cavity, attached, living, harborage");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: cavity, ^sorce: true}]\n", "unknown key \"sorce\" in space",
                 "did you mean source?");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: cavity, source: ^yes}]\n", "neither true nor false", "true or false");
    expect_fault("seamward: 1\nspaces: [{id: a, kind: cavity}, ^{id: a, kind: living}]\n", "space id \"a\" stands twice",
                 "its own");
}

TEST(JobFault, Gaps) {
    expect_fault_after_spaces("gaps: [{id: g, between: [yard, ^kitchn], hole: {diameter: 5 mm}}]\n", "unknown space \"kitchn\"",
                              "did you mean kitchen?");
    expect_fault_after_spaces("gaps: [{id: g, between: ^[wall, wall], hole: {diameter: 5 mm}}]\n", "from a space to itself",
                              "two sides");
    expect_fault_after_spaces("gaps: [^{id: g, between: [yard, wall]}]\n", "gap has no shape", "slot");
    expect_fault_after_spaces(
        "gaps:\n  - {id: g, between: [yard, wall], hole: {diameter: 5 mm}}\n  - ^{id: g, between: [wall, kitchen], hole: "
        "{diameter: 6 mm}}\n",
        "gap id \"g\" stands twice", "its own");
    // Without a house there is nothing that an entry without `between` could update.
    expect_fault_after_spaces("gaps: [^{id: g, hole: {diameter: 5 mm}}]\n", "gap has no between", "between: [SPACE, SPACE]");
}

TEST(JobFault, Pests) {
    expect_fault("seamward: 1\npests: [^house-mous]\n", "unknown pest \"house-mous\"", "did you mean house-mouse?");
    expect_fault("seamward: 1\npests: [^elephant]\n", "unknown pest \"elephant\"", "{id: ..., slit: ..., hole: ...}");
    expect_fault("seamward: 1\npests: [bat, ^bat]\n", "pest \"bat\" stands twice", "keep one");
    expect_fault("seamward: 1\npests: [^{id: x, slit: 1 mm}]\n", "pest has no hole", "add hole");
    expect_fault("seamward: 1\npests: [^{id: x, hole: 1 mm}]\n", "pest has no slit", "add slit");
    expect_fault("seamward: 1\npests: [^{slit: 1 mm, hole: 4 mm}]\n", "pest has no id", "add id");
    expect_fault("seamward: 1\npests: [{id: x, slit: ^1.5, hole: 4 mm}]\n", "bare number", "1.5 mm");
    expect_fault("seamward: 1\npests: [{id: x, slit: 1 mm, hole: ^-4 mm}]\n", "negative", "0");
    expect_fault("seamward: 1\npests: [{id: x, slit: 1 mm, hole: 4 mm, ^width: 3 mm}]\n", "unknown key \"width\" in pest",
                 "slit");
}

TEST(JobFault, Closed) {
    const std::string gap = "gaps: [{id: bib, between: [yard, wall], hole: {diameter: 5 mm}}]\n";
    expect_fault_after_spaces(gap + "closed: [{gap: ^bibb, with: bead}]\n", "unknown gap \"bibb\"", "did you mean bib?");
    expect_fault_after_spaces(gap + "closed: [{gap: bib, with: ^baed}]\n", "unknown treatment \"baed\"", "did you mean bead?");
    expect_fault_after_spaces(gap + "closed: [^{with: bead}]\n", "closed entry has no gap", "add gap");
    expect_fault_after_spaces(gap + "closed: [{gap: bib, ^wiht: bead}]\n", "unknown key \"wiht\" in closed entry",
                              "did you mean with?");
    expect_fault_after_spaces(gap + "closed: [^{gap: bib, with: mesh}]\n", "has no opening", "add opening");
    expect_fault_after_spaces(gap + "closed: [{gap: bib, with: mesh, opening: ^3}]\n", "bare number", "3 mm");
    expect_fault_after_spaces(gap + "closed: [{gap: bib, with: mesh, opening: ^-3 mm}]\n", "negative", "0");
    expect_fault_after_spaces(gap + "closed: [{gap: bib, with: bead, opening: ^3 mm}]\n", "only a mesh leaves an opening",
                              "mesh");
    expect_fault_after_spaces(gap + "closed: [{gap: bib}, ^{gap: bib, with: bead}]\n", "closed twice", "keep one");
    expect_fault_after_spaces(gap + "closed: [^bib]\n", "closed entry must be a mapping", "gap");
}

/// Wherever a quantity is due: a bare number shows the fix, an unknown unit the known ones, and no size is negative or
/// without bound.
TEST(JobFault, EveryQuantityNeedsItsUnit) {
    struct Field {
        const char* before;
        const char* after;
        const char* unit;  ///< one that the message proposes
    };
    const Field fields[] = {{"slot: {width: ", ", length: 9 m}", "mm"},
                            {"slot: {width: 1 mm, length: ", "}", "m"},
                            {"hole: {diameter: ", "}", "mm"},
                            {"ring: {width: ", ", around: 22 mm}", "mm"},
                            {"ring: {width: 1 mm, around: ", "}", "mm"},
                            {"mesh: {opening: ", "}", "mm"},
                            {"mesh: {opening: 1 mm, area: ", "}", "cm2"},
                            {"hole: {diameter: 5 mm}, depth: ", "", "mm"},
                            {"hole: {diameter: 5 mm}, evidence: {plus_minus: ", "}", "mm"},
                            {"hole: {diameter: 5 mm}, at: [0 m, ", ", 0 m]", "m"}};
    for (const Field& field : fields) {
        const auto expect = [&](const std::string& value, const char* what, const std::string& mend) {
            expect_fault_after_spaces(
                "gaps:\n  - {id: g, between: [yard, wall], " + std::string(field.before) + '^' + value + field.after + "}\n",
                what, mend);
        };
        expect("5", "bare number", "5 " + std::string(field.unit));
        expect("0", "bare number", "0 " + std::string(field.unit));
        expect("5 furlongs", "unknown unit \"furlongs\"", field.unit);
        expect("nan mm", "not a finite number", "");
        expect(".inf", "not a finite number", "");
        expect("1e999 " + std::string(field.unit), "too large", "");
        expect("five", "not a", "1.5");
        if (std::string_view(field.before).find("at:") == std::string_view::npos)
            expect("-1 " + std::string(field.unit), "negative", "0");
    }
}

TEST(JobFault, MoneyNeedsItsUnit) {
    const auto expect = [](const std::string& value, const char* what, const char* mend) {
        expect_fault_after_spaces(
            "gaps:\n  - {id: g, between: [yard, wall], hole: {diameter: 5 mm}, closing: {cost: ^" + value + "}}\n", what, mend);
    };
    expect("8.00", "bare number", "$8.00");
    expect("8 EUR", "not an amount of money", "$12.50");
    expect("$-8", "negative", "$0 or more");
    expect("-$8", "negative", "$0 or more");
    expect("$8.001", "whole cents", "$12.50");
    expect("$.inf", "not a finite number", "$12.50");
}

TEST(JobFault, MissingHouseNamesBothFiles) {
    const ScratchFolder folder;
    const std::filesystem::path path = folder.write("job.yaml", "seamward: 1\nhouse: ../models/none.yaml\n");
    const auto found = faults_of([&] { (void)read_job(path, RunContext()); });
    ASSERT_EQ(found.size(), 1U);
    EXPECT_EQ(found.front().file, path.string());
    EXPECT_EQ(found.front().place.line, 2U);
    EXPECT_EQ(found.front().place.column, 8U);
    EXPECT_NE(found.front().what.find("no such file"), std::string::npos);
    EXPECT_NE(found.front().what.find("models/none.yaml"), std::string::npos);
}

TEST(JobFault, MissingJobFileIsNamed) {
    const auto found = faults_of([] { (void)read_job("none/job.yaml", RunContext()); });
    EXPECT_TRUE(only_fault(found, {0, 0}, "no such file", "path"));
    EXPECT_EQ(found.front().file, "none/job.yaml");
}

TEST(JobFault, SyntaxIsNamedWithItsFile) {
    EXPECT_EQ(faults("seamward: 1\nspaces: [\n").front().file, "job.yaml");
    EXPECT_NE(listing(faults("seamward: 1\nseamward: 1\n")).find("job.yaml:2:1"), std::string::npos);
}

/// Exit 1 promises a message that says file, line, what, and how to mend it.
TEST(JobFault, EveryMessageSaysHowToMend) {
    const std::string gap = std::string(spaces) + "gaps:\n  - {id: g, between: [yard, wall], hole: {diameter: 5 mm}";
    for (const std::string& text :
         {std::string(spaces) + "gaps: [{id: ~, between: [yard, wall], hole: {diameter: 5 mm}}]\n",
          std::string(spaces) + "gaps: [{id: [g], between: [yard, wall], hole: {diameter: 5 mm}}]\n",
          std::string(spaces) + "gaps: [{id: g, between: [yard, ~], hole: {diameter: 5 mm}}]\n",
          std::string(spaces) + "gaps: [{id: g, between: [yard, wall], hole: {diameter: ~}}]\n",
          std::string(spaces) + "gaps: [{id: g, between: [yard, wall], hole: {diameter: [5 mm]}}]\n", gap + ", count: [3]}\n",
          gap + ", count: ~}\n", gap + ", duty: ~}\n", gap + ", duty: [drain]}\n", gap + ", substrates: [~]}\n",
          gap + ", closing: {never: ~}}\n", gap + ", closing: {cost: ~}}\n",
          std::string("seamward: 1\nspaces: [{id: a, kind: ~}]\n"),
          std::string("seamward: 1\nspaces: [{id: a, kind: cavity, source: ~}]\n"), std::string("seamward: 1\npests: [~]\n"),
          std::string("seamward: 1\nhouse: [a]\n"), std::string("seamward: 1\njob: {name: [a]}\n")}) {
        const auto found = faults(text);
        EXPECT_FALSE(found.empty()) << text;
        for (const Diagnostic& fault : found) EXPECT_FALSE(fault.mend.empty()) << to_text(fault);
    }
}

TEST(JobFault, UnknownIdInALargeJobStillSaysHowToMend) {
    std::string text = "seamward: 1\nspaces:\n";
    for (int i = 0; i < 100; ++i) text += "  - {id: room-" + std::to_string(i) + ", kind: living}\n";
    text += "gaps: [{id: g, between: [room-1, completely-different], hole: {diameter: 5 mm}}]\n";
    const auto found = faults(text);
    ASSERT_EQ(found.size(), 1U);
    EXPECT_FALSE(found.front().mend.empty()) << to_text(found.front());
}

}  // namespace
}  // namespace seamward::test
