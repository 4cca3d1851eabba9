// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/walk.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "catalog/shipped.h"

namespace seamward {

namespace {

using When = SiteCaution::When;

const SiteCaution& row_of(When when) { return site_caution(shipped_site_cautions(), when); }

Message told(const SiteCaution& row) {
    return message("{} ({})", {row.text, cited(shipped_site_cautions().sources, row.source)});
}

/// Length of a gap along the wall, meters.
double run_of(const Gap& gap) {
    const Slot* slot = std::get_if<Slot>(&gap.shape);
    return slot != nullptr ? slot->length : 0;
}

double along_the_ground(const Point& a, const Point& b) { return std::hypot(a.x - b.x, a.y - b.y); }

class WalkMaker {
public:
    explicit WalkMaker(const Job& job) : job_(job), ground_(ground_height(job.survey)), burns_(job.survey.spaces.size(), false) {
        for (const SpaceInput& input : job.inputs) burns_[input.space.value] = true;
        for (const Gap& gap : job.survey.gaps) {
            if (gap.duty != Duty::combustion_air) continue;
            for (const SpaceIndex end : gap.between)
                burns_[end.value] = burns_[end.value] || job.survey[end].kind != SpaceKind::outdoors;
        }
    }

    Walk walk(std::span<const GapIndex> gaps) {
        for (const GapIndex gap : gaps) add(gap);
        if (!gaps.empty()) say_before();
        return std::move(walk_);
    }

private:
    void add(GapIndex index) {
        const Gap& gap = job_.survey[index];
        WalkStop stop{index, zone_of(gap, job_.survey, ground_), {}};
        switch (stop.zone) {
            case WorkZone::outside_high: set_ladder(gap, stop); break;
            case WorkZone::roof: say_roof(stop); break;
            case WorkZone::crawl_space: stop.cautions.push_back(told(row_of(When::crawl_space))); break;
            case WorkZone::hidden: stop.cautions.push_back(told(row_of(When::attic))); break;
            default: break;
        }
        say_what_it_may_be(gap, stop);
        stop.trade = stop.trade || is_trade(gap);
        walk_.stops.push_back(std::move(stop));
    }

    /// Of a gap that nobody gave a type, what its name tells.
    void say_what_it_may_be(const Gap& gap, WalkStop& stop) const {
        if (!gap.feature.empty()) return;
        for (const SiteCaution& row : shipped_site_cautions().rows) {
            const bool told_by_name = std::any_of(row.words.begin(), row.words.end(),
                                                  [&](const std::string& word) { return names(gap.id + ' ' + gap.name, word); });
            if (!told_by_name) continue;
            stop.cautions.push_back(told(row));
            stop.trade = true;
        }
    }

    /// Whether some word of the text begins with `word`.
    static bool names(std::string text, const std::string& word) {
        for (char& c : text) c = c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1)) {
            if (at == 0 || text[at - 1] < 'a' || text[at - 1] > 'z') return true;
        }
        return false;
    }

    [[nodiscard]] bool is_trade(const Gap& gap) const {
        const Feature* feature = gap.feature.empty() ? nullptr : shipped_features().find(gap.feature);
        if (feature != nullptr && feature->hire) return true;
        return std::any_of(gap.between.begin(), gap.between.end(), [&](SpaceIndex space) { return burns_[space.value]; });
    }

    void set_ladder(const Gap& gap, WalkStop& stop) {
        stop.cautions.push_back(told(row_of(When::ladder)));
        stop.two_people = gap.at && gap.at->z > ground_ + row_of(When::high_ladder).limit;
        if (stop.two_people) stop.cautions.push_back(told(row_of(When::high_ladder)));
        const double reach = row_of(When::ladder_reach).limit;
        const bool from_here = gap.at && ladder_at_ && run_of(gap) <= reach && along_the_ground(*gap.at, *ladder_at_) <= reach;
        if (!from_here) {
            const double settings = std::ceil(run_of(gap) / reach - 1e-9);
            stop.ladder_first = walk_.ladder_settings + 1;
            walk_.ladder_settings += std::max(1U, static_cast<std::uint32_t>(settings));
            ladder_at_ = run_of(gap) <= reach ? gap.at : std::nullopt;
        } else {
            stop.ladder_first = walk_.ladder_settings;
        }
        stop.ladder_last = walk_.ladder_settings;
    }

    void say_roof(WalkStop& stop) const {
        stop.cautions.push_back(told(row_of(When::roof)));
        constexpr std::array<When, 5> of_roofs{When::tile_roof, When::shingle_roof, When::metal_roof, When::membrane_roof,
                                               When::foam_roof};
        if (job_.site.roof != Site::Roof::unknown)
            stop.cautions.push_back(told(row_of(of_roofs.at(static_cast<std::size_t>(job_.site.roof) - 1))));
    }

    void say_before() {
        const Site& site = job_.site;
        if (!site.gates.empty()) walk_.before.push_back(message("Gates: {}", {as_it_stands(site.gates)}));
        if (!site.pets.empty()) walk_.before.push_back(message("Pets: {}", {as_it_stands(site.pets)}));
        if (site.occupancy == Site::Occupancy::tenant)
            walk_.before.emplace_back("The house is let: settle with the tenant when to come in (common practice)");
        for (const SiteCaution& row : shipped_site_cautions().rows) {
            if (row.when != When::built_before || (site.built && *site.built >= row.limit)) continue;
            if (site.built)
                walk_.before.push_back(message("Built in {}: {}", {as_it_stands(*site.built), told(row)}));
            else
                walk_.before.push_back(message("If the house was built before {} (nobody has said when): {}",
                                               {as_it_stands(std::to_string(std::lround(row.limit))), told(row)}));
        }
        const bool droppings = std::any_of(job_.occupied.begin(), job_.occupied.end(), [](const Occupant& occupant) {
            const Removal* removal = removal_of(shipped_removals(), occupant.animal.id);
            return removal != nullptr && (removal->by == Removal::By::trapping || removal->by == Removal::By::one_way);
        });
        if (droppings) walk_.before.push_back(told(row_of(When::droppings)));
    }

    const Job& job_;
    double ground_;
    std::vector<bool> burns_;         ///< by space: an appliance burns fuel or takes air there
    std::optional<Point> ladder_at_;  ///< where its last setting began, while gaps near it may follow
    Walk walk_;
};

}  // namespace

Walk walk_to(const Job& job, std::span<const GapIndex> gaps) { return WalkMaker(job).walk(gaps); }

bool from_the_ground(const Gap& gap, WorkZone zone, double ground) {
    if (zone != WorkZone::outside_low && zone != WorkZone::attached && zone != WorkZone::rooms) return false;
    const std::optional<Host> host = host_of(gap);
    if (host == Host::ceiling || host == Host::roof || host == Host::eave || host == Host::gable || host == Host::duct)
        return false;
    // In rooms of an upper story heights say little, and what it is placed on has to do; a place that nobody knows is no owner's.
    if (host && (zone == WorkZone::rooms || !gap.at)) return true;
    return gap.at && gap.at->z <= ground + row_of(When::ladder).limit;
}

}  // namespace seamward
