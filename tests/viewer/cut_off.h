// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

namespace seamward::viewer::test {

/// Texts of what is visible under `top`, and of itself, that do not fit where they stand, a line each: kind, name, text. Labels,
/// buttons, boxes to choose from (unless a tooltip tells the whole), headers of tables, tabs, group titles, hints of fields.
[[nodiscard]] QStringList cut_off_texts(const QWidget& top);

/// Letters that two visible labels or buttons under `top` both want with Alt, a line each.
[[nodiscard]] QStringList mnemonics_alike(const QWidget& top);

}  // namespace seamward::viewer::test
