// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/nearest_word.h"

#include <algorithm>
#include <string>
#include <vector>

namespace seamward {

namespace {

constexpr std::size_t longest = 64;

/// Letters alike whatever their case; `-`, `_` and space alike.
char folded(char c) {
    if (c >= 'A' && c <= 'Z') return static_cast<char>(c - 'A' + 'a');
    return c == '_' || c == ' ' ? '-' : c;
}

std::size_t edits(std::string_view a, std::string_view b) {
    std::vector<std::size_t> before(b.size() + 1);
    std::vector<std::size_t> above(b.size() + 1);
    std::vector<std::size_t> row(b.size() + 1);
    for (std::size_t j = 0; j <= b.size(); ++j) above[j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = folded(a[i - 1]) == folded(b[j - 1]);
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (same ? 0U : 1U)});
            if (i > 1 && j > 1 && folded(a[i - 1]) == folded(b[j - 2]) && folded(a[i - 2]) == folded(b[j - 1])) {
                row[j] = std::min(row[j], before[j - 2] + 1);
            }
        }
        std::swap(before, above);
        std::swap(above, row);
    }
    return above[b.size()];
}

/// Whether `word` is one of the parts of a compound that hyphens join.
bool has_part(std::string_view compound, std::string_view word) {
    for (std::size_t begin = 0; begin <= compound.size();) {
        const std::size_t end = std::min(compound.find('-', begin), compound.size());
        if (edits(compound.substr(begin, end - begin), word) == 0) return compound.size() > word.size();
        begin = end + 1;
    }
    return false;
}

/// Whether `word` stands in a longer compound between hyphens or at its ends: a-b in x-a-b. Linear.
bool has_whole(std::string_view compound, std::string_view word) {
    if (compound.size() <= word.size()) return false;
    for (std::size_t at = compound.find(word); at != std::string_view::npos; at = compound.find(word, at + 1)) {
        const std::size_t end = at + word.size();
        if ((at == 0 || compound[at - 1] == '-') && (end == compound.size() || compound[end] == '-')) return true;
    }
    return false;
}

/// `did you mean roof-rat or norway-rat?` for rat; empty when no known word has it as a part, or too many have.
std::string with_the_part(std::string_view word, std::span<const std::string_view> known) {
    constexpr std::size_t most = 4;
    std::vector<std::string_view> found;
    if (word.empty() || word.size() > longest) return "";
    for (const std::string_view candidate : known) {
        if (candidate.size() > longest || !has_whole(candidate, word)) continue;
        if (std::find(found.begin(), found.end(), candidate) == found.end()) found.push_back(candidate);
        if (found.size() > most) return "";
    }
    if (found.empty()) return "";
    std::string text = "did you mean ";
    for (std::size_t i = 0; i < found.size(); ++i)
        text += (i == 0 ? "" : i + 1 == found.size() ? " or " : ", ") + std::string(found[i]);
    return text + '?';
}

}  // namespace

std::optional<std::string_view> nearest_word(std::string_view word, std::span<const std::string_view> known) {
    if (word.empty() || word.size() > longest) return std::nullopt;
    std::optional<std::string_view> nearest;
    std::size_t fewest = longest;
    for (const std::string_view candidate : known) {
        if (candidate.empty() || candidate.size() > longest) continue;
        const std::size_t longer = std::max(word.size(), candidate.size());
        const std::size_t shorter = std::min(word.size(), candidate.size());
        const std::size_t allowed = std::max<std::size_t>(1, longer / 3);
        if (longer - shorter > allowed || longer - shorter >= fewest) continue;
        const std::size_t n = edits(word, candidate);
        if (n <= allowed && n < fewest && n < longer) {
            fewest = n;
            nearest = candidate;
        }
    }
    if (nearest) return nearest;
    const auto part =
        std::find_if(known.begin(), known.end(), [&](std::string_view candidate) { return has_part(candidate, word); });
    return part == known.end() ? nearest : *part;
}

std::string suggestion(std::string_view word, std::span<const std::string_view> known) {
    if (const std::string compounds = with_the_part(word, known); !compounds.empty()) return compounds;
    if (const auto nearest = nearest_word(word, known)) return "did you mean " + std::string(*nearest) + "?";
    constexpr std::size_t most = 24;
    if (known.empty() || known.size() > most) return "";
    std::string list = "known: ";
    for (std::size_t i = 0; i < known.size(); ++i) list += (i == 0 ? "" : ", ") + std::string(known[i]);
    return list;
}

}  // namespace seamward
