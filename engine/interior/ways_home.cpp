// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/ways_home.h"

namespace seamward {

WaysHome::WaysHome(const Passages& passages, const Bodies& bodies) : passages_(passages), next_(passages.size(), none) {
    std::vector<std::uint32_t> first(passages.size() + 1, 0), list;
    for (const std::uint32_t i : bodies.joined) {
        ++first[passages.passage(i).from + 1];
        ++first[passages.passage(i).to + 1];
    }
    for (std::size_t i = 1; i < first.size(); ++i) first[i] += first[i - 1];
    list.resize(first.back());
    std::vector<std::uint32_t> at(first.begin(), first.end() - 1);
    for (const std::uint32_t i : bodies.joined) {
        list[at[passages.passage(i).from]++] = i;
        list[at[passages.passage(i).to]++] = i;
    }
    std::vector<char> seen(passages.size(), 0);
    std::vector<std::uint32_t> queue;
    for (const Body& body : bodies.list) {
        seen[body.seed] = 1;
        queue.push_back(body.seed);
    }
    for (std::size_t k = 0; k < queue.size(); ++k) {
        for (std::uint32_t j = first[queue[k]]; j < first[queue[k] + 1]; ++j) {
            const std::uint32_t to = passages.passage(list[j]).across(queue[k]);
            if (seen[to]) continue;
            seen[to] = 1;
            next_[to] = list[j];
            queue.push_back(to);
        }
    }
}

}  // namespace seamward
