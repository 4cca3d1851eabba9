// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "exchange/model.h"
#include "exchange/reader/frame.h"
#include "exchange/reader/source_files.h"

namespace seamward {

/// Reads everything but IFC, with Assimp. One part for each node with triangles; a file of a single node is taken apart into
/// pieces that share no point. Throws ReadRefusal.
[[nodiscard]] Model read_scene(SourceFiles& files, const ReadTask& task);

}  // namespace seamward
