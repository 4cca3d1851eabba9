// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/pdf.h"

#include <unistd.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>

#include "base/diagnostics.h"
#include "base/file_io.h"
#include "base/text.h"
#include "exchange/child_process.h"
#include "report/own_folder.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

constexpr std::chrono::seconds most_time{60};
constexpr std::size_t most_said = 1 << 16;
constexpr std::uint64_t most_bytes = 1 << 28;

[[noreturn]] void cannot_print(const std::string& what, const std::string& mend) {
    throw BadInput({{.file = "PDF", .what = what, .mend = mend}});
}

ChildTask printing(const fs::path& printer, const fs::path& folder) {
    ChildTask task;
    task.program = printer;
    task.arguments = {"--headless",
                      "--disable-gpu",
                      "--disable-extensions",
                      "--disable-background-networking",
                      "--no-first-run",
                      "--host-resolver-rules=MAP * ~NOTFOUND",
                      "--user-data-dir=" + (folder / "profile").string(),
                      "--no-pdf-header-footer",
                      "--generate-pdf-document-outline",
                      "--print-to-pdf=" + (folder / "page.pdf").string(),
                      (folder / "page.html").string()};
    // Its sandbox refuses to run as root. The page is our own, and its policy lets nothing else run.
    if (geteuid() == 0) task.arguments.insert(task.arguments.begin(), "--no-sandbox");
    task.most_output = most_said;
    task.most_time = most_time;
    return task;
}

}  // namespace

std::optional<fs::path> find_printer(std::string_view path) {
    while (!path.empty()) {
        const std::string_view folder = path.substr(0, path.find(':'));
        path.remove_prefix(std::min(path.size(), folder.size() + 1));
        if (folder.empty()) continue;
        for (const char* name : {"chromium", "chromium-browser"}) {
            fs::path program = fs::path(folder) / name;
            if (access(program.c_str(), X_OK) == 0 && fs::is_regular_file(program)) return program;
        }
    }
    return std::nullopt;
}

std::string printed_page(std::string_view html, const RunContext& context) {
    context.stage("printing");
    const char* path = std::getenv("PATH");
    const std::optional<fs::path> printer = find_printer(path == nullptr ? "" : path);
    if (!printer)
        cannot_print("there is no Chromium on this machine to print with",
                     "install the package chromium, or write an .html file and print that from a browser");
    const OwnFolder folder;
    std::ofstream(folder.path() / "page.html", std::ios::binary) << html;
    const ChildResult result = run_child(printing(*printer, folder.path()), context);
    const fs::path made = folder.path() / "page.pdf";
    if (result.end == ChildEnd::exited && result.code == 0 && fs::exists(made)) {
        std::string bytes = read_file(made, "PDF", most_bytes);
        if (bytes.starts_with("%PDF-")) return bytes;
    }
    cannot_print("Chromium did not print the page" + std::string(result.end == ChildEnd::out_of_time
                                                                     ? " within a minute"
                                                                     : ": " + printable(result.complaints.substr(0, 400))),
                 "write an .html file and print that from a browser");
}

}  // namespace seamward
