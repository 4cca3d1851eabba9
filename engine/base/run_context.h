// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <functional>
#include <stdexcept>
#include <string_view>

namespace seamward {

/// Thrown by RunContext::check(): the work was called off from outside. Nothing was written.
class Cancelled : public std::runtime_error {
public:
    Cancelled() : std::runtime_error("cancelled") {}
};

/// What every stage is handed: where to say how it goes, and whether to stop. A default-made one says nothing
/// and never stops. cancel() may be called from another thread or a signal handler.
class RunContext {
public:
    using Listener = std::function<void(std::string_view)>;

    RunContext() = default;
    explicit RunContext(Listener on_stage) : on_stage_(std::move(on_stage)) {}

    /// A stage begins: "reading", "ranking".
    void stage(std::string_view name) const {
        check();
        if (on_stage_) on_stage_(name);
    }
    void cancel() { cancelled_.store(true, std::memory_order_relaxed); }
    /// Throws Cancelled once cancel() was called. Cheap enough for inner loops.
    void check() const {
        if (cancelled_.load(std::memory_order_relaxed)) throw Cancelled();
    }

private:
    Listener on_stage_;
    std::atomic<bool> cancelled_{false};
};

}  // namespace seamward
