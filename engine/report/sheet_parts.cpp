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
constexpr double fluid_ounces_per_cubic_meter = 1e6 / 29.5735295625;  ///< of the United States: 231 cubic inches are 128 of them
constexpr double square_inches_per_square_meter = 1 / (0.0254 * 0.0254);

/// To so many digits after the point, without zeros at the end.
std::string rounded(double number, int digits) {
    const double scale = std::pow(10.0, digits);
    std::string text = std::to_string(std::round(number * scale) / scale);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

Message feet_part(double meters) {
    const long long inches = std::llround(meters / meters_per_foot * 12);
    const Message feet = as_it_stands(static_cast<std::size_t>(inches / 12)),
                  rest = as_it_stands(static_cast<std::size_t>(inches % 12));
    if (inches < 12) return message("{} in", {rest});
    return inches % 12 == 0 ? message("{} ft", {feet}) : message("{} ft {} in", {feet, rest});
}

/// So much of something that is bought by length: "29 ft 6 in (9 m)", or "9 m"; below a foot as widths are written.
Message run_part(const PageWriter& page, double meters) {
    if (meters < meters_per_foot) return page.width_part(meters);
    const Message metric = as_it_stands(rounded(meters, 2) + " m");
    if (page.facts.settings.lengths == Lengths::millimeters) return metric;
    return message("{} ({})", {feet_part(meters), metric});
}

/// What a tape tells: "29 ft 6 3/8 in (9.00 m)", or "9.00 m".
Message tape_part(const PageWriter& page, double meters) {
    return page.facts.settings.lengths == Lengths::millimeters ? metric_length_message(meters) : length_message(meters);
}

/// The opening without how sure it is.
Message shape_part(const PageWriter& page, const Shape& shape) {
    const Message width = page.width_part(clear_width(shape));
    if (const auto* slot = std::get_if<Slot>(&shape)) return message("{} wide, {} long", {width, tape_part(page, slot->length)});
    if (const auto* ring = std::get_if<Ring>(&shape)) return message("{} wide around {}", {width, tape_part(page, ring->around)});
    if (std::holds_alternative<Hole>(shape)) return message("hole of {}", {width});
    const auto& mesh = std::get<Mesh>(shape);
    if (!mesh.area) return message("mesh with openings of {}", {width});
    return message("mesh with openings of {}, {} in all", {width, amount_part(page, *mesh.area, Material::By::area)});
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
        page.html.begin("div",
                        {{"class", "sheet"}, {"tabindex", "0"}, {"role", "region"}, {"aria-label", page.say(drawing.title)}});
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
    const bool metric = page.facts.settings.lengths == Lengths::millimeters;
    // Within half of what is told it lies neither here nor there.
    const double zero = metric ? 0.005 : meters_per_foot / 24;
    const auto along = [&](double meters, const char* onward, const char* back) {
        const double way = std::abs(meters);
        return message(meters < -zero ? back : onward, {metric ? as_it_stands(rounded(way, 2) + " m") : feet_part(way)});
    };
    return message("{}, {}, {}",
                   {along(at.x, "{} east", "{} west"), along(at.y, "{} north", "{} south"), along(at.z, "{} up", "{} down")});
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

Message amount_part(const PageWriter& page, double amount, Material::By by) {
    const bool metric = page.facts.settings.lengths == Lengths::millimeters;
    const auto in = [&](const char* metric_words, double in_metric, const char* inch_words, double in_inches) {
        const Message told = in_metric < 1 ? message("less than {}", {message(metric_words, {as_it_stands(1)})})
                                           : message(metric_words, {as_it_stands(rounded(in_metric, 0))});
        if (metric || in_inches < 0.05) return told;
        return message("{} ({})", {message(inch_words, {as_it_stands(rounded(in_inches, in_inches < 10 ? 1 : 0))}), told});
    };
    switch (by) {
        case Material::By::volume:
            return in("{} ml", amount * milliliters_per_cubic_meter, "{} fl oz", amount * fluid_ounces_per_cubic_meter);
        case Material::By::area:
            return in("{} cm²", amount * square_centimeters_per_square_meter, "{} in²", amount * square_inches_per_square_meter);
        case Material::By::length: return run_part(page, amount);
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
    const auto time = [](double minutes) {
        constexpr double hour = 60, day = 24 * hour;
        if (minutes <= 2 * day) return message("{} h", {as_it_stands(rounded(minutes / hour, 1))});
        return message("{} days", {as_it_stands(rounded(minutes / day, 0))});
    };
    if (row->rain > 0) parts.push_back(message("keep rain off for {}", {time(row->rain)}));
    if (row->paint > 0) parts.push_back(message("can be painted after {}", {time(row->paint)}));
    return parts.empty() ? Message() : joined_message(parts, "; ");
}

Message ranges_part(std::vector<std::size_t> numbers) {
    std::sort(numbers.begin(), numbers.end());
    std::vector<Message> said;
    for (std::size_t i = 0; i < numbers.size();) {
        std::size_t last = i;
        while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
        if (last > i + 1)
            said.push_back(message("{} to {}", {as_it_stands(numbers[i]), as_it_stands(numbers[last])}));
        else
            for (std::size_t k = i; k <= last; ++k) said.push_back(as_it_stands(numbers[k]));
        i = last + 1;
    }
    return joined_message(said, ", ");
}

}  // namespace seamward
