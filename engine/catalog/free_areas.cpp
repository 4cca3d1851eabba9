// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/free_areas.h"

#include "catalog/table_reader.h"

namespace seamward {

namespace {

constexpr std::array<std::string_view, 5> mesh_keys{"id", "name", "counts", "wire", "source"};
constexpr std::array<std::string_view, 7> rule_keys{"id", "name", "free", "per_floor", "per_input", "share", "source"};
constexpr double inch = 0.0254;

/// Reports a figure that is 0.
template <class Value>
Value more_than_none(const Record& record, std::string_view key, std::optional<Value> value) {
    if (value && !(*value > Value{})) record.report(record[key].place(), std::string(key) + " must be more than 0");
    return value.value_or(Value{});
}

void read_counts(const Record& record, MeshKind& mesh) {
    if (!record.require({"counts"})) return;
    const Node node = record["counts"];
    if (!node.is_sequence() || node.size() < 1 || node.size() > 2) {
        record.report(node.place(), "counts holds one number, or two where the sides of the openings differ",
                      "write counts: [16]");
        return;
    }
    std::size_t side = 0;
    record.each("counts", [&](Node item) {
        const Parsed<std::uint32_t> count =
            item.is_scalar() ? parse_count(item.text()) : Parsed<std::uint32_t>{std::nullopt, {"a count is a whole number", ""}};
        if (!count) record.report(item.place(), "counts: " + count.fault.what, count.fault.mend);
        mesh.counts.at(side++) = count.value.value_or(1);
    });
    if (side == 1) mesh.counts[1] = mesh.counts[0];
}

}  // namespace

double MeshKind::opening() const { return inch / std::max(counts[0], counts[1]) - wire; }

double MeshKind::open_share() const {
    const auto along = [&](std::uint32_t count) { return 1 - wire * count / inch; };
    return along(counts[0]) * along(counts[1]);
}

Table<MeshKind> read_meshes(std::string_view yaml, const std::string& shown_as) {
    TableReader<MeshKind> reader(yaml, shown_as, "meshes");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, mesh_keys, "mesh", diagnostics);
        MeshKind mesh;
        if (!record.usable()) return mesh;
        mesh.id = record.required_line("id");
        mesh.name = record.required_line("name");
        read_counts(record, mesh);
        record.require({"wire"});
        mesh.wire = more_than_none(record, "wire", record.length("wire"));
        if (mesh.counts[0] > 0 && mesh.opening() <= 0)
            record.report(record["wire"].place(), "wires this thick leave nothing open at that count", "check both");
        mesh.source = reader.source(record);
        return mesh;
    });
}

Table<FreeAreaRule> read_free_areas(std::string_view yaml, const std::string& shown_as) {
    TableReader<FreeAreaRule> reader(yaml, shown_as, "free_areas");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, rule_keys, "rule", diagnostics);
        FreeAreaRule rule;
        if (!record.usable()) return rule;
        rule.id = record.required_line("id");
        rule.name = record.required_line("name");
        rule.free = more_than_none(record, "free", record.area("free"));
        rule.per_floor = more_than_none(record, "per_floor", record.area("per_floor"));
        rule.per_input = more_than_none(record, "per_input", record.count("per_input"));
        rule.share = more_than_none(record, "share", record.percent("share"));
        if (rule.share > 1) record.report(record["share"].place(), "share is more than 100 %");
        const int kinds = (record.has("per_floor") ? 1 : 0) + (record.has("per_input") ? 1 : 0) + (record.has("share") ? 1 : 0);
        if (kinds != 1)
            record.report(record.place(), "a rule has one of per_floor, per_input and share, not " + std::to_string(kinds));
        else if (record.has("free") == record.has("share"))
            record.report(record.place(), record.has("free") ? "free says nothing of a louver" : "free is missing",
                          record.has("free") ? "remove it" : "add free: 1 ft2");
        rule.source = reader.source(record);
        return rule;
    });
}

}  // namespace seamward
