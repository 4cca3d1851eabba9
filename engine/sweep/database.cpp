// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/database.h"

#include <sqlite3.h>

#include "base/diagnostics.h"

namespace seamward {

Database::Database(const std::filesystem::path& path) : shown_as_(path.string()) {
    // A path is a path, whatever its letters: "file:" at its beginning is no address.
    const std::string plain = path.is_absolute() ? path.string() : "./" + path.string();
    if (sqlite3_open_v2(plain.c_str(), &handle_, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, nullptr) != SQLITE_OK) {
        const std::string why = handle_ != nullptr ? sqlite3_errmsg(handle_) : "no memory";
        sqlite3_close(handle_);
        throw BadInput({{shown_as_, {}, "cannot be opened (" + why + ')', "check the permissions of its folder"}});
    }
    sqlite3_extended_result_codes(handle_, 1);
    sqlite3_busy_timeout(handle_, 10'000);
}

Database::~Database() { sqlite3_close(handle_); }

void Database::fail() const {
    const int code = sqlite3_errcode(handle_) & 0xff;
    const std::string mend = code == SQLITE_FULL || code == SQLITE_IOERR ? "check the disk"
                             : code == SQLITE_READONLY || code == SQLITE_PERM || code == SQLITE_CANTOPEN
                                 ? "check the permissions of this file and of its folder"
                             : code == SQLITE_BUSY || code == SQLITE_LOCKED
                                 ? "another program holds it; end that first"
                                 : "it is no file of a sweep, or damaged: name another folder, or remove it to begin anew";
    throw BadInput({{shown_as_, {}, std::string("cannot be used (") + sqlite3_errmsg(handle_) + ')', mend}});
}

void Database::run(const std::string& sql) {
    if (sqlite3_exec(handle_, sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail();
}

std::int64_t Database::last_row() const { return sqlite3_last_insert_rowid(handle_); }

Statement::Statement(Database& database, const std::string& sql) : database_(database) {
    if (sqlite3_prepare_v2(database.handle(), sql.c_str(), -1, &statement_, nullptr) != SQLITE_OK) database.fail();
}

Statement::~Statement() { sqlite3_finalize(statement_); }

Statement& Statement::bind(int parameter, std::string_view text) {
    if (sqlite3_bind_text64(statement_, parameter, text.data(), text.size(), SQLITE_TRANSIENT, SQLITE_UTF8) != SQLITE_OK)
        database_.fail();
    return *this;
}

Statement& Statement::bind(int parameter, double number) {
    if (sqlite3_bind_double(statement_, parameter, number) != SQLITE_OK) database_.fail();
    return *this;
}

Statement& Statement::bind(int parameter, std::int64_t number) {
    if (sqlite3_bind_int64(statement_, parameter, number) != SQLITE_OK) database_.fail();
    return *this;
}

Statement& Statement::bind_nothing(int parameter) {
    if (sqlite3_bind_null(statement_, parameter) != SQLITE_OK) database_.fail();
    return *this;
}

bool Statement::step() {
    const int code = sqlite3_step(statement_);
    if (code != SQLITE_ROW && code != SQLITE_DONE) database_.fail();
    return code == SQLITE_ROW;
}

void Statement::run() {
    while (step()) {}
    reset();
}

void Statement::reset() { sqlite3_reset(statement_); }

std::string Statement::text(int column) const {
    const auto* bytes = reinterpret_cast<const char*>(sqlite3_column_text(statement_, column));
    return bytes == nullptr ? std::string()
                            : std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(statement_, column)));
}

double Statement::real(int column) const { return sqlite3_column_double(statement_, column); }

std::int64_t Statement::number(int column) const { return sqlite3_column_int64(statement_, column); }

bool Statement::is_nothing(int column) const { return sqlite3_column_type(statement_, column) == SQLITE_NULL; }

Transaction::~Transaction() {
    if (open_) sqlite3_exec(database_.handle(), "ROLLBACK", nullptr, nullptr, nullptr);
}

void Transaction::commit() {
    database_.run("COMMIT");
    open_ = false;
}

}  // namespace seamward
