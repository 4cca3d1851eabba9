// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <exception>
#include <string>
#include <unordered_map>
#include <vector>

#include "house/fit.h"

namespace seamward {

/// The sizes of one gap of a feature: what the house file says, else what the table says.
struct GapSizes {
    double width = 0, around = 0, length = 0;
    std::array<double, 2> size{};
    std::uint32_t count = 1;
    double spacing = 0;
};

/// One opening in the making: where it is cut, and a point in the middle of its clear width.
struct Cutout {
    const Skin* skin = nullptr;
    Loop loop;  ///< bounds the gap
    Point2 through;
    Loop filled = {};  ///< cut too, and filled tightly by what stands in the opening
};

/// Thrown when a feature was reported and nothing more of it can be placed; lay_out_features() goes on with the next.
class Misplaced : public std::exception {};

inline constexpr double least_spacing = 0.005;      ///< meters; nothing that a house has stands closer, and rows end
inline constexpr std::uint32_t most_alike = 10000;  ///< of one gap, as the house file allows
inline constexpr double least_joint = 0.02;         ///< a joint shorter than this is not drawn, meters

/// Adds to the name of a gap in which of several bays it lies.
void name_bay(Gap& gap, const std::string& bay);

/// Makes gaps: their entries in the survey, the cuts in the panels and what stands in them.
class Cutter {
public:
    explicit Cutter(Layout& layout) : layout_(layout) {}

    [[nodiscard]] GapSizes sizes(const FeatureDescription& feature, std::size_t gap) const;
    /// The id of a gap: of the feature when it makes only this one, else of the feature and the row.
    [[nodiscard]] std::string gap_id(const FeatureDescription& feature, std::size_t gap) const;

    /// Enters a gap. `front` and `back` are the spaces at the two sides of the skins of `cutouts` (n points to the front);
    /// `length` is that of all slots together. Cuts each cutout, once per panel of its skin; `way` replaces the straight way
    /// through. What does not lie within its skin is reported.
    GapIndex enter(const FeatureDescription& feature, std::size_t gap, SpaceIndex front, SpaceIndex back, const Shape& shape,
                   const std::vector<Cutout>& cutouts, std::vector<Point> way = {});
    /// Only the entry, for what is cut otherwise.
    GapIndex enter_uncut(const FeatureDescription& feature, std::size_t gap, SpaceIndex front, SpaceIndex back,
                         const Shape& shape, std::vector<Point> way, double depth, std::vector<std::string> substrates);

    /// Cuts loops out of all panels of a skin; reports what they run into.
    void cut(const FeatureDescription& feature, const Skin& skin, const Loop& loop, GapIndex gap, const Loop& filled = {});
    /// Something that stands in an opening of a skin, reaching `behind` and `before` it.
    void stand(const FeatureDescription& feature, const std::string& what, const std::string& material, const Skin& skin,
               const Loop& outline, double behind, double before, GapIndex gap);
    /// Bars of a screen with square openings across a rectangle of a skin.
    void screen(const FeatureDescription& feature, const std::string& what, const Skin& skin, Point2 least, Point2 most,
                double opening, GapIndex gap);
    /// The middle of an opening of a screen, nearest to the middle of the rectangle.
    [[nodiscard]] static Point2 screen_opening(Point2 least, Point2 most, double opening);

    /// Openings of the row's shape about a point, as many as `count` in a row along u; boxes and screens are put into them by
    /// fill().
    [[nodiscard]] std::vector<Cutout> cutouts(const FeatureGap& row, const GapSizes& sizes, const Skin& skin, Point2 at) const;
    void fill(const FeatureDescription& feature, std::size_t gap, const GapSizes& sizes, const std::vector<Cutout>& cutouts,
              Point2 at, double behind, double before, GapIndex index);
    [[nodiscard]] static Shape shape_of(const FeatureGap& row, const GapSizes& sizes, double slot_length);
    /// How wide one piece is along u.
    [[nodiscard]] static double width_of(const FeatureGap& row, const GapSizes& sizes);
    /// Where the pieces of a row of `count` stand along u, about a point.
    [[nodiscard]] static std::vector<Point2> places(const FeatureGap& row, const GapSizes& sizes, Point2 at);

    /// What people call a gap: the house file's words, else the table's and where it is.
    [[nodiscard]] Message gap_name(const FeatureDescription& feature, std::size_t gap) const;
    /// "kitchen ceiling", "north wall", "front door".
    [[nodiscard]] Message place_name(const FeatureDescription& feature) const;

    /// Reports a feature and leaves off placing it: one fault each.
    [[noreturn]] void refuse(const FeatureDescription& feature, const std::string& what, const std::string& mend = "") {
        layout_.faults.add(feature.place, "feature " + feature.id + ": " + what, mend);
        throw Misplaced();
    }
    [[noreturn]] void refuse(const FeatureDescription& feature, const Misfit& misfit) {
        refuse(feature, misfit.what, misfit.mend);
    }
    /// So many alike at a spacing between two ends, which must be no more than a feature may have.
    [[nodiscard]] std::uint32_t as_many_as_fit(const FeatureDescription& feature, double length, double spacing);
    [[nodiscard]] Layout& layout() { return layout_; }

private:
    void require_fit(const FeatureDescription& feature, const std::vector<Cutout>& cutouts);

    Layout& layout_;
    std::size_t inserts_ = 0;
    std::unordered_map<std::string, std::size_t> gap_ids_;  ///< where each stands first
    std::unordered_map<std::size_t, CutIndex> cuts_;        ///< by panel
};

constexpr int pipe_sides = 24;  ///< of polygons that stand for circles; opposite sides are parallel, so clear widths are exact

}  // namespace seamward
