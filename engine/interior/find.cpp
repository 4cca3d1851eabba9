// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/find.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <map>
#include <numeric>
#include <span>

#include "base/diagnostics.h"
#include "base/measure_text.h"
#include "geometry/box_tree.h"
#include "geometry/doubled_parts.h"
#include "interior/alike.h"
#include "interior/depth.h"
#include "interior/joints.h"
#include "interior/name_spaces.h"
#include "interior/pockets.h"
#include "interior/screens.h"

namespace seamward {

namespace {

constexpr double margin = 1;      // meters of air around the model
constexpr double rough = 0.05;    // how much of a width the first look may miss
constexpr double slack = 2e-3;    // of `smallest`: what rounding may take from a gap of just that width
constexpr double seen = 1.15;     // of `widest`: how wide passages are told at all, so that those of `widest` have an edge
constexpr double far_seen = 1.5;  // meters: how wide passages between rooms that somebody named are told

std::vector<CleanPart> clean_parts(const Model& model, std::vector<FoundPart>& found, std::vector<char>& left_out,
                                   const RunContext& run) {
    run.stage("mending parts");
    std::vector<CleanPart> parts(model.parts.size());
    tbb::parallel_for(std::size_t{0}, parts.size(), [&](std::size_t i) { parts[i] = clean_part(model.parts[i].mesh); });
    std::vector<TriangleMesh> meshes;
    meshes.reserve(parts.size());
    for (const CleanPart& part : parts) meshes.push_back(part.mesh);
    left_out.assign(parts.size(), 0);
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const ModelPart& part = model.parts[i];
        found.push_back({part.id, part.name, part.ifc_class, part.global_id, parts[i].faults, {}, false});
        if (parts[i].mesh.triangles.empty()) left_out[i] = 1;
    }
    for (const DoubledPart& doubled : find_doubled_parts(meshes)) {
        found[doubled.part].same_as = doubled.same_as;
        left_out[doubled.part] = 1;
    }
    std::map<std::string, std::size_t> bearers;
    for (const FoundPart& part : found) ++bearers[part.name];
    for (FoundPart& part : found) part.shares_name = !part.name.empty() && bearers[part.name] > 1;
    return parts;
}

/// Whether two named rooms run into each other without anything that the cap lets one see.
bool rooms_run_together(const Passages& passages, const Bodies& bodies) {
    return std::any_of(bodies.between.begin(), bodies.between.end(),
                       [&](std::uint32_t i) { return passages.passage(i).clearance >= passages.clearance().cap() * 0.99; });
}

/// The stands that named rooms start from, the open air first.
std::vector<std::uint32_t> seeds_of(const Passages& passages, const FindSettings& settings) {
    const Air& air = passages.air();
    std::vector<std::uint32_t> seeds{passages.middle_of(air.complex.cell_at({-1e9, -1e9, 1e9}))};
    std::vector<Diagnostic> faults;
    for (const RoomSeed& room : settings.rooms) {
        const std::uint32_t cell = air.complex.cell_at(room.at);
        if (air.solid[cell]) {
            faults.push_back({"--room " + room.id,
                              {},
                              "the point lies within a part, not in the air",
                              "give a point in the middle of the room"});
        } else if (room.kind != SpaceKind::outdoors) {  // that is no wall between it and the open air
            seeds.push_back(passages.middle_of(cell));
        }
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
    return seeds;
}

AxisBox box_around(std::span<const CleanPart> parts) {
    Point low{1e300, 1e300, 1e300}, high{-1e300, -1e300, -1e300};
    for (const CleanPart& part : parts) {
        for (const Point& p : part.mesh.points) {
            low = {std::min(low.x, p.x), std::min(low.y, p.y), std::min(low.z, p.z)};
            high = {std::max(high.x, p.x), std::max(high.y, p.y), std::max(high.z, p.z)};
        }
    }
    return {low, high};
}

/// Refuses rooms outside of the box around the model: there is only the open air.
void refuse_outside(const AxisBox& box, const FindSettings& settings) {
    const auto& [low, high] = box;
    std::vector<Diagnostic> faults;
    for (const RoomSeed& room : settings.rooms) {
        const Point& p = room.at;
        const bool inside = p.x > low.x && p.x < high.x && p.y > low.y && p.y < high.y && p.z > low.z && p.z < high.z;
        if (inside || room.kind == SpaceKind::outdoors) continue;
        faults.push_back({"--room " + room.id,
                          {},
                          "the point lies outside of the model",
                          "give a point in the middle of the room, in meters, z up"});
    }
    if (!faults.empty()) throw BadInput(std::move(faults));
}

/// Makes one body of those that turn out to run together: the first look takes some wide passages for a little narrower than they
/// are. Of two the first stays; named rooms (the first `kept`) stay apart from each other. Openings within a body go.
void join_bodies(double widest, std::size_t kept, Bodies& bodies, std::vector<Opening>& openings,
                 std::vector<MeasuredOpening>& measured) {
    std::vector<std::size_t> parent(bodies.list.size());
    std::iota(parent.begin(), parent.end(), std::size_t{0});
    const auto find = [&](std::size_t x) {
        while (parent[x] != x) x = parent[x] = parent[parent[x]];
        return x;
    };
    for (std::size_t i = 0; i < openings.size(); ++i) {
        const std::size_t a = find(static_cast<std::size_t>(openings[i].first)),
                          b = find(static_cast<std::size_t>(openings[i].second));
        if (measured[i].width >= widest && std::max(a, b) >= kept) parent[std::max(a, b)] = std::min(a, b);
    }
    std::vector<std::int32_t> now(bodies.list.size());
    std::vector<Body> list;
    for (std::size_t i = 0; i < bodies.list.size(); ++i) {
        const std::size_t root = find(i);
        if (root == i) {
            now[i] = static_cast<std::int32_t>(list.size());
            list.push_back(bodies.list[i]);
        } else {
            now[i] = now[root];
            list[static_cast<std::size_t>(now[i])].volume += bodies.list[i].volume;
        }
    }
    bodies.list = std::move(list);
    for (std::int32_t& body : bodies.of) {
        if (body >= 0) body = now[static_cast<std::size_t>(body)];
    }
    std::size_t left = 0;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        Opening& opening = openings[i];
        opening.first = now[static_cast<std::size_t>(opening.first)];
        opening.second = now[static_cast<std::size_t>(opening.second)];
        if (opening.first == opening.second) continue;
        if (opening.first > opening.second) std::swap(opening.first, opening.second);
        if (left != i) {
            openings[left] = std::move(opening);
            measured[left] = std::move(measured[i]);
        }
        ++left;
    }
    openings.resize(left);
    measured.resize(left);
}

/// One opening in the list for each that was measured: those that share a mouth stand side by side.
std::vector<MeasuredOpening> part_mouths(std::vector<std::vector<MeasuredOpening>> measured, std::vector<Opening>& openings) {
    std::vector<MeasuredOpening> list;
    std::vector<Opening> parted;
    for (std::size_t i = 0; i < measured.size(); ++i) {
        for (MeasuredOpening& m : measured[i]) {
            list.push_back(std::move(m));
            parted.push_back(openings[i]);
        }
    }
    openings = std::move(parted);
    return list;
}

/// Whether two flat cuts show the same opening at two places of its depth.
bool are_of_one(const Clearance& clearance, MeasuredOpening& a, MeasuredOpening& b) {
    constexpr double same = 2e-4, same_area = 0.01, same_normal = 1e-6;  // meters, fractions
    if (!a.cut || !b.cut || std::abs(a.cut->area - b.cut->area) > same_area * a.cut->area) return false;
    if (std::abs(dot(a.cut->normal, b.cut->normal)) < 1 - same_normal) return false;
    const Vector off = b.cut->middle - a.cut->middle;
    const double along = std::abs(dot(off, a.cut->normal));
    if (dot(off, off) - along * along > same * same) return false;
    for (MeasuredOpening* each : {&a, &b}) settle_depth(clearance, *each);
    // Of several that share a mouth, two may follow each other along one pipe.
    return along <= (a.apart && b.apart ? same : (a.depth + b.depth) / 2);
}

/// Of openings between the same two bodies that one flat cut shuts the widest stays, with the mouths of all: what stands in a
/// slot parts its mouth.
void join_mouths(const Passages& passages, std::vector<Opening>& openings, std::vector<MeasuredOpening>& measured) {
    std::map<std::array<std::int32_t, 2>, std::vector<std::size_t>> kept;  // by bodies
    std::size_t left = 0;
    for (std::size_t i = 0; i < openings.size(); ++i) {
        std::vector<std::size_t>& beside = kept[{openings[i].first, openings[i].second}];
        const auto like = std::ranges::find_if(
            beside, [&](std::size_t j) { return are_of_one(passages.clearance(), measured[i], measured[j]); });
        if (like != beside.end()) {
            Opening& opening = openings[*like];
            MeasuredOpening& one = measured[*like];
            opening.mouth.insert(opening.mouth.end(), openings[i].mouth.begin(), openings[i].mouth.end());
            opening.passages.insert(opening.passages.end(), openings[i].passages.begin(), openings[i].passages.end());
            const double at_most = std::max(one.at_most, measured[i].at_most);
            if (measured[i].width > one.width) one = std::move(measured[i]);
            one.at_most = at_most;
            one.take_mouth(Mouth(passages, opening));
            continue;
        }
        beside.push_back(left);
        if (left != i) {
            openings[left] = std::move(openings[i]);
            measured[left] = std::move(measured[i]);
        }
        ++left;
    }
    openings.resize(left);
    measured.resize(left);
}

/// A part's name for people. Building models say "Family:Type:146596": the number and what is said twice in a row tell nobody
/// anything, and the part's id has them. A name that several parts bear has the id behind it.
std::string plain_name(const FoundPart& part) {
    if (part.name.empty()) return part.id;
    std::vector<std::string> words;
    for (std::size_t begin = 0; begin <= part.name.size();) {
        const std::size_t end = std::min(part.name.find(':', begin), part.name.size());
        std::string word = part.name.substr(begin, end - begin);
        if (words.empty() || word != words.back()) words.push_back(std::move(word));
        begin = end + 1;
    }
    constexpr const char* digits = "0123456789";
    if (words.size() > 1 && words.back().find_first_not_of(digits) == std::string::npos) words.pop_back();
    std::string name = words[0];
    for (std::size_t i = 1; i < words.size(); ++i) name += ':' + words[i];
    if (name.empty()) return part.id;
    return part.shares_name ? name + " [" + part.id + ']' : name;
}

/// "IfcWallStandardCase" as people call it: "wall"; empty for a part without a class, or one that says nothing.
std::string plain_class(const FoundPart& part) {
    if (!part.ifc_class.starts_with("Ifc")) return {};
    std::string words = part.ifc_class.substr(3);
    if (words.starts_with("BuildingElement")) return "part";
    for (const std::string_view end : {"StandardCase", "ElementedCase", "Element", "Type"}) {
        if (words.size() > end.size() && words.ends_with(end)) words.resize(words.size() - end.size());
    }
    std::string plain;
    for (const char c : words) {
        const bool capital = c >= 'A' && c <= 'Z';
        if (capital && !plain.empty()) plain += ' ';
        plain += capital ? static_cast<char>(c - 'A' + 'a') : c;
    }
    return plain;
}

/// What the parts are comes first, where the file says it; then what its author's program called them.
std::string gap_name(const FoundPart& a, const FoundPart& b) {
    const bool one = &a == &b;
    const std::string kind_a = plain_class(a);
    const std::string kind_b = plain_class(b);
    const std::string names = one ? plain_name(a) : plain_name(a) + " and " + plain_name(b);
    if (kind_a.empty() || kind_b.empty()) return (one ? "in " : "between ") + names;
    if (one) return "in " + kind_a + " (" + names + ")";
    return "between " + kind_a + " and " + kind_b + " (" + names + ")";
}

/// Sorted for people: widest first, and the same order whatever the machine.
void take_gaps(const Clearance& clearance, std::vector<MeasuredOpening>& measured, const std::vector<Opening>& openings,
               const std::vector<std::size_t>& space_of, const FindSettings& settings, Found& found) {
    std::vector<Screen> screens = find_screens(openings, measured);
    std::erase_if(screens, [&](const Screen& s) { return measured[s.openings[0]].width < settings.smallest * (1 - slack); });
    std::stable_sort(screens.begin(), screens.end(), [&](const Screen& a, const Screen& b) {
        return std::round(measured[a.openings[0]].width * 1e7) > std::round(measured[b.openings[0]].width * 1e7);
    });
    for (const Screen& screen : screens) {
        const std::size_t i = screen.openings[0];
        settle_depth(clearance, measured[i]);
        const MeasuredOpening& m = measured[i];
        FoundGap gap;
        gap.id = "gap-" + std::to_string(found.gaps.size() + 1);
        gap.between = {space_of[static_cast<std::size_t>(openings[i].first)],
                       space_of[static_cast<std::size_t>(openings[i].second)]};
        gap.name = gap_name(found.parts[m.parts[0]], found.parts[m.parts[1]]);
        gap.shape = m.shape;
        gap.width = m.width;
        gap.at_most = m.at_most;
        gap.length = m.length;
        gap.depth = m.depth;
        gap.at = m.at;
        gap.through = m.through;
        gap.parts = {m.parts[0], m.parts[1]};
        if (screen.openings.size() > 1) {
            // Long ones let more animals through than meshes of their width do, and stay slots.
            constexpr double longest_mesh = 3;  // widths
            if (m.length <= longest_mesh * m.width) {
                gap.shape = Mesh{m.width, screen.area};
                gap.length = std::sqrt(screen.area);
            }
            gap.openings = static_cast<std::uint32_t>(screen.openings.size());
            for (const std::size_t other : screen.openings) gap.at_most = std::max(gap.at_most, measured[other].at_most);
        }
        found.gaps.push_back(std::move(gap));
    }
}

void take_joints(std::vector<Joint> joints, Found& found) {
    for (Joint& joint : joints) {
        const std::array<std::size_t, 2> parts{joint.parts[0], joint.parts[1]};
        found.joints.push_back({"joint-" + std::to_string(found.joints.size() + 1),
                                "joint " + gap_name(found.parts[parts[0]], found.parts[parts[1]]), joint.between, parts,
                                joint.length, joint.depth, joint.at, std::move(joint.through), std::move(joint.along)});
    }
}

void take_pockets(const std::vector<Pocket>& pockets, Found& found) {
    for (const Pocket& p : pockets) {
        found.pockets.push_back({"pocket-" + std::to_string(found.pockets.size() + 1),
                                 p.space,
                                 p.width,
                                 p.depth,
                                 p.volume,
                                 p.at,
                                 {p.parts[0], p.parts[1]}});
    }
}

/// What to look at where no way in can end, since no air was taken for a room.
void note_on_rooms(const FindSettings& settings, Found& found) {
    const auto is_living = [](const FoundSpace& space) { return space.kind == SpaceKind::living; };
    if (std::ranges::any_of(found.spaces, is_living)) return;
    std::string text = found.spaces.size() > 1
                           ? "No air was taken for a room: in none is there room for a person to stand. "
                           : "No air is shut off from the open air: an opening wider than " + millimeters_text(settings.widest) +
                                 " (--widest) leads inside, or parts are missing, or they are no solids. ";
    text += "The model is " + size_text(found.size) +
            "; if that cannot be, --unit says what one unit of the file is. --room NAME=X,Y,Z says which air is a room, even "
            "where it stands open.";
    found.notes.push_back(std::move(text));
}

}  // namespace

std::string size_text(const Vector& size) {
    std::array<char, 96> text{};
    std::snprintf(text.data(), text.size(), "%.2f x %.2f x %.2f m", size.x, size.y, size.z);
    return text.data();
}

Found find_gaps(const Model& model, const FindSettings& settings, const RunContext& run) {
    Found found;
    std::vector<char> left_out;
    const std::vector<CleanPart> parts = clean_parts(model, found.parts, left_out, run);
    if (std::all_of(left_out.begin(), left_out.end(), [](char out) { return out != 0; })) {
        throw BadInput({{"the model", {}, "it has no triangles", "export it with the bodies of its parts"}});
    }
    const AxisBox box = box_around(parts);
    found.size = box.high - box.low;
    refuse_outside(box, settings);
    const Air air = cut_air(parts, left_out, margin, run);
    const double least = settings.smallest / 2 * (1 - rough);
    BodyRules rules;
    rules.roomy = settings.widest / 2;
    const auto look = [&](double cap) {
        const Clearance clearance(air.tree, cap);
        Passages passages(air, clearance, least, run);
        const std::vector<std::uint32_t> seeds = seeds_of(passages, settings);
        Bodies bodies = find_bodies(passages, seeds, rules, run);
        if (cap < far_seen && rooms_run_together(passages, bodies)) return false;
        const WaysHome home(passages, bodies);
        Openings openings = find_openings(passages, bodies, home, run);
        std::vector<MeasuredOpening> measured = part_mouths(measure_all(passages, bodies, home, openings, run), openings.list);
        join_bodies(settings.widest, seeds.size(), bodies, openings.list, measured);
        join_mouths(passages, openings.list, measured);
        const std::vector<std::size_t> space_of = name_spaces(passages, bodies, model, settings, found);
        take_gaps(clearance, measured, openings.list, space_of, settings, found);
        take_joints(find_joints(passages, bodies, space_of, run), found);
        take_pockets(find_pockets(passages, bodies, openings, space_of, rules.roomy, run), found);
        return true;
    };
    if (!look(rules.roomy * seen)) look(far_seen);
    note_on_rooms(settings, found);
    return found;
}

}  // namespace seamward
