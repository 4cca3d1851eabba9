// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <limits>
#include <string>
#include <string_view>
#include <vector>

#include "base/survey.h"

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

/// What can hurt somebody, and who says so.
struct Caution {
    std::string text;
    std::string source;  ///< id of a source of the table
};

/// One material that a treatment takes, and how it is counted for one piece of a gap. Meters.
struct Take {
    enum class As : std::uint8_t {
        bead,    ///< volume of a bead as wide as the gap and as deep as the rule for joints says
        rod,     ///< length of backer rod of the stock size that fits; `material` is the beginning of its id
        fill,    ///< volume of the opening, `depth` deep or as deep as the gap is
        cut,     ///< area of a rectangle over the opening, `overlap` wider at each edge, its sides rounded up to whole `step`s
        rim,     ///< volume of a fillet along the edges of that rectangle
        along,   ///< pieces along those edges, one for each `every` begun
        length,  ///< length of the gap
        piece,   ///< one for each piece of the gap
        whole    ///< one for all pieces of the gap
    };
    std::string material;  ///< id of the price book
    As as = As::piece;
    double depth = 0, overlap = 0, step = 0, every = 0;
};

/// A way to close a gap or to make it smaller.
struct Treatment {
    enum class Leaves : std::uint8_t { nothing, mesh };
    /// Where one stands: outdoors, in rooms and garages, in the attic or another cavity.
    enum class Side : std::uint8_t { outside, inside, attic };

    /// The gaps that it is fit for. Meters.
    struct Fits {
        std::array<bool, 4> shapes{};  ///< slot, hole, ring, mesh: as in `Shape`
        std::array<bool, 3> sides{};   ///< by Side
        double from = 0;               ///< clear width
        double to = 0;
        double around = std::numeric_limits<double>::infinity();  ///< thickest pipe in a ring
        double depth = 0;                                         ///< least depth of the part
        std::vector<std::string> only_on, not_on;  ///< substrates: one of these must be there; none of these may be
        std::vector<Duty> duties;                  ///< made for gaps of these duties only ...
        std::vector<std::string> features;         ///< ... and of these features; both empty: for any
        std::vector<std::string> not_at;           ///< features
    };
    /// Minutes.
    struct Work {
        double setup = 0;  ///< once for a gap
        double piece = 0;
        double meter = 0;
    };
    /// Minutes that a place off the ground or out of the way adds, for a gap.
    struct Access {
        double ladder = 0, attic = 0;
    };

    std::string id;
    std::string name;
    Leaves leaves = Leaves::nothing;
    bool gnawed = false;      ///< rodents chew through it
    std::string source;       ///< of `gnawed`; closing itself is common practice
    std::vector<Duty> keeps;  ///< duties that it does not defeat, though it lets no animal through: water still gets down past it
    double opening = 0;       ///< clear opening of the mesh that it leaves, meters; 0: it has none of its own
    double movement = 0;      ///< share of its width that it follows, both ways
    double unstated = 0;      ///< side of a screened opening whose area the survey does not state, meters
    Fits fits;
    std::vector<Take> takes;
    Work work;
    Access access;
    std::vector<std::string> steps;  ///< preparation and work, in order
    std::string conditions;          ///< temperature and wetness that it needs
    double rain = 0, paint = 0;      ///< minutes to keep rain off, and until it can be painted; 0: none
    std::string shelf_life, finish, colors;
    std::uint32_t years = 0;  ///< so long it is expected to hold; 0: not said
    std::vector<std::string> tools, protection;
    std::vector<Caution> cautions;
    bool owner = false;                ///< an owner can do it safely
    std::vector<std::string> sources;  ///< of its sizes, times and steps

    [[nodiscard]] bool leaves_mesh() const { return leaves == Leaves::mesh; }
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
