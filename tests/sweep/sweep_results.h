// SPDX-License-Identifier: GPL-3.0-or-later
// Results of a sweep as another program would read them: a reader of CSV and SQLite's own interface, none of ours.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <vector>

#include "tests/support/run_program.h"
#include "tests/support/scratch_folder.h"

namespace seamward::test {

/// A row by the heads of its columns.
using CsvRow = std::map<std::string, std::string>;

/// RFC 4180. Throws std::runtime_error on a row of another length, a stray quote, or a line that does not end in CR LF.
[[nodiscard]] std::vector<CsvRow> read_csv(const std::string& text);
[[nodiscard]] std::vector<CsvRow> read_csv_file(const std::filesystem::path& file);

/// All rows of a query as text, NULL as "".
[[nodiscard]] std::vector<std::vector<std::string>> query(const std::filesystem::path& database, const std::string& sql);

/// lots.csv, details.csv and costs.csv in one text.
[[nodiscard]] std::string tables_of(const std::filesystem::path& folder);

/// A folder with made-up lots in `lots`, where programs are run.
class Subdivision {
public:
    Subdivision(std::uint32_t count, std::uint64_t seed, std::uint32_t bad = 0);

    [[nodiscard]] std::filesystem::path path(const std::string& name) const { return folder_.path() / name; }
    /// Runs `seamward ARGUMENTS` there, after `before`.
    [[nodiscard]] Ran run(const std::string& arguments, const std::string& before = "") const;
    /// Sweeps `lots` into `folder`, and expects that to go well.
    Ran sweep(const std::string& work, const std::string& folder, const std::string& more = "",
              const std::string& before = "") const;

private:
    ScratchFolder folder_;
};

}  // namespace seamward::test
