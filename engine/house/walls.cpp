// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <numeric>

#include "house/framing.h"
#include "house/stories.h"

namespace seamward {

namespace {

using namespace framing;

class WallBuilder {
public:
    /// `under` is the same partition one story down, where its air goes on up into this one.
    WallBuilder(Layout& layout, WallLayout& wall, const Assembly& assembly, const WallLayout* under = nullptr)
        : layout_(layout), wall_(wall), assembly_(assembly), under_(under) {}

    void build(const std::vector<NamedSpace>& cavity_names, Place place) {
        const std::vector<WallLayer>& layers = assembly_.layers;
        const auto last_air = std::find_if(layers.rbegin(), layers.rend(), [](const WallLayer& l) { return l.is_air(); });
        const std::size_t stud_layer = static_cast<std::size_t>(layers.rend() - last_air) - 1;
        double out = depth_of(assembly_, wall_.exterior).outside;
        Skin skin = new_skin();
        for (std::size_t i = 0; i < layers.size(); ++i) {
            const double front = out, back = out - layers[i].thickness;
            out = back;
            const bool outer = wall_.exterior && i < stud_layer;
            if (layers[i].is_air()) {
                finish_skin(skin, outer || i == stud_layer);
                skin = new_skin();
                add_cavity(back, front, cavity_names, i == stud_layer, place);
            } else {
                add_layer(skin, layers[i], back, front, outer);
            }
        }
        finish_skin(skin, false);
    }

private:
    static Skin new_skin() { return {.back = 1e9, .front = -1e9}; }

    /// Where layers begin that stand on the floor, or go on down through it.
    [[nodiscard]] double foot() const { return wall_.open_below ? wall_.bottom : 0; }

    void finish_skin(Skin& skin, bool outer) {
        skin.frame = wall_.frame;
        skin.extent = outer ? rectangle({0, wall_.bottom}, {wall_.length, wall_.top})
                            : rectangle({0, foot()}, {wall_.length, wall_.plate_top});
        std::reverse(skin.panels.begin(), skin.panels.end());
        wall_.skins.push_back(std::move(skin));
    }

    Prism upright(const Loop& outline, double back, double front, bool slanted) const {
        return plain_prism(wall_.frame, outline, back, front, slanted ? wall_.slant : Slant());
    }

    void cut(Prism& prism, const Loop& loop) const {
        prism.cuts.push_back(loop);
        prism.gap_of_cut.emplace_back();
    }

    void add_layer(Skin& skin, const WallLayer& layer, double back, double front, bool outer) {
        const double low = outer ? wall_.bottom : foot(), high = outer ? wall_.top : wall_.plate_top;
        Prism prism = upright(rectangle({0, low}, {wall_.length, high}), back, front, true);
        for (const Loop& opening : wall_.openings) cut(prism, opening);
        skin.back = std::min(skin.back, back);
        skin.front = std::max(skin.front, front);
        skin.name += (skin.name.empty() ? "" : " and ") + layer.material;
        const std::string side = outer ? "" : "-" + std::to_string(wall_.skins.size());
        skin.panels.push_back(layout_.add_panel(wall_.id + "/" + layer.material + side, layer.material + " of " + wall_.name,
                                                layer.material, outer ? Layer::cladding : Layer::interior, std::move(prism)));
        if (outer) wall_.outer_panels.push_back(skin.panels.back());
    }

    void add_cavity(double back, double front, const std::vector<NamedSpace>& names, bool studs, Place place) {
        const std::size_t number = wall_.cavities.size();
        NamedSpace named = number < names.size() ? names[number] : NamedSpace();
        if (named.id.empty()) {
            named.id = studs ? wall_.id : wall_.id + "-air";
            named.spoken = message(studs ? "cavity of {}" : "air behind the cladding of {}", {as_named(wall_.name)});
            named.name = named.spoken.english();
        }
        wall_.cavities.push_back({back, front, {}, {}});
        if (studs) {
            frame_studs(back, front, named, place);
            return;
        }
        wall_.cavities.back().space = layout_.add_space(named, SpaceKind::cavity, place);
        close_air(back, front, wall_.cavities.back().space);
    }

    /// How far apart studs part the cavity; nothing: they do not.
    [[nodiscard]] std::optional<double> bay_spacing() const {
        for (const StudBaysDescription& bays : layout_.described.stud_bays) {
            if (std::find(bays.on.begin(), bays.on.end(), wall_.described) != bays.on.end()) return bays.spacing;
        }
        return std::nullopt;
    }

    /// Studs at a spacing, and the bays that they and the openings leave, each a space.
    void part_into_bays(double spacing, const Loop& inner, std::vector<Loop> solid, double back, double front,
                        const NamedSpace& named, Place place) {
        std::size_t number = 0;
        for (double u = inner[0].x + spacing - stud; u + stud < inner[1].x; u += spacing) {
            const Loop loop = rectangle({u, inner[0].y}, {u + stud, inner[2].y});
            Prism made = upright(loop, back, front, false);
            for (const Loop& buck : solid) {
                if (buck[0].x < u + stud && buck[2].x > u) cut(made, buck);
            }
            layout_.add_panel(wall_.id + "/stud-" + std::to_string(++number), "stud of " + wall_.name, "wood", Layer::framing,
                              std::move(made));
            solid.push_back(loop);
        }
        WallCavity& cavity = wall_.cavities.back();
        Frame frame = wall_.frame;
        frame.origin = frame.at(0, 0, (back + front) / 2);
        for (CutFigure& piece : remainder(inner, solid)) {
            const std::string bay = std::to_string(cavity.bays.size() + 1);
            const Message whole = named.spoken.empty() ? as_named(named.name) : named.spoken;
            const Message in_bay = message("{}, bay {}", {whole, as_it_stands(bay)});
            const SpaceIndex space =
                layout_.add_space({named.id + "-bay-" + bay, in_bay.english(), in_bay}, SpaceKind::cavity, place);
            layout_.set_middle(space, frame, piece.figure);
            cavity.bays.emplace_back(std::move(piece.figure), space);
        }
        if (!cavity.bays.empty()) cavity.space = cavity.bays.front().second;
    }

    void frame_studs(double back, double front, const NamedSpace& named, Place place) {
        const double low = wall_.open_below ? wall_.bottom : plate;
        const double high = wall_.plate_top - (wall_.open_above ? 0 : double_top_plate);
        // The corner posts reach past the slant of the neighbor's cavity.
        const double left = wall_.slant.left_reach(back, front) + stud, right = wall_.slant.right_reach(back, front) - stud;
        check_room(left, right);
        if (!wall_.open_below) wall_.bottom_plate = level_plate("bottom plate", back, front, 0, low, true);
        if (!wall_.open_above) wall_.top_plate = level_plate("top plate", back, front, high, wall_.plate_top, false);
        wall_.left_post = add_post("/post-left", {0, low}, {left, high}, back, front);
        wall_.right_post = add_post("/post-right", {right, low}, {wall_.length, high}, back, front);

        std::vector<Loop> bucks;
        for (const Loop& opening : wall_.openings) {
            const bool to_floor = opening[0].y - stud <= low;
            bucks.push_back(
                rectangle({opening[0].x - stud, to_floor ? 0 : opening[0].y - stud}, opening[2] + Point2{stud, stud}));
            Prism buck = upright(bucks.back(), back, front, false);
            cut(buck, opening);
            layout_.add_panel(wall_.id + "/opening-" + std::to_string(bucks.size()), "frame of an opening in " + wall_.name,
                              "wood", Layer::framing, std::move(buck));
        }
        const Loop inner = rectangle({left, low}, {right, high});
        if (const auto spacing = bay_spacing()) {
            if (wall_.open_below || wall_.open_above)
                layout_.faults.add(place, "the air in " + wall_.name + " goes on from story to story",
                                   "leave it out of stud_bays");
            part_into_bays(*spacing, inner, bucks, back, front, named, place);
            return;
        }
        WallCavity& cavity = wall_.cavities.back();
        cavity.inner = inner;
        cavity.returns = bucks;
        cavity.space = under_ != nullptr ? under_->cavities.back().space : layout_.add_space(named, SpaceKind::cavity, place);
        if (wall_.exterior) set_middle(cavity.space, inner, bucks, back, front);
    }

    /// The post that ends the air. Openings through it run along the wall, so it is pulled that way where its end is square.
    std::size_t add_post(const char* id, Point2 least, Point2 most, double back, double front) {
        const std::string name = "corner post of " + wall_.name;
        if (wall_.exterior)
            return layout_.add_panel(wall_.id + id, name, "wood", Layer::framing,
                                     upright(rectangle(least, most), back, front, true));
        const Frame end{wall_.frame.origin, wall_.frame.n * -1, wall_.frame.v, wall_.frame.u};
        return layout_.add_panel(wall_.id + id, name, "wood", Layer::framing,
                                 plain_prism(end, rectangle({-front, least.y}, {-back, most.y}), least.x, most.x));
    }

    void close_air(double back, double front, SpaceIndex space) {
        const double left = wall_.slant.left_reach(back, front) + closer, right = wall_.slant.right_reach(back, front) - closer;
        check_room(left, right);
        const Loop inner = rectangle({left, wall_.bottom + closer}, {right, wall_.top - closer});
        Prism border = upright(rectangle({0, wall_.bottom}, {wall_.length, wall_.top}), back, front, true);
        cut(border, inner);
        for (const Loop& opening : wall_.openings) cut(border, opening);
        wall_.outer_panels.push_back(layout_.panels.size());
        wall_.cavities.back().closer = layout_.panels.size();
        layout_.add_panel(wall_.id + "/closer", "end of the air gap in " + wall_.name, "wood", Layer::framing, std::move(border));
        std::vector<Loop> bucks;
        for (const Loop& opening : wall_.openings) {
            bucks.push_back(rectangle({opening[0].x - closer, std::max(opening[0].y - closer, inner[0].y)},
                                      {opening[2].x + closer, std::min(opening[2].y + closer, inner[2].y)}));
            Prism buck = upright(bucks.back(), back, front, false);
            cut(buck, opening);
            layout_.add_panel(wall_.id + "/return-" + std::to_string(bucks.size()), "edge of the air gap in " + wall_.name,
                              "wood", Layer::framing, std::move(buck));
        }
        wall_.cavities.back().returns = bucks;
        set_middle(space, inner, bucks, back, front);
    }

    void check_room(double left, double right) {
        if (right - left >= 0.05) return;
        layout_.faults.add({}, "the corners at both ends of " + wall_.name + " leave no room for the air in it",
                           "make it longer, or its layers thinner");
    }

    void set_middle(SpaceIndex space, const Loop& inner, const std::vector<Loop>& bucks, double back, double front) {
        std::vector<CutFigure> pieces = remainder(inner, bucks);
        if (pieces.size() != 1) {
            layout_.faults.add(layout_.space_places[space.value],
                               "the openings cut the air in " + wall_.name + " into " + std::to_string(pieces.size()) + " pieces",
                               "make the openings lower, narrower or fewer");
            return;
        }
        Frame frame = wall_.frame;
        frame.origin = frame.at(0, 0, (back + front) / 2);
        layout_.set_middle(space, frame, std::move(pieces.front().figure));
    }

    Skin level_plate(const std::string& name, double back, double front, double low, double high, bool is_bottom) {
        const auto end = [&](double n, bool right) {
            return Point2{right ? wall_.length + wall_.slant.right_slant * n : wall_.slant.left_slant * n, -n};
        };
        Prism prism;
        prism.frame = plan_frame(wall_.frame);
        prism.outline = {end(front, false), end(front, true), end(back, true), end(back, false)};
        prism.heights = {{low}, {high}};
        for (const Loop& opening : wall_.openings) {
            if (!is_bottom || opening[0].y - stud > plate) continue;
            cut(prism, rectangle({opening[0].x - stud, -front - 1}, {opening[2].x + stud, -back + 1}));
        }
        Skin skin{.name = name, .frame = prism.frame, .back = low, .front = high, .extent = prism.outline};
        skin.panels.push_back(layout_.add_panel(wall_.id + (is_bottom ? "/bottom-plate" : "/top-plate"),
                                                name + " of " + wall_.name, "wood", Layer::framing, std::move(prism)));
        return skin;
    }

    Layout& layout_;
    WallLayout& wall_;
    const Assembly& assembly_;
    const WallLayout* under_;
};

}  // namespace

Depth depth_of(const Assembly& assembly, bool exterior) {
    const auto sum = [](double thick, const WallLayer& layer) { return thick + layer.thickness; };
    const auto last_air =
        std::find_if(assembly.layers.rbegin(), assembly.layers.rend(), [](const WallLayer& layer) { return layer.is_air(); });
    const double whole = std::accumulate(assembly.layers.begin(), assembly.layers.end(), 0.0, sum);
    const double cladding = std::accumulate(last_air + 1, assembly.layers.rend(), 0.0, sum);
    const double outside = exterior ? cladding : whole / 2;
    return {outside - whole, outside};
}

void build_wall(Layout& layout, WallLayout& wall, const Assembly& assembly, const std::vector<NamedSpace>& cavities, Place place,
                const WallLayout* under) {
    WallBuilder(layout, wall, assembly, under).build(cavities, place);
}

}  // namespace seamward
