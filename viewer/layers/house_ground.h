// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkImageData.h>
#include <vtkPolyData.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include <future>
#include <optional>
#include <span>
#include <vector>

#include "document/newest_task.h"
#include "layers/house_groups.h"
#include "layers/section.h"

namespace seamward::viewer {

/// Toward the sun, in the south-west; of unit length.
[[nodiscard]] Vector sun_direction();

/// The ground of a house as HouseGround shows it; can be made on any thread. Null where a house has none.
struct PreparedGround {
    vtkSmartPointer<vtkPolyData> whole, rim;  ///< as seen right beside the house, and where it fades
    vtkSmartPointer<vtkImageData> light;      ///< what the sun and the shadow of the whole house make of its color
    Box house;                                ///< scene: the map of the shadow reaches so many meters around it
    double reach = 0, level = 0;              ///< and lies at that height
};

/// What throws a shadow at last.
struct Casting {
    std::vector<vtkSmartPointer<vtkPolyData>> solids;  ///< as ColoredTriangles makes them; not changed any more
    std::optional<CutPlane> cut;
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
    /// Only these throw a shadow from now on; nothing: the whole house. It is worked out on a thread, and shown by settle().
    void cast(std::optional<Casting> casting);
    /// Shows the shadow of what was told last, as soon as that is known.
    void settle();
    [[nodiscard]] bool has_ground() const { return any_; }

private:
    void light_by(vtkImageData* light);

    vtkSmartPointer<vtkActor> whole_, rim_;
    PreparedGround ground_;
    std::shared_future<vtkSmartPointer<vtkImageData>> light_;  ///< of a new shadow; not valid: it is shown
    bool any_ = false, shown_ = true;
    NewestTask task_;  ///< last, so that its thread ends before the rest goes
};

}  // namespace seamward::viewer
