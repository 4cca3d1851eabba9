// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QStyleOptionViewItem>

namespace seamward::viewer {

/// What the painted rows of lists have in common.

/// How wide rows are laid out: for a list with its scroll bar, whether it shows or not, since that must not depend on their
/// height.
[[nodiscard]] int width_for_rows(const QStyleOptionViewItem& option);

/// Marks the chosen row where the list has the focus of the keyboard.
void paint_row_focus(QPainter& painter, const QStyleOptionViewItem& option);

}  // namespace seamward::viewer
