// SPDX-License-Identifier: GPL-3.0-or-later
#include "sweep/sha256.h"

#include <nettle/sha2.h>

#include <array>
#include <cstdint>

namespace seamward {

struct Sha256::Impl {
    sha256_ctx context;
};

Sha256::Sha256() : impl_(std::make_unique<Impl>()) { sha256_init(&impl_->context); }
Sha256::~Sha256() = default;

Sha256& Sha256::add(std::string_view bytes) {
    sha256_update(&impl_->context, bytes.size(), reinterpret_cast<const std::uint8_t*>(bytes.data()));
    return *this;
}

Sha256& Sha256::add_field(std::string_view text) { return add(std::to_string(text.size())).add(" ").add(text); }

std::string Sha256::hex() {
    std::array<std::uint8_t, SHA256_DIGEST_SIZE> digest{};
    sha256_digest(&impl_->context, digest.size(), digest.data());
    std::string text;
    for (const std::uint8_t byte : digest) {
        text += "0123456789abcdef"[byte >> 4];
        text += "0123456789abcdef"[byte & 15];
    }
    return text;
}

std::string sha256_hex(std::string_view bytes) { return Sha256().add(bytes).hex(); }

}  // namespace seamward
