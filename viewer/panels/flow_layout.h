// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLayout>
#include <QList>

namespace seamward::viewer {

/// Widgets in rows, from left to right, in as many rows as the width needs.
class FlowLayout : public QLayout {
public:
    explicit FlowLayout(QWidget* parent, int across = 6, int between_rows = 4);
    ~FlowLayout() override;

    void addItem(QLayoutItem* item) override { items_.append(item); }
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] QLayoutItem* itemAt(int index) const override { return items_.value(index); }
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return {}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override { return placed({0, 0, width, 0}, false); }
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& area) override;

private:
    /// How high the rows are in an area of that width; moves the widgets there when told to.
    int placed(const QRect& area, bool move) const;

    QList<QLayoutItem*> items_;
    int across_, between_rows_;
};

}  // namespace seamward::viewer
