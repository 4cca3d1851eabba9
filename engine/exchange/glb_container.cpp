// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/glb_container.h"

#include <cstdint>
#include <limits>
#include <stdexcept>

namespace seamward {

namespace {

constexpr std::uint32_t glb_magic = 0x46546C67U, json_chunk = 0x4E4F534AU, binary_chunk = 0x004E4942U;

void put(std::string& bytes, std::uint32_t word) {
    for (unsigned shift = 0; shift < 32; shift += 8) bytes += static_cast<char>((word >> shift) & 0xFFU);
}

}  // namespace

std::string glb_container(std::string json, std::string_view binary) {
    json.append((4 - json.size() % 4) % 4, ' ');
    const std::size_t filled_up = (4 - binary.size() % 4) % 4;
    const std::size_t total = 12 + 8 + json.size() + (binary.empty() ? 0 : 8 + binary.size() + filled_up);
    if (total > std::numeric_limits<std::uint32_t>::max()) throw std::length_error("the house is too large for a GLB file");
    std::string bytes;
    bytes.reserve(total);
    for (const std::uint32_t word : {glb_magic, 2U, static_cast<std::uint32_t>(total)}) put(bytes, word);
    put(bytes, static_cast<std::uint32_t>(json.size()));
    put(bytes, json_chunk);
    bytes += json;
    if (binary.empty()) return bytes;
    put(bytes, static_cast<std::uint32_t>(binary.size() + filled_up));
    put(bytes, binary_chunk);
    bytes += binary;
    return bytes.append(filled_up, '\0');
}

}  // namespace seamward
