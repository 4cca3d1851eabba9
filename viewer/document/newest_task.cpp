// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/newest_task.h"

#include <utility>

namespace seamward::viewer {

NewestTask::NewestTask() : thread_([this] { work(); }) {}

NewestTask::~NewestTask() {
    {
        const std::lock_guard lock(mutex_);
        ending_ = true;
        if (running_) running_->cancel();
    }
    changed_.notify_one();
    thread_.join();
}

void NewestTask::start(Task task) {
    {
        const std::lock_guard lock(mutex_);
        next_ = std::move(task);
        if (running_) running_->cancel();
    }
    changed_.notify_one();
}

void NewestTask::work() {
    for (;;) {
        Task task;
        std::shared_ptr<RunContext> context;
        {
            std::unique_lock lock(mutex_);
            running_.reset();
            changed_.wait(lock, [this] { return ending_ || next_; });
            if (ending_) return;
            task = std::exchange(next_, nullptr);
            context = running_ = std::make_shared<RunContext>();
        }
        try {
            task(*context);
        } catch (const Cancelled&) {  // a newer task stands in line, or the end
        }
    }
}

}  // namespace seamward::viewer
