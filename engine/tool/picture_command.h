// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "job_file/job.h"
#include "paths/trace.h"

namespace seamward {

/// `seamward picture` as it was asked for.
struct PictureCommand {
    std::string job, file;
    std::vector<std::string> pests, to;
    std::size_t way = 1;
    std::string gap;  ///< empty: all of the house
    int width = 1600, height = 1100;
    bool without_words = false;
};

/// All that a picture of a job shows. What draws it is the viewer's; the engine draws nothing.
struct PictureContent {
    Job job;
    std::string heading;
    std::vector<RankedPath> ways;            ///< all of them, best first, 100 at most
    std::vector<std::vector<Point>> routes;  ///< one for each way, through the house's air; empty for those that are not drawn
    bool more_ways = false;                  ///< there are more than these
    std::string animals;                     ///< "house mouse or bat": whose ways they are; empty: everyone's
    std::optional<GapIndex> closeup;
};

/// Reads, builds and traces. Throws BadInput, also for a job without a described house, and WrongUsage.
[[nodiscard]] PictureContent picture_content(const PictureCommand& command, const RunContext& context);

/// "1600x1100" as width and height. Throws WrongUsage.
void parse_picture_size(const std::string& text, PictureCommand& command);

/// `seamward export`: writes the solids of a job's house as GLB or OBJ, by the file's ending.
void export_house(const std::string& job, const std::string& file, const RunContext& context);

}  // namespace seamward
