// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <condition_variable>
#include <exception>
#include <functional>
#include <future>
#include <memory>
#include <mutex>
#include <thread>

#include "base/run_context.h"

namespace seamward::viewer {

/// A thread that works on the newest task given to it: a new one calls off the one that runs. For answers that only
/// matter as long as the question has not changed.
class NewestTask {
public:
    /// May throw Cancelled, and nothing else.
    using Task = std::function<void(const RunContext&)>;

    NewestTask();
    /// Calls off the running task and waits for it.
    ~NewestTask();
    NewestTask(const NewestTask&) = delete;
    NewestTask& operator=(const NewestTask&) = delete;

    void start(Task task);

private:
    void work();

    std::mutex mutex_;
    std::condition_variable changed_;
    Task next_;                            ///< guarded by mutex_
    std::shared_ptr<RunContext> running_;  ///< guarded by mutex_
    bool ending_ = false;                  ///< guarded by mutex_
    std::thread thread_;
};

/// What a task will answer, or nothing ever when a newer one calls it off.
template <class Answer, class Work>
std::shared_future<Answer> answer_of(NewestTask& task, Work work) {
    const auto promise = std::make_shared<std::promise<Answer>>();
    std::shared_future<Answer> answer = promise->get_future().share();
    task.start([promise, work = std::move(work)](const RunContext& context) {
        try {
            promise->set_value(work(context));
        } catch (const Cancelled&) {
            throw;
        } catch (...) {
            promise->set_exception(std::current_exception());
        }
    });
    return answer;
}

}  // namespace seamward::viewer
