// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

namespace seamward {

/// The digest of bytes by FIPS 180-4, SHA-256: tells whether two files are the same.
class Sha256 {
public:
    Sha256& add(std::string_view bytes);
    /// The same, its length before it, so that two texts in turn are never taken for another two.
    Sha256& add_field(std::string_view text);
    /// 64 hexadecimal digits. Nothing may be added afterwards.
    [[nodiscard]] std::string hex();

private:
    void take_block(const unsigned char* block);

    std::array<std::uint32_t, 8> state_{0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a,
                                        0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19};
    std::array<unsigned char, 64> rest_{};
    std::uint64_t bytes_ = 0;
};

[[nodiscard]] std::string sha256_hex(std::string_view bytes);

}  // namespace seamward
