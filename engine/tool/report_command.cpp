// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/report_command.h"

#include <array>
#include <filesystem>

#include "base/document.h"
#include "base/file_io.h"
#include "base/nearest_word.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "job_file/model_house.h"
#include "report/report_file.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr std::array audiences{Audience::homeowner, Audience::crew, Audience::builder, Audience::diy, Audience::survey};

/// The position of a word; wrong usage where it is none of them.
template <std::size_t count>
std::size_t one_of(const char* option, const std::string& word, const std::array<std::string_view, count>& words) {
    for (std::size_t i = 0; i < count; ++i) {
        if (words[i] == word) return i;
    }
    throw WrongUsage(std::string(option) + ": unknown word " + in_quotes(word) + "; " + suggestion(word, words));
}

ReportSettings report_settings(const ReportRequest& request, const Job& job) {
    ReportSettings settings;
    std::array<std::string_view, audiences.size()> names{};
    for (std::size_t i = 0; i < names.size(); ++i) names[i] = audience_id(audiences[i]);
    settings.audience = audiences[one_of("--for", request.audience, names)];
    settings.language = static_cast<Language>(one_of<2>("--lang", request.language, {"en", "es"}));
    settings.lengths = static_cast<Lengths>(one_of<2>("--lengths", request.lengths, {"in", "mm"}));
    settings.paper = static_cast<Paper>(one_of<2>("--paper", request.paper, {"letter", "a4"}));
    settings.planning = settings_of_any_job(request, job);
    settings.invented_prices = !request.prices;
    return settings;
}

/// With the solids of its house or model. Of a model too large for a page they are left out, which is told.
Job read_with_house(const std::string& file, const Console& console, const RunContext& context) {
    Job job = read_job(file, context, Make::solids);
    if (!job.model) return job;
    read_model_house(job, context);
    if (const std::optional<std::size_t> triangles = drop_heavy_solids(job)) {
        console.err << "seamward: the model has " << *triangles
                    << " triangles, more than a page can carry: the report has no drawings\n";
    }
    return job;
}

}  // namespace

void run_report(const ReportRequest& request, const Console& console, const RunContext& context) {
    const std::filesystem::path path = request.file;
    const std::optional<ReportKind> kind = report_kind(path);
    if (!kind) throw WrongUsage("-o: " + in_quotes(request.file) + " does not end in .html or .pdf or .csv or .xlsx");
    const Job job = read_with_house(request.job, console, context);
    ReportOrder order{.kind = *kind,
                      .heading = printable(heading(job, request.job)),
                      .settings = report_settings(request, job),
                      .job_path = request.job};
    if (*kind == ReportKind::csv)
        order.table = static_cast<ReportTable>(one_of<3>("--table", request.table, {"gaps", "closings", "materials"}));
    std::optional<Job> before;
    if (request.before) order.before = &before.emplace(read_job(*request.before, context));
    if (order.settings.audience == Audience::survey) order.job_text = read_file(request.job, request.job, Document::most_bytes);
    const MadeReport made = make_report(job, order, context);
    for (const GapIndex gap : made.unreadable)
        console.err << "seamward: left out, for it cannot be shown as a photo: " << printable(job.survey[gap].photo) << '\n';
    write_whole_file(path, request.file, made.bytes);
    console.out << request.file << '\n';
}

}  // namespace seamward
