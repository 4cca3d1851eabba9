// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>

#include "geometry/straight_skeleton.h"
#include "house/framing.h"
#include "house/layout.h"
#include "house/shell.h"

namespace seamward {

namespace {

using namespace framing;

constexpr double least_blocking = 0.06;  ///< height of what stands on the wall under the deck, meters

/// What the roof does over one edge of the outline.
enum class RoofEdge : std::uint8_t {
    eave,   ///< rain runs off over it; a box under the overhang
    rake,   ///< the roof ends above the slope of the wall
    level,  ///< the roof passes over it at one height, without a box
    wall,   ///< the wall goes on up past the roof (parapet)
};

class RoofBuilder {
public:
    explicit RoofBuilder(Layout& layout)
        : layout_(layout),
          described_(layout.described.roof),
          outline_(layout.described.outline),
          edges_(outline_.size(), RoofEdge::eave),
          first_wall_((layout.stories.size() - 1) * outline_.size()),
          heel_(std::max(heel, layout.described.roof.pitch * wall(0).outside() + least_blocking)) {
        layout_.eaves.resize(outline_.size());
    }

    void build() {
        if (described_.shape == RoofShape::flat) {
            build_flat();
            return;
        }
        sort_edges();
        if (!find_faces()) return;
        add_decks();
        for (std::size_t e = 0; e < edges_.size(); ++e) {
            switch (edges_[e]) {
                case RoofEdge::eave: add_blocking(e); break;
                case RoofEdge::level: add_level_top(e); break;
                case RoofEdge::rake: add_rake(e); break;
                case RoofEdge::wall: break;
            }
        }
        add_eave_boxes();
        set_attic_middle(heel_ / 2);
    }

private:
    [[nodiscard]] WallLayout& wall(std::size_t edge) { return layout_.walls[first_wall_ + edge]; }
    [[nodiscard]] const WallLayout& wall(std::size_t edge) const { return layout_.walls[first_wall_ + edge]; }
    [[nodiscard]] std::size_t before(std::size_t edge) const { return (edge + edges_.size() - 1) % edges_.size(); }
    [[nodiscard]] std::size_t after(std::size_t edge) const { return (edge + 1) % edges_.size(); }
    [[nodiscard]] Point2 direction(std::size_t edge) const { return {wall(edge).frame.u.x, wall(edge).frame.u.y}; }
    [[nodiscard]] double plate_top() const { return layout_.stories.back().plate_top; }

    void sort_edges() {
        if (described_.shape == RoofShape::shed) {
            const Point2 along = direction(described_.low);
            for (std::size_t e = 0; e < edges_.size(); ++e) {
                const double turned = std::abs(cross(along, direction(e)));
                edges_[e] = e == described_.low ? RoofEdge::eave : turned < 1e-9 ? RoofEdge::level : RoofEdge::rake;
                if (turned > 1e-9 && turned < 1 - 1e-9)
                    layout_.faults.add(
                        described_.place,
                        "a shed roof needs walls square to its low wall; " + layout_.described.walls[e] + " is not",
                        "choose a hip roof");
                const Point2 off = outline_[e] - outline_[described_.low];
                if (cross(along, off) < -1e-9 && turned < 1e-9)
                    layout_.faults.add(described_.place,
                                       "the low wall of a shed roof lies farthest out; " + layout_.described.walls[e] +
                                           " lies beyond " + layout_.described.walls[described_.low],
                                       "name in low the outermost wall on that side");
            }
        }
        for (const std::size_t gable : described_.gables) edges_[gable] = RoofEdge::rake;
        offsets_.resize(edges_.size());
        for (std::size_t e = 0; e < edges_.size(); ++e)
            offsets_[e] = edges_[e] == RoofEdge::eave ? described_.overhang : std::max(described_.rake, wall(e).outside() + 0.01);
        border_ = offset_outline(outline_, offsets_);
    }

    /// Height over the plan of a plane that rises inward from an edge and passes `heel_` over the framing there.
    [[nodiscard]] Height plane(std::size_t edge) const {
        const Point2 u = direction(edge), inward{-u.y, u.x};
        const Point2 at = outline_[edge];
        return {plate_top() + heel_ - described_.pitch * dot(at, inward), described_.pitch * inward.x,
                described_.pitch * inward.y};
    }

    bool find_faces() {
        if (!keeps_shape(outline_, border_)) {
            layout_.faults.add(described_.place, "the overhangs of two walls run into each other", "make overhang smaller");
            return false;
        }
        if (described_.shape == RoofShape::shed) {
            faces_.push_back({border_, plane(described_.low), {}});
            return true;
        }
        std::vector<SkeletonFace> skeleton = straight_skeleton(border_);
        for (const std::size_t gable : described_.gables) {
            if (!move_hip_end(skeleton, gable)) return false;
        }
        for (std::size_t e = 0; e < edges_.size(); ++e) {
            if (edges_[e] == RoofEdge::eave) faces_.push_back({skeleton[e].outline, plane(e), {}});
        }
        return true;
    }

    /// Turns the hip over a wall into a gable: the planes beside it go on to the wall's edge.
    bool move_hip_end(std::vector<SkeletonFace>& skeleton, std::size_t gable) {
        const std::string& name = layout_.described.walls[gable];
        const bool square = std::abs(dot(direction(gable), direction(before(gable)))) < 1e-9 &&
                            std::abs(dot(direction(gable), direction(after(gable)))) < 1e-9;
        if (skeleton[gable].outline.size() != 3 || !square || edges_[before(gable)] != RoofEdge::eave ||
            edges_[after(gable)] != RoofEdge::eave) {
            layout_.faults.add(described_.place,
                               "no gable can stand on " + name + ": it has no single hip end between two square corners",
                               "name another wall in gables, or none");
            return false;
        }
        const Point2 ridge_end = (border_[gable] + border_[after(gable)]) * 0.5;
        Loop& left = skeleton[before(gable)].outline;
        left.insert(left.begin() + 2, ridge_end);
        skeleton[after(gable)].outline.push_back(ridge_end);
        return true;
    }

    void add_decks() {
        const double thickness = deck * std::sqrt(1 + described_.pitch * described_.pitch);
        for (std::size_t i = 0; i < faces_.size(); ++i) {
            RoofFace& face = faces_[i];
            Prism prism;
            prism.frame = level_frame(0);
            prism.outline = face.plan;
            prism.heights = {face.bottom, {face.bottom.out + thickness, face.bottom.along, face.bottom.up}};
            face.skin = {.name = "roof", .frame = prism.frame, .extent = face.plan};
            const std::string number = std::to_string(i + 1);
            face.skin.panels.push_back(layout_.add_panel("roof/plane-" + number, "roof plane " + number, described_.material,
                                                         Layer::roof, std::move(prism)));
        }
        layout_.roof = faces_;
    }

    /// A height over the plan as a height in the level frame of a wall, counted from that story's floor.
    [[nodiscard]] static Height in_frame(const Height& height, const Frame& frame) {
        const double out = height.at({frame.origin.x, frame.origin.y}) - frame.origin.z;
        return {out, height.along * frame.u.x + height.up * frame.u.y, height.along * frame.v.x + height.up * frame.v.y};
    }

    /// A band of a wall in its level frame, from n = `back` to `front`, with the wall's slants.
    [[nodiscard]] static Loop band(const WallLayout& wall, double back, double front) {
        const auto end = [&](double n, bool right) {
            return Point2{right ? wall.length + wall.slant.right_slant * n : wall.slant.left_slant * n, -n};
        };
        return {end(front, false), end(front, true), end(back, true), end(back, false)};
    }

    std::size_t add_upright(const WallLayout& at, const std::string& id, const std::string& name, const std::string& material,
                            Layer layer, double low, double high, double back, double front, const Slant& slant) {
        return layout_.add_panel(id, name, material, layer,
                                 plain_prism(at.frame, rectangle({slant.left, low}, {slant.right, high}), back, front, slant));
    }

    /// What fills the wedge between something upright and the roof's lower side.
    void add_wedge(const WallLayout& at, const std::string& id, const std::string& name, const std::string& material, Layer layer,
                   const Loop& outline, double low, const Height& high) {
        Prism prism;
        prism.frame = plan_frame(at.frame);
        prism.outline = outline;
        prism.heights = {{low}, in_frame(high, prism.frame)};
        layout_.add_panel(id, name, material, layer, std::move(prism));
    }

    void add_blocking(std::size_t edge) {
        const WallLayout& at = wall(edge);
        const double front = at.outside(), low = at.plate_top;
        const double high = low + heel_ - described_.pitch * front - 0.002;
        EaveLayout& eave = layout_.eaves[edge];
        eave.blocked = true;
        eave.blocking = {.name = "blocking",
                         .frame = at.frame,
                         .back = -stud,
                         .front = front,
                         .extent = rectangle({0, low}, {at.length, high})};
        eave.blocking.panels.push_back(add_upright(at, at.id + "/blocking", "blocking over " + at.name, "wood", Layer::framing,
                                                   low, high, -stud, front, at.slant));
        add_wedge(at, at.id + "/blocking-top", "blocking over " + at.name, "wood", Layer::framing, band(at, -stud, front), high,
                  plane(edge));
    }

    /// The wall under a roof that passes over it at one height.
    void add_level_top(std::size_t edge) {
        WallLayout& at = wall(edge);
        const Height roof = in_frame(faces_.front().bottom, plan_frame(at.frame));
        const double high = std::min(roof.at({0, stud}), roof.at({0, -at.outside()})) - 0.002;
        raise(at, {{at.length, high}, {0, high}}, 0, 0);
        add_wedge(at, at.id + "/top", "top of " + at.name, "wood", Layer::framing, band(at, 0, at.outside()), high,
                  faces_.front().bottom);
    }

    /// The wall under the slope or the gable that ends over it.
    void add_rake(std::size_t edge) {
        WallLayout& at = wall(edge);
        const Frame plan = plan_frame(at.frame);
        const auto roof_over = [&](std::size_t beside) {
            return in_frame(described_.shape == RoofShape::shed ? faces_.front().bottom : plane(beside), plan);
        };
        const Height left = roof_over(before(edge)), right = roof_over(after(edge));
        Loop top{{at.length, right.at({at.length, 0})}};
        if (described_.shape != RoofShape::shed) {
            const double peak = (right.out - left.out) / (left.along - right.along);
            top.push_back({peak, left.at({peak, 0})});
        }
        top.push_back({0, left.at({0, 0})});
        raise(at, top, left.along, right.along);
    }

    /// Gives the wall's outer layers a new top, from right to left.
    void raise(WallLayout& at, const Loop& top, double left_slope, double right_slope) {
        for (const std::size_t panel : at.outer_panels) {
            Prism& prism = layout_.panels[panel].prisms.front();
            prism.outline = {{0, at.bottom}, {at.length, at.bottom}};
            prism.outline.insert(prism.outline.end(), top.begin(), top.end());
            prism.slant.left_lift = prism.slant.left_slant * left_slope;
            prism.slant.right_lift = prism.slant.right_slant * right_slope;
            prism.slant.lift_above = at.plate_top;
        }
        for (std::size_t i = 0; i + 1 < at.skins.size(); ++i) {
            at.skins[i].extent = {{0, at.bottom}, {at.length, at.bottom}};
            at.skins[i].extent.insert(at.skins[i].extent.end(), top.begin(), top.end());
        }
        for (const WallCavity& air : at.cavities) {
            if (air.closer) raise_air(air, top);
        }
    }

    /// The air behind the cladding goes on up with it.
    void raise_air(const WallCavity& air, const Loop& top) {
        Loop& inner = layout_.panels[*air.closer].prisms.front().cuts.front();
        const auto under_top = [&](double u) {
            double height = top.front().y;
            for (std::size_t i = 0; i + 1 < top.size(); ++i) {
                const Point2 right = top[i], left = top[i + 1];
                if (u <= right.x && u >= left.x) height = left.y + (right.y - left.y) * (u - left.x) / (right.x - left.x);
            }
            return Point2{u, height - closer};
        };
        const Point2 left = inner[0], right = inner[1];
        inner = {left, right, under_top(right.x)};
        for (const Point2 p : top) {
            if (p.x > left.x && p.x < right.x) inner.push_back(under_top(p.x));
        }
        inner.push_back(under_top(left.x));
        std::vector<CutFigure> pieces = remainder(inner, air.returns);
        if (pieces.size() == 1) layout_.house.middles[air.space.value].figure = std::move(pieces.front().figure);
    }

    [[nodiscard]] bool boxed(std::size_t edge) const {
        return edges_[edge] == RoofEdge::eave && described_.overhang > wall(edge).outside() + fascia + 0.05;
    }

    /// Slants of what runs along an eave: mitered against the next eave, square past a wall that ends the roof.
    [[nodiscard]] Slant eave_slant(std::size_t edge) const {
        Slant slant = wall(edge).slant;
        if (!boxed(before(edge))) {
            slant.left = -wall(before(edge)).outside();
            slant.left_slant = 0;
        }
        if (!boxed(after(edge))) {
            slant.right = wall(edge).length + wall(after(edge)).outside();
            slant.right_slant = 0;
        }
        return slant;
    }

    void add_eave_boxes() {
        std::vector<std::size_t> first;  // of each run of boxes
        for (std::size_t e = 0; e < edges_.size(); ++e) {
            if (boxed(e) && !boxed(before(e))) first.push_back(e);
        }
        const bool ring = first.empty() && boxed(0);
        if (ring) first.push_back(0);
        for (const std::size_t start : first) {
            std::vector<std::size_t> run{start};
            while (boxed(after(run.back())) && after(run.back()) != start) run.push_back(after(run.back()));
            NamedSpace named = described_.eave;
            if (first.size() > 1) {
                named.id += "-" + layout_.described.walls[start];
                const Message wall = as_named(spoken(layout_.described.walls[start]));
                named.spoken = named.name.empty() ? wall : message("{}, {}", {as_named(named.name), wall});
                named.name = named.spoken.english();
            }
            const SpaceIndex air = layout_.add_space(named, SpaceKind::cavity, described_.place);
            for (const std::size_t edge : run) add_box(edge, air);
            set_eave_middle(run, ring, air);
        }
    }

    void add_box(std::size_t edge, SpaceIndex air) {
        const WallLayout& at = wall(edge);
        EaveLayout& eave = layout_.eaves[edge];
        const double inner = at.outside(), outer = described_.overhang - fascia;
        const double deck_edge = at.plate_top + heel_ - described_.pitch * described_.overhang;
        const double low = deck_edge - fascia_height;
        const Slant slant = eave_slant(edge);
        eave.present = true;
        eave.air = air;
        eave.soffit_bottom = low;
        const auto end = [&](double n, bool right) {
            return Point2{right ? slant.right + slant.right_slant * n : slant.left + slant.left_slant * n, -n};
        };
        Prism soffit_board;
        soffit_board.frame = plan_frame(at.frame);
        soffit_board.outline = {end(outer, false), end(outer, true), end(inner, true), end(inner, false)};
        soffit_board.heights = {{low}, {low + soffit}};
        eave.soffit = {
            .name = "soffit", .frame = soffit_board.frame, .back = low, .front = low + soffit, .extent = soffit_board.outline};
        eave.soffit.panels.push_back(
            layout_.add_panel(at.id + "/soffit", "soffit along " + at.name, "wood", Layer::eaves, std::move(soffit_board)));

        const double board_top = deck_edge - 0.002;
        eave.fascia = {.name = "fascia",
                       .frame = at.frame,
                       .back = outer,
                       .front = described_.overhang,
                       .extent = rectangle({slant.left, low}, {slant.right, board_top})};
        eave.fascia.panels.push_back(add_upright(at, at.id + "/fascia", "fascia along " + at.name, "wood", Layer::eaves, low,
                                                 board_top, outer, described_.overhang, slant));
        const double rim = described_.overhang;
        add_wedge(at, at.id + "/fascia-top", "fascia along " + at.name, "wood", Layer::eaves,
                  {end(rim, false), end(rim, true), end(outer, true), end(outer, false)}, board_top, plane(edge));
        for (const bool right : {false, true}) {
            if (boxed(right ? after(edge) : before(edge))) continue;
            const double u = right ? slant.right : slant.left, in = right ? u - fascia : u + fascia;
            add_wedge(at, at.id + (right ? "/eave-end-right" : "/eave-end-left"), "end of the eave along " + at.name, "wood",
                      Layer::eaves, rectangle({std::min(u, in), -outer}, {std::max(u, in), -inner}), low + soffit, plane(edge));
        }
    }

    void set_eave_middle(const std::vector<std::size_t>& run, bool ring, SpaceIndex air) {
        const double z = wall(run.front()).frame.origin.z + layout_.eaves[run.front()].soffit_bottom + fascia_height / 2;
        const auto line = [&](bool outer) {
            Loop points;
            for (const std::size_t edge : run) {
                const WallLayout& at = wall(edge);
                const double n = outer ? described_.overhang - fascia - 0.02 : at.outside() + 0.02;
                Slant slant = eave_slant(edge);
                if (slant.left_slant == 0 && edge == run.front() && !ring) slant.left += 2 * fascia;
                if (slant.right_slant == 0 && edge == run.back() && !ring) slant.right -= 2 * fascia;
                const Point a = at.frame.at(slant.left + slant.left_slant * n, 0, n),
                            b = at.frame.at(slant.right + slant.right_slant * n, 0, n);
                if (points.empty() || edge == run.front()) points.push_back({a.x, a.y});
                if (!(ring && edge == run.back())) points.push_back({b.x, b.y});
            }
            return points;
        };
        Figure figure{line(true), {}};
        Loop inner = line(false);
        std::reverse(inner.begin(), inner.end());
        if (ring)
            figure.holes.push_back(inner);
        else
            figure.outline.insert(figure.outline.end(), inner.begin(), inner.end());
        layout_.set_middle(air, level_frame(z), std::move(figure));
    }

    void build_flat() {
        constexpr double attic_height = 0.3, core = 0.089, cap = 0.02;
        const double low = plate_top(), under = low + attic_height;
        for (std::size_t e = 0; e < edges_.size(); ++e) {
            WallLayout& at = wall(e);
            const double high = at.plate_top + attic_height + deck + described_.parapet;
            raise(at, {{at.length, high}, {0, high}}, 0, 0);
            // From the deck up: below it the air over the ceilings reaches over the plates.
            add_upright(at, at.id + "/parapet", "parapet of " + at.name, "wood", Layer::framing, at.plate_top + attic_height,
                        high, -core, 0, at.slant);
            Prism top;
            top.frame = plan_frame(at.frame);
            top.outline = band(at, -core - 0.01, at.outside() + 0.01);
            top.heights = {{high}, {high + cap}};
            layout_.add_panel(at.id + "/cap", "cap of the parapet of " + at.name, "metal", Layer::roof, std::move(top));
        }
        RoofFace face{offset_outline(outline_, std::vector<double>(edges_.size(), -core)), {under}, {}};
        Prism prism;
        prism.frame = level_frame(0);
        prism.outline = face.plan;
        prism.heights = {{under}, {under + deck}};
        face.skin = {.name = "roof", .frame = prism.frame, .extent = face.plan};
        face.skin.panels.push_back(layout_.add_panel("roof/plane-1", "roof", described_.material, Layer::roof, std::move(prism)));
        layout_.roof.push_back(std::move(face));
        set_attic_middle(attic_height / 2);
    }

    void set_attic_middle(double over_plates) {
        layout_.set_middle(layout_.attic, level_frame(plate_top() + over_plates),
                           {offset_outline(outline_, std::vector<double>(edges_.size(), -0.12)), {}});
    }

    Layout& layout_;
    const RoofDescription& described_;
    const Loop& outline_;
    std::vector<RoofEdge> edges_;
    std::vector<double> offsets_;
    Loop border_;
    std::vector<RoofFace> faces_;
    std::size_t first_wall_;
    double heel_;  ///< over thick cladding and under a steep roof higher than usual, so that the deck passes over the cladding
};

}  // namespace

void lay_out_roof(Layout& layout) {
    RoofBuilder(layout).build();
    check_under_eaves(layout);
}

}  // namespace seamward
