// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkImageData.h>
#include <vtkPolyData.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <span>

#include "layers/house_groups.h"

namespace seamward::viewer {

/// Toward the sun, in the south-west; of unit length.
[[nodiscard]] Vector sun_direction();

/// The ground of a house as HouseGround shows it; can be made on any thread. Null where a house has none.
struct PreparedGround {
    vtkSmartPointer<vtkPolyData> whole, rim;  ///< as seen right beside the house, and where it fades
    vtkSmartPointer<vtkImageData> light;      ///< what the sun and the shadow of the house make of its color
};

/// `casting`: what throws a shadow, as ColoredTriangles makes it. O(triangles).
[[nodiscard]] PreparedGround prepare_ground(const House& house, const HouseFrame& frame, std::span<vtkPolyData* const> casting);

/// The ground of a house and what lies flat in its yard, fading into the paper some meters from the house, with the house's
/// shadow on it.
class HouseGround {
public:
    explicit HouseGround(vtkRenderer& renderer);

    void show(const PreparedGround& ground);
    void hide();
    void set_shown(bool shown);
    [[nodiscard]] bool has_ground() const { return any_; }

private:
    vtkSmartPointer<vtkActor> whole_, rim_;
    bool any_ = false, shown_ = true;
};

}  // namespace seamward::viewer
