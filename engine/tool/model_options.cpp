// SPDX-License-Identifier: GPL-3.0-or-later
#include "tool/model_options.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string_view>

#include "base/nearest_word.h"
#include "base/quantity.h"
#include "base/text.h"
#include "tool/room_option.h"
#include "tool/wrong_usage.h"

namespace seamward {

namespace {

double width_option(const std::string& option, const std::string& text, double otherwise) {
    if (text.empty()) return otherwise;
    const Parsed<double> parsed = parse_length(text);
    if (!parsed) throw WrongUsage(option + ": " + parsed.fault.what + "; " + parsed.fault.mend);
    if (*parsed <= 0) throw WrongUsage(option + ": a width of 0 lets nothing through; give more");
    return *parsed;
}

/// The choice of that word; nothing when the option was left out.
template <class Choice, std::size_t Count>
std::optional<Choice> choice(const std::string& option, const std::string& text,
                             const std::array<std::string_view, Count>& words) {
    if (text.empty()) return std::nullopt;
    const auto* found = std::find(words.begin(), words.end(), text);
    if (found == words.end()) throw WrongUsage(option + ": unknown word " + in_quotes(text) + "; " + suggestion(text, words));
    return static_cast<Choice>(found - words.begin());
}

}  // namespace

ReadSettings read_settings(const ModelOptions& options) {
    constexpr std::array<std::string_view, 5> units{"m", "cm", "mm", "in", "ft"};
    constexpr std::array<std::string_view, 3> axes{"x", "y", "z"};
    ReadSettings settings;
    settings.unit = choice<ModelUnit>("--unit", options.unit, units);
    settings.up = choice<UpAxis>("--up", options.up, axes);
    return settings;
}

FindSettings find_settings(const ModelOptions& options) {
    FindSettings settings;
    settings.rooms = parse_rooms(options.rooms);
    settings.smallest = width_option("--smallest", options.smallest, settings.smallest);
    settings.widest = width_option("--widest", options.widest, settings.widest);
    if (settings.smallest >= settings.widest)
        throw WrongUsage("--smallest and --widest: the smallest width must be less than the widest");
    return settings;
}

}  // namespace seamward
