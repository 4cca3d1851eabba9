// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <vector>

#include "job_file/job.h"

namespace seamward::test {

/// The shipped scenarios that have a described house, by name.
inline std::vector<std::string> described_jobs() {
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(SEAMWARD_SOURCE_FOLDER "/scenarios")) {
        std::ifstream in(entry.path());
        const std::string text{std::istreambuf_iterator<char>(in), {}};
        if (entry.path().extension() == ".yaml" && text.find("\nhouse:") != std::string::npos)
            names.push_back(entry.path().stem());
    }
    std::sort(names.begin(), names.end());
    return names;
}

inline Job described_job(const std::string& name, Make make) {
    return read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/" + name + ".yaml", RunContext(), make);
}

/// A name that GoogleTest takes.
inline std::string name_of(const testing::TestParamInfo<std::string>& shipped) {
    std::string name = shipped.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

}  // namespace seamward::test
