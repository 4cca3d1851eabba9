// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/duties.h"

#include <gtest/gtest.h>

#include <set>

#include "catalog/shipped.h"
#include "tests/docs/page.h"
#include "tests/support/diagnostic_matchers.h"
#include "tests/support/document_text.h"
#include "tests/support/marked_text.h"

namespace seamward::test {
namespace {

constexpr std::string_view head = R"(catalog: duties
edition: 2026-01-02
sources:
  - {id: code, title: "A code", publisher: "A council", year: 2018, seen: read}
  - {id: common-practice, title: "Common practice, no published source", publisher: none, year: 0, seen: memory}
duties:
)";

constexpr std::string_view joint = R"(  - id: joint
    name: "a joint"
    when: {features: [weep-screed], duties: [none], shapes: [slot], between: {one: [outdoors], other: [cavity, attached]}}
    full: true
    allow: [bead, foam]
    why: "it drains"
    source: code
    instead: "ask"
)";

constexpr std::string_view vent = R"(  - id: vent
    name: "a vent"
    when: {any_of: [metal], all_of: [stucco], least_length: 1 m, below: 0.6 m, feature_unknown: true, words: [attic],
           duties: [vent]}
    full: false
    allow: [mesh]
    least: 1/16 in
    widest: 1/4 in
    keeps_area: true
    why: "it airs"
    source: common-practice
  - id: porch
    name: "a porch"
    when: {nothing_but: [wood], duties: [none]}
    free: true
    source: code
)";

/// The last words on the duties that closing defeats.
constexpr std::string_view defaults = R"(  - id: rest
    name: "the rest"
    when: {duties: [drain, weep, vent, exhaust, combustion-air, flood, relief]}
    full: false
    allow: []
    why: "it serves as an opening"
    source: code
)";

std::string table_with(std::string_view rows) { return std::string(head) + std::string(rows) + std::string(defaults); }

Table<DutyRow> read(std::string_view yaml) { return read_duties(yaml, "duties.yaml", shipped_features()); }

std::string replaced(std::string_view text, std::string_view from, std::string_view to) {
    std::string changed(text);
    const std::size_t at = changed.find(from);
    if (at == std::string::npos) throw std::out_of_range("not there: " + std::string(from));
    return changed.replace(at, from.size(), to);
}

/// Changes one thing in a table that is right; the caret in the new text is where the fault must stand.
void expect_fault(std::string_view from, std::string_view to, std::string_view what, std::string_view mend) {
    const MarkedText marked(replaced(table_with(std::string(joint) + std::string(vent)), from, to));
    const auto faults = faults_of([&] { (void)read(marked.text); });
    EXPECT_TRUE(has_fault(faults, marked.places.at(0), what, mend)) << to;
    for (const Diagnostic& fault : faults) EXPECT_EQ(fault.file, "duties.yaml");
}

TEST(ReadDuties, ReadsEveryKey) {
    const Table<DutyRow> table = read(table_with(std::string(joint) + std::string(vent)));
    ASSERT_EQ(table.rows.size(), 4U);
    const DutyRow& first = table.rows[0];
    EXPECT_EQ(first.id, "joint");
    EXPECT_EQ(first.name, "a joint");
    EXPECT_EQ(first.when.features, std::vector<std::string>{"weep-screed"});
    EXPECT_EQ(first.when.duties, std::vector<Duty>{Duty::none});
    EXPECT_EQ(first.when.shapes, std::vector<ShapeKind>{ShapeKind::slot});
    EXPECT_EQ(first.when.between[0], std::vector<SpaceKind>{SpaceKind::outdoors});
    EXPECT_EQ(first.when.between[1], (std::vector<SpaceKind>{SpaceKind::cavity, SpaceKind::attached}));
    EXPECT_TRUE(first.full);
    EXPECT_EQ(first.allow, (std::vector<std::string>{"bead", "foam"}));
    EXPECT_EQ(first.why, "it drains");
    EXPECT_EQ(first.source, "code");
    EXPECT_EQ(first.instead, "ask");
    const DutyRow& second = table.rows[1];
    EXPECT_EQ(second.when.any_of, std::vector<std::string>{"metal"});
    EXPECT_EQ(second.when.all_of, std::vector<std::string>{"stucco"});
    EXPECT_EQ(second.when.words, std::vector<std::string>{"attic"});
    EXPECT_TRUE(second.when.feature_unknown);
    EXPECT_EQ(second.when.least_length, 1);
    EXPECT_EQ(second.when.height, 0.6);
    EXPECT_EQ(second.least, 0.0015875);
    EXPECT_EQ(second.widest, 0.00635);
    EXPECT_TRUE(second.keeps_area);
    EXPECT_FALSE(second.full);
    EXPECT_FALSE(second.when.asks_duty_only());
    EXPECT_TRUE(table.rows[2].free);
    EXPECT_EQ(table.rows[2].when.nothing_but, std::vector<std::string>{"wood"});
    EXPECT_TRUE(table.rows[3].when.asks_duty_only());
    EXPECT_TRUE(table.rows[3].when.takes(Duty::relief));
    EXPECT_FALSE(table.rows[3].when.takes(Duty::none));
    EXPECT_TRUE(DutyCase{}.takes(Duty::flood));
    EXPECT_FALSE(DutyCase{}.asks_duty_only());
}

TEST(DutyTableFault, UnknownWords) {
    expect_fault("    why: \"it drains\"", "    ^whi: \"it drains\"", "unknown key \"whi\" in row", "did you mean why?");
    expect_fault("shapes: [slot]", "^shape: [slot]", "unknown key \"shape\" in when", "did you mean shapes?");
    expect_fault("[slot]", "[^slut]", "unknown shape \"slut\"", "did you mean slot?");
    expect_fault("duties: [none]", "duties: [^nun]", "unknown duty \"nun\"", "none");
    expect_fault("[weep-screed]", "[^weep-scred]", "unknown feature \"weep-scred\"", "did you mean weep-screed?");
    expect_fault("[cavity, attached]", "[cavity, ^attacked]", "unknown kind \"attacked\"", "did you mean attached?");
    expect_fault("source: code\n    instead", "source: ^cod\n    instead", "unknown source \"cod\"", "did you mean code?");
    expect_fault("other: [cavity", "^others: [cavity", "unknown key \"others\" in between", "did you mean other?");
}

TEST(DutyTableFault, MissingAndEmpty) {
    expect_fault("  - id: joint\n    name", "  - ^name", "row has no id", "");
    expect_fault("  - id: joint\n    name: \"a joint\"\n", "  - ^id: joint\n", "row has no name", "");
    expect_fault(
        "  - id: joint\n    name: \"a joint\"\n    when: {features: [weep-screed], duties: [none], shapes: [slot], between: "
        "{one: [outdoors], other: [cavity, attached]}}\n",
        "  - ^id: joint\n    name: \"a joint\"\n", "row has no when", "");
    expect_fault("{nothing_but: [wood], duties: [none]}", "^{}", "a row that asks nothing fits every gap", "");
    expect_fault("features: [weep-screed]", "features: ^[]", "features is empty", "what is left out is not asked");
    expect_fault("one: [outdoors]", "one: ^[]", "one is empty", "");
    expect_fault("allow: [bead, foam]", "allow: ^[]", "a full closing is allowed, by no treatment", "full: false");
    expect_fault("allow: [bead, foam]", "allow: ^[bead, bead]", "treatment bead stands twice", "keep one");
}

TEST(DutyTableFault, KeysThatSayNothing) {
    expect_fault("    why: \"it drains\"", "    least: ^2 mm\n    why: \"it drains\"", "least is of a mesh", "remove it");
    expect_fault("    free: true\n", "    free: true\n    why: ^\"it is\"\n", "why says nothing of a row that is free",
                 "remove it, or free");
    expect_fault("widest: 1/4 in", "widest: ^1/32 in", "the widest opening is less than the least", "");
    expect_fault("feature_unknown: true", "feature_unknown: true, features: ^[weep-screed]",
                 "a feature that is not known is none of these", "");
}

/// The guard: no table is read that lets a drain, a weep, a vent and the like be closed.
TEST(DutyTableGuard, RefusesFullClosings) {
    const auto faults = [](std::string_view from, std::string_view to) {
        const std::string text = replaced(table_with(std::string(joint) + std::string(vent)), from, to);
        return faults_of([&] { (void)read(text); });
    };
    EXPECT_TRUE(only_fault(faults("duties: [none], shapes", "duties: [none, weep], shapes"), {10, 11},
                           "closing defeats the duty weep, and this row allows it", "write full: false"));
    EXPECT_TRUE(only_fault(faults("duties: [none], shapes", "shapes"), {10, 11},
                           "closing defeats the duty drain, and this row allows it", ""));
    EXPECT_TRUE(only_fault(faults("{nothing_but: [wood], duties: [none]}", "{nothing_but: [wood]}"), {29, 11},
                           "closing defeats the duty drain", ""));
}

TEST(DutyTableGuard, AsksForALastWordOnEachDuty) {
    const std::string without = replaced(table_with(joint), "exhaust, combustion-air, flood,", "exhaust, flood,");
    const auto faults = faults_of([&] { (void)read(without); });
    EXPECT_TRUE(only_fault(faults, {15, 5}, "no row fits every gap with the duty combustion-air",
                           "add a row with when: {duties: [combustion-air]}"));
}

TEST(DutyTableGuard, TellsRowsThatAreNeverReached) {
    const std::string after = std::string(head) + std::string(defaults) + std::string(vent);
    const auto faults = faults_of([&] { (void)read(after); });
    EXPECT_TRUE(only_fault(faults, {14, 5}, "no gap reaches this row", "move it up"));
}

TEST(Cited, SaysHowFarASourceWasFollowedUp) {
    EXPECT_EQ(cited({"a", "A code", "A council", 2018, CatalogSource::Seen::read}).english(), "A code, A council, 2018");
    EXPECT_EQ(cited({"a", "A code", "A council", 0, CatalogSource::Seen::secondary}).english(),
              "A code, A council (second hand)");
    EXPECT_EQ(cited({"a", "A code", "not named", 0, CatalogSource::Seen::memory}).english(), "A code (from memory)");
    EXPECT_EQ(starred(std::string("stays open (A code (from memory)); drains (A guide (second hand)); said (the survey)")),
              "stays open (A code*); drains (A guide*); said (the survey)");
    EXPECT_EQ(starred(message("{} ({})", {"stays open", cited({"a", "A code", "A council", 0, CatalogSource::Seen::secondary})}))
                  .english(),
              "stays open (A code, A council*)");
    EXPECT_EQ(cited({"a", "Labels, from memory", "none", 0, CatalogSource::Seen::memory}).english(), "Labels, from memory");
    EXPECT_EQ(cited({"a", "Common practice, no published source", "none", 0, CatalogSource::Seen::memory}).english(),
              "Common practice, no published source");
    EXPECT_EQ(cited(std::vector<CatalogSource>{}, "a-code").english(), "a-code");
}

TEST(ShippedDuties, NameTreatmentsThatExistAndLeaveWhatTheyMay) {
    for (const DutyRow& row : shipped_duties().rows) {
        EXPECT_FALSE(row.name.empty()) << row.id;
        for (const std::string& id : row.allow) {
            const Treatment* treatment = shipped_treatments().find(id);
            ASSERT_NE(treatment, nullptr) << row.id << ' ' << id;
            // What leaves nothing open defeats no duty only where the table of treatments says so.
            const bool serves = treatment->leaves == Treatment::Leaves::mesh ||
                                std::any_of(treatment->keeps.begin(), treatment->keeps.end(),
                                            [&](Duty duty) { return row.when.takes(duty) && row.when.duties.size() == 1; });
            EXPECT_EQ(serves, !row.full) << row.id << ' ' << id;
        }
    }
}

/// A gap that a reference says is never closed meets a row that agrees, and so does every duty that closing defeats.
TEST(ShippedDuties, HaveARowForEveryDutyThatFeaturesHave) {
    for (const Feature& feature : shipped_features().rows) {
        for (const FeatureGap& gap : feature.gaps) {
            if (gap.duty == Duty::none) continue;
            EXPECT_TRUE(std::any_of(shipped_duties().rows.begin(), shipped_duties().rows.end(), [&](const DutyRow& row) {
                return row.when.takes(gap.duty) && row.when.asks_duty_only();
            })) << feature.id;
        }
    }
}

/// Foam goes into nothing that has a duty, holds back fire or grows hot.
TEST(ShippedDuties, AllowNoFoam) {
    for (const DutyRow& row : shipped_duties().rows)
        EXPECT_EQ(std::count(row.allow.begin(), row.allow.end(), "foam"), 0) << row.id;
}

std::string text_at(Node mapping, std::string_view key) {
    const Node node = value_of(mapping, key);
    return node.present() ? std::string(node.text()) : "";
}

std::string list_at(Node mapping, std::string_view key) {
    std::string text;
    const Node list = value_of(mapping, key);
    if (!list.present()) return text;
    list.for_each_item([&](Node item) { text += (text.empty() ? "" : ", ") + std::string(item.text()); });
    return text;
}

/// The tables of docs/catalog.md against those of engine/catalog, as written there.
void expect_page_shows(const std::string& table, const std::string& heading,
                       const std::function<std::vector<std::string>(Node)>& cells_of) {
    const Document document = parse_yaml(page("engine/catalog/" + table + ".yaml"), table);
    std::map<std::string, std::string> seen;
    value_of(document.root(), "sources").for_each_item([&](Node source) {
        seen[text_at(source, "id")] = text_at(source, "seen");
    });
    const auto shown = table_below(page("docs/catalog.md"), heading);
    std::size_t rows = 0;
    value_of(document.root(), table).for_each_item([&](Node row) {
        std::vector<std::string> cells = cells_of(row);
        cells.push_back(seen.at(text_at(row, "source")));
        const std::string id = text_at(row, "id");
        ++rows;
        if (shown.contains(id))
            EXPECT_EQ(shown.at(id), cells) << id;
        else
            ADD_FAILURE() << "the page has no row for " << id;
    });
    EXPECT_EQ(shown.size(), rows) << heading;
}

TEST(CatalogPage, ShowsTheDutiesAsInTheirTable) {
    expect_page_shows("duties", "## Duties", [](Node row) {
        std::string allowed = list_at(row, "allow");
        const std::string least = text_at(row, "least"), widest = text_at(row, "widest");
        if (!least.empty()) allowed += ", " + least + (widest.empty() ? " or more" : " to " + widest);
        if (least.empty() && !widest.empty()) allowed += ", " + widest + " at most";
        if (text_at(row, "free") == "true") return std::vector<std::string>{text_at(row, "name"), "yes", "anything"};
        return std::vector<std::string>{text_at(row, "name"), text_at(row, "full") == "true" ? "yes" : "no",
                                        allowed.empty() ? "nothing" : allowed};
    });
}

TEST(CatalogPage, ShowsTheMeshesAsInTheirTable) {
    expect_page_shows("meshes", "### Meshes", [](Node row) {
        const MeshKind& mesh = *shipped_meshes().find(text_at(row, "id"));
        std::array<char, 32> opening{}, share{};
        std::snprintf(opening.data(), opening.size(), "%.2f mm", mesh.opening() * 1000);
        std::snprintf(share.data(), share.size(), "%.1f %%", mesh.open_share() * 100);
        return std::vector<std::string>{text_at(row, "name"), text_at(row, "wire"), opening.data(), share.data()};
    });
}

TEST(CatalogPage, ShowsTheFreeAreasAsInTheirTable) {
    expect_page_shows("free_areas", "### Free areas", [](Node row) {
        std::string due = text_at(row, "share") + " of its face is free";
        if (const std::string floor = text_at(row, "per_floor"); !floor.empty())
            due = text_at(row, "free") + " for " + floor + " of floor";
        if (const std::string input = text_at(row, "per_input"); !input.empty())
            due = text_at(row, "free") + " for " + input + " Btu/h, each opening";
        return std::vector<std::string>{text_at(row, "name"), due};
    });
}

}  // namespace
}  // namespace seamward::test
