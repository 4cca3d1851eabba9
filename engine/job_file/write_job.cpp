// SPDX-License-Identifier: GPL-3.0-or-later
#include "job_file/write_job.h"

#include <array>
#include <cmath>

#include "job_file/edit_tree.h"

namespace seamward {

namespace {

std::string millimeters(double meters) { return decimal(std::llround(meters * 1e9), 6) + " mm"; }
std::string meters(double value) { return decimal(std::llround(value * 1e9), 9) + " m"; }
std::string square_centimeters(double square_meters) { return decimal(std::llround(square_meters * 1e10), 6) + " cm2"; }

/// A text as YAML reads it back.
std::string scalar(const std::string& text) { return in_one_line(EditTree::line(text), Syntax::yaml); }

constexpr std::array<const char*, 10> duties{"none",           "drain", "weep",   "vent",     "exhaust",
                                             "combustion-air", "flood", "relief", "movement", "operable"};

std::string shape_text(const Shape& shape) {
    std::string text = shape_word(shape) + std::string(": {");
    if (const auto* slot = std::get_if<Slot>(&shape))
        text += "width: " + millimeters(slot->width) + ", length: " + meters(slot->length);
    if (const auto* hole = std::get_if<Hole>(&shape)) text += "diameter: " + millimeters(hole->diameter);
    if (const auto* ring = std::get_if<Ring>(&shape))
        text += "width: " + millimeters(ring->width) + ", around: " + millimeters(ring->around);
    if (const auto* mesh = std::get_if<Mesh>(&shape)) {
        text += "opening: " + millimeters(mesh->opening);
        if (mesh->area) text += ", area: " + square_centimeters(*mesh->area);
    }
    return text + '}';
}

std::string evidence_text(const Evidence& evidence) {
    constexpr std::array<const char*, 4> how{"", "how: measured", "how: modeled", "how: assumed"};
    std::string text = how.at(static_cast<std::size_t>(evidence.how));
    if (evidence.plus_minus > 0) text += (text.empty() ? "" : ", ") + ("plus_minus: " + millimeters(evidence.plus_minus));
    return text.empty() ? "" : "evidence: {" + text + '}';
}

std::string model_text(const ModelReference& model) {
    constexpr std::array<const char*, 5> units{"m", "cm", "mm", "in", "ft"};
    constexpr std::array<const char*, 3> axes{"x", "y", "z"};
    std::string text = "model: {file: " + scalar(model.file);
    if (model.unit) text += std::string(", unit: ") + units.at(static_cast<std::size_t>(*model.unit));
    // YAML 1.1 takes a bare y for a truth; this program does not, others may.
    if (model.up) text += std::string(", up: \"") + axes.at(static_cast<std::size_t>(*model.up)) + '"';
    return text + '}';
}

std::string space_text(const Space& space) {
    constexpr std::array<const char*, 5> kinds{"outdoors", "cavity", "attached", "living", "harborage"};
    std::string text = "  - {id: " + scalar(space.id) + ", kind: " + kinds.at(static_cast<std::size_t>(space.kind));
    if (space.source) text += ", source: true";
    if (!space.name.empty()) text += ", name: " + scalar(space.name);
    return text + "}\n";
}

std::string point_text(const Point& at) { return '[' + meters(at.x) + ", " + meters(at.y) + ", " + meters(at.z) + ']'; }

std::string gap_text(const Survey& survey, const Gap& gap, const std::vector<Point>& through) {
    const bool in_one_line = is_shut(gap.shape);
    std::string text = std::string(in_one_line ? "  - {id: " : "  - id: ") + scalar(gap.id) + (in_one_line ? "" : "\n");
    const auto add = [&](const std::string& key) { text += in_one_line ? ", " + key : "    " + key + '\n'; };
    if (!gap.name.empty()) add("name: " + scalar(gap.name));
    add("between: [" + scalar(survey[gap.between[0]].id) + ", " + scalar(survey[gap.between[1]].id) + ']');
    add(shape_text(gap.shape));
    if (gap.count > 1) add("count: " + std::to_string(gap.count));
    if (gap.duty != Duty::none) add(std::string("duty: ") + duties.at(static_cast<std::size_t>(gap.duty)));
    if (gap.at) add("at: " + point_text(*gap.at));
    if (gap.depth) add("depth: " + millimeters(*gap.depth));
    const std::string evidence = evidence_text(gap.evidence);
    if (!evidence.empty()) add(evidence);
    if (!through.empty()) {
        std::string points;
        for (const Point& at : through) points += (points.empty() ? "" : ", ") + point_text(at);
        add("through: [" + points + ']');
    }
    return text + (in_one_line ? "}\n" : "");
}

}  // namespace

std::string job_text(const Job& job, const std::vector<std::string>& head) {
    std::string text;
    for (const std::string& line : head) text += "# " + line + '\n';
    text += "seamward: 1\n";
    if (!job.name.empty()) text += "job: {name: " + scalar(job.name) + "}\n";
    if (job.model) text += model_text(*job.model) + '\n';
    text += job.survey.spaces.empty() ? "spaces: []\n" : "spaces:\n";
    for (const Space& space : job.survey.spaces) text += space_text(space);
    text += job.survey.gaps.empty() ? "gaps: []\n" : "gaps:\n";
    const std::vector<GapPlace>& places = job.house.places;
    for (std::size_t i = 0; i < job.survey.gaps.size(); ++i)
        text += gap_text(job.survey, job.survey.gaps[i], i < places.size() ? places[i].through : std::vector<Point>());
    return text;
}

}  // namespace seamward
