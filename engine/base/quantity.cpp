// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <cstdlib>
#include <numeric>
#include <span>
#include <vector>

#include "base/exact.h"
#include "base/nearest_word.h"
#include "base/text.h"

namespace seamward {

namespace {

/// A unit as an exact decimal: one of it is `mantissa` * 10^`exponent` base units.
struct Unit {
    std::string_view word;
    std::uint64_t mantissa;
    int exponent;
};

constexpr std::array length_units{Unit{"mm", 1, -3},   Unit{"cm", 1, -2},    Unit{"m", 1, 0},    Unit{"in", 254, -4},
                                  Unit{"\"", 254, -4}, Unit{"ft", 3048, -4}, Unit{"'", 3048, -4}};
constexpr std::array area_units{Unit{"mm2", 1, -6}, Unit{"cm2", 1, -4}, Unit{"m2", 1, 0}, Unit{"in2", 64516, -8},
                                Unit{"ft2", 9290304, -8}};
constexpr std::array duration_units{Unit{"min", 1, 0}, Unit{"h", 60, 0}};
constexpr std::array percent_units{Unit{"%", 1, -2}};

/// What is due at a place: its name in messages, its units, and the unit a message proposes.
struct Kind {
    std::string_view name;  ///< "a length", "an area"
    std::span<const Unit> units;
    std::string_view proposed;
    std::string_view largest_text;
    double largest;  ///< in base units; no building needs more, and sums of it stay finite
};

constexpr Kind length_kind{"a length", length_units, "mm", "100 km", 1e5};
constexpr Kind distance_kind{"a length", length_units, "m", "100 km", 1e5};
constexpr Kind area_kind{"an area", area_units, "cm2", "10^10 m2", 1e10};
constexpr Kind duration_kind{"a time", duration_units, "min", "10^7 min", 1e7};
constexpr Kind percent_kind{"a percentage", percent_units, "%", "10000 %", 1e2};

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }
constexpr bool is_space(char c) { return c == ' ' || c == '\t'; }

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_space(text.front())) text.remove_prefix(1);
    while (!text.empty() && is_space(text.back())) text.remove_suffix(1);
    return text;
}

bool names_infinity_or_nan(std::string_view text) {
    if (!text.empty() && (text.front() == '-' || text.front() == '+')) text.remove_prefix(1);
    if (!text.empty() && text.front() == '.') text.remove_prefix(1);
    std::string low;
    for (const char c : text.substr(0, 8)) low += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    return low.starts_with("inf") || low.starts_with("nan");
}

/// Reads `1.5`, `2e-3`, `1/16`, `1 1/2` or `1-1/2` from the front of `text`; nothing when there is no number.
std::optional<Exact> take_number(std::string_view& text) {
    std::optional<Exact> whole = take_decimal(text);
    if (!whole) return std::nullopt;
    const auto take_whole_number = [](std::string_view& from) -> std::optional<std::uint64_t> {
        std::uint64_t value = 0;
        const auto [end, error] = std::from_chars(from.data(), from.data() + from.size(), value);
        if (error != std::errc() || value > 1'000'000'000) return std::nullopt;
        from.remove_prefix(static_cast<std::size_t>(end - from.data()));
        return value;
    };
    std::string_view rest = text;
    if (!rest.empty() && rest.front() == '/') {  // n/d
        rest.remove_prefix(1);
        const auto below = take_whole_number(rest);
        if (!below || *below == 0 || !whole->is_small_whole()) return std::nullopt;
        text = rest;
        return divided(*whole, *below);
    }
    if (!rest.empty() && (rest.front() == '-' || is_space(rest.front()))) {  // w n/d, w-n/d
        rest = rest.front() == '-' ? rest.substr(1) : trimmed(rest);
        const auto above = take_whole_number(rest);
        if (above && !rest.empty() && rest.front() == '/') {
            rest.remove_prefix(1);
            const auto below = take_whole_number(rest);
            if (!below || *below == 0 || !whole->is_small_whole()) return std::nullopt;
            text = rest;
            return sum(*whole, divided(Exact{*above, 0, 1}, *below));
        }
    }
    return whole;
}

std::string_view take_unit_word(std::string_view& text) {
    std::size_t end = 0;
    if (!text.empty() && (text.front() == '"' || text.front() == '\'')) {
        end = text.starts_with("''") ? 2 : 1;
    } else {
        while (end < text.size() && !is_space(text[end]) && text[end] != '"' && text[end] != '\'' &&
               (end > 0 || !is_digit(text[end]))) {
            ++end;
        }
    }
    const std::string_view word = text.substr(0, end);
    text.remove_prefix(end);
    return word;
}

bool is_length(const Kind& kind) { return kind.units.data() == length_units.data(); }

/// Units that people spell in another way, and what is written here.
constexpr std::array<std::pair<std::string_view, std::string_view>, 16> other_spellings{{
    {"inch", "in"},
    {"inches", "in"},
    {"\u2033", "in"},
    {"''", "in"},
    {"foot", "ft"},
    {"feet", "ft"},
    {"\u2032", "ft"},
    {"millimeter", "mm"},
    {"millimeters", "mm"},
    {"centimeter", "cm"},
    {"centimeters", "cm"},
    {"meter", "m"},
    {"meters", "m"},
    {"minutes", "min"},
    {"hours", "h"},
    {"hour", "h"},
}};

QuantityFault unknown_unit(std::string_view word, const Kind& kind) {
    if (word.size() > 1 && word.front() == ',' && is_digit(word[1])) {
        return {"a comma stands in a number of " + std::string(kind.name),
                "write numbers without commas, for example 1.5 or 1500"};
    }
    std::vector<std::string_view> known;
    std::string list;
    for (const Unit& unit : kind.units) {
        known.push_back(unit.word);
        list += (list.empty() ? "" : ", ") + std::string(unit.word);
    }
    std::optional<std::string_view> meant = nearest_word(word, known);
    for (const auto& [other, written] : other_spellings) {
        if (word == other && std::find(known.begin(), known.end(), written) != known.end()) meant = written;
    }
    return {"unknown unit " + in_quotes(word) + " of " + std::string(kind.name),
            (meant ? "did you mean " + std::string(*meant) + "? " : std::string()) + "units are " + list};
}

QuantityFault without_unit(const std::string& written, const Kind& kind, bool after_feet) {
    constexpr std::size_t longest_mend = 40;
    if (written.size() > longest_mend)
        return {std::string(kind.name) + " needs a unit: " + in_quotes(written) + " is a bare number", "add its unit"};
    const bool inches = is_length(kind) && (after_feet || written.find('/') != std::string::npos);
    std::string mend = "write " + written + ' ' + std::string(inches ? "in" : kind.proposed);
    if (is_length(kind) && !inches) mend += " (or " + written + " in, if inches are meant)";
    return {std::string(kind.name) + " needs a unit: " + in_quotes(written) + " is a bare number", mend};
}

/// The terms of a quantity, such as `12 ft` and `6 in`; the sign has been taken off.
Parsed<double> parse_terms(std::string_view text, const Kind& kind, const std::string& sign) {
    const auto fault = [](QuantityFault f) { return Parsed<double>{std::nullopt, std::move(f)}; };
    const std::string whole = in_quotes(sign + std::string(text));
    std::string_view rest = text;
    Exact total{0, 0, 1};
    const Unit* previous = nullptr;
    do {
        const std::string_view term = rest;
        const std::optional<Exact> number = take_number(rest);
        if (!number) {
            const bool letters =
                std::any_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) >= 0x80; });
            return fault({whole + " is not " + std::string(kind.name),
                          letters ? "write plain digits and letters, for example 1/4 in"
                                  : "write a number and a unit, for example 1.5 " + std::string(kind.proposed)});
        }
        const std::string written = sign + std::string(trimmed(term.substr(0, term.size() - rest.size())));
        rest = trimmed(rest);
        const std::string_view word = take_unit_word(rest);
        if (word.empty()) return fault(without_unit(written, kind, previous != nullptr && previous->mantissa == 3048));
        const auto unit = std::find_if(kind.units.begin(), kind.units.end(), [&](const Unit& u) { return u.word == word; });
        if (unit == kind.units.end()) return fault(unknown_unit(word, kind));
        const auto size = [](const Unit& u) { return static_cast<double>(u.mantissa) * std::pow(10.0, u.exponent); };
        if (previous != nullptr && size(*unit) >= size(*previous)) {
            return fault({whole + " does not go from larger to smaller units", "write for example 12 ft 6 in"});
        }
        total = sum(total, scaled(*number, unit->mantissa, unit->exponent));
        previous = &*unit;
        if (rest.size() > 1 && rest.front() == '-' && is_digit(rest[1])) rest.remove_prefix(1);  // 12'-6", as on drawings
        rest = trimmed(rest);
    } while (!rest.empty());
    const double value = total.to_double();
    if (value > kind.largest) {
        return fault({whole + " is too large for " + std::string(kind.name), "at most " + std::string(kind.largest_text)});
    }
    if (value == 0 && total.mantissa != 0)
        return fault({whole + " is too small to tell from 0", "write 0 " + std::string(kind.proposed)});
    return {value, {}};
}

Parsed<double> parse(std::string_view text, const Kind& kind, bool may_be_negative) {
    text = trimmed(text);
    const auto fault = [](std::string what, std::string mend) {
        return Parsed<double>{std::nullopt, {std::move(what), std::move(mend)}};
    };
    if (text.empty()) {
        return fault("nothing stands where " + std::string(kind.name) + " is due",
                     "write a number and a unit, for example 1.5 " + std::string(kind.proposed));
    }
    if (names_infinity_or_nan(text)) return fault(in_quotes(text) + " is not a finite number", "write a measured size");
    const bool negative = text.front() == '-';
    const bool is_signed = negative || text.front() == '+';
    Parsed<double> parsed = parse_terms(is_signed ? trimmed(text.substr(1)) : text, kind, negative ? "-" : "");
    if (!parsed || !negative) return parsed;
    if (!may_be_negative && *parsed > 0) {
        return fault(in_quotes(text) + " is negative",
                     is_length(kind) ? "a size is 0 or more (0 means shut)" : "write 0 or more");
    }
    return {*parsed > 0 ? -*parsed : 0.0, {}};
}

}  // namespace

Parsed<double> parse_length(std::string_view text) { return parse(text, length_kind, false); }
Parsed<double> parse_distance(std::string_view text) { return parse(text, distance_kind, false); }
Parsed<double> parse_coordinate(std::string_view text) { return parse(text, distance_kind, true); }
Parsed<double> parse_area(std::string_view text) { return parse(text, area_kind, false); }
Parsed<double> parse_duration(std::string_view text) { return parse(text, duration_kind, false); }
Parsed<double> parse_percent(std::string_view text) { return parse(text, percent_kind, false); }

Parsed<Money> parse_money(std::string_view text) {
    const auto fault = [](std::string what, std::string mend) {
        return Parsed<Money>{std::nullopt, {std::move(what), std::move(mend)}};
    };
    text = trimmed(text);
    const bool negative = text.starts_with('-') || text.starts_with("$-");
    if (negative && text.find('$') != std::string_view::npos) return fault(in_quotes(text) + " is negative", "write $0 or more");
    if (names_infinity_or_nan(text.starts_with('$') ? text.substr(1) : text)) {
        return fault(in_quotes(text) + " is not a finite number", "write for example $12.50");
    }
    if (!text.starts_with('$')) {
        std::string_view rest = text;
        if (take_decimal(rest) && rest.empty()) {
            return fault("money needs its unit: " + in_quotes(text) + " is a bare number",
                         text.size() > 40 ? "write a $ before it" : "write $" + std::string(text));
        }
        return fault(in_quotes(text) + " is not an amount of money", "write for example $12.50");
    }
    text = trimmed(text.substr(1));
    const std::size_t point = std::min(text.find('.'), text.size());
    std::string digits;
    bool well_formed = point > 0;
    for (std::size_t i = 0; i < point && well_formed; ++i) {
        const std::size_t from_point = point - i;
        if (text[i] == ',')
            well_formed = i > 0 && from_point % 4 == 0;
        else if (is_digit(text[i]))
            digits += text[i];
        else
            well_formed = false;
    }
    if (well_formed && text.substr(0, point).find(',') != std::string_view::npos) {
        well_formed = std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(point), ',') ==
                      static_cast<std::ptrdiff_t>((digits.size() - 1) / 3);
    }
    std::string cents(point < text.size() ? text.substr(point + 1) : "00");
    well_formed = well_formed && (cents.size() == 1 || cents.size() == 2) && std::all_of(cents.begin(), cents.end(), is_digit);
    if (cents.size() == 1) cents += '0';
    if (!well_formed)
        return fault(in_quotes("$" + std::string(text)) + " is not dollars and whole cents", "write for example $12.50");
    if (digits.size() > 12)
        return fault(in_quotes("$" + std::string(text)) + " is too large an amount", "at most $999,999,999,999.99");
    digits += cents;
    std::int64_t value = 0;
    std::from_chars(digits.data(), digits.data() + digits.size(), value);
    return {Money{value}, {}};
}

Parsed<std::uint32_t> parse_count(std::string_view text) {
    constexpr std::uint64_t largest = 1'000'000'000;
    std::uint64_t value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc() || end != text.data() + text.size() || value < 1 || value > largest) {
        return {std::nullopt, {in_quotes(text) + " is not a whole number from 1 to 1,000,000,000", "write for example 12"}};
    }
    return {static_cast<std::uint32_t>(value), {}};
}

}  // namespace seamward
