// SPDX-License-Identifier: GPL-3.0-or-later
#include <gtest/gtest.h>

#include <filesystem>

#include "base/file_io.h"
#include "catalog/shipped.h"

namespace seamward::test {
namespace {

/// The page that error messages send people to lists every animal.
TEST(CatalogPage, ListsEveryPest) {
    const std::filesystem::path path = std::filesystem::path(SEAMWARD_SOURCE_FOLDER) / "docs" / "catalog.md";
    const std::string page = read_file(path, path.string(), 1 << 20);
    for (const Pest& pest : shipped_pests().rows) EXPECT_NE(page.find('`' + pest.id + '`'), std::string::npos) << pest.id;
}

}  // namespace
}  // namespace seamward::test
