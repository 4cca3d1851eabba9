// SPDX-License-Identifier: GPL-3.0-or-later
#include <algorithm>
#include <cmath>
#include <set>

#include "base/measure_text.h"
#include "base/phrases.h"
#include "base/text.h"
#include "job_file/found_survey.h"
#include "tool/find_command.h"
#include "tool/gap_size.h"
#include "tool/trace_command.h"

namespace seamward {

namespace {

// What a screen holds; --json has all of it.
constexpr std::size_t most_spaces = 60;
constexpr std::size_t most_gaps = 100;
constexpr std::size_t most_joints = 10;
constexpr std::size_t most_pockets = 10;
constexpr std::size_t most_parts = 20;

constexpr std::array<const char*, 5> kind_words{"outdoors", "cavity", "attached", "living", "harborage"};

/// `1102 ft3 (31.20 m3)`
std::string volume_text(double cubic_meters) {
    constexpr double per_cubic_foot = 0.028316846592;
    const long long liters = std::llround(cubic_meters * 1e3);
    if (liters < 1000) return std::to_string(liters) + " liters";
    const std::string rest = std::to_string(liters % 1000 / 10);
    return std::to_string(std::llround(cubic_meters / per_cubic_foot)) + " ft3 (" + std::to_string(liters / 1000) + '.' +
           (rest.size() < 2 ? "0" : "") + rest + " m3)";
}

std::string part_text(const FoundPart& part) {
    const std::string name = one_line(part.name);
    std::string text = name.empty() ? part.id : name;
    if (part.shares_name) text += " [" + part.id + ']';
    if (!part.ifc_class.empty()) text += " (" + printable(part.ifc_class) + ')';
    return text;
}

/// What is wrong with a part, as far as it may matter to what was found.
std::string faults_of(const FoundPart& part, const Found& found) {
    const PartFaults& faults = part.faults;
    std::vector<std::string> words;
    if (part.same_as) words.push_back("the same as " + found.parts[*part.same_as].id + ", left out");
    if (!faults.closed)
        words.push_back(faults.open_edges > 0 ? "not closed, " + tape_text(faults.open_edges) + " of open edges" : "not closed");
    if (faults.crowded_edges > 0) words.push_back(counted(faults.crowded_edges, "edge", "edges") + " of more than two triangles");
    if (faults.doubled > 0) words.push_back(counted(faults.doubled, "triangle", "triangles") + " twice, left out");
    if (faults.flipped > 0) words.push_back(counted(faults.flipped, "triangle", "triangles") + " turned");
    if (faults.inside_out) words.emplace_back("inside out, turned");
    return joined(words, "; ");
}

class FindTable {
public:
    FindTable(const FindOutcome& finding, const Console& console) : finding_(finding), found_(finding.found), console_(console) {}

    void print() const {
        console_.out << console_.bold(finding_.job.name) << '\n';
        print_paragraph("",
                        counted(found_.parts.size(), "part", "parts") + ", " + counted(found_.spaces.size(), "space", "spaces") +
                            ", " + counted(found_.gaps.size(), "gap", "gaps") + ", " +
                            counted(found_.joints.size(), "joint", "joints") + ". The model is " + size_text(found_.size) +
                            ". What is narrower than " + millimeters_text(finding_.settings.smallest) +
                            " counts as shut, what is wider than " + width_text(finding_.settings.widest) + " as open air.",
                        console_);
        print_notes();
        print_spaces();
        print_gaps();
        print_joints();
        print_pockets();
        print_parts();
        console_.out << '\n' << console_.bold("Ways in, as wide as their smallest gap") << '\n';
        print_ways_in(finding_.job, {}, finding_.trace, console_, false);
    }

private:
    void print_notes() const {
        if (!finding_.notes.empty() || !finding_.lost.empty()) console_.out << '\n';
        for (const std::string& note : finding_.notes) print_paragraph("Note: ", printable(note), console_);
        for (const LostProducts& lost : finding_.lost)
            print_paragraph("Lost: ",
                            printable(lost.ifc_class) + ": " + std::to_string(lost.read) + " of " + std::to_string(lost.in_file) +
                                " came through",
                            console_);
    }

    void print_more(std::size_t all, std::size_t most, const std::string& what) const {
        if (all > most)
            print_paragraph("  ", "and " + std::to_string(all - most) + " more " + what + "; --json has them all", console_);
    }

    void print_spaces() const {
        console_.out << '\n' << console_.bold("Spaces") << '\n';
        std::size_t width = 0;
        const std::size_t shown = std::min(found_.spaces.size(), most_spaces);
        for (std::size_t i = 0; i < shown; ++i) width = std::max(width, letters(found_.spaces[i].id));
        for (std::size_t i = 0; i < shown; ++i) {
            const FoundSpace& space = found_.spaces[i];
            std::string text = kind_words.at(static_cast<std::size_t>(space.kind));
            const std::string& name = finding_.job.survey.spaces[i].name;
            if (!name.empty()) text += ", " + name;
            if (space.volume) text += ", " + volume_text(*space.volume) + ", " + place_text(space.at);
            print_paragraph("  " + padded(space.id, width) + "  ", text, console_);
        }
        print_more(found_.spaces.size(), shown, "spaces");
    }

    void print_gaps() const {
        console_.out << '\n' << console_.bold("Gaps, the widest first") << '\n';
        if (found_.gaps.empty()) console_.out << "  none\n";
        const std::size_t shown = std::min(found_.gaps.size(), most_gaps);
        for (std::size_t i = 0; i < shown; ++i) {
            const FoundGap& gap = found_.gaps[i];
            const std::string ends = found_.spaces[gap.between[0]].id + " | " + found_.spaces[gap.between[1]].id;
            console_.out << console_.bold("  " + padded(gap.id, 8) + "  " + padded(inches_text(gap.width), 10) + "  " +
                                          padded(millimeters_text(gap.width), 9) + "  " + ends)
                         << '\n';
            paragraph("size", size_of(gap, finding_.job.survey.gaps[i]));
            const FoundPart &one = found_.parts[gap.parts[0]], &other = found_.parts[gap.parts[1]];
            paragraph("parts", &one == &other ? part_text(one) : part_text(one) + " | " + part_text(other));
            paragraph("place", place_text(gap.at));
        }
        print_more(found_.gaps.size(), shown, "gaps");
    }

    void print_joints() const {
        if (found_.joints.empty()) return;
        std::set<std::pair<std::size_t, std::size_t>> ends;
        double length = 0;
        for (const FoundJoint& joint : found_.joints) {
            ends.emplace(joint.between[0], joint.between[1]);
            length += joint.length;
        }
        console_.out << '\n' << console_.bold("Joints where parts touch, the longest first") << '\n';
        print_paragraph("  ",
                        counted(found_.joints.size(), "joint", "joints") + " between " +
                            counted(ends.size(), "pair of spaces", "pairs of spaces") + ", " + tape_text(length) +
                            " in all. They are shut as drawn and can be open as built: look there, and measure.",
                        console_);
        const std::size_t shown = std::min(found_.joints.size(), most_joints);
        for (std::size_t i = 0; i < shown; ++i) {
            const FoundJoint& joint = found_.joints[i];
            const std::string between = found_.spaces[joint.between[0]].id + " | " + found_.spaces[joint.between[1]].id;
            console_.out << console_.bold("  " + padded(joint.id, 9) + " " + padded(tape_text(joint.length), 20) + "  " + between)
                         << '\n';
            paragraph("parts", part_text(found_.parts[joint.parts[0]]) + " | " + part_text(found_.parts[joint.parts[1]]));
            paragraph("place", place_text(joint.at));
        }
        print_more(found_.joints.size(), shown, "joints");
    }

    void print_pockets() const {
        if (found_.pockets.empty()) return;
        console_.out << '\n' << console_.bold("Pockets: narrow air that leads nowhere, the largest first") << '\n';
        const std::size_t shown = std::min(found_.pockets.size(), most_pockets);
        for (std::size_t i = 0; i < shown; ++i) {
            const FoundPocket& pocket = found_.pockets[i];
            std::string text = width_text(pocket.width) + " wide, ";
            if (pocket.space) text += tape_text(pocket.depth) + " deep, ";
            if (pocket.volume >= 1e-3) text += volume_text(pocket.volume) + ", ";
            text += pocket.space ? "opens to " + found_.spaces[*pocket.space].id : "shut in on all sides";
            print_paragraph("  " + padded(pocket.id, 10) + " ", text + ", " + place_text(pocket.at), console_);
        }
        print_more(found_.pockets.size(), shown, "pockets");
    }

    static std::string size_of(const FoundGap& found, const Gap& gap) {
        // A hole and a mesh name themselves.
        const bool named = std::holds_alternative<Hole>(gap.shape) || std::holds_alternative<Mesh>(gap.shape);
        std::string text = (named ? "" : shape_word(gap.shape) + std::string(", ")) + joined(gap_size(gap), ", ");
        if (found.depth > 0) text += ", " + tape_text(found.depth) + " deep";
        if (found.openings > 1)
            text += ", " + std::to_string(found.openings) +
                    (std::holds_alternative<Mesh>(gap.shape) ? " openings" : " of them side by side");
        return text;
    }

    void print_parts() const {
        std::vector<std::pair<const FoundPart*, std::string>> faulty;
        for (const FoundPart& part : found_.parts) {
            std::string faults = faults_of(part, found_);
            if (!faults.empty()) faulty.emplace_back(&part, std::move(faults));
        }
        if (faulty.empty()) return;
        console_.out << '\n' << console_.bold("Parts that are not as solids should be") << '\n';
        const std::size_t shown = std::min(faulty.size(), most_parts);
        for (std::size_t i = 0; i < shown; ++i)
            print_paragraph("  ", part_text(*faulty[i].first) + ": " + faulty[i].second, console_);
        print_more(faulty.size(), shown, "parts");
    }

    void paragraph(const std::string& title, const std::string& text) const {
        print_paragraph("            " + padded(title, 7), text, console_);
    }

    const FindOutcome& finding_;
    const Found& found_;
    const Console& console_;
};

}  // namespace

void print_find_table(const FindOutcome& finding, const Console& console) { FindTable(finding, console).print(); }

}  // namespace seamward
