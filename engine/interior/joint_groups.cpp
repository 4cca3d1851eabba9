// SPDX-License-Identifier: GPL-3.0-or-later
#include "interior/joint_groups.h"

#include <oneapi/tbb/parallel_for.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <numeric>

namespace seamward {

namespace {

constexpr double together = 3e-5;     // meters: contacts so near touch; corners are flat and straight to a third of that
constexpr double off_surface = 1e-4;  // meters within both parts

double to_segment(const Point& p, const Point& a, const Point& b) {
    const Vector along = b - a;
    const double square = dot(along, along);
    const double share = square > 0 ? std::clamp(dot(p - a, along) / square, 0.0, 1.0) : 0;
    return distance(p, a + along * share);
}

double to_contact(const Point& p, const Contact& contact) {
    const std::size_t n = contact.corners.size();
    bool inside = contact.is_flush();
    double nearest = 1e300;
    for (std::size_t i = 0; i < n; ++i) {
        const Point &a = contact.corners[i], &b = contact.corners[(i + 1) % n];
        nearest = std::min(nearest, to_segment(p, a, b));
        inside = inside && dot(cross(contact.normal, b - a), p - a) >= 0;
    }
    return inside ? std::min(nearest, std::abs(dot(contact.normal, p - contact.corners[0]))) : nearest;
}

struct Span {
    Point low, high;
    std::uint32_t contact = 0;
};

Span span_of(const Contact& contact, std::uint32_t number) {
    Span s{contact.corners[0], contact.corners[0], number};
    for (const Point& p : contact.corners) {
        s.low = {std::min(s.low.x, p.x), std::min(s.low.y, p.y), std::min(s.low.z, p.z)};
        s.high = {std::max(s.high.x, p.x), std::max(s.high.y, p.y), std::max(s.high.z, p.z)};
    }
    return s;
}

bool touch(const Contact& a, const Contact& b) {
    const auto near = [](const Contact& one, const Contact& other) {
        return std::any_of(one.corners.begin(), one.corners.end(),
                           [&](const Point& p) { return to_contact(p, other) <= together; });
    };
    return near(a, b) || near(b, a);
}

std::uint32_t find(std::vector<std::uint32_t>& parent, std::uint32_t x) {
    while (parent[x] != x) x = parent[x] = parent[parent[x]];
    return x;
}

void unite(std::vector<std::uint32_t>& parent, std::uint32_t a, std::uint32_t b) {
    a = find(parent, a);
    b = find(parent, b);
    parent[std::max(a, b)] = std::min(a, b);
}

void join_touching(std::span<const Contact> contacts, std::vector<std::uint32_t>& parent) {
    std::vector<Span> spans;
    for (std::uint32_t i = 0; i < contacts.size(); ++i) spans.push_back(span_of(contacts[i], i));
    std::stable_sort(spans.begin(), spans.end(), [](const Span& a, const Span& b) { return a.low.x < b.low.x; });
    for (std::size_t i = 0; i < spans.size(); ++i) {
        const Span& a = spans[i];
        for (std::size_t j = i + 1; j < spans.size() && spans[j].low.x <= a.high.x + together; ++j) {
            const Span& b = spans[j];
            if (b.low.y > a.high.y + together || a.low.y > b.high.y + together || b.low.z > a.high.z + together ||
                a.low.z > b.high.z + together || find(parent, a.contact) == find(parent, b.contact))
                continue;
            if (touch(contacts[a.contact], contacts[b.contact])) unite(parent, a.contact, b.contact);
        }
    }
}

}  // namespace

JointGroups::JointGroups(const Air& air, bool overlaps) : air_(air) {
    if (!overlaps) return;
    parts_.resize(air.complex.cells.size());
    tbb::parallel_for(std::size_t{0}, parts_.size(), [&](std::size_t i) {
        if (air_.solid[i]) parts_[i] = parts_around(air_, air_.complex.cells[i].middle);
    });
}

bool JointGroups::holds(std::uint32_t cell, const Contact& pair) const {
    const std::vector<std::uint32_t>& parts = parts_[cell];
    return std::binary_search(parts.begin(), parts.end(), pair.parts[0]) &&
           std::binary_search(parts.begin(), parts.end(), pair.parts[1]);
}

/// Joins the lines around each body that both parts fill. Where a third part runs in too, its faces cut that body up: then all
/// lines of the pair count as one.
void JointGroups::join_within(std::span<const Contact> contacts, std::vector<std::uint32_t>& parent) const {
    std::map<std::uint32_t, std::uint32_t> line_of;  // cells within both parts
    std::uint32_t first = 0xffffffff;
    bool crowded = false;
    for (std::uint32_t i = 0; i < contacts.size(); ++i) {
        const Contact& line = contacts[i];
        if (line.is_flush()) continue;
        const Point middle = line.corners[0] + (line.corners[1] - line.corners[0]) * 0.5;
        const std::uint32_t cell = air_.complex.cell_at(middle + line.normal * (-off_surface / line.reach));
        first = std::min(first, i);
        crowded = crowded || !holds(cell, line);  // of open parts nothing is known
        if (!holds(cell, line)) continue;
        const auto known = line_of.find(cell);
        if (known != line_of.end()) {
            unite(parent, known->second, i);
            continue;
        }
        std::vector<std::uint32_t> open{cell};
        line_of[cell] = i;
        while (!open.empty()) {
            const std::uint32_t at = open.back();
            open.pop_back();
            crowded = crowded || parts_[at].size() > 2;
            for (const std::uint32_t p : air_.portals_of(at)) {
                const Portal& portal = air_.complex.portals[p];
                const std::uint32_t next = portal.front == at ? portal.back : portal.front;
                if (holds(next, line) && line_of.emplace(next, i).second) open.push_back(next);
            }
        }
    }
    if (!crowded) return;
    for (std::uint32_t i = first; i < contacts.size(); ++i) {
        if (!contacts[i].is_flush()) unite(parent, first, i);
    }
}

std::vector<std::uint32_t> JointGroups::groups_of(std::span<const Contact> contacts) const {
    std::vector<std::uint32_t> parent(contacts.size());
    std::iota(parent.begin(), parent.end(), 0U);
    join_touching(contacts, parent);
    if (!parts_.empty()) join_within(contacts, parent);
    for (std::uint32_t i = 0; i < parent.size(); ++i) parent[i] = find(parent, i);
    return parent;
}

}  // namespace seamward
