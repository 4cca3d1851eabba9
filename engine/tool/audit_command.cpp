// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/audit_command.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <limits>

#include "base/file_io.h"
#include "base/nearest_word.h"
#include "base/text.h"
#include "catalog/shipped.h"
#include "exchange/model_kinds.h"
#include "exchange/write_whole_file.h"
#include "house/route.h"
#include "job_file/found_survey.h"
#include "provisions/bcf.h"
#include "provisions/gap_parts.h"
#include "tool/find_ids.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t most_rule_bytes = 4 << 20;

/// What is held against the provisions.
struct Subject {
    Job job;
    GapParts parts;
    std::vector<std::string> notes;
    AxisBox box{{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity(),
                 std::numeric_limits<double>::infinity()},
                {-std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity(),
                 -std::numeric_limits<double>::infinity()}};

    void grow(const TriangleMesh& mesh) {
        for (const Point& p : mesh.points) {
            box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y), std::min(box.low.z, p.z)};
            box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y), std::max(box.high.z, p.z)};
        }
    }
    [[nodiscard]] std::optional<AxisBox> building() const { return box.low.x <= box.high.x ? std::optional(box) : std::nullopt; }
};

Subject read_found(const std::string& file, const AuditRequest& request, const RunContext& context) {
    Subject out;
    const Model model = read_model(file, file, read_settings(request), context);
    const Found found = find_gaps(model, find_settings(request), context);
    out.job.name = one_line(fs::path(file).stem().string());
    out.job.survey = found_survey(found);
    out.job.house.places = found_places(found);
    out.parts = parts_of_found(found);
    out.notes = model.notes;
    out.notes.insert(out.notes.end(), found.notes.begin(), found.notes.end());
    for (const ModelPart& part : model.parts) out.grow(part.mesh);
    return out;
}

Subject read_surveyed(const std::string& file, const AuditRequest& request, const RunContext& context) {
    if (!request.rooms.empty() || !request.smallest.empty() || !request.widest.empty() || !request.unit.empty() ||
        !request.up.empty())
        throw WrongUsage("--room, --smallest, --widest, --unit and --up are about 3D files, and " + in_quotes(file) +
                         " is a job file");
    Subject out;
    out.job = read_job(file, context, Make::solids);
    if (!out.job.model) {
        out.parts = parts_of_house(out.job);
        for (const Part& part : out.job.house.parts) {
            if (part.layer != Layer::ground && part.layer != Layer::yard) out.grow(part.mesh);
        }
        return out;
    }
    ReadSettings settings;
    settings.unit = out.job.model->unit;
    settings.up = out.job.model->up;
    const Model model = read_model(out.job.model->path, out.job.model->path.string(), settings, context);
    out.parts = parts_near(out.job.survey, model);
    out.notes = model.notes;
    for (const ModelPart& part : model.parts) out.grow(part.mesh);
    return out;
}

Subject read_subject(const std::string& file, const AuditRequest& request, const RunContext& context) {
    return is_model_name(file) ? read_found(file, request, context) : read_surveyed(file, request, context);
}

AuditSettings audit_settings(const AuditRequest& request, const Job& job, const std::string& file) {
    AuditSettings settings;
    settings.heading = printable(heading(job, file));
    settings.date = today();
    if (request.date) {
        const Parsed<Date> date = parse_date(*request.date);
        if (!date) throw WrongUsage("--on: " + date.fault.what + "; " + date.fault.mend);
        settings.date = *date;
    }
    settings.pests = request.pests.empty() ? job.pests : pests_asked_for(job, "--pest", request.pests);
    settings.most_ways = request.top;
    return settings;
}

std::string bcf_text(const Audited& audited, const Subject& subject, const std::string& target, Language language) {
    BcfSettings settings;
    settings.language = language;
    if (!audited.job.surveyor.empty()) settings.author = audited.job.surveyor;
    const fs::path model = audited.job.model ? audited.job.model->path : fs::path(target);
    if (is_model_name(model)) settings.model = model.filename().string();
    settings.building = subject.building();
    for (const Gap& gap : audited.job.survey.gaps) settings.gap_places.push_back(gap.at);
    std::size_t way = 0;
    for (const Finding& finding : audited.audit.findings) {
        BcfSight sight;
        sight.outward = finding.outward;
        if (finding.rule == way_in) {
            const EntryPath& path = audited.audit.ways[way++].way.path;
            if (!audited.job.house.parts.empty()) sight.route = route(audited.job.house, path.gaps, path.spaces);
        }
        settings.sights.push_back(std::move(sight));
    }
    return bcf_bytes(audited.audit, settings);
}

Language language_of(const std::string& word) {
    constexpr std::array<std::string_view, 2> words{"en", "es"};
    const auto* at = std::find(words.begin(), words.end(), word);
    if (at == words.end()) throw WrongUsage("--lang: unknown word " + in_quotes(word) + "; " + suggestion(word, words));
    return static_cast<Language>(at - words.begin());
}

void check_bcf_name(const std::string& file) {
    const std::string ending = fs::path(file).extension().string();
    if (ending != ".bcf" && ending != ".bcfzip")
        throw WrongUsage("--bcf: " + in_quotes(file) + " is to be a BCF file; give it a name that ends in .bcf or .bcfzip");
}

}  // namespace

void run_audit(const AuditRequest& request, const Console& console, const RunContext& context) {
    const Language language = language_of(request.language);
    if (request.bcf) check_bcf_name(*request.bcf);
    std::optional<Table<Provision>> rules;
    if (request.rules)
        rules = read_provisions(read_file(*request.rules, *request.rules, most_rule_bytes), *request.rules, shipped_measures(),
                                shipped_features(), shipped_free_areas());
    Subject subject = read_subject(request.target, request, context);
    AuditSettings settings = audit_settings(request, subject.job, request.target);
    if (rules) settings.rules = &*rules;
    Audited audited;
    audited.audit = audit(subject.job, subject.parts, settings, context);
    if (request.before) {
        const Subject other = read_subject(*request.before, request, context);
        AuditSettings before = audit_settings(request, other.job, *request.before);
        before.rules = settings.rules;
        before.pests = settings.pests;
        audited.before = audit(other.job, other.parts, before, context);
        audited.changes = compare(*audited.before, audited.audit);
    }
    audited.job = std::move(subject.job);
    audited.parts = std::move(subject.parts);
    audited.notes = std::move(subject.notes);
    if (request.bcf) {
        const std::string bytes = bcf_text(audited, subject, request.target, language);
        context.check();
        write_whole_file(*request.bcf, *request.bcf, bytes);
    }
    if (request.json)
        console.out << audit_answer(audited);
    else
        print_audit_table(audited, console);
}

}  // namespace seamward
