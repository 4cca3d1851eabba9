// SPDX-License-Identifier: GPL-3.0-or-later
// What of the table goes where.
#include <algorithm>

#include "catalog/shipped.h"
#include "document/feature_places.h"
#include "document/usual_features.h"

namespace seamward::viewer {

bool FeaturePlace::is(Host host) const { return std::ranges::find(hosts, host) != hosts.end(); }

bool FeaturePlace::level() const { return is(Host::ceiling) || is(Host::floor) || is(Host::roof); }

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

bool goes_on(const Feature& type, Host host) { return std::ranges::find(type.hosts, host) != type.hosts.end(); }

bool any_gap(const Feature& type, auto test) { return std::ranges::any_of(type.gaps, test); }

/// A joint as long as its host, or pieces all along it: it needs no place there.
bool all_along(const FeatureGap& row) {
    const bool holes = row.shape == ShapeKind::hole && row.count == 0;
    return row.form == Form::edge || row.form == Form::cut || holes ||
           (row.form == Form::line && !row.upright && row.length == 0);
}

bool in_plate(const FeatureGap& row) { return row.at == At::top || row.at == At::bottom; }

/// Whether a gap can be seen, or is made, from where the place is.
bool is_there(const Feature& type, const FeatureGap& row, const FeaturePlace& place) {
    if (row.at == At::sheathing) return place.sheathed;
    if (!place.is(Host::wall) || !goes_on(type, Host::wall)) return true;
    if (row.at == At::through) return true;
    const bool of_outside = row.at == At::outside || row.at == At::outer || row.at == At::back;
    return place.outside == of_outside;
}

/// Types that other walls, doors or windows have, by the word that their ids begin with.
bool suits(const Feature& type, const FeaturePlace& place) {
    if (place.is(Host::wall) || place.is(Host::gable)) {
        for (const char* word : {"brick", "stucco", "siding"}) {
            if (type.id.find(word) != std::string::npos && place.cladding.find(word) == std::string::npos) return false;
        }
        if (type.id == "weep-screed") return place.cladding == "stucco" && place.story == 0;
        return true;
    }
    if (!place.is(Host::opening)) return true;
    const bool in_sill = any_gap(type, [](const FeatureGap& row) { return row.at == At::outer || row.at == At::inner; });
    if (in_sill && !place.hollow) return false;
    const auto begins = [&](const char* word) { return type.id.starts_with(word); };
    switch (place.opening) {
        case OpeningKind::window: return begins("window") || begins("combustion");
        case OpeningKind::garage_door: return begins("garage-door") || begins("combustion");
        case OpeningKind::sliding_door: return begins("slider") || begins("door");
        case OpeningKind::crawl_door: return begins("crawl-door");
        default: return begins("door") || begins("combustion");
    }
}

/// Ends or goes on with the air of something else, which it would have to name.
bool needs_other_air(const Feature& type) {
    if (goes_on(type, Host::duct)) return true;
    return goes_on(type, Host::roof) && any_gap(type, [](const FeatureGap& row) { return row.at == At::outer; }) &&
           !any_gap(type, [](const FeatureGap& row) { return row.at == At::through; });
}

/// Whether what goes through a plate is no wider than the air over it.
bool fits_in_cavity(const FeatureGap& row, const FeaturePlace& place) {
    if (!in_plate(row) || place.cavity == 0) return true;
    const double wide = row.form == Form::around || row.form == Form::beside ? row.size[1] + 2 * row.width
                        : row.shape == ShapeKind::ring                       ? row.around + 2 * row.width
                                                                             : row.width;
    return wide < place.cavity;
}

/// What the house is built from can draw it there.
bool can_be_drawn(const Feature& type, const FeaturePlace& place) {
    const auto rings = [](const FeatureGap& row) { return row.shape == ShapeKind::ring; };
    const auto inner = [](const FeatureGap& row) { return row.at == At::inner; };
    if ((place.is(Host::wall) || place.is(Host::partition)) && any_gap(type, inner) && !any_gap(type, rings)) return false;
    if (place.is(Host::opening)) return !any_gap(type, [](const FeatureGap& row) { return row.at == At::back; });
    if (place.is(Host::block_wall) && any_gap(type, [](const FeatureGap& row) { return row.at == At::end; }))
        return place.meets_house;
    // A well goes down into the ground, a duct through a floor runs on between its joists.
    if (!goes_on(type, Host::ceiling) && any_gap(type, inner) && place.story > 0) return false;
    if (goes_on(type, Host::floor) && any_gap(type, inner) && any_gap(type, rings)) return place.is(Host::floor) && place.joists;
    // A joint there is as long as somebody says, which an entry does not.
    return !any_gap(type, [&](const FeatureGap& row) {
        const bool line = row.form == Form::line && row.length == 0 && row.spacing == 0;
        const bool in_wall = row.at == At::top && (place.is(Host::wall) || place.is(Host::partition));
        return (line && (place.level() || in_wall)) || (row.form == Form::edge && place.is(Host::roof));
    });
}

}  // namespace

bool goes_on(const Feature& type, const FeaturePlace& place) {
    return std::ranges::any_of(place.hosts, [&](Host one) { return goes_on(type, one); });
}

std::vector<const Feature*> features_for(const FeaturePlace& place) {
    std::vector<const Feature*> fit;
    for (const Feature& type : shipped_features().rows) {
        if (!goes_on(type, place) || needs_other_air(type) || !suits(type, place) || !can_be_drawn(type, place)) continue;
        if (any_gap(type, [&](const FeatureGap& row) { return !fits_in_cavity(row, place); })) continue;
        if (any_gap(type, [&](const FeatureGap& row) { return is_there(type, row, place); })) fit.push_back(&type);
    }
    return fit;
}

std::vector<const FeatureGap*> gaps_of(const Feature& type, const FeaturePlace& place) {
    std::vector<const FeatureGap*> gaps;
    for (const FeatureGap& row : type.gaps) {
        if (row.at != At::sheathing || place.sheathed) gaps.push_back(&row);
    }
    return gaps;
}

PlaceNeeds needs_of(const Feature& type, const FeaturePlace& place) {
    if (place.level()) return {.at = true};
    if (place.is(Host::opening)) return {};
    PlaceNeeds needs;
    const bool of_wall = place.is(Host::wall) || place.is(Host::partition);
    for (const FeatureGap* row : gaps_of(type, place)) {
        if (in_plate(*row) && of_wall) {
            needs.along = true;
            continue;
        }
        if (all_along(*row) || (place.is(Host::eave) && row->count == 0)) continue;
        needs.along = needs.along || !place.is(Host::block_wall);
        const bool high = !(row->form == Form::line && row->upright) && row->edges.empty();
        needs.up = needs.up || (high && !place.is(Host::eave) && !goes_on(type, Host::rim));
    }
    return needs;
}

AddFeature entry_of(const Feature& type, const FeaturePlace& place, const std::string& along, const std::string& up) {
    AddFeature entry;
    entry.type = type.id;
    entry.on = place.on;
    if (place.level() && place.on.empty() && goes_on(type, Host::ceiling) && goes_on(type, Host::floor))
        entry.on = place.is(Host::ceiling) ? "ceiling" : "floor";
    const PlaceNeeds needs = needs_of(type, place);
    if (needs.at) entry.at = {place.at.x, place.at.y};
    if (needs.along) entry.along = along;
    if (needs.up) entry.up = place.base == 0 ? up : meters_text(place.up);
    const bool one_sided = any_gap(type, [&](const FeatureGap& row) {
        return place.is(Host::block_wall) ? row.at == At::outside : !in_plate(row) && row.at != At::through;
    });
    if (one_sided) entry.side = place.side;
    const bool storied =
        !place.is(Host::roof) && !place.is(Host::opening) && !place.is(Host::eave) && !place.is(Host::block_wall);
    if (storied && place.story > 0) entry.story = std::to_string(place.story + 1);
    return entry;
}

}  // namespace seamward::viewer
