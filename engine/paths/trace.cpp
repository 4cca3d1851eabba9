// SPDX-License-Identifier: GPL-3.0-or-later
#include "paths/trace.h"

#include <algorithm>
#include <iterator>
#include <memory>
#include <optional>
#include <set>
#include <utility>

#include "catalog/passage.h"
#include "network/network.h"
#include "network/pinches.h"
#include "paths/path_order.h"
#include "paths/ranked_paths.h"

namespace seamward {

namespace {

std::vector<std::size_t> passing(const Survey& survey, const EntryPath& path, std::span<const Pest> pests, Sizing sizing) {
    std::vector<std::size_t> all;
    for (std::size_t i = 0; i < pests.size(); ++i) {
        const auto passes_it = [&](GapIndex gap) { return lets_through(survey[gap], pests[i].size, sizing); };
        if (std::all_of(path.gaps.begin(), path.gaps.end(), passes_it)) all.push_back(i);
    }
    return all;
}

/// The gaps that let a pest through.
Network pest_network(const Survey& survey, const Pest& pest, Sizing sizing) {
    return make_network(survey, [&](const Gap& gap) { return lets_through(gap, pest.size, sizing); });
}

Network open_network(const Survey& survey) {
    return make_network(survey, [](const Gap& gap) { return !is_shut(gap.shape); });
}

class Tracer {
public:
    Tracer(const Survey& survey, const TraceSettings& settings, const RunContext& context)
        : survey_(survey), settings_(settings), context_(context), roles_(survey, settings.to) {}

    Trace run() {
        context_.stage("ranking");
        std::vector<double> possible(survey_.spaces.size(), no_way);
        std::vector<double> stated = possible;
        const auto raise = [&](std::vector<double>& pinch, const Network& network) {
            context_.check();
            const std::vector<double> of_this = pinches(network, roles_);
            for (std::size_t i = 0; i < pinch.size(); ++i) pinch[i] = std::max(pinch[i], of_this[i]);
        };
        const auto add = [&](Network network) {
            raise(possible, network);
            add_streams(std::move(network));
        };
        if (settings_.pests.empty()) {
            add(open_network(survey_));
            stated = possible;
        }
        for (const Pest& pest : settings_.pests) {
            add(pest_network(survey_, pest, Sizing::with_plus_minus));
            raise(stated, pest_network(survey_, pest, Sizing::stated));
        }
        Trace result;
        for (const SpaceIndex end : roles_.end_spaces()) {
            if (roles_.starts(end)) continue;
            RoomPinch room{end, std::nullopt, possible[end.value] > stated[end.value]};
            if (possible[end.value] != no_way) room.pinch = possible[end.value];
            result.rooms.push_back(room);
        }
        while (result.paths.size() < settings_.top) {
            std::optional<EntryPath> path = next();
            if (!path) break;
            const GapIndex gap = pinch_gap(survey_, *path);
            const bool maybe = !settings_.pests.empty() && open_to(survey_, *path, settings_.pests).empty();
            result.paths.push_back({std::move(*path), clear_width(survey_[gap].shape), gap, maybe});
        }
        return result;
    }

private:
    /// Where some gaps have positions and some have none, paths along those that have come twice, once in an order
    /// with lengths; since of equal widths they go before all others, the streams merge into one order.
    void add_streams(Network network) {
        const auto located = [&](const Link& link) { return survey_[link.gap].at.has_value(); };
        const auto with_position = std::count_if(network.links().begin(), network.links().end(), located);
        const auto all = static_cast<std::ptrdiff_t>(network.links().size());
        if (with_position > 0 && with_position < all) {
            std::vector<Link> links;
            std::copy_if(network.links().begin(), network.links().end(), std::back_inserter(links), located);
            add_stream(Network(network.space_count(), std::move(links)), true);
        }
        add_stream(std::move(network), with_position == all && all > 0);
    }

    void add_stream(Network network, bool by_length) {
        streams_.push_back(std::make_unique<OpenStream>(survey_, std::move(network), roles_, by_length, context_));
    }

    /// A stream whose network stays where its paths look for it.
    struct OpenStream {
        OpenStream(const Survey& survey, Network owned, const Roles& roles, bool by_length, const RunContext& context)
            : network(std::move(owned)), paths(survey, network, roles, by_length, context) {
            advance(survey);
        }
        void advance(const Survey& survey) {
            head = paths.next();
            key.reset();
            if (head) key.emplace(survey, *head);
        }
        Network network;
        RankedPaths paths;
        std::optional<EntryPath> head;
        std::optional<PathKey> key;
    };

    /// The best path of all streams that was not told before.
    std::optional<EntryPath> next() {
        for (;;) {
            OpenStream* best = nullptr;
            for (const auto& stream : streams_) {
                if (stream->head && (best == nullptr || stream->key->before(*best->key))) best = stream.get();
            }
            if (best == nullptr) return std::nullopt;
            EntryPath path = *best->head;
            best->advance(survey_);
            if (streams_.size() == 1 || told_.insert({path.from(), path.gaps}).second) return path;
        }
    }

    const Survey& survey_;
    const TraceSettings& settings_;
    const RunContext& context_;
    Roles roles_;
    std::vector<std::unique_ptr<OpenStream>> streams_;
    std::set<std::pair<SpaceIndex, std::vector<GapIndex>>> told_;
};

}  // namespace

Trace trace(const Survey& survey, const TraceSettings& settings, const RunContext& context) {
    return Tracer(survey, settings, context).run();
}

std::vector<std::size_t> open_to(const Survey& survey, const EntryPath& path, std::span<const Pest> pests) {
    return passing(survey, path, pests, Sizing::stated);
}

std::vector<std::size_t> perhaps_open_to(const Survey& survey, const EntryPath& path, std::span<const Pest> pests) {
    return passing(survey, path, pests, Sizing::with_plus_minus);
}

std::vector<std::vector<std::size_t>> rooms_open_to(const Survey& survey, std::span<const SpaceIndex> to,
                                                    std::span<const RoomPinch> rooms, std::span<const Pest> pests) {
    const Roles roles(survey, to);
    std::vector<std::vector<std::size_t>> open(rooms.size());
    for (std::size_t p = 0; p < pests.size(); ++p) {
        const std::vector<double> pinch = pinches(pest_network(survey, pests[p], Sizing::stated), roles);
        for (std::size_t r = 0; r < rooms.size(); ++r) {
            if (pinch[rooms[r].space.value] != no_way) open[r].push_back(p);
        }
    }
    return open;
}

}  // namespace seamward
