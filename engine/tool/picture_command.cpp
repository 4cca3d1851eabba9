// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/picture_command.h"

#include "base/quantity.h"
#include "base/text.h"
#include "exchange/gltf.h"
#include "exchange/obj.h"
#include "exchange/write_whole_file.h"
#include "house/route.h"
#include "tool/find_ids.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

constexpr std::size_t ways_in_a_picture = 6, furthest_way = 100;

Job read_with_solids(const std::string& path, const RunContext& context) {
    Job job = read_job(path, context, Make::solids);
    if (job.house.parts.empty())
        throw BadInput({{.file = path,
                         .what = "the job has no described house, so there is nothing to draw",
                         .mend = "add house: and the file that describes it; seamward trace works without"}});
    return job;
}

std::optional<GapIndex> find_gap(const Job& job, const std::string& id) {
    if (id.empty()) return std::nullopt;
    std::vector<std::string_view> known;
    for (std::uint32_t i = 0; i < job.survey.gaps.size(); ++i) {
        if (job.survey.gaps[i].id == id) {
            if (job.house.places[i].through.empty())
                throw WrongUsage("--gap: " + in_quotes(id) + " was added by hand and has no place in the house");
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
    const std::size_t shown = std::max(ways_in_a_picture, command.way);
    const TraceSettings settings = trace_settings(content.job, command.pests, command.to, shown + 1);
    for (const Pest& pest : settings.pests) content.animals += (content.animals.empty() ? "" : " or ") + pest.name;
    Trace found = trace(content.job.survey, settings, context);
    content.more_ways = found.paths.size() > shown;
    if (content.more_ways) found.paths.resize(shown);
    if (command.way > std::max<std::size_t>(1, found.paths.size()))
        throw WrongUsage("--way: there are only " + std::to_string(found.paths.size()) + " ways in");
    content.ways = std::move(found.paths);
    for (const RankedPath& way : content.ways) content.routes.push_back(route(content.job.house, way.path.gaps, way.path.spaces));
    return content;
}

void export_house(const std::string& job_file, const std::string& file, const RunContext& context) {
    const std::filesystem::path path = file;
    const std::string ending = path.extension().string();
    if (ending != ".glb" && ending != ".obj") throw WrongUsage("-o: " + in_quotes(file) + " ends neither in .glb nor in .obj");
    const Job job = read_with_solids(job_file, context);
    const std::string name = heading(job, job_file);
    if (ending == ".glb") {
        write_whole_file(path, file, gltf_binary(job.house.parts, job.survey, name));
        return;
    }
    std::filesystem::path colors = path;
    colors.replace_extension(".mtl");
    std::error_code error;
    const bool colors_were_there = std::filesystem::exists(colors, error);
    write_whole_file(colors, colors.string(), mtl_text(job.house.parts));
    try {
        write_whole_file(path, file, obj_text(job.house.parts, job.survey, name, colors.filename().string()));
    } catch (...) {
        if (!colors_were_there) std::filesystem::remove(colors, error);
        throw;
    }
}

}  // namespace seamward
