// SPDX-License-Identifier: GPL-3.0-or-later
#include "panels/flow_layout.h"

#include <QWidget>
#include <algorithm>

namespace seamward::viewer {

FlowLayout::FlowLayout(QWidget* parent, int across, int between_rows)
    : QLayout(parent), across_(across), between_rows_(between_rows) {}

FlowLayout::~FlowLayout() {
    while (QLayoutItem* item = takeAt(0)) delete item;
}

QLayoutItem* FlowLayout::takeAt(int index) { return index >= 0 && index < items_.size() ? items_.takeAt(index) : nullptr; }

QSize FlowLayout::minimumSize() const {
    QSize size;
    for (const QLayoutItem* item : items_) size = size.expandedTo(item->minimumSize());
    const QMargins margins = contentsMargins();
    return size + QSize(margins.left() + margins.right(), margins.top() + margins.bottom());
}

void FlowLayout::setGeometry(const QRect& area) {
    QLayout::setGeometry(area);
    placed(area, true);
}

int FlowLayout::placed(const QRect& area, bool move) const {
    const QMargins margins = contentsMargins();
    const QRect inside = area.marginsRemoved(margins);
    int x = inside.x();
    int y = inside.y();
    int row = 0;
    QList<std::pair<QLayoutItem*, QPoint>> line;
    const auto end_row = [&] {
        for (const auto& [item, at] : line) {
            const int lower = (row - item->sizeHint().height()) / 2;
            if (move) item->setGeometry({at + QPoint(0, lower), item->sizeHint()});
        }
        line.clear();
    };
    for (QLayoutItem* item : items_) {
        if (item->isEmpty()) continue;  // a hidden widget
        const QSize size = item->sizeHint();
        if (x > inside.x() && x + size.width() > inside.right() + 1) {
            end_row();
            x = inside.x();
            y += row + between_rows_;
            row = 0;
        }
        line.append({item, QPoint(x, y)});
        x += size.width() + across_;
        row = std::max(row, size.height());
    }
    end_row();
    return y + row - area.y() + margins.bottom();
}

}  // namespace seamward::viewer
