// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/feature_words.h"

#include <QCoreApplication>
#include <array>

#include "document/translations.h"
#include "document/units_text.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(feature)
};

QString corner_words(FeaturePlace::Toward toward, bool compass) {
    const auto at = static_cast<std::size_t>(toward);
    return compass ? std::array{Words::tr("from the west corner"), Words::tr("from the east corner"),
                                Words::tr("from the south corner"), Words::tr("from the north corner")}
                         .at(at)
                   : std::array{Words::tr("from the left corner"), Words::tr("from the right corner"),
                                Words::tr("from the front corner"), Words::tr("from the back corner")}
                         .at(at);
}

QString end_words(FeaturePlace::Toward toward, bool compass) {
    const auto at = static_cast<std::size_t>(toward);
    return compass ? std::array{Words::tr("from the west end"), Words::tr("from the east end"), Words::tr("from the south end"),
                                Words::tr("from the north end")}
                         .at(at)
                   : std::array{Words::tr("from the left end"), Words::tr("from the right end"), Words::tr("from the front end"),
                                Words::tr("from the back end")}
                         .at(at);
}

/// "north wall", "ceiling, kitchen"
QString thing_words(const FeaturePlace& place) {
    const QString called = catalog_text(place.called), room = catalog_text(place.room);
    switch (place.hosts.front()) {
        case Host::wall:
            if (place.outside || room.isEmpty()) return called;
            return Words::tr("%1, inside, %2", "wall, room").arg(called, room);
        case Host::gable: return Words::tr("gable, %1", "wall").arg(called);
        case Host::partition: return room.isEmpty() ? called : Words::tr("%1, toward %2", "partition, room").arg(called, room);
        case Host::ceiling: return place.on.empty() ? Words::tr("ceiling, %1", "room").arg(called) : called;
        case Host::floor: return Words::tr("floor, %1", "room").arg(called);
        case Host::roof: return Words::tr("roof");
        case Host::eave: return Words::tr("eave, %1", "wall").arg(called);
        case Host::foundation: return Words::tr("foundation, %1", "wall").arg(called);
        case Host::rim: return Words::tr("edge of the floor, %1", "wall").arg(called);
        default: return called;
    }
}

}  // namespace

QString from_words(const FeaturePlace& place) {
    return place.is(Host::partition) || place.is(Host::block_wall) ? end_words(place.from, place.compass)
                                                                   : corner_words(place.from, place.compass);
}

QString across_words(const FeaturePlace& place) {
    return place.compass ? Words::tr("from the west side") : Words::tr("from the left side");
}

QString deep_words(const FeaturePlace& place) {
    return place.compass ? Words::tr("from the south side") : Words::tr("from the front");
}

QString place_words(const FeaturePlace& place, const PlaceNeeds& needs) {
    const QString thing = thing_words(place);
    if (needs.at) {
        const Point2 off = place.at - place.corner;
        return Words::tr("%1, %2 %3, %4 %5", "what, length, from where, length, from where")
            .arg(thing, distance_words(off.x), across_words(place), distance_words(off.y), deep_words(place));
    }
    const QString along = distance_words(place.along), up = distance_words(place.up - place.base);
    if (needs.along && needs.up)
        return Words::tr("%1, %2 %3, %4 up", "what, length, from where, height").arg(thing, along, from_words(place), up);
    if (needs.along) return Words::tr("%1, %2 %3", "what, length, from where").arg(thing, along, from_words(place));
    if (needs.up) return Words::tr("%1, %2 up", "what, height").arg(thing, up);
    return thing;
}

QString usual_name(const Feature& type, const FeaturePlace& place) {
    const QString what = catalog_text(type.name);
    if ((place.is(Host::wall) || place.is(Host::partition)) && !place.room.empty())
        return Words::tr("%1 by the %2", "what, room").arg(what, catalog_text(place.room));
    const bool of_room = place.is(Host::ceiling) || place.is(Host::floor);
    return Words::tr("%1, %2", "what, where").arg(what, of_room ? catalog_text(place.called) : thing_words(place));
}

}  // namespace seamward::viewer
