// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/drawings.h"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

#include "report/drawing_gaps.h"
#include "report/drawing_legend.h"
#include "report/drawing_sheet.h"

namespace seamward {

namespace {

constexpr double finest_print = 0.3e-3;  ///< meters of the paper: finer is not told apart at arm's length

/// Which drawing: its kind, and the story or side of it. In the order of the drawings.
using ViewKey = std::pair<DrawnView::Kind, std::size_t>;

/// Why a gap stays open, for the legend.
Message meaning_of(const Gap& gap) {
    if (serves_as_opening(gap.duty)) return message("{}: stays open ({})", {gap.called(), duty_words(gap.duty)});
    return message("{}: stays open", {gap.called()});
}

class HouseDrawer {
public:
    HouseDrawer(const DrawingJob& job, const Translator& say)
        : job_(job), say_(say), house_(drawn_house(job.house, job.described)) {}

    std::vector<Drawing> draw() {
        const double across = house_.high.x - house_.low.x, deep = house_.high.y - house_.low.y;
        const double tall = house_.high.z - house_.ground;
        const SheetPaper paper = choose_paper({{DrawnView::Kind::plan, across, deep},
                                               {DrawnView::Kind::elevation, across, tall},
                                               {DrawnView::Kind::elevation, deep, tall}},
                                              job_.lengths);
        const double finest = paper.scale.denominator * finest_print;
        for (std::size_t i = 0; i < elevations_.size(); ++i) elevations_.at(i) = make_elevation(house_, i, finest);
        for (std::size_t i = 0; i < house_.floors.size(); ++i) plans_.push_back(make_plan_view(house_, i, finest));
        place_gaps();
        std::vector<Drawing> drawings;
        if (!gaps_[{DrawnView::Kind::site, 0}].empty()) {
            const DrawnView site = make_site_view(house_, 2 * finest);
            const SheetPaper of_site =
                choose_paper({{site.kind, site.high.x - site.low.x, site.high.y - site.low.y}}, job_.lengths);
            drawings.push_back(drawing(site, {DrawnView::Kind::site, 0}, of_site));
        }
        for (std::size_t i = 0; i < plans_.size(); ++i) drawings.push_back(drawing(plans_[i], {DrawnView::Kind::plan, i}, paper));
        for (std::size_t i = 0; i < elevations_.size(); ++i)
            drawings.push_back(drawing(elevations_.at(i).view, {DrawnView::Kind::elevation, i}, paper));
        return drawings;
    }

private:
    void place_gaps() {
        for (std::size_t i = 0; i < job_.closings.size(); ++i) place({job_.closings[i], std::to_string(i + 1), false, {}, {}});
        std::size_t letters = 0;
        for (std::size_t i = 0; i < job_.house.survey.gaps.size(); ++i) {
            const GapIndex index{static_cast<std::uint32_t>(i)};
            const Gap& gap = job_.house.survey[index];
            if (!gap.must_stay_open() || is_shut(gap.shape)) continue;
            if (std::find(job_.closings.begin(), job_.closings.end(), index) != job_.closings.end()) continue;
            if (place({index, open_letter(letters), true, {}, meaning_of(gap)})) ++letters;
        }
    }

    bool place(DrawnGap gap) {
        const std::optional<GapView> view = view_of(house_, elevations_, gap.gap);
        if (!view) return false;
        gap.at = view->kind == DrawnView::Kind::elevation ? elevations_.at(view->which).view.on_paper(view->at)
                                                          : Point2{view->at.x, view->at.y};
        gaps_[{view->kind, view->which}].push_back(std::move(gap));
        return true;
    }

    [[nodiscard]] Drawing drawing(const DrawnView& view, const ViewKey& key, const SheetPaper& paper) {
        const std::vector<DrawnGap>& gaps = gaps_[key];
        constexpr double of_two_figures = 6.6, of_three_figures = 8;  // mm
        const double size = job_.closings.size() > 99 ? of_three_figures : of_two_figures;
        Sheet sheet = draw_sheet(view, gaps, {paper, job_.lengths, size}, say_);
        Drawing made;
        made.id = view.id;
        made.title = view.title;
        made.svg = std::move(sheet.svg);
        made.width = sheet.width;
        made.height = sheet.height;
        made.landscape = paper.landscape;
        made.scale = paper.scale.text;
        made.balloons = std::move(sheet.balloons);
        made.words = std::move(sheet.words);
        for (const DrawnGap& gap : gaps) {
            if (gap.stays_open)
                made.open.push_back(gap.gap);
            else
                made.closings.push_back(static_cast<std::size_t>(std::stoul(gap.text)));
        }
        return made;
    }

    const DrawingJob& job_;
    const Translator& say_;
    DrawnHouse house_;
    std::array<Elevation, 4> elevations_;
    std::vector<DrawnView> plans_;
    std::map<ViewKey, std::vector<DrawnGap>> gaps_;
};

}  // namespace

std::vector<Drawing> draw_house(const DrawingJob& job, const Translator& say) {
    if (job.house.parts.empty()) return {};
    return HouseDrawer(job, say).draw();
}

std::vector<Drawing> draw_house(const ReportFacts& facts, const Translator& say) {
    DrawingJob job{facts.job.house, !facts.job.model, {}, facts.settings.lengths};
    for (const PlanStep& step : facts.plan.steps) job.closings.push_back(step.gap);
    return draw_house(job, say);
}

const Drawing* drawing_of(const std::vector<Drawing>& drawings, std::size_t closing) {
    const auto found = std::find_if(drawings.begin(), drawings.end(), [&](const Drawing& drawing) {
        return std::find(drawing.closings.begin(), drawing.closings.end(), closing) != drawing.closings.end();
    });
    return found == drawings.end() ? nullptr : &*found;
}

}  // namespace seamward
