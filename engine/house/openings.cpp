// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cstdio>

#include "house/layout.h"
#include "house/shell.h"

namespace seamward {

namespace {

constexpr double sill_height = 0.06, sill_skin = 0.005;  ///< of a hollow sill, and of the sheet that it is made of
constexpr double sash = 0.06, glass = 0.006;             ///< width of the border round a pane, and the pane's thickness

struct LeafSizes {
    double front = 0, back = 0;  ///< along n
    const char* material = "wood";
    bool glazed = false;
};

LeafSizes sizes_of(const OpeningDescription& opening, const WallLayout& wall) {
    const bool window = opening.kind == OpeningKind::window, slider = opening.kind == OpeningKind::sliding_door;
    const double thickness = window ? 0.06 : slider ? 0.08 : 0.045;
    const double front = wall.exterior ? -0.005 : thickness / 2;
    return {front, front - thickness,
            window                                               ? "vinyl"
            : slider || opening.kind == OpeningKind::garage_door ? "metal"
                                                                 : "wood",
            window || slider};
}

class OpeningBuilder {
public:
    OpeningBuilder(Layout& layout, const OpeningDescription& opening, const WallLayout& wall)
        : layout_(layout), opening_(opening), wall_(wall), sizes_(sizes_of(opening, wall)) {
        name_ = opening.name.empty() ? opening.id : opening.name;
    }

    void build() {
        const Point2 least{opening_.along - opening_.width / 2, opening_.sill};
        const Point2 most{opening_.along + opening_.width / 2, opening_.sill + opening_.height};
        const SpaceIndex front = wall_.exterior ? layout_.outdoors : room_beside(wall_.outside() + 0.1);
        const SpaceIndex back = room_beside(wall_.inside() - 0.1);
        if (!front.valid() || !back.valid()) {
            layout_.faults.add(opening_.place, opening_.id + " does not have a room at its middle on each side", "move it");
            return;
        }
        if (opening_.kind == OpeningKind::archway) {
            add_archway(least, most, front, back);
            return;
        }
        Point2 low = least;
        if (!opening_.frame.id.empty()) low.y = add_hollow_sill(least, most, front, back);
        Prism leaf = upright(rectangle(low, most), sizes_.back, sizes_.front);
        if (sizes_.glazed) {
            const double middle = (sizes_.back + sizes_.front) / 2;
            const Loop pane = rectangle(low + Point2{sash, sash}, most - Point2{sash, sash});
            leaf.cuts.push_back(pane);
            leaf.gap_of_cut.emplace_back();
            layout_.add_panel(opening_.id + "/glass", "glass of " + name_, "glass", Layer::opening,
                              upright(pane, middle - glass / 2, middle + glass / 2));
        }
        LeafLayout out;
        out.front = front;
        out.back = back;
        out.width = most.x - low.x;
        out.height = most.y - low.y;
        out.skin = {
            .name = name_, .frame = wall_.frame, .back = sizes_.back, .front = sizes_.front, .extent = rectangle(low, most)};
        out.skin.panels.push_back(
            layout_.add_panel(opening_.id + "/leaf", name_, sizes_.material, Layer::opening, std::move(leaf)));
        layout_.leaves.emplace(opening_.id, std::move(out));
    }

private:
    [[nodiscard]] SpaceIndex room_beside(double n) const {
        const Point at = wall_.frame.at(opening_.along, 0, n);
        return layout_.room_space(wall_.story, {at.x, at.y});
    }

    /// An opening without a leaf is a gap by itself, as wide as its smaller side.
    void add_archway(Point2 least, Point2 most, SpaceIndex front, SpaceIndex back) {
        constexpr double past = 0.05;  // into the rooms
        if (front == back) {
            layout_.faults.add(opening_.place, opening_.id + " has the same room on both sides", "move it");
            return;
        }
        const GapIndex index{static_cast<std::uint32_t>(layout_.house.survey.gaps.size())};
        const Point2 middle = (least + most) * 0.5;
        const auto at = [&](double n) { return wall_.frame.at(middle.x, middle.y, n); };
        Gap gap;
        gap.id = opening_.id;
        gap.name = name_;
        gap.between = {front, back};
        gap.shape = Slot{std::min(opening_.width, opening_.height), std::max(opening_.width, opening_.height)};
        gap.at = at((wall_.outside() + wall_.inside()) / 2);
        gap.depth = wall_.outside() - wall_.inside();
        gap.evidence.how = Evidence::How::modeled;
        gap.closing.never = "it is a way from room to room";
        layout_.house.places.push_back({index, {at(wall_.outside() + past), *gap.at, at(wall_.inside() - past)}});
        layout_.house.survey.gaps.push_back(std::move(gap));
        layout_.gap_places.push_back(opening_.place);
        const Loop hole = rectangle(least, most);
        for (Panel& panel : layout_.panels) {
            for (Prism& prism : panel.prisms) bound(prism, hole, index);
        }
    }

    /// The sides of an opening that a wall's layers have already bound the gap.
    void bound(Prism& prism, const Loop& hole, GapIndex gap) const {
        const Frame &own = prism.frame, &walls = wall_.frame;
        const bool same = own.origin.x == walls.origin.x && own.origin.y == walls.origin.y && own.origin.z == walls.origin.z &&
                          own.u.x == walls.u.x && own.u.y == walls.u.y && own.v.z == walls.v.z;
        if (!same) return;
        for (std::size_t i = 0; i < prism.cuts.size(); ++i) {
            if (prism.cuts[i] == hole) prism.gap_of_cut[i] = gap;
        }
    }

    [[nodiscard]] Prism upright(const Loop& outline, double back, double front) const {
        return plain_prism(wall_.frame, outline, back, front);
    }

    /// The sill's three sheets; its air is a space of its own. Answers the height of its upper side.
    double add_hollow_sill(Point2 least, Point2 most, SpaceIndex front, SpaceIndex back) {
        const SpaceIndex air = layout_.add_space(opening_.frame, SpaceKind::cavity, opening_.place);
        const double top = least.y + sill_height;
        const Loop face = rectangle(least, {most.x, top - sill_skin});
        const auto add_face = [&](const char* end, double n0, double n1, SpaceIndex before, SpaceIndex behind) {
            LeafLayout leaf;
            leaf.front = before;
            leaf.back = behind;
            leaf.width = most.x - least.x;
            leaf.height = sill_height - sill_skin;
            leaf.skin = {.name = name_ + " sill", .frame = wall_.frame, .back = n0, .front = n1, .extent = face};
            leaf.skin.panels.push_back(layout_.add_panel(opening_.id + "/sill-" + end, "sill of " + name_, sizes_.material,
                                                         Layer::opening, upright(face, n0, n1)));
            layout_.leaves.emplace(opening_.id + "/" + end, std::move(leaf));
        };
        add_face("outer", sizes_.front - sill_skin, sizes_.front, front, air);
        add_face("inner", sizes_.back, sizes_.back + sill_skin, air, back);
        layout_.add_panel(opening_.id + "/sill-top", "sill of " + name_, sizes_.material, Layer::opening,
                          upright(rectangle({least.x, top - sill_skin}, {most.x, top}), sizes_.back, sizes_.front));
        Frame middle = wall_.frame;
        middle.origin = middle.at(0, 0, (sizes_.back + sizes_.front) / 2);
        layout_.set_middle(air, middle, {rectangle(least, {most.x, top - sill_skin}), {}});
        return top;
    }

    Layout& layout_;
    const OpeningDescription& opening_;
    const WallLayout& wall_;
    LeafSizes sizes_;
    std::string name_;
};

/// A low door in the foundation, flush with its face.
void lay_out_crawl_door(Layout& layout, const OpeningDescription& opening) {
    constexpr double boards = 0.019, behind_face = 0.005;
    const std::vector<std::string>& walls = layout.described.walls;
    const auto edge = static_cast<std::size_t>(std::find(walls.begin(), walls.end(), opening.in) - walls.begin());
    if (edge >= layout.foundation_walls.size()) {
        layout.faults.add(opening.place, opening.id + " leads into no crawl space",
                          edge < walls.size() ? "write foundation: {kind: crawl-space}, or make it a door"
                                              : "a crawl door is in the foundation under an outside wall: name that wall");
        return;
    }
    const WallLayout& wall = layout.foundation_walls[edge];
    const Skin& masonry = wall.skins.front();
    const double low = layout.ground + opening.sill, front = masonry.front - behind_face;
    const Loop hole =
        rectangle({opening.along - opening.width / 2, low}, {opening.along + opening.width / 2, low + opening.height});
    const double left = wall.slant.left_reach(masonry.back, masonry.front),
                 right = wall.slant.right_reach(masonry.back, masonry.front);
    if (hole[0].x < left + 0.1 || hole[2].x > right - 0.1 || hole[2].y > masonry.extent[2].y - 0.02) {
        char text[160];
        std::snprintf(text, sizeof text, "%s does not fit into the foundation, which is %.2f m high there", opening.id.c_str(),
                      masonry.extent[2].y - layout.ground);
        layout.faults.add(opening.place, text, "make it lower, or move it");
        return;
    }
    for (const std::size_t panel : masonry.panels) {
        layout.panels[panel].prisms.front().cuts.push_back(hole);
        layout.panels[panel].prisms.front().gap_of_cut.emplace_back();
    }
    const std::string name = opening.name.empty() ? opening.id : opening.name;
    LeafLayout leaf{
        .front = layout.outdoors, .back = wall.cavities.front().space, .width = opening.width, .height = opening.height};
    leaf.skin = {.name = name, .frame = wall.frame, .back = front - boards, .front = front, .extent = hole};
    leaf.skin.panels.push_back(layout.add_panel(opening.id + "/leaf", name, "wood", Layer::opening,
                                                plain_prism(wall.frame, hole, front - boards, front)));
    layout.leaves.emplace(opening.id, std::move(leaf));
}

}  // namespace

namespace {

/// An opening in a partition that does not stand in its story.
void report_lost(Layout& layout, const OpeningDescription& opening) {
    std::string stories;
    for (const WallLayout& wall : layout.walls) {
        if (wall.described == opening.in) stories += (stories.empty() ? "" : ", ") + std::to_string(wall.story + 1);
    }
    layout.faults.add(opening.place,
                      opening.id + ": " + opening.in + " does not stand in story " + std::to_string(opening.story + 1),
                      "it stands in story " + stories + ": write that, or name another wall");
}

}  // namespace

void lay_out_crawl_doors(Layout& layout) {
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.kind == OpeningKind::crawl_door) lay_out_crawl_door(layout, opening);
    }
}

void check_under_eaves(Layout& layout) {
    const std::size_t story = layout.stories.size() - 1, first = story * layout.edges();
    const std::string mend = "make overhang smaller or pitch flatter";
    for (std::size_t edge = 0; edge < layout.eaves.size(); ++edge) {
        const EaveLayout& eave = layout.eaves[edge];
        const WallLayout& wall = layout.walls[first + edge];
        if (!eave.present) continue;
        if (eave.soffit_bottom < 0) {  // all eaves hang equally low: told once
            layout.faults.add(layout.described.roof.place,
                              "the eave along " + wall.name + " hangs " + in_meters(-eave.soffit_bottom) +
                                  " below the floor of the story under the roof",
                              mend);
            return;
        }
        for (const OpeningDescription& opening : layout.described.openings) {
            const double head = opening.sill + opening.height;
            if (opening.in != wall.described || opening.story != story || opening.kind == OpeningKind::crawl_door) continue;
            if (head > eave.soffit_bottom)
                layout.faults.add(opening.place,
                                  "the eave along " + wall.name + " hangs down to " + in_meters(eave.soffit_bottom) +
                                      " over the floor, before " + opening.id + ", which reaches up to " + in_meters(head),
                                  mend + ", or the opening lower");
        }
    }
}

void lay_out_openings(Layout& layout) {
    for (const OpeningDescription& opening : layout.described.openings) {
        if (opening.kind == OpeningKind::crawl_door) continue;
        const WallLayout* found = nullptr;
        for (const WallLayout& wall : layout.walls) {
            if (wall.described == opening.in && wall.story == opening.story) found = &wall;
        }
        if (found != nullptr)
            OpeningBuilder(layout, opening, *found).build();
        else
            report_lost(layout, opening);
    }
}

}  // namespace seamward
