// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/reader/source_files.h"

#include <fcntl.h>
#include <sys/mman.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <optional>

#include "exchange/reader/refusal.h"

namespace seamward {

namespace {

constexpr std::size_t most_named = 1000, most_name_bytes = 1024, most_folders = 16;

/// The content of an open, ordinary file; nothing when it is none.
std::optional<std::span<char>> mapped(int number, std::uint64_t most_bytes) {
    struct stat facts {};
    if (fstat(number, &facts) != 0 || !S_ISREG(facts.st_mode) || facts.st_size <= 0) return std::nullopt;
    const auto size = static_cast<std::uint64_t>(facts.st_size);
    if (size > most_bytes) return std::nullopt;
    void* memory = mmap(nullptr, size, PROT_READ | PROT_WRITE, MAP_PRIVATE, number, 0);
    if (memory == MAP_FAILED) return std::nullopt;
    return std::span(static_cast<char*>(memory), size);
}

/// The folders and the file of a path that stays below where it begins; empty when it does not.
std::vector<std::string> steps_of(std::string_view path) {
    std::vector<std::string> steps;
    if (path.empty() || path.size() > most_name_bytes || path.find_first_of(std::string_view("\\:\0", 3)) != path.npos) return {};
    while (true) {
        const std::size_t end = std::min(path.find('/'), path.size());
        const std::string_view step = path.substr(0, end);
        if (step.empty() || step == ".." || steps.size() >= most_folders) return {};
        if (step != ".") steps.emplace_back(step);
        if (end == path.size()) return steps;
        path.remove_prefix(end + 1);
    }
}

/// Opens step by step, so that no link can lead away. -1 when there is no such file.
int open_below(int folder, const std::vector<std::string>& steps) {
    int at = folder;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const int kind = i + 1 < steps.size() ? O_DIRECTORY : O_NONBLOCK | O_NOCTTY;
        const int next = openat(at, steps[i].c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC | kind);
        if (at != folder) close(at);
        if (next < 0) return -1;
        at = next;
    }
    return steps.empty() ? -1 : at;
}

bool is_picture(std::string_view name) {
    constexpr std::array<std::string_view, 7> endings{".png", ".jpg", ".jpeg", ".webp", ".ktx2", ".dds", ".basis"};
    std::string small(name);
    for (char& c : small) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return std::any_of(endings.begin(), endings.end(), [&](std::string_view ending) { return small.ends_with(ending); });
}

/// Without "./" in front, which readers add and drop.
std::string plain_name(std::string_view name) {
    while (name.starts_with("./")) name.remove_prefix(2);
    return std::string(name);
}

/// A JSON string that begins at `at`, behind its quote; nothing when it is too long or has escapes other than `\/`.
std::optional<std::string> short_string(std::string_view text, std::size_t at) {
    std::string value;
    for (; at < text.size() && value.size() <= most_name_bytes; ++at) {
        if (text[at] == '"') return value;
        if (text[at] == '\\' && (++at >= text.size() || text[at] != '/')) return std::nullopt;
        value += text[at];
    }
    return std::nullopt;
}

}  // namespace

std::string percent_decoded(std::string_view text) {
    const auto digit = [](char c) {
        return c >= '0' && c <= '9' ? c - '0' : c >= 'A' && c <= 'F' ? c - 'A' + 10 : c >= 'a' && c <= 'f' ? c - 'a' + 10 : -1;
    };
    std::string out;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool escape = text[i] == '%' && i + 2 < text.size() && digit(text[i + 1]) >= 0 && digit(text[i + 2]) >= 0;
        out += escape ? static_cast<char>(16 * digit(text[i + 1]) + digit(text[i + 2])) : text[i];
        if (escape) i += 2;
    }
    return out;
}

SourceFiles::SourceFiles(int model, std::uint64_t most_bytes) : most_bytes_(most_bytes) {
    const std::optional<std::span<char>> content = mapped(model, most_bytes);
    if (!content) throw ReadRefusal("cannot be read", "check that nothing else is writing it, and the limit of memory");
    model_ = *content;
}

void SourceFiles::open_named(int folder) {
    constexpr std::string_view key = "\"uri\"", blank = " \t\r\n";
    const std::string_view text = this->text();
    for (std::size_t at = text.find(key); at != text.npos; at = text.find(key, at)) {
        at += key.size();
        const std::size_t colon = text.find_first_not_of(blank, at);
        if (colon == text.npos || text[colon] != ':') continue;
        const std::size_t quote = text.find_first_not_of(blank, colon + 1);
        if (quote == text.npos || text[quote] != '"' || text.substr(quote + 1).starts_with("data:")) continue;
        const std::optional<std::string> uri = short_string(text, quote + 1);
        if (uri && !is_picture(*uri) && named_.size() + refused_.size() < most_named) open_one(folder, *uri);
    }
}

void SourceFiles::open_one(int folder, const std::string& uri) {
    if (named(uri) != nullptr) return;
    const std::string decoded = percent_decoded(uri);
    const int number = open_below(folder, steps_of(decoded));
    const std::optional<std::span<char>> content = number < 0 ? std::nullopt : mapped(number, most_bytes_);
    if (number >= 0) close(number);
    if (!content) {
        refused_.push_back(uri);
        return;
    }
    named_[plain_name(uri)] = named_[plain_name(decoded)] = std::string_view(content->data(), content->size());
}

const std::string_view* SourceFiles::named(const std::string& name) const {
    const auto found = named_.find(plain_name(name));
    return found == named_.end() ? nullptr : &found->second;
}

}  // namespace seamward
