// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/pest_sizes.h"

#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

const char* basis_text(Basis basis) {
    switch (basis) {
        case Basis::measured: return "measured";
        case Basis::advice: return "published advice";
        case Basis::harborage: return "cracks that it rests in";
        case Basis::claim: break;
    }
    return "said, not measured";
}

/// Exact fractions of an inch as such; a size in millimeters is not passed off as one.
std::string exact_size_text(double size) {
    const double parts = size / 0.0254 * 64;
    return std::abs(parts - std::round(parts)) < 1e-6 ? width_text(size)
                                                      : millimeters_text(size) + " (about " + inches_text(size) + ')';
}

std::string size_text(const std::string& what, double size, Basis basis, const std::string& source_id) {
    std::string text = what + ' ' + exact_size_text(size);
    if (source_id.empty()) return text + ", this job's own";
    const auto& sources = shipped_pests().sources;
    const auto source = std::find_if(sources.begin(), sources.end(), [&](const CatalogSource& s) { return s.id == source_id; });
    const bool memory = source != sources.end() && source->seen == CatalogSource::Seen::memory;
    return text + ", " + basis_text(basis) + (memory ? ", from memory" : "");
}

}  // namespace

std::string sizes_text(const Pest& pest) {
    const bool unsure = !pest.slit_source.empty() && pest.confidence == Confidence::low;
    return size_text("slit", pest.size.slit, pest.slit_basis, pest.slit_source) + "; " +
           size_text("hole", pest.size.hole, pest.hole_basis, pest.hole_source) + (unsure ? "; unsure" : "");
}

}  // namespace seamward
