// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/report_command.h"

#include <algorithm>
#include <array>
#include <filesystem>

#include "base/document.h"
#include "base/file_io.h"
#include "base/nearest_word.h"
#include "base/phrases.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "job_file/job_json.h"
#include "job_file/model_house.h"
#include "report/pdf.h"
#include "report/photos.h"
#include "report/report_page.h"
#include "report/tables.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

const std::array<std::string, 4> endings{".html", ".pdf", ".csv", ".xlsx"};
constexpr std::size_t most_triangles = 400'000;  ///< of a model: a phone draws no more
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
    std::size_t triangles = 0;
    for (const Part& part : job.house.parts) triangles += part.mesh.triangles.size();
    if (triangles > most_triangles) {
        console.err << "seamward: the model has " << triangles
                    << " triangles, more than a page can carry: the report has no drawings\n";
        job.house.parts.clear();
    }
    return job;
}

DataTable table_of(const ReportFacts& facts, const std::string& word, const Translator& say) {
    constexpr std::array<std::string_view, 3> words{"gaps", "closings", "materials"};
    switch (one_of("--table", word, words)) {
        case 0: return gaps_table(facts, say);
        case 1: return closings_table(facts, say);
        default: return materials_table(facts, say);
    }
}

/// The bytes of the file.
std::string written(const ReportFacts& facts, const std::string& ending, const std::string& table, const RunContext& context) {
    const Translator say(facts.settings.language);
    if (ending == ".csv") return csv_text(table_of(facts, table, say), say);
    if (ending == ".xlsx")
        return xlsx_bytes({closings_table(facts, say), materials_table(facts, say), gaps_table(facts, say)}, facts, say);
    const std::string page = report_page(facts);
    return ending == ".pdf" ? printed_page(page, context) : page;
}

}  // namespace

void run_report(const ReportRequest& request, const Console& console, const RunContext& context) {
    const std::filesystem::path path = request.file;
    const std::string ending = path.extension().string();
    if (std::find(endings.begin(), endings.end(), ending) == endings.end())
        throw WrongUsage("-o: " + in_quotes(request.file) + " does not end in " +
                         joined({endings.begin(), endings.end()}, " or "));
    const Job job = read_with_house(request.job, console, context);
    ReportSettings settings = report_settings(request, job);
    settings.printed = ending == ".pdf";
    ReportFacts facts = gather_facts(job, printable(heading(job, request.job)), settings, context);
    std::optional<Job> before;
    if (request.before) facts.before = &before.emplace(read_job(*request.before, context));
    if (settings.audience == Audience::survey)
        facts.job_file = {std::filesystem::path(request.job).stem().string(),
                          job_as_json(read_file(request.job, request.job, Document::most_bytes), request.job)};
    facts.photos = read_photos(job, std::filesystem::path(request.job).parent_path(), context);
    for (const GapIndex gap : facts.photos.unreadable)
        console.err << "seamward: left out, for it cannot be shown as a photo: " << printable(job.survey[gap].photo) << '\n';
    write_whole_file(path, request.file, written(facts, ending, request.table, context));
    console.out << request.file << '\n';
}

}  // namespace seamward
