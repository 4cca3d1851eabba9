// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <span>
#include <vector>

#include "layers/house_groups.h"
#include "offscreen/draw_picture.h"

namespace seamward::viewer {

/// What a picture tells in words, and where the words belong. Places are of the scene.
struct PictureStory {
    /// A gap with its number.
    struct Step {
        QString number;  ///< empty: a gap seen from close by
        QString name;
        QString width;  ///< "3/64 in (1.2 mm)"
        std::optional<Point> at;
        bool smallest = false;
    };
    /// A word or two at the end of a way, or on what a section cuts, or on air that a way runs through.
    struct Word {
        QString text;
        Point at;
    };
    /// The name of a room, for a post on its floor.
    struct Room {
        QString text;               ///< "kitchen", or "kitchen, story 1" where there are several
        std::vector<Point> places;  ///< on its floor, off its walls, the best one first; never empty
    };

    /// A gap that nothing gets through any more.
    struct Closed {
        QString name;
        std::optional<Point> at;
        bool is_hidden = false;  ///< behind something that is not faded
    };

    QString heading;
    QString way;        ///< "Way 1 of 3: yard to kitchen"; or what there is to say instead
    QString detail;     ///< "smallest gap 3/64 in (1.2 mm)"
    bool known = true;  ///< false: no way in could be told, since none can begin or end
    std::vector<Step> steps;
    double ring = 13;       ///< radius of the ring around the smallest gap, units
    QString width_word;     ///< before the width of the smallest gap: "smallest gap"
    QString smallest_feel;  ///< "between a card and a dime": its width in things at hand
    QString smallest_note;  ///< "never close: smoke has to leave"; may be empty
    std::vector<Word> ends;
    std::vector<Room> rooms;
    std::vector<Word> airs;    ///< an attic, a crawl space ... that the shown way runs through
    std::vector<Word> layers;  ///< what a section cuts through
    std::vector<Point> sides;  ///< of the gap that a section shows: not to be covered
    std::vector<Closed> closed;
    std::size_t thin_ways = 0;   ///< other ways that are drawn, ...
    std::size_t other_ways = 0;  ///< ... of so many ...
    bool more_ways = false;      ///< ... or of more
    bool way_passes = false;     ///< the way through the gap seen from close by is drawn
    QStringList notes;           ///< of a gap seen from close by, a line each
    QString faded;               ///< "Faded to show the inside: roof, near walls."; may be empty
};

/// The story of the way shown. `drawn`: which of the paths are drawn; `line`: how the shown one is.
[[nodiscard]] PictureStory story_of_way(const House& house, const HouseFrame& frame, std::span<const DrawnPath> paths,
                                        std::span<const std::size_t> drawn, const PictureRequest& request,
                                        std::span<const Point> line);

/// The story of one gap. `line`: the way through it, from its outer side, as it is drawn; may be empty.
[[nodiscard]] PictureStory story_of_gap(const House& house, const HouseFrame& frame, GapIndex gap, std::span<const Point> line);

}  // namespace seamward::viewer
