// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QWidget>

#include "document/closings_document.h"

namespace seamward::viewer {

class PriceCurve;

/// The price curve with what it says of what is ticked, and what ticks many gaps at once: all, none, a budget; and whom the plan
/// has to shut out.
class PricePart : public QWidget {
    Q_OBJECT

public:
    explicit PricePart(ClosingsDocument& closings, QWidget* parent = nullptr);

signals:
    /// Why what was typed is no budget.
    void said(const QString& text);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void lay_out();
    void retranslate();
    void refresh();
    void refresh_buttons();
    void refresh_curve();
    /// For the longest that the words under the curve can become, so that no row moves when something is ticked.
    void keep_room();
    void go_to(int stair);
    void fill_animals_menu();
    void choose_animal(const Pest& pest, bool against);
    void plan_against_others();
    void spend_budget();

    ClosingsDocument& closings_;
    QLabel* title_;
    PriceCurve* curve_;
    QLabel* words_;
    QPushButton* all_;
    QPushButton* none_;
    QPushButton* against_;
    QPushButton* others_;
    QLineEdit* budget_;
};

}  // namespace seamward::viewer
