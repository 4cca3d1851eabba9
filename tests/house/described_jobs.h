// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <stdexcept>
#include <string>
#include <vector>

#include "house/read_description.h"
#include "job_file/job.h"

namespace seamward::test {

/// The shipped scenarios that have a described house, by name: one for each house.
inline std::vector<std::string> described_jobs() {
    std::map<std::string, std::string> names;  // by the line that names the house
    for (const auto& entry : std::filesystem::directory_iterator(SEAMWARD_SOURCE_FOLDER "/scenarios")) {
        if (entry.path().extension() != ".yaml") continue;
        std::ifstream in(entry.path());
        for (std::string line; std::getline(in, line);) {
            if (!line.starts_with("house:")) continue;
            std::string& name = names[line];
            const std::string stem = entry.path().stem();
            if (name.empty() || stem < name) name = stem;
        }
    }
    std::vector<std::string> sorted;
    for (const auto& [house, name] : names) sorted.push_back(name);
    std::sort(sorted.begin(), sorted.end());
    return sorted;
}

inline Job described_job(const std::string& name, Make make) {
    return read_job(SEAMWARD_SOURCE_FOLDER "/scenarios/" + name + ".yaml", RunContext(), make);
}

/// The house that a scenario names.
inline HouseDescription description_of(const std::string& scenario) {
    const std::string folder = SEAMWARD_SOURCE_FOLDER "/scenarios/";
    std::ifstream in(folder + scenario + ".yaml");
    for (std::string line; std::getline(in, line);) {
        if (line.starts_with("house: ")) return read_house_description(folder + line.substr(7), line.substr(7), RunContext());
    }
    throw std::runtime_error(scenario + " has no house");
}

/// A name that GoogleTest takes.
inline std::string name_of(const testing::TestParamInfo<std::string>& shipped) {
    std::string name = shipped.param;
    std::replace(name.begin(), name.end(), '-', '_');
    return name;
}

}  // namespace seamward::test
