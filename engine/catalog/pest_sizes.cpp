// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/pest_sizes.h"

#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "catalog/shipped.h"

namespace seamward {

namespace {

Message basis_text(Basis basis) {
    switch (basis) {
        case Basis::measured: return "measured";
        case Basis::advice: return "published advice";
        case Basis::harborage: return "cracks that it rests in";
        case Basis::claim: break;
    }
    return "said, not measured";
}

/// Exact fractions of an inch as such; a size in millimeters is not passed off as one.
Message exact_size_text(double size) {
    const double parts = size / 0.0254 * 64;
    if (std::abs(parts - std::round(parts)) < 1e-6) return width_message(size);
    return message("{} (about {})", {millimeters_message(size), inches_message(size)});
}

Message basis_of(Basis basis, const std::string& source_id) {
    if (source_id.empty()) return "this job's own";
    const auto& sources = shipped_pests().sources;
    const auto source = std::find_if(sources.begin(), sources.end(), [&](const CatalogSource& s) { return s.id == source_id; });
    const bool memory = source != sources.end() && source->seen == CatalogSource::Seen::memory;
    return memory ? message("{}, from memory", {basis_text(basis)}) : basis_text(basis);
}

}  // namespace

Message sizes_text(const Pest& pest) {
    const bool unsure = !pest.slit_source.empty() && pest.confidence == Confidence::low;
    const Message sizes =
        message("slit {}, {}; hole {}, {}", {exact_size_text(pest.size.slit), basis_of(pest.slit_basis, pest.slit_source),
                                             exact_size_text(pest.size.hole), basis_of(pest.hole_basis, pest.hole_source)});
    return unsure ? message("{}; unsure", {sizes}) : sizes;
}

}  // namespace seamward
