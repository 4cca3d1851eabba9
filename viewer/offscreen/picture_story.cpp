// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_story.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <limits>

#include "base/drawn_shut.h"
#include "catalog/field_check.h"
#include "catalog/shipped.h"
#include "document/way_text.h"
#include "layers/room_places.h"
#include "network/network.h"
#include "offscreen/drawn_way.h"

namespace seamward::viewer {

namespace {

constexpr std::ptrdiff_t most_rooms = 14;  ///< that are all named

QString plain(const std::string& text) { return QString::fromStdString(text).simplified(); }

bool is_room(const Space& space) { return space.is_living() || space.kind == SpaceKind::attached; }

QString closed_words(std::size_t count) {
    if (count == 0) return QStringLiteral("no gap is closed");
    return count == 1 ? QStringLiteral("1 gap is closed") : QStringLiteral("%1 gaps are closed").arg(count);
}

/// The number of each room's story, from 1 at the ground floor, and 0 under it; all 1 where no two floors differ by much.
class Stories {
public:
    explicit Stories(const House& house) : house_(house) {
        for (std::uint32_t i = 0; i < std::min(house.survey.spaces.size(), house.middles.size()); ++i) {
            if (has_floor(SpaceIndex{i})) floors_.push_back(floor_of(SpaceIndex{i}));
        }
        std::ranges::sort(floors_);
        const auto same = [](double low, double high) { return high - low < least_story; };
        floors_.erase(std::ranges::unique(floors_, same).begin(), floors_.end());
    }

    /// "kitchen, story 1"; "kitchen" where there is one story only.
    [[nodiscard]] QString label(SpaceIndex space) const {
        const QString name = plain(house_.survey[space].label());
        if (floors_.size() < 2 || !has_floor(space)) return name;
        const double floor = floor_of(space);
        if (floor < -least_story) return QStringLiteral("%1, basement").arg(name);
        const auto below = [&](double other) { return other > -least_story && other < floor + 0.01; };
        return QStringLiteral("%1, story %2").arg(name).arg(std::max<std::ptrdiff_t>(std::ranges::count_if(floors_, below), 1));
    }

private:
    static constexpr double least_story = 1.2;  ///< meters: a step down into a garage makes no story

    [[nodiscard]] bool has_floor(SpaceIndex space) const {
        return is_room(house_.survey[space]) && space.value < house_.middles.size() &&
               house_.middles[space.value].figure.outline.size() > 2;
    }
    [[nodiscard]] double floor_of(SpaceIndex space) const { return house_.middles[space.value].frame.origin.z; }

    const House& house_;
    std::vector<double> floors_;
};

void tell_closed(PictureStory& story, const House& house, const HouseFrame& frame) {
    for (std::uint32_t i = 0; i < house.survey.gaps.size(); ++i) {
        const Gap& gap = house.survey.gaps[i];
        if (!is_shut(gap.shape) || is_drawn_shut(gap)) continue;
        const auto at = gap_middle(house, {i});
        story.closed.push_back({plain(gap.label()), at ? std::optional(frame.to_scene(*at)) : std::nullopt});
    }
}

/// What the label of the smallest gap, or of the only one, says under its name.
void tell_smallest(PictureStory& story, const Gap& gap, const char* width_word) {
    story.width_word = QString::fromLatin1(width_word);
    if (!is_shut(gap.shape)) story.smallest_feel = plain(field_check(clear_width(gap.shape), shipped_gauges().rows).english());
    story.smallest_note = stays_open_text(gap);
}

/// Names the rooms but the one that the shown way ends in; of many rooms only those that a drawn way leads to or through.
void tell_rooms(PictureStory& story, const House& house, const HouseFrame& frame, std::span<const DrawnPath> paths,
                std::span<const std::size_t> drawn, std::optional<SpaceIndex> but) {
    const auto is_on_way = [&](SpaceIndex space) {
        return std::ranges::any_of(drawn, [&](std::size_t i) {
            return std::ranges::find(paths[i].way.path.spaces, space) != paths[i].way.path.spaces.end();
        });
    };
    const Stories stories(house);
    const bool all = std::ranges::count_if(house.survey.spaces, is_room) <= most_rooms;
    for (std::uint32_t i = 0; i < std::min(house.survey.spaces.size(), house.middles.size()); ++i) {
        if (but == SpaceIndex{i} || !is_room(house.survey.spaces[i]) || (!all && !is_on_way(SpaceIndex{i}))) continue;
        std::vector<Point> places = room_places(house.middles[i], frame);
        if (!places.empty()) story.rooms.push_back({stories.label({i}), std::move(places)});
    }
}

/// How far the line has run where it comes nearest to a point, and the point of the line that far on.
double run_to(std::span<const Point> line, const Point& at) {
    double nearest = std::numeric_limits<double>::max();
    double sum = 0;
    double run = 0;
    for (std::size_t i = 0; i < line.size(); ++i) {
        if (i > 0) sum += distance(line[i - 1], line[i]);
        if (distance(line[i], at) >= nearest) continue;
        nearest = distance(line[i], at);
        run = sum;
    }
    return run;
}
Point at_run(std::span<const Point> line, double run) {
    for (std::size_t i = 1; i < line.size(); ++i) {
        const double size = distance(line[i - 1], line[i]);
        if (run <= size && size > 0) return line[i - 1] + (line[i] - line[i - 1]) * (run / size);
        run -= size;
    }
    return line.back();
}

/// Names level airs that are no rooms, such as the attic, where the shown way runs through them.
void tell_airs(PictureStory& story, const House& house, const EntryPath& way, std::span<const Point> line) {
    constexpr double least_area = 4;  // square meters: less is no attic and no crawl space
    for (std::size_t i = 1; i < way.gaps.size(); ++i) {
        const SpaceIndex space = way.spaces[i];
        if (is_room(house.survey[space]) || space.value >= house.middles.size()) continue;
        const MiddleSurface& middle = house.middles[space.value];
        const Loop& outline = middle.figure.outline;
        if (outline.size() < 3 || std::abs(middle.frame.n.z) < 0.9 || std::abs(doubled_area(outline)) < 2 * least_area) continue;
        const auto& from = story.steps[i - 1].at;
        const auto& to = story.steps[i].at;
        if (!from || !to || line.empty()) continue;
        story.airs.push_back({plain(house.survey[space].label()), at_run(line, (run_to(line, *from) + run_to(line, *to)) / 2)});
    }
}

/// "between yard and wall cavity"
QString joined(const Survey& survey, const Gap& gap) {
    return QStringLiteral("between %1 and %2").arg(plain(survey[gap.between[0]].label()), plain(survey[gap.between[1]].label()));
}

}  // namespace

PictureStory story_of_way(const House& house, const HouseFrame& frame, std::span<const DrawnPath> paths,
                          std::span<const std::size_t> drawn, const PictureRequest& request, std::span<const Point> line) {
    PictureStory story;
    tell_closed(story, house, frame);
    const QString whose = request.animals.empty() ? QString() : QStringLiteral(" for %1").arg(plain(request.animals));
    if (paths.empty()) {
        tell_rooms(story, house, frame, paths, drawn, std::nullopt);
        const Roles roles(house.survey, {});
        story.known = !roles.start_spaces().empty() && !roles.end_spaces().empty();
        if (!story.known) {
            story.way = QStringLiteral("No way in can be told");
            story.detail = roles.end_spaces().empty() ? QStringLiteral("no air is named as a room, so none can end")
                                                      : QStringLiteral("no air is named as outdoors, so none can begin");
            return story;
        }
        story.way = QStringLiteral("No open way in%1").arg(whose);
        story.detail = closed_words(story.closed.size());
        return story;
    }
    const RankedPath& way = paths[request.rank - 1].way;
    const Survey& survey = house.survey;
    story.other_ways = paths.size() - 1;
    story.more_ways = request.more_ways;
    const QString of_how_many = (request.more_ways ? QStringLiteral("more than %1") : QStringLiteral("%1")).arg(paths.size());
    story.way = QStringLiteral("Way %1 of %2%3: %4 to %5")
                    .arg(QString::number(request.rank), of_how_many, whose, plain(survey[way.path.from()].label()),
                         plain(survey[way.path.to()].label()));
    story.detail = QStringLiteral("smallest gap %1").arg(gap_width_text(survey[way.pinch_gap]));
    for (std::size_t i = 0; i < way.path.gaps.size(); ++i) {
        const GapIndex gap = way.path.gaps[i];
        const auto at = gap_middle(house, gap);
        story.steps.push_back({QString::number(i + 1), plain(survey[gap].label()), width_words(clear_width(survey[gap].shape)),
                               at ? std::optional(frame.to_scene(*at)) : std::nullopt, gap == way.pinch_gap});
    }
    tell_smallest(story, survey[way.pinch_gap], "smallest gap");
    if (!line.empty()) {
        // The line begins and ends in the spaces beside the first and the last gap that have a place.
        const auto has_place = [](const PictureStory::Step& step) { return step.at.has_value(); };
        const auto first = std::ranges::find_if(story.steps, has_place) - story.steps.begin();
        const auto unplaced = std::find_if(story.steps.rbegin(), story.steps.rend(), has_place) - story.steps.rbegin();
        const auto last = static_cast<std::ptrdiff_t>(way.path.spaces.size()) - 1 - unplaced;
        const Stories stories(house);
        const auto label = [&](std::ptrdiff_t i) { return stories.label(way.path.spaces[static_cast<std::size_t>(i)]); };
        story.ends.push_back({QStringLiteral("from %1").arg(label(first)), line.front()});
        story.ends.push_back({QStringLiteral("into %1").arg(label(last)), line.back()});
        tell_airs(story, house, way.path, line);
    }
    tell_rooms(story, house, frame, paths, drawn, way.path.to());
    return story;
}

PictureStory story_of_gap(const House& house, const HouseFrame& frame, GapIndex index, std::span<const Point> line) {
    PictureStory story;
    const Gap& gap = house.survey[index];
    const auto at = gap_middle(house, index);
    const QString width = is_shut(gap.shape) ? QStringLiteral("closed") : gap_width_text(gap);
    story.way = plain(gap.label());
    story.detail = QStringLiteral("%1, %2").arg(shape_word(gap.shape), width);
    story.steps.push_back({{}, plain(gap.label()), width, at ? std::optional(frame.to_scene(*at)) : std::nullopt, true});
    story.notes << joined(house.survey, gap);
    if (gap.count > 1) story.notes << QStringLiteral("one of %1 alike").arg(gap.count);
    if (gap.depth) story.notes << QStringLiteral("%1 deep").arg(width_words(*gap.depth));
    if (!gap.substrates.empty()) {
        QStringList sides;
        for (const std::string& substrate : gap.substrates) sides << plain(substrate);
        story.notes << QStringLiteral("its sides: %1").arg(sides.join(", "));
    }
    tell_smallest(story, gap, "clear width");
    story.ring = 34;
    if (line.empty()) return story;
    story.way_passes = true;
    const std::vector<Point> from_first = house.places[index.value].through;
    const bool forward = distance(frame.to_scene(from_first.front()), line.front()) < 1e-6;
    story.ends.push_back({plain(house.survey[gap.between[forward ? 0 : 1]].label()), line.front()});
    story.ends.push_back({plain(house.survey[gap.between[forward ? 1 : 0]].label()), line.back()});
    return story;
}

}  // namespace seamward::viewer
