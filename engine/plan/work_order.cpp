// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/work_order.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>
#include <tuple>

#include "catalog/shipped.h"

namespace seamward {

namespace {

bool leads_to(const Gap& gap, const Survey& survey, SpaceKind kind) {
    return survey[gap.between[0]].kind == kind || survey[gap.between[1]].kind == kind;
}

/// By its name, as people and described houses give it.
bool is_crawl_space(const Space& space) {
    return space.kind == SpaceKind::cavity && (space.id + ' ' + space.name).find("crawl") != std::string::npos;
}

/// Whether its name or its spaces tell of a place under or at the roof.
bool is_high_by_name(const Gap& gap, const Survey& survey) {
    std::string text = gap.id + ' ' + gap.name;
    for (const SpaceIndex end : gap.between) text += ' ' + survey[end].id + ' ' + survey[end].name;
    for (char& c : text) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    constexpr std::array<std::string_view, 9> words{"attic", "roof",  "eave", "soffit", "fascia",
                                                    "gable", "ridge", "rake", "ceiling"};
    return std::any_of(words.begin(), words.end(), [&](std::string_view word) { return text.find(word) != std::string::npos; });
}

bool leads_under_the_floor(const Gap& gap, const Survey& survey) {
    return is_crawl_space(survey[gap.between[0]]) || is_crawl_space(survey[gap.between[1]]);
}

/// The middle of all places from which a walk round the house is seen.
Point middle_of(const Survey& survey) {
    Point sum;
    double count = 0;
    for (const Gap& gap : survey.gaps) {
        if (!gap.at || !leads_to(gap, survey, SpaceKind::outdoors)) continue;
        sum = {sum.x + gap.at->x, sum.y + gap.at->y, 0};
        count += 1;
    }
    return count > 0 ? Point{sum.x / count, sum.y / count, 0} : sum;
}

/// Turn from north, clockwise, in whole steps, so that places as good as the same do not change their order.
int clockwise_from_north(const Point& at, const Point& middle) {
    const double turn = std::atan2(at.x - middle.x, at.y - middle.y) / (2 * std::numbers::pi);
    return static_cast<int>(std::lround((turn < 0 ? turn + 1 : turn) * 1e6));
}

}  // namespace

const char* zone_words(WorkZone zone) {
    switch (zone) {
        case WorkZone::outside_low: return "outside, from the ground";
        case WorkZone::outside_high: return "outside, from a ladder";
        case WorkZone::roof: return "on the roof";
        case WorkZone::attached: return "garage and porches";
        case WorkZone::crawl_space: return "crawl space";
        case WorkZone::hidden: return "attic and other hidden spaces";
        case WorkZone::rooms: break;
    }
    return "rooms";
}

std::optional<Host> host_of(const Gap& gap) {
    const Feature* feature = gap.feature.empty() ? nullptr : shipped_features().find(gap.feature);
    if (feature == nullptr || feature->hosts.empty()) return std::nullopt;
    return feature->hosts.front();
}

double ground_height(const Survey& survey) {
    double lowest = std::numeric_limits<double>::infinity();
    for (const Gap& gap : survey.gaps) {
        if (gap.at && leads_to(gap, survey, SpaceKind::outdoors)) lowest = std::min(lowest, gap.at->z);
    }
    // Surveys put their zero near the ground; one far above the sea has another, and then the lowest gap must do.
    constexpr double another_zero = 30;
    if (!std::isfinite(lowest)) return 0;
    return lowest > another_zero ? lowest : std::min(lowest, 0.0);
}

WorkZone zone_of(const Gap& gap, const Survey& survey, double ground) {
    static const double reach = site_caution(shipped_site_cautions(), SiteCaution::When::ladder).limit;
    if (host_of(gap) == Host::roof) return WorkZone::roof;
    if (leads_to(gap, survey, SpaceKind::outdoors) || leads_to(gap, survey, SpaceKind::harborage))
        return (gap.at ? gap.at->z > ground + reach : is_high_by_name(gap, survey)) ? WorkZone::outside_high
                                                                                    : WorkZone::outside_low;
    if (leads_to(gap, survey, SpaceKind::attached)) return WorkZone::attached;
    if (leads_to(gap, survey, SpaceKind::living)) return WorkZone::rooms;
    return leads_under_the_floor(gap, survey) ? WorkZone::crawl_space : WorkZone::hidden;
}

std::vector<GapIndex> in_working_order(const Survey& survey, std::span<const GapIndex> gaps) {
    using Key = std::tuple<WorkZone, std::uint32_t, GapIndex>;
    const double ground = ground_height(survey);
    const Point middle = middle_of(survey);
    std::vector<Key> keys;
    for (const GapIndex index : gaps) {
        const Gap& gap = survey[index];
        const WorkZone zone = zone_of(gap, survey, ground);
        std::uint32_t place = 0;
        if (zone == WorkZone::rooms)
            place = survey[gap.between[0]].is_living() ? gap.between[0].value : gap.between[1].value;
        else if (zone != WorkZone::hidden && zone != WorkZone::crawl_space && gap.at)
            place = static_cast<std::uint32_t>(clockwise_from_north(*gap.at, middle));
        keys.emplace_back(zone, place, index);
    }
    std::sort(keys.begin(), keys.end());
    std::vector<GapIndex> order;
    for (const Key& key : keys) order.push_back(std::get<GapIndex>(key));
    return order;
}

}  // namespace seamward
