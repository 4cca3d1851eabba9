// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <memory>
#include <string>
#include <string_view>

namespace seamward {

/// The digest of bytes by FIPS 180-4, SHA-256: tells whether two files are the same.
class Sha256 {
public:
    Sha256();
    ~Sha256();
    Sha256(const Sha256&) = delete;
    Sha256& operator=(const Sha256&) = delete;

    Sha256& add(std::string_view bytes);
    /// The same, its length before it, so that two texts in turn are never taken for another two.
    Sha256& add_field(std::string_view text);
    /// 64 hexadecimal digits. What is added afterwards is of another digest.
    [[nodiscard]] std::string hex();

private:
    struct Impl;
    std::unique_ptr<Impl> impl_;
};

[[nodiscard]] std::string sha256_hex(std::string_view bytes);

}  // namespace seamward
