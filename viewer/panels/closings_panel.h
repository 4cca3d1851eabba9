// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QVBoxLayout>
#include <QWidget>

#include "document/closings_document.h"

namespace seamward::viewer {

class ClosingsHead;
class ClosingsList;

/// The plan for the customer: what is ticked costs and shuts out, the price curve to drag along, and the list of gaps.
class ClosingsPanel : public QWidget {
    Q_OBJECT

public:
    explicit ClosingsPanel(ClosingsDocument& closings, QWidget* parent = nullptr);

    /// Goes to a gap's row, as when it was clicked in the picture. A gap that is in no row changes nothing.
    void show_gap(GapIndex gap);

signals:
    /// A row of the list was gone to.
    void gap_chosen(seamward::GapIndex gap);

protected:
    void changeEvent(QEvent* event) override;
    bool event(QEvent* event) override;

private:
    /// Where the head would leave the list too little of the height, it scrolls with it.
    void place_head();

    QVBoxLayout *column_, *scrolled_;
    ClosingsHead* head_;
    ClosingsList* list_;
};

}  // namespace seamward::viewer
