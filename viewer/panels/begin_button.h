// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPushButton>
#include <cstdint>

namespace seamward::viewer {

/// A way to begin, with a small sign: the first one filled, the others framed.
class BeginButton : public QPushButton {
    Q_OBJECT

public:
    enum class Sign : std::uint8_t { new_house, job, model };

    explicit BeginButton(Sign sign, QWidget* parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paint_sign(QPainter& painter, const QPointF& middle, double unit) const;

    Sign sign_;
};

}  // namespace seamward::viewer
