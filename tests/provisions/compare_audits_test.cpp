// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/compare_audits.h"

#include <gtest/gtest.h>

#include "tests/provisions/made_audit.h"

namespace seamward::test {

namespace {

using Positions = std::vector<std::size_t>;

Checked thing(const std::string& subject, Verdict verdict, std::optional<Point> at = {}, Positions parts = {}) {
    Checked made;
    made.subject = subject;
    made.verdict = verdict;
    made.at = at;
    made.parts = std::move(parts);
    return made;
}

/// Of one provision, "clearance": its verdict follows from the things, and each that fails is a finding.
Audit audit_of(const std::vector<Checked>& things) {
    Audit audit;
    for (const char letter : {'A', 'B', 'C', 'D'})
        audit.parts.push_back({std::string(1, letter), "", "", std::string(22, letter)});
    ProvisionResult held = result("clearance", Verdict::pass);
    held.checked = things;
    for (const Checked& one : things) {
        if (one.verdict == Verdict::unknown && held.verdict != Verdict::fail) held.verdict = Verdict::unknown;
        if (one.verdict != Verdict::fail) continue;
        held.verdict = Verdict::fail;
        Finding finding;
        finding.rule = "clearance";
        finding.key = "clearance " + one.subject.english();
        finding.at = one.at;
        finding.parts = one.parts;
        audit.findings.push_back(finding);
    }
    audit.results = {held};
    return audit;
}

TEST(CompareAudits, KnowsFindingsByTheirParts) {
    // The hole moved 3 m with its pipe (B and C), and another came to where it was.
    const Audit before = audit_of({thing("pipe", Verdict::fail, Point{0, 0, 0}, {1, 2})});
    const Audit now =
        audit_of({thing("pipe", Verdict::fail, Point{0, 0, 0}, {1, 3}), thing("renamed", Verdict::fail, Point{3, 0, 0}, {1, 2})});
    const AuditChanges changes = compare(before, now);
    ASSERT_EQ(changes.unchanged.size(), 1U);
    EXPECT_EQ(changes.unchanged[0].now, 1U);
    EXPECT_EQ(changes.unchanged[0].by, KnownBy::same_parts);
    EXPECT_DOUBLE_EQ(changes.unchanged[0].moved, 3);
    EXPECT_EQ(changes.appeared, Positions{0});
    EXPECT_TRUE(changes.fixed.empty());
}

TEST(CompareAudits, ASharedPartIsNotEnoughAcrossTheRoom) {
    const Audit before = audit_of({thing("old pipe", Verdict::fail, Point{0, 0, 0}, {0, 1})});
    const AuditChanges near = compare(before, audit_of({thing("pipe", Verdict::fail, Point{0.9, 0, 0}, {0, 2})}));
    ASSERT_EQ(near.unchanged.size(), 1U);
    EXPECT_EQ(near.unchanged[0].by, KnownBy::shared_parts);
    const AuditChanges far = compare(before, audit_of({thing("pipe", Verdict::fail, Point{1.1, 0, 0}, {0, 2})}));
    EXPECT_EQ(far.fixed, Positions{0});
    EXPECT_EQ(far.appeared, Positions{0});
}

TEST(CompareAudits, KnowsFindingsByNameAndThenByPlace) {
    const Audit before = audit_of({thing("north bibb", Verdict::fail), thing("vent", Verdict::fail, Point{5, 0, 1})});
    const Audit now =
        audit_of({thing("the vent", Verdict::fail, Point{5.19, 0, 1}), thing("north bibb", Verdict::fail, Point{9, 9, 9})});
    const AuditChanges changes = compare(before, now);
    ASSERT_EQ(changes.unchanged.size(), 2U);
    EXPECT_EQ(changes.unchanged[0].by, KnownBy::place);
    EXPECT_EQ(changes.unchanged[0].before, 1U);
    EXPECT_EQ(changes.unchanged[1].by, KnownBy::key);
    const Audit moved = audit_of({thing("the vent", Verdict::fail, Point{5.21, 0, 1})});
    EXPECT_TRUE(compare(before, moved).unchanged.empty());
}

TEST(CompareAudits, TheClosestPairComesFirst) {
    const Audit before = audit_of({thing("a", Verdict::fail, Point{0, 0, 0}), thing("b", Verdict::fail, Point{0.2, 0, 0})});
    const Audit now = audit_of({thing("c", Verdict::fail, Point{0.15, 0, 0})});
    const AuditChanges changes = compare(before, now);
    ASSERT_EQ(changes.unchanged.size(), 1U);
    EXPECT_EQ(changes.unchanged[0].before, 1U) << "not the first in order that is near enough";
    EXPECT_EQ(changes.fixed, Positions{0});
}

TEST(CompareAudits, WhatPassesNowIsFixed) {
    const AuditChanges changes = compare(audit_of({thing("bibb", Verdict::fail)}), audit_of({thing("bibb", Verdict::pass)}));
    EXPECT_EQ(changes.fixed, Positions{0});
    ASSERT_EQ(changes.verdicts.size(), 1U);
    EXPECT_EQ(changes.verdicts[0].before, Verdict::fail);
    EXPECT_EQ(changes.verdicts[0].now, Verdict::pass);
}

TEST(CompareAudits, WhatIsUnknownNowIsNeverFixed) {
    const Audit before = audit_of({thing("bibb", Verdict::fail), thing("vent", Verdict::fail)});
    // Also where the provision still fails for another thing.
    for (const Verdict other : {Verdict::fail, Verdict::pass, Verdict::unknown}) {
        const AuditChanges changes = compare(before, audit_of({thing("bibb", Verdict::unknown), thing("vent", other)}));
        EXPECT_EQ(changes.fixed, other == Verdict::pass ? Positions{1} : Positions{});
        EXPECT_EQ(changes.unknown_now, other == Verdict::unknown ? (Positions{0, 1}) : Positions{0});
    }
    Audit bare = audit_of({});
    bare.results[0].verdict = Verdict::unknown;
    EXPECT_EQ(compare(before, bare).unknown_now, (Positions{0, 1})) << "nothing was looked at";
    bare.results.clear();
    EXPECT_EQ(compare(before, bare).unknown_now, (Positions{0, 1})) << "the table of provisions has it no longer";
    EXPECT_EQ(compare(bare, before).unknown_before, (Positions{0, 1}));
    EXPECT_TRUE(compare(bare, before).appeared.empty());
}

TEST(CompareAudits, WhatIsNoLongerThereIsFixedUnlessItMayBeWhatIsUnknown) {
    const Audit before = audit_of({thing("bibb", Verdict::fail, Point{0, 0, 0}), thing("vent", Verdict::pass)});
    EXPECT_EQ(compare(before, audit_of({thing("vent", Verdict::pass)})).fixed, Positions{0});
    EXPECT_EQ(compare(before, audit_of({})).fixed, Positions{0}) << "does not fail any more: there is nothing left to";
    EXPECT_EQ(compare(before, audit_of({thing("vent", Verdict::unknown)})).fixed, Positions{0}) << "the vent was there before";
    EXPECT_EQ(compare(before, audit_of({thing("other", Verdict::unknown, Point{4, 0, 0})})).fixed, Positions{0}) << "elsewhere";
    EXPECT_EQ(compare(before, audit_of({thing("other", Verdict::unknown)})).unknown_now, Positions{0});
}

TEST(CompareAudits, WhatDoesNotApplyAnyMoreIsFixed) {
    Audit now = audit_of({});
    now.results[0].verdict = Verdict::not_applicable;
    EXPECT_EQ(compare(audit_of({thing("dryer", Verdict::fail)}), now).fixed, Positions{0});
}

/// A way of which no gap is left; it was open to the first of the audit's animals.
Audit with_way(const std::vector<std::string>& pests, bool open) {
    Audit audit;
    for (const std::string& id : pests) {
        audit.pests.emplace_back();
        audit.pests.back().id = id;
    }
    if (!open) return audit;
    Finding finding;
    finding.rule = "way-in";
    finding.key = "way-in screed>sink";
    audit.findings = {finding};
    audit.ways.resize(1);
    if (!pests.empty()) audit.ways[0].open_to = {0};
    return audit;
}

TEST(CompareAudits, AWayIsFixedOnlyForAnimalsThatWereAskedForAgain) {
    const Audit mouse = with_way({"house-mouse", "roof-rat"}, true), any = with_way({}, true);
    EXPECT_EQ(compare(mouse, with_way({"house-mouse"}, false)).fixed, Positions{0});
    EXPECT_EQ(compare(mouse, with_way({"roof-rat", "house-mouse"}, false)).fixed, Positions{0});
    EXPECT_EQ(compare(mouse, with_way({}, false)).fixed, Positions{0}) << "not even the least gets in";
    EXPECT_EQ(compare(mouse, with_way({"roof-rat"}, false)).unknown_now, Positions{0});
    EXPECT_EQ(compare(any, with_way({}, false)).fixed, Positions{0});
    EXPECT_EQ(compare(any, with_way({"roof-rat"}, false)).unknown_now, Positions{0});
    EXPECT_EQ(compare(with_way({"roof-rat"}, false), mouse).unknown_before, Positions{0});
    EXPECT_EQ(compare(mouse, mouse).unchanged.size(), 1U);
    Audit cut = with_way({}, false);
    cut.more_ways = true;
    EXPECT_EQ(compare(mouse, cut).unknown_now, Positions{0}) << "it may be one of those that are not listed";
    cut.ways.resize(1);
    cut.ways[0].way.pinch = 0.004;
    Audit wide = mouse, narrow = mouse;
    wide.ways[0].way.pinch = 0.005;
    narrow.ways[0].way.pinch = 0.004;
    EXPECT_EQ(compare(wide, cut).fixed, Positions{0}) << "it would come before what is listed";
    EXPECT_EQ(compare(narrow, cut).unknown_now, Positions{0});
}

}  // namespace

}  // namespace seamward::test
