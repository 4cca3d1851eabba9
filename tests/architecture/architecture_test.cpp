// SPDX-License-Identifier: GPL-3.0-or-later
// The folder listing is the architecture: a file includes only its own folder and folders above it in the listing.
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

namespace {

namespace fs = std::filesystem;

const fs::path source_folder = SEAMWARD_SOURCE_FOLDER;

struct SourceFile {
    fs::path path;  ///< from the top folder
    std::vector<std::string> lines;
};

std::vector<SourceFile> sources_under(const std::string& folder) {
    std::vector<SourceFile> files;
    for (const fs::directory_entry& entry : fs::recursive_directory_iterator(source_folder / folder)) {
        const std::string extension = entry.path().extension().string();
        if (extension != ".cpp" && extension != ".h") continue;
        SourceFile file{fs::relative(entry.path(), source_folder), {}};
        std::ifstream in(entry.path());
        for (std::string line; std::getline(in, line);) file.lines.push_back(line);
        files.push_back(std::move(file));
    }
    std::sort(files.begin(), files.end(), [](const SourceFile& a, const SourceFile& b) { return a.path < b.path; });
    return files;
}

/// What the file includes, as written between the quotes or brackets.
std::vector<std::string> includes_of(const SourceFile& file) {
    static const std::regex pattern(R"(^\s*#\s*include\s*[<"]([^>"]+)[>"])");
    std::vector<std::string> names;
    for (const std::string& line : file.lines) {
        std::smatch match;
        if (std::regex_search(line, match, pattern)) names.push_back(match[1]);
    }
    return names;
}

std::set<std::string> folders_of(const std::string& top) {
    std::set<std::string> names;
    for (const fs::directory_entry& entry : fs::directory_iterator(source_folder / top)) {
        if (entry.is_directory()) names.insert(entry.path().filename().string());
    }
    return names;
}

std::string folder_of(const SourceFile& file) { return (++file.path.begin())->string(); }

void expect_one_direction(const std::string& top) {
    const std::set<std::string> folders = folders_of(top);
    const std::vector<SourceFile> files = sources_under(top);
    ASSERT_FALSE(files.empty());
    for (const SourceFile& file : files) {
        for (const std::string& name : includes_of(file)) {
            const std::string folder = name.substr(0, name.find('/'));
            if (name.find('/') == std::string::npos || !folders.contains(folder)) continue;
            EXPECT_LE(folder, folder_of(file)) << file.path << " includes " << name;
        }
    }
}

TEST(Architecture, EngineFoldersIncludeOnlyFoldersAboveThem) { expect_one_direction("engine"); }

TEST(Architecture, ViewerFoldersIncludeOnlyFoldersAboveThem) {
    ASSERT_FALSE(folders_of("viewer").empty());
    expect_one_direction("viewer");
}

/// Each library of others has one owner.
TEST(Architecture, ThirdPartyHeadersStayWithTheirOwners) {
    const std::vector<std::pair<std::regex, std::string>> owners{{std::regex("^yaml\\.h$"), "base"},
                                                                 {std::regex("^rapidjson/"), "base"},
                                                                 {std::regex("^CLI/"), "tool"},
                                                                 {std::regex("^CGAL/"), "geometry"},
                                                                 {std::regex("^Eigen/"), "plan"},
                                                                 {std::regex("^(nettle/|(sqlite3|mpi)\\.h$)"), "sweep"},
                                                                 {std::regex("^(pugixml\\.hpp|zip\\.h|uuid/)"), "provisions"},
                                                                 {std::regex("^(vtk|Q[A-Z]|boost/|lemon/)"), "nobody"}};
    for (const SourceFile& file : sources_under("engine")) {
        for (const std::string& name : includes_of(file)) {
            for (const auto& [pattern, owner] : owners) {
                EXPECT_TRUE(!std::regex_search(name, pattern) || folder_of(file) == owner) << file.path << " includes " << name;
            }
        }
    }
}

/// What imports files of strangers is linked into the program that locks itself in, and nowhere else.
TEST(Architecture, ImportersStayWithTheProgramThatReads) {
    const std::regex importers("^(assimp/|ifcpp/|carve/|seccomp\\.h$)");
    for (const char* top : {"engine", "viewer"}) {
        for (const SourceFile& file : sources_under(top)) {
            for (const std::string& name : includes_of(file)) {
                EXPECT_TRUE(!std::regex_search(name, importers) || file.path.parent_path() == "engine/exchange/reader")
                    << file.path << " includes " << name;
            }
        }
    }
}

/// Public headers show only our own plain types: a third-party include stands in a .cpp file.
TEST(Architecture, EngineHeadersIncludeOnlyOursAndTheStandardLibrary) {
    const std::set<std::string> folders = folders_of("engine");
    for (const SourceFile& file : sources_under("engine")) {
        if (file.path.extension() != ".h") continue;
        for (const std::string& name : includes_of(file)) {
            const bool ours = folders.contains(name.substr(0, name.find('/'))) && name.find('/') != std::string::npos;
            const bool standard = name.find('.') == std::string::npos && name.find('/') == std::string::npos;
            EXPECT_TRUE(ours || standard) << file.path << " includes " << name;
        }
    }
}

TEST(Architecture, FilesAreShortAndNameTheirLicense) {
    for (const char* top : {"engine", "viewer", "tests"}) {
        for (const SourceFile& file : sources_under(top)) {
            EXPECT_LE(file.lines.size(), 600U) << file.path;
            ASSERT_FALSE(file.lines.empty()) << file.path;
            EXPECT_EQ(file.lines.front(), "// SPDX-License-Identifier: GPL-3.0-or-later") << file.path;
        }
    }
}

TEST(Architecture, HeadersAreIncludedOnce) {
    for (const char* top : {"engine", "viewer", "tests"}) {
        for (const SourceFile& file : sources_under(top)) {
            if (file.path.extension() != ".h") continue;
            EXPECT_TRUE(std::find(file.lines.begin(), file.lines.end(), "#pragma once") != file.lines.end()) << file.path;
        }
    }
}

/// Types of one name in different files would be mixed up where they are linked together, without a word of the linker.
TEST(Architecture, EveryNameOfATypeIsTakenOnce) {
    static const std::regex type(R"(^(?:struct|class|enum class) (\w+)(?: final)?(?: : [^;]*)? \{)");
    for (const char* top : {"engine", "viewer"}) {
        std::map<std::string, std::string> taken;
        for (const SourceFile& file : sources_under(top)) {
            bool unnamed = false;
            std::string space;
            for (const std::string& line : file.lines) {
                if (line == "namespace {") unnamed = true;
                if (line == "}  // namespace") unnamed = false;
                if (line.starts_with("namespace ") && line != "namespace {") space = line;
                std::smatch match;
                if (unnamed || !std::regex_search(line, match, type)) continue;
                const auto [known, fresh] = taken.emplace(space + match[1].str(), file.path.string());
                EXPECT_TRUE(fresh) << match[1] << " is in " << known->second << " and in " << file.path.string();
            }
        }
        EXPECT_GT(taken.size(), 50U) << top;
    }
}

}  // namespace
