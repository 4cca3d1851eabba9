// SPDX-License-Identifier: GPL-3.0-or-later
#include "styled_job.h"

#include <iomanip>
#include <sstream>
#include <utility>
#include <vector>

namespace seamward::test {

namespace {

using Pairs = std::vector<std::pair<std::string, std::string>>;

class Writer {
public:
    Writer(std::mt19937& random, const FileStyle& style) : random_(random), style_(style) {}

    std::string job(int gaps) {
        if (style_.json) return json(gaps);
        std::string text = "# a survey, \xC3\xA0 la main" + end() + "seamward: 1" + remark() + end();
        text += "spaces: [{id: yard, kind: outdoors}, {id: wall, kind: cavity}," + remark() + end() +
                "  {id: kitchen, kind: living} ]" + end();
        const std::string indent(pick(2) * 2U, ' ');
        text += gaps == 0 ? pick(2) == 0 ? "gaps: []" + remark() : "gaps:" + remark() : "gaps:" + remark();
        for (int i = 0; i < gaps; ++i) {
            text += end();
            if (pick(3) == 0) text += indent + "# about gap " + std::to_string(i) + end();
            text += entry(pairs(i), indent);
        }
        text += end() + "# then the animals" + end() + "pests: [house-mouse]" + remark();
        return text + (style_.ends_with_newline ? end() : "");
    }

private:
    unsigned pick(unsigned n) { return static_cast<unsigned>(random_() % n); }
    [[nodiscard]] std::string end() const { return style_.newline; }
    std::string remark() {
        return pick(3) == 0 ? std::string(1 + pick(3), ' ') + "# it's {so}, \"they\" said: [" + std::to_string(pick(99)) : "";
    }

    std::string text(const std::string& words) {
        if (style_.json) return '"' + words + '"';
        const unsigned way = pick(3);
        return way == 0 ? '"' + words + '"' : way == 1 ? '\'' + words + '\'' : words;
    }

    Pairs pairs(int i) {
        const std::string k = std::to_string(i);
        Pairs all{{"id", text("gap-" + k)}};
        if (pick(2) == 0) all.emplace_back("name", text("jo\xC3\xADnt \xE2\x84\x96 " + k));
        all.emplace_back("between", style_.json ? R"(["yard", "wall"])" : "[yard, wall]");
        const std::string width = text(std::to_string(1 + pick(90)) + "/64 in");
        const bool json = style_.json;
        const unsigned shape = pick(3);
        if (shape == 0)
            all.emplace_back("slot",
                             (json ? "{\"width\": " : "{width: ") + width + (json ? ", \"length\": \"2 m\"}" : ", length: 2 m}"));
        if (shape == 1) all.emplace_back("hole", (json ? "{\"diameter\": " : "{diameter: ") + width + "}");
        if (shape == 2) all.emplace_back("mesh", (json ? "{\"opening\": " : "{opening: ") + width + "}");
        if (pick(2) == 0) all.emplace_back("at", json ? R"(["1 m", "2 m", "-0.5 m"])" : "[1 m, 2 m,\t-0.5 m]");
        if (pick(2) == 0) all.emplace_back("evidence", json ? R"({"how": "assumed"})" : "{how: assumed}");
        if (pick(3) == 0) all.emplace_back("count", "3");
        if (pick(3) == 0) all.emplace_back("note", text("a dime goes in"));
        return all;
    }

    std::string entry(const Pairs& all, const std::string& indent) {
        switch (pick(4)) {
            case 0: return by_lines(all, indent);
            case 1: return indent + "-  {" + joined(all, ", ") + (pick(2) == 0 ? " }" : "}") + remark();
            case 2:
                return indent + "- {" + joined(all, "," + remark() + end() + indent + "   ") + (pick(2) == 0 ? "," : "") + "}" +
                       remark();
            default: {
                std::string made = indent + "- {";
                for (std::size_t i = 0; i < all.size(); ++i) {
                    made += end() + indent + "    " + all[i].first + ": " + all[i].second;
                    made += (i + 1 < all.size() ? "," : "") + remark();
                }
                return made + end() + indent + "  }";
            }
        }
    }

    std::string by_lines(const Pairs& all, const std::string& indent) {
        std::string made;
        for (const auto& [key, value] : all) {
            made += made.empty() ? indent + "- " : end() + indent + "  ";
            if (key == "note" && pick(2) == 0) {
                made += (pick(2) == 0 ? "note: |" : "note: |+") + end() + indent + "    a dime" + end() + indent + "    goes in";
            } else if (key == "evidence" && pick(2) == 0) {
                made += "evidence:" + remark() + end() + indent + "    how: assumed" + remark();
            } else if (key == "between" && pick(2) == 0) {
                made += "between:" + end() + indent + "  - yard" + remark() + end() + indent + "  - wall";
            } else {
                made += key + ": " + value + remark();
            }
        }
        return made;
    }

    static std::string joined(const Pairs& all, const std::string& glue) {
        std::string made;
        for (const auto& [key, value] : all) made += (made.empty() ? "" : glue) + key + ": " + value;
        return made;
    }

    std::string json(int gaps) {
        std::string made = "{" + end() + "\t\"seamward\": 1," + end();
        made +=
            R"(  "spaces": [{"id": "yard", "kind": "outdoors"}, {"id": "wall", "kind": "cavity"}, {"id": "kitchen", "kind": "living"}],)" +
            end();
        made += R"(  "gaps": [)";
        for (int i = 0; i < gaps; ++i) {
            const bool wide = pick(2) == 0;
            const std::string glue = wide ? end() + "      " : " ";
            made += (i == 0 ? "" : ",") + end() + "    {";
            const Pairs all = pairs(i);
            for (std::size_t j = 0; j < all.size(); ++j)
                made += (j == 0 ? wide ? glue : "" : "," + glue) + '"' + all[j].first + "\": " + all[j].second;
            made += (wide ? end() + "    " : "") + "}";
        }
        return made + "]" + end() + "}" + (style_.ends_with_newline ? end() : "");
    }

    std::mt19937& random_;
    FileStyle style_;
};

}  // namespace

std::string styled_job(std::mt19937& random, int gaps, const FileStyle& style) { return Writer(random, style).job(gaps); }

std::string told(const Job& job) {
    std::ostringstream out;
    out << std::setprecision(17) << job.name << '\n';
    for (const Space& space : job.survey.spaces)
        out << space.id << '|' << space.name << '|' << static_cast<int>(space.kind) << space.source << '\n';
    for (const Gap& gap : job.survey.gaps) {
        out << gap.id << '|' << gap.name << '|' << gap.note << '|' << gap.photo << '|' << gap.between[0].value << '-'
            << gap.between[1].value << '|' << shape_word(gap.shape) << ' ' << clear_width(gap.shape);
        if (const auto* slot = std::get_if<Slot>(&gap.shape)) out << " x " << slot->length;
        if (const auto* ring = std::get_if<Ring>(&gap.shape)) out << " x " << ring->around;
        if (const auto* mesh = std::get_if<Mesh>(&gap.shape)) out << " x " << mesh->area.value_or(-1);
        if (gap.at) out << " at " << gap.at->x << ' ' << gap.at->y << ' ' << gap.at->z;
        out << '|' << gap.count << '|' << static_cast<int>(gap.duty) << '|' << static_cast<int>(gap.evidence.how) << ' '
            << gap.evidence.plus_minus << '|' << gap.closing.never << '|' << gap.feature << '\n';
    }
    for (const ClosedGap& closed : job.closed) out << "closed " << closed.gap.value << ' ' << closed.with << '\n';
    for (const Pest& pest : job.pests) out << pest.id << '\n';
    return out.str();
}

}  // namespace seamward::test
