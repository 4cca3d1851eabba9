// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/compare_audits.h"

#include <algorithm>
#include <map>

#include "provisions/known_again.h"
#include "provisions/way_findings.h"

namespace seamward {

namespace {

/// What an audit says that bears on findings of another.
class Witness {
public:
    explicit Witness(const Audit& audit) : audit_(audit), ways_(ways_of_findings(audit)) {
        for (const ProvisionResult& result : audit.results) results_.emplace(result.provision.id, &result);
    }

    [[nodiscard]] const Audit& audit() const { return audit_; }

    [[nodiscard]] const ProvisionResult* result(const std::string& rule) const {
        const auto found = results_.find(rule);
        return found == results_.end() ? nullptr : found->second;
    }

    /// Whether a finding of another audit, which this one has not, would be one of its findings if the thing were as it was.
    [[nodiscard]] bool would_tell(const Witness& other, std::size_t finding) const {
        if (other.audit_.findings[finding].rule == way_in) return asked_for(other, finding);
        const ProvisionResult* here = result(other.audit_.findings[finding].rule);
        if (here == nullptr) return false;
        const ProvisionResult* there = other.result(other.audit_.findings[finding].rule);
        const Marks sought = other.thing(finding, there);
        std::optional<Closeness> known, unknown;
        bool any_unknown = false;
        for (const Checked& thing : here->checked) {
            if (thing.verdict == Verdict::fail) continue;  // another finding, which would have been taken for this one
            const bool open = thing.verdict == Verdict::unknown;
            const Marks marks = marks_of(audit_, here->provision, thing);
            const std::optional<Closeness> close = closeness(sought, marks);
            std::optional<Closeness>& best = open ? unknown : known;
            if (close && (!best || *close < *best)) best = close;
            any_unknown = any_unknown || (open && may_be(sought, marks, there));
        }
        if (known && (!unknown || *known < *unknown)) return true;
        if (unknown || any_unknown) return false;
        const bool said = std::any_of(here->checked.begin(), here->checked.end(),
                                      [](const Checked& thing) { return thing.verdict == Verdict::unknown; });
        return said || here->verdict != Verdict::unknown;
    }

private:
    /// Whether all animals that the way was open to were asked for, or all that there are where none was named; and whether it
    /// would stand in the list: where that ends early, only what is wider than its last.
    [[nodiscard]] bool asked_for(const Witness& other, std::size_t finding) const {
        const WayIn* way = other.ways_[finding];
        const bool wide = way != nullptr && !audit_.ways.empty() && way->way.pinch > audit_.ways.back().way.pinch;
        if (audit_.more_ways && !wide) return false;
        if (audit_.pests.empty()) return true;
        if (way == nullptr || way->open_to.empty()) return false;
        return std::all_of(way->open_to.begin(), way->open_to.end(), [&](std::size_t pest) {
            return pest < other.audit_.pests.size() &&
                   std::any_of(audit_.pests.begin(), audit_.pests.end(),
                               [&](const Pest& one) { return one.id == other.audit_.pests[pest].id; });
        });
    }

    /// A finding as the thing that was checked, which has the name that things have: of those at its place the one that its key
    /// names at greatest length.
    [[nodiscard]] Marks thing(std::size_t finding, const ProvisionResult* of) const {
        const Finding& found = audit_.findings[finding];
        Marks marks = marks_of(audit_, found);
        marks.name.clear();
        if (of == nullptr) return marks;
        std::optional<Marks> named;
        for (const Checked& one : of->checked) {
            if (one.verdict != Verdict::fail || one.gap != found.gap || one.parts != found.parts) continue;
            const Marks own = marks_of(audit_, of->provision, one);
            if (own.at.has_value() != marks.at.has_value() || (own.at && moved(own, marks) > 0)) continue;
            const bool called = found.key.find(own.name) != std::string::npos;
            if (called && (!named || own.name.size() > named->name.size())) named = own;
        }
        return named.value_or(marks);
    }

    /// Whether a thing whose verdict is unknown here may be what was found there: it does not lie elsewhere, and is not called as
    /// something else was.
    [[nodiscard]] static bool may_be(const Marks& sought, const Marks& thing, const ProvisionResult* there) {
        if (sought.at && thing.at && moved(sought, thing) > same_part_place) return false;
        if (there == nullptr || thing.name.empty() || thing.name == sought.name) return true;
        return std::none_of(there->checked.begin(), there->checked.end(),
                            [&](const Checked& one) { return one.subject.english() == thing.name; });
    }

    const Audit& audit_;
    std::vector<const WayIn*> ways_;  ///< by position of the finding
    std::map<std::string, const ProvisionResult*> results_;
};

std::vector<Marks> all_marks(const Audit& audit) {
    std::vector<Marks> marks;
    marks.reserve(audit.findings.size());
    for (const Finding& finding : audit.findings) marks.push_back(marks_of(audit, finding));
    return marks;
}

void sort_out(const Witness& from, const Witness& other, const std::vector<bool>& paired, std::vector<std::size_t>& told,
              std::vector<std::size_t>& not_told) {
    for (std::size_t i = 0; i < paired.size(); ++i) {
        if (!paired[i]) (other.would_tell(from, i) ? told : not_told).push_back(i);
    }
}

}  // namespace

AuditChanges compare(const Audit& before, const Audit& now) {
    AuditChanges changes;
    const std::vector<Marks> old_marks = all_marks(before), new_marks = all_marks(now);
    std::vector<bool> old_paired(old_marks.size(), false), new_paired(new_marks.size(), false);
    for (const Known& pair : known_again(old_marks, new_marks)) {
        changes.unchanged.push_back({pair.first, pair.second, pair.close.by, pair.close.moved});
        old_paired[pair.first] = new_paired[pair.second] = true;
    }
    std::sort(changes.unchanged.begin(), changes.unchanged.end(),
              [](const AuditChanges::Pair& a, const AuditChanges::Pair& b) { return a.now < b.now; });

    const Witness then(before), today(now);
    sort_out(then, today, old_paired, changes.fixed, changes.unknown_now);
    sort_out(today, then, new_paired, changes.appeared, changes.unknown_before);
    for (const ProvisionResult& result : now.results) {
        const ProvisionResult* old = then.result(result.provision.id);
        if (old != nullptr && old->verdict != result.verdict)
            changes.verdicts.push_back({result.provision.id, old->verdict, result.verdict});
    }
    return changes;
}

}  // namespace seamward
