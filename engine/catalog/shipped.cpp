// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/shipped.h"

#include "catalog/prices.h"
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

std::vector<std::string_view> full_closings() {
    std::vector<std::string_view> ids;
    for (const Treatment& row : shipped_treatments().rows) {
        if (row.leaves == Treatment::Leaves::nothing) ids.emplace_back(row.id);
    }
    return ids;
}

const Table<Feature>& shipped_features() {
    static const Table<Feature> table =
        read_features(shipped_text::features, "engine/catalog/features.yaml", shipped_treatments());
    return table;
}

const Table<JointFigure>& shipped_joints() {
    static const Table<JointFigure> table = read_joints(shipped_text::joints, "engine/catalog/joints.yaml");
    return table;
}

const PriceBook& shipped_prices() {
    static const PriceBook book = read_price_book(shipped_text::prices, "engine/catalog/prices.yaml");
    return book;
}

PriceBook read_prices(const std::filesystem::path& path, const std::string& shown_as) {
    return read_prices(path, shown_as, shipped_prices());
}

const Table<DutyRow>& shipped_duties() {
    static const Table<DutyRow> table = read_duties(shipped_text::duties, "engine/catalog/duties.yaml", shipped_features());
    return table;
}

const Table<Measure>& shipped_measures() {
    static const Table<Measure> table = read_measures(shipped_text::measures, "engine/catalog/measures.yaml");
    return table;
}

const Table<Provision>& shipped_provisions() {
    static const Table<Provision> table = read_provisions(shipped_text::provisions, "engine/catalog/provisions.yaml",
                                                          shipped_measures(), shipped_features(), shipped_free_areas());
    return table;
}

const Table<MeshKind>& shipped_meshes() {
    static const Table<MeshKind> table = read_meshes(shipped_text::meshes, "engine/catalog/meshes.yaml");
    return table;
}

const Table<FreeAreaRule>& shipped_free_areas() {
    static const Table<FreeAreaRule> table = read_free_areas(shipped_text::free_areas, "engine/catalog/free_areas.yaml");
    return table;
}

const Table<Removal>& shipped_removals() {
    static const Table<Removal> table = read_removals(shipped_text::removals, "engine/catalog/removals.yaml", shipped_pests());
    return table;
}

const Table<DrillScore>& shipped_drill_scores() {
    static const Table<DrillScore> table = read_drill_scores(shipped_text::drill_scores, "engine/catalog/drill_scores.yaml");
    return table;
}

const Table<EnvelopePart>& shipped_envelope() {
    static const Table<EnvelopePart> table = read_envelope(shipped_text::envelope, "engine/catalog/envelope.yaml");
    return table;
}

const Table<SiteCaution>& shipped_site_cautions() {
    static const Table<SiteCaution> table = read_site_cautions(shipped_text::site_cautions, "engine/catalog/site_cautions.yaml");
    return table;
}

}  // namespace seamward
