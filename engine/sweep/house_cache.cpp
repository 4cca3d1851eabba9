// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/house_cache.h"

#include <array>
#include <fstream>

#include "sweep/lots.h"
#include "sweep/sha256.h"

namespace seamward {

namespace {

std::string file_digest(const std::filesystem::path& path) {
    std::error_code error;
    if (!std::filesystem::is_regular_file(path, error)) return "";
    std::ifstream in(path, std::ios::binary);
    if (!in) return "";
    Sha256 digest;
    std::array<char, 1 << 16> piece{};
    while (in.read(piece.data(), piece.size()) || in.gcount() > 0)
        digest.add({piece.data(), static_cast<std::size_t>(in.gcount())});
    return digest.hex();
}

}  // namespace

HouseCache::Entry HouseCache::house(const std::filesystem::path& path, const RunContext& context) {
    const std::string spelled = path.string();
    {
        const std::scoped_lock lock(mutex_);
        const auto found = entries_.find(spelled);
        if (found != entries_.end() && found->second.described) return found->second;
    }
    refuse_pipes_and_devices(path, spelled);
    // The digest first: a file that changes meanwhile is then taken for an older one, and its lots are done again.
    Entry entry{nullptr, file_digest(path)};
    entry.described = std::make_shared<const HouseDescription>(read_house_description(path, spelled, context));
    keep(spelled, entry);
    return entry;
}

std::string HouseCache::digest(const std::filesystem::path& path) {
    const std::string spelled = path.string();
    {
        const std::scoped_lock lock(mutex_);
        const auto found = entries_.find(spelled);
        if (found != entries_.end()) return found->second.digest;
    }
    Entry entry{nullptr, file_digest(path)};
    std::string text = entry.digest;
    keep(spelled, std::move(entry));
    return text;
}

void HouseCache::keep(const std::string& path, Entry entry) {
    const std::scoped_lock lock(mutex_);
    if (entries_.size() >= most) entries_.clear();
    entries_[path] = std::move(entry);
}

std::shared_ptr<const HouseDescription> LotHouses::described(const std::filesystem::path& path, const RunContext& context) {
    HouseCache::Entry entry = cache_.house(path, context);
    inputs_.push_back({path.string(), entry.digest});
    return entry.described;
}

}  // namespace seamward
