// SPDX-License-Identifier: GPL-3.0-or-later
#include "materials/joints.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "catalog/shipped.h"

namespace seamward {

namespace {

/// Sizes that differ by less count as equal, far below anything cut or measured: 0.75 in worked out as a sum is no more than 3/4
/// in.
constexpr double tolerance = 1e-9;

const JointRules& rules() {
    static const JointRules read = joint_rules(shipped_joints());
    return read;
}

}  // namespace

double joint_width(double movement, double coefficient, double spacing, double degrees, double other, double tolerance_of_build) {
    return (coefficient * spacing * degrees + other) / movement + tolerance_of_build;
}

double joint_spacing(double movement, double width, double strain) { return movement * width / strain; }

double stock_width(double width) { return std::ceil((width - tolerance) / rules().stock_step) * rules().stock_step; }

double joint_movement(const std::vector<std::string>& substrates, double spacing) {
    // Words of surveys, and the rows of the table that stand for them.
    constexpr std::array<std::pair<std::string_view, std::string_view>, 9> rows{{{"brick", "brick"},
                                                                                 {"block", "concrete"},
                                                                                 {"concrete", "concrete"},
                                                                                 {"stucco", "cement-mortar"},
                                                                                 {"metal", "aluminum"},
                                                                                 {"copper", "copper"},
                                                                                 {"pvc", "vinyl"},
                                                                                 {"vinyl", "vinyl"},
                                                                                 {"wood", "douglas-fir-parallel"}}};
    double most = 0;
    for (const std::string& substrate : substrates) {
        const auto row = std::find_if(rows.begin(), rows.end(), [&](const auto& one) { return one.first == substrate; });
        if (row != rows.end()) most = std::max(most, shipped_joints().find(row->second)->value);
    }
    return joint_width(1, most, spacing, rules().range, 0, 0);
}

double joint_depth(double width) { return std::clamp(rules().depth_share * width, rules().depth_least, rules().depth_most); }

double bead_width(double width) { return std::max(width, rules().width_least); }

bool caulk_only(double width) { return width < rules().caulk_below - tolerance; }

const JointFigure* backer_rod(double width) {
    const bool small = width <= rules().rod_small_to + tolerance;
    const double least = small ? width + rules().rod_larger_small : width * (1 + rules().rod_larger);
    for (const JointFigure& figure : shipped_joints().rows) {
        if (figure.kind == JointFigure::Kind::rod && figure.value >= least - tolerance) return &figure;
    }
    return nullptr;
}

}  // namespace seamward
