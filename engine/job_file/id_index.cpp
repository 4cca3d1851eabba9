// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/id_index.h"

#include <algorithm>

#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"

namespace seamward {

std::optional<std::uint32_t> IdIndex::find(std::string_view id) const {
    const auto found = positions_.find(id);
    if (found == positions_.end()) return std::nullopt;
    return found->second;
}

std::optional<std::uint32_t> IdIndex::resolve(Node node, std::string_view called, Diagnostics& diagnostics) const {
    const std::optional<std::string> id = read_line(node, called, diagnostics);
    if (!id) return std::nullopt;
    if (const auto position = find(*id)) return position;
    if (known_.empty()) {
        for (const auto& [text, position] : positions_) known_.push_back(text);
        std::sort(known_.begin(), known_.end());
    }
    comparisons_ += known_.size();
    const bool affordable = comparisons_ <= most_comparisons;
    std::string mend = affordable ? suggestion(*id, known_) : "";
    if (mend.empty()) mend = "use the id of a " + std::string(called) + " of this file";
    diagnostics.add(node.place(), "unknown " + std::string(called) + ' ' + in_quotes(*id), mend);
    return std::nullopt;
}

}  // namespace seamward
