// SPDX-License-Identifier: GPL-3.0-or-later
#include "layers/house_ground.h"

#include <vtkCellArray.h>
#include <vtkFloatArray.h>
#include <vtkImageData.h>
#include <vtkNew.h>
#include <vtkPointData.h>
#include <vtkPoints.h>
#include <vtkPolyDataMapper.h>
#include <vtkProperty.h>
#include <vtkTexture.h>
#include <vtkUnsignedCharArray.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "layers/material_color.h"
#include "layers/scene_actor.h"
#include "layers/shadow_map.h"

namespace seamward::viewer {

namespace {

constexpr double least_reach = 0.8, most_reach = 14;  ///< meters around the house in which the ground is shown
constexpr double whole_share = 0.25;                  ///< of that reach: there it is shown whole
constexpr double longest_edge = 0.9;                  ///< meters: between two points the fading is straight
constexpr float darkest = 0.34F;

struct Corner {
    Point at;
    double shown = 1;
};
using Face = std::array<Corner, 3>;

/// Triangles of the ground, cut small, on their way to a data set.
class GroundMesh {
public:
    GroundMesh(const Box& house, double reach, const ShadowMap& shadow) : house_(house), reach_(reach), shadow_(shadow) {
        colors_->SetNumberOfComponents(4);
        places_->SetNumberOfComponents(2);
    }

    void add(const std::array<Point, 3>& corners, const QColor& color) {
        std::vector<std::array<Point, 3>> open{corners};
        while (!open.empty()) {
            const std::array<Point, 3> triangle = open.back();
            open.pop_back();
            if (std::ranges::none_of(triangle, [&](const Point& at) { return shown(at) > 0; }) && is_small(triangle)) continue;
            if (split(triangle, open)) continue;
            add_small(triangle, color);
        }
    }

    vtkSmartPointer<vtkPolyData> data(bool whole) {
        auto data = vtkSmartPointer<vtkPolyData>::New();
        data->SetPoints(points_);
        data->SetPolys(whole ? whole_ : rim_);
        data->GetPointData()->SetScalars(colors_);
        data->GetPointData()->SetTCoords(places_);
        return data;
    }

private:
    [[nodiscard]] double shown(const Point& at) const {
        const double x = std::max({house_.low.x - at.x, at.x - house_.high.x, 0.0});
        const double y = std::max({house_.low.y - at.y, at.y - house_.high.y, 0.0});
        const double share = std::clamp((std::hypot(x, y) / reach_ - whole_share) / (1 - whole_share), 0.0, 1.0);
        return 1 - share * share * (3 - 2 * share);
    }
    [[nodiscard]] static bool is_small(const std::array<Point, 3>& triangle) {
        return distance(triangle[0], triangle[1]) < longest_edge * 3 && distance(triangle[1], triangle[2]) < longest_edge * 3 &&
               distance(triangle[2], triangle[0]) < longest_edge * 3;
    }

    /// In the middle of its longest edge, where that is too long.
    static bool split(const std::array<Point, 3>& triangle, std::vector<std::array<Point, 3>>& open) {
        std::size_t longest = 0;
        for (std::size_t i = 1; i < 3; ++i) {
            if (distance(triangle.at(i), triangle.at((i + 1) % 3)) >
                distance(triangle.at(longest), triangle.at((longest + 1) % 3)))
                longest = i;
        }
        const Point& a = triangle.at(longest);
        const Point& b = triangle.at((longest + 1) % 3);
        const Point& c = triangle.at((longest + 2) % 3);
        if (distance(a, b) <= longest_edge) return false;
        const Point middle{(a.x + b.x) / 2, (a.y + b.y) / 2, (a.z + b.z) / 2};
        open.push_back({a, middle, c});
        open.push_back({middle, b, c});
        return true;
    }

    void add_small(const std::array<Point, 3>& triangle, const QColor& color) {
        bool whole = true;
        std::array<vtkIdType, 3> ids{};
        for (std::size_t i = 0; i < 3; ++i) {
            const Point& at = triangle.at(i);
            const double share = shown(at);
            whole = whole && share > 0.995;
            ids.at(i) = points_->InsertNextPoint(at.x, at.y, at.z);
            colors_->InsertNextTuple4(color.red(), color.green(), color.blue(), std::round(share * 255));
            places_->InsertNextTuple2((at.x - shadow_.low().x) / (shadow_.cell() * shadow_.width()),
                                      (at.y - shadow_.low().y) / (shadow_.cell() * shadow_.height()));
        }
        (whole ? whole_ : rim_)->InsertNextCell(3, ids.data());
    }

    Box house_;
    double reach_;
    const ShadowMap& shadow_;
    vtkNew<vtkPoints> points_;
    vtkNew<vtkUnsignedCharArray> colors_;
    vtkNew<vtkFloatArray> places_;
    vtkNew<vtkCellArray> whole_, rim_;
};

/// Meters around the house in which the ground is shown, so that it ends softly before its edge.
double reach_of(const House& house, const HouseFrame& frame) {
    double least = most_reach;
    for (const Part& part : house.parts) {
        if (part.layer != Layer::ground) continue;
        Point low = part.mesh.points.front();
        Point high = low;
        for (const Point& at : part.mesh.points) {
            low = {std::min(low.x, at.x), std::min(low.y, at.y), 0};
            high = {std::max(high.x, at.x), std::max(high.y, at.y), 0};
        }
        low = frame.to_scene(low);
        high = frame.to_scene(high);
        if (high.x - low.x < frame.house.high.x - frame.house.low.x) continue;  // a fill, a bed
        const Box& box = frame.house;
        least = std::min({least, box.low.x - low.x, high.x - box.high.x, box.low.y - low.y, high.y - box.high.y});
    }
    return std::max(least_reach, least);
}

vtkSmartPointer<vtkImageData> image_of(const ShadowMap& shadow) {
    auto image = vtkSmartPointer<vtkImageData>::New();
    image->SetDimensions(shadow.width(), shadow.height(), 1);
    image->AllocateScalars(VTK_UNSIGNED_CHAR, 3);
    auto* out = static_cast<unsigned char*>(image->GetScalarPointer());
    for (const float shade : shadow.shade()) {
        const float light = 1 - darkest * shade;
        // What is in the shade has the light of the sky, a little bluer.
        *out++ = static_cast<unsigned char>(255 * std::max(0.0F, light - 0.02F * shade));
        *out++ = static_cast<unsigned char>(255 * light);
        *out++ = static_cast<unsigned char>(255 * std::min(1.0F, light + 0.03F * shade));
    }
    return image;
}

}  // namespace

Vector sun_direction() {
    const Vector toward{-0.42, -0.50, 0.76};
    return toward * (1 / length(toward));
}

HouseGround::HouseGround(vtkRenderer& renderer) : whole_(drawn_actor(Qt::white)), rim_(drawn_actor(Qt::white)) {
    rim_->ForceTranslucentOn();
    for (const auto& actor : {whole_, rim_}) renderer.AddActor(actor);
    hide();
}

void HouseGround::hide() {
    any_ = false;
    set_shown(shown_);
}

void HouseGround::set_shown(bool shown) {
    shown_ = shown;
    for (const auto& actor : {whole_, rim_}) actor->SetVisibility(any_ && shown_);
}

PreparedGround prepare_ground(const House& house, const HouseFrame& frame, std::span<vtkPolyData* const> casting) {
    if (std::ranges::find(house.parts, Layer::ground, &Part::layer) == house.parts.end()) return {};
    const double reach = reach_of(house, frame);
    const ShadowMap shadow(casting, frame.house, reach, frame.ground, sun_direction());
    GroundMesh mesh(frame.house, reach, shadow);
    for (const Part& part : house.parts) {
        if (part.layer != Layer::ground) continue;
        const QColor color = material_color(part.material, part.layer);
        for (const auto& [a, b, c] : part.mesh.triangles) {
            const std::vector<Point>& points = part.mesh.points;
            const Vector across = cross(points[b] - points[a], points[c] - points[a]);
            if (!(across.z > 0.5 * length(across))) continue;  // a side of a pit, the underside of a slab of earth
            mesh.add({frame.to_scene(points[a]), frame.to_scene(points[b]), frame.to_scene(points[c])}, color);
        }
    }
    return {mesh.data(true), mesh.data(false), image_of(shadow), frame.house, reach, frame.ground};
}

void HouseGround::show(const PreparedGround& ground) {
    any_ = ground.light != nullptr;
    ground_ = ground;
    light_ = {};
    if (any_) {
        set_data(*whole_, ground.whole);
        set_data(*rim_, ground.rim);
        light_by(ground.light);
    }
    set_shown(shown_);
}

void HouseGround::light_by(vtkImageData* light) {
    vtkNew<vtkTexture> texture;
    texture->SetInputData(light);
    texture->InterpolateOn();
    texture->SetWrap(vtkTexture::ClampToEdge);
    texture->SetColorModeToDirectScalars();
    for (const auto& actor : {whole_, rim_}) actor->SetTexture(texture);
}

void HouseGround::cast(std::optional<Casting> casting) {
    if (!any_) return;
    const auto work = [casting = std::move(casting), ground = ground_](const RunContext& context) {
        if (!casting) return ground.light;
        const std::vector<vtkPolyData*> solids(casting->solids.begin(), casting->solids.end());
        const ShadowMap shadow(solids, ground.house, ground.reach, ground.level, sun_direction(), casting->cut);
        context.check();
        return image_of(shadow);
    };
    light_ = answer_of<vtkSmartPointer<vtkImageData>>(task_, work);
}

void HouseGround::settle() {
    if (light_.valid() && any_) light_by(light_.get());
    light_ = {};
}

}  // namespace seamward::viewer
