// SPDX-License-Identifier: GPL-3.0-or-later
#include "catalog/passage.h"

#include <cmath>

namespace seamward {

namespace {

bool fits(double needed, double there) { return needed <= there + passage_tolerance; }

struct Passes {
    PassageSize pest;

    bool operator()(const Slot& slot) const { return fits(pest.slit, slot.width) && fits(pest.hole, slot.length); }
    bool operator()(const Ring& ring) const { return (*this)(Slot{ring.width, mid_circumference(ring)}); }
    bool operator()(const Hole& hole) const { return fits(pest.hole, hole.diameter); }
    bool operator()(const Mesh& mesh) const {
        return fits(std::sqrt((pest.slit * pest.slit + pest.hole * pest.hole) / 2), mesh.opening);
    }
};

}  // namespace

bool passes(const PassageSize& pest, const Shape& opening) { return !is_shut(opening) && std::visit(Passes{pest}, opening); }

bool lets_through(const Gap& gap, const PassageSize& pest, Sizing sizing) {
    if (sizing == Sizing::stated) return passes(pest, gap.shape) && (!gap.covered || passes(pest, gap.covered->shape));
    return passes(pest, widened(gap.shape, gap.evidence.plus_minus)) &&
           (!gap.covered || passes(pest, widened(gap.covered->shape, gap.covered->plus_minus)));
}

double counted_width(const Gap& gap, Sizing sizing) {
    const double stated = clear_width(gap.shape);
    if (sizing == Sizing::stated || gap.evidence.plus_minus == 0) return stated;
    // 6 mm and 3 mm are as wide as 9 mm: sums lose their last bits, far below anything measured.
    constexpr double picometers = 1e12;
    return std::round((stated + gap.evidence.plus_minus) * picometers) / picometers;
}

}  // namespace seamward
