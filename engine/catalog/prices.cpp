// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/prices.h"

#include <algorithm>
#include <array>

#include "base/document.h"
#include "base/exact.h"
#include "base/nearest_word.h"
#include "base/record.h"
#include "base/text.h"

namespace seamward {

namespace {

using By = Material::By;

constexpr std::array<std::string_view, 11> book_keys{"catalog",  "edition",    "name",           "labor_per_hour",
                                                     "call_out", "waste",      "overhead",       "tax",
                                                     "deposit",  "valid_days", "warranty_months"};
constexpr std::array<std::string_view, 12> all_book_keys{"catalog",         "edition",  "name", "labor_per_hour", "call_out",
                                                         "waste",           "overhead", "tax",  "deposit",        "valid_days",
                                                         "warranty_months", "materials"};
constexpr std::array<std::string_view, 6> material_keys{"id", "name", "unit", "holds", "price", "case"};
constexpr std::array<std::string_view, 2> case_keys{"units", "price"};
constexpr std::array<std::string_view, 1> book_words{"prices"};
constexpr std::array<std::string_view, 4> by_words{"volume", "area", "length", "pieces"};
constexpr std::array<std::string_view, 4> by_examples{"10.1 fl oz", "12 ft2", "20 ft", "100 pieces"};
constexpr std::uint32_t most_days = 3650, most_months = 1200;  // nobody promises more, and dates stay dates
constexpr double largest_volume = 1000;                        // cubic meters; no unit of a shop holds more, and sums stay finite

struct VolumeUnit {
    std::string_view word;
    std::uint64_t mantissa;
    int exponent;
};
/// US customary units after the inch of 25.4 mm: a gallon is 231 in3 and 128 fl oz.
constexpr std::array volume_units{VolumeUnit{"cm3", 1, -6},
                                  VolumeUnit{"ml", 1, -6},
                                  VolumeUnit{"l", 1, -3},
                                  VolumeUnit{"L", 1, -3},
                                  VolumeUnit{"m3", 1, 0},
                                  VolumeUnit{"in3", 16387064, -12},
                                  VolumeUnit{"ft3", 28316846592, -12},
                                  VolumeUnit{"fl oz", 295735295625, -16},
                                  VolumeUnit{"gal", 3785411784, -12}};

const VolumeUnit* volume_unit_at_end(std::string_view text) {
    for (const VolumeUnit& unit : volume_units) {
        if (!text.ends_with(unit.word)) continue;
        const std::string_view before = text.substr(0, text.size() - unit.word.size());
        if (!before.empty() && (before.back() == ' ' || (before.back() >= '0' && before.back() <= '9'))) return &unit;
    }
    return nullptr;
}

bool ends_with_any(std::string_view text, std::initializer_list<std::string_view> words) {
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) { return text.ends_with(word); });
}

By counted_by(std::string_view text) {
    if (volume_unit_at_end(text) != nullptr) return By::volume;
    if (ends_with_any(text, {"piece", "pieces"})) return By::piece;
    return ends_with_any(text, {"2"}) ? By::area : By::length;
}

Parsed<double> parse_pieces(std::string_view text) {
    text = text.substr(0, text.rfind("piece"));
    while (text.ends_with(' ')) text.remove_suffix(1);
    const Parsed<std::uint32_t> count = parse_count(text);
    return {count ? std::optional<double>(*count) : std::nullopt, count.fault};
}

class BookReader {
public:
    BookReader(std::string_view yaml, const std::string& shown_as, const PriceBook* base)
        : BookReader(parse_yaml(yaml, shown_as), base) {}
    BookReader(Document document, const PriceBook* base)
        : document_(std::move(document)),
          diagnostics_(document_.file()),
          base_(base),
          record_(document_.root(), all_book_keys, "price book", diagnostics_),
          book_(base != nullptr ? *base : PriceBook()) {}

    PriceBook read() {
        record_.require({"catalog"});
        (void)record_.word("catalog", book_words);
        if (base_ == nullptr) {
            for (const std::string_view key : book_keys) record_.require({key});
            record_.require({"materials"});
        }
        (void)record_.line("edition");
        book_.name = record_.line("name").value_or(book_.name.empty() ? "" : book_.name + ", some replaced");
        book_.labor_per_hour = record_.money("labor_per_hour").value_or(book_.labor_per_hour);
        book_.call_out = record_.money("call_out").value_or(book_.call_out);
        book_.waste = record_.percent("waste").value_or(book_.waste);
        book_.overhead = record_.percent("overhead").value_or(book_.overhead);
        book_.tax = record_.percent("tax").value_or(book_.tax);
        book_.deposit = share_of_one("deposit", book_.deposit);
        book_.valid_days = count_up_to("valid_days", most_days, book_.valid_days);
        book_.warranty_months = count_up_to("warranty_months", most_months, book_.warranty_months);
        record_.each("materials", [&](Node node) { read_material(node); });
        diagnostics_.throw_if_any();
        return std::move(book_);
    }

private:
    double share_of_one(std::string_view key, double otherwise) {
        const double share = record_.percent(key).value_or(otherwise);
        if (share > 1) record_.report(record_[key].place(), std::string(key) + " is more than 100 %");
        return share;
    }

    std::uint32_t count_up_to(std::string_view key, std::uint32_t most, std::uint32_t otherwise) {
        const std::uint32_t count = record_.count(key).value_or(otherwise);
        if (count > most) record_.report(record_[key].place(), std::string(key) + " is more than " + std::to_string(most));
        return count;
    }

    void read_material(Node node) {
        const Record record(node, material_keys, "material", diagnostics_);
        if (!record.usable()) return;
        const std::string id = record.required_line("id");
        if (id.empty()) return;
        const Material* before = base_ != nullptr ? base_->find(id) : nullptr;
        if (base_ != nullptr && before == nullptr) {
            std::vector<std::string_view> known;
            for (const Material& material : base_->materials) known.emplace_back(material.id);
            record.report(record["id"].place(), "unknown material " + in_quotes(id), suggestion(id, known));
            return;
        }
        if (std::find(seen_.begin(), seen_.end(), id) != seen_.end())
            record.report(record.place(), "material " + id + " stands twice", "keep one");
        seen_.push_back(id);
        Material material = before != nullptr ? *before : Material();
        material.id = id;
        if (before == nullptr) record.require({"name", "unit", "holds"});
        record.require({"price"});
        if (record.has("unit") != record.has("holds") && before != nullptr)
            record.report(record.place(), "unit and holds belong together", "write both, or neither to keep the shipped pack");
        material.name = record.line("name").value_or(material.name);
        material.unit = record.line("unit").value_or(material.unit);
        if (record.has("holds")) read_holds(record, material, before);
        material.price = record.money("price").value_or(material.price);
        read_case(record, material);
        if (before == nullptr)
            book_.materials.push_back(std::move(material));
        else
            book_.materials[static_cast<std::size_t>(before - base_->materials.data())] = std::move(material);
    }

    void read_holds(const Record& record, Material& material, const Material* before) {
        const Node node = record["holds"];
        const By by = node.is_scalar() ? counted_by(node.text()) : By::piece;
        if (!node.is_scalar() || (before != nullptr && by != before->by)) {
            const auto due = static_cast<std::size_t>(before != nullptr ? before->by : by);
            record.report(node.place(), "holds: " + material.id + " is counted by " + std::string(by_words.at(due)),
                          "write for example " + std::string(by_examples.at(due)));
            return;
        }
        const Parsed<double> holds = by == By::volume  ? parse_volume(node.text())
                                     : by == By::area  ? parse_area(node.text())
                                     : by == By::piece ? parse_pieces(node.text())
                                                       : parse_distance(node.text());
        if (!holds)
            record.report(node.place(), "holds: " + holds.fault.what, holds.fault.mend);
        else if (*holds <= 0)
            record.report(node.place(), "holds must be more than 0");
        material.by = by;
        material.holds = holds.value.value_or(1);
    }

    /// What is not said of cases is not known of the user's own price, so the shipped case goes.
    void read_case(const Record& record, Material& material) {
        material.in_case = 0;
        material.case_price = {};
        if (!record.has("case")) return;
        const Record pack(record["case"], case_keys, "case", diagnostics_);
        pack.require({"units", "price"});
        material.in_case = pack.count("units").value_or(0);
        material.case_price = pack.money("price").value_or(Money());
    }

    Document document_;
    Diagnostics diagnostics_;
    const PriceBook* base_;
    Record record_;
    PriceBook book_;
    std::vector<std::string> seen_;
};

}  // namespace

const Material* PriceBook::find(std::string_view id) const {
    for (const Material& material : materials) {
        if (material.id == id) return &material;
    }
    return nullptr;
}

PriceBook read_price_book(std::string_view yaml, const std::string& shown_as) {
    return BookReader(yaml, shown_as, nullptr).read();
}

PriceBook read_price_book(std::string_view yaml, const std::string& shown_as, const PriceBook& base) {
    return BookReader(yaml, shown_as, &base).read();
}

PriceBook read_prices(const std::filesystem::path& path, const std::string& shown_as, const PriceBook& base) {
    return BookReader(read_document(path, shown_as), &base).read();
}

Parsed<double> parse_volume(std::string_view text) {
    const VolumeUnit* unit = volume_unit_at_end(text);
    const std::string_view whole = text;
    const std::optional<Exact> number = take_decimal(text);
    while (text.starts_with(' ')) text.remove_prefix(1);
    if (!number || unit == nullptr || text != unit->word)
        return {std::nullopt, {in_quotes(whole) + " is no volume", "write a number and cm3, ml, l, m3, in3, ft3, fl oz or gal"}};
    const double volume = scaled(*number, unit->mantissa, unit->exponent).to_double();
    if (volume > largest_volume) return {std::nullopt, {in_quotes(whole) + " is more than 1000 m3", "check the unit"}};
    return {volume, {}};
}

}  // namespace seamward
