// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/pdf.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "base/diagnostics.h"
#include "tests/support/run_program.h"
#include "tests/support/scratch_folder.h"

namespace seamward {
namespace {

namespace fs = std::filesystem;

void executable(const fs::path& file) { fs::permissions(file, fs::perms::owner_all); }

TEST(Pdf, PrinterIsTheFirstOnThePath) {
    const test::ScratchFolder folder;
    executable(folder.write("b/chromium", "#!/bin/sh\n"));
    executable(folder.write("c/chromium-browser", "#!/bin/sh\n"));
    folder.write("a/chromium", "no program");
    fs::create_directories(folder.path() / "d/chromium");
    const std::string at = folder.path().string();
    EXPECT_EQ(find_printer(at + "/a:" + at + "/d::" + at + "/c:" + at + "/b"), folder.path() / "c/chromium-browser");
    EXPECT_EQ(find_printer(at + "/a:" + at + "/d"), std::nullopt);
    EXPECT_EQ(find_printer(""), std::nullopt);
}

TEST(Pdf, PageIsTaggedAndOfItsOwnSize) {
    const char* path = std::getenv("PATH");
    if (!find_printer(path == nullptr ? "" : path)) GTEST_SKIP() << "there is no Chromium on this machine";
    const std::string pdf = printed_page(
        "<!doctype html><html lang=\"en\"><head><meta charset=\"utf-8\"><title>Two pages</title><style>@page{size:A4}"
        "h2{break-before:page}</style></head><body><h1>One</h1><svg role=\"img\" aria-labelledby=\"t\" viewBox=\"0 0 9 9\" "
        "width=\"90\"><title id=\"t\">North side</title><rect width=\"9\" height=\"4\"/></svg><h2>Two</h2></body></html>",
        RunContext());
    ASSERT_TRUE(pdf.starts_with("%PDF-"));
    EXPECT_NE(pdf.find("/Outlines"), std::string::npos);
    EXPECT_NE(pdf.find("/Alt (North side)"), std::string::npos);
    EXPECT_NE(pdf.find("/Count 2"), std::string::npos);
    EXPECT_NE(pdf.find("/MediaBox [0 0 594.9"),
              std::string::npos);  // points, the width of A4 by ISO 216: 595.28, on whole pixels
}

TEST(Pdf, WithoutAPrinterSaysWhatToDo) {
    const test::ScratchFolder folder;
    const std::string before = std::getenv("PATH") == nullptr ? "" : std::getenv("PATH");
    setenv("PATH", folder.path().c_str(), 1);
    try {
        (void)printed_page("<!doctype html>", RunContext());
        ADD_FAILURE() << "it was printed";
    } catch (const BadInput& bad) {
        EXPECT_NE(bad.diagnostics().front().mend.find("chromium"), std::string::npos);
    }
    executable(folder.write("chromium", "#!/bin/sh\necho broken >&2\nexit 3\n"));
    try {
        (void)printed_page("<!doctype html>", RunContext());
        ADD_FAILURE() << "it was printed";
    } catch (const BadInput& bad) {
        EXPECT_NE(bad.diagnostics().front().what.find("broken"), std::string::npos);
    }
    setenv("PATH", before.c_str(), 1);
}

}  // namespace
}  // namespace seamward
