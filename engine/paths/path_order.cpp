// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/path_order.h"

#include <algorithm>
#include <cmath>

namespace seamward {

GapIndex pinch_gap(const Survey& survey, const EntryPath& path) {
    return *std::min_element(path.gaps.begin(), path.gaps.end(),
                             [&](GapIndex a, GapIndex b) { return clear_width(survey[a].shape) < clear_width(survey[b].shape); });
}

std::int64_t nanometers_between(const Point& a, const Point& b) { return std::llround(distance(a, b) * 1e9); }

int compare_ids(const Survey& survey, const EntryPath& x, const EntryPath& y) {
    for (std::size_t i = 0; i < x.gaps.size(); ++i) {
        const int order = survey[x.gaps[i]].id.compare(survey[y.gaps[i]].id);
        if (order != 0) return order;
    }
    const int order = survey[x.from()].id.compare(survey[y.from()].id);
    return order != 0 ? order : survey[x.to()].id.compare(survey[y.to()].id);
}

PathKey::PathKey(const Survey& survey, const EntryPath& path) : survey_(&survey), path_(path), length_(0) {
    const Gap* previous = nullptr;
    for (const GapIndex index : path.gaps) {
        const Gap& gap = survey[index];
        widths_.push_back(clear_width(gap.shape));
        if (!gap.at) length_.reset();
        if (length_ && previous != nullptr) *length_ += nanometers_between(*previous->at, *gap.at);
        previous = &gap;
    }
    std::sort(widths_.begin(), widths_.end());
}

bool PathKey::before(const PathKey& other) const {
    const auto [mine, theirs] = std::mismatch(widths_.begin(), widths_.end(), other.widths_.begin(), other.widths_.end());
    if (mine != widths_.end() && theirs != other.widths_.end()) return *mine > *theirs;
    if (widths_.size() != other.widths_.size()) return widths_.size() < other.widths_.size();
    if (length_ != other.length_) return length_ && (!other.length_ || *length_ < *other.length_);
    return compare_ids(*survey_, path_, other.path_) < 0;
}

}  // namespace seamward
