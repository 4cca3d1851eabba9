// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>

#include "base/record.h"
#include "house/description.h"

namespace seamward {

/// Reads the lines of the list of features. Faults go to `diagnostics`.
class FeatureReader {
public:
    FeatureReader(Diagnostics& diagnostics, std::size_t stories) : diagnostics_(diagnostics), stories_(stories) {}

    [[nodiscard]] FeatureDescription read(Node node);

private:
    void read_gap(Node node, const FeatureGap& row, FeatureDescription::Sizes& sizes);

    Diagnostics& diagnostics_;
    std::size_t stories_;
    std::set<std::string> ids_;
};

/// A point of the plan: two coordinates with units.
[[nodiscard]] std::optional<Point2> read_point(Node node, std::string_view called, Diagnostics& diagnostics);
/// The story that a record names by its number from 1, as a position; the first when it names none.
[[nodiscard]] std::size_t read_story(const Record& record, std::size_t stories);

}  // namespace seamward
