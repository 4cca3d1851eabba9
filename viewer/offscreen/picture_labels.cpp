// SPDX-License-Identifier: GPL-3.0-or-later
#include "offscreen/picture_labels.h"

#include <QFontMetricsF>
#include <algorithm>
#include <cmath>
#include <numbers>
#include <optional>

#include "layers/label_places.h"
#include "layers/palette.h"
#include "offscreen/lettering.h"

namespace seamward::viewer {

namespace {

using namespace lettering;
using Kind = PlacedLabel::Kind;

constexpr double disc = 13;  ///< radius of a number's disc
constexpr double dot = 8;    ///< what a dot takes
constexpr double foot = 6;   ///< what the foot of a room's post takes
constexpr double tick = 17;
constexpr double box_width = 400;  ///< of the smallest gap's words, at most
constexpr double pad_x = 13, pad_y = 9;
constexpr int name_size = 17, small_size = 15;

QSizeF wrapped(const QFont& font, const QString& text, double width) {
    return text.isEmpty() ? QSizeF(0, 0)
                          : QFontMetricsF(font).boundingRect(QRectF(0, 0, width, 400), Qt::TextWordWrap, text).size();
}

/// From the left edge of the smallest gap's box to its words: past the bar and the number.
constexpr double words_in_box = pad_x + 2 * disc + 9;

QSizeF size_of(const PlacedLabel& label) {
    switch (label.kind) {
        case Kind::smallest: {
            const QSizeF name = wrapped(words(name_size, true), label.text, box_width);
            const QSizeF more = wrapped(words(small_size), label.more, box_width);
            const double left = label.number.isEmpty() ? pad_x : words_in_box;
            return {std::ceil(std::max(name.width(), more.width())) + left + pad_x + 2,
                    std::ceil(name.height() + more.height()) + 2 * pad_y + 3};
        }
        case Kind::step: return {2 * disc, 2 * disc};
        case Kind::room:
        case Kind::air: return {std::ceil(width_of(slanted(small_size), label.text)) + 8, 21};
        case Kind::tick: return {tick, tick};
        case Kind::layer: return {std::ceil(width_of(words(small_size), label.text)) + 14, 23};
        case Kind::end: break;
    }
    return {std::ceil(width_of(words(name_size), label.text)) + 26, 32};
}

double away(const PlacedLabel& label) {
    switch (label.kind) {
        case Kind::smallest: return label.number.isEmpty() ? 150 : 58;  // a section is not to be covered near its gap
        case Kind::step: return 20;
        case Kind::end: return 24;
        case Kind::layer: return 14;
        case Kind::room:
        case Kind::air:
        case Kind::tick: break;
    }
    return 0;
}

class Layout {
public:
    Layout(const OrbitCamera& camera, const QSizeF& sheet, const QRectF& area, std::span<const QRectF> taken)
        : camera_(camera), sheet_(sheet), area_(area), taken_(taken.begin(), taken.end()) {}

    [[nodiscard]] std::optional<QPointF> shown(const Point& at) const {
        const auto point = camera_.shown_at(at, sheet_.width(), sheet_.height());
        if (!point || !QRectF(QPointF(), sheet_).contains(point->x, point->y)) return std::nullopt;
        return QPointF(point->x, point->y);
    }

    void keep_clear(std::span<const Point> line) {
        std::optional<QPointF> last;
        for (const Point& at : line) {
            const auto point = shown(at);
            if (point && last) keep_clear(*last, *point);
            last = point;
        }
    }
    void keep_clear(const QPointF& from, const QPointF& to) {
        const QPointF step = to - from;
        const int pieces = std::max(1, static_cast<int>(std::hypot(step.x(), step.y()) / 9));
        for (int i = 0; i < pieces; ++i) clear_.push_back({from + step * (static_cast<double>(i) / pieces), 0});
    }
    void keep_clear(const QPointF& at, double radius) { clear_.push_back({at, radius}); }

    void wish(PlacedLabel label) { wished_.push_back(std::move(label)); }

    /// Gives every wish a place, in their order.
    [[nodiscard]] std::vector<PlacedLabel> placed() {
        std::vector<LabelWish> wishes;
        for (const QRectF& rect : taken_) wishes.push_back({rect.topLeft(), rect.size(), 0, true});
        for (const PlacedLabel& label : wished_) wishes.push_back({label.anchor, size_of(label), away(label)});
        const std::vector<QRectF> places = place_labels(wishes, clear_, area_);
        std::vector<PlacedLabel> all;
        for (std::size_t i = 0; i < wished_.size(); ++i) {
            wished_[i].place = places[taken_.size() + i];
            add(all, wished_[i]);
        }
        return all;
    }

    /// Adds a label on a post, as near to the post's top as there is room; none where there is no room anywhere near. The post
    /// leads from the anchor to the label and crosses no other. Returns whether there was room.
    bool add_on_post(std::vector<PlacedLabel>& all, PlacedLabel label, const QPointF& top) const {
        constexpr int rings = 16;
        constexpr int directions = 16;
        constexpr double step = 11;
        const QSizeF size = size_of(label);
        for (int ring = 0; ring < rings; ++ring) {
            for (int i = 0; i < (ring == 0 ? 1 : directions); ++i) {
                // Straight up first, then to both sides.
                const double turn = 2 * std::numbers::pi / directions * ((i % 2 == 0 ? 1 : -1) * ((i + 1) / 2));
                QRectF rect(QPointF(), size);
                rect.moveCenter(top + ring * step * QPointF(std::sin(turn), -std::cos(turn)));
                if (!is_free(rect.adjusted(-2, -2, 2, 2), all) || rect.adjusted(-4, -4, 4, 4).contains(label.anchor)) continue;
                if (crosses(label.anchor, rect.center(), all)) continue;
                label.place = rect;
                all.push_back(std::move(label));
                return true;
            }
        }
        return false;
    }

    /// Adds a label if it has a place of its own.
    void add(std::vector<PlacedLabel>& all, const PlacedLabel& label) const {
        const auto meets = [&](const QRectF& other) { return other.intersects(label.place); };
        if (!area_.contains(label.place) || std::any_of(taken_.begin(), taken_.end(), meets)) return;
        if (std::any_of(all.begin(), all.end(), [&](const PlacedLabel& other) { return meets(other.place); })) return;
        all.push_back(label);
    }

private:
    [[nodiscard]] bool is_free(const QRectF& rect, std::span<const PlacedLabel> all) const {
        if (!area_.contains(rect)) return false;
        if (std::ranges::any_of(taken_, [&](const QRectF& other) { return rect.intersects(other); })) return false;
        if (std::ranges::any_of(all, [&](const PlacedLabel& other) { return rect.intersects(other.place); })) return false;
        return std::ranges::none_of(clear_, [&](const KeptClear& kept) {
            const double radius = kept.radius;
            return rect.adjusted(-radius, -radius, radius, radius).contains(kept.at);
        });
    }

    /// Whether a post would run over another label.
    [[nodiscard]] static bool crosses(const QPointF& from, const QPointF& to, std::span<const PlacedLabel> all) {
        constexpr int pieces = 24;
        for (int i = 0; i <= pieces; ++i) {
            const QPointF at = from + (to - from) * (static_cast<double>(i) / pieces);
            if (std::ranges::any_of(all, [&](const PlacedLabel& other) { return other.place.contains(at); })) return true;
        }
        return false;
    }

    const OrbitCamera& camera_;
    QSizeF sheet_;
    QRectF area_;
    std::vector<QRectF> taken_;
    std::vector<KeptClear> clear_;
    std::vector<PlacedLabel> wished_;
};

QString smallest_words(const PictureStory& story, const PictureStory::Step& step) {
    QString text = story.width_word + ": " + step.width;
    for (const QString& more : {story.smallest_feel, story.smallest_note}) {
        if (!more.isEmpty()) text += '\n' + more;
    }
    return text;
}

/// Where the leader from a label's anchor ends, inside of the label.
QPointF leader_end(const PlacedLabel& label) {
    const QRectF inside = label.place.adjusted(6, 6, -6, -6);
    return {std::clamp(label.anchor.x(), inside.left(), std::max(inside.left(), inside.right())),
            std::clamp(label.anchor.y(), inside.top(), std::max(inside.top(), inside.bottom()))};
}

void paint_leader(QPainter& painter, const PlacedLabel& label) {
    const QPointF end = leader_end(label);
    const QPointF step = end - label.anchor;
    const double size = std::hypot(step.x(), step.y());
    const bool is_faint = label.kind == Kind::layer || label.kind == Kind::room || label.kind == Kind::air;
    const double symbol = label.kind == Kind::smallest ? label.ring + 2 : label.kind == Kind::step ? 6 : is_faint ? 1 : 3;
    if (size <= symbol) return;
    const QPointF begin = label.anchor + step * (symbol / size);
    painter.setPen(QPen(light_paper, 4, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(begin, end);
    const QColor ink = is_faint ? palette::soft_ink : palette::way;
    painter.setPen(QPen(label.is_smallest ? palette::smallest : ink, is_faint ? 1.3 : 1.8, Qt::SolidLine, Qt::RoundCap));
    painter.drawLine(begin, end);
}

/// Where a layer's leader ends.
void paint_foot(QPainter& painter, const QPointF& at) {
    painter.setPen(QPen(light_paper, 1.2));
    painter.setBrush(palette::ink);
    painter.drawEllipse(at, 3.2, 3.2);
}

/// The foot of a room's post, flat on the floor.
void paint_floor_foot(QPainter& painter, const PlacedLabel& label) {
    constexpr double radius = 9;
    painter.setPen(QPen(palette::soft_ink, 1.3));
    painter.setBrush(QColor(255, 253, 249, 190));
    painter.drawEllipse(label.anchor, radius, radius * label.flat);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette::soft_ink);
    painter.drawEllipse(label.anchor, 2.6, 2.6 * label.flat);
}

void paint_smallest(QPainter& painter, const PlacedLabel& label) {
    const QRectF& place = label.place;
    paint_card(painter, place, light_paper, palette::smallest, 9);
    const double first = QFontMetricsF(words(name_size, true)).height();
    if (!label.number.isEmpty())
        paint_disc(painter, QPointF(place.left() + pad_x + disc, place.top() + pad_y + first / 2 + 1), disc, label.number, true);
    const double left = label.number.isEmpty() ? pad_x : words_in_box;
    const QRectF inside = place.adjusted(left, pad_y, -pad_x + 2, -pad_y);
    painter.setPen(palette::ink);
    painter.setFont(words(name_size, true));
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, label.text);
    painter.setFont(words(small_size));
    painter.drawText(inside, Qt::AlignLeft | Qt::AlignBottom | Qt::TextWordWrap, label.more);
}

void paint_words(QPainter& painter, const PlacedLabel& label) {
    if (label.kind == Kind::end) {
        paint_card(painter, label.place, light_paper, palette::way, label.place.height() / 2);
        painter.setPen(palette::way);
        painter.setFont(words(name_size));
    } else if (label.kind == Kind::layer) {
        painter.setPen(QPen(palette::outline, 1));
        painter.setBrush(QColor(255, 253, 249, 235));
        painter.drawRoundedRect(label.place, 4, 4);
        painter.setPen(palette::ink);
        painter.setFont(words(small_size));
    } else {
        painter.setPen(Qt::NoPen);
        painter.setBrush(QColor(255, 253, 249, 205));
        painter.drawRoundedRect(label.place, 4, 4);
        painter.setPen(palette::soft_ink);
        painter.setFont(slanted(small_size));
    }
    painter.drawText(label.place, Qt::AlignCenter, label.text);
}

/// Adds the names of the rooms, each on a post that stands on its floor.
void add_rooms(const Layout& layout, std::vector<PlacedLabel>& all, const PictureStory& story, const OrbitCamera& camera) {
    constexpr double post = 1.1;  // meters: the name hangs in its room
    for (const PictureStory::Room& room : story.rooms) {
        for (const Point& floor : room.places) {
            const auto at = layout.shown(floor);
            if (!at) continue;
            PlacedLabel label{Kind::room, {}, room.text, {}, *at};
            label.flat = std::sin(camera.elevation);
            if (layout.add_on_post(all, label, layout.shown(floor + Vector{0, 0, post}).value_or(*at))) break;
        }
    }
}

}  // namespace

std::vector<PlacedLabel> placed_labels(const PictureStory& story, std::span<const Point> line, const OrbitCamera& camera,
                                       const QSizeF& sheet, const QRectF& area, std::span<const QRectF> taken) {
    Layout layout(camera, sheet, area, taken);
    layout.keep_clear(line);
    for (const PictureStory::Word& word : story.layers) {
        if (const auto at = layout.shown(word.at)) layout.keep_clear(*at, 12);
    }
    std::vector<PlacedLabel> smallest;
    std::vector<PlacedLabel> others;
    for (const PictureStory::Step& step : story.steps) {
        if (!step.at) continue;
        const auto at = layout.shown(*step.at);
        if (!at) continue;
        layout.keep_clear(*at, step.smallest ? story.ring + 3 : dot);
        if (step.smallest)
            layout.keep_clear(*at + QPointF(0, 1.5), story.ring);  // of its own label too, which may touch a symbol
        if (step.smallest) {
            smallest.push_back({Kind::smallest, step.number, step.name, smallest_words(story, step), *at, {}, true, story.ring});
        } else {
            others.push_back({Kind::step, step.number, {}, {}, *at});
        }
    }
    for (PlacedLabel& label : smallest) layout.wish(std::move(label));
    for (PlacedLabel& label : others) layout.wish(std::move(label));
    for (const PictureStory::Room& room : story.rooms) {
        if (const auto at = layout.shown(room.places.front())) layout.keep_clear(*at, foot);
    }
    for (const Point& side : story.sides) {
        if (const auto at = layout.shown(side)) layout.keep_clear(*at, 9);
    }
    for (const PictureStory::Word& end : story.ends) {
        if (const auto at = layout.shown(end.at)) layout.wish({Kind::end, {}, end.text, {}, *at});
    }
    for (const PictureStory::Word& word : story.layers) {
        if (const auto at = layout.shown(word.at)) layout.wish({Kind::layer, {}, word.text, {}, *at});
    }
    std::vector<PlacedLabel> all = layout.placed();
    for (const PlacedLabel& label : all) layout.keep_clear(label.anchor, leader_end(label));
    for (const PictureStory::Closed& closed : story.closed) {
        const auto at = closed.at ? layout.shown(*closed.at) : std::nullopt;
        if (!at) continue;
        PlacedLabel label{Kind::tick, {}, {}, {}, *at};
        label.is_hidden = closed.is_hidden;
        label.place = QRectF(*at - QPointF(tick / 2, tick / 2), QSizeF(tick, tick));
        layout.add(all, label);
    }
    for (const PictureStory::Word& air : story.airs) {
        if (const auto at = layout.shown(air.at))
            layout.add_on_post(all, {Kind::air, {}, air.text, {}, *at}, *at - QPointF(0, 26));
    }
    add_rooms(layout, all, story, camera);
    return all;
}

void paint_labels(QPainter& painter, std::span<const PlacedLabel> labels) {
    const auto is_faint = [](const PlacedLabel& label) { return label.kind == Kind::room || label.kind == Kind::air; };
    for (const PlacedLabel& label : labels) {
        if (label.kind == Kind::room) paint_floor_foot(painter, label);
        if (is_faint(label)) paint_leader(painter, label);
        if (label.kind == Kind::air) paint_foot(painter, label.anchor);
        if (label.kind != Kind::tick) continue;
        painter.setOpacity(label.is_hidden ? 0.45 : 1);
        paint_tick(painter, label.place.center(), tick);
        painter.setOpacity(1);
    }
    for (const PlacedLabel& label : labels) {
        if (is_faint(label)) paint_words(painter, label);
    }
    for (const PlacedLabel& label : labels) {
        if (!is_faint(label) && label.kind != Kind::tick) paint_leader(painter, label);
    }
    for (const PlacedLabel& label : labels) {
        if (label.kind == Kind::step) paint_dot(painter, label.anchor);
        if (label.kind == Kind::layer) paint_foot(painter, label.anchor);
        if (label.kind == Kind::smallest) paint_ring(painter, label.anchor, label.ring);
    }
    for (const PlacedLabel& label : labels) {
        switch (label.kind) {
            case Kind::smallest: paint_smallest(painter, label); break;
            case Kind::step: paint_disc(painter, label.place.center(), disc, label.number, false); break;
            case Kind::end:
            case Kind::layer: paint_words(painter, label); break;
            case Kind::room:
            case Kind::air:
            case Kind::tick: break;
        }
    }
}

}  // namespace seamward::viewer
