// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/find_command.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <string_view>

#include "base/measure_text.h"
#include "base/text.h"
#include "exchange/write_whole_file.h"
#include "job_file/found_survey.h"
#include "job_file/write_job.h"
#include "tool/model_options.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

/// Finds out before the work begins whether the job file can be what was asked for.
void check_output(const FindRequest& request) {
    const fs::path output = request.output;
    const std::string ending = output.extension().string();
    if (ending != ".yaml" && ending != ".yml")
        throw WrongUsage("-o: " + in_quotes(request.output) + " is to be a job file; give it a name that ends in .yaml");
    std::error_code error;
    if (fs::equivalent(output, request.model, error) && !error)
        throw WrongUsage("-o: " + in_quotes(request.output) + " is the model itself; give another name");
    const fs::path folder = output.has_parent_path() ? output.parent_path() : fs::path(".");
    if (!fs::is_directory(folder, error))
        throw BadInput(
            {{request.output, {}, "cannot be written: there is no folder " + in_quotes(folder.string()), "make it first"}});
}

/// A file by the real name of its folder and its own name, which may be that of a link.
fs::path in_real_folder(const std::string& file) {
    const fs::path path = fs::absolute(file);
    return fs::canonical(path.parent_path()) / path.filename();
}

/// The model as the job file names it: from the job file's folder.
ModelReference model_reference(const FindRequest& request, const ReadSettings& settings) {
    const fs::path model = in_real_folder(request.model);
    const std::string file = model.lexically_relative(in_real_folder(request.output).parent_path()).string();
    if (!is_utf8(file) || file != one_line(file))
        throw BadInput({{request.model,
                         {},
                         "a job file cannot hold the name of this file",
                         "rename it, in UTF-8 and in one line, with single spaces"}});
    return {file, model, settings.unit, settings.up};
}

/// A name that was given and stands nowhere would be a room that nothing is said of.
void check_rooms(const FindSettings& settings, const Found& found) {
    std::vector<Diagnostic> faults;
    for (const RoomSeed& room : settings.rooms) {
        const auto same = [&](const FoundSpace& space) { return space.id == room.id; };
        if (room.kind == SpaceKind::outdoors || std::any_of(found.spaces.begin(), found.spaces.end(), same)) continue;
        faults.push_back({"--room " + room.id,
                          {},
                          "no space got this name: the point lies in the same air as another room, or in the open air",
                          "give one name to each space; --widest says which openings join two to one"});
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
}

/// Whether a gap says more than what find writes of it.
bool is_surveyed(const Gap& gap) {
    const Closing& closing = gap.closing;
    return gap.evidence.how != Evidence::How::modeled || (gap.duty != Duty::none && gap.duty != Duty::operable) ||
           !gap.feature.empty() || !gap.note.empty() || !gap.photo.empty() || !gap.substrates.empty() || closing.cost ||
           !closing.never.empty();
}

/// Whether somebody has laid a survey over a job file.
bool has_survey(const Job& job) {
    const bool stated = !job.pests.empty() || !job.closed.empty() || !job.occupied.empty() || !job.sightings.empty() ||
                        !job.checks.empty() || !job.details.empty() || !job.vented.empty() || !job.inputs.empty();
    return stated || !job.notes.empty() || !job.house_file.empty() || std::ranges::any_of(job.survey.gaps, is_surveyed);
}

/// The same of a file that cannot be read as a job, as one with a slip of the pen: by words that find does not write.
bool may_have_survey(const std::string& file) {
    std::ifstream lines(file);
    for (std::string line; std::getline(lines, line);) {
        const std::string_view said = std::string_view(line).substr(0, line.find('#'));
        for (const std::string_view word : {"measured", "assumed", "pests", "closed", "sightings"}) {
            if (said.find(word) != std::string_view::npos) return true;
        }
    }
    return false;
}

/// Refuses to write over a job file with a survey: what is typed in there is nowhere else.
void check_nothing_is_lost(const std::string& output, const RunContext& context) {
    std::error_code error;
    if (output.empty() || !fs::is_regular_file(output, error)) return;
    bool would_be_lost = false;
    try {
        would_be_lost = has_survey(read_job(output, context));
    } catch (const BadInput&) {
        would_be_lost = may_have_survey(output);
    }
    if (would_be_lost)
        throw BadInput(
            {{output, {}, "has a survey in it, which would be lost", "give -o another name, or remove this file first"}});
}

std::vector<std::string> head_of_job(const FindSettings& settings) {
    return {
        "Spaces and gaps that seamward find measured in a 3D file: gaps from " + millimeters_text(settings.smallest) + " to " +
            millimeters_text(settings.widest) + ".",
        "The widths are those of the model; the house has its own. To lay a survey over this file, put the width that",
        "was measured in the place of the modeled one and say so, evidence: {how: measured, plus_minus: 0.2 mm}; and add",
        "what a model does not tell: gaps that are not in it, duty: of drains, weeps and vents, pests:, closed:.",
        "Where parts touch (joint-1 and so on, at the end of the gaps) the model is shut: width 0. Such a joint that stands open",
        "takes its measured width in the same place, and how: measured; trace and plan then count it.",
        "docs/job-file.md has every key. Another run of seamward find with the same -o replaces this file as long as there is no",
        "survey in it."};
}

}  // namespace

void run_find(const FindRequest& request, const Console& console, const RunContext& context) {
    FindOutcome finding;
    finding.settings = find_settings(request);
    const ReadSettings reading = read_settings(request);
    if (!request.output.empty()) check_output(request);
    check_nothing_is_lost(request.output, context);
    {
        Model model = read_model(request.model, request.model, reading, context);
        finding.job.name = one_line(fs::path(request.model).stem().string());
        if (!request.output.empty()) finding.job.model = model_reference(request, reading);
        finding.found = find_gaps(model, finding.settings, context);
        check_rooms(finding.settings, finding.found);
        finding.lost = std::move(model.lost);
        finding.notes = std::move(model.notes);
    }
    finding.notes.insert(finding.notes.end(), finding.found.notes.begin(), finding.found.notes.end());
    finding.job.survey = found_survey(finding.found);
    finding.job.house.places = found_places(finding.found);
    finding.trace = trace(finding.job.survey, {}, context);
    if (!request.output.empty()) {
        const std::string text = job_text(finding.job, head_of_job(finding.settings));
        context.check();
        write_whole_file(request.output, request.output, text);
    }
    if (request.json)
        console.out << find_answer(finding);
    else
        print_find_table(finding, console);
}

}  // namespace seamward
