// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkActor.h>
#include <vtkRenderer.h>
#include <vtkSmartPointer.h>

#include "adapt/picture_frame.h"

namespace seamward::viewer {

/// Arrows on the ground beside the box's corner that lies lowest in x and y: along x and along y. Scene.
struct GroundArrows {
    Point corner, x_tip, y_tip;
    Point x_name, y_name;  ///< a little before the tips
};
[[nodiscard]] GroundArrows ground_arrows(const PictureFrame& frame);

/// The ground under the lowest gap, with a grid that fades away around the gaps and arrows along x and y, and the faint
/// box around the gaps.
class GroundLayer {
public:
    explicit GroundLayer(vtkRenderer& renderer);

    void show(const PictureFrame& frame);
    void recolor();
    /// Which of it is shown: the ground with its grid, and the box with the arrows.
    void set_shown(bool ground, bool box);
    /// Meters from one line of the grid to the next.
    [[nodiscard]] double grid_step() const { return grid_step_; }

private:
    double grid_step_ = 1;
    vtkSmartPointer<vtkActor> ground_, grid_, floor_, base_, box_, arrows_;
};

/// 1, 2 or 5 times a power of ten, meters: some thirty steps across `reach` at most.
[[nodiscard]] double round_grid_step(double reach);

}  // namespace seamward::viewer
