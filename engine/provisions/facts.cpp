// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/facts.h"

#include <algorithm>
#include <cmath>

#include "materials/duty_rules.h"

namespace seamward {

namespace {

constexpr double deep_below = 1000;  ///< meters: under anything that stands near a house
constexpr double hair = 1e-6;        ///< meters: a point on a face is not above it

bool holds(const std::vector<std::string>& words, const std::string& word) {
    return std::find(words.begin(), words.end(), word) != words.end();
}

bool any_of(const std::vector<std::string>& asked, const std::vector<std::string>& known) {
    return std::any_of(asked.begin(), asked.end(), [&](const std::string& word) { return holds(known, word); });
}

/// The height of a triangle over a place of the plan that it covers.
double height_at(const TriangleTree::Triangle& t, const Point& at) {
    const Vector n = cross(t[1] - t[0], t[2] - t[0]);
    return std::abs(n.z) < 1e-300 ? t[0].z : t[0].z - (n.x * (at.x - t[0].x) + n.y * (at.y - t[0].y)) / n.z;
}

}  // namespace

bool called(const Space& space, const std::string& word) {
    std::string text = space.id + " " + space.name;
    std::transform(text.begin(), text.end(), text.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return text.find(word) != std::string::npos;
}

bool AuditFacts::is_guess(GapIndex gap) const {
    const Gap& of = survey()[gap];
    if (is_shut(of.shape) && closing_of(gap) != nullptr) return false;
    return of.evidence.how == Evidence::How::assumed || (of.evidence.how == Evidence::How::modeled && is_shut(of.shape));
}

const ClosedGap* AuditFacts::closing_of(GapIndex gap) const { return closings_[gap.value]; }

AuditFacts::AuditFacts(const Job& the_job, const GapParts& the_parts) : job(the_job), parts(the_parts) {
    described = !job.house.outline.empty();
    for (std::size_t i = 0; i < survey().spaces.size(); ++i) {
        if (called(survey().spaces[i], "attic")) attics_.insert(i);
        if (called(survey().spaces[i], "garage")) garages_.insert(i);
    }
    for (const SpaceArea& floor : job.vented) {
        if (floor.rule == "attic") attics_.insert(floor.space.value);
    }
    for (const Gap& gap : survey().gaps) {
        if (!gap.feature.starts_with("garage-door")) continue;
        for (const SpaceIndex side : gap.between) {
            if (survey()[side].kind == SpaceKind::attached) garages_.insert(side.value);
        }
    }
    closings_.resize(survey().gaps.size(), nullptr);
    for (const ClosedGap& closed : job.closed) {
        if (closed.holds()) closings_[closed.gap.value] = &closed;
    }
    gather_solids();
}

void AuditFacts::gather_solids() {
    faces_.resize(survey().gaps.size());
    std::vector<TriangleTree::Triangle> ground, solids;
    for (const Part& part : job.house.parts) {
        const bool earth = part.layer == Layer::ground, paving = part.layer == Layer::yard && part.material == "concrete";
        for (std::size_t i = 0; i < part.mesh.triangles.size(); ++i) {
            const auto& [a, b, c] = part.mesh.triangles[i];
            const TriangleTree::Triangle triangle{part.mesh.points[a], part.mesh.points[b], part.mesh.points[c]};
            solids.push_back(triangle);
            if (earth || paving) {
                ground.push_back(triangle);
                is_earth_.push_back(earth);
            }
            if (part.bounds[i].valid() && part.bounds[i].value < faces_.size()) faces_[part.bounds[i].value].push_back(triangle);
        }
    }
    ground_ = std::make_unique<TriangleTree>(std::move(ground));
    solids_ = std::make_unique<TriangleTree>(std::move(solids));
}

std::optional<bool> AuditFacts::has(const std::string& word) const {
    if (holds(job.built_of.has, word)) return true;
    if (holds(job.built_of.without, word)) return false;
    const std::vector<Space>& spaces = survey().spaces;
    const auto any_space = [&](auto&& is) { return std::any_of(spaces.begin(), spaces.end(), is); };
    const auto any_gap = [&](auto&& is) { return std::any_of(survey().gaps.begin(), survey().gaps.end(), is); };
    if (word == "garage" && (described || !garages_.empty())) return !garages_.empty();  // a door of its own makes it one
    if (word == "attic" && any_space([](const Space& s) { return called(s, "attic"); })) return true;
    if (word == "fuel-appliances" &&
        (!job.inputs.empty() || any_gap([](const Gap& g) { return g.duty == Duty::combustion_air; })))
        return true;
    if (word == "dryer" && any_gap([&](const Gap& g) {
            return g.feature == "dryer-outlet" || called(survey()[g.between[0]], "dryer") ||
                   called(survey()[g.between[1]], "dryer");
        }))
        return true;
    if (word == "chimney" && any_gap([](const Gap& g) { return g.feature.starts_with("chimney-"); })) return true;
    if (word == "flood-zone" && any_gap([](const Gap& g) { return g.duty == Duty::flood; })) return true;
    return std::nullopt;
}

std::optional<bool> AuditFacts::applies(const Applies& asked) const {
    std::vector<std::optional<bool>> answers;
    if (!asked.cladding.empty()) {
        std::vector<std::string> known = job.built_of.cladding;
        const bool all = !known.empty();
        for (const Gap& gap : survey().gaps) {
            if (!described) known.insert(known.end(), gap.substrates.begin(), gap.substrates.end());
        }
        const bool stands = any_of(asked.cladding, all ? job.built_of.cladding : known);
        answers.push_back(stands ? std::optional<bool>(true) : all ? std::optional<bool>(false) : std::nullopt);
    }
    if (!asked.foundation.empty()) {
        const std::string& known = job.built_of.foundation;
        std::optional<bool> answer;
        if (!known.empty())
            answer = holds(asked.foundation, known);
        else if (holds(asked.foundation, "crawl-space") &&
                 std::any_of(survey().spaces.begin(), survey().spaces.end(), [](const Space& s) { return called(s, "crawl"); }))
            answer = true;
        answers.push_back(answer);
    }
    for (const std::string& word : asked.has) answers.push_back(has(word));
    if (std::find(answers.begin(), answers.end(), std::optional<bool>(false)) != answers.end()) return false;
    if (std::find(answers.begin(), answers.end(), std::nullopt) != answers.end()) return std::nullopt;
    return true;
}

bool AuditFacts::between_classes(GapIndex gap, const Provision& provision) const {
    const auto& [one, other] = provision.classes;
    if (one.empty() || gap.value >= parts.of_gap.size()) return false;
    const auto of = [&](std::size_t part, const std::vector<std::string>& classes) {
        const std::string& known = parts.parts[part].ifc_class;
        return std::any_of(classes.begin(), classes.end(), [&](const std::string& begin) { return known.starts_with(begin); });
    };
    const bool fits = std::any_of(provision.gaps.begin(), provision.gaps.end(), [&](const DutyCase& when) {
        DutyCase place;  // an inner door is no outside door in a model either
        place.between = when.between;
        return fits_case(place, survey()[gap], survey());
    });
    if (!fits) return false;
    const std::vector<std::size_t>& sides = parts.of_gap[gap.value];
    if (sides.size() < 2) return sides.size() == 1 && of(sides[0], one) && of(sides[0], other);
    return (of(sides[0], one) && of(sides[1], other)) || (of(sides[1], one) && of(sides[0], other));
}

/// A ceiling under another story is no attic's, and a closet that opens to the yard is no garage.
bool AuditFacts::leads_as_asked(const Gap& gap, const Provision& provision) const {
    if (provision.into.empty()) return true;
    const std::set<std::size_t>& asked = provision.into == "attic" ? attics_ : garages_;
    if (asked.empty()) return provision.into == "attic" || has("garage").value_or(true);  // nobody says which spaces they are
    return asked.contains(gap.between[0].value) || asked.contains(gap.between[1].value);
}

bool AuditFacts::is_in_inner_wall(GapIndex gap) const {
    const auto& [one, other] = survey()[gap].between;
    if (called(survey()[one], "party") || called(survey()[other], "party")) return true;
    const Loop& outline = job.house.outline;
    const std::optional<Point>& at = survey()[gap].at;
    if (outline.empty() || !at) return false;
    constexpr double thickest = 0.45;  // meters: the inner face of an outside wall is no farther from the outline
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 from = outline[i], along = outline[(i + 1) % outline.size()] - from;
        const double size = dot(along, along);
        const Point2 there{at->x, at->y};
        const double share = size > 0 ? std::clamp(dot(there - from, along) / size, 0.0, 1.0) : 0;
        const Point2 away = there - (from + along * share);
        if (dot(away, away) <= thickest * thickest) return false;
    }
    return true;
}

std::vector<GapIndex> AuditFacts::gaps_of(const Provision& provision) const {
    std::vector<GapIndex> found;
    for (std::uint32_t i = 0; i < survey().gaps.size(); ++i) {
        const Gap& gap = survey().gaps[i];
        if (!leads_as_asked(gap, provision) || (provision.outside_walls && is_in_inner_wall({i}))) continue;
        Gap bare = gap, as_found = gap;  // a mesh that was put over an opening is one, and what was closed is still what it was
        bare.covered.reset();
        if (const ClosedGap* closed = closing_of({i})) {
            as_found.covered.reset();
            as_found.shape = closed->before;
        }
        const bool fits = std::any_of(provision.gaps.begin(), provision.gaps.end(), [&](const DutyCase& one) {
            return fits_case(one, gap, survey()) || fits_case(one, bare, survey()) || fits_case(one, as_found, survey());
        });
        if (fits || between_classes({i}, provision)) found.push_back({i});
    }
    return found;
}

std::optional<Vector> AuditFacts::outward(GapIndex gap) const {
    if (gap.value >= job.house.places.size()) return std::nullopt;
    const std::vector<Point>& way = job.house.places[gap.value].through;
    if (way.size() < 2) return std::nullopt;
    const Gap& of = survey()[gap];
    const bool first = survey()[of.between[0]].kind == SpaceKind::outdoors || survey()[of.between[1]].kind != SpaceKind::outdoors;
    Vector level = first ? way.front() - way.back() : way.back() - way.front();
    level.z = 0;
    const double size = length(level);
    if (size < 1e-4) return std::nullopt;
    return level * (1 / size);
}

bool AuditFacts::is_outside(const Part& part) const {
    constexpr double in_wall = 0.3;  // meters: no inner door hangs so near to the outer face of the framing and along it
    const Loop& outline = job.house.outline;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const Point2 from = outline[i], along = outline[(i + 1) % outline.size()] - from;
        const double size = std::sqrt(dot(along, along));
        const bool beside = std::all_of(part.mesh.points.begin(), part.mesh.points.end(), [&](const Point& p) {
            const Point2 off{p.x - from.x, p.y - from.y};
            const double t = dot(off, along) / size;
            return std::abs(cross(along, off)) / size < in_wall && t > -in_wall && t < size + in_wall;
        });
        if (beside) return true;
    }
    return outline.empty();
}

std::optional<AuditFacts::Ground> AuditFacts::ground_at(const Point& at) const {
    std::optional<Ground> best;
    ground_->above({at.x, at.y, at.z - deep_below}, [&](std::uint32_t triangle, bool) {
        const double z = height_at((*ground_)[triangle], at);
        if (!best || z > best->z) best = Ground{z, is_earth_[triangle]};
    });
    return best;
}

std::optional<double> AuditFacts::solid_above(const Point& at) const {
    std::optional<double> best;
    solids_->above(at, [&](std::uint32_t triangle, bool) {
        const double z = height_at((*solids_)[triangle], at);
        if (z >= at.z - hair && (!best || z < *best)) best = z;
    });
    return best;
}

std::optional<double> AuditFacts::solid_below(const Point& at) const {
    std::optional<double> best;
    solids_->above({at.x, at.y, at.z - deep_below}, [&](std::uint32_t triangle, bool) {
        const double z = height_at((*solids_)[triangle], at);
        if (z <= at.z + hair && (!best || z > *best)) best = z;
    });
    return best;
}

}  // namespace seamward
