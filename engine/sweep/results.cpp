// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/results.h"

#include <fcntl.h>
#include <sys/file.h>
#include <unistd.h>

#include <cerrno>
#include <cstring>
#include <unordered_set>

#include "base/diagnostics.h"
#include "base/text.h"
#include "sweep/byte_strings.h"
#include "sweep/database.h"

namespace seamward {

namespace {

namespace fs = std::filesystem;

constexpr std::int64_t application = 0x5357'4c54;  ///< "SWLT": whose file it is, for `PRAGMA application_id`
constexpr std::int64_t form = 1;                   ///< of the tables, for `PRAGMA user_version`

/// The folder is for one sweep at a time.
class FolderLock {
public:
    explicit FolderLock(const fs::path& folder) {
        std::error_code error;
        fs::create_directories(folder, error);
        const fs::path path = folder / "sweep.lock";
        number_ = open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0666);
        if (number_ < 0) {
            const std::string why = error ? error.message() : std::strerror(errno);
            throw BadInput({{folder.string(), {}, "cannot be written to (" + why + ')', "check the path and its permissions"}});
        }
        if (flock(number_, LOCK_EX | LOCK_NB) == 0) return;
        close(number_);
        throw BadInput({{folder.string(), {}, "another sweep writes to this folder", "wait for it, or name another folder"}});
    }
    ~FolderLock() {
        if (number_ >= 0) close(number_);
    }
    FolderLock(const FolderLock&) = delete;
    FolderLock& operator=(const FolderLock&) = delete;

    /// In a copy of the process. The lock belongs to all copies of the descriptor: it stays until the last one is closed.
    void leave_to_parent() {
        close(number_);
        number_ = -1;
    }

private:
    int number_ = -1;
};

const char* type_of(LotColumn::Holds holds) {
    switch (holds) {
        case LotColumn::Holds::number: return " REAL";
        case LotColumn::Holds::money: return " INTEGER";  // cents
        case LotColumn::Holds::text: break;
    }
    return " TEXT";
}

/// The name of a column in SQL: amounts are in whole cents there.
std::string sql_name(const LotColumn& column) {
    return '"' + std::string(column.name) + (column.holds == LotColumn::Holds::money ? "_cents\"" : "\"");
}

constexpr int common_columns = 10;  ///< of table `lots` before those of the work
const char* const common = "file, lot, name, plan, \"option\", result, error, settings, digest, inputs";

std::string columns_sql(LotWork work, const char* before) {
    std::string text;
    for (const LotColumn& column : columns_of(work)) text += before + sql_name(column);
    return text;
}

std::string inputs_text(const std::vector<LotInput>& inputs) {
    std::string text;
    for (const LotInput& input : inputs) text += input.digest + ' ' + input.path + '\n';
    return text;
}

std::vector<LotInput> inputs_from(const std::string& text) {
    std::vector<LotInput> inputs;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min(text.find('\n', at), text.size()), space = std::min(text.find(' ', at), end);
        inputs.push_back({text.substr(std::min(space + 1, end), end - std::min(space + 1, end)), text.substr(at, space - at)});
        at = end + 1;
    }
    return inputs;
}

LotResult result_from(const std::string& word) {
    for (const LotResult result : {LotResult::open, LotResult::shut, LotResult::no_plan}) {
        if (word == result_word(result)) return result;
    }
    return LotResult::error;
}

void bind_cell(Statement& statement, int parameter, const Cell& cell) {
    if (const auto* text = std::get_if<std::string>(&cell))
        statement.bind(parameter, *text);
    else if (const auto* number = std::get_if<double>(&cell))
        statement.bind(parameter, *number);
    else if (const auto* money = std::get_if<Money>(&cell))
        statement.bind(parameter, money->cents);
    else
        statement.bind_nothing(parameter);
}

Cell cell_from(const Statement& row, int column, LotColumn::Holds holds) {
    if (row.is_nothing(column)) return {};
    switch (holds) {
        case LotColumn::Holds::number: return row.real(column);
        case LotColumn::Holds::money: return Money{row.number(column)};
        case LotColumn::Holds::text: break;
    }
    return row.text(column);
}

}  // namespace

struct SweepResults::Impl {
    Impl(const fs::path& folder, LotWork work_of_it) : lock(folder), work(work_of_it), path(folder / "sweep.sqlite"), data(path) {
        open_tables();
    }

    FolderLock lock;
    LotWork work;
    fs::path path;
    Database data;
    std::unique_ptr<Statement> find, insert, begin, find_detail, add_detail, add_leak;

    std::int64_t pragma(const char* name) {
        Statement one(data, std::string("PRAGMA ") + name);
        return one.step() ? one.number(0) : 0;
    }

    [[noreturn]] void refuse(const std::string& what) {
        throw BadInput({{path.string(), {}, what, "name another folder, or remove this file to begin anew"}});
    }

    void open_tables() {
        const bool fresh = pragma("schema_version") == 0;
        if (!fresh && pragma("application_id") != application) refuse("is no file of a sweep");
        if (!fresh && pragma("user_version") != form) refuse("is of another version of the program");
        data.run("PRAGMA journal_mode=WAL; PRAGMA synchronous=NORMAL");
        if (fresh) make_tables();
        Statement held(data, "SELECT value FROM about WHERE key = 'work'");
        const std::string word = held.step() ? held.text(0) : "";
        if (word != work_word(work)) refuse("holds a sweep of " + in_quotes(word) + ", not of " + work_word(work));
        prepare();
    }

    void make_tables() {
        std::string columns;
        for (const LotColumn& column : columns_of(work)) columns += ", " + sql_name(column) + type_of(column.holds);
        Transaction all(data);
        data.run("PRAGMA application_id=" + std::to_string(application) + "; PRAGMA user_version=" + std::to_string(form));
        data.run("CREATE TABLE about(key TEXT PRIMARY KEY, value TEXT NOT NULL)");
        data.run(
            "CREATE TABLE lots(id INTEGER PRIMARY KEY, file TEXT NOT NULL UNIQUE, lot TEXT, name TEXT, plan TEXT, \"option\" "
            "TEXT, "
            "result TEXT NOT NULL, error TEXT, settings TEXT NOT NULL, digest TEXT NOT NULL, inputs TEXT NOT NULL" +
            columns + ", died INTEGER NOT NULL)");
        data.run(
            "CREATE TABLE details(id INTEGER PRIMARY KEY, plan TEXT NOT NULL, detail TEXT NOT NULL, name TEXT NOT NULL, "
            "feature TEXT NOT NULL, UNIQUE(plan, detail, name, feature))");
        data.run(
            "CREATE TABLE leaks(lot INTEGER NOT NULL REFERENCES lots(id) ON DELETE CASCADE, detail INTEGER NOT NULL "
            "REFERENCES details(id), stays_open INTEGER NOT NULL, width_mm REAL NOT NULL, cost_cents INTEGER, PRIMARY KEY(lot, "
            "detail)) WITHOUT ROWID");
        data.run("CREATE TABLE begun(file TEXT PRIMARY KEY)");
        data.run(std::string("INSERT INTO about VALUES('work', '") + work_word(work) + "')");
        all.commit();
    }

    void prepare() {
        data.run("PRAGMA foreign_keys=ON");
        const std::size_t count = common_columns + columns_of(work).size() + 1;
        std::string values = "?";
        for (std::size_t i = 1; i < count; ++i) values += ",?";
        find = std::make_unique<Statement>(data, "SELECT settings, digest, inputs, result, died FROM lots WHERE file = ?");
        insert = std::make_unique<Statement>(data, std::string("INSERT OR REPLACE INTO lots(") + common +
                                                       columns_sql(work, ", ") + ", died) VALUES(" + values + ")");
        begin = std::make_unique<Statement>(data, "INSERT OR IGNORE INTO begun VALUES(?)");
        find_detail = std::make_unique<Statement>(
            data, "SELECT id FROM details WHERE plan = ? AND detail = ? AND name = ? AND feature = ?");
        add_detail = std::make_unique<Statement>(data, "INSERT INTO details(plan, detail, name, feature) VALUES(?, ?, ?, ?)");
        add_leak = std::make_unique<Statement>(data, "INSERT OR REPLACE INTO leaks VALUES(?, ?, ?, ?, ?)");
    }

    std::int64_t detail_row(const LotRow& row, const LeakingDetail& detail) {
        for (Statement* one : {find_detail.get(), add_detail.get()})
            one->bind(1, row.plan).bind(2, detail.id).bind(3, detail.name).bind(4, detail.feature);
        const bool there = find_detail->step();
        const std::int64_t id = there ? find_detail->number(0) : 0;
        find_detail->reset();
        if (there) return id;
        add_detail->run();
        return data.last_row();
    }

    void put(const LotRow& row, const std::string& settings, bool died) {
        int at = 0;
        for (const std::string* text : {&row.file, &row.lot, &row.name, &row.plan, &row.option}) insert->bind(++at, *text);
        for (const std::string& text :
             {std::string(result_word(row.result)), row.error, settings, row.digest, inputs_text(row.inputs)})
            insert->bind(++at, text);
        for (std::size_t i = 0; i < columns_of(work).size(); ++i)
            bind_cell(*insert, ++at, i < row.cells.size() ? row.cells[i] : Cell());
        insert->bind(++at, std::int64_t{died});
        insert->run();
        const std::int64_t lot = data.last_row();
        for (const LeakingDetail& detail : row.details) {
            add_leak->bind(1, lot).bind(2, detail_row(row, detail)).bind(3, std::int64_t{detail.stays}).bind(4, detail.width);
            if (detail.cost)
                add_leak->bind(5, detail.cost->cents);
            else
                add_leak->bind_nothing(5);
            add_leak->run();
        }
    }
};

SweepResults::SweepResults(const fs::path& folder, LotWork work) : impl_(std::make_unique<Impl>(folder, work)) {}

SweepResults::~SweepResults() = default;

void SweepResults::leave_to_parent() { impl_->lock.leave_to_parent(); }

std::string SweepResults::day(const std::string& asked_for, const std::string& today) {
    if (asked_for.empty()) {
        Statement held(impl_->data, "SELECT value FROM about WHERE key = 'day'");
        if (held.step()) return held.text(0);
    }
    const std::string& day = asked_for.empty() ? today : asked_for;
    Statement(impl_->data, "INSERT OR REPLACE INTO about VALUES('day', ?)").bind(1, day).run();
    return day;
}

std::optional<KnownRow> SweepResults::known(const std::string& file) {
    Statement& find = *impl_->find;
    find.bind(1, file);
    std::optional<KnownRow> row;
    if (find.step())
        row = KnownRow{find.text(0), find.text(1), inputs_from(find.text(2)), result_from(find.text(3)), find.number(4) != 0};
    find.reset();
    return row;
}

void SweepResults::begin(const std::vector<std::string>& files) {
    Transaction all(impl_->data);
    for (const std::string& file : files) impl_->begin->bind(1, file).run();
    all.commit();
}

std::vector<std::string> SweepResults::begun() {
    std::vector<std::string> files;
    Statement all(impl_->data, "SELECT file FROM begun ORDER BY file");
    while (all.step()) files.push_back(all.text(0));
    return files;
}

void SweepResults::forget_begun() { impl_->data.run("DELETE FROM begun"); }

void SweepResults::put(std::span<const LotRow> rows, const std::string& settings, bool died) {
    Transaction all(impl_->data);
    Statement done(impl_->data, "DELETE FROM begun WHERE file = ?");
    for (const LotRow& row : rows) {
        impl_->put(row, settings, died);
        done.bind(1, row.file).run();
    }
    all.commit();
}

void SweepResults::keep_only(std::span<const std::string> files) {
    const std::unordered_set<std::string_view> kept(files.begin(), files.end());
    std::vector<std::string> gone;
    {
        Statement all(impl_->data, "SELECT file FROM lots");
        while (all.step()) {
            if (std::string file = all.text(0); !kept.contains(file)) gone.push_back(std::move(file));
        }
    }
    Transaction change(impl_->data);
    Statement remove(impl_->data, "DELETE FROM lots WHERE file = ?");
    for (const std::string& file : gone) remove.bind(1, file).run();
    impl_->data.run("DELETE FROM begun; DELETE FROM details WHERE id NOT IN (SELECT detail FROM leaks)");
    change.commit();
}

void SweepResults::each_row(std::span<const std::string> files, const std::function<void(const LotRow&)>& visit) {
    Statement find(impl_->data, std::string("SELECT ") + common + columns_sql(impl_->work, ", ") + " FROM lots WHERE file = ?");
    for (const std::string& file : files) {
        find.bind(1, file);
        if (find.step()) {
            LotRow row;
            int at = 0;
            for (std::string* text : {&row.file, &row.lot, &row.name, &row.plan, &row.option}) *text = find.text(at++);
            row.result = result_from(find.text(at++));
            row.error = find.text(at);
            at = common_columns;
            for (const LotColumn& column : columns_of(impl_->work)) row.cells.push_back(cell_from(find, at++, column.holds));
            visit(row);
        }
        find.reset();
    }
}

void SweepResults::each_detail(const std::function<void(const DetailRow&)>& visit) {
    Statement all(impl_->data,
                  "SELECT d.plan, d.detail, d.name, d.feature, l.file, k.stays_open, k.width_mm, k.cost_cents FROM leaks k JOIN "
                  "details d ON d.id = "
                  "k.detail JOIN lots l ON l.id = k.lot ORDER BY d.plan, d.detail, k.width_mm, l.file");
    while (all.step()) {
        DetailRow row{all.text(0), all.text(1),        all.text(2), all.text(3),
                      all.text(4), all.number(5) != 0, all.real(6), std::nullopt};
        if (!all.is_nothing(7)) row.cost = Money{all.number(7)};
        visit(row);
    }
}

}  // namespace seamward
