// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <QColor>
#include <array>
#include <cstdint>
#include <vector>

#include "base/vector.h"

class vtkFloatArray;
class vtkUnsignedCharArray;

namespace seamward::viewer {

/// Triangles on their way to a data set: each with its own three corners, so that every face is flat and has one color.
class ColoredTriangles {
public:
    void add(const std::array<Point, 3>& corners, const QColor& color);
    /// The same, lit as if it faced another way.
    void add(const std::array<Point, 3>& corners, const QColor& color, Vector normal);
    /// The data set: corners in single precision, and so to be near the origin.
    [[nodiscard]] vtkSmartPointer<vtkPolyData> data() const;

private:
    std::vector<float> corners_, normals_;
    std::vector<std::uint8_t> colors_;
};

/// Triangles that share no corners, from three corners each with their normals and colors, of which the data set takes
/// hold. `colors` may be null.
[[nodiscard]] vtkSmartPointer<vtkPolyData> triangles_data(vtkFloatArray* corners, vtkFloatArray* normals,
                                                          vtkUnsignedCharArray* colors);

}  // namespace seamward::viewer
