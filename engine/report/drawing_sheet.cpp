// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawing_sheet.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "report/drawing_legend.h"
#include "report/drawing_rooms.h"
#include "report/drawing_svg.h"

namespace seamward {

namespace {

constexpr double upright_width = 184, upright_height = 165;  ///< mm: Letter and A4 less margins; height without title and legend
constexpr double turned_width = 250, turned_height = 110;    ///< the same on paper turned
constexpr double upright_page = 250, turned_page = 184;      ///< mm: heights with title and legend
constexpr double small_scale = 130;                          ///< paper is turned rather than to draw smaller than that
constexpr double least_width = 112;                          ///< mm of a sheet, for its legend
constexpr double level_column = 19;                          ///< mm beside an elevation for heights
constexpr double dimension_row = 8;                          ///< mm for a dimension
constexpr double around_row = 4.2;                           ///< mm from the middle of a row of balloons to what is beyond
constexpr double row_margin = 6.8;                           ///< mm from a drawing to the middle of a row beside it
constexpr double ground_overhang = 2.5;                      ///< mm that the line of the ground reaches beyond the house
constexpr double overhead_share = 0.9;                       ///< of its height, an overhead door reaches into the house when open

double room_beside(DrawnView::Kind kind) {
    const double left = row_margin + around_row;
    return kind == DrawnView::Kind::elevation ? left + level_column : 2 * left + dimension_row;
}

class SheetWriter {
public:
    SheetWriter(const DrawnView& view, const std::vector<DrawnGap>& gaps, const SheetSettings& settings, const Translator& say)
        : view_(view), gaps_(gaps), settings_(settings), say_(say), scale_(1000 / settings.paper.scale.denominator) {}

    Sheet draw() {
        lay_out();
        draw_solids();
        draw_openings();
        draw_rooms();
        if (view_.kind == DrawnView::Kind::elevation) draw_levels();
        if (view_.kind == DrawnView::Kind::plan) draw_dimensions();
        draw_gaps();
        const LegendSettings legend{settings_.paper.scale, settings_.lengths, is_plan(), sheet_.width};
        const double below_title = draw_title(svg_, view_, legend, say_, below_);
        SvgWriter apart;
        const double whole = draw_legend(apart, view_, gaps_, room_keys_, legend, say_, below_title);
        if (whole <= settings_.paper.height) {
            draw_legend(svg_, view_, gaps_, room_keys_, legend, say_, below_title);
            sheet_.height = whole;
            finish();
        } else {
            sheet_.height = below_title;
            finish();
            add_legend(legend);
        }
        return std::move(sheet_);
    }

private:
    [[nodiscard]] bool is_plan() const { return view_.kind != DrawnView::Kind::elevation; }
    [[nodiscard]] Point2 on_sheet(Point2 p) const {
        return {origin_.x + (p.x - view_.low.x) * scale_, origin_.y + (view_.high.y - p.y) * scale_};
    }
    [[nodiscard]] Loop on_sheet(const Loop& loop) const {
        Loop out;
        for (const Point2 p : loop) out.push_back(on_sheet(p));
        return out;
    }

    /// Places the balloons about the drawing at the origin, then moves all to where the sheet's corner is at 0, 0.
    void lay_out() {
        const PaperBox drawing{{0, 0}, {(view_.high.x - view_.low.x) * scale_, (view_.high.y - view_.low.y) * scale_}};
        for (const DrawnGap& gap : gaps_) {
            Balloon balloon{gap.text, gap.stays_open, gap.gap.value, on_sheet(gap.at), {}};
            balloon.size = settings_.balloon_size;
            sheet_.balloons.push_back(balloon);
        }
        LabelRoom room;
        room.right = is_plan();
        const double beside = settings_.paper.width - drawing.width();
        const double free = is_plan() ? (beside - dimension_row) / 2 : beside - level_column;
        room.margin = std::max(row_margin, free - around_row);
        row_ = place_balloons(sheet_.balloons, drawing, room);
        const double left = row_.low.x - around_row - (view_.kind == DrawnView::Kind::plan ? dimension_row : 0);
        const double right = is_plan() ? row_.high.x + around_row : drawing.high.x + level_column;
        sheet_.width = std::max(right - left, least_width);
        origin_ = {(sheet_.width - (right - left)) / 2 - left, around_row - row_.low.y};
        for (Balloon& balloon : sheet_.balloons) {
            balloon.site = balloon.site + origin_;
            balloon.at = balloon.at + origin_;
        }
        row_ = {row_.low + origin_, row_.high + origin_};
        below_ = row_.high.y + around_row;
    }

    void draw_lines(ViewLineKind kind, double width) {
        std::string data;
        for (const ViewLine& line : view_.lines) {
            if (line.kind == kind) data += path_of(on_sheet(line.from), on_sheet(line.to));
        }
        svg_.path(data, {{"stroke-width", paper_number(width)}});
    }

    void draw_solids() {
        svg_.begin("g", {{"fill", "none"}, {"stroke", DrawingColor::ink}, {"stroke-linecap", "round"}});
        const bool plan = view_.kind == DrawnView::Kind::plan;  // what lies below the cut is thin
        draw_lines(ViewLineKind::surface, plan ? 0.13 : LineWidths::surface);
        draw_lines(ViewLineKind::outline, plan ? LineWidths::surface : LineWidths::outline);
        draw_lines(ViewLineKind::profile, plan ? LineWidths::surface : LineWidths::profile);
        svg_.end();
        if (view_.kind == DrawnView::Kind::elevation) {
            const Point2 from = on_sheet({view_.low.x, view_.ground}), to = on_sheet({view_.high.x, view_.ground});
            svg_.line(from - Point2{ground_overhang, 0}, to + Point2{ground_overhang, 0}, LineWidths::ground);
        }
        draw_cut();
    }

    /// First with a wide border, then without: so there is a line around all that touches, and none within.
    void draw_cut() {
        if (view_.cut.empty() && view_.fine_cut.empty()) return;
        std::string data;
        for (const Loop& loop : view_.cut) data += path_of(on_sheet(loop));
        const std::string id = "drawing-" + view_.id + "-cut";
        svg_.begin("defs", {});
        svg_.path(data, {{"id", id}});
        svg_.end();
        svg_.element("use", {{"href", "#" + id},
                             {"fill", DrawingColor::ink},
                             {"stroke", DrawingColor::ink},
                             {"stroke-linejoin", "round"},
                             {"stroke-width", paper_number(2 * LineWidths::outline)}});
        svg_.element("use",
                     {{"href", "#" + id}, {"fill", DrawingColor::cut}, {"stroke", DrawingColor::cut}, {"stroke-width", "0.1"}});
        std::string fine;
        for (const Loop& loop : view_.fine_cut) fine += path_of(on_sheet(loop));
        svg_.path(fine, {{"fill", "#fff"}, {"stroke", DrawingColor::ink}, {"stroke-width", paper_number(LineWidths::surface)}});
    }

    void draw_openings() {
        for (const PlanOpening& opening : view_.openings) {
            const Point2 hinge = on_sheet(opening.hinge), far = on_sheet(opening.far);
            const Point2 into{opening.into.x, -opening.into.y};
            const double run = std::hypot(far.x - hinge.x, far.y - hinge.y);
            PaperBox taken{{std::min(hinge.x, far.x), std::min(hinge.y, far.y)},
                           {std::max(hinge.x, far.x), std::max(hinge.y, far.y)}};
            const auto take = [&](Point2 p) {
                taken.low = {std::min(taken.low.x, p.x), std::min(taken.low.y, p.y)};
                taken.high = {std::max(taken.high.x, p.x), std::max(taken.high.y, p.y)};
            };
            if (opening.kind == PlanOpening::Kind::hinged) {
                const Point2 open = hinge + into * run;
                take(open);
                const bool clockwise = cross(open - hinge, far - hinge) > 0;
                svg_.line(hinge, open, LineWidths::profile);
                svg_.path("M" + paper_number(open.x) + " " + paper_number(open.y) + "A" + paper_number(run) + " " +
                              paper_number(run) + " 0 0 " + (clockwise ? "1 " : "0 ") + paper_number(far.x) + " " +
                              paper_number(far.y),
                          {{"fill", "none"}, {"stroke", DrawingColor::ink}, {"stroke-width", paper_number(LineWidths::surface)}});
                obstacles_.push_back(taken);
            } else {
                const Point2 in = into * (opening.height * overhead_share * scale_);
                svg_.line(hinge, far, LineWidths::profile);
                svg_.path(
                    path_of(hinge, hinge + in) + path_of(hinge + in, far + in) + path_of(far + in, far),
                    {{"fill", "none"}, {"stroke", DrawingColor::ink}, {"stroke-width", "0.18"}, {"stroke-dasharray", "2 1"}});
            }
        }
    }

    void draw_rooms() {
        std::vector<PaperRoom> rooms;
        for (const PlanRoom& room : view_.rooms) {
            PaperRoom on_paper{say_(room.name), std::string(1, static_cast<char>('a' + rooms.size() % 26)), {}};
            on_paper.figure.outline = on_sheet(room.figure.outline);
            for (const Loop& hole : room.figure.holes) on_paper.figure.holes.push_back(on_sheet(hole));
            rooms.push_back(std::move(on_paper));
        }
        names_ = place_room_names(rooms, {&sheet_.balloons, obstacles_});
        std::size_t keys = 0;
        for (std::size_t i = 0; i < names_.size(); ++i) {
            if (!names_[i].keyed) continue;
            const std::string key = room_key(keys++);
            names_[i].lines = {key};
            room_keys_.emplace_back(key, rooms[i].name);
        }
    }

    void write_rooms() {
        for (const RoomName& name : names_) {
            sheet_.words.push_back(name.box);
            const double line = (name.box.high.y - name.box.low.y) / static_cast<double>(name.lines.size());
            double y = name.box.low.y + line / 2;
            for (const std::string& text : name.lines) {
                svg_.text_on_white({name.at.x, y}, text, SvgWriter::Anchor::middle);
                y += line;
            }
        }
    }

    void draw_levels() {
        const double from = on_sheet(view_.high).x + ground_overhang;
        std::vector<double> taken;
        for (const LevelMark& level : view_.levels) {
            const double y = on_sheet(Point2{0, level.height}).y;
            // Both words of a level stand at its line: levels nearer to each other than that are told once.
            if (std::any_of(taken.begin(), taken.end(), [&](double other) { return std::abs(other - y) < 2 * letter_size + 2; }))
                continue;
            taken.push_back(y);
            svg_.path(path_of({from, y}, {from + level_column - 4, y}),
                      {{"stroke", DrawingColor::ink}, {"stroke-width", "0.18"}, {"stroke-dasharray", "4 1 0.6 1"}});
            svg_.text({from + 1, y - letter_size * 0.65}, say_(level.name));
            svg_.text({from + 1, y + letter_size * 0.65}, height_text(level.height, settings_.lengths));
            sheet_.words.push_back({{from, y - letter_size - 1}, {from + level_column - 3, y + letter_size + 1}});
        }
    }

    void dimension(Point2 from, Point2 to, double length) {
        svg_.line(from, to, LineWidths::surface);
        const bool upright = std::abs(to.x - from.x) < 1e-6;
        const Point2 tick = upright ? Point2{1.6, 0} : Point2{0, 1.6};
        const Point2 slash{1, -1};
        for (const Point2 end : {from, to}) {
            svg_.line(end - tick, end + tick, LineWidths::surface);
            svg_.line(end - slash, end + slash, LineWidths::profile);
        }
        const Point2 middle = (from + to) * 0.5;
        const std::string text = dimension_text(length, settings_.lengths);
        if (upright) {
            const std::string turn = "rotate(-90 " + paper_number(middle.x - 2.6) + " " + paper_number(middle.y) + ")";
            svg_.begin("g", {{"transform", turn}});
            svg_.text(middle - Point2{2.6, 0}, text, SvgWriter::Anchor::middle);
            svg_.end();
        } else {
            svg_.text(middle + Point2{0, 3}, text, SvgWriter::Anchor::middle);
        }
    }

    void draw_dimensions() {
        const auto& [low, high] = view_.walls;
        if (!(low.x < high.x)) return;
        const Point2 from = on_sheet(low), to = on_sheet(high);
        const double y = row_.high.y + around_row + 1.5, x = row_.low.x - around_row - 1.5;
        dimension({from.x, y}, {to.x, y}, high.x - low.x);
        dimension({x, to.y}, {x, from.y}, high.y - low.y);
        below_ = y + dimension_row - 2;
    }

    void draw_gaps() {
        svg_.begin("g", {{"stroke-width", paper_number(LineWidths::surface)}});
        for (const Balloon& balloon : sheet_.balloons)
            svg_.path(path_of(balloon.site, balloon.leader_end()),
                      {{"stroke", balloon.stays_open ? DrawingColor::stays : DrawingColor::to_close}});
        svg_.end();
        write_rooms();
        for (const Balloon& balloon : sheet_.balloons) {
            svg_.begin("g", balloon.stays_open ? Html::Attributes{{"class", "open-gap"}}
                                               : Html::Attributes{{"class", "closing"}, {"data-closing", balloon.text}});
            draw_mark(svg_, balloon.site, balloon.stays_open);
            draw_balloon(svg_, balloon.at, balloon.size, balloon.text, balloon.stays_open);
            svg_.end();
        }
    }

    void finish() {
        std::string numbers, letters;
        for (const DrawnGap& gap : gaps_) {
            std::string& list = gap.stays_open ? letters : numbers;
            list += (list.empty() ? "" : ", ") + gap.text;
        }
        std::string words = say_("Scale {}.", {as_it_stands(settings_.paper.scale.text)});
        if (!numbers.empty()) words += " " + say_("Closings shown by their numbers: {}.", {as_it_stands(numbers)});
        if (!letters.empty()) words += " " + say_("Gaps that stay open on purpose: {}.", {as_it_stands(letters)});
        sheet_.svg = whole_svg("drawing-" + view_.id, say_(view_.title), words, sheet_.height, svg_);
    }

    /// A legend too long for the page of its drawing.
    void add_legend(const LegendSettings& legend) {
        SvgWriter apart;
        const double height = draw_legend(apart, view_, gaps_, room_keys_, legend, say_, 1);
        std::string meanings;
        for (const auto& [key, name] : room_keys_) meanings += (meanings.empty() ? "" : "; ") + key + ": " + name;
        for (const DrawnGap& gap : gaps_) {
            if (gap.stays_open) meanings += (meanings.empty() ? "" : "; ") + gap.text + ": " + say_(gap.meaning);
        }
        const std::string title = say_("Legend: {}", {view_.title});
        sheet_.svg += whole_svg("drawing-" + view_.id + "-legend", title, meanings, height, apart);
    }

    [[nodiscard]] std::string whole_svg(const std::string& id, const std::string& title, const std::string& words, double tall,
                                        const SvgWriter& drawn) const {
        const std::string width = paper_number(sheet_.width), height = paper_number(tall);
        SvgWriter whole;
        whole.begin("svg", {{"xmlns", "http://www.w3.org/2000/svg"},
                            {"id", id},
                            {"class", "drawing"},
                            {"role", "img"},
                            {"aria-labelledby", id + "-title " + id + "-desc"},
                            {"width", width + "mm"},
                            {"height", height + "mm"},
                            {"viewBox", "0 0 " + width + " " + height}});
        whole.named("title", title, {{"id", id + "-title"}});
        whole.named("desc", words, {{"id", id + "-desc"}});
        whole.markup(drawn.written());
        whole.end();
        return whole.written();
    }

    const DrawnView& view_;
    const std::vector<DrawnGap>& gaps_;
    const SheetSettings& settings_;
    const Translator& say_;
    double scale_;  ///< mm of the paper for a meter
    Point2 origin_;
    PaperBox row_;
    double below_ = 0;
    std::vector<PaperBox> obstacles_;
    std::vector<RoomName> names_;
    std::vector<std::pair<std::string, std::string>> room_keys_;
    SvgWriter svg_;
    Sheet sheet_;
};

}  // namespace

SheetPaper choose_paper(const std::vector<DrawnSize>& drawings, Lengths lengths) {
    static const std::array<DrawingScale, 6> by_inches{{{48, "1/4\" = 1'-0\""},
                                                        {64, "3/16\" = 1'-0\""},
                                                        {96, "1/8\" = 1'-0\""},
                                                        {128, "3/32\" = 1'-0\""},
                                                        {192, "1/16\" = 1'-0\""},
                                                        {384, "1/32\" = 1'-0\""}}};
    static const std::array<DrawingScale, 6> metric{
        {{50, "1:50"}, {75, "1:75"}, {100, "1:100"}, {125, "1:125"}, {200, "1:200"}, {500, "1:500"}}};
    const auto& scales = lengths == Lengths::inches ? by_inches : metric;
    const auto fit = [&](const DrawingScale& scale, double width, double height) {
        return std::all_of(drawings.begin(), drawings.end(), [&](const DrawnSize& drawing) {
            const double mm = 1000 / scale.denominator;
            return drawing.width * mm + room_beside(drawing.kind) <= width && drawing.height * mm <= height;
        });
    };
    for (const DrawingScale& scale : scales) {
        if (scale.denominator <= small_scale && fit(scale, upright_width, upright_height))
            return {scale, false, upright_width, upright_page};
    }
    for (const DrawingScale& scale : scales) {
        if (fit(scale, turned_width, turned_height)) return {scale, true, turned_width, turned_page};
        if (fit(scale, upright_width, upright_height)) return {scale, false, upright_width, upright_page};
    }
    return {scales.back(), true, turned_width, turned_page};
}

Sheet draw_sheet(const DrawnView& view, const std::vector<DrawnGap>& gaps, const SheetSettings& settings, const Translator& say) {
    return SheetWriter(view, gaps, settings, say).draw();
}

}  // namespace seamward
