// SPDX-License-Identifier: GPL-3.0-or-later
#include "provisions/judge.h"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <limits>

#include "base/measure_text.h"
#include "base/phrases.h"

namespace seamward {

namespace {

constexpr double nothing = 1e-9;  ///< of the unit: what arithmetic loses

std::string rounded(double value, int digits) {
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", digits, value);
    std::string out = text;
    if (out.find('.') != std::string::npos) {
        while (out.back() == '0') out.pop_back();
        if (out.back() == '.') out.pop_back();
    }
    return out;
}

Message length_text(const Provision& provision, double meters) {
    constexpr double inch = 0.0254, thin = inch / 16;
    const double limit = provision.at_least.value_or(provision.at_most.value_or(0));
    if (meters <= 0 || limit <= 0 || limit >= thin) {
        const Message read = length_message(meters);
        // What misses the limit by a hair is not to read as the limit itself.
        const bool blurred = std::abs(meters - limit) > nothing && read == length_message(limit);
        return provision.measure == "clear-width" || blurred ? width_message(meters) : read;
    }
    return message("{} in ({})", {as_it_stands(rounded(meters / inch, 3)), as_it_stands(millimeters_text(meters))});
}

}  // namespace

double past_limit(const Provision& provision, double value) {
    double past = -std::numeric_limits<double>::infinity();
    if (provision.at_least) past = std::max(past, *provision.at_least - value);
    if (provision.at_most) past = std::max(past, value - *provision.at_most);
    return past;
}

Verdict judge(const Provision& provision, std::optional<double> value, double plus_minus) {
    if (!value) return Verdict::unknown;
    const double low = std::max(0.0, *value - plus_minus), high = *value + plus_minus;
    const bool low_keeps = past_limit(provision, low) <= nothing, high_keeps = past_limit(provision, high) <= nothing;
    if (low_keeps && high_keeps) return Verdict::pass;
    const bool below = provision.at_least && high < *provision.at_least - nothing;
    const bool above = provision.at_most && low > *provision.at_most + nothing;
    return below || above ? Verdict::fail : Verdict::unknown;
}

Message value_text(const Provision& provision, double value) {
    switch (provision.unit) {
        case Unit::length: return length_text(provision, value);
        case Unit::area: {
            constexpr double square_inch = 0.0254 * 0.0254;
            return message("{} in2 ({} cm2)",
                           {as_it_stands(rounded(value / square_inch, 1)), as_it_stands(rounded(value * 1e4, 1))});
        }
        case Unit::share: return as_it_stands(percent_text(value));
        case Unit::count: return as_it_stands(rounded(value, 0));
        case Unit::answer: return value > 0 ? Message("yes") : Message("no");
        case Unit::air_changes: break;
    }
    return message("{} air changes an hour", {as_it_stands(rounded(value, 2))});
}

Message limit_text(const Provision& provision) {
    const auto text = [&](double value) { return value_text(provision, value); };
    if (provision.unit == Unit::answer) return text(provision.at_least ? 1 : 0);
    if (provision.at_least && provision.at_most)
        return message("{} to {}", {text(*provision.at_least), text(*provision.at_most)});
    if (provision.at_least) return message("{} or more", {text(*provision.at_least)});
    if (*provision.at_most == 0) return "none";
    return message("{} at most", {text(*provision.at_most)});
}

}  // namespace seamward
