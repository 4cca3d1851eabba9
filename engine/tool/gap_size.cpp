// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/gap_size.h"

#include <cmath>
#include <cstdlib>

#include "base/measure_text.h"

namespace seamward {

namespace {

constexpr double meters_per_inch = 0.0254;
constexpr long long inches_per_foot = 12;
constexpr double tape_parts = 16;  ///< of an inch, as a tape is marked

/// To the nearest inch.
std::string feet_text(double meters) {
    const long long inches = std::llround(meters / meters_per_inch);
    const long long feet = std::llabs(inches) / inches_per_foot;
    const long long rest = std::llabs(inches) % inches_per_foot;
    std::string text = inches < 0 ? "-" : "";
    if (feet > 0) text += std::to_string(feet) + " ft";
    if (feet == 0 || rest > 0) text += (feet > 0 ? " " : "") + std::to_string(rest) + " in";
    return text;
}

/// To the nearest centimeter.
std::string meters_text(double meters) {
    const long long hundredths = std::llround(meters * 100);
    const std::string rest = std::to_string(std::llabs(hundredths) % 100);
    return (hundredths < 0 ? "-" : "") + std::to_string(std::llabs(hundredths) / 100) + '.' + (rest.size() < 2 ? "0" : "") +
           rest + " m";
}

std::string area_text(double square_meters) {
    const auto whole = [](double value) { return std::to_string(std::llround(value)); };
    return whole(square_meters / (meters_per_inch * meters_per_inch)) + " in2 (" + whole(square_meters * 1e4) + " cm2)";
}

/// `up to 3/32 in (2.2 mm)`; without inches where these are the same.
void add_most(double width, double plus_minus, std::vector<std::string>& parts) {
    const double most = width + plus_minus;
    if (millimeters_text(most) == millimeters_text(width)) return;
    parts.push_back("up to " + (inches_text(most) == inches_text(width) ? millimeters_text(most) : width_text(most)));
}

void add_shape(const Shape& shape, double plus_minus, const std::string& lead, std::vector<std::string>& parts) {
    const double width = clear_width(shape);
    const auto* slot = std::get_if<Slot>(&shape);
    const auto* ring = std::get_if<Ring>(&shape);
    const auto* mesh = std::get_if<Mesh>(&shape);
    if (slot != nullptr || ring != nullptr)
        parts.push_back(lead + width_text(width) + " wide");
    else
        parts.push_back(lead + (mesh != nullptr ? "mesh with openings of " : "hole of ") + width_text(width));
    add_most(width, plus_minus, parts);
    if (slot != nullptr) parts.push_back(tape_text(slot->length) + " long");
    if (ring != nullptr) parts.push_back("around " + tape_text(ring->around));
    if (mesh != nullptr && mesh->area) parts.push_back(area_text(*mesh->area) + " in all");
}

}  // namespace

std::string tape_text(double meters) {
    if (std::llround(meters / meters_per_inch) < inches_per_foot) {
        const double parts = std::round(meters / meters_per_inch * tape_parts);
        return inches_text(parts > 0 ? parts / tape_parts * meters_per_inch : meters) + " (" + millimeters_text(meters) + ')';
    }
    return feet_text(meters) + " (" + meters_text(meters) + ')';
}

std::string place_text(const Point& point) {
    return "at " + meters_text(point.x) + ", " + meters_text(point.y) + ", " + meters_text(point.z) + " (" + feet_text(point.x) +
           ", " + feet_text(point.y) + ", " + feet_text(point.z) + ')';
}

std::vector<std::string> gap_size(const Gap& gap) {
    std::vector<std::string> parts;
    add_shape(gap.shape, gap.evidence.plus_minus, gap.count > 1 ? std::to_string(gap.count) + " pieces, each " : "", parts);
    if (gap.covered) add_shape(gap.covered->shape, gap.covered->plus_minus, "over what was there: ", parts);
    const Evidence::How how = gap.evidence.how;
    if (how == Evidence::How::assumed || how == Evidence::How::unstated) parts.emplace_back("not measured: measure first");
    return parts;
}

}  // namespace seamward
