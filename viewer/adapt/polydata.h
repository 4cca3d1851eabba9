// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <cstdint>
#include <span>
#include <vector>

#include "adapt/picture_frame.h"
#include "adapt/way_line.h"

namespace seamward::viewer {

/// Which symbol stands for a gap.
enum class Symbol : std::uint8_t { slot, hole, ring, mesh, shut };
inline constexpr int symbol_count = 5;

/// The symbol of a gap: its shape's, or `shut` when nothing gets through it any more.
[[nodiscard]] Symbol symbol_of(const Gap& gap);

/// How large a gap's symbol is drawn, as a share of the largest: rises slowly with the clear width (in meters), so
/// that 1 mm and 100 mm can both be seen.
[[nodiscard]] double symbol_share(double width);

/// Names of the arrays that gap_points() fills for each point.
inline constexpr const char* symbol_array = "symbol";
inline constexpr const char* size_array = "size";  ///< meters across

/// A point for each of `gaps` that has a position, with its symbol and how large to draw it. Scene coordinates.
[[nodiscard]] vtkSmartPointer<vtkPolyData> gap_points(const Survey& survey, std::span<const GapIndex> gaps,
                                                      const PictureFrame& frame);

/// Lines as one data set; lines of fewer than two points are left out.
[[nodiscard]] vtkSmartPointer<vtkPolyData> lines_data(std::span<const std::vector<Point>> lines);

/// Name of the array of unit vectors that arrow_points() fills.
inline constexpr const char* heading_array = "heading";

/// Points where arrowheads stand on the sure legs of a way in, about every `spacing` meters and at least one on each leg that is
/// longer than `least` meters, with the direction of travel there.
[[nodiscard]] vtkSmartPointer<vtkPolyData> arrow_points(const WayLine& way, double spacing, double least);

}  // namespace seamward::viewer
