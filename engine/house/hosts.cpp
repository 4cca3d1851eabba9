// SPDX-License-Identifier: GPL-3.0-or-later
// What a feature names in `on`, and whether its type goes on that.
#include <algorithm>

#include "base/nearest_word.h"
#include "base/text.h"
#include "house/place_features.h"

namespace seamward {

namespace {

using At = FeatureGap::At;
using Form = FeatureGap::Form;

/// Something that `on` may name.
struct Thing {
    std::string what;  ///< for people; empty: there is no such thing
    std::vector<Host> hosts;
};

bool has(const std::vector<Host>& hosts, Host host) { return std::find(hosts.begin(), hosts.end(), host) != hosts.end(); }

bool any_gap(const FeatureDescription& feature, auto test) {
    for (std::size_t i = 0; i < feature.gaps.size(); ++i) {
        if (!feature.gaps[i].left_out && test(feature.type->gaps[i])) return true;
    }
    return false;
}

Thing thing_named(const Layout& layout, const std::string& id) {
    for (const WallLayout& wall : layout.walls) {
        if (wall.described != id && wall.id != id) continue;
        if (wall.exterior) return {"an outside wall", {Host::wall, Host::gable, Host::eave, Host::foundation, Host::rim}};
        return {"a partition", {Host::partition, Host::rim}};
    }
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.id == id) return {"a door or a window", {Host::opening}};
    }
    for (const BlockRun& run : layout.block_runs) {
        if (run.id == id || run.id + "/" + std::to_string(run.number) == id) return {"a block wall", {Host::block_wall}};
    }
    for (const BulkheadDescription& box : layout.described.bulkheads) {
        if (box.id == id) return {"a bulkhead", {Host::ceiling}};
    }
    if (id == "ceiling") return {"the ceiling", {Host::ceiling}};
    if (id == "floor") return {"the floor", {Host::floor}};
    if (id == "roof") return {"the roof", {Host::roof}};
    return {};
}

[[noreturn]] void refuse_unknown(Cutter& cutter, const FeatureDescription& feature, const std::string& id) {
    const Layout& layout = cutter.layout();
    std::vector<std::string_view> known;
    for (const WallLayout& wall : layout.walls) known.emplace_back(wall.id);
    for (const OpeningDescription& opening : layout.described.openings) known.emplace_back(opening.id);
    for (const BlockRun& run : layout.block_runs) known.emplace_back(run.id);
    for (const BulkheadLayout& box : layout.bulkheads) known.emplace_back(box.id);
    cutter.refuse(feature, "there is no wall, partition or opening \"" + id + "\"", suggestion(id, known));
}

const char* called(Host host) {
    switch (host) {
        case Host::wall: return "an outside wall";
        case Host::gable: return "the wall under a gable";
        case Host::partition: return "a partition";
        case Host::ceiling: return "a ceiling";
        case Host::floor: return "a floor";
        case Host::roof: return "a roof";
        case Host::eave: return "an eave";
        case Host::foundation: return "a foundation";
        case Host::rim: return "the edge of a floor";
        case Host::opening: return "a door or a window";
        case Host::block_wall: return "a block wall";
        case Host::duct: return "a duct that another feature makes";
    }
    return "";
}

/// What all of `on` may be for this type; what it may not be is reported.
std::vector<Host> hosts_of(Cutter& cutter, const FeatureDescription& feature) {
    std::vector<Host> hosts = feature.type->hosts;
    for (const std::string& id : feature.on) {
        const Thing thing = thing_named(cutter.layout(), id);
        if (thing.what.empty()) refuse_unknown(cutter, feature, id);
        std::vector<Host> both;
        for (const Host host : hosts) {
            if (has(thing.hosts, host)) both.push_back(host);
        }
        if (both.empty()) {
            std::string known;
            for (const Host host : feature.type->hosts) {
                if (!known.empty()) known += host == feature.type->hosts.back() ? " or " : ", ";
                known += called(host);
            }
            cutter.refuse(feature, id + " is " + thing.what + ", and " + feature.type->id + " does not go on that",
                          feature.type->id + " goes on " + known);
        }
        hosts = std::move(both);
    }
    return hosts;
}

/// Ends a duct that another feature makes, wherever that comes out.
bool is_cap(const FeatureDescription& feature) {
    return has(feature.type->hosts, Host::roof) && any_gap(feature, [](const FeatureGap& row) { return row.at == At::outer; }) &&
           !any_gap(feature, [](const FeatureGap& row) { return row.at == At::through; });
}

/// Whether a number of pieces means something to any gap.
bool is_counted(const FeatureDescription& feature) {
    const bool grate = any_gap(feature, [](const FeatureGap& row) { return row.at == At::inner && row.form == Form::cut; });
    if ((!feature.type->air.empty() && !grate) || feature.type->id == "weep-screed" || has(feature.type->hosts, Host::duct))
        return false;
    return any_gap(feature, [](const FeatureGap& row) {
        return row.form != Form::line && row.form != Form::edge && row.form != Form::corner;
    });
}

void refuse_key(Cutter& cutter, const FeatureDescription& feature, const char* key, const std::string& why) {
    cutter.refuse(feature, std::string(key) + " says nothing of it: " + why, std::string("leave ") + key + " out");
}

void check_place_keys(Cutter& cutter, const FeatureDescription& feature, const std::vector<Host>& hosts) {
    const auto any = [&](std::initializer_list<Host> of) {
        return std::any_of(of.begin(), of.end(), [&](Host host) { return has(hosts, host); });
    };
    const bool cap = is_cap(feature);
    const std::string where = cap ? "it ends the duct whose air it names, where that comes out of the roof"
                                  : std::string("it goes on ") + called(hosts.front());
    const bool in_leaf = has(hosts, Host::opening) && any_gap(feature, [](const FeatureGap& row) {
                             return row.shape != ShapeKind::slot || row.form == Form::around || row.form == Form::beside;
                         });
    const bool upright = any({Host::wall, Host::gable, Host::partition, Host::foundation, Host::rim}) || in_leaf;
    const bool corners =
        has(hosts, Host::opening) && any_gap(feature, [](const FeatureGap& row) { return row.form == Form::corner; });
    const bool on_partition = !feature.on.empty() && thing_named(cutter.layout(), feature.on.front()).what == "a partition";
    if (cap && !feature.on.empty()) refuse_key(cutter, feature, "on", where);
    if (feature.along && (cap || (!upright && !has(hosts, Host::eave)))) refuse_key(cutter, feature, "along", where);
    if (feature.up && (cap || (!upright && !has(hosts, Host::block_wall)))) refuse_key(cutter, feature, "up", where);
    if (feature.at && (cap || !any({Host::ceiling, Host::floor, Host::roof}))) refuse_key(cutter, feature, "at", where);
    if (!feature.side.empty() && (cap || (!on_partition && !corners && !any({Host::partition, Host::block_wall}))))
        refuse_key(cutter, feature, "side", where);
}

}  // namespace

void check_host(Cutter& cutter, const FeatureDescription& feature) {
    const std::vector<Host> hosts = hosts_of(cutter, feature);
    check_place_keys(cutter, feature, hosts);
    const bool has_air = !feature.type->air.empty() || has(feature.type->hosts, Host::duct);
    if (!feature.space.id.empty() && !has_air) refuse_key(cutter, feature, "space", "it has no air inside");
    if (feature.source && !has_air) refuse_key(cutter, feature, "source", "it has no air inside that animals could come out of");
    if (feature.count && !is_counted(feature))
        refuse_key(cutter, feature, "count",
                   has_air ? "it is one thing with its own air; write a line for each" : "it is a joint");
    if (feature.spacing && *feature.spacing < least_spacing)
        cutter.refuse(feature, "spacing is less than 5 mm",
                      "write the distance from the middle of one to the middle of the next");
}

}  // namespace seamward
