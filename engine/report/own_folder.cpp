// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/own_folder.h"

#include <cstdlib>
#include <string>
#include <system_error>

#include "base/diagnostics.h"

namespace seamward {

OwnFolder::OwnFolder() {
    std::error_code unusable;
    const std::filesystem::path parent = std::filesystem::temp_directory_path(unusable);
    std::string made = (parent / "seamward-XXXXXX").string();
    if (unusable || mkdtemp(made.data()) == nullptr)
        throw BadInput({{.file = parent.string(),
                         .what = "no temporary folder can be made there",
                         .mend = "make room, or set TMPDIR to a folder that can be written"}});
    path_ = made;
}

OwnFolder::~OwnFolder() {
    std::error_code ignored;
    std::filesystem::remove_all(path_, ignored);
}

}  // namespace seamward
