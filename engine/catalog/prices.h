// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <string_view>
#include <vector>

#include "base/money.h"
#include "base/quantity.h"

namespace seamward {

/// Something that is bought.
struct Material {
    /// What it is counted by, in cubic meters, square meters, meters or pieces.
    enum class By : std::uint8_t { volume, area, length, piece };

    std::string id;
    std::string name;
    std::string unit;  ///< what one of it is: "cartridge", "roll", "can", "box"
    By by = By::piece;
    double holds = 0;           ///< what one unit holds, counted so
    Money price;                ///< of one unit
    std::uint32_t in_case = 0;  ///< units in a case; 0: not sold in cases
    Money case_price;
};

/// What things and work cost. The shipped one is invented; a user's own replaces any of its entries. Shares are shares of one.
struct PriceBook {
    std::string name;
    Money labor_per_hour;
    double waste = 0;  ///< of material, on top of what the gaps themselves take; whole pieces have none
    std::vector<Material> materials;
    // For a quote.
    Money call_out;                     ///< the least that a visit costs
    double overhead = 0;                ///< on top of labor and material
    double tax = 0;                     ///< on top of what is taxed
    double deposit = 0;                 ///< of the total, due when the work is ordered
    std::uint32_t valid_days = 0;       ///< how long a quote holds
    std::uint32_t warranty_months = 0;  ///< how long a closing is warranted

    /// Null when the book has none such. O(materials).
    [[nodiscard]] const Material* find(std::string_view id) const;
};

/// The price book that comes with the program. Read once, at first use.
[[nodiscard]] const PriceBook& shipped_prices();

/// The shipped price book with the entries of a user's file in place of its own; docs/prices.md says how one is written. Throws
/// BadInput with all faults of the file, each with its line and column.
[[nodiscard]] PriceBook read_prices(const std::filesystem::path& path, const std::string& shown_as);
[[nodiscard]] PriceBook read_prices(const std::filesystem::path& path, const std::string& shown_as, const PriceBook& base);

/// A whole price book from YAML text: every key must be there. Throws BadInput.
[[nodiscard]] PriceBook read_price_book(std::string_view yaml, const std::string& shown_as);

/// The entries of YAML text in place of those of `base`. Throws BadInput.
[[nodiscard]] PriceBook read_price_book(std::string_view yaml, const std::string& shown_as, const PriceBook& base);

/// Cubic meters from `10.1 fl oz`, `5.4 l`, `300 cm3` (also ml, gal, in3, ft3, m3).
[[nodiscard]] Parsed<double> parse_volume(std::string_view text);

}  // namespace seamward
