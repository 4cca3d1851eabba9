// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/features.h"

#include "catalog/table_reader.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

constexpr std::array<std::string_view, 12> host_words{"wall", "gable",      "partition", "ceiling", "floor",      "roof",
                                                      "eave", "foundation", "rim",       "opening", "block-wall", "duct"};
constexpr std::array<std::string_view, 17> place_words{
    "outside",       "sheathing", "inside", "through",  "top",   "bottom", "end",  "soffit", "soffit-wall",
    "soffit-fascia", "fascia",    "deck",   "blocking", "outer", "inner",  "back", "side"};
constexpr std::array<std::string_view, 4> shape_words{"slot", "hole", "ring", "mesh"};
constexpr std::array<std::string_view, 7> form_words{"plain", "around", "beside", "line", "cut", "edge", "corner"};
constexpr std::array<std::string_view, 4> edge_words{"bottom", "top", "left", "right"};
/// As in job files.
constexpr std::array<std::string_view, 10> duty_file_words{"none",           "drain", "weep",   "vent",     "exhaust",
                                                           "combustion-air", "flood", "relief", "movement", "operable"};
constexpr std::array<std::string_view, 11> feature_keys{"id",    "name",    "hosts",   "gaps", "air", "up",
                                                        "reach", "caution", "sources", "note", "hire"};
constexpr std::array<std::string_view, 20> gap_keys{"id",      "name",   "at",      "shape", "form",   "width",   "diameter",
                                                    "opening", "around", "length",  "size",  "edges",  "upright", "rise",
                                                    "never",   "count",  "spacing", "duty",  "insert", "usual"};
constexpr std::array<std::string_view, 2> caution_keys{"text", "source"};
constexpr std::array<std::string_view, 2> never_keys{"reason", "source"};

constexpr std::array wall_places{At::outside, At::sheathing, At::inside, At::through, At::top,
                                 At::bottom,  At::outer,     At::inner,  At::back};
constexpr std::array pane_places{At::through, At::outer, At::inner};
constexpr std::array partition_places{At::inside, At::through, At::top, At::bottom, At::outer, At::inner, At::back};
constexpr std::array eave_places{At::soffit, At::soffit_wall, At::soffit_fascia, At::fascia, At::deck, At::blocking, At::end};
constexpr std::array foundation_places{At::through, At::top};
constexpr std::array rim_places{At::through};
constexpr std::array opening_places{At::outside, At::inside, At::through, At::outer, At::inner, At::back};
constexpr std::array block_wall_places{At::outside, At::top, At::end};
constexpr std::array duct_places{At::side};

/// The keys that say how large a gap of one kind is, how it lies and how many there are: those that it needs and those that it
/// may have.
struct Kind {
    std::array<std::string_view, 3> needs;
    std::array<std::string_view, 4> may;

    [[nodiscard]] bool takes(std::string_view key) const {
        return std::find(needs.begin(), needs.end(), key) != needs.end() || std::find(may.begin(), may.end(), key) != may.end();
    }
};
constexpr std::array<std::string_view, 10> kind_keys{"width", "diameter", "opening", "around", "length",
                                                     "size",  "edges",    "upright", "count",  "spacing"};

Kind kind_of(ShapeKind shape, Form form) {
    if (shape == ShapeKind::hole) return {{"diameter"}, {"edges", "count", "spacing"}};
    if (shape == ShapeKind::ring) return {{"width", "around"}, {"count", "spacing"}};
    if (shape == ShapeKind::mesh) return {{"opening", "size"}, {"count", "spacing"}};
    switch (form) {
        case Form::around:
        case Form::beside: return {{"width", "size"}, {"count", "spacing"}};
        case Form::cut: return {{"width", "length"}, {"edges", "upright", "count", "spacing"}};
        case Form::edge: return {{"width", "edges"}, {}};
        case Form::corner: return {{"width", "length", "edges"}, {}};
        default: return {{"width"}, {"length", "upright", "spacing"}};
    }
}

/// "a slot with form beside", "a ring".
std::string kind_name(ShapeKind shape, Form form) {
    const std::string word(shape_words.at(static_cast<std::size_t>(shape)));
    return "a " + word + (form == Form::plain ? "" : " with form " + std::string(form_word(form)));
}

/// A length that is more than 0.
double size_of(const Record& record, std::string_view key) {
    const std::optional<double> length = record.length(key);
    if (length && *length <= 0) record.report(record[key].place(), std::string(key) + " must be more than 0");
    return length.value_or(0);
}

void read_size(const Record& record, FeatureGap& gap) {
    const Node node = record["size"];
    if (!node.present()) return;
    if (!node.is_sequence() || node.size() != 2) {
        record.report(node.place(), "size holds two lengths, across and up", "write size: [80 mm, 115 mm]");
        return;
    }
    std::size_t side = 0;
    node.for_each_item([&](Node item) {
        const Parsed<double> length = item.is_scalar()
                                          ? parse_length(item.text())
                                          : Parsed<double>{std::nullopt, {"a side is a length", "write for example 80 mm"}};
        if (!length)
            record.report(item.place(), "size: " + length.fault.what, length.fault.mend);
        else if (*length <= 0)
            record.report(item.place(), "size must be more than 0");
        gap.size.at(side++) = length.value.value_or(0);
    });
}

void read_edges(const Record& record, FeatureGap& gap) {
    std::vector<std::string_view> known(edge_words.begin(), edge_words.end());
    if (gap.form == Form::corner) known = {"left", "right"};
    record.each("edges", [&](Node node) {
        const auto word = node.is_scalar() ? std::find(edge_words.begin(), edge_words.end(), node.text()) : edge_words.end();
        const auto edge = static_cast<Edge>(word - edge_words.begin());
        if (word == edge_words.end() || std::find(known.begin(), known.end(), *word) == known.end())
            record.report(node.place(), "unknown edge " + in_quotes(node.text()), suggestion(node.text(), known));
        else if (std::find(gap.edges.begin(), gap.edges.end(), edge) != gap.edges.end())
            record.report(node.place(), "edge " + std::string(*word) + " stands twice", "keep one");
        else
            gap.edges.push_back(edge);
    });
    if (record.has("edges") && (record["edges"].is_null() || (record["edges"].is_sequence() && record["edges"].size() == 0)))
        record.report(record["edges"].place(), "edges is empty", "write for example [bottom]");
}

void read_shape(const Record& record, FeatureGap& gap) {
    record.require({"shape"});
    const std::optional<std::size_t> shape = record.word("shape", shape_words);
    if (!shape) return;
    gap.shape = static_cast<ShapeKind>(*shape);
    const bool slot = gap.shape == ShapeKind::slot;
    if (slot != record.has("form"))
        record.report(slot ? record.place() : record["form"].place(), slot ? "slot has no form" : "only a slot has a form",
                      slot ? "add form: around, beside, line, cut, edge or corner" : "remove it");
    if (slot) {
        const std::optional<std::size_t> form = record.word("form", Words(form_words).subspan(1));
        if (!form) return;
        gap.form = static_cast<Form>(*form + 1);
    }
    const Kind kind = kind_of(gap.shape, gap.form);
    for (const std::string_view key : kind.needs) {
        if (!key.empty()) record.require({key});
    }
    for (const std::string_view key : kind_keys) {
        if (record.has(key) && !kind.takes(key))
            record.report(record[key].place(), std::string(key) + " says nothing of " + kind_name(gap.shape, gap.form),
                          "remove it");
    }
    gap.width = size_of(record, gap.shape == ShapeKind::hole ? "diameter" : gap.shape == ShapeKind::mesh ? "opening" : "width");
    gap.around = size_of(record, "around");
    gap.length = size_of(record, "length");
    gap.upright = record.truth("upright").value_or(false);
    read_size(record, gap);
    read_edges(record, gap);
}

void read_number(const Record& record, FeatureGap& gap) {
    gap.rise = record.length("rise").value_or(0);
    gap.spacing = size_of(record, "spacing");
    const bool many = record.has("spacing") && gap.form != Form::line;
    gap.count = record.count("count").value_or(many ? 0 : 1);
    if (gap.form == Form::corner) gap.count = static_cast<std::uint32_t>(gap.edges.size());
}

/// A mapping of a reason, in `key`, and its source.
Advice read_advice(const Record& record, std::string_view called, Words keys, TableReader<Feature>& reader) {
    if (!record.has(called)) return {};
    const Record advice = reader.record(record[called], keys, called);
    if (!advice.usable()) return {};
    return {advice.required_line(keys.front()), reader.source(advice)};
}

/// What a gap may be closed with, and what it must not be.
void read_closing(const Record& record, FeatureGap& gap, const Table<Treatment>& treatments, TableReader<Feature>& reader) {
    gap.duty = static_cast<Duty>(record.word("duty", duty_file_words).value_or(0));
    gap.never = read_advice(record, "never", never_keys, reader);
    gap.usual = record.line("usual").value_or("");
    const Treatment* usual = treatments.find(gap.usual);
    if (!gap.usual.empty() && usual == nullptr)
        record.report(record["usual"].place(), "unknown treatment " + in_quotes(gap.usual),
                      suggestion(gap.usual, treatments.ids()));
    if (record.has("never") && record.has("usual"))
        record.report(record["usual"].place(), "a gap that is never closed has no usual treatment", "keep never or usual");
    const bool stays_open = record.has("never") || (usual != nullptr && usual->leaves_mesh());
    if (serves_as_opening(gap.duty) && !stays_open)
        record.report(record["duty"].place(), std::string("closing defeats the duty of this gap: ") + duty_words(gap.duty),
                      "add never: {reason: ..., source: ...} or usual: mesh");
}

void read_place(const Record& record, const Feature& feature, FeatureGap& gap) {
    record.require({"at"});
    const std::optional<std::size_t> place = record.word("at", place_words);
    if (!place) return;
    gap.at = static_cast<At>(*place);
    for (const Host host : feature.hosts) {
        const std::span<const At> places = places_of(host);
        if (std::find(places.begin(), places.end(), gap.at) != places.end()) continue;
        std::string known;
        for (const At at : places) known += (known.empty() ? "" : ", ") + std::string(place_word(at));
        record.report(record["at"].place(), "a " + std::string(host_word(host)) + " has no " + std::string(place_word(gap.at)),
                      "places of a " + std::string(host_word(host)) + ": " + known);
    }
    const bool of_air = gap.at == At::outer || gap.at == At::inner || gap.at == At::back;
    const bool hollow = std::all_of(feature.hosts.begin(), feature.hosts.end(), [](Host host) { return host == Host::opening; });
    if (of_air && feature.air.empty() && !hollow)
        record.report(record["at"].place(), std::string(place_word(gap.at)) + " leads into air that the feature does not enclose",
                      "add air: \"dryer duct\" to the feature");
}

FeatureGap read_feature_gap(Node node, const Feature& feature, const Table<Treatment>& treatments, TableReader<Feature>& reader) {
    const Record record = reader.record(node, gap_keys, "gap");
    FeatureGap gap;
    if (!record.usable()) return gap;
    read_place(record, feature, gap);
    read_shape(record, gap);
    read_number(record, gap);
    read_closing(record, gap, treatments, reader);
    gap.id = record.line("id").value_or(std::string(place_word(gap.at)));
    gap.name = record.line("name").value_or(feature.name);
    gap.insert = record.line("insert").value_or("");
    const bool twice = std::any_of(feature.gaps.begin(), feature.gaps.end(), [&](const FeatureGap& g) { return g.id == gap.id; });
    if (twice) record.report(record.place(), "gap " + gap.id + " of this feature stands twice", "add id: ... of its own");
    return gap;
}

void read_hosts(const Record& record, Feature& feature) {
    if (!record.require({"hosts"})) return;
    record.each("hosts", [&](Node node) {
        const auto word = node.is_scalar() ? std::find(host_words.begin(), host_words.end(), node.text()) : host_words.end();
        if (word != host_words.end())
            feature.hosts.push_back(static_cast<Host>(word - host_words.begin()));
        else
            record.report(node.place(), "unknown host " + in_quotes(node.text()), suggestion(node.text(), host_words));
    });
    if (record["hosts"].is_null() || (record["hosts"].is_sequence() && record["hosts"].size() == 0))
        record.report(record["hosts"].place(), "hosts is empty", "write for example [wall]");
}

}  // namespace

std::span<const FeatureGap::At> places_of(Host host) {
    switch (host) {
        case Host::wall: return wall_places;
        case Host::partition: return partition_places;
        case Host::eave: return eave_places;
        case Host::foundation: return foundation_places;
        case Host::rim: return rim_places;
        case Host::opening: return opening_places;
        case Host::block_wall: return block_wall_places;
        case Host::duct: return duct_places;
        default: return pane_places;
    }
}

std::string_view host_word(Host host) { return host_words.at(static_cast<std::size_t>(host)); }
std::string_view place_word(FeatureGap::At at) { return place_words.at(static_cast<std::size_t>(at)); }
std::string_view form_word(FeatureGap::Form form) { return form_words.at(static_cast<std::size_t>(form)); }

Table<Feature> read_features(std::string_view yaml, const std::string& shown_as, const Table<Treatment>& treatments) {
    TableReader<Feature> reader(yaml, shown_as, "features");
    return reader.read([&](Node node, Diagnostics& diagnostics) {
        const Record record(node, feature_keys, "feature", diagnostics);
        Feature feature;
        if (!record.usable()) return feature;
        feature.id = record.required_line("id");
        feature.name = record.required_line("name");
        feature.air = record.line("air").value_or("");
        feature.up = size_of(record, "up");
        feature.reach = size_of(record, "reach");
        feature.note = record.text("note").value_or("");
        feature.sources = reader.sources(record);
        feature.hire = record.truth("hire").value_or(false);
        feature.caution = read_advice(record, "caution", caution_keys, reader);
        read_hosts(record, feature);
        record.require({"gaps"});
        record.each("gaps", [&](Node gap) { feature.gaps.push_back(read_feature_gap(gap, feature, treatments, reader)); });
        if (record.has("gaps") && feature.gaps.empty())
            record.report(record["gaps"].place(), "a feature makes at least one gap", "add {at: ..., shape: ...}");
        return feature;
    });
}

}  // namespace seamward
