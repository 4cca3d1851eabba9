// SPDX-License-Identifier: GPL-3.0-or-later
#include "network/spanning.h"

namespace seamward {

double width_above_which(const Network& network, double share) {
    std::array<double, 257> sample{};
    const std::span<const Link> links = network.links();
    if (links.empty()) return 0;
    for (std::size_t i = 0; i < sample.size(); ++i) sample[i] = links[i * (links.size() - 1) / (sample.size() - 1)].width;
    std::sort(sample.begin(), sample.end(), std::greater<>());
    return sample[static_cast<std::size_t>(std::min(1.0, share) * static_cast<double>(sample.size() - 1))];
}

}  // namespace seamward
