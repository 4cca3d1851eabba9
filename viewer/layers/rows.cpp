// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/rows.h"

#include <algorithm>
#include <atomic>
#include <thread>
#include <vector>

namespace seamward::viewer {

void for_rows(int rows, const std::function<void(int)>& row) {
    std::atomic<int> next{0};
    const auto work = [&] {
        for (int y = next++; y < rows; y = next++) row(y);
    };
    std::vector<std::jthread> threads;
    const unsigned wanted = std::min(std::max(1U, std::thread::hardware_concurrency()), 16U);
    for (unsigned i = 1; i < wanted; ++i) threads.emplace_back(work);
    work();
}

}  // namespace seamward::viewer
