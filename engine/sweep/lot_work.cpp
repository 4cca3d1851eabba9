// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/lot_work.h"

#include <algorithm>
#include <new>
#include <stdexcept>

#include "base/diagnostics.h"
#include "base/file_io.h"
#include "base/text.h"
#include "catalog/shipped_text.h"
#include "sweep/sha256.h"

namespace seamward {

namespace {

constexpr std::size_t most_faults = 20;  ///< of one lot that its row tells

/// In one line. A fault of the lot as a whole names no file by itself.
std::string faults_text(const BadInput& bad, const std::filesystem::path& path) {
    std::string text;
    const std::vector<Diagnostic>& faults = bad.diagnostics();
    for (std::size_t i = 0; i < std::min(faults.size(), most_faults); ++i) {
        Diagnostic fault = faults[i];
        if (fault.file.empty()) fault.file = path.string();
        text += (i > 0 ? " | " : "") + to_text(fault);
    }
    if (faults.size() > most_faults) text += " | and " + std::to_string(faults.size() - most_faults) + " more";
    return printable(text);
}

/// The house or model file as seen from the folder of the lots, so that lots of different folders have the same plan.
std::string plan_of(const Job& job, const LotFiles& files) {
    const std::filesystem::path file = job.model ? job.model->path : job.house_file;
    if (file.empty()) return "";
    // However either is spelled, it is one plan.
    std::error_code error;
    const std::filesystem::path here = std::filesystem::current_path(error);
    const std::filesystem::path whole = (here / file).lexically_normal();
    const std::filesystem::path seen = whole.lexically_relative((here / files.folder).lexically_normal());
    return printable((seen.empty() ? whole : seen).generic_string());
}

/// No more of the house than the work asks for.
Make made_for(LotWork work) { return work == LotWork::audit ? Make::solids : Make::gaps; }

void work_on(const Job& job, const SweepSettings& settings, const RunContext& context, LotRow& row) {
    switch (settings.work) {
        case LotWork::trace: trace_lot(job, settings, context, row); break;
        case LotWork::plan: plan_lot(job, settings, context, row); break;
        case LotWork::audit: audit_lot(job, settings, context, row); break;
    }
}

}  // namespace

std::string settings_digest(const SweepSettings& settings) {
    Sha256 digest;
    digest.add_field(settings.version).add_field(work_word(settings.work));
    for (const Pest& animal : settings.against) digest.add_field(animal.id);
    if (settings.work != LotWork::trace) digest.add_field(date_text(settings.date));
    if (settings.work == LotWork::plan && !settings.prices_file.empty())
        digest.add_field(read_file(settings.prices_file, settings.prices_file, std::uint64_t{1} << 30));
    for (const std::string_view table :
         {shipped_text::pests, shipped_text::gauges, shipped_text::treatments, shipped_text::features, shipped_text::duties,
          shipped_text::meshes, shipped_text::free_areas, shipped_text::joints, shipped_text::measures, shipped_text::provisions,
          shipped_text::prices, shipped_text::removals, shipped_text::site_cautions})
        digest.add_field(table);
    return digest.hex();
}

LotRow do_lot(const LotFiles& files, const std::string& name, const SweepSettings& settings, HouseCache& houses,
              const RunContext& context) {
    LotRow row;
    row.file = name;
    const std::filesystem::path path = files.path_of(name);
    const auto failed = [&](std::string what) {
        row.result = LotResult::error;
        row.error = std::move(what);
        row.cells.clear();
        row.details.clear();
    };
    const auto failed_here = [&](const std::string& what) { failed(printable(path.string() + ": error: " + what)); };
    try {
        const std::string text = read_lot(path, path.string());
        row.digest = sha256_hex(text);
        LotHouses own(houses);
        const Job job = parse_job(text, path, context, made_for(settings.work), {}, &own);
        row.inputs = own.inputs();
        if (job.model) refuse_pipes_and_devices(job.model->path, job.model->path.string());
        if (job.model) row.inputs.push_back({job.model->path.string(), houses.digest(job.model->path)});
        row.lot = job.lot;
        row.name = job.name;
        row.option = job.option;
        row.plan = plan_of(job, files);
        work_on(job, settings, context, row);
    } catch (const Cancelled&) {
        throw;
    } catch (const BadInput& bad) {
        failed(faults_text(bad, path));
    } catch (const std::bad_alloc&) {
        failed_here("the input needs more memory than there is");
    } catch (const std::overflow_error& fault) {
        failed_here(std::string(fault.what()) + "; divide the job, or check its prices and counts");
    } catch (const std::length_error& fault) {
        failed_here(fault.what());
    } catch (const std::exception& fault) {
        failed_here(std::string("fault of the program: ") + fault.what());
    }
    return row;
}

std::vector<Pest> animals_for(const Job& job, const SweepSettings& settings) {
    std::vector<Pest> animals;
    for (const Pest& asked : settings.against) {
        const auto own = std::find_if(job.pests.begin(), job.pests.end(), [&](const Pest& pest) { return pest.id == asked.id; });
        animals.push_back(own != job.pests.end() ? *own : asked);
    }
    return animals;
}

}  // namespace seamward
