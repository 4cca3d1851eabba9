// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <set>
#include <string_view>
#include <vector>

#include "base/record.h"
#include "house/description.h"

namespace seamward {

/// Reads the lines of the list of features. Faults go to `diagnostics`.
class FeatureReader {
public:
    FeatureReader(Diagnostics& diagnostics, std::size_t stories) : diagnostics_(diagnostics), stories_(stories) {}

    [[nodiscard]] FeatureDescription read(Node node);

private:
    [[nodiscard]] const Feature* read_type(const Record& record, const Feature* found);
    void read_place(const Record& record, FeatureDescription& feature);
    void read_gaps(const Record& record, FeatureDescription& feature);
    void read_gap(Node node, const FeatureGap& row, FeatureDescription::Sizes& sizes);
    void report_unknown_keys(Node node, std::vector<std::string_view>& keys, const Feature* type);

    Diagnostics& diagnostics_;
    std::size_t stories_;
    std::set<std::string> ids_;
    bool evidence_stated_ = false;  ///< by the feature that is being read, for all of its gaps
};

/// A point of the plan: two coordinates with units.
[[nodiscard]] std::optional<Point2> read_point(Node node, std::string_view called, Diagnostics& diagnostics);
/// The story that a record names by its number from 1, as a position; the first when it names none.
[[nodiscard]] std::size_t read_story(const Record& record, std::size_t stories);

}  // namespace seamward
