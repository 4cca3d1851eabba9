// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainterPath>
#include <QWidget>
#include <vector>

#include "base/money.h"

namespace seamward::viewer {

/// How wide the widest way in is at each price: a stair that falls to the right, on a scale on which halving a width is one step
/// down everywhere. Lines across show what animals need. A knob stands at what is ticked; dragging it, a click, or the arrow
/// keys, Home and End go to a stair. Draws; knows nothing of closings.
class PriceCurve : public QWidget {
    Q_OBJECT

public:
    static constexpr int beginning = -1;

    struct Stair {
        Money price;
        double width = 0;  ///< of the widest way left at that price, meters; 0: none
    };
    struct Animal {
        QString name;
        double needs = 0;  ///< the narrowest gap that it passes, meters
        bool shut_out = false;
    };
    struct Shown {
        double width_now = 0;       ///< of the widest way where nothing is paid
        std::vector<Stair> stairs;  ///< rising prices, falling widths
        std::vector<Animal> animals;
        Money plan;     ///< of the whole plan; 0: there is none
        Stair knob;     ///< what is ticked
        QString words;  ///< the same for a screen reader
    };

    explicit PriceCurve(QWidget* parent = nullptr);

    void show(Shown shown);
    [[nodiscard]] const Shown& shown() const { return shown_; }
    /// The price at the right edge. Stairs far dearer than the plan go on beyond it, until the knob is taken there.
    [[nodiscard]] Money shown_up_to() const { return up_to_; }
    /// Where the knob and a stair stand, in pixels.
    [[nodiscard]] QPointF knob_place() const { return place(shown_.knob); }
    [[nodiscard]] QPointF stair_place(int stair) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    /// A stair was gone to, by its position, or the `beginning`.
    void chosen(int stair);

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    void retranslate();
    void go(int stair);
    [[nodiscard]] int stair_at(double x) const;
    [[nodiscard]] int before_knob() const;
    [[nodiscard]] int after_knob() const;
    [[nodiscard]] QRectF field() const;
    void scale();
    [[nodiscard]] Money dearest() const { return shown_.stairs.empty() ? Money{} : shown_.stairs.back().price; }
    [[nodiscard]] bool goes_on() const { return dearest() > up_to_; }
    /// The last stair that the scale has.
    [[nodiscard]] int last_shown() const;
    [[nodiscard]] double x_of(Money price) const;
    [[nodiscard]] double y_of(double width) const;
    [[nodiscard]] QPointF place(const Stair& stair) const { return {x_of(stair.price), y_of(stair.width)}; }
    [[nodiscard]] QPainterPath stairs() const;
    /// Where a name of that size is at a line without lying on the stair or on another name, if there is room.
    [[nodiscard]] QRectF free_place(QSizeF size, double y, const std::vector<QRectF>& taken) const;
    void paint_stairs(QPainter& painter) const;
    void paint_animals(QPainter& painter) const;
    void paint_knob(QPainter& painter) const;
    void paint_scale(QPainter& painter) const;

    Shown shown_;
    Money up_to_{1};
    bool dragged_ = false;
    int last_ = -2;  ///< where a drag went last
};

}  // namespace seamward::viewer
