// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vtkPolyData.h>
#include <vtkSmartPointer.h>

#include <QColor>
#include <cstdint>
#include <memory>
#include <optional>
#include <vector>

#include "base/run_context.h"
#include "exchange/finish.h"
#include "layers/house_ground.h"
#include "layers/house_groups.h"

namespace seamward::viewer {

/// What of a house is shown, made faint or hidden together, from outside in.
using seamward::Coat;
inline constexpr std::size_t coat_count = 6;

/// The solids of a house or a model, sorted and put into data sets, so that showing them takes no time. It can be made on any
/// thread; VTK's objects belong to whoever shows them then.
struct PreparedHouse {
    /// What is drawn as one: what belongs to one coat and faces one way.
    struct Set {
        Coat coat = Coat::walls;
        HousePiece::Before before = HousePiece::Before::nothing;
        Vector outward;
        /// As ColoredTriangles makes them, but without colors where all have the same; one without area has a normal all the
        /// same.
        vtkSmartPointer<vtkPolyData> faces;
        vtkSmartPointer<vtkPolyData> edges;  ///< as EdgeLines makes them
        std::optional<QColor> color;         ///< of all faces, where it is the same
    };
    /// Where a triangle comes from.
    struct Owner {
        std::uint32_t set = 0, part = 0;
        std::uint32_t triangle = 0;  ///< position in the part's mesh
    };

    HouseFrame frame;  ///< the ground lies at z = 0
    std::vector<Set> sets;
    std::vector<Owner> owners;  ///< one for each triangle of the sets, in their order
    PreparedGround ground;
};

/// On all processors. O(triangles log triangles of a piece). Throws Cancelled.
[[nodiscard]] std::shared_ptr<const PreparedHouse> prepare_house(const House& house, const RunContext& context);
/// The same for a frame of the caller's, without ground.
[[nodiscard]] std::shared_ptr<const PreparedHouse> prepare_house(const House& house, const HouseFrame& frame,
                                                                 const RunContext& context);

/// The triangles of a house in the order of the owners, over the points of its parts: to be searched, in the scene's coordinates.
[[nodiscard]] vtkSmartPointer<vtkPolyData> searched_triangles(const House& house, const PreparedHouse& prepared);

}  // namespace seamward::viewer
