// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QAbstractButton>

#include "document/new_house.h"

namespace seamward::viewer {

/// Chooses the shape of a house's outline: a small plan, and its name under it.
class ShapeButton : public QAbstractButton {
    Q_OBJECT

public:
    explicit ShapeButton(NewHouse::Shape shape, QWidget* parent = nullptr);

    [[nodiscard]] NewHouse::Shape shape() const { return shape_; }
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override { return {62, sizeHint().height()}; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    NewHouse::Shape shape_;
};

}  // namespace seamward::viewer
