// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/joint_figures.h"

#include "base/exact.h"
#include "catalog/table_reader.h"

namespace seamward {

namespace {

using Kind = JointFigure::Kind;

constexpr std::array<std::string_view, 9> keys{"id", "kind", "length", "share", "shrinks", "per", "degrees", "source", "note"};
constexpr std::array<std::string_view, 6> kind_words{"length", "share", "rod", "class", "expansion", "degrees"};
/// The key that holds the value of each kind.
constexpr std::array<std::string_view, 6> value_keys{"length", "share", "length", "share", "per", "degrees"};

/// Kelvin, from `130 F` or `72 C` between two temperatures.
double read_degrees(const Record& record) {
    const Node node = record["degrees"];
    std::string_view text = node.present() ? node.text() : "";
    const std::optional<Exact> number = take_decimal(text);
    const bool fahrenheit = text == " F";
    if (node.present() && (!number || (!fahrenheit && text != " C")))
        record.report(node.place(), "degrees: " + in_quotes(node.text()) + " is no range of temperature",
                      "write for example 130 F or 72 C");
    if (!number) return 0;
    return number->to_double() * (fahrenheit ? 5.0 / 9.0 : 1);
}

/// Growth for a kelvin, from `3.6e-6 /F` or `6.5e-6 /C`.
double read_expansion(const Record& record) {
    const Node node = record["per"];
    std::string_view text = node.present() ? node.text() : "";
    const std::optional<Exact> number = take_decimal(text);
    const std::string_view unit = text.starts_with(' ') ? text.substr(1) : text;
    if (node.present() && (!number || (unit != "/F" && unit != "/C")))
        record.report(node.place(), "per: " + in_quotes(node.text()) + " is no growth for a degree",
                      "write for example 3.6e-6 /F or 6.5e-6 /C");
    if (!number) return 0;
    return unit == "/F" ? scaled(*number, 18, -1).to_double() : number->to_double();
}

struct Rule {
    std::string_view id;
    double JointRules::*value;
};
constexpr std::array<Rule, 10> rules{{{"width-least", &JointRules::width_least},
                                      {"depth-share", &JointRules::depth_share},
                                      {"depth-least", &JointRules::depth_least},
                                      {"depth-most", &JointRules::depth_most},
                                      {"caulk-below", &JointRules::caulk_below},
                                      {"stock-step", &JointRules::stock_step},
                                      {"rod-larger", &JointRules::rod_larger},
                                      {"rod-larger-small", &JointRules::rod_larger_small},
                                      {"rod-small-to", &JointRules::rod_small_to},
                                      {"range", &JointRules::range}}};

}  // namespace

Table<JointFigure> read_joints(std::string_view yaml, const std::string& shown_as) {
    TableReader<JointFigure> reader(yaml, shown_as, "joints");
    double thinner = 0;
    Table<JointFigure> table = reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, keys, "joint figure", diagnostics);
        JointFigure figure;
        if (!record.usable()) return figure;
        figure.id = record.required_line("id");
        figure.source = reader.source(record);
        figure.note = record.text("note").value_or("");
        record.require({"kind"});
        const std::optional<std::size_t> kind = record.word("kind", kind_words);
        if (!kind) return figure;
        figure.kind = static_cast<Kind>(*kind);
        const std::string_view due = value_keys.at(*kind);
        for (const std::string_view key : {"length", "share", "shrinks", "per", "degrees"}) {
            if (record.has(key) && key != due && !(key == "shrinks" && figure.kind == Kind::sealant_class))
                record.report(record[key].place(),
                              std::string(key) + " says nothing of kind: " + std::string(kind_words.at(*kind)), "remove it");
        }
        if (!record.require({due})) return figure;
        figure.value = due == "length"    ? record.length(due).value_or(0)
                       : due == "share"   ? record.percent(due).value_or(0)
                       : due == "degrees" ? read_degrees(record)
                                          : read_expansion(record);
        figure.shrinks = figure.kind == Kind::sealant_class ? record.percent("shrinks").value_or(figure.value) : 0;
        if (figure.value <= 0) record.report(record[due].place(), std::string(due) + " must be more than 0");
        if (figure.kind == Kind::rod && figure.value <= thinner)
            record.report(record.place(), figure.id + " is not thicker than the rod before it", "sort the rods");
        if (figure.kind == Kind::rod) thinner = figure.value;
        return figure;
    });
    Diagnostics missing(shown_as);
    for (const Rule& rule : rules) {
        if (table.find(rule.id) == nullptr)
            missing.add({}, "the table has no " + std::string(rule.id), "add a row with id: " + std::string(rule.id));
    }
    missing.throw_if_any();
    return table;
}

JointRules joint_rules(const Table<JointFigure>& table) {
    JointRules read;
    for (const Rule& rule : rules) read.*rule.value = table.find(rule.id)->value;
    return read;
}

}  // namespace seamward
