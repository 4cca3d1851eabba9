// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/shipped.h"

#include "catalog/shipped_text.h"

namespace seamward {

const Table<Pest>& shipped_pests() {
    static const Table<Pest> table = read_pests(shipped_text::pests, "engine/catalog/pests.yaml");
    return table;
}

const Table<Gauge>& shipped_gauges() {
    static const Table<Gauge> table = read_gauges(shipped_text::gauges, "engine/catalog/gauges.yaml");
    return table;
}

const Table<Treatment>& shipped_treatments() {
    static const Table<Treatment> table = read_treatments(shipped_text::treatments, "engine/catalog/treatments.yaml");
    return table;
}

const Table<Feature>& shipped_features() {
    static const Table<Feature> table =
        read_features(shipped_text::features, "engine/catalog/features.yaml", shipped_treatments());
    return table;
}

}  // namespace seamward
