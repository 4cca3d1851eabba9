// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/sweep/sweep_results.h"

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <stdexcept>

#include "sweep/make_lots.h"

namespace seamward::test {

namespace {

/// One field; `at` then stands at what ends it.
std::string take_field(const std::string& text, std::size_t& at) {
    std::string field;
    if (at >= text.size() || text[at] != '"') {
        while (at < text.size() && text[at] != ',' && text[at] != '\r') {
            if (text[at] == '"' || text[at] == '\n') throw std::runtime_error("a quote or line end in a bare field");
            field += text[at++];
        }
        return field;
    }
    for (++at;; ++at) {
        if (at >= text.size()) throw std::runtime_error("a quoted field does not end");
        if (text[at] == '"' && (at + 1 >= text.size() || text[at + 1] != '"')) break;
        if (text[at] == '"') ++at;
        field += text[at];
    }
    ++at;
    return field;
}

std::vector<std::string> take_line(const std::string& text, std::size_t& at) {
    std::vector<std::string> fields;
    while (true) {
        fields.push_back(take_field(text, at));
        if (text.compare(at, 2, "\r\n") == 0) {
            at += 2;
            return fields;
        }
        if (at >= text.size() || text[at] != ',') throw std::runtime_error("a field is followed by neither comma nor CR LF");
        ++at;
    }
}

}  // namespace

std::vector<CsvRow> read_csv(const std::string& text) {
    std::size_t at = 0;
    const std::vector<std::string> heads = take_line(text, at);
    std::vector<CsvRow> rows;
    while (at < text.size()) {
        const std::vector<std::string> fields = take_line(text, at);
        if (fields.size() != heads.size()) throw std::runtime_error("a row has another length than the heads");
        CsvRow& row = rows.emplace_back();
        for (std::size_t i = 0; i < heads.size(); ++i) row[heads[i]] = fields[i];
    }
    return rows;
}

std::vector<CsvRow> read_csv_file(const std::filesystem::path& file) {
    return read_csv(read_file(file, file.string(), 1U << 30));
}

std::vector<std::vector<std::string>> query(const std::filesystem::path& database, const std::string& sql) {
    sqlite3* open = nullptr;
    std::vector<std::vector<std::string>> rows;
    const auto take = [](void* all, int count, char** values, char**) {
        auto& row = static_cast<std::vector<std::vector<std::string>>*>(all)->emplace_back();
        for (int i = 0; i < count; ++i) row.emplace_back(values[i] != nullptr ? values[i] : "");
        return 0;
    };
    char* fault = nullptr;
    bool well = sqlite3_open(database.c_str(), &open) == SQLITE_OK;
    sqlite3_busy_timeout(open, 20'000);  // a sweep may be at work
    well = well && sqlite3_exec(open, sql.c_str(), take, &rows, &fault) == SQLITE_OK;
    EXPECT_TRUE(well) << (fault != nullptr ? fault : "cannot be opened");
    sqlite3_free(fault);
    sqlite3_close(open);
    return rows;
}

std::string tables_of(const std::filesystem::path& folder) {
    std::string all;
    for (const char* name : {"lots.csv", "details.csv", "costs.csv"}) all += read_file(folder / name, name, 1U << 30) + '\f';
    return all;
}

Subdivision::Subdivision(std::uint32_t count, std::uint64_t seed, std::uint32_t bad) {
    make_lots({count, seed, bad}, path("lots"), RunContext());
}

Ran Subdivision::run(const std::string& arguments, const std::string& before) const {
    return run_shell("cd " + shell_word(folder_.path().string()) + " && " + before + ' ' + shell_word(SEAMWARD_PROGRAM) + ' ' +
                     arguments);
}

Ran Subdivision::sweep(const std::string& work, const std::string& folder, const std::string& more,
                       const std::string& before) const {
    Ran ran = run("sweep lots --do " + work + " -o " + folder + " --on 2026-06-15 " + more, before);
    EXPECT_EQ(ran.exit_code, 0) << ran.err;
    return ran;
}

}  // namespace seamward::test
