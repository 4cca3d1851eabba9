// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_story.h"

#include <algorithm>

#include "catalog/field_check.h"
#include "catalog/shipped.h"
#include "document/way_text.h"
#include "offscreen/drawn_way.h"

namespace seamward::viewer {

namespace {

constexpr std::ptrdiff_t most_rooms = 14;  ///< that are all named

QString plain(const std::string& text) { return QString::fromStdString(text).simplified(); }

QString closed_words(std::size_t count) {
    if (count == 0) return QStringLiteral("no gap is closed");
    return count == 1 ? QStringLiteral("1 gap is closed") : QStringLiteral("%1 gaps are closed").arg(count);
}

/// The middle of a room's floor plan, at the height of a table.
std::optional<Point> room_place(const MiddleSurface& room) {
    const Loop& loop = room.figure.outline;
    const double doubled = loop.size() < 3 ? 0 : doubled_area(loop);
    if (doubled == 0) return std::nullopt;
    Point2 sum;
    for (std::size_t i = 0; i < loop.size(); ++i) {
        const Point2 next = loop[i + 1 < loop.size() ? i + 1 : 0];
        sum = sum + (loop[i] + next) * cross(loop[i], next);
    }
    return room.frame.at(sum.x / (3 * doubled), sum.y / (3 * doubled), 0);
}

void tell_closed(PictureStory& story, const House& house, const HouseFrame& frame) {
    for (std::uint32_t i = 0; i < house.survey.gaps.size(); ++i) {
        const Gap& gap = house.survey.gaps[i];
        if (!is_shut(gap.shape)) continue;
        const auto at = gap_middle(house, {i});
        story.closed.push_back({plain(gap.label()), at ? std::optional(frame.to_scene(*at)) : std::nullopt});
    }
}

/// What the label of the smallest gap, or of the only one, says under its name.
void tell_smallest(PictureStory& story, const Gap& gap, const char* width_word) {
    story.width_word = QString::fromLatin1(width_word);
    if (!is_shut(gap.shape)) story.smallest_feel = plain(field_check(clear_width(gap.shape), shipped_gauges().rows));
    story.smallest_note = stays_open_text(gap);
}

/// Names the rooms but the one that the shown way ends in; of many rooms only those that a way leads to or through.
void tell_rooms(PictureStory& story, const House& house, const HouseFrame& frame, std::span<const DrawnPath> paths,
                std::optional<SpaceIndex> but) {
    const auto is_room = [](const Space& space) { return space.is_living() || space.kind == SpaceKind::attached; };
    const auto is_on_way = [&](SpaceIndex space) {
        return std::ranges::any_of(paths, [&](const DrawnPath& path) {
            return std::ranges::find(path.way.path.spaces, space) != path.way.path.spaces.end();
        });
    };
    const bool all = std::ranges::count_if(house.survey.spaces, is_room) <= most_rooms;
    for (std::uint32_t i = 0; i < std::min(house.survey.spaces.size(), house.middles.size()); ++i) {
        const Space& space = house.survey.spaces[i];
        if (but == SpaceIndex{i} || !is_room(space) || (!all && !is_on_way(SpaceIndex{i}))) continue;
        if (const auto at = room_place(house.middles[i])) story.rooms.push_back({plain(space.label()), frame.to_scene(*at)});
    }
}

/// "between yard and wall cavity"
QString joined(const Survey& survey, const Gap& gap) {
    return QStringLiteral("between %1 and %2").arg(plain(survey[gap.between[0]].label()), plain(survey[gap.between[1]].label()));
}

}  // namespace

PictureStory story_of_way(const House& house, const HouseFrame& frame, std::span<const DrawnPath> paths,
                          const PictureRequest& request, std::span<const Point> line) {
    PictureStory story;
    tell_closed(story, house, frame);
    const QString whose = request.animals.empty() ? QString() : QStringLiteral(" for %1").arg(plain(request.animals));
    if (paths.empty()) {
        tell_rooms(story, house, frame, paths, std::nullopt);
        story.way = QStringLiteral("No open way in%1").arg(whose);
        story.detail = closed_words(story.closed.size());
        return story;
    }
    const RankedPath& way = paths[request.rank - 1].way;
    const Survey& survey = house.survey;
    const QString of_how_many = QString::number(paths.size()) + (request.more_ways ? QStringLiteral(" or more") : QString());
    const QString from = plain(survey[way.path.from()].label());
    const QString to = plain(survey[way.path.to()].label());
    story.way = QStringLiteral("Way %1 of %2%3: %4 to %5").arg(QString::number(request.rank), of_how_many, whose, from, to);
    story.detail = QStringLiteral("smallest gap %1").arg(gap_width_text(survey[way.pinch_gap]));
    for (std::size_t i = 0; i < way.path.gaps.size(); ++i) {
        const GapIndex gap = way.path.gaps[i];
        const auto at = gap_middle(house, gap);
        story.steps.push_back({QString::number(i + 1), plain(survey[gap].label()), width_words(clear_width(survey[gap].shape)),
                               at ? std::optional(frame.to_scene(*at)) : std::nullopt, gap == way.pinch_gap});
    }
    tell_smallest(story, survey[way.pinch_gap], "smallest gap");
    if (!line.empty()) {
        story.ends.push_back({QStringLiteral("from %1").arg(from), line.front()});
        story.ends.push_back({QStringLiteral("into %1").arg(to), line.back()});
    }
    tell_rooms(story, house, frame, paths, way.path.to());
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
