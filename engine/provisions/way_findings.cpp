// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/way_findings.h"

namespace seamward {

std::vector<const WayIn*> ways_of_findings(const Audit& audit) {
    std::vector<const WayIn*> ways(audit.findings.size(), nullptr);
    std::size_t next = 0;
    for (std::size_t i = 0; i < ways.size(); ++i) {
        if (audit.findings[i].rule == way_in && next < audit.ways.size()) ways[i] = &audit.ways[next++];
    }
    return ways;
}

}  // namespace seamward
