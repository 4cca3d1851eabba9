// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/support/closed_loop.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <tuple>
#include <utility>

#include "base/vector.h"
#include "exchange/gltf.h"
#include "exchange/read_model.h"
#include "house/inner_way.h"
#include "tests/support/gap_faces.h"
#include "tests/support/scratch_folder.h"
#include "tests/support/voxel_rooms.h"

namespace seamward::test {
namespace {

constexpr double planar = 0.05e-3;   // meters: what a width between planes may be off by
constexpr double curved = 0.02;      // share: what one beside a curve may be off by
constexpr double touching = 0.2e-3;  // meters: how near to a ball a face is that holds it
constexpr double off_walls = 0.3;    // meters: how far from its walls a room is named, where there is room
constexpr double far = 100;          // meters: farther than anything in a house

using Kind = LoopFault::Kind;
using Pair = std::pair<SpaceIndex, SpaceIndex>;

Pair pair_of(SpaceIndex one, SpaceIndex other) { return std::minmax(one, other); }

std::string in_mm(double width) {
    char text[40];
    std::snprintf(text, sizeof text, "%.4g mm", width * 1e3);
    return text;
}

std::string in_words(const Point& p) {
    char text[80];
    std::snprintf(text, sizeof text, "(%.4f, %.4f, %.4f)", p.x, p.y, p.z);
    return text;
}

std::string bounds_of(const FoundGap& gap) {
    if (in_mm(gap.width) == in_mm(gap.at_most)) return in_mm(gap.width);
    return in_mm(gap.width) + " to " + in_mm(gap.at_most);
}

double allowance(const Shape& shape, double width) {
    const bool round = std::holds_alternative<Ring>(shape) || std::holds_alternative<Hole>(shape);
    return round ? std::max(planar, curved * width) : planar;
}

/// A point in the middle of a room, off its walls.
std::optional<Point> point_in(const MiddleSurface& middle) {
    if (middle.figure.outline.empty()) return std::nullopt;
    Point2 least = middle.figure.outline.front(), most = least;
    for (const Point2 p : middle.figure.outline) {
        least = {std::min(least.x, p.x), std::min(least.y, p.y)};
        most = {std::max(most.x, p.x), std::max(most.y, p.y)};
    }
    const std::optional<Point2> at = nearest_inside(middle.figure, (least + most) * 0.5, off_walls);
    if (!at) return std::nullopt;
    return middle.frame.at(at->x, at->y, 0);
}

/// A gap of the house.
struct DeclaredGap {
    GapIndex gap;
    Pair pair;
    double width = 0, off = 0;  ///< meters
    TriangleDistance faces;
    bool told = false;                  ///< whether it is to be found
    std::size_t openings = 1;           ///< how many the faces bound; of a mesh this says nothing
    std::vector<std::size_t> pieces{};  ///< positions of what was found of it
};

/// A gap that was found.
struct SeenGap {
    const FoundGap* found = nullptr;
    Pair pair;
    bool declared = false;
};

class Comparison {
public:
    Comparison(const DeclaredHouse& house, const Found& found) : house_(house), survey_(house.job().survey), found_(found) {}

    LoopReport run() {
        list_declared();
        list_seen();
        for (std::size_t i = 0; i < seen_.size(); ++i) place(i);
        for (const SeenGap& seen : seen_) {
            if (!seen.declared) tell_extra(seen);
        }
        for (const DeclaredGap& gap : declared_) tell(gap);
        report_.found = seen_.size();
        return std::move(report_);
    }

private:
    void list_declared() {
        const FindSettings& limits = house_.settings();
        const std::vector<ModelPart> faces = faces_by_gap(house_.job().house.parts, survey_.gaps.size());
        for (std::uint32_t i = 0; i < survey_.gaps.size(); ++i) {
            const double width = house_.width({i});
            if (width < 0) continue;
            const Gap& gap = survey_.gaps[i];
            const Pair pair = pair_of(house_.one_of(gap.between[0]), house_.one_of(gap.between[1]));
            const bool parted = pair.first != pair.second;
            const bool told = parted && width >= limits.smallest && width < limits.widest;
            report_.declared += told ? 1 : 0;
            report_.joined += parted ? 0 : 1;
            declared_.push_back({{i},
                                 pair,
                                 width,
                                 allowance(gap.shape, width),
                                 TriangleDistance({&faces[i], 1}),
                                 told,
                                 openings_between(faces[i].mesh, width + touching)});
        }
    }

    /// Says what air the found spaces are, from the ends of all ways into them.
    void list_seen() {
        std::vector<std::map<SpaceIndex, Point>> airs(found_.spaces.size());
        std::map<std::tuple<double, double, double>, SpaceIndex> asked;  // many ways end at the same point
        const auto air_at = [&](const Point& at) {
            const auto [entry, fresh] = asked.try_emplace({at.x, at.y, at.z});
            if (fresh) entry->second = house_.air_at(at);
            return entry->second;
        };
        const auto note = [&](std::size_t space, const Point& at) {
            if (const SpaceIndex air = air_at(at); air.valid()) airs[space].emplace(air, at);
        };
        for (std::size_t i = 0; i < found_.spaces.size(); ++i) {
            if (found_.spaces[i].kind == SpaceKind::outdoors)
                airs[i].emplace(house_.outdoors(), found_.spaces[i].at);
            else
                note(i, found_.spaces[i].at);
        }
        for (const FoundGap& gap : found_.gaps) {
            note(gap.between[0], gap.through.front());
            note(gap.between[1], gap.through.back());
        }
        for (std::size_t i = 0; i < airs.size(); ++i) {
            if (airs[i].size() == 1) continue;
            std::string words = "space " + found_.spaces[i].id + " at " + in_words(found_.spaces[i].at) + " is the air of";
            if (airs[i].empty()) words += " no space";
            for (const auto& [air, at] : airs[i]) words += " " + name_of(air) + " " + in_words(at);
            report_.faults.push_back({Kind::space, airs[i].empty() ? "" : name_of(airs[i].begin()->first), words});
        }
        tell_doubled(airs);
        for (const FoundGap& gap : found_.gaps) {
            std::array<SpaceIndex, 2> ends{air_at(gap.through.front()), air_at(gap.through.back())};
            for (std::size_t side = 0; side < 2; ++side) {
                const auto& known = airs[gap.between.at(side)];
                if (!ends.at(side).valid() && !known.empty()) ends.at(side) = known.begin()->first;
            }
            seen_.push_back({&gap, pair_of(ends[0], ends[1])});
        }
    }

    /// One space of the house that was found as several.
    void tell_doubled(const std::vector<std::map<SpaceIndex, Point>>& airs) {
        std::map<SpaceIndex, std::size_t> first;
        for (std::size_t i = 0; i < airs.size(); ++i) {
            if (airs[i].size() != 1) continue;
            const auto [known, fresh] = first.emplace(airs[i].begin()->first, i);
            if (fresh) continue;
            const FoundSpace &one = found_.spaces[known->second], &other = found_.spaces[i];
            report_.faults.push_back({Kind::space, name_of(known->first),
                                      "the air of " + name_of(known->first) + " was found as " + one.id + " at " +
                                          in_words(one.at) + " and " + other.id + " at " + in_words(other.at)});
        }
    }

    /// Finds the declared gap that a found one is, or a piece of.
    void place(std::size_t which) {
        SeenGap& seen = seen_[which];
        const double radius = seen.found->width / 2;
        const auto holds = [&](const DeclaredGap& gap) {
            return std::abs(gap.faces.to(seen.found->at, radius + 2 * touching) - radius) <= touching;
        };
        DeclaredGap* is = likest(seen, holds);
        if (is == nullptr || is->pair != seen.pair) {
            DeclaredGap* on_way = likest(seen, [&](const DeclaredGap& gap) { return passes(*seen.found, gap); });
            if (is == nullptr || (on_way != nullptr && on_way->pair == seen.pair)) is = on_way;
        }
        if (is == nullptr) return;
        seen.declared = true;
        is->pieces.push_back(which);
    }

    /// Of the gaps that meet a condition, one between the same spaces, one that is to be found, the nearest in width.
    template <class Condition>
    DeclaredGap* likest(const SeenGap& seen, const Condition& condition) {
        DeclaredGap* best = nullptr;
        const auto rank = [&](const DeclaredGap& gap) {
            return std::tuple(gap.pair != seen.pair, !gap.told, std::abs(gap.width - seen.found->width));
        };
        for (DeclaredGap& gap : declared_) {
            if ((best == nullptr || rank(gap) < rank(*best)) && condition(gap)) best = &gap;
        }
        return best;
    }

    /// Whether the ball touches faces of a gap on its way.
    static bool passes(const FoundGap& found, const DeclaredGap& gap) {
        const double reach = found.width / 2 + touching;
        for (std::size_t i = 1; i < found.through.size(); ++i) {
            const Point &from = found.through[i - 1], &to = found.through[i];
            const double whole = distance(from, to);
            for (double at = 0; at < whole;) {
                const double off = gap.faces.to(from + (to - from) * (at / whole), whole - at + reach + touching);
                if (off <= reach) return true;
                at += off - reach + touching / 2;
            }
        }
        return false;
    }

    [[nodiscard]] static bool agrees(const SeenGap& seen, const DeclaredGap& gap) {
        return gap.told && seen.pair == gap.pair && std::abs(seen.found->width - gap.width) <= gap.off &&
               seen.found->at_most >= gap.width - gap.off;
    }

    void tell(const DeclaredGap& gap) {
        const auto well = [&](std::size_t i) { return agrees(seen_[i], gap); };
        const auto good = static_cast<std::size_t>(std::ranges::count_if(gap.pieces, well));
        const bool mesh = std::holds_alternative<Mesh>(survey_[gap.gap].shape);
        const std::size_t openings = !gap.told ? 0 : mesh ? std::max<std::size_t>(1, good) : gap.openings;
        if (gap.told && good == openings && good == gap.pieces.size()) ++report_.matched;
        if (good < openings && good == gap.pieces.size()) tell_missing(gap, good);
        if (good > openings) tell_parted(gap, good);
        for (const std::size_t i : gap.pieces) {
            const SeenGap& seen = seen_[i];
            if (well(i)) continue;
            const bool within = gap.width >= seen.found->width - gap.off && gap.width <= seen.found->at_most + gap.off;
            // A piece that may be the gap is a fault of it; what cannot be it is another one.
            const bool other = !gap.told || seen.pair != gap.pair || (good > 0 && !within);
            report_.faults.push_back({other ? Kind::extra : Kind::differs, id_of(gap),
                                      (other ? "at the place of " : "") + words_for(gap) +
                                          (other ? " was found, but not declared: " : " was found as ") + words_for(seen),
                                      within});
        }
    }

    void tell_parted(const DeclaredGap& gap, std::size_t found) {
        std::string words = words_for(gap) + ": " + std::to_string(gap.openings) + " was found as " + std::to_string(found) + ":";
        for (const std::size_t i : gap.pieces) {
            if (agrees(seen_[i], gap)) words += " " + words_for(seen_[i]) + ";";
        }
        report_.faults.push_back({Kind::parted, id_of(gap), words});
    }

    void tell_missing(const DeclaredGap& gap, std::size_t found) {
        std::string words = words_for(gap) + " is missing";
        if (gap.openings > 1) words += ", " + std::to_string(found) + " of " + std::to_string(gap.openings) + " were found";
        const std::vector<Point>& way = house_.job().house.places[gap.gap.value].through;
        if (way.size() > 1) words += " at " + in_words(way[1]);
        const auto off = [&](const SeenGap& seen) { return gap.faces.to(seen.found->at, far); };
        const auto nearest = std::ranges::min_element(seen_, {}, off);
        if (nearest != seen_.end()) words += "; nearest is " + words_for(*nearest) + ", " + in_mm(off(*nearest)) + " off";
        report_.faults.push_back({Kind::missing, id_of(gap), words});
    }

    void tell_extra(const SeenGap& seen) {
        std::string words = "found, but not declared: " + words_for(seen);
        const auto off = [&](const DeclaredGap& gap) { return gap.faces.to(seen.found->at, far); };
        const auto nearest = std::ranges::min_element(declared_, {}, off);
        const bool any = nearest != declared_.end();
        if (any) words += "; nearest is " + words_for(*nearest) + ", " + in_mm(off(*nearest)) + " off";
        report_.faults.push_back({Kind::extra, any ? id_of(*nearest) : "", words});
    }

    [[nodiscard]] const std::string& id_of(const DeclaredGap& gap) const { return survey_[gap.gap].id; }
    [[nodiscard]] std::string name_of(SpaceIndex space) const { return space.valid() ? survey_[space].id : "no space"; }
    [[nodiscard]] std::string words_for(const Pair& pair) const { return name_of(pair.first) + " | " + name_of(pair.second); }
    [[nodiscard]] std::string words_for(const DeclaredGap& gap) const {
        return id_of(gap) + " " + in_mm(gap.width) + " " + shape_word(survey_[gap.gap].shape) + " " + words_for(gap.pair);
    }
    [[nodiscard]] std::string words_for(const SeenGap& seen) const {
        const FoundGap& gap = *seen.found;
        return gap.id + " " + bounds_of(gap) + " " + shape_word(gap.shape) + " " + words_for(seen.pair) + " at " +
               in_words(gap.at) + " (" + found_.parts[gap.parts[0]].id + ", " + found_.parts[gap.parts[1]].id + ")";
    }

    const DeclaredHouse& house_;
    const Survey& survey_;
    const Found& found_;
    std::vector<DeclaredGap> declared_;
    std::vector<SeenGap> seen_;
    LoopReport report_;
};

}  // namespace

Model read_from_file(const Job& job) {
    const ScratchFolder folder;
    const auto path = folder.write("house.glb", gltf_binary(job.house.parts, job.survey, job.name));
    return read_model(path, "house.glb", {}, RunContext());
}

DeclaredHouse::DeclaredHouse(const Job& job, const AirMap& shut, const FindSettings& limits)
    : job_(job), shut_(shut), settings_(limits) {
    for (std::size_t i = 0; i < job.survey.gaps.size(); ++i) {
        const bool built = !job.house.places.at(i).through.empty();
        widths_.push_back(built ? clear_width(job.survey.gaps[i].shape) : -1);
    }
    // What was closed since is open in the solids.
    for (const ClosedGap& closed : job.closed) {
        double& width = widths_[closed.gap.value];
        if (width >= 0) width = clear_width(closed.before);
    }
    join_spaces();
    add_rooms();
}

void DeclaredHouse::join_spaces() {
    for (std::uint32_t i = 0; i < job_.survey.spaces.size(); ++i) one_of_.push_back({i});
    const auto first = [&](SpaceIndex i) {
        while (one_of_[i.value] != i) i = one_of_[i.value];
        return i;
    };
    for (std::size_t i = 0; i < widths_.size(); ++i) {
        if (widths_[i] <= settings_.widest) continue;
        const auto [a, b] = job_.survey.gaps[i].between;
        const auto [low, high] = pair_of(first(a), first(b));
        one_of_[high.value] = low;
    }
    for (SpaceIndex& space : one_of_) space = first(space);
}

void DeclaredHouse::add_rooms() {
    std::set<SpaceIndex> named{outdoors()};
    for (std::uint32_t i = 0; i < one_of_.size(); ++i) {
        const Space& space = job_.survey.spaces[i];
        if (space.kind != SpaceKind::living && space.kind != SpaceKind::attached) continue;
        const std::optional<Point> at = point_in(job_.house.middles.at(i));
        if (at && named.insert(one_of_[i]).second) settings_.rooms.push_back({space.id, space.kind, *at});
    }
}

LoopReport DeclaredHouse::compare(const Found& found) const { return Comparison(*this, found).run(); }

SpaceIndex DeclaredHouse::air_at(const Point& at) const {
    const SpaceIndex space = shut_.space_at(at);
    return space.valid() ? one_of_[space.value] : space;
}

SpaceIndex DeclaredHouse::outdoors() const {
    const auto open = std::ranges::find(job_.survey.spaces, SpaceKind::outdoors, &Space::kind);
    return one_of_[static_cast<std::size_t>(open - job_.survey.spaces.begin())];
}

}  // namespace seamward::test
