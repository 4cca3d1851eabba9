// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/found_survey.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "base/phrases.h"
#include "base/text.h"

namespace seamward {

namespace {

constexpr double nanometers = 1e9;
constexpr double furthest = 1e5;  ///< meters from the origin that a job file can state

Shape rounded(const Shape& shape) {
    if (const auto* slot = std::get_if<Slot>(&shape)) return Slot{to_nanometers(slot->width), to_nanometers(slot->length)};
    if (const auto* hole = std::get_if<Hole>(&shape)) return Hole{to_nanometers(hole->diameter)};
    if (const auto* ring = std::get_if<Ring>(&shape)) return Ring{to_nanometers(ring->width), to_nanometers(ring->around)};
    const Mesh& mesh = std::get<Mesh>(shape);
    return Mesh{to_nanometers(mesh.opening), mesh.area};
}

std::optional<Point> place(const Point& at) {
    const bool near = std::abs(at.x) <= furthest && std::abs(at.y) <= furthest && std::abs(at.z) <= furthest;
    if (!near) return std::nullopt;
    return Point{to_nanometers(at.x), to_nanometers(at.y), to_nanometers(at.z)};
}

/// Up to the next micrometer: a bound has to hold.
double plus_minus(const FoundGap& gap) {
    constexpr double micrometers = 1e6;
    return std::ceil(std::max(0.0, gap.at_most - to_nanometers(gap.width)) * micrometers) / micrometers;
}

/// Whether both parts that hold a gap are made to be opened, as their file says.
bool is_operable(const FoundGap& gap, const std::vector<FoundPart>& parts) {
    return std::ranges::all_of(gap.parts, [&](std::size_t part) {
        if (part >= parts.size()) return false;
        const std::string& ifc_class = parts[part].ifc_class;
        return ifc_class.starts_with("IfcDoor") || ifc_class.starts_with("IfcWindow");
    });
}

Gap gap_of(const FoundGap& found, const std::vector<FoundPart>& parts) {
    Gap gap;
    gap.id = found.id;
    gap.name = one_line(found.name);
    for (std::size_t side = 0; side < 2; ++side) gap.between.at(side) = {static_cast<std::uint32_t>(found.between.at(side))};
    gap.shape = rounded(found.shape);
    // The openings of a mesh are one gap already.
    if (!std::holds_alternative<Mesh>(found.shape)) gap.count = std::max<std::uint32_t>(1, found.openings);
    gap.at = place(found.at);
    if (found.depth > 0) gap.depth = to_nanometers(found.depth);
    gap.evidence = {Evidence::How::modeled, plus_minus(found)};
    if (is_operable(found, parts)) gap.duty = Duty::operable;
    return gap;
}

Gap gap_of(const FoundJoint& found) {
    Gap gap;
    gap.id = found.id;
    gap.name = one_line(found.name);
    for (std::size_t side = 0; side < 2; ++side) gap.between.at(side) = {static_cast<std::uint32_t>(found.between.at(side))};
    gap.shape = Slot{0, to_nanometers(found.length)};
    gap.at = place(found.at);
    if (found.depth > 0) gap.depth = to_nanometers(found.depth);
    gap.evidence.how = Evidence::How::modeled;
    return gap;
}

}  // namespace

double to_nanometers(double meters) { return std::round(meters * nanometers) / nanometers + 0.0; }

std::string one_line(std::string_view text) {
    std::string line;
    for (std::size_t begin = 0; begin < text.size();) {
        const std::size_t end = std::min(text.find_first_of(" \t\n\r\v\f", begin), text.size());
        if (end > begin) line += (line.empty() ? "" : " ") + std::string(text.substr(begin, end - begin));
        begin = end + 1;
    }
    constexpr std::size_t most = 400;  // bytes; a job file takes more, people do not
    line = printable(line);
    if (line.size() <= most) return line;
    std::size_t end = most;
    while ((static_cast<unsigned char>(line[end]) & 0xC0U) == 0x80U) --end;
    return line.substr(0, end) + "...";
}

std::vector<GapPlace> found_places(const Found& found) {
    std::vector<GapPlace> places;
    const auto add = [&](const std::vector<Point>& through) {
        GapPlace way{{static_cast<std::uint32_t>(places.size())}, {}};
        for (const Point& at : through) {
            if (!place(at)) continue;
            const auto fine = [](double meters) { return to_nanometers(std::round(meters * 1e4) / 1e4); };
            way.through.push_back({fine(at.x), fine(at.y), fine(at.z)});
        }
        if (way.through.size() != through.size() || through.size() < 2) way.through.clear();
        places.push_back(std::move(way));
    };
    for (const FoundGap& gap : found.gaps) add(gap.through);
    for (const FoundJoint& joint : found.joints) add(joint.through);
    return places;
}

namespace {

/// Adds the id to each name that several bear: where names stand without ids, they have to tell what is meant.
template <class Named>
void tell_apart(std::vector<Named>& list) {
    std::map<std::string, std::size_t> bearers;
    for (const Named& each : list) ++bearers[each.name];
    for (Named& each : list) {
        if (!each.name.empty() && bearers[each.name] > 1) each.name += " [" + each.id + ']';
    }
}

}  // namespace

Survey found_survey(const Found& found) {
    Survey survey;
    for (const FoundSpace& space : found.spaces)
        survey.spaces.push_back({.id = space.id, .name = one_line(listed(space.labels)), .kind = space.kind});
    for (const FoundGap& gap : found.gaps) survey.gaps.push_back(gap_of(gap, found.parts));
    for (const FoundJoint& joint : found.joints) survey.gaps.push_back(gap_of(joint));
    tell_apart(survey.spaces);
    tell_apart(survey.gaps);
    return survey;
}

}  // namespace seamward
