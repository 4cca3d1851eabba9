// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace seamward {

/// A document that numbers come from, and how far they were followed up there.
struct CatalogSource {
    enum class Seen : std::uint8_t { read, secondary, memory };

    std::string id;
    std::string title;
    std::string publisher;
    int year = 0;  ///< 0: not known
    Seen seen = Seen::memory;
};

/// How much a row is to be trusted.
enum class Confidence : std::uint8_t { high, medium, low };

/// What a pest's size rests on: animals tested at that size, a threshold for closing, the width of cracks that the
/// animal rests in, or a saying without a measurement.
enum class Basis : std::uint8_t { measured, advice, harborage, claim };

/// The slit and the hole that an animal needs, in meters.
struct PassageSize {
    double slit = 0;
    double hole = 0;
};

/// One animal.
struct Pest {
    std::string id;
    std::string name;
    std::string scientific;
    PassageSize size;
    std::string slit_source, hole_source;  ///< ids of sources
    Basis slit_basis = Basis::claim, hole_basis = Basis::claim;
    double margin = 0.1;  ///< share of the size within which a stop counts as marginal
    bool climbs = false, flies = false, gnaws = false;
    Confidence confidence = Confidence::low;
    std::string note;
};

/// A thing at hand that shows how wide a gap is.
struct Gauge {
    std::string id;
    std::string name;      ///< as in "between a card and a dime"
    double thickness = 0;  ///< meters
    std::string source;
    Confidence confidence = Confidence::low;
    std::string computed;
    std::string note;
};

/// A way to close a gap or to make it smaller.
struct Treatment {
    enum class Leaves : std::uint8_t { nothing, mesh };

    std::string id;
    std::string name;
    Leaves leaves = Leaves::nothing;
    bool gnawed = false;  ///< rodents chew through it
    std::string source;   ///< of `gnawed`; closing itself is common practice
};

/// A reference table: its rows and the documents that they come from.
template <class Row>
struct Table {
    std::string edition;
    std::vector<CatalogSource> sources;
    std::vector<Row> rows;

    /// The row with that id, or null.
    [[nodiscard]] const Row* find(std::string_view id) const {
        for (const Row& row : rows) {
            if (row.id == id) return &row;
        }
        return nullptr;
    }
    [[nodiscard]] std::vector<std::string_view> ids() const {
        std::vector<std::string_view> all;
        for (const Row& row : rows) all.emplace_back(row.id);
        return all;
    }
};

/// Readers of the tables' YAML text. Each throws BadInput that names file, line and column when a key is unknown
/// or missing, an id repeated, a source unknown, a slit larger than its hole, or gauges not in rising order.
[[nodiscard]] Table<Pest> read_pests(std::string_view yaml, const std::string& shown_as);
[[nodiscard]] Table<Gauge> read_gauges(std::string_view yaml, const std::string& shown_as);
[[nodiscard]] Table<Treatment> read_treatments(std::string_view yaml, const std::string& shown_as);

}  // namespace seamward
