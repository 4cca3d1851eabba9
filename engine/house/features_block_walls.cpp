// SPDX-License-Identifier: GPL-3.0-or-later
// Features on garden walls of hollow blocks.
#include <algorithm>

#include "house/framing.h"
#include "house/place_features.h"
#include "house/runs.h"

namespace seamward {

namespace {

using At = FeatureGap::At;

class BlockWallFeature {
public:
    BlockWallFeature(Cutter& cutter, const FeatureDescription& feature, const std::vector<const BlockRun*>& runs)
        : cutter_(cutter), layout_(cutter.layout()), feature_(feature), runs_(runs) {}

    void place() {
        for (std::size_t number = 0; number < feature_.gaps.size(); ++number) {
            if (feature_.gaps[number].left_out) continue;
            front_ = layout_.outdoors;
            back_ = runs_.front()->cells;
            cutouts_.clear();
            total_ = 0;
            const FeatureGap& row = feature_.type->gaps[number];
            const GapSizes sizes = cutter_.sizes(feature_, number);
            if (row.at == At::end)
                at_house(sizes);
            else
                on_faces(row, sizes);
            enter(number, sizes);
        }
    }

private:
    /// Where a run takes openings: clear of its ends.
    struct Face {
        const BlockRun* run = nullptr;
        const Skin* skin = nullptr;
        double left = 0, right = 0;

        [[nodiscard]] double length() const { return right - left; }
    };

    void at_house(const GapSizes& sizes) {
        for (const BlockRun* run : runs_) {
            for (const bool last : {false, true}) {
                const std::optional<Skin>& skin = last ? run->end : run->start;
                if (!skin || (!feature_.side.empty() && feature_.side != (last ? "end" : "start"))) continue;
                const WallLayout& wall = layout_.walls[last ? run->end_wall : run->start_wall];
                const double u = (skin->extent[0].x + skin->extent[2].x) / 2;
                // Over the bottom plate of the house's wall, else the joint would end at wood.
                const double low = std::max(skin->extent[0].y + 0.05, framing::plate + 0.03), high = skin->extent[2].y - 0.05;
                if (high - low < least_joint)
                    cutter_.refuse(feature_, "the block wall is too low to meet the house over its bottom plate",
                                   "make the block wall higher");
                const double length = std::min(sizes.length > 0 ? sizes.length : high - low, high - low);
                const Point2 middle{u, low + length / 2};
                check_framing(cutter_, feature_, wall, 0, middle);
                cutouts_.push_back({&*skin, rectangle({u - sizes.width / 2, low}, {u + sizes.width / 2, low + length}), middle});
                front_ = run->cells;
                back_ = wall.cavities.front().at(middle);
                total_ += length;
            }
        }
        if (cutouts_.size() != 1)
            cutter_.refuse(
                feature_,
                cutouts_.empty() ? "the block wall does not meet the house" : "the block wall meets the house at both ends",
                "name the run in on, and side: start or side: end");
    }

    void on_faces(const FeatureGap& row, const GapSizes& sizes) {
        constexpr double clear = 0.3;
        const bool on_top = row.at == At::top;
        std::vector<Face> faces;
        for (const BlockRun* run : runs_)
            faces.push_back({run,
                             on_top                    ? &run->top
                             : feature_.side == "left" ? &run->left
                                                       : &run->right,
                             clear, run->length - clear});
        drop_short(faces, 0.1);
        if (row.shape == ShapeKind::slot)
            add_joints(faces, sizes);
        else
            add_pieces(faces, row, sizes);
        if (cutouts_.empty()) cutter_.refuse(feature_, "there is no room for it on the block wall", "make it smaller");
        // The left face looks away from n.
        if (!on_top && feature_.side == "left") std::swap(front_, back_);
    }

    void add_joints(const std::vector<Face>& faces, const GapSizes& sizes) {
        constexpr double course = 0.2;
        double still = sizes.length > 0 ? sizes.length : 1e9;
        for (const Face& face : faces) {
            for (double v = course; v < face.run->height - 0.1 && still >= least_joint; v += course) {
                const double length = std::min(still, face.length());
                cutouts_.push_back({face.skin,
                                    rectangle({face.left, v}, {face.left + length, v + sizes.width}),
                                    {face.left + length / 2, v + sizes.width / 2}});
                total_ += length;
                still -= length;
            }
        }
    }

    void add_pieces(const std::vector<Face>& faces, const FeatureGap& row, const GapSizes& sizes) {
        double length = 0;
        for (const Face& face : faces) length += face.length();
        const std::uint32_t count = feature_.count ? *feature_.count
                                    : row.count > 0 || sizes.spacing <= 0
                                        ? std::max<std::uint32_t>(1, row.count)
                                        : cutter_.as_many_as_fit(feature_, length, sizes.spacing);
        GapSizes one = sizes;
        one.count = 1;
        const std::vector<std::uint32_t> shares = shares_of(count, faces);
        for (std::size_t r = 0; r < faces.size(); ++r) {
            const Face& face = faces[r];
            for (std::uint32_t i = 0; i < shares[r]; ++i) {
                const Point2 at{face.left + face.length() * (i + 0.5) / shares[r],
                                row.at == At::top ? 0 : feature_.up.value_or(face.run->height / 2)};
                for (Cutout& cutout : cutter_.cutouts(row, one, *face.skin, at)) cutouts_.push_back(std::move(cutout));
            }
        }
    }

    void enter(std::size_t number, const GapSizes& sizes) {
        const FeatureGap& row = feature_.type->gaps[number];
        const GapIndex gap = cutter_.enter(feature_, number, front_, back_, Cutter::shape_of(row, sizes, total_), cutouts_);
        Gap& entry = layout_.house.survey.gaps[gap.value];
        if (row.shape != ShapeKind::slot) entry.count = static_cast<std::uint32_t>(cutouts_.size());
        if (front_ == layout_.outdoors || back_ != layout_.outdoors) return;
        std::swap(entry.between[0], entry.between[1]);
        std::reverse(layout_.house.places[gap.value].through.begin(), layout_.house.places[gap.value].through.end());
    }

    Cutter& cutter_;
    Layout& layout_;
    const FeatureDescription& feature_;
    const std::vector<const BlockRun*>& runs_;
    SpaceIndex front_, back_;
    std::vector<Cutout> cutouts_;
    double total_ = 0;  ///< length of all joints
};

}  // namespace

void place_on_block_wall(Cutter& cutter, const FeatureDescription& feature, const std::vector<const BlockRun*>& runs) {
    BlockWallFeature(cutter, feature, runs).place();
}

}  // namespace seamward
