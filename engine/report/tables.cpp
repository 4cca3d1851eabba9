// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/tables.h"

#include <cmath>
#include <map>

#include "base/measure_text.h"
#include "materials/treatment_name.h"

namespace seamward {

namespace {

/// Cells in one row.
template <class... Value>
std::vector<Cell> row_of(Value&&... values) {
    std::vector<Cell> row;
    row.reserve(sizeof...(values));
    (row.emplace_back(std::forward<Value>(values)), ...);
    return row;
}

Cell maybe(const std::optional<double>& number) {
    Cell cell;
    if (number) cell = *number;
    return cell;
}

std::optional<double> along(const std::optional<Point>& at, double Point::*axis) {
    if (!at) return std::nullopt;
    return (*at).*axis;
}

/// Nothing where there is none.
std::optional<double> some(std::size_t count) {
    if (count == 0) return std::nullopt;
    return static_cast<double>(count);
}

/// Length of what is sealed along one piece, meters; nothing for holes and screens.
std::optional<double> length_of(const Shape& shape) {
    if (const auto* slot = std::get_if<Slot>(&shape)) return slot->length;
    if (const auto* ring = std::get_if<Ring>(&shape)) return mid_circumference(*ring);
    return std::nullopt;
}

std::string how_known(const Gap& gap, const Translator& say) {
    switch (gap.evidence.how) {
        case Evidence::How::measured: return say("measured");
        case Evidence::How::modeled: return say("from a drawing");
        case Evidence::How::assumed: return say("assumed");
        case Evidence::How::unstated: break;
    }
    return "";
}

/// Why nothing is done at a gap, where the plan says so.
std::map<GapIndex, std::string> stays_open(const ReportFacts& facts, const Translator& say) {
    std::map<GapIndex, std::string> reasons;
    for (const RefusedGap& refused : facts.plan.refused) {
        if (refused.refusal.treatment.empty()) reasons.emplace(refused.gap, say(refused.refusal.why));
    }
    return reasons;
}

/// In units that people count in: what a spreadsheet shows with few digits.
double in_unit(double amount, Material::By by) {
    constexpr double liters_per_cubic_meter = 1000;
    return by == Material::By::volume ? amount * liters_per_cubic_meter : amount;
}

const char* unit_of(Material::By by) {
    switch (by) {
        case Material::By::volume: return "l";
        case Material::By::area: return "m2";
        case Material::By::length: return "m";
        case Material::By::piece: break;
    }
    return "";
}

std::string csv_field(std::string text) {
    if (!text.empty() && std::string_view("=+-@\t\r").find(text.front()) != std::string_view::npos) text.insert(0, "'");
    if (text.find_first_of(",\"\r\n") == std::string::npos) return text;
    std::string quoted = "\"";
    for (const char letter : text) quoted += letter == '"' ? std::string("\"\"") : std::string(1, letter);
    return quoted + '"';
}

std::string decimal(double number) {
    std::string text = std::to_string(number);  // six digits after the point
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text;
}

struct AsField {
    std::string operator()(std::monostate) const { return ""; }
    std::string operator()(const std::string& text) const { return csv_field(text); }
    std::string operator()(double number) const { return decimal(number); }
    std::string operator()(Money money) const {
        const std::string cents = std::to_string(std::llabs(money.cents) % 100);
        return (money.cents < 0 ? "-" : "") + std::to_string(std::llabs(money.cents) / 100) + '.' +
               (cents.size() < 2 ? "0" : "") + cents;
    }
};

}  // namespace

DataTable closings_table(const ReportFacts& facts, const Translator& say) {
    DataTable table{"closings",
                    "Closings",
                    {{"Step"},
                     {"Gap"},
                     {"Name"},
                     {"Where one stands"},
                     {"Treatment"},
                     {"Pieces"},
                     {"Width, mm"},
                     {"Width, in"},
                     {"Cost", true},
                     {"Minutes", true},
                     {"Widest way still open, mm"}},
                    {}};
    for (std::size_t i = 0; i < facts.plan.steps.size(); ++i) {
        const PlanStep& step = facts.plan.steps[i];
        const Gap& gap = facts.survey()[step.gap];
        const double width = clear_width(gap.shape);
        table.rows.push_back(row_of(double(i + 1), gap.id, say(gap.called()), say(zone_words(step.stop.zone)),
                                    say(treatment_name(step.option.treatment)), double(gap.count), answer_millimeters(width),
                                    inches_text(width), step.option.cost, step.option.minutes,
                                    answer_millimeters(step.widest_open_after)));
    }
    return table;
}

DataTable materials_table(const ReportFacts& facts, const Translator& say) {
    DataTable table{"materials",
                    "Materials",
                    {{"Material"},
                     {"Needed"},
                     {"Counted in"},
                     {"Sold as"},
                     {"Cases"},
                     {"Pieces in a case"},
                     {"Single packs"},
                     {"Price of one"},
                     {"Cost", true}},
                    {}};
    for (const Purchase& purchase : facts.plan.materials) {
        const Material& material = *facts.settings.planning.prices.find(purchase.material);
        table.rows.push_back(row_of(say(as_named(material.name)), in_unit(purchase.needed, material.by),
                                    std::string(unit_of(material.by)), say(material.unit), double(purchase.cases),
                                    maybe(some(material.in_case)), double(purchase.units), material.price, purchase.cost));
    }
    return table;
}

DataTable gaps_table(const ReportFacts& facts, const Translator& say) {
    DataTable table{"gaps",
                    "Gaps",
                    {{"Gap"},
                     {"Name"},
                     {"From"},
                     {"To"},
                     {"Shape"},
                     {"Pieces"},
                     {"Width, mm"},
                     {"Width, in"},
                     {"Plus or minus, mm"},
                     {"Length of a piece, m"},
                     {"How the width is known"},
                     {"What it is there for"},
                     {"East, m"},
                     {"North, m"},
                     {"Up, m"},
                     {"Step"},
                     {"Treatment"},
                     {"Why it stays open"}},
                    {}};
    const std::map<GapIndex, std::string> open = stays_open(facts, say);
    const std::vector<Gap>& gaps = facts.survey().gaps;
    for (std::uint32_t i = 0; i < gaps.size(); ++i) {
        const Gap& gap = gaps[i];
        const std::size_t step = facts.closing_at(GapIndex{i});
        const auto why = open.find(GapIndex{i});
        std::vector<Cell> row = row_of(
            gap.id, say(gap.called()), say(facts.survey()[gap.between[0]].called()), say(facts.survey()[gap.between[1]].called()),
            say(shape_word(gap.shape)), double(gap.count), answer_millimeters(clear_width(gap.shape)),
            inches_text(clear_width(gap.shape)), answer_millimeters(gap.evidence.plus_minus), maybe(length_of(gap.shape)),
            how_known(gap, say), gap.duty == Duty::none ? std::string() : say(duty_words(gap.duty)));
        for (double Point::*axis : {&Point::x, &Point::y, &Point::z}) row.push_back(maybe(along(gap.at, axis)));
        row.push_back(maybe(some(step)));
        row.push_back(step > 0 ? say(treatment_name(facts.plan.steps[step - 1].option.treatment)) : std::string());
        row.push_back(why != open.end() ? why->second : std::string());
        table.rows.push_back(std::move(row));
    }
    return table;
}

std::string csv_text(const DataTable& table, const Translator& say) {
    std::string text;
    const auto line = [&](std::size_t count, auto&& field) {
        for (std::size_t i = 0; i < count; ++i) text += (i > 0 ? "," : "") + field(i);
        text += "\r\n";
    };
    line(table.columns.size(), [&](std::size_t i) { return csv_field(say(table.columns[i].head)); });
    for (const std::vector<Cell>& row : table.rows)
        line(row.size(), [&](std::size_t i) { return std::visit(AsField(), row[i]); });
    return text;
}

}  // namespace seamward
