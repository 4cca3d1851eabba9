// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/books.h"

#include <algorithm>
#include <iterator>

namespace seamward {

namespace {

constexpr std::size_t most_in_batch = 32;  ///< lots that are handed out at once: a second of work or so

}  // namespace

Books::Books(std::vector<std::string> todo, std::size_t workers, const std::string& settings, SweepResults& results,
             SweepTally& tally, const RunContext& context)
    : todo_(std::make_move_iterator(todo.begin()), std::make_move_iterator(todo.end())),
      workers_(workers),
      settings_(settings),
      results_(results),
      tally_(tally),
      context_(context) {}

std::vector<std::string> Books::take() {
    const std::scoped_lock lock(mutex_);
    const std::size_t count = std::min(todo_.size(), std::clamp<std::size_t>(todo_.size() / (4 * workers_), 1, most_in_batch));
    std::vector<std::string> batch;
    for (std::size_t i = 0; i < count; ++i) {
        batch.push_back(std::move(todo_.front()));
        todo_.pop_front();
    }
    if (!batch.empty()) results_.begin(batch);
    return batch;
}

void Books::put(LotRow row) {
    const std::scoped_lock lock(mutex_);
    waiting_.push_back(std::move(row));
    if (waiting_.size() < most_in_batch && std::chrono::steady_clock::now() - written_ < std::chrono::seconds(1)) return;
    write();
    tell();
}

void Books::write_waiting() {
    const std::scoped_lock lock(mutex_);
    write();
}

void Books::write() {
    written_ = std::chrono::steady_clock::now();
    if (waiting_.empty()) return;
    results_.put(waiting_, settings_);
    tally_.done += waiting_.size();
    waiting_.clear();
}

void Books::tell() {
    const std::size_t tenths = 10 * (tally_.kept + tally_.done) / tally_.lots;
    if (tenths == told_) return;
    told_ = tenths;
    context_.stage("sweeping, " + std::to_string(10 * tenths) + " % of " + std::to_string(tally_.lots) + " lots done");
}

}  // namespace seamward
