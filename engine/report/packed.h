// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seamward {

/// The bytes as gzip (RFC 1952), without a name or a time: the same for the same bytes.
[[nodiscard]] std::string gzipped(std::string_view bytes);

/// RFC 4648, with `=` at the end where it is due.
[[nodiscard]] std::string base64(std::string_view bytes);

}  // namespace seamward
