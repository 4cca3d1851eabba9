// SPDX-License-Identifier: GPL-3.0-or-later
#include <cmath>

#include "base/json_writer.h"
#include "base/measure_text.h"
#include "base/text.h"
#include "provisions/judge.h"
#include "tool/audit_command.h"
#include "tool/trace_command.h"

namespace seamward {

namespace {

const char* unit_word(Unit unit) {
    switch (unit) {
        case Unit::length: return "mm";
        case Unit::area: return "cm2";
        case Unit::share: return "of what is due";
        case Unit::count: return "pieces";
        case Unit::answer: return "yes or no";
        case Unit::air_changes: break;
    }
    return "per hour";
}

class AuditAnswer {
public:
    explicit AuditAnswer(const Audited& audited) : audited_(audited), audit_(audited.audit) {}

    std::string text() {
        json_.begin_object();
        json_.key("rules").begin_array();
        for (const ProvisionResult& result : audit_.results) write(result);
        json_.end_array();
        json_.key("findings").begin_array();
        for (const Finding& finding : audit_.findings) write(finding, audited_.job);
        json_.end_array();
        Trace ways;
        for (const WayIn& way : audit_.ways) ways.paths.push_back(way.way);
        write_paths(audited_.job, ways, json_);
        json_.key("more_paths").value(audit_.more_ways);
        if (audited_.before) write_changes();
        json_.key("caution").value(audit_.caution.english());
        json_.key("notes").begin_array();
        for (const std::string& note : audited_.notes) json_.value(printable(note));
        json_.end_array().end_object();
        return json_.text();
    }

private:
    void write_text(std::string_view key, const std::string& text) { json_.key(key).value(printable(text)); }

    void write_value(std::string_view key, Unit unit, std::optional<double> value) {
        json_.key(key);
        if (!value)
            json_.null();
        else if (unit == Unit::answer)
            json_.value(*value > 0);
        else if (unit == Unit::length)
            json_.value(answer_millimeters(*value));
        else
            json_.value(unit == Unit::area ? std::round(*value * 1e10) / 1e6 : std::round(*value * 1e6) / 1e6);
    }

    void write(const ProvisionResult& result) {
        const Provision& provision = result.provision;
        json_.begin_object();
        write_text("id", provision.id);
        json_.key("result").value(verdict_word(result.verdict));
        write_value("measured", provision.unit, result.measured);
        json_.key("unit").value(unit_word(provision.unit));
        json_.key("limit").begin_object();
        if (provision.unit == Unit::answer) {
            json_.key("is").value(provision.at_least.has_value());
        } else {
            if (provision.at_least) write_value("at_least", provision.unit, provision.at_least);
            if (provision.at_most) write_value("at_most", provision.unit, provision.at_most);
        }
        json_.end_object();
        write_text("source", result.source.english());
        write_text("name", provision.name);
        write_text("document", provision.document);
        write_text("edition", provision.edition);
        write_text("section", provision.section);
        constexpr std::array<const char*, 3> confidences{"high", "medium", "low"};
        json_.key("confidence").value(confidences.at(static_cast<std::size_t>(provision.confidence)));
        if (!result.why.empty()) write_text("why", result.why.english());
        json_.key("checked").begin_array();
        for (const Checked& one : result.checked) write(one, provision.unit);
        json_.end_array().end_object();
    }

    void write(const Checked& one, Unit unit) {
        json_.begin_object();
        write_text("what", one.subject.english());
        json_.key("result").value(verdict_word(one.verdict));
        write_value("measured", unit, one.measured);
        if (one.plus_minus > 0) write_value("plus_minus", unit, one.plus_minus);
        if (!one.remark.empty()) write_text("remark", one.remark.english());
        write_place(one.gap, one.at, one.parts, audited_.job, audit_.parts);
        json_.end_object();
    }

    void write_place(std::optional<GapIndex> gap, const std::optional<Point>& at, const std::vector<std::size_t>& parts,
                     const Job& job, const std::vector<AuditedPart>& known) {
        if (gap) write_text("gap", job.survey[*gap].id);
        if (at) {
            json_.key("at").begin_array();
            for (const double value : {at->x, at->y, at->z}) json_.value(std::round(value * 1e9) / 1e9);
            json_.end_array();
        }
        if (parts.empty()) return;
        json_.key("parts").begin_array();
        for (const std::size_t part : parts) json_.value(printable(known[part].id));
        json_.end_array();
        json_.key("global_ids").begin_array();
        for (const std::size_t part : parts) {
            if (!known[part].global_id.empty()) json_.value(printable(known[part].global_id));
        }
        json_.end_array();
    }

    void write(const Finding& finding, const Job& job) {
        json_.begin_object();
        write_text("rule", finding.rule);
        write_text("key", finding.key);
        write_text("title", finding.title.english());
        write_text("text", finding.text.english());
        write_text("source", finding.source.english());
        write_place(finding.gap, finding.at, finding.parts, job, audit_.parts);
        json_.end_object();
    }

    void write_keys(std::string_view key, const std::vector<std::size_t>& findings, const Audit& of) {
        json_.key(key).begin_array();
        for (const std::size_t i : findings) json_.value(printable(of.findings[i].key));
        json_.end_array();
    }

    void write_changes() {
        const AuditChanges& changes = audited_.changes;
        json_.key("changes").begin_object();
        write_keys("fixed", changes.fixed, *audited_.before);
        write_keys("new", changes.appeared, audit_);
        std::vector<std::size_t> stayed;
        for (const AuditChanges::Pair& pair : changes.unchanged) stayed.push_back(pair.now);
        write_keys("unchanged", stayed, audit_);
        write_keys("no_longer_known", changes.unknown_now, *audited_.before);
        write_keys("not_known_before", changes.unknown_before, audit_);
        json_.end_object();
    }

    const Audited& audited_;
    const Audit& audit_;
    JsonWriter json_;
};

}  // namespace

std::string audit_answer(const Audited& audited) { return AuditAnswer(audited).text(); }

}  // namespace seamward
