// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include "adapt/polydata.h"

namespace seamward::viewer {

/// The solid that stands for a kind of gap: a bar, a ball, a ring, a lattice, a cross. About 1 across, its face toward
/// z, its up toward y.
[[nodiscard]] vtkSmartPointer<vtkPolyData> symbol_solid(Symbol symbol);

}  // namespace seamward::viewer
