// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/ventilation.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>
#include <map>
#include <set>
#include <stdexcept>
#include <tuple>

#include "catalog/shipped.h"
#include "materials/duty_rules.h"

namespace seamward {

namespace {

constexpr double no_area = 1e-12;  // m2; below it free areas are equal, their sums being rounded
constexpr double rounding = 1e-9;  // share by which an area may fall short of what is due and still be it

Message area_message(double area) {
    constexpr double square_inch = 0.0254 * 0.0254;
    const auto whole = [](double value) {
        std::array<char, 32> text{};
        std::snprintf(text.data(), text.size(), "%.0f", value);
        return as_it_stands(text.data());
    };
    return message("{} in2 ({} cm2)", {whole(area / square_inch), whole(area * 1e4)});
}

std::optional<double> area_of(const Shape& shape) {
    if (const Slot* slot = std::get_if<Slot>(&shape)) return slot->width * slot->length;
    if (const Hole* hole = std::get_if<Hole>(&shape)) return std::numbers::pi / 4 * hole->diameter * hole->diameter;
    if (const Ring* ring = std::get_if<Ring>(&shape)) return mid_circumference(*ring) * ring->width;
    const Mesh& mesh = std::get<Mesh>(shape);
    if (mesh.opening <= 0) return 0;
    if (!mesh.area) return std::nullopt;
    return *mesh.area * open_share(mesh.opening);
}

const FreeAreaRule& rule_of(std::string_view id, double FreeAreaRule::*kind) {
    const FreeAreaRule* rule = shipped_free_areas().find(id);
    if (rule == nullptr || !(rule->*kind > 0)) throw std::out_of_range("no such rule: " + std::string(id));
    return *rule;
}

/// The open share of what is in front, for gaps whose area nobody stated.
double share_of(const Gap& gap) {
    const auto share = [](const Shape& shape) {
        const Mesh* mesh = std::get_if<Mesh>(&shape);
        return mesh == nullptr ? 1.0 : open_share(mesh->opening);
    };
    return share(gap.shape) * (gap.covered ? share(gap.covered->shape) : 1.0);
}

/// A gap as far as air is concerned, before and after.
struct Way {
    std::array<std::size_t, 2> between{};
    std::array<double, 2> area{};  ///< of all its pieces, before and after; 0 where it is not stated
    bool stated = true;
    double lost = 0;  ///< share of its area
};

Way way_of(const Gap& before, const Gap& after, bool one_piece) {
    Way way{{before.between[0].value, before.between[1].value}, {}, true, 0};
    const std::optional<double> was = free_area(before);
    const std::optional<double> is = free_area(after);
    way.stated = was && is;
    const double pieces = one_piece ? 1 : before.count;
    if (way.stated) way.area = {*was * pieces, *is * pieces};
    const double from = way.stated ? *was : share_of(before);
    const double to = way.stated ? *is : is && *is == 0 ? 0 : share_of(after);
    way.lost = from > 0 ? std::max(0.0, 1 - to / from) : 0;
    return way;
}

/// The largest flow from any of `sources` to `sink`, along shortest ways (Edmonds and Karp 1972).
double flow(std::size_t spaces, const std::vector<Way>& ways, std::size_t when, const std::vector<bool>& sources,
            std::size_t sink) {
    std::vector<std::array<double, 2>> left;  // of each way, from its first space to its second and back
    for (const Way& way : ways) left.push_back({way.area.at(when), way.area.at(when)});
    double total = 0;
    while (true) {
        constexpr std::size_t none = std::numeric_limits<std::size_t>::max();
        std::vector<std::size_t> by(spaces, none);  // the way that leads there, twice its number, and 1 when taken backwards
        std::vector<bool> seen = sources;
        std::vector<std::size_t> queue;
        for (std::size_t s = 0; s < spaces; ++s) {
            if (sources[s]) queue.push_back(s);
        }
        for (std::size_t next = 0; next < queue.size() && !seen[sink]; ++next) {
            for (std::size_t w = 0; w < ways.size(); ++w) {
                for (std::size_t back = 0; back < 2; ++back) {
                    const std::size_t to = ways[w].between.at(1 - back);
                    if (ways[w].between.at(back) != queue[next] || seen[to] || left[w].at(back) <= no_area) continue;
                    seen[to] = true;
                    by[to] = 2 * w + back;
                    queue.push_back(to);
                }
            }
        }
        if (!seen[sink] || sources[sink]) return total;
        double amount = std::numeric_limits<double>::infinity();
        for (std::size_t at = sink; by[at] != none; at = ways[by[at] / 2].between.at(by[at] % 2))
            amount = std::min(amount, left[by[at] / 2].at(by[at] % 2));
        for (std::size_t at = sink; by[at] != none; at = ways[by[at] / 2].between.at(by[at] % 2)) {
            left[by[at] / 2].at(by[at] % 2) -= amount;
            left[by[at] / 2].at(1 - by[at] % 2) += amount;
        }
        total += amount;
    }
}

/// Vented spaces and the vents between them and to outdoors.
class VentNetwork {
public:
    VentNetwork(const Survey& before, const Survey& after) : survey_(before), group_(before.spaces.size()) {
        for (std::size_t i = 0; i < before.gaps.size(); ++i) {
            if (!is_vent(before.gaps[i])) continue;
            ways_.push_back(way_of(before.gaps[i], after.gaps[i], false));
        }
        for (std::size_t s = 0; s < group_.size(); ++s) {
            group_[s] = s;
            outdoors_.push_back(before.spaces[s].kind == SpaceKind::outdoors);
        }
        for (bool more = true; more;) {  // the least number of a group's spaces spreads over it
            more = false;
            for (const Way& way : ways_) {
                const auto [a, b] = way.between;
                if (outdoors_[a] || outdoors_[b] || group_[a] == group_[b]) continue;
                group_[a] = group_[b] = std::min(group_[a], group_[b]);
                more = true;
            }
        }
    }

    /// The spaces to check: those of `known`, and of each group without one its innermost, such as an attic between its eaves.
    [[nodiscard]] std::vector<std::size_t> spaces(const std::vector<bool>& known) const {
        std::map<std::size_t, std::vector<std::size_t>> groups;
        for (std::size_t s = 0; s < group_.size(); ++s) {
            if (!outdoors_[s] && vents_of(s) > 0) groups[group_[s]].push_back(s);
        }
        std::vector<std::size_t> chosen;
        for (const auto& [group, members] : groups) {
            const std::size_t before = chosen.size();
            std::copy_if(members.begin(), members.end(), std::back_inserter(chosen), [&](std::size_t s) { return known[s]; });
            if (chosen.size() > before) continue;
            const auto rank = [&](std::size_t s) { return std::tuple(depth(s), neighbors_of(s), vents_of(s), area(s, 0)); };
            chosen.push_back(*std::max_element(members.begin(), members.end(),
                                               [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); }));
        }
        std::sort(chosen.begin(), chosen.end());
        return chosen;
    }

    [[nodiscard]] double area(std::size_t space, std::size_t when) const {
        return flow(survey_.spaces.size(), ways_, when, outdoors_, space);
    }
    /// Vents without a stated area in the space's group, and the largest share that one of them loses.
    [[nodiscard]] std::pair<std::size_t, double> unstated(std::size_t space) const {
        std::pair<std::size_t, double> found{0, 0};
        for (const Way& way : ways_) {
            const std::size_t inner = outdoors_[way.between[0]] ? way.between[1] : way.between[0];
            if (way.stated || group_[inner] != group_[space]) continue;
            ++found.first;
            found.second = std::max(found.second, way.lost);
        }
        return found;
    }

private:
    /// A plumbing vent is none: it airs no space that has a floor.
    [[nodiscard]] bool is_vent(const Gap& gap) const {
        if (gap.duty != Duty::vent) return false;
        Gap bare = gap;
        bare.closing = {};  // what the survey forbids counts as air all the same
        return ruling_on(bare, survey_).keeps_area;
    }
    /// Vents to pass on the shortest way from outdoors; as many as there are spaces where no way leads.
    [[nodiscard]] std::size_t depth(std::size_t space) const {
        std::vector<std::size_t> depths(group_.size(), group_.size());
        for (std::size_t s = 0; s < group_.size(); ++s) depths[s] = outdoors_[s] ? 0 : depths[s];
        for (bool nearer = true; nearer;) {
            nearer = false;
            for (const Way& way : ways_) {
                const auto [a, b] = way.between;
                const std::size_t least = std::min(depths[a], depths[b]) + 1;
                for (const std::size_t end : {a, b}) {
                    if (depths[end] <= least) continue;
                    depths[end] = least;
                    nearer = true;
                }
            }
        }
        return depths[space];
    }
    /// Vented spaces that vents join it to.
    [[nodiscard]] std::size_t neighbors_of(std::size_t space) const {
        std::set<std::size_t> found;
        for (const Way& way : ways_) {
            for (std::size_t side = 0; side < 2; ++side) {
                const std::size_t other = way.between.at(1 - side);
                if (way.between.at(side) == space && !outdoors_[other]) found.insert(other);
            }
        }
        return found.size();
    }
    [[nodiscard]] std::size_t vents_of(std::size_t space) const {
        return static_cast<std::size_t>(std::count_if(
            ways_.begin(), ways_.end(), [&](const Way& way) { return way.between[0] == space || way.between[1] == space; }));
    }

    const Survey& survey_;
    std::vector<Way> ways_;
    std::vector<std::size_t> group_;
    std::vector<bool> outdoors_;
};

double lost_share(const VentCheck& check) { return check.before > no_area ? 1 - check.after / check.before : 0; }

Message told(const VentCheck& check, const Survey& survey) {
    const Message space = survey[check.space].called(), before = area_message(check.before), after = area_message(check.after);
    Message text = check.required ? message("{}: free area {} now, {} afterwards, {} due",
                                            {space, before, after, area_message(*check.required)})
                                  : message("{}: free area {} now, {} afterwards", {space, before, after});
    if (check.unstated == 0) return text;
    return message("{}; not counted, for no area is stated: {}", {std::move(text), as_it_stands(check.unstated)});
}

bool has(double area, double due) { return area >= due * (1 - rounding); }

/// What follows where an area is due: `spared` is the share that may be lost by a space that is short already.
void judge(VentCheck& check, double due, double spared, double lost_unstated) {
    check.required = due;
    if (has(check.before, due))
        check.starved = !has(check.after, due);
    else if (check.unstated == 0)
        check.starved = lost_share(check) > spared + rounding;
    else
        check.doubtful = std::max(lost_share(check), lost_unstated) > spared + rounding;
}

/// `unsure`: where an area is due and nobody can tell, what would; `{}` is what is known.
void finish(VentCheck& check, const Survey& survey, const char* unsure) {
    check.text = told(check, survey);
    if (check.starved)
        check.text = message("{}; that starves it", {check.text});
    else if (check.doubtful)
        check.text = message(check.required ? "{}; whether that is enough is not known: state the areas" : unsure, {check.text});
}

/// The space that combustion air is let into: the one with appliances that are known, else the inner one.
std::size_t aired_by(const Gap& gap, const Survey& survey, const std::vector<const SpaceInput*>& inputs) {
    const auto rank = [&](SpaceIndex space) {
        const SpaceKind kind = survey[space].kind;
        if (inputs[space.value] != nullptr) return 0;
        return kind == SpaceKind::living || kind == SpaceKind::attached ? 1 : kind == SpaceKind::outdoors ? 3 : 2;
    };
    return rank(gap.between[0]) < rank(gap.between[1]) ? gap.between[0].value : gap.between[1].value;
}

}  // namespace

double open_share(double opening) {
    if (opening <= 0) return 0;
    double nearest = std::numeric_limits<double>::infinity();
    double share = 1;
    for (const MeshKind& mesh : shipped_meshes().rows) {
        const double off = std::abs(std::log(opening / mesh.opening()));
        const double side = opening / (opening + mesh.wire);
        constexpr double as_near = 1e-9;
        if (off > nearest + as_near) continue;
        share = off < nearest - as_near ? side * side : std::min(share, side * side);
        nearest = std::min(nearest, off);
    }
    return share;
}

std::optional<double> free_area(const Gap& gap) {
    const Mesh* mesh = std::get_if<Mesh>(&gap.shape);
    if (mesh == nullptr || !gap.covered) return area_of(gap.shape);
    if (mesh->opening <= 0) return 0;
    const std::optional<double> behind = area_of(gap.covered->shape);
    if (behind) return *behind * open_share(mesh->opening);
    return mesh->area ? std::optional<double>(*mesh->area * share_of(gap)) : std::nullopt;
}

double vent_area_due(double floor, std::string_view rule) {
    const FreeAreaRule& found = rule_of(rule, &FreeAreaRule::per_floor);
    return floor * found.free / found.per_floor;
}

double flood_area_due(double floor) { return vent_area_due(floor, "flood"); }

double combustion_air_due(double btu_per_hour, std::string_view rule) {
    const FreeAreaRule& found = rule_of(rule, &FreeAreaRule::per_input);
    return btu_per_hour * found.free / found.per_input;
}

double louver_face(double free, std::string_view rule) { return free / rule_of(rule, &FreeAreaRule::share).share; }

std::vector<VentCheck> check_ventilation(const Survey& before, const Survey& after, std::span<const SpaceArea> floor_areas) {
    const VentNetwork network(before, after);
    std::vector<const SpaceArea*> floors(before.spaces.size(), nullptr);
    std::vector<bool> known(before.spaces.size(), false);
    for (const SpaceArea& area : floor_areas) {
        floors.at(area.space.value) = &area;
        known.at(area.space.value) = true;
    }
    std::vector<VentCheck> checks;
    for (const std::size_t space : network.spaces(known)) {
        VentCheck check;
        check.space = {static_cast<std::uint32_t>(space)};
        check.before = network.area(space, 0);
        check.after = network.area(space, 1);
        const auto [unstated, lost] = network.unstated(space);
        check.unstated = unstated;
        if (const SpaceArea* floor = floors[space]) {
            std::string rule = floor->rule;
            if (rule == "attic" && !has(check.before, vent_area_due(floor->floor, rule))) {
                const bool balanced = has(check.before, vent_area_due(floor->floor, "attic-balanced"));
                if (balanced) rule = "attic-balanced";
            }
            check.source = cited(shipped_free_areas().sources, rule_of(rule, &FreeAreaRule::per_floor).source);
            judge(check, vent_area_due(floor->floor, rule), told_loss, lost);
        } else {
            check.doubtful = std::max(lost_share(check), lost) > told_loss;
        }
        finish(check, before, "{}; whether that is enough is not known: state its floor area");
        checks.push_back(std::move(check));
    }
    return checks;
}

std::vector<VentCheck> check_combustion_air(const Survey& before, const Survey& after, std::span<const SpaceInput> inputs) {
    std::vector<const SpaceInput*> known(before.spaces.size(), nullptr);
    for (const SpaceInput& input : inputs) known.at(input.space.value) = &input;
    std::map<std::size_t, std::vector<Way>> ways;
    for (std::size_t i = 0; i < before.gaps.size(); ++i) {
        const Gap& gap = before.gaps[i];
        if (gap.duty != Duty::combustion_air) continue;
        ways[aired_by(gap, before, known)].push_back(way_of(gap, after.gaps[i], true));
    }
    std::vector<VentCheck> checks;
    for (const auto& [space, openings] : ways) {
        VentCheck check;
        check.space = {static_cast<std::uint32_t>(space)};
        std::array<double, 2> least{std::numeric_limits<double>::infinity(), std::numeric_limits<double>::infinity()};
        double lost = 0;
        for (const Way& way : openings) {
            lost = std::max(lost, way.lost);
            check.unstated += way.stated ? 0 : 1;
            for (std::size_t when = 0; way.stated && when < 2; ++when)
                least.at(when) = std::min(least.at(when), way.area.at(when));
        }
        if (check.unstated < openings.size()) {
            check.before = least[0];
            check.after = least[1];
        }
        if (const SpaceInput* input = known[space]) {
            check.source = cited(shipped_free_areas().sources, rule_of(input->rule, &FreeAreaRule::per_input).source);
            judge(check, combustion_air_due(input->btu_per_hour, input->rule), 0, lost);
            check.doubtful = check.doubtful || (!check.starved && check.unstated > 0 && lost > rounding);
        } else {
            check.doubtful = lost > rounding;
        }
        finish(check, before, "{}; whether that is enough is not known: state the input of the appliances");
        checks.push_back(std::move(check));
    }
    return checks;
}

}  // namespace seamward
