// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/viewer/cut_off.h"

#include <QAbstractButton>
#include <QAbstractScrollArea>
#include <QCheckBox>
#include <QComboBox>
#include <QGroupBox>
#include <QHeaderView>
#include <QKeySequence>
#include <QLabel>
#include <QLineEdit>
#include <QMap>
#include <QMenuBar>
#include <QRadioButton>
#include <QStyleOptionComboBox>
#include <QTabBar>
#include <QToolButton>

namespace seamward::viewer::test {

namespace {

int wide(const QWidget& widget, const QString& text) { return widget.fontMetrics().size(Qt::TextShowMnemonic, text).width(); }

bool fits(const QLabel& label) {
    if (label.text().isEmpty() || label.width() == 0) return true;
    if (label.wordWrap()) {
        // No word wider than its line, and all lines there.
        return label.heightForWidth(label.width()) <= label.height() && label.minimumSizeHint().width() <= label.width() + 1;
    }
    return label.sizeHint().width() <= label.width() && label.sizeHint().height() <= label.height();
}

bool fits(const QAbstractButton& button) {
    const auto* tool = qobject_cast<const QToolButton*>(&button);
    if (button.text().isEmpty() ||
        (tool != nullptr && tool->toolButtonStyle() == Qt::ToolButtonIconOnly && !tool->icon().isNull()))
        return true;
    const bool has_sign =
        qobject_cast<const QCheckBox*>(&button) != nullptr || qobject_cast<const QRadioButton*>(&button) != nullptr;
    if (has_sign) return button.sizeHint().width() <= button.width() && button.sizeHint().height() <= button.height();
    const int icon = button.icon().isNull() ? 0 : button.iconSize().width() + 4;
    return wide(button, button.text()) + icon + 6 <= button.width() && button.fontMetrics().height() <= button.height();
}

bool fits(const QComboBox& box) {
    QStyleOptionComboBox option;
    option.initFrom(&box);
    option.editable = box.isEditable();
    const QRect field = box.style()->subControlRect(QStyle::CC_ComboBox, &option, QStyle::SC_ComboBoxEditField, &box);
    if (box.fontMetrics().height() > box.height()) return false;
    return wide(box, box.currentText()) <= field.width() || box.currentData(Qt::ToolTipRole).toString() == box.currentText();
}

/// Whether it stands inside all that it is in, as far as that does not scroll.
bool stands_inside(const QWidget& widget) {
    QRect at = widget.rect();
    bool upright = true, across = true;
    for (const QWidget* one = &widget; !one->isWindow(); one = one->parentWidget()) {
        at.translate(one->pos());
        const QWidget& around = *one->parentWidget();
        if (const auto* scrolled = qobject_cast<const QAbstractScrollArea*>(around.parentWidget());
            scrolled != nullptr && scrolled->viewport() == &around) {
            upright = false;
            across = across && scrolled->horizontalScrollBarPolicy() == Qt::ScrollBarAlwaysOff;
        }
        if (across && (at.left() < -1 || at.right() > around.width())) return false;
        if (upright && (at.top() < -1 || at.bottom() > around.height())) return false;
    }
    return true;
}

void judge_header(const QHeaderView& header, QStringList& found) {
    for (int i = 0; header.orientation() == Qt::Horizontal && i < header.count(); ++i) {
        const QString text = header.model()->headerData(i, Qt::Horizontal).toString();
        const QString whole = header.model()->headerData(i, Qt::Horizontal, Qt::ToolTipRole).toString();
        if (!header.isSectionHidden(i) && wide(header, text) + 6 > header.sectionSize(i) && whole != text)
            found << "QHeaderView: " + text;
    }
}

void judge(const QWidget& widget, QStringList& found) {
    const auto tell = [&](const QString& text) {
        found << QString("%1 %2: %3").arg(widget.metaObject()->className(), widget.objectName(), text);
    };
    if (const auto* label = qobject_cast<const QLabel*>(&widget)) {
        if (!fits(*label) || (!label->text().isEmpty() && !stands_inside(*label))) tell(label->text());
    } else if (const auto* button = qobject_cast<const QAbstractButton*>(&widget)) {
        if (!fits(*button) || (!button->text().isEmpty() && !stands_inside(*button))) tell(button->text());
    } else if (const auto* box = qobject_cast<const QComboBox*>(&widget)) {
        if (!fits(*box) || !stands_inside(*box)) tell(box->currentText());
    } else if (const auto* header = qobject_cast<const QHeaderView*>(&widget)) {
        judge_header(*header, found);
    } else if (const auto* tabs = qobject_cast<const QTabBar*>(&widget)) {
        for (int i = 0; i < tabs->count(); ++i) {
            if (tabs->isTabVisible(i) && wide(*tabs, tabs->tabText(i)) + 8 > tabs->tabRect(i).width()) tell(tabs->tabText(i));
        }
    } else if (const auto* group = qobject_cast<const QGroupBox*>(&widget)) {
        if (wide(*group, group->title()) + 8 > group->width()) tell(group->title());
    } else if (const auto* field = qobject_cast<const QLineEdit*>(&widget)) {
        if (field->text().isEmpty() && wide(*field, field->placeholderText()) + 8 > field->width())
            tell(field->placeholderText());
    }
}

template <class Do>
void each_visible(const QWidget& top, Do&& what) {
    if (!top.isVisible()) return;
    what(top);
    for (const QWidget* widget : top.findChildren<QWidget*>()) {
        if (widget->isVisible() && widget->window() == top.window()) what(*widget);
    }
}

}  // namespace

QStringList cut_off_texts(const QWidget& top) {
    QStringList found;
    each_visible(top, [&](const QWidget& widget) { judge(widget, found); });
    return found;
}

QStringList mnemonics_alike(const QWidget& top, Menus menus) {
    QMap<QString, QStringList> by_key;
    for (const QMenuBar* bar : top.findChildren<QMenuBar*>()) {
        for (const QAction* menu : bar->actions()) {
            const QKeySequence key = QKeySequence::mnemonic(menu->text());
            if (menus == Menus::counted && bar->isVisible() && !key.isEmpty()) by_key[key.toString()] << menu->text();
        }
    }
    each_visible(top, [&](const QWidget& widget) {
        const auto* label = qobject_cast<const QLabel*>(&widget);
        const auto* button = qobject_cast<const QAbstractButton*>(&widget);
        const QString text = label != nullptr && label->buddy() != nullptr ? label->text()
                             : button != nullptr                           ? button->text()
                                                                           : "";
        const QKeySequence key = QKeySequence::mnemonic(text);
        if (!key.isEmpty()) by_key[key.toString()] << text;
    });
    QStringList alike;
    for (auto at = by_key.begin(); at != by_key.end(); ++at) {
        if (at->size() > 1) alike << at.key() + ": " + at->join(" / ");
    }
    return alike;
}

}  // namespace seamward::viewer::test
