// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/audit.h"

#include <algorithm>
#include <limits>
#include <set>

#include "base/measure_text.h"
#include "catalog/duties.h"
#include "catalog/shipped.h"
#include "provisions/facts.h"
#include "provisions/judge.h"
#include "provisions/measures.h"

namespace seamward {

namespace {

class Auditor {
public:
    Auditor(const AuditFacts& facts, const AuditSettings& settings, const RunContext& context)
        : facts_(facts),
          settings_(settings),
          context_(context),
          table_(settings.rules != nullptr ? *settings.rules : shipped_provisions()) {}

    Audit run() {
        audit_.heading = settings_.heading;
        audit_.date = settings_.date;
        audit_.pests = settings_.pests;
        audit_.parts = facts_.parts.parts;
        audit_.caution =
            "The local code and its official decide. What is adopted, amended or kept from before differs from town to town. "
            "Rules of the residential code are for houses of one or two families and townhouses. This is no inspection by a "
            "licensed inspector.";
        for (const Provision& provision : table_.rows) {
            context_.check();
            audit_.results.push_back(hold(provision));
        }
        for (const ProvisionResult& result : audit_.results) {
            for (const Checked& one : result.checked) {
                if (one.verdict == Verdict::fail) audit_.findings.push_back(finding(result, one));
            }
        }
        find_ways();
        number_keys();
        return std::move(audit_);
    }

private:
    ProvisionResult hold(const Provision& provision) {
        ProvisionResult result;
        result.provision = provision;
        result.source = cited(table_.sources, provision.source);
        const std::optional<bool> applies = facts_.applies(provision.applies);
        if (applies == std::optional<bool>(false)) {
            result.verdict = Verdict::not_applicable;
            result.why = "the house is not built so";
            return result;
        }
        if (!applies) {
            result.why = "nobody says whether the house is built so; the key construction of a job file says it";
            return result;
        }
        for (Measured& one : measure(facts_, provision)) result.checked.push_back(checked(provision, std::move(one)));
        if (result.checked.empty()) {
            result.verdict =
                facts_.described || provision.measure == "closed-rightly" ? Verdict::not_applicable : Verdict::unknown;
            result.why = facts_.described ? Message("the house has nothing of the kind")
                         : provision.measure == "closed-rightly"
                             ? Message("nothing of the kind is written down as closed")
                             : Message("nothing of the kind is in the survey, which may not tell of all that is there");
            return result;
        }
        decide(result);
        return result;
    }

    Checked checked(const Provision& provision, Measured measured) {
        Checked one;
        one.verdict = judge(provision, measured.value, measured.plus_minus);
        one.subject = std::move(measured.subject);
        one.measured = measured.value;
        one.plus_minus = measured.plus_minus;
        one.remark = std::move(measured.remark);
        if (one.verdict == Verdict::unknown && one.measured)
            one.remark = message("it may be off by {}, and the limit is nearer than that: measure it better",
                                 {value_text(provision, measured.plus_minus)});
        one.gap = measured.gap;
        one.at = measured.at;
        one.parts = parts_of(measured.gaps);
        return one;
    }

    /// Parts that bound any of the gaps.
    [[nodiscard]] std::vector<std::size_t> parts_of(const std::vector<GapIndex>& gaps) const {
        std::set<std::size_t> parts;
        for (const GapIndex gap : gaps) {
            if (gap.value < facts_.parts.of_gap.size())
                parts.insert(facts_.parts.of_gap[gap.value].begin(), facts_.parts.of_gap[gap.value].end());
        }
        return {parts.begin(), parts.end()};
    }

    /// The verdict of the whole, and the value that decides it.
    static void decide(ProvisionResult& result) {
        const auto any = [&](Verdict verdict) {
            return std::any_of(result.checked.begin(), result.checked.end(),
                               [&](const Checked& c) { return c.verdict == verdict; });
        };
        result.verdict = any(Verdict::fail) ? Verdict::fail : any(Verdict::unknown) ? Verdict::unknown : Verdict::pass;
        double worst = -std::numeric_limits<double>::infinity();
        for (const Checked& one : result.checked) {
            if (one.verdict != result.verdict) continue;
            if (result.verdict == Verdict::unknown && result.why.empty()) result.why = one.remark;
            if (!one.measured) continue;
            const double past = past_limit(result.provision, *one.measured);
            if (result.measured && past <= worst) continue;
            worst = past;
            result.measured = one.measured;
        }
    }

    [[nodiscard]] Finding finding(const ProvisionResult& result, const Checked& one) const {
        const Provision& provision = result.provision;
        Finding found;
        found.rule = provision.id;
        found.key = provision.id + "/" + one.subject.english();
        found.title = message("{}: {}", {Message(provision.name), one.subject});
        const Measure* measure = shipped_measures().find(provision.measure);
        std::vector<Message> said{provision.text,
                                  message("Measured, {}: {}; due: {}.",
                                          {Message(measure->name), value_text(provision, *one.measured), limit_text(provision)})};
        if (!one.remark.empty()) said.push_back(message("({})", {one.remark}));
        said.push_back(message("To put it right: {}.", {Message(provision.mend)}));
        found.text = joined_message(said, " ");
        found.source = message("{}, edition {}, {}; {}", {as_named(provision.document), as_named(provision.edition),
                                                          as_named(provision.section), result.source});
        found.gap = one.gap;
        found.at = one.at;
        if (one.gap) found.outward = facts_.outward(*one.gap);
        found.parts = one.parts;
        return found;
    }

    void find_ways() {
        context_.stage("tracing");
        TraceSettings asked;
        asked.pests = settings_.pests;
        asked.top = settings_.most_ways + 1;
        Trace traced = trace(facts_.survey(), asked, context_);
        audit_.more_ways = traced.paths.size() > settings_.most_ways;
        if (audit_.more_ways) traced.paths.resize(settings_.most_ways);
        for (RankedPath& ranked : traced.paths) {
            WayIn way;
            way.open_to = open_to(facts_.survey(), ranked.path, settings_.pests);
            way.parts = parts_of(ranked.path.gaps);
            way.way = std::move(ranked);
            audit_.findings.push_back(finding(way));
            audit_.ways.push_back(std::move(way));
        }
    }

    [[nodiscard]] Finding finding(const WayIn& way) const {
        const Survey& survey = facts_.survey();
        const EntryPath& path = way.way.path;
        Finding found;
        found.rule = way_in;
        found.key = std::string(way_in);
        std::vector<Message> gaps, animals;
        for (const GapIndex gap : path.gaps) {
            found.key += "/" + survey[gap].id;
            gaps.push_back(survey[gap].called());
        }
        for (const std::size_t pest : way.open_to) animals.push_back(as_named(settings_.pests[pest].name));
        const Gap& pinch = survey[way.way.pinch_gap];
        found.title = message("Way in: {} to {}, {}",
                              {survey[path.from()].called(), survey[path.to()].called(), width_message(way.way.pinch)});
        std::vector<Message> said{message("Through {}.", {joined_message(gaps, "; ")}),
                                  message("The smallest gap on it is {}, {}.", {pinch.called(), width_message(way.way.pinch)})};
        if (!animals.empty()) said.push_back(message("Open to {}.", {listed_message(animals)}));
        if (way.way.maybe) said.push_back("Only if some width is off as far as it may be.");
        said.push_back("To put it right: close one gap of it that may be closed; the plan of the job says which is cheapest.");
        found.text = joined_message(said, " ");
        found.source = "Entry paths of the survey, as trace lists them";
        found.gap = way.way.pinch_gap;
        found.at = pinch.at;
        found.outward = facts_.outward(way.way.pinch_gap);
        found.parts = way.parts;
        return found;
    }

    /// Things that are called the same get a number.
    void number_keys() {
        std::multiset<std::string> seen;
        for (Finding& found : audit_.findings) {
            const std::string key = found.key;
            const std::size_t before = seen.count(key);
            if (before > 0) found.key += " " + std::to_string(before + 1);
            seen.insert(key);
        }
    }

    const AuditFacts& facts_;
    const AuditSettings& settings_;
    const RunContext& context_;
    const Table<Provision>& table_;
    Audit audit_;
};

}  // namespace

const char* verdict_word(Verdict verdict) {
    switch (verdict) {
        case Verdict::pass: return "pass";
        case Verdict::fail: return "fail";
        case Verdict::unknown: return "unknown";
        case Verdict::not_applicable: break;
    }
    return "not-applicable";
}

Audit audit(const Job& job, const GapParts& parts, const AuditSettings& settings, const RunContext& context) {
    context.stage("holding it against the provisions");
    const AuditFacts facts(job, parts);
    return Auditor(facts, settings, context).run();
}

}  // namespace seamward
