// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/sha256.h"

#include <algorithm>
#include <bit>
#include <cstring>

namespace seamward {

namespace {

constexpr std::array<std::uint32_t, 64> constants{
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98, 0x12835b01,
    0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc,
    0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147,
    0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08,
    0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208,
    0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2};

std::string eight_bytes(std::uint64_t number) {
    std::string bytes(8, '\0');
    for (std::size_t i = 0; i < 8; ++i) bytes[i] = static_cast<char>(number >> (56 - 8 * i));
    return bytes;
}

}  // namespace

void Sha256::take_block(const unsigned char* block) {
    std::array<std::uint32_t, 64> w{};
    for (std::size_t i = 0; i < 16; ++i) {
        w[i] = std::uint32_t{block[4 * i]} << 24 | std::uint32_t{block[4 * i + 1]} << 16 | std::uint32_t{block[4 * i + 2]} << 8 |
               std::uint32_t{block[4 * i + 3]};
    }
    for (std::size_t i = 16; i < 64; ++i) {
        const std::uint32_t low = std::rotr(w[i - 15], 7) ^ std::rotr(w[i - 15], 18) ^ (w[i - 15] >> 3);
        const std::uint32_t high = std::rotr(w[i - 2], 17) ^ std::rotr(w[i - 2], 19) ^ (w[i - 2] >> 10);
        w[i] = w[i - 16] + low + w[i - 7] + high;
    }
    auto [a, b, c, d, e, f, g, h] = state_;
    for (std::size_t i = 0; i < 64; ++i) {
        const std::uint32_t choice = (e & f) ^ (~e & g), majority = (a & b) ^ (a & c) ^ (b & c);
        const std::uint32_t one = h + (std::rotr(e, 6) ^ std::rotr(e, 11) ^ std::rotr(e, 25)) + choice + constants[i] + w[i];
        const std::uint32_t two = (std::rotr(a, 2) ^ std::rotr(a, 13) ^ std::rotr(a, 22)) + majority;
        h = g, g = f, f = e, e = d + one, d = c, c = b, b = a, a = one + two;
    }
    const std::array<std::uint32_t, 8> turned{a, b, c, d, e, f, g, h};
    for (std::size_t i = 0; i < 8; ++i) state_[i] += turned[i];
}

Sha256& Sha256::add(std::string_view bytes) {
    while (!bytes.empty()) {
        const std::size_t there = bytes_ % 64, taken = std::min(bytes.size(), 64 - there);
        std::memcpy(rest_.data() + there, bytes.data(), taken);
        bytes_ += taken;
        bytes.remove_prefix(taken);
        if (bytes_ % 64 == 0) take_block(rest_.data());
    }
    return *this;
}

Sha256& Sha256::add_field(std::string_view text) { return add(eight_bytes(text.size())).add(text); }

std::string Sha256::hex() {
    const std::string length = eight_bytes(bytes_ * 8);
    add("\x80");
    while (bytes_ % 64 != 56) add(std::string_view("\0", 1));
    add(length);
    std::string text;
    for (const std::uint32_t word : state_) {
        for (int shift = 28; shift >= 0; shift -= 4) text += "0123456789abcdef"[word >> shift & 15U];
    }
    return text;
}

std::string sha256_hex(std::string_view bytes) { return Sha256().add(bytes).hex(); }

}  // namespace seamward
