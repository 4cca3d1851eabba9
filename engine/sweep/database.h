// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

struct sqlite3;
struct sqlite3_stmt;

namespace seamward {

/// A SQLite file that is open for writing. Faults of it are BadInput, under its path.
class Database {
public:
    explicit Database(const std::filesystem::path& path);
    ~Database();
    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;

    void run(const std::string& sql);
    [[nodiscard]] sqlite3* handle() const { return handle_; }
    [[nodiscard]] std::int64_t last_row() const;
    [[noreturn]] void fail() const;

private:
    std::string shown_as_;
    sqlite3* handle_ = nullptr;
};

/// A statement that is prepared once and run often. Parameters count from 1, columns from 0.
class Statement {
public:
    Statement(Database& database, const std::string& sql);
    ~Statement();
    Statement(const Statement&) = delete;
    Statement& operator=(const Statement&) = delete;

    Statement& bind(int parameter, std::string_view text);
    Statement& bind(int parameter, double number);
    Statement& bind(int parameter, std::int64_t number);
    Statement& bind_nothing(int parameter);
    /// Whether there is another row.
    [[nodiscard]] bool step();
    /// To the end; then ready for other values.
    void run();
    void reset();

    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] double real(int column) const;
    [[nodiscard]] std::int64_t number(int column) const;
    [[nodiscard]] bool is_nothing(int column) const;

private:
    Database& database_;
    sqlite3_stmt* statement_ = nullptr;
};

/// Rolled back unless commit() is called.
class Transaction {
public:
    explicit Transaction(Database& database) : database_(database) { database_.run("BEGIN IMMEDIATE"); }
    ~Transaction();
    Transaction(const Transaction&) = delete;
    Transaction& operator=(const Transaction&) = delete;
    void commit();

private:
    Database& database_;
    bool open_ = true;
};

}  // namespace seamward
