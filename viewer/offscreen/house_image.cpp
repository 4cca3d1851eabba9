// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/house_image.h"

#include <QStringList>

#include "offscreen/blend_layers.h"
#include "offscreen/drawn_way.h"
#include "offscreen/layer_renderer.h"
#include "offscreen/soft_light.h"

namespace seamward::viewer {

namespace {

constexpr double lens_reach = 130;             ///< units to each side of the way where what is before it fades more
constexpr double closeup_lens = 170;           ///< the same around a gap seen from close by
constexpr double sky_reach = 0.55;             ///< meters around a corner that it darkens
constexpr double closeup_sky = 0.08;           ///< the same, as a share of the picture's height
constexpr std::int64_t most_fine = 3'000'000;  ///< pixels of a picture up to which each is made of four samples

/// How a group goes into the picture of the whole house: see BlendLayer.
struct GroupLook {
    float opacity, edges, least;
    const char* name;  ///< among what is faded; null: stays
};

constexpr std::array<GroupLook, group_count> looks{
    GroupLook{1.0F, 0.45F, 1.0F, nullptr},      GroupLook{1.0F, 0.75F, 0.5F, nullptr},
    GroupLook{0.34F, 0.36F, 0.9F, "framing"},   GroupLook{0.20F, 0.34F, 0.3F, "ceilings"},
    GroupLook{0.76F, 0.80F, 0.3F, "near doors and windows"}, GroupLook{0.70F, 0.75F, 0.2F, "near walls"},
    GroupLook{0.44F, 0.70F, 0.2F, "roof"},
};

std::size_t position(Group group) { return static_cast<std::size_t>(group); }

/// Whether a layer is nearer than a place where the picture shows that place.
bool hides(const DrawnLayer& layer, const Point& at, const Sight& sight, int fine) {
    constexpr double thick = 0.05;  // meters: what lies in a part's face is not behind it
    const auto shown = sight.camera().shown_at(at, sight.width(), sight.height());
    if (layer.empty() || !shown || shown->x < 0 || shown->y < 0 || shown->x >= sight.width() || shown->y >= sight.height())
        return false;
    const auto column = static_cast<std::size_t>(shown->x) * static_cast<std::size_t>(fine);
    const auto row = static_cast<std::size_t>(sight.height() - 1 - static_cast<int>(shown->y)) * static_cast<std::size_t>(fine);
    const double depth = static_cast<double>(layer.depth()[row * static_cast<std::size_t>(sight.width() * fine) + column]);
    return depth < 1 && sight.away(depth) < sight.away(at) - thick;
}

std::vector<BlendLayer> drawn_groups(const HouseGroups& groups, bool closeup, LayerRenderer& renderer) {
    std::vector<BlendLayer> layers(group_count);
    for (std::size_t i = 0; i < group_count; ++i) {
        layers[i].drawn = renderer.drawn(groups.at(i));
        layers[i].opacity = closeup ? 1 : looks.at(i).opacity;
        layers[i].edges = looks.at(i).edges;
        layers[i].least = closeup ? 0.1F : looks.at(i).least;
    }
    return layers;
}

/// Light of the sky on what stays, and the house's shadow on the ground, which ends some meters off.
void light_up(std::vector<BlendLayer>& layers, const HouseGroups& groups, const HouseFrame& frame, bool closeup, const Sight& sight,
              int fine) {
    std::vector<const DrawnLayer*> lit;
    for (const BlendLayer& layer : layers) {
        if (layer.opacity == 1) lit.push_back(&layer.drawn);
    }
    const double reach = closeup ? closeup_sky * sight.height() * sight.pixel(sight.camera().distance) : sky_reach;
    const std::vector<float> sky = sky_light(lit, reach, sight, fine);
    std::vector<vtkPolyData*> casting;
    for (std::size_t i = 1; i < group_count; ++i) casting.push_back(groups.at(i));
    const vtkSmartPointer<vtkPolyData>& ground = groups.at(position(Group::ground));
    const double level = ground->GetNumberOfCells() > 0 ? ground->GetBounds()[5] : 0;
    std::vector<float> on_ground = ground_light(layers[position(Group::ground)].drawn, casting, frame.house, level, sight, fine);
    for (std::size_t i = 0; i < on_ground.size(); ++i) on_ground[i] *= sky[i];
    for (std::size_t i = 0; i < group_count; ++i) {
        if (layers[i].opacity == 1) layers[i].light = i == position(Group::ground) ? std::move(on_ground) : sky;
    }
    if (closeup) return;
    for (const Group group : {Group::ground, Group::solid, Group::cladding})
        layers[position(group)].cover = nearness(layers[position(group)].drawn, frame.house, sight, fine);
}

}  // namespace

HouseImage house_image(const House& house, const HouseFrame& frame, const HouseGroups& groups, const HouseImageContent& content,
                       const Sight& sight) {
    const bool closeup = content.closeup.has_value();
    const int fine = static_cast<std::int64_t>(sight.width()) * sight.height() <= most_fine ? 2 : 1;
    LayerRenderer renderer(sight, fine);
    std::vector<BlendLayer> layers = drawn_groups(groups, closeup, renderer);
    light_up(layers, groups, frame, closeup, sight, fine);

    HouseImage all;
    for (const Point& at : content.asked) all.hidden.push_back(hides(layers[position(Group::solid)].drawn, at, sight, fine));

    ColoredTriangles others;
    for (const std::vector<Point>& line : content.other_lines) add_thin_way(others, line, sight, content.unit);
    BlendLayer thin;
    thin.drawn = renderer.drawn(others.data());
    thin.edges = 0;
    layers.push_back(std::move(thin));

    ColoredTriangles shown;
    if (closeup) add_gap_faces(shown, house, frame, *content.closeup);
    add_way(shown, {content.line.begin(), content.line.end()}, content.marks, sight, content.unit);
    const DrawnLayer way = renderer.drawn(shown.data());
    const Lens lens = closeup ? lens_along(content.marks, closeup_lens * content.unit, sight)
                              : lens_along(content.line, lens_reach * content.unit, sight);
    all.image = blended(layers, way, lens, sight, fine);
    return all;
}

QString faded_groups(const HouseGroups& groups) {
    QStringList names;
    for (std::size_t i = group_count; i-- > 0;) {
        if (looks.at(i).name != nullptr && groups.at(i)->GetNumberOfCells() > 0) names << QString::fromLatin1(looks.at(i).name);
    }
    return names.join(", ");
}

}  // namespace seamward::viewer
