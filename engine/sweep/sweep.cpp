// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/sweep.h"

#include <algorithm>
#include <cstring>
#include <deque>
#include <stdexcept>
#include <thread>
#include <unordered_set>

#include "base/diagnostics.h"
#include "base/text.h"
#include "sweep/books.h"
#include "sweep/house_cache.h"
#include "sweep/lone_lot.h"
#include "sweep/rank_messages.h"
#include "sweep/sha256.h"
#include "sweep/worker.h"

namespace seamward {

namespace {

/// Whether the row stands for what is there now. A row with an error is done again: what it lacked may be there by now.
bool still_holds(const KnownRow& row, const std::filesystem::path& path, const std::string& settings, HouseCache& files) {
    if (row.settings != settings || (row.result == LotResult::error && !row.died)) return false;
    std::string text;
    try {
        text = read_lot(path, path.string());
    } catch (const BadInput&) {
        return false;
    }
    return sha256_hex(text) == row.digest && std::all_of(row.inputs.begin(), row.inputs.end(), [&](const LotInput& input) {
               return files.digest(input.path) == input.digest;
           });
}

std::vector<std::string> lots_to_do(const LotFiles& files, const std::string& settings, SweepResults& results,
                                    const RunContext& context) {
    context.stage("looking for rows that still hold");
    HouseCache inputs;
    const std::unordered_set<std::string_view> misnamed(files.misnamed.begin(), files.misnamed.end());
    std::vector<std::string> todo;
    for (const std::string& name : files.names) {
        context.check();
        if (misnamed.contains(name)) continue;
        const std::optional<KnownRow> row = results.known(name);
        if (!row || !still_holds(*row, files.path_of(name), settings, inputs)) todo.push_back(name);
    }
    return todo;
}

LotRow row_of_fault(const LotFiles& files, const std::string& name, const std::string& what) {
    LotRow row;
    row.file = name;
    row.error = printable(files.path_of(name).string() + ": error: " + what);
    return row;
}

/// Notes what a lot that may end the program rests on. No more is read than the letters of its text: to parse it may be what
/// does.
void note_inputs(const std::filesystem::path& path, LotRow& row) {
    std::string text;
    try {
        text = read_lot(path, path.string());
    } catch (const BadInput&) {
        return;
    }
    row.digest = sha256_hex(text);
    HouseCache inputs;
    for (const std::filesystem::path& named : files_named_in(text, path))
        row.inputs.push_back({named.string(), inputs.digest(named)});
}

LotRow row_of_the_dead(const LotFiles& files, const std::string& name, int signal) {
    const char* word = strsignal(signal);
    return row_of_fault(files, name,
                        "the program died twice at this lot (signal " + std::to_string(signal) + ", " +
                            (word != nullptr ? word : "unknown") +
                            "); it is left out until its file changes, or one that it names");
}

void put_misnamed(const LotFiles& files, const std::string& settings, SweepResults& results, SweepTally& tally) {
    std::vector<LotRow> rows;
    for (const std::string& name : files.misnamed)
        rows.push_back(
            row_of_fault(files, name, "the name of this file is not UTF-8 or has control characters; give it another"));
    if (!rows.empty()) results.put(rows, settings);
    tally.done += rows.size();
}

/// Those that an earlier run ended over come first, one by one, each in a process of its own: only the guilty one dies again.
std::vector<std::string> settle_begun(const LotFiles& files, std::vector<std::string> todo, const std::string& settings,
                                      const LotDoer& doer, SweepResults& results, const RunContext& context, SweepTally& tally) {
    const std::vector<std::string> begun = results.begun();
    if (begun.empty()) return todo;
    context.stage("trying the lots that the last run ended over");
    const std::unordered_set<std::string_view> suspects(begun.begin(), begun.end());
    const LotDoer apart = [&](const std::string& name, const RunContext& quiet) {
        results.leave_to_parent();
        return doer(name, quiet);
    };
    std::vector<std::string> left;
    for (std::string& name : todo) {
        if (!suspects.contains(name)) {
            left.push_back(std::move(name));
            continue;
        }
        // Inputs first: one that changes meanwhile is then taken for an older one, and the lot is tried again.
        LotRow before;
        note_inputs(files.path_of(name), before);
        const std::variant<LotRow, DiedOf> answer = do_lot_apart(name, apart, context);
        const auto* death = std::get_if<DiedOf>(&answer);
        LotRow row = death != nullptr ? row_of_the_dead(files, name, death->signal) : std::get<LotRow>(answer);
        if (death != nullptr) {
            row.digest = std::move(before.digest);
            row.inputs = std::move(before.inputs);
        }
        results.put({&row, 1}, settings, death != nullptr);
        ++tally.done;
        if (death != nullptr) ++tally.died;
    }
    return left;
}

/// Hands lots out and takes rows in until all is done. `others`: ranks that have not ended yet.
void direct(Books& books, const LotDoer& doer, unsigned threads, Ranks& ranks, int& others, const RunContext& context) {
    std::deque<std::string> at_hand;
    const auto next = [&]() -> std::optional<std::string> {
        if (at_hand.empty()) {
            const std::vector<std::string> batch = books.take();
            at_hand.assign(batch.begin(), batch.end());
        }
        if (at_hand.empty()) return std::nullopt;
        std::string name = std::move(at_hand.front());
        at_hand.pop_front();
        return name;
    };
    const auto done = [&](LotRow row) { books.put(std::move(row)); };
    Worker own([&, threads](const RunContext& quiet) { work_off(threads, next, doer, done, quiet); });
    while (others > 0 || !own.ended()) {
        context.check();
        const auto message = ranks.receive();
        if (!message) {
            std::this_thread::sleep_for(pause_between_messages);
            continue;
        }
        const RankMessage said = read_message(message->second);
        for (const std::string& row : said.says == Says::rows ? said.items : std::vector<std::string>())
            books.put(row_from_bytes(row));
        if (said.says == Says::end) --others;
        if (said.says != Says::wants) continue;
        const std::vector<std::string> batch = books.take();
        ranks.send(message->first, message_of(batch.empty() ? Says::end : Says::work, batch));
    }
    own.join();
}

/// After a fault: the other ranks leave what they have, and what they still send is of no use.
void stop_others(Ranks& ranks, int others) {
    for (int rank = 1; rank < ranks.count(); ++rank) ranks.send(rank, message_of(Says::stop, {}));
    while (others > 0) {
        const auto message = ranks.receive();
        if (!message)
            std::this_thread::sleep_for(pause_between_messages);
        else if (read_message(message->second).says == Says::end)
            --others;
    }
}

}  // namespace

void begin_together(Ranks& ranks, const std::string& day) {
    for (int rank = 1; rank < ranks.count(); ++rank) ranks.send(rank, message_of(Says::begin, std::vector{day}));
}

void call_off(Ranks& ranks) {
    for (int rank = 1; rank < ranks.count(); ++rank) ranks.send(rank, message_of(Says::stop, {}));
}

void sweep(const LotFiles& files, const std::string& settings, const LotDoer& doer, unsigned threads, SweepResults& results,
           Ranks& ranks, const RunContext& context, SweepTally& tally) {
    tally.lots = files.names.size();
    int others = ranks.count() - 1;
    std::optional<Books> books;
    try {
        std::vector<std::string> todo = lots_to_do(files, settings, results, context);
        tally.kept = files.names.size() - todo.size() - files.misnamed.size();
        put_misnamed(files, settings, results, tally);
        todo = settle_begun(files, std::move(todo), settings, doer, results, context, tally);
        books.emplace(std::move(todo), std::size_t{threads} * static_cast<std::size_t>(ranks.count()), settings, results, tally,
                      context);
        direct(*books, doer, threads, ranks, others, context);
        books->write_waiting();
    } catch (const Cancelled&) {
        if (books) books->write_waiting();
        results.forget_begun();
        stop_others(ranks, others);
        throw;
    } catch (...) {
        stop_others(ranks, others);
        throw;
    }
    if (tally.kept + tally.done != tally.lots)
        throw std::runtime_error("a process of the sweep ended early; the same command does what is left");
}

}  // namespace seamward
