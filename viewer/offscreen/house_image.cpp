// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/house_image.h"

#include <QStringList>
#include <algorithm>

#include "offscreen/blend_layers.h"
#include "offscreen/drawn_way.h"
#include "offscreen/layer_renderer.h"
#include "offscreen/section_drawing.h"
#include "offscreen/soft_light.h"

namespace seamward::viewer {

namespace {

constexpr double lens_reach = 130;             ///< units to each side of the way where what is before it fades more
constexpr double sky_reach = 0.55;             ///< meters around a corner that it darkens
constexpr double closeup_way = 0.55;           ///< thickness of the way through a gap, as a share of a whole way's
constexpr double closeup_sky = 0.08;           ///< the same, as a share of the picture's height
constexpr double most_ground = 3.4;            ///< meters of ground that are shown around the house, at most
constexpr std::int64_t most_fine = 3'000'000;  ///< pixels of a picture up to which each is made of four samples

/// How a group goes into the picture: see BlendLayer.
struct GroupLook {
    float opacity, edges, least;
};
using Looks = std::array<GroupLook, group_count>;

/// In the order of the groups: ground, solid, framing, interior, opening, cladding, roof. Of all of the house:
constexpr Looks whole_house{{{1.0F, 0.45F, 1.0F},
                             {1.0F, 0.75F, 0.5F},
                             {0.34F, 0.36F, 0.9F},
                             {0.20F, 0.34F, 0.3F},
                             {0.76F, 0.80F, 0.3F},
                             {0.70F, 0.75F, 0.2F},
                             {0.44F, 0.70F, 0.2F}}};
/// Of a house that is cut, and of the faces of the cut:
constexpr GroupLook cut_open{1, 0.6F, 1}, cut_face{1, 0, 1};
constexpr GroupLook roof_line{0.85F, 0, 0.8F};
/// Among what is faded; null: stays.
constexpr std::array<const char*, group_count> names{nullptr,      nullptr, "framing", "ceilings", "near doors and windows",
                                                     "near walls", "roof"};

std::size_t position(Group group) { return static_cast<std::size_t>(group); }

/// How much the layers that are nearer than a place let through where the picture shows it.
double seen_through(std::span<const BlendLayer> layers, const Point& at, const Sight& sight, int fine) {
    constexpr double thick = 0.05;  // meters: what lies in a part's face is not behind it
    const auto shown = sight.camera().shown_at(at, sight.width(), sight.height());
    if (!shown || shown->x < 0 || shown->y < 0 || shown->x >= sight.width() || shown->y >= sight.height()) return 0;
    const auto column = static_cast<std::size_t>(shown->x) * static_cast<std::size_t>(fine);
    const auto row = static_cast<std::size_t>(sight.height() - 1 - static_cast<int>(shown->y)) * static_cast<std::size_t>(fine);
    double share = 1;
    for (const BlendLayer& layer : layers) {
        if (layer.drawn.empty()) continue;
        const float* const depths = layer.drawn.depth();
        const double depth = static_cast<double>(depths[row * static_cast<std::size_t>(sight.width() * fine) + column]);
        if (depth < 1 && sight.away(depth) < sight.away(at) - thick) share *= 1 - static_cast<double>(layer.opacity);
    }
    return share;
}

Looks looks_of(bool closeup) {
    if (!closeup) return whole_house;
    Looks looks{};
    looks.fill(cut_open);
    return looks;
}

std::vector<BlendLayer> drawn_groups(const HouseGroups& groups, const Looks& looks, LayerRenderer& renderer) {
    std::vector<BlendLayer> layers(group_count);
    for (std::size_t i = 0; i < group_count; ++i)
        layers[i] = {renderer.drawn(groups.at(i)), looks.at(i).opacity, looks.at(i).edges, looks.at(i).least, {}, {}};
    return layers;
}

/// Light of the sky on what stays.
void light_sky(std::vector<BlendLayer>& layers, double reach, const Sight& sight, int fine) {
    std::vector<const DrawnLayer*> lit;
    for (const BlendLayer& layer : layers) {
        if (layer.opacity == 1) lit.push_back(&layer.drawn);
    }
    const std::vector<float> sky = sky_light(lit, reach, sight, fine);
    for (BlendLayer& layer : layers) {
        if (layer.opacity == 1) layer.light = sky;
    }
}

/// Meters around the house in which the ground is shown, so that it ends softly before its edge.
double ground_reach(vtkPolyData& ground, const Box& house) {
    if (ground.GetNumberOfCells() == 0) return most_ground;
    const double* bounds = ground.GetBounds();
    return std::clamp(
        std::min({house.low.x - bounds[0], bounds[1] - house.high.x, house.low.y - bounds[2], bounds[3] - house.high.y}), 0.8,
        most_ground);
}

/// Takes away what of a layer lies under the ground, which does not hide it where it ends softly.
void hide_under(const DrawnLayer& ground, BlendLayer& layer, const Sight& sight, int fine) {
    if (ground.empty() || layer.drawn.empty() || layer.cover.empty()) return;
    const auto width = static_cast<std::size_t>(sight.width());
    const auto height = static_cast<std::size_t>(sight.height());
    const auto each = static_cast<std::size_t>(fine);
    for (std::size_t i = 0; i < width * height; ++i) {
        bool under = true;  // in all of the pixel: at the foot of a wall the ground begins within one
        for (std::size_t sample = 0; sample < each * each && under; ++sample) {
            const std::size_t row = (height - 1 - i / width) * each + sample / each;
            const std::size_t at = row * width * each + i % width * each + sample % each;
            under = ground.depth()[at] < layer.drawn.depth()[at];
        }
        if (under) layer.cover[i] = 0;
    }
}

/// The house's shadow on the ground, which ends some meters off.
void shade_ground(std::vector<BlendLayer>& layers, const HouseGroups& groups, const HouseFrame& frame, const Sight& sight,
                  int fine) {
    std::vector<vtkPolyData*> casting;
    for (std::size_t i = 1; i < group_count; ++i) casting.push_back(groups.at(i));
    BlendLayer& ground = layers[position(Group::ground)];
    const double reach = ground_reach(*groups.at(position(Group::ground)), frame.house);
    const std::vector<float> light = ground_light(ground.drawn, casting, frame.house, reach, frame.ground, sight, fine);
    for (std::size_t i = 0; i < light.size(); ++i) ground.light[i] *= light[i];
    for (const Group group : {Group::ground, Group::solid, Group::cladding})
        layers[position(group)].cover = nearness(layers[position(group)].drawn, frame.house, reach, sight, fine);
    hide_under(ground.drawn, layers[position(Group::solid)], sight, fine);
}

}  // namespace

HouseImage house_image(const House& house, const HouseFrame& frame, const HouseGroups& groups, const HouseImageContent& content,
                       const Sight& sight) {
    const bool closeup = content.cut.has_value();
    const int fine = static_cast<std::int64_t>(sight.width()) * sight.height() <= most_fine ? 2 : 1;
    LayerRenderer renderer(sight, fine);
    std::vector<BlendLayer> layers = drawn_groups(groups, looks_of(closeup), renderer);
    const double picture_height = sight.height() * sight.pixel(sight.camera().distance);
    light_sky(layers, closeup ? closeup_sky * picture_height : sky_reach, sight, fine);
    if (!closeup) shade_ground(layers, groups, frame, sight, fine);

    HouseImage all;
    for (const Point& at : content.asked) all.seen.push_back(seen_through(layers, at, sight, fine));

    ColoredTriangles others;
    add_thin_ways(others, content.other_lines, sight, content.unit);
    BlendLayer thin;
    thin.drawn = renderer.drawn(others.data());
    thin.edges = 0;
    layers.push_back(std::move(thin));

    ColoredTriangles shown;
    if (!closeup) {
        ColoredTriangles lines;
        add_roof_lines(lines, roof_lines(house, frame), sight, content.unit);
        layers.push_back({renderer.drawn(lines.data()), roof_line.opacity, roof_line.edges, roof_line.least, {}, {}});
    }
    if (closeup) {
        ColoredTriangles faces;
        add_cut_faces(faces, content.cut->faces, content.cut->plane, content.cut->gap, sight, content.unit);
        layers.push_back({renderer.drawn(faces.data()), cut_face.opacity, cut_face.edges, cut_face.least, {}, {}});
        ColoredTriangles sides;
        add_gap_faces(sides, house, frame, content.cut->gap, sight.forward() * -1);
        layers.push_back({renderer.drawn(sides.data()), cut_face.opacity, cut_face.edges, cut_face.least, {}, {}});
    }
    add_way(shown, {content.line.begin(), content.line.end()}, content.marks, sight, content.unit * (closeup ? closeup_way : 1));
    const DrawnLayer way = renderer.drawn(shown.data());
    const Lens lens = closeup ? Lens{} : lens_along(content.line, lens_reach * content.unit, sight);
    all.image = blended(layers, way, lens, sight, fine);
    return all;
}

QString faded_groups(const HouseGroups& groups) {
    QStringList faded;
    for (std::size_t i = group_count; i-- > 0;) {
        if (names.at(i) != nullptr && groups.at(i)->GetNumberOfCells() > 0) faded << QString::fromLatin1(names.at(i));
    }
    return faded.join(", ");
}

}  // namespace seamward::viewer
