// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/interrupt.h"

#include <atomic>
#include <csignal>

namespace seamward {

namespace {

// What a signal handler may touch: lock-free atomics.
std::atomic<RunContext*> running{nullptr};
std::atomic<int> seen{0};

extern "C" void cancel_running(int signal) {
    seen.store(signal);
    if (RunContext* context = running.load()) context->cancel();
}

}  // namespace

CancelOnSignal::CancelOnSignal(RunContext& context) {
    running.store(&context);
    struct sigaction action {};
    action.sa_handler = cancel_running;
    action.sa_flags = static_cast<int>(SA_RESETHAND);
    sigemptyset(&action.sa_mask);
    for (const int signal : {SIGINT, SIGTERM}) {
        struct sigaction before {};
        // What whoever started the program wants ignored stays ignored.
        if (sigaction(signal, nullptr, &before) == 0 && before.sa_handler != SIG_IGN) sigaction(signal, &action, nullptr);
    }
}

CancelOnSignal::~CancelOnSignal() { running.store(nullptr); }

int CancelOnSignal::signal_seen() { return seen.load(); }

void end_by_signal(int signal) {
    std::signal(signal, SIG_DFL);
    std::raise(signal);
}

}  // namespace seamward
