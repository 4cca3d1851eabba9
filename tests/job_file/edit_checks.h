// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <sstream>

#include "base/file_io.h"
#include "job_file/job.h"
#include "job_file/job_edits.h"

namespace seamward::test {

inline std::string text_of(const std::filesystem::path& path) { return read_file(path, path.string(), 1 << 24); }

inline Job job_of(const std::string& text, const std::filesystem::path& path) { return parse_job(text, path); }

/// The comments of a text in order, one a line.
inline std::string comments(const std::string& text) {
    std::istringstream lines(text);
    std::string all;
    for (std::string line; std::getline(lines, line);) {
        if (!line.empty() && line.back() == '\r') line.pop_back();
        const std::size_t at = line.find("# ");
        if (at != std::string::npos) all += line.substr(at) + '\n';
    }
    return all;
}

inline ChangeGap width_of(const std::string& id, const std::string& word, const std::string& width) {
    ChangeGap edit{.id = id};
    edit.shape = ShapeText{word, width, std::nullopt};
    return edit;
}

inline Gap& gap_of(Job& job, const std::string& id) {
    for (Gap& gap : job.survey.gaps) {
        if (gap.id == id) return gap;
    }
    throw std::runtime_error("no gap " + id);
}

/// What an edit that was made leaves behind, whatever it was.
inline void check_change(const std::string& before, const Edited& after) {
    EXPECT_EQ(changed(before, after.change), after.text);
    EXPECT_EQ(changed(after.text, after.change.inverse()), before);
}

}  // namespace seamward::test
