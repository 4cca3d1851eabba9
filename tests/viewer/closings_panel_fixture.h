// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QApplication>
#include <QLabel>
#include <QTest>
#include <algorithm>

#include "closings_fixture.h"
#include "panels/closing_row.h"
#include "panels/closings_list.h"
#include "panels/closings_panel.h"
#include "panels/price_curve.h"

namespace seamward::viewer::test {

/// A job with the page of its closings.
class PanelOfClosings : public Closings {
protected:
    PanelOfClosings() {
        panel.resize(400, 800);
        panel.show();
    }
    template <class Widget>
    Widget& part(const char* name) {
        auto* found = panel.findChild<Widget*>(name);
        if (found == nullptr) throw std::runtime_error(name);
        return *found;
    }
    ClosingsList& list() { return part<ClosingsList>("closings"); }
    PriceCurve& curve() { return part<PriceCurve>("price_curve"); }
    QString text(const char* label) { return part<QLabel>(label).text(); }
    QString animal(std::size_t at) { return text(QString("outlook_%1").arg(at).toUtf8()); }
    QListWidgetItem& row(std::size_t offer) { return *list().row_of(closings.plan().offers[offer].gap); }
    void click_box(QListWidgetItem& at) {
        list().scrollToItem(&at);
        const QRect box = ClosingRow::tick_target(list().visualItemRect(&at));
        EXPECT_GE(box.width(), 28);
        EXPECT_GE(box.height(), 28);
        QTest::mouseClick(list().viewport(), Qt::LeftButton, Qt::NoModifier, box.center());
    }
    void click_words(QListWidgetItem& at) {
        list().scrollToItem(&at);
        QTest::mouseClick(list().viewport(), Qt::LeftButton, Qt::NoModifier, list().visualItemRect(&at).center());
    }
    std::vector<QString> titles() {
        std::vector<QString> all;
        for (int i = 0; i < list().count(); ++i) all.push_back(list().item(i)->data(ClosingRow::title).toString());
        return all;
    }
    bool says(const QString& title) {
        const std::vector<QString> all = titles();
        return std::ranges::find(all, title) != all.end();
    }

    ClosingsPanel panel{closings};
};

}  // namespace seamward::viewer::test
