// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/picture_command.h"

#include <array>

#include "base/quantity.h"
#include "base/text.h"
#include "exchange/gltf.h"
#include "exchange/obj.h"
#include "exchange/write_whole_file.h"
#include "house/route.h"
#include "job_file/model_house.h"
#include "tool/find_ids.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr std::size_t drawn_ways = 6;      ///< the best, and the one shown: only they need a line
constexpr std::size_t furthest_way = 100;  ///< that can be shown, and so far ways are counted

/// A job with its house; with what its model has where it is drawn on one.
Job read_with_solids(const std::string& path, const RunContext& context) {
    Job job = read_job(path, context, Make::solids);
    if (job.model) read_model_house(job, context);
    if (job.house.parts.empty())
        throw BadInput({{.file = path,
                         .what = "the job has no described house, so there is nothing to draw",
                         .mend = "add house: and the file that describes it; seamward trace works without"}});
    return job;
}

std::optional<GapIndex> find_gap(const Job& job, const std::string& id) {
    if (id.empty()) return std::nullopt;
    std::vector<std::string_view> known;
    if (job.model) throw WrongUsage("--gap: gaps are shown from close by in described houses, not in a model");
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        if (job.survey.gaps[i].id == id) {
            if (job.house.places[i].through.empty())
                throw WrongUsage("--gap: " + in_quotes(id) + " was added by hand: the house has no solids of it to cut open");
            return GapIndex{i};
        }
        known.emplace_back(job.survey.gaps[i].id);
    }
    fail_unknown("--gap", id, known);
}

}  // namespace

void parse_picture_size(const std::string& text, PictureCommand& command) {
    const std::size_t cross = text.find('x');
    const Parsed<std::uint32_t> width = parse_count(text.substr(0, cross));
    const Parsed<std::uint32_t> height = parse_count(cross == std::string::npos ? "" : text.substr(cross + 1));
    if (!width || !height || *width < 640 || *height < 480 || *width > 4096 || *height > 4096)
        throw WrongUsage("--size: " + in_quotes(text) + " is no size between 640x480 and 4096x4096");
    command.width = static_cast<int>(*width);
    command.height = static_cast<int>(*height);
}

PictureContent picture_content(const PictureCommand& command, const RunContext& context) {
    PictureContent content;
    content.job = read_with_solids(command.job, context);
    content.heading = printable(heading(content.job, command.job));
    content.closeup = find_gap(content.job, command.gap);
    if (command.way > furthest_way)
        throw WrongUsage("--way: a picture shows one of the best " + std::to_string(furthest_way) + " ways");
    const TraceSettings settings = trace_settings(content.job, command.pests, command.to, furthest_way + 1);
    for (const Pest& pest : settings.pests) content.animals += (content.animals.empty() ? "" : " or ") + pest.name;
    Trace found = trace(content.job.survey, settings, context);
    content.more_ways = found.paths.size() > furthest_way;
    if (content.more_ways) found.paths.resize(furthest_way);
    if (command.way > std::max<std::size_t>(1, found.paths.size()))
        throw WrongUsage("--way: there are only " + std::to_string(found.paths.size()) + " ways in");
    content.ways = std::move(found.paths);
    content.routes.resize(content.ways.size());
    for (std::size_t i = 0; i < content.ways.size(); ++i) {
        const EntryPath& way = content.ways[i].path;
        if (content.job.model) continue;  // straight lines, from gap to gap
        if (i < drawn_ways || i + 1 == command.way) content.routes[i] = route(content.job.house, way.gaps, way.spaces);
    }
    return content;
}

void export_house(const std::string& job_file, const std::string& file, const RunContext& context) {
    const std::filesystem::path path = file;
    const std::string ending = path.extension().string();
    if (ending != ".glb" && ending != ".obj") throw WrongUsage("-o: " + in_quotes(file) + " ends neither in .glb nor in .obj");
    const Job job = read_with_solids(job_file, context);
    if (job.model)
        throw BadInput({{.file = job_file,
                         .what = "the job has no described house: it is drawn on a 3D file, " + job.model->path.string(),
                         .mend = "use that file"}});
    const std::string name = heading(job, job_file);
    if (ending == ".glb") {
        write_whole_file(path, file, gltf_binary(job.house.parts, job.survey, name));
        return;
    }
    std::filesystem::path colors = path;
    colors.replace_extension(".mtl");
    const std::string mtl = mtl_text(job.house.parts),
                      obj = obj_text(job.house.parts, job.survey, name, colors.filename().string());
    const std::array<WholeFile, 2> both{{{path, file, obj}, {colors, colors.string(), mtl}}};
    write_whole_files(both);
}

}  // namespace seamward
