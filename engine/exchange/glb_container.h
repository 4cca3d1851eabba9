// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>

namespace seamward {

/// A binary glTF 2.0 file of its two chunks; without the second where that is empty. Throws std::length_error beyond 4 GiB, the
/// most that the format holds. Khronos Group, glTF 2.0 Specification, 2021, section 4.4.
[[nodiscard]] std::string glb_container(std::string json, std::string_view binary);

}  // namespace seamward
