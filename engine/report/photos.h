// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward {

/// A photo of the survey as a page shows it: JPEG, turned upright, nothing in it but the picture (no place, no camera, no time).
struct ReportPhoto {
    GapIndex gap;
    std::string jpeg;
    std::size_t width = 0, height = 0;  ///< pixels
};

/// The photos of a survey, and those that cannot be shown.
struct ReportPhotos {
    std::vector<ReportPhoto> shown;  ///< in the order of the gaps
    std::vector<GapIndex> unreadable;

    /// Null: the gap has none that can be shown.
    [[nodiscard]] const ReportPhoto* of(GapIndex gap) const;
};

/// A JPEG or PNG image as a photo of at most `most_pixels` on its longer side. Others, damaged ones and very large ones (beyond
/// 64 MiB or 100 million pixels) are refused: throws BadInput under the name `shown_as`.
[[nodiscard]] ReportPhoto scaled_photo(const std::filesystem::path& file, const std::string& shown_as, std::size_t most_pixels);

/// All photos that gaps of the job name, from `folder`, where the job file stands.
[[nodiscard]] ReportPhotos read_photos(const Job& job, const std::filesystem::path& folder, const RunContext& context);

}  // namespace seamward
