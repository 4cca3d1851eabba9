// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/phrases.h"

#include <cmath>

namespace seamward {

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return text;
}

std::string joined(const std::vector<std::string>& words, std::string_view between) {
    std::string text;
    for (const std::string& word : words) {
        if (!text.empty()) text += between;
        text += word;
    }
    return text;
}

std::string counted(std::size_t count, const std::string& one, const std::string& many) {
    return std::to_string(count) + ' ' + (count == 1 ? one : many);
}

std::string time_text(double minutes) {
    const long whole = std::lround(minutes);
    if (whole < 60) return std::to_string(whole) + " min";
    const std::string hours = std::to_string(whole / 60) + " h";
    return whole % 60 == 0 ? hours : hours + ' ' + std::to_string(whole % 60) + " min";
}

std::string percent_text(double share) {
    std::string digits = std::to_string(std::llround(share * 10'000));
    if (digits.size() < 3) digits.insert(0, 3 - digits.size(), '0');
    std::string text = digits.substr(0, digits.size() - 2) + '.' + digits.substr(digits.size() - 2);
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text + " %";
}

}  // namespace seamward
