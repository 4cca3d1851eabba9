// SPDX-License-Identifier: GPL-3.0-or-later
#include <condition_variable>
#include <deque>
#include <mutex>

#include "sweep/rank_messages.h"
#include "sweep/sweep.h"
#include "sweep/worker.h"

namespace seamward {

namespace {

bool is_called_off(const RunContext& context) {
    try {
        context.check();
        return false;
    } catch (const Cancelled&) {
        return true;
    }
}

/// A rank that is not rank 0.
class Server {
public:
    Server(unsigned threads, Ranks& ranks, const RunContext& context) : threads_(threads), ranks_(ranks), context_(context) {}

    void run(const LotDoer& doer) {
        const auto next = [&] { return take(); };
        const auto done = [&](const LotRow& row) {
            const std::scoped_lock lock(mutex_);
            rows_.push_back(row_bytes(row));
        };
        Worker own([&](const RunContext& quiet) { work_off(threads_, next, doer, done, quiet); });
        while (true) {
            const bool ended = own.ended();
            tell(ended);
            if (ended) break;
            if (!listen()) own.cancel();
        }
        ranks_.send(0, message_of(Says::end, {}));
        if (!stopped_) own.join();
    }

private:
    std::optional<std::string> take() {
        std::unique_lock lock(mutex_);
        more_.wait(lock, [&] { return !at_hand_.empty() || no_more_; });
        if (at_hand_.empty()) return std::nullopt;
        std::string name = std::move(at_hand_.front());
        at_hand_.pop_front();
        return name;
    }

    /// Sends rows that are done, and asks ahead for the next lots, so that no thread waits for an answer.
    void tell(bool all_rows) {
        std::vector<std::string> ready;
        {
            const std::scoped_lock lock(mutex_);
            if (all_rows || rows_.size() >= threads_) ready.swap(rows_);
            if (!asked_ && !no_more_ && at_hand_.size() < std::size_t{2} * threads_) {
                ranks_.send(0, message_of(Says::wants, {}));
                asked_ = true;
            }
        }
        if (!ready.empty()) ranks_.send(0, message_of(Says::rows, ready));
    }

    /// False once the work is called off.
    bool listen() {
        const auto message = ranks_.receive();
        if (!message) std::this_thread::sleep_for(pause_between_messages);
        const std::scoped_lock lock(mutex_);
        if (message) {
            const RankMessage said = read_message(message->second);
            asked_ = asked_ && said.says != Says::work;
            at_hand_.insert(at_hand_.end(), said.items.begin(), said.items.end());
            no_more_ = no_more_ || said.says == Says::end;
            stopped_ = stopped_ || said.says == Says::stop;
        }
        stopped_ = stopped_ || is_called_off(context_);
        no_more_ = no_more_ || stopped_;
        if (stopped_) at_hand_.clear();
        more_.notify_all();
        return !stopped_;
    }

    unsigned threads_;
    Ranks& ranks_;
    const RunContext& context_;
    std::mutex mutex_;
    std::condition_variable more_;
    std::deque<std::string> at_hand_;
    std::vector<std::string> rows_;
    bool asked_ = false, no_more_ = false, stopped_ = false;
};

}  // namespace

std::optional<std::string> wait_to_begin(Ranks& ranks, const RunContext& context) {
    while (!is_called_off(context)) {
        if (const auto message = ranks.receive()) {
            const RankMessage said = read_message(message->second);
            if (said.says != Says::begin || said.items.empty()) return std::nullopt;
            return said.items.front();
        }
        std::this_thread::sleep_for(pause_between_messages);
    }
    return std::nullopt;
}

void serve_sweep(const LotDoer& doer, unsigned threads, Ranks& ranks, const RunContext& context) {
    Server(threads, ranks, context).run(doer);
}

}  // namespace seamward
