// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>
#include <cstdint>
#include <vector>

namespace seamward::viewer {

/// What the symbols and lines of the picture mean: a strip of small drawings with words, in as many rows as its width
/// needs.
class KeyPanel : public QWidget {
    Q_OBJECT

public:
    explicit KeyPanel(QWidget* parent = nullptr);

    /// `grid_step`: meters from one line of the ground's grid to the next.
    void set_grid_step(double grid_step);
    /// Whether the picture shows a house, or only where gaps are.
    void set_house(bool house);

    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void changeEvent(QEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    enum class Sign : std::uint8_t {
        way,
        hidden,
        unplaced,
        other_way,
        smallest,
        slot,
        hole,
        ring,
        mesh,
        shut,
        box,
        arrows,
        room,
        square,
        to_close,
        ticked
    };
    void retranslate();

    struct Entry {
        Sign sign;
        QString text;
    };

    /// Where each entry stands in a strip of that width, and how high the strip is.
    [[nodiscard]] std::vector<QRect> places(int width, int& height) const;
    static void paint_sign(QPainter& painter, Sign sign, const QRectF& in);
    static void paint_closing_sign(QPainter& painter, bool ticked, const QPointF& middle);
    static void paint_ground_sign(QPainter& painter, Sign sign, const QPointF& middle);

    std::vector<Entry> entries_;
    double grid_step_ = 1;  ///< meters
    bool house_ = false;
};

}  // namespace seamward::viewer
