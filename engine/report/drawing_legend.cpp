// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_legend.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <functional>

namespace seamward {

namespace {

constexpr double inch = 0.0254, foot = 12 * inch;  ///< meters
constexpr double title_size = 5;                   ///< mm
constexpr double row_height = 5;                   ///< mm of a line of the legend
constexpr double item_gap = 1.6;                   ///< mm between things of the legend
constexpr double symbol_column = 11;               ///< mm
constexpr double column_width = 66;                ///< mm of the sheet that a column of the legend takes at least

std::string feet_text(double meters) {
    const auto inches = std::llround(std::abs(meters) / inch);
    return std::to_string(inches / 12) + "'-" + std::to_string(inches % 12) + "\"";
}

std::string meters_text(double meters) {
    const auto centimeters = std::llround(std::abs(meters) * 100);
    const std::string rest = std::to_string(centimeters % 100);
    return std::to_string(centimeters / 100) + "." + (rest.size() < 2 ? "0" : "") + rest + " m";
}

class LegendWriter {
public:
    LegendWriter(SvgWriter& svg, const LegendSettings& settings, const Translator& say)
        : svg_(svg), settings_(settings), say_(say), columns_(std::max(1, static_cast<int>(settings.width / column_width))) {}

    double title(const DrawnView& view, double top) {
        const double first = top + title_size;
        svg_.line({0, top + 1}, {settings_.width, top + 1}, LineWidths::surface);
        svg_.text({0, first + 1}, say_(view.title), SvgWriter::Anchor::start, title_size, true);
        svg_.text({0, first + 7.5}, say_("Scale {}", {as_it_stands(settings_.scale.text)}));
        scale_bar({0, first + 12.5});
        if (settings_.compass) north_arrow({settings_.width - 9, first + 8});
        return first + 22;
    }

    void add(const std::function<void(Point2)>& symbol, const std::string& text) {
        const double column = settings_.width / columns_;
        items_.push_back({symbol, broken_text(text, column - symbol_column - 3)});
    }

    /// Writes what was added, column by column; the height where it ends.
    double write(double top) {
        double whole = 0;
        for (const Item& item : items_) whole += height_of(item);
        double y = top, lowest = top;
        std::size_t column = 0;
        for (const Item& item : items_) {
            if (column + 1 < static_cast<std::size_t>(columns_) && y - top >= whole / columns_) {
                ++column;
                y = top;
            }
            const double x = static_cast<double>(column) * settings_.width / columns_;
            item.symbol({x + symbol_column / 2 - 1, y + row_height / 2});
            for (std::size_t i = 0; i < item.lines.size(); ++i)
                svg_.text({x + symbol_column, y + row_height / 2 + static_cast<double>(i) * row_height}, item.lines[i]);
            y += height_of(item);
            lowest = std::max(lowest, y);
        }
        return lowest;
    }

private:
    struct Item {
        std::function<void(Point2)> symbol;
        std::vector<std::string> lines;
    };

    static double height_of(const Item& item) {
        return std::max<double>(1, static_cast<double>(item.lines.size())) * row_height + item_gap;
    }

    /// Four fields, black and white in turn, of a round length.
    void scale_bar(Point2 at) {
        constexpr std::array lengths{1, 2, 5, 10, 20, 50};
        constexpr double shortest_field = 9;  // mm: room for the figures
        const double unit = (settings_.lengths == Lengths::inches ? foot : 1) * 1000 / settings_.scale.denominator;
        const auto found = std::find_if(lengths.begin(), lengths.end(), [&](int n) { return n * unit >= shortest_field; });
        const int field = found == lengths.end() ? lengths.back() : *found;
        const double width = field * unit;
        for (int i = 0; i < 4; ++i) {
            const Point2 corner{at.x + 1 + width * i, at.y};
            svg_.element("rect", {{"x", paper_number(corner.x)},
                                  {"y", paper_number(corner.y)},
                                  {"width", paper_number(width)},
                                  {"height", "1.6"},
                                  {"fill", i % 2 == 0 ? DrawingColor::ink : "#fff"},
                                  {"stroke", DrawingColor::ink},
                                  {"stroke-width", "0.18"}});
        }
        for (int i = 0; i <= 4; ++i) {
            const Message figure = as_it_stands(std::to_string(field * i));
            const char* with_unit = settings_.lengths == Lengths::inches ? "{} ft" : "{} m";
            svg_.text({at.x + 1 + width * i, at.y + 4.6}, say_(i < 4 ? figure : message(with_unit, {figure})),
                      i == 0 ? SvgWriter::Anchor::start : SvgWriter::Anchor::middle);
        }
    }

    void north_arrow(Point2 at) {
        svg_.element("circle", {{"cx", paper_number(at.x)},
                                {"cy", paper_number(at.y)},
                                {"r", "5"},
                                {"fill", "none"},
                                {"stroke", DrawingColor::ink},
                                {"stroke-width", "0.25"}});
        svg_.path(path_of(Loop{{at.x, at.y - 7}, {at.x + 2.6, at.y + 4}, {at.x, at.y + 1.6}}), {{"fill", DrawingColor::ink}});
        svg_.path(path_of(Loop{{at.x, at.y - 7}, {at.x - 2.6, at.y + 4}, {at.x, at.y + 1.6}}),
                  {{"fill", "#fff"}, {"stroke", DrawingColor::ink}, {"stroke-width", "0.18"}});
        // N for north in both languages.
        svg_.text({at.x + 6.5, at.y - 4.5}, "N", SvgWriter::Anchor::middle, letter_size, true);
    }

    SvgWriter& svg_;
    const LegendSettings& settings_;
    const Translator& say_;
    int columns_;
    std::vector<Item> items_;
};

std::string letters(std::size_t position, std::string_view row) {
    std::string out;
    for (++position; position > 0; position /= row.size()) {
        --position;
        out.insert(out.begin(), row[position % row.size()]);
    }
    return out;
}

/// Signs of a legend, about a point.
void draw_cut_sign(SvgWriter& svg, Point2 at) {
    svg.element("rect", {{"x", paper_number(at.x - 3.5)},
                         {"y", paper_number(at.y - 1.2)},
                         {"width", "7"},
                         {"height", "2.4"},
                         {"fill", DrawingColor::cut},
                         {"stroke", DrawingColor::ink},
                         {"stroke-width", "0.25"}});
}

void draw_door_sign(SvgWriter& svg, Point2 at) {
    svg.line({at.x - 2, at.y + 2}, {at.x - 2, at.y - 2}, LineWidths::profile);
    svg.path("M" + paper_number(at.x - 2) + " " + paper_number(at.y - 2) + "A4 4 0 0 1 " + paper_number(at.x + 2) + " " +
                 paper_number(at.y + 2),
             {{"fill", "none"}, {"stroke", DrawingColor::ink}, {"stroke-width", "0.18"}});
}

void draw_overhead_sign(SvgWriter& svg, Point2 at) {
    svg.path(path_of({at.x - 3.5, at.y}, {at.x + 3.5, at.y}),
             {{"stroke", DrawingColor::ink}, {"stroke-width", "0.18"}, {"stroke-dasharray", "2 1"}});
}

}  // namespace

void draw_mark(SvgWriter& svg, Point2 at, bool stays_open) {
    if (!stays_open) {
        svg.element("circle", {{"cx", paper_number(at.x)},
                               {"cy", paper_number(at.y)},
                               {"r", "0.8"},
                               {"fill", DrawingColor::to_close},
                               {"stroke", "#fff"},
                               {"stroke-width", "0.25"}});
        return;
    }
    svg.element("rect", {{"x", paper_number(at.x - 0.75)},
                         {"y", paper_number(at.y - 0.75)},
                         {"width", "1.5"},
                         {"height", "1.5"},
                         {"fill", "#fff"},
                         {"stroke", DrawingColor::stays},
                         {"stroke-width", "0.35"}});
}

void draw_balloon(SvgWriter& svg, Point2 at, double size, const std::string& text, bool stays_open) {
    const double radius = size / 2;
    if (stays_open) {
        const double across = radius * 0.98, half = radius * 0.56;
        svg.path(path_of(Loop{{at.x - across, at.y},
                              {at.x - half, at.y - across * 0.9},
                              {at.x + half, at.y - across * 0.9},
                              {at.x + across, at.y},
                              {at.x + half, at.y + across * 0.9},
                              {at.x - half, at.y + across * 0.9}}),
                 {{"fill", "#fff"}, {"stroke", DrawingColor::stays}, {"stroke-width", "0.35"}});
    } else {
        svg.element("circle", {{"cx", paper_number(at.x)},
                               {"cy", paper_number(at.y)},
                               {"r", paper_number(radius - 0.18)},
                               {"fill", "#fff"},
                               {"stroke", DrawingColor::to_close},
                               {"stroke-width", "0.35"}});
    }
    svg.text(at, text, SvgWriter::Anchor::middle, letter_size, true);
}

std::string height_text(double meters, Lengths lengths) {
    const std::string text = lengths == Lengths::inches ? feet_text(meters) : meters_text(meters);
    const bool zero = std::abs(meters) < (lengths == Lengths::inches ? inch / 2 : 0.005);
    return (zero ? "±" : meters > 0 ? "+" : "−") + text;
}

std::string dimension_text(double meters, Lengths lengths) {
    return lengths == Lengths::inches ? feet_text(meters) : meters_text(meters);
}

std::string open_letter(std::size_t position) { return letters(position, "ABCDEFGHJKLMNPQRSTUVWXYZ"); }
std::string room_key(std::size_t position) { return letters(position, "abcdefghjkmnpqrstuvwxyz"); }

double draw_title(SvgWriter& svg, const DrawnView& view, const LegendSettings& settings, const Translator& say, double top) {
    return LegendWriter(svg, settings, say).title(view, top);
}

double draw_legend(SvgWriter& svg, const DrawnView& view, const std::vector<DrawnGap>& gaps,
                   const std::vector<std::pair<std::string, std::string>>& room_keys, const LegendSettings& settings,
                   const Translator& say, double top) {
    LegendWriter legend(svg, settings, say);
    if (std::any_of(gaps.begin(), gaps.end(), [](const DrawnGap& gap) { return !gap.stays_open; }))
        legend.add([&](Point2 at) { draw_mark(svg, at, false); }, say("Gap to close; its number is that of the step"));
    if (!view.cut.empty()) {
        legend.add([&](Point2 at) { draw_cut_sign(svg, at); },
                   say("Wall, cut {} over the floor", {as_it_stands(dimension_text(plan_cut_height, settings.lengths))}));
    }
    const auto has = [&](PlanOpening::Kind kind) {
        return std::any_of(view.openings.begin(), view.openings.end(), [&](const PlanOpening& o) { return o.kind == kind; });
    };
    if (has(PlanOpening::Kind::hinged))
        legend.add([&](Point2 at) { draw_door_sign(svg, at); }, say("Door; which way it turns was not surveyed"));
    if (has(PlanOpening::Kind::overhead))
        legend.add([&](Point2 at) { draw_overhead_sign(svg, at); }, say("Overhead door when it is open"));
    if (view.north_assumed) legend.add([](Point2) {}, say("North is where y of the model points: ask somebody who knows"));
    for (const auto& [key, name] : room_keys)
        legend.add([&svg, key](Point2 at) { svg.text(at, key, SvgWriter::Anchor::middle); }, name);
    for (const DrawnGap& gap : gaps) {
        if (gap.stays_open) legend.add([&svg, &gap](Point2 at) { draw_balloon(svg, at, 5.4, gap.text, true); }, say(gap.meaning));
    }
    return legend.write(top) + 1;
}

}  // namespace seamward
