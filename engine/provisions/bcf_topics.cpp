// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/bcf_topics.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <span>

#include "provisions/name_guid.h"
#include "provisions/way_findings.h"
#include "provisions/xml_text.h"

namespace seamward {

namespace {

/// What the GUIDs of this program are named in; drawn by lot once.
constexpr const char* own_space = "c2f7b0d6-95b1-4c1e-8f43-7d0a6be2519c";
/// A viewer that is asked to select more warns or grinds (BCF technical documentation, rules for the size of viewpoints).
constexpr std::size_t most_selected = 1000;
constexpr double gap_radius = 0.5, way_margin = 0.5;  ///< meters around a place that a picture shows at least

/// What programs act on and what is the same in all languages.
constexpr const char *open_status = "Open", *closed_status = "Closed";

const char* priority_word(Confidence confidence) {
    switch (confidence) {
        case Confidence::high: return "High";
        case Confidence::medium: return "Medium";
        case Confidence::low: break;
    }
    return "Low";
}

bool is_global_id(const std::string& id) {
    const auto allowed = [](char c) {
        return (c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || c == '_' || c == '$';
    };
    return id.size() == 22 && std::all_of(id.begin(), id.end(), allowed);
}

void insert_sorted(std::vector<std::string>& words, const std::string& word) {
    const auto at = std::lower_bound(words.begin(), words.end(), word);
    if (at == words.end() || *at != word) words.insert(at, word);
}

class TopicMaker {
public:
    TopicMaker(const Audit& audit, const BcfSettings& settings)
        : audit_(audit), settings_(settings), say_(settings.language), project_(name_guid(own_space, audit.heading)) {
        for (const ProvisionResult& result : audit.results) provisions_.emplace(result.provision.id, &result.provision);
    }

    BcfTopics make() {
        BcfTopics made;
        made.project_guid = project_;
        made.words.types = {said("Provision not met"), said("Way in")};
        made.words.priorities = {said("High"), said("Medium"), said("Low")};
        made.words.statuses = {closed_status, open_status};
        std::sort(made.words.types.begin(), made.words.types.end());
        std::sort(made.words.priorities.begin(), made.words.priorities.end());
        const std::vector<const WayIn*> ways = ways_of_findings(audit_);
        for (std::size_t i = 0; i < audit_.findings.size(); ++i) {
            made.topics.push_back(
                topic(audit_.findings[i], ways[i], i < settings_.sights.size() ? settings_.sights[i] : BcfSight{}));
            for (const std::string& label : made.topics.back().labels) insert_sorted(made.words.labels, label);
        }
        return made;
    }

private:
    [[nodiscard]] std::string said(const Message& message) const { return xml_line(say_(message)); }

    BcfTopic topic(const Finding& finding, const WayIn* way, const BcfSight& sight) {
        BcfTopic made;
        const std::optional<Vector> outward = sight.outward ? sight.outward : finding.outward;
        made.guid = name_guid(project_, finding.key);
        while (!guids_.insert(made.guid).second)
            made.guid = name_guid(made.guid, finding.key);  // of a key that stands there twice
        made.view_guid = name_guid(made.guid, bcf_view_name);
        made.title = finding.title.empty() ? finding.rule : said(finding.title);
        made.status = open_status;
        describe(finding, made);
        label(finding, way, made);
        made.selected = components(finding, way);
        made.snapshot = sight.snapshot;
        const std::vector<Point> route = way == nullptr ? std::vector<Point>{} : route_of(*way, sight);
        for (std::size_t i = 1; i < route.size(); ++i) {
            if (distance(route[i - 1], route[i]) > 0) made.lines.emplace_back(route[i - 1], route[i]);
        }
        made.camera = camera(finding, route, outward);
        return made;
    }

    void describe(const Finding& finding, BcfTopic& made) const {
        const auto add = [&](const Message& paragraph) {
            if (paragraph.empty()) return;
            if (!made.description.empty()) made.description += "\n\n";
            made.description += say_(paragraph);
        };
        add(finding.text);
        if (!finding.source.empty()) add(message("Source: {}", {finding.source}));
        add(audit_.caution);
    }

    void label(const Finding& finding, const WayIn* way, BcfTopic& made) const {
        const auto add = [&](const Message& word) {
            const std::string text = said(word);
            const bool fresh = std::find(made.labels.begin(), made.labels.end(), text) == made.labels.end();
            if (!text.empty() && fresh) made.labels.push_back(text);
        };
        const auto provision = provisions_.find(finding.rule);
        made.type = said(finding.rule == way_in ? "Way in" : "Provision not met");
        made.priority = said(finding.rule == way_in           ? "High"
                             : provision == provisions_.end() ? "Low"
                                                              : priority_word(provision->second->confidence));
        if (provision != provisions_.end()) {
            add(as_named(provision->second->group));
            add(as_named(provision->second->document));
        }
        for (const std::size_t pest : way == nullptr ? std::vector<std::size_t>{} : way->open_to) {
            if (pest < audit_.pests.size()) add(as_named(audit_.pests[pest].name));
        }
        add(as_it_stands(finding.rule));
    }

    [[nodiscard]] std::vector<BcfComponent> components(const Finding& finding, const WayIn* way) const {
        std::vector<std::size_t> parts = finding.parts;
        if (way != nullptr) parts.insert(parts.end(), way->parts.begin(), way->parts.end());
        std::sort(parts.begin(), parts.end());
        std::vector<BcfComponent> named;
        std::set<std::string> done;
        for (const std::size_t part : parts) {
            if (part >= audit_.parts.size() || named.size() == most_selected) break;
            const AuditedPart& one = audit_.parts[part];
            const bool global = is_global_id(one.global_id);
            if (!done.insert((global ? "#" : "-") + (global ? one.global_id : one.id)).second) continue;
            if (global)
                named.push_back({one.global_id, {}});
            else if (!one.id.empty())
                named.push_back({{}, one.id});
        }
        return named;
    }

    [[nodiscard]] std::optional<Point> place_of(GapIndex gap) const {
        if (gap.value >= settings_.gap_places.size()) return std::nullopt;
        const std::optional<Point>& at = settings_.gap_places[gap.value];
        return at && can_be_shown(*at) ? at : std::nullopt;
    }

    [[nodiscard]] std::vector<Point> route_of(const WayIn& way, const BcfSight& sight) const {
        std::vector<Point> points;
        for (const Point& at : sight.route) {
            if (can_be_shown(at)) points.push_back(at);
        }
        if (!points.empty()) return points;
        for (const GapIndex gap : way.way.path.gaps) {
            if (const std::optional<Point> at = place_of(gap)) points.push_back(*at);
        }
        return points;
    }

    /// Of a way all of it; else the place, where it is known; else the building.
    [[nodiscard]] std::optional<Camera> camera(const Finding& finding, const std::vector<Point>& route,
                                               const std::optional<Vector>& outward) const {
        if (!route.empty()) return camera_for(whole(route, way_margin, outward), settings_.building);
        std::optional<Point> at = finding.at && can_be_shown(*finding.at) ? finding.at : std::nullopt;
        if (!at && finding.gap) at = place_of(*finding.gap);
        if (at) return camera_for({*at, gap_radius, false, outward, std::nullopt}, settings_.building);
        const std::optional<AxisBox>& box = settings_.building;
        if (!box || !can_be_shown(box->low) || !can_be_shown(box->high)) return std::nullopt;
        const std::array corners{box->low, box->high};
        Sight sight = whole(corners, 0, outward);
        sight.entry.reset();
        return camera_for(sight, box);
    }

    /// A ball around points, not far from the smallest.
    [[nodiscard]] static Sight whole(std::span<const Point> points, double more, const std::optional<Vector>& outward) {
        AxisBox box{points.front(), points.front()};
        for (const Point& at : points) {
            box.low = {std::min(box.low.x, at.x), std::min(box.low.y, at.y), std::min(box.low.z, at.z)};
            box.high = {std::max(box.high.x, at.x), std::max(box.high.y, at.y), std::max(box.high.z, at.z)};
        }
        const Point middle = box.low + (box.high - box.low) * 0.5;
        double radius = 0;
        for (const Point& at : points) radius = std::max(radius, distance(middle, at));
        return {middle, radius + more, true, outward, points.front()};
    }

    static constexpr const char* bcf_view_name = "view";

    const Audit& audit_;
    const BcfSettings& settings_;
    Translator say_;
    std::string project_;
    std::map<std::string, const Provision*> provisions_;
    std::set<std::string> guids_;
};

}  // namespace

BcfTopics bcf_topics(const Audit& audit, const BcfSettings& settings) { return TopicMaker(audit, settings).make(); }

}  // namespace seamward
