// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/new_house.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>

#include "document/house_places.h"
#include "document/square_cuts.h"
#include "document/units_text.h"
#include "document/usual_rooms.h"
#include "geometry/straight_skeleton.h"

namespace seamward::viewer {

namespace {

using Of = NewHouseFault::Of;
using Shape = NewHouse::Shape;

constexpr double least_side = 5, most_side = 60;  ///< of the main body
constexpr double least_wing = 3, most_wing = 40;  ///< of a wing, along the street
constexpr double least_reach = 1.5;               ///< of a wing past the main body
constexpr double least_beside = 1.5;              ///< of the back wall that a wing leaves
constexpr double least_court = 3;                 ///< between two wings: their eaves must not meet
constexpr double behind_garage = 1.2;             ///< left of the depth of the main body
constexpr double least_garage = 4.5, garage_depth = 6.1, one_car = 3.8, two_cars = 6.1;
constexpr std::size_t most_corners = 40;
constexpr double least_wall = 1;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(new_house)
};

double norm(Point2 a) { return std::hypot(a.x, a.y); }

Point2 at(const Loop& loop, std::size_t i) { return loop[i % loop.size()]; }

bool has_wing(const NewHouse& house) { return house.shape == Shape::l || house.shape == Shape::t || house.shape == Shape::u; }

/// Whether two sides without a common corner meet.
bool sides_meet(Point2 a, Point2 b, Point2 c, Point2 d) {
    const auto side = [](Point2 p, Point2 q, Point2 r) { return cross(q - p, r - p); };
    const double abc = side(a, b, c);
    const double abd = side(a, b, d);
    const double cda = side(c, d, a);
    const double cdb = side(c, d, b);
    return abc * abd <= 0 && cda * cdb <= 0 &&
           !(abc == 0 && abd == 0 && (norm(c - a) > norm(b - a) && norm(d - a) > norm(b - a)));
}

QString fault_of_corners(const Loop& corners) {
    if (corners.size() < 3) return Words::tr("An outline has three corners or more: one a line, such as 0 ft, 0 ft.");
    if (corners.size() > most_corners) return Words::tr("Give %1 corners at most.").arg(most_corners);
    const std::size_t count = corners.size();
    for (std::size_t i = 0; i < count; ++i) {
        const int one = static_cast<int>(i) + 1;
        const int two = static_cast<int>((i + 1) % count) + 1;
        if (norm(at(corners, i + 1) - corners[i]) < least_wall)
            return Words::tr("The wall from corner %1 to corner %2 is shorter than %3.")
                .arg(one)
                .arg(two)
                .arg(distance_words(least_wall));
        if (std::abs(corners[i].x) > 500 || std::abs(corners[i].y) > 500)
            return Words::tr("Corner %1 lies more than 500 m from the first one.").arg(one);
        for (std::size_t j = i + 2; j < count; ++j) {
            if (i == 0 && j + 1 == count) continue;
            if (sides_meet(corners[i], at(corners, i + 1), corners[j], at(corners, j + 1)))
                return Words::
                    tr("The walls from corner %1 and from corner %2 cross or touch; list the corners in order, round the house.")
                        .arg(one)
                        .arg(j + 1);
        }
    }
    if (std::abs(doubled_area(corners)) < 2 * 12.0) return Words::tr("An outline of less than 12 square meters is no house.");
    for (std::size_t i = 0; i < count; ++i) {
        const Point2 in = at(corners, i + 1) - corners[i];
        const Point2 out = at(corners, i + 2) - at(corners, i + 1);
        const double angle = std::atan2(std::abs(cross(in, out)), dot(in, out));
        if (angle > 2.4) return Words::tr("The walls at corner %1 meet too sharply.").arg((i + 1) % count + 1);
        if (angle < 0.02) return Words::tr("Leave corner %1 out: the wall runs straight on there.").arg((i + 1) % count + 1);
    }
    return {};
}

QString fault_of_side(double side, double least, double most) {
    if (side < least) return Words::tr("At least %1 is needed here.").arg(distance_words(least));
    if (side > most) return Words::tr("At most %1 fits here.").arg(distance_words(most));
    return {};
}

QString fault_of_wing_length(const NewHouse& house) {
    const QString plain = fault_of_side(house.wing_length, least_wing, most_wing);
    if (!plain.isEmpty()) return plain;
    const double left = house.length - house.wing_length * (house.shape == Shape::u ? 2 : 1);
    if (house.shape == Shape::u && left < least_court)
        return Words::tr("The two wings must leave %1 between them: make them shorter along the street, or the house longer.")
            .arg(distance_words(least_court));
    if (left < least_beside * (house.shape == Shape::t ? 2 : 1))
        return Words::tr("The wing must be shorter along the street than the house, by %1 on each open side.")
            .arg(distance_words(least_beside));
    return {};
}

QString fault_of_garage(const NewHouse& house) {
    if (house.garage == NewHouse::Garage::none) return {};
    if (house.shape == Shape::corners)
        return Words::tr("A house of typed corners gets no garage here; add it to the house file by hand.");
    const double wide = house.garage == NewHouse::Garage::two_cars ? two_cars : one_car;
    if (house.length - wide < least_side - 1)
        return Words::tr("There is no room for it: the house must be %1 long or longer.")
            .arg(distance_words(wide + least_side - 1));
    if (house.depth - behind_garage < least_garage)
        return Words::tr("There is no room for it: the main body must be %1 deep or deeper.")
            .arg(distance_words(least_garage + behind_garage));
    return {};
}

QString fault_of_roof(const NewHouse& house) {
    const Loop outline = outline_of(house);
    if (house.roof == NewHouse::Roof::gable && gable_walls(outline).empty())
        return Words::tr("No wall of this outline can carry a gable; choose another roof.");
    if (house.roof == NewHouse::Roof::shed && low_wall(outline) == outline.size())
        return Words::tr("A shed roof needs square corners, and one wall that none reaches past; choose another roof.");
    return {};
}

QString fault_of_rooms(const NewHouse& house) {
    if (usual_rooms(house)) return {};
    if (!is_square(outline_of(house)))
        return Words::tr(
            "Rooms are laid out only where all walls run along the street or straight back from it; choose no rooms.");
    const RoomCount most = most_rooms(house);
    if (most.bedrooms == 0) return Words::tr("This house is too small or too narrow for rooms; choose no rooms.");
    const QString bedrooms = Words::tr("%n bedroom(s)", "", most.bedrooms);
    return Words::tr("So many rooms do not fit into this outline: %1 with %2 would.")
        .arg(bedrooms, Words::tr("%n bath(s)", "", most.baths));
}

}  // namespace

Loop outline_of(const NewHouse& house) {
    const double w = house.length;
    const double d = house.depth;
    const double a = house.wing_length;
    const double e = house.depth + house.wing_depth;
    switch (house.shape) {
        case Shape::rectangle: return {{0, 0}, {w, 0}, {w, d}, {0, d}};
        case Shape::l: return {{0, 0}, {w, 0}, {w, e}, {w - a, e}, {w - a, d}, {0, d}};
        case Shape::t: {
            const double left = (w - a) / 2;
            return {{0, 0}, {w, 0}, {w, d}, {left + a, d}, {left + a, e}, {left, e}, {left, d}, {0, d}};
        }
        case Shape::u: return {{0, 0}, {w, 0}, {w, e}, {w - a, e}, {w - a, d}, {a, d}, {a, e}, {0, e}};
        case Shape::corners: break;
    }
    if (house.corners.size() < 3) return {};
    Loop outline = house.corners;
    if (doubled_area(outline) < 0) {
        std::ranges::reverse(outline);
        std::ranges::rotate(outline, outline.end() - 2);  // the front is between the first two typed, then as before
    }
    return outline;
}

Point2 garage_size(const NewHouse& house) {
    if (house.garage == NewHouse::Garage::none || house.shape == Shape::corners) return {};
    return {house.garage == NewHouse::Garage::two_cars ? two_cars : one_car, std::min(garage_depth, house.depth - behind_garage)};
}

std::vector<std::size_t> gable_walls(const Loop& outline) {
    std::vector<std::size_t> walls;
    const std::size_t count = outline.size();
    const std::vector<SkeletonFace> faces = straight_skeleton(outline);
    for (std::size_t i = 0; i < count; ++i) {
        const Point2 before = outline[i] - at(outline, i + count - 1);
        const Point2 along = at(outline, i + 1) - outline[i];
        const Point2 after = at(outline, i + 2) - at(outline, i + 1);
        const auto square = [](Point2 a, Point2 b) { return std::abs(dot(a, b)) < 1e-9 * norm(a) * norm(b); };
        if (faces[i].outline.size() != 3 || !square(before, along) || !square(along, after)) continue;
        const bool beside = !walls.empty() && (walls.back() + 1 == i || (walls.front() == 0 && i + 1 == count));
        if (!beside) walls.push_back(i);
    }
    return walls;
}

std::size_t low_wall(const Loop& outline) {
    const std::size_t count = outline.size();
    std::size_t best = count;
    double longest = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double length = norm(at(outline, i + 1) - outline[i]);
        const Point2 along = (at(outline, i + 1) - outline[i]) * (1 / length);
        bool fits = length > longest;
        for (std::size_t j = 0; j < count && fits; ++j) {
            const Point2 other = at(outline, j + 1) - outline[j];
            fits = std::min(std::abs(dot(other, along)), std::abs(cross(other, along))) < 1e-9 * norm(other) &&
                   cross(along, outline[j] - outline[i]) > -1e-9;
        }
        if (!fits) continue;
        best = i;
        longest = length;
    }
    return best;
}

std::vector<NewHouseFault> faults_of(const NewHouse& house) {
    std::vector<NewHouseFault> faults;
    const auto tell = [&](Of of, const QString& text) {
        if (!text.isEmpty()) faults.push_back({of, text});
    };
    if (QString::fromStdString(house.name).trimmed().isEmpty())
        tell(Of::name, Words::tr("Give the house a name, such as the customer's or the street and number."));
    if (house.shape == Shape::corners) {
        tell(Of::corners, fault_of_corners(house.corners));
    } else {
        tell(Of::length, fault_of_side(house.length, least_side, most_side));
        tell(Of::depth, fault_of_side(house.depth, least_side, most_side));
    }
    if (has_wing(house)) {
        tell(Of::wing_length, fault_of_wing_length(house));
        tell(Of::wing_depth, fault_of_side(house.wing_depth, least_reach, most_side));
    }
    tell(Of::garage, fault_of_garage(house));
    const bool has_outline =
        std::ranges::all_of(faults, [](const NewHouseFault& fault) { return fault.of == Of::name || fault.of == Of::garage; });
    if (has_outline) {
        tell(Of::roof, fault_of_roof(house));
        if (std::ranges::count(faults, Of::garage, &NewHouseFault::of) == 0) tell(Of::rooms, fault_of_rooms(house));
    }
    return faults;
}

std::string yaml_quoted(const std::string& text) {
    std::string quoted = "\"";
    for (const char c : text) {
        const auto code = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\') quoted += '\\';
        quoted += code < 0x20 || code == 0x7f ? ' ' : c;
    }
    return quoted + '"';
}

QString file_word(const QString& name) {
    QString word;
    for (const QChar c : name.normalized(QString::NormalizationForm_KD).toLower()) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (plain) word += c;
        if (!plain && c.category() != QChar::Mark_NonSpacing && !word.isEmpty() && !word.endsWith('-')) word += '-';
    }
    word.truncate(60);
    while (word.endsWith('-')) word.chop(1);
    return word.isEmpty() ? QStringLiteral("house") : word;
}

}  // namespace seamward::viewer
