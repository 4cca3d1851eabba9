// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "base/date.h"
#include "base/diagnostics.h"
#include "base/document.h"
#include "base/quantity.h"

namespace seamward {

/// Words that a file may use for the values of an enumeration, in the order of its enumerators.
using Words = std::span<const std::string_view>;

/// One mapping of a file, read against the keys that it may have. What is wrong with it goes to a Diagnostics
/// and reading goes on, so that all faults of a file are found at once. A reader answers nothing both for an
/// absent key and for a faulty value (which has then been reported).
class Record {
public:
    static constexpr std::size_t most_keys = 28;

    /// `called` names the mapping in messages ("gap", "slot"). Reports anything but a mapping or nothing, and keys that
    /// are not in `keys`.
    Record(Node mapping, Words keys, std::string_view called, Diagnostics& diagnostics);

    /// The value of a key, absent when the file has none.
    [[nodiscard]] Node operator[](std::string_view key) const;
    [[nodiscard]] bool has(std::string_view key) const { return (*this)[key].present(); }
    [[nodiscard]] Place place() const { return mapping_.place(); }
    /// Whether this was a mapping at all.
    [[nodiscard]] bool usable() const { return usable_; }

    /// Reports every one of `keys` that is missing; true when none is.
    bool require(std::initializer_list<std::string_view> keys) const;

    [[nodiscard]] std::optional<double> length(std::string_view key) const { return quantity(key, parse_length); }
    [[nodiscard]] std::optional<double> area(std::string_view key) const { return quantity(key, parse_area); }
    [[nodiscard]] std::optional<double> percent(std::string_view key) const { return quantity(key, parse_percent); }
    [[nodiscard]] std::optional<Money> money(std::string_view key) const { return quantity(key, parse_money); }
    [[nodiscard]] std::optional<std::uint32_t> count(std::string_view key) const { return quantity(key, parse_count); }
    [[nodiscard]] std::optional<double> distance(std::string_view key) const { return quantity(key, parse_distance); }
    [[nodiscard]] std::optional<Date> date(std::string_view key) const { return quantity(key, parse_date); }
    [[nodiscard]] std::optional<std::chrono::month_day> day_of_year(std::string_view key) const {
        return quantity(key, parse_day_of_year);
    }
    [[nodiscard]] std::optional<double> duration(std::string_view key) const { return quantity(key, parse_duration); }
    /// Text in one line, such as an id or a name; blank text is no text. Space around it is dropped.
    [[nodiscard]] std::optional<std::string> line(std::string_view key) const;
    /// Text of any number of lines, such as a note.
    [[nodiscard]] std::optional<std::string> text(std::string_view key) const;
    /// A line that must stand there: reports a missing key and blank text, and answers the empty text.
    [[nodiscard]] std::string required_line(std::string_view key) const;
    [[nodiscard]] std::optional<bool> truth(std::string_view key) const;
    /// The position in `words` of the word that stands there.
    [[nodiscard]] std::optional<std::size_t> word(std::string_view key, Words words) const;
    /// Calls `visit` with each item of a list; an empty value is an empty list.
    void each(std::string_view key, const std::function<void(Node)>& visit) const;

    void report(Place place, std::string what, std::string mend = "") const {
        diagnostics_->add(place, std::move(what), std::move(mend));
    }

private:
    struct Field {
        std::string_view key;
        Node value;
    };

    template <class Value>
    [[nodiscard]] std::optional<Value> quantity(std::string_view key, Parsed<Value> (*parse)(std::string_view)) const;
    [[nodiscard]] Node scalar(std::string_view key, std::string_view due) const;

    Node mapping_;
    std::string_view called_;
    Diagnostics* diagnostics_;
    std::array<Field, most_keys> fields_;
    std::size_t field_count_ = 0;
    bool split_by_comma_ = false;               ///< `{width: 0,25 in}` reads as a width of 0 and a key `25 in`
    std::vector<std::string_view> misspelled_;  ///< keys that unknown ones were probably meant to be
    bool usable_ = false;
};

/// Text that must not be blank in a node of its own, such as an item of a list; control characters are faults.
[[nodiscard]] std::optional<std::string> read_text(Node node, std::string_view called, Diagnostics& diagnostics);
/// The same in one line.
[[nodiscard]] std::optional<std::string> read_line(Node node, std::string_view called, Diagnostics& diagnostics);

}  // namespace seamward
