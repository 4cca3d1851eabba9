// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPainter>
#include <QStyleOptionViewItem>

namespace seamward::viewer {

/// What painted rows of lists, and cards, have in common.

/// How wide rows are laid out: for a list with its scroll bar, whether it shows or not, since that must not depend on their
/// height.
[[nodiscard]] int width_for_rows(const QStyleOptionViewItem& option);

[[nodiscard]] QFont bold(QFont font);

/// How high a text is that is broken at that width; 0 of no text.
[[nodiscard]] int text_height(const QFontMetrics& metrics, int width, const QString& text);

/// The ground of a row that is chosen.
void paint_chosen_ground(QPainter& painter, const QStyleOptionViewItem& option);

/// Marks the chosen row where the list has the focus of the keyboard.
void paint_row_focus(QPainter& painter, const QStyleOptionViewItem& option);

}  // namespace seamward::viewer
