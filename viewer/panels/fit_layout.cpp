// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/fit_layout.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QTransform>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "document/units_text.h"
#include "document/way_text.h"

namespace seamward::viewer {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(fit)
};

// Pixels
constexpr double side = 8;            ///< left and right of all
constexpr double edge = 4;            ///< above and below all
constexpr double apart = 10;          ///< least between columns
constexpr double body = 7;            ///< least of what is around an opening
constexpr double readable = 4;        ///< the clear width and the first animal's slit are drawn at least so high
constexpr double usual_band = 42;     ///< of the drawings over the words
constexpr double least_band = 24;     ///< the same for one animal or two, with large letters
constexpr double least_slot = 64;     ///< width of the opening's window where it may be any
constexpr double opening_part = 0.4;  ///< of the whole width, for the opening if it can be had
constexpr double least_mm = 0.01;     ///< narrower than that need not be readable

double mm(double meters) { return meters * 1e3; }

/// A column before the scale is known.
struct Item {
    QSizeF need;        ///< millimeters
    double around = 0;  ///< pixels at each side
    double least = 0;   ///< pixels, of its window and words
    QStringList lines{};

    [[nodiscard]] double wide(double scale, double most) const {
        return std::max(least, std::min(need.width() * scale + 2 * around, most));
    }
};

/// Its words in one line, or in two about as wide.
QStringList wrapped(const QString& text, int lines, const QFontMetricsF& metrics) {
    QStringList best{text};
    if (lines == 1) return best;
    double width = metrics.horizontalAdvance(text);
    for (int at = text.indexOf(' '); at >= 0; at = text.indexOf(' ', at + 1)) {
        const QStringList two{text.left(at), text.mid(at + 1)};
        const double wide = std::max(metrics.horizontalAdvance(two[0]), metrics.horizontalAdvance(two[1]));
        if (wide < width) best = two;
        width = std::min(width, wide);
    }
    return best;
}

double width_of(const QStringList& lines, const QFontMetricsF& metrics) {
    double wide = 0;
    for (const QString& line : lines) wide = std::max(wide, metrics.horizontalAdvance(line));
    return std::ceil(wide) + 1;
}

QFont bold(QFont font, bool wanted) {
    font.setBold(wanted);
    return font;
}

QString opening_words(const Shape& shape) { return is_shut(shape) ? Words::tr("closed") : width_words(clear_width(shape)); }

QSizeF needed_by(const Shape& shape) {
    if (is_shut(shape)) return {0, 0};
    if (std::holds_alternative<Slot>(shape)) return {0, mm(clear_width(shape))};
    const auto* ring = std::get_if<Ring>(&shape);
    const double across = mm(ring == nullptr ? clear_width(shape) : ring->around + 2 * ring->width);
    return {across, across};
}

/// "3/64 in" over "(1.2 mm)"; in one line, only the first of them where both are wider than `most`.
QStringList opening_lines(const Shape& shape, int lines, double most, const QFontMetricsF& metrics) {
    const QString words = opening_words(shape);
    const int second = words.indexOf(" (");
    if (second < 0 || (lines == 1 && metrics.horizontalAdvance(words) < most)) return {words};
    return lines == 1 ? QStringList{words.left(second)} : QStringList{words.left(second), words.mid(second + 1)};
}

/// The opening and the first `count` animals with their words.
std::vector<Item> items_of(const FitSubject& subject, std::size_t count, int lines, double most, const QFont& font) {
    const QFontMetricsF metrics(font);
    Item opening{needed_by(subject.shape), body, least_slot, opening_lines(subject.shape, lines, most, metrics)};
    const double bar = 30 + std::max(metrics.horizontalAdvance(Words::tr("%1 in").arg("1/16")),
                                     metrics.horizontalAdvance(Words::tr("%1 mm").arg("0.05")));
    opening.least = std::max({opening.least, width_of(opening.lines, metrics), bar});
    std::vector<Item> all{opening};
    for (std::size_t i = 0; i < count; ++i) {
        const FitAnimal& animal = subject.animals[i];
        const QFontMetricsF letters(bold(font, subject.chosen && i == 0));
        Item item{
            {mm(animal.pest.size.hole), mm(animal.pest.size.slit)}, 0, 0, wrapped(animal_text(animal.pest), lines, letters)};
        const double sign = metrics.ascent() * 1.4;
        item.least = std::max(width_of(item.lines, letters), sign + width_of({fit_words(animal.fit)}, metrics));
        all.push_back(item);
    }
    return all;
}

double total(const std::vector<Item>& items, double scale, double most) {
    double wide = apart * static_cast<double>(items.size() - 1);
    for (const Item& item : items) wide += item.wide(scale, most);
    return wide;
}

/// The largest number from 0 to `high` that still is right, where all below one that is are right too.
template <class Right>
double largest(double high, Right right) {
    double low = 0;
    for (int i = 0; i < 80; ++i) {
        const double middle = (low + high) / 2;
        (right(middle) ? low : high) = middle;
    }
    return low;
}

double scale_for(const FitSubject& subject, const std::vector<Item>& items, const QSizeF& room) {
    double finest = is_shut(subject.shape) ? HUGE_VAL : mm(clear_width(subject.shape));
    if (items.size() > 1 && subject.animals[0].pest.size.slit > 0)
        finest = std::min(finest, mm(subject.animals[0].pest.size.slit));
    if (!std::isfinite(finest)) return 0;
    const double all = largest(1e4, [&](double scale) {
        const bool high = std::ranges::all_of(
            items, [&](const Item& item) { return item.need.height() * scale + 2 * item.around + 2 <= room.height(); });
        return high && total(items, scale, HUGE_VAL) <= room.width();
    });
    return std::max(all, readable / std::max(finest, least_mm));
}

struct Choice {
    std::vector<Item> items;
    double band = 0;
};

/// As many animals as there is room for with their words; names in one line if that is possible.
Choice chosen_items(const FitSubject& subject, const QSizeF& size, const QFont& font, double line) {
    const double width = size.width() - 2 * side;
    const auto choice = [&](std::size_t count, int lines) {
        Choice made{items_of(subject, count, lines, width * opening_part, font), 0};
        const auto longest = std::ranges::max(made.items, {}, [](const Item& item) { return item.lines.size(); });
        made.band = size.height() - 2 * edge - line * (longest.lines.size() + 1) - 4;
        return made;
    };
    const std::size_t most = std::min(subject.animals.size(), FitSubject::most_animals);
    for (std::size_t count = most; count > 0; --count) {
        for (const int lines : {1, 2}) {
            Choice made = choice(count, lines);
            if (made.band >= (count > 2 ? usual_band : least_band) && total(made.items, 0, HUGE_VAL) <= width) return made;
        }
    }
    // What no longer fits is shortened where it is drawn.
    Choice made = choice(std::min<std::size_t>(most, 1), 1);
    const double gaps = apart * static_cast<double>(made.items.size() - 1);
    const double share = (width - gaps) / std::max(1.0, total(made.items, 0, HUGE_VAL) - gaps);
    for (Item& item : made.items) item.least *= std::clamp(share, 0.0, 1.0);
    return made;
}

/// `item` at that scale: in the middle of its window, or, where it is higher, from the window's lower edge up.
QRectF placed(const QSizeF& pixels, const QRectF& window, double around) {
    QRectF shape(QPointF(), pixels);
    shape.moveCenter(window.center());
    if (pixels.height() > window.height() - 2 * around + 0.5) shape.moveBottom(window.bottom() - around);
    return shape;
}

/// Animal of `size` around (0, 0) in pixels, bent around a pipe below which it lies where `radius` is not 0.
QPainterPath outline_of(const QSizeF& size, double radius) {
    constexpr int corners = 96;
    QPolygonF points;
    for (int i = 0; i <= corners; ++i) {
        const double turn = 2 * std::numbers::pi * i / corners;
        const double along = size.width() / 2 * std::cos(turn), across = size.height() / 2 * std::sin(turn);
        if (radius == 0) {
            points << QPointF(along, across);
        } else {
            const double angle = along / radius;
            points << QPointF((radius + across) * std::sin(angle), (radius + across) * std::cos(angle) - radius);
        }
    }
    QPainterPath path;
    path.addPolygon(points);
    path.closeSubpath();
    return path;
}

QPainterPath lying_in(const FitSubject& subject, const FitLayout& layout) {
    const FitAnimal* animal = subject.inside();
    if (animal == nullptr || is_shut(subject.shape)) return {};
    const QSizeF size = QSizeF(mm(animal->pest.size.hole), mm(animal->pest.size.slit)) * layout.scale;
    const QRectF& clear = layout.opening.shape;
    if (size.width() > layout.opening.window.width() || size.height() > layout.opening.window.height()) return {};
    const bool fits = animal->fit == Fit::through;
    const auto at = [&](double height) { return QPointF(clear.center().x(), height); };
    if (std::holds_alternative<Ring>(subject.shape)) {
        const double radius = (clear.height() + layout.pipe.height()) / 4;
        const bool bent = size.width() <= 2 * std::numbers::pi * radius;
        return outline_of(size, bent ? radius : 0).translated(at(clear.center().y() + radius));
    }
    if (std::holds_alternative<Mesh>(subject.shape)) {  // turned to the diagonal, as passes() counts it
        return QTransform().translate(clear.center().x(), clear.center().y()).rotate(45).map(outline_of(size, 0));
    }
    const double rests = std::holds_alternative<Slot>(subject.shape) ? size.height() / 2 : size.width() / 2;
    return outline_of(size, 0).translated(at(fits ? clear.bottom() - rests : clear.center().y()));
}

struct Round {
    double mm;
    QString words;
};

/// Lengths for a scale bar, from long to short.
std::vector<Round> round_lengths() {
    std::vector<Round> all;
    if (lengths_written() == Lengths::inches_first) {
        for (const int inches : {480, 240, 120, 48, 24, 12, 6, 4, 2, 1})
            all.push_back({inches * 25.4, Words::tr("%1 in").arg(inches)});
        for (const int part : {2, 4, 8, 16, 32, 64})
            all.push_back({25.4 / part, Words::tr("%1 in").arg(QString("1/%1").arg(part))});
    }
    for (double ten = 1e4; ten > 1e-5; ten /= 10) {  // below 1/64 in nobody speaks of inches
        for (const double times : {2.0, 1.0, 0.5}) {
            if (all.empty() || times * ten < all.back().mm * 0.99)
                all.push_back({times * ten, Words::tr("%1 mm").arg(times * ten)});
        }
    }
    return all;
}

void place_bar(FitLayout& layout, const QFontMetricsF& metrics) {
    const QRectF last(layout.opening.words.left(), layout.opening.words.bottom() - layout.line, layout.opening.words.width(),
                      layout.line);
    for (const Round& length : round_lengths()) {
        const double wide = length.mm * layout.scale, words = std::ceil(metrics.horizontalAdvance(length.words)) + 1;
        if (wide > last.width() * 0.6 || wide + 6 + words > last.width()) continue;
        const double left = last.center().x() - (wide + 6 + words) / 2;
        layout.bar = QLineF(left, last.center().y(), left + wide, last.center().y());
        layout.bar_words = length.words;
        layout.bar_box = QRectF(left + wide + 6, last.top(), words, layout.line);
        return;
    }
}

}  // namespace

const FitAnimal* FitSubject::inside() const {
    return !animals.empty() && (chosen || animals[0].fit == Fit::through) ? animals.data() : nullptr;
}

QString fit_words(Fit fit) {
    if (fit == Fit::through) return Words::tr("fits", "an animal in a gap");
    return fit == Fit::perhaps ? Words::tr("perhaps", "an animal fits in a gap") : Words::tr("kept out", "an animal by a gap");
}

FitSubject fit_subject(const Job& job, GapIndex gap, std::optional<std::size_t> chosen_animal) {
    FitSubject subject{job.survey[gap].shape, {}, chosen_animal && *chosen_animal < job.pests.size()};
    std::vector<FitAnimal> passing, others;
    for (std::size_t i = 0; i < job.pests.size(); ++i) {
        const Pest& pest = job.pests[i];
        const auto passes = [&](Sizing sizing) { return lets_through(job.survey[gap], pest.size, sizing); };
        const Fit fit = passes(Sizing::stated) ? Fit::through : passes(Sizing::with_plus_minus) ? Fit::perhaps : Fit::kept_out;
        const bool asked = subject.chosen && i == *chosen_animal;
        (asked ? subject.animals : fit == Fit::through ? passing : others).push_back({pest, fit});
    }
    const auto area = [](const FitAnimal& animal) { return animal.pest.size.slit * animal.pest.size.hole; };
    std::ranges::stable_sort(passing, std::ranges::greater(), area);
    std::ranges::stable_sort(others, std::ranges::less(), area);
    for (std::size_t i = 0; i < std::max(passing.size(), others.size()); ++i) {
        if (i < passing.size()) subject.animals.push_back(passing[i]);
        if (i < others.size()) subject.animals.push_back(others[i]);
    }
    subject.animals.resize(std::min(subject.animals.size(), FitSubject::most_animals));
    return subject;
}

Qt::Edges FitLayout::Column::torn() const {
    constexpr double slack = 0.5;
    Qt::Edges edges;
    if (shape.left() < window.left() - slack) edges |= Qt::LeftEdge;
    if (shape.right() > window.right() + slack) edges |= Qt::RightEdge;
    if (shape.top() < window.top() - slack) edges |= Qt::TopEdge;
    return edges;
}

FitLayout fit_layout(const FitSubject& subject, const QSizeF& size, const QFont& font) {
    const QFontMetricsF metrics(font);
    FitLayout layout;
    layout.line = std::ceil(metrics.height());
    const auto [items, band] = chosen_items(subject, size, font, layout.line);
    const QSizeF room(size.width() - 2 * side, std::max(1.0, band));
    layout.scale = scale_for(subject, items, room);
    const double most = largest(1e4, [&, &items = items](double cap) { return total(items, layout.scale, cap) <= room.width(); });
    // What is left over goes to the opening, and between the columns.
    double left_over = std::max(0.0, room.width() - total(items, layout.scale, most));
    const double more = std::clamp(room.width() * opening_part - items[0].wide(layout.scale, most), 0.0, left_over);
    left_over -= more;
    const double between = apart + std::min(30.0, left_over / static_cast<double>(items.size()));
    double x = side;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const Item& item = items[i];
        const double wide = item.wide(layout.scale, most) + (i == 0 ? more : 0);
        FitLayout::Column column{QRectF(x, edge, wide, room.height()), {}, {}, item.lines};
        column.shape = placed(item.need * layout.scale, column.window, item.around);
        column.words = QRectF(x, column.window.bottom() + 4, wide, size.height() - edge - column.window.bottom() - 4);
        (i == 0 ? layout.opening : layout.animals.emplace_back()) = column;
        x += wide + between;
    }
    if (const auto* slot = std::get_if<Slot>(&subject.shape); slot != nullptr && !is_shut(subject.shape)) {
        const double half = mm(slot->length) * layout.scale / 2;
        layout.opening.shape.adjust(-half, 0, half, 0);
    }
    if (const auto* ring = std::get_if<Ring>(&subject.shape); ring != nullptr && !is_shut(subject.shape)) {
        const double clear = mm(ring->width) * layout.scale;
        layout.pipe = layout.opening.shape.adjusted(clear, clear, -clear, -clear);
    }
    layout.lying = lying_in(subject, layout);
    if (layout.animals.empty()) layout.note = QRectF(x, edge, size.width() - side - x, room.height());
    if (layout.scale > 0) place_bar(layout, metrics);
    return layout;
}

}  // namespace seamward::viewer
