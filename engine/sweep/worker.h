// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <exception>
#include <thread>

#include "base/run_context.h"

namespace seamward {

/// The work of this process on threads of its own, while the one that made it talks to the other ranks. Lots say nothing of how
/// they go, since many do so at once.
class Worker {
public:
    template <class Work>
    explicit Worker(Work work)
        : thread_([this, work] {
              try {
                  work(quiet_);
              } catch (...) {
                  fault_ = std::current_exception();
              }
              ended_ = true;
          }) {}
    /// Work that nobody waited for is called off.
    ~Worker() {
        quiet_.cancel();
        if (thread_.joinable()) thread_.join();
    }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void cancel() { quiet_.cancel(); }
    [[nodiscard]] bool ended() const { return ended_; }
    /// Throws what ended the work.
    void join() {
        thread_.join();
        if (fault_) std::rethrow_exception(fault_);
    }

private:
    RunContext quiet_;
    std::exception_ptr fault_;
    std::atomic<bool> ended_{false};
    std::thread thread_;
};

}  // namespace seamward
