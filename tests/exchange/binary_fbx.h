// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

#include "base/solid.h"

namespace seamward::test {

/// A mesh as a binary FBX file: meters, z up, the model "a wall" moved by 10 along x. From version 7500 on, offsets have 64 bits.
[[nodiscard]] std::string binary_fbx(const TriangleMesh& mesh, std::uint32_t version);

}  // namespace seamward::test
