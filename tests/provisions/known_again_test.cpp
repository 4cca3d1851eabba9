// SPDX-License-Identifier: GPL-3.0-or-later
// The pairing of findings against all pairings that there are, and what must hold of any.
#include "provisions/known_again.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <tuple>

#include "tests/provisions/made_audit.h"

namespace seamward::test {

namespace {

/// How close a pair is by the words of compare_audits.h, written down anew: way to know, not shared, meters, renamed, names.
using Key = std::tuple<int, double, double, bool, std::string, std::string>;
struct Pair {
    Key key;
    std::size_t before, now;
    bool operator<(const Pair& other) const { return key < other.key; }
};

std::set<std::string> global_ids(const Audit& audit, const Finding& finding) {
    std::set<std::string> ids;
    for (const std::size_t part : finding.parts) ids.insert(audit.parts[part].global_id);
    ids.erase("");
    return ids;
}

std::optional<Key> key_of(const Audit& before, const Finding& a, const Audit& now, const Finding& b) {
    if (a.rule != b.rule) return std::nullopt;
    const std::set<std::string> ours = global_ids(before, a), theirs = global_ids(now, b);
    std::set<std::string> all = ours;
    all.insert(theirs.begin(), theirs.end());
    const double both = static_cast<double>(ours.size() + theirs.size() - all.size());
    const double lone = both == 0 ? 1 : (static_cast<double>(all.size()) - both) / static_cast<double>(all.size());
    const double meters =
        a.at && b.at ? std::sqrt(std::pow(a.at->x - b.at->x, 2) + std::pow(a.at->y - b.at->y, 2) + std::pow(a.at->z - b.at->z, 2))
                     : std::numeric_limits<double>::infinity();
    int way = 0;
    if (both > 0 && ours == theirs)
        way = 1;
    else if (both > 0 && (std::isinf(meters) || meters <= 1))
        way = 2;
    else if (a.key == b.key)
        way = 3;
    else if (meters <= 0.2)
        way = 4;
    return way == 0 ? std::nullopt : std::optional(Key{way, lone, meters, a.key != b.key, a.key, b.key});
}

/// Of all sets of pairs without a finding in two of them the one whose closest pair is closest, then its next, and so on; more
/// pairs before fewer.
struct AllPairings {
    std::vector<Pair> candidates, best, chosen;
    std::set<std::size_t> used_before, used_now;

    void walk(std::size_t from) {
        const std::size_t shared = std::min(chosen.size(), best.size());
        bool better = chosen.size() > best.size();
        for (std::size_t i = 0; i < shared; ++i) {
            if (chosen[i].key == best[i].key) continue;
            better = chosen[i] < best[i];
            break;
        }
        if (better) best = chosen;
        for (std::size_t i = from; i < candidates.size(); ++i) {
            const Pair& pair = candidates[i];
            if (used_before.contains(pair.before) || used_now.contains(pair.now)) continue;
            used_before.insert(pair.before);
            used_now.insert(pair.now);
            chosen.push_back(pair);
            walk(i + 1);
            chosen.pop_back();
            used_before.erase(pair.before);
            used_now.erase(pair.now);
        }
    }
};

std::set<std::pair<std::size_t, std::size_t>> by_brute_force(const Audit& before, const Audit& now) {
    AllPairings all;
    for (std::size_t i = 0; i < before.findings.size(); ++i) {
        for (std::size_t j = 0; j < now.findings.size(); ++j) {
            if (const std::optional<Key> key = key_of(before, before.findings[i], now, now.findings[j]))
                all.candidates.push_back({*key, i, j});
        }
    }
    std::sort(all.candidates.begin(), all.candidates.end());
    all.walk(0);
    std::set<std::pair<std::size_t, std::size_t>> pairs;
    for (const Pair& pair : all.best) pairs.emplace(pair.before, pair.now);
    return pairs;
}

/// An audit after some work and some redrawing: what the first has, moved, renamed, with other parts; some gone, some new.
Audit revised(const Audit& audit, RandomAudit& random) {
    Audit now = random.crowded(5);
    for (Finding& finding : now.findings) {
        if (audit.findings.empty() || random.chance(3)) continue;
        const Finding& old = audit.findings[random.below(audit.findings.size())];
        const std::string own_key = finding.key;
        if (random.chance(2)) finding.parts = old.parts;
        if (random.chance(2)) finding.at = old.at;
        finding.rule = old.rule;
        const bool taken =
            std::any_of(now.findings.begin(), now.findings.end(), [&](const Finding& f) { return f.key == old.key; });
        finding.key = random.chance(2) && !taken ? old.key : own_key;
    }
    return now;
}

TEST(KnownAgain, AgreesWithAllPairingsThatThereAre) {
    std::array<std::size_t, 4> ways{};
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        SCOPED_TRACE(seed);
        RandomAudit random(seed);
        const Audit before = random.crowded(5), now = revised(before, random);
        std::set<std::pair<std::size_t, std::size_t>> pairs;
        for (const AuditChanges::Pair& pair : compare(before, now).unchanged) {
            pairs.emplace(pair.before, pair.now);
            ++ways.at(static_cast<std::size_t>(pair.by));
        }
        EXPECT_EQ(pairs, by_brute_force(before, now));
    }
    for (const std::size_t count : ways) EXPECT_GT(count, 20U) << "every way to know one again comes up";
}

using KeyPairs = std::set<std::pair<std::string, std::string>>;

struct Named {
    KeyPairs unchanged;
    std::set<std::string> fixed, unknown_now, appeared, unknown_before;
    bool operator==(const Named&) const = default;
};

Named by_name(const Audit& before, const Audit& now) {
    const AuditChanges changes = compare(before, now);
    Named named;
    for (const AuditChanges::Pair& pair : changes.unchanged)
        named.unchanged.emplace(before.findings[pair.before].key, now.findings[pair.now].key);
    for (const std::size_t i : changes.fixed) named.fixed.insert(before.findings[i].key);
    for (const std::size_t i : changes.unknown_now) named.unknown_now.insert(before.findings[i].key);
    for (const std::size_t i : changes.appeared) named.appeared.insert(now.findings[i].key);
    for (const std::size_t i : changes.unknown_before) named.unknown_before.insert(now.findings[i].key);
    EXPECT_EQ(named.unchanged.size() + named.fixed.size() + named.unknown_now.size(), before.findings.size());
    EXPECT_EQ(named.unchanged.size() + named.appeared.size() + named.unknown_before.size(), now.findings.size());
    return named;
}

TEST(KnownAgain, OrderDoesNotMatterAndTheOtherWayAroundIsTheSame) {
    std::size_t fixed = 0, unknown = 0;
    for (std::uint64_t seed = 0; seed < 600; ++seed) {
        SCOPED_TRACE(seed);
        RandomAudit random(seed);
        Audit before = random.crowded(12), now = revised(before, random);
        if (random.chance(3)) now.results[0].verdict = Verdict::unknown;
        if (random.chance(6)) before.results.pop_back();
        const Named named = by_name(before, now);
        EXPECT_EQ(by_name(random.shuffled(before), random.shuffled(now)), named);
        Named turned = by_name(now, before);
        KeyPairs back;
        for (const auto& [a, b] : turned.unchanged) back.emplace(b, a);
        EXPECT_EQ(back, named.unchanged);
        EXPECT_EQ(turned.fixed, named.appeared);
        EXPECT_EQ(turned.appeared, named.fixed);
        EXPECT_EQ(turned.unknown_now, named.unknown_before);
        EXPECT_EQ(turned.unknown_before, named.unknown_now);
        fixed += named.fixed.size();
        unknown += named.unknown_now.size();
    }
    EXPECT_GT(fixed, 300U);
    EXPECT_GT(unknown, 300U);
}

TEST(KnownAgain, AnAuditIsUnchangedAgainstItself) {
    for (std::uint64_t seed = 0; seed < 200; ++seed) {
        RandomAudit random(seed);
        const Audit audit = random.crowded(20);
        const AuditChanges changes = compare(audit, audit);
        ASSERT_EQ(changes.unchanged.size(), audit.findings.size());
        for (const AuditChanges::Pair& pair : changes.unchanged) EXPECT_EQ(pair.before, pair.now);
        EXPECT_TRUE(changes.fixed.empty() && changes.appeared.empty() && changes.unknown_now.empty() &&
                    changes.unknown_before.empty() && changes.verdicts.empty());
    }
}

}  // namespace

}  // namespace seamward::test
