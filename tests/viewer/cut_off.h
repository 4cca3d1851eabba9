// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

namespace seamward::viewer::test {

/// Texts of what is visible under `top`, and of itself, that do not fit where they stand, a line each: kind, name, text. Labels,
/// buttons, boxes to choose from (unless a tooltip tells the whole), headers of tables, tabs, group titles, hints of fields.
[[nodiscard]] QStringList cut_off_texts(const QWidget& top);

enum class Menus { left_out, counted };

/// Letters that two visible labels or buttons under `top`, with `counted` those of the menu bar too, both want with Alt, a line
/// each.
[[nodiscard]] QStringList mnemonics_alike(const QWidget& top, Menus menus = Menus::left_out);

}  // namespace seamward::viewer::test
