// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/sheet_parts.h"

#include <algorithm>
#include <cmath>

#include "base/measure_text.h"
#include "catalog/shipped.h"
#include "report/drawings.h"

namespace seamward {

namespace {

constexpr double meters_per_foot = 0.3048;
constexpr double milliliters_per_cubic_meter = 1e6;
constexpr double square_centimeters_per_square_meter = 1e4;

/// To so many digits after the point, without zeros at the end.
std::string rounded(double number, int digits) {
    const double scale = std::pow(10.0, digits);
    std::string text = std::to_string(std::round(number * scale) / scale);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

/// A length with a tape: "29 ft 6 in (9 m)", or "9 m"; below a foot as widths are written.
Message tape_part(const PageWriter& page, double meters) {
    const Message metric = as_it_stands(rounded(meters, 2) + " m");
    if (std::abs(meters) < meters_per_foot)
        return meters < 0 ? message("-{}", {page.width_part(-meters)}) : page.width_part(meters);
    if (page.facts.settings.lengths == Lengths::millimeters) return metric;
    const long long inches = std::llround(std::abs(meters) / meters_per_foot * 12);
    const std::string sign = meters < 0 ? "-" : "";
    const Message feet = as_it_stands(sign + std::to_string(inches / 12));
    if (inches % 12 == 0) return message("{} ft ({})", {feet, metric});
    return message("{} ft {} in ({})", {feet, as_it_stands(static_cast<std::size_t>(inches % 12)), metric});
}

/// The opening without how sure it is.
Message shape_part(const PageWriter& page, const Shape& shape) {
    const Message width = page.width_part(clear_width(shape));
    if (const auto* slot = std::get_if<Slot>(&shape)) return message("{} wide, {} long", {width, tape_part(page, slot->length)});
    if (const auto* ring = std::get_if<Ring>(&shape)) return message("{} wide around {}", {width, page.width_part(ring->around)});
    if (std::holds_alternative<Hole>(shape)) return message("hole of {}", {width});
    const auto& mesh = std::get<Mesh>(shape);
    if (!mesh.area) return message("mesh with openings of {}", {width});
    return message("mesh with openings of {}, {} in all", {width, amount_part(*mesh.area, Material::By::area)});
}

}  // namespace

void tick_list(PageWriter& page, const std::vector<Message>& items) {
    if (items.empty()) return;
    page.html.begin("ul", {{"class", "ticks"}});
    for (const Message& item : items) page.html.element("li", page.say(item));
    page.html.end();
}

void blanks(PageWriter& page, const std::vector<Message>& labels) {
    page.html.begin("p", {{"class", "blanks"}});
    for (const Message& label : labels) page.html.element("span", page.say(label), {{"class", "blank"}});
    page.html.end();
}

void drawings_part(PageWriter& page) {
    if (page.drawings.empty()) return;
    page.begin_section("drawings", "Drawings");
    for (const Drawing& drawing : page.drawings) {
        page.html.begin("figure", {{"class", "drawing"}});
        page.html.element("figcaption", page.say(drawing.title));
        // To scale, and so wider than a phone: it scrolls within its frame.
        page.html.begin("div", {{"class", "sheet"}, {"tabindex", "0"}, {"role", "region"}, {"aria-label", page.say(drawing.title)}});
        page.html.markup(drawing.svg).end();
        page.html.end();
    }
    page.end_section();
}

std::vector<Message> drawings_showing(const PageWriter& page, std::size_t closing) {
    std::vector<Message> titles;
    for (const Drawing& drawing : page.drawings) {
        if (std::find(drawing.closings.begin(), drawing.closings.end(), closing) != drawing.closings.end())
            titles.push_back(drawing.title);
    }
    return titles;
}

std::vector<Message> names_of(const std::vector<Pest>& pests) {
    std::vector<Message> names;
    for (const Pest& pest : pests) names.push_back(as_named(pest.name));
    return names;
}

Message place_part(const PageWriter& page, const Point& at) {
    return message("{} east, {} north, {} up", {tape_part(page, at.x), tape_part(page, at.y), tape_part(page, at.z)});
}

Message size_part(const PageWriter& page, const Gap& gap) {
    Message size = shape_part(page, gap.shape);
    if (gap.count > 1) size = message("{} pieces, each {}", {as_it_stands(gap.count), size});
    if (gap.evidence.plus_minus > 0)
        size = message("{}, up to {}", {size, page.width_part(clear_width(gap.shape) + gap.evidence.plus_minus)});
    if (gap.covered) size = message("{}, over what was there: {}", {size, shape_part(page, gap.covered->shape)});
    const bool measured = gap.evidence.how == Evidence::How::measured || gap.evidence.how == Evidence::How::modeled;
    return measured ? size : message("{}; not measured: measure first", {size});
}

Message amount_part(double amount, Material::By by) {
    switch (by) {
        case Material::By::volume: return message("{} ml", {as_it_stands(rounded(amount * milliliters_per_cubic_meter, 0))});
        case Material::By::area:
            return message("{} cm²", {as_it_stands(rounded(amount * square_centimeters_per_square_meter, 0))});
        case Material::By::length: return message("{} m", {as_it_stands(rounded(amount, 2))});
        case Material::By::piece: break;
    }
    const std::string count = rounded(amount, 2);
    return count == "1" ? Message("1 piece") : message("{} pieces", {as_it_stands(count)});
}

Message weather_part(const std::string& treatment) {
    const Treatment* row = shipped_treatments().find(treatment);
    if (row == nullptr) return {};
    std::vector<Message> parts;
    if (!row->conditions.empty()) parts.emplace_back(row->conditions);
    const auto hours = [](double minutes) { return as_it_stands(rounded(minutes / 60, 1)); };
    if (row->rain > 0) parts.push_back(message("keep rain off for {} h", {hours(row->rain)}));
    if (row->paint > 0) parts.push_back(message("can be painted after {} h", {hours(row->paint)}));
    return parts.empty() ? Message() : joined_message(parts, "; ");
}

}  // namespace seamward
